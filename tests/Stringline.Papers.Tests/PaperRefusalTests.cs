using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>What each paper refuses, and that it says where and what would be right.</summary>
public sealed class PaperRefusalTests
{
    private static void Refuses(string id, string refusal, Func<JobFile, JobFile>? job = null, Func<PaperOptions,
        PaperOptions>? options = null, string? asOf = null)
    {
        var refusals = Refusals(id, job, options, asOf is null ? null : Day(asOf));
        Assert.True(refusals.Any(r => r.Id == refusal), $"not {refusal}, but:\n{string.Join("\n", refusals)}");
        Assert.All(refusals, r => Assert.NotEmpty(r.Right.ToString()));
    }

    private static JobFile Without(JobFile job, PartyCapacity capacity) =>
        job with { Parties = [.. job.Parties.Where(p => p.Capacity != capacity)] };

    [Theory]
    [InlineData("preliminary-notice")]
    [InlineData("stop-payment-notice")]
    [InlineData("bond-notice")]
    [InlineData("stop-payment-release")]
    [InlineData("waiver-8132")]
    [InlineData("release")]
    public void A_claimant_without_address_signer_or_name_where_the_paper_needs_it(string id)
    {
        if (id is not ("waiver-8132" or "stop-payment-release"))
            Refuses(id, "claimant-address-missing", j => j with { Claimant = j.Claimant with { Address = null } });
        if (id != "waiver-8132")
            Refuses(id, "signer-missing", j => j with { Claimant = j.Claimant with { Signer = null } });
        if (id != "stop-payment-release")
            Refuses(id, "claimant-name-missing", j => j with { Claimant = j.Claimant with { Name = " " } });
    }

    /// <summary>Civ. Code § 8200(a): owner, contractor, lender; § 8108: an address for each.</summary>
    [Fact]
    public void A_preliminary_notice_without_those_to_whom_it_is_due()
    {
        Refuses("preliminary-notice", "recipient-missing", j => Without(j, PartyCapacity.DirectContractor));
        Refuses("preliminary-notice", "recipient-address-missing",
            j => j with { Parties = [.. j.Parties.Select(p => p.Id == "p4" ? p with { Address = null } : p)] });
        Refuses("preliminary-notice", "estimate-missing", j => j with { Contract = j.Contract with { Price = null } });
        Refuses("preliminary-notice", "work-missing", j => j with { Contract = j.Contract with { Work = null } });
        Refuses("preliminary-notice", "party-unknown", options: o => o with { To = ["p99"] });
    }

    /// <summary>Civ. Code § 8200(e)(1): a laborer gives none; § 9300(b): nor one hired by the direct contractor on public work.</summary>
    [Fact]
    public void A_preliminary_notice_that_nobody_is_due()
    {
        Refuses("preliminary-notice", "no-notice-due", j => j with { Claimant = j.Claimant with { Role = ClaimantRole.Laborer } });
        Refuses("public-preliminary-notice", "no-notice-due", j => j with { Claimant = j.Claimant with { HiredBy = "p3" } });
    }

    /// <summary>Civ. Code § 8520(a): a direct contractor gives none to the owner.</summary>
    [Fact]
    public void A_stop_payment_notice_of_a_direct_contractor_to_the_owner() =>
        Refuses("stop-payment-notice", "right-lost",
            _ => Private() with { Claimant = Private().Claimant with { Role = ClaimantRole.DirectContractor, HiredBy = "p1" } }, o =>
            o with { To = ["p1"] });

    [Fact]
    public void A_stop_payment_notice_too_late_for_nothing_or_to_the_wrong_holder()
    {
        Refuses("stop-payment-notice", "right-lost", asOf: "2026-12-01");
        Refuses("stop-payment-notice", "demand-not-positive",
            j => j.With(new Paid { Index = 4, On = DayFact.On(Day("2026-04-01")), Amount = 84_250m }));
        Refuses("stop-payment-notice", "wrong-holder", options: o => o with { To = ["p3"] });
        Refuses("stop-payment-notice", "bond-to-owner", options: o => o with { To = ["p1"], Bonded = true });
    }

