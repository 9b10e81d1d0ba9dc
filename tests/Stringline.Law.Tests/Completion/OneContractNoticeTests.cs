using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// A notice for one of several direct contracts, recorded Monday 18 May 2026. The whole work was completed on 30 June: the 90 days end on
/// 28 September. For those under that contract 30 days from the recording end on Wednesday 17 June, 60 on Friday 17 July; beside them the
/// 90 days stand, since only the notice itself says that the contract was complete then.
/// </summary>
public sealed class OneContractNoticeTests
{
    private static JobBuilder Job(string hiredBy, ClaimantRole role = ClaimantRole.Supplier, string? states = "2026-05-04",
        bool? several = true) => new JobBuilder()
        .Work(w => w with { SeveralDirectContracts = several }).Party("second", PartyCapacity.DirectContractor, "Second Builders")
        .Party("sub", PartyCapacity.Subcontractor).Role(role, hiredBy).Licensed("2020-01-01..")
        .Notice("2026-03-02", Manner.CertifiedMail, "owner", "direct", "second").Furnished("2026-03-02", 1000m).Ended("2026-04-06")
        .Completed("2026-06-30").OwnerRecorded("2026-05-18", states: states, contractOf: "direct").OwnerToldUs("2026-05-20");

    private static Finding Last(JobBuilder job) => job.On("2026-06-30").Get("claim-of-lien.last-day");

