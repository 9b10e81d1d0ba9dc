using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// The steps of a direct contractor's claim against a public entity: its statement, the conference, payment, and the State's arbitration.
/// </summary>
/// <remarks>Not modeled: the choice of a mediator; no entry holds it.</remarks>
internal static class ClaimSteps
{
    /// <summary>The findings <c>dispute-claim.*</c>, where the file has their facts.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, CompletionReadings completion, OpenDays calendar)
    {
        var claims = facts.All<DisputeClaimSent>();
        var claim = claims.Count == 0 ? null : claims[^1];
        var law = ClaimLaw.Of(facts, claim?.Received ?? claim?.On.Latest, claim?.Amount);
        if (claim is not null && DaySpan.Of(claim.On) is { } sent)
        {
            var answer = FirstAfter<DisputeClaimAnswered>(facts, sent.Earliest);
            var time = EntitysTime.Of(facts, claim, sent, law, calendar);
            yield return Statement(facts, claim, sent, law, time, answer);
            if (LastDayForConference(facts, claim, sent, law, time, answer, calendar) is { } conference)
                yield return conference;
            if (AfterTheDemand(facts, sent, calendar) is { } next)
                yield return next;
        }

        if (Filing(facts, claim, law, calendar) is { } filing)
            yield return filing;
        if (Arbitration(facts, claim, completion, calendar) is { } arbitration)
            yield return arbitration;
    }

    /// <summary>
    /// The entity answers in writing within 45 days of receipt; silence rejects the whole. Where its governing body must approve and does
    /// not meet by then, to three days after its next meeting.
    /// </summary>
    [Rule("Pub. Contract Code § 9204(d)(1)")]
    [Rule("Pub. Contract Code § 9204(d)(3)")]
    [Rule("Pub. Contract Code § 20104.2")]
    private static Finding Statement(FactsAsOf facts, DisputeClaimSent claim, DaySpan sent, ClaimLaw law, EntitysTime time,
        DisputeClaimAnswered? answer)
    {
        const string Id = "dispute-claim.entitys-statement";
        const string Title = "Claim against the public entity: its statement";
        if (law is { IsNew: Verdict.No, IsOld: false })
            return new Finding { Id = Id, Title = Title, Standing = Standing.Lost,
                Why = [Reason.Of("Pub. Contract Code § 9204", $"No statute sets the entity a time to answer this claim; its contract does.",
                    [claim]), .. law.Why], Questions = law.Questions };
        var from = claim.Received ?? sent.Latest;
        var readings = time.Readings;
        var received = claim.Received is null ? (Sentence)$"which was not before the sending on {from}" : $"{from}";
        var isGood = law.IsNew == Verdict.No || claim.Manner is null or Manner.CertifiedMail or Manner.RegisteredMail;
        var past = !time.IsWaiting && facts.AsOf > readings[^1].Day;
        var toPay = facts.Numbers.On(Number.EntityPays, from);
        var afterMeeting = facts.Numbers.On(Number.AfterMeeting, claim.NextMeeting ?? from).Spelled;
        return new Finding
        {
            Id = Id,
            Title = Title,
            Standing = answer is not null ? Standing.Done
                : law.IsNew == Verdict.Open || !isGood || (law.IsNew == Verdict.Yes && ClaimLaw.IsAfterItsEnd(facts, facts.AsOf))
                || (past && claim.Received is null) ? Standing.InDoubt
                : past ? Standing.Open : Standing.NotYet,
            Readings = readings,
            Band = readings.Count == 0 ? null : Deadline.BandOver(readings, endKnown: !time.IsWaiting),
            Why =
            [
                Reason.Of(law.Section, $"The entity states in writing, within {Shorter(law)} of receipt, {received}, what is disputed and "
                    + $"what is not, and pays the undisputed part within {toPay} after; silence rejects the whole. Where its governing "
                    + $"body must approve and does not meet by then, it has until {afterMeeting} after the next meeting.", [claim]),
                .. time.Why,
                .. answer is null ? (Reason[])[] : [Reason.Of(law.Section, $"Answered {DaySpan.Of(answer.On)}.", [answer])],
                .. isGood ? (Reason[])[]
                    : [Reason.Of("Pub. Contract Code § 9204(c)(1)", $"A claim in the section's sense is one sent by registered or "
                        + $"certified mail with return receipt requested: send it again that way.", [claim])],
                .. law.Why,
            ],
            Questions =
            [
                .. claim.Received is null
                    ? (Question[])[
                        new Question($"On which day did the public entity receive the "
                            + $"claim?{DisputeKinds.DisputeClaimSent.At("received"):aside}") { Corrects = claim }] : [],
                .. claim.Manner is null
                    ? (Question[])[
                        new Question($"Was the claim sent by registered or certified mail with return receipt "
                            + $"requested?{DisputeKinds.DisputeClaimSent.At("manner"):aside}") { Corrects = claim }] : [],
                .. time.IsWaiting
                    ? (Question[])[
                        new Question($"Have the further documents been given, and on which day did the agency receive them? Its days run "
                            + $"from then.{DisputeKinds.DisputeClaimSent.At("documentsGiven"):aside}") { Corrects = claim }] : [],
                .. past && answer is null && claim.DocumentsAsked is null && law.IsNew == Verdict.No
                    ? (Question[])[
                        new Question($"Did the agency ask for further documents "
                            + $"within {facts.Numbers.On(Number.AskForDocuments, from).Text} of receipt, and on which day? Its days then "
                            + $"run from their receipt.{DisputeKinds.DisputeClaimSent.At("documentsAsked"):aside}") { Corrects = claim }]
                            : [],
                .. law.Questions,
                .. past && answer is null && claim.NextMeeting is null && law.IsNew != Verdict.No
                    ? (Question[])[
                        new Question($"Must the entity's governing body approve its answer, and on which day does it meet next? It then "
                            + $"has until {afterMeeting} after that "
                            + $"meeting.{DisputeKinds.DisputeClaimSent.At("nextMeeting"):aside}") { Corrects = claim }] : [],
            ],
        };
    }

