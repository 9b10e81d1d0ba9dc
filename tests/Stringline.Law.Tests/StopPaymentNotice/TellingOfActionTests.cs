using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// Telling of the action within five days after it was commenced (Civ. Code §§ 8550(e), 9504): filed on Monday 1 December 2025, by Saturday
/// the 6th. Entries
/// 0 to 3 are the search, the furnishing, the notice and the acceptance, 4 the stop payment notice, 5 the action.
/// </summary>
public sealed class TellingOfActionTests
{
    private static JobBuilder Filed(string on = "2025-12-01") =>
        UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, "city").ActionOn(on, ActionOn.StopPaymentNotice);

    private static JobBuilder Told(JobBuilder job, string on, Manner? manner = Manner.Personal, params string[] to) =>
        job.Add(i => new ActionTold { Index = i, On = When(on), To = to.Length == 0 ? ["city"] : to, Manner = manner });

    private static Finding Tell(JobBuilder job, string asOf = "2026-01-05") => job.On(asOf).Get("stop-payment-notice.tell-of-action");

    // What was told before the action tells of none.
    [Theory]
    [InlineData("2025-12-01", "2025-11-30", Standing.InDoubt)]
    [InlineData("2025-12-01", "2025-11-28..2025-11-30", Standing.InDoubt)]
    [InlineData("2025-12-01", "2025-11-30..2025-12-01", Standing.Kept)]
    [InlineData("2025-12-01", "2025-12-01", Standing.Kept)]
    [InlineData("2025-12-01", "2025-12-06", Standing.Kept)]
    [InlineData("2025-12-01", "2025-12-06..2025-12-08", Standing.InDoubt)]
    [InlineData("2025-12-01", "2025-12-07", Standing.InDoubt)]
    [InlineData("2025-12-01..2025-12-03", "2025-12-01", Standing.Kept)]
    [InlineData("2025-12-01..2025-12-03", "2025-11-30", Standing.InDoubt)]
    [Proves("Civ. Code § 9504")]
    public void The_entity_is_told_after_the_action_and_within_five_days(string filed, string told, Standing expected)
    {
        var tell = Tell(Told(Filed(filed), told));
        Assert.Equal(expected, tell.Standing);
        Assert.Equal(["2025-12-06"], tell.DaysOf());
        Assert.NotNull(tell.Band!.Latest);
    }

    // Of several tellings the one first complete counts: left and mailed on the 2nd it is complete on the 7th.
    [Theory]
    [InlineData("2025-12-02", Manner.Personal, "2025-12-10", Manner.Personal, Standing.Kept)]
    [InlineData("2025-12-02", Manner.Substituted, "2025-12-03", Manner.Personal, Standing.Kept)]
    [InlineData("2025-12-02..2025-12-20", Manner.Personal, "2025-12-05", Manner.Personal, Standing.Kept)]
    [InlineData("2025-12-04", Manner.Email, "2025-12-10", Manner.Personal, Standing.InDoubt)]
    [InlineData("2025-12-04", Manner.Email, "2025-12-05", Manner.CertifiedMail, Standing.Kept)]
    [Proves("Civ. Code § 9504")]
    public void Of_several_tellings_the_one_first_complete_counts(string first, Manner firstManner, string second, Manner secondManner,
        Standing expected) =>
        Assert.Equal(expected, Tell(Told(Told(Filed(), first, firstManner), second, secondManner)).Standing);

    [Theory]
    [InlineData(Manner.Personal, true)]
    [InlineData(Manner.FirstClassMail, false)]
    [InlineData(null, true)]
    [Proves("Civ. Code § 9504")]
    public void It_is_told_how_they_were_told(Manner? manner, bool counts)
    {
        var tell = Tell(Told(Filed(), "2025-12-02", manner));
        Assert.Equal(counts ? Standing.Kept : Standing.InDoubt, tell.Standing);
        Assert.Equal(counts ? [6] : [], tell.EntriesOf("Told 2025-12-02 (Tue): City of Davis."));
        Assert.Equal(counts ? [] : [6], tell.EntriesOf("in a manner in which no notice is given"));
        Assert.Equal(!counts, tell.Says("The file does not show that the public entity was told"));
        Assert.Equal(manner is null ? [6] : [], tell.Corrected("(action-told.manner)"));
    }

    // Owner and lender were both served: the later of the two tellings counts.
    [Theory]
    [InlineData("2025-12-02", "2025-12-10", Standing.InDoubt)]
    [InlineData("2025-12-10", "2025-12-02", Standing.InDoubt)]
    [InlineData("2025-12-02", "2025-12-05", Standing.Kept)]
    [InlineData("2025-12-02", null, Standing.InDoubt)]
    [Proves("Civ. Code § 8550(e)")]
    public void Everyone_who_was_served_is_told(string owner, string? bank, Standing expected)
    {
        var job = UsualPrivate("owner", "direct", "bank").Lender().StopPaymentGiven("2025-11-03", 6430m, false, "owner")
            .StopPaymentGiven("2025-11-05", 6430m, false, "bank", "owner")
            .ActionOn("2025-12-01", ActionOn.StopPaymentNotice);
        Told(job, owner, Manner.Personal, "owner");
        var tell = Tell(bank is null ? job : Told(job, bank, Manner.Personal, "bank"));
        Assert.Equal(expected, tell.Standing);
        Assert.Equal(bank is null
            ? 1 : 0, tell.Why.Tree()
            .Count(r => r.Text.Contains("does not show that the construction lender Quay Street Bank was told", StringComparison.Ordinal)));
    }

    [Fact]
    [Proves("Civ. Code § 8550(e)")]
    public void One_who_was_served_twice_is_named_once()
    {
        var twice = Tell(UsualPrivate().StopPaymentGiven("2025-11-03", 6430m).StopPaymentGiven("2025-11-05", 6430m)
            .ActionOn("2025-12-01", ActionOn.StopPaymentNotice));
        Assert.Single(twice.Why.Tree(), r => r.Text.Contains("does not show that the owner was told", StringComparison.Ordinal));
    }

    // Two years after an action of 1 to 3 December 2025.
    [Fact]
    [Proves("Civ. Code § 9508")]
    [Proves("Civ. Code § 8554")]
    public void It_is_brought_to_trial_within_two_years_from_the_earliest_day()
    {
        var trial = Filed("2025-12-01..2025-12-03").On("2026-01-05").Get("stop-payment-notice.prosecution-last-day");
        Assert.Equal(["2027-12-01"], trial.DaysOf());
        Assert.NotNull(trial.Band!.Latest);
        Assert.Equal([5], trial.HangsOn("Civ. Code § 9508"));
        Assert.Null(UsualPrivate().StopPaymentGiven("2025-11-03", 6430m).ActionFiled("2025-12-01").On("2026-01-05")
            .Find("stop-payment-notice.prosecution-last-day"));
        Assert.NotNull(UsualPrivate().StopPaymentGiven("2025-11-03", 6430m).ActionOn("2025-12-01", ActionOn.StopPaymentNotice)
            .On("2026-01-05").Find("stop-payment-notice.prosecution-last-day"));
    }
}
