namespace Stringline.Published;

/// <summary>C-18 to C-22: how much may be claimed.</summary>
public sealed class Amount
{
    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    [Proves("Civ. Code § 8430(c)")]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void C_18_written_changes_raise_the_ceiling_and_interest_and_delay_stay_out() => new CaseNote
    {
        Number = "C-18",
        Citation = "Basic Modular Facilities v. Ehsanipour (1999) 70 Cal.App.4th 1480",
        Read = "opening of the opinion with all figures; one summary",
        Law = "Civ. Code §§ 3123, 3144 → 8430, 8460",
        Facts = "Contract of May 1996 for $151,839, $154,884 after two changes; $137,092 paid. First claim of $18,192 recorded 27 January "
            + "1997; worked until 28 February. Demand of 17 April: $18,192 past due, "
            + "$709 interest, $18,891 extended overhead, $24,319 extra work directed by the owner, $183,188 delay and interference. Second "
            + "claim of $245,299 recorded 23 April; suit 21 July.",
        Question = "Is the lien capped at the unpaid contract price? Must an overlarge claim fall as a whole?",
        Held = "Not capped at the first price where the owner's changes or breach made more work necessary; up to the reasonable value of "
            + "what was furnished. The whole lien does not fall.",
        Then = "Contract balance $17,792.00, $400 less than the first claim; extra work if proved.",
        Now = "§ 8430(c) says so in terms, for WRITTEN changes. Interest, overhead and delay stay out (C-19). The first claim, recorded "
            + "while still working, is premature: our view, not the opinion's.",
        Takes =
        [
            new("the extra work not agreed in writing", Modular(agreedInWriting: false),
                "1997-08-01",
                Step("agreed-price", 151839.00m),
                Step("changes", 3045.00m),
                Step("paid", -137092.00m),
                Step("charges-left-out", 0m),
                Demand(17792.00m),
                LeftOut(202788.00m),
                RuledOut("claim-of-lien.last-day", "Civ. Code § 8412"),
                LastDayToSue("1997-07-22"),
                SuedInTime),

            new("the extra work agreed in writing", Modular(agreedInWriting: true),
                "1997-08-01",
                Step("changes", 27364.00m),
                Demand(42111.00m),
                LeftOut(202788.00m)),
        ],
    }.Holds();

    private static JobBuilder Modular(bool agreedInWriting) => DirectContractor()
        .Price(151839.00m)
        .Furnished("1996-05-01..1996-05-31", until: "1997-02-28")
        .Ended("1997-02-28")
        .Changed("1996-05-01..1997-01-27", 3045.00m)
        .Changed("1996-05-01..1997-02-28", 24319.00m, agreedInWriting)
        .Paid("1996-05-01..1997-01-27", 137092.00m)
        .Charged("1997-04-17", 709.00m, ChargeKind.Interest)
        .Charged("1997-04-17", 18891.00m, ChargeKind.Delay)
        .Charged("1997-04-17", 183188.00m, ChargeKind.Delay)
        .ClaimRecorded("1997-01-27", 18192.00m)
        .ClaimRecorded("1997-04-23", 245299.00m, id: "second")
        .ActionOn("1997-07-21", ActionOn.Lien, "second"); // the lien in suit was that of $245,299

