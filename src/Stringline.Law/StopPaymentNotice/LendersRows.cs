using System.Globalization;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>The stop payment notice to each construction lender (Civ. Code §§ 8506(b), 8530-8542).</summary>
internal static class LendersRows
{
    /// <summary>The finding of the row of a lender, by its place among the lenders of the file.</summary>
    public static string IdOf(int place) =>
        place == 0 ? "stop-payment-notice.lender" : string.Create(CultureInfo.InvariantCulture, $"stop-payment-notice.lender.{place + 1}");

    /// <summary>
    /// A row for each lender: everyone may give it the notice, a direct contractor too, if preliminary notice reached that lender before.
    /// </summary>
    public static IReadOnlyList<HolderRow> Of(FactsAsOf facts, Reach reach, Outcome notice, TimeOfGiving time, OpenDays calendar)
    {
        var lenders = facts.Job.In(PartyCapacity.ConstructionLender);
        var rows = new List<HolderRow>();
        for (var i = 0; i < lenders.Count; i++)
            rows.Add(Of(facts, reach, lenders[i], IdOf(i), notice, time, calendar));
        return rows;
    }

    [Rule("Civ. Code § 8530")]
    [Rule("Civ. Code § 8532")]
    [Rule("Civ. Code § 8536")]
    [Rule("Civ. Code § 8508(a)")]
    private static HolderRow Of(FactsAsOf facts, Reach reach, Party lender, string id, Outcome notice, TimeOfGiving time, OpenDays calendar)
    {
        var isDue = facts.Job.Claimant.Role != ClaimantRole.Laborer;
        var toward = isDue ? reach.Toward(lender) : Reach.Everything;
        var noticed = toward.Kind == ReachKind.NotGiven ? null : toward.Given;
        var holder = new Holder(id, $"construction lender {lender.Name}", [lender])
        {
            IsLender = true, NoticeIsDue = isDue, Noticed = WithOwnerAndContractor(facts, reach, noticed), EssentiallyNoticed = noticed,
                MayBeExcused = isDue && Recipients.MayNotBeKnown(facts, lender),
            MayBeNoticed = isDue && toward.MayHaveBeenGiven,
            Reach = toward.Kind == ReachKind.Late ? toward : null,
        };
        var served = ServingHolders.Of(facts, holder, time, calendar);
        var standing = served.Standing;
        if (isDue && standing != Standing.Lost && noticed is null)
            standing = WithoutNotice(facts, toward, standing);
        if (standing != Standing.Lost && toward.Kind == ReachKind.Late && PreliminaryNoticeDays.InReach(facts, toward) is var reached
            && reached != Standing.Narrowed)
            standing = reached;
        if (standing is Standing.Open or Standing.Kept
            && (toward.IsInDoubt || IsOnlyReputed(facts, lender)
                || (standing == Standing.Kept && isDue && IsOwnerOrContractorInDoubt(facts, reach))))
            standing = Standing.InDoubt;
        decimal? amount = toward.Kind == ReachKind.Late ? Demand.Of(facts, toward, Remedy.StopPaymentNotice).Demand : null;
        var row = new Outcome(Deadline.Of(standing, time.Readings, calendar, endKnown: time.EndKnown), new Words(Why, Ask));
        return new HolderRow(served, row, standing, Holds: true) { Amount = amount };

        List<Reason> Why()
        {
            var why = new List<Reason>(LenderWithholds(facts));
            why.AddRange(GivenReasons.Of(facts, served, StopPaymentLaw.Private));
            if (MayChoose(facts) is { } choose)
                why.Add(choose);
            if (facts.Job.Claimant.Role is ClaimantRole.DirectContractor or ClaimantRole.Subcontractor)
                why.Add(NetOnly);
            if (isDue && noticed is null)
                why.Add(NoticeMissing(facts, lender, notice));
            else if (toward.IsInDoubt)
                why.Add(Reason.Of("Civ. Code § 8508(a)", $"Whether the preliminary notice to {lender.Name} counts is in "
                    + $"doubt{new FindingId("preliminary-notice.last-day"):see}; this hangs on it.", [.. notice.Why]));
            if (toward.Kind == ReachKind.Late)
                why.Add(Reason.Of("Civ. Code § 8204(a)", $"Toward {lender.Name} the preliminary notice reaches back "
                    + $"to {toward.From!.Value.Latest} only: {amount!.Value} of the claim lies within it."));
            if (IsOnlyReputed(facts, lender))
                why.Add(Reason.Of("Civ. Code § 8530", $"{lender.Name} is a reputed lender, and the file names another: which of them holds "
                    + $"the fund is open (Force Framing v. Chinatrust Bank (2010) 187 Cal.App.4th 1368)."));
            return why;
        }

        List<Question> Ask() =>
        [
            .. GivenReasons.Questions(facts, served),
            .. served.Services.Count > 0
                ? (Question[])[
                    new Question($"Was the notice to {lender.Name} given to the manager or another responsible person at the office that "
                        + $"holds the fund? It has no effect otherwise.{NoticeKinds.StopPaymentGiven.At("to"):aside}") { Corrects =
                        served.Services[0].Paper }] : [],
            .. served.Services.Where(s => s.Paper is { Bonded: true, BondAmount: null }).Select(s => AskForBond(facts, s.Paper)),
        ];
    }

    // "To the extent required" is to the owner and the direct contractor as well: what the lender holds may fall with a notice that they
    // did not get.
    private static DaySpan? WithOwnerAndContractor(FactsAsOf facts, Reach reach, DaySpan? noticed)
    {
        if (facts.HiredByOwner || noticed is not { } told)
            return noticed;
        return reach.Kind == ReachKind.NotGiven || reach.Given is not { } others ? null : DaySpan.Later(told, others);
    }

