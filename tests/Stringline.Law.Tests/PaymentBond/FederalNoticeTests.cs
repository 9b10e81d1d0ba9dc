using System.Globalization;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PaymentBond;

/// <summary>
/// Which notices and actions count for the federal bond, and for how much. Last furnished on Tuesday 30 September 2025: notice by Monday 29
/// December, action from Tuesday 30 December 2025 to Wednesday 30 September 2026. The text of 40 U.S.C. § 3133 is from memory.
/// </summary>
public sealed class FederalNoticeTests
{
    private static JobBuilder Job(string last = "2025-09-30") =>
        new JobBuilder().Work(w => w with { Kind = WorkKind.Federal }).Party("sub", PartyCapacity.Subcontractor, "Tamper & Screed Co.")
        .PartyWith("sub", p => p with { WorksUnder = "direct" }).Role(ClaimantRole.Supplier, "sub").Furnished("2025-08-05", 6430m)
        .Furnished(last, 2150m);

    private static JobBuilder Noticed(JobBuilder job, params string[] days)
    {
        foreach (var day in days)
            job.BondNoticeGiven(day, "direct");
        return job;
    }

    private static Finding Notice(JobBuilder job, string asOf = "2026-01-05") => job.On(asOf).Get("federal-bond.notice-last-day");

    private static (Standing, decimal?) Amount(JobBuilder job, string asOf = "2026-01-05") =>
        job.On(asOf).Get("federal-bond.amount") is var found ? (found.Standing, found.Amount) : default;

    // § 3133(b)(2): by a means that provides written, third-party verification of delivery, or as process is served.
    [Theory]
    [InlineData(null, true)]
    [InlineData(Manner.Personal, true)]
    [InlineData(Manner.CertifiedMail, true)]
    [InlineData(Manner.RegisteredMail, true)]
    [InlineData(Manner.ExpressMail, true)]
    [InlineData(Manner.OvernightCarrier, true)]
    [InlineData(Manner.Substituted, false)]
    [InlineData(Manner.CertificateOfMailing, false)]
    [InlineData(Manner.FirstClassMail, false)]
    [InlineData(Manner.Email, false)]
    [InlineData(Manner.Fax, false)]
    [InlineData(Manner.Other, false)]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void Each_manner_proves_its_delivery_or_does_not(Manner? manner, bool proved)
    {
        JobBuilder Given() => Job().Add(i => new BondNoticeGiven { Index = i, On = When("2025-11-03"), To = ["direct"], Manner = manner });
        var notice = Notice(Given());
        Assert.Equal(proved ? Standing.Kept : Standing.InDoubt, notice.Standing);
        Assert.Equal(proved, notice.Says("Notice given to the prime contractor 2025-11-03"));
        Assert.Equal(!proved, notice.Says("leaves no written proof of delivery by a third party"));
        // One that is proved, before or after, leaves nothing to ask.
        Assert.Equal(proved ? [] : [2], notice.Questions.Select(q => q.Corrects!.Index));
        Assert.Empty(Notice(Given().BondNoticeGiven("2025-11-10", "direct")).Questions);
        Assert.Equal(Standing.Kept, Notice(Given().BondNoticeGiven("2025-11-10", "direct")).Standing);
    }

    // Last furnished on Sunday 28 September 2025: the ninetieth day is Saturday 27 December, and may roll to Monday 29 December.
    [Theory]
    [InlineData("2025-12-29", Standing.InDoubt)]
    [InlineData("2025-12-30", Standing.Lost)]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void What_may_count_may_come_on_the_roll(string given, Standing expected)
    {
        Assert.Equal(expected,
            Notice(Job("2025-09-28")
                .Add(i => new BondNoticeGiven { Index = i, On = When(given), To = ["direct"], Manner = Manner.Email })).Standing);
        Assert.Equal(expected,
            Notice(Job("2025-09-28").Party("second", PartyCapacity.DirectContractor).PartyWith("sub", p => p with { WorksUnder = null })
                .BondNoticeGiven(given, "direct")).Standing);
    }

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void Of_two_notices_without_proof_the_first_is_asked_about() =>
        Assert.Equal([2],
            Notice(Job().Add(i => new BondNoticeGiven { Index = i, On = When("2025-11-03"), To = ["direct"], Manner = Manner.Email })
            .Add(i => new BondNoticeGiven { Index = i, On = When("2025-11-10"), To = ["direct"], Manner = Manner.Fax })).Questions.Select(
            q => q.Corrects!.Index));

