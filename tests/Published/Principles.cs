namespace Stringline.Published;

/// <summary>
/// Decisions that settle a rule but gave no full set of days or dollars in what was read. Where a day or a sum is ours the note says so.
/// </summary>
public sealed class Principles
{
    private const string Ours = "The days and sums are ours; only the rule is the court's. ";

    [Fact]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void P_01_a_lender_that_comes_on_record_after_the_first_day_of_work_need_not_be_told() => new CaseNote
    {
        Number = "P-01",
        Citation = "Kodiak Industries v. Ellis (1986) 185 Cal.App.3d 75",
        Read = "opening of the opinion; one summary",
        Law = "Civ. Code § 3097 → 8200(a)(3)",
        Facts = Ours + "A plumber began before any lender was known or of record; a construction deed of trust was recorded later, even "
            + "inside the 20 days.",
        Question = "Must that lender be told?",
        Held = "No: the record is looked at on the first day of work only.",
        Then = "The lien is good.",
        Now = "The same. While nobody says since when the lender was known, the lien is in doubt, not lost.",
        Takes =
        [
            new("as held: of record from the second day of work", Plumber()
                .Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: "2026-01-06"), "2026-04-01",
                Is("preliminary-notice.last-day", Standing.Kept),
                Is("lien-right", Standing.Open)),

            new("of record on the first day of work: it had to be told", Plumber()
                .Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: "2026-01-05"), "2026-04-01",
                Is("preliminary-notice.last-day", Standing.InDoubt)),

