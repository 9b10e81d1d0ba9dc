namespace Stringline.Published;

/// <summary>C-27 to C-29: payment bond, retention, license.</summary>
public sealed class BondRetentionLicense
{
    [Fact]
    [Proves("Civ. Code § 9000")]
    [Proves("Civ. Code § 9304")]
    [Proves("Civ. Code § 9560(b)")]
    [Proves("Civ. Code § 9560(d)")]
    [Proves("Civ. Code § 8204(a)")]
    public void C_27_a_late_notice_reaches_back_twenty_days_and_a_public_work_bears_no_lien() => new CaseNote
    {
        Number = "C-27",
        Citation = "American Buildings v. Bay Commercial Construction (2002) 99 Cal.App.4th 1193",
        Read = "opening of the opinion; one note",
        Law = "Civ. Code §§ 3098, 3252(b) → 9300, 9304, 9560(b)-(d)",
        Facts = "Supplier to a subcontractor, since bankrupt, on a city job in Roseville: $41,775.00 in all, of which $625.00 within 20 "
            + "days before the notice. Its paper, given inside the time for bond notice, "
            + "was titled a preliminary notice.",
        Question = "Is the bond claim limited to what the late notice reaches?",
        Held = "No: the same paper met the separate rule for bond notice, which has no reach back; its title does not matter.",
        Then = "Bond: $41,775.00. Stop notice: $625.00.",
        Now = "The same: the stop payment notice holds $625.00, the bond notice is in time whatever the reach; § 9560(d), which has since "
            + "closed the late road for some, is asked. No lien on a city's job; on a private "
            + "twin of the job the same 20 days leave $625.00. The days are not in what was read: any that keep $625.00 inside will do.",
        Takes =
        [
            new("as it was: a city job", Steel("city")
                    .Work(w => w with { Kind = WorkKind.Public })
                    .NoParty("owner")
                    .Party("city", PartyCapacity.PublicEntity, "The city")
                    .Completed("2000-06-16", CompletionTheory.Acceptance)
                    .OwnerRecorded("2000-06-20", states: "2000-06-16")
                    .PaymentBond(null)
                    .Add(i => new BondNoticeGiven { Index = i, On = JobBuilder.When("2000-06-30"), To = ["direct", "surety"] }),
                "2000-07-10",
                Days("preliminary-notice.reaches-back-to", "2000-06-10"),
                Is("preliminary-notice.last-day", Standing.Narrowed),
                Step("outside-reach", -41150.00m),
                Amount("stop-payment-notice.amount", 625.00m),
                Amount("payment-bond.amount", 41775.00m),
                Is("payment-bond.amount", Standing.Kept),
                Because("payment-bond.amount", "Civ. Code § 9560(b)"),
                Days("payment-bond.notice-last-day", "2000-07-05"),
                Is("payment-bond.notice-last-day", Standing.Kept),
                Because("payment-bond.notice-last-day", "Civ. Code § 9560(d)"),
                Asks("payment-bond.notice-last-day", "undisputed progress payments"),
                Is("lien-right", Standing.Lost),
                Because("lien-right", "Civ. Code § 9000"),
                Silent("claim-of-lien.last-day"),
                Obstacle("Civ. Code § 9000")),

            new("a private twin", Steel("owner"),
                "2000-08-31",
                Days("preliminary-notice.reaches-back-to", "2000-06-10"),
                Is("preliminary-notice.last-day", Standing.Narrowed),
                Step("agreed-price", 41775.00m),
                Step("outside-reach", -41150.00m),
                Demand(625.00m)),
        ],
    }.Holds();

    private static JobBuilder Steel(string told) => ToSubcontractor(ClaimantRole.Supplier)
        .Furnished("2000-03-01", 41150.00m, until: "2000-06-09")
        .Furnished("2000-06-10", 625.00m)
        .Ended("2000-06-10")
        .Notice("2000-06-30", Manner.CertifiedMail, told, "direct");

    [Fact]
    [Proves("Civ. Code § 8814")]
    [Proves("Civ. Code § 8818")]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void C_28_a_dispute_about_other_money_does_not_excuse_holding_retention() => new CaseNote
    {
        Number = "C-28",
        Citation = "United Riggers & Erectors v. Coast Iron & Steel (2018) 4 Cal.5th 1082",
        Read = "opening of the opinion; summaries",
        Law = "Civ. Code §§ 8814, 8818, current law",
        Facts = "Subcontract of $722,742, about $1,500,000 after changes, 10% retention. The contractor got its retention from the owner "
            + "in August 2012 and held back the subcontractor's $149,602.52 because other extras, "
            + "about $350,000, were disputed.",
        Question = "May it sit on undisputed retention because other money is disputed?",
        Held = "No: only a good-faith dispute about that very money excuses. Penalties and fees are due.",
        Then = "Current law.",
        Now = "Due 10 days after the contractor received it; 2% a month on $149,602.52 (§ 8818). The money withheld stays in the demand. "
            + "The changes are taken as what is missing to $1,500,000.",
        Takes =
        [
            new("as the court held: the dispute is not about this money", Riggers()
                    .Add(i => new Disputed { Index = i, On = JobBuilder.When("2012-08-01..2012-08-31"), Amount = 350000.00m,
                        About = DisputeAbout.OtherSums, Text = "extras" }),
                "2012-12-11",
                // the tenth day, Monday 10 September, was Admission Day observed; the roll helps the payer
                Days("retention.due", "2012-09-11"),
                Is("retention.due", Standing.Open),
                Amount("retention.due", 8976.15m), // 3 whole months x 2% x 149602.52 = 8976.1512
                Step("agreed-price", 722742.00m),
                Step("changes", 777258.00m),
                Demand(149602.52m)),

            new("while the file only knows that something is disputed: the engine asks what", Riggers()
                    .Add(i => new Disputed { Index = i, On = JobBuilder.When("2012-08-01..2012-08-31"), Amount = 350000.00m,
                        Text = "extras" }),
                "2012-12-11",
                Is("retention.due", Standing.InDoubt),
                Asks("retention.due", "about that very retention"),
                Says("retention.due", "$149,602.52 is wrongly withheld, and the penalty for 3 whole months is $8,976.15")),
        ],
    }.Holds();

