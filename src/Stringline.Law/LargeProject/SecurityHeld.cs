using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LargeProject;

/// <summary>
/// Whether the owner has provided the security and maintains it, which ends the right to suspend work (Civ. Code § 8712).
/// </summary>
/// <param name="Is">Open where its day, its sum or its end leaves that in doubt.</param>
/// <param name="Entry">The security told of last; null where the file tells of none.</param>
/// <param name="Why">Why; null where the file tells of none.</param>
/// <param name="Asks">What would settle it; null where nothing is to be asked.</param>
internal readonly record struct SecurityHeld(Verdict Is, SecurityProvided? Entry, Reason? Why, Question? Asks)
{
    private const string Section = "Civ. Code § 8712";

    /// <summary>What the file shows on the day of asking.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="least">Dollars and cents that the security is at least (Civ. Code § 8722(b)).</param>
    [Rule(Section)]
    public static SecurityHeld Of(FactsAsOf facts, decimal least)
    {
        var all = facts.All<SecurityProvided>();
        if (all.Count == 0)
            return default(SecurityHeld) with { Is = Verdict.No };
        var given = all[^1];
        if (given.Until <= facts.AsOf)
            return new(Verdict.No, given,
                Reason.Of(Section, $"The security {GivenOn(given)} ended {given.Until!.Value}: the owner does not maintain it, and it may "
                    + $"be demanded again.", [given]), null);
        if (given.On.Latest > facts.AsOf)
            return new(Verdict.Open, given, Reason.Of(Section, $"The security {GivenOn(given)}: it may not be there yet.", [given]),
                new Question($"On which day did the owner provide the security?{DisputeKinds.SecurityProvided.At("on"):aside}") { Corrects =
                    given });
        if (given.Amount < least)
            return new(Verdict.Open, given,
                Reason.Of("Civ. Code § 8722", $"The security {GivenOn(given)} is {given.Amount.Value}, less than the {least} that is owed "
                    + $"at least: what falls short is not provided.", [given]), null);
        if (facts.All<SecurityDemanded>() is { Count: > 0 } demands && demands[^1].On.Earliest > given.On.Latest)
            return new(Verdict.Open, given,
                Reason.Of(Section, $"The security {GivenOn(given)}, and was demanded again after that: it may not have been maintained.",
                    [given]),
                new Question($"Does the security still stand, or on which day did it "
                    + $"end?{DisputeKinds.SecurityProvided.At("until"):aside}") { Corrects = given });
        return new(Verdict.Yes, given,
            Reason.Of(Section, $"The security {GivenOn(given)}: while the owner maintains it, work may not be suspended for want of it.",
                [given]),
            given.Amount is null
                ? new Question($"How much is the security? At "
                    + $"least {facts.Numbers.On(Number.OwnersSecurity, facts.Job.Contract.On ?? facts.AsOf)} of the price is "
                    + $"owed.{DisputeKinds.SecurityProvided.At("amount"):aside}") { Corrects = given } : null);
    }

    private static Sentence GivenOn(SecurityProvided given) =>
        DaySpan.Of(given.On) is { } on ? (Sentence)$"provided {on}" : $"provided on a day that the file does not give";
}
