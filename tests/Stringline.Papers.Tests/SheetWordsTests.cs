using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Preflight;
using Stringline.Papers.Writing;
using Stringline.Testing;
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
    [Slow(Slow.Lasting)]
    public void No_paper_and_no_sheet_speaks_to_itself(string id)
    {
        string[] never =
            ["from memory", "no source", "as read", "asten", "at hand", "own times", "arrival can be shown", "can be shown", "stands on",
            "stand here", "stands here", "each further", "call and ask)", "What makes the difference", "recorded unseen",
                "money in the bank",
            "stays bound", "one who contracted with it", "Person, and", "What, and day", "not known to claimant", "In doubt: One",
                "It was never added"];
        foreach (var county in For(id).Job.Work.Kind == WorkKind.Private && PaperCatalogue.Find(id)!.Use == PaperUse.Recorded
            ? Counties : ["Yolo"])
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
        Entries = [.. job.Entries.Where(e => e is not Completed),
            .. days.Select((d, i) => new Completed { Index = 40 + i, On = DayFact.On(Day(d)),
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
        Assert.Contains("Quarrymen’s Supply Company, Inc., who gave preliminary notice, 2200 Plumb Street", sheet,
            StringComparison.Ordinal);
        Assert.Equal(exempt, sheet.Contains("An owner who lives there", StringComparison.Ordinal));
    }

    // Civ. Code § 8182(a), (d): recorded before completion or more than 15 days after it, it has no effect.
    [Fact]
    public void Other_days_of_completion_are_named_with_what_the_notice_is_worth_on_them()
    {
        var sheet = Make("notice-of-completion", j => Finished(j, "2026-05-01", "2026-04-15"), o => o with { Day = Day("2026-05-01") })
            .SheetText();
        Assert.Contains("The notice states May 1, 2026, but the file leaves open whether the work was completed on another day", sheet,
            StringComparison.Ordinal);
        Assert.Matches(@"April 15, 2026 \([^)]*\): the time to record ended on April 30, 2026, and the notice would be void", sheet);
        Assert.DoesNotContain("leaves open whether the work was completed", Make("notice-of-completion", j => Finished(j, "2026-05-01"))
            .SheetText(),
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
        Assert.Contains("Left out of the demand to date: $80,250.00 for work from February 19, 2026 through March 27, 2026",
            made.SheetText(),
            StringComparison.Ordinal);
    }

    // The demand of that day is for $4,000.00: two sums for one job are told as two, and no more is called due now than the demand says.
    [Theory]
    [InlineData("waiver-8132", "2026-02-18", false)]
    [InlineData("waiver-8134", "2026-02-18", false)]
    [InlineData("waiver-8132", "2026-02-24", true)]
    public void A_waiver_says_that_it_counts_work_to_come(string id, string through, bool doubt)
    {
        var sheet = Make(id, j => Ongoing(j), o => o with { Through = Day(through), Amount = 4_000m,
            PaymentCleared = o.PaymentCleared is null ? null : Day("2026-02-27") }, Day("2026-03-01")).SheetText().ReplaceLineEndings(" ");
        Assert.Contains($"What is unpaid by the next line{(doubt ? ", and what is in doubt," : "")} counts $80,250.00 for work from "
            + "February 19, 2026", sheet, StringComparison.Ordinal);
        Assert.Contains("with the work entered through March 27, 2026, $84,250.00 is unpaid", sheet, StringComparison.Ordinal);
        Assert.Contains("$4,000.00 of it is for work that has ended", sheet, StringComparison.Ordinal);
        Assert.Contains("of the $84,250.00 is left", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("may be claimed now", sheet, StringComparison.Ordinal);
        Assert.Contains("$84,250.00 may be claimed now", Make(id).SheetText().ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    // Civ. Code § 8800: 30 days after a notice demanding payment; April 1 and 30 days are May 1.
    [Fact]
    public void A_demand_says_since_when_an_earlier_one_is_overdue()
    {
        static JobFile Demanding(JobFile job, string on) =>
            Direct() with { Entries = [.. Direct().Entries.Where(e => e is not PaymentDemanded),
            new PaymentDemanded { Index = 9, On = DayFact.On(Day(on)), Amount = 40_000m, Manner = Manner.CertifiedMail }] };
        var late = Make("payment-demand", j => Demanding(j, "2026-04-01")).SheetText();
        Assert.Contains("On an earlier demand the time ended on May 1, 2026: what it demanded has been overdue since then", late,
            StringComparison.Ordinal);
        Assert.DoesNotContain("nothing is overdue", late, StringComparison.Ordinal);
        Assert.Contains("Until then nothing is overdue", Make("payment-demand", j => Demanding(j, "2026-05-01")).SheetText(),
            StringComparison.Ordinal);
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
            var made = Make("payment-demand", name == "short"
                ? j => j with { Work = j.Work with { Site = j.Work.Site with { Legal = null } } } : null);
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
        var sheet = Make("claim", j =>
            j.With(new ClaimServed { Index = 40, On = DayFact.On(Day("2026-05-04")), To = ["p1"], Manner = manner,
            Article = manner == Manner.CertifiedMail ? "9407111898765432101238" : null })).SheetText();
        Assert.Contains("If the claim was not signed before the copy was mailed, sign it, mail a copy again", sheet,
            StringComparison.Ordinal);
        Assert.Equal(certificate, sheet.Contains("Keep the stamped certificate of mailing", StringComparison.Ordinal));
        Assert.DoesNotContain("If the copy went first-class", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_paid_since_a_claim_was_recorded_is_told_to_the_attorney()
    {
        var sheet = Make("notice-of-pendency", j => j.With(new Paid { Index = 50, On = DayFact.On(Day("2026-06-26")), Amount = 10_000m }))
            .SheetText();
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
        Assert.Equal(told, packet.SheetText()
            .Contains("The amount is in doubt: this claim states $12,345.00; on another reading of the facts no more "
            + "than $9,000.00 may be claimed", StringComparison.Ordinal));
    }

    [Fact]
    public void The_request_for_notice_of_election_is_signed_too() =>
        Assert.Contains("sign the request for notice of election too", Make("stop-payment-notice").SheetText(), StringComparison.Ordinal);

    private static readonly Change Sheathing = new() { Index = 60, On = DayFact.On(Day("2026-03-02")), Amount = 2_545.75m, Agreed = true,
        Text = "heavier sheathing" };

    // Civ. Code § 8432(a): an extra outside the direct contract; it limits the lien alone, not the stop payment notice.
    [Fact]
    public void What_puts_an_amount_in_doubt_is_named()
    {
        Assert.Contains("In doubt is $2,545.75, the change order of March 2, 2026 (“heavier sheathing”). Is the extra in the direct "
            + "contract, or in a modification of it?", Make("claim", j => j.With(Sheathing)).SheetText().ReplaceLineEndings(" "),
            StringComparison.Ordinal);
        Assert.DoesNotContain("The amount is in doubt", Make("stop-payment-notice", j => j.With(Sheathing)).SheetText(),
            StringComparison.Ordinal);
    }

    // Civ. Code § 8460(a): 90 days after May 20, 2026 end on August 18.
    [Fact]
    public void An_amended_claim_names_the_day_to_sue_on_the_first()
    {
        var sheet = Make("amended-claim").SheetText().ReplaceLineEndings(" ");
        Assert.Contains("plan to sue by its day, Tuesday, August 18, 2026, not by the later day", sheet, StringComparison.Ordinal);
        Assert.Contains("Plan to sue by Tuesday, August 18, 2026, the day of the first claim.", sheet, StringComparison.Ordinal);
    }

    // Civ. Code §§ 8304(c), 8312.
    [Fact]
    public void A_designer_s_demand_without_a_day_says_what_is_missing()
    {
        var unknown = Make("design-lien-demand").SheetText().ReplaceLineEndings(" ");
        Assert.Contains("There is no act-by day yet: the file does not say since when you know", unknown, StringComparison.Ordinal);
        Assert.DoesNotContain("ACT BY", unknown, StringComparison.Ordinal);
        var known = Make("design-lien-demand",
            _ => Designed() with { Entries = [.. Designed().Entries.Where(e => e is not PaymentDemanded)] })
            .SheetText().ReplaceLineEndings(" ");
        Assert.DoesNotContain("There is no act-by day yet", known, StringComparison.Ordinal);
        Assert.Contains("on the reading “ten days before the last day to record, which is 90 days after you knew that the work will "
            + "not commence”", known, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_is_told_in_a_sentence_with_its_day() =>
        Assert.Contains("“a notice of completion recorded, unknown to you, on May 1, 2026, the day of acceptance by the public entity”",
            Make("public-stop-payment-notice").SheetText().ReplaceLineEndings(" "), StringComparison.Ordinal);

    // Civ. Code § 8182(b), (e).
    [Fact]
    public void Owners_by_unit_are_told_first_to_make_a_notice_for_each()
    {
        var units = Enumerable.Range(1, 14).Select(i => new Party { Id = $"o{i}", Capacity = PartyCapacity.Owner, Name = $"Unit {i}, LLC",
            Address = "77 Cordage Way\nDavis, CA 95616" }).ToArray();
        var sheet = Make("notice-of-completion", j => j.WithOwners(units)).SheetText().ReplaceLineEndings(" ");
        var told = sheet.IndexOf("This is one notice, and the file names 14 owners. One who owns a unit alone signs for that unit only",
            StringComparison.Ordinal);
        Assert.InRange(told, 0, sheet.IndexOf(" Where ", StringComparison.Ordinal));
        Assert.Contains("The check here is for this one notice", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("This is one notice", Make("notice-of-completion").SheetText(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_draft_for_the_attorney_is_not_what_is_recorded()
    {
        var sheet = Make("notice-of-pendency", options: o => o with { Draft = true }).SheetText().ReplaceLineEndings(" ");
        const string clean = "The attorney makes a clean paper without the word DRAFT; this one cannot be recorded.";
        Assert.NotEqual(sheet.IndexOf(clean, StringComparison.Ordinal), sheet.LastIndexOf(clean, StringComparison.Ordinal));
        Assert.Contains($"{clean} Of it: two originals", sheet, StringComparison.Ordinal);
        Assert.Contains("Attorney’s signature; name, printed; date of signing; signed at (city, state)", sheet, StringComparison.Ordinal);
    }

    // Civ. Code § 8460(b): 90 days after November 30, 2026 end on Sunday, February 28, 2027.
    [Fact]
    public void A_credit_s_sheet_says_which_day_is_the_ninetieth_and_who_signs()
    {
        var sheet = Make("notice-of-credit").SheetText().ReplaceLineEndings(" ");
        Assert.Contains("until Sunday, February 28, 2027 on the strictest count: 90 days after it ends, and never later than one year "
            + "after the whole work was completed. Plan on Friday, February 26, 2027.", sheet, StringComparison.Ordinal);
        Assert.Contains("Maria Muñoz-Nguyễn, for the claimant: signature; date and place of signing", sheet, StringComparison.Ordinal);
    }

    // Civ. Code §§ 8300, 8302(a).
    [Theory]
    [InlineData("design-lien")]
    [InlineData("design-lien-demand")]
    public void A_designer_hired_by_one_of_several_owners_is_told_whom_the_lien_can_bind(string id)
    {
        var hard = Make(id, HardJobs.All["61 owners"]).SheetText().ReplaceLineEndings(" ");
        Assert.Contains("The contract is with Owner of Unit 1, LLC, one of 61 owners", hard, StringComparison.Ordinal);
        Assert.Contains("Ask counsel, before you sign, whether it binds the others", hard, StringComparison.Ordinal);
        Assert.DoesNotContain("The contract is with", Make(id).SheetText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Lenders_without_a_notice_are_listed_once()
    {
        var sheet = Make("claim", HardJobs.All["a long account of the work, and five lenders"]).SheetText().ReplaceLineEndings(" ");
        Assert.Contains("given to none of these: the construction lender Granger Slough Bank of District 1; the construction lender "
            + "Granger Slough Bank of District 2;", sheet, StringComparison.Ordinal);
        Assert.Equal(sheet.IndexOf("Bank of District 4", StringComparison.Ordinal),
            sheet.LastIndexOf("Bank of District 4", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("partial-release")]
    [InlineData("design-lien-release")]
    [InlineData("claim")]
    public void No_name_to_be_indexed_is_broken_over_a_line(string id)
    {
        var lines = ReadBack.Of(Make(id, HardJobs.All["61 owners"]).Files[^1].Bytes).Pages.SelectMany(p => p.Lines)
            .Select(l => string.Join(' ', l.Select(w => w.Text))).ToList();
        Assert.DoesNotContain(lines,
            l => l.EndsWith("Owner of", StringComparison.Ordinal) || l.EndsWith("Owner", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2026-06-01", false)]
    [InlineData("2026-11-30", true)]
    public void No_price_is_said_to_be_checked_on_a_day_to_come(string asOf, bool said) => Assert.Equal(said,
        Law.Recording.RecordingFee.Of(Fees.RecorderTable.For("Yolo", Day(asOf)), new Law.Recording.FeeRequest { Pages = 2 }).Source
            .Contains("checked November 29, 2026", StringComparison.Ordinal));

    [Theory]
    [InlineData("Yolo", "not verified. Ask, through yolorecorder.org.", "Telephone: ask (yolorecorder.org)")]
    [InlineData("Alameda", "sk, through auditor.alamedacountyca.gov.", "Telephone: ask (auditor.alamedacountyca.gov)")]
    [InlineData("Glenn", "Call and ask", "Telephone: ask.")]
    public void Where_no_telephone_was_read_the_office_s_site_is_told(string county, string last, string telephone)
    {
        var sheet = In("claim", county).SheetText().ReplaceLineEndings(" ");
        Assert.Contains(last, sheet, StringComparison.Ordinal);
        Assert.Contains(telephone, sheet, StringComparison.Ordinal);
    }
}