    private static bool IsOwnerOrContractorInDoubt(FactsAsOf facts, Reach reach)
    {
        if (facts.HiredByOwner)
            return false;
        foreach (var each in reach.Each)
        {
            if (each.To.Who != PartyCapacity.ConstructionLender && (each.Kind == ReachKind.NotGiven || each.Doubt != NoticeDoubt.None))
                return true;
        }

        return false;
    }

    // One that was reasonably taken for the lender, beside one of record: it holds nothing if the other does.
    private static bool IsOnlyReputed(FactsAsOf facts, Party lender) =>
        lender.Reputed && facts.Job.In(PartyCapacity.ConstructionLender).Any(static l => !l.Reputed);

    [Rule("Civ. Code § 8532")]
    private static Question AskForBond(FactsAsOf facts, StopPaymentGiven paper)
    {
        var given = paper.On.Earliest ?? facts.AsOf;
        var least = paper.Amount is { } claim
            ? LawText.Money(ServingHolders.AmountOfBond(facts, claim, given)) + " at least"
            : facts.Numbers.On(Number.BondOfNotice, given).Text + " of the claim";
        return new($"What is the amount of the bond that came with the stop payment notice? It must "
            + $"be {least}.{NoticeKinds.StopPaymentGiven.At("bondAmount"):aside}",
            Dollars: paper.Amount) { Corrects = paper };
    }

    // Never told, it is out of reach once no notice can reach any work. That a reputed lender was told, or that nothing named this one on
    // the first day of the work, leaves it in doubt.
    private static Standing WithoutNotice(FactsAsOf facts, Reach toward, Standing own)
    {
        if (own == Standing.NotYet)
            return own;
        if (PreliminaryNoticeDays.Covers(facts, toward) != Verdict.No || toward.MayHaveBeenGiven)
            return Standing.InDoubt;
        foreach (var told in facts.PreliminaryNotices)
        {
            foreach (var to in told.To)
            {
                if (facts.Job.Party(to) is { Capacity: PartyCapacity.ConstructionLender })
                    return Standing.InDoubt;
            }
        }

        return facts.Job.In(PartyCapacity.ConstructionLender).Any(l => Recipients.MayNotBeKnown(facts, l))
            ? Standing.InDoubt : Standing.Lost;
    }

    [Rule("Civ. Code § 8508(a)")]
    private static Reason NoticeMissing(FactsAsOf facts, Party lender, Outcome notice)
    {
        if (Recipients.IsNotYetKnown(facts, lender) && lender.KnownSince is { } since)
        {
            return Reason.Of("Civ. Code § 8508(a)", $"No preliminary notice reached {lender.Name}, which nothing named on the first day of "
                + $"the work. That excuses the lien (Kodiak Industries v. Ellis (1986) 185 Cal.App.3d 75); whether it excuses the notice "
                + $"before a stop payment notice is not settled. Give it preliminary notice first, "
                + $"by {TimeLimit.LastDay(since, LaterLender.TargetDays)}, {LaterLender.TargetDays} days after it became known: each day "
                + $"later reaches less work.", [.. notice.Why]);
        }

        return Reason.Of("Civ. Code § 8508(a)", $"No preliminary notice reached {lender.Name}; without it a stop payment notice to it "
            + $"fails (Romak Iron Works v. Prudential (1980) 104 Cal.App.3d 767; Brewer Corp. v. Point Center Financial (2014) 223 "
            + $"Cal.App.4th 831). Give that first.", [.. notice.Why]);
    }

    /// <summary>
    /// The lender may choose not to withhold from anyone but a direct contractor, where a payment bond was recorded before it got any stop
    /// payment notice.
    /// </summary>
    [Rule("Civ. Code § 8536(b)")]
    private static Reason? MayChoose(FactsAsOf facts) =>
        facts.Job.Work.PaymentBond is { Recorded: not null } && facts.Job.Claimant.Role != ClaimantRole.DirectContractor
            ? Reason.Of("Civ. Code § 8536(b)", $"A payment bond is recorded: the lender may choose not to withhold even for a bonded "
                + $"notice, if the bond was recorded before it got any stop payment notice.")
            : null;

    private static readonly Reason NetOnly =
        Reason.Of("Civ. Code § 8542", $"From a lender a contractor recovers only what is left after the stop payment notices of its own "
            + $"subcontractors and suppliers.");

    [Rule("Civ. Code § 8506(b)")]
    [Rule("Civ. Code § 8538")]
    [Rule("Civ. Code § 8540")]
    [Rule("Civ. Code § 8542")]
    [Rule("Civ. Code § 8558")]
    [Rule("Civ. Code § 8560")]
    private static Reason[] LenderWithholds(FactsAsOf facts) =>
    [
        Reason.Of("Civ. Code § 8506(b)", $"Effective only if given to the manager or another responsible person at the office or branch "
            + $"that holds the fund."),
        Reason.Of("Civ. Code § 8532", $"With a bond of {facts.Numbers.On(Number.BondOfNotice, facts.AsOf)} of the claim the lender must "
            + $"withhold; without one it may choose not to (Civ. Code § 8536). Ask in writing for notice of its choice, with a stamped "
            + $"envelope (Civ. Code § 8538)."),
        Reason.Of("Civ. Code § 8540", $"Bonded notices are paid first; the rest is shared among the others, whatever their order. Only an "
            + $"action on a bonded notice brings attorney's fees (Civ. Code § 8558) and interest from the day of the notice "
            + $"(Civ. Code § 8560)."),
    ];
}
