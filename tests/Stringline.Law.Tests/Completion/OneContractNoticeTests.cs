using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// A notice for one of several direct contracts, recorded Monday 18 May 2026. The whole work was completed on 30 June: the 90 days end on
/// 28 September. For those under that contract 30 days from the recording end on Wednesday 17 June, 60 on Friday 17 July.
/// </summary>
public sealed class OneContractNoticeTests
{
    private static JobBuilder Job(string hiredBy, ClaimantRole role = ClaimantRole.Supplier, string? states = "2026-05-04") => new JobBuilder()
        .Party("second", PartyCapacity.DirectContractor, "Second Builders").Party("sub", PartyCapacity.Subcontractor).Role(role, hiredBy).Licensed("2020-01-01..")
        .Notice("2026-03-02", Manner.CertifiedMail, "owner", "direct", "second").Furnished("2026-03-02", 1000m).Ended("2026-04-06")
        .Completed("2026-06-30").OwnerRecorded("2026-05-18", states: states, contractOf: "direct").OwnerToldUs("2026-05-20");

    private static Finding Last(JobBuilder job) => job.On("2026-06-30").Get("claim-of-lien.last-day");

    [Theory]
    [InlineData("direct", ClaimantRole.Supplier, "2026-06-17")] // under that contract
    [InlineData("second", ClaimantRole.Supplier, "2026-09-28")] // under another
    [InlineData("sub", ClaimantRole.Supplier, "2026-06-17 2026-09-28")] // under which, the file does not say
    [InlineData("owner", ClaimantRole.DirectContractor, "2026-09-28")] // another company's than the claimant's own
    [Proves("Civ. Code § 8186")]
    public void It_shortens_the_time_of_those_under_that_contract_only(string hiredBy, ClaimantRole role, string days) =>
        Assert.Equal(days.Split(' '), Last(Job(hiredBy, role)).DaysOf());

    // The fifteenth day after 3 May is Monday 18 May; after 2 May Sunday 17 May, which rolls to Monday 18 May for the owner; after
    // Friday 1 May Saturday 16 May, likewise; after 30 April Friday 15 May.
    [Theory]
    [InlineData("2026-05-18", true)]
    [InlineData("2026-05-03", true)]
    [InlineData("2026-05-01", true)]
    [InlineData("2026-04-30", false)]
    [InlineData("2026-05-19", false)]
    [Proves("Civ. Code § 8186")]
    public void Its_fifteen_days_run_from_the_completion_of_that_contract_which_it_states(string states, bool shortens)
    {
        var last = Last(Job("direct", states: states));
        Assert.Equal([shortens ? "2026-06-17" : "2026-09-28"], last.DaysOf());
        Assert.Equal(!shortens, last.RuledOut("Civ. Code § 8186"));
    }

    [Fact]
    [Proves("Civ. Code § 8186")]
    public void Where_it_states_no_day_both_readings_stand() => Assert.Equal(["2026-06-17", "2026-09-28"], Last(Job("direct", states: null)).DaysOf());

    // States completion of that contract on 20 May: recorded on some day from 10 to 30 May it takes effect from the 20th on. Thirty days
    // from the 20th end on 19 June, from the 30th on 29 June.
    [Fact]
    [Proves("Civ. Code § 8186")]
    public void Recorded_on_a_day_in_doubt_about_the_completion_it_states_it_may_take_effect_from_that_day() =>
        Assert.Equal(["2026-06-19", "2026-06-29", "2026-09-28"], Last(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1000m).Ended("2026-04-06")
            .Completed("2026-06-30").OwnerRecorded("2026-05-10..2026-05-30", states: "2026-05-20", contractOf: "direct").OwnerToldUs("2026-05-30")).DaysOf());

    [Fact]
    [Proves("Civ. Code § 8186")]
    public void It_says_nothing_of_the_completion_of_the_whole() => Assert.Equal(["2026-06-30"], Job("direct").On("2026-06-30").Get("completion.day").DaysOf());
}
