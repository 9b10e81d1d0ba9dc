using System.Reflection;
using Stringline.Tables;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Plan;
using Stringline.Papers;
using Stringline.Papers.Catalogue;
using Stringline.Places;

namespace Stringline.Office;

/// <summary>What the desk can do, one method each. The command line and every later screen call these and only these.</summary>
internal static class UseCases
{
    /// <summary>Reads a job file and assesses it.</summary>
    public static Outcome<Assessment> Assess(string path, LocalDate asOf)
    {
        var ready = Task.Run(WarmUp.Law);
        var job = Open(path);
        ready.GetAwaiter().GetResult();
        return job.Then(read => new Outcome<Assessment>.Done(Assess(read, asOf)));
    }

    /// <summary>Makes a paper of the catalogue with its sheet and writes both into a folder: all of it, or nothing.</summary>
    public static Outcome<WrittenPacket> PreparePaper(
        Paper paper, string path, LocalDate asOf, PaperOptions options, string folder, bool replace)
    {
        // The papers' libraries get ready on another core while the file is read and assessed.
        var ready = Task.Run(PaperMaker.GetReady);
        var written = Open(path).Then(job =>
        {
            var assessment = Assess(job, asOf);
            return PaperMaker.Make(paper, job, assessment, options) switch
            {
                PacketOutcome.Refused refused => new Outcome<WrittenPacket>.Refused([.. refused.Refusals.Select(r => r.ToString())]),
                PacketOutcome.Made made => FileDrop.WriteAll(folder, [.. made.Files.Select(file => Finished(file, made, job))], replace)
                    .Then(files => new Outcome<WrittenPacket>.Done(new WrittenPacket(files, made, assessment, paper.Deadline))),
                _ => throw new InvalidOperationException("Neither made nor refused."),
            };
        });
        ready.GetAwaiter().GetResult();
        return written;

        FinishedFile Finished(PaperFile file, PacketOutcome.Made made, JobFile job) =>
            new(PaperFileName.Of(job.Name, paper.Id, file, options.Draft || made.InTheWay.Count > 0, asOf, options), file.Bytes);
    }

    /// <summary>Writes the demo jobs into a folder: all of them, or none.</summary>
    public static Outcome<IReadOnlyList<string>> WriteDemo(string folder, bool replace) => FileDrop.WriteAll(folder, DemoFiles(), replace);

    private static List<FinishedFile> DemoFiles()
    {
        const string start = "demo/";
        var program = Assembly.GetExecutingAssembly();
        var files = new List<FinishedFile>();
        foreach (var name in program.GetManifestResourceNames().Where(n => n.StartsWith(start, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal))
        {
            using var stream =
                program.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is missing from the program.");
            var bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            files.Add(new FinishedFile(name[start.Length..], bytes));
        }

        return files;
    }

    /// <summary>
    /// The law's findings over the office days of the site's county, and whether that county goes with the site's ZIP and city.
    /// </summary>
    /// <param name="job">The facts.</param>
    /// <param name="asOf">The day on which the question is asked.</param>
    /// <param name="plan">What plans reckon with; null for the defaults.</param>
    public static Assessment Assess(JobFile job, LocalDate asOf, PlanSettings? plan = null)
    {
        var site = job.Work.Site;
        var assessment = Assessment.Of(job, asOf, CountyClosings.Calendar(site.County), plan);
        // On federal work nothing is recorded and no index is searched.
        return job.Work.Kind != WorkKind.Federal && SiteCounty.Question(site) is { } question
            ? assessment with { Findings = [.. assessment.Findings, question] } : assessment;
    }

    private static Outcome<JobFile> Open(string path) => JobFileReader.ReadFile(path) switch
    {
        JobFileResult.Read read => new Outcome<JobFile>.Done(read.Job),
        JobFileResult.Refused refused => new Outcome<JobFile>.Refused([.. refused.Faults.Select(fault => fault.ToString())]),
        _ => throw new InvalidOperationException("Neither read nor refused."),
    };
}
