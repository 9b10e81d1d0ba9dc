using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Testing;
using static Stringline.Papers.Tests.Jobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// Every page of every paper, for the demo jobs and for jobs that are hard to set: nothing left alone or parted, nothing that only a file
/// or a command line says.
/// </summary>
[Slow(Slow.Lasting)]
public sealed class LayoutLintTests
{
    private static readonly (string Job, string[] Days)[] Demos =
    [
        ("alder-court", ["2026-02-18", "2026-04-01", "2026-06-22"]),
        ("tamarind-wharf", ["2026-02-17", "2026-06-18"]),
        ("juniper-lane", ["2026-04-24", "2026-06-02", "2026-07-01"]),
        ("cottonwood-school", ["2026-03-04", "2026-06-15"]),
        ("thistlebank-garden", ["2026-05-15", "2026-05-26"]),
    ];

    public static TheoryData<string, string> Rows()
    {
        var rows = new TheoryData<string, string>();
        foreach (var (job, days) in Demos)
        {
            foreach (var day in days)
                rows.Add(job, day);
        }

        return rows;
    }

    /// <summary>What cannot be made on that day is made as a draft: its sheet is read too.</summary>
    [Theory]
    [MemberData(nameof(Rows))]
    public void No_page_of_a_demo_job_s_papers_has_a_fault(string name, string asOf)
    {
        var job = Demo(name);
        var faults = PaperCatalogue.All.Where(p => p.Works.Contains(job.Work.Kind)).SelectMany(p => Faults(p.Id, job, Day(asOf))).ToList();
        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    public static TheoryData<string> Ids() => [.. PaperCatalogue.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void No_page_of_a_paper_has_a_fault_for_its_fitting_job_and_for_hard_ones(string id)
    {
        var fitting = PaperJobs.For(id).Job;
        List<string> faults = [];
        for (var hard = 0; hard < 4; hard++)
            faults.AddRange(Faults(id, Hard(fitting, hard), PaperJobs.For(id).AsOf).Select(f => $"hard job {hard}: {f}"));
        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    // As it is; a long legal description; many owners; a long name and many of everything.
    private static JobFile Hard(JobFile job, int which) => which switch
    {
        0 => job,
        1 => job with { Work = job.Work with { Site = job.Work.Site with { Legal = Legal(900) } } },
        2 => WithMany(job, 17),
        _ => WithMany(job, 61) with
        {
            Work = job.Work with { Site = job.Work.Site with { Legal = Legal(350) } },
            Claimant = job.Claimant with { Name = "The O'Quarrymen's and Stonecutters' Cooperative Supply Company of the Greater Valley, a "
                + "California Corporation, doing business as \"Plumb & Level\" Stone Yard" },
        },
    };

    private static string Legal(int words) =>
        string.Join(' ', Enumerable.Range(1, words).Select(i => $"thence South {i % 60}° 14' 30\" West"));

    private static JobFile WithMany(JobFile job, int owners) => job with
    {
        Parties =
        [
            .. job.Parties,
            .. Enumerable.Range(1, job.Work.Kind == WorkKind.Public ? 0 : owners).Select(i => new Party { Id = $"o{i}",
                Capacity = PartyCapacity.Owner, Name = $"Owner O'Number {i}",
                Address = $"{i} Cordage Way\nUnit {i}\nDavis, CA {95000 + i}" }),
        ],
    };

    private static IEnumerable<string> Faults(string id, JobFile job, LocalDate day)
    {
        var options = PaperJobs.Typed(id, job, day, PaperJobs.For(id).Options);
        var made = PaperJobs.Outcome(id, job, day, options) is PacketOutcome.Made good ? good
            : PaperJobs.Outcome(id, job, day, options with { Draft = true }) as PacketOutcome.Made;
        if (made is null)
            return [];
        foreach (var file in made.Files)
            Kept.Keep($"lint-{job.Name[..4]}-{PaperText.Day(day)}-{id}--{file.Name}", file);
        return made.Files.SelectMany(f => Lint.Of(f, job)).Select(f => $"{id}: {f}");
    }

    private static JobFile Demo(string name) => JobFileReader.ReadFile(Repository.Path($"data/demo/{name}.json")) switch
    {
        JobFileResult.Read read => read.Job,
        var other => throw new InvalidOperationException($"{other}"),
    };
}
