using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// Each item that a section lists stands on its paper. The lists were read in the Civil Code of the Legislature as updated
/// 10 July 2026 (private works) and, for public works, in law.justia.com (2010) and laws9.com; where a list is from memory the row says so.
/// </summary>
public sealed class StatutoryContentsTests
{
    /// <summary>In reading order, or whole within its own column beside labels.</summary>
    private static void Holds(string id, string text, int file = 0)
    {
        var read = Preflight.ReadBack.Of(Make(id).Files[file].Bytes);
        Assert.True(
            read.Text.Contains(text, StringComparison.Ordinal) || read.Columns()
            .Contains(string.Concat(text.Where(c => c != ' ')), StringComparison.Ordinal),
            $"'{text}' is not in:\n{read.Text}");
    }

    /// <summary>Civ. Code § 8102(a)(1)-(6), on every notice that a claimant gives.</summary>
    [Theory]
    [InlineData("preliminary-notice")]
    [InlineData("stop-payment-notice")]
    [InlineData("bond-notice")]
    [InlineData("public-preliminary-notice")]
    [InlineData("public-stop-payment-notice")]
    [InlineData("public-bond-notice")]
    public void Section_8102_a_1_to_6(string id)
    {
        var text = Make(id).TextOf();
        var isPublic = id.StartsWith("public", StringComparison.Ordinal);
        Assert.All(
            (string[])
            [
                isPublic ? "City of Woodland" : "Alder Court Partners, LLC", // (1) owner, name
                isPublic ? "300 First Street" : "77 Cordage Way", // (1) owner, address
                "Çelik & Ōta Builders, Inc.", "501 Trowel Avenue", // (2) direct contractor
                isPublic ? "Public entity" : "Granger Slough Bank", isPublic ? "Woodland" : "600 Levee Street",
                    // (3) lender, private works only
                "418 Alder Court, Woodland, California 95695", // (4) site
                "Quarrymen’s Supply Company, Inc.", "2200 Plumb Street", "Material supplier under contract with", // (5) giver
                "Cut limestone, sills, copings and mortar", // (6)(A) work
                "Łukasz Masonry, Inc. (subcontractor)", // (6)(B) to or for whom
            ],
            item => Assert.Contains(item, text, StringComparison.Ordinal));
    }

