using Stringline.Law.Facts;

namespace Stringline.Law.Reasoning;

/// <summary>A fact the file does not hold and an answer would need. Two are equal where they ask the same in the same words.</summary>
/// <param name="Sentence">The question, to be asked of a person; it points to where it is answered.</param>
/// <param name="Days">How many days the answer could move the band; null where it is not days.</param>
/// <param name="Dollars">How many dollars the answer could move; null where it is not dollars.</param>
public sealed record Question(Sentence Sentence, int? Days = null, decimal? Dollars = null)
{
    /// <summary>The question in the words of the job file.</summary>
    public string Text => Sentence.ToString();

    /// <summary>
    /// The entry that the answer would be added to, by a correction; null where it would be an entry of its own or is told in the head of
    /// the file.
    /// </summary>
    public Entry? Corrects { get; init; }

    /// <summary>Where it is answered: the fields and the kinds of entry to which it points, in the order of the sentence.</summary>
    public IEnumerable<IPointer> AnsweredBy => Sentence.Names.SelectMany(hole => hole switch
    {
        IPointer pointer => [pointer],
        IReadOnlyList<IPointer> pointers => pointers,
        _ => Array.Empty<IPointer>(),
    });

    /// <inheritdoc/>
    public bool Equals(Question? other) => other is not null && (Days, Dollars, Corrects) == (other.Days, other.Dollars, other.Corrects)
        && (ReferenceEquals(Sentence, other.Sentence) || Text == other.Text);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Text, Days, Dollars);

    /// <summary>What is asked, without the entry, whose place in the file is no part of it.</summary>
    public override string ToString() => $"{Text} {Days} {Dollars?.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
}
