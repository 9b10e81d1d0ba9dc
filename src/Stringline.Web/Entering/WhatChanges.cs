using Stringline.Web.Html;
using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Entering;

/// <summary>One thing that an entry changes.</summary>
/// <param name="What">The finding, or the demand.</param>
/// <param name="Finding">The finding's id; null for the amount.</param>
/// <param name="Aspect">What of it: standing, act by, days, dollars.</param>
/// <param name="Before">As it is.</param>
/// <param name="After">As it would be.</param>
/// <param name="Moves">By how much, in words; empty where that cannot be said in days or dollars.</param>
internal sealed record Changed(string What, string? Finding, string Aspect, Sentence Before, Sentence After, string Moves)
{
    /// <summary>Why it stands so then; null where the row says it all.</summary>
    public Sentence? Why { get; init; }
}

/// <summary>What an assessment says that another does not: before an entry and after it.</summary>
/// <param name="Rows">What changes, the amount first.</param>
/// <param name="PlanSteps">How many steps of the plan move with it; they follow from the last days and are not listed.</param>
internal sealed record WhatChanges(IReadOnlyList<Changed> Rows, int PlanSteps)
{
    private static readonly Sentence Nothing = $"none";

    /// <summary>Compares two assessments of the same job on the same day.</summary>
    public static WhatChanges Between(Assessment before, Assessment after)
    {
        var rows = new List<Changed>();
        Dollars(rows, "The demand", before.Amount.Demand, after.Amount.Demand);
        Dollars(rows, "Left out of a claim", before.Amount.LeftOut, after.Amount.LeftOut);
        Dollars(rows, "Of that, only because something is in doubt", before.Amount.InDoubt, after.Amount.InDoubt);
        var (older, newer) = (ById(before), ById(after));
        var steps = 0;
        foreach (var id in newer.Keys.Concat(older.Keys.Where(id => !newer.ContainsKey(id))))
        {
            var (was, now) = (older.GetValueOrDefault(id), newer.GetValueOrDefault(id));
            if (id.StartsWith("back-plan.", StringComparison.Ordinal))
                steps += was?.ActBy != now?.ActBy ? 1 : 0;
            else
                Compare(rows, was, now);
        }

        var (obstacles, left) = (before.ClaimObstacles, after.ClaimObstacles);
        rows.AddRange(left.ExceptBy(obstacles.Select(reason => reason.Text), reason => reason.Text)
            .Select(reason => new Changed("In the way of recording a claim", null, "what", Nothing, reason.Sentence, "")));
        rows.AddRange(obstacles.ExceptBy(left.Select(reason => reason.Text), reason => reason.Text)
            .Select(reason => new Changed("In the way of recording a claim", null, "what", reason.Sentence, $"out of the way", "")));
        return new WhatChanges(rows, steps);
    }

    // Several waivers can have findings of one id: the second is compared with the second.
    private static Dictionary<string, Finding> ById(Assessment assessment)
    {
        var found = new Dictionary<string, Finding>(StringComparer.Ordinal);
        foreach (var finding in assessment.Findings)
        {
            var key = finding.Id;
            for (var more = 2; !found.TryAdd(key, finding); more++)
                key = $"{finding.Id} {more}";
        }

        return found;
    }

    private static void Compare(List<Changed> rows, Finding? was, Finding? now)
    {
        var (title, id) = ((now ?? was)!.Title, (now ?? was)!.Id);
        if (was?.Standing != now?.Standing)
            rows.Add(new Changed(title, id, "standing", Word(was), Word(now), "") { Why = Reason(was, now) });
        Days("act by", Day(was?.ActBy), Day(now?.ActBy), was?.ActBy is { } a && now?.ActBy is { } b ? Later(a, b) : "");
        Days("days", was is null ? null : FindingWords.Band(was), now is null ? null : FindingWords.Band(now), "");
        if (was?.Amount != now?.Amount)
            rows.Add(new Changed(title, id, "dollars", Money(was?.Amount), Money(now?.Amount), was?.Amount is { } x && now?.Amount is { } y
                ? Difference(x, y) : ""));

        void Days(string aspect, Sentence? older, Sentence? newer, string moves)
        {
            if (older?.ToString() != newer?.ToString())
                rows.Add(new Changed(title, id, aspect, older ?? Nothing, newer ?? Nothing, moves));
        }
    }

    // The reason that was not there before; a right that is whole needs none.
    private static Sentence? Reason(Finding? was, Finding? now)
    {
        if (now is not { Standing: Standing.InDoubt or Standing.Lost or Standing.Narrowed, Why: { Count: > 0 } why })
            return null;
        var before = was?.Why.Select(reason => reason.Text).ToHashSet(StringComparer.Ordinal) ?? [];
        return (why.FirstOrDefault(reason => reason.Applied && !before.Contains(reason.Text)) ?? why[0]).Sentence;
    }

    private static void Dollars(List<Changed> rows, string what, decimal was, decimal now)
    {
        if (was != now)
            rows.Add(new Changed(what, null, "dollars", $"{was}", $"{now}", Difference(was, now)));
    }

    private static string Difference(decimal was, decimal now) => LawText.Money(Math.Abs(now - was)) + (now < was ? " less" : " more");

    private static string Later(LocalDate was, LocalDate now) => Period.DaysBetween(was, now) switch
    {
        < 0 and var days => JobWords.Count(-days, "day", "days") + " earlier",
        var days => JobWords.Count(days, "day", "days") + " later",
    };

    private static Sentence? Day(LocalDate? day) => day is { } known ? (Sentence)$"{known}" : null;

    private static Sentence Money(decimal? dollars) => dollars is { } known ? $"{known}" : Nothing;

    private static Sentence Word(Finding? finding) => finding is null ? Nothing : $"{finding.Standing.Word()}";
}
