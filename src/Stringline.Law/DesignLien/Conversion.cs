using Stringline.Law.ClaimOfLien;
using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.DesignLien;

/// <summary>Recording an unpaid design lien that ended by commencement anew as a mechanics lien (Civ. Code § 8319).</summary>
public static class Conversion
{
    private const string Section = "Civ. Code § 8319";

    /// <summary>The id of the finding on the time to convert.</summary>
    public const string Id = "design-lien.conversion-last-day";

    /// <summary>
    /// The findings <c>design-lien.conversion-last-day</c> and, once converted, <c>design-lien.converted-action-last-day</c> with what
    /// follows it.
    /// </summary>
    internal static IReadOnlyList<Finding> Findings(
        FactsAsOf facts, Waterfall fee, LocalDate commenced, OpenDays calendar, out Standing? converted)
    {
        var findings = new List<Finding>();
        converted = null;
        var conversion = ToConvert(facts, fee, commenced, calendar, out var unpaid);
        if (conversion is not null)
            findings.Add(conversion.Finding(Id, "Record the design lien anew as a mechanics lien") with { Amount = unpaid });
        if (DesignLienDays.Suits(facts, LienKind.Converted, calendar) is not { } suits)
            return findings;
        var action = ToSue(facts, suits, conversion?.Standing, calendar);
        converted = action.Standing;
        findings.Add(action.Finding("design-lien.converted-action-last-day", "Action to enforce the converted lien"));
        findings.AddRange(DesignLienDays.Following(facts, fee, suits, action.Deadline, calendar));
        return findings;
    }

    /// <summary>
    /// Within 30 days after commencement ended the lien, for what is unpaid of it; by a claim that says that it is converted. Not one that
    /// had expired by its 90 days before; one on which an action was brought in them had not. No preliminary notice is needed.
    /// </summary>
    [Rule("Civ. Code § 8319")]
    private static Outcome? ToConvert(FactsAsOf facts, Waterfall fee, LocalDate commenced, OpenDays calendar, out decimal? leftUnpaid)
    {
        leftUnpaid = null;
        if (Ended(facts, commenced, calendar) is not { } ended)
            return null;
        var unpaid = Math.Min(ended.Suit.Claim.Amount ?? fee.Demand, fee.Demand);
        if (unpaid <= 0 && !fee.IsUnknown)
            return null;
        var days = facts.Numbers.On(Number.ConvertDesignLien, commenced);
        Reading[] readings = [Deadline.Own($"{days.Text} after work commenced", days.LastDay(commenced), calendar)];
        var (converted, says) = Recorded(facts, commenced);
        var standing = Deadline.StandingOf(facts.AsOf, readings, says == Verdict.Yes ? DaySpan.Of(converted!.On) : null);
        if (standing == Standing.Kept && !ClaimContents.IsWhole(converted!))
            standing = Standing.InDoubt;
        if ((says == Verdict.Open && Deadline.StandingOf(facts.AsOf, readings, DaySpan.Of(converted!.On)) != Standing.Lost)
            || (ended.Sure == Verdict.Open && standing != Standing.Lost))
            standing = Standing.InDoubt;
        leftUnpaid = fee.IsUnknown ? null : unpaid;
        return new Outcome(Deadline.Of(standing, readings, calendar), new Words(
            () => Why(ended.Suit, days, commenced, unpaid, converted, says),
            () => says == Verdict.Open ? [WhichLien.Ask(converted!)] : []));
    }

    private static List<Reason> Why(ClaimSuit ended, NumberRow days, LocalDate commenced, decimal unpaid, ClaimRecorded? converted,
        Verdict says)
    {
        List<Reason> why =
        [
            Reason.Of(Section, $"The design lien recorded {ended.Recorded} ended when work commenced on {commenced}; for what is unpaid of "
                + $"it, {unpaid}, a mechanics lien may be recorded within {days} that says that it is a converted design professional "
                + $"lien. No preliminary notice is needed; it is effective from its own recording.", [ended.Claim]),
        ];
        if (ended.Action is { } action)
            why.Add(Reason.Of("Civ. Code § 8306(b)(1)", $"The action filed {DaySpan.Of(action.On)} is on the lien that has ended: bring "
                + $"the converted claim into it.", [action]));
        if (converted is not null)
        {
            why.Add(says == Verdict.Yes
                ? Reason.Of("Civ. Code § 8319(a)(4)", $"Converted claim recorded {DaySpan.Of(converted.On)}.", [converted])
                : Reason.Of("Civ. Code § 8319(a)(4)", $"A claim was recorded {DaySpan.Of(converted.On)}; it converts the design lien only "
                    + $"if it says that it is a converted design professional lien.", [converted]));
            if (ClaimContents.Why(converted) is { } lacking)
                why.Add(lacking);
        }

        return why;
    }

    // The last design claim that commencement ended, and whether it had surely not expired by its own time before.
    private static (ClaimSuit Suit, Verdict Sure)? Ended(FactsAsOf facts, LocalDate commenced, OpenDays calendar)
    {
        (ClaimSuit Suit, Verdict Sure)? best = null;
        foreach (var claim in facts.All<ClaimRecorded>())
        {
            if (!WhichLien.MayBeDesign(facts, claim) || !(claim.On.Latest < commenced)
                || ClaimSuit.Of(facts, claim, Number.SueOnDesignLien, facts.All<ClaimRecorded>(), calendar) is not { } suit)
                continue;
            var released = DesignLienRelease.IsReleased(facts, claim);
            var sure = released == Verdict.Yes ? Verdict.No : IsAlive(suit, commenced);
            if (sure == Verdict.No || (best is { Sure: Verdict.Yes } && sure != Verdict.Yes))
                continue;
            best = (suit, released == Verdict.Open ? Verdict.Open : sure);
        }

        return best;
    }

