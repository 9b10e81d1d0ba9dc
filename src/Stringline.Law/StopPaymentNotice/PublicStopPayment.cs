using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>The stop payment notice on public work (Civ. Code §§ 9350-9510).</summary>
/// <param name="Served">What was given to the entity.</param>
/// <param name="ToGive">The last day to give it, and whether it was given.</param>
/// <param name="Amount">What it can hold or holds.</param>
/// <param name="Action">The action on it.</param>
internal sealed record PublicStopPayment(HolderServed Served, Outcome ToGive, AmountHeld Amount, StopPaymentAction Action)
{
    /// <summary>The remedy as the facts have it.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="reach">What the preliminary notice leaves within reach.</param>
    /// <param name="notice">The finding on it.</param>
    /// <param name="amounts">The amounts by remedy.</param>
    /// <param name="time">The time in which it may be given.</param>
    /// <param name="whyTime">Why that is the time.</param>
    /// <param name="askTime">What would settle that time.</param>
    /// <param name="calendar">The calendar.</param>
    public static PublicStopPayment Of(
        FactsAsOf facts, Reach reach, Outcome notice, Amounts amounts, TimeOfGiving time, IReadOnlyList<Reason> whyTime,
            IReadOnlyList<Question> askTime,
        OpenDays calendar)
    {
        var entity = Entity(facts, reach);
        var served = ServingHolders.Of(facts, entity, time, calendar);
        var last = LastDayToGive(facts, reach, notice, served, time, whyTime, askTime, calendar);
        List<HolderServed> all = [served];
        var action = StopPaymentAction.Of(facts, all, last, time, StopPaymentLaw.Public, calendar);
        var held = AmountHeld.Of(facts, reach, amounts, all, last, action.LastDay?.Standing, time, StopPaymentLaw.Public);
        return new PublicStopPayment(served, last, held, action);
    }

    /// <summary>The findings of the remedy.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="left">What is left of the amount after a summary release.</param>
    /// <param name="time">The time in which it may be given.</param>
    /// <param name="completion">The readings of completion.</param>
    /// <param name="owners">What the entity recorded.</param>
    /// <param name="calendar">The calendar.</param>
    public IEnumerable<Finding> Findings(
        FactsAsOf facts, AmountHeld left, TimeOfGiving time, CompletionReadings completion, IReadOnlyList<OwnersNotice> owners,
            OpenDays calendar)
    {
        yield return ToGive.Finding(StopPaymentLaw.ToGiveId, StopPaymentLaw.ToGiveTitle);
        yield return left.Finding;
        foreach (var finding in Action.Findings(facts, StopPaymentLaw.Public, calendar))
            yield return finding;
        if (EntityTells(facts, Served, time, completion, owners, calendar) is { } tells)
            yield return tells;
    }

    /// <summary>
    /// It is given to the public entity: to its disbursing officer or the body that awarded the contract, or to the director of a State
    /// department.
    /// </summary>
    [Rule("Civ. Code § 9354")]
    [Rule("Civ. Code § 9500")]
    private static Holder Entity(FactsAsOf facts, Reach reach) =>
        new("stop-payment-notice.last-day", "public entity", facts.Job.In(PartyCapacity.PublicEntity))
    {
        NoticeIsDue = reach.Kind != ReachKind.NoneDue,
        Noticed = reach.Given,
        MayBeNoticed = reach.MayHaveBeenGiven,
    };

    [Rule("Civ. Code § 9300(c)")]
    private static Outcome LastDayToGive(
        FactsAsOf facts, Reach reach, Outcome notice, HolderServed served, TimeOfGiving time, IReadOnlyList<Reason> whyTime,
            IReadOnlyList<Question> askTime, OpenDays calendar)
    {
        var standing = notice.Standing == Standing.Lost ? Standing.Lost : served.Standing;
        if (notice.Standing == Standing.InDoubt && standing is Standing.Kept or Standing.Open)
            standing = Standing.InDoubt;
        return new Outcome(Deadline.Of(standing, time.Readings, calendar, endKnown: time.EndKnown), new Words(Why, Ask));

        List<Reason> Why()
        {
            List<Reason> why = [.. whyTime];
            why.AddRange(GivenReasons.NotAtAll(facts, [new HolderRow(served, notice, standing, Holds: true)], StopPaymentLaw.Public));
            why.AddRange(GivenReasons.Of(facts, served, StopPaymentLaw.Public));
            why.Add(ToWhom(facts));
            if (PaidTen(served, time) is null)
                why.Add(Fee(facts));
            if (notice.Standing == Standing.Lost)
                why.Add(Reason.Of("Civ. Code § 9300(c)", $"Preliminary notice is a condition, and no work lies within its reach.",
                    [.. notice.Why]));
            else if (reach.Kind == ReachKind.NotGiven && standing is Standing.Open or Standing.InDoubt)
                why.Add(Reason.Of("Civ. Code § 9300(c)", $"Preliminary notice is a condition: give it first. Both may go on one day, the "
                    + $"preliminary notice before the other."));
            return why;
        }

        List<Question> Ask()
        {
            var questions = GivenReasons.Questions(facts, served);
            questions.AddRange(askTime);
            foreach (var service in served.Services)
            {
                if (service.Counts == Verdict.No)
                    continue;
                questions.Add(IsState(facts)
                    ? new Question($"Was the stop payment notice given to the director of the department that awarded the "
                        + $"contract?{NoticeKinds.StopPaymentGiven.At("to"):aside}") { Corrects = service.Paper }
                    : new Question($"Was the stop payment notice given to the entity's disbursing office or to the body that awarded the "
                        + $"contract?{NoticeKinds.StopPaymentGiven.At("to"):aside}") { Corrects = service.Paper });
                if (service.Paper.TenDollars is null)
                    questions.Add(
                        new Question($"Were {facts.Numbers.On(Number.FeeToBeTold, facts.AsOf).Spelled} paid with the stop payment notice? "
                            + $"Then the entity must tell of the time to "
                            + $"sue.{NoticeKinds.StopPaymentGiven.At("tenDollars"):aside}") { Corrects = service.Paper });
            }

            return questions;
        }
    }