    [Theory]
    [InlineData("0.01", "117328.04")]
    [InlineData("60000.00", "57328.05")]
    [InlineData("117328.05", "0.00")]
    [Proves("Civ. Code § 8430(a)")]
    public void C_19_delay_is_not_the_value_of_work_whatever_part_of_the_claim_it_is(string delay, string rest) => new CaseNote
    {
        Number = "C-19",
        Citation = "Lambert v. Superior Court (1991) 228 Cal.App.3d 383",
        Read = "opening of the opinion",
        Law = "Civ. Code §§ 3123, 3143 → 8430, 8424",
        Facts = "Contract of June 1988 for $327,705; discharged about June 1990. Claim of $117,328.05 recorded 19 October 1990 for "
            + "services, materials, confiscated materials and charges for delay, "
            + "mostly delay and interference that the contract calls extra work.",
        Question = "Is delay money lienable?",
        Held = "No: it is not the value of labor or material. The owner may move in the suit to have the claim cut, without a bond.",
        Then = "Less than $117,328.05; the split is not in what was read.",
        Now = "The same, so any split must give the rest. That a sum is for delay is told to the program by the kind of the entry; it does "
            + "not find out by itself what a contract calls extra work.",
        Takes =
        [
            new($"{delay} of it entered as delay", DirectContractor()
                    .Furnished("1988-06-01..1988-06-30", 117328.05m - Dollars(delay), until: "1990-06-01..1990-06-30")
                    .Charged("1990-06-30", Dollars(delay), ChargeKind.Delay)
                    .Ended("1990-06-01..1990-06-30")
                    .ClaimRecorded("1990-10-19", 117328.05m),
                "1990-11-01",
                Demand(Dollars(rest)),
                LeftOut(Dollars(delay)),
                LastDayToSue("1991-01-17"),
                // Whether the direct contract was complete when the claim was recorded is not in what was read (§ 8412).
                Is("enforcement.last-day", Standing.InDoubt)),
        ],
    }.Holds();

