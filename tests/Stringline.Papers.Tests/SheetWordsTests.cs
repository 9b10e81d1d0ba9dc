using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Preflight;
using Stringline.Papers.Writing;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>What sheets and papers say, in the words of the one who reads them, and only where it is so.</summary>
public sealed class SheetWordsTests
{
    public static TheoryData<string> Ids => [.. PaperCatalogue.All.Select(p => p.Id)];

    private static PacketOutcome.Made In(string id, string county) => Make(id, j => j with
    {
        Work = j.Work with { Site = j.Work.Site with { County = county, City = null, Zip = null } },
    }, o => id == "notice-of-pendency" ? o with { Draft = true } : o);

    private static readonly string[] Counties = ["Yolo", "Glenn", "Los Angeles", "Kern"];

    /// <summary>Notes to oneself, and words that no American office says.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void No_paper_and_no_sheet_speaks_to_itself(string id)
    {
        string[] never = ["from memory", "no source", "as read", "asten", "at hand", "own times", "arrival can be shown", "can be shown", "stands on",
            "stand here", "stands here", "each further", "call and ask)", "What makes the difference", "recorded unseen", "money in the bank",
            "stays bound", "one who contracted with it", "Person, and", "What, and day", "not known to claimant", "In doubt: One", "It was never added"];
        foreach (var county in For(id).Job.Work.Kind == WorkKind.Private && PaperCatalogue.Find(id)!.Use == PaperUse.Recorded ? Counties : ["Yolo"])
        {
            foreach (var file in In(id, county).Files)
            {
                var text = ReadBack.Of(file.Bytes).Text;
                Assert.All(never, words => Assert.DoesNotContain(words, text, StringComparison.Ordinal));
                if (text.IndexOf("“(ask)”:", StringComparison.Ordinal) is > 0 and var meaning)
                {
                    Assert.Contains("(ask)", text[..meaning], StringComparison.Ordinal);
                    Assert.Equal(meaning, text.LastIndexOf("“(ask)”:", StringComparison.Ordinal));
                }
            }
        }
    }

    private static JobFile Finished(JobFile job, params string[] days) => job with
    {
        Entries = [.. job.Entries.Where(e => e is not Completed), .. days.Select((d, i) => new Completed { Index = 40 + i, On = DayFact.On(Day(d)),
            By = CompletionTheory.Actual })],
    };

    // Civ. Code §§ 8190(a), (b), (d)(1), 8106, 8110.
    [Theory]
    [InlineData(WorkUse.OwnerOccupiedOneToFour, true)]
    [InlineData(WorkUse.Residential, false)]
    [InlineData(WorkUse.Commercial, false)]
    [InlineData(null, false)]
    public void Copies_of_a_notice_of_completion_go_as_the_section_says_to_those_of_the_file(WorkUse? use, bool exempt)
    {
        var sheet = Make("notice-of-completion", j => j with { Work = j.Work with { Use = use } }).SheetText();
        Assert.Contains("by hand, or by registered, certified or express mail, or overnight", sheet, StringComparison.Ordinal);
        Assert.Contains("Çelik & Ōta Builders, Inc., direct contractor, 501 Trowel Avenue", sheet, StringComparison.Ordinal);
        Assert.Contains("Quarrymen’s Supply Company, Inc., who gave preliminary notice, 2200 Plumb Street", sheet, StringComparison.Ordinal);
        Assert.Equal(exempt, sheet.Contains("An owner who lives there", StringComparison.Ordinal));
    }

