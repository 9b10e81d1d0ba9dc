using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>Every day and every sum on a paper is one that the law library found on these very facts.</summary>
public sealed class PapersFollowTheLawTests
{
    // A direct contractor whose contract gives the owner a day to pay, with demands and payments as told.
    private static JobFile Billed(int? dueDays, params Entry[] entries) => Direct() with
    {
        Contract = Direct().Contract with { PaymentDueDays = dueDays },
        Entries = [new Furnished { Index = 0, On = DayFact.On(Day("2025-08-05")), Until = DayFact.On(Day("2025-09-26")), Amount = 84_250m },
            .. entries],
    };

    private static PaymentDemanded Demand(string on, decimal amount) => new() { Index = 1, On = DayFact.On(Day(on)), Amount = amount };

    /// <summary>
    /// Civ. Code § 8832: 35 days "after the date payment is due under the contract". 60 days after October 6, 2025 are December 5; 35 days
    /// later is January 9, 2026, so that the first day is January 10.
    /// </summary>
    [Theory]
    [InlineData("2026-01-09", true)]
    [InlineData("2026-01-10", false)]
    public void Section_8832_the_contract_s_day_governs_stopping_work(string asOf, bool early)
    {
        var outcome = Outcome("stop-work-notice", Billed(60, Demand("2025-10-06", 20_000m)), Day(asOf), PaperOptions.None);
        Assert.Equal(early, outcome is PacketOutcome.Refused refused && refused.Refusals.Any(r => r.Id == "too-early"));
        if (outcome is PacketOutcome.Made made)
        {
            Assert.True(made.Says("December 5, 2025"));
            Assert.True(made.Says("October 6, 2025"));
            Assert.DoesNotContain("In doubt", made.SheetText(), StringComparison.Ordinal);
        }
    }

    /// <summary>
    /// Civ. Code § 8832: a day that was told stands in for one that the file does not give: ten days after October 6 are October 16, the
    /// first day November 21.
    /// </summary>
    [Theory]
    [InlineData("2025-11-20", true)]
    [InlineData("2025-11-21", false)]
    public void Section_8832_a_due_day_that_is_told_counts_and_is_printed(string asOf, bool early)
    {
        var outcome = Outcome("stop-work-notice", Billed(null, Demand("2025-10-06", 20_000m)), Day(asOf),
            new PaperOptions { Day = Day("2025-10-16") });
        Assert.Equal(early, outcome is PacketOutcome.Refused);
        if (outcome is PacketOutcome.Made made)
            Assert.True(made.Says("October 16, 2025"));
    }

    [Fact]
    public void Section_8832_a_due_day_that_is_told_is_held_against_the_file_s()
    {
        var job = Billed(60, Demand("2025-10-06", 20_000m));
        var refused = Assert.IsType<PacketOutcome.Refused>(Outcome("stop-work-notice", job, Day("2026-01-20"),
            new PaperOptions { Day = Day("2025-12-04") }));
        var refusal = Assert.Single(refused.Refusals);
        Assert.Equal("due-day-differs", refusal.Id);
        Assert.Contains("December 5, 2025", refusal.There.ToString(), StringComparison.Ordinal);
        Assert.IsType<PacketOutcome.Made>(Outcome("stop-work-notice", job, Day("2026-01-20"),
            new PaperOptions { Day = Day("2025-12-05") }));
    }

    [Fact]
    public void Section_8832_an_unknown_due_day_is_a_blank_and_a_question()
    {
        var made = Assert.IsType<PacketOutcome.Made>(Outcome("stop-work-notice", Billed(null, Demand("2025-10-06", 20_000m)),
            Day("2026-01-20"), PaperOptions.None));
        Assert.Contains("Due on", made.SheetText(), StringComparison.Ordinal);
        Assert.False(made.Says("November 5, 2025"));
    }