    private static decimal Dollars(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    public void C_20_attorneys_fees_are_no_part_of_the_lien() => new CaseNote
    {
        Number = "C-20",
        Citation = "Abbett Electric v. California Federal Savings (1991) 230 Cal.App.3d 355",
        Read = "opening of the opinion; one summary",
        Law = "Civ. Code §§ 3110, 3123 → 8400, 8430",
        Facts = "Electrical contractor in San Francisco. Claim recorded in 1981, suit a few weeks later for $314,652 and an estimated "
            + "$100,000 of fees under the contract.",
        Question = "Does a contractual right to fees go into the lien?",
        Held = "No; fees may be won against the other party to the contract.",
        Then = "Ceiling $314,652.",
        Now = "The same.",
        Takes =
        [
            new("as prayed", DirectContractor()
                    .Furnished("1980-01-01..1981-11-30", 314652.00m, until: "1980-01-01..1981-11-30")
                    .Ended("1980-01-01..1981-11-30")
                    .Charged("1981-01-01..1981-12-31", 100000.00m, ChargeKind.AttorneyFees)
                    .ClaimRecorded("1981-12-01..1981-12-31"),
                "1982-01-31",
                Demand(314652.00m),
                LeftOut(100000.00m),
                Step("charges-left-out", 0m)),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    [Proves("Civ. Code § 8424(b)")]
    public void C_21_one_debt_on_nine_parcels_is_one_sum() => new CaseNote
    {
        Number = "C-21",
        Citation = "T.O. IX v. Superior Court (2008) 165 Cal.App.4th 140",
        Read = "opening of the opinion; summaries",
        Law = "Civ. Code §§ 3130, 3143 (150%), 3118 → 8446-8448, 8424 (125%), 8422",
        Facts = "One street through a subdivision of nine homes in Ventura County; $79,831.18 owed. Nine claims, each for the whole. The "
            + "owner offers one bond.",
        Question = "One bond or nine? Are the claims forfeited as overstated?",
        Held = "One debt, one security: one bond frees all nine. Not wilfully false; no forfeiture.",
        Then = "Bond of $119,746.77, 150%.",
        Now = "Bond of $99,788.98: 125%, up to the next cent. The demand is the debt, once.",
        Takes =
        [
            new("nine claims", Nine(),
                "2008-08-01",
                Demand(79831.18m),
                Step("agreed-price", 79831.18m),
                Amount("release-bond.amount", 99788.98m)),
        ],
    }.Holds();

    private static JobBuilder Nine()
    {
        // Days not in what was read: before the opinion.
        var file = DirectContractor().Furnished("2005-01-01..2007-12-30", 79831.18m).Ended("2005-01-01..2007-12-30");
        for (var parcel = 1; parcel <= 9; parcel++)
            file.ClaimRecorded("2007-12-31..2008-07-01", 79831.18m);
        return file;
    }

    [Fact]
    [Proves("Civ. Code § 8200(a)(3)")]
    [Proves("Civ. Code § 8200(c)")]
    [Proves("Civ. Code § 8508(a)")]
    [Proves("Civ. Code § 8530")]
    [Proves("Civ. Code § 8550(e)")]
    public void C_22_a_lender_who_was_told_nothing_leaves_the_lien_in_doubt() => new CaseNote
    {
        Number = "C-22",
        Citation = "Brewer Corp. v. Point Center Financial (2014) 223 Cal.App.4th 831",
        Read = "opening of the opinion; summaries",
        Law = "Civ. Code §§ 3097, 3166, 3172 → 8200, 8544, 8552",
        Facts = "Four subcontractors against the construction lender of $13,625,000, which had paid itself $1,555,771.37 ahead; the fund "
            + "was spent by October 2007. Bonded stop notices in June 2007 and "
            + "March to April 2008. One claimant gave the lender no preliminary notice; another missed the five days to tell it of the "
            + "action.",
        Question = "Can the lender's own prepaid fees be reached? Is the claimant without preliminary notice out?",
        Held = "Yes. Yes, out against the lender, unless it can show a factual excuse. A missed five-day notice without harm is not fatal.",
        Then = "Stop notice of the unnoticed claimant barred.",
        Now = "The same against the lender; the excuse that no lender was knowable when work began is the day since when the lender was "
            + "known. The fund is no fact of the job file yet (Awaiting.md). For the lien the courts are split, so it is in doubt, not "
            + "lost.",
        Takes =
        [
            new("the claimant that told owner and contractor, not the lender", Subcontractor()
                    .Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank")
                    .Furnished("2006-06-01", until: "2007-09-30")
                    .Notice("2006-06-10", Manner.CertifiedMail, "owner", "direct")
                    .Ended("2007-09-30")
                    .StopPayment("2008-03-01..2008-04-30", "bank")
                    .ActionFiled("2008-05-01..2008-05-31"),
                "2008-06-30",
                Is("preliminary-notice.last-day", Standing.InDoubt),
                Asks("preliminary-notice.last-day", "construction lender"),
                Is("stop-payment-notice.lender", Standing.Lost),
                Says("stop-payment-notice.lender", "Brewer"),
                Silent("stop-payment-notice.tell-of-action"), // its notice to the lender is none, so there is no suit on it to tell of
                Is("lien-right", Standing.InDoubt)),

            new("the excuse: no lender was of record, or known, when its work began", Subcontractor()
                    .Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: "2006-06-05")
                    .Furnished("2006-06-01", until: "2007-09-30")
                    .Notice("2006-06-10", Manner.CertifiedMail, "owner", "direct")
                    .Ended("2007-09-30")
                    .StopPayment("2007-06-01..2007-06-30", "bank"),
                "2007-10-15",
                Is("preliminary-notice.last-day", Standing.Kept),
                Is("stop-payment-notice.lender", Standing.InDoubt),
                Says("stop-payment-notice.lender", "leaves room for an excuse")),

            new("one that told all three", Subcontractor()
                    .Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank")
                    .Furnished("2006-06-01", until: "2007-09-30")
                    .Notice("2006-06-10", Manner.CertifiedMail, "owner", "direct", "bank")
                    .Ended("2007-09-30")
                    .StopPayment("2007-06-01..2007-06-30", "bank")
                    .ActionFiled("2007-09-03..2007-09-07"),
                "2007-10-15",
                Is("preliminary-notice.last-day", Standing.Kept),
                Is("stop-payment-notice.lender", Standing.Kept),
                Is("stop-payment-notice.last-day", Standing.Kept),
                Is("stop-payment-notice.tell-of-action", Standing.InDoubt),
                Says("stop-payment-notice.tell-of-action", "not fatal"),
                IsNot("lien-right", Standing.InDoubt)),
        ],
    }.Holds();
}
