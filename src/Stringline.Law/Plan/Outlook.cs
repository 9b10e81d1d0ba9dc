using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.StopPaymentNotice;

namespace Stringline.Law.Plan;

/// <summary>What is left of a right whose planned day is past.</summary>
public enum Chance
{
    /// <summary>The law's last day has not passed: it can still be done in time.</summary>
    Alive,

    /// <summary>The earliest last day is past; another reading, a roll, or a fact that is missing may still carry it.</summary>
    Arguable,

    /// <summary>Late, and still worth doing: it covers less than it would have.</summary>
    Late,

    /// <summary>It is gone.</summary>
    Lost,
}

/// <summary>
/// Whether an overdue right is alive, arguable or lost, and until when: said from the standing, the band and the roll of its finding. The
/// one place in which it is said; every list, page and file shows this.
/// </summary>
/// <param name="Chance">What is left.</param>
/// <param name="Text">The same in a few sentences.</param>
public sealed record Outlook(Chance Chance, string Text)
{
    /// <summary>The word for what is left.</summary>
    public string Word => Chance switch
    {
        Chance.Alive => "alive",
        Chance.Arguable => "arguable",
        Chance.Late => "late",
        Chance.Lost => "lost",
        _ => throw new InvalidOperationException($"No such chance: {Chance}."),
    };

    /// <summary>The outlook of a finding that asks for an act; null where its planned day is not past, or nothing is left to do.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="asOf">The day of asking.</param>
    public static Outlook? Of(Finding finding, LocalDate asOf)
    {
        ArgumentNullException.ThrowIfNull(finding);
        // A step of the plan, or what another owes by a day, is no right that could be lost by it.
        if (finding is not { IsDeadline: true, ActBy: { } actBy, Band: { } band } || finding.Standing is Standing.Kept or Standing.Done
            || !(NextSteps.HasAct(finding.Id) || finding.Id == IndexWatch.Id))
        {
            return null;
        }

        if (finding.Standing == Standing.Lost)
            return Gone(finding, band, asOf);
        if (actBy >= asOf)
            return null;
        if (finding.Id == IndexWatch.Id)
            return Said(Chance.Late,
                $"Late. Planned day past. Nothing is lost by that day itself, but a notice recorded since may be unseen: search today.");
        var last = band.Earliest.Day;
        if (finding.IfLate is var (time, lookBack) && last < asOf)
            return LateNotice(band.Earliest, asOf, time, lookBack);
        // What only keeps ahead of another's act is late once its day is past, and no less right for it.
        var chance = last >= asOf ? Chance.Alive : Target(finding.Id) is null ? Chance.Arguable : Chance.Late;
        return new Outlook(chance, string.Join(' ', Sentences(finding, band, asOf, chance)));
    }

    private static Outlook? Gone(Finding finding, Band band, LocalDate asOf) => band.Latest is { } latest
        && asOf > (latest.Rolled ?? latest.Day)
        ? Said(Chance.Lost, $"Lost: the last day on every reading, {latest.Day}, is past.")
        : Said(Chance.Lost, $"Lost: {finding.Why[0].Text}");

    // Civ. Code §§ 8204(a), 9304: a late notice covers the days before it that it reaches, and everything after it.
    private static Outlook LateNotice(Reading first, LocalDate asOf, NumberRow time, NumberRow lookBack)
    {
        var roll = first.Rolled is { } rolled && rolled >= asOf ? Write($"; that it rolls to {rolled} is an argument only") : "";
        return Said(Chance.Late,
            $"Late. Planned day past. The {time} ended on {first.Day}{roll}. {Covers(lookBack.LookBack(asOf))}");
    }

    private static string Covers(LocalDate from) =>
        Write($"A notice given today covers what was furnished from {from} on, and all that comes later.");

    private static IEnumerable<string> Sentences(Finding finding, Band band, LocalDate asOf, Chance chance)
    {
        var first = band.Earliest;
        yield return chance == Chance.Alive ? "Alive." : chance == Chance.Late ? "Late." : "Arguable.";
        yield return "Planned day past.";
        var roll = first.Rolled is { } rolled && rolled >= asOf ? Write($"; that it rolls to {rolled} is an argument only") : "";
        var name = Target(finding.Id) ?? "The law’s last day";
        yield return first.Day < asOf ? Write($"{name}, {first.Day}, is past too{roll}.")
            : first.Day == asOf ? Write($"{name} is today, {first.Day}{roll}.")
            : Write($"{name} is {first.Day}{roll}.");
        var latest = finding.Readings.Count > 0 ? finding.Readings[^1] : first;
        if (latest.Day > first.Day && latest.Day >= asOf)
            yield return Write($"On another reading still open until {latest.Day}.");
        else if (latest.Day > first.Day && latest.Rolled is { } later && later >= asOf)
            yield return Write($"On another reading the last day was {latest.Day}; that it rolls to {later} is an argument only.");
        if (band.Latest is null)
            yield return latest.Day > first.Day ? "On one more no end is known yet." : "On another reading no end is known yet.";
        if (first.Day >= asOf && finding is { Standing: Standing.InDoubt, IsOnlyPastSafeDay: false })
            yield return "The right itself is in doubt for another reason.";
    }

    // Not every day to act by is set by a statute: some only keep ahead of what another may do.
    private static string? Target(string finding) => finding switch
    {
        "release.answer-by" => "The last day before the owner may petition for a release",
        "release.hearing" => "The last day before the hearing",
        "release.when-paid" => "The last day before the owner could petition for a release",
        "stop-payment-notice.owner-demand" =>
            $"Our target, {NumberWords.Cardinal(HoldersAnswers.TargetForDemand)} days after the owner’s demand,",
        "stop-payment-notice.money-out" => "The first day on which the money may go out",
        _ => null,
    };

    private static Outlook Said(Chance chance, Sentence text) => new(chance, Write(text));

    private static string Write(Sentence text) => text.ToString();
}
