namespace Stringline.Papers.Layout;

/// <summary>A column of a table.</summary>
/// <param name="Head">The words at its head.</param>
/// <param name="Share">Its share of the width, 0 to 1.</param>
/// <param name="AtRight">Whether it is set to the right, as amounts are.</param>
internal sealed record Column(string Head, double Share, bool AtRight = false);

/// <summary>Rows under column heads, parted by hair rules. A row of up to ten lines is never cut.</summary>
/// <param name="Columns">The columns; their shares add up to 1.</param>
/// <param name="Rows">The cells, a list for each row.</param>
internal sealed record Table(IReadOnlyList<Column> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : Block
{
    private const double Pad = 3;

    /// <summary>White above in points.</summary>
    public double Before { get; init; } = 8;

    /// <summary>Type of the cells.</summary>
    public TypeStyle Style { get; init; } = TypeStyle.Body;

    /// <summary>Type of the heads.</summary>
    public TypeStyle HeadStyle { get; init; } = TypeStyle.BodyBold;

    /// <summary>Whether the last row is a sum: set in the heads' type.</summary>
    public bool LastIsSum { get; init; }

    /// <inheritdoc/>
    protected override IEnumerable<LayoutRow> Slices(Measure measure, double width)
    {
        List<LayoutRow> head = [.. Row(measure, width, [.. Columns.Select(c => c.Head)], HeadStyle, isHead: true)
            .Select(s => s with { ToNext = KeepTogether.Fast, Before = s.Before == 0 ? 0 : Before })];
        foreach (var strip in head)
            yield return strip;
        for (var i = 0; i < Rows.Count; i++)
        {
            // The first row clings to the head, and a sum to the row above it; any other may begin a page, under the head again.
            var isSum = LastIsSum && i == Rows.Count - 1;
            var isFirst = true;
            foreach (var strip in Row(measure, width, Rows[i], isSum ? HeadStyle : Style))
            {
                yield return strip with { Again = isFirst && i > 0 ? head : [], ToPrevious = isFirst && isSum };
                isFirst = false;
            }
        }
    }

    private sealed record Cell(double Left, double Wide, bool AtRight, IReadOnlyList<string> Lines);

    private IEnumerable<LayoutRow> Row(Measure measure, double width, IReadOnlyList<string> cells, TypeStyle style, bool isHead = false)
    {
        const double gutter = 10;
        var columns = new List<Cell>();
        var (left, count) = (0.0, 0);
        for (var i = 0; i < Columns.Count; i++)
        {
            var wide = (width * Columns[i].Share) - (i == Columns.Count - 1 ? 0 : gutter);
            columns.Add(new Cell(left, wide, Columns[i].AtRight, measure.Lines(cells[i], style, wide)));
            left += width * Columns[i].Share;
            count = Math.Max(count, columns[i].Lines.Count);
        }

        var row = new TableRow(isHead);
        for (var i = 0; i < count; i++)
        {
            var line = i;
            var last = i == count - 1;
            yield return new LayoutRow
            {
                Height = style.Pitch + (last ? Pad + 1 : 0),
                Before = i == 0 ? Pad : 0,
                ToNext = !last && (count <= 10 || KeepRules.Line(i, count)) ? KeepTogether.Fast : KeepTogether.None,
                Row = row,
                Cells = [.. columns.Select(c => (Action<PageCanvas, double, double>)((ink, x, y) => Put(ink, c, line, x, y, style)))],
                Draw = (ink, x, y) =>
                {
                    if (last)
                        ink.Rule(x, x + width, y + style.Pitch + Pad);
                },
            };
        }
    }

    private static void Put(PageCanvas ink, Cell cell, int line, double x, double y, TypeStyle style)
    {
        var baseline = y + KeepRules.Baseline(style);
        if (line >= cell.Lines.Count)
            return;
        if (cell.AtRight)
            ink.TextEndingAt(cell.Lines[line], x + cell.Left + cell.Wide, baseline, style);
        else
            ink.Text(cell.Lines[line], x + cell.Left, baseline, style);
    }
}
