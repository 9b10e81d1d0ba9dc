using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Completion;

/// <summary>
/// The searches of the county index. A notice may be recorded in any county in which a part of the work is (Civ. Code § 8060(b)), so of a
/// site in several counties each index is searched, and the one searched least lately counts.
/// </summary>
internal static class IndexSearches
{
    /// <summary>Whether every county's index was searched after a day.</summary>
    public static bool AllAfter(FactsAsOf facts, LocalDate day) => LeastLate(facts) is { On.Earliest: { } searched } && searched > day;

    /// <summary>
    /// The last search of the county whose index was searched least lately; null where one was not searched at all, as far as the file
    /// says.
    /// </summary>
    [Rule("Civ. Code § 8060", Sure = Sure.OurReading)]
    public static IndexSearched? LeastLate(FactsAsOf facts)
    {
        var site = facts.Job.Work.Site;
        if (Last(facts, site.County) is not { } least)
            return null;
        foreach (var county in site.AlsoIn)
        {
            if (Last(facts, county) is not { } last)
                return null;
            if (last.On.Earliest < least.On.Earliest)
                least = last;
        }

        return least;
    }

    /// <summary>
    /// The counties whose index was not searched at all, as far as the file says; empty where the site lies in one county.
    /// </summary>
    public static IEnumerable<string> NotSearched(FactsAsOf facts)
    {
        var site = facts.Job.Work.Site;
        return site.AlsoIn.Count == 0
            ? [] : ((IEnumerable<string>)[site.County, .. site.AlsoIn]).Where(county => Last(facts, county) is null);
    }

    /// <summary>Asks which county a search was of, where the site lies in several, and on which day one was made.</summary>
    public static IReadOnlyList<Question> Ask(FactsAsOf facts)
    {
        List<Question>? questions = null;
        foreach (var search in facts.All<IndexSearched>())
        {
            if (search.County is null && facts.Job.Work.Site.AlsoIn.Count > 0)
                (questions ??= [])
                    .Add(new Question($"Of which county was the index searched? The site lies in several, and each has its "
                        + $"own.{CompletionKinds.IndexSearched.At("county"):aside}") { Corrects = search });
            if (search.On.Earliest is null)
                (questions ??= [])
                    .Add(new Question($"On which day was the county index searched?{CompletionKinds.IndexSearched.At("on"):aside}") {
                        Corrects = search });
        }

        return questions ?? (IReadOnlyList<Question>)[];
    }

    private static IndexSearched? Last(FactsAsOf facts, string county)
    {
        IndexSearched? last = null;
        foreach (var search in facts.All<IndexSearched>())
        {
            var isOf = search.County is { } named ? named == county : facts.Job.Work.Site.AlsoIn.Count == 0;
            if (isOf && search.On.Earliest is not null && (last is null || search.On.Earliest > last.On.Earliest))
                last = search;
        }

        return last;
    }
}
