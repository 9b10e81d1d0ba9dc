using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace Stringline.Papers.Layout;

/// <summary>What can be put on a page: text on a baseline, rules, boxes. Points, origin top left.</summary>
internal sealed class PageCanvas(XGraphics graphics, Measure measure, StructureBuilder told)
{
    private readonly List<Action> rules = [];
    private Part? at;

    /// <summary>Draws strips, one below the other, as the parts of the paper that they are.</summary>
    /// <param name="strips">Each with its top.</param>
    /// <param name="x">Their left edge.</param>
    public void Put(IReadOnlyList<Placed> strips, double x)
    {
        for (var i = 0; i < strips.Count; i++)
        {
            var (strip, top) = strips[i];
            if (strip.Row is not { } row)
            {
                // A label that is said again over a page is said once to one who hears the paper read.
                if (strip.IsAgain)
                    Aside(() => strip.Draw(this, x, top));
                else
                    Put(strip, x, top);
                continue;
            }

            var first = i;
            while (i + 1 < strips.Count && strips[i + 1].Strip.Row == row)
                i++;
            Put(row, [.. strips.Skip(first).Take(i - first + 1)], x);
        }
    }

    private void Put(LayoutRow strip, double x, double y)
    {
        if (strip.Part == Part.None)
            End();
        else if (strip.Part is { } part && part != at)
            Begin(part);
        strip.Draw(this, x, y);
    }

    // A table is told row by row and cell by cell (PDF 32000-1, 14.8.4.3.4); its rules are drawn once it has ended, since they say nothing.
    private void Put(TableRow row, List<Placed> lines, double x)
    {
        if (lines[0].Strip.Part is { } part && part != at)
        {
            End();
            told.BeginElement(PdfBlockLevelElementTag.Table);
            at = part;
        }

        told.BeginElement(PdfBlockLevelElementTag.TableRow);
        for (var cell = 0; cell < lines[0].Strip.Cells.Count; cell++)
        {
            told.BeginElement(row.IsHead ? PdfBlockLevelElementTag.TableHeaderCell : PdfBlockLevelElementTag.TableDataCell);
            foreach (var (strip, top) in lines)
                strip.Cells[cell](this, x, top);
            told.End();
        }

        told.End();
        rules.AddRange(lines.Select(line => (Action)(() => line.Strip.Draw(this, x, line.Top))));
    }

    /// <summary>Begins a part; what is drawn until it ends belongs to it.</summary>
    public void Begin(Part part)
    {
        End();
        told.BeginElement(part.Level switch
        {
            0 => PdfBlockLevelElementTag.Paragraph,
            1 => PdfBlockLevelElementTag.Heading1,
            2 => PdfBlockLevelElementTag.Heading2,
            _ => throw new InvalidOperationException($"No heading of level {part.Level}."),
        });
        at = part;
    }

    /// <summary>Ends the part that was begun; nothing where none was.</summary>
    public void End()
    {
        if (at is null)
            return;
        told.End();
        at = null;
        if (rules.Count == 0)
            return;
        Action[] drawn = [.. rules];
        rules.Clear();
        Aside(() => Array.ForEach(drawn, draw => draw()));
    }

    /// <summary>Draws what is no part of what the paper says: rules, frames, running feet.</summary>
    public void Aside(Action draw)
    {
        End();
        told.BeginArtifact();
        draw();
        told.End();
    }

    /// <summary>
    /// Text whose first letter begins at <paramref name="x"/>; a space parts it from what follows when the paper is read aloud or copied.
    /// </summary>
    public void Text(string text, double x, double baseline, TypeStyle style) =>
        Exactly(text.Length == 0 ? "" : text + " ", x, baseline, style);

    /// <summary>
    /// Text whose first letter begins at <paramref name="x"/>, and nothing after it: what follows may be of the same word.
    /// </summary>
    public void Exactly(string text, double x, double baseline, TypeStyle style)
    {
        if (text.Length > 0)
            graphics.DrawString(text, measure.Font(style), XBrushes.Black, x, baseline);
    }

    /// <summary>Text that ends at <paramref name="right"/>.</summary>
    public void TextEndingAt(string text, double right, double baseline, TypeStyle style) =>
        Text(text, right - measure.Width(text, style), baseline, style);

    /// <summary>A horizontal rule half a point thick.</summary>
    public void Rule(double left, double right, double y) => graphics.DrawLine(HairPen, left, y, right, y);

    /// <summary>An empty square, ticked with a cross or not.</summary>
    public void Box(double x, double y, double side, bool ticked)
    {
        graphics.DrawRectangle(BoxPen, x, y, side, side);
        if (!ticked)
            return;
        graphics.DrawLine(TickPen, x + 1.5, y + 1.5, x + side - 1.5, y + side - 1.5);
        graphics.DrawLine(TickPen, x + 1.5, y + side - 1.5, x + side - 1.5, y + 1.5);
    }

    /// <summary>A frame.</summary>
    public void Frame(double left, double top, double width, double height, double thickness) =>
        graphics.DrawRectangle(new XPen(XColors.Black, thickness), left, top, width, height);

    /// <summary>DRAFT, large and light, from corner to corner under the text.</summary>
    public void Draft()
    {
        var font = measure.Font(DraftStyle);
        var state = graphics.Save();
        graphics.TranslateTransform(Sheet.Width / 2, Sheet.Height / 2);
        graphics.RotateTransform(-52);
        graphics.DrawString("DRAFT", font, DraftBrush, -graphics.MeasureString("DRAFT", font).Width / 2, 60);
        graphics.Restore(state);
    }

    /// <summary>Type of the word DRAFT: the only type on any paper of 100 points or more.</summary>
    private static readonly TypeStyle DraftStyle = new(Face.SansBold, 190, 190);

    private static readonly XBrush DraftBrush = new XSolidBrush(XColor.FromArgb(226, 226, 226));
    private static readonly XPen HairPen = new(XColors.Black, 0.5);
    private static readonly XPen BoxPen = new(XColors.Black, 0.8);
    private static readonly XPen TickPen = new(XColors.Black, 1.2);
}