    // Within 90 days after the last furnishing; the first that came after it counts. One before it may hold for what had been furnished by
    // then (U.S. ex rel. Blue Circle West v. Tucson Mechanical Contracting (9th Cir. 1990) 921 F.2d 911), the last of these for the most.
    [Theory]
    [InlineData("2025-12-29", Standing.Kept, Standing.Open, 8580)]
    [InlineData("2025-12-30", Standing.Lost, Standing.Lost, 8580)]
    [InlineData("2025-12-29..2025-12-30", Standing.InDoubt, Standing.Open, 8580)]
    [InlineData("2025-11-03 2025-12-30", Standing.Kept, Standing.Open, 8580)]
    [InlineData("? 2025-11-03", Standing.Kept, Standing.Open, 8580)]
    [InlineData("?", Standing.InDoubt, Standing.Open, 8580)] // it may have been in time
    [InlineData("2025-08-20 2025-11-03", Standing.Kept, Standing.Open, 8580)]
    [InlineData("2025-08-20 2025-12-30", Standing.InDoubt, Standing.InDoubt, 6430)]
    [InlineData("2025-08-04 2025-08-05", Standing.InDoubt, Standing.InDoubt, 6430)]
    [InlineData("2025-08-04..2025-08-05", Standing.InDoubt, Standing.InDoubt, 6430)]
    [InlineData("2025-08-03..2025-08-04", Standing.InDoubt, Standing.InDoubt, 0)]
    [InlineData("2025-08-20 2025-12-29..2025-12-30", Standing.InDoubt, Standing.InDoubt, 6430)]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    public void A_notice_counts_by_its_day_and_for_what_had_been_furnished(string days, Standing notice, Standing amount, int sum)
    {
        Assert.Equal(notice, Notice(Noticed(Job(), days.Split(' '))).Standing);
        Assert.Equal((amount, (decimal?)sum), Amount(Noticed(Job(), days.Split(' '))));
    }

    // What is paid is taken off the whole; what came after the notice is taken off what is left, and never below nothing.
    [Theory]
    [InlineData("0", "2025-08-20", Standing.InDoubt, "6430")]
    [InlineData("5000", "2025-08-20", Standing.InDoubt, "1430")]
    [InlineData("6430", "2025-08-20", Standing.InDoubt, "0")]
    [InlineData("7000", "2025-08-20", Standing.InDoubt, "0")]
    [InlineData("8579.50", "2025-11-03", Standing.Open, "0.50")]
    [InlineData("8580", "2025-11-03", Standing.NotYet, "0")]
    [InlineData("8580", "2025-08-20", Standing.NotYet, "0")]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    public void The_bond_answers_for_what_is_unpaid(string paid, string noticed, Standing expected, string sum)
    {
        var job = Noticed(Job().Paid("2025-10-06", decimal.Parse(paid, CultureInfo.InvariantCulture)), noticed);
        Assert.Equal((expected, (decimal?)decimal.Parse(sum, CultureInfo.InvariantCulture)), Amount(job));
        Assert.Equal(expected == Standing.InDoubt, job.On("2026-01-05")
            .Get("federal-bond.amount").Sections.Contains("40 U.S.C. § 3133(b)(2)"));
    }

    // A last day between 20 and 30 September: § 3133(b)(1), the 90 days have surely passed only from its latest day.
    [Fact]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void A_last_day_in_doubt_opens_the_action_by_its_latest_and_makes_any_notice_before_that_doubtful()
    {
        Assert.Equal(["2025-12-30"], Job("2025-09-20..2025-09-30").On("2026-01-05").Get("federal-bond.action-first-day").DaysOf());
        Assert.Equal(Standing.InDoubt, Notice(Noticed(Job("2025-09-20..2025-09-30"), "2025-09-29")).Standing);
        Assert.Equal(Standing.Kept, Notice(Noticed(Job("2025-09-20..2025-09-30"), "2025-09-30")).Standing);
        Assert.Equal(["2025-12-29 90 days after last furnishing"], Notice(Job()).Lines());
        Assert.Equal(["2025-12-19 90 days after last furnishing on its earliest day",
            "2025-12-29 90 days after last furnishing on its latest day"], Notice(Job("2025-09-20..2025-09-30")).Lines());
    }

