using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>What else the Code asks, or allows, of one who gives preliminary notice.</summary>
internal static class Duties
{
    /// <summary>Years for which the recorder keeps a filed notice.</summary>
    private const int YearsFiled = 2;

    // § 8216, § 9306: no discipline up to this price.
    private const decimal SmallContract = 400m;

    /// <summary>Those of private work.</summary>
    public static IEnumerable<Reason> OnPrivateWork(FactsAsOf facts, bool noneGiven)
    {
        if (UnpaidLaborers(facts) is { } laborers)
            yield return laborers;
        if (facts.Job.Claimant.Role == ClaimantRole.Subcontractor && NamesOnTheNotice() is var names)
            yield return names;
        if (noneGiven && Discipline(facts, "Civ. Code § 8216") is { } discipline)
            yield return discipline;
        if (!noneGiven && Filing(facts) is { } filing)
            yield return filing;
    }

    /// <summary>Those of public work.</summary>
    public static IEnumerable<Reason> OnPublicWork(FactsAsOf facts, bool noneGiven)
    {
        if (UnpaidLaborers(facts) is { } laborers)
            yield return laborers;
        if (noneGiven && Discipline(facts, "Civ. Code § 9306") is { } discipline)
            yield return discipline;
    }

    [Rule("Civ. Code § 8104")]
    private static Reason? UnpaidLaborers(FactsAsOf facts) => facts.Job.Claimant.Role is ClaimantRole.DirectContractor or ClaimantRole.Subcontractor
        ? Reason.Of("Civ. Code § 8104", $"A contractor that has not paid a laborer in full gives the laborer, any bargaining representative, the lender and the owner notice of it, with hours and sums, no later than the day the pay became late; else its license can be disciplined.")
        : null;

    [Rule("Civ. Code § 8202(b)")]
    private static Reason NamesOnTheNotice() =>
        Reason.Of("Civ. Code § 8202(b)", $"A subcontractor that has not paid all that is due to a laborer names the laborer, and any fund to which payments are due, with addresses, in the preliminary notice.");

    [Rule("Civ. Code § 8216")]
    [Rule("Civ. Code § 9306")]
    private static Reason? Discipline(FactsAsOf facts, string section) =>
        facts.Job.Claimant.Role == ClaimantRole.Subcontractor && (facts.Job.Contract.Price ?? SmallContract + 1) > SmallContract
            ? Reason.Of(section, $"A licensed subcontractor with a contract for more than {SmallContract} that does not give preliminary notice can be disciplined by the license board.")
            : null;

    /// <summary>Filing changes no time and tells nobody; it makes the recorder mail word of a notice of completion or cessation.</summary>
    [Rule("Civ. Code § 8214")]
    private static Reason? Filing(FactsAsOf facts)
    {
        if (facts.PreliminaryNotices.Count == 0)
            return null;
        foreach (var filed in facts.All<NoticeFiled>())
        {
            if (Days.Of(filed.On) is { } on && facts.AsOf <= Period.AddYears(on.Earliest, YearsFiled))
                return Reason.Of("Civ. Code § 8214", $"The preliminary notice was filed with the county recorder {on}, who then mails word of a recorded notice of completion or cessation, in good faith within five days. It changes no time; go on searching the index. The recorder may destroy it after {Period.AddYears(on.Earliest, YearsFiled)}.", [filed]);
        }

        return Reason.Of("Civ. Code § 8214", $"A preliminary notice that was given may be filed with the county recorder, who then mails word of a recorded notice of completion or cessation, in good faith within five days. It changes no time and tells nobody; it is a cheap second guard beside the search of the index. Enter it when filed (notice-filed).");
    }
}
