using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// When a claim is one to release, and the owner's demand and petition on days that are not plain (Civ. Code §§ 8416, 8480-8488). Claim
/// recorded on Monday
/// 1 June 2026; the ninetieth day is Sunday 30 August. Entries 0 to 4 are the notice, the furnishing, its end, completion and the claim.
/// </summary>
public sealed class ReleaseDaysTests
{
    private static JobBuilder Job(string recorded = "2026-06-01") => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1000m)
        .Ended("2026-03-02").Completed("2026-05-04").ClaimRecorded(recorded, 1000m);

    private static JobBuilder Contractor() =>
        new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").NoParty("direct").Price(1000m).Licensed("2012-06-01..")
        .Furnished("2026-03-02", 1000m).Ended("2026-03-02").Completed("2026-05-04").ClaimRecorded("2026-06-01", 1000m);

    private static bool IsToRelease(JobBuilder job) => job.On("2026-06-22").Find("release.when-paid") is not null;

    // Nothing left because it was paid, credited or waived: and for no other cause.
    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void Money_or_credit_for_all_of_it_makes_a_claim_one_to_release()
    {
        var paid = Job().Paid("2026-06-15", 1000m).On("2026-06-22").Get("release.when-paid");
        Assert.Equal((Standing.Open, "4"), (paid.Standing, string.Join(',', paid.HangsOn("Civ. Code § 8416(a)(1)"))));
        Assert.True(IsToRelease(Job().Credited("2026-06-15", 1000m)));
        Assert.False(IsToRelease(Job().Paid("2026-06-15", 1000m).ReleaseRecorded("2026-06-16", true)));
    }

    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void A_demand_of_nothing_for_another_cause_is_no_payment()
    {
        // No notice was given, so nothing is within reach, whatever was paid on account.
        Assert.False(IsToRelease(new JobBuilder().Furnished("2026-03-02", 1000m).Ended("2026-03-02").Completed("2026-05-04")
            .ClaimRecorded("2026-06-01", 1000m).Paid("2026-06-15", 100m)));
        // Without a license nothing may be claimed.
        Assert.False(IsToRelease(Contractor().Claimant(c => c with { License = new License { Required = true, Never = true } })
            .Paid("2026-06-15", 100m)));
        // The contract was cut to nothing.
        Assert.False(IsToRelease(Contractor().Changed("2026-06-15", -1000m)));
        // A part of the work is not priced.
        Assert.False(IsToRelease(Job().Furnished("2026-03-03").Paid("2026-06-15", 1000m)));
    }

    // Work from 2 to 20 March and a notice of the 30th, which reaches back to the 10th: how much lies on each side the file does not say,
    // so that none of it is sure, and all of it may be due.
    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void What_may_still_be_due_keeps_the_claim()
    {
        var on = new JobBuilder().Furnished("2026-03-02", 1000m, until: "2026-03-20").Notice("2026-03-30").Completed("2026-05-04")
            .ClaimRecorded("2026-06-01", 1000m).Paid("2026-06-15", 100m).On("2026-06-22");
        Assert.Equal((0m, 900m), (on.Amount.Demand, on.Amount.AtMost));
        Assert.Null(on.Find("release.when-paid"));
        Assert.Null(on.Find("release.partial"));
        var part = Contractor().Paid("2026-06-15", 400m).On("2026-06-22").Get("release.partial");
        Assert.Equal((Standing.Open, 400m), (part.Standing, part.Amount));
        Assert.Equal([3], part.HangsOn("Civ. Code § 8416(a)(1)"));
    }

    // The demand is of this claim unless it names another instrument.
    [Theory]
    [InlineData(null, null, true)]
    [InlineData("2026-0001", null, true)]
    [InlineData(null, "2026-0001", true)]
    [InlineData("2026-0001", "2026-0001", true)]
    [InlineData("2026-0002", "2026-0001", false)]
    [Proves("Civ. Code § 8482")]
    public void A_demand_that_names_no_other_instrument_is_of_this_claim(string? asked, string? claim, bool counts) =>
        Assert.Equal(counts, Job().Which(c => (ClaimRecorded)c with { Instrument = claim }).ReleaseDemanded("2026-06-12")
            .Which(d => (ReleaseDemanded)d with { Instrument = asked })
            .On("2026-09-14").Find("release.answer-by") is not null);

    [Theory]
    [InlineData("2026-06-01", "2026-05-28..2026-05-31", false)]
    [InlineData("2026-06-01", "2026-05-28..2026-06-01", true)]
    [InlineData("2026-06-01..2026-06-03", "2026-05-31", false)]
    [InlineData("2026-06-01..2026-06-03", "2026-06-01", true)]
    [Proves("Civ. Code § 8482")]
    public void A_demand_that_may_be_of_after_the_claim_is_of_it(string recorded, string asked, bool counts) =>
        Assert.Equal(counts, Job(recorded).ReleaseDemanded(asked).On("2026-09-14").Find("release.answer-by") is not null);

    // Settled is as good as sued in time. A claim of 1 to 3 June ends on 30 August or 1 September: the owner may think the earlier.
    [Fact]
    [Proves("Civ. Code § 8482")]
    [Proves("Civ. Code § 8480")]
    public void The_demand_is_answered_by_the_earliest_day_on_which_the_owner_may_petition()
    {
        var settled = Job().ActionFiled("2026-06-15").ActionEnded("2026-08-03", ActionEnd.Settled).ReleaseDemanded("2026-08-12")
            .On("2026-09-14").Get("release.answer-by");
        Assert.Equal((Standing.Kept, true), (settled.Standing, settled.Says("No petition lies where the action was brought in time")));
        var doubt = Job("2026-06-01..2026-06-03").ReleaseDemanded("2026-06-12").On("2026-09-14");
        Assert.Equal(["2026-08-30"], doubt.Get("release.answer-by").DaysOf());
        Assert.NotNull(doubt.Get("release.answer-by").Band!.Latest);
        Assert.Equal(["2026-08-31"], doubt.Get("release.petition-first-day").DaysOf());
        // Demanded between the 21st and the 25th of August: the tenth day after the 21st.
        Assert.Equal(["2026-08-31"], Job().ReleaseDemanded("2026-08-21..2026-08-25").On("2026-09-14").Get("release.petition-first-day")
            .DaysOf());
    }

    private static JobBuilder Petition(string served, Manner? manner, string? heard = null) =>
        Job().Add(i =>
            new ReleasePetitionServed { Index = i, On = When(served), Manner = manner, Hearing = heard is null ? null : Day(heard) });

    // By mail service is complete on the fifth day after deposit (Civ. Code § 8486(c)), and fifteen days follow it: else 29 September.
    [Theory]
    [InlineData(Manner.CertifiedMail, true)]
    [InlineData(Manner.RegisteredMail, true)]
    [InlineData(Manner.ExpressMail, true)]
    [InlineData(Manner.CertificateOfMailing, true)]
    [InlineData(Manner.FirstClassMail, true)]
    [InlineData(Manner.Personal, false)]
    [InlineData(Manner.OvernightCarrier, false)]
    [InlineData(Manner.Substituted, false)]
    [InlineData(Manner.Email, false)]
    [InlineData(Manner.Fax, false)]
    [InlineData(Manner.Other, false)]
    [InlineData(null, false)]
    [Proves("Civ. Code § 8486(c)")]
    public void A_petition_that_came_by_mail_is_served_five_days_later(Manner? manner, bool byMail)
    {
        var hearing = Petition("2026-09-14", manner).On("2026-09-22").Get("release.hearing");
        Assert.Equal([byMail ? "2026-10-03 the day before the earliest hearing" : "2026-09-28 the day before the earliest hearing"],
            hearing.Lines());
        Assert.Equal([5], hearing.Corrected("(release-petition-served.hearing)"));
        Assert.Equal(manner is null ? [5] : [], hearing.Corrected("(release-petition-served.manner)"));
        Assert.Equal(manner is null
            ? 5 : null, hearing.Questions.SingleOrDefault(q =>
                q.Text.Contains("(release-petition-served.manner)", StringComparison.Ordinal))?.Days);
    }

    [Fact]
    [Proves("Civ. Code § 8486(b)")]
    public void The_hearing_is_prepared_for_from_the_earliest_day_of_service()
    {
        Assert.Equal(["2026-09-28 the day before the earliest hearing"], Petition("2026-09-14..2026-09-18", Manner.Personal)
            .On("2026-09-22").Get("release.hearing").Lines());
        Assert.Equal(["2026-10-04 the day before the hearing"], Petition("2026-09-14", Manner.Personal, "2026-10-05").On("2026-09-22")
            .Get("release.hearing").Lines());
        // The court may have heard it later: never lost, however long ago.
        Assert.Equal(Standing.InDoubt, Petition("2026-09-14", Manner.Personal, "2026-10-05").On("2026-12-01")
            .Get("release.hearing").Standing);
    }

    // An order of before the petition was served did not end it.
    [Theory]
    [InlineData("2026-09-14", "2026-09-13", false)]
    [InlineData("2026-09-14", "2026-09-12..2026-09-14", true)]
    [InlineData("2026-09-14", "2026-09-14", true)]
    [InlineData("2026-09-12..2026-09-14", "2026-09-13", true)]
    [InlineData("2026-09-12..2026-09-14", "2026-09-11", false)]
    [Proves("Civ. Code § 8488(a)")]
    public void What_ended_from_the_petition_on_ends_it(string served, string ended, bool done) =>
        Assert.Equal(done
            ? Standing.Done : Standing.Open, Petition(served, Manner.Personal, "2026-10-05").ActionEnded(ended, ActionEnd.ReleaseOrdered)
            .On("2026-09-22").Get("release.hearing").Standing);
}
