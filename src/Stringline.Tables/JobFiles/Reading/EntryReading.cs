using System.Globalization;
using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Reads one entry: first its <c>what</c>, then its day, then the fields that its kind has by its description.</summary>
internal sealed class EntryReading
{
    private static readonly string OneOfTheKinds = $"one of {string.Join(", ", EntryKinds.All.Select(kind => kind.Name))}";

    private readonly Source source;

    private readonly FieldReading reading;

    private int ownersNotices;

    public EntryReading(Source source)
    {
        this.source = source;
        reading = new FieldReading(source);
    }

    /// <summary>The entry; null with a fault where its kind is not known, in which case nothing else can be said of it.</summary>
    public Entry? Entry(Fields fields, int index)
    {
        var what = fields.RequiredLine("what", OneOfTheKinds);
        if (what.Length == 0)
            return null;
        if (EntryKinds.Find(what) is not { } kind)
        {
            fields.Fault("what", fields.Raw("what")!,
                () => OneOfTheKinds + TradeWords.Clause("what", what, EntryKinds.All.Select(known => known.Name)));
            return null;
        }

        NotTooMany(fields, kind);
        var (on, last) = kind.Day == DayRule.Span ? Span(fields) : (When(fields, kind.Day), null);
        var entry = reading.Read(fields, kind, kind.Blank(index, on), last);
        if (kind.TakesBack && !fields.Has("supersedes"))
            fields.Fault("an entry that takes nothing back", "`supersedes` with the id of the entry that was made by mistake");
        if (kind.OnlyOn is { } needed && source.Work is { } work && work != needed)
            fields.Fault("what", fields.Raw("what")!, EntryChecks.OnlyOn(needed, work));
        return InJournal(entry, fields);
    }

    /// <summary>What every entry may say of its place in the journal: its name, what it replaces, when it was learned.</summary>
    private Entry InJournal(Entry entry, Fields fields)
    {
        var id = fields.Mentioned("id", source.EntryIds);
        var supersedes = fields.Mentioned("supersedes", source.Superseded);
        var key = id ?? entry.Path;
        if (supersedes is not null)
            source.Replacements[key] = supersedes;
        if (id is not null)
            source.Kinds.TryAdd(id, fields.Raw("what")!.Text!);
        reading.SayOf(key);
        var learned = fields.Day("learned");
        fields.Finish();
        return id is null && supersedes is null && learned is null
            ? entry
            : entry with { Id = id, Supersedes = supersedes, Learned = learned };
    }

    private void NotTooMany(Fields fields, EntryKind kind)
    {
        if (kind != EntryKinds.OwnerRecorded || ++ownersNotices <= JobFileReader.MostOwnersNotices)
            return;
        var what = fields.Raw("what")!;
        if (source.IsNew(what))
        {
            fields.Fault("what", what, string.Create(CultureInfo.InvariantCulture,
                $"at most {JobFileReader.MostOwnersNotices} entries of this kind: "
                + $"each is set against every day on which the work may have been complete"));
        }
    }

    /// <summary>
    /// The day: <c>on</c> (null: it happened, nobody knows when) or <c>between</c>, one of them.
    /// Work and money need a day, at least one in doubt: without it neither reach nor order of payment can be told.
    /// </summary>
    private static DayFact When(Fields fields, DayRule rule)
    {
        var mayBeUnknown = rule == DayRule.Any;
        var on = fields.Raw("on");
        var between = fields.Raw("between") is not null;
        if (on is not null && between)
            fields.Fault("`on` and `between`", "one of them");
        else if (between)
            return fields.Between("between") ?? new DayFact.Unknown();
        else if (on is null)
            fields.Fault("no day", "`on` with a day" + (mayBeUnknown ? ", `on` with null where nobody knows the day," : "")
                + " or `between` with two days");
        else if (on.Kind == JsonKind.Null && !mayBeUnknown)
            fields.Fault("on", on, "a day, or `between` with two days: work and money need one");
        else if (fields.Day("on") is { } day)
            return DayFact.On(day);
        return new DayFact.Unknown();
    }

    private static (DayFact First, DayFact? Last) Span(Fields fields)
    {
        // Asked for in this order so that the list of known fields reads well.
        var hasDay = (fields.Raw("on") is not null) | (fields.Raw("between") is not null);
        var hasSpan = (fields.Raw("from") is not null) | (fields.Raw("to") is not null);
        if (!hasSpan)
        {
            if (hasDay)
                return (When(fields, DayRule.Span), null);
            fields.Fault("no day", "`on` with a day, `between` with two days, or `from` and `to` with a day each");
            return (new DayFact.Unknown(), null);
        }

        if (hasDay)
            fields.Fault("a day beside `from` and `to`", "either a day or a span");
        var from = fields.RequiredDay("from");
        var to = fields.RequiredDay("to");
        if (from != default && to != default && to < from)
            fields.Fault("to", fields.Raw("to")!, $"a day not before {DayText.Write(from)}, on which the span begins");
        return (DayFact.On(from), DayFact.On(to));
    }
}
