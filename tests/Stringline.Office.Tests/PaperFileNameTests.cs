using Stringline.Papers;
using Stringline.Papers.Catalogue;

namespace Stringline.Office.Tests;

public sealed class PaperFileNameTests
{
    private static readonly PaperFile Notice = new("stop-payment-notice-2.pdf", "Stop Payment Notice", 1, default);

    [Fact]
    public void A_name_carries_job_paper_addressee_and_day() =>
        Assert.Equal("cafe-munoz-bldg-2_stop-payment-notice-2_granger-slough-bank_2026-06-22.pdf",
            PaperFileName.Of("Café Muñoz / Bldg. 2", "stop-payment-notice", Notice with { Addressee = "Granger Slough Bank" }, false,
                new LocalDate(2026, 6, 22), PaperOptions.None));

    [Fact]
    public void A_sheet_carries_its_paper_and_a_draft_says_so() =>
        Assert.Equal("alder-court_bond-notice-instruction-sheet_draft_2026-06-22.pdf",
            PaperFileName.Of("Alder Court", "bond-notice",
                new PaperFile("instruction-sheet.pdf", "Instruction sheet", 1, default) { IsSheet = true }, true,
                    new LocalDate(2026, 6, 22), PaperOptions.None));

    /// <summary>Two waivers of one form and day, two claims on two structures, two releases: none takes the other's name.</summary>
    [Fact]
    public void Papers_that_differ_only_in_what_was_told_have_names_of_their_own()
    {
        var day = new LocalDate(2026, 6, 22);
        string Name(PaperOptions told) =>
            PaperFileName.Of("Alder Court", "x", new PaperFile("paper.pdf", "Paper", 1, default), false, day, told);
        Assert.Equal("alder-court_paper_through-2026-05-31_2026-06-22.pdf",
            Name(new PaperOptions { Through = new LocalDate(2026, 5, 31) }));
        Assert.Equal("alder-court_paper_structure-a-1_2026-06-22.pdf", Name(new PaperOptions { Structure = "A-1" }));
        Assert.Equal("alder-court_paper_no-2026-0012345_2026-06-22.pdf", Name(new PaperOptions { Number = "2026-0012345" }));
    }

    [Theory]
    [InlineData("水")]
    [InlineData(" .. / ")]
    [InlineData("")]
    public void A_name_without_a_Latin_letter_still_makes_a_file_name(string job) =>
        Assert.Equal("job_stop-payment-notice-2_addressee_2026-06-22.pdf",
            PaperFileName.Of(job, "x", Notice with { Addressee = job }, false, new LocalDate(2026, 6, 22), PaperOptions.None));
}
