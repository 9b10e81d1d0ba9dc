namespace Stringline.Law.Counting;

/// <summary>A day known only to lie between two days, both included; equal ends where it is known exactly.</summary>
/// <param name="Earliest">The first day it can be.</param>
/// <param name="Latest">The last day it can be; never before <paramref name="Earliest"/>.</param>
public readonly record struct DaySpan(LocalDate Earliest, LocalDate Latest)
{
    /// <summary>Whether both ends are the same day.</summary>
    public bool IsExact => Earliest == Latest;

    /// <summary>The span moved by a number of days.</summary>
    public DaySpan Plus(int days) => new(Earliest.PlusDays(days), Latest.PlusDays(days));

    /// <summary>The later of two days in doubt: each end is the later of the two ends.</summary>
    public static DaySpan Later(DaySpan a, DaySpan b) =>
        new(LocalDate.Max(a.Earliest, b.Earliest), LocalDate.Max(a.Latest, b.Latest));

    /// <summary>The day in words: one day, or both ends.</summary>
    public override string ToString() =>
        IsExact ? LawText.Day(Earliest) : $"between {LawText.Day(Earliest)} and {LawText.Day(Latest)}";
}
