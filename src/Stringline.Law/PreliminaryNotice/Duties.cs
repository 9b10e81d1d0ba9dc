using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>What else the Code asks, or allows, of one who gives preliminary notice.</summary>
internal static class Duties
{
    /// <summary>Those of private work.</summary>
    public static IEnumerable<Reason> OnPrivateWork(FactsAsOf facts, bool noneGiven)
    {
        if (UnpaidLaborers(facts) is { } laborers)
            yield return laborers;
        if (facts.Job.Claimant.Role == ClaimantRole.Subcontractor && NamesOnTheNotice() is var names)
            yield return names;
        if (noneGiven && Discipline(facts, Number.SmallSubcontract) is { } discipline)
            yield return discipline;
        if (!noneGiven && Filing(facts) is { } filing)
            yield return filing;
    }

    /// <summary>Those of public work.</summary>
    public static IEnumerable<Reason> OnPublicWork(FactsAsOf facts, bool noneGiven)
    {
        if (UnpaidLaborers(facts) is { } laborers)
            yield return laborers;
        if (noneGiven && Discipline(facts, Number.SmallPublicSubcontract) is { } discipline)
            yield return discipline;
    }

    [Rule("Civ. Code § 8104")]
    private static Reason? UnpaidLaborers(FactsAsOf facts) =>
        facts.Job.Claimant.Role is ClaimantRole.DirectContractor or ClaimantRole.Subcontractor
        ? Reason.Of("Civ. Code § 8104", $"A contractor that has not paid a laborer in full gives the laborer, any bargaining "
            + $"representative, the lender and the owner notice of it, with hours and sums, no later than the day the pay became late; "
            + $"else its license can be disciplined.")
        : null;

    [Rule("Civ. Code § 8202(b)")]
    private static Reason NamesOnTheNotice() =>
        Reason.Of("Civ. Code § 8202(b)", $"A subcontractor that has not paid all that is due to a laborer names the laborer, and any fund "
            + $"to which payments are due, with addresses, in the preliminary notice.");

    [Rule("Civ. Code § 8216")]
    [Rule("Civ. Code § 9306")]
    private static Reason? Discipline(FactsAsOf facts, Number upTo)
    {
        var small = facts.Numbers.On(upTo, facts.Job.Contract.On ?? facts.AsOf);
        return facts.Job.Claimant.Role == ClaimantRole.Subcontractor && !(facts.Job.Contract.Price <= small.Value)
            ? Reason.Of(small.Section, $"A licensed subcontractor with a contract for more than {small.Value} that does not give "
                + $"preliminary notice can be disciplined by the license board.")
            : null;
    }

    /// <summary>Filing changes no time and tells nobody; it makes the recorder mail word of a notice of completion or cessation.</summary>
    [Rule("Civ. Code § 8214")]
    private static Reason? Filing(FactsAsOf facts)
    {
        if (facts.PreliminaryNotices.Count == 0)
            return null;
        var toMail = facts.Numbers.On(Number.RecorderMails, facts.AsOf);
        foreach (var filed in facts.All<NoticeFiled>())
        {
            if (DaySpan.Of(filed.On) is { } on && facts.Numbers.LastDay(Number.FiledNoticeKept, on.Earliest) is var kept
                && facts.AsOf <= kept)
                return Reason.Of("Civ. Code § 8214", $"The preliminary notice was filed with the county recorder {on}, who then mails word "
                    + $"of a recorded notice of completion or cessation, in good faith within {toMail.Spelled}. It changes no time; go on "
                    + $"searching the index. The recorder may destroy it after {kept}.", [filed]);
        }

        return Reason.Of("Civ. Code § 8214", $"A preliminary notice that was given may be filed with the county recorder, who then mails "
            + $"word of a recorded notice of completion or cessation, in good faith within {toMail.Spelled}. It changes no time and tells "
            + $"nobody; it is a cheap second guard beside the search of the index. Enter it when filed{NoticeKinds.NoticeFiled:aside}.");
    }
}
