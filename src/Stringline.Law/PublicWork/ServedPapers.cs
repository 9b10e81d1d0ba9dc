using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;

namespace Stringline.Law.PublicWork;

/// <summary>When a paper served as Civ. Code §§ 8100-8118 provide is complete, where the file may not say how it was served.</summary>
internal static class ServedPapers
{
    /// <summary>The day; where the manner is not told, that of every manner but leaving and mailing.</summary>
    public static DaySpan CompleteOn(FactsAsOf facts, DaySpan done, Manner? manner) =>
        manner is { } told ? Giving.CompleteOn(facts.Numbers, done, told) : done;
}
