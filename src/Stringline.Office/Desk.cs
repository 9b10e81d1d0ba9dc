using Stringline.Office.Portfolio;
using Stringline.Office.Settings;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Store;

namespace Stringline.Office;

/// <summary>A job as a page shows it.</summary>
/// <param name="Stored">The job with its whole journal.</param>
/// <param name="Facts">The job file as known on <paramref name="AsOf"/>.</param>
/// <param name="Assessment">What the law makes of it.</param>
/// <param name="AsOf">The day on which the question is asked.</param>
internal sealed record OpenJob(StoredJob Stored, JobFile Facts, Assessment Assessment, LocalDate AsOf)
{
    /// <summary>The job's id.</summary>
    public long Id => Stored.Tip.Id;

    /// <summary>Who hired the claimant, or null.</summary>
    public string? Customer => Facts.Party(Facts.Claimant.HiredBy)?.Name;
}

/// <summary>
/// What is done with jobs: open one, write to one. After each writing the job is assessed anew, so the list is never behind it.
/// </summary>
internal sealed class Desk(IJournal journal, Portfolio.Portfolio portfolio, PortfolioRefresh refresh, DeskDay day, DeskOptions options)
{
    /// <summary>The journal.</summary>
    public IJournal Journal => journal;

    /// <summary>The day on which the desk answers.</summary>
    public LocalDate Today => day.Today;

    /// <summary>Under whose name entries are written.</summary>
    public string Who => options.Who;

    /// <summary>What the office has set.</summary>
    public OfficeSettings Settings => OfficeSettings.Of(journal);

    /// <summary>Changes what the office has set, over whatever others set in the meantime.</summary>
    public void ChangeSettings(Func<OfficeSettings, OfficeSettings> change)
    {
        string? seen;
        do
            seen = journal.ReadSettings();
        while (!WriteSettings(seen, change(OfficeSettings.Of(seen)).Document()));
    }

    /// <summary>How many jobs had to be assessed anew since the desk was opened, because what was kept of them was damaged.</summary>
    public long Mended => portfolio.Mended;

    /// <summary>Assesses anew the jobs of which something damaged was met while reading; false where there was none.</summary>
    public bool Mend()
    {
        if (journal.DamagedMet.Count == 0)
            return false;
        portfolio.RefreshStale(day.Today, Environment.ProcessorCount);
        return true;
    }

    /// <summary>Keeps what the office sets, where nothing else was written since <paramref name="seen"/>.</summary>
    public bool WriteSettings(string? seen, string document)
    {
        var kept = journal.WriteSettings(seen, document);
        if (kept)
            Wrote?.Invoke();
        return kept;
    }

    /// <summary>Told each time something was written, before anything else is done with it.</summary>
    public event Action? Wrote;

    /// <summary>Opens a job; null where there is none.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="known">The day as known on which it is shown; null for today.</param>
    public OpenJob? Open(long id, LocalDate? known = null)
    {
        if (journal.Read(id) is not { } stored)
            return null;
        var asOf = known ?? day.Today;
        var facts = known is null ? stored.Job : stored.KnownOn(asOf);
        return new OpenJob(stored, facts, Assess(facts, asOf), asOf);
    }

    /// <summary>What the law makes of facts that are not written yet, by the office's own settings of plans.</summary>
    public Assessment Assess(JobFile facts, LocalDate asOf) => UseCases.Assess(facts, asOf, Settings.Plan);

    /// <summary>Appends changes to a job, and assesses it.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="expected">The number of the last change the writer has seen.</param>
    /// <param name="changes">The changes.</param>
    public AppendOutcome Append(long id, long expected, params IReadOnlyList<JobChange> changes)
    {
        var outcome = journal.Append(id, expected, changes, options.Who);
        if (outcome is AppendOutcome.Appended)
            Written(id);
        return outcome;
    }

    /// <summary>Adds a job under a number that no job has, and assesses it.</summary>
    public PutOutcome Add(KeyedJob job)
    {
        var outcome = journal.Add(job, options.Who);
        if (outcome is PutOutcome.Added { Job: var added })
            Written(added);
        return outcome;
    }

    // What fails here does not undo what is written: the page goes on, and every page says that the list is behind.
    private void Written(long job)
    {
        Wrote?.Invoke();
        try
        {
            portfolio.Refresh(job, day.Today);
        }
        catch (Exception e)
        {
            refresh.FellBehind(e);
        }
    }
}
