using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>The cap on retention in private contracts made since the section began (Civ. Code § 8811).</summary>
public static class RetentionCap
{
    private const string Each = "Civ. Code § 8811(b)(1)(A)";

    /// <summary>The finding <c>retention.cap</c>; null where the file shows no retention. Each contract is tested by its own day.</summary>
    [Rule("Civ. Code § 8811(a)")]
    [Rule("Civ. Code § 8811(b)(3)")]
    [Rule("Civ. Code § 8811(b)(2)")]
    public static Finding? Finding(FactsAsOf facts)
    {
        var held = facts.All<Retained>();
        if (held.Count == 0)
            return null;
        if (facts.Job.Contract.On is not { } made)
            return CapMeasure.Answer(Standing.InDoubt, null,
                [Reason.Of("Civ. Code § 8811(a)", $"The cap depends on the day of the contract, which the file does not give.", [.. held])],
                    [CapMeasure.AskDay]);
        var from = facts.Numbers.Begins(Number.RetentionCap);
        if (made < from)
            return CapMeasure.Answer(Standing.Done, null,
                [Reason.Of("Civ. Code § 8811(a)", $"The cap is on contracts made on or after {from}; this one was made on {made}: no cap.",
                    [.. held])], []);
        if (facts.Job.Work.LowRiseResidential == true)
            return CapMeasure.Answer(Standing.Done, null,
                [Reason.Of("Civ. Code § 8811(b)(3)", $"A residential project that is not mixed-use and not over four stories has no cap.",
                    [.. held])], []);
        if (facts.Job.Contract.BondNotBrought == true && facts.Job.Claimant.Role == ClaimantRole.Subcontractor)
            return CapMeasure.Answer(Standing.Done, null,
                [Reason.Of("Civ. Code § 8811(b)(2)", $"The claimant was told in writing, before or at the request for bids, that payment "
                    + $"and performance bonds are required, and brought none: no cap.", [.. held])], []);
        return Measured(facts, held, made);
    }

    /// <summary>
    /// At most 5 percent of each payment, and 5 percent of the price in all; below the direct contract at most its own percentage.
    /// </summary>
    [Rule("Civ. Code § 8811(b)(1)(A)")]
    [Rule("Civ. Code § 8811(b)(1)(B)")]
    [Rule("Civ. Code § 8811(b)(1)(C)")]
    private static Finding Measured(FactsAsOf facts, IReadOnlyList<Retained> held, LocalDate made)
    {
        var isSub = facts.Job.Claimant.Role == ClaimantRole.Subcontractor;
        var isNamed = isSub || facts.Job.Claimant.Role == ClaimantRole.DirectContractor;
        var primes = isSub ? facts.Job.Work.DirectContract?.RetentionPercent : null;
        if (CapMeasure.Of(facts, held, facts.Numbers.On(Number.RetentionCap, made), primes) is not { Excess: var excess } measure)
            return CapMeasure.NotMeasured(Each, held);
        var questions = measure.Questions();
        var lowRise = facts.Job.Work.LowRiseResidential is null && facts.Job.Work.Use != WorkUse.Commercial;
        if (lowRise)
            questions.Add(new Question($"Is the project residential, not mixed-use and not over four stories? Then there is no "
                + $"cap.{HeadField.WorkLowRiseResidential:aside}", Dollars: excess));
        if (isSub && primes is null)
            questions.Add(new Question($"What percentage does the direct contract let the owner retain? No more may be retained below "
                + $"it.{HeadField.WorkDirectContractRetentionPercent:aside}", Dollars: measure.Retained - excess));
        if (isSub && excess > 0 && facts.Job.Contract.BondNotBrought is null)
            questions.Add(new Question($"Was the claimant told in writing, before or at the request for bids, that payment and performance "
                + $"bonds are required, and did it bring none? Then there is no "
                + $"cap.{HeadField.ContractBondNotBrought:aside}", Dollars: excess));
        return CapMeasure.Answer(
            lowRise || !isNamed || (excess == 0 && (measure.Price is null || (isSub && primes is null)))
                ? Standing.InDoubt : excess > 0 ? Standing.Open : Standing.Kept,
            excess,
            [
                Reason.Of(Each, $"Retention may not exceed {measure.PercentInWords} percent of each "
                    + $"payment{(measure.Work is { } furnished
                        ? $": of the work furnished so far, {LawText.Money(furnished)}, {LawText.Money(measure.Part(furnished))}" : "")}.",
                        [.. held]),
                Reason.Of("Civ. Code § 8811(b)(1)(B)",
                    $"Nor of the price with its changes{(measure.Price is { } p
                        ? $", {LawText.Money(p)}: {LawText.Money(measure.Part(p))}"
                        : "")}. Retained: {measure.Retained}; beyond the cap: {excess}.", [.. held]),
                .. primes is { } direct
                    ? (Reason[])[Reason.Of("Civ. Code § 8811(b)(1)(C)",
                        $"The direct contract lets {CapMeasure.InWords(direct)} percent be retained; no more may be below it.")] : [],
                .. isNamed ? (Reason[])[]
                    : [Reason.Of(Each, $"The section names direct contractors and subcontractors; whether a claimant in this role may use "
                        + $"it is open.")],
            ],
            questions);
    }
}
