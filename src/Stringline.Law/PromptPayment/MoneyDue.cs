using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// When progress payments and retention are due on private work, and the penalty for holding them. Shown beside the claim of lien,
/// never part of it.
/// </summary>
public static class MoneyDue
{
    /// <summary>Days from a demand for progress payment to the owner.</summary>
    public const int OwnerProgressDays = 30;

    /// <summary>Days from the hirer's receipt of a progress payment.</summary>
    public const int ContractorProgressDays = 7;

    /// <summary>Days from completion for the owner's retention.</summary>
    public const int OwnerRetentionDays = 45;

    /// <summary>Days from the hirer's receipt of retention.</summary>
    public const int ContractorRetentionDays = 10;

    /// <summary>The findings <c>prompt-payment.*</c> and <c>retention.due</c>, where the file has their facts.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, CompletionReadings completion, OpenDays calendar)
    {
        if (facts.Job.Claimant.Role == ClaimantRole.DirectContractor)
        {
            foreach (var demanded in facts.All<PaymentDemanded>())
            {
                if (FromOwner(facts, demanded, calendar) is { } finding)
                    yield return finding;
            }

            if (OwnersRetention(facts, completion, calendar) is { } retention)
                yield return retention;
            yield break;
        }

        foreach (var received in facts.All<HirerPaid>())
        {
            if (Days.Of(received.On) is not { } on)
                continue;
            yield return received.Of switch
            {
                PaymentOf.Progress => FromHirer(facts, received, on, calendar),
                PaymentOf.Retention => HirersRetention(facts, received, on, calendar),
                _ => throw new InvalidOperationException($"No such payment: {received.Of}."),
            };
        }
    }

    /// <summary>Owner to direct contractor: 30 days after a notice demanding payment under the contract, unless agreed otherwise in writing.</summary>
    [Rule("Civ. Code § 8800(a)")]
    [Rule("Civ. Code § 8800(c)")]
    private static Finding? FromOwner(FactsAsOf facts, PaymentDemanded demanded, OpenDays calendar)
    {
        if (Days.Of(demanded.On) is not { } on)
            return null;
        var due = calendar.RollForwardOnAnyList(Period.LastDay(on.Latest, OwnerProgressDays));
        return Owed(facts, "prompt-payment.progress", "Progress payment from the owner", due, demanded.Amount - PaidAfter(facts, on.Earliest), "Civ. Code § 8800", demanded,
            Reason.Of("Civ. Code § 8800(a)", $"Due within 30 days after a notice demanding payment was given {on}, unless agreed otherwise in writing; a rolled last day is allowed the owner. Penalty 2 percent a month in place of other interest.", [demanded]));
    }

    /// <summary>Contractor to subcontractor: seven days after receipt, unless agreed otherwise in writing. A supplier is not clearly within it.</summary>
    [Rule("Bus. & Prof. Code § 7108.5", Since = "2010-01-01")]
    private static Finding FromHirer(FactsAsOf facts, HirerPaid received, Days on, OpenDays calendar)
    {
        var due = calendar.RollForwardOnAnyList(Period.LastDay(on.Latest, ContractorProgressDays));
        var why = Reason.Of("Bus. & Prof. Code § 7108.5", $"Due within 7 days after the hirer was paid {on}, unless agreed otherwise in writing; penalty 2 percent of the amount a month.", [received]);
        var finding = Owed(facts, "prompt-payment.progress", "Progress payment from the one who hired us", due, received.Amount - PaidAfter(facts, on.Earliest), "Bus. & Prof. Code § 7108.5", received, why);
        return facts.Job.Claimant.Role == ClaimantRole.Subcontractor
            ? finding
            : finding with
            {
                Standing = Standing.InDoubt,
                Questions = [new Question("The section speaks of subcontractors; whether a claimant in this role may use it is open.")],
            };
    }

