namespace Stringline.Published;

/// <summary>C-01 to C-10: when the work was complete, and whether the claim was recorded in time.</summary>
public sealed class TimeToRecord
{
    [Fact]
    [Proves("Civ. Code § 8180(a)(1)")]
    [Proves("Civ. Code § 8180(a)(2)")]
    [Proves("Civ. Code § 8412")]
    public void C_01_a_certificate_of_occupancy_is_not_completion() => new CaseNote
    {
        Number = "C-01",
        Citation = "Picerne Construction v. Castellino Villas (2016) 244 Cal.App.4th 1201",
        Read = "opening of the opinion and its list of conclusions; the facts as quoted; summaries",
        Law = "Civ. Code §§ 3115, 3086 → 8412, 8180",
        Facts = "Eleven apartment buildings in Elk Grove, one work of improvement. Certificates of occupancy from 3 May to 25 July 2006; "
            + "contractor and "
            + "subcontractors worked on under their contracts. The owner signed an acceptance on 8 September and began renting in October. "
            + "No notice of completion. Claim recorded 28 November, suit filed 29 December 2006.",
        Question = "Does the last certificate of occupancy, that is substantial completion, start the 90 days?",
        Held = "No, actual completion does: 8 September. Recorded on day 81, in time.",
        Then = "Last day 7 December 2006. A private owner's acceptance was completion as well.",
        Now = "The same day. A private owner's acceptance is no completion any more (§ 8180(b) speaks of a public entity), but the court "
            + "also found that "
            + "nothing was complete before that day.",
        Takes =
        [
            new("as the court found", DirectContractor()
                    .Furnished("2005-01-01..2006-05-03", until: "2006-09-08")
                    .Ended("2006-09-08")
                    .Completed("2006-09-08")
                    .LaborCeased("2006-09-08")
                    .Completed("2006-10-01..2006-10-31", CompletionTheory.Occupation)
                    .ClaimRecorded("2006-11-28")
                    .ActionFiled("2006-12-29"),
                "2007-06-01",
                CompletedOn("2006-09-08"),
                LastDayToRecord("2006-12-07"),
                RecordedInTime,
                LastDayToSue("2007-02-26"),
                SuedInTime,
                Is("lien-right", Standing.Kept)),

            new("the certificate taken as occupation: labor went on, so the later day counts", DirectContractor()
                    .Furnished("2005-01-01..2006-05-03", until: "2006-09-08")
                    .Ended("2006-09-08")
                    .LaborCeased("2006-09-08")
                    .Completed("2006-07-25", CompletionTheory.Occupation)
                    .ClaimRecorded("2006-11-28"),
                "2006-12-01",
                CompletedOn("2006-09-08"),
                LastDayToRecord("2006-12-07"),
                RecordedInTime),

            new("as the owner contended, before it was decided: the weaker reading is shown and makes it doubtful", DirectContractor()
                    .Furnished("2005-01-01..2006-05-03", until: "2006-09-08")
                    .Ended("2006-09-08")
                    .Completed("2006-07-25", contested: true)
                    .Completed("2006-09-08")
                    .ClaimRecorded("2006-11-28"),
                "2006-12-01",
                LastDayToRecord("2006-10-23", "2006-12-07"),
                RecordedInTimeIsInDoubt),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void C_02_a_claim_recorded_before_ones_own_unfinished_promise_is_done_is_void() => new CaseNote
    {
        Number = "C-02",
        Citation = "Precision Framing Systems v. Luzuriaga (2019) 39 Cal.App.5th 457",
        Read = "opening of the opinion; three notes, whose dates agree",
        Law = "Civ. Code § 8414(a), current law",
        Facts = "Framing subcontractor from July 2013, with trusses as far as needed to complete the project. The city asked for "
            + "corrections in August "
            + "(done) and on 9 December 2013. The contractor found the work complete on 23 December. Claim recorded 2 January 2014. The "
            + "truss maker, "
            + "hired by the claimant, came back for two or three hours on 12 or 13 February 2014.",
        Question = "Had the claimant ceased to provide work on 2 January?",
        Held = "No. The repair was part of what it had promised, and a lower tier's work counts as its own. A claim recorded too early is "
            + "void.",
        Then = "Void.",
        Now = "Void; a new claim could be recorded from the day after, inside the 90 or 30 days.",
        Takes =
        [
            new("as the court found", Subcontractor()
                    .NoticeNotInIssue("2013-07-01")
                    .Furnished("2013-07-01..2013-07-31", until: "2013-12-23")
                    .Furnished("2014-02-12..2014-02-13")
                    .Ended("2013-12-23")
                    .ClaimRecorded("2014-01-02"),
                "2014-03-01",
                FirstDayToRecord("2014-02-13", "2014-02-14"),
                Says("claim-of-lien.first-day", "Precision Framing"),
                RuledOut("claim-of-lien.last-day", "Civ. Code § 8414(a)"),
                Is("claim-of-lien.last-day", Standing.Open),
                Is("enforcement.last-day", Standing.NotYet)),

            new("as the claimant saw it on 2 January: nothing in its file says that more is to come", Subcontractor()
                    .NoticeNotInIssue("2013-07-01")
                    .Furnished("2013-07-01..2013-07-31", until: "2013-12-23"),
                "2014-01-02",
                Is("claim-of-lien.first-day", Standing.InDoubt),
                Asks("claim-of-lien.first-day", "everyone working for it"),
                Obstacle("Civ. Code § 8414(a)")),

            new("a new claim after the repair, work complete with it", Subcontractor()
                    .NoticeNotInIssue("2013-07-01")
                    .Furnished("2013-07-01..2013-07-31", until: "2013-12-23")
                    .Furnished("2014-02-12..2014-02-13")
                    .Ended("2014-02-13")
                    .Completed("2014-02-13")
                    .ClaimRecorded("2014-01-02")
                    .ClaimRecorded("2014-02-20"),
                "2014-03-01",
                LastDayToRecord("2014-05-14"),
                RecordedInTime,
                LastDayToSue("2014-05-21")),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8182(a)")]
    [Proves("Civ. Code § 8182(d)")]
    [Proves("Civ. Code § 8414(b)")]
    [Proves("Civ. Code § 8060(b)")]
    public void C_03_a_late_notice_of_completion_does_not_reopen_the_time() => new CaseNote
    {
        Number = "C-03",
        Citation = "Fontana Paving v. Hedley Brothers (1995) 38 Cal.App.4th 146",
        Read = "opening of the opinion; one summary",
        Law = "Civ. Code §§ 3116, 3093 (10 days) → 8414, 8182 (15 days)",
        Facts = "Asphalt to the paving subcontractor for a store in Ridgecrest, Kern County, under a building contract of 17 May 1990; "
            + "paving done before "
            + "31 December; the whole complete no later than 23 January 1991. A first claim went on record on 1 March 1991 in the wrong "
            + "county, a second on 4 June in "
            + "Kern. On 25 June the owner recorded a notice of completion that stated 18 June. Unpaid: $72,709.33.",
        Question = "Does a late notice of completion with a wrong, later date reopen the time? Does a claim in the wrong county count?",
        Held = "No: a notice of completion can only shorten the time, and outside its own period it does nothing. No: the claim in Kern "
            + "came 132 days after completion.",
        Then = "Last day 23 April 1991 at the latest; too late.",
        Now = "The same: 153 days are more than 15 as they were more than 10. While that is not settled the owner's own verified word, a "
            + "day in June, stands beside the file's, since "
            + "one who relied on it may hold the owner to it (the court found no reliance): the day to act on is April's all the same. An "
            + "instrument in a county with no part of the site is not recorded at all (§ 8060), so the "
            + "first claim counts for nothing. Which county that was is not said where this was read; Inyo stands for it.",
        Takes =
        [
            new("as the file stood before the court held: act on the file's own day; the owner's later day leaves the claim of June in "
                + "doubt", Asphalt()
                    .ClaimRecorded("1991-06-04", county: "Kern")
                    .OwnerRecorded("1991-06-25", states: "1991-06-18"),
                "1991-07-01",
                PlannedOn("claim-of-lien.last-day", "1991-03-29"),
                RuledOut("claim-of-lien.last-day", "Civ. Code § 8182(d)"),
                RecordedInTimeIsInDoubt,
                Asks("claim-of-lien.last-day", "heldIneffective")),

            new("as the court held: the notice has no effect, and the claim in Kern is too late", Asphalt()
                    .ClaimRecorded("1991-06-04", county: "Kern")
                    .OwnerRecorded("1991-06-25", states: "1991-06-18", heldIneffective: true),
                "1991-07-01",
                Band("claim-of-lien.last-day", "1991-03-31", "1991-04-23"),
                RecordedTooLate,
                Is("lien-right", Standing.Lost),
                Obstacle("Civ. Code § 8400")),

            new("with the claim in the other county in the file: whether part of the work lies there is asked, and it is never kept",
                Asphalt()
                    .ClaimRecorded("1991-03-01", county: "Inyo")
                    .ClaimRecorded("1991-06-04", county: "Kern")
                    .OwnerRecorded("1991-06-25", states: "1991-06-18", heldIneffective: true),
                "1991-07-01",
                Band("claim-of-lien.last-day", "1991-03-31", "1991-04-23"),
                RecordedInTimeIsInDoubt,
                Asks("claim-of-lien.last-day", "site.alsoIn")),

            new("completion taken on the last day it can have been", ToSubcontractor(ClaimantRole.Supplier)
                    .NoticeNotInIssue("1990-05-17")
                    .Furnished("1990-05-17..1990-12-30", 72709.33m, until: "1990-05-17..1990-12-30")
                    .Ended("1990-12-30")
                    .Completed("1991-01-23")
                    .ClaimRecorded("1991-06-04")
                    .OwnerRecorded("1991-06-25", states: "1991-06-18", heldIneffective: true),
                "1991-07-01",
                CompletedOn("1991-01-23"),
                LastDayToRecord("1991-04-23"),
                RecordedTooLate),
        ],
    }.Holds();

    private static JobBuilder Asphalt() => ToSubcontractor(ClaimantRole.Supplier)
        .NoticeNotInIssue("1990-05-17")
        .Furnished("1990-05-17..1990-12-30", 72709.33m, until: "1990-05-17..1990-12-30")
        .Ended("1990-12-30")
        .Completed("1990-12-31..1991-01-23")
        .Work(w => w with { Site = w.Site with { County = "Kern" } });

    [Fact]
    [Proves("Civ. Code § 8414(b)")]
    [Proves("Civ. Code § 8414(b)(2)")]
    [Proves("Civ. Code § 8182(b)")]
    [Proves("Civ. Code § 8182(d)")]
    [Proves("Civ. Code § 8102")]
    public void C_04_a_notice_of_completion_that_names_neither_owner_nor_contractor_does_not_shorten() => new CaseNote
    {
        Number = "C-04",
        Citation = "Howell v. Gunderson (1967) 250 Cal.App.2d Supp. 961",
        Read = "opening of the opinion with the numbered facts and headnotes",
        Law = "Code Civ. Proc. §§ 1193, 1193.1 → Civ. Code §§ 8182, 8414",
        Facts = "Wiring in Oakland for $1,186.29 (stipulated), completed 25 June 1965. On 29 June a former owner, who had deeded the land "
            + "to his corporation in February, "
            + "recorded a notice of completion that named neither the true owner nor the direct contractor. Claims recorded 28 July and 22 "
            + "September.",
        Question = "Did the defective notice cut the time to 30 days?",
        Held = "No. The second claim, inside 90 days, is good.",
        Then = "Last day 23 September 1965 (the 29 July of the shortened time fell away); the first claim failed for want of the pre-lien "
            + "notice of that day.",
        Now = "The same last day. The pre-lien notice is gone, so today the first claim, recorded within 30 days of the notice too, would "
            + "have been good on either reading.",
        Takes =
        [
            new("before any court has held so, though the owner's copy came in time: both readings, and the claim of September is in doubt",
                Wiring()
                    .OwnerRecorded("1965-06-29", states: "1965-06-25", lacks: Names)
                    .OwnerToldUs("1965-07-02")
                    .ClaimRecorded("1965-09-22", 1186.29m),
                "1965-10-01",
                Days("claim-of-lien.last-day", "1965-07-29", "1965-09-23"),
                Is("claim-of-lien.last-day", Standing.InDoubt),
                Asks("claim-of-lien.last-day", "has no effect")),

            new("once a court has held that it has no effect, which the file is then told", Wiring()
                    .OwnerRecorded("1965-06-29", states: "1965-06-25", lacks: Names, heldIneffective: true)
                    .ClaimRecorded("1965-09-22", 1186.29m),
                "1965-10-01",
                LastDayToRecord("1965-09-23"),
                RecordedInTime,
                Demand(1186.29m)),

            new("had it lacked nothing, and the owner's copy come in time: too late", Wiring()
                    .OwnerRecorded("1965-06-29", states: "1965-06-25")
                    .OwnerToldUs("1965-07-02")
                    .ClaimRecorded("1965-09-22", 1186.29m),
                "1965-10-01",
                LastDayToRecord("1965-07-29"),
                RecordedTooLate),

            new("while nobody has yet looked for the defect: both readings, and the claim of September is in doubt", Wiring()
                    .OwnerRecorded("1965-06-29", states: "1965-06-25")
                    .ClaimRecorded("1965-09-22", 1186.29m),
                "1965-10-01",
                LastDayToRecord("1965-07-29", "1965-09-23"),
                RecordedInTimeIsInDoubt),

            new("the claim of July, under today's sections: in time on either reading", Wiring()
                    .OwnerRecorded("1965-06-29", states: "1965-06-25")
                    .ClaimRecorded("1965-07-28", 1186.29m),
                "1965-10-01",
                RecordedInTime),
        ],
    }.Holds();

    private const string Names = "the true owner's name and the direct contractor's";

    private static JobBuilder Wiring() => Subcontractor()
        .NoticeNotInIssue("1965-06-01")
        .Furnished("1965-06-01..1965-06-25", 1186.29m)
        .Ended("1965-06-25")
        .Completed("1965-06-25");

    [Fact]
    [Proves("Civ. Code § 8414(b)(2)")]
    [Proves("Civ. Code § 8190(a)")]
    [Proves("Civ. Code § 8190(c)")]
    public void C_05_a_repair_after_completion_does_not_restart_the_time() => new CaseNote
    {
        Number = "C-05",
        Citation = "Hundley v. Marinkovich (1942) 53 Cal.App.2d 288",
        Read = "one summary, in two parts",
        Law = "Code Civ. Proc. § 1187 → Civ. Code § 8414(b)(2)",
        Facts = "Material worth $788.94 to the direct contractor of an apartment house. The owners took possession and labor ceased on or "
            + "before 9 November 1939, when they "
            + "recorded a notice of completion. Later the supplier replaced a defective lock, $4.12. Claim recorded 21 December 1939.",
        Question = "Does replacing a defective part after completion restart the time?",
        Held = "No. Recorded on day 42 after the notice: no lien. The debt of the contractor stands.",
        Then = "Last day 9 December 1939, a Saturday; too late.",
        Now = "The same where the owner gave the supplier a copy within 10 days. That duty (§ 8190) is new: without the copy the 90 days "
            + "are whole. Completion can have been as "
            + "early as the ten days before, within which the notice had to be recorded then.",
        Takes =
        [
            new("the owner's copy came in time", Lock().OwnerToldUs("1939-11-13"),
                "1940-04-01",
                LastDayToRecord("1939-12-09"),
                RecordedTooLate,
                Is("lien-right", Standing.Lost),
                Demand(793.06m)),

            new("the file does not say whether a copy came: both readings", Lock(),
                "1940-04-01",
                Band("claim-of-lien.last-day", "1939-12-09", "1940-02-07"),
                RecordedInTimeIsInDoubt),

            new("the copy was mailed on 21 November, too late (the tenth day, the 19th, was a Sunday)", Lock()
                .OwnerToldUs("1939-11-24", mailed: "1939-11-21"),
                "1940-04-01",
                Band("claim-of-lien.last-day", "1940-01-28", "1940-02-07"),
                RecordedInTime),
        ],
    }.Holds();

    // The lock's day is not in what was read: any between completion and the claim.
    private static JobBuilder Lock() => Supplier()
        .NoticeNotInIssue("1939-06-01")
        .Furnished("1939-06-01..1939-11-09", 788.94m)
        .Ended("1939-11-09")
        .Completed("1939-10-30..1939-11-09")
        .OwnerRecorded("1939-11-09", states: "1939-11-09")
        .Furnished("1939-11-10..1939-12-20", 4.12m)
        .ClaimRecorded("1939-12-21");

    [Theory]
    [InlineData("1915-08-12")]
    [InlineData("1915-08-15")]
    [InlineData("1915-08-18")]
    [Proves("Civ. Code § 8180(a)")]
    [Proves("Civ. Code § 8180(a)(2)")]
    [Proves("Civ. Code § 8414(b)")]
    public void C_06_papering_a_hallway_again_does_not_move_completion(string recorded) => new CaseNote
    {
        Number = "C-06",
        Citation = "Mott v. Wright (1919) 43 Cal.App. 21",
        Read = "opening of the opinion; a summary with the court's dates",
        Law = "Code Civ. Proc. § 1187 (90 days, no notice recorded) → Civ. Code § 8414(b)(1)",
        Facts = "The owner moved in in March 1915 and had tenants from April, while work went on without a break until 12 May 1915. Part "
            + "of a hallway was papered again later "
            + "because the first papering was bad; the claimants said that this, on 1 June, was completion. No notice of completion. Three "
            + "claimants, three claims: "
            + "12, 15 and 18 August.",
        Question = "Does redoing a defective item after completion move the day of completion?",
        Held = "No. Complete on 12 May; the time ended on 10 August, and all three claims are late.",
        Then = "Last day 10 August 1915, the court's own date.",
        Now = "The same. Occupation without cessation of labor did not complete it in March either.",
        Takes =
        [
            new($"the claim recorded {recorded}", Subcontractor()
                    .NoticeNotInIssue("1915-02-15")
                    .Furnished("1915-02-15", until: "1915-05-12")
                    .Ended("1915-05-12")
                    .Completed("1915-03-01..1915-03-31", CompletionTheory.Occupation)
                    .LaborCeased("1915-05-12")
                    .Completed("1915-05-12")
                    .Completed("1915-06-01", contested: true)
                    .ClaimRecorded(recorded),
                "1915-09-01",
                CompletedOn("1915-05-12"),
                RuledOut("completion.day", "Civ. Code § 8180(a)"),
                LastDayToRecord("1915-08-10"),
                RecordedTooLate,
                Is("lien-right", Standing.Lost)),

            new($"the claim recorded {recorded}, before it was decided whether the work was complete in May or only with the papering: "
                + $"planned on the earlier, and in doubt", Subcontractor()
                    .NoticeNotInIssue("1915-02-15")
                    .Furnished("1915-02-15", until: "1915-05-12")
                    .Ended("1915-05-12")
                    .Completed("1915-05-12", contested: true)
                    .Completed("1915-06-01", contested: true)
                    .ClaimRecorded(recorded),
                "1915-09-01",
                CompletedOn("1915-05-12", "1915-06-01"),
                PlannedOn("claim-of-lien.last-day", "1915-08-10"),
                Band("claim-of-lien.last-day", "1915-08-10", null),
                RecordedInTimeIsInDoubt),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8414(b)(2)")]
    [Proves("Civ. Code § 8182(a)")]
    public void C_07_the_thirty_days_run_from_recording_and_the_thirtieth_is_inside() => new CaseNote
    {
        Number = "C-07",
        Citation = "Hughes Manufacturing & Lumber v. Hathaway (1916) 174 Cal. 44",
        Read = "opening of the opinion, which stops before the holding; the holding is from memory",
        Law = "Code Civ. Proc. § 1187 → Civ. Code § 8414(b)(2)",
        Facts = "Lumber to the direct contractor of four buildings under one contract, completed 7 August 1913. Notice of completion "
            + "recorded 16 August, the ninth day. "
            + "Claim recorded 15 September.",
        Question = "Do the 30 days run from completion or from recording the notice? Is the thirtieth day inside?",
        Held = "From recording; inside (from memory: reversed for the supplier). The opinion itself calls 15 September thirty days "
            + "thereafter.",
        Then = "Last day 15 September 1913, a Monday; in time on the very day.",
        Now = "The same where the owner gave the copy. Without a copy the claim is in time as well, on 90 days.",
        Takes =
        [
            new("the owner's copy came in time", Lumber().OwnerToldUs("1913-08-20").ClaimRecorded("1913-09-15"),
                "1913-10-01",
                CompletedOn("1913-08-07"),
                Is("completion.day", Standing.Done),
                LastDayToRecord("1913-09-15"),
                RecordedInTime),

            new("one day later would have been late", Lumber().OwnerToldUs("1913-08-20").ClaimRecorded("1913-09-16"),
                "1913-10-01",
                RecordedTooLate),

            new("no copy shown", Lumber().ClaimRecorded("1913-09-15"),
                "1913-10-01",
                LastDayToRecord("1913-09-15", "1913-11-05"),
                RecordedInTime),
        ],
    }.Holds();

    private static JobBuilder Lumber() => Supplier()
        .NoticeNotInIssue("1913-06-01")
        .Furnished("1913-06-01..1913-08-07")
        .Ended("1913-08-07")
        .Completed("1913-08-07")
        .OwnerRecorded("1913-08-16", states: "1913-08-07");

    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    [Proves("Civ. Code § 8414(b)")]
    public void C_08_work_resumed_after_a_long_stop_does_not_revive_an_old_claim() => new CaseNote
    {
        Number = "C-08",
        Citation = "Stanislaus Lumber v. Pike (1942) 51 Cal.App.2d 54",
        Read = "opening of the opinion; one summary",
        Law = "Code Civ. Proc. § 1187 (30 idle days) → Civ. Code §§ 8180(a)(3) (60 idle days), 8414",
        Facts = "Lumber sold to the then owners of a house begun on 24 May 1937; $298.97 unpaid. Work lay idle for more than four months "
            + "(which, was not read). The house was sold "
            + "on 2 November; the new owners bought more lumber on 23 December. Claim recorded 11 January 1938.",
        Question = "Does work resumed after a long stop save an old claim?",
        Held = "No: the stop completed the work in law, and the claim came too late.",
        Then = "30 idle days: with more than four months before 23 December the stop began by 22 August, completion by 21 September, last "
            + "day by 20 December 1937. Late.",
        Now = "60 idle days: completion by 21 October, last day by 19 January 1938. So today it depends on the day of the stop: late if it "
            + "was 13 August or earlier, else in doubt. "
            + "No reading runs from the new work.",
        Takes =
        [
            new("the stop on any day that leaves four months", SupplierToOwner()
                    .Furnished("1937-05-24..1937-08-22", 298.97m)
                    .Ended("1937-08-22")
                    .LaborCeased("1937-05-24..1937-08-22", until: "1937-12-23")
                    .ClaimRecorded("1938-01-11", 298.97m),
                "1938-03-01",
                Because("completion.day", "Civ. Code § 8180(a)(3)"),
                Band("completion.day", "1937-07-23", "1937-10-21"),
                Band("claim-of-lien.last-day", "1937-10-21", "1938-01-19"),
                RecordedInTimeIsInDoubt),

            new("the stop by 13 August", SupplierToOwner()
                    .Furnished("1937-05-24..1937-08-13", 298.97m)
                    .Ended("1937-08-13")
                    .LaborCeased("1937-05-24..1937-08-13", until: "1937-12-23")
                    .ClaimRecorded("1938-01-11", 298.97m),
                "1938-03-01",
                Band("claim-of-lien.last-day", "1937-10-21", "1938-01-10"),
                RecordedTooLate,
                Is("lien-right", Standing.Lost)),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8180(b)")]
    public void C_09_work_that_waits_for_a_citys_acceptance_is_not_complete_before_it() => new CaseNote
    {
        Number = "C-09",
        Citation = "A. J. Raisch Paving v. Mountain View Savings & Loan (1972) 28 Cal.App.3d 832",
        Read = "opening of the opinion; one summary",
        Law = "Code Civ. Proc. § 1193.1 → Civ. Code § 8180(b)",
        Facts = "Streets, sewers and lights of Tract 2634 in Newark for a private developer under a contract of 25 November 1964; finished "
            + "13 September 1965, subject to the city's acceptance, "
            + "never accepted. Claim recorded in February, suit filed in May 1967. Judgment for $16,068.15. A sewer also served the "
            + "finished Tract 2633.",
        Question = "Was a claim 17 months after the last work in time?",
        Held = "Yes: completion is the acceptance, and that never came. But the shared sewer must be apportioned.",
        Then = "No last day yet.",
        Now = "The same for streets that the public takes over. While the file does not say that it does, the day from physical "
            + "completion, 12 December 1965, is the one to act on, and the "
            + "acceptance the later reading (In re El Dorado Improvement Corp. (9th Cir. 2003) 335 F.3d 835).",
        Takes =
        [
            new("as the court held", DirectContractor()
                    .SubjectToAcceptanceBy("the City of Newark")
                    .Furnished("1964-11-25..1965-01-31", until: "1965-09-13")
                    .Ended("1965-09-13")
                    .Completed("1965-09-13")
                    .ClaimRecorded("1967-02-01..1967-02-28"),
                "1967-04-30",
                Is("completion.day", Standing.NotYet),
                CompletedOn(),
                RuledOut("completion.day", "Civ. Code § 8180(b)"),
                LastDayToRecord(),
                RecordedInTime),

            new("and with the suit, whose day was not read", DirectContractor()
                    .SubjectToAcceptanceBy("the City of Newark")
                    .Furnished("1964-11-25..1965-01-31", until: "1965-09-13")
                    .Ended("1965-09-13")
                    .Completed("1965-09-13")
                    .ClaimRecorded("1967-02-01..1967-02-28")
                    .ActionFiled("1967-05-01..1967-05-31"),
                "1967-06-30",
                LastDayToRecord(),
                // In time; but while the suit on it is in doubt and the time to record runs, another claim removes the doubt.
                RecordedInTimeIsInDoubt,
                Band("enforcement.last-day", "1967-05-02", "1967-05-29"),
                Is("enforcement.last-day", Standing.InDoubt)),

            new("while the file does not say that the public takes the streets over: act on physical completion, and the later reading "
                + "stays open", DirectContractor()
                    .SubjectToAcceptanceBy("the City of Newark", takesOver: null)
                    .Furnished("1964-11-25..1965-01-31", until: "1965-09-13")
                    .Ended("1965-09-13")
                    .Completed("1965-09-13")
                    .ClaimRecorded("1967-02-01..1967-02-28"),
                "1967-06-30",
                CompletedOn("1965-09-13"),
                PlannedOn("claim-of-lien.last-day", "1965-12-10"),
                Band("claim-of-lien.last-day", "1965-12-12", null),
                RecordedInTimeIsInDoubt,
                Asks("completion.day", "(work.publicTakesOver)")),

            new("the reading the court refused: no acceptance needed", DirectContractor()
                    .Furnished("1964-11-25..1965-01-31", until: "1965-09-13")
                    .Ended("1965-09-13")
                    .Completed("1965-09-13")
                    .ClaimRecorded("1967-02-01..1967-02-28"),
                "1967-06-30",
                LastDayToRecord("1965-12-12"),
                RecordedTooLate),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    [Proves("Civ. Code § 8180(a)")]
    public void C_10_the_owners_new_contracts_give_the_first_subcontractor_no_new_start() => new CaseNote
    {
        Number = "C-10",
        Citation = "Pence v. Martin (1919) 43 Cal.App. 626",
        Read = "opening of the opinion",
        Law = "Code Civ. Proc. § 1187 (30 idle days) → Civ. Code § 8180(a)(3) (60 idle days)",
        Facts = "Carpentry for $425.00 on a building of $43,500. All work stopped on or about 30 January 1915 and was never resumed by "
            + "that contractor. From mid October the owner completed "
            + "with others, under other contracts. The claim came after that completion; its day is not in what was read.",
        Question = "Does the owner's later completion under new contracts give the first subcontractor a new start?",
        Held = "No; too late.",
        Then = "30 idle days: completion 1 March, last day 30 May 1915, a Sunday and Memorial Day.",
        Now = "60 idle days: completion 31 March, last day 29 June 1915. Late all the same.",
        Takes =
        [
            new("as the court held, the stop on 30 January", Subcontractor()
                    .NoticeNotInIssue("1914-11-01")
                    .Furnished("1914-11-01..1915-01-30", 425.00m)
                    .Ended("1915-01-30")
                    .LaborCeased("1915-01-30", until: "1915-10-15")
                    .Completed("1915-10-16..1916-12-31")
                    .ClaimRecorded("1915-10-16..1916-12-31", 425.00m),
                "1917-01-31",
                CompletedOn("1915-03-31"),
                RuledOut("completion.day", "Civ. Code § 8180(a)"),
                LastDayToRecord("1915-06-29"),
                RecordedTooLate,
                Is("lien-right", Standing.Lost)),
        ],
    }.Holds();
}
