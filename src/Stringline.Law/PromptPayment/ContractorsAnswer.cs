using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// A subcontractor's claim against a public entity goes through the contractor, who says in time after the request whether it presented it
/// (Pub. Contract Code § 9204(d)(5)).
/// </summary>
internal static class ContractorsAnswer
{
    private const string Section = "Pub. Contract Code § 9204(d)(5)";

    /// <summary>
    /// The finding <c>dispute-claim.contractors-answer</c>; null where no request was made. A claim sent by one with no contract with the
    /// entity is taken for a request.
    /// </summary>
    [Rule("Pub. Contract Code § 9204(d)(5)")]
    public static Finding? Finding(FactsAsOf facts, OpenDays calendar)
    {
        var (requests, claims) = (facts.All<ClaimRequestMade>(), facts.All<DisputeClaimSent>());
        Entry? request = requests.Count > 0 ? requests[^1] : claims.Count > 0 ? claims[^1] : null;
        if (request is null || DaySpan.Of(request.On) is not { } made)
            return null;
        var received = (request as DisputeClaimSent)?.Received;
        var from = received ?? made.Latest;
        var law = ClaimLaw.Of(facts, from, (request as ClaimRequestMade)?.Amount ?? (request as DisputeClaimSent)?.Amount);
        var days = facts.Numbers.On(Number.ContractorsAnswer, from);
        var reading = new Reading(
            $"contractor's answer, {days.Text} after receipt{(received is null ? (Sentence)$", which was not before {from:iso}" : $"")}",
            calendar.RollForwardOnAnyList(days.LastDay(from)));
        ClaimRequestAnswered? answer = null;
        foreach (var answered in facts.All<ClaimRequestAnswered>())
        {
            if (answered.On.Latest >= made.Earliest)
                answer = answered;
        }

        var isContractor = facts.Job.Claimant.Role == ClaimantRole.Subcontractor;
        return new Finding
        {
            Id = "dispute-claim.contractors-answer",
            Title = "Claim through the contractor: its answer",
            Standing = law.IsNew == Verdict.No ? Standing.Lost
                : answer is not null ? Standing.Done
                : law.IsNew == Verdict.Open || !isContractor || ClaimLaw.IsAfterItsEnd(facts, facts.AsOf) ? Standing.InDoubt
                : facts.AsOf <= reading.Day ? Standing.NotYet : Standing.Open,
            Readings = [reading],
            Band = new Band(reading, reading),
            Why =
            [
                Reason.Of(Section, $"One with no contract with the entity asks the contractor in writing, with the documents, to present "
                    + $"its claim. Within {days} of receiving the request the contractor says whether it presented it, and why "
                    + $"not.", [request]),
                .. request is DisputeClaimSent
                    ? (Reason[])[
                        Reason.Of(Section, $"The claim entered is taken for such a request: it goes to the contractor, not to the entity.",
                            [request])] : [],
                .. answer is null ? (Reason[])[] : [Reason.Of(Section, answer.Presented switch
                {
                    true => $"The contractor answered {DaySpan.Of(answer.On)} that it presented the claim.",
                    false => $"The contractor answered {DaySpan.Of(answer.On)} that it did not present the claim.",
                    null => $"The contractor answered {DaySpan.Of(answer.On)}.",
                }, [answer])],
                .. law.Why,
            ],
            Questions =
            [
                .. isContractor
                    ? (Question[])[]
                    : [new Question($"The section speaks of subcontractors that are licensed contractors; whether a claimant in this role "
                        + $"may use it is open.{HeadField.ClaimantRole:aside}")],
                .. law.Questions,
            ],
        };
    }
}
