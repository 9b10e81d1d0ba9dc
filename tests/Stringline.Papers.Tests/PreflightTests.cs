using Stringline.Papers.Preflight;

namespace Stringline.Papers.Tests;

/// <summary>One bad paper for each thing a recorder or the statute rejects; the good one beside it passes everything.</summary>
public sealed class PreflightTests
{
    [Fact]
    public void A_good_paper_passes_every_check()
    {
        var report = new Forgery().Check();
        Assert.True(report.Passed, report.ToString());
        Assert.Equal(
            ["page size", "side margins", "inside the page", "no overlap", "nothing over text", "all text is seen", "prints as it looks",
                "whole file", "faces in the file", "pages", "recorder’s space", "return block", "title", "print density", "legibility",
                "notice wording", "notice type", "last sentence in capitals", "names under signatures", "names and facts", "no DRAFT"],
            report.Checks.Select(c => c.Name));
    }

    internal static TheoryData<string, Forgery> Bad() => new()
    {
        // Gov. Code § 27361.5(a): a page is 8½ by 11 inches.
        { "page size", new Forgery { Height = 1008, Width = 612 } },
        { "page size", new Forgery { Width = 620 } },
        // Gov. Code § 27361.6: ½ inch left and right.
        { "side margins", new Forgery { TextLeft = 30 } },
        { "side margins", new Forgery { TextLeft = 520 } },
        { "inside the page", new Forgery { LowestBaseline = 790 } },
        { "no overlap", new Forgery { Overlap = true } },
        // Gov. Code § 27361(a): the fee goes by pages.
        { "pages", new Forgery { Pages = 3 } },
        // Gov. Code § 27361.6: the recorder's 5 by 2½ inches.
        { "recorder’s space", new Forgery { InRecordersSpace = "DOC NO." } },
        { "recorder’s space", new Forgery { LineInRecordersSpace = true } },
        { "return block", new Forgery { ReturnLeft = 180 } },
        { "return block", new Forgery { ReturnAddress = "2200 Plumb" } },
        // Gov. Code § 27324: the title directly below the recorder's space.
        { "title", new Forgery { Title = "LIEN" } },
        { "title", new Forgery { TitleBaseline = 240 } },
        // Gov. Code § 27361(a)(1): nine lines an inch.
        { "print density", new Forgery { Pitch = 7.5, NoticePoints = 10 } },
        // Gov. Code § 27361(a)(1): 22 characters an inch, over three inches.
        { "print density", new Forgery { Small = new string('i', 90), SmallPoints = 8 } },
        // Gov. Code § 27361.6, second paragraph: size and color that reproduce.
        { "legibility", new Forgery { Small = "gray words", Gray = true } },
        { "legibility", new Forgery { Small = "words", SmallPoints = 6.5 } },
        // Civ. Code § 8416(a)(8).
        { "notice wording", new Forgery { Notice = t => t.Replace("90 days", "60 days", StringComparison.Ordinal) } },
        { "notice wording", new Forgery { Notice = t => t.Replace("recorder’s", "recorders", StringComparison.Ordinal) } },
        { "notice wording", new Forgery { Notice = t => t.Replace("ATTENTION!", "Attention!", StringComparison.Ordinal) } },
        { "notice type", new Forgery { NoticePoints = 9.5 } },
        { "notice type", new Forgery { NoticeBold = false } },
        { "last sentence in capitals",
            new Forgery { Notice = t => t.Replace("BECAUSE THE LIEN", "Because the lien", StringComparison.Ordinal) } },
        { "last sentence in capitals",
            new Forgery { Notice = t => t.Replace("www.cslb.ca.gov", "WWW.CSLB.CA.GOV", StringComparison.Ordinal) } },
        { "names under signatures", new Forgery { Signer = "" } },
        { "names under signatures", new Forgery { SignerBelowRule = -14 } },
        { "names under signatures", new Forgery { Signer = "Maria Munoz-Nguyen" } },
        { "names and facts", new Forgery { Fact = "Lukasz Masonry" } },
        { "no DRAFT", new Forgery { Draft = true } },
    };

    [Fact]
    public void A_bad_paper_fails_the_check_that_is_made_for_it()
    {
        foreach (var (check, forgery) in Bad().Select(row => row.Data))
        {
            var report = forgery.Check();
            Assert.False(report.Check(check)!.Passed, $"{check} let this pass: {forgery}");
            // A notice with another word is not found, so its type and capitals fail with it; crowded lines overlap; and so on. Nothing
            // else may fail.
            var others = report.Checks.Where(c => !c.Passed && c.Name != check).Select(c => c.Name);
            Assert.All(others, o => Assert.Contains((check, o), Companions));
        }
    }

    private static readonly (string, string)[] Companions =
    [
        ("last sentence in capitals", "notice wording"),
        ("notice wording", "notice type"),
        ("notice wording", "last sentence in capitals"),
        ("print density", "no overlap"),
        ("return block", "recorder’s space"),
        ("side margins", "names and facts"),
    ];

    [Fact]
    public void Every_check_has_its_bad_paper() =>
        Assert.Equal(
            new Forgery().Check().Checks.Select(c => c.Name).Order(StringComparer.Ordinal),
            Bad().Select(row => row.Data.Item1).Concat(TamperedPaperTests.Found).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void A_changed_word_is_shown_with_the_right_one() =>
        Assert.Contains("after 'than' stands '60'; '90' would be right",
            new Forgery { Notice = t => t.Replace("90 days", "60 days", StringComparison.Ordinal) }.Check().Check("notice wording")!.Words,
            StringComparison.Ordinal);

    [Fact]
    public void A_draft_without_its_mark_fails()
    {
        var paper = Kept.Packet("unmarked", Jobs.Demo()).Files[1];
        Assert.False(PaperPreflight.Check(paper, new PaperExpectations { Pages = paper.Pages, Draft = true }).Passed);
    }

    [Fact]
    public void Bytes_that_are_no_pdf_are_refused() =>
        Assert.ThrowsAny<Exception>(() =>
            PaperPreflight.Check(new PaperFile("x.pdf", "x", 1, "no paper"u8.ToArray()), new PaperExpectations { Pages = 1 }));
}