    /// <summary>
    /// Civ. Code §§ 8200(a), 8508(a), 9300(a), (c): preliminary notice goes before a stop payment notice, and is a condition of its
    /// validity. A laborer, and one hired by the direct contractor on public work, owe none.
    /// </summary>
    [Theory]
    [InlineData("stop-payment-notice")]
    [InlineData("public-stop-payment-notice")]
    public void A_stop_payment_notice_before_the_preliminary_notice(string id)
    {
        static JobFile Unnoticed(JobFile job) =>
            job with { Entries =
            [.. job.Entries.Where(e => e is not NoticeGiven)
            .Append(new Furnished { Index = 9, On = DayFact.On(Day("2026-04-28")), Until = DayFact.On(Day("2026-04-28")), Amount = 1m })] };
        Refuses(id, "notice-first", Unnoticed);
        Assert.DoesNotContain("notice-first",
            Refusals(id, j => Unnoticed(j) with { Claimant = j.Claimant with { Role = ClaimantRole.Laborer, Address = null } })
            .Select(r => r.Id));
    }

    [Fact]
    public void A_public_stop_payment_notice_of_one_hired_by_the_direct_contractor_needs_no_notice_first() =>
        Assert.NotEmpty(Make("public-stop-payment-notice",
            j => j with { Claimant = j.Claimant with { HiredBy = "p3" },
            Entries = [.. j.Entries.Where(e => e is not NoticeGiven)] }).Files);

    /// <summary>Civ. Code § 9354(b): to the public entity and to nobody else.</summary>
    [Fact]
    public void A_public_stop_payment_notice_to_the_contractor() =>
        Refuses("public-stop-payment-notice", "wrong-holder", options: o => o with { To = ["p3"] });

    /// <summary>Civ. Code § 9100(b): a direct contractor has no stop payment notice on public work.</summary>
    [Fact]
    public void A_public_stop_payment_notice_of_a_direct_contractor() =>
        Refuses("public-stop-payment-notice", "right-lost",
            j => j with { Claimant = j.Claimant with { Role = ClaimantRole.DirectContractor, HiredBy = "c1" } });

    [Fact]
    public void A_release_of_a_stop_payment_notice_that_was_not_given_or_by_all_of_it()
    {
        Refuses("stop-payment-release", "no-stop-payment-notice", _ => Private());
        Refuses("stop-payment-release", "reduction-too-large", options: o => o with { Amount = 84_250m });
        Refuses("stop-payment-release", "amount-missing", _ => Private()
            .With(new StopPaymentGiven { Index = 4, On = DayFact.On(Day("2026-05-07")), To = ["p1"] }));
    }

    /// <summary>Civ. Code § 8612(b): 75 days after completion on May 1, 2026 end on July 15.</summary>
    [Fact]
    public void A_bond_notice_too_late_or_without_surety_or_principal()
    {
        Refuses("bond-notice", "right-lost", j => j with { Entries = [.. j.Entries.Where(e => e is not NoticeGiven)] }, asOf: "2026-07-20");
        Refuses("bond-notice", "surety-missing", j => Without(j, PartyCapacity.Surety));
        Refuses("bond-notice", "principal-missing", j => Without(j, PartyCapacity.DirectContractor));
    }

    [Theory]
    [InlineData("release")]
    [InlineData("partial-release")]
    [InlineData("notice-of-credit")]
    [InlineData("amended-claim")]
    [InlineData("release-demand")]
    [InlineData("notice-of-pendency")]
    public void A_paper_about_a_recorded_claim_without_one_or_without_its_number(string id)
    {
        Refuses(id, "no-claim-recorded", _ => Private());
        Refuses(id, "instrument-missing",
            j => j with { Entries = [.. j.Entries.Select(e => e is ClaimRecorded c ? c with { Instrument = null } : e)] });
    }

