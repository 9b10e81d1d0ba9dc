namespace Stringline.Published;

/// <summary>
/// Worked examples of chains on private, public and federal work. Source of every expected day: computed apart, with Python's own calendar
/// arithmetic, from the words of the section, not with this project's code. Statutory last days, not rolled.
/// </summary>
public sealed class WorkedChains
{
    /// <summary>90 days from completion, no notice of completion (§§ 8412(a), 8414(b)(1)).</summary>
    [Theory]
    [InlineData("2024-01-15", "2024-04-14", "a leap February inside; a Sunday")]
    [InlineData("2024-02-01", "2024-05-01", "leap year")]
    [InlineData("2025-02-01", "2025-05-02", "the same span in a common year")]
    [InlineData("2025-03-09", "2025-06-07", "a Saturday")]
    [InlineData("2026-06-11", "2026-09-09", "Admission Day")]
    [InlineData("2025-12-31", "2026-03-31", "31 March")]
    [InlineData("2027-10-03", "2028-01-01", "Saturday 1 January")]
    [Proves("Civ. Code § 8414(b)")]
    [Proves("Civ. Code § 8412")]
    public void Ninety_days_after_completion(string completed, string lastDay, string about)
    {
        Check(about, Done(Subcontractor(), completed), completed, LastDayToRecord(lastDay));
        Check(about, Done(DirectContractor(), completed), completed, LastDayToRecord(lastDay));
    }

    /// <summary>
    /// 30 days, or 60 for a direct contractor, from the recording of a notice of completion; completed the same day, copy given.
    /// </summary>
    [Theory]
    [InlineData(false, "2024-12-02", "2025-01-01", "New Year's Day")]
    [InlineData(false, "2026-05-20", "2026-06-19", "Juneteenth")]
    [InlineData(false, "2027-11-25", "2027-12-25", "Saturday 25 December")]
    [InlineData(true, "2026-05-05", "2026-07-04", "Saturday 4 July")]
    [InlineData(true, "2027-05-05", "2027-07-04", "Sunday 4 July")]
    [Proves("Civ. Code § 8412(b)")]
    [Proves("Civ. Code § 8414(b)(2)")]
    public void Thirty_or_sixty_days_after_a_notice_of_completion(bool direct, string recorded, string lastDay, string about) =>
        Check(about, Done(direct ? DirectContractor() : Subcontractor(), recorded).OwnerRecorded(recorded, states: recorded)
            .OwnerToldUs(recorded), recorded, LastDayToRecord(lastDay));

    /// <summary>90 days to sue from the recording of the claim (§ 8460(a)).</summary>
    [Theory]
    [InlineData("2026-08-28", "2026-11-26", "Thanksgiving")]
    [InlineData("2026-07-14", "2026-10-12", "Columbus Day")]
    [Proves("Civ. Code § 8460(a)")]
    public void Ninety_days_to_sue(string recorded, string lastDay, string about) =>
        Check(about, Done(Subcontractor(), "2026-06-30").ClaimRecorded(recorded), recorded, LastDayToSue(lastDay));

    /// <summary>20 days from first furnishing, and the look-back of a late notice (§ 8204(a)).</summary>
    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void Twenty_days_for_the_preliminary_notice_forward_and_back()
    {
        Check("ends on Friday 3 July, observed", Subcontractor().Furnished("2026-06-13"), "2026-06-20",
            Days("preliminary-notice.last-day", "2026-07-03"));
        Check("a notice of 31 July covers work from 11 July; the day before is out",
            Subcontractor()
                .Furnished("2026-06-01", 100.00m)
                .Furnished("2026-07-10", 20.00m)
                .Furnished("2026-07-11", 3.00m)
                .Notice("2026-07-31"),
            "2026-08-15",
            Days("preliminary-notice.reaches-back-to", "2026-07-11"),
            Step("outside-reach", -120.00m),
            Demand(3.00m));
        Check("mailed on the twentieth day is in time, on the twenty-first late",
            Subcontractor().Furnished("2026-06-01", 100.00m).Notice("2026-06-21"), "2026-08-15",
            Is("preliminary-notice.last-day", Standing.Kept), Demand(100.00m));
        Check("mailed on the twenty-first day loses the first",
            Subcontractor().Furnished("2026-06-02", 100.00m).Furnished("2026-06-03", 7.00m).Notice("2026-06-23"), "2026-08-15",
            Is("preliminary-notice.last-day", Standing.Narrowed), Demand(7.00m));
        Check("but where the twentieth day is a Sunday, a Monday's notice cuts nothing",
            Subcontractor().Furnished("2026-06-01", 100.00m).Furnished("2026-06-02", 7.00m).Notice("2026-06-22"), "2026-08-15",
            Is("preliminary-notice.last-day", Standing.InDoubt), Demand(107.00m));
    }

