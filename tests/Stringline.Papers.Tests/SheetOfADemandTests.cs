using Stringline.Law.Facts;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>What a demand for payment asks for, and what its sheet says to do with it.</summary>
public sealed class SheetOfADemandTests
{
    // Work that goes on after the day of the demand, besides what had ended by then.
    private static JobFile GoesOn(JobFile job) => job with
    {
        Contract = job.Contract with { Price = 104_250m },
        Entries =
        [
            .. job.Entries.Where(e => e is Furnished),
            new Furnished { Index = 9, On = DayFact.On(Day("2026-05-01")), Until = DayFact.On(Day("2026-05-29")), Amount = 20_000m },
        ],
    };

    /// <summary>Civ. Code § 8800(a): a demand is for payment that is due under the contract, not for work still to come.</summary>
    [Fact]
    public void Work_that_goes_on_is_left_out_of_the_demand_and_said_to_be()
    {
        var made = Make("payment-demand", GoesOn);
        Assert.Contains("Amount demanded $84,250.00", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("Due $84,250.00", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("Left out: $20,000.00 for work from May 1, 2026 through May 29, 2026", made.SheetText(), StringComparison.Ordinal);

        // Whoever knows what of it was provided says the amount, and is warned.
        var told = Make("payment-demand", GoesOn, o => o with { Amount = 90_000m });
        Assert.Contains("Amount demanded $90,000.00", told.TextOf(), StringComparison.Ordinal);
        Assert.Contains("part of it is still to be provided", told.SheetText(), StringComparison.Ordinal);

        // On its last day it is provided.
        Assert.Contains("Amount demanded $104,250.00", Make("payment-demand", GoesOn, asOf: Day("2026-05-29")).TextOf(),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Where_all_that_is_unpaid_goes_on_the_amount_is_asked_for()
    {
        JobFile Only(JobFile job) => job with { Entries = [.. job.Entries.Where(e => e is Furnished)] };
        Assert.Contains(Refusals("payment-demand", Only, asOf: Day("2026-03-02")), r => r.Id == "only-work-ahead"
            && r.Where.ToString() == "--amount");
    }

    /// <summary>Civ. Code §§ 8502(c), 9352(c): only for work provided through the day of the notice.</summary>
    [Theory]
    [InlineData("stop-payment-notice")]
    [InlineData("public-stop-payment-notice")]
    public void The_sheet_of_a_stop_payment_notice_says_that_work_goes_on(string id)
    {
        const string warned = "whole, though on March 26, 2026 part of it is still to be provided";
        JobFile Unfinished(JobFile job) => job with { Entries = [.. job.Entries.Where(e => e is not (FurnishingEnded or Completed))] };
        Assert.Contains(warned, Make(id, Unfinished, asOf: Day("2026-03-26")).SheetText(), StringComparison.Ordinal);
        Assert.DoesNotContain("still to be provided", Make(id).SheetText(), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8800(a): within 30 days after the notice, unless agreed otherwise in writing.</summary>
    [Theory]
    [InlineData("2026-05-20", true)]
    [InlineData("2026-06-04", true)]
    [InlineData("2026-06-05", false)]
    [InlineData(null, true)]
    public void A_day_sooner_than_thirty_is_said_to_be_a_request(string? by, bool request)
    {
        var sheet = Make("payment-demand", _ => Direct(), o => o with { Day = by is null ? null : Day(by) }).SheetText();
        Assert.Equal(request, sheet.Contains("That is a request only: the 30 days of § 8800 end on June 5, 2026 at the soonest",
            StringComparison.Ordinal));
    }

    /// <summary>A supplier hired by a contractor has no section; an owner's direct contractor has § 8800, a city's § 20104.50.</summary>
    [Fact]
    public void Only_the_sections_that_apply_are_cited()
    {
        var supplier = Make("payment-demand").SheetText();
        Assert.DoesNotContain("Pub. Contract Code", supplier, StringComparison.Ordinal);
        Assert.DoesNotContain("8800", supplier, StringComparison.Ordinal);
        var direct = Make("payment-demand", _ => Direct()).SheetText();
        Assert.Contains("as of May 6, 2026. Civ. Code §§ 8102, 8800.", direct, StringComparison.Ordinal);
        Assert.DoesNotContain("Pub. Contract Code", direct, StringComparison.Ordinal);
        var city = Make("payment-demand", _ => Withheld() with { Work = Withheld().Work with { Body = PublicBody.Local } }).SheetText();
        Assert.Contains("as of May 6, 2026. Pub. Contract Code § 20104.50.", city, StringComparison.Ordinal);
    }

    /// <summary>A release takes the lien and leaves the debt: the two papers state two sums (Civ. Code § 8134).</summary>
    [Fact]
    public void Where_two_papers_of_a_job_state_two_sums_each_sheet_says_why()
    {
        static JobFile Waived(JobFile job) => job.With(new Waived
        {
            Index = 30, On = DayFact.On(Day("2026-04-15")), Form = WaiverForm.UnconditionalProgress, Through = Day("2026-03-06"),
            Amount = 5_000m, PaymentCleared = Day("2026-04-14"),
        });
        foreach (var (id, remedy) in (ReadOnlySpan<(string, string)>)
            [("payment-demand", "A claim of lien"), ("stop-payment-notice", "A stop payment notice")])
        {
            var sheet = Make(id, Waived).SheetText();
            Assert.Contains($"{remedy} can state $", sheet, StringComparison.Ordinal);
            Assert.Contains("$84,250.00 is owed under the contract. What makes the difference: “Released by waiver,” $", sheet,
                StringComparison.Ordinal);
            Assert.DoesNotContain("What makes the difference", Make(id).SheetText(), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("payment-demand", "Sign in ink", "Send it to Łukasz Masonry, Inc.", "")]
    [InlineData("stop-payment-notice", "Sign and verify in ink", "Each numbered notice goes to its own addressee", "by the act-by day")]
    [InlineData("public-stop-payment-notice", "Sign and verify in ink", "Mail it or hand it over", "by the act-by day")]
    [InlineData("stop-work-notice", "Sign the notice of intent in ink", "Then sign the stop work notice in ink", "give it to the owner")]
    public void The_steps_say_to_sign_and_then_to_send(string id, params string[] inOrder)
    {
        var sheet = Make(id).SheetText();
        var at = sheet.IndexOf("What to do", StringComparison.Ordinal);
        foreach (var step in inOrder)
        {
            var next = sheet.IndexOf(step, at, StringComparison.Ordinal);
            Assert.True(next >= at, $"“{step}” is not next in:\n{sheet}");
            at = next;
        }
    }
}
