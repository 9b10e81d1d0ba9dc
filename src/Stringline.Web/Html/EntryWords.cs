using Stringline.Law.Counting;
using Stringline.Law.Facts;

namespace Stringline.Web.Html;

/// <summary>Entries of the journal in words for a person, as the descriptions of their kinds have them.</summary>
internal static class EntryWords
{
    /// <summary>What it is, in two to four words: <c>Notice given</c>.</summary>
    public static string Kind(Entry entry)
    {
        var kind = EntryKinds.Of(entry);
        return kind.WordsOf?.Invoke(entry) ?? kind.Words;
    }

    /// <summary>What it says beside its kind and day; empty where there is nothing more.</summary>
    public static string Particulars(Entry entry, JobFile job)
    {
        var kind = EntryKinds.Of(entry);
        var told = kind.ToldOrder.Select(field => Told(field, entry, job)).Prepend(kind.TakesBack ? "entry " + entry.Supersedes : null);
        return string.Join("; ", told.Where(part => !string.IsNullOrWhiteSpace(part)));
    }

    /// <summary>Dollars and cents that it names; null where it names none. Money taken from what is owed is not marked negative.</summary>
    public static decimal? Dollars(Entry entry)
    {
        foreach (var field in EntryKinds.Of(entry).Fields)
        {
            if (field is Field.Money { IsSum: true } sum)
                return sum.Get(entry);
        }

        return null;
    }

    /// <summary>When it happened: a day, a span of work, a span of doubt, or that nobody knows.</summary>
    public static string When(Entry entry) => entry switch
    {
        Furnished { On.Earliest: { } first, Until.Latest: { } last } when first != last => $"{LawText.Day(first)} to {LawText.Day(last)}",
        _ => DaySpan.Of(entry.On) is { } days ? days.ToString() : "day not known",
    };

    /// <summary>In one line for a link: kind and day.</summary>
    public static string Short(Entry entry) => $"{Kind(entry)}, {When(entry)}";

    private static string? Told(Field field, Entry entry, JobFile job) => field switch
    {
        Field.YesNo yesNo => yesNo.Get(entry) switch { true => yesNo.SaidOfYes, false => yesNo.SaidOfNo, null => null },
        Field.Tick tick => tick.Get(entry) ? tick.Said : null,
        { Said: "" } or Field.LastDay => null,
        Field.Day day => day.Get(entry) is { } known ? Said(day, LawText.Day(known)) : day.SaidWithoutIt,
        Field.Money money => money.Get(entry) is { } dollars and > 0 ? Said(money, LawText.Money(dollars)) : null,
        Field.Word word => word.Get(entry) is { } place ? Said(word, word.SaidWords[place]) : null,
        Field.Words words => SaidList(words, words.Get(entry).Select(place => words.SaidWords[place])),
        Field.Parties parties => SaidList(parties, parties.Get(entry).Select(id => job.Party(id)?.Name ?? id)),
        Field.Text text => text.Get(entry) is { } told ? Said(text, InWords(text.Holds, told, job)) : null,
        _ => throw new InvalidOperationException($"No words for {field.GetType().Name}."),
    };

    private static string InWords(TextHolds holds, string text, JobFile job) => holds switch
    {
        TextHolds.Party => job.Party(text)?.Name ?? text,
        TextHolds.Structure => job.Work.Structures.FirstOrDefault(structure => structure.Id == text)?.Text ?? text,
        TextHolds.Entry => job.Entries.FirstOrDefault(earlier => earlier.Id == text) is { } found ? Short(found) : text,
        _ => text,
    };

    private static string? SaidList(Field field, IEnumerable<string> values) =>
        string.Join(", ", values) is { Length: > 0 } list ? Said(field, list) : null;

    private static string Said(Field field, string value) => field.Said.Replace("{0}", value, StringComparison.Ordinal);
}
