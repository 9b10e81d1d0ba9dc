using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Stringline.Tables;
using Stringline.Law.Facts;

namespace Stringline.Office.Entering;

/// <summary>An entry as it would be written, or what is wrong with what was typed. Nothing is written here.</summary>
/// <param name="Job">The job file with the entry as its last; null where something is wrong.</param>
/// <param name="Faults">What is wrong.</param>
internal sealed record EntryDraft(JobFile? Job, Faults Faults)
{
    /// <summary>The entry.</summary>
    public Entry? Entry => Job?.Entries[^1];

    /// <summary>Reads what was typed, with every check that a job file has.</summary>
    /// <param name="before">The job file to which it is to be added.</param>
    /// <param name="form">The form of its kind.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="today">Today.</param>
    /// <param name="supersedes">The id of the entry that it replaces; null where it replaces none.</param>
    public static EntryDraft Of(JobFile before, EntryForm form, Typed typed, LocalDate today, string? supersedes)
    {
        var faults = new Faults();
        var json = new JsonObject { ["what"] = form.What };
        WhenTyped.Write(form.Day, typed, json, faults);
        foreach (var asked in form.Fields)
        {
            if (AnswerReading.Read(asked, typed, faults) is { } value)
                json[asked.Name] = value;
        }

        // Every entry gets a name of its own, so that it can be corrected later.
        json["id"] = NewId(before);
        if (supersedes is not null)
            json["supersedes"] = supersedes;
        if (AnswerReading.Read(Learned, typed, faults) is { } learned)
        {
            json[Learned.Name] = learned;
            if (DayText.Read(learned.GetValue<string>(), out var day) is null && day > today)
                faults.Add(Learned.Name, $"Not after today, {DayText.Write(today)}: what is not known yet cannot have been learned.");
        }

        return faults.None ? Checked(before, form, json, faults) : new EntryDraft(null, faults);
    }

    /// <summary>When the claimant learned it.</summary>
    public static Asked Learned { get; } = new("learned", "When you learned it", Answer.Day) { Hint = "nothing: on the day it happened" };

    private static EntryDraft Checked(JobFile before, EntryForm form, JsonObject json, Faults faults)
    {
        var place = before.Entries.Count;
        List<ReadOnlyMemory<byte>> entries = [.. before.Entries.Select(entry => (ReadOnlyMemory<byte>)JournalText.Entry(entry)),
            Encoding.UTF8.GetBytes(json.ToJsonString())];
        switch (JournalText.ReadAdded(before.Name, JournalText.Head(before), entries, newHead: false, known: place))
        {
            case JobFileResult.Read read:
                return new EntryDraft(read.Job, faults);
            case JobFileResult.Refused refused:
                foreach (var fault in refused.Faults)
                    faults.Add(FieldOf(fault.Path, place, form), $"It should be {FieldsInWords.Of(fault.Expected, form.Fields)}.");
                return new EntryDraft(null, faults);
            default:
                throw new InvalidOperationException("Neither read nor refused.");
        }
    }

    // entries[7].to[0] is the field "to"; what is said of the entry as a whole, or of its day, stands beside the day.
    private static string FieldOf(string path, int place, EntryForm form)
    {
        var own = string.Create(CultureInfo.InvariantCulture, $"entries[{place}]");
        if (!path.StartsWith(own, StringComparison.Ordinal))
            return "";
        var name = path[own.Length..].TrimStart('.').Split('[', '.')[0];
        if (form.Fields.Any(asked => asked.Name == name) || name == Learned.Name)
            return name;
        return name is "on" or "between" or "from" or "to" ? WhenTyped.Choice : "";
    }

    private static string NewId(JobFile job)
    {
        var taken = job.Entries.Select(entry => entry.Id).ToHashSet(StringComparer.Ordinal);
        for (var number = job.Entries.Count + 1; ; number++)
        {
            var id = string.Create(CultureInfo.InvariantCulture, $"e{number}");
            if (!taken.Contains(id))
                return id;
        }
    }
}
