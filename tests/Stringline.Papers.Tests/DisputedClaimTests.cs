using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Testing;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// The papers of the claims procedures, item by item as Pub. Contract Code §§ 9204 and 20104.2 and Civ. Code § 8850 have them, and what
/// they refuse.
/// </summary>
public sealed class DisputedClaimTests
{
    private const string Claim = "dispute-claim";
    private const string Conference = "conference-demand";
    private const string Request = "claim-request";

    // The direct contractor's own private job, on a contract of 2026: no housing.
    private static JobFile Owned() => Direct() with { Work = Direct().Work with { LowRiseResidential = false } };

    private static void Holds(PacketOutcome.Made made, string item) =>
        Assert.True(made.Says(item) || Flat(made.TextOf()).Contains(item, StringComparison.Ordinal),
            $"'{item}' is not in:\n{made.TextOf()}");

    private static string Flat(string text) => string.Join(' ', text.Split('\n', ' '));

    /// <summary>
    /// Pub. Contract Code § 9204(c)(1): a separate demand, sent by registered or certified mail, (A) for time or (B), (C) for money;
    /// (d)(1): its answer.
    /// </summary>
    [Theory]
    [InlineData("California Public Contract Code section 9204, subdivision (c)(1)")]
    [InlineData("It is a separate demand")]
    [InlineData("registered or certified mail, return receipt requested")]
    [InlineData("City of Woodland, public entity")]
    [InlineData("300 First Street, Woodland, CA 95695")]
    [InlineData("$31,600.00")]
    [InlineData("(thirty-one thousand six hundred and 00/100 dollars)")]
    [InlineData("9 days")]
    [InlineData("the footing of the north wall was found to stand on fill")]
    [InlineData("(1) Change order request 7 of March 4, 2026, with its prices")]
    [InlineData("(2) Daily logs of March 2 to 13, 2026")]
    [InlineData("Contract of January 5, 2026 with the public entity")]
    [InlineData("418 Alder Court, Woodland, California 95695")]
    [InlineData("within 45 days of receipt of this claim, a written statement identifying what portion of it is disputed and what portion "
        + "is undisputed")]
    [InlineData("within 60 days after that statement")]
    [InlineData("7 percent per annum (subdivision (d)(4))")]
    public void Section_9204_c_1(string item) => Holds(Make(Claim), item);

    /// <summary>Civ. Code § 8850(c)(1), (d), (h): the same for private work, with its own days and interest.</summary>
    [Theory]
    [InlineData("California Civil Code section 8850, subdivision (c)(1)")]
    [InlineData("registered or certified mail, return receipt requested")]
    [InlineData("Alder Court Partners, LLC, reputed owner")]
    [InlineData("within 30 days of receipt of this claim, a written statement identifying what portion of it is disputed and what portion "
        + "is undisputed")]
    [InlineData("2 percent per month (subdivision (h)(1))")]
    public void Section_8850_c_1(string item) => Holds(Make(Claim, _ => Owned()), item);

    /// <summary>Pub. Contract Code § 9204(d)(1)(B): "The claimant shall furnish reasonable documentation to support the claim."</summary>
    [Theory]
    [InlineData(Claim)]
    [InlineData(Request)]
    public void Section_9204_d_1_B(string id)
    {
        Assert.Contains(Refusals(id, options: o => o with { Documents = [] }), r =>
            r is { Id: "documents-missing", Where: Place.OfInput { Input: PaperInput.Documents } });
        Assert.Contains(Refusals(id, options: o => o with { Documents = [" "] }), r => r.Id == "documents-missing");
        Assert.Contains(Refusals(id, options: o => o with { Words = null }), r =>
            r is { Id: "basis-missing", Where: Place.OfInput { Input: PaperInput.Words } });
    }

