using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// The direct contractor's right to stop work for want of payment, in three dated steps: post, give with the copies, stop
/// (Civ. Code §§ 8830-8848).
/// </summary>
public static class StopWork
{
    /// <summary>The day on which the sum fell due from which the first day of the notice is counted.</summary>
    /// <param name="numbers">The numbers of the law.</param>
    /// <param name="first">The first day on which the notice may be given, once notice of intent was posted in time.</param>
    [Rule("Civ. Code § 8832")]
    public static LocalDate DueDay(NumberTable numbers, LocalDate first)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        return numbers.RunsFrom(Number.StopWorkUnpaid, first.PlusDays(-1));
    }

    /// <summary>The first day on which the notice may be given where notice of intent is posted on a certain day.</summary>
    /// <param name="numbers">The numbers of the law.</param>
    /// <param name="first">The first day where it was posted in time.</param>
    /// <param name="posted">The day of the posting.</param>
    [Rule("Civ. Code § 8834(a)")]
    public static LocalDate FirstDayOncePosted(NumberTable numbers, LocalDate first, LocalDate posted)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        return LocalDate.Max(first, numbers.LastDay(Number.StopWorkPosting, posted));
    }

    /// <summary>
    /// The findings <c>stop-work.*</c> and those of a claim and of disputed work on private work, where the file has their facts.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="undisputed">What the owner does not dispute of a claim; null where there is no such sum.</param>
    /// <param name="calendar">The calendar.</param>
    internal static IEnumerable<Finding> Findings(FactsAsOf facts, SumDue? undisputed, OpenDays calendar)
    {
        if (facts.Job.Claimant.Role == ClaimantRole.DirectContractor && NoticeFirstDay(facts, calendar) is { } notice)
        {
            yield return Posting(facts, notice);
            yield return notice.Finding;
            if (StopFirstDay(facts, notice) is { } stop)
                yield return stop;
        }

        foreach (var finding in PrivateClaim.Findings(facts, undisputed, calendar))
            yield return finding;
        foreach (var finding in DisputedWork.Findings(facts, calendar))
            yield return finding;
    }

    /// <summary>The notice that work will stop.</summary>
    /// <param name="Row">Where it stands and why.</param>
    /// <param name="First">The first day on which it may be given.</param>
    /// <param name="Unpaid">What is overdue: dollars and cents.</param>
    private sealed record Notice(Outcome Row, Reading First, decimal Unpaid)
    {
        public Finding Finding => Row.Finding("stop-work.notice-first-day", "Notice to stop work: first day", Unpaid) with
        {
            Readings = [First],
            Band = new Band(First, First),
        };
    }

    /// <summary>
    /// A sum is overdue from the day that the contract sets for it, not from the 30 days of another section: the file gives that day, or
    /// the days after the bill; where it gives neither, the 30 days after the demand are reckoned with and it is asked.
    /// </summary>
    [Rule("Civ. Code § 8832")]
    private static List<SumDue> UnderTheContract(FactsAsOf facts, OpenDays calendar, out bool dueKnown)
    {
        dueKnown = true;
        var sums = new List<SumDue>();
        foreach (var demanded in facts.All<PaymentDemanded>())
        {
            if (DaySpan.Of(demanded.On) is not { } on)
                continue;
            var agreed = OwnersProgress.UnderTheContract(facts, demanded);
            dueKnown &= agreed is not null;
            var due = agreed ?? facts.Numbers.LastDay(Number.OwnersProgress, on.Latest);
            sums.Add(new SumDue(demanded, on.Earliest, calendar.RollForwardOnAnyList(due), demanded.Amount));
        }

        SumDue.Receive(sums, facts.All<Paid>());
        return sums;
    }

    /// <summary>
    /// A direct contractor under a written contract, unpaid for 35 days after the due day and with no dispute about its performance.
    /// </summary>
    [Rule("Civ. Code § 8830")]
    [Rule("Civ. Code § 8832")]
    [Rule("Civ. Code § 8834(b)")]
    private static Notice? NoticeFirstDay(FactsAsOf facts, OpenDays calendar)
    {
        var sums = UnderTheContract(facts, calendar, out var dueKnown);
        // One that was paid since leaves nothing to stop work for.
        sums.RemoveAll(static s => s.Unpaid == 0);
        if (sums.Count == 0)
            return null;
        sums.Sort(static (a, b) => a.Due.CompareTo(b.Due));
        var unpaid = facts.Numbers.On(Number.StopWorkUnpaid, sums[0].Due);
        var first = unpaid.FirstDayAfter(sums[0].Due);
        var overdue = sums.FindAll(s => s == sums[0] || facts.Numbers.On(Number.StopWorkUnpaid, s.Due).FirstDayAfter(s.Due) <= facts.AsOf);
        var toPay = facts.Numbers.On(Number.StopWork, first);
        var toTell = facts.Numbers.On(Number.OwnerTellsLender, first);
        var byDemand = facts.Numbers.On(Number.OwnersProgress, sums[0].From);
        var amount = 0m;
        foreach (var sum in overdue)
            amount += sum.Unpaid;
        var disputes = facts.All<Disputed>();
        var written = facts.Job.Contract.Written;
        var standing = written == false ? Standing.Lost : facts.AsOf < first
            ? Standing.NotYet : !dueKnown || written is null || disputes.Count > 0 ? Standing.InDoubt : Standing.Open;
        return new Notice(new Outcome(standing, new Words(
            () =>
            [
                Reason.Of("Civ. Code § 8832", $"Payment was due {sums[0].Due}; unpaid for {unpaid} after it, a direct contractor may give "
                    + $"the owner notice from {first} that it will stop work "
                    + $"unless {amount} is paid within {toPay}.", [.. overdue.ConvertAll(static s => s.Fact)]),
                Reason.Of("Civ. Code § 8834(b)", $"On the very day on which the notice is given, give a copy of it to each subcontractor "
                    + $"with whom there is a direct contract; the owner passes it on to the lender within {toTell.Spelled} "
                    + $"(Civ. Code § 8836). On resolution post and tell the same (Civ. Code § 8840)."),
                .. written == false
                    ? (Reason[])[Reason.Of("Civ. Code § 8830", $"The contract is not in writing: there is no such right.")] : [],
            ],
            () =>
            [
                .. dueKnown ? (Question[])[]
                    : [new Question($"On which day does payment fall due under the contract? The {unpaid.Text} are counted from it; "
                        + $"the {byDemand.Text} after the demand are only taken for "
                        + $"it.{HeadField.ContractPaymentDueDays:aside}", Days: byDemand.Count)],
                .. written is null
                    ? (Question[])[
                        new Question($"Is the direct contract in writing? Only then may work be stopped this "
                            + $"way{HeadField.ContractWritten:add}.")] : [],
                .. disputes.Count > 0
                    ? (Question[])[
                        new Question($"Is the dispute about the contractor's performance? Then work may not be stopped this way.")] : [],
            ])), new Reading($"unpaid for {unpaid.Text} after the due day", first), amount);
    }

    /// <summary>
    /// Notice of intent is posted at the site, and at its main office if there is one, at least five days before the notice is given.
    /// </summary>
    [Rule("Civ. Code § 8834(a)")]
    private static Finding Posting(FactsAsOf facts, Notice notice)
    {
        var papers = facts.All<StopWorkNoticeGiven>();
        var paper = papers.Count > 0 ? papers[^1] : null;
        var given = paper is null ? null : DaySpan.Of(paper.On);
        var notBefore = given?.Earliest ?? notice.First.Day;
        var days = facts.Numbers.On(Number.StopWorkPosting, notBefore);
        var last = days.LookBack(notBefore);
        var posted = paper is null ? default : Posted.Of(paper);
        List<Reading> readings = [new Reading($"{days.Spelled} before the notice", last)];
        return new Finding
        {
            Id = "stop-work.posting",
            Title = "Notice to stop work: post notice of intent",
            Standing = notice.Row.Standing == Standing.Lost
                ? Standing.Lost : given is null ? Standing.Open : posted.InTime(last) == Verdict.Yes ? Standing.Done : Standing.InDoubt,
            Readings = readings,
            Band = Deadline.BandOver(readings),
            Why =
            [
                Reason.Of("Civ. Code § 8834(a)", $"Post notice of intent at the site and at its main office at least {days} before giving "
                    + $"the notice, by {last} for a notice on {notBefore}; posted today, the notice may be given "
                    + $"from {FirstDayOncePosted(facts.Numbers, notice.First.Day, facts.AsOf)}. It says all that Civ. Code § 8102 asks "
                    + $"for, the demand after all just credits and offsets too."),
                Reason.Of("Civ. Code § 8838(a)", $"Who stops work without this posting and the notice is liable for the delay."),
                .. posted.InTime(last) switch
                {
                    Verdict.Yes => (Reason[])[Reason.Of("Civ. Code § 8834(a)", $"Posted {posted.Words}, in time.", [paper!])],
                    Verdict.No =>
                        [Reason.Of("Civ. Code § 8834(a)", $"Posted {posted.Words}, less than {days} before the notice: leave it posted, "
                            + $"and give the notice again.", [paper!])],
                    _ => posted.IsTold
                        ? [Reason.Of("Civ. Code § 8834(a)", $"Posted {posted.Words}, which may be less than {days} before the notice: "
                            + $"leave it posted, and give the notice again.", [paper!])] : [],
                },
            ],
            Questions = given is null || (posted.IsTold && posted.InTime(last) != Verdict.Open)
                ? [] : [new Question($"Was notice of intent posted at the site, and at its main office, by {last:iso}? Without it there is "
                    + $"no shield.{DisputeKinds.StopWorkNoticeGiven.At("posted"):aside}") { Corrects = paper }],
        };
    }

    /// <summary>Work may stop on the eleventh day after the notice; an expedited suit lies from then as well.</summary>
    [Rule("Civ. Code § 8838(a)")]
    [Rule("Civ. Code § 8844(a)")]
    private static Finding? StopFirstDay(FactsAsOf facts, Notice notice)
    {
        var papers = facts.All<StopWorkNoticeGiven>();
        if (papers.Count == 0 || DaySpan.Of(papers[^1].On) is not { } given)
            return null;
        var paper = papers[^1];
        var wait = facts.Numbers.On(Number.StopWork, given.Latest);
        var first = wait.FirstDayAfter(given.Latest);
        var posting = facts.Numbers.On(Number.StopWorkPosting, given.Earliest);
        var tooEarly = given.Earliest < notice.First.Day;
        var posted = Posted.Of(paper);
        var postedLate = posted.IsTold && posted.InTime(posting.LookBack(given.Earliest)) != Verdict.Yes;
        var unserved = facts.Job.In(PartyCapacity.Owner).Count > 0 && paper.To.Count > 0 && !Reached(facts, paper, PartyCapacity.Owner);
        var untold = paper.To.Count == 0
            ? [] : facts.Job.Parties.Where(p => p.Capacity == PartyCapacity.Subcontractor && !paper.To.Contains(p.Id)).ToArray();
        List<Reading> readings = [new Reading($"the {NumberWords.Ordinal(wait.Count + 1)} day after the notice", first)];
        return new Finding
        {
            Id = "stop-work.first-day",
            Title = "Stop work: first day",
            Standing = notice.Row.Standing == Standing.Lost ? Standing.Lost : facts.AsOf < first ? Standing.NotYet : tooEarly || postedLate
                || unserved || untold.Length > 0 || notice.Row.Standing == Standing.InDoubt ? Standing.InDoubt : Standing.Open,
            Readings = readings,
            Band = Deadline.BandOver(readings),
            Amount = notice.Unpaid,
            Why =
            [
                Reason.Of("Civ. Code § 8830", $"The notice was given {given}; unless {notice.Unpaid} is paid within {wait} after it, work "
                    + $"may stop from {first}.", [paper]),
                Reason.Of("Civ. Code § 8844(a)", $"From that day the contractor, its surety or the owner may also have the superior court "
                    + $"decide in an expedited proceeding what is due."),
                .. tooEarly ? (Reason[])[
                    Reason.Of("Civ. Code § 8832", $"The notice was given before {notice.First.Day}, too early: give it again.", [paper])]
                        : [],
                .. postedLate
                    ? (Reason[])[
                        Reason.Of("Civ. Code § 8834(a)",
                            $"Notice of intent was posted {posted}, {(posted.InTime(posting.LookBack(given.Earliest)) == Verdict.No
                                ? "" : "perhaps ")}less than {posting} before the notice: without the posting there is no shield (Civ. "
                                    + $"Code § 8838(a)); give the notice again.", [paper])] : [],
                .. unserved ? (Reason[])[Reason.Of("Civ. Code § 8832", $"The notice is given to the owner; the file shows others only.",
                    [paper])] : [],
                .. untold.Select(p =>
                    Reason.Of("Civ. Code § 8834(b)", $"No copy to {p.Name}: one goes to every subcontractor with whom there is a direct "
                        + $"contract, on the same day.", [paper])),
            ],
            Questions = paper.To.Count == 0
                ? [new Question($"To whom was the stop work notice given, and to whom a "
                    + $"copy?{DisputeKinds.StopWorkNoticeGiven.At("to"):aside}") { Corrects = paper }] : [],
        };
    }

    /// <summary>When notice of intent was posted: a day, or one in doubt of which the first, the last or both ends are told.</summary>
    private readonly record struct Posted(LocalDate? First, LocalDate? Last)
    {
        public bool IsTold => First is not null || Last is not null;

        public static Posted Of(StopWorkNoticeGiven paper) => new(paper.Posted, paper.PostedBy ?? paper.Posted);

        public Verdict InTime(LocalDate last) => Last <= last ? Verdict.Yes : First > last ? Verdict.No : Verdict.Open;

        public Sentence Words => (First, Last) switch
        {
            ({ } first, { } until) => (Sentence)$"{new DaySpan(first, until)}",
            (_, { } until) => (Sentence)$"by {until}",
            _ => $"",
        };
    }

    private static bool Reached(FactsAsOf facts, StopWorkNoticeGiven paper, PartyCapacity capacity)
    {
        foreach (var id in paper.To)
        {
            if (facts.Job.Party(id) is { } party && party.Capacity == capacity)
                return true;
        }

        return false;
    }
}
