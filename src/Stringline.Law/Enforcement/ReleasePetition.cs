using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>The owner's demand for a release and its petition for an order (Civ. Code §§ 8480, 8482).</summary>
internal static class ReleasePetition
{
    /// <summary>
    /// No petition lies while the time to sue runs, and none once the claimant sued in time: a demand then asks for nothing that is due.
    /// After the time the claim is better released before the owner may petition, since fees follow the event.
    /// </summary>
    [Rule("Civ. Code § 8482")]
    [Rule("Civ. Code § 8488(c)")]
    public static Finding AnswerBy(FactsAsOf facts, ReleaseDemanded asked, Deadline timeToSue, OpenDays calendar)
    {
        const string id = "release.answer-by", title = "Answer the owner's demand for release";
        if (timeToSue.Standing is Standing.Kept or Standing.Done)
        {
            return Deadline.WithoutDay(Standing.Kept).Finding(id, title,
                [Reason.Of("Civ. Code § 8480(a)", $"Release demanded {DaySpan.Of(asked.On)}. No petition lies where the action was brought "
                    + $"in time. Do not release the claim unless it is paid.", [asked])]);
        }

        if (timeToSue.Band is not { } band || timeToSue.Standing is Standing.Open or Standing.NotYet)
        {
            return Deadline.WithoutDay(Standing.NotYet).Finding(id, title,
                [timeToSue.Band is { } runs
                    ? Reason.Of("Civ. Code § 8480(a)", $"Release demanded {DaySpan.Of(asked.On)}. No petition lies "
                        + $"before {First(facts, asked, runs.Earliest.Day)}, and none at all once the action is brought in time. Do not "
                        + $"release the claim unless it is paid.", [asked])
                    : Reason.Of("Civ. Code § 8480(a)", $"Release demanded {DaySpan.Of(asked.On)}. No petition lies while the time to sue "
                        + $"runs. Do not release the claim unless it is paid.", [asked])]);
        }

        var first = First(facts, asked, band.Earliest.Day);
        Reading[] readings = [Deadline.Own($"the day before the owner may petition", first.PlusDays(-1), calendar)];
        return Deadline.Of(Deadline.StandingOf(facts.AsOf, readings, null, endFirm: false), readings, calendar).Finding(id, title,
            () =>
            [
                timeToSue.Standing == Standing.Lost
                    ? Reason.Of("Civ. Code § 8482", $"Release demanded {DaySpan.Of(asked.On)}; from {first} the owner may petition for a "
                        + $"release order, and the prevailing party gets its attorney's fees (Civ. Code § 8488(c)). An expired claim is "
                        + $"better released before.", [asked])
                    : Reason.Of("Civ. Code § 8482", $"Release demanded {DaySpan.Of(asked.On)}; if the time to sue is over the owner may "
                        + $"petition for a release order from {first}, and the prevailing party gets its attorney's fees "
                        + $"(Civ. Code § 8488(c)). Whether it is over is in doubt: answer with why the claim stands.", [asked]),
            ]);
    }

    /// <summary>The first day of the petition: the later of the day after the time to sue and the tenth day after the demand.</summary>
    [Rule("Civ. Code § 8480")]
    [Rule("Civ. Code § 8486(a)")]
    public static Finding FirstDay(FactsAsOf facts, ReleaseDemanded? asked, Standing timeToSue, LocalDate lastDayToSue)
    {
        var first = First(facts, asked, lastDayToSue);
        var days = facts.Numbers.On(Number.PetitionAfterDemand, asked?.On.Earliest ?? facts.AsOf);
        var reading = new Reading(
            first == lastDayToSue.PlusDays(1)
                ? (Sentence)$"the day after the time to sue" : $"the {days.Ordinal} day after the demand", first);
        var hearing = facts.Numbers.On(Number.HearPetition, first);
        return new Finding
        {
            Id = "release.petition-first-day",
            Title = "The owner's petition for release: first day",
            Standing = facts.AsOf < first ? Standing.NotYet : timeToSue == Standing.Lost ? Standing.Open : Standing.InDoubt,
            Readings = [reading],
            Band = new Band(reading, reading),
            Explain = () =>
            [
                asked is null
                    ? Reason.Of("Civ. Code § 8480", $"Without an action within its time the owner may petition "
                        + $"from {first}, {days.Spelled} after a demand, of which the file shows none; the hearing is held "
                        + $"within {hearing} of filing (Civ. Code § 8486(a)).")
                    : Reason.Of("Civ. Code § 8480", $"Without an action within its time the owner may petition from {first}, no sooner "
                        + $"than {days.Spelled} after its demand; the hearing is held within {hearing} of filing "
                        + $"(Civ. Code § 8486(a)).", [asked]),
            ],
        };
    }

    private static LocalDate First(FactsAsOf facts, ReleaseDemanded? asked, LocalDate lastDayToSue) => asked?.On.Earliest is { } on
        ? LocalDate.Max(lastDayToSue.PlusDays(1), facts.Numbers.LastDay(Number.PetitionAfterDemand, on)) : lastDayToSue.PlusDays(1);
}