    /// <summary>
    /// The sum is what the file comes to without retention, unless another is told; what the file does not support is said on the sheet.
    /// </summary>
    [Fact]
    [Slow(Slow.Lasting)]
    public void The_sum_is_the_one_that_the_law_reckons()
    {
        PaperOptions Untold(PaperOptions options) => options with { Amount = null, ExtensionDays = null };
        JobFile Held(JobFile job) => job.With(new Retained { Index = 8, On = DayFact.On(Day("2026-03-30")), Amount = 4_212.50m });
        var (job, asOf, _) = For(Claim);
        var owed = Assess(Held(job), asOf).Owed.Demand;
        var made = Make(Claim, Held, Untold);
        Assert.Contains(PaperText.Dollars(owed - 4_212.50m), made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("retention withheld, $4,212.50", Flat(made.SheetText()), StringComparison.Ordinal);
        var more = Make(Claim, Held, o => o with { Amount = owed + 1m });
        Assert.Contains($"supports {PaperText.Dollars(owed - 4_212.50m)} of the {PaperText.Dollars(owed + 1m)}", Flat(more.SheetText()),
            StringComparison.Ordinal);
        Assert.DoesNotContain("The job file supports", Make(Claim, options: o => o with { Amount = 10m }).SheetText(),
            StringComparison.Ordinal);
        Assert.Contains(Refusals(Claim, j => j with { Contract = j.Contract with { Price = null }, Entries = [] }, Untold),
            r => r.Id == "nothing-to-claim");
    }

    /// <summary>Pub. Contract Code § 9204(c)(1)(A): a claim may be for time alone.</summary>
    [Fact]
    public void Section_9204_c_1_A()
    {
        var text = Make(Claim, options: o => o with { Amount = null }).TextOf();
        Assert.Contains("9 days", text, StringComparison.Ordinal);
        Assert.DoesNotContain("$", text, StringComparison.Ordinal);
        Assert.Contains("1 day", Make(Claim, options: o => o with { Amount = null, ExtensionDays = 1 }).TextOf(), StringComparison.Ordinal);
    }

    /// <summary>Pub. Contract Code § 9204(c)(2), (c)(3), (g); Civ. Code § 8850(n), (o): whose claim it is, and toward whom.</summary>
    [Fact]
    public void Section_9204_whom_it_governs()
    {
        Assert.Contains(Refusals(Claim, j => j with { Claimant = j.Claimant with { Role = ClaimantRole.Subcontractor, HiredBy = "p2" } }),
            r => r.Id == "no-contract-with-payer");
        Assert.Contains(Refusals(Claim, j => j with { Work = j.Work with { Body = PublicBody.Transportation } }),
            r => r.Id == "not-governed");
        Assert.Contains(Refusals(Claim, j => j with { Parties = [.. j.Parties.Where(p => p.Id != "c1")] }), r => r.Id == "payer-missing");
        Assert.Contains(Refusals(Claim, _ => Owned() with { Contract = Owned().Contract with { On = Day("2025-12-31") } }),
            r => r.Id == "not-governed");
        Assert.Contains(Refusals(Claim, _ => Owned() with { Work = Owned().Work with { LowRiseResidential = true } }),
            r => r.Id == "not-governed");
        Assert.Contains("In doubt", Make(Claim, _ => Owned() with { Contract = Owned().Contract with { On = null } }).SheetText(),
            StringComparison.Ordinal);
    }

    private static JobFile Older(JobFile job) =>
        job with { Contract = job.Contract with { On = Day("2016-05-02") }, Work = job.Work with { Body = PublicBody.Local } };

    /// <summary>Pub. Contract Code § 20104.2: toward a local agency under a contract before 2017 the older procedure is left.</summary>
    [Fact]
    public void Section_20104_2()
    {
        var text = Flat(Make(Claim, Older).TextOf());
        Assert.Contains("California Public Contract Code section 20104.2, subdivision (a)", text, StringComparison.Ordinal);
        Assert.DoesNotContain("9204", text, StringComparison.Ordinal);
        Assert.DoesNotContain("45 days", text, StringComparison.Ordinal);
        Assert.Contains("section 20104.2, subdivision (d)", Flat(Make(Conference, Older).TextOf()), StringComparison.Ordinal);
    }

    /// <summary>Pub. Contract Code § 20104.2(a): "on or before the date of final payment".</summary>
    [Fact]
    public void Section_20104_2_a_after_final_payment()
    {
        JobFile Paid(JobFile job) => job with
        {
            Contract = job.Contract with { On = Day("2016-05-02") },
            Work = job.Work with { Body = PublicBody.Local },
            Entries = [.. job.Entries, new Disputed { Index = 8, On = DayFact.On(Day("2026-04-01")), Amount = 31_600m },
                new FinalPayment { Index = 9, On = DayFact.On(Day("2026-05-12")) }],
        };
        Assert.Contains(Refusals(Claim, Paid), r =>
            r is { Id: "right-lost", Where: Place.OfFinding { Id: "dispute-claim.filing-last-day" } });
    }

    /// <summary>
    /// Pub. Contract Code § 9204(d)(2)(A): in writing, by such mail, to meet and confer for settlement of the issues in dispute, within 30
    /// days.
    /// </summary>
    [Theory]
    [InlineData("California Public Contract Code section 9204, subdivision (d)(2)(A)")]
    [InlineData("demands an informal conference to meet and confer for settlement of the issues in dispute")]
    [InlineData("within 30 days of receipt of this demand")]
    [InlineData("registered or certified mail, return receipt requested")]
    [InlineData("sent on May 21, 2026, for $31,600.00; received on May 26, 2026")]
    [InlineData("Whether the fill under the north wall is a changed condition")]
    [InlineData("City of Woodland, public entity")]
    public void Section_9204_d_2_A(string item) => Holds(Make(Conference), item);

    /// <summary>May 26, 2026 and 45 days are July 10; the time is over on the 11th. An answer opens the way at once.</summary>
    [Fact]
    public void Section_9204_d_2_A_after_the_answer_or_silence()
    {
        Holds(Make(Conference), "the time for it ended on July 10, 2026");
        Assert.NotNull(Make(Conference, asOf: Day("2026-07-11")));
        Assert.Contains(Refusals(Conference, asOf: Day("2026-07-10")),
            r => r is { Id: "too-early", Where: Place.OfFinding { Id: "dispute-claim.entitys-statement" } });
        var answered = Make(Conference,
            j => j.With(new DisputeClaimAnswered { Index = 2, On = DayFact.On(Day("2026-06-09")), Undisputed = 7_000m }),
            asOf: Day("2026-06-12"));
        Holds(answered, "Written statement of June 9, 2026, which leaves $7,000.00 undisputed. Claimant disputes it.");
        Assert.Contains(Refusals(Conference, _ => Withheld()), r => r.Id == "no-claim-sent");
        Assert.Contains(Refusals(Conference, options: o => o with { Words = "" }), r => r.Id == "issues-missing");
        Assert.Contains(Refusals(Conference, _ => Withheld()
            .With(new DisputeClaimSent { Index = 1, On = new DayFact.Unknown(), Amount = 31_600m })), r => r.Id == "claim-day-missing");
    }

    /// <summary>Civ. Code § 8850(e): the same toward an owner; May 26, 2026 and 30 days are June 25.</summary>
    [Fact]
    public void Section_8850_e()
    {
        JobFile Sent(JobFile _) =>
            Owned().With(new DisputeClaimSent { Index = 2, On = DayFact.On(Day("2026-05-21")), Amount = 40_000m,
            Received = Day("2026-05-26"), Manner = Manner.RegisteredMail });
        var made = Make(Conference, Sent, asOf: Day("2026-06-26"));
        Holds(made, "California Civil Code section 8850, subdivision (e)");
        Holds(made, "the time for it ended on June 25, 2026");
        Assert.Contains(Refusals(Conference, Sent, asOf: Day("2026-06-25")), r => r.Id == "too-early");
    }

    /// <summary>
    /// Pub. Contract Code § 9204(d)(5): in writing, for work of the subcontractor or of a lower tier, with documentation; the contractor
    /// answers within 45 days.
    /// </summary>
    [Theory]
    [InlineData("Çelik & Ōta Builders, Inc., direct contractor")]
    [InlineData("requests that you present to the public entity the claim stated here")]
    [InlineData("for work performed by claimant or by a lower tier subcontractor on its behalf")]
    [InlineData("$8,750.00")]
    [InlineData("(1) Delivery tickets 411 to 418")]
    [InlineData("City of Woodland")]
    [InlineData("California Public Contract Code section 9204, subdivision (d)(5)")]
    [InlineData("within 45 days of receipt of this request, as to whether you presented the claim")]
    public void Section_9204_d_5(string item) => Holds(Make(Request, Sub), item);

    private static JobFile Sub(JobFile job) => job with
    {
        Claimant = job.Claimant with { Role = ClaimantRole.Subcontractor },
        Work = job.Work with { DirectContract = new DirectContract { On = Day("2026-01-05") } },
    };

    /// <summary>Civ. Code § 8850(j)(2), (4): the same on private work, answered within 30 days.</summary>
    [Fact]
    public void Section_8850_j()
    {
        JobFile On(JobFile _) =>
            Private() with { Claimant = Private().Claimant with { Role = ClaimantRole.Subcontractor },
            Work = Private().Work with { LowRiseResidential = false } };
        var text = Flat(Make(Request, On).TextOf());
        Assert.Contains("requests that you present to the owner the claim stated here", text, StringComparison.Ordinal);
        Assert.Contains("within 30 days of receipt of this request, as to whether you presented the claim to the owner", text,
            StringComparison.Ordinal);
        Assert.Contains("subdivision (j)(4)", text, StringComparison.Ordinal);
        Assert.Contains(Refusals(Request, j => On(j) with { Contract = j.Contract with { On = Day("2025-06-02") } }),
            r => r.Id == "not-governed");
    }

    [Fact]
    public void Section_9204_d_5_who_asks_and_whom()
    {
        Assert.Contains("In doubt", Make(Request).SheetText(), StringComparison.Ordinal); // a supplier is not named in the section
        Assert.DoesNotContain("In doubt", Make(Request, j => Sub(j) with { Work = Sub(j).Work with { Body = PublicBody.Local } })
            .SheetText(), StringComparison.Ordinal);
        Assert.Contains(Refusals(Request, _ => Withheld()), r => r.Id == "has-contract-with-payer");
        Assert.Contains(Refusals(Request, j => j with { Parties = [.. j.Parties.Where(p => p.Id != "p3")] }),
            r => r.Id == "contractor-missing");
        var second = new Party { Id = "p8", Capacity = PartyCapacity.DirectContractor, Name = "Weir Paving, Inc.",
            Address = "9 Gravel Road, Davis, CA 95618" };
        Assert.Contains(Refusals(Request, j => j with { Parties = [.. j.Parties, second] }), r => r.Id == "several-contractors");
        Assert.Contains("Weir Paving, Inc.", Make(Request, j => j with { Parties = [.. j.Parties, second] }, o => o with { To = ["p8"] })
            .TextOf(), StringComparison.Ordinal);
        Assert.Contains(
            Refusals(Request, j =>
                Sub(j) with { Work =
                Sub(j).Work with { DirectContract = new DirectContract { On = Day("2016-05-02") }, Body = PublicBody.Local } }),
            r => r.Id == "not-governed");
    }

    [Fact]
    public void A_refusal_names_a_role_with_its_article() => Assert.Contains(
        Refusals(Claim, j => j with { Claimant = j.Claimant with { Role = ClaimantRole.EquipmentLessor, HiredBy = "p2" } }),
        r => r.There.ToString().StartsWith("The claimant is an equipment lessor", StringComparison.Ordinal));

    /// <summary>
    /// Pub. Contract Code § 9204(d)(2)(B): "Any disputed portion of the claim, as identified by the contractor in writing, shall be
    /// submitted to nonbinding mediation, with the public entity and the claimant sharing the associated costs equally", a mediator to be
    /// agreed on within 10 business days.
    /// </summary>
    [Theory]
    [InlineData("California Public Contract Code section 9204, subdivision (d)(2)(B)")]
    [InlineData("identifies in writing the portion of claimant’s claim that remains in dispute")]
    [InlineData("submitted to nonbinding mediation, the associated costs to be shared equally")]
    [InlineData("on a mediator within 10 business days after this identification")]
    [InlineData("sent on May 21, 2026, for $31,600.00; received on May 26, 2026")]
    [InlineData("Held on August 3, 2026")]
    [InlineData("$24,600.00")]
    [InlineData("The price of the footing that was poured anew")]
    [InlineData("City of Woodland, public entity")]
    public void Section_9204_d_2_B(string item) => Holds(Make("disputed-portion"), item);

    /// <summary>It is what is left after a conference, of the claim that was made, and only where the procedure knows mediation.</summary>
    [Fact]
    public void Section_9204_d_2_B_what_is_left_of_the_claim_after_the_conference()
    {
        Assert.Contains(Refusals("disputed-portion", j => j with { Entries = [.. j.Entries.Where(e => e is not ConferenceHeld)] }),
            r => r.Id == "no-conference-held");
        Assert.Contains(Refusals("disputed-portion", options: o => o with { Amount = 31_600.01m }), r => r.Id == "more-than-claimed");
        Assert.Contains(Refusals("disputed-portion", options: o => o with { Words = "" }), r => r.Id == "issues-missing");
        Assert.Contains(Refusals("disputed-portion", Older), r => r.Id == "no-mediation");
    }
}