    /// <summary>Contractor to subcontractor: its share of retention within ten days after receipt (United Riggers &amp; Erectors v. Coast Iron &amp; Steel (2018) 4 Cal.5th 1082).</summary>
    [Rule("Civ. Code § 8814")]
    [Rule("Civ. Code § 8818")]
    private static Finding HirersRetention(FactsAsOf facts, HirerPaid received, Days on, OpenDays calendar)
    {
        var due = calendar.RollForwardOnAnyList(Period.LastDay(on.Latest, ContractorRetentionDays));
        var unpaid = received.Amount - PaidAfter(facts, on.Earliest);
        var finding = Owed(facts, "retention.due", "Retention from the one who hired us", due, unpaid, "Civ. Code § 8818", received,
            Reason.Of("Civ. Code § 8814", $"The share of retention is due within 10 days after the hirer received it {on}; only a good-faith dispute about that very money excuses (United Riggers & Erectors v. Coast Iron & Steel (2018) 4 Cal.5th 1082).", [received]));
        if (finding.Standing != Standing.Open || facts.All<Disputed>() is not { Count: > 0 } disputes)
            return finding;
        var whole = Late.Penalty(unpaid, due, facts.AsOf);
        return finding with
        {
            Standing = Standing.InDoubt,
            Why = [.. finding.Why, Reason.Of("Civ. Code § 8814", $"If the dispute is about other money, it excuses nothing: {unpaid} is wrongly withheld, and the penalty for {whole.WholeMonths} whole months is {whole.ForMonths}.", [.. disputes])],
            Questions = [new Question("Is the dispute about that very retention? A dispute about other money does not excuse holding it.", Dollars: whole.ForMonths - finding.Amount)],
        };
    }

    /// <summary>Owner to direct contractor: retention within 45 days after completion of the work.</summary>
    [Rule("Civ. Code § 8812")]
    private static Finding? OwnersRetention(FactsAsOf facts, CompletionReadings completion, OpenDays calendar)
    {
        var held = facts.All<Retained>();
        if (held.Count == 0 || completion.Open.Count == 0 || !completion.EndKnown)
            return null;
        // The latest reading: the owner's time gets the benefit of every doubt.
        var completed = completion.Open.Max(r => r.On.Latest);
        var due = calendar.RollForwardOnAnyList(Period.LastDay(completed, OwnerRetentionDays));
        return Owed(facts, "retention.due", "Retention from the owner", due, Total.Of(held, r => r.Amount), "Civ. Code § 8818", held[^1],
            Reason.Of("Civ. Code § 8812", $"Due within 45 days after completion of the work, taken at its latest day {completed}.", [.. held]));
    }

    private static Finding Owed(FactsAsOf facts, string id, string title, LocalDate due, decimal unpaid, string penaltySection, Entry fact, Reason why)
    {
        var owed = Math.Max(0, unpaid);
        var disputed = Total.Of(facts.All<Disputed>(), d => d.Amount);
        var withheld = Late.WronglyWithheld(owed, disputed);
        var penalty = Late.Penalty(withheld, due, facts.AsOf);
        var readings = new List<Reading> { new("last day for the payer", due) };
        return new Finding
        {
            Id = id,
            Title = title,
            Standing = owed == 0 ? Standing.Done : facts.AsOf <= due ? Standing.NotYet : Standing.Open,
            Readings = readings,
            Band = Deadline.Band(readings),
            Amount = penalty.ForMonths,
            Why =
            [
                why,
                Reason.Of(penaltySection, $"{owed} is unpaid, {disputed} of it disputed in good faith; at most 150 percent of that may be held, so {withheld} is wrongly withheld."),
                Reason.Of(penaltySection, $"Penalty for {penalty.WholeMonths} whole months after {due}: {penalty.ForMonths}; day by day to {facts.AsOf} at 24 percent a year it would be {penalty.ByDays}. It is no part of a claim of lien.", [fact]),
            ],
        };
    }

    /// <summary>What the file shows as paid on a day and after it, dollars and cents.</summary>
    internal static decimal PaidAfter(FactsAsOf facts, LocalDate day) =>
        Total.Of(facts.All<Paid>().Where(p => p.On.Earliest >= day), p => p.Amount);
}
