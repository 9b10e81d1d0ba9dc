using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Reads the fields that a kind of entry has by its description, and checks them by it. One for all entries of a file.</summary>
internal sealed class FieldReading(Source source) : IEntryFaults
{
    // What the entry being read says of other entries and gives as its reference; which entry says it is known once its id is read.
    private readonly List<EntryMention> mentions = [];
    private readonly List<RefMention> references = [];

    private readonly List<string> read = [];

    private Fields fields = null!;

    /// <inheritdoc/>
    public WorkKind? Work => source.Work;

    /// <summary>The entry with what the file says; a field that is absent or faulty leaves it as it is.</summary>
    /// <param name="from">Where it is read.</param>
    /// <param name="kind">The description of its kind.</param>
    /// <param name="blank">The entry with its day and nothing else.</param>
    /// <param name="last">The last day of a span of work; null where it is one day.</param>
    public Entry Read(Fields from, EntryKind kind, Entry blank, DayFact? last)
    {
        fields = from;
        read.Clear();
        var entry = blank;
        for (var i = 0; i < kind.Fields.Count; i++)
        {
            var before = entry;
            entry = Read(kind.Fields[i], entry, last);
            if (kind.Check is not null && !ReferenceEquals(before, entry))
                read.Add(kind.Fields[i].Name);
        }

        kind.Check?.Invoke(entry, this);
        return entry;
    }

    /// <summary>Notes by which entry the others were named, once that is known.</summary>
    /// <param name="entry">Its id; where it has none, its path.</param>
    public void SayOf(string entry)
    {
        foreach (var reference in references)
            source.Refs.Add(reference with { Entry = entry });
        foreach (var mention in mentions)
            source.Entries.Add(mention with { Entry = entry });
        references.Clear();
        mentions.Clear();
    }

    /// <inheritdoc/>
    public bool HasRead(string field) => read.Contains(field);

    /// <inheritdoc/>
    public void Require(string field, string expected) => fields.Required(field, expected);

    /// <inheritdoc/>
    public void Refuse(string field, string expected) => fields.Fault(field, fields.Raw(field)!, expected);

    private Entry Read(Field field, Entry entry, DayFact? last)
    {
        switch (field)
        {
            case Field.Text text:
                return Text(text) is { } said ? text.With(entry, said) : entry;
            case Field.Money money:
                var dollars = money.Required ? fields.RequiredMoney(money.Name, money.Range) : fields.Money(money.Name, money.Range);
                return dollars is { } sum ? money.With(entry, sum) : entry;
            case Field.Day day:
                var known = day.Required ? fields.RequiredDay(day.Name) : fields.Day(day.Name);
                return known is { } one ? day.With(entry, one) : entry;
            case Field.Word word:
                return Place(word) is { } place ? word.With(entry, place) : entry;
            case Field.Parties parties:
                var ids = parties.Required ? fields.RequiredPartyIds(parties.Name) : fields.PartyIds(parties.Name);
                return ids.Count > 0 ? parties.With(entry, ids) : entry;
            case Field.YesNo yesNo:
                var truth = yesNo.Required ? fields.RequiredTruth(yesNo.Name) : fields.Truth(yesNo.Name);
                return truth is { } isSo ? yesNo.With(entry, isSo) : entry;
            case Field.Tick tick:
                return fields.Flag(tick.Name) ? tick.With(entry, true) : entry;
            case Field.Count count:
                return fields.Count(count.Name, count.Least) is { } number ? count.With(entry, number) : entry;
            case Field.Words words:
                return fields.Words(words.Name, words.Table) is { Count: > 0 } places ? words.With(entry, places) : entry;
            case Field.Days days:
                return fields.DayList(days.Name) is { } listed ? days.With(entry, listed) : entry;
            case Field.LastDay end:
                return last is null ? entry : end.With(entry, last);
            default:
                throw new InvalidOperationException($"No such field: {field.GetType().Name}.");
        }
    }

    private string? Text(Field.Text field)
    {
        switch (field.Holds)
        {
            case TextHolds.Line:
                return fields.Line(field.Name);
            case TextHolds.Lines:
                return fields.Lines(field.Name);
            case TextHolds.County:
                return CountyNames.Optional(fields);
            case TextHolds.Party:
                return field is { Among: { } only, TakesAnyParty: false } ? fields.PartyId(field.Name, only) : fields.PartyId(field.Name);
            case TextHolds.Reference:
                return fields.Mentioned(field.Name, source.Towards);
            case TextHolds.Structure:
                return fields.Mentioned(field.Name, source.Structures);
            case TextHolds.OwnReference:
                var reference = fields.Line(field.Name);
                if (reference is not null)
                    references.Add(new RefMention(reference, fields.Raw(field.Name)!, fields.PathOf(field.Name), ""));
                return reference;
            case TextHolds.Entry:
                var id = fields.Line(field.Name);
                if (id is not null)
                    mentions.Add(new EntryMention(id, fields.Raw(field.Name)!, fields.PathOf(field.Name), field.Of, ""));
                return id;
            default:
                throw new InvalidOperationException($"No such text: {field.Holds}.");
        }
    }

    private int? Place(Field.Word word)
    {
        if (word.TakesNumbers && fields.Raw(word.Name) is { Kind: JsonKind.Number } number && word.Table.IndexOf(number.Text) is { } place)
            return place;
        if (!word.Required || fields.Has(word.Name))
            return fields.Word(word.Name, word.Table);
        fields.RequiredWord(word.Name, word.Table);
        return null;
    }
}
