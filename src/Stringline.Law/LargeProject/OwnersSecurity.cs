using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LargeProject;

/// <summary>The security that the owner of a large private project gives its direct contractor (Civ. Code §§ 8700-8730).</summary>
public static class OwnersSecurity
{
    /// <summary>A number of this part as of the day of the contract.</summary>
    private static NumberRow Of(FactsAsOf facts, Number number) => facts.Numbers.On(number, facts.Job.Contract.On ?? facts.AsOf);

    /// <summary>
    /// The findings <c>owners-security.due</c> and <c>owners-security.suspension-first-day</c>; none for others than the direct contractor
    /// of a large project.
    /// </summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts)
    {
        if (facts.Job.Claimant.Role != ClaimantRole.DirectContractor || facts.Job.Contract.Price is not { } price
            || price <= Of(facts, Number.LesserPriceWithSecurity).Value
            || facts.Job.Work.SecurityExempt == true || Applies(facts) == Verdict.No)
            yield break;
        var held = SecurityHeld.Of(facts, Part(price, Of(facts, Number.OwnersSecurity)));
        yield return Due(facts, price, held);
        var demands = facts.All<SecurityDemanded>();
        if (demands.Count > 0 && DaySpan.Of(demands[^1].On) is { } on)
            yield return Suspension(facts, held, demands[^1], on);
    }

    /// <summary>By the price and by what the one who ordered the work holds.</summary>
    [Rule("Civ. Code § 8700(a)")]
    private static Verdict Applies(FactsAsOf facts) =>
        (facts.Job.Contract.Price > Of(facts, Number.FeePriceWithSecurity).Value, facts.Job.Work.OrderedByTenant) switch
    {
        (true, _) => Verdict.Yes,
        (false, true) => Verdict.Yes,
        (false, false) => Verdict.No,
        (false, null) => Verdict.Open,
    };

    /// <summary>
    /// A bond, a letter of credit or an escrow account of 15 percent of the price, 25 where the work is short; and a certified copy of the
    /// construction deed of trust.
    /// </summary>
    [Rule("Civ. Code § 8710")]
    [Rule("Civ. Code § 8720")]
    [Rule("Civ. Code § 8722")]
    [Rule("Civ. Code § 8702")]
    [Rule("Civ. Code § 8704")]
    private static Finding Due(FactsAsOf facts, decimal price, SecurityHeld held)
    {
        var (percent, shortPercent) = (Of(facts, Number.OwnersSecurity), Of(facts, Number.OwnersSecurityOfShortWork));
        var (amount, shortly) = (Part(price, percent), Part(price, shortPercent));
        var (fee, lesser) = (Of(facts, Number.FeePriceWithSecurity).Value, Of(facts, Number.LesserPriceWithSecurity).Value);
        var shortWork = Of(facts, Number.ShortWork).Spelled;
        var wait = facts.Numbers.On(Number.SuspendForSecurity, facts.AsOf);
        var (lease, worth) = (Of(facts, Number.LeaseLikeFee), Of(facts, Number.WorthWithoutSecurity));
        return new Finding
        {
            Id = "owners-security.due",
            Title = "Security from the owner of a large project",
            Standing = held.Is switch
            {
                Verdict.Yes => Standing.Done,
                Verdict.Open => Standing.InDoubt,
                _ => IsOwed(facts) ? Standing.Open : Standing.InDoubt,
            },
            Amount = amount,
            Explain = () =>
            [
                Reason.Of("Civ. Code § 8700(a)", $"The owner owes security where the price, {price} here, is "
                    + $"above {fee}, or above {lesser} for one who holds less than the fee, as a tenant does."),
                Reason.Of("Civ. Code § 8722", $"At least {percent} of the price, {amount}; {shortPercent}, {shortly}, if the work is to be "
                    + $"substantially completed within {shortWork} after it commences. Where the price is not fixed, of the guaranteed "
                    + $"maximum or of the estimate in good faith (Civ. Code § 8730)."),
                Reason.Of("Civ. Code § 8720", $"By a bond, an irrevocable letter of credit or a construction security escrow account; it "
                    + $"pays only if the owner defaults on what it owes. With it goes a copy, certified by the recorder, of the deed of "
                    + $"trust for the construction loan (Civ. Code § 8710(b))."),
                Reason.Of("Civ. Code § 8712", $"If it is not given, demand it by notice; work may be suspended if it is not there "
                    + $"within {wait} after that. No contract can waive it (Civ. Code § 8714)."),
                .. held.Why is { } told ? (Reason[])[told] : [],
            ],
            Ask = () =>
            [
                .. Applies(facts) == Verdict.Open
                    ? (Question[])[
                        new Question($"Does the one who ordered the work hold less than the fee, as a tenant "
                            + $"does?{HeadField.WorkOrderedByTenant:aside}", Dollars: amount)] : [],
                .. facts.Job.Work.OrderedByTenant == true && price <= fee
                    ? (Question[])[
                        new Question($"Does the lease run for at least {lease.Text} and cover whole parcels? Then the tenant counts as "
                            + $"owner of the fee, and nothing is owed at this "
                            + $"price.{HeadField.WorkOrderedByTenant:aside}", Dollars: amount)] : [],
                .. facts.Job.Work.SecurityExempt is null
                    ? (Question[])[
                        new Question($"Is it a single-family house or a housing development with a density bonus, is the owner a listed "
                            + $"company rated investment grade or a company with a net worth above {worth.Text}, or does it own the "
                            + $"majority of the contractor? Then no security is "
                            + $"owed.{HeadField.WorkSecurityExempt:aside}", Dollars: amount)] : [],
                .. held is { Is: Verdict.Yes, Entry.Amount: { } whole } && whole >= shortly
                    ? (Question[])[]
                    : [new Question($"Is the work to be substantially completed within {shortWork} after it commences? "
                        + $"Then {shortPercent.Text} is owed.", Dollars: shortly - amount)],
                .. held.Asks is { } asked ? (Question[])[asked] : [],
            ],
        };
    }