    [Theory]
    [InlineData("direct", ClaimantRole.Supplier, "2026-06-17 2026-09-28")] // under that contract
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
        Assert.Equal(shortens ? ["2026-06-17", "2026-09-28"] : ["2026-09-28"], last.DaysOf());
        Assert.Equal(!shortens, last.RuledOut("Civ. Code § 8186"));
    }

    [Fact]
    [Proves("Civ. Code § 8186")]
    public void Where_it_states_no_day_both_readings_stand() =>
        Assert.Equal(["2026-06-17", "2026-09-28"], Last(Job("direct", states: null)).DaysOf());

    // States completion of that contract on 20 May: recorded on some day from 10 to 30 May it takes effect from the 20th on. Thirty days
    // from the 20th end on 19 June, from the 30th on 29 June.
    [Fact]
    [Proves("Civ. Code § 8186")]
    public void Recorded_on_a_day_in_doubt_about_the_completion_it_states_it_may_take_effect_from_that_day() =>
        Assert.Equal(["2026-06-19", "2026-06-29", "2026-09-28"],
            Last(new JobBuilder().Work(w => w with { SeveralDirectContracts = true }).Notice("2026-03-02").Furnished("2026-03-02", 1000m)
                .Ended("2026-04-06")
            .Completed("2026-06-30").OwnerRecorded("2026-05-10..2026-05-30", states: "2026-05-20", contractOf: "direct")
            .OwnerToldUs("2026-05-30")).DaysOf());

    // The section is for two or more direct contracts. Where there may be one only, the notice for it may be one of the whole, or none;
    // whoever works under another shows that there are two, and so does a direct contractor, but not one who only sells to the owner.
    [Theory]
    [InlineData("direct", ClaimantRole.Supplier, null, "2026-06-17 2026-09-28")]
    [InlineData("direct", ClaimantRole.Supplier, false, "2026-06-17 2026-09-28")]
    [InlineData("second", ClaimantRole.Supplier, null, "2026-09-28")]
    [InlineData("second", ClaimantRole.Supplier, false, "2026-06-17 2026-09-28")]
    [InlineData("owner", ClaimantRole.DirectContractor, null, "2026-09-28")]
    [InlineData("owner", ClaimantRole.Supplier, null, "2026-06-17 2026-09-28")]
    [InlineData("owner", ClaimantRole.Supplier, true, "2026-09-28")]
    [Proves("Civ. Code § 8186")]
    public void Where_there_may_be_one_direct_contract_only_both_readings_stand(string hiredBy, ClaimantRole role, bool? several,
        string days)
    {
        var last = Last(Job(hiredBy, role, several: several));
        Assert.Equal(days.Split(' '), last.DaysOf());
        Assert.Equal(days.Length > 10, last.Asks(several is null ? "(work.severalDirectContracts)" : "(owner-recorded.contractOf)"));
    }

    // The whole was complete on 30 June. By the day that it states the notice of 7 July came too late, and by the true day in time
    // (§ 8182(c)(4)): 30 days from the recording end on 6 August.
    [Theory]
    [InlineData(true, "2026-09-28")]
    [InlineData(null, "2026-08-06 2026-09-28")]
    [Proves("Civ. Code § 8182(a)")]
    public void One_that_may_be_for_the_whole_is_in_time_by_the_completion_of_the_whole(bool? several, string days) =>
        Assert.Equal(days.Split(' '), new JobBuilder().Work(w => w with { SeveralDirectContracts = several }).Notice("2026-03-02")
            .Furnished("2026-03-02", 1000m).Ended("2026-04-06")
            .Completed("2026-06-30").OwnerRecorded("2026-07-07", states: "2026-05-04", contractOf: "direct").OwnerToldUs("2026-07-08")
            .On("2026-07-10").Get("claim-of-lien.last-day").DaysOf());

    [Fact]
    [Proves("Civ. Code § 8186")]
    public void It_says_nothing_of_the_completion_of_the_whole() =>
        Assert.Equal(["2026-06-30"], Job("direct").On("2026-06-30").Get("completion.day").DaysOf());

    // The notice is for one contract and the copy is due to the claimant: it counts where both hold, and what is open is said and asked.
    [Theory]
    [InlineData("direct", "2026-05-20", Verdict.Yes, "Civ. Code § 8190(a)", "")]
    [InlineData("direct", "2026-07-20", Verdict.No, "Civ. Code § 8190(c)", "")]
    [InlineData("direct", null, Verdict.Open, "Civ. Code § 8190(a)", "(owner-told-us.mailed)")]
    [InlineData("sub", "2026-05-20", Verdict.Open, "Civ. Code § 8186", "(parties.worksUnder)")]
    [InlineData("sub", "2026-07-20", Verdict.No, "Civ. Code § 8190(c)", "")]
    [InlineData("sub", null, Verdict.Open, "Civ. Code § 8186", "(parties.worksUnder) (owner-told-us.mailed)")]
    [InlineData("second", "2026-05-20", Verdict.No, "Civ. Code § 8186", "")]
    [InlineData("second", null, Verdict.No, "Civ. Code § 8186", "")]
    [Proves("Civ. Code § 8186")]
    [Proves("Civ. Code § 8190(c)")]
    public void It_counts_where_it_is_the_claimants_and_its_copy_was_given(string hiredBy, string? copy, Verdict expected, string section,
        string asked)
    {
        var job = Noticed(hiredBy, "2026-05-18", "2026-05-04");
        if (copy is not null)
            job.OwnerToldUs(copy);
        var notice = Assert.Single(OwnersNotice.Of(job.FactsOn("2026-08-01"), Law.Counting.OpenDays.Statutory));
        Assert.Equal((expected, section), (notice.ReachesClaimant, notice.ReachWhy.Section));
        var last = job.Completed("2026-06-30").On("2026-08-01").Get("claim-of-lien.last-day");
        foreach (var words in (string[])["(parties.worksUnder)", "(owner-told-us.mailed)"])
            Assert.Equal(asked.Split(' ').Contains(words), last.Asks(words));
    }

    private static JobBuilder Noticed(string hiredBy, string recorded, string? states, OwnerNotice kind = OwnerNotice.Completion,
        string? contractOf = "direct") => new JobBuilder()
        .Work(w => w with { SeveralDirectContracts = true }).Party("second", PartyCapacity.DirectContractor, "Second Builders")
        .Party("sub", PartyCapacity.Subcontractor).Role(ClaimantRole.Supplier, hiredBy)
        .Notice("2026-03-02", Manner.CertifiedMail, "owner", "direct", "second").Furnished("2026-03-02", 1000m)
        .OwnerRecorded(recorded, kind, states, contractOf);

    // The file says that there is one direct contract only: what the notice speaks of is asked of the notice.
    [Fact]
    [Proves("Civ. Code § 8186")]
    public void What_a_notice_of_the_only_contract_speaks_of_is_asked_of_its_entry()
    {
        var job = Job("direct", several: false);
        Assert.Equal([4], Last(job).Corrected("speak of the whole work, or of one contract only?"));
        Assert.IsType<OwnerRecorded>(job.Build().Entries[4]);
    }

    // Work went on to Wednesday 10 June. A notice of completion of the contract, in time by the day that it states, lets the claimant
    // record from the day after the recording (§ 8186(a)). Stated 4 May, it is in time from the 4th through Tuesday 19 May; in doubt it
    // surely is only where both ends are.
    [Theory]
    [InlineData("2026-05-18", "2026-05-04", "2026-05-19")]
    [InlineData("2026-05-20", "2026-05-04", "2026-06-11")]
    [InlineData("2026-05-03", "2026-05-04", "2026-06-11")]
    [InlineData("2026-05-10..2026-05-15", "2026-05-04", "2026-05-11 2026-05-16")]
    [InlineData("2026-05-10..2026-05-19", "2026-05-04", "2026-05-11 2026-05-20")]
    [InlineData("2026-05-15..2026-05-20", "2026-05-04", "2026-05-16 2026-06-11")]
    [InlineData("2026-05-01..2026-05-10", "2026-05-04", "2026-05-02 2026-06-11")]
    [InlineData("2026-05-20..2026-05-25", "2026-05-04", "2026-06-11")]
    [InlineData("2026-05-01..2026-05-03", "2026-05-04", "2026-06-11")]
    [InlineData("2026-05-18", null, "2026-05-19 2026-06-11")]
    [Proves("Civ. Code § 8186(a)")]
    public void Who_is_taken_to_have_ceased_by_a_notice_on_a_day_in_doubt_may_record_early_only_if_it_was_in_time(string recorded,
        string? states, string days)
    {
        var first = Noticed("direct", recorded, states).Furnished("2026-06-10", 1000m).On("2026-07-01").Get("claim-of-lien.first-day");
        Assert.Equal(days.Split(' '), first.DaysOf());
        Assert.Equal(days != "2026-06-11", first.Sections.Contains("Civ. Code § 8186(a)"));
    }

    // States 26 September 2026: the fifteenth day is Sunday 11 October. The courts sit on Monday the 12th, and only the State's list
    // carries it on to the 13th.
    [Theory]
    [InlineData("2026-10-12", "2026-10-13")]
    [InlineData("2026-10-13", "2026-10-14 2026-11-03")]
    [InlineData("2026-10-12..2026-10-13", "2026-10-13 2026-11-03")]
    [InlineData("2026-10-09..2026-10-12", "2026-10-10 2026-10-13")]
    [Proves("Civ. Code § 8186(a)")]
    [Proves("Civ. Code § 10")]
    public void One_in_time_only_by_a_holiday_that_the_courts_do_not_keep_leaves_both_first_days(string recorded, string days) =>
        Assert.Equal(days.Split(' '), Noticed("direct", recorded, "2026-09-26").Furnished("2026-11-02", 1000m).On("2026-11-20")
            .Get("claim-of-lien.first-day").DaysOf());

    // The section speaks of a notice of completion of one contract, and of no other notice.
    [Theory]
    [InlineData(OwnerNotice.Completion, "direct", true)]
    [InlineData(OwnerNotice.Completion, null, false)]
    [InlineData(OwnerNotice.Cessation, "direct", false)]
    [InlineData(OwnerNotice.Cessation, null, false)]
    [Proves("Civ. Code § 8186(a)")]
    public void Only_a_notice_of_completion_of_one_contract_lets_a_claimant_record_before_it_ceases(OwnerNotice kind, string? contractOf,
        bool deemed)
    {
        foreach (var hiredBy in (string[])["direct", "sub"])
        {
            var first = Noticed(hiredBy, "2026-05-18", "2026-05-04", kind, contractOf).Furnished("2026-06-10", 1000m).On("2026-07-01")
                .Get("claim-of-lien.first-day");
            Assert.Equal(deemed, first.Sections.Contains("Civ. Code § 8186(a)"));
        }
    }
}
