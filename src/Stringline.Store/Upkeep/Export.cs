using System.Globalization;
using System.Text;
using Stringline.Tables;

namespace Stringline.Store.Upkeep;

/// <summary>Writes everything out as files that need no database: a job file for each job, every paper, and lists of both.</summary>
public static class Export
{
    // File names of 255 bytes are common to all file systems in use; the ending and the id of a shortened one need room.
    private const int LongestFileName = 200;

    /// <summary>
    /// Writes <c>jobs/KEY.json</c>, <c>papers/HASH.KIND</c>, <c>jobs.csv</c> (file, key, name, last change, its hash) and <c>papers.csv</c>
    /// (file, name, key of the job, entry). The folder appears when everything is in it.
    /// </summary>
    /// <param name="journal">The store.</param>
    /// <param name="folder">A folder that is not there yet.</param>
    /// <param name="progress">Told how far it is; may be null.</param>
    /// <exception cref="StoreException">
    /// The folder is there, or cannot be written, or the store is damaged. No such folder is then there.
    /// </exception>
    public static Exported To(IJournal journal, string folder, IProgress<StoreProgress>? progress = null)
    {
        var target = Path.GetFullPath(StoreAddress.ReadFile(folder, "the folder of the export"));
        if (Path.Exists(target))
            throw new StoreException(StoreFault.Exists, folder, "something that is there already", "the name of a new folder");

        try
        {
            using var parts = PartFolder.In(Path.GetDirectoryName(target)!);
            var part = parts.Of("export");
            var exported = Write(journal, part, progress);
            Directory.Move(part, target);
            return exported;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(StoreFault.NotAllowed, folder, e.Message, "a place with room that this user may write to", e);
        }
    }

    private static Exported Write(IJournal journal, string folder, IProgress<StoreProgress>? progress)
    {
        OwnerOnly.Folder(Path.Combine(folder, "jobs"));
        OwnerOnly.Folder(Path.Combine(folder, "papers"));
        using var jobs = new StreamWriter(OwnerOnly.File(Path.Combine(folder, "jobs.csv"), FileMode.Create), new UTF8Encoding(false));
        using var papers = new StreamWriter(OwnerOnly.File(Path.Combine(folder, "papers.csv"), FileMode.Create), new UTF8Encoding(false));
        jobs.Write(CsvLine.Of("file", "key", "name", "change", "hash"));
        papers.Write(CsvLine.Of("file", "name", "job", "entry"));
        var total = journal.Tips().LongCount();
        var written = 0L;
        var kept = new HashSet<ContentHash>();
        foreach (var job in journal.ReadAll(JobsToRead.All))
        {
            var file = "jobs/" + FileName(job.Tip) + ".json";
            OwnerOnly.Write(Path.Combine(folder, file), JobFileWriter.Write(job.Job));
            jobs.Write(CsvLine.Of(
                file, job.Tip.Key, job.Tip.Name, job.Tip.Sequence.ToString(CultureInfo.InvariantCulture), job.Tip.Hash.ToString()));
            for (var i = 0; job.Rows.Any(row => row.Proofs.Count > 0) && i < job.Job.Entries.Count; i++)
            {
                foreach (var link in job.ProofsOf(i))
                {
                    var paper = journal.ReadProof(link)
                        ?? throw new StoreException(
                            StoreFault.Damaged, journal.Name, $"a paper that is missing ({link.Name}, {link.Hash})",
                            "a store that `stringline store check` finds whole");
                    var place = $"papers/{paper.Hash}.{paper.Kind.Word()}";
                    if (kept.Add(paper.Hash))
                        OwnerOnly.Write(Path.Combine(folder, place), paper.Content.Span);
                    papers.Write(CsvLine.Of(place, link.Name, job.Tip.Key, string.Create(CultureInfo.InvariantCulture, $"entries[{i}]")));
                }
            }

            if (++written % 500 == 0)
                progress?.Report(new StoreProgress("jobs exported", written, total));
        }

        return new Exported(written, kept.Count);
    }

    /// <summary>
    /// The key, with a sign that some file system does not take as % and its code; one that is too long is cut, and the id added.
    /// </summary>
    private static string FileName(JobTip tip)
    {
        var name = Uri.EscapeDataString(tip.Key);
        return name.Length <= LongestFileName ? name
            : string.Create(CultureInfo.InvariantCulture, $"{name[..LongestFileName].TrimEnd('%')}~{tip.Id}");
    }
}

/// <summary>What was written.</summary>
/// <param name="Jobs">Job files.</param>
/// <param name="Papers">Attached papers.</param>
public sealed record Exported(long Jobs, long Papers);
