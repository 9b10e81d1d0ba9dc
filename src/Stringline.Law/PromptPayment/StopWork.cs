using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.PromptPayment;

/// <summary>The direct contractor's right to stop work for want of payment, and the claims procedure of 2026 (Civ. Code §§ 8830-8850).</summary>
public static class StopWork
{
    /// <summary>Days after the due day for which the contractor must have gone unpaid.</summary>
    public const int UnpaidDays = 35;

    /// <summary>Days before the notice by which the notice of intent is posted.</summary>
    public const int PostingDays = 5;

    /// <summary>Days from the notice after which work may stop.</summary>
    public const int NoticeDays = 10;

    /// <summary>The findings <c>stop-work.notice-first-day</c> and <c>dispute-claim.owners-statement</c>, where the file has their facts.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, OpenDays calendar)
    {
        if (NoticeFirstDay(facts, calendar) is { } notice)
            yield return notice;
        if (OwnersStatement(facts, calendar) is { } statement)
            yield return statement;
    }

    /// <summary>A direct contractor under a written contract, unpaid for 35 days after the due day and with no dispute about its performance.</summary>
    [Rule("Civ. Code § 8830")]
    [Rule("Civ. Code § 8832")]
    [Rule("Civ. Code § 8834")]
    private static Finding? NoticeFirstDay(FactsAsOf facts, OpenDays calendar)
    {
        if (facts.Job.Claimant.Role != ClaimantRole.DirectContractor)
            return null;
        var sums = MoneyDue.Demanded(facts, calendar);
        SumDue.Receive(sums, facts.All<Paid>());
        foreach (var sum in sums)
        {
            // One that was paid since leaves nothing to stop work for.
            if (sum.Unpaid == 0)
                continue;
            var due = sum.Due;
            var first = Period.FirstDayAfter(due, UnpaidDays);
            List<Reading> readings = [new Reading("unpaid for 35 days after the due day", first)];
            var written = facts.Job.Contract.Written;
            var disputes = facts.All<Disputed>();
            return new Finding
            {
                Id = "stop-work.notice-first-day",
                Title = "Notice to stop work: first day",
                Standing = written == false ? Standing.Lost : facts.AsOf < first ? Standing.NotYet : written is null || disputes.Count > 0 ? Standing.InDoubt : Standing.Open,
                Readings = readings,
                Band = Deadline.Band(readings),
                Why =
                [
                    Reason.Of("Civ. Code § 8832", $"Payment was due {due}; unpaid for 35 days after it, a direct contractor may give the owner notice from {first} that it will stop work unless paid within 10 days.", [sum.Fact]),
                    Reason.Of("Civ. Code § 8834", $"At least 5 days before, post notice of intent at the site and its main office, by {Period.LookBack(first, PostingDays)} for a notice on that day, with a copy to each direct subcontractor; work may stop on the eleventh day after the notice."),
                    .. written == false ? (Reason[])[Reason.Of("Civ. Code § 8830", $"The contract is not in writing: there is no such right.")] : [],
                ],
                Questions =
                [
                    .. written is null ? (Question[])[new Question("Is the direct contract in writing? Only then may work be stopped this way (add contract.written).")] : [],
                    .. disputes.Count > 0 ? (Question[])[new Question("Is the dispute about the contractor's performance? Then work may not be stopped this way.")] : [],
                ],
            };
        }

        return null;
    }

    /// <summary>Contracts made from 1 January 2026 until 1 January 2030, not on low-rise housing: the owner answers a claim in writing within 30 days of receipt.</summary>
    [Rule("Civ. Code § 8850", Since = "2026-01-01", Until = "2029-12-31")]
    private static Finding? OwnersStatement(FactsAsOf facts, OpenDays calendar)
    {
        var claims = facts.All<DisputeClaimSent>();
        if (claims.Count == 0)
            return null;
        var claim = claims[^1];
        if (facts.Job.Contract.On is { } made && (made < RetentionCap.From || made >= new LocalDate(2030, 1, 1)))
        {
            return new Finding
            {
                Id = "dispute-claim.owners-statement",
                Title = "Claim under the 2026 procedure",
                Standing = Standing.Lost,
                Why = [Reason.Of("Civ. Code § 8850", $"The contract was made on {made}; the procedure governs contracts made from 2026-01-01 until 2030-01-01.", [claim])],
            };
        }

        var received = claim.Received ?? claim.On.Latest;
        if (received is not { } day)
            return null;
        var last = calendar.RollForwardOnAnyList(Period.LastDay(day, 30));
        List<Reading> readings = [new Reading("owner's statement, 30 days after receipt", last)];
        return new Finding
        {
            Id = "dispute-claim.owners-statement",
            Title = "Claim under the 2026 procedure: owner's statement",
            Standing = facts.Job.Work.LowRiseResidential == true ? Standing.Lost : facts.Job.Contract.On is null ? Standing.InDoubt : facts.AsOf <= last ? Standing.NotYet : Standing.Open,
            Readings = readings,
            Band = Deadline.Band(readings),
            Why =
            [
                Reason.Of("Civ. Code § 8850(d)", $"The owner states in writing, within 30 days of receipt on {day}, what is disputed and what is not, and pays the undisputed part within 60 days after; silence denies the whole (Civ. Code § 8850(g)).", [claim]),
                Reason.Of("Civ. Code § 8850(j)", $"Lien and stop-work rights stay open meanwhile; none of their days is moved."),
            ],
            Questions =
            [
                .. facts.Job.Contract.On is null ? (Question[])[new Question("On which day was the contract made? The procedure governs contracts from 2026-01-01 until 2030-01-01 (add contract.on).")] : [],
                .. facts.Job.Work.LowRiseResidential is null ? (Question[])[new Question("Is the project residential, not mixed-use and not over four stories? Then the procedure does not apply (add work.lowRiseResidential).")] : [],
            ],
        };
    }
}