    private static JobBuilder Riggers() => Subcontractor()
        .NoticeNotInIssue("2010-01-01")
        .Price(722742.00m)
        .Changed("2010-01-01..2012-07-31", 777258.00m)
        .Changed("2010-01-01..2012-07-31", 350000.00m, agreed: false)
        .Furnished("2010-01-01..2010-12-31", until: "2010-12-31..2012-07-31")
        .Ended("2010-12-31..2012-07-31")
        .Paid("2010-12-31..2012-07-31", 1350397.48m)
        .Add(i => new HirerPaid { Index =
            i, On = JobBuilder.When("2012-08-01..2012-08-31"), Amount = 149602.52m, Of = PaymentOf.Retention });

    [Fact]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    [Proves("Bus. & Prof. Code § 7031(c)")]
    [Proves("Bus. & Prof. Code § 7125.2")]
    public void C_29_one_gap_in_the_license_bars_the_whole() => new CaseNote
    {
        Number = "C-29",
        Citation = "American Building Innovation v. Balfour Beatty (2024) 104 Cal.App.5th 954",
        Read = "opening of the opinion; notes and a summary",
        Law = "Bus. & Prof. Code §§ 7031, 7125.2, current law",
        Facts = "Subcontract of June 2017 for over $700,000 on a school job, worked August 2017 to May 2018. The workers' compensation "
            + "policy was cancelled in January 2018 and the license suspended by force of law from 25 January. Years later "
            + "policy and license were put back to the start by settlement.",
        Question = "Does a retroactive reinstatement cure the gap?",
        Held = "No. Unlicensed for part of the work, so no recovery at all, not even for the licensed days.",
        Then = "Current law.",
        Now = "License lost; and with it the lien, where the work is private. The span put back later is entered with the day on which it "
            + "was put back, and does not count: its certificate was late for no cause beyond control (§ 7125.1(b)), and where the file "
            + "does not say so, that is in doubt. That day is not in what was read, only that it was years later. That an exemption was "
            + "filed which was not true is entered as want of good faith; where the file does not say so, a court must hear it "
            + "(§ 7031(e)).",
        Takes =
        [
            new("as it was: a school job", School().Work(w => w with { Kind = WorkKind.Public }),
                "2018-06-30",
                Is("license", Standing.Lost),
                Is("lien-right", Standing.Lost)),

            new("a private twin", School(),
                "2018-06-30",
                Is("license", Standing.Lost),
                Says("license", "2018-01-25"),
                Is("lien-right", Standing.Lost),
                Obstacle("Civ. Code § 8400")),

            new("a private twin, with the span that was put back years later", School(putBack: "2022-06-01"),
                "2022-06-30",
                Is("license", Standing.Lost),
                Says("license", "the days do not count"),
                Is("lien-right", Standing.Lost)),

            new("had the certificate come on the ninetieth day of the suspension: cured", School(putBack: "2018-04-25"),
                "2018-06-30",
                Is("license", Standing.Kept)),

            new("on the ninety-first: not", School(putBack: "2018-04-26"),
                "2018-06-30",
                Is("license", Standing.Lost)),

            new("the same, but nothing is known of why it was late", School(putBack: "2018-04-26", beyondControl: null),
                "2018-06-30",
                Is("license", Standing.InDoubt),
                Asks("license", "beyond the claimant's control")),

            new("where nothing is known of good faith, a court must hear whether there was substantial compliance", School(goodFaith: null),
                "2018-06-30",
                Is("license", Standing.InDoubt),
                Asks("license", "good faith")),

            new("a private twin whose work ended the day before the suspension", School(until: "2018-01-24"),
                "2018-06-30",
                Is("license", Standing.Kept)),

            new("a private twin with a recorded claim that has expired while the time to record runs on: still barred", School()
                .ClaimRecorded("2018-06-15").Completed("2018-12-01"),
                "2018-12-31",
                Is("enforcement.last-day", Standing.Lost),
                Is("lien-right", Standing.Lost)),
        ],
    }.Holds();

    private static JobBuilder School(string until = "2018-05-01..2018-05-31", string? putBack = null, bool? goodFaith = false,
        bool? beyondControl = false) => Subcontractor()
        .Claimant(c =>
            c with { License = new License { Required = true, GoodFaith = goodFaith, Active =
                [new LicenseSpan(new LocalDate(2010, 1, 1), new LocalDate(2018, 1, 24)), .. PutBack(putBack, beyondControl)] } })
        .NoticeNotInIssue("2017-08-01")
        .Price(700000.00m)
        .Furnished("2017-08-01..2017-08-31", until: until)
        .Ended(until);

    private static IEnumerable<LicenseSpan> PutBack(string? on, bool? beyondControl) => on is null
        ? [] : [new LicenseSpan(new LocalDate(2018, 1, 25), null, JobBuilder.Day(on)) { Cause = LapseCause.Insurance,
            BeyondControl = beyondControl }];
}