    private static bool IsState(FactsAsOf facts) => facts.Job.Work.StateContractAct == true
        || facts.Job.Work.Body is PublicBody.State or PublicBody.GeneralServices or PublicBody.Transportation or PublicBody.StateUniversity;

    [Rule("Civ. Code § 9354")]
    private static Reason ToWhom(FactsAsOf facts) => IsState(facts)
        ? Reason.Of("Civ. Code § 9354", $"On a contract of the State it is given to the director of the department that awarded the "
            + $"contract.")
        : Reason.Of("Civ. Code § 9354", $"It is given to the office of the controller, auditor or other public disbursing officer who pays "
            + $"the contract, or to the body that awarded it; to nobody else.");

    [Rule("Civ. Code § 9362")]
    private static Reason Fee(FactsAsOf facts) =>
        Reason.Of("Civ. Code § 9362", $"Pay the entity {facts.Numbers.On(Number.FeeToBeTold, facts.AsOf)} with the notice, so that it "
            + $"tells you of the time to sue.");

    // The first notice that counts and with which ten dollars were paid.
    private static StopPaymentGiven? PaidTen(HolderServed served, TimeOfGiving time)
    {
        foreach (var service in served.Counting(time))
        {
            if (service.Paper.TenDollars == true)
                return service.Paper;
        }

        return null;
    }

    /// <summary>The entity's own last day to tell one who paid ten dollars of the time to sue. Its silence proves nothing.</summary>
    [Rule("Civ. Code § 9362")]
    private static Finding? EntityTells(
        FactsAsOf facts, HolderServed served, TimeOfGiving time, CompletionReadings completion, IReadOnlyList<OwnersNotice> owners,
            OpenDays calendar)
    {
        if (PaidTen(served, time) is not { } paid)
            return null;
        var readings = new List<Reading>();
        foreach (var reading in completion.Open)
        {
            if (reading.Firmness is not (Firmness.Floor or Firmness.Projected))
                readings.Add(After(reading.On.Latest, reading.Words));
        }

        foreach (var notice in owners)
            readings.Add(After(notice.Recorded.Latest, $"the {notice.Words} was recorded"));
        if (readings.Count == 0)
            return null;
        var sorted = Deadline.Sorted(readings);
        var dollars = facts.Numbers.On(Number.FeeToBeTold, paid.On.Earliest ?? facts.AsOf);
        var toTell = facts.Numbers.On(Number.EntityTells, sorted[^1].Day);
        return new Finding
        {
            Id = "stop-payment-notice.entity-tells",
            Title = "The public entity tells of the time to sue",
            Standing = facts.AsOf <= sorted[^1].Day ? Standing.Open : Standing.Done,
            Readings = sorted,
            Band = Deadline.BandOver(sorted),
            Explain = () =>
                [Reason.Of("Civ. Code § 9362", $"{LawText.Capital(dollars.Spelled)} were paid with the notice, so the entity tells the "
                    + $"claimant of the time to sue not later than {toTell} after completion and after a notice of completion or cessation "
                    + $"is recorded: by {sorted[^1].Day}. That it says nothing proves nothing: the time runs all the same.", [paid])],
        };

        Reading After(LocalDate day, Sentence what)
        {
            var days = facts.Numbers.On(Number.EntityTells, day);
            return new Reading($"{days.Spelled} after {what}", calendar.RollForwardOnAnyList(days.LastDay(day)));
        }
    }
}
