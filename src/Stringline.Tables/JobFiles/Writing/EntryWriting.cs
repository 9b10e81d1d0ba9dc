using System.Text.Json;
using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Writing;

/// <summary>Writes one entry: <c>what</c>, the day, and the fields that its kind has by its description.</summary>
internal static class EntryWriting
{
    public static void Write(Utf8JsonWriter json, Entry entry)
    {
        var kind = EntryKinds.Of(entry);
        json.WriteString("what", kind.Name);
        if (kind.Fields is [Field.LastDay last, ..] && last.Get(entry) is var until && until != entry.On)
            Span(json, entry, until);
        else
            When(json, entry.On);
        for (var i = 0; i < kind.Fields.Count; i++)
            Write(json, kind.Fields[i], entry);
        json.Text("id", entry.Id);
        json.Text("supersedes", entry.Supersedes);
        json.Day("learned", entry.Learned);
    }

    private static void When(Utf8JsonWriter json, DayFact when)
    {
        switch (when)
        {
            case DayFact.Exact exact:
                json.Day("on", exact.Day);
                break;
            case DayFact.Between between:
                json.Texts("between", [DayText.Write(between.First), DayText.Write(between.Last)]);
                break;
            default:
                json.WriteNull("on");
                break;
        }
    }

    private static void Span(Utf8JsonWriter json, Entry entry, DayFact until)
    {
        if (entry.On is not DayFact.Exact from || until is not DayFact.Exact to || to.Day < from.Day)
            throw new ArgumentException($"{entry.Path} is a span without two known days in order.");
        json.Day("from", from.Day);
        json.Day("to", to.Day);
    }

    private static void Write(Utf8JsonWriter json, Field field, Entry entry)
    {
        switch (field)
        {
            case Field.Text text:
                json.Text(text.Name, text.Get(entry));
                break;
            case Field.Money money:
                json.Money(money.Name, money.Get(entry));
                break;
            case Field.Day day:
                json.Day(day.Name, day.Get(entry));
                break;
            case Field.Word word:
                json.Text(word.Name, word.Get(entry) is { } place ? word.Table.Words[place] : null);
                break;
            case Field.Parties { Required: true } parties:
                json.Texts(parties.Name, parties.Get(entry));
                break;
            case Field.Parties parties:
                json.SomeTexts(parties.Name, parties.Get(entry));
                break;
            case Field.YesNo yesNo:
                json.Truth(yesNo.Name, yesNo.Get(entry));
                break;
            case Field.Tick { AlwaysWritten: true } tick:
                json.WriteBoolean(tick.Name, tick.Get(entry));
                break;
            case Field.Tick tick:
                json.Flag(tick.Name, tick.Get(entry));
                break;
            case Field.Count count:
                json.Count(count.Name, count.Get(entry));
                break;
            case Field.Words words:
                json.SomeTexts(words.Name, [.. words.Get(entry).Select(place => words.Table.Words[place])]);
                break;
            case Field.Days days:
                if (days.Get(entry) is { } listed)
                    json.Texts(days.Name, listed.Select(DayText.Write));
                break;
            case Field.LastDay:
                break;
            default:
                throw new InvalidOperationException($"No such field: {field.GetType().Name}.");
        }
    }
}
