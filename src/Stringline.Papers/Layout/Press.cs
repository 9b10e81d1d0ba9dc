using System.Security.Cryptography;
using System.Text;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Stringline.Papers.Layout;

/// <summary>A printed paper.</summary>
/// <param name="Bytes">The PDF file.</param>
/// <param name="Pages">Number of pages.</param>
internal sealed record Printed(byte[] Bytes, int Pages);

/// <summary>Prints a plan: lays it out, then writes it as a PDF.</summary>
internal static class Press
{
    /// <summary>Prints the plan on sheets of 8½ by 11 inches, one side each.</summary>
    public static Printed Print(PaperPlan plan) => Print(plan, new Measure());

    /// <summary>Prints the plan with a measure that was used for it before.</summary>
    public static Printed Print(PaperPlan plan, Measure measure)
    {
        var strips = Blocks(plan).SelectMany(b => b.Cut(measure, Sheet.TextWidth)).ToList();
        var firstTop = plan.Return is null ? Sheet.Top : Sheet.TitleTop;
        var pages = Flow.OntoPages(strips, firstTop, Sheet.Top, Sheet.Bottom);
        using var document = new PdfDocument();
        // What it compresses lacks its end; see Finish.
        document.Options.NoCompression = true;
        document.Options.CompressContentStreams = false;
        var told = UAManager.ForDocument(document);
        told.SetDocumentLanguage("en-US");
        // What a printer shrinks to fit has margins other than those that the recorder measures (Gov. Code § 27361.6).
        document.ViewerPreferences.Elements.SetName("/PrintScaling", "/None");
        document.Info.Title = plan.Title;
        document.Info.Creator = "Stringline";
        document.Info.CreationDate = document.Info.ModificationDate = plan.Made.AtMidnight().ToDateTimeUnspecified();
        var id = Id(plan);
        document.Internals.FirstDocumentID = document.Internals.SecondDocumentID = id;
        for (var i = 0; i < pages.Count; i++)
            Draw(document.AddPage(), told.StructureBuilder, plan, measure, pages[i], i, pages.Count);
        var raw = Raw ??= new MemoryStream();
        raw.SetLength(0);
        document.Save(raw);
        return new Printed(Finish.Of(raw.GetBuffer(), (int)raw.Length, id), pages.Count);
    }

    // What is written before it is packed is large enough to be collected last: each thread keeps the room for it.
    [ThreadStatic]
    private static MemoryStream? Raw;

    /// <summary>The paper's blocks, on pages of their own behind the cover where there is one.</summary>
    /// <exception cref="ArgumentException">A cover is asked for without a return block, or in front of nothing.</exception>
    private static IEnumerable<Block> Blocks(PaperPlan plan)
    {
        if (plan.Cover is not { } cover)
            return plan.Blocks;
        if (plan.Return is null || plan.Blocks.Count == 0)
            throw new ArgumentException("A cover page stands in front of a paper to be recorded and bears its return block.", nameof(plan));
        return [.. cover.Blocks, new OnNewPage(plan.Blocks[0]), .. plan.Blocks.Skip(1)];
    }

    private static void Draw(PdfPage page, StructureBuilder told, PaperPlan plan, Measure measure, IReadOnlyList<Placed> placed, int number,
        int count)
    {
        page.Width = XUnit.FromPoint(Sheet.Width);
        page.Height = XUnit.FromPoint(Sheet.Height);
        page.Elements.SetName("/Tabs", "/S");
        using var graphics = XGraphics.FromPdfPage(page);
        var ink = new PageCanvas(graphics, measure, told);
        if (plan.Draft)
            ink.Aside(ink.Draft);
        if (number == 0 && plan.Return is { } block)
        {
            ink.Begin(new Part(0));
            block.Draw(ink, measure);
            ink.End();
            ink.Aside(() => ink.Rule(Sheet.ReturnBlockRight, Sheet.Right, Sheet.RecorderBand + 4));
        }

        ink.Put(placed, Sheet.Left);
        ink.End();
        var folio = string.Create(CultureInfo.InvariantCulture, $"Page {number + 1} of {count}");
        ink.Aside(() =>
        {
            var room = Sheet.TextWidth - measure.Width(folio, plan.FootStyle) - 12;
            ink.Text(Fitted(Typography.Of(plan.Foot), room, measure, plan.FootStyle), Sheet.Left, Sheet.FootBaseline, plan.FootStyle);
            ink.TextEndingAt(folio, Sheet.Right, Sheet.FootBaseline, plan.FootStyle);
        });
    }

    // The foot only says which paper the sheet belongs to; a long name in it ends at a word before it reaches the page number.
    private static string Fitted(string foot, double room, Measure measure, TypeStyle style)
    {
        if (measure.Width(foot, style) <= room)
            return foot;
        var end = foot.Length;
        while (end > 0 && measure.Width(PaperText.CutAtWord(foot, end), style) > room)
            end--;
        return PaperText.CutAtWord(foot, end);
    }

    /// <summary>The same plan gets the same id: a hash of title, foot and day, not a random number.</summary>
    private static string Id(PaperPlan plan) =>
        Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes($"{plan.Title}\n{plan.Foot}\n{Law.Counting.LawText.IsoDay(plan.Made)}"))
            .AsSpan(0, 8));
}
