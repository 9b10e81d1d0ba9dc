using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>To whom, how and after what a stop payment notice is given, on private and on public work.</summary>
public sealed class StopPaymentRecipientsTests
{
    private static JobBuilder WithLender() => UsualPrivate("owner", "direct", "bank").Lender();

    [Theory]
    [InlineData("city", Standing.Kept)]
    [InlineData("direct", Standing.Open)]
    [InlineData("sub", Standing.Open)]
    [InlineData("surety", Standing.Open)]
    [Proves("Civ. Code § 9354")]
    public void On_public_work_it_goes_to_the_entity_and_to_nobody_else(string to, Standing expected)
    {
        var last = UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, to).On("2025-12-01").Get("stop-payment-notice.last-day");
        Assert.Equal(expected, last.Standing);
        Assert.Equal("2026-01-20", last.Plan());
        Assert.Equal(expected == Standing.Open, last.RuledOut("Civ. Code § 9354"));
    }

    [Fact]
    [Proves("Civ. Code § 9354")]
    public void One_that_went_to_the_contractor_is_named_and_starts_no_days_to_sue()
    {
        var assessment = UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, "direct").On("2025-12-01");
        Assert.Contains(assessment.Get("stop-payment-notice.last-day").Why.Tree(), r => !r.Applied
            && r.Text.Contains("went to Brushline Builders Inc.", StringComparison.Ordinal)
            && r.Text.Contains("does not count", StringComparison.Ordinal));
        Assert.Null(assessment.Find("stop-payment-notice.action-first-day"));
        Assert.Equal(Standing.NotYet, assessment.Get("stop-payment-notice.action-last-day").Standing);
    }

    [Theory]
    [InlineData("owner", Standing.Kept)]
    [InlineData("architect", Standing.Kept)]
    [InlineData("agent", Standing.InDoubt)] // as far as its authority goes
    [InlineData("assoc", Standing.InDoubt)]
    [InlineData("assoc", Standing.Kept, true)]
    [InlineData("agent", Standing.InDoubt, true)]
    [InlineData("direct", Standing.Open)]
    [InlineData("sub", Standing.Open)]
    [Proves("Civ. Code § 8506(a)")]
    [Proves("Civ. Code § 8066")]
    [Proves("Civ. Code § 8119")]
    public void On_private_work_it_goes_to_the_owner_or_who_stands_for_it(string to, Standing expected, bool commonInterest = false)
    {
        var job = UsualPrivate().Work(w => w with { CommonInterest = commonInterest })
            .Party("architect", PartyCapacity.Architect, "Plumb Line Studio").Party("agent", PartyCapacity.OwnersAgent, "Quoin Management")
            .Party("assoc", PartyCapacity.Association, "Alder Court Association")
            .StopPaymentGiven("2025-11-03", 6430m, false, to);
        var assessment = job.On("2025-12-01");
        Assert.Equal(expected, assessment.Get("stop-payment-notice.owner").Standing);
        Assert.Equal(expected, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.Equal("2026-01-20", assessment.Get("stop-payment-notice.owner").Plan());
        Assert.Equal(to == "agent", assessment.Get("stop-payment-notice.owner").Asks("May Quoin Management take notices for the owner?"));
    }

    [Fact]
    [Proves("Civ. Code § 8506(a)")]
    [Proves("Civ. Code § 8508(b)")]
    public void One_that_went_to_the_contractor_leaves_owner_and_lender_open_with_their_day()
    {
        var assessment = WithLender().StopPaymentGiven("2025-11-03", 6430m, false, "direct").On("2025-12-01");
        foreach (var id in (string[])["stop-payment-notice.last-day", "stop-payment-notice.owner", "stop-payment-notice.lender"])
        {
            Assert.Equal(Standing.Open, assessment.Get(id).Standing);
            Assert.Equal("2026-01-20", assessment.Get(id).Plan());
        }

        Assert.True(assessment.Get("stop-payment-notice.last-day").RuledOut("Civ. Code § 8506(a)"));
        Assert.Null(assessment.Find("stop-payment-notice.action-first-day"));
        Assert.Contains(assessment.Next, s => s.Finding == "stop-payment-notice.last-day");
        Assert.DoesNotContain(assessment.Next, s => s.Finding is "stop-payment-notice.owner" or "stop-payment-notice.lender");
    }

    [Fact]
    [Proves("Civ. Code § 8520(a)")]
    [Proves("Civ. Code § 8530")]
    public void A_direct_contractors_notice_to_the_owner_hides_nothing_of_the_one_to_the_lender()
    {
        var job = DirectContractor().Price(51_000m).Lender().Furnished("2025-08-05", 51_000m)
            .Notice("2025-08-14", Manner.CertifiedMail, "bank").Completed("2025-10-22")
            .StopPaymentGiven("2025-11-03", 51_000m, false, "owner");
        var assessment = job.On("2025-12-01");
        Assert.Equal(Standing.Lost, assessment.Get("stop-payment-notice.owner").Standing);
        Assert.Equal(Standing.Open, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.True(assessment.Get("stop-payment-notice.last-day").RuledOut("Civ. Code § 8520(a)"));
        Assert.Equal(Standing.Open, assessment.Get("stop-payment-notice.lender").Standing);
        Assert.Equal("2026-01-20", assessment.Get("stop-payment-notice.lender").Plan());
        Assert.Null(assessment.Find("stop-payment-notice.action-first-day"));
        Assert.Equal(51_000m, assessment.Get("stop-payment-notice.amount").Amount);
    }

    [Fact]
    [Proves("Civ. Code § 8530")]
    public void Where_the_owner_was_served_and_a_lender_was_not_the_lenders_row_stays_open_and_on_the_list()
    {
        var assessment = WithLender().Party("fund", PartyCapacity.ConstructionLender, "Slate Fund")
            .Notice("2025-08-14", Manner.CertifiedMail, "fund").StopPaymentGiven("2025-11-03", 6430m, false, "owner", "fund")
            .On("2025-12-01");
        Assert.Equal(Standing.Kept, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.Equal(Standing.Kept, assessment.Get("stop-payment-notice.owner").Standing);
        Assert.Equal(Standing.Open, assessment.Get("stop-payment-notice.lender").Standing);
        Assert.Equal(Standing.Kept, assessment.Get("stop-payment-notice.lender.2").Standing);
        Assert.Equal("Stop payment notice to the construction lender Slate Fund", assessment.Get("stop-payment-notice.lender.2").Title);
        Assert.Contains(assessment.Next, s =>
            s is { Finding: "stop-payment-notice.lender", Do: "Give the construction lender the stop payment notice" });
        Assert.DoesNotContain(assessment.Next, s =>
            s.Finding is "stop-payment-notice.last-day" or "stop-payment-notice.owner" or "stop-payment-notice.lender.2");
    }

    // Force Framing v. Chinatrust Bank (2010) 187 Cal.App.4th 1368.
    [Fact]
    [Proves("Civ. Code § 8530")]
    public void A_reputed_lender_beside_one_of_record_is_in_doubt()
    {
        JobBuilder Job(bool another) => UsualPrivate("owner", "direct", "named", "bank")
            .Party("named", PartyCapacity.ConstructionLender, "Ridge Bank", reputed: true)
            .Party(another ? "bank" : "nobody", another ? PartyCapacity.ConstructionLender : PartyCapacity.Supplier, "Quay Street Bank");
        Assert.Equal(Standing.InDoubt, Job(true).On("2025-12-01").Get("stop-payment-notice.lender").Standing);
        Assert.Equal(Standing.Open, Job(true).On("2025-12-01").Get("stop-payment-notice.lender.2").Standing);
        Assert.Equal(Standing.Open, Job(false).On("2025-12-01").Get("stop-payment-notice.lender").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8506(b)")]
    public void Of_a_lender_it_is_asked_whether_the_responsible_person_at_the_right_office_had_it()
    {
        var lender = WithLender().StopPaymentGiven("2025-11-03", 6430m, false, "bank").On("2025-12-01").Get("stop-payment-notice.lender");
        Assert.Equal(Standing.Kept, lender.Standing);
        Assert.Contains("Civ. Code § 8506(b)", lender.Sections);
        Assert.True(lender.Asks("responsible person at the office that holds the fund"));
        Assert.False(WithLender().On("2025-12-01").Get("stop-payment-notice.lender").Asks("responsible person"));
    }

    [Theory]
    [InlineData(Manner.Personal, Standing.Kept)]
    [InlineData(Manner.CertifiedMail, Standing.Kept)]
    [InlineData(Manner.RegisteredMail, Standing.Kept)]
    [InlineData(Manner.ExpressMail, Standing.Kept)]
    [InlineData(Manner.OvernightCarrier, Standing.Kept)]
    [InlineData(Manner.Substituted, Standing.Kept)]
    [InlineData(Manner.CertificateOfMailing, Standing.Open)]
    [InlineData(Manner.FirstClassMail, Standing.Open)]
    [InlineData(Manner.Email, Standing.Open)]
    [InlineData(Manner.Fax, Standing.Open)]
    [InlineData(Manner.Other, Standing.Open)]
    [InlineData(null, Standing.Kept)]
    [Proves("Civ. Code § 8502(a)")]
    [Proves("Civ. Code § 8506(c)")]
    [Proves("Civ. Code § 9352(a)")]
    public void Only_a_manner_of_giving_notice_counts_and_one_not_said_is_asked(Manner? manner, Standing expected)
    {
        var toOwner = UsualPrivate().PartyWith("owner", p => p with { NaturalPerson = false })
            .StopPaymentGiven("2025-11-03", 6430m, false, "owner").Paper(p => p with { Manner = manner }).On("2025-12-01")
            .Get("stop-payment-notice.last-day");
        var toEntity = UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, "city").Paper(p => p with { Manner = manner })
            .On("2025-12-01").Get("stop-payment-notice.last-day");
        Assert.Equal(expected, toOwner.Standing);
        Assert.Equal(expected, toEntity.Standing);
        Assert.Equal(manner is null, toEntity.Asks("(stop-payment-given.manner)"));
        Assert.Equal(expected == Standing.Open, toOwner.RuledOut("Civ. Code § 8502(a)"));
        Assert.Equal(expected == Standing.Open, toEntity.RuledOut("Civ. Code § 9352(a)"));
    }

    // Left on 3 November and mailed on the 5th: complete on the 10th, and the first day to sue is the 21st.
    [Theory]
    [InlineData("2025-11-05", "2025-11-21")]
    [InlineData(null, "2025-11-19")]
    [Proves("Civ. Code § 8116")]
    public void Left_and_mailed_it_is_complete_five_days_after_the_mailing(string? mailed, string firstDay)
    {
        var job = UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, "city")
            .Paper(p => p with { Manner = Manner.Substituted, Mailed = mailed is null ? null : JobBuilder.Day(mailed) });
        Assert.Equal([firstDay], job.On("2025-12-01").Get("stop-payment-notice.action-first-day").DaysOf());
        Assert.Equal(mailed is null, job.On("2025-12-01").Get("stop-payment-notice.last-day").Asks("(stop-payment-given.mailed)"));
    }

    // Mailed on 15 January it is complete on the last day, the 20th; mailed on the 16th a day late.
    [Theory]
    [InlineData("2026-01-15", Standing.Kept)]
    [InlineData("2026-01-16", Standing.Lost)]
    [Proves("Civ. Code § 8116")]
    public void Left_and_mailed_near_the_end_it_must_be_complete_in_time(string on, Standing expected) =>
        Assert.Equal(expected, UsualPublic().StopPaymentGiven(on, 6430m, false, "city").Paper(p => p with { Manner = Manner.Substituted })
            .On("2026-02-02").Get("stop-payment-notice.last-day").Standing);

    [Theory]
    [InlineData(true, Standing.InDoubt)]
    [InlineData(null, Standing.InDoubt)]
    [InlineData(false, Standing.Kept)]
    [Proves("Civ. Code § 8502(a)")]
    public void Left_and_mailed_to_a_natural_person_it_asks_for_tries_before(bool? natural, Standing expected)
    {
        var owner = UsualPrivate().PartyWith("owner", p => p with { NaturalPerson = natural })
            .StopPaymentGiven("2025-11-03", 6430m, false, "owner").Paper(p => p with { Manner = Manner.Substituted }).On("2025-12-01")
            .Get("stop-payment-notice.owner");
        Assert.Equal(expected, owner.Standing);
        Assert.Equal(expected == Standing.InDoubt, owner.Asks("(stop-payment-given.tries)"));
        Assert.Equal(natural is null, owner.Asks("(parties.naturalPerson)"));
    }

    // Two tries until the year 2027, three from then on; none at all, and it counts for nothing.
    [Theory]
    [InlineData(true, 2, Standing.Kept)]
    [InlineData(true, 1, Standing.InDoubt)]
    [InlineData(true, 0, Standing.Lost)]
    [InlineData(null, 2, Standing.Kept)]
    [InlineData(null, 0, Standing.InDoubt)]
    [InlineData(false, 0, Standing.Kept)]
    [Proves("Code Civ. Proc. § 415.20(b)")]
    public void Left_and_mailed_it_counts_by_the_tries_to_hand_it_over(bool? natural, int tries, Standing expected)
    {
        var owner = UsualPrivate().PartyWith("owner", p => p with { NaturalPerson = natural })
            .StopPaymentGiven("2025-11-03", 6430m, false, "owner").Paper(p => p with { Manner = Manner.Substituted, Tries = tries })
            .On("2026-02-02").Get("stop-payment-notice.owner");
        Assert.Equal(expected, owner.Standing);
        Assert.Equal(expected == Standing.InDoubt, owner.Asks("(stop-payment-given.tries)"));
        Assert.Equal(natural is null && expected == Standing.InDoubt, owner.Asks("(parties.naturalPerson)"));
        Assert.Equal(expected == Standing.Lost, owner.RuledOut("Code Civ. Proc. § 415.20(b)"));
    }

    [Fact]
    [Proves("Civ. Code § 9352(a)")]
    public void One_that_lacks_its_verification_is_in_doubt_while_it_can_be_given_again()
    {
        var last = UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, "city").Paper(p => p with { Lacks = "its verification" })
            .On("2025-12-01").Get("stop-payment-notice.last-day");
        Assert.Equal(Standing.InDoubt, last.Standing);
        Assert.Equal("2026-01-20", last.Plan());
        Assert.True(last.Says("it lacks, as entered: its verification"));
    }

    // Preliminary notice on 4 November: a stop payment notice of the 3rd is none, one of the same day may follow it.
    [Theory]
    [InlineData("2025-11-03", Standing.Open)]
    [InlineData("2025-11-04", Standing.Kept)]
    [InlineData("2025-11-05", Standing.Kept)]
    [Proves("Civ. Code § 8508(a)")]
    [Proves("Civ. Code § 9300(c)")]
    public void The_preliminary_notice_comes_first(string given, Standing expected)
    {
        var owner = Private().Furnished("2025-10-20", 6430m).Completed("2025-10-22").Notice("2025-11-04").StopPaymentGiven(given, 6430m)
            .On("2025-12-01");
        Assert.Equal(expected, owner.Get("stop-payment-notice.last-day").Standing);
        Assert.Equal(expected, owner.Get("stop-payment-notice.owner").Standing);
        Assert.Equal("2026-01-20", owner.Get("stop-payment-notice.last-day").Plan());
        Assert.Equal(expected == Standing.Open, owner.Get("stop-payment-notice.last-day").RuledOut("Civ. Code § 8508(a)"));
        var entity = Public().Furnished("2025-10-20", 6430m).Accepted().NoticedPublic("2025-11-04")
            .StopPaymentGiven(given, 6430m, false, "city").On("2025-12-01").Get("stop-payment-notice.last-day");
        Assert.Equal(expected, entity.Standing);
        Assert.Equal(expected == Standing.Open, entity.RuledOut("Civ. Code § 9300(c)"));
    }

    [Fact]
    [Proves("Civ. Code § 9300(c)")]
    public void One_given_without_any_preliminary_notice_holds_nothing_and_the_notice_is_to_come_first()
    {
        var last = Public().Furnished("2025-10-20", 6430m).Accepted().StopPaymentGiven("2025-10-28", 6430m, false, "city").On("2025-10-29")
            .Get("stop-payment-notice.last-day");
        Assert.Equal(Standing.Open, last.Standing);
        Assert.True(last.RuledOut("Civ. Code § 9300(c)"));
        Assert.True(last.Says("give it first"));
        // A laborer and one hired by the direct contractor owe none.
        Assert.Equal(Standing.Kept, Public().Role(ClaimantRole.Laborer, "sub").Furnished("2025-10-20", 6430m).Accepted()
            .StopPaymentGiven("2025-10-28", 6430m, false, "city").On("2025-10-29").Get("stop-payment-notice.last-day").Standing);
        Assert.Equal(Standing.Kept, Public("direct").Furnished("2025-10-20", 6430m).Accepted()
            .StopPaymentGiven("2025-10-28", 6430m, false, "city").On("2025-10-29").Get("stop-payment-notice.last-day").Standing);
    }

    // The owner had it before, the direct contractor after: the gap toward the contractor leaves it in doubt, as it does the lien.
    [Fact]
    [Proves("Civ. Code § 8508(a)")]
    public void A_preliminary_notice_that_reached_the_contractor_only_afterwards_leaves_it_in_doubt()
    {
        var job = Private().Furnished("2025-10-20", 6430m).Completed("2025-10-22").Notice("2025-10-24", Manner.CertifiedMail, "owner")
            .Notice("2025-11-04", Manner.CertifiedMail, "direct").StopPaymentGiven("2025-10-28", 6430m);
        Assert.Equal(Standing.InDoubt, job.On("2025-12-01").Get("stop-payment-notice.owner").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8508(a)")]
    public void A_preliminary_notice_that_missed_the_lender_leaves_the_owners_in_doubt_and_the_lenders_too()
    {
        var assessment = UsualPrivate("owner", "direct").Lender().StopPaymentGiven("2025-11-03", 6430m).On("2025-12-01");
        Assert.Equal(Standing.InDoubt, assessment.Get("stop-payment-notice.owner").Standing);
        Assert.Equal(Standing.InDoubt, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.True(assessment.Get("stop-payment-notice.owner").Says("none reached the construction lender Quay Street Bank"));
    }

    // Nothing named the lender on the first day: that excuses the lien. Whether it excuses the notice before a stop payment notice is not
    // settled.
    [Fact]
    [Proves("Civ. Code § 8508(a)")]
    public void To_a_lender_that_became_known_later_preliminary_notice_goes_first()
    {
        var job = Private().Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: "2025-09-10")
            .Furnished("2025-08-05", 4000m).Furnished("2025-10-10", 2430m).Notice("2025-08-14").Completed("2025-10-22");
        var lender = job.On("2025-12-01").Get("stop-payment-notice.lender");
        Assert.Equal(Standing.InDoubt, lender.Standing);
        Assert.True(lender.Says("Give it preliminary notice first, by 2025-09-30 (Tue)"));
        Assert.Equal(Standing.InDoubt, job.StopPaymentGiven("2025-11-03", 6430m, false, "bank").On("2025-12-01")
            .Get("stop-payment-notice.lender").Standing);
        Assert.True(job.On("2025-12-01").Get("stop-payment-notice.lender").Says("leaves room for an excuse"));
        Assert.Equal(Standing.InDoubt, job.Notice("2025-11-10", Manner.CertifiedMail, "bank").On("2025-12-01")
            .Get("stop-payment-notice.lender").Standing);
        Assert.Equal(Standing.Kept, job.StopPaymentGiven("2025-11-11", 6430m, false, "bank").On("2025-12-01")
            .Get("stop-payment-notice.lender").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8520(a)")]
    [Proves("Civ. Code § 8530")]
    public void While_nothing_commenced_a_design_professional_has_none()
    {
        var job = DirectContractor().Role(ClaimantRole.DesignProfessional, "owner").Lender().Furnished("2025-06-05", 24_000m)
            .Notice("2025-06-10", Manner.CertifiedMail, "bank").WillNotCommence("2025-10-22");
        var assessment = job.On("2025-12-01");
        var only = Assert.Single(assessment.Findings, f => f.Id.StartsWith("stop-payment-notice.", StringComparison.Ordinal));
        Assert.Equal(Standing.Lost, only.Standing);
        Assert.Null(only.ActBy);
        Assert.Equal(["Civ. Code § 8520(a)"], only.Sections);
        Assert.NotNull(job.Work(w => w with { Commenced = JobBuilder.Day("2025-11-03") }).On("2025-12-01")
            .Find("stop-payment-notice.owner"));
    }

    [Fact]
    [Proves("Civ. Code § 8128")]
    public void One_that_was_released_counts_no_more_and_another_may_follow_in_time()
    {
        JobBuilder Released(string? of = null) => UsualPrivate().StopPaymentGiven("2025-11-03", 6430m).Which(e => e with { Id = "first" })
            .Add(i => new StopPaymentReleased { Index = i, On = JobBuilder.When("2025-11-10"), Of = of });
        Assert.Equal(Standing.Open, Released().On("2025-12-01").Get("stop-payment-notice.owner").Standing);
        Assert.True(Released().On("2025-12-01").Get("stop-payment-notice.owner").RuledOut("Civ. Code § 8128"));
        Assert.Equal(Standing.Lost, Released().On("2026-02-02").Get("stop-payment-notice.last-day").Standing);
        Assert.Equal(Standing.Lost, Released().On("2026-02-02").Get("stop-payment-notice.action-last-day").Standing);
        Assert.Equal(Standing.Kept, Released().StopPaymentGiven("2025-11-20", 6430m).On("2025-12-01")
            .Get("stop-payment-notice.owner").Standing);
        Assert.Equal(Standing.Kept, Released("another").On("2025-12-01").Get("stop-payment-notice.owner").Standing);
        // Of two notices nobody says which was released.
        var either = UsualPrivate().StopPaymentGiven("2025-11-03", 6430m).StopPaymentGiven("2025-11-05", 6430m)
            .Add(i => new StopPaymentReleased { Index = i, On = JobBuilder.When("2025-11-10") }).On("2025-12-01")
            .Get("stop-payment-notice.owner");
        Assert.Equal(Standing.InDoubt, either.Standing);
        Assert.True(either.Asks("(stop-payment-released.of)"));
    }

    [Fact]
    [Proves("Civ. Code § 8508(b)")]
    public void One_given_on_a_day_unknown_leaves_it_in_doubt() =>
        Assert.Equal(Standing.InDoubt, UsualPrivate().StopPaymentGiven("?", 6430m).On("2025-12-01")
            .Get("stop-payment-notice.owner").Standing);
}
