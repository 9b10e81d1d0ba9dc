namespace Stringline.Published;

/// <summary>C-11 to C-17: the action, credit, second claims and release.</summary>
public sealed class Enforcing
{
    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 8460(b)")]
    [Proves("Civ. Code § 8460(b)(1)")]
    [Proves("Civ. Code § 8460(b)(2)")]
    [Proves("Civ. Code § 8180(b)")]
    public void C_11_credit_moves_the_time_to_sue_and_the_year_waits_for_acceptance() => new CaseNote
    {
        Number = "C-11",
        Citation = "Richards v. Hillside Development (1960) 177 Cal.App.2d 776",
        Read = "opening of the opinion with the dates; one summary",
        Law = "Code Civ. Proc. § 1198.1 → Civ. Code § 8460(b)",
        Facts = "Streets, sewers and water mains in Contra Costa County, $53,769.75, of which $6,000 unpaid; worked 9 September 1955 to 9 "
            + "January 1957, subject to acceptance under a city "
            + "ordinance, not yet accepted. Claim recorded 21 January 1957. Credit of 70 days recorded 19 April; a second until 15 "
            + "November recorded 4 November. Suit 11 February 1958.",
        Question = "May credit be given twice, the second notice late? Does the year, counted from the last work, bar the suit?",
        Held = "More than one extension is allowed, if mutual; the year had not begun, since the work waited for acceptance.",
        Then = "Without credit the last day was 21 April 1957, a Sunday; with it 13 February 1958, so the suit was in time.",
        Now = "The same shape: the second credit, recorded after the 90 days, holds only while nobody bought or lent in good faith "
            + "(§ 8460(b)(2)), so the time under the first alone "
            + "stands beside it and the suit is in doubt until that is known; whether the agreement is mutual is asked.",
        Takes =
        [
            new("under the first credit alone, recorded on day 88", DirectContractor()
                    .SubjectToAcceptanceBy("the city")
                    .Furnished("1955-09-09", until: "1957-01-09")
                    .Ended("1957-01-09")
                    .ClaimRecorded("1957-01-21", 6000.00m)
                    .CreditRecorded("1957-04-19", until: "1957-06-28"),
                "1957-07-01",
                Days("credit.last-day", "1957-04-21"),
                Is("credit.last-day", Standing.Kept),
                Days("credit.enforcement-last-day", "1957-09-26"),
                Is("credit.enforcement-last-day", Standing.Open)),

            new("had no acceptance been required: the year from the last work bars the suit", DirectContractor()
                    .Furnished("1955-09-09", until: "1957-01-09")
                    .Ended("1957-01-09")
                    .Completed("1957-01-09")
                    .ClaimRecorded("1957-01-21", 6000.00m)
                    .CreditRecorded("1957-04-19", until: "1957-11-15")
                    .ActionFiled("1958-02-11"),
                "1958-03-01",
                Days("credit.enforcement-last-day", "1958-01-09"),
                Is("credit.enforcement-last-day", Standing.Lost)),

            new("as pleaded", DirectContractor()
                    .SubjectToAcceptanceBy("the city")
                    .Price(53769.75m)
                    .Furnished("1955-09-09", until: "1957-01-09")
                    .Ended("1957-01-09")
                    .Paid("1955-09-09..1957-01-20", 47769.75m)
                    .ClaimRecorded("1957-01-21", 6000.00m)
                    .CreditRecorded("1957-04-19", until: "1957-06-28")
                    .CreditRecorded("1957-11-04", until: "1957-11-15")
                    .ActionFiled("1958-02-11"),
                "1958-03-01",
                Is("completion.day", Standing.NotYet),
                LastDayToRecord(),
                // In time; but while the suit on it is in doubt and the time to record runs, another claim removes the doubt.
                RecordedInTimeIsInDoubt,
                // Subdivision (a) and its 21 April do not apply where a notice of credit is recorded in time.
                LastDayToSue("1957-09-26", "1958-02-13"),
                Because("enforcement.last-day", "Civ. Code § 8460(b)"),
                Days("credit.enforcement-last-day", "1957-09-26", "1958-02-13"),
                Is("credit.enforcement-last-day", Standing.InDoubt),
                RuledOut("credit.enforcement-last-day", "Civ. Code § 8460(b)"),
                Asks("credit.enforcement-last-day", "mutual"),
                Is("enforcement.last-day", Standing.InDoubt),
                Is("lien-right", Standing.InDoubt),
                Step("agreed-price", 53769.75m),
                Step("paid", -47769.75m),
                Demand(6000.00m)),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 8400")]
    public void C_12_a_lapsed_claim_does_not_bar_a_second_one_in_time() => new CaseNote
    {
        Number = "C-12",
        Citation = "Coast Central Credit Union v. Superior Court (1989) 209 Cal.App.3d 703",
        Read = "opening of the opinion; a summary with dates",
        Law = "Civ. Code §§ 3115, 3144 → 8412, 8460",
        Facts = "Direct contractor of a house, who left when the owner stopped paying. First claim recorded 1 December 1986; no suit, "
            + "since a title insurer promised payment from escrow. "
            + "Second claim for the same debt recorded 21 April 1987, inside the time to record; suit on it 17 July 1987.",
        Question = "Does letting the first claim lapse bar a second, timely claim for the same work?",
        Held = "No. The lapse kills the recorded claim, not the right.",
        Then = "First claim: last day to sue 1 March 1987, a Sunday. Second: 20 July; sued on day 87.",
        Now = "The same. That the time to record still ran means completion on 21 January 1987 or later.",
        Takes =
        [
            new("before the second claim, completion still to come", LeftTheJob(),
                "1987-04-20",
                LastDayToSue("1987-03-01"),
                Is("enforcement.last-day", Standing.Lost),
                Says("lien-right", "a new claim may be recorded"),
                IsNot("lien-right", Standing.Lost)),

            new("before the second claim, completion as the court took it", LeftTheJob().Completed("1987-01-21..1987-04-20"),
                "1987-04-20",
                Is("enforcement.last-day", Standing.Lost),
                Is("lien-right", Standing.Open)),

            new("the second claim", LeftTheJob()
                    .Completed("1987-01-21..1987-04-20")
                    .ClaimRecorded("1987-04-21")
                    .ActionFiled("1987-07-17"),
                "1987-08-01",
                RecordedInTime,
                LastDayToSue("1987-07-20"),
                SuedInTime,
                Is("lien-right", Standing.Kept)),
        ],
    }.Holds();

    // The day on which the contractor left is not in what was read: before the first claim.
    private static JobBuilder LeftTheJob() => DirectContractor()
        .Furnished("1986-01-01..1986-11-30")
        .Ended("1986-01-01..1986-11-30")
        .ClaimRecorded("1986-12-01");

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 8410")]
    [Proves("Civ. Code § 8490")]
    public void C_13_releasing_an_expired_claim_does_not_bar_a_new_one() => new CaseNote
    {
        Number = "C-13",
        Citation = "Solit v. Tokai Bank (1999) 68 Cal.App.4th 1435",
        Read = "opening of the opinion",
        Law = "Civ. Code § 3144 → 8460",
        Facts = "Contractor in Santa Monica. First claim recorded 7 March 1990, not sued on. A release of it recorded 28 August 1990, on "
            + "the lender's demand. Second claim for the same work, "
            + "smaller, recorded 22 October 1990.",
        Question = "Does releasing an expired claim bar a later one for the same work?",
        Held = "No, when the release does not say that the debt is satisfied.",
        Then = "First claim expired after 5 June 1990. Second: last day to sue 20 January 1991, a Sunday; the 21st was a holiday.",
        Now = "The same. Whether the second claim was recorded in time is not in what was read. While the file does not say what the "
            + "release says, the right is in doubt and the engine asks.",
        Takes =
        [
            new("as the court held, after the release and before the second claim; the work, for the example, just completed",
                Released(satisfied: false).Completed("1990-07-24"),
                "1990-10-01",
                LastDayToRecord("1990-10-22"),
                Is("claim-of-lien.last-day", Standing.Open),
                Is("enforcement.last-day", Standing.NotYet),
                Because("lien-right", "Civ. Code § 8490"),
                Is("lien-right", Standing.Open)),

            new("as the court held, after the second claim", Released(satisfied: false).Completed("1990-07-24").ClaimRecorded("1990-10-22"),
                "1991-01-10",
                RecordedInTime,
                LastDayToSue("1991-01-20"),
                Is("enforcement.last-day", Standing.Open),
                Is("lien-right", Standing.Open)),

            new("the opposite pole: had the release said that the debt is satisfied", Released(satisfied: true).Completed("1990-07-24")
                .ClaimRecorded("1990-10-22"),
                "1991-01-10",
                Is("lien-right", Standing.Done),
                Obstacle("Civ. Code § 8490")),

            new("while the file does not say what the release says", Released(satisfied: null).Completed("1990-07-24")
                .ClaimRecorded("1990-10-22"),
                "1991-01-10",
                LastDayToSue("1991-01-20"),
                Is("enforcement.last-day", Standing.Open),
                IsNot("claim-of-lien.last-day", Standing.Done),
                Asks("lien-right", "satisfied"),
                Is("lien-right", Standing.InDoubt)),

            new("the first claim, the day after its ninetieth", FirstClaim(),
                "1990-06-06",
                LastDayToSue("1990-06-05"),
                Is("enforcement.last-day", Standing.Lost)),
        ],
    }.Holds();

    private static JobBuilder FirstClaim() => DirectContractor()
        .Furnished("1989-01-01..1990-03-06")
        .Ended("1989-01-01..1990-03-06")
        .ClaimRecorded("1990-03-07");

    private static JobBuilder Released(bool? satisfied) => FirstClaim().ReleaseRecorded("1990-08-28", satisfied);

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 8490")]
    public void C_14_a_release_that_says_satisfied_ends_the_matter() => new CaseNote
    {
        Number = "C-14",
        Citation = "Santa Clara Land Title v. Nowack & Associates (1991) 226 Cal.App.3d 1558",
        Read = "opening of the opinion; summaries",
        Law = "Civ. Code § 3144 → 8460",
        Facts = "Civil engineer. Under a contract of 27 September 1979: claim of $30,021.00 recorded 5 September 1980, suit in December, "
            + "paid from escrow in June 1981. Under a contract of "
            + "August 1981 with a new owner: claim of $14,658.50 recorded 5 December 1983; a release of it says that the claim is fully "
            + "satisfied and discharged, given so that the owner could "
            + "borrow. A construction deed of trust follows, then a later claim for the same work.",
        Question = "Can a claimant that released its claim as satisfied later record again for the same money?",
        Held = "No. The release ends the lien, and the lender comes first. The opposite pole to C-13.",
        Then = "The later claim fails.",
        Now = "The same: the right is done and a new claim is refused. While the file does not say what the release says, the engine asks "
            + "and leaves the later claim in doubt.",
        Takes =
        [
            new("the first contract", DesignProfessional()
                    .Contract(c => c with { On = JobBuilder.Day("1979-09-27") })
                    .Furnished("1979-09-27..1980-09-04", 30021.00m, until: "1979-09-27..1980-09-04")
                    .Ended("1979-09-27..1980-09-04")
                    .ClaimRecorded("1980-09-05", 30021.00m)
                    .ActionFiled("1980-12-01..1980-12-31"),
                "1981-05-31",
                LastDayToSue("1980-12-04"),
                Is("enforcement.last-day", Standing.InDoubt),
                Demand(30021.00m)),

            new("the second contract, released", Second().ReleaseRecorded("1983-12-06..1990-12-31", satisfied: true),
                "1991-01-31",
                Is("claim-of-lien.last-day", Standing.Done),
                Is("enforcement.last-day", Standing.Done),
                Is("lien-right", Standing.Done),
                Obstacle("Civ. Code § 8490")),

            new("the later claim", Second().ReleaseRecorded("1983-12-06..1984-12-31", satisfied: true)
                .ClaimRecorded("1985-01-01..1990-12-31"),
                "1991-01-31",
                Is("claim-of-lien.last-day", Standing.Done),
                Is("lien-right", Standing.Done),
                Obstacle("Civ. Code § 8490")),

            new("the later claim, while the file does not say what the release says", Second().ReleaseRecorded("1983-12-06..1984-12-31")
                .ClaimRecorded("1985-01-01..1990-12-31"),
                "1991-01-31",
                Asks("lien-right", "satisfied"),
                IsNot("lien-right", Standing.Kept),
                IsNot("lien-right", Standing.Open)),
        ],
    }.Holds();

    private static JobBuilder Second() => DesignProfessional()
        .Furnished("1981-08-01..1983-12-04", 14658.50m, until: "1981-08-01..1983-12-04")
        .Ended("1981-08-01..1983-12-04")
        .ClaimRecorded("1983-12-05", 14658.50m);

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 8424(b)")]
    public void C_15_four_claims_for_one_debt_are_one_debt() => new CaseNote
    {
        Number = "C-15",
        Citation = "RGC Gaslamp v. Ehmcke Sheet Metal (2020) 56 Cal.App.5th 413 (page from memory)",
        Read = "opening of the opinion; three notes",
        Law = "Civ. Code §§ 8424, 8480, current law",
        Facts = "Sheet metal subcontractor of a hotel in San Diego. Claims of $257,978.00 recorded in September and December 2017, April "
            + "and July 2018. The claimant released the first two in April, the "
            + "third by July, the fourth after the owner sued. Bonds freed the land from the first and the third.",
        Question = "What may an owner do against repeated identical claims after a release bond?",
        Held = "Recording is protected and privileged, so no damages; the owner's road is bond, petition or motion.",
        Then = "Current law.",
        Now = "Bond of 125% of one claim, $322,472.50. That repeating a claim after a bond deserves a warning is our advice, not the "
            + "holding (Awaiting.md).",
        Takes =
        [
            new("while the fourth claim stood, with the bond for the third recorded", FourClaims()
                .ReleaseRecorded("2018-04-01..2018-06-30", satisfied: false).ReleaseBond("2018-05-01..2018-07-31", 322472.50m),
                "2018-09-01",
                Amount("release-bond.amount", 322472.50m),
                Is("release-bond.amount", Standing.Done),
                Asks("release-bond.action-last-day", "notice of the release bond")),

            new("while the fourth claim stood, and it is not known what the release says", FourClaims()
                .ReleaseRecorded("2018-04-01..2018-06-30"),
                "2018-09-01",
                // The third claim may still stand beside the fourth, so its day is shown and acted on.
                Band("enforcement.last-day", "2018-06-30", "2018-10-29"),
                Is("enforcement.last-day", Standing.InDoubt),
                Amount("release-bond.amount", 322472.50m),
                Demand(257978.00m)),

            new("after its release", FourClaims().ReleaseRecorded("2018-04-01..2018-06-30").ReleaseRecorded("2018-08-01..2020-10-31"),
                "2020-11-01",
                Is("claim-of-lien.last-day", Standing.Done),
                Is("lien-right", Standing.Done)),
        ],
    }.Holds();

    private static JobBuilder FourClaims() => Subcontractor()
        .NoticeNotInIssue("2016-01-01")
        .Furnished("2016-01-01..2017-08-31", 257978.00m, until: "2016-01-01..2017-08-31")
        .Ended("2016-01-01..2017-08-31")
        .ClaimRecorded("2017-09-01..2017-09-30", 257978.00m)
        .ClaimRecorded("2017-12-01..2017-12-31", 257978.00m)
        .ClaimRecorded("2018-04-01..2018-04-30", 257978.00m)
        .ClaimRecorded("2018-07-01..2018-07-31", 257978.00m);

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 8480")]
    [Proves("Civ. Code § 8482")]
    [Proves("Civ. Code § 8486(a)")]
    public void C_16_a_claim_not_sued_on_expires_the_day_after_the_ninetieth() => new CaseNote
    {
        Number = "C-16",
        Citation = "Lingate Lane Mutual Water v. Travis (Santa Barbara Super. Ct., 24CV07104, tentative rulings of 10 January and 7 "
            + "February 2025)",
        Read = "openings of both rulings",
        Law = "Civ. Code §§ 8460, 8480-8488, current law",
        Facts = "Slab and well repair under a contract of 5 October 2023, terminated by the owner 26 February 2024. Claim recorded 15 "
            + "March; settled and paid 13 June 2024. No suit, no credit. Petition "
            + "16 December 2024.",
        Question = "Has the claim expired, and may the owner have a release order?",
        Held = "Yes; granted on 7 February 2025.",
        Then = "Current law.",
        Now = "Last day to sue 13 June 2024, the very day of the settlement; expired from 14 June, and from then the owner may petition, "
            + "ten days after its demand.",
        Takes =
        [
            new("on the ninetieth day", WellRepair(), "2024-06-13",
                LastDayToSue("2024-06-13"),
                Is("enforcement.last-day", Standing.Open)),

            new("the day after", WellRepair(), "2024-06-14",
                Is("enforcement.last-day", Standing.Lost),
                IsNot("lien-right", Standing.Kept)),

            // The day of the demand is not in what was read: at least ten days before the petition.
            new("on the day of the petition, the release demanded ten days before", WellRepair().ReleaseDemanded("2024-12-06"),
                "2024-12-16",
                Is("enforcement.last-day", Standing.Lost),
                Days("release.answer-by", "2024-12-15"),
                Because("release.answer-by", "Civ. Code § 8482"),
                Says("release.petition-first-day", "hearing is held within 30 days"),
                Days("release.petition-first-day", "2024-12-16"),
                Is("release.petition-first-day", Standing.Open)),
        ],
    }.Holds();

    private static JobBuilder WellRepair() => DirectContractor()
        .Contract(c => c with { On = JobBuilder.Day("2023-10-05") })
        .Furnished("2023-10-05", until: "2024-02-26")
        .Ended("2024-02-26")
        .ClaimRecorded("2024-03-15");

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 8480")]
    [Proves("Civ. Code § 8488(c)")]
    public void C_17_an_expired_claim_is_gone_but_the_debt_is_not() => new CaseNote
    {
        Number = "C-17",
        Citation = "LA Tigertail v. Apollo Glazing Contractors (Los Angeles Super. Ct., 23STCP03242, tentative ruling of 5 October 2023)",
        Read = "opening of the ruling",
        Law = "Civ. Code §§ 8460, 8480, 8488(c), current law",
        Facts = "Claim of $70,405.87 recorded more than 90 days before the owner's unopposed petition. No suit.",
        Question = "Release, and who pays?",
        Held = "Granted; costs of $480.00 and fees of $1,600.00 to the owner.",
        Then = "Current law.",
        Now = "Expired. The order ends the lien, not the debt (§ 8480(b)): the demand stays what it is. Fees are the prevailing party's "
            + "(§ 8488(c)).",
        Takes =
        [
            // Recorded on any day that leaves more than 90 before the ruling; the petition was earlier still.
            new("on the day of the ruling", DirectContractor()
                    .Furnished("2022-01-01..2023-07-05", 70405.87m, until: "2022-01-01..2023-07-05")
                    .Ended("2022-01-01..2023-07-05")
                    .ClaimRecorded("2023-01-01..2023-07-06", 70405.87m)
                    .ReleaseDemanded("2023-04-02..2023-09-25"),
                "2023-10-05",
                Says("release.answer-by", "attorney's fees"),
                Band("enforcement.last-day", "2023-04-01", "2023-10-04"),
                Is("enforcement.last-day", Standing.Lost),
                Is("release.petition-first-day", Standing.Open),
                Demand(70405.87m)),
        ],
    }.Holds();
}
