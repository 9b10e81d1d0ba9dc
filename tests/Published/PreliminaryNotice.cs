namespace Stringline.Published;

/// <summary>C-23 to C-26: to whom, when, and what a late or bad notice saves.</summary>
public sealed class PreliminaryNotice
{
    [Fact]
    [Proves("Civ. Code § 8200(a)")]
    [Proves("Civ. Code § 8200(a)(3)")]
    [Proves("Civ. Code § 8430(a)(2)")]
    [Proves("Civ. Code § 8508(a)")]
    public void C_23_the_record_tells_of_the_lender() => new CaseNote
    {
        Number = "C-23",
        Citation = "Romak Iron Works v. Prudential (1980) 104 Cal.App.3d 767",
        Read = "opening of the opinion; summaries with dates",
        Law = "Civ. Code §§ 3097, 3098 → 8200, 8204",
        Facts = "Iron for a garage in San Francisco, subcontract of 1 June 1972 for $26,574. A construction deed of trust was of record "
            + "since 24 May 1972. Preliminary notice on 20 June to the direct "
            + "contractor; no lender named. Work finished in late 1973 or early 1974. Stop notice to the lender on 18 January 1974 for "
            + "$40,186.63.",
        Question = "Is a claimant that did not know the lender excused?",
        Held = "No: the public record binds. The stop notice fails.",
        Then = "Lost against the lender.",
        Now = "The same against the lender. As to the lien: told to the direct contractor alone, the notice is none, for the owner is "
            + "missing; with the owner told it is in doubt. What is claimed above "
            + "the subcontract price, $13,612.63, was not decided; today's § 8430(a)(2) cuts it.",
        Takes =
        [
            new("the notice as it was read: to the direct contractor alone", Garage()
                    .Notice("1972-06-20", Manner.CertifiedMail, "direct"),
                "1974-04-01",
                Is("preliminary-notice.last-day", Standing.Lost),
                Asks("preliminary-notice.last-day", "owner"),
                Is("stop-payment-notice.lender", Standing.Lost),
                Says("stop-payment-notice.lender", "Romak"),
                Asks("preliminary-notice.last-day", "construction lender"),
                Is("lien-right", Standing.Lost)),

            new("had the owner been told as well", Garage()
                    .Notice("1972-06-20", Manner.CertifiedMail, "owner", "direct"),
                "1974-04-01",
                Is("preliminary-notice.last-day", Standing.InDoubt),
                Asks("preliminary-notice.last-day", "construction lender"),
                Step("agreed-price", 26574.00m),
                Is("stop-payment-notice.lender", Standing.Lost),
                Step("beyond-price", 0m),
                Says("stop-payment-notice.amount", "$13,612.63 more than the $26,574.00"),
                Demand(26574.00m)),
        ],
    }.Holds();

    private static JobBuilder Garage() => Subcontractor()
        .Party("lender", PartyCapacity.ConstructionLender, "Lender of record")
        .Price(26574.00m)
        .Furnished("1972-06-01", 40186.63m, until: "1973-11-01..1974-03-01")
        .Ended("1973-11-01..1974-03-01")
        .StopPayment("1974-01-18", "lender", 40186.63m);

