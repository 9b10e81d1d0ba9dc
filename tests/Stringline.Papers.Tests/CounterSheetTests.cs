using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Recording;
using Stringline.Papers.Catalogue;
using Stringline.Papers.ClaimOfLien;
using Stringline.Papers.Fees;
using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;
using Stringline.Testing;
using Stringline.Papers.Writing;
using static Stringline.Papers.Tests.Jobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// Who stands at the window has two pages at most, and on the first of them all that the window asks for, whatever the claim and whichever
/// the county.
/// </summary>
public sealed class CounterSheetTests
{
    private static readonly string[] Shapes = ["short", "served", "hard", "hard-served", "amended"];

    public static TheoryData<string> Counties() => [.. Law.Facts.Counties.All];

    [Theory]
    [Slow(Slow.Lasting)]
    [MemberData(nameof(Counties))]
    public void The_sheet_of_a_claim_has_two_pages_and_the_window_on_the_first(string county)
    {
        foreach (var shape in Shapes)
        {
            var (job, assessment) = Job(shape, county);
            var sheet = Sheet(shape, job, assessment, draft: false);
            Assert.True(sheet.Pages.Count <= 2, $"{county}, {shape}: {sheet.Pages.Count} pages");
            var office = RecorderTable.For(county, assessment.AsOf);
            HasTheWindow($"{county}, {shape}", sheet, office);
            var first = First(sheet);
            Assert.Contains(PaperText.DayOfWeek(Day("2026-06-26")), first, StringComparison.Ordinal);
            Assert.Contains(shape == "served" ? "mail a copy again" : "ertificate of mailing", first, StringComparison.Ordinal);
            if (shape is "short" or "hard")
            {
                Assert.Contains("Serve before you record", first, StringComparison.Ordinal);
                Assert.Contains("(§ 8416(c)(2))", first, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Counties))]
    [Slow(Slow.Lasting)]
    public void The_sheet_of_a_draft_has_two_pages_and_no_payee_or_step(string county)
    {
        foreach (var shape in Shapes)
        {
            var (job, assessment) = Job(shape, county);
            var sheet = Sheet(shape + "-draft", job, assessment, draft: true);
            Assert.True(sheet.Pages.Count <= 2, $"{county}, {shape}: {sheet.Pages.Count} pages");
            Assert.DoesNotContain("Payable to", sheet.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("In this order", sheet.Text, StringComparison.Ordinal);
        }
    }

    public static TheoryData<string> Recorded() =>
        [.. PaperCatalogue.All.Where(p => p.Use == PaperUse.Recorded && !p.Id.Contains("claim", StringComparison.Ordinal))
            .Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Recorded))]
    [Slow(Slow.Lasting)]
    public void So_has_that_of_any_other_recorded_paper(string id)
    {
        foreach (var county in (string[])["Yolo", "Los Angeles", "Glenn", "San Francisco", "Kern", "Sacramento", "San Bernardino",
            "Humboldt"])
        {
            foreach (var many in (bool[])[false, true])
            {
                var made = PaperJobs.Make(id, j => many ? Crowded(At(j, county)) : At(j, county));
                var sheet = ReadBack.Of(made.Files[^1].Bytes);
                Kept.Keep($"{id}-{county}-{many}.pdf", made.Files[^1]);
                Assert.True(sheet.Pages.Count <= 2, $"{id}, {county}, {many}: {sheet.Pages.Count} pages");
                // Nobody goes to the window with a draft: the attorney's steps stand first there.
                if (id != "notice-of-pendency")
                    HasTheWindow($"{id}, {county}, {many}", sheet, made.Fee!.Office);
            }
        }
    }

    public static TheoryData<string> EveryRecorded() => [.. PaperCatalogue.All.Where(p => p.Use == PaperUse.Recorded).Select(p => p.Id)];