    /// <summary>
    /// 60 idle days complete the work, so the 90 end on day 150; a notice of cessation completes it on its recording (§ 8180(a)(3), (4)).
    /// </summary>
    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    [Proves("Civ. Code § 8180(a)(4)")]
    [Proves("Civ. Code § 8188(a)")]
    public void Idle_days_and_a_notice_of_cessation()
    {
        Check("last labor 2 February, and whether it was finished then is not told: both, the earlier to plan on", Idle()
            .LaborCeased("2026-02-02"), "2026-05-01",
            CompletedOn("2026-02-02", "2026-04-03"), PlannedOn("claim-of-lien.last-day", "2026-05-01"));
        Check("last labor 2 February: left unfinished: complete 3 April, last day 2 July, day 150", Idle()
            .LaborCeased("2026-02-02", unfinished: true), "2026-05-01",
            CompletedOn("2026-04-03"), LastDayToRecord("2026-07-02"));
        Check("notice of cessation on the thirty-first day, copy given: 30 days from it", Ceased("2026-03-05"), "2026-03-20",
            LastDayToRecord("2026-04-04"));
        Check("on the thirtieth thirty days may not have run before it: planned on, never lost on", Ceased("2026-03-04"), "2026-05-10",
            PlannedOn("claim-of-lien.last-day", "2026-04-03"), Is("claim-of-lien.last-day", Standing.InDoubt));
        Check("on the twenty-ninth: no effect", Ceased("2026-03-03"), "2026-05-01",
            RuledOut("completion.day", "Civ. Code § 8188(a)"), LastDayToRecord("2026-07-02"));
    }

    private static JobBuilder Idle() =>
        Subcontractor().NoticeNotInIssue("2026-01-05").Furnished("2026-01-05", until: "2026-02-02").Ended("2026-02-02");

    private static JobBuilder Ceased(string recorded) => Idle()
        .LaborCeased("2026-02-02", unfinished: true)
        .OwnerRecorded(recorded, OwnerNotice.Cessation, states: "2026-02-02")
        .OwnerToldUs(recorded, OwnerNotice.Cessation);

    /// <summary>The owner's copy: ten days, and who is owed none (§ 8190).</summary>
    [Fact]
    [Proves("Civ. Code § 8190(a)")]
    [Proves("Civ. Code § 8190(c)")]
    [Proves("Civ. Code § 8190(d)(1)")]
    public void The_owners_copy_decides_whom_a_notice_of_completion_shortens()
    {
        Check("copy mailed on the tenth day", Noticed().OwnerToldUs("2026-06-15", mailed: "2026-06-11"), "2026-06-20",
            LastDayToRecord("2026-07-01"));
        Check("copy mailed on the eleventh day, a Friday", Noticed().OwnerToldUs("2026-06-15", mailed: "2026-06-12"), "2026-06-20",
            LastDayToRecord("2026-08-29"));
        Check("nobody knows of a copy", Noticed(), "2026-06-20", LastDayToRecord("2026-07-01", "2026-08-29"));
        Check("the owner lives there, up to four units", Noticed().Work(w => w with { Use = WorkUse.OwnerOccupiedOneToFour }), "2026-06-20",
            LastDayToRecord("2026-07-01"));
    }

    private static JobBuilder Noticed() => Done(Subcontractor(), "2026-05-31").OwnerRecorded("2026-06-01", states: "2026-05-31");

    /// <summary>
    /// Stop payment notice: the same last day as the claim; sue after ten days, and within 90 after the end of the time to give it
    /// (§§ 8508(b), 8550).
    /// </summary>
    [Fact]
    [Proves("Civ. Code § 8508(b)")]
    [Proves("Civ. Code § 8550(a)")]
    [Proves("Civ. Code § 8550(b)")]
    public void The_stop_payment_notice_chains_to_the_time_to_record() =>
        Check("given 15 June, completed 31 May", Done(Subcontractor(), "2026-05-31").StopPayment("2026-06-15", "owner"), "2026-06-20",
            LastDayToRecord("2026-08-29"),
            Days("stop-payment-notice.last-day", "2026-08-29"),
            Days("stop-payment-notice.action-first-day", "2026-06-26"),
            Days("stop-payment-notice.action-last-day", "2026-11-27"));

    /// <summary>
    /// Payment bond of a private work: 75 days, or 15 from a recorded notice of completion; six months on both readings (§§ 8610, 8612).
    /// </summary>
    [Fact]
    [Proves("Civ. Code § 8610")]
    [Proves("Civ. Code § 8612(b)")]
    [Proves("Gov. Code § 6803")]
    [Proves("Gov. Code § 6804")]
    public void The_payment_bond_of_a_private_work()
    {
        Check("completed 31 March, bond recorded before; no preliminary notice, nothing recorded, the index searched after the 15 days",
            Bonded("2026-03-31").IndexSearched("2026-04-16"), "2026-04-16",
            Days("payment-bond.notice-last-day", "2026-06-14"),
            Days("payment-bond.action-last-day", "2026-09-29", "2026-09-30"));
        Check("the same, while a notice of completion may have been recorded unseen on or within 15 days after completion",
            Bonded("2026-03-31"), "2026-04-15",
            Days("payment-bond.notice-last-day", "2026-04-15", "2026-04-30", "2026-06-14"));
        Check("notice of completion recorded on the day", Bonded("2026-03-31").OwnerRecorded("2026-03-31", states: "2026-03-31"),
            "2026-04-10",
            Days("payment-bond.notice-last-day", "2026-04-15"));
        Check("completed 31 August, leap-year February", Bonded("2027-08-31"), "2027-09-15",
            Days("payment-bond.action-last-day", "2028-02-29"));
    }

