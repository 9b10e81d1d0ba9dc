using System.Globalization;
using System.Buffers;
using System.Text.Json;
using Stringline.Office.Customers;
using Stringline.Office.Settings;
using Stringline.Tables;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Plan;
using Stringline.Law.Reasoning;
using Stringline.Places;
using Stringline.Store;

namespace Stringline.Office.Portfolio;

/// <summary>How far the assessment of the portfolio has come.</summary>
/// <param name="Done">Jobs assessed so far.</param>
/// <param name="Total">Jobs that were to be assessed when it began.</param>
internal sealed record PortfolioProgress(long Done, long Total);

/// <summary>Keeps what the store knows of each job's assessment in step with the journal, the rules and the day.</summary>
internal sealed class Portfolio(IJournal journal)
{
    private const int Batch = 2000;

    private LocalDate? lookedThrough;
    private long mended;

    /// <summary>How many jobs had to be assessed anew because what was kept of them was damaged.</summary>
    public long Mended => Interlocked.Read(ref mended);

    private static readonly string Library =
        $"{typeof(Assessment).Module.ModuleVersionId:N}-{typeof(CountyClosings).Module.ModuleVersionId:N}";

    /// <summary>
    /// The version of the rules: a law library compiled from other code is another version, and so are another table of counties' closings
    /// and other settings of plans.
    /// </summary>
    public static string Rules(PlanSettings plan) =>
        string.Create(CultureInfo.InvariantCulture, $"{Library}/{plan.MailBacklogDays}-{plan.IndexLagDays}-{plan.ReserveDays}");

    /// <summary>Assesses one job and keeps what was found.</summary>
    public void Refresh(long job, LocalDate asOf)
    {
        if (journal.Read(job) is { } stored)
            journal.WriteAssessed([Of(stored.Tip, stored.Job, asOf, OfficeSettings.Of(journal).Plan)]);
    }

    /// <summary>Assesses every job that was written to since, or that was assessed by other rules or on another day; in batches.</summary>
    /// <param name="asOf">The day.</param>
    /// <param name="cores">On how many cores at once.</param>
    /// <param name="progress">Told after each batch.</param>
    /// <param name="stop">Stops it between two jobs.</param>
    /// <returns>How many were assessed.</returns>
    /// <exception cref="OperationCanceledException">It was to stop; the batches that were done stay.</exception>
    public long RefreshStale(LocalDate asOf, int cores, IProgress<PortfolioProgress>? progress = null, CancellationToken stop = default)
    {
        Forget(asOf);
        var plan = OfficeSettings.Of(journal).Plan;
        var rules = Rules(plan);
        var (jobs, assessed) = journal.CountAssessed(rules, asOf);
        var total = jobs - assessed;
        if (total <= 0)
            return 0;
        progress?.Report(new PortfolioProgress(0, total));
        long done = 0;

        // One thread reads, the others read the JSON and assess, this one writes: none waits for a batch to be through.
        foreach (var batch in journal.OfEach(new JobsToRead { NotYetAssessed = (rules, asOf) }, cores, (tip, job) =>
            Of(tip, job, asOf, plan)).Chunk(Batch))
        {
            stop.ThrowIfCancellationRequested();
            journal.WriteAssessed(batch);
            done += batch.Length;
            progress?.Report(new PortfolioProgress(done, Math.Max(done, total)));
        }

        return done;
    }

    /// <summary>Throws away everything that is derived from the journal, and makes it anew.</summary>
    /// <returns>How many jobs were assessed.</returns>
    public long RefreshAnew(LocalDate asOf, int cores, IProgress<PortfolioProgress>? progress = null)
    {
        journal.Renew();
        return RefreshStale(asOf, cores, progress);
    }

    // What is damaged is stale. Everything is looked through once a day; between, what was met while reading.
    private void Forget(LocalDate asOf)
    {
        var damaged = lookedThrough == asOf ? journal.DamagedMet : journal.FindDamaged();
        lookedThrough = asOf;
        if (damaged.Count == 0)
            return;
        journal.EraseAssessed(damaged);
        Interlocked.Add(ref mended, damaged.Count);
    }

    /// <summary>What is kept of a job's assessment.</summary>
    public static AssessedJob Of(JobTip tip, JobFile job, LocalDate asOf, PlanSettings plan)
    {
        var assessment = UseCases.Assess(job, asOf, plan);
        var hold = Security.Of(assessment);
        AssessedStep[] steps = [.. assessment.Next.Select(step => Step(assessment, step))];
        var lead = Array.Find(steps, step => !step.Watch);
        var right = assessment.Right;
        return new AssessedJob
        {
            Job = tip.Id,
            Sequence = tip.Sequence,
            Rules = Rules(plan),
            AsOf = asOf,
            ActBy = lead?.ActBy,
            AtStake = lead is null ? null : lead.AtStake,
            Standing = lead?.Standing ?? right.Standing,
            What = lead?.What ?? right.Id,
            Customer = job.Party(job.Claimant.HiredBy)?.Name,
            County = job.Work.Site.County,
            Person = job.Claimant.Signer?.Name,
            Owed = hold.Owed,
            Held = hold.HeldOn(asOf),
            MaySecure = hold.MaySecureOn(asOf),
            Steps = steps,
            Findings = InShort(assessment, hold),
        };
    }

    private static AssessedStep Step(Assessment assessment, Law.Plan.NextStep step)
    {
        var finding = assessment.Find(step.Finding);
        return new AssessedStep(step.Finding, step.Do, finding is null
            ? Remedies.Of(step.Finding) : Remedies.Of(finding), step.ActBy, step.Standing)
        {
            Watch = step.Watch,
            AtStake = step.AtStake,
            Owed = step.Stakes?.Owed,
            Stakes = step.Stakes?.Text(step.Finding),
            Left = step.Outlook?.Word,
            Outlook = step.Outlook?.Text,
            Reading = step.Reading is { } reading ? ListWords.Door.Of(reading.Words) : null,
            Section = finding?.Sections is [var first, ..] ? first : null,
        };
    }

    private static byte[] InShort(Assessment assessment, Security hold)
    {
        var buffer = new ArrayBufferWriter<byte>(2048);
        using var json = new Utf8JsonWriter(buffer);
        json.WriteStartObject();
        json.WriteStartArray("findings");
        foreach (var finding in assessment.Findings)
        {
            json.WriteStartObject();
            json.WriteString("id", finding.Id);
            json.WriteString("standing", finding.Standing.Word());
            if (finding.ActBy is { } actBy)
                json.WriteString("actBy", DayText.Write(actBy));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        hold.Write(json);
        json.WriteEndObject();
        json.Flush();
        return buffer.WrittenSpan.ToArray();
    }
}