    [Fact]
    public void A_partial_release_of_no_part_or_of_all()
    {
        Refuses("partial-release", "part-missing", options: _ => PaperOptions.None);
        Refuses("partial-release", "reduction-too-large", options: o => o with { Amount = 84_250m });
    }

    [Fact]
    public void A_notice_of_credit_without_end_or_terms_or_with_an_end_gone_by()
    {
        Refuses("notice-of-credit", "until-missing", options: o => o with { Until = null });
        Refuses("notice-of-credit", "terms-missing", options: o => o with { Words = null });
        Refuses("notice-of-credit", "until-past", options: o => o with { Until = Day("2026-05-31") });
    }

    /// <summary>
    /// Civ. Code § 8480: only on a claim on which no action was commenced in time. May 20, 2026 and 90 days is August 18.
    /// </summary>
    [Fact]
    public void A_demand_for_release_while_the_time_to_sue_runs_or_after_suit()
    {
        Refuses("release-demand", "time-to-sue-runs", asOf: "2026-08-18");
        Refuses("release-demand", "action-filed", _ => Sued());
    }

    [Fact]
    public void A_notice_of_pendency_without_an_action_or_a_legal_description()
    {
        Refuses("notice-of-pendency", "no-action-filed", _ => Recorded());
        Refuses("notice-of-pendency", "legal-missing", j => j with { Work = j.Work with { Site = j.Work.Site with { Legal = null } } });
    }

    /// <summary>Civ. Code §§ 8830, 8832: a direct contractor, a written contract, 35 days after due, no dispute.</summary>
    [Fact]
    public void A_stop_work_notice_where_the_right_is_not_there()
    {
        Refuses("stop-work-notice", "not-direct-contractor",
            j => j with { Claimant = j.Claimant with { Role = ClaimantRole.Subcontractor } });
        Refuses("stop-work-notice", "not-written", j => j with { Contract = j.Contract with { Written = null } });
        Refuses("stop-work-notice", "too-early", asOf: "2026-05-10");
        Refuses("stop-work-notice", "disputed", j => j.With(new Disputed { Index = 2, On = DayFact.On(Day("2026-05-20")), Amount = 100m }));
        Refuses("stop-work-notice", "no-demand", j => j with { Entries = [j.Entries[0]] });
        Refuses("stop-work-notice", "nothing-overdue",
            j => j.With(new Paid { Index = 2, On = DayFact.On(Day("2026-04-20")), Amount = 40_000m }));
        Refuses("stop-work-notice", "more-than-overdue", options: o => o with { Amount = 40_000.01m });
    }

    [Fact]
    public void A_demand_for_more_than_the_reckoning_shows() =>
        Refuses("payment-demand", "more-than-reckoned", options: o => o with { Amount = 84_250.01m });

    /// <summary>
    /// Civ. Code § 8182(a), (d): on or within 15 days after completion on May 1, 2026, which ends on May 16, a Saturday, and with the roll
    /// on Monday the 18th; §§ 8102(a)(2), 8182(b): with the contractor's name.
    /// </summary>
    [Fact]
    public void A_notice_of_completion_too_early_too_late_or_without_its_contractor()
    {
        Refuses("notice-of-completion", "not-complete", options: o => o with { Day = Day("2026-05-07") });
        Refuses("notice-of-completion", "too-late", asOf: "2026-05-19");
        Make("notice-of-completion", asOf: Day("2026-05-16"));
        Refuses("notice-of-completion", "contractor-missing", j => Without(j, PartyCapacity.DirectContractor));
        Refuses("notice-of-completion", "completion-missing", j => j with { Entries = [.. j.Entries.Where(e => e is not Completed)] });
    }

    [Fact]
    public void A_proof_of_notice_leaves_what_only_the_server_knows_as_named_blanks()
    {
        var made = Make("proof-of-notice");
        Assert.Contains("Fill in by hand, in ink", made.SheetText(), StringComparison.Ordinal);
        Assert.Contains("Given by (name)", made.SheetText(), StringComparison.Ordinal);
        Assert.DoesNotContain("the box of the manner used", made.SheetText(), StringComparison.Ordinal);
    }
}
