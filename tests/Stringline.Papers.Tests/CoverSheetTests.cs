using Stringline.Law.Recording;
using Stringline.Papers.Fees;
using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;

namespace Stringline.Papers.Tests;

/// <summary>
/// Gov. Code § 27361.6: where the first page does not comply, a page of its own in front carries the title, and is charged as a page.
/// </summary>
public sealed class CoverSheetTests
{
    private static PaperPlan Paper(CoverSheet? cover) => new()
    {
        Title = "Release of Mechanics Lien",
        Foot = "Release",
        Made = Jobs.Day("2026-05-06"),
        Return = new ReturnBlock("Quarrymen’s Supply", "2200 Plumb Street"),
        Cover = cover,
        Blocks = [new Heading("RELEASE OF MECHANICS LIEN", TypeStyle.Title) { Before = 0 },
            new Paragraph("The first words of the document itself.", TypeStyle.Body)],
    };

    private static CoverSheet Cover(params string[] titles) => new()
    {
        Titles = titles,
        Lines = [new CoverLine("Names to be indexed", "Ibarra, Ana María; Granger Slough Bank"),
            new CoverLine("Assessor’s parcel number", "027-310-014-000"), new CoverLine("Recorded before as", "2026-0012345")],
        Exemption = HomesFeeExemption.CapReached.Wording,
    };

    private static PaperFile Printed(CoverSheet? cover)
    {
        var printed = Press.Print(Paper(cover));
        var file = new PaperFile("release.pdf", "Release of Mechanics Lien", printed.Pages, printed.Bytes);
        Kept.Keep(cover is null ? "uncovered.pdf" : "covered.pdf", file);
        return file;
    }

    [Fact]
    public void The_cover_carries_what_the_recorder_needs_and_the_document_follows()
    {
        var file = Printed(Cover("Release of Mechanics Lien"));
        Assert.Equal(2, file.Pages);
        var report = PaperPreflight.Check(file, new PaperExpectations
        {
            Pages = 2,
            Recorded = new RecordedPaper("RELEASE OF MECHANICS LIEN", "Quarrymen’s Supply", "2200 Plumb Street"),
            MustHold = ["Ibarra, Ana María; Granger Slough Bank", "027-310-014-000", "2026-0012345", HomesFeeExemption.CapReached.Wording],
        });
        Assert.True(report.Passed, report.ToString());
        var pages = ReadBack.Of(file.Bytes).Pages;
        Assert.DoesNotContain("document itself", string.Join(' ', pages[0].Words.Select(w => w.Text)), StringComparison.Ordinal);
        Assert.Contains("document itself", string.Join(' ', pages[1].Words.Select(w => w.Text)), StringComparison.Ordinal);
    }

    /// <summary>$3 for the further page (Gov. Code §§ 27361(a)(1), 27361.6).</summary>
    [Fact]
    public void The_cover_costs_a_page()
    {
        var marin = RecorderTable.For("Marin", Jobs.Day("2026-11-30"));
        var without = RecordingFee.Of(marin, new FeeRequest { Pages = Printed(null).Pages });
        var with = RecordingFee.Of(marin, new FeeRequest { Pages = Printed(Cover("Release of Mechanics Lien")).Pages });
        Assert.Equal(3m, with.Total - without.Total);
    }

    /// <summary>Gov. Code § 27324: the title or titles stand directly below the recorder's space.</summary>
    [Fact]
    public void Two_titles_stand_one_below_the_other()
    {
        var lines = ReadBack.Of(Printed(Cover("Release of Mechanics Lien", "Notice of Completion")).Bytes).Pages[0].Lines
            .Where(l => l[0].Baseline > 180).Take(2).Select(l => string.Join(' ', l.Select(w => w.Text)));
        Assert.Equal(["RELEASE OF MECHANICS LIEN", "NOTICE OF COMPLETION"], lines);
    }

    [Fact]
    public void A_cover_without_a_return_block_is_no_cover() =>
        Assert.Throws<ArgumentException>(() => Press.Print(Paper(Cover("Release")) with { Return = null }));
}