    /// <summary>
    /// Civ. Code § 8102(a)(6)(C) on a preliminary notice: the demand to date, if any; nothing is owed before anything is furnished.
    /// </summary>
    [Theory]
    [InlineData("preliminary-notice")]
    [InlineData("public-preliminary-notice")]
    public void Section_8102_a_6_C_on_a_preliminary_notice(string id)
    {
        JobFile Furnishing(JobFile job, decimal worth, decimal paid) =>
            (job with { Contract = job.Contract with { Price = 9_000m }, Entries = [] })
            .With(new Furnished { Index = 0, On = DayFact.On(Day("2026-02-16")), Until = DayFact.On(Day("2026-02-16")), Amount = worth })
            .With(new Paid { Index = 1, On = DayFact.On(Day("2026-02-18")), Amount = paid });
        var some = Make(id, j => Furnishing(j, 6_430m, 2_000m)).TextOf();
        Assert.Contains("$4,430.00 after deducting all just credits and offsets.", string.Join(' ', some.Split('\n', ' ')),
            StringComparison.Ordinal);
        Assert.Contains("None at this time.", Make(id, j => Furnishing(j, 2_000m, 2_000m)).TextOf(), StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code §§ 8204, 8430, 8132 limit or end remedies and not the debt: a demand for payment asks for what is owed, whatever a claim
    /// of lien may state.
    /// </summary>
    [Fact]
    public void Section_8800_the_debt_and_not_the_lien()
    {
        var job = Private() with
        {
            Contract = Private().Contract with { Price = null },
            Entries =
            [
                new Furnished { Index = 0, On = DayFact.On(Day("2026-02-16")), Until = DayFact.On(Day("2026-02-16")), Amount = 3_000m },
                new Furnished { Index = 1, On = DayFact.On(Day("2026-04-06")), Until = DayFact.On(Day("2026-04-06")), Amount = 3_430m },
                new NoticeGiven { Index = 2, On = DayFact.On(Day("2026-04-20")), Notice = NoticeKind.Preliminary, To = ["p1", "p3", "p4"],
                    Manner = Manner.CertifiedMail },
            ],
        };
        Assert.Equal(3_430m, Assess(job, Day("2026-05-06")).Amount.Demand);
        Assert.Contains("$6,430.00", Make("payment-demand", _ => job).TextOf(), StringComparison.Ordinal);
        Assert.Contains(Refusals("payment-demand", _ => job, o => o with { Amount = 6_430.01m }), r => r.Id == "more-than-reckoned");
    }

    /// <summary>
    /// Civ. Code § 9354(b)(1): on a State contract the director; (2): else the disbursing officer or the body that awarded it. § 9302(b):
    /// the disbursing officer.
    /// </summary>
    [Theory]
    [InlineData(PublicBody.State, "Attention: Director", "Attention: disbursing officer", false)]
    [InlineData(PublicBody.GeneralServices, "Attention: Director", "Attention: disbursing officer", true)]
    [InlineData(PublicBody.Local, "Attention: controller, auditor or other disbursing officer", "Attention: disbursing officer", false)]
    public void Sections_9302_b_and_9354_b(PublicBody body, string stopPayment, string preliminary, bool both)
    {
        JobFile With(JobFile job) => job with { Work = job.Work with { Body = body } };
        Assert.Contains(stopPayment, Make("public-stop-payment-notice", With).TextOf(), StringComparison.Ordinal);
        Assert.Equal(both, Make("public-preliminary-notice", With).TextOf().Contains(preliminary, StringComparison.Ordinal));
    }

    /// <summary>
    /// Civ. Code § 9362(c): the $10 are paid with the notice; § 9454: a false notice forfeits the share of the fund, not the bond.
    /// </summary>
    [Fact]
    public void Sections_9362_and_9454()
    {
        Holds("public-stop-payment-notice", "A $10 check payable to you is enclosed");
        var sheet = Make("public-stop-payment-notice").SheetText();
        Assert.Contains("forfeits the share of the money withheld", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("forfeits the fund and the bond", sheet, StringComparison.Ordinal);
    }

    /// <summary>Civ. Code §§ 8482, 8102(a)(2), (3): contractor and lender stand on the owner's demand for a release.</summary>
    [Fact]
    public void Section_8482_with_8102()
    {
        Holds("release-demand", "Çelik & Ōta Builders, Inc.");
        Holds("release-demand", "Granger Slough Bank");
    }

    /// <summary>
    /// Civ. Code § 8834(a): what is posted complies with § 8102; (b): the copy goes to subcontractors when the notice is given.
    /// </summary>
    [Fact]
    public void Section_8834()
    {
        var made = Make("stop-work-notice");
        var posted = made.TextOf(1);
        foreach (var item in (string[])["77 Cordage Way", "None known", "Cut limestone, sills, copings and mortar",
            "Direct contractor under contract with", "after deducting all just credits and offsets"])
            Assert.Contains(item, posted, StringComparison.Ordinal);
        Assert.Contains("after deducting all just credits and offsets", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("on that same day a copy of it to each subcontractor", made.SheetText(), StringComparison.Ordinal);
    }

    /// <summary>
    /// Code Civ. Proc. § 446(a): what is stated on belief is excepted; §§ 405.21(b), 405.22, 405.23 for the notice of pendency.
    /// </summary>
    [Fact]
    public void Sections_446_and_405_22()
    {
        const string belief = "except as to who is named as reputed";
        Assert.Contains(belief, Make("stop-payment-notice", j => j with { Parties = [.. j.Parties.Select(p => p with { Reputed = true })] })
            .TextOf(), StringComparison.Ordinal);
        Assert.DoesNotContain(belief,
            Make("stop-payment-notice", j => j with { Parties = [.. j.Parties.Select(p => p with { Reputed = false })] }).TextOf(),
            StringComparison.Ordinal);
        var pendency = Assert.IsType<PacketOutcome.Made>(Outcome("notice-of-pendency", Sued(), Day("2026-08-05"),
            new PaperOptions { Draft = true }));
        Assert.Contains("void as to that party or owner", pendency.SheetText(), StringComparison.Ordinal);
        Assert.Contains("judge’s approval, date", pendency.TextOf(), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8102(a)(6)(C): the demand after credits and offsets, where there is one.</summary>
    [Theory]
    [InlineData("stop-payment-notice")]
    [InlineData("bond-notice")]
    [InlineData("payment-demand")]
    [InlineData("public-stop-payment-notice")]
    [InlineData("public-bond-notice")]
    public void Section_8102_a_6_C(string id)
    {
        Holds(id, "$84,250.00");
        Holds(id, "after deducting all just credits and offsets");
    }

    [Fact]
    public void Section_8202_a_1_general_description() =>
        Holds("preliminary-notice", "Cut limestone, sills, copings and mortar, delivered to the site.");

    [Fact]
    public void Section_8202_a_2_estimate_of_the_total_price()
    {
        Holds("preliminary-notice", "$84,250.00");
        Holds("preliminary-notice", "an estimate of the total price of the work provided and to be provided");
    }

    /// <summary>Civ. Code § 8202(a)(3): the statement in boldface; § 8202(a) makes no difference between addressees.</summary>
    [Fact]
    public void Section_8202_a_3_statement_in_boldface()
    {
        var report = Make("preliminary-notice").Preflight[0];
        Assert.True(report.Check("notice wording")?.Passed, report.ToString());
        Assert.True(report.Check("notice type")?.Passed, report.ToString());
    }

    /// <summary>
    /// Civ. Code §§ 9300(a), 9303: entity and direct contractor; description and estimate; the statement of § 8202 is no part of it.
    /// </summary>
    [Fact]
    public void Section_9303_contents()
    {
        Holds("public-preliminary-notice", "$84,250.00");
        Assert.DoesNotContain("NOTICE TO PROPERTY OWNER", Make("public-preliminary-notice").TextOf(), StringComparison.Ordinal);
        Assert.DoesNotContain("lender", Make("public-preliminary-notice").TextOf(), StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Civ. Code § 8118(a): type of notice; date, place, manner, facts; name, address, and title or capacity.</summary>
    [Theory]
    [InlineData("Preliminary notice")]
    [InlineData("February 20, 2026")]
    [InlineData("Place (city, state)")]
    [InlineData("certified mail")]
    [InlineData("in a sealed envelope, postage or charges prepaid")]
    [InlineData("Alder Court Partners, LLC")]
    [InlineData("600 Levee Street Sacramento, CA 95814")]
    [InlineData("reputed owner")]
    [InlineData("under penalty of perjury under the laws of the State of California")]
    public void Section_8118_a_declaration(string item)
    {
        var read = Preflight.ReadBack.Of(Make("proof-of-notice").Files[0].Bytes);
        Assert.Contains(string.Concat(item.Where(c => c != ' ')), read.Columns(), StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code § 8502(a)-(c): § 8102 content, signed and verified; description and estimate; amount through the day of the notice.
    /// </summary>
    [Theory]
    [InlineData("stop-payment-notice")]
    [InlineData("public-stop-payment-notice")]
    public void Sections_8502_and_9352(string id)
    {
        Holds(id, "VERIFICATION");
        Holds(id, "Cut limestone");
        Holds(id, "due for work provided through the date of this notice");
        Holds(id, "an estimate of the total amount in value of the work provided and to be provided");
        Assert.True(Make(id).Preflight[0].Check("names under signatures")?.Passed);
    }

    /// <summary>
    /// Civ. Code §§ 8506(b), 8538: to the manager or other responsible person; with a request for notice of the election.
    /// </summary>
    [Fact]
    public void Sections_8506_and_8538_to_a_lender()
    {
        var made = Make("stop-payment-notice");
        Assert.Equal(["stop-payment-notice-1.pdf", "stop-payment-notice-2.pdf", "request-for-notice-of-election-2.pdf",
            "instruction-sheet.pdf"], made.Files.Select(f => f.Name));
        Assert.Contains("manager or other responsible person", made.TextOf(1), StringComparison.Ordinal);
        Assert.Contains("preaddressed, stamped envelope", made.TextOf(2), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8532: a bond of 125 percent of the claim. 1.25 times 84,250.00 is 105,312.50.</summary>
    [Fact]
    public void Section_8532_bonded_notice_names_125_percent()
    {
        var made = Make("stop-payment-notice", options: o => o with { Bonded = true });
        Assert.Contains("$105,312.50, 125 percent of the claim", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("Private works, bonded", made.TextOf(), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 9362: $10 with the notice buys word of the time to sue.</summary>
    [Fact]
    public void Section_9362_ten_dollars() =>
        Assert.Contains("$10", Make("public-stop-payment-notice").SheetText(), StringComparison.Ordinal);

    /// <summary>Civ. Code § 8128: released or reduced, by how much, and what is still to be withheld.</summary>
    [Fact]
    public void Section_8128_release_and_reduction()
    {
        Assert.Contains("releases the stop payment notice described above entirely", Make("stop-payment-release").TextOf(),
            StringComparison.Ordinal);
        var reduced = Make("stop-payment-release", options: o => o with { Amount = 20_000m });
        Assert.Contains("$20,000.00", reduced.TextOf(), StringComparison.Ordinal);
        Assert.Contains("$64,250.00", reduced.TextOf(), StringComparison.Ordinal);
        Assert.Contains("May 7, 2026", reduced.TextOf(), StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code § 8128: a reduction begins at what earlier ones left, and is entered, or the notice seems to hold the whole.
    /// </summary>
    [Fact]
    public void Section_8128_a_second_reduction_begins_at_what_the_first_left()
    {
        JobFile Reduced(JobFile job) =>
            job.With(new StopPaymentReleased { Index = 9, On = DayFact.On(Day("2026-05-11")), Amount = 60_000m });
        var second = Make("stop-payment-release", Reduced, o => o with { Amount = 20_000m });
        var text = string.Join(' ', second.TextOf().Split('\n', ' '));
        Assert.Contains("in the amount of $84,250.00, reduced since to $24,250.00", text, StringComparison.Ordinal);
        Assert.Contains("$4,250.00", text, StringComparison.Ordinal);
        Assert.DoesNotContain("$64,250.00", text, StringComparison.Ordinal);
        Assert.Contains(Refusals("stop-payment-release", Reduced, o => o with { Amount = 24_250m }), r => r.Id == "reduction-too-large"
            && r.There.ToString().Contains("$24,250.00", StringComparison.Ordinal));
        Assert.Contains("the amount of the reduction, $20,000.00, and the notice it is for, that of May",
            Sheet(second), StringComparison.Ordinal);
        Assert.Contains("Enter a fact, “Stop payment notice released or reduced”",
            Sheet(Make("stop-payment-release")), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code §§ 8612, 9560: to surety and bond principal, both.</summary>
    [Theory]
    [InlineData("bond-notice")]
    [InlineData("public-bond-notice")]
    public void Sections_8612_and_9560_to_surety_and_principal(string id)
    {
        var read = string.Join(' ', Make(id, j => WithPrincipal(j, "p3")).TextOf().Split('\n', ' '));
        Assert.Contains("Surety: Quayside Surety Company", read, StringComparison.Ordinal);
        Assert.Contains("Principal: Çelik & Ōta Builders, Inc.", read, StringComparison.Ordinal);
    }

    private static JobFile WithPrincipal(JobFile job, string? principal) =>
        job with { Work = job.Work with { PaymentBond =
            new Law.Facts.PaymentBond { Surety = "p5", Recorded = Day("2026-01-05"), Principal = principal } } };

    /// <summary>
    /// Civ. Code §§ 8606(b), 8612(b): the principal is whoever the bond names; while nobody says, each who may be it is told.
    /// </summary>
    [Theory]
    [InlineData("p2", "Principal: Łukasz Masonry, Inc.", "(Quayside Surety Company; Łukasz Masonry, Inc.)")]
    [InlineData("p1", "Principal: Alder Court Partners, LLC", "(Quayside Surety Company; Alder Court Partners, LLC)")]
    [InlineData("p3", "Principal: Çelik & Ōta Builders, Inc.", "(Quayside Surety Company; Çelik & Ōta Builders, Inc.)")]
    [InlineData(null, "Principal: not known; this notice is given to each person who may be the principal",
        "(Quayside Surety Company; Çelik & Ōta Builders, Inc.; Alder Court Partners, LLC; "
        + "Łukasz Masonry, Inc.)")]
    public void Sections_8606_b_and_8612_b_the_principal_that_the_bond_names(string? principal, string line, string to)
    {
        var made = Make("bond-notice", j => WithPrincipal(j, principal));
        Assert.True(made.Says(line));
        Assert.Contains(to, Sheet(made), StringComparison.Ordinal);
        Assert.Equal(principal is null, Sheet(made).Contains("give the notice to each of them", StringComparison.Ordinal));
    }

    /// <summary>The sheet that goes with a paper, its lines joined.</summary>
    private static string Sheet(PacketOutcome.Made made) => string.Join(' ', made.SheetText().Split('\n', ' '));

    /// <summary>
    /// Civ. Code §§ 8200(a), 9300(a): the notice goes to each of them; where it is made for some, the sheet names those still to be told.
    /// </summary>
    [Theory]
    [InlineData("preliminary-notice", "p1", "Çelik & Ōta Builders, Inc., Granger Slough Bank")]
    [InlineData("preliminary-notice", "p1,p3,p4", null)]
    [InlineData("public-preliminary-notice", "c1", "Çelik & Ōta Builders, Inc.")]
    [InlineData("public-preliminary-notice", "p3", "City of Woodland")]
    [InlineData("public-preliminary-notice", "", null)]
    public void Sections_8200_a_and_9300_a_who_is_still_to_be_told(string id, string to, string? missing)
    {
        var sheet = Sheet(Make(id, options: o => o with { To = to.Length == 0 ? [] : to.Split(',') }));
        Assert.Equal(missing is not null, sheet.Contains("This is for some of them only", StringComparison.Ordinal));
        if (missing is not null)
            Assert.Contains($"still to be told: {missing} (", sheet, StringComparison.Ordinal);
    }

    /// <summary>One to whom the file shows a notice given is not named again.</summary>
    [Fact]
    public void Section_9300_a_who_was_told_is_not_named()
    {
        var told = new NoticeGiven { Index = 7, On = DayFact.On(Day("2026-02-19")), Notice = NoticeKind.Preliminary, To = ["p3"],
            Manner = Manner.CertifiedMail, Article = "70121010000012345678" };
        Assert.DoesNotContain("still to be told", Sheet(Make("public-preliminary-notice", j => j.With(told), o => o with { To = ["c1"] })),
            StringComparison.Ordinal);
    }

    /// <summary>
    /// American Buildings v. Bay Commercial Construction (2002) 99 Cal.App.4th 1193: a bond notice has no look-back, though no preliminary
    /// notice reaches the work.
    /// </summary>
    [Fact]
    public void Section_8612_b_reaches_all_unpaid_work()
    {
        var made = Make("bond-notice", j => j with { Entries = [.. j.Entries.Where(e => e is not NoticeGiven)] });
        Assert.Contains("$84,250.00", made.TextOf(), StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code § 8182(b)-(c): § 8102 content, signed and verified by the owner, nature of the interest, day of completion.
    /// </summary>
    [Theory]
    [InlineData("Alder Court Partners, LLC")]
    [InlineData("Fee simple")]
    [InlineData("May 1, 2026")]
    [InlineData("Çelik & Ōta Builders, Inc.")]
    [InlineData("418 Alder Court, Woodland, California 95695")]
    [InlineData("VERIFICATION")]
    public void Section_8182_b_and_c(string item) => Holds("notice-of-completion", item);

    /// <summary>Civ. Code § 8460(b): the fact of the credit and its terms.</summary>
    [Theory]
    [InlineData("credit has been extended")]
    [InlineData("Owner pays $14,000.00 on the first day of each month")]
    [InlineData("November 30, 2026")]
    [InlineData("recorded on May 20, 2026, as instrument no. 2026-0012345")]
    [InlineData("The owner agrees to the credit")]
    public void Section_8460_b(string item) => Holds("notice-of-credit", item);

    /// <summary>Gov. Code §§ 27288.1(b), 27361.6: the owners whose title is relieved, and the number of the recorded paper.</summary>
    [Theory]
    [InlineData("release")]
    [InlineData("partial-release")]
    public void Sections_27288_1_b_and_27361_6(string id)
    {
        Holds(id, "Alder Court Partners, LLC");
        Holds(id, "instrument no. 2026-0012345 in the Official Records of Yolo County");
        Assert.Contains("notary", Make(id).SheetText(), StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>
    /// Gov. Code § 27287 by Attorney General Opinion 86-202: a release is acknowledged; the certificate is one more page of $3.
    /// </summary>
    [Fact]
    public void Section_27287_the_notarys_page_is_in_the_fee()
    {
        var made = Make("release");
        Assert.Equal(3m * made.Files[0].Pages, made.Fee?.Part("extra-pages")?.Amount);
    }

    [Fact]
    public void Partial_release_of_a_part_of_the_property()
    {
        var made = Make("partial-release", options: _ => new PaperOptions { Words = "Lot 15 only." });
        Assert.Contains("Lot 15 only.", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("remains in effect against the rest", made.TextOf(), StringComparison.Ordinal);
    }

    [Fact]
    public void Partial_release_of_a_sum_says_what_remains()
    {
        Holds("partial-release", "$20,000.00");
        Holds("partial-release", "$64,250.00");
    }

    /// <summary>Civ. Code § 8482: a demand for a recorded release, with its grounds. May 20, 2026 and 90 days is August 18, 2026.</summary>
    [Theory]
    [InlineData("demands that you execute and record a release")]
    [InlineData("That time ended on August 18, 2026")]
    [InlineData("instrument no. 2026-0012345")]
    [InlineData("ten days or more after this notice is given")]
    public void Section_8482(string item) => Holds("release-demand", item);

    /// <summary>Code Civ. Proc. § 405.20, from memory: the parties and a description of the property; Civ. Code § 8461.</summary>
    [Theory]
    [InlineData("Superior Court of California, County of Yolo")]
    [InlineData("CV-2026-0419")]
    [InlineData("Quarrymen’s Supply Company, Inc.")]
    [InlineData("Alder Court Partners, LLC")]
    [InlineData("Lot 14 of Alder Court Subdivision")]
    [InlineData("is pending and affects title")]
    public void Section_405_20_notice_of_pendency(string item) => Holds("notice-of-pendency", item);

    [Fact]
    public void A_notice_of_pendency_is_only_ever_a_draft()
    {
        var made = Make("notice-of-pendency");
        Assert.All(made.Preflight, r => Assert.True(r.Check("DRAFT on each page")?.Passed));
        Assert.Contains("For the attorney", made.SheetText(), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code §§ 8832, 8834: unpaid for 35 days after due, 10 days to pay; notice of intent posted before.</summary>
    [Fact]
    public void Sections_8832_and_8834()
    {
        Holds("stop-work-notice", "within 35 days after it was due under a written contract");
        Holds("stop-work-notice", "claimant will stop work if not paid within 10 days after this notice is given");
        Holds("stop-work-notice", "$40,000.00");
        Holds("stop-work-notice", "NOTICE OF INTENT TO STOP WORK", file: 1);
        Assert.Contains("at least 5 days before", Make("stop-work-notice").SheetText(), StringComparison.Ordinal);
    }

    /// <summary>Each step of the waterfall stands in the letter with its sum, and the last row is the demand.</summary>
    [Fact]
    public void A_demand_for_payment_carries_the_whole_reckoning()
    {
        var (job, asOf, _) = For("payment-demand");
        var paid = job.With(new Paid { Index = 4, On = DayFact.On(Day("2026-04-15")), Amount = 10_000m });
        var made = Make("payment-demand", _ => paid);
        foreach (var step in Assess(paid, asOf).Amount.Steps)
        {
            Assert.Contains(step.Amount < 0 ? $"({PaperText.Dollars(-step.Amount)})" : PaperText.Dollars(step.Amount), made.TextOf(),
                StringComparison.Ordinal);
        }

        Assert.Contains("Due $74,250.00", made.TextOf(), StringComparison.Ordinal);
    }

    /// <summary>A direct contractor's demand is also the notice of Civ. Code § 8800, from which 30 days run.</summary>
    [Fact]
    public void Section_8800_from_a_direct_contractor()
    {
        var made = Make("payment-demand", _ => Direct().With(new FurnishingEnded { Index = 2, On = DayFact.On(Day("2026-03-27")) }));
        Assert.All(
            (string[])["sections 8102 and 8800", "77 Cordage Way", "Direct contractor Quarrymen’s Supply Company, Inc., 2200 Plumb "
                + "Street", "None known", "418 Alder Court",
                "Direct contractor under contract with", "Cut limestone", "$84,250.00"],
            item => Assert.Contains(item, made.TextOf(), StringComparison.Ordinal));
        Assert.Contains("30 days", made.SheetText(), StringComparison.Ordinal);
        Assert.Contains("for the kind “notice demanding payment”", made.SheetText(), StringComparison.Ordinal);
    }

    /// <summary>
    /// Gov. Code § 27361.6: a paper that modifies a recorded one states its number; Civ. Code § 8416(c): it is served anew.
    /// </summary>
    [Fact]
    public void An_amended_claim_names_the_first_and_takes_no_mailing_of_the_first()
    {
        var made = Make("amended-claim");
        Assert.Contains("AMENDED CLAIM OF MECHANICS LIEN", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("amends the claim of mechanics lien recorded on May 20, 2026, as instrument no. 2026-0012345", made.TextOf(),
            StringComparison.Ordinal);
        Assert.DoesNotContain("May 18, 2026", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("Serve before you record", made.SheetText(), StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code § 8550(e): notice of commencement of the action to those to whom the stop payment notice was given, with the contents of
    /// § 8102.
    /// </summary>
    [Theory]
    [InlineData("commenced an action to enforce payment of the claim stated in claimant’s stop payment notice")]
    [InlineData("CV-2026-0377")]
    [InlineData("June 15, 2026")]
    [InlineData("Alder Court Partners, LLC, reputed owner")]
    [InlineData("Granger Slough Bank, construction lender")]
    [InlineData("Given on May 7, 2026 to Alder Court Partners, LLC; Granger Slough Bank, in the amount of $84,250.00")]
    [InlineData("418 Alder Court, Woodland, California 95695")]
    public void Section_8550_e(string item) => Holds("action-notice", item);

    /// <summary>Civ. Code § 8550(e): within five days; June 15, 2026 and five days are Saturday, June 20.</summary>
    [Fact]
    public void Section_8550_e_within_five_days() =>
        Assert.Contains("Last day: Saturday, June 20, 2026", Make("action-notice").SheetText(), StringComparison.Ordinal);

    /// <summary>Civ. Code § 9504: on public work the public entity is told.</summary>
    [Fact]
    public void Section_9504()
    {
        var made = Make("action-notice", _ => Public().With(
            new StopPaymentGiven { Index = 4, On = DayFact.On(Day("2026-05-07")), To = ["c1"], Amount = 84_250m,
                Manner = Manner.CertifiedMail },
            new ActionFiled { Index = 5, On = DayFact.On(Day("2026-06-15")), Enforces = [ActionOn.StopPaymentNotice],
                Court = "Superior Court of California, County of Yolo", Case = "CV-2026-0377" }));
        Assert.Contains("City of Woodland, public entity", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("section 9504", made.TextOf(), StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code § 9406(a): "alleging the details of the claim and describing the specific basis on which the claimant contests"; with
    /// proof of service of a copy.
    /// </summary>
    [Theory]
    [InlineData("City of Woodland, public entity", 0)]
    [InlineData("$84,250.00", 0)]
    [InlineData("$30,000.00", 0)]
    [InlineData("The affidavit says that 12 sills were never delivered.", 0)]
    [InlineData("VERIFICATION", 0)]
    [InlineData("Copy of the counteraffidavit", 1)]
    [InlineData("Çelik & Ōta Builders, Inc.", 1)]
    public void Section_9406_a(string item, int file) => Holds("counteraffidavit", item, file);

    /// <summary>Civ. Code §§ 9404, 9406(b): within the time that the public entity's notice states, here by June 15, 2026.</summary>
    [Fact]
    public void Section_9406_b()
    {
        Assert.Contains("by Monday, June 15, 2026", Make("counteraffidavit", asOf: Day("2026-06-15")).SheetText(),
            StringComparison.Ordinal);
        Assert.Contains(Refusals("counteraffidavit", asOf: Day("2026-06-16")), r => r.Id == "too-late");
        Assert.Contains(Refusals("counteraffidavit", options: o => o with { Words = null }), r => r.Id == "basis-missing");
        Assert.Contains(Refusals("counteraffidavit", _ => Public()), r => r.Id == "no-affidavit");
    }

    /// <summary>Civ. Code §§ 8710-8722: at least 15 percent of 6,000,000.00; § 8712: 10 days, then work may be suspended.</summary>
    [Theory]
    [InlineData("demands that the owner provide security")]
    [InlineData("$900,000.00")]
    [InlineData("$6,000,000.00")]
    [InlineData("within 10 days after this notice is given")]
    [InlineData("certified by the county recorder")]
    public void Section_8712(string item) => Holds("security-demand", item);

    [Fact]
    public void Section_8712_only_where_security_is_owed_and_by_the_direct_contractor()
    {
        Assert.Contains(Refusals("security-demand", _ => Direct()), r => r.Id == "no-security-due");
        Assert.Contains(Refusals("security-demand", j => j with { Claimant = j.Claimant with { Role = ClaimantRole.Subcontractor } }),
            r => r.Id == "not-direct-contractor");
    }
}