    /// <summary>
    /// Civ. Code § 8832 asks for no demand where the contract sets the day: October 16 and 35 days are November 20, 2025.
    /// </summary>
    [Fact]
    public void Section_8832_no_demand_is_needed_where_the_contract_s_day_is_told()
    {
        PacketOutcome At(string asOf, decimal? amount, string? due) =>
            Outcome("stop-work-notice", Billed(null), Day(asOf), new PaperOptions { Amount = amount, Day = due is null ? null : Day(due) });
        Assert.Contains(Assert.IsType<PacketOutcome.Refused>(At("2026-01-20", 20_000m, null)).Refusals, r => r.Id == "no-demand");
        Assert.Contains(Assert.IsType<PacketOutcome.Refused>(At("2026-01-20", null, "2025-10-16")).Refusals, r => r.Id == "no-demand");
        Assert.Contains(Assert.IsType<PacketOutcome.Refused>(At("2025-11-20", 20_000m, "2025-10-16")).Refusals, r => r.Id == "too-early");
        Assert.Contains(Assert.IsType<PacketOutcome.Refused>(At("2025-11-21", 84_250.01m, "2025-10-16")).Refusals,
            r => r.Id == "more-than-owed");
        var made = Assert.IsType<PacketOutcome.Made>(At("2025-11-21", 20_000m, "2025-10-16"));
        Assert.Contains("$20,000.00", made.TextOf(), StringComparison.Ordinal);
        Assert.True(made.Says("October 16, 2025"));
        Assert.False(made.Says("was demanded"));
    }

    /// <summary>
    /// Civ. Code § 8830, "the amount owed": of 20,000.00 demanded on September 1 and 15,000.00 received, 5,000.00 is overdue on December
    /// 15; the 8,000.00 demanded on November 20 are not.
    /// </summary>
    [Fact]
    public void Section_8830_the_sum_is_what_is_overdue_and_not_the_last_bill()
    {
        var job = Billed(30, Demand("2025-09-01", 20_000m), new Paid { Index = 2, On = DayFact.On(Day("2025-10-20")), Amount = 15_000m },
            Demand("2025-11-20", 8_000m) with { Index = 3 });
        var made = Assert.IsType<PacketOutcome.Made>(Outcome("stop-work-notice", job, Day("2025-12-15"), PaperOptions.None));
        foreach (var text in new[] { made.TextOf(), made.TextOf(1) })
        {
            Assert.Contains("$5,000.00", text, StringComparison.Ordinal);
            Assert.DoesNotContain("8,000.00", text, StringComparison.Ordinal);
        }

        Assert.True(made.Says("September 1, 2025"));
        Assert.DoesNotContain("November 20", made.TextOf(), StringComparison.Ordinal);
    }

    /// <summary>Raising what was paid lowers the sum on the stop work notice, until nothing is overdue.</summary>
    [Theory]
    [InlineData(0, 20_000)]
    [InlineData(1, 19_999)]
    [InlineData(19_999, 1)]
    [InlineData(20_000, null)]
    public void Section_8830_what_was_paid_lowers_the_sum(int paid, int? overdue)
    {
        var job = Billed(30,
            [Demand("2025-09-01", 20_000m), .. paid == 0 ? []
            : (Entry[])[new Paid { Index = 2, On = DayFact.On(Day("2025-10-20")), Amount = paid }]]);
        var outcome = Outcome("stop-work-notice", job, Day("2025-12-15"), PaperOptions.None);
        if (overdue is { } left)
            Assert.Contains($" {PaperText.Dollars(left)}", Assert.IsType<PacketOutcome.Made>(outcome).TextOf(), StringComparison.Ordinal);
        else
            Assert.Contains(Assert.IsType<PacketOutcome.Refused>(outcome).Refusals, r => r.Id == "nothing-overdue");
    }

