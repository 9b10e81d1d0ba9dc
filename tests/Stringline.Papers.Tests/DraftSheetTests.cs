using System.Text.RegularExpressions;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Testing;
using static Stringline.Papers.Tests.Jobs;

namespace Stringline.Papers.Tests;

/// <summary>A draft gives nobody leave: its sheet says that it is a draft, and never tells one to sign, serve or record.</summary>
public sealed partial class DraftSheetTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_sheet_of_a_draft_claim_tells_of_no_step_and_no_day_that_is_past(bool served)
    {
        var job = served ? Served() : Demo();
        var first = FirstDay(Standing.InDoubt, new Reading($"the claimant’s work ended", Day("2026-03-20")));
        IsOfADraft(Kept.Packet("draft-sheet", job, job.Assessed(0m, first), draft: true).Sheet().Text);
        IsOfADraft(Kept.Packet("draft-sheet-early", job, job.Assessed(12_345.67m, LastDay(Standing.InDoubt)), draft: true).Sheet().Text);
        IsOfADraft(Kept.Packet("draft-sheet-good", job, job.Assessed(), draft: true).Sheet().Text);
    }

    public static TheoryData<string> All() => [.. PaperCatalogue.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(All))]
    [Slow(Slow.Lasting)]
    public void The_sheet_of_any_draft_tells_of_no_step(string id)
    {
        // The notice of pendency is the attorney's to complete, and so are the steps, as long as nothing else stands against it.
        if (id != "notice-of-pendency")
            IsOfADraft(PaperJobs.Make(id, options: o => o with { Draft = true }).SheetText());
        IsOfADraft(PaperJobs.Make(id, j => j with { Entries = [] }, o => o with { Draft = true }).SheetText());
    }

    [Fact]
    public void What_may_be_used_has_its_steps()
    {
        var sheet = Kept.Packet("no-draft-sheet", Demo()).Sheet().Text;
        Assert.Contains("Serve before you record", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("draft", sheet, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Code Civ. Proc. § 405.21: the notice of pendency of action is always a draft, and its sheet is for the attorney.</summary>
    [Fact]
    public void A_paper_that_the_attorney_completes_has_the_steps_for_the_attorney()
    {
        var sheet = PaperJobs.Make("notice-of-pendency").SheetText();
        Assert.Contains("A draft for the attorney. Until the attorney has completed and signed it", sheet, StringComparison.Ordinal);
        Assert.Contains("What the attorney’s office does, in this order", sheet, StringComparison.Ordinal);
    }

    private static void IsOfADraft(string sheet)
    {
        Assert.Contains("sheet of a draft", sheet, StringComparison.Ordinal);
        Assert.Contains("Only a draft. Not to be signed, ", sheet, StringComparison.Ordinal);
        var told = sheet[..(sheet.IndexOf("What could change it", StringComparison.Ordinal) is > 0 and var end ? end : sheet.Length)];
        Assert.Empty(Steps().Matches(told).Select(m => m.Value));
    }

    [GeneratedRegex(@"(?:^|[.:] |\d\. )(?:Sign|Record|Serve|Mail|Hand|Copy|Post|Bring|Have it signed)\b[^.]*|Two originals"
        + "|Do not record before|Serve before|signed in ink|Then record|record at once|in ink|payable to|NOT BEFORE [A-Z]",
        RegexOptions.CultureInvariant)]
    private static partial Regex Steps();
}
