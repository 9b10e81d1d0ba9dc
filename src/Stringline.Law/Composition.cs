using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Plan;
using Stringline.Law.Reasoning;
using Stringline.Law.StopPaymentNotice;
using Stringline.Law.Counting;

namespace Stringline.Law;

/// <summary>
/// The findings of an assessment while they are put together. What one answer does to another that its own rule does not know is done here,
/// after every rule has answered, and nowhere else: rules and tables say what limits what, and no rule takes a finding.
/// </summary>
internal sealed class Composition
{
    // Private work has some thirty findings; a list that grows would be copied four times.
    private readonly List<Finding> findings = new(40);

    /// <summary>The findings, in the order in which a person would ask.</summary>
    public IReadOnlyList<Finding> Findings => findings;

    /// <summary>Adds a finding, where there is one.</summary>
    public void Add(Finding? finding)
    {
        if (finding is not null)
            findings.Add(finding);
    }

    /// <summary>Adds findings.</summary>
    public void Add(IEnumerable<Finding> more) => findings.AddRange(more);

    /// <summary>Makes every finding no better than what it needs, by <see cref="Conditions.Table"/>.</summary>
    public void ApplyConditions()
    {
        // Most findings are neither lost nor in doubt, and their names need not be looked at for each condition.
        var failing = new List<int>(findings.Count);
        for (var i = 0; i < findings.Count; i++)
        {
            if (Conditions.Fails(findings[i].Standing))
                failing.Add(i);
        }

        foreach (var condition in Conditions.Table)
        {
            if (Among(failing, condition.Needed) is not { } needed)
                continue;
            Limit(failing, needed, needed.Standing == Standing.Lost ? condition.By : condition.DoubtToo, needed.Standing);
            if (needed.Standing == Standing.Lost)
                Limit(failing, needed, condition.DoubtIfLost, Standing.InDoubt);
        }
    }

    private Finding? Among(List<int> failing, string id)
    {
        foreach (var place in failing)
        {
            if (findings[place].Id == id)
                return findings[place];
        }

        return null;
    }

    private void Limit(List<int> failing, Finding needed, IReadOnlyList<string> by, Standing standing)
    {
        if (by.Count == 0)
            return;
        for (var i = 0; i < findings.Count; i++)
        {
            var finding = findings[i];
            if (!Conditions.IsAmong(finding.Id, by) || finding.Id == needed.Id || !Conditions.IsBetterThan(finding.Standing, standing))
                continue;
            findings[i] = finding.Limited(standing,
                Reason.Of(needed.Why[0].Section, $"{needed.Title}: {needed.Standing.Word()}, and this needs it.", [.. needed.Why]));
            if (!Conditions.Fails(finding.Standing))
                failing.Add(i);
        }
    }

    /// <summary>Adds the search of the index, beside the acts that it is for, once every finding is no better than what it needs.</summary>
    public void AddIndexWatch(FactsAsOf facts, PlanSettings settings, OpenDays calendar)
    {
        var isPublic = facts.Job.Work.Kind == WorkKind.Public;
        var (main, bond, at) = (false, false, findings.Count);
        for (var i = 0; i < findings.Count; i++)
        {
            var finding = findings[i];
            switch (finding.Id)
            {
                case "claim-of-lien.last-day" or "stop-payment-notice.last-day":
                    main |= IndexWatch.IsLeft(finding.Standing);
                    break;
                case "payment-bond.notice-last-day":
                    bond = IndexWatch.IsNoticeLeft(finding.Standing, finding.ActBy);
                    break;
                case "lien-right.property":
                    at = i;
                    break;
                case "payment-bond.action-last-day" when isPublic:
                    at = i + 1;
                    break;
            }
        }

        if (IndexWatch.Finding(facts, main, bond, settings, calendar) is { } watch)
            findings.Insert(at, watch);
    }

    /// <summary>Ends what was still to be given where nothing is due any more.</summary>
    public void EndWhereNothingIsDue(FactsAsOf facts, Amounts amounts)
    {
        if (NothingDue.Why(facts, amounts) is not { } why)
            return;
        for (var i = 0; i < findings.Count; i++)
        {
            if (NothingDue.Ends(findings[i].Id, findings[i].Standing))
                findings[i] = findings[i].Limited(Standing.Done, why);
        }
    }

    /// <summary>Puts in doubt what is open, or has not begun, though its day to act by is past.</summary>
    public void ApplyPastSafeDay(LocalDate asOf)
    {
        for (var i = 0; i < findings.Count; i++)
        {
            if (findings[i] is { IsDeadline: true } finding && PastSafeDay.WhyInDoubt(finding.Deadline, asOf) is { } why)
                findings[i] = finding.Limited(Standing.InDoubt, why) with { IsOnlyPastSafeDay = true };
        }
    }
}
