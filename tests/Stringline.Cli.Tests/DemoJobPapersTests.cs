using NodaTime.Text;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Papers;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Fees;
using Stringline.Papers.Waiver;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>
/// Every paper that fits one of the five demo jobs, on a day that fits it, passes its preflight, which is a second library's reading.
/// <c>STRINGLINE_PAPERS_OUT</c> names a folder to keep them in for the eye.
/// </summary>
[Slow(Slow.Lasting)]
public sealed class DemoJobPapersTests
{
    private static readonly string? Kept = Environment.GetEnvironmentVariable("STRINGLINE_PAPERS_OUT");

    /// <summary>Job, day, and the papers that fit then.</summary>
    private static readonly (string Job, string AsOf, string[] Papers)[] Fitting =
    [
        // A supplier on a commercial job.
        ("alder-court", "2026-02-18", ["preliminary-notice"]),
        ("alder-court", "2026-03-20", ["proof-of-notice", "certified-mail-sheet", "waiver-8132", "waiver-8134"]),
        ("alder-court", "2026-06-22", ["claim", "notice-of-completion", "stop-payment-notice", "payment-demand", "waiver-8136",
            "waiver-8138"]),

        // A drywall contractor on a condominium with fourteen owners.
        ("tamarind-wharf", "2026-02-17", ["preliminary-notice"]),
        ("tamarind-wharf", "2026-02-20", ["proof-of-notice", "certified-mail-sheet"]),
        ("tamarind-wharf", "2026-04-10", ["waiver-8132", "waiver-8134"]),
        ("tamarind-wharf", "2026-06-18", ["claim", "notice-of-completion", "stop-payment-notice", "payment-demand", "waiver-8136",
            "waiver-8138"]),
        ("tamarind-wharf", "2026-08-17", ["stop-payment-release"]),

        // A direct contractor on an owner-occupied house.
        ("juniper-lane", "2026-03-16", ["waiver-8132", "waiver-8134", "payment-demand"]),
        ("juniper-lane", "2026-04-24", ["stop-work-notice"]),
        ("juniper-lane", "2026-05-08", ["notice-of-completion"]),
        ("juniper-lane", "2026-06-02", ["claim", "waiver-8136", "waiver-8138"]),
        ("juniper-lane", "2026-07-01", ["amended-claim", "notice-of-credit", "release", "partial-release"]),
        ("juniper-lane", "2026-08-24", ["notice-of-pendency"]),

        // An equipment lessor on a school.
        ("cottonwood-school", "2026-03-04", ["public-preliminary-notice"]),
        ("cottonwood-school", "2026-03-23", ["proof-of-notice", "waiver-8132", "waiver-8134"]),
        ("cottonwood-school", "2026-06-15", ["public-stop-payment-notice", "public-bond-notice", "payment-demand", "waiver-8136",
            "waiver-8138"]),

        // A landscape designer whose garden was never begun.
        ("thistlebank-garden", "2026-05-15", ["design-lien-demand", "payment-demand"]),
        ("thistlebank-garden", "2026-05-26", ["design-lien", "waiver-8136"]),
    ];