    [Rule("Civ. Code § 8306(b)(1)")]
    [Rule("Civ. Code § 8306(b)(2)")]
    private static Verdict IsAlive(ClaimSuit suit, LocalDate commenced) =>
        suit.End is not null && suit.Standing == Standing.Lost ? Verdict.No
        : commenced <= suit.FirstEnd || suit.Standing == Standing.Kept ? Verdict.Yes
        : commenced <= suit.LastEnd || (suit.Action is not null && suit.Standing == Standing.InDoubt) ? Verdict.Open
        : Verdict.No;

    // A claim recorded since the work commenced: one that says that it is converted, a whole one before one that lacks something; else one
    // that does not say what it is.
    private static (ClaimRecorded? Claim, Verdict Says) Recorded(FactsAsOf facts, LocalDate commenced)
    {
        (ClaimRecorded? Claim, Verdict Says) found = (null, Verdict.No);
        foreach (var claim in facts.All<ClaimRecorded>())
        {
            if (DaySpan.Of(claim.On) is null || claim.On.Latest < commenced)
                continue;
            if (claim.Lien == LienKind.Converted && ClaimContents.IsWhole(claim))
                return (claim, Verdict.Yes);
            if (claim.Lien == LienKind.Converted && found.Says != Verdict.Yes)
                found = (claim, Verdict.Yes);
            if (claim.Lien is null && found.Claim is null)
                found = (claim, Verdict.Open);
        }

        return found;
    }

    /// <summary>The converted lien is enforced as a mechanics lien: 90 days after its own recording.</summary>
    [Rule("Civ. Code § 8319(a)(4)")]
    private static Outcome ToSue(FactsAsOf facts, ClaimSuits suits, Standing? conversion, OpenDays calendar)
    {
        var standing = suits.Released == Verdict.Open ? Standing.InDoubt : suits.StandingOn(facts.AsOf);
        standing = ReleaseBond.UnlessBonded(facts, suits.Leading!, standing, calendar);
        if (conversion == Standing.Lost)
            standing = Standing.Lost;
        else if (conversion != Standing.Kept && standing != Standing.Lost)
            standing = Standing.InDoubt;
        return new Outcome(
            Deadline.Of(standing, ActionDays.Readings(suits, standing), calendar, endKnown: suits.Leading!.Stay is not { Until: null }),
            new Words(
            () =>
            [
                Reason.Of("Civ. Code § 8319(a)(4)", $"A converted lien is enforced as a mechanics lien, but for the preliminary notice.",
                    [suits.Leading!.Claim]),
                .. conversion is null
                    ? [Reason.Of("Civ. Code § 8319(a)(1)", $"The file shows no design lien that commencement ended, unpaid: what this "
                        + $"claim converts is open.")] : Array.Empty<Reason>(),
                .. WhyAction.Of(facts, suits, standing, calendar),
            ],
            () => WhyAction.Ask(facts, suits, standing, calendar)));
    }

    /// <summary>How the time to convert was found to stand.</summary>
    /// <param name="Standing">Where it stands.</param>
    /// <param name="Unpaid">Dollars and cents that are unpaid of the lien; null where the file does not say.</param>
    /// <param name="Why">The reasons.</param>
    internal readonly record struct Converting(Standing Standing, decimal? Unpaid, IReadOnlyList<Reason> Why);

    /// <summary>
    /// What stands in the way of recording a converted claim; empty where nothing does. No preliminary notice is asked, nor any other
    /// condition of the mechanics lien.
    /// </summary>
    [Rule("Civ. Code § 8319(a)(4)")]
    internal static IReadOnlyList<Reason> Obstacles(NumberTable numbers, LocalDate commenced, Converting? found)
    {
        if (found is not { } conversion)
            return [Reason.Of("Civ. Code § 8319(a)(1)", $"The file shows no unpaid design lien that the commencement of the work has "
                + $"ended.")];
        return conversion.Standing switch
        {
            Standing.Lost =>
                [Reason.Of("Civ. Code § 8319(a)(3)", $"The {numbers.On(Number.ConvertDesignLien, commenced)} after commencement are over.",
                    [.. conversion.Why])],
            Standing.Kept => [Reason.Of("Civ. Code § 8319", $"The converted claim is recorded.", [.. conversion.Why])],
            _ => conversion.Unpaid is null
                ? [Reason.Of("Civ. Code § 8319(a)(3)",
                    $"What is unpaid of the design lien is not in the file: enter it{WorkKinds.Furnished.At("amount"):aside}.")] : [],
        };
    }

    /// <summary>The right to a mechanics lien with a converted claim beside it: no worse than that claim, which stands by itself.</summary>
    internal static Outcome WithConverted(Outcome right, Standing? converted) =>
        right.Standing == Standing.Lost && converted is Standing.Open or Standing.Kept or Standing.InDoubt
            ? right.Limited(converted.Value,
                [Reason.Of("Civ. Code § 8319(a)(4)", $"The converted design professional lien stands by itself and needs no preliminary "
                    + $"notice; for other work the mechanics lien is lost.", [.. right.Why])])
            : right;
}
