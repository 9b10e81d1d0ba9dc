using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>The cap on retention in contracts on public work made since the section began (Pub. Contract Code § 7201).</summary>
internal static class PublicRetentionCap
{
    private const string Section = "Pub. Contract Code § 7201(b)(1)";

    /// <summary>The finding <c>retention.cap</c>; null where the file shows no retention.</summary>
    [Rule("Pub. Contract Code § 7201(b)(1)")]
    public static Finding? Finding(FactsAsOf facts)
    {
        var held = facts.All<Retained>();
        if (held.Count == 0)
            return null;
        if (NoneAtAll(facts) is { } none)
            return CapMeasure.Answer(Standing.Open, Total.Of(held, static r => r.Amount), [none], []);
        var from = facts.Numbers.Begins(Number.PublicRetentionCap);
        if (facts.Job.Contract.On is not { } made)
            return CapMeasure.Answer(Standing.InDoubt, null,
                [Reason.Of(Section, $"The cap is on contracts made on or after {from}; the file does not give the day of the contract.",
                    [.. held])], [CapMeasure.AskDay]);
        if (made < from)
            return CapMeasure.Answer(Standing.Done, null,
                [Reason.Of(Section, $"The cap is on contracts made on or after {from}; this one was made on {made}.", [.. held])], []);
        return NoBondBrought(facts) is { } exception
            ? CapMeasure.Answer(Standing.Done, null, [exception], []) : Measured(facts, held, made);
    }

    private static Finding Measured(FactsAsOf facts, IReadOnlyList<Retained> held, LocalDate made)
    {
        if (CapMeasure.Of(facts, held, facts.Numbers.On(Number.PublicRetentionCap, made),
            PrimesRate(facts)) is not { Excess: var excess } measure)
            return CapMeasure.NotMeasured(Section, held);
        var questions = measure.Questions();
        if (excess > 0 && facts.Job.Claimant.Role != ClaimantRole.DirectContractor && facts.Job.Contract.BondNotBrought is null)
            questions.Add(new Question($"Was the claimant told before the bid that bonds are required, and did it bring none? Then there "
                + $"is no cap.{HeadField.ContractBondNotBrought:aside}", Dollars: excess));
        if (excess > 0 && facts.Job.Work.SubstantiallyComplex is null)
            questions.Add(new Question($"Did the public entity find before bids, in a finding set out in the bid documents, that the "
                + $"project is substantially complex? Then it may retain "
                + $"more.{HeadField.WorkSubstantiallyComplex:aside}", Dollars: excess));
        return CapMeasure.Answer(
            measure.Price is null || !IsContractor(facts) || (excess > 0 && facts.Job.Work.SubstantiallyComplex == true)
                ? Standing.InDoubt : excess > 0 ? Standing.Open : Standing.Kept,
            excess,
            [
                Reason.Of(Section, $"Retention may not exceed {measure.PercentInWords} percent of each payment, and in all of the "
                    + $"price. {InWords(measure.Price, measure.Work)} Retained: {measure.Retained}; beyond the cap: {excess}.", [.. held]),
                .. facts.Job.Work.SubstantiallyComplex == true ? (Reason[])[Complex(facts)] : [],
                .. IsContractor(facts)
                    ? (Reason[])[]
                    : [Reason.Of(Section, $"The section speaks of contractors and subcontractors; whether a claimant in this role may use "
                        + $"it is open.")],
            ],
            questions);
    }

    private static string InWords(decimal? price, decimal? furnished) => (price, furnished) switch
    {
        ({ } p, { } f) => $"The price with its changes is {LawText.Money(p)}, the work furnished so far {LawText.Money(f)}.",
        ({ } p, null) => $"The price with its changes is {LawText.Money(p)}.",
        (null, { } f) => $"The work furnished so far is {LawText.Money(f)}.",
        _ => "",
    };

    private static bool IsContractor(FactsAsOf facts) =>
        facts.Job.Claimant.Role is ClaimantRole.DirectContractor or ClaimantRole.Subcontractor;

    /// <summary>A contract below the direct one bears no higher rate than that one does.</summary>
    [Rule("Pub. Contract Code § 7200(b)")]
    private static decimal? PrimesRate(FactsAsOf facts) =>
        facts.Job.Claimant.Role != ClaimantRole.DirectContractor ? facts.Job.Work.DirectContract?.RetentionPercent : null;

    /// <summary>No cap toward a subcontractor that was told before the bid that bonds are required, and brings none.</summary>
    [Rule("Pub. Contract Code § 7201(b)(2)")]
    private static Reason? NoBondBrought(FactsAsOf facts) =>
        facts.Job.Claimant.Role != ClaimantRole.DirectContractor && facts.Job.Contract.BondNotBrought == true
        ? Reason.Of("Pub. Contract Code § 7201(b)(2)", $"The claimant was told before the bid that bonds are required, and brought none: "
            + $"there is no cap.")
        : null;

    /// <summary>More than 5 percent may be retained on a project that was found before bids to be substantially complex.</summary>
    [Rule("Pub. Contract Code § 7201(b)(3)")]
    [Rule("Pub. Contract Code § 7201(b)(4)")]
    private static Reason Complex(FactsAsOf facts) => PublicPayer.IsState(facts) == true
        ? Reason.Of("Pub. Contract Code § 7201(b)(3)", $"The project was found before bids to be substantially complex: the rate that the "
            + $"bid documents give counts.")
        : Reason.Of("Pub. Contract Code § 7201(b)(4)", $"The project was found before bids to be substantially complex: the rate that the "
            + $"bid documents give counts.");

    /// <summary>
    /// The Department of Transportation retains nothing from progress payments to its direct contractor on a transportation project.
    /// </summary>
    [Rule("Pub. Contract Code § 7202(a)")]
    private static Reason? NoneAtAll(FactsAsOf facts) =>
        facts.Job.Work.Body == PublicBody.Transportation && facts.Job.Claimant.Role == ClaimantRole.DirectContractor
        ? Reason.Of("Pub. Contract Code § 7202(a)", $"The Department of Transportation may withhold no retention from progress payments on "
            + $"a transportation project.", [.. facts.All<Retained>()])
        : null;
}
