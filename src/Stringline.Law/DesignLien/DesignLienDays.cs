using Stringline.Law.ClaimOfLien;
using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.DesignLien;

/// <summary>The design professional's lien before the work commences (Civ. Code §§ 8300-8319).</summary>
public static class DesignLienDays
{
    /// <summary>The findings <c>design-lien.*</c>; none for other roles.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="amounts">What may be claimed by each remedy.</param>
    /// <param name="calendar">The calendar.</param>
    /// <param name="converted">Where the action on a converted claim stands; null where none is recorded.</param>
    internal static IReadOnlyList<Finding> Findings(FactsAsOf facts, Amounts amounts, OpenDays calendar, out Standing? converted)
    {
        converted = null;
        if (facts.Job.Claimant.Role != ClaimantRole.DesignProfessional || amounts.Of(Remedy.DesignLien) is not { } fee)
            return [];
        if (facts.Job.Work.Commenced is { } commenced && commenced <= facts.AsOf)
        {
            return
            [
                DesignLienRight.Finding(DesignLienRight.Ended(commenced), fee),
                .. Conversion.Findings(facts, fee, commenced, calendar, out converted),
            ];
        }

        var suits = Suits(facts, LienKind.Design, calendar);
        var last = DesignLienToRecord.LastDay(facts, fee, suits, calendar);
        var right = DesignLienRight.Of(facts, fee, suits, last.Standing);
        var notice = DefaultNotice.LastDay(facts, fee, calendar);
        if (notice is not null)
        {
            right = DesignLienRight.WithNotice(right, notice, facts.AsOf);
            last = DesignLienRight.WithNotice(last, notice, facts.AsOf);
        }

        var findings = new List<Finding> { DesignLienRight.Finding(right, fee) };
        if (DefaultNotice.FirstDay(facts, fee) is { } first)
            findings.Add(first);
        if (DefaultNotice.Finding(notice) is { } toGive)
            findings.Add(toGive);
        findings.Add(DesignLienToRecord.Finding(last));
        if (suits is not null)
            findings.AddRange(Enforced(facts, fee, suits, calendar));
        return findings;
    }

    /// <summary>The recorded claims of one kind that are not released, each with its action; null where there is none.</summary>
    internal static ClaimSuits? Suits(FactsAsOf facts, LienKind kind, OpenDays calendar)
    {
        List<ClaimRecorded>? claims = null;
        List<ClaimRecorded>? unsure = null;
        foreach (var claim in facts.All<ClaimRecorded>())
        {
            if (DesignLienRelease.IsReleased(facts, claim) == Verdict.Yes)
                continue;
            var isOf = kind == LienKind.Design ? WhichLien.MayBeDesign(facts, claim) : WhichLien.Of(facts, claim) == kind;
            if (isOf && DaySpan.Of(claim.On) is not null)
                (claims ??= []).Add(claim);
            // The converted lien is the design lien recorded again as a mechanics lien: an action that names neither is on the one that
            // lives.
            var of = WhichLien.Of(facts, claim);
            if (of != kind && !(of == LienKind.Design && kind == LienKind.Converted))
                (unsure ??= []).Add(claim);
        }

        return claims is null
            ? null : ClaimSuits.Of(facts, claims[^1], DesignLienRelease.IsReleased(facts, claims[^1]), claims, unsure ?? [], calendar,
            kind == LienKind.Design ? Number.SueOnDesignLien : Number.SueOnClaim);
    }

    /// <summary>
    /// The action to enforce the lien and all that follows it: of the lien law only Civ. Code §§ 8424 and 8460-8494 apply, under ids of
    /// their own, since neither preliminary notice nor the time to record a mechanics lien touches them (Civ. Code § 8308).
    /// </summary>
    [Rule("Civ. Code § 8308")]
    private static IEnumerable<Finding> Enforced(FactsAsOf facts, Waterfall fee, ClaimSuits suits, OpenDays calendar)
    {
        var toSue = DesignLienToSue.Of(facts, suits, calendar);
        yield return DesignLienToSue.Finding(toSue);
        foreach (var finding in Following(facts, fee, suits, toSue.Deadline, calendar))
            yield return finding;
        if (DesignLienRelease.Finding(facts, fee, suits) is { } release)
            yield return release;
    }

    /// <summary>What follows the recording and the action, as of a mechanics lien.</summary>
    internal static IEnumerable<Finding> Following(FactsAsOf facts, Waterfall fee, ClaimSuits suits, Deadline toSue, OpenDays calendar)
    {
        const string prefix = "design-lien.";
        foreach (var finding in AfterFiling.Findings(facts, suits, calendar))
            yield return finding.Under(prefix);
        if (ReleaseBond.Amount(facts, suits, fee) is { } bond)
            yield return bond.Under(prefix);
        if (ReleaseBond.LastDay(facts, suits, calendar) is { } onBond)
            yield return onBond.Under(prefix);
        foreach (var finding in Release.OnDemand(facts, suits, toSue, calendar))
            yield return finding.Under(prefix);
    }
}
