namespace Stringline.Published;

/// <summary>C-34, C-35 and C-40: a claim for too much, the owner's bankruptcy, and the ninetieth day on a holiday.</summary>
public sealed class SuitAndStay
{
    [Fact]
    [Proves("Civ. Code § 8422(a)")]
    [Proves("Civ. Code § 8422(b)")]
    [Proves("Civ. Code § 8422(c)")]
    public void C_34_a_claim_for_too_much_is_an_alarm_and_kept_for_what_is_due() => new CaseNote
    {
        Number = "C-34",
        Citation = "B. J. Construction v. Spacious Homes (1962) 204 Cal.App.2d 210 (page from memory)",
        Read = "a summary with figures",
        Law = "Code Civ. Proc. § 1196.1 → Civ. Code § 8422",
        Facts = "A contractor's claim about a third above what was due, with a tract included on which it had not worked. Intent to "
            + "defraud was not found. For the sums, which are ours: 90,000.00 due, "
            + "120,000.00 claimed.",
        Question = "Is the lien forfeited?",
        Held = "No; reversed for the claimant.",
        Then = "Kept.",
        Now = "Kept for what is due, with an alarm: honest error does not invalidate (a), intent to defraud does (b), willful inclusion of "
            + "work not furnished forfeits (c). The claim is amended.",
        Takes =
        [
            new("a third above what is due", TooMuch(120_000m), "1960-08-01",
                Is("claim-of-lien.last-day", Standing.Kept),
                IsNot("lien-right", Standing.Lost),
                Amount("claim-of-lien.overstated", 30_000m),
                Because("claim-of-lien.overstated", "Civ. Code § 8422(a)"),
                Because("claim-of-lien.overstated", "Civ. Code § 8422(b)"),
                Because("claim-of-lien.overstated", "Civ. Code § 8422(c)"),
                Says("claim-of-lien.overstated", "amended claim"),
                Silent("release.partial"),
                Demand(90_000m)),

            new("what is due", TooMuch(90_000m), "1960-08-01",
                Silent("claim-of-lien.overstated")),
        ],
    }.Holds();

    private static JobBuilder TooMuch(decimal claimed) => DirectContractor()
        .Furnished("1960-01-04", 90_000m, until: "1960-06-30").Ended("1960-06-30").Completed("1960-06-30")
        .ClaimRecorded("1960-07-11", claimed);

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("11 U.S.C. § 362(a)")]
    [Proves("11 U.S.C. § 546(b)")]
    [Proves("Code Civ. Proc. § 356")]
    public void C_35_in_the_owners_bankruptcy_the_suit_waits_and_the_notice_does_not() => new CaseNote
    {
        Number = "C-35",
        Citation = "Pioneer Construction v. Global Investment (2011) 202 Cal.App.4th 161; In re 450 S. Western Ave. (9th Cir. BAP 2021) "
            + "633 B.R. 894",
        Read = "notes and a summary of the first; two summaries of the second",
        Law = "Civ. Code § 3144 → 8460(a), with 11 U.S.C. §§ 108(c), 362, 546(b)",
        Facts = "The owner goes into bankruptcy before the 90 days end. In the first case suit was brought after the stay ended, long "
            + "after the ninetieth day; in the second a notice under § 546(b) was filed "
            + "after it. The days are ours: claim recorded 1 July 2019, day 90 is Sunday 29 September, after a State holiday on the "
            + "Friday; bankruptcy from 5 August.",
        Question = "Do the 90 days run in the stay?",
        Held = "Of the suit they do not: in time. Of the notice they do: the lien was lost.",
        Then = "As held.",
        Now = "The day to act by is that of the 90 days, as a notice and not as a suit; after it the claim is in doubt while the "
            + "bankruptcy is known, and where none is known it is asked.",
        Takes =
        [
            new("in the 90 days", Debtor("2019-08-05"), "2019-09-03",
                PlannedOn("enforcement.last-day", "2019-09-26"),
                Says("enforcement.last-day", "Do not sue"),
                PlannedOn("enforcement.stay-notice-last-day", "2019-09-26"),
                Is("enforcement.stay-notice-last-day", Standing.Open)),

            new("after them, the stay lasting", Debtor("2019-08-05"), "2020-02-03",
                Is("enforcement.last-day", Standing.InDoubt),
                Band("enforcement.last-day", "2019-09-29", null),
                IsNot("lien-right", Standing.Lost)),

            new("sued on after the stay had ended", Debtor("2019-08-05", "2020-01-31").ActionFiled("2020-02-10"), "2020-03-02",
                IsNot("enforcement.last-day", Standing.Lost),
                IsNot("enforcement.last-day", Standing.Kept)),

            new("no bankruptcy known", Recorded(), "2020-02-03",
                Is("enforcement.last-day", Standing.Lost),
                Asks("enforcement.last-day", "bankruptcy")),
        ],
    }.Holds();

    private static JobBuilder Recorded() => DirectContractor().Furnished("2019-01-07", 6_430m, until: "2019-06-14").Ended("2019-06-14")
        .Completed("2019-06-14").ClaimRecorded("2019-07-01", 6_430m);

    private static JobBuilder Debtor(string since, string? until = null) => Recorded().Bankrupt("owner", since, until);

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 10")]
    [Proves("Civ. Code § 7")]
    [Proves("Code Civ. Proc. § 12a")]
    public void C_40_a_ninetieth_day_on_a_holiday_is_in_time_by_both_lists_and_in_doubt_by_one() => new CaseNote
    {
        Number = "C-40",
        Citation = "Mox, Inc. v. Leventhal (1928) 89 Cal.App. 253",
        Read = "an excerpt with all days; a summary",
        Law = "Code Civ. Proc. § 1190, Civ. Code § 10 → Civ. Code §§ 8460(a), 7, 10; Code Civ. Proc. §§ 12a, 135",
        Facts = "The ninetieth day was a Monday holiday, after a Sunday; suit the next day. The days are ours, of today's lists.",
        Question = "Is it in time?",
        Held = "Yes.",
        Then = "In time.",
        Now = "In time after the fact where both lists pass over the day, as Labor Day; in doubt and never lost where the Government "
            + "Code's alone does, as Columbus Day now. Never planned on.",
        Takes =
        [
            // Recorded Tuesday 9 June 2026: day 90 is Monday 7 September, Labor Day.
            new("a holiday on both lists", Ninety("2026-06-09").ActionFiled("2026-09-08"), "2026-09-14",
                LastDayToSue("2026-09-07"),
                PlannedOn("enforcement.last-day", "2026-09-04"),
                SuedInTime,
                Says("enforcement.last-day", "Mox")),

            // Recorded Tuesday 14 July 2026: day 90 is Monday 12 October, on which the courts sit.
            new("a holiday of the Government Code only", Ninety("2026-07-14").ActionFiled("2026-10-13"), "2026-10-19",
                LastDayToSue("2026-10-12"),
                PlannedOn("enforcement.last-day", "2026-10-09"),
                Is("enforcement.last-day", Standing.InDoubt)),

            new("the same, not sued on by the day after", Ninety("2026-07-14"), "2026-10-13",
                Is("enforcement.last-day", Standing.InDoubt),
                Says("enforcement.last-day", "file today")),

            new("the same, a day later", Ninety("2026-07-14"), "2026-10-14",
                Is("enforcement.last-day", Standing.Lost)),
        ],
    }.Holds();

    private static JobBuilder Ninety(string recorded) =>
        DirectContractor().Furnished("2026-06-01").Ended("2026-06-01").ClaimRecorded(recorded);
}