    // Whatever the fit: nobody is told to hand in what is not signed yet, nor to start before what comes first.
    [Theory]
    [Slow(Slow.Lasting)]
    [MemberData(nameof(EveryRecorded))]
    public void The_steps_stand_in_the_order_in_which_they_are_taken(string id)
    {
        foreach (var (name, hard) in HardJobs.All)
        {
            var text = Text(PaperJobs.Make(id, hard, o => id == "notice-of-pendency" ? o with { Draft = true } : o));
            string[] steps = [" Fill in by hand, in ink ", " For the attorney to fill in ", " What to do ",
                " What the attorney’s office does, ", " In this order 1. ", " Hand in", " If it is refused at the window "];
            var at = steps.Select(s => text.IndexOf(s, StringComparison.Ordinal)).Where(i => i >= 0).ToList();
            Assert.True(at.Count >= 2 && at.SequenceEqual(at.Order()), $"{name}: {text}");
            var before = text.IndexOf(" Before you go ", StringComparison.Ordinal);
            Assert.True(before < 0 || before < text.IndexOf(" In this order ", StringComparison.Ordinal)
                || text.Contains("Go through “Before you go” on page 2 before you start", StringComparison.Ordinal), $"{name}: {text}");
        }
    }

    // Cut is only what has no room: the second page is full then, and the most that the check may come to is explained all the same.
    [Theory]
    [Slow(Slow.Lasting)]
    [MemberData(nameof(EveryRecorded))]
    public void Nothing_is_cut_while_there_is_room(string id)
    {
        foreach (var (name, hard) in HardJobs.All)
        {
            var made = PaperJobs.Make(id, hard, o => id == "notice-of-pendency" ? o with { Draft = true } : o);
            var text = Text(made);
            var most = text.Contains("Be ready to pay", StringComparison.Ordinal);
            Assert.True(!most || text.Contains("It may come to", StringComparison.Ordinal), $"{name}: {text}");
            var cut = text.Contains('…', StringComparison.Ordinal) || text.Contains(" more, ", StringComparison.Ordinal);
            Assert.True(!cut || name is "names of three lines", $"{name}: {text}");
        }
    }

    private static string Text(PacketOutcome.Made made) => " " + string.Join(' ',
        ReadBack.Of(made.Files[^1].Bytes).Pages.SelectMany(p => p.Words).Select(w => w.Text)) + " ";

    // What was not read is asked for and never made up; what was read stands there.
    [Fact]
    public void Of_a_county_of_which_nothing_was_read_everything_is_asked()
    {
        var first = First(Sheet("glenn", At(Demo(), "Glenn"), Demo().Assessed(), draft: false));
        foreach (var words in (string[])["Willows (confirm the city); street: ask", "Telephone: ask", "Hours: ask",
            "ask for the exact payee",
            "Last time at the counter: not verified", "Nothing published by this office was found"])
            Assert.Contains(words, first, StringComparison.Ordinal);
    }

