using Stringline.Law.Facts;

namespace Stringline.Office.Entering;

/// <summary>The entries of one form as they would be written: one, or one for each article number. Nothing is written here.</summary>
/// <param name="Job">The job file with them as its last; null where something is wrong.</param>
/// <param name="Entries">The entries.</param>
/// <param name="Faults">What is wrong.</param>
internal sealed record EntryDrafts(JobFile? Job, IReadOnlyList<Entry> Entries, Faults Faults)
{
    /// <inheritdoc cref="EntryDraft.Of"/>
    public static EntryDrafts Of(JobFile before, EntryForm form, Typed typed, LocalDate today, string? supersedes)
    {
        var faults = new Faults();
        var parts = ArticleNumbers.Split(form, typed, before, faults);
        var job = before;
        var entries = new List<Entry>();
        foreach (var part in parts)
        {
            var draft = EntryDraft.Of(job, form, part, today, entries.Count == 0 ? supersedes : null);
            faults.AddAll(draft.Faults);
            if (draft.Job is null)
                return new EntryDrafts(null, [], faults);
            job = draft.Job;
            entries.Add(draft.Entry!);
        }

        return faults.None ? new EntryDrafts(job, entries, faults) : new EntryDrafts(null, [], faults);
    }
}