    public static TheoryData<string, string, string> Rows()
    {
        var rows = new TheoryData<string, string, string>();
        foreach (var (job, asOf, papers) in Fitting)
        {
            foreach (var paper in papers)
                rows.Add(job, asOf, paper);
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_paper_that_fits_a_demo_job_passes_its_preflight(string job, string asOf, string paper)
    {
        var day = LocalDatePattern.Iso.Parse(asOf).Value;
        var file = Read(job);
        var assessment = UseCases.Assess(file, day);
        var told = Told(file, day, paper);
        // Whoever makes a waiver has read what it releases and typed it.
        if (PaperCatalogue.Find(paper)!.Waiver is { } form)
            told = told with { Releases = WaiverOrder.Of(form, file, assessment, told).Outlook!.Released };
        var outcome = PaperMaker.Make(paper, file, assessment, told);
        if (outcome is PacketOutcome.Refused refused)
            Assert.Fail(string.Join("\n", refused.Refusals));
        var made = Assert.IsType<PacketOutcome.Made>(outcome);
        Assert.All(made.Preflight, r => Assert.True(r.Passed, r.ToString()));
        if (made.Fee is not null)
            Assert.All(made.Files.Where(f => f.IsSheet), f => Assert.InRange(f.Pages, 1, 2));
        Assert.All(made.InTheWay, r => Assert.Equal("for-the-attorney", r.Id));
        if (Kept is null)
            return;
        foreach (var printed in made.Files)
            File.WriteAllBytes(Path.Combine(Directory.CreateDirectory(Kept).FullName, $"{job}--{paper}--{printed.Name}"),
                printed.Bytes.ToArray());
    }

    public static TheoryData<string, string> Claims() =>
        [.. Fitting.Where(f => f.Papers.Contains("claim")).Select(f => new TheoryDataRow<string, string>(f.Job, f.AsOf))];

    /// <summary>
    /// Whoever stands at the window has two pages at most, in the counties of which most was read too, and in one of which nothing was.
    /// </summary>
    [Theory]
    [MemberData(nameof(Claims))]
    public void The_counter_sheet_of_a_demo_job_has_two_pages_wherever_most_or_nothing_was_read(string job, string asOf)
    {
        var day = LocalDatePattern.Iso.Parse(asOf).Value;
        foreach (var county in Counties.All.OrderByDescending(c => RecorderTable.For(c, day).Facts.Sum(f => f.Value.Length)).Take(8)
            .Append("Glenn"))
        {
            var file = Read(job);
            file = file with { Work = file.Work with { Site = file.Work.Site with { County = county } } };
            // The job's town lies elsewhere, which the sheet then asks about.
            var outcome = PaperMaker.Make("claim", file, UseCases.Assess(file, day), new PaperOptions { Draft = false });
            var made = Assert.IsType<PacketOutcome.Made>(outcome);
            var sheet = Assert.Single(made.Files, f => f.IsSheet);
            Assert.True(sheet.Pages <= 2, $"{job} in {county}: {sheet.Pages} pages");
        }
    }

    /// <summary>A row for every paper, or the reason why none of the five jobs comes to need it.</summary>
    [Fact]
    public void Every_paper_fits_one_of_the_five_jobs_but_those_named_here() =>
        Assert.Equal(
            [
                "security-demand", // none is a large project
                "dispute-claim", "conference-demand", "disputed-portion", "claim-request", // on none is a claim in dispute
                // on none is there a suit or an affidavit over a stop payment notice
                "action-notice", "release-affidavit", "counteraffidavit",
                "bond-notice", // no private job has a payment bond
                "converted-claim", "design-lien-release", // the garden is never begun, and its designer not paid
                "release-demand", // the owner of none waits for a release
            ],
            PaperCatalogue.All.Select(p => p.Id).Except(Fitting.SelectMany(f => f.Papers)));

    /// <summary>Id, title and sections as the catalogue has them.</summary>
    [Fact]
    public void The_list_of_papers_in_the_documentation_is_that_of_the_catalogue() => Assert.Equal(
        PaperCatalogue.All.Select(p => $"| `{p.Id}` | {p.Title} | {p.Sections} |").Order(StringComparer.Ordinal),
        File.ReadAllLines(Repository.Path("docs/papers.md")).Where(l => l.StartsWith("| `", StringComparison.Ordinal))
            .Select(l => string.Join('|', l.Split('|').Take(4)) + "|").Order(StringComparer.Ordinal));

    [Fact]
    public void Every_demo_file_has_its_papers() => Assert.Equal(
        Directory.GetFiles(Repository.Path("data/demo"), "*.json").Select(f => Path.GetFileNameWithoutExtension(f))
            .Order(StringComparer.Ordinal),
        Fitting.Select(f => f.Job).Distinct().Order(StringComparer.Ordinal));

    /// <summary>Each paper of a claim with many owners names every one of them (Gov. Code § 27288.1(a)).</summary>
    [Fact]
    public void The_claim_on_the_condominium_names_all_fourteen_owners()
    {
        var file = Read("tamarind-wharf");
        Assert.Equal(14, file.In(PartyCapacity.Owner).Count);
        var made = Assert.IsType<PacketOutcome.Made>(PaperMaker.Make("claim", file, UseCases.Assess(file, new LocalDate(2026, 6, 18)),
            PaperOptions.None));
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(made.Files[0].Bytes.ToArray());
        var text = string.Concat(pdf.GetPages().SelectMany(p => p.Letters).Select(l => l.Value).Where(l => l.Trim().Length > 0));
        Assert.All(file.In(PartyCapacity.Owner), o =>
            Assert.Contains(o.Name.Replace(" ", "", StringComparison.Ordinal), text, StringComparison.Ordinal));
    }

    private static JobFile Read(string job) => JobFileReader.ReadFile(Repository.Path($"data/demo/{job}.json")) switch
    {
        JobFileResult.Read read => read.Job,
        JobFileResult.Refused refused => throw new InvalidOperationException(string.Join("\n", refused.Faults)),
        var other => throw new InvalidOperationException($"{other}"),
    };

    private static PaperOptions Told(JobFile file, LocalDate day, string paper) => paper switch
    {
        "waiver-8132" => new PaperOptions { Through = day.PlusDays(-7), Amount = 9_000m, Maker = file.Party(file.Claimant.HiredBy)!.Name },
        "waiver-8134" => new PaperOptions { Through = day.PlusDays(-7), Amount = 9_000m, PaymentCleared = day.PlusDays(-1) },
        "waiver-8136" => new PaperOptions { Amount = 20_000m, Maker = file.Party(file.Claimant.HiredBy)!.Name, Disputed = 1_250m },
        "waiver-8138" => new PaperOptions { PaymentCleared = day.PlusDays(-1) },
        "payment-demand" => new PaperOptions { Day = day.PlusDays(14) },
        "stop-work-notice" => new PaperOptions { Day = new LocalDate(2026, 3, 12) },
        "notice-of-completion" => new PaperOptions { Words = "Fee simple", Day = file.Entries.OfType<Completed>().Select(c => c.On.Latest)
            .OfType<LocalDate>().LastOrDefault(day) },
        "partial-release" => new PaperOptions { Amount = 10_000m },
        "notice-of-credit" =>
            new PaperOptions { Until = day.PlusDays(120), Words = "The balance is due on October 29, 2026, without interest." },
        "public-preliminary-notice" => new PaperOptions { Amount = 36_000m },
        "public-bond-notice" => new PaperOptions { Number = "SH-20871" },
        _ => PaperOptions.None,
    };
}
