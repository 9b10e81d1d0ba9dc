using Stringline.Law.Counting;
using Stringline.Law.Reasoning;

namespace Stringline.Office.Portfolio;

/// <summary>
/// The words of the desk's lists: as the command line has them, but each day with its weekday, since a list is read alone.
/// </summary>
internal sealed class ListWords : Door
{
    private ListWords()
    {
    }

    /// <summary>The one instance.</summary>
    public static Door Door { get; } = new ListWords();

    /// <inheritdoc/>
    protected override string OfDay(LocalDate day, bool named) => LawText.Day(day);
}
