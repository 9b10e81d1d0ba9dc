using System.Globalization;
using Stringline.Law.Counting;
using Stringline.Law.Facts;

namespace Stringline.Law.Reasoning;

/// <summary>
/// How what stands in the holes of a sentence is said, the same on every machine. A door that has its own words for a field, an entry or a
/// day derives from this.
/// </summary>
/// <remarks>
/// A hole may say how: a day <c>:iso</c>, without its weekday; a text or a sentence <c>:capital</c>, as the beginning of a sentence; a
/// pointer <c>:aside</c>, <c>:see</c>, <c>:add</c> or <c>:enter</c>, in parentheses that a door may leave out. A pointer without any is a
/// word of the sentence.
/// </remarks>
public class Door
{
    /// <summary>Makes a door's own.</summary>
    protected Door()
    {
    }

    /// <summary>The words of the job file and of the command line.</summary>
    public static Door OfFile { get; } = new();

    /// <summary>A sentence, alone or within another.</summary>
    public string Of(Sentence sentence) => sentence.Say(Of, OfText);

    /// <summary>What stands in a hole that says how; null where it does not.</summary>
    public string Of(object value, string? format) => (value, format) switch
    {
        (LocalDate day, null) => OfDay(day, true),
        (LocalDate day, "iso") => OfDay(day, false),
        (DaySpan { IsExact: true } span, null) => OfDay(span.Earliest, true),
        (DaySpan span, null) => $"between {OfDay(span.Earliest, true)} and {OfDay(span.Latest, true)}",
        (IPointer pointer, null) => OfPointer(pointer),
        (IPointer pointer, { } how) => OfAside([pointer], how),
        (IReadOnlyList<IPointer> pointers, { } how) => OfAside(pointers, how),
        (decimal dollars, null) => OfText(LawText.Money(dollars)),
        (string text, "capital") => OfText(LawText.Capital(text)),
        (IFormattable other, _) => OfText(other.ToString(format, CultureInfo.InvariantCulture)),
        (_, null) => OfText(value.ToString() ?? ""),
        _ => throw new FormatException($"\"{format}\" says nothing of {value}."),
    };

    /// <summary>A day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="named">Whether the sentence has it with its weekday.</param>
    protected virtual string OfDay(LocalDate day, bool named) => named ? LawText.Day(day) : LawText.IsoDay(day);

    /// <summary>Words without a meaning of their own: what somebody entered, a name, an amount.</summary>
    protected virtual string OfText(string text) => text;

    /// <summary>A pointer that is a word of the sentence.</summary>
    protected virtual string OfPointer(IPointer aim) => aim.Name;

    /// <summary>Pointers beside the sentence, with the space before them; empty where this door leaves them out.</summary>
    /// <param name="pointers">What is pointed to; not empty.</param>
    /// <param name="how">What is to be done there: <c>aside</c> for nothing, else the word.</param>
    protected virtual string OfAside(IReadOnlyList<IPointer> pointers, string how) =>
        $" ({(how == "aside" ? "" : how + " ")}{string.Join(", ", pointers.Select(pointer => pointer.Name))})";
}
