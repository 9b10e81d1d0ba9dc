using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PreliminaryNotice;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>Each remedy has its own limits and its own sections; the debt has the contract's only.</summary>
public sealed class AmountsByRemedyTests
{
    private static JobBuilder Private() => new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..");

    private static JobBuilder Direct() =>
        new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").NoParty("direct").Licensed("2012-06-01..");

    private static IEnumerable<string> Sections(Waterfall amount) => amount.Steps.Select(s => s.Why.Section).Distinct();

    // A notice of 8 October reaches back to 18 September.
    [Fact]
    [Proves("Civ. Code § 3302")]
    [Proves("Civ. Code § 8502(c)")]
    [Proves("Civ. Code § 8204(a)")]
    public void A_late_preliminary_notice_cuts_lien_and_stop_payment_notice_and_not_the_debt()
    {
        var job = Private().Furnished("2025-08-05", 3_000m).Furnished("2025-09-22", 3_430m).Notice("2025-10-08").On("2025-12-01");
        Assert.Equal(3_430m, job.Amount.Demand);
        Assert.Equal(3_430m, job.AmountOf(Remedy.StopPaymentNotice)!.Demand);
        Assert.Equal(["Civ. Code § 8502(c)", "Civ. Code § 8204(a)"], Sections(job.AmountOf(Remedy.StopPaymentNotice)!));
        Assert.Equal(6_430m, job.Owed.Demand);
        Assert.Equal(["agreed-price 6430.00"], job.Owed.Lines());
        Assert.Equal(["Civ. Code § 3302"], Sections(job.Owed));
        // By the road of the preliminary notice the bond reaches no further than the notice does (Civ. Code § 8612); by its own it reaches
        // all.
        var facts = Private().Furnished("2025-08-05", 3_000m).Furnished("2025-09-22", 3_430m).Notice("2025-10-08").FactsOn("2025-12-01");
        var byNotice =
            Demand.Of(facts, PreliminaryNoticeDays.ReachOf(facts, Stringline.Law.Counting.OpenDays.Statutory), Remedy.PaymentBond);
        Assert.Equal(3_430m, byNotice.Demand);
        Assert.Equal(["Civ. Code § 8606(a)", "Civ. Code § 8204(a)"], Sections(byNotice));
        Assert.Equal(6_430m, job.AmountOf(Remedy.PaymentBond)!.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 3302")]
    public void A_statutory_release_ends_the_lien_and_not_the_debt()
    {
        var job = Direct().Furnished("2025-08-05", 10_000m)
            .Waived("2025-09-02", WaiverForm.ConditionalProgress, "2025-08-31", cleared: "2025-09-10")
            .Paid("2025-09-09", 6_000m).Furnished("2025-10-05", 5_000m).On("2025-12-01");
        Assert.Equal(5_000m, job.Amount.Demand);
        Assert.Equal(9_000m, job.Owed.Demand);
        Assert.Equal(4_000m,
            Assert.Single(job.Find("amount")!.Questions, q => q.Text.Contains("given up by agreement", StringComparison.Ordinal)).Dollars);
    }

    [Fact]
    [Proves("Civ. Code § 3302")]
    public void A_lender_who_never_got_notice_takes_nothing_off_the_debt() =>
        Assert.Equal(10_000m, Direct().Lender().Furnished("2025-08-05", 10_000m).On("2025-12-01").Owed.Demand);

    [Fact]
    [Proves("Civ. Code § 8430(a)(1)")]
    [Proves("Civ. Code § 8502(c)")]
    [Proves("Civ. Code § 8606(a)")]
    public void The_reasonable_value_limits_the_lien_alone()
    {
        var job = Private().Price(51_000m).Contract(c => c with { ReasonableValue = 40_000m }).Notice("2025-08-05")
            .Furnished("2025-08-05", 51_000m).On("2025-12-01");
        Assert.Equal(40_000m, job.AmountOf(Remedy.Lien)!.Demand);
        Assert.Equal(51_000m, job.AmountOf(Remedy.StopPaymentNotice)!.Demand);
        Assert.Equal(51_000m, job.AmountOf(Remedy.PaymentBond)!.Demand);
        Assert.Equal(["Civ. Code § 8606(a)"], Sections(job.AmountOf(Remedy.PaymentBond)!));
        Assert.Equal(51_000m, job.Owed.Demand);
        Assert.Equal(51_000m, job.Find("stop-payment-notice.amount")!.Amount);
    }

    // Furnished from 5 August to 16 September; the notice of 30 September reaches back to 10 September.
    [Fact]
    [Proves("Civ. Code § 9352(c)")]
    [Proves("Civ. Code § 9304")]
    [Proves("Civ. Code § 9554(c)")]
    public void On_public_work_the_notice_reaches_back_twenty_days_and_the_bond_reaches_all()
    {
        var job = new JobBuilder().PublicWork().Furnished("2025-08-05", 17_320m, until: "2025-09-09").Furnished("2025-09-16", 1_290m)
            .Ended("2025-09-16")
            .Notice("2025-09-30", Manner.CertifiedMail, "city", "direct").Completed("2025-10-22", CompletionTheory.Acceptance);
        var answer = job.On("2025-12-01");
        Assert.Equal(1_290m, answer.Amount.Demand);
        Assert.Equal(Remedy.StopPaymentNotice, answer.Amount.Remedy);
        Assert.Equal(["Civ. Code § 9352(c)", "Civ. Code § 9304"], Sections(answer.Amount));
        Assert.Equal(18_610m, answer.AmountOf(Remedy.PaymentBond)!.Demand);
        Assert.Equal(["Civ. Code § 9554(c)"], Sections(answer.AmountOf(Remedy.PaymentBond)!));
        Assert.Equal(18_610m, answer.Owed.Demand);
        Assert.Null(answer.AmountOf(Remedy.Lien));
        Assert.Null(answer.AmountOf(Remedy.FederalBond));
        Assert.Null(answer.AmountOf(Remedy.DesignLien));
        // By the road of the preliminary notice the bond reaches no further than the notice does.
        var facts = job.FactsOn("2025-12-01");
        var byNotice = Demand.Of(facts, Stringline.Law.PreliminaryNotice.PublicNotice.ReachOf(facts), Remedy.PaymentBond);
        Assert.Equal(1_290m, byNotice.Demand);
        Assert.Equal(["Civ. Code § 9554(c)", "Civ. Code § 9304"], Sections(byNotice));
    }

    [Fact]
    [Proves("Civ. Code § 3302")]
    public void A_direct_contractor_of_a_public_job_has_the_debt_alone()
    {
        var job = new JobBuilder().PublicWork().Role(ClaimantRole.DirectContractor, "city").NoParty("direct").Price(88_000m)
            .Furnished("2025-08-05", 88_000m).On("2025-12-01");
        Assert.Equal(88_000m, job.Owed.Demand);
        Assert.Equal(88_000m, job.Amount.Demand);
        Assert.Equal(Remedy.Debt, job.Amount.Remedy);
        Assert.Null(job.AmountOf(Remedy.StopPaymentNotice));
        Assert.Null(job.AmountOf(Remedy.PaymentBond));
    }

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    public void The_federal_bond_has_no_look_back_and_no_section_of_the_Civil_Code()
    {
        var job = new JobBuilder().PublicWork().Work(w => w with { Kind = WorkKind.Federal }).Price(100m).Changed("2025-09-01", 20m)
            .Furnished("2025-08-05", 64m).Furnished("2025-09-30", 21.50m).Charged("2025-10-01", 5m, ChargeKind.Delay)
            .Credited("2025-10-02", 1m).Paid("2025-10-06", 10m).On("2025-12-01");
        Assert.Equal(["agreed-price 100.00", "changes 20.00", "not-furnished -34.50", "paid -10.00", "credited -1.00",
            "charges-left-out 0.00"], job.Amount.Lines());
        Assert.Equal(74.50m, job.Amount.Demand);
        Assert.Equal(Remedy.FederalBond, job.Amount.Remedy);
        Assert.Equal(["40 U.S.C. § 3133(b)(1)"], Sections(job.Amount));
        Assert.All(job.Amount.Steps.SelectMany(s => s.Why.Children), c =>
            Assert.StartsWith("40 U.S.C.", c.Section, StringComparison.Ordinal));
        Assert.Equal(74.50m, job.Owed.Demand);
        Assert.Equal(["40 U.S.C. § 3133(b)(1)"], Sections(job.Owed));
        Assert.Null(job.AmountOf(Remedy.PaymentBond));
    }

    [Fact]
    [Proves("41 U.S.C. § 7103")]
    public void The_prime_contractor_of_a_federal_job_has_its_claim_against_the_United_States_alone()
    {
        var job = new JobBuilder().PublicWork().Work(w => w with { Kind = WorkKind.Federal }).Role(ClaimantRole.DirectContractor, "city")
            .Furnished("2025-08-05", 64m).On("2025-12-01");
        Assert.Equal((64m, Remedy.Debt), (job.Amount.Demand, job.Amount.Remedy));
        Assert.Equal(["41 U.S.C. § 7103"], Sections(job.Amount));
        Assert.Null(job.AmountOf(Remedy.FederalBond));
    }

    // Neither the preliminary notice nor the waiver forms belong to the chapter of the design professional's lien (Civ. Code § 8308(a)).
    [Fact]
    [Proves("Civ. Code § 8302(b)")]
    public void The_design_professionals_lien_is_the_lesser_of_fee_and_value_less_every_payment()
    {
        static JobBuilder Job() => new JobBuilder().Role(ClaimantRole.DesignProfessional, "owner").NoParty("direct").Lender().Price(24_000m)
            .Furnished("2025-03-05", 24_000m, until: "2025-06-30");
        var job = Job().WillNotCommence("2025-09-22").On("2025-12-01");
        // While nobody says that the work commenced a notice still covers all design services (Civ. Code § 8204(b)).
        Assert.Equal(24_000m, job.AmountOf(Remedy.Lien)!.Demand);
        Assert.Equal(0m, Job().Role(ClaimantRole.Supplier, "owner").Ended("2025-06-30").On("2025-12-01").AmountOf(Remedy.Lien)!.Demand);
        Assert.Equal(24_000m, job.AmountOf(Remedy.DesignLien)!.Demand);
        Assert.Equal(["Civ. Code § 8302(b)"], Sections(job.AmountOf(Remedy.DesignLien)!));
        Assert.Equal(24_000m, job.Find("design-lien.right")!.Amount);
        Assert.Equal(20_500m, Job().Contract(c => c with { ReasonableValue = 21_000m }).Paid("2025-03-01", 500m).On("2025-12-01")
            .AmountOf(Remedy.DesignLien)!.Demand);
        Assert.Equal(24_000m, Job().Waived("2025-07-01", WaiverForm.UnconditionalFinal).On("2025-12-01")
            .AmountOf(Remedy.DesignLien)!.Demand);
        Assert.Null(Private().On("2025-12-01").AmountOf(Remedy.DesignLien));
    }

    // The forms waive "lien, stop payment notice, and payment bond rights" (Civ. Code § 8134), on public work too (§ 8120); the debt they
    // leave.
    [Theory]
    [InlineData(WorkKind.Private, Remedy.Lien, 5_000)]
    [InlineData(WorkKind.Private, Remedy.StopPaymentNotice, 5_000)]
    [InlineData(WorkKind.Private, Remedy.PaymentBond, 5_000)]
    [InlineData(WorkKind.Private, Remedy.Debt, 15_000)]
    [InlineData(WorkKind.Public, Remedy.StopPaymentNotice, 5_000)]
    [InlineData(WorkKind.Public, Remedy.PaymentBond, 5_000)]
    [InlineData(WorkKind.Public, Remedy.Debt, 15_000)]
    [InlineData(WorkKind.Federal, Remedy.FederalBond, 5_000)]
    [InlineData(WorkKind.Federal, Remedy.Debt, 15_000)]
    [Proves("Civ. Code § 8134")]
    public void A_release_takes_from_every_remedy_and_not_from_the_debt(WorkKind kind, Remedy remedy, int demand)
    {
        var job = kind == WorkKind.Private
            ? Private().Notice("2025-08-05")
            : new JobBuilder().PublicWork().Role(ClaimantRole.Subcontractor).Work(w => w with { Kind = kind })
            .Notice("2025-08-05", Manner.CertifiedMail, "city", "direct");
        var amount = job.Furnished("2025-08-05", 10_000m).Furnished("2025-10-05", 5_000m)
            .Waived("2025-09-02", WaiverForm.UnconditionalProgress, "2025-08-31").On("2025-12-01").AmountOf(remedy)!;
        Assert.Equal((decimal)demand, amount.Demand);
        Assert.Equal(demand - 15_000m, amount.Step("waived"));
        Assert.Equal(remedy, amount.Remedy);
    }

    // Bus. & Prof. Code § 7031(a): never licensed for the work of 5 August, nothing is recovered for it; so nothing is in doubt or asked
    // either.
    [Theory]
    [InlineData(6_430.00, 0.00, true)]
    [InlineData(6_430.00, 6_429.50, true)]
    [InlineData(6_430.00, 6_430.00, false)] // nothing is owed that could be barred
    [InlineData(null, 0.00, true)] // nor is it known what is
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void Without_a_license_nothing_is_recovered_and_nothing_is_asked(double? value, double paid, bool barred)
    {
        var job = new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2025-09-01..").Notice("2025-08-14")
            .Furnished("2025-08-05", (decimal?)value);
        if (paid > 0)
            job.Paid("2025-09-10", (decimal)paid);
        var answer = job.On("2025-12-01");
        foreach (var remedy in (Remedy[])[Remedy.Lien, Remedy.StopPaymentNotice, Remedy.PaymentBond, Remedy.Debt])
        {
            var amount = answer.AmountOf(remedy)!;
            Assert.Equal((0m, 0m, 0m, 0m, false), (amount.Demand, amount.AtLeast, amount.AtMost, amount.InDoubt, amount.IsUnknown));
            Assert.Empty(amount.Questions);
            Assert.Equal(barred, amount.Steps.Any(s => s.Id == "barred" && s.Amount == -((decimal)(value ?? 0) - (decimal)paid)));
            Assert.Equal(barred, Sections(amount).Contains("Bus. & Prof. Code § 7031(a)"));
        }

        Assert.Null(answer.Find("amount"));
    }

    [Fact]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void Without_a_license_what_straddles_the_reach_is_no_longer_in_doubt()
    {
        var job = new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2025-11-01..")
            .Furnished("2025-08-05", 3_000m, until: "2025-09-22").Notice("2025-10-08").On("2025-12-01");
        Assert.Equal(["agreed-price 3000.00", "outside-reach -3000.00", "barred 0.00"], job.Amount.Lines());
        Assert.Equal((0m, 0m, 0m, 0m), (job.Amount.Demand, job.Amount.AtLeast, job.Amount.AtMost, job.Amount.InDoubt));
        Assert.Empty(job.Amount.Questions);
        // The bar of the State's law is none to a federal bond.
        Assert.Equal(3_000m, new JobBuilder().PublicWork().Work(w => w with { Kind = WorkKind.Federal }).Role(ClaimantRole.Subcontractor)
            .Licensed("2025-11-01..").Furnished("2025-08-05", 3_000m).On("2025-12-01").Amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)(1)")]
    public void A_remedy_that_the_work_does_not_have_has_no_amount()
    {
        var facts = Private().Furnished("2025-08-05", 3_000m).FactsOn("2025-12-01");
        Assert.Contains("FederalBond",
            Assert.Throws<ArgumentException>(() => Demand.Of(facts, Reach.Everything, Remedy.FederalBond)).Message,
                StringComparison.Ordinal);
        Assert.Equal((ReachKind.NoneDue, false), (Reach.Everything.Kind, Reach.Everything.InTimeByRollOnly));
    }

    [Fact]
    public void What_hangs_on_a_step_is_the_amount_of_its_own_remedy()
    {
        var job = new JobBuilder().PublicWork().Furnished("2025-08-05", 17_320m, until: "2025-09-09").Furnished("2025-09-16", 1_290m)
            .Ended("2025-09-16")
            .Notice("2025-09-30", Manner.CertifiedMail, "city", "direct").Completed("2025-10-22", CompletionTheory.Acceptance)
            .On("2025-12-01");
        Assert.Equal(1_290m, job.Next.Single(n => n.Finding == "stop-payment-notice.last-day").AtStake);
        Assert.Equal(18_610m, job.Next.Single(n => n.Finding == "payment-bond.notice-last-day").AtStake);
    }

    [Fact]
    [Proves("Civ. Code § 8502(c)")]
    public void As_of_the_day_of_a_paper_only_what_had_happened_by_then_counts_as_it_is_known_today()
    {
        var job = Private().Notice("2025-08-14").Furnished("2025-08-05", 6_430m).Paid("2025-08-20", 1_000m)
            .Which(e => e with { Learned = JobBuilder.Day("2025-09-20") })
            .Furnished("2025-10-01", 1_870m).Paid("2025-10-20", 500m);
        var facts = job.FactsOn("2025-12-01");
        var reach = PreliminaryNoticeDays.ReachOf(facts, Stringline.Law.Counting.OpenDays.Statutory);
        var then = Demand.Of(facts.Through(JobBuilder.Day("2025-09-02")), reach, Remedy.StopPaymentNotice);
        Assert.Equal(5_430m, then.Demand);
        Assert.Equal(6_800m, Demand.Of(facts, reach, Remedy.StopPaymentNotice).Demand);
        Assert.Equal(7_300m, Demand.Of(facts.Through(JobBuilder.Day("2025-10-01")), reach, Remedy.StopPaymentNotice).Demand);
    }
}
