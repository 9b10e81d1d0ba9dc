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
    public static IReadOnlyList<Finding> Findings(FactsAsOf facts, Amounts amounts, OpenDays calendar)
    {
        if (facts.Job.Claimant.Role != ClaimantRole.DesignProfessional || amounts.Of(Remedy.DesignLien) is not { } fee)
            return [];
        var findings = new List<Finding>();
        if (facts.Job.Work.Commenced is { } commenced && commenced <= facts.AsOf)
        {
            findings.Add(DesignLienRight.Ended(commenced, fee));
            Conversion.AddTo(findings, facts, fee, commenced, calendar);
            return findings;
        }

        var suits = Suits(facts, LienKind.Design, calendar);
        var last = DesignLienToRecord.LastDay(facts, fee, suits, calendar);
        findings.Add(DesignLienRight.Finding(facts, fee, suits, last));
        if (DefaultNotice.AddTo(findings, facts, fee, calendar) is { } notice)
        {
            findings[0] = DesignLienRight.WithNotice(findings[0], notice, facts.AsOf);
            last = DesignLienRight.WithNotice(last, notice, facts.AsOf);
        }

        findings.Add(last);
        if (suits is not null)
            AddSuit(findings, facts, fee, suits, calendar);
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
            // The converted lien is the design lien recorded again as a mechanics lien: an action that names neither is on the one that lives.
            var of = WhichLien.Of(facts, claim);
            if (of != kind && !(of == LienKind.Design && kind == LienKind.Converted))
                (unsure ??= []).Add(claim);
        }

        return claims is null ? null : ClaimSuits.Of(facts, claims[^1], DesignLienRelease.IsReleased(facts, claims[^1]), claims, unsure ?? [], calendar,
            kind == LienKind.Design ? Number.SueOnDesignLien : Number.SueOnClaim);
    }

    /// <summary>
    /// The action to enforce the lien and all that follows it: of the lien law only Civ. Code §§ 8424 and 8460-8494 apply, under ids of
    /// their own, since neither preliminary notice nor the time to record a mechanics lien touches them (Civ. Code § 8308).
    /// </summary>
    [Rule("Civ. Code § 8308")]
    private static void AddSuit(List<Finding> findings, FactsAsOf facts, Waterfall fee, ClaimSuits suits, OpenDays calendar)
    {
        var toSue = DesignLienToSue.Finding(facts, suits, calendar);
        findings.Add(toSue);
        AddFollowing(findings, facts, fee, suits, toSue, calendar);
        if (DesignLienRelease.Finding(facts, fee, suits) is { } release)
            findings.Add(release);
    }

    /// <summary>What follows the recording and the action, as of a mechanics lien.</summary>
    internal static void AddFollowing(List<Finding> findings, FactsAsOf facts, Waterfall fee, ClaimSuits suits, Finding toSue, OpenDays calendar)
    {
        foreach (var finding in AfterFiling.Findings(facts, suits, calendar))
            findings.Add(Of(finding));
        if (ReleaseBond.Amount(facts, suits, fee) is { } bond)
            findings.Add(Of(bond));
        if (ReleaseBond.LastDay(facts, suits, calendar) is { } onBond)
            findings.Add(Of(onBond));
        foreach (var finding in Release.OnDemand(facts, suits, toSue, calendar))
            findings.Add(Of(finding));
    }

    private static Finding Of(Finding finding) => finding with { Id = "design-lien." + finding.Id };
}
