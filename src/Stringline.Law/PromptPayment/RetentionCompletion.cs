using Stringline.Law.Completion;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// Completion of a public work for the release of retention, wider than that of Civ. Code § 9200: the first of the events that the section
/// names.
/// </summary>
/// <param name="On">The day.</param>
/// <param name="IsSure">Whether the facts of the file make it so.</param>
/// <param name="Why">Its reason.</param>
/// <param name="Asks">What would make it sure; null where it is.</param>
internal sealed record RetentionCompletion(DaySpan On, bool IsSure, Reason Why, Sentence? Asks)
{
    private const string Section = "Pub. Contract Code § 7107(c)";

    /// <summary>
    /// The event that counts: the first that is sure, and where none is, the last, so that the payer has the benefit of every doubt. Null
    /// where the file holds none.
    /// </summary>
    [Rule("Pub. Contract Code § 7107(c)")]
    public static RetentionCompletion? Of(FactsAsOf facts, CompletionReadings completion)
    {
        RetentionCompletion? sure = null, doubtful = null;
        void Take(RetentionCompletion? found)
        {
            if (found is { IsSure: true } && (sure is null || found.On.Latest < sure.On.Latest))
                sure = found;
            if (found is { IsSure: false } && (doubtful is null || found.On.Latest > doubtful.On.Latest))
                doubtful = found;
        }

        var stops = LaborStop.Of(facts);
        foreach (var entry in facts.All<Completed>())
        {
            if (DaySpan.Of(entry.On) is not { } day)
                continue;
            if (entry.By == CompletionTheory.Acceptance)
                Take(Acceptance(entry, day));
            else if (entry.By == CompletionTheory.Occupation)
                Take(Use(entry, day, stops));
        }

        foreach (var reading in completion.Open)
        {
            if (reading.Firmness == Firmness.Asserted && reading.Why.Facts is [OwnerRecorded])
                Take(new RetentionCompletion(reading.On, IsSure: true, reading.Why, null));
        }

        foreach (var stop in stops)
            Take(Idle(facts, stop));
        return sure ?? doubtful;
    }

    private static RetentionCompletion Acceptance(Completed entry, DaySpan day) => new(day, !entry.Contested,
        Reason.Of(Section, $"The public agency accepted the work {day} (paragraph (2)).", [entry]),
        entry.Contested
            ? (Sentence)$"Did the public entity accept the work on that day?{CompletionKinds.Completed.At("contested"):aside}" : null);

    private static RetentionCompletion Use(Completed entry, DaySpan day, IReadOnlyList<LaborStop> stops)
    {
        foreach (var stop in stops)
        {
            if (stop.Resumed is { } resumed && resumed <= day.Latest)
                continue;
            var both = DaySpan.Later(day, stop.Last);
            return new RetentionCompletion(both, !entry.Contested && stop.Resumed is null,
                Reason.Of(Section, $"The public agency occupied and used the work {day}, and labor ceased {stop.Last}: complete on the "
                    + $"later of the two, {both} (paragraph (1)).", [entry, stop.Entry]),
                entry.Contested || stop.Resumed is not null
                    ? (Sentence)($"Was the work occupied and used, beyond testing and startup, while labor had "
                        + $"ceased?{CompletionKinds.Completed.At("contested"):aside}") : null);
        }

        return new RetentionCompletion(day, IsSure: false,
            Reason.Of(Section, $"The public agency occupied and used the work {day}. That completes it only together with cessation of "
                + $"labor, which the file does not show (paragraph (1)).", [entry]),
            $"On which day did labor on the whole work cease? Use completes the work together with "
                + $"that.{CompletionKinds.LaborCeased:aside}");
    }

    private static RetentionCompletion? Idle(FactsAsOf facts, LaborStop stop)
    {
        var withNotice = facts.Numbers.On(Number.RetentionIdleDaysWithNotice, stop.Last.Earliest);
        var idleWithNotice = stop.Last.LastDay(facts.Numbers, withNotice.Id);
        foreach (var notice in facts.All<OwnerRecorded>())
        {
            if (notice.Notice is not (OwnerNotice.Cessation or OwnerNotice.Completion) || notice.HeldIneffective
                || DaySpan.Of(notice.On) is not { } recorded)
                continue;
            if (stop.Resumed is { } resumed && resumed <= idleWithNotice.Latest)
                continue;
            var both = DaySpan.Later(idleWithNotice, recorded);
            if (both.Latest <= facts.AsOf && recorded.Latest >= stop.Last.Earliest)
            {
                return new RetentionCompletion(both, IsSure: true,
                    Reason.Of(Section, $"Labor ceased {stop.Last} for {withNotice.Count} continuous days, and the public agency recorded a "
                        + $"notice {recorded}: complete {both} (paragraph (4)).", [stop.Entry, notice]), null);
            }
        }

        var days = facts.Numbers.On(Number.RetentionIdleDays, stop.Last.Earliest);
        var idle = stop.Last.LastDay(facts.Numbers, days.Id);
        return idle.Latest > facts.AsOf || stop.Resumed <= idle.Latest ? null : new RetentionCompletion(idle, IsSure: false,
            Reason.Of(Section, $"Labor ceased {stop.Last} for {days.Count} continuous days, to {idle}: that completes the work if the "
                + $"cause was beyond the contractor's control (paragraph (3)).", [stop.Entry]),
            $"Did labor cease for a cause beyond the contractor's control? Only then do {days.Count} idle days complete the "
                + $"work.{CompletionKinds.Completed:aside}");
    }
}
