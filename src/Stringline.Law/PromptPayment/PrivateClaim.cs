using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>The claims procedure of private work, contracts from 2026 (Civ. Code § 8850), step by step.</summary>
internal static class PrivateClaim
{
    // The first contracts that the article governs.
    private static LocalDate Since(FactsAsOf facts) => facts.Numbers.Begins(Number.OwnersStatement);

    // The whole article ends with that day, whenever the contract was made; no section saves what has begun (Civ. Code § 8851).
    private static LocalDate Until(FactsAsOf facts) => facts.Numbers.Ends(Number.OwnersStatement) ?? LocalDate.MaxIsoValue;

    private static bool IsOutside(FactsAsOf facts, LocalDate made) => made < Since(facts) || made > Until(facts);

    /// <summary>The findings <c>dispute-claim.*</c>, where the file has their facts.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="undisputed">What the owner does not dispute, with what was received for it; null where there is no such sum.</param>
    /// <param name="calendar">The calendar.</param>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, SumDue? undisputed, OpenDays calendar)
    {
        if (ContractorsAnswer(facts, calendar) is { } answer)
            yield return answer;
        var claims = facts.All<DisputeClaimSent>();
        if (claims.Count == 0)
            yield break;
        var claim = claims[^1];
        if (NotGoverned(facts, claim) is { } none)
        {
            yield return none;
            yield break;
        }

        if (DaySpan.Of(claim.On) is null && claim.Received is null)
            yield break;
        if (facts.Job.Claimant.Role == ClaimantRole.Subcontractor && !facts.HiredByOwner)
        {
            yield return ThroughTheContractor(facts, claim);
            if (ClaimSuspension.OfSubcontractor(facts, claim, calendar) is { } stop)
                yield return stop;
            yield break;
        }

        var statement = StatementOn(facts, claim, calendar);
        yield return Statement(statement.Standing, [.. statement.Why]) with
        {
            Readings = [statement.Last],
            Band = new Band(statement.Last, statement.Last),
            Amount = claim.Amount,
            Questions = statement.Questions,
        };
        if (NextStep(facts, claim, statement, calendar) is { } next)
            yield return next;
        // Work may be suspended only "until payment is received".
        if ((undisputed is null || !UndisputedPart.IsPaid(facts, undisputed))
            && ClaimSuspension.Of(facts, claim, statement, calendar) is { } suspension)
            yield return suspension;
    }

    /// <summary>Whether the procedure governs a claim, as far as the file says.</summary>
    public static bool Governs(FactsAsOf facts, DisputeClaimSent claim) => NotGoverned(facts, claim) is null;

    /// <summary>
    /// Whether nothing leaves it in doubt that the procedure governs a claim: the contract's day is told, the claim went by the mail asked
    /// for, and the article is in force.
    /// </summary>
    public static bool IsSure(FactsAsOf facts, DisputeClaimSent claim) =>
        facts.Job.Contract.On is not null && WentByItsMail(claim) && facts.AsOf <= Until(facts);

    private static bool WentByItsMail(DisputeClaimSent claim) => claim.Manner is null or Manner.CertifiedMail or Manner.RegisteredMail;

    /// <summary>
    /// Contracts from 1 January 2026, not on low-rise housing, and a claim of a contractor; the article is repealed on 1 January 2030.
    /// </summary>
    [Rule("Civ. Code § 8850(n)")]
    [Rule("Civ. Code § 8850(o)")]
    [Rule("Civ. Code § 8850(b)")]
    private static Finding? NotGoverned(FactsAsOf facts, DisputeClaimSent claim)
    {
        if (facts.Job.Contract.On is { } made && IsOutside(facts, made))
            return Statement(Standing.Lost,
                Reason.Of("Civ. Code § 8850(n)", $"The contract was made on {made}; the procedure governs contracts made "
                    + $"from {Since(facts)} on, while the article is in force.", [claim]));
        if (facts.Job.Work.LowRiseResidential == true)
            return Statement(Standing.Lost,
                Reason.Of("Civ. Code § 8850(o)", $"The project is residential, not mixed-use and not over four stories: the procedure does "
                    + $"not apply.", [claim]));
        return facts.Job.Claimant.Role is ClaimantRole.DirectContractor or ClaimantRole.Subcontractor ? null
            : Statement(Standing.InDoubt,
                Reason.Of("Civ. Code § 8850(b)", $"The procedure is for a claim of a contractor, and through it of a subcontractor; a "
                    + $"claimant in this role is not named.", [claim]));
    }

