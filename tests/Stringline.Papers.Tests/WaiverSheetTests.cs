using Stringline.Law.Facts;
using UglyToad.PdfPig;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>The sheets of the four waivers say one thing each, and only what the form has (Civ. Code §§ 8132-8138).</summary>
public sealed class WaiverSheetTests
{
    /// <summary>Civ. Code § 8138: the form states payment in full; where the file shows a sum open, that is what is wrong.</summary>
    [Fact]
    public void An_unconditional_final_form_over_an_open_sum_says_that_the_file_does_not_show_it_paid()
    {
        var open = Make("waiver-8138").SheetText();
        Assert.Contains("The form states that you were paid in full; the file does not show it", open, StringComparison.Ordinal);
        Assert.DoesNotContain("No payment is named", open, StringComparison.Ordinal);
        var paid = Make("waiver-8138", job => job.With(new Paid { Index = 50, On = DayFact.On(Day("2026-05-05")), Amount = 84_250m }),
            o => o with { Releases = 0m }).SheetText();
        Assert.DoesNotContain("the file does not show it", paid, StringComparison.Ordinal);
    }

    /// <summary>A check is described in the conditional forms only, and § 8138 has no line for an amount.</summary>
    [Theory]
    [InlineData("waiver-8132", true, true)]
    [InlineData("waiver-8134", false, true)]
    [InlineData("waiver-8136", true, true)]
    [InlineData("waiver-8138", false, false)]
    public void Only_what_the_form_has_is_compared_and_entered(string id, bool check, bool amount)
    {
        var sheet = Make(id).SheetText();
        Assert.Equal(check, sheet.Contains("every filled-in line with the check", StringComparison.Ordinal));
        var entered = sheet[sheet.IndexOf("Enter a fact", StringComparison.Ordinal)..];
        Assert.Equal(amount, entered[..entered.IndexOf('.', entered.IndexOf("section", StringComparison.Ordinal))]
            .Contains("amount", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1_500, "It keeps nothing but the disputed extras written on it, $1,500.00")]
    [InlineData(null, "It keeps nothing: no disputed extra is written on it")]
    public void A_final_form_keeps_what_is_written_on_it_and_says_so_once(int? disputed, string words)
    {
        var sheet = Make("waiver-8138", options: o => o with { Disputed = disputed, Releases = 84_250m - (disputed ?? 0) }).SheetText();
        Assert.Contains(words, sheet, StringComparison.Ordinal);
        Assert.Equal(disputed is null, !sheet.Contains("but the disputed extras", StringComparison.Ordinal));
    }

    /// <summary>Civ. Code § 8132, exception (3).</summary>
    [Fact]
    public void Earlier_payments_are_kept_only_where_they_are_listed()
    {
        Assert.DoesNotContain("listed under (3)", Make("waiver-8132").SheetText(), StringComparison.Ordinal);
        var listed = Make("waiver-8132", job => job.With(new Waived
        {
            Index = 50, On = DayFact.On(Day("2026-03-10")), Form = WaiverForm.ConditionalProgress, Through = Day("2026-03-01"),
            Amount = 4_000m,
        }), o => o with { Releases = 80_250m });
        Assert.Contains("listed under (3)", listed.SheetText(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-04-12", "Sunday, April 12, 2026", true)]
    [InlineData("2026-04-15", "Wednesday, April 15, 2026", false)]
    public void A_payment_that_cleared_on_a_weekend_is_asked_about(string on, string day, bool asked)
    {
        var sheet = string.Join(' ', Make("waiver-8134", options: o => o with { PaymentCleared = Day(on) }).SheetText().Split('\n'));
        Assert.Contains(day, sheet, StringComparison.Ordinal);
        Assert.Equal(asked, sheet.Contains("Is that right?", StringComparison.Ordinal));
    }

    /// <summary>A span over the through date is released by days; the rest is in doubt, for a reason that is told.</summary>
    [Fact]
    public void A_doubt_of_a_waiver_comes_with_its_reason()
    {
        var said = Refusals("waiver-8132", options: o => o with { Through = Day("2026-03-06"), Releases = null })
            .Single(r => r.Id == "release-not-typed").There.ToString();
        Assert.Matches(@"more is released with it is in doubt: some of the work was provided over days on both sides", said);
    }

    /// <summary>Whatever was filled in is in one type, the sign of dollars with it; the statute's words are not.</summary>
    [Theory]
    [InlineData("waiver-8132", "$12,000.50")]
    [InlineData("waiver-8134", "$12,000.50")]
    [InlineData("waiver-8136", "$12,000.50")]
    public void Filled_in_sums_are_bold_with_their_sign(string id, string sum)
    {
        using var pdf = PdfDocument.Open(Make(id, options: o => o with { Amount = 12_000.50m, Releases = o.Releases }).Files[0].Bytes
            .ToArray());
        var letters = pdf.GetPages().SelectMany(p => p.Letters).Where(l => l.Value.Trim().Length > 0).ToList();
        var text = string.Concat(letters.Select(l => l.Value));
        var at = text.IndexOf(sum, StringComparison.Ordinal);
        Assert.True(at > 0, text);
        Assert.All(letters.GetRange(at, sum.Length), l => Assert.Contains("Bold", l.FontName, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("Bold", letters[at - 1].FontName, StringComparison.OrdinalIgnoreCase);
    }
}
