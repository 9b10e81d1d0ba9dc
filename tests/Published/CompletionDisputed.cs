namespace Stringline.Published;

/// <summary>Cases on whether, and for whom, the work was complete, and on a last day that is a holiday.</summary>
public sealed class CompletionDisputed
{
    [Fact]
    [Proves("Civ. Code § 8180(b)")]
    [Proves("Civ. Code § 8412")]
    public void C_32_an_agencys_approval_is_no_acceptance() => new CaseNote
    {
        Number = "C-32",
        Citation = "In re El Dorado Improvement Corp. (Sundt Construction v. Dynamic Finance) (9th Cir. 2003) 335 F.3d 835",
        Read = "excerpts; a summary; a note. No days are in what was read: those here are made up",
        Law = "Civ. Code §§ 3086, 3115 → 8180(b), 8412",
        Facts = "A direct contractor built for a private owner. A redevelopment agency had a right to approve the plans and to certify "
            + "completion. The claim was in time from the certificate, "
            + "late from actual completion.",
        Question = "Is an agency's approval the acceptance on which the time waits?",
        Held = "No. That is for works in which the public takes an interest. The lien is invalid.",
        Then = "The time ran from actual completion; too late.",
        Now = "The same: the day from actual completion is the one to act on, whatever the file calls the approval; whether the public "
            + "takes over what is built is asked.",
        Takes =
        [
            new("before it was decided: act on actual completion, and ask", Built(null),
                "2003-02-03",
                PlannedOn("claim-of-lien.last-day", "2002-12-20"),
                LastDayToRecord("2002-12-22", "2003-04-03"),
                RecordedInTimeIsInDoubt,
                Asks("completion.day", "(work.publicTakesOver)"),
                Says("completion.day", "El Dorado")),

            new("as the court held: the agency only approves", Built(false),
                "2003-02-03",
                CompletedOn("2002-09-23"),
                LastDayToRecord("2002-12-22"),
                RecordedTooLate),
        ],
    }.Holds();

    private static JobBuilder Built(bool? takesOver) => DirectContractor()
        .SubjectToAcceptanceBy("the redevelopment agency", takesOver)
        .Furnished("2001-10-01", until: "2002-09-23")
        .Ended("2002-09-23")
        .Completed("2002-09-23")
        .Completed("2003-01-03", CompletionTheory.Acceptance)
        .ClaimRecorded("2003-02-03");