    // § 3133(b)(1) and (4): from 30 December 2025 to 30 September 2026. One brought before may be thrown out; a later one heals it.
    [Theory]
    [InlineData("2025-12-29", "2026-02-02", Standing.InDoubt, true)]
    [InlineData("2025-12-29", "2026-10-01", Standing.InDoubt, true)]
    [InlineData("2025-12-29..2025-12-31", "2026-02-02", Standing.InDoubt, true)]
    [InlineData("2025-12-30..2026-01-05", "2026-02-02", Standing.Kept, false)]
    [InlineData("2025-12-29 2026-01-05", "2026-02-02", Standing.Kept, false)]
    [InlineData("2025-12-29 2026-10-01", "2026-11-02", Standing.InDoubt, true)]
    [InlineData("?", "2026-02-02", Standing.Open, false)]
    [InlineData("? 2026-01-05", "2026-02-02", Standing.Kept, false)]
    [InlineData("2026-09-30", "2026-11-02", Standing.Kept, false)]
    [InlineData("2026-10-01", "2026-11-02", Standing.Lost, false)]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    [Proves("40 U.S.C. § 3133(b)(4)")]
    public void An_action_is_in_time_neither_before_the_90_days_nor_after_the_year(string filed, string asOf, Standing expected, bool early)
    {
        var job = Noticed(Job(), "2025-11-03");
        foreach (var day in filed.Split(' '))
            job.ActionFiled(day);
        var action = job.On(asOf).Get("federal-bond.action-last-day");
        Assert.Equal(expected, action.Standing);
        Assert.Equal(early, action.Says("thrown out as brought too early"));
        Assert.Equal(early, action.Sections.Contains("40 U.S.C. § 3133(b)(1)"));
    }

    // Who deals with the prime contractor gives no notice, and all that is unpaid is open to it.
    [Fact]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void No_notice_limits_one_hired_by_the_prime()
    {
        var answer = Noticed(Job().Role(ClaimantRole.Subcontractor, "direct").Licensed("2012-06-01.."), "2025-08-20").On("2026-01-05");
        Assert.Equal((Standing.Open, (decimal?)8580m),
            (answer.Get("federal-bond.amount").Standing, answer.Get("federal-bond.amount").Amount));
        Assert.Equal(["40 U.S.C. § 3133(b)(2)"], answer.Get("federal-bond.notice-last-day").Sections);
        Assert.Null(answer.Get("federal-bond.notice-last-day").Plan());
    }

    // Whether a subcontractor is the prime's own is asked; of a supplier it is asked with its tier (Clifford F. MacEvoy Co. v. United
    // States).
    [Fact]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void Only_a_subcontractor_is_asked_about_beside_the_notice()
    {
        var job = Job().Party("yard", PartyCapacity.Supplier, "Teasel Lumber Yard");
        Assert.False(Notice(job.Role(ClaimantRole.Supplier, "yard")).Asks("(parties.worksUnder)"));
        Assert.True(Notice(job.PartyWith("sub", p => p with { WorksUnder = null }).Role(ClaimantRole.Supplier, "sub"))
            .Asks("(parties.worksUnder)"));
    }

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    public void The_prime_contractor_is_told_where_its_claim_lies() =>
        Assert.True(Job().Role(ClaimantRole.DirectContractor, "owner").On("2026-01-05").Get("federal-bond.action-last-day")
            .Says("against the United States under the contract"));

    // On a day that nobody knows, a notice by e-mail may have been received in time as one by mail may.
    [Theory]
    [InlineData(Manner.CertifiedMail)]
    [InlineData(Manner.Email)]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void One_on_an_unknown_day_loses_nothing_in_whatever_manner(Manner manner)
    {
        var job = Job().BondNoticeGiven("?", "direct").Which(e => (BondNoticeGiven)e with { Manner = manner });
        Assert.Equal(Standing.InDoubt, Notice(job).Standing);
        Assert.NotEqual(Standing.Lost, job.On("2026-01-05").Get("federal-bond.action-last-day").Standing);
    }
}