            new("while nobody says since when", Plumber().Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank"), "2026-04-01",
                Is("preliminary-notice.last-day", Standing.InDoubt),
                Asks("preliminary-notice.last-day", "Quay Street Bank"),
                IsNot("lien-right", Standing.Lost)),
        ],
    }.Holds();

    private static JobBuilder Plumber() => Subcontractor()
        .Furnished("2026-01-05", 8000.00m, until: "2026-03-31")
        .Ended("2026-03-31")
        .Notice("2026-01-08");

    [Fact]
    [Proves("Civ. Code § 8200(c)")]
    [Proves("Civ. Code § 8200(a)")]
    public void P_02_a_direct_contractor_left_out_leaves_the_lien_in_doubt_not_lost() => new CaseNote
    {
        Number = "P-02",
        Citation = "Industrial Asphalt v. Garrett (1986) 180 Cal.App.3d 1001",
        Read = "opening of the opinion",
        Law = "Civ. Code § 3097 → 8200",
        Facts = Ours + "A supplier gave preliminary notice to the owner, not to the direct contractor (later bankrupt).",
        Question = "Is the lien against that owner good?",
        Held = "Yes.",
        Then = "Good against that owner.",
        Now = "In doubt: § 8200(a)(2) names the direct contractor.",
        Takes =
        [
            new("owner told, contractor not", Supplier()
                    .Furnished("2026-01-05", 8000.00m)
                    .Ended("2026-01-05")
                    .Notice("2026-01-08", Manner.CertifiedMail, "owner"),
                "2026-02-01",
                Is("preliminary-notice.last-day", Standing.InDoubt),
                Asks("preliminary-notice.last-day", "direct contractor"),
                Is("lien-right", Standing.InDoubt),
                Demand(8000.00m)),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 8200(a)")]
    public void P_03_a_notice_before_the_first_delivery_to_a_reputed_owner_is_good() => new CaseNote
    {
        Number = "P-03",
        Citation = "Brown Co. v. Appellate Department (1983) 148 Cal.App.3d 891",
        Read = "opening of the opinion; one summary",
        Law = "Civ. Code § 3097 → 8200, 8204",
        Facts = Ours + "Notice given before the first delivery, to one named in good faith as the owner.",
        Question = "Is it too early? Will a reputed owner do?",
        Held = "It is not too early; a reputed owner named in good faith will do.",
        Then = "Good.",
        Now = "The same.",
        Takes =
        [
            new("five weeks before the first delivery", Supplier()
                    .NoParty("owner")
                    .Party("reputed", PartyCapacity.Owner, "The reputed owner", reputed: true)
                    .Notice("2026-01-05", Manner.CertifiedMail, "reputed", "direct")
                    .Furnished("2026-02-09", 8000.00m)
                    .Ended("2026-02-09"),
                "2026-03-01",
                Is("preliminary-notice.last-day", Standing.Kept),
                Demand(8000.00m),
                NoStep("outside-reach")),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8106")]
    [Proves("Civ. Code § 8110")]
    public void P_04_first_class_mail_is_no_manner_of_giving_notice() => new CaseNote
    {
        Number = "P-04",
        Citation = "IGA Aluminum v. Manufacturers Bank (1982) 130 Cal.App.3d 699",
        Read = "opening of the opinion",
        Law = "Civ. Code § 3097 → 8106, 8110",
        Facts = Ours + "A notice sent by first-class mail; nobody was harmed by it.",
        Question = "Is it good for want of harm?",
        Held = "No.",
        Then = "Stop notice lost.",
        Now = "The same, lien and stop payment notice; a certificate of mailing does not help (it does only for the copy of the claim, "
            + "§ 8416(c)(1)). Each manner of § 8110 does.",
        Takes =
        [
            new("first-class with a certificate of mailing", Mailed(Manner.CertificateOfMailing), "2026-03-01",
                Is("preliminary-notice.last-day", Standing.Lost),
                RuledOut("preliminary-notice.last-day", "Civ. Code § 8110"),
                Is("stop-payment-notice.owner", Standing.Lost),
                Demand(0m)),
            new("certified", Mailed(Manner.CertifiedMail), "2026-03-01", Is("preliminary-notice.last-day", Standing.Kept),
                Demand(8000.00m)),
            new("registered", Mailed(Manner.RegisteredMail), "2026-03-01", Is("preliminary-notice.last-day", Standing.Kept),
                Demand(8000.00m)),
            new("express", Mailed(Manner.ExpressMail), "2026-03-01", Is("preliminary-notice.last-day", Standing.Kept), Demand(8000.00m)),
            new("overnight", Mailed(Manner.OvernightCarrier), "2026-03-01", Is("preliminary-notice.last-day", Standing.Kept),
                Demand(8000.00m)),
        ],
    }.Holds();

    private static JobBuilder Mailed(Manner manner) => Supplier()
        .Furnished("2026-01-05", 8000.00m)
        .Ended("2026-01-05")
        .Notice("2026-01-08", manner);

    [Fact]
    [Proves("Civ. Code § 8200(e)(1)")]
    [Proves("Civ. Code § 8200(e)(2)")]
    public void P_05_a_laborer_and_one_hired_by_the_owner_need_give_no_notice() => new CaseNote
    {
        Number = "P-05",
        Citation = "Kim v. JF Enterprises (1996) 42 Cal.App.4th 849",
        Read = "opening of the opinion; one summary",
        Law = "Civ. Code § 3097 → 8200",
        Facts = Ours + "No notice was given to anyone.",
        Question = "Who is excused?",
        Held = "The rule is strict; those who work for wages and those in direct contract with the owner need none.",
        Then = "Lost for everyone else.",
        Now = "The same; where there is a lender, one hired by the owner tells the lender.",
        Takes =
        [
            new("a laborer", Begin(ClaimantRole.Laborer, "direct").Furnished("2026-01-05", 8000.00m).Ended("2026-01-05"), "2026-03-01",
                Is("preliminary-notice.last-day", Standing.Kept), Silent("preliminary-notice.reaches-back-to"), Demand(8000.00m)),
            new("a direct contractor", DirectContractor().Furnished("2026-01-05", 8000.00m).Ended("2026-01-05"), "2026-03-01",
                Is("preliminary-notice.last-day", Standing.Kept), Demand(8000.00m)),
            new("a supplier to the owner", SupplierToOwner().Furnished("2026-01-05", 8000.00m).Ended("2026-01-05"), "2026-03-01",
                Is("preliminary-notice.last-day", Standing.Kept), Demand(8000.00m)),
            new("a subcontractor", Subcontractor().Furnished("2026-01-05", 8000.00m).Ended("2026-01-05"), "2026-03-01",
                Is("preliminary-notice.last-day", Standing.Lost), Is("lien-right", Standing.Lost), Demand(0m)),
            new("a supplier to the direct contractor", Supplier().Furnished("2026-01-05", 8000.00m).Ended("2026-01-05"), "2026-03-01",
                Is("preliminary-notice.last-day", Standing.Lost), Demand(0m)),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 8490")]
    public void P_06_missing_the_ninety_days_kills_the_recorded_claim_not_the_right() => new CaseNote
    {
        Number = "P-06",
        Citation = "Koudmani v. Ogle Enterprises (1996) 47 Cal.App.4th 1650",
        Read = "opening of the opinion",
        Law = "Civ. Code § 3144 → 8460",
        Facts = Ours + "A recorded claim was not sued on in 90 days.",
        Question = "May the claimant record again?",
        Held = "Yes, in time; and releasing one claim does not end the right unless it says that the debt is satisfied.",
        Then = "A new claim may be recorded.",
        Now = "The same, sister of C-12 and C-13.",
        Takes =
        [
            new("expired, the work still going on", Expired(), "2026-06-01",
                LastDayToSue("2026-05-21"),
                Is("enforcement.last-day", Standing.Lost),
                Says("lien-right", "a new claim may be recorded"),
                Is("lien-right", Standing.InDoubt)),

            new("expired, completed long enough ago to leave time", Expired().Completed("2026-05-30"), "2026-06-01",
                LastDayToRecord("2026-08-28"),
                Is("lien-right", Standing.Open),
                NoObstacle),

            new("expired, and the time to record over", Expired().Completed("2026-03-01"), "2026-06-02",
                LastDayToRecord("2026-05-30"),
                Is("lien-right", Standing.Lost)),

            new("released, the debt not satisfied, and the time to record still running", Expired().Completed("2026-05-30")
                .ReleaseRecorded("2026-06-02", satisfied: false), "2026-06-15",
                LastDayToRecord("2026-08-28"),
                Is("claim-of-lien.last-day", Standing.Open),
                Is("lien-right", Standing.Open),
                NoObstacle),

            new("released as satisfied", Expired().Completed("2026-05-30").ReleaseRecorded("2026-06-02", satisfied: true), "2026-06-15",
                Is("lien-right", Standing.Done),
                Obstacle("Civ. Code § 8490")),

            new("released, the debt not satisfied, and recorded again", Expired().Completed("2026-05-30")
                .ReleaseRecorded("2026-06-02", satisfied: false).ClaimRecorded("2026-06-10"), "2026-06-15",
                RecordedInTime,
                LastDayToSue("2026-09-08"),
                Is("lien-right", Standing.Open)),

            new("released and recorded again, while the file does not say what the release says", Expired().Completed("2026-05-30")
                .ReleaseRecorded("2026-06-02").ClaimRecorded("2026-06-10"), "2026-06-15",
                RecordedInTime,
                LastDayToSue("2026-09-08"),
                Is("lien-right", Standing.InDoubt),
                Asks("lien-right", "satisfied")),
        ],
    }.Holds();

    private static JobBuilder Expired() => Subcontractor()
        .NoticeNotInIssue("2026-01-05")
        .Furnished("2026-01-05", 8000.00m, until: "2026-02-19")
        .Ended("2026-02-19")
        .ClaimRecorded("2026-02-20");

    [Fact]
    [Proves("Civ. Code § 8182(a)")]
    [Proves("Civ. Code § 8182(d)")]
    public void P_07_a_notice_of_completion_recorded_before_completion_does_not_start_the_thirty_days() => new CaseNote
    {
        Number = "P-07",
        Citation = "Munger & Munger v. McBratney (1955) 131 Cal.App.2d Supp. 866",
        Read = "opening of the opinion",
        Law = "Code Civ. Proc. § 1193.1 → Civ. Code § 8182",
        Facts = Ours + "The owner recorded a notice of completion two days before the work was complete.",
        Question = "Does it start the 30 days?",
        Held = "No.",
        Then = "90 days.",
        Now = "The same: 29 August 2026. The day that the owner states, two days earlier, stays as a reading beside ours and gives 28 "
            + "June, the safer day to plan on. "
            + "A notice counts from the day of completion to the fifteenth after it.",
        Takes =
        [
            new("two days too early", Framing().OwnerRecorded("2026-05-29", states: "2026-05-29").OwnerToldUs("2026-06-01"), "2026-06-15",
                RuledOut("claim-of-lien.last-day", "Civ. Code § 8182(d)"),
                Band("claim-of-lien.last-day", "2026-06-28", "2026-08-29")),

            new("on the day of completion", Framing().OwnerRecorded("2026-05-31", states: "2026-05-31").OwnerToldUs("2026-06-01"),
                "2026-06-15",
                LastDayToRecord("2026-06-30")),

            new("on the fifteenth day after it", Framing().OwnerRecorded("2026-06-15", states: "2026-05-31").OwnerToldUs("2026-06-16"),
                "2026-06-20",
                LastDayToRecord("2026-07-15")),

            new("on the sixteenth", Framing().OwnerRecorded("2026-06-16", states: "2026-05-31").OwnerToldUs("2026-06-17"), "2026-06-20",
                LastDayToRecord("2026-08-29")),
        ],
    }.Holds();

    private static JobBuilder Framing() => Subcontractor()
        .NoticeNotInIssue("2026-04-01")
        .Furnished("2026-04-01", 8000.00m, until: "2026-05-31")
        .Ended("2026-05-31")
        .Completed("2026-05-31");

    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    [Proves("Civ. Code § 8414(b)")]
    public void P_08_curing_a_defect_after_completion_and_finishing_ones_own_promise_are_two_things() => new CaseNote
    {
        Number = "P-08",
        Citation = "Hundley (C-05) and Mott (C-06) beside Precision Framing (C-02)",
        Read = "see there",
        Law = "Civ. Code § 8414",
        Facts = Ours + "Framing ends on 31 May 2026. Claim recorded 10 June. On 20 June the framer, or one of its lower tier, is back for "
            + "two hours.",
        Question = "Is the claim of 10 June too early? Does 20 June move the last day?",
        Held = "If the whole work was complete and the two hours cured a defect: not too early, and nothing moves. If they were part of "
            + "the framer's own unfinished promise: too early, void.",
        Then = "As held.",
        Now = "Where the file holds the whole work complete on 31 May, both readings of the two hours stand, the claim is in doubt and the "
            + "last day stays. Where it does not, the claim is void and a new one may follow.",
        Takes =
        [
            new("the whole complete on 31 May: a repair", Framing().ClaimRecorded("2026-06-10").Furnished("2026-06-20"), "2026-07-15",
                LastDayToRecord("2026-08-29"),
                FirstDayToRecord("2026-06-01", "2026-06-21"),
                Says("claim-of-lien.first-day", "Hundley"),
                RecordedInTimeIsInDoubt,
                LastDayToSue("2026-09-08")),

            new("the same, with a new claim after it: no doubt left", Framing().ClaimRecorded("2026-06-10").Furnished("2026-06-20")
                .ClaimRecorded("2026-06-22"), "2026-07-15",
                LastDayToRecord("2026-08-29"),
                RecordedInTime,
                // The first claim is not released: sue in its time too.
                LastDayToSue("2026-09-08", "2026-09-20")),

            new("the whole not complete: part of the promise", Unfinished().Ended("2026-06-20").ClaimRecorded("2026-06-10")
                .Furnished("2026-06-20"), "2026-07-15",
                FirstDayToRecord("2026-06-21"),
                RuledOut("claim-of-lien.last-day", "Civ. Code § 8414(a)"),
                Is("enforcement.last-day", Standing.NotYet),
                Is("claim-of-lien.last-day", Standing.Open)),

            new("the same, the file not saying that it has ended", Unfinished().ClaimRecorded("2026-06-10").Furnished("2026-06-20"),
                "2026-07-15",
                RuledOut("claim-of-lien.last-day", "Civ. Code § 8414(a)"),
                Is("enforcement.last-day", Standing.NotYet)),
        ],
    }.Holds();

    private static JobBuilder Unfinished() => Subcontractor()
        .NoticeNotInIssue("2026-04-01")
        .Furnished("2026-04-01", 8000.00m, until: "2026-05-31");

    [Fact]
    [Proves("Civ. Code § 8132")]
    [Proves("Civ. Code § 8124")]
    public void P_09_a_progress_waiver_whose_condition_is_met_binds_through_its_date() => new CaseNote
    {
        Number = "P-09",
        Citation = "Tesco Controls v. Monterey Mechanical (2004) 124 Cal.App.4th 780",
        Read = "excerpts and notes; an earlier opinion of October 2004 was replaced on rehearing",
        Law = "Civ. Code § 3262 → 8132, 8124",
        Facts = "$194,762.13 unpaid after a subcontractor's check of 12 March 1999 bounced; conditional waiver dated 15 March 1999. How "
            + "the sum lies before and after that day was not read: taken as all before; a further $10,000.00 after it is ours.",
        Question = "Does it bind only as far as the money received?",
        Held = "No: once its condition is met it binds through its date. (The supplier won on a joint-check agreement.)",
        Then = "As held.",
        Now = "The same (§ 8132 with § 8124): nothing is released while the payment has not cleared.",
        Takes =
        [
            new("the check bounced: the condition is not met", Controls(cleared: null), "1999-05-01",
                Step("waived", 0m),
                Demand(204762.13m)),

            new("had the described payment cleared: all before the date is released", Controls(cleared: "1999-04-15"), "1999-05-01",
                Step("waived", -194762.13m),
                Demand(10000.00m)),

            new("the same, asked before it cleared", Controls(cleared: "1999-04-15"), "1999-04-14",
                Step("waived", 0m),
                Demand(204762.13m)),
        ],
    }.Holds();

    private static JobBuilder Controls(string? cleared) => ToSubcontractor(ClaimantRole.Supplier)
        .NoticeNotInIssue("1998-06-01")
        .Furnished("1998-06-01", 194762.13m, until: "1999-03-12")
        .Furnished("1999-04-01", 10000.00m)
        .Waived("1999-03-15", WaiverForm.ConditionalProgress, through: "1999-03-15", cleared: cleared);

    [Fact]
    [Proves("Civ. Code § 8414(b)(2)")]
    [Proves("Civ. Code § 8412(b)")]
    public void P_10_a_supplier_to_the_owner_has_thirty_days_not_sixty() => new CaseNote
    {
        Number = "P-10",
        Citation = "Vaughn Materials v. Security Pacific (1985) 170 Cal.App.3d 908",
        Read = "opening of the opinion; one summary",
        Law = "Civ. Code §§ 3115, 3116 → 8412, 8414",
        Facts = "A supplier sold straight to the owner and recorded on day 40 after the notice of completion. " + Ours,
        Question = "Is it a direct contractor for time?",
        Held = "No: 30 days; too late.",
        Then = "Too late.",
        Now = "The same. One who gave the owner no preliminary notice is owed no copy of the owner's notice (§ 8190(a)(2)), so it shortens "
            + "the time unseen.",
        Takes =
        [
            new("the supplier", SupplierToOwner().Furnished("2026-04-01").Ended("2026-04-01").Completed("2026-04-15")
                .OwnerRecorded("2026-04-20", states: "2026-04-15").ClaimRecorded("2026-05-30"), "2026-06-15",
                LastDayToRecord("2026-05-20"),
                Because("claim-of-lien.last-day", "Civ. Code § 8190(a)(2)"),
                RecordedTooLate),

            new("an equipment lessor", Begin(ClaimantRole.EquipmentLessor, "owner").Furnished("2026-04-01").Ended("2026-04-01")
                .Completed("2026-04-15").OwnerRecorded("2026-04-20", states: "2026-04-15").ClaimRecorded("2026-05-30"), "2026-06-15",
                LastDayToRecord("2026-05-20"),
                RecordedTooLate),

            new("a direct contractor, told in time", DirectContractor().Furnished("2026-04-01").Ended("2026-04-01").Completed("2026-04-15")
                .OwnerRecorded("2026-04-20", states: "2026-04-15").OwnerToldUs("2026-04-22").ClaimRecorded("2026-05-30"), "2026-06-15",
                LastDayToRecord("2026-06-19"),
                RecordedInTime),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Code Civ. Proc. § 12a")]
    public void P_11_the_ninety_days_to_sue_roll_past_a_sunday_and_a_holiday_but_are_not_planned_on() => new CaseNote
    {
        Number = "P-11",
        Citation = "Mox, Inc. v. Leventhal (1928) 89 Cal.App. 253",
        Read = "the opinion's text as stored",
        Law = "Code Civ. Proc. § 1190 → Civ. Code § 8460(a); Code Civ. Proc. § 12a",
        Facts = Ours + "The ninetieth day is a Sunday, 6 September 2026, before Labor Day; the complaint is filed on Tuesday the 8th.",
        Question = "Is it in time?",
        Held = "Yes: the time rolls past the Sunday and the Monday holiday.",
        Then = "In time.",
        Now = "In time after the fact, since the courts' holidays and the State's both pass over the Sunday and the Monday; but no day is "
            + "planned on it: act by Friday.",
        Takes =
        [
            new("filed on the day after the holiday", Rolled().ActionFiled("2026-09-08"), "2026-09-10",
                LastDayToSue("2026-09-06"),
                PlannedOn("enforcement.last-day", "2026-09-04"),
                SuedInTime,
                Says("enforcement.last-day", "Mox")),

            new("not filed by then", Rolled(), "2026-09-08",
                Is("enforcement.last-day", Standing.InDoubt),
                Says("enforcement.last-day", "file today")),

            new("filed a day later", Rolled().ActionFiled("2026-09-09"), "2026-09-10",
                Is("enforcement.last-day", Standing.Lost)),

            new("filed on the Friday before", Rolled().ActionFiled("2026-09-04"), "2026-09-10",
                SuedInTime),
        ],
    }.Holds();

    private static JobBuilder Rolled() => DirectContractor().Furnished("2026-06-01").Ended("2026-06-01").ClaimRecorded("2026-06-08");

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 8134")]
    public void P_12_an_early_notice_serves_a_later_contract_and_a_waiver_for_a_dead_one_does_not_reach_it() => new CaseNote
    {
        Number = "P-12",
        Citation = "Cell-Crete v. Safeco (2015, unpublished: not to be cited to a court, Rules of Court 8.1115)",
        Read = "opening of the opinion",
        Law = "Civ. Code § 8206(a), (c)",
        Facts = "Preliminary notice of 15 July 2011 under a $37,894.47 contract that was never performed, and unconditional waivers for "
            + "it; later another contract on the same job. The later days and sum are ours.",
        Question = "Does the notice serve the later contract? Do the waivers reach it?",
        Held = "Yes. No.",
        Then = "Current law.",
        Now = "The same: one notice for the work of improvement; a progress form reaches work through its date only.",
        Takes =
        [
            new("the later contract", Subcontractor()
                    .Notice("2011-07-15")
                    .Waived("2011-08-31", WaiverForm.UnconditionalProgress, through: "2011-08-31")
                    .Furnished("2011-10-01", 20000.00m, until: "2011-11-30")
                    .Ended("2011-11-30"),
                "2011-12-15",
                Is("preliminary-notice.last-day", Standing.Kept),
                Step("waived", 0m),
                Demand(20000.00m)),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8424(d)")]
    public void P_13_a_suit_already_pending_does_not_wait_for_the_six_months_on_a_release_bond() => new CaseNote
    {
        Number = "P-13",
        Citation = "Hutnick v. U.S. Fidelity (1988) 47 Cal.3d 456",
        Read = "opening of the opinion",
        Law = "Civ. Code § 3144.5 → 8424(d)",
        Facts = Ours + "A timely foreclosure suit was pending when the release bond was recorded; the surety was brought in after the six "
            + "months.",
        Question = "Do the six months to sue on the bond bar it?",
        Held = "No, where a timely suit was already pending.",
        Then = "As held.",
        Now = "Two tracks: with a suit pending the time on the bond is kept; without one it runs six months from notice of the bond, "
            + "counted from its recording at the earliest.",
        Takes =
        [
            new("suit pending", Bonded().ActionFiled("2026-04-01"), "2026-12-31",
                SuedInTime,
                Is("release-bond.action-last-day", Standing.Kept)),

            new("no suit pending", Bonded(), "2026-12-31",
                Days("release-bond.action-last-day", "2026-10-30", "2026-11-01"),
                IsNot("release-bond.action-last-day", Standing.Kept),
                Asks("release-bond.action-last-day", "notice of the release bond")),
        ],
    }.Holds();

    private static JobBuilder Bonded() => DirectContractor()
        .Furnished("2026-01-05", 8000.00m)
        .Ended("2026-01-05")
        .ClaimRecorded("2026-03-02", 8000.00m)
        .Add(i => new ReleaseBondRecorded { Index = i, On = JobBuilder.When("2026-05-01"), Amount = 10000.00m });

    [Fact]
    [Proves("Civ. Code § 8461")]
    public void P_14_a_suit_without_a_notice_of_pendency_does_not_bind_later_buyers() => new CaseNote
    {
        Number = "P-14",
        Citation = "Granahan v. Trenkenschu (2012, unpublished: not to be cited to a court, Rules of Court 8.1115)",
        Read = "opening of the opinion",
        Law = "Civ. Code § 8461",
        Facts = "Home finished December 2007, $76,581.47 claimed; suit without the new owners and without a notice of pendency. " + Ours,
        Question = "Are later buyers bound?",
        Held = "No.",
        Then = "Old law with the same duty.",
        Now = "The engine warns: within 20 days after the suit.",
        Takes =
        [
            new("suit without the notice, day 20", Sued(), "2026-04-21",
                Days("lis-pendens.last-day", "2026-04-21"), Is("lis-pendens.last-day", Standing.Open)),
            new("suit without the notice, day 21", Sued(), "2026-04-22",
                Is("lis-pendens.last-day", Standing.InDoubt), Says("lis-pendens.last-day", "bound only from its recording")),
        ],
    }.Holds();

    private static JobBuilder Sued() => DirectContractor()
        .Furnished("2026-01-05", 76581.47m)
        .Ended("2026-01-05")
        .ClaimRecorded("2026-03-02", 76581.47m)
        .ActionFiled("2026-04-01");

    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    [Proves("Civ. Code § 1479")]
    public void P_15_interest_is_no_part_of_a_claim_and_comes_first_only_where_it_was_due() => new CaseNote
    {
        Number = "P-15",
        Citation = "Carmel Development v. Anderson (2020) 48 Cal.App.5th 492",
        Read = "the later opinion's account of it",
        Law = "Civ. Code §§ 8430, 1479",
        Facts = Ours + "$8,000.00 of work due 31 January, $100.00 of interest billed on 31 March, $3,000.00 paid.",
        Question = "Is contractual interest lienable?",
        Held = "No.",
        Then = "Current law.",
        Now = "The same. A payment before the interest was due goes to the work alone; one after it pays the interest first (§ 1479, "
            + "Three).",
        Takes =
        [
            new("paid before the interest was billed", Interest().Paid("2026-03-15", 3000.00m), "2026-05-01", Demand(5000.00m),
                LeftOut(100.00m)),
            new("paid before anything was due", Interest().Paid("2026-01-10", 3000.00m), "2026-05-01", Demand(5000.00m)),
            new("paid after it was billed", Interest().Paid("2026-04-15", 3000.00m), "2026-05-01", Demand(5100.00m),
                Step("paid-elsewhere", 100.00m)),
        ],
    }.Holds();

    private static JobBuilder Interest() => DirectContractor()
        .Furnished("2026-01-05", 8000.00m, until: "2026-01-31")
        .Ended("2026-01-31")
        .Charged("2026-03-31", 100.00m, ChargeKind.Interest);
}