    [Fact]
    [Proves("Civ. Code § 8186")]
    public void C_33_a_notice_for_anothers_contract_does_not_shorten_the_time() => new CaseNote
    {
        Number = "C-33",
        Citation = "Scott, Blake & Wynne v. Summit Ridge Estates (1967) 251 Cal.App.2d 347",
        Read = "excerpt; one summary. No days are in what was read: those here are made up",
        Law = "Code Civ. Proc. §§ 1193, 1193.1 → Civ. Code §§ 8186, 8412",
        Facts = "An engineer and surveyor with a contract of its own with the developer of a tract. The owner recorded notices of "
            + "completion for other contractors' work.",
        Question = "Do they shorten this claimant's time?",
        Held = "No; foreclosure affirmed.",
        Then = "The time ran from completion of the whole.",
        Now = "The same: a notice for one direct contract moves nobody's time who works under another, one hired by the owner itself "
            + "included.",
        Takes =
        [
            new("as the court held", DesignProfessional()
                    .Party("grader", PartyCapacity.DirectContractor, "Sorrel Grading Inc.")
                    .Work(w => w with { SeveralDirectContracts = true })
                    .Furnished("1964-02-03", until: "1964-06-30")
                    .Ended("1964-06-30")
                    .OwnerRecorded("1964-07-10", states: "1964-07-06", contractOf: "grader")
                    .Completed("1964-08-31")
                    .ClaimRecorded("1964-10-15"),
                "1964-10-20",
                LastDayToRecord("1964-11-29"),
                RuledOut("claim-of-lien.last-day", "Civ. Code § 8186"),
                RecordedInTime),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8180(a)(1)")]
    public void C_36_work_still_needed_shows_that_the_building_was_not_complete() => new CaseNote
    {
        Number = "C-36",
        Citation = "Hammond Lumber v. Barth Investment (1927) 202 Cal. 606",
        Read = "one summary. No days are in what was read: those here are made up",
        Law = "Code Civ. Proc. § 1187 → Civ. Code § 8180(a)(1)",
        Facts = "A supplier's claim. The owner said that the building was complete on a day after which work was done that the city's "
            + "approval needed.",
        Question = "Was the work complete on that day?",
        Held = "No. The supplier's lien is good.",
        Then = "The time ran from the later completion.",
        Now = "While the only completion is contested no end of the time is known; the day of the contention is planned on, and a claim "
            + "after it is in doubt, never lost.",
        Takes =
        [
            new("while the owner's day is contested", Lumber(),
                "1925-09-01",
                PlannedOn("claim-of-lien.last-day", "1925-05-29"),
                Band("claim-of-lien.last-day", "1925-05-30", null),
                Band("completion.day", "1925-03-01", null),
                RecordedInTimeIsInDoubt,
                Asks("completion.day", "contested")),

            new("as the court held: complete with the work that was still needed", Lumber().Completed("1925-05-11"),
                "1925-09-01",
                Band("claim-of-lien.last-day", "1925-05-30", "1925-08-09"),
                RecordedInTimeIsInDoubt),
        ],
    }.Holds();

    private static JobBuilder Lumber() => Supplier()
        .NoticeNotInIssue("1924-11-03")
        .Furnished("1924-11-03", until: "1925-03-01")
        .Ended("1925-03-01")
        .Completed("1925-03-01", contested: true)
        .ClaimRecorded("1925-07-01");

    [Fact]
    [Proves("Civ. Code § 10")]
    [Proves("Code Civ. Proc. § 12a")]
    public void A_last_day_to_record_that_is_a_holiday_is_never_lost_on_the_day_after() => new CaseNote
    {
        Number = "C-40, recording",
        Citation = "Mox, Inc. v. Leventhal (1928) 89 Cal.App. 253",
        Read = "excerpt with all days; one summary",
        Law = "Code Civ. Proc. § 1190, Civ. Code § 10 → Civ. Code §§ 8414, 7, 10, Code Civ. Proc. §§ 12a, 135",
        Facts = "The ninetieth day was a Monday holiday after a Sunday; the act was done the next day.",
        Question = "Was it in time?",
        Held = "Yes, for the suit on a lien; the recording of one is counted by the same sections.",
        Then = "In time.",
        Now = "Planned on the open day before; a recording on the day to which any list rolls the last day is in doubt, never lost. The "
            + "days here are made up: the ninetieth day is Columbus Day, "
            + "Monday 12 October 2026, a holiday of the Government Code on which the courts sit.",
        Takes =
        [
            new("recorded on the Tuesday", Rolled("2026-10-13"), "2026-11-02",
                LastDayToRecord("2026-10-12"),
                PlannedOn("claim-of-lien.last-day", "2026-10-09"),
                RecordedInTimeIsInDoubt),

            new("recorded on the Wednesday", Rolled("2026-10-14"), "2026-11-02",
                RecordedTooLate),

            new("not recorded, asked on the Tuesday: record today", Rolled(null), "2026-10-13",
                Is("claim-of-lien.last-day", Standing.InDoubt)),

            new("asked on the Wednesday", Rolled(null), "2026-10-14",
                Is("claim-of-lien.last-day", Standing.Lost)),
        ],
    }.Holds();

    private static JobBuilder Rolled(string? recorded)
    {
        var file = Supplier().NoticeNotInIssue("2026-03-02").Furnished("2026-03-02").Ended("2026-07-01").Completed("2026-07-14");
        return recorded is null ? file : file.ClaimRecorded(recorded);
    }
}