    private static Finding Statement(Standing standing, params Reason[] why) => new()
    {
        Id = "dispute-claim.owners-statement",
        Title = "Claim under the 2026 procedure: owner's statement",
        Standing = standing,
        Why = why,
    };

    /// <summary>The owner answers a claim in writing within 30 days of receipt; silence denies the whole.</summary>
    [Rule("Civ. Code § 8850(d)")]
    [Rule("Civ. Code § 8850(g)")]
    [Rule("Civ. Code § 8851")]
    public static OwnersStatement StatementOn(FactsAsOf facts, DisputeClaimSent claim, OpenDays calendar)
    {
        var day = claim.Received ?? claim.On.Latest!.Value;
        var days = facts.Numbers.On(Number.OwnersStatement, day);
        var own = days.LastDay(day);
        var extended = claim.ExtendedTo > own ? claim.ExtendedTo : null;
        var last = calendar.RollForwardOnAnyList(extended ?? own);
        var toPay = facts.Numbers.On(Number.OwnerPays, last);
        var late = facts.Numbers.On(Number.OwnersInterest, last);
        var answers = facts.All<DisputeClaimAnswered>();
        var name = extended is not null ? Sentence.Of("owner's statement, by the day agreed in writing")
            : claim.Received is null
            ? (Sentence)$"owner's statement, not before {days.Text} after the sending" : $"owner's statement, {days.Text} after receipt";
        var isGood = WentByItsMail(claim);
        var ended = last > Until(facts) || facts.AsOf > Until(facts);
        return new OwnersStatement(
            answers.Count > 0 ? Standing.Done
            : facts.Job.Contract.On is null || !isGood || ended || (claim.Received is null && extended is null && facts.AsOf > last)
            ? Standing.InDoubt
            : facts.AsOf <= last ? Standing.NotYet : Standing.Open,
            new Reading(name, last),
            [
                Reason.Of("Civ. Code § 8850(d)",
                    $"The owner states in writing, within {days} of receipt{(claim.Received is null
                        ? ", which was not before the sending,"
                        : "")} on {day}, what is disputed and what is not, and pays the undisputed part within {toPay} after its "
                            + $"statement, else with {late} a month (Civ. Code § 8850(h)).", [claim]),
                .. extended is { } agreed
                    ? (Reason[])[Reason.Of("Civ. Code § 8850(d)", $"The parties extended the owner's time to {agreed}, in writing.",
                        [claim])] : [],
                Reason.Of("Civ. Code § 8850(g)", $"Silence denies the whole claim."),
                .. answers.Count > 0
                    ? (Reason[])[Reason.Of("Civ. Code § 8850(d)", $"Answered {DaySpan.Of(answers[^1].On)}.", [answers[^1]])] : [],
                .. isGood ? (Reason[])[]
                    : [Reason.Of("Civ. Code § 8850(c)", $"A claim is one sent by registered or certified mail with return receipt "
                        + $"requested: send it again that way.", [claim])],
                .. ended ? (Reason[])[
                    Reason.Of("Civ. Code § 8851", $"The article is repealed from {Until(facts).PlusDays(1)}, and nothing saves a claim "
                        + $"that was begun under it.")] : [],
                Reason.Of("Civ. Code § 8850(j)", $"Lien and stop-work rights stay open meanwhile; none of their days is moved."),
            ],
            [
                .. facts.Job.Contract.On is null
                    ? (Question[])[
                        new Question($"On which day was the contract made? The procedure governs contracts "
                            + $"from {Since(facts):iso} on.{HeadField.ContractOn:aside}")] : [],
                .. facts.Job.Work.LowRiseResidential is null
                    ? (Question[])[
                        new Question($"Is the project residential, not mixed-use and not over four stories? Then the procedure does not "
                            + $"apply.{HeadField.WorkLowRiseResidential:aside}")] : [],
                .. claim.Received is null
                    ? (Question[])[
                        new Question($"On which day did the owner receive the claim?{DisputeKinds.DisputeClaimSent.At("received"):aside}") {
                            Corrects = claim }] : [],
                .. claim.Manner is null
                    ? (Question[])[
                        new Question($"Was the claim sent by registered or certified mail with return receipt "
                            + $"requested?{DisputeKinds.DisputeClaimSent.At("manner"):aside}") { Corrects = claim }] : [],
            ]);
    }

    /// <summary>After the owner's answer, or its silence: a conference, a second statement, and mediation of what is left.</summary>
    [Rule("Civ. Code § 8850(e)")]
    [Rule("Civ. Code § 8850(f)")]
    private static Finding? NextStep(FactsAsOf facts, DisputeClaimSent claim, OwnersStatement statement, OpenDays calendar)
    {
        var denied = statement.Last.Day.PlusDays(1);
        if (Latest<ConferenceHeld>(facts) is { On.Latest: { } held } conference)
        {
            var businessDays = facts.Numbers.On(Number.OwnersSecondStatement, held);
            var second = businessDays.LastBusinessDay(held, calendar);
            var rest = facts.Numbers.On(Number.OwnerPaysTheRest, second);
            var mediator = facts.Numbers.On(Number.OwnersMediator, second);
            return Step(facts, "dispute-claim.second-statement", "Claim under the 2026 procedure: what is left in dispute",
                $"{businessDays.Spelled} after the conference", second,
                Reason.Of("Civ. Code § 8850(e)", $"Within {businessDays} after the conference of {held}, by {second}, the owner states in "
                    + $"writing what is left in dispute; the rest is paid within {rest} after.", [conference]),
                Reason.Of("Civ. Code § 8850(f)", $"What is left goes to mediation; a mediator is agreed on within {mediator} after the "
                    + $"part was identified in writing, else the contractor chooses."));
        }

        if (Latest<ConferenceDemanded>(facts) is { On.Latest: { } demanded } demand)
        {
            var isGood = demand.Manner is null or Manner.CertifiedMail or Manner.RegisteredMail;
            var days = facts.Numbers.On(Number.OwnersConference, demanded);
            var last = calendar.RollForwardOnAnyList(days.LastDay(demanded));
            var step = Step(facts, "dispute-claim.conference", "Claim under the 2026 procedure: conference",
                $"{days.Text} after the demand for a conference", last,
                Reason.Of("Civ. Code § 8850(e)", $"On the demand of {demanded} the owner schedules a conference "
                    + $"within {days} of its receipt, by {last} at the earliest.", [demand]));
            return isGood ? step : step with
            {
                Standing = Standing.InDoubt,
                Why = [.. step.Why,
                    Reason.Of("Civ. Code § 8850(e)", $"The demand goes by registered or certified mail, return receipt requested: send it "
                        + $"again that way.", [demand])],
            };
        }

        var answered = Latest<DisputeClaimAnswered>(facts);
        if (answered is null && facts.AsOf < denied)
            return null;
        var from = answered?.On.Latest ?? denied;
        return Step(facts, "dispute-claim.conference", "Claim under the 2026 procedure: demand a conference", answered is null
            ? (Sentence)$"the day after the owner's time to answer" : $"the day of the answer", from,
            Reason.Of("Civ. Code § 8850(e)",
                $"{(answered is null
                    ? "The owner did not answer in time, so the claim is denied"
                    : "The owner answered")} {from}: demand in writing, by registered or certified mail with return receipt requested, an "
                        + $"informal conference on what is disputed. The section sets no last day for it.", [claim])) with
        {
            Standing = statement.Standing == Standing.InDoubt ? Standing.InDoubt : Standing.Open,
        };
    }

    /// <summary>
    /// A subcontractor's claim is presented by the contractor, who says within 30 days of the written request whether it did.
    /// </summary>
    [Rule("Civ. Code § 8850(j)")]
    private static Finding? ContractorsAnswer(FactsAsOf facts, OpenDays calendar)
    {
        var requests = facts.All<ClaimRequestMade>();
        if (requests.Count == 0 || DaySpan.Of(requests[^1].On) is not { } on)
            return null;
        var days = facts.Numbers.On(Number.PrivateContractorsAnswer, on.Latest);
        var last = calendar.RollForwardOnAnyList(days.LastDay(on.Latest));
        var answers = facts.All<ClaimRequestAnswered>();
        var none = NoSuchRequest(facts, requests[^1]);
        List<Reading> readings = none is not null
            ? [] : [new Reading($"contractor's answer, not before {days.Text} after the request", last)];
        return new Finding
        {
            Id = "dispute-claim.contractors-answer",
            Title = "Claim through the contractor: its answer",
            Standing = none is not null
                ? Standing.Lost : answers.Count > 0 ? Standing.Done : facts.AsOf <= last ? Standing.NotYet : Standing.Open,
            Readings = readings,
            Band = readings.Count == 0 ? null : Deadline.BandOver(readings),
            Amount = requests[^1].Amount,
            Why = none is not null ? [none] :
            [
                Reason.Of("Civ. Code § 8850(j)", $"Asked {on} to present the claim to the owner, the contractor says in writing "
                    + $"within {days} of receipt whether it did, and if not, why not.", [requests[^1]]),
                .. answers.Count > 0
                    ? (Reason[])[
                        Reason.Of("Civ. Code § 8850(j)",
                            $"Answered {DaySpan.Of(answers[^1].On)}{(answers[^1].Presented switch { true =>
                                ": presented", false => ": not presented", null => "" })}.", [answers[^1]])] : [],
            ],
        };
    }

    // The procedure is one of the direct contract, through which a subcontractor's claim goes.
    private static Reason? NoSuchRequest(FactsAsOf facts, ClaimRequestMade request) =>
        facts.Job.Work.LowRiseResidential == true
            ? Reason.Of("Civ. Code § 8850(o)", $"The project is residential, not mixed-use and not over four stories: the procedure does "
                + $"not apply.", [request])
        : facts.Job.Work.DirectContract?.On is { } made && IsOutside(facts, made)
            ? Reason.Of("Civ. Code § 8850(n)", $"The direct contract was made on {made}; the procedure governs contracts made "
                + $"from {Since(facts)} on, while the article is in force.", [request])
        : null;

    private static Finding ThroughTheContractor(FactsAsOf facts, DisputeClaimSent claim)
    {
        var days = facts.Numbers.On(Number.PrivateContractorsAnswer, claim.On.Latest ?? facts.AsOf);
        var owners = facts.Numbers.On(Number.OwnersStatement, claim.On.Latest ?? facts.AsOf);
        return Statement(Standing.InDoubt,
            Reason.Of("Civ. Code § 8850(j)", $"A subcontractor has no contract with the owner: it asks the contractor in writing, with its "
                + $"documents, to present the claim, and the contractor says "
                + $"within {days} of receipt{(claim.On.Latest is { } sent
                    ? (Sentence)$", not before {days.LastDay(sent):iso} for what was sent on {sent:iso},"
                    : $"")} whether it did. The owner's {owners} begin when it receives the claim from the contractor.", [claim])) with
        {
            Questions = facts.All<ClaimRequestMade>().Count > 0 ? []
                : [new Question($"Was the claim sent to the contractor, with the request to present it, and on which "
                    + $"day?{DisputeKinds.ClaimRequestMade:aside}")],
        };
    }

    private static Finding Step(FactsAsOf facts, string id, string title, Sentence reading, LocalDate day, params Reason[] why)
    {
        List<Reading> readings = [new Reading(reading, day)];
        return new Finding
        {
            Id = id,
            Title = title,
            Standing = facts.AsOf > Until(facts) ? Standing.InDoubt : facts.AsOf <= day ? Standing.NotYet : Standing.Open,
            Readings = readings,
            Band = Deadline.BandOver(readings),
            Why = why,
        };
    }

    private static T? Latest<T>(FactsAsOf facts) where T : Entry => facts.All<T>() is { Count: > 0 } all ? all[^1] : null;
}

/// <summary>The owner's written statement on a claim.</summary>
/// <param name="Standing">Done once it was made; open once it is late.</param>
/// <param name="Last">The owner's last day to make it.</param>
/// <param name="Why">The reasons.</param>
/// <param name="Questions">What the file does not answer.</param>
internal sealed record OwnersStatement(
    Standing Standing, Reading Last, IReadOnlyList<Reason> Why, IReadOnlyList<Question> Questions);