    // Civ. Code § 8182(a), (d): recorded before completion or more than 15 days after it, it has no effect.
    [Fact]
    public void Other_days_of_completion_are_named_with_what_the_notice_is_worth_on_them()
    {
        var sheet = Make("notice-of-completion", j => Finished(j, "2026-05-01", "2026-04-15"), o => o with { Day = Day("2026-05-01") }).SheetText();
        Assert.Contains("The notice states May 1, 2026, but the file leaves open whether the work was completed on another day", sheet,
            StringComparison.Ordinal);
        Assert.Matches(@"April 15, 2026 \([^)]*\): the time to record ended on April 30, 2026, and the notice would be void", sheet);
        Assert.DoesNotContain("leaves open whether the work was completed", Make("notice-of-completion", j => Finished(j, "2026-05-01")).SheetText(),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Owners_of_separate_units_are_no_co_owners()
    {
        var units = Enumerable.Range(1, 3).Select(i => new Party { Id = $"o{i}", Capacity = PartyCapacity.Owner, Name = $"Unit {i}, LLC",
            Address = "77 Cordage Way\nDavis, CA 95616", HoldsTitleAs = new TitleHolding { Form = TitleForm.Company } }).ToArray();
        var sheet = Make("notice-of-completion", j => j.WithOwners(units)).SheetText();
        Assert.Contains("One may sign for all only where they own the property together as cotenants", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("co-owner", sheet, StringComparison.Ordinal);
        Assert.Contains("The owner signs and verifies in ink", Make("notice-of-completion").SheetText(), StringComparison.Ordinal);
    }

    private static JobFile Ongoing(JobFile job) => job with
    {
        Entries = [new Furnished { Index = 0, On = DayFact.On(Day("2026-02-16")), Until = DayFact.On(Day("2026-02-18")), Amount = 4_000m },
            new Furnished { Index = 1, On = DayFact.On(Day("2026-02-19")), Until = DayFact.On(Day("2026-03-27")), Amount = 80_250m }],
    };

    // Civ. Code § 8102(a)(6)(C): the demand is for what was provided.
    [Fact]
    public void The_demand_of_a_preliminary_notice_leaves_out_work_to_come()
    {
        var made = Make("preliminary-notice", Ongoing);
        Assert.True(made.Says("Demand to date"));
        Assert.True(made.Says("$4,000.00"));
        Assert.Contains("Left out of the demand to date: $80,250.00 for work from February 19, 2026 through March 27, 2026", made.SheetText(),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_waiver_says_that_it_counts_work_to_come() =>
        Assert.Contains("What may be claimed now by the next line, and what is in doubt, counts $80,250.00 for work", Make("waiver-8132", j => Ongoing(j),
            o => o with { Through = Day("2026-02-18"), Amount = 4_000m }, Day("2026-03-01")).SheetText(), StringComparison.Ordinal);

    // Civ. Code § 8800: 30 days after a notice demanding payment; April 1 and 30 days are May 1.
    [Fact]
    public void A_demand_says_since_when_an_earlier_one_is_overdue()
    {
        static JobFile Demanding(JobFile job, string on) => Direct() with { Entries = [.. Direct().Entries.Where(e => e is not PaymentDemanded),
            new PaymentDemanded { Index = 9, On = DayFact.On(Day(on)), Amount = 40_000m, Manner = Manner.CertifiedMail }] };
        var late = Make("payment-demand", j => Demanding(j, "2026-04-01")).SheetText();
        Assert.Contains("On an earlier demand the time ended on May 1, 2026: what it demanded has been overdue since then", late, StringComparison.Ordinal);
        Assert.DoesNotContain("nothing is overdue", late, StringComparison.Ordinal);
        Assert.Contains("Until then nothing is overdue", Make("payment-demand", j => Demanding(j, "2026-05-01")).SheetText(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_billed_but_no_work_is_told_by_its_kind()
    {
        var made = Make("payment-demand", j => j.With(new Charged { Index = 50, On = DayFact.On(Day("2026-04-01")), Amount = 412.87m,
            Of = ChargeKind.Finance }));
        Assert.True(made.Says("Finance charges of $412.87 are not included and not waived."));
    }

    [Fact]
    public void A_calculation_begins_no_page_that_it_does_not_need()
    {
        foreach (var name in (string[])["short", "long"])
        {
            var made = Make("payment-demand", name == "short" ? j => j with { Work = j.Work with { Site = j.Work.Site with { Legal = null } } } : null);
            var pages = ReadBack.Of(made.Files[0].Bytes).Pages;
            var lines = pages.Sum(p => p.Lines.Count);
            Assert.True(pages.Count == 1 || lines > 40, $"{pages.Count} pages for {lines} lines");
        }
    }

    // Civ. Code § 8416(a)(7), (c): what was mailed is a copy of the claim.
    [Theory]
    [InlineData(Manner.CertifiedMail, false)]
    [InlineData(Manner.CertificateOfMailing, true)]
    public void A_served_claim_s_steps_are_those_of_its_mail(Manner manner, bool certificate)
    {
        var sheet = Make("claim", j => j.With(new ClaimServed { Index = 40, On = DayFact.On(Day("2026-05-04")), To = ["p1"], Manner = manner,
            Article = manner == Manner.CertifiedMail ? "9407111898765432101238" : null })).SheetText();
        Assert.Contains("If the claim was not signed before the copy was mailed, sign it, mail a copy again", sheet, StringComparison.Ordinal);
        Assert.Equal(certificate, sheet.Contains("Keep the stamped certificate of mailing", StringComparison.Ordinal));
        Assert.DoesNotContain("If the copy went first-class", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_paid_since_a_claim_was_recorded_is_told_to_the_attorney()
    {
        var sheet = Make("notice-of-pendency", j => j.With(new Paid { Index = 50, On = DayFact.On(Day("2026-06-26")), Amount = 10_000m })).SheetText();
        Assert.Contains("Since then $10,000.00 was paid", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("was paid", Make("notice-of-pendency").SheetText(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mail_sheet_tells_the_class_of_each_piece_and_no_step_that_is_past()
    {
        var mailed = Make("certified-mail-sheet");
        Assert.True(mailed.Says("Certified mail"));
        Assert.Contains("all of this is mailed already", mailed.SheetText(), StringComparison.Ordinal);
        Assert.DoesNotContain("before the envelopes leave", mailed.SheetText(), StringComparison.Ordinal);
        var ahead = Make("certified-mail-sheet", options: o => o with { To = ["p1"] });
        Assert.True(ahead.Says("Class of mail:"));
        Assert.Contains("Class of mail of each piece", ahead.SheetText(), StringComparison.Ordinal);
        Assert.Contains("before the envelopes leave", ahead.SheetText(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("preliminary-notice")]
    [InlineData("public-preliminary-notice")]
    [InlineData("stop-payment-notice")]
    [InlineData("public-stop-payment-notice")]
    [InlineData("stop-payment-release")]
    [InlineData("bond-notice")]
    [InlineData("stop-work-notice")]
    [InlineData("security-demand")]
    [InlineData("payment-demand")]
    [InlineData("action-notice")]
    [InlineData("counteraffidavit")]
    [InlineData("design-lien-demand")]
    public void A_signed_copy_is_kept(string id) => Assert.Contains("keep a signed copy", Make(id).SheetText(), StringComparison.Ordinal);

    // Where an open reading of the facts leaves less than is claimed, both figures are told (Civ. Code § 8422(b)(1)).
    [Theory]
    [InlineData(9_000, true)]
    [InlineData(12_345, false)]
    public void An_amount_in_doubt_is_told_with_both_figures(int least, bool told)
    {
        var amount = new Waterfall(12_345m, [], 0) { AtLeast = least };
        Assert.Equal(told, AmountInDoubt.Of(amount, 12_345m, "claim").Any(w => w.Contains("$12,345.00", StringComparison.Ordinal)
            && w.Contains("$9,000.00", StringComparison.Ordinal)));
        var job = Served();
        var packet = Assert.IsType<PacketOutcome.Made>(Kept.Claim(job, job.Assessed() with { Amount = amount }, draft: false));
        Assert.Equal(told, packet.SheetText().Contains("The amount is in doubt: this claim states $12,345.00; on another reading of the facts no more "
            + "than $9,000.00 may be claimed", StringComparison.Ordinal));
    }

    [Fact]
    public void The_request_for_notice_of_election_is_signed_too() =>
        Assert.Contains("sign the request for notice of election too", Make("stop-payment-notice").SheetText(), StringComparison.Ordinal);
}