    [Fact]
    public void Los_Angeles_sends_the_runner_to_Norwalk()
    {
        var sheet = Sheet("los-angeles", At(Demo(), "Los Angeles"), Demo().Assessed(), draft: false);
        Assert.Contains("12400 East Imperial Highway, Norwalk, CA 90650 (ask) Telephone: (562) 462-2125.", First(sheet),
            StringComparison.Ordinal);
        Assert.DoesNotContain("city not verified", sheet.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("http", sheet.Text, StringComparison.Ordinal);
    }

    // The office's own page: without parcel number and street on page 1 the paper is not recorded.
    [Fact]
    public void What_an_office_wants_of_a_page_is_told() =>
        Assert.Contains("This office wants: parcel number and street address must stand on page 1, or the paper is not recorded.",
            Sheet("san-francisco", At(Demo(), "San Francisco"), Demo().Assessed(), draft: false).Text, StringComparison.Ordinal);

    [Fact]
    public void Prices_that_must_be_asked_say_so_beside_the_sum_and_the_most_stands_on_page_one()
    {
        var sheet = Sheet("ask", At(Demo(), "Los Angeles"), Demo().Assessed(), draft: false);
        Assert.Contains("ask $15.00", sheet.Text, StringComparison.Ordinal);
        var fee = RecordingFee.Of(RecorderTable.For("Los Angeles", Day("2026-05-06")), new FeeRequest { Pages = 4 });
        Assert.True(fee.AtMost > fee.Total);
        Assert.Matches(@"Be ready to pay \$\d+\.\d\d", First(sheet));
        Assert.DoesNotContain("ask $75.00", sheet.Text, StringComparison.Ordinal);
    }

    /// <summary>Gov. Code § 27391: who may send papers electronically; a wider rule to 2027 (Stats. 2016 ch. 380).</summary>
    [Fact]
    public void It_says_through_whom_electronic_recording_goes_and_when_not()
    {
        var sheet = Sheet("electronic", At(Demo(), "Solano"), Demo().Assessed(), draft: false).Text;
        foreach (var words in (string[])["a title insurer, an underwritten title company, an institutional lender or a government body",
            "§ 27391", "Here: the public system of the joint powers authority.", "do not rely on it for a last day in 2027 or later",
                "Mailed is not recorded"])
            Assert.Contains(words, sheet, StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8182(a), and the law's own day: the fifteenth day after May 1, 2026 is Saturday, May 16.</summary>
    [Fact]
    public void The_notice_of_completion_is_planned_on_an_open_day()
    {
        var sheet = PaperJobs.Make("notice-of-completion", options: o => o with { Day = Day("2026-05-01") });
        Assert.Contains("ACT BY Friday, May 15, 2026", sheet.SheetText(), StringComparison.Ordinal);
        Assert.DoesNotContain("Saturday, May 16", First(ReadBack.Of(sheet.Files[^1].Bytes)), StringComparison.Ordinal);
    }

    /// <summary>Gov. Code § 27287, Civ. Code § 1189: each signer who comes apart brings a certificate, and each is a page.</summary>
    [Fact]
    public void Two_signers_who_may_sign_apart_have_two_certificate_pages_in_the_fee()
    {
        var made = PaperJobs.Make("notice-of-credit");
        Assert.Equal(3m * (made.Files[0].Pages + 1), made.Fee!.Part("extra-pages")!.Amount);
        Assert.Contains("2 certificate pages are counted", made.SheetText(), StringComparison.Ordinal);
        Assert.Contains("together before one, or each apart", made.SheetText(), StringComparison.Ordinal);
        Assert.Contains("The notary’s certificate is counted as one page", PaperJobs.Make("release").SheetText(), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8214: a preliminary notice may be filed; the price is the office’s own (marincounty.org, 2022-01-01).</summary>
    [Theory]
    [InlineData("Kern", "ask the office for its price")]
    [InlineData("Marin", "the fee was listed as $50.00 on a page of January 1, 2022. It gives notice")]
    [InlineData("Yolo", "the fee was listed as $40.00 on an undated page; call to confirm. It gives notice")]
    public void The_price_of_filing_a_preliminary_notice_is_told_or_asked(string county, string words) =>
        Assert.Contains(words, PaperJobs.Make("preliminary-notice", j => At(j, county)).SheetText(), StringComparison.Ordinal);

    private static void HasTheWindow(string of, ReadBack sheet, RecorderOffice office)
    {
        var first = First(sheet);
        string[] needed =
        [
            office.Name, office.Words(RecorderField.Counter) ?? "street: ask", "Telephone: " + (office.Words(RecorderField.Phone) ?? "ask"),
            office.Words(RecorderField.RecordUntil) is { } time ? "At the counter by " + time.TrimEnd('.') : "Last time at the counter",
            office.Words(RecorderField.Payee) is { } payee ? $"Payable to “{payee}”" : "ask for the exact payee",
            "The check: $", "Two originals|two originals", "Bring back the stamped copy", "Anyone may carry them", "Say: “", "27201(a)",
            "§ 27361.6", "in writing, on the office’s form", "§§ 27203, 27204",
        ];
        var missing = needed.Where(n => !n.Split('|').Any(one => first.Contains(one, StringComparison.Ordinal))).ToList();
        Assert.True(missing.Count == 0, $"{of}: page 1 lacks {string.Join("; ", missing)}\n{first}");
    }

    private static string First(ReadBack sheet) => string.Join(' ', sheet.Pages[0].Words.Select(w => w.Text));

    private static ReadBack Sheet(string name, JobFile job, Assessment assessment, bool draft)
    {
        var facts = PrintedFacts.Of(job, assessment);
        var service = Service.Of(job, assessment.AsOf);
        var fee = RecordingFee.Of(RecorderTable.For(facts.County!, assessment.AsOf), new FeeRequest { Pages = 9,
            Parcels = facts.Parcels.Count, ParcelsTold = facts.Parcels, Names = facts.Names.Count, References = 2, ConformedCopy = true,
            NamesAtEachAddress = [facts.Owners.Count], Until = Day("2027-01-08") });
        EarlierClaim? earlier = name.StartsWith("amended", StringComparison.Ordinal)
            ? new Amendment("recorded May 20, 2026 as instrument 2026-0012345", Day("2026-05-20")) : null;
        IReadOnlyList<Refusal> refusals = draft
            ? [.. Enumerable.Range(0, 14)
                .Select(i => new Refusal($"r{i}", new Place.OfParty(12, "address"), Sentence.Of(LongText), $"Add it.", ""))] : [];
        var printed = Press.Print(new CounterSheet(job, assessment, facts, service, fee, 9, refusals, earlier).Plan(draft, new Measure()));
        Kept.Keep($"counter-{facts.County}-{name}.pdf", new PaperFile("counter-sheet.pdf", "Counter sheet", printed.Pages, printed.Bytes));
        return ReadBack.Of(printed.Bytes);
    }

    private static readonly string LongText = string.Concat(Enumerable.Repeat(
        "The file does not say on which day the last of the stone was delivered to the site, nor who took it. ", 6)).TrimEnd();

    private static (JobFile, Assessment) Job(string shape, string county) => shape switch
    {
        "short" => (At(Demo(), county), At(Demo(), county).Assessed()),
        "served" => (At(Served(), county), At(Served(), county).Assessed()),
        "amended" => (At(PaperJobs.Recorded(), county), At(PaperJobs.Recorded(), county).Assessed()),
        "hard" => (Crowded(At(Demo(), county)), Doubtful(Crowded(At(Demo(), county)))),
        "hard-served" => (Crowded(At(Served(), county)), Doubtful(Crowded(At(Served(), county)))),
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "No such shape."),
    };

    private static JobFile At(JobFile job, string county) =>
        job with { Work = job.Work with { Site = job.Work.Site with { County = county } } };

    // Sixty-one owners of three lines each, ranges of parcels, several structures, a long name of the job.
    private static JobFile Crowded(JobFile job) => job with
    {
        Name = LongText[..180],
        Claimant = job.Claimant with { Name = "Quarrymen’s Supply, Masonry, Cut Stone, Tile and Building Materials Company of the Greater "
            + "Sacramento Valley and the Delta Counties, a California corporation doing business as Plumb Street Stone" },
        Work = job.Work with { Site = job.Work.Site with { Apn = "019-0042-101 through 019-0042-114; "
            + string.Join("; ", Enumerable.Range(10, 40).Select(i => $"027-3{i}-014-000")) } },
        Parties =
        [
            .. job.Parties.Where(p => p.Capacity == PartyCapacity.Owner).Select(p => p with { Name = Owner(0) }),
            .. Enumerable.Range(1, 60).Select(i => new Party { Id = $"o{i}", Capacity = PartyCapacity.Owner, Name = Owner(i),
                Address = "77 Cordage Way\nDavis, CA 95616" }),
            .. job.Parties.Where(p => p.Capacity != PartyCapacity.Owner),
        ],
    };

    private static string Owner(int i) =>
        $"Theodora Marguerite Ibáñez-Örn and Wilhelmina Constance D’Ångström, as trustees of the Ibáñez-Örn "
        + $"and D’Ångström Family Revocable Living Trust number {i}, dated the first day of February 1998 and restated in full thereafter";

    private static Assessment Doubtful(JobFile job) => job.Assessed(12_345.67m,
        LastDay(Standing.InDoubt, [.. Enumerable.Range(0, 9).Select(i =>
            new Reading($"{LongText[..150]} ({i})", Day("2026-06-27").PlusDays(i), Day("2026-06-29").PlusDays(i)))]),
        FirstDay(Standing.NotYet, new Reading($"the day after the last delivery", Day("2026-05-11"))),
        Right(Standing.InDoubt) with { Why = [.. Enumerable.Repeat(Reason.Of("Civ. Code § 8400", $"{LongText}"), 4)] })
        is var made ? made with
        {
            Findings = [.. made.Findings, new Finding { Id = "site.county", Title = "County", Standing = Standing.InDoubt,
                Why = [.. Enumerable.Repeat(Reason.Of("Civ. Code § 8060", $"{LongText}"), 5)] }],
        } : throw new InvalidOperationException("Never.");
}