    private static bool IsOwed(FactsAsOf facts) => Applies(facts) == Verdict.Yes && facts.Job.Work.SecurityExempt == false;

    private static decimal Part(decimal price, NumberRow percent) =>
        decimal.Round(percent.PercentOf(price), 2, MidpointRounding.AwayFromZero);

    /// <summary>
    /// Ten days after notice demanding it, the contractor may suspend work until the security is there: with it the right ends.
    /// </summary>
    [Rule("Civ. Code § 8712")]
    private static Finding Suspension(FactsAsOf facts, SecurityHeld held, SecurityDemanded demand, DaySpan on)
    {
        var given = Giving.CompleteOn(facts.Numbers, on, demand.Manner ?? Manner.Personal).Latest;
        var wait = facts.Numbers.On(Number.SuspendForSecurity, given);
        var first = wait.FirstDayAfter(given);
        var isGood = demand.Manner is not { } manner || Giving.IsGood(manner);
        List<Reading> readings = [new Reading($"the {NumberWords.Ordinal(wait.Count + 1)} day after the demand", first)];
        return new Finding
        {
            Id = "owners-security.suspension-first-day",
            Title = "Suspend work for want of security: first day",
            Standing = held.Is == Verdict.Yes ? Standing.Done
                : facts.AsOf < first ? Standing.NotYet
                : isGood && held.Is == Verdict.No && IsOwed(facts) ? Standing.Open : Standing.InDoubt,
            Readings = readings,
            Band = Deadline.BandOver(readings),
            Why =
            [
                Reason.Of("Civ. Code § 8712", $"Security was demanded {on}. If it is not there within {wait}, work may be suspended "
                    + $"from {first} until it is.", [demand]),
                .. isGood ? (Reason[])[]
                    : [Reason.Of("Civ. Code § 8712", $"The demand was not given in a manner of Civ. Code § 8106: give it again.",
                        [demand])],
                .. held.Why is { } told ? (Reason[])[told] : [],
            ],
            Questions =
            [
                .. held.Is != Verdict.Yes && demand.Manner is null
                    ? (Question[])[
                        new Question($"How was the demand for security given?{DisputeKinds.SecurityDemanded.At("manner"):aside}") {
                            Corrects = demand }] : [],
                .. held.Entry is null && facts.AsOf >= first
                    ? (Question[])[
                        new Question($"Has the owner provided the security since? Then work may no longer be suspended for want of "
                            + $"it.{DisputeKinds.SecurityProvided:aside}")] : [],
                .. held.Asks is { } asked ? (Question[])[asked] : [],
            ],
        };
    }
}