    /// <summary>Civ. Code § 8800(a), (d): the notice is for a "progress payment due"; retention falls due by § 8812.</summary>
    [Fact]
    public void Section_8800_retention_is_no_part_of_the_progress_payment_demanded_of_the_owner()
    {
        var held = Direct() with { Entries =
            [Direct().Entries[0], new Retained { Index = 1, On = DayFact.On(Day("2026-03-10")), Amount = 8_425m }] };
        var made = Assert.IsType<PacketOutcome.Made>(Outcome("payment-demand", held, Day("2026-04-01"), PaperOptions.None));
        Assert.Contains("Amount demanded $75,825.00", made.TextOf(), StringComparison.Ordinal);
        Assert.True(made.Says("Retention withheld, $8,425.00, which falls due under Civil Code section 8812"));
        Assert.IsType<PacketOutcome.Made>(Outcome("payment-demand", held, Day("2026-04-01"), new PaperOptions { Amount = 75_825m }));
        Assert.Contains(Assert.IsType<PacketOutcome.Refused>(Outcome("payment-demand", held, Day("2026-04-01"),
            new PaperOptions { Amount = 75_825.01m })).Refusals, r => r.Id == "more-than-reckoned");
        // To a hirer who is no owner the letter asks for all that is owed.
        var sub = Private().With(new Retained { Index = 4, On = DayFact.On(Day("2026-03-10")), Amount = 8_425m });
        Assert.Contains("Amount demanded $84,250.00",
            Assert.IsType<PacketOutcome.Made>(Outcome("payment-demand", sub, Day("2026-05-06"), PaperOptions.None)).TextOf(),
            StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code § 8182(a): "on or within 15 days after the date of completion". May 2, 2026 and 15 days are Sunday, May 17: plan on Friday
    /// the 15th; on Monday the 18th it can be argued, on Tuesday it is too late.
    /// </summary>
    [Theory]
    [InlineData("2026-05-15", true, false)]
    [InlineData("2026-05-18", true, true)]
    [InlineData("2026-05-19", false, false)]
    public void Section_8182_a_the_owner_s_fifteen_days(string asOf, bool made, bool warned)
    {
        var outcome = Outcome("notice-of-completion", Private(), Day(asOf),
            new PaperOptions { Day = Day("2026-05-02"), Words = "Fee simple" });
        Assert.Equal(made, outcome is PacketOutcome.Made);
        if (outcome is PacketOutcome.Made good)
        {
            Assert.Contains("plan on Friday, May 15, 2026", good.SheetText(), StringComparison.Ordinal);
            Assert.Equal(warned, good.SheetText().Contains("The fifteenth day, Sunday, May 17, 2026, is past", StringComparison.Ordinal));
        }
    }

    /// <summary>Civ. Code § 8180(a): completion is the first of its ways; a later contention does not move it.</summary>
    [Fact]
    public void Section_8180_a_the_first_completion_stands_in_the_notice()
    {
        var job = Private().With(new Completed { Index = 4, On = DayFact.On(Day("2026-05-04")), By = CompletionTheory.Actual });
        Assert.Contains("Date of completion May 1, 2026",
            Assert.IsType<PacketOutcome.Made>(Outcome("notice-of-completion", job, Day("2026-05-06"),
            new PaperOptions { Words = "Fee simple" })).TextOf(), StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code §§ 8182(c)(1), 8186: for one contract only, its contractor and its work; § 8102(a)(2): the other contractors too.
    /// </summary>
    [Fact]
    public void Section_8186_a_notice_for_one_contract_says_so()
    {
        var second = new Party { Id = "p8", Capacity = PartyCapacity.DirectContractor, Name = "Weir Paving, Inc.",
            Address = "9 Gravel Road, Davis, CA 95618" };
        var job = Private() with { Parties = [.. Private().Parties, second], Work = Private().Work with { SeveralDirectContracts = true } };
        var made = Assert.IsType<PacketOutcome.Made>(Outcome("notice-of-completion", job, Day("2026-05-06"),
            new PaperOptions { To = ["p8"], Words = "Fee simple" }));
        Assert.DoesNotContain("Notice is given that the work of improvement", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("the direct contract described in paragraphs 4 and 5, for a portion of the work of improvement", made.TextOf(),
            StringComparison.Ordinal);
        Assert.True(made.Says("Direct contractor under"));
        Assert.True(made.Says("Weir Paving, Inc."));
        Assert.True(made.Says("Work provided under that"));
        Assert.True(made.Says("Other direct contractors"));
        Assert.True(made.Says("Çelik & Ōta Builders, Inc."));
        Assert.Contains(Assert.IsType<PacketOutcome.Refused>(Outcome("notice-of-completion", job, Day("2026-05-06"),
            new PaperOptions { To = ["p1"], Words = "Fee simple" })).Refusals, r => r.Id == "not-one-contractor");
    }

    /// <summary>Civ. Code § 8102(a)(2): a claimant who is one of two direct contractors does not hide the other.</summary>
    [Fact]
    public void Section_8102_a_2_both_direct_contractors_are_named()
    {
        var other = new Party { Id = "p8", Capacity = PartyCapacity.DirectContractor, Name = "Weir Paving, Inc.",
            Address = "9 Gravel Road, Davis, CA 95618" };
        var job = Direct() with { Parties = [.. Direct().Parties, other] };
        JobFile[] jobs = [job, Direct()];
        foreach (var (each, both) in jobs.Zip([true, false]))
        {
            var text = Assert.IsType<PacketOutcome.Made>(Outcome("notice-of-completion", each, Day("2026-06-16"),
                new PaperOptions { Day = Day("2026-06-10"), Words = "Fee simple" })).TextOf();
            Assert.Contains("Direct contractor Quarrymen’s Supply Company, Inc.", text, StringComparison.Ordinal);
            Assert.Equal(both, text.Contains("Weir Paving, Inc.", StringComparison.Ordinal));
        }

        var own = Assert.IsType<PacketOutcome.Made>(Outcome("notice-of-completion", job, Day("2026-06-16"),
            new PaperOptions { Day = Day("2026-06-10"), Words = "Fee simple", To = ["claimant"] })).TextOf();
        Assert.Contains("Cut limestone", own, StringComparison.Ordinal);
        Assert.Contains("Weir Paving, Inc.", own, StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code § 8214: the notice may be filed with the recorder, who then mails word of a notice of completion or cessation; private
    /// work only.
    /// </summary>
    [Fact]
    public void Section_8214_the_preliminary_notice_may_be_filed_with_the_recorder()
    {
        Assert.Contains("file a copy with the county recorder", Make("preliminary-notice").SheetText(), StringComparison.Ordinal);
        Assert.DoesNotContain("file a copy with the county recorder", Make("public-preliminary-notice").SheetText(),
            StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code § 8204(a): the lender was told on 5 April 2026, so its notice reaches back to 16 March; the owner was told in time and
    /// holds for the whole.
    /// </summary>
    [Fact]
    public void Section_8204_a_a_lender_told_late_is_asked_to_hold_what_its_notice_reaches()
    {
        var job = Private();
        job = job with
        {
            Contract = job.Contract with { Price = null },
            Entries =
            [
                new Furnished { Index = 0, On = DayFact.On(Day("2026-02-02")), Until = DayFact.On(Day("2026-02-02")), Amount = 4_300m },
                new NoticeGiven { Index = 1, On = DayFact.On(Day("2026-02-10")), Notice = NoticeKind.Preliminary, To = ["p1", "p3"],
                    Manner = Manner.CertifiedMail, Article = "70121010000012345678" },
                new Furnished { Index = 2, On = DayFact.On(Day("2026-03-20")), Until = DayFact.On(Day("2026-03-20")), Amount = 2_130m },
                new NoticeGiven { Index = 3, On = DayFact.On(Day("2026-04-05")), Notice = NoticeKind.Preliminary, To = ["p4"],
                    Manner = Manner.CertifiedMail, Article = "70121010000012345685" },
                new Completed { Index = 4, On = DayFact.On(Day("2026-05-01")), By = CompletionTheory.Actual },
            ],
        };
        var outcome = Outcome("stop-payment-notice", job, Day("2026-05-06"), PaperOptions.None);
        var made = Assert.IsType<PacketOutcome.Made>(outcome);
        Assert.Matches(@"Amount claimed\s+\$6,430\.00", made.TextOf());
        Assert.Matches(@"Amount claimed\s+\$2,130\.00", made.TextOf(1));
    }
}
