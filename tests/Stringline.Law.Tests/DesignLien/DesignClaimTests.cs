using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.DesignLien;

/// <summary>The recorded design lien: its amount, its action, its end and its release.</summary>
public sealed class DesignClaimTests
{
    // Of the lien law's parts on notice, waiver and amount none applies (Civ. Code § 8308(a)).
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Proves("Civ. Code § 8302(b)")]
    [Proves("Civ. Code § 8308")]
    public void A_preliminary_notice_that_was_not_given_takes_nothing_from_it(bool noticed)
    {
        var job = Architect.Job().Lender().PaymentDemanded("2025-10-20", 24_000m).WillNotCommence("2025-09-22");
        var right = (noticed ? job.Notice("2025-03-05", Manner.CertifiedMail, "bank") : job).On("2025-12-01").Get("design-lien.right");
        Assert.Equal(24_000m, right.Amount);
        Assert.Equal(Standing.Open, right.Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8302(b)")]
    public void It_is_the_lesser_of_fee_and_value_less_deposits_and_payments_and_unknown_where_nothing_is_priced()
    {
        Assert.Equal(19_000m, Architect.Job().Paid("2025-03-01", 5_000m).On("2025-12-01").Get("design-lien.right").Amount);
        Assert.Equal(20_000m, Architect.Job().Contract(c => c with { ReasonableValue = 20_000m }).On("2025-12-01")
            .Get("design-lien.right").Amount);
        Assert.Equal(24_000m, Architect.Job().Waived("2025-07-01", WaiverForm.UnconditionalFinal).On("2025-12-01")
            .Get("design-lien.right").Amount);
        var unknown = new JobBuilder().Role(ClaimantRole.DesignProfessional, "owner").Furnished("2025-03-05").On("2025-12-01")
            .Get("design-lien.right");
        Assert.Null(unknown.Amount);
        Assert.True(unknown.Asks("(furnished.amount)"));
    }

    // Recorded 7 November 2025 while services went on until the 28th: the action is due by Thursday 5 February 2026, and no mechanics lien
    // is spoken of.
    [Theory]
    [InlineData("2025-12-01", Standing.Open)]
    [InlineData("2026-02-05", Standing.Open)]
    [InlineData("2026-02-06", Standing.Lost)]
    [Proves("Civ. Code § 8306(b)(2)")]
    public void It_may_be_recorded_while_services_go_on_and_is_sued_on_in_ninety_days(string asOf, Standing expected)
    {
        var on = Architect.Job(until: "2025-11-28").DefaultNotice("2025-10-20", 24_000m).WillNotCommence("2025-09-22")
            .Design("2025-11-07", 20_000m).On(asOf);
        var action = on.Get("design-lien.enforcement-last-day");
        Assert.Equal(["2026-02-05"], action.DaysOf());
        Assert.Equal("2026-02-05", action.Plan());
        Assert.Equal(expected, action.Standing);
        Assert.Equal(Standing.NotYet, on.Get("enforcement.last-day").Standing);
        Assert.Null(on.Get("enforcement.last-day").ActBy);
    }

    [Fact]
    [Proves("Civ. Code § 8306(b)(1)")]
    public void Dead_by_commencement_it_has_no_day_to_sue()
    {
        var on = Architect.Job("2025-12-17").PaymentDemanded("2025-10-20", 24_000m).Design("2025-11-07").On("2025-12-20");
        Assert.Null(on.Find("design-lien.enforcement-last-day"));
        Assert.Null(on.Get("enforcement.last-day").ActBy);
        Assert.Equal(Standing.Lost, on.Get("design-lien.right").Standing);
    }

    // Recorded 20 October 2025: day 90 is Sunday 18 January 2026, the Monday a holiday, so by the roll Tuesday the 20th. Known 22
    // September: to record anew by 21 December.
    [Theory]
    [InlineData("2025-12-20", Standing.Kept, Standing.Open)]
    [InlineData("2026-01-16", Standing.Kept, Standing.Open)]
    [InlineData("2026-01-20", Standing.Kept, Standing.InDoubt)]
    [InlineData("2026-01-21", Standing.Lost, Standing.Lost)]
    [InlineData("2026-02-02", Standing.Lost, Standing.Lost)]
    [Proves("Civ. Code § 8306(b)(2)")]
    [Proves("Civ. Code § 8312")]
    public void Expired_by_its_ninety_days_it_is_lost_with_the_time_to_record_anew(string asOf, Standing toRecord, Standing right)
    {
        var on = Architect.Job().DefaultNotice("2025-09-29", 24_000m).WillNotCommence("2025-09-22").Design("2025-10-20").On(asOf);
        Assert.Equal(toRecord, on.Get("design-lien.last-day").Standing);
        Assert.Equal(right, on.Get("design-lien.right").Standing);
        Assert.Equal(right, on.Get("design-lien.enforcement-last-day").Standing);
    }

    // Known only since 1 December: after the claim of 20 October expired another can be recorded by 1 March 2026, a Sunday.
    [Fact]
    [Proves("Civ. Code § 8306(b)(2)")]
    [Proves("Civ. Code § 8312")]
    public void Expired_while_the_time_to_record_runs_it_is_recorded_anew()
    {
        var on = Architect.Job().DefaultNotice("2025-09-29", 24_000m).WillNotCommence("2025-12-01").Design("2025-10-20").On("2026-02-02");
        Assert.Equal(Standing.Open, on.Get("design-lien.last-day").Standing);
        Assert.Equal("2026-02-27", on.Get("design-lien.last-day").Plan());
        Assert.Equal(Standing.Open, on.Get("design-lien.right").Standing);
        Assert.True(on.Get("design-lien.right").Says("expired 90 days after it"));
    }

    [Theory]
    [InlineData("2026-02-05", Standing.Kept)]
    [InlineData("2026-02-06", Standing.Lost)]
    [Proves("Civ. Code § 8306(b)(2)")]
    [Proves("Civ. Code § 8308")]
    public void An_action_in_time_keeps_it_and_has_its_own_rows(string filed, Standing expected)
    {
        var on = Architect.Job().DefaultNotice("2025-10-20", 24_000m).Design("2025-11-07").ActionFiled(filed).On("2026-02-10");
        Assert.Equal(expected, on.Get("design-lien.enforcement-last-day").Standing);
        Assert.Equal(expected == Standing.Kept, on.Find("design-lien.lis-pendens.last-day") is not null);
        Assert.Null(on.Find("lis-pendens.last-day"));
        Assert.Equal(expected == Standing.Kept,
            on.Next.Any(n => n.Finding == "design-lien.lis-pendens.last-day" && n.Do == "Record the notice of pendency of action"));
        Assert.Equal(30_000m, on.Get("design-lien.release-bond.amount").Amount);
    }

    // Credit until 30 June 2026: planned on the 90 days, 28 September shown beside.
    [Theory]
    [InlineData("2026-02-05", Standing.Open)]
    [InlineData("2026-02-06", Standing.InDoubt)]
    [InlineData("2026-09-28", Standing.InDoubt)]
    [InlineData("2026-09-29", Standing.Lost)]
    [Proves("Civ. Code § 8306(b)(2)")]
    public void A_credit_is_an_argument_and_no_plan(string asOf, Standing expected)
    {
        var action = Architect.Job().DefaultNotice("2025-10-20", 24_000m).Design("2025-11-07").CreditRecorded("2025-12-01", "2026-06-30")
            .On(asOf).Get("design-lien.enforcement-last-day");
        Assert.Equal(["2026-02-05", "2026-09-28"], action.DaysOf());
        Assert.Equal("2026-02-05", action.Plan());
        Assert.Equal(expected, action.Standing);
    }

    [Theory]
    [InlineData("2025-11-06", Standing.Lost)]
    [InlineData("2025-11-07", Standing.InDoubt)]
    [InlineData("2025-11-08", Standing.Open)]
    [Proves("Civ. Code § 8302(a)")]
    public void The_landowner_who_contracted_owns_the_site_when_it_is_recorded(string sold, Standing expected)
    {
        var job = Architect.Job().DefaultNotice("2025-10-20", 24_000m).PartyWith("owner", p => p with { SoldOn = JobBuilder.Day(sold) });
        Assert.Equal(expected, job.Design("2025-11-07").On("2025-12-01").Get("design-lien.right").Standing);
    }

    [Theory]
    [InlineData("2025-11-30", Standing.Open)]
    [InlineData("2025-12-01", Standing.Lost)]
    [Proves("Civ. Code § 8302(a)")]
    public void After_the_sale_none_can_be_recorded(string asOf, Standing expected) =>
        Assert.Equal(expected, Architect.Job().PartyWith("owner", p => p with { SoldOn = JobBuilder.Day("2025-12-01") }).On(asOf)
            .Get("design-lien.right").Standing);

    [Theory]
    [InlineData(24_000, "Record the full satisfaction", "a full satisfaction")]
    [InlineData(1_000, "Record the partial satisfaction", "a partial satisfaction")]
    [Proves("Civ. Code § 8306(c)")]
    public void Paid_in_part_or_in_full_its_satisfaction_and_release_shall_be_recorded(int paid, string title, string words)
    {
        var on = Architect.Job().DefaultNotice("2025-10-20", 24_000m).Design("2025-11-07").Paid("2025-12-08", paid).On("2025-12-10");
        var release = on.Get("design-lien.release");
        Assert.StartsWith(title, release.Title, StringComparison.Ordinal);
        Assert.True(release.Says(words));
        Assert.Equal(paid, release.Amount);
        Assert.Equal("Civ. Code § 8306(c)", release.Why[0].Section);
        Assert.Null(on.Find("release.when-paid"));
        Assert.Null(on.Find("release.partial"));
        Assert.Null(Architect.Job().DefaultNotice("2025-10-20", 24_000m).Paid("2025-11-01", paid).Design("2025-11-07", 24_000m - paid)
            .On("2025-12-10").Find("design-lien.release"));
    }

    [Theory]
    [InlineData(null)]
    [InlineData(false)]
    [InlineData(true)]
    [Proves("Civ. Code § 8306(c)")]
    public void Once_it_is_released_nothing_more_is_done_on_it(bool? satisfied)
    {
        var on = Architect.Job().DefaultNotice("2025-10-20", 24_000m).Design("2025-11-07").Paid("2025-12-08", 24_000m)
            .ReleaseRecorded("2025-12-10", satisfied).On("2025-12-12");
        Assert.Null(on.Find("design-lien.enforcement-last-day"));
        Assert.Null(on.Find("design-lien.release"));
    }

    // Recorded on 1 October 2025, its 90 days end on 30 December. A suit in a small claims court may be none (Code Civ. Proc. § 116.220):
    // while the time to record runs, or no end of it is known, another claim can be recorded and nothing is kept for sure.
    [Theory]
    [InlineData(false, "2025-12-30", Standing.Kept)]
    [InlineData(false, "2026-01-05", Standing.InDoubt)]
    [InlineData(true, "2026-01-05", Standing.Kept)]
    [Proves("Civ. Code § 8306(b)(2)")]
    public void A_claim_that_may_have_expired_is_not_kept_while_another_may_follow(bool inCourtOfRecord, string asOf, Standing expected)
    {
        var job = Architect.Job().DefaultNotice("2025-09-15", 24_000m, true, "owner").Design("2025-10-01")
            .ActionOn("2025-11-20", ActionOn.Lien, "design");
        if (!inCourtOfRecord)
            job.Which(e => (ActionFiled)e with { SmallClaims = true });
        Assert.Equal(expected, job.On(asOf).Get("design-lien.last-day").Standing);
    }
}
