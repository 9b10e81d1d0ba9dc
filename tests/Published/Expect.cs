namespace Stringline.Published;

/// <summary>Something an assessment must say; null where it does, else what it says instead.</summary>
public delegate string? Expectation(Assessment answer);

/// <summary>The words in which the cases say what they expect. Days are statutory last days, trigger day left out, not rolled.</summary>
public static class Expect
{
    /// <summary>The finding's open readings fall on these days and on no other.</summary>
    public static Expectation Days(string id, params string[] days) => answer =>
    {
        var found = Found(answer, id).Readings.Select(r => LawText.IsoDay(r.Day)).Distinct().Order(StringComparer.Ordinal).ToArray();
        return found.SequenceEqual(days) ? null : $"{id}: expected [{string.Join(", ", days)}], is [{string.Join(", ", found)}].";
    };

    /// <summary>The band's ends; null for a latest end that is not known.</summary>
    public static Expectation Band(string id, string earliest, string? latest) => answer =>
    {
        var band = Found(answer, id).Band;
        var found = (band is null ? null : LawText.IsoDay(band.Earliest.Day), band?.Latest is { } end ? LawText.IsoDay(end.Day) : null);
        return found == (earliest, latest)
            ? null : $"{id}: expected from {earliest} to {latest ?? "no known end"}, is from {found.Item1} to {found.Item2
                ?? "no known end"}.";
    };

    /// <summary>The day to plan on.</summary>
    public static Expectation PlannedOn(string id, string day) => answer =>
    {
        var found = Found(answer, id).ActBy is { } actBy ? LawText.IsoDay(actBy) : "no day";
        return found == day ? null : $"{id}: expected to act by {day}, is {found}.";
    };

    /// <summary>Where the right or duty is.</summary>
    public static Expectation Is(string id, Standing standing) => answer =>
        Found(answer, id).Standing is var found && found == standing ? null : $"{id}: expected «{standing.Word()}», is «{found.Word()}».";

    /// <summary>The right or duty is anywhere but there.</summary>
    public static Expectation IsNot(string id, Standing standing) => answer =>
        Found(answer, id).Standing != standing ? null : $"{id}: is «{standing.Word()}».";

    /// <summary>The claim in the file was recorded in time.</summary>
    public static Expectation RecordedInTime => Is("claim-of-lien.last-day", Standing.Kept);

    /// <summary>The claim in the file was recorded too late on every reading.</summary>
    public static Expectation RecordedTooLate => Is("claim-of-lien.last-day", Standing.Lost);

    /// <summary>Whether the claim was recorded in time depends on the reading.</summary>
    public static Expectation RecordedInTimeIsInDoubt => Is("claim-of-lien.last-day", Standing.InDoubt);

    /// <summary>The statutory last days to record a claim of lien, over all open readings.</summary>
    public static Expectation LastDayToRecord(params string[] days) => Days("claim-of-lien.last-day", days);

    /// <summary>The first days on which a claim of lien may be recorded, over all open readings.</summary>
    public static Expectation FirstDayToRecord(params string[] days) => Days("claim-of-lien.first-day", days);

    /// <summary>The statutory last days to bring the action, over all open readings.</summary>
    public static Expectation LastDayToSue(params string[] days) => Days("enforcement.last-day", days);

    /// <summary>The days of completion, over all open readings.</summary>
    public static Expectation CompletedOn(params string[] days) => Days("completion.day", days);

    /// <summary>The action was brought in time.</summary>
    public static Expectation SuedInTime => Is("enforcement.last-day", Standing.Kept);

    /// <summary>Some reason of the finding, at any depth, rests on the section and applied.</summary>
    public static Expectation Because(string id, string section) => answer =>
        Reasons(Found(answer, id).Why).Any(r => r.Applied && r.Section == section)
        ? null : $"{id}: no reason that applied rests on {section}.";

    /// <summary>Some reason of the finding, at any depth, is a road not taken under the section.</summary>
    public static Expectation RuledOut(string id, string section) => answer =>
        Reasons(Found(answer, id).Why).Any(r => !r.Applied && r.Section == section)
        ? null : $"{id}: nothing was ruled out under {section}.";

    /// <summary>Some reason of the finding, at any depth, names the case or says the words.</summary>
    public static Expectation Says(string id, string words) => answer =>
        Reasons(Found(answer, id).Why).Any(r => r.Text.Contains(words, StringComparison.Ordinal))
        ? null : $"{id}: no reason says «{words}».";

    /// <summary>The finding asks for a fact in these words.</summary>
    public static Expectation Asks(string id, string words) => answer =>
        Found(answer, id).Questions.Any(q => q.Text.Contains(words, StringComparison.Ordinal))
        ? null : $"{id}: no question says «{words}».";

    /// <summary>The demand of a claim of lien.</summary>
    public static Expectation Demand(decimal dollars) => answer =>
        answer.Amount.Demand == dollars ? null : $"demand: expected {LawText.Money(dollars)}, is {LawText.Money(answer.Amount.Demand)}.";

    /// <summary>A step of the waterfall.</summary>
    public static Expectation Step(string id, decimal dollars) => answer =>
        answer.Amount.Steps.FirstOrDefault(s => s.Id == id) is { } step
            ? step.Amount == dollars ? null : $"step {id}: expected {LawText.Money(dollars)}, is {LawText.Money(step.Amount)}."
            : $"step {id}: expected {LawText.Money(dollars)}, is not there.";

    /// <summary>The waterfall has no such step.</summary>
    public static Expectation NoStep(string id) => answer =>
        answer.Amount.Steps.All(s => s.Id != id) ? null : $"step {id}: is there.";

    /// <summary>What was billed but is no part of a claim.</summary>
    public static Expectation LeftOut(decimal dollars) => answer =>
        answer.Amount.LeftOut == dollars
        ? null : $"left out: expected {LawText.Money(dollars)}, is {LawText.Money(answer.Amount.LeftOut)}.";

    /// <summary>The finding's amount.</summary>
    public static Expectation Amount(string id, decimal dollars) => answer =>
        Found(answer, id).Amount is { } found && found == dollars
        ? null : $"{id}: expected {LawText.Money(dollars)}, is {(Found(answer, id).Amount is { } other ? LawText.Money(other) : "none")}.";

    /// <summary>The law finds no such thing on these facts.</summary>
    public static Expectation Silent(string id) => answer => answer.Find(id) is null ? null : $"{id}: is there.";

    /// <summary>Something stands in the way of recording a claim, under that section.</summary>
    public static Expectation Obstacle(string section) => answer =>
        answer.ClaimObstacles.Any(o => o.Section == section)
        ? null : $"no obstacle to a claim rests on {section}; there are "
            + $"[{string.Join(", ", answer.ClaimObstacles.Select(o => o.Section))}].";

    /// <summary>Nothing stands in the way of recording a claim.</summary>
    public static Expectation NoObstacle => answer =>
        answer.ClaimObstacles.Count == 0 ? null : $"obstacles to a claim: {string.Join(" ", answer.ClaimObstacles.Select(o => o.Text))}";

    private static Finding Found(Assessment answer, string id) =>
        answer.Find(id) ?? throw new InvalidOperationException($"The assessment has no finding {id}.");

    private static IEnumerable<Reason> Reasons(IEnumerable<Reason> why) => why.SelectMany(r => Reasons(r.Children).Prepend(r));
}