    // The shorter of the times that may govern the statement.
    private static NumberRow Shorter(ClaimLaw law) => (law.IsNew, law.IsOld) switch
    {
        (Verdict.No, _) => law.OldDays,
        (Verdict.Open, true) when law.OldDays.Count < law.NewDays.Count => law.OldDays,
        _ => law.NewDays,
    };

    /// <summary>
    /// The conference: § 9204 sets no time to demand it, § 20104.2(d) sets 15 days from the answer, or from the day by which it was due.
    /// They are planned on toward a local agency; being late leaves it in doubt and loses nothing.
    /// </summary>
    [Rule("Pub. Contract Code § 9204(d)(2)")]
    [Rule("Pub. Contract Code § 20104.2(d)")]
    private static Finding? LastDayForConference(FactsAsOf facts, DisputeClaimSent claim, DaySpan sent, ClaimLaw law, EntitysTime time,
        DisputeClaimAnswered? answer, OpenDays calendar)
    {
        if (!law.IsOld)
            return null;
        if (law.IsNew == Verdict.No && time is { IsWaiting: true, Readings.Count: 0 } && answer is null)
            return null;
        var due = Shorter(law).LastDay(claim.Received ?? sent.Earliest);
        // Only where the older procedure surely governs, and the documents were surely asked for in time, do they put these days off.
        if (law.IsNew == Verdict.No && time is { ByDocuments: { } documents, Readings.Count: 1 })
            due = documents;
        // Without an answer the days begin when it was due; the claimant's own days are never rolled.
        var from = answer is not null && answer.On.Earliest is { } answered ? LocalDate.Min(answered, due) : due;
        var days = facts.Numbers.On(Number.DemandConference, from);
        var name = answer is null ? (Sentence)$"{days.Text} after the statement was due" : $"{days.Text} after the statement";
        List<Reading> readings = [Deadline.Own(name, days.LastDay(from), calendar)];
        // The older procedure knows no extension; whether one agreed on under the newer moves its days is open.
        if (law.IsNew != Verdict.No && EntitysTime.Extended(claim, due) is { } extended)
        {
            var later = answer is not null && answer.On.Earliest is { } on ? LocalDate.Min(on, extended) : extended;
            if (later > from)
                readings.Add(Deadline.Own($"{name}, its time being extended", facts.Numbers.LastDay(Number.DemandConference, later),
                    calendar));
        }

        var demanded = FirstAfter<ConferenceDemanded>(facts, sent.Earliest);
        return Deadline.Of(demanded is null && answer is null && facts.AsOf <= due
            ? Standing.NotYet
            : Deadline.StandingOf(facts.AsOf, readings, demanded is null ? null : DaySpan.Of(demanded.On), endFirm: false), readings,
            calendar)
            .Finding("dispute-claim.conference-last-day", "Conference on the claim: last day to demand it",
            [
                Reason.Of("Pub. Contract Code § 9204(d)(2)", $"Demand in writing, by registered or certified mail with return receipt "
                    + $"requested, a conference to settle what is disputed. This section sets no time for it.", [claim]),
                Reason.Of("Pub. Contract Code § 20104.2(d)", $"The older procedure of local agencies sets {days} from the answer, or from "
                    + $"the failure to answer in time, {due}: the safer day. After the conference a claim under Gov. Code §§ 900 ff. may "
                    + $"be due, whose time is tolled meanwhile: ask counsel."),
                .. demanded is null
                    ? (Reason[])[] : [Reason.Of("Pub. Contract Code § 9204(d)(2)", $"Demanded {DaySpan.Of(demanded.On)}.", [demanded])],
            ],
            claim.Amount is null
                ? [new Question($"How much is claimed? The {days.Text} are those of claims "
                    + $"of {facts.Numbers.On(Number.GreatestClaim, sent.Latest).Text} or less.{DisputeKinds.DisputeClaimSent
                        .At("amount"):aside}") { Corrects = claim }] : []);
    }

    /// <summary>
    /// The entity schedules the conference within 30 days of the demand, and states within ten business days after it what is left in
    /// dispute.
    /// </summary>
    [Rule("Pub. Contract Code § 9204(d)(2)")]
    private static Finding? AfterTheDemand(FactsAsOf facts, DaySpan sent, OpenDays calendar)
    {
        if (FirstAfter<ConferenceDemanded>(facts, sent.Earliest) is not { On.Latest: { } demanded } demand)
            return null;
        var held = FirstAfter<ConferenceHeld>(facts, demanded);
        if (held is not { On.Latest: { } conference })
        {
            var days = facts.Numbers.On(Number.EntitysConference, demanded);
            return OfEntity(facts, "dispute-claim.conference", "Conference on the claim",
                new Reading($"{days.Text} after the demand", calendar.RollForwardOnAnyList(days.LastDay(demanded))),
                Reason.Of("Pub. Contract Code § 9204(d)(2)",
                    $"Upon the demand of {demanded} the entity schedules a conference within {days}.", [demand]));
        }

        var businessDays = facts.Numbers.On(Number.EntitysSecondStatement, conference);
        var last = businessDays.LastBusinessDay(conference, calendar);
        var mediator = facts.Numbers.On(Number.EntitysMediator, last);
        return OfEntity(facts, "dispute-claim.second-statement", "Claim against the public entity: what is left in dispute",
            new Reading($"{businessDays.Spelled} after the conference", last),
            Reason.Of("Pub. Contract Code § 9204(d)(2)", $"Within {businessDays.Spelled} after the conference of {conference} the entity "
                + $"states in writing what is left in dispute. Name in writing what the claimant disputes: it goes to mediation, and a "
                + $"mediator is agreed on within {mediator.Spelled} after that.", [held]));
    }

    private static Finding OfEntity(FactsAsOf facts, string id, string title, Reading reading, Reason why) => new()
    {
        Id = id,
        Title = title,
        Standing = ClaimLaw.IsAfterItsEnd(facts, facts.AsOf)
            ? Standing.InDoubt : facts.AsOf <= reading.Day ? Standing.NotYet : Standing.Open,
        Readings = [reading],
        Band = new Band(reading, reading),
        Why = [why],
    };

    /// <summary>The part that the entity does not dispute, due 60 days after its statement; null where the file holds none.</summary>
    [Rule("Pub. Contract Code § 9204(d)(1)")]
    public static SumDue? Undisputed(FactsAsOf facts, OpenDays calendar)
    {
        foreach (var answer in facts.All<DisputeClaimAnswered>())
        {
            if (answer is { Undisputed: > 0 } && DaySpan.Of(answer.On) is { } on)
                return new SumDue(answer, on.Earliest, calendar.RollForwardOnAnyList(facts.Numbers.LastDay(Number.EntityPays, on.Latest)),
                    answer.Undisputed.Value);
        }

        return null;
    }

    /// <summary>The finding <c>dispute-claim.undisputed-part</c>: late money bears 7 percent a year.</summary>
    [Rule("Pub. Contract Code § 9204(d)(4)")]
    public static Finding UndisputedPart(FactsAsOf facts, SumDue sum)
    {
        var rate = facts.Numbers.On(Number.EntitysInterest, sum.Due);
        var interest = sum.Interest(rate, facts.AsOf);
        var reading = new Reading($"last day for the payer", sum.Due);
        return new Finding
        {
            Id = "dispute-claim.undisputed-part",
            Title = "Claim against the public entity: the part not disputed",
            Standing = sum.Unpaid == 0 && interest == 0 ? Standing.Done : facts.AsOf <= sum.Due ? Standing.NotYet : Standing.Open,
            Readings = [reading],
            Band = new Band(reading, reading),
            Amount = interest,
            Why =
            [
                Reason.Of("Pub. Contract Code § 9204(d)(1)",
                    $"{sum.Whole} is not disputed, and is paid within {facts.Numbers.On(Number.EntityPays, sum.From)} after the statement: "
                        + $"by {sum.Due}. {sum.Unpaid} is unpaid.", [sum.Fact]),
                .. facts.AsOf <= sum.Due
                    ? (Reason[])[]
                    : [Reason.Of("Pub. Contract Code § 9204(d)(4)",
                        $"What is late bears {rate} a year, from the day after {sum.Due}: {interest}.", [sum.Fact])],
            ],
        };
    }

    /// <summary>
    /// Toward a local agency claims must be filed on or before the date of final payment. While § 9204 governs, which sets no such time, a
    /// later one is in doubt.
    /// </summary>
    [Rule("Pub. Contract Code § 20104.2(a)")]
    private static Finding? Filing(FactsAsOf facts, DisputeClaimSent? claim, ClaimLaw law, OpenDays calendar)
    {
        if (!law.IsOld || (claim is null && facts.All<Disputed>().Count == 0))
            return null;
        const string Section = "Pub. Contract Code § 20104.2(a)";
        var paid = facts.FirstDayOf<FinalPayment>();
        List<Reading> readings = paid switch
        {
            null => [],
            { IsExact: true } day => [new Reading($"the date of final payment", day.Earliest)],
            { } day => [new Reading($"final payment on its earliest day", day.Earliest),
                new Reading($"final payment on its latest day", day.Latest)],
        };
        var filed = claim is null ? null : DaySpan.Of(claim.On);
        return Deadline.Of(readings.Count == 0
            ? filed is null
            ? Standing.Open : Standing.Kept
            : Deadline.StandingOf(facts.AsOf, readings, filed, endFirm: law.IsNew == Verdict.No), readings, calendar)
            .Finding("dispute-claim.filing-last-day", "Claim against the public entity: last day to file it",
            [
                Reason.Of(Section, $"A claim of {facts.Numbers.On(Number.GreatestClaim, filed?.Latest ?? facts.AsOf)} or less toward a "
                    + $"local agency must be filed, with the documents that show it, on or before the date of final payment; the contract "
                    + $"may ask for it sooner."),
                .. claim is null ? (Reason[])[] : [Reason.Of(Section, $"Sent {DaySpan.Of(claim.On)}.", [claim])],
            ],
            paid is null && filed is null
                ? [new Question($"On which day was final payment received, or when is it expected?{PublicKinds.FinalPayment:aside}")] : []);
    }

    /// <summary>
    /// The State's arbitration: within 90 days after the department's final written decision; and without it once more than 240 days have
    /// passed since acceptance.
    /// </summary>
    [Rule("Pub. Contract Code § 10240.1")]
    [Rule("Pub. Contract Code § 10240.2")]
    private static Finding? Arbitration(FactsAsOf facts, DisputeClaimSent? claim, CompletionReadings completion, OpenDays calendar)
    {
        if (facts.FirstDayOf<FinalDecisionServed>() is { } served)
        {
            var days = facts.Numbers.On(Number.Arbitrate, served.Earliest);
            List<Reading> readings = served.IsExact
                ? [Deadline.Own($"{days.Text} after the final decision was served", days.LastDay(served.Earliest), calendar)]
                :
                [
                    Deadline.Own($"final decision served on its earliest day", days.LastDay(served.Earliest), calendar),
                    Deadline.Own($"final decision served on its latest day", facts.Numbers.LastDay(Number.Arbitrate, served.Latest),
                        calendar),
                ];
            return Deadline.Of(Deadline.StandingOf(facts.AsOf, readings, null, endFirm: false), readings, calendar)
                .Finding("dispute-claim.arbitration-last-day", "Arbitration with the State: last day to begin it",
                [Reason.Of("Pub. Contract Code § 10240.1", $"Arbitration is begun not later than {days} after the department's final "
                    + $"written decision on the claim was served, {served}. The limit does not apply to a claim founded on a cost audit, a "
                    + $"latent defect, a warranty or a guarantee.", [.. facts.All<FinalDecisionServed>()])],
                [new Question($"Was arbitration begun, and is the claim founded on a cost audit, a latent defect, a warranty or a "
                    + $"guarantee? Then the {days.Text} do not bind.")]);
        }

        if (claim is null || PublicPayer.IsState(facts) != true || completion.Open is not [{ Firmness: Firmness.Certain } accepted])
            return null;
        var wait = facts.Numbers.On(Number.ArbitrateWithoutDecision, accepted.On.Latest);
        var first = new Reading($"more than {wait.Text} after acceptance", wait.FirstDayAfter(accepted.On.Latest));
        return new Finding
        {
            Id = "dispute-claim.arbitration-first-day",
            Title = "Arbitration with the State without a final decision: first day",
            Standing = facts.AsOf >= first.Day ? Standing.Open : Standing.NotYet,
            Readings = [first],
            Band = new Band(first, first),
            Why = [Reason.Of("Pub. Contract Code § 10240.2", $"The contract's own steps come first; if more than {wait} have passed since "
                + $"the department accepted the work, arbitration may be begun though they are not concluded.", accepted.Why.Facts)],
        };
    }

    private static T? FirstAfter<T>(FactsAsOf facts, LocalDate day) where T : Entry
    {
        foreach (var entry in facts.All<T>())
        {
            if (entry.On.Latest >= day)
                return entry;
        }

        return null;
    }
}