    [Fact]
    [Proves("Civ. Code § 8200(e)(2)")]
    [Proves("Civ. Code § 8200(c)")]
    public void C_24_notice_to_the_bank_the_owner_named_is_not_lost() => new CaseNote
    {
        Number = "C-24",
        Citation = "Force Framing v. Chinatrust Bank (2010) 187 Cal.App.4th 1368",
        Read = "opening of the opinion; notes and a summary",
        Law = "Civ. Code §§ 3097(a), 3083 → 8200(a). Reads against C-23",
        Facts = "Framing of condominiums in Riverside, direct contract of September 2006 for $1,460,233. The owner's sheet named one bank "
            + "as lender; the deed of trust of record named another. "
            + "Preliminary notice to the first only. Unpaid: $1,398,882.00.",
        Question = "Is notice to the wrong bank enough when the owner's own sheet named it?",
        Held = "It can be: a reputed lender is one whom the claimant reasonably and honestly took for the lender.",
        Then = "For trial.",
        Now = "In doubt, not lost; the sheet that named the lender decides, so the engine asks for it.",
        Takes =
        [
            new("as the court held", DirectContractor()
                    .Party("named", PartyCapacity.ConstructionLender, "The bank on the owner's sheet", reputed: true)
                    .Party("true", PartyCapacity.ConstructionLender, "The bank of record")
                    .Furnished("2006-09-01..2006-09-30", 1398882.00m, until: "2007-12-31")
                    .Notice("2006-09-01", Manner.CertifiedMail, "named")
                    .Ended("2007-12-31"),
                "2008-01-31",
                Is("preliminary-notice.last-day", Standing.InDoubt),
                Asks("preliminary-notice.last-day", "Who named The bank on the owner's sheet"),
                Is("stop-payment-notice.lender", Standing.InDoubt),
                Is("stop-payment-notice.lender.2", Standing.InDoubt),
                Is("lien-right", Standing.InDoubt),
                Demand(1398882.00m)),

            new("no lender told at all", DirectContractor()
                    .Party("true", PartyCapacity.ConstructionLender, "The bank of record")
                    .Furnished("2006-09-01..2006-09-30", 1398882.00m, until: "2007-12-31")
                    .Ended("2007-12-31"),
                "2008-01-31",
                Is("preliminary-notice.last-day", Standing.Lost),
                Demand(0m)),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8200(c)")]
    [Proves("Civ. Code § 8202(a)(2)")]
    public void C_25_a_notice_with_a_stock_figure_is_no_notice() => new CaseNote
    {
        Number = "C-25",
        Citation = "Rental Equipment v. McDaniel Builders (2001) 91 Cal.App.4th 445",
        Read = "opening of the opinion; one note",
        Law = "Civ. Code § 3097(c)(1) → 8202(a)(1)-(2)",
        Facts = "Equipment lent to a demolition subcontractor ($75,000) in Santa Fe Springs. Two preliminary notices, each with an "
            + "estimate of $10,000 that was not worked out from anything. Claim of $159,898.00.",
        Question = "Must the estimate have a basis?",
        Held = "Yes: a figure reached by reasoning from relevant facts. The notices, and so the lien, are bad.",
        Then = "No lien.",
        Now = "The same. Before anybody has said how the estimate was reached the claim, sixteen times as much, is in doubt. The days are "
            + "not in what was read: any will do.",
        Takes =
        [
            new("as the court held: stock figures", Equipment(EstimateBasis.StockFigure),
                "1999-02-28",
                Is("preliminary-notice.last-day", Standing.Lost),
                Is("lien-right", Standing.Lost),
                Step("outside-reach", -159898.00m),
                Demand(0m),
                Obstacle("Civ. Code § 8200(c)")),

            new("while nobody has said how the figures were reached", Equipment(null),
                "1999-02-28",
                Is("preliminary-notice.estimate", Standing.InDoubt),
                Asks("preliminary-notice.estimate", "How was the estimate"),
                Is("lien-right", Standing.InDoubt)),

            new("had they been worked out from what was known", Equipment(EstimateBasis.WorkedOut),
                "1999-02-28",
                Is("preliminary-notice.last-day", Standing.Kept),
                Demand(159898.00m)),
        ],
    }.Holds();

    private static JobBuilder Equipment(EstimateBasis? basis) => ToSubcontractor(ClaimantRole.EquipmentLessor)
        .Furnished("1997-01-04", 159898.00m, until: "1998-12-31")
        .Ended("1998-12-31")
        .NoticeEstimating("1997-01-04", 10000.00m, basis)
        .NoticeEstimating("1997-01-10", 10000.00m, basis);

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 8400")]
    public void C_26_a_notice_more_than_twenty_days_after_the_last_work_saves_nothing() => new CaseNote
    {
        Number = "C-26",
        Citation = "Groundtech v. Puryear (Los Angeles Super. Ct., 23SMCV01991, tentative ruling of 28 November 2023)",
        Read = "the whole ruling",
        Law = "Civ. Code §§ 8200, 8204(a), current law",
        Facts = "Subcontractor without a contract with the owner; last furnished in October 2022. Preliminary notice 31 January 2023.",
        Question = "What does so late a notice save?",
        Held = "Nothing: no work within 20 days before it. The claim was removed.",
        Then = "Current law.",
        Now = "Reaches back to 11 January 2023; covers $0.00. The sum is not in the ruling: any will do.",
        Takes =
        [
            new("as the court held", Subcontractor()
                    .Furnished("2022-10-01..2022-10-31", 10000.00m)
                    .Ended("2022-10-01..2022-10-31")
                    .Notice("2023-01-31"),
                "2023-02-15",
                Days("preliminary-notice.reaches-back-to", "2023-01-11"),
                Is("preliminary-notice.reaches-back-to", Standing.Lost),
                Step("outside-reach", -10000.00m),
                Demand(0m),
                Is("lien-right", Standing.Lost)),
        ],
    }.Holds();
}