    private static JobBuilder Bonded(string completed) => Subcontractor()
        .PaymentBond("2026-01-12")
        .Furnished("2026-02-02", until: "2026-03-02")
        .Ended("2026-03-02")
        .Completed(completed);

    /// <summary>
    /// Public work accepted 10 February 2026, nothing recorded; and with a notice of completion recorded 1 June 2026 (§§ 9356, 9502, 9558,
    /// 9560).
    /// </summary>
    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    [Proves("Civ. Code § 9356(b)")]
    [Proves("Civ. Code § 9502(b)")]
    [Proves("Civ. Code § 9558")]
    [Proves("Civ. Code § 9560(b)")]
    public void The_two_chains_of_public_work()
    {
        var furnished = CaseFile.Begin(ClaimantRole.Supplier, "sub").PublicWork().Furnished("2025-12-01").Ended("2025-12-22");
        Check("accepted 10 February, nothing recorded, the index searched after the 15 days",
            furnished.Completed("2026-02-10", CompletionTheory.Acceptance).IndexSearched("2026-02-26"), "2026-03-02",
            Days("stop-payment-notice.last-day", "2026-05-11"),
            Days("payment-bond.notice-last-day", "2026-04-26"),
            Days("stop-payment-notice.action-last-day", "2026-08-09"),
            Days("payment-bond.action-last-day", "2026-11-09", "2026-11-11"),
            PlannedOn("payment-bond.notice-last-day", "2026-04-23"), // Friday 24 April is a State holiday (Gov. Code § 6700)
            PlannedOn("stop-payment-notice.action-last-day", "2026-08-07"),
            PlannedOn("payment-bond.action-last-day", "2026-11-09"));
        var noticed = CaseFile.Begin(ClaimantRole.Supplier, "sub").PublicWork().Furnished("2025-12-01").Ended("2025-12-22")
            .Completed("2026-05-28", CompletionTheory.Acceptance).OwnerRecorded("2026-06-01", states: "2026-05-28");
        Check("notice of completion recorded 1 June", noticed, "2026-06-08",
            Days("stop-payment-notice.last-day", "2026-07-01"),
            Days("payment-bond.notice-last-day", "2026-06-16"),
            Days("stop-payment-notice.action-last-day", "2026-09-29"),
            Days("payment-bond.action-last-day", "2026-12-30", "2027-01-01"),
            PlannedOn("payment-bond.action-last-day", "2026-12-30"));
    }

    /// <summary>Federal work, last furnished 15 April 2026 (40 U.S.C. § 3133(b), text from memory).</summary>
    [Fact]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    [Proves("40 U.S.C. § 3133(b)(4)")]
    public void The_bond_of_a_federal_work() =>
        Check("last furnished 15 April 2026 to a subcontractor", ToSubcontractor(ClaimantRole.Supplier)
            .Work(w => w with { Kind = WorkKind.Federal }).Furnished("2026-03-02", until: "2026-04-15"), "2026-05-01",
            Days("federal-bond.notice-last-day", "2026-07-14"),
            Days("federal-bond.action-first-day", "2026-07-15"),
            Days("federal-bond.action-last-day", "2027-04-15"));

    /// <summary>Two percent a month: $12,000.00 wrongly held for three whole months is $720.00 (§ 8800(c)).</summary>
    [Fact]
    [Proves("Civ. Code § 8800(a)")]
    [Proves("Civ. Code § 8800(c)")]
    public void Two_percent_a_month() =>
        Check("demanded 1 June, due 1 July, asked 1 October", DirectContractor().Furnished("2026-03-02")
            .PaymentDemanded("2026-06-01", 12000.00m), "2026-10-01",
            Amount("prompt-payment.progress", 720.00m));

    private static JobBuilder Done(JobBuilder file, string completed)
    {
        var started = LawText.IsoDay(JobBuilder.Day(completed).PlusDays(-40));
        var ended = LawText.IsoDay(JobBuilder.Day(completed).PlusDays(-1));
        return file.NoticeNotInIssue(started).Furnished(started, until: ended).Ended(ended).Completed(completed);
    }

    private static void Check(string about, JobBuilder file, string asOf, params Expectation[] expected)
    {
        var answer = new Take(about, file, asOf).Assess();
        Assert.All(expected, e => Assert.Null(e(answer)));
    }
}
