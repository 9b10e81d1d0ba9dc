using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>What the notices of a file do toward each to whom notice is due.</summary>
internal static class NoticesGiven
{
    // A notice complete on a day, and why it may not count.
    private readonly record struct Receipt(DaySpan Complete, NoticeGiven Notice, NoticeDoubt Doubt);

    /// <summary>What they do toward one recipient.</summary>
    public static RecipientReach To(FactsAsOf facts, Recipient to, NoticeTime time)
    {
        Receipt? sure = null, doubtful = null;
        NoticeGiven? onUnknownDay = null;
        var notices = facts.PreliminaryNotices;
        for (var i = 0; i < notices.Count; i++)
        {
            var notice = notices[i];
            if (!Giving.Counts(notice) || ToWhom(facts, notice, to) is not { } doubt)
                continue;
            if (Giving.CompleteOn(facts.Numbers, notice) is not { } complete)
            {
                onUnknownDay = notice;
                continue;
            }

            var receipt = new Receipt(complete, notice, doubt);
            // The notice whose last possible day comes first is the one that surely reached them.
            if (doubt == NoticeDoubt.None)
                sure = Earlier(sure, receipt);
            else
                doubtful = Earlier(doubtful, receipt);
        }

        if (to.AllNeeded && AllTold(facts, to) is { } all)
            sure = Earlier(sure, all);
        var reached = Reached(facts, to, sure, doubtful, time) ?? NotGiven(facts, to, time);
        return onUnknownDay is null ? reached : reached with { OnUnknownDay = onUnknownDay };
    }

    private static Receipt Earlier(Receipt? so, Receipt next) =>
        so is { } first && first.Complete.Latest <= next.Complete.Latest ? first : next;

    private static RecipientReach? Reached(FactsAsOf facts, Recipient to, Receipt? sure, Receipt? doubtful, NoticeTime time)
    {
        var used = sure ?? doubtful;
        if (sure is { } good && doubtful is { } bad && time.InTime(good.Complete.Latest) != NoticeDoubt.None
            && bad.Complete.Latest < good.Complete.Latest)
            // The sure one may have come before it all the same, as far as its own day is in doubt.
            used = bad with { Complete = new DaySpan(LocalDate.Min(good.Complete.Earliest, bad.Complete.Earliest), bad.Complete.Latest) };
        if (used is not { } receipt)
            return null;
        var inTime = time.InTime(receipt.Complete.Latest);
        var doubt = receipt.Doubt | (inTime ?? NoticeDoubt.None);
        return new RecipientReach(to, inTime is null
            ? ReachKind.Late : ReachKind.Whole, Reach.ReachedBy(facts, receipt.Complete), receipt.Complete)
        {
            Notice = receipt.Notice,
            Doubt = doubt,
            MayBeInTime = inTime is null && time.MayBeInTime(receipt.Complete.Earliest),
            SurelyFrom = doubt == NoticeDoubt.None ? null : sure is { } surely ? Reach.ReachedBy(facts, surely.Complete) : null,
        };
    }

    private static RecipientReach NotGiven(FactsAsOf facts, Recipient to, NoticeTime time)
    {
        var inTime = time.InTime(facts.AsOf);
        var from = inTime is null ? Reach.LookBack(facts, facts.AsOf).LookBack(facts.AsOf) : LocalDate.MinIsoValue;
        return new RecipientReach(to, ReachKind.NotGiven, new DaySpan(from, from), null) { Doubt = inTime ?? NoticeDoubt.None,
            MayBeInTime = inTime is null && time.MayBeInTime(facts.AsOf) };
    }

    // Null: it went to none of them. Of several of whom one is meant a single one leaves the doubt; that all were told is seen apart.
    private static NoticeDoubt? ToWhom(FactsAsOf facts, NoticeGiven notice, Recipient to)
    {
        NoticeDoubt? best = null;
        for (var i = 0; i < to.AnyOf.Count; i++)
        {
            if (ToParty(facts, notice, to.AnyOf[i]) is { } doubt && (best is null || doubt == NoticeDoubt.None))
                best = doubt;
        }

        if (best is not null)
            return to.AllNeeded ? best | NoticeDoubt.OneOfSeveral : best;
        foreach (var agent in to.Agents)
        {
            if (ToParty(facts, notice, agent) is { } doubt)
                return doubt | NoticeDoubt.Agent;
        }

        return null;
    }

    /// <summary>A notice that lacks something may be saved, if it tells in substance what must be known.</summary>
    [Rule("Civ. Code § 8102(b)", Sure = Sure.Opinion)]
    private static NoticeDoubt? ToParty(FactsAsOf facts, NoticeGiven notice, Party party)
    {
        if (!notice.To.Contains(party.Id))
            return null;
        var doubt = notice.Lacks is null ? NoticeDoubt.None : NoticeDoubt.Lacks;
        if (notice.Manner != Manner.Substituted)
            return doubt;
        return LeftAndMailed.IsGood(facts.Numbers, notice.On, notice.Tries, party) switch
        {
            Verdict.Yes => doubt,
            Verdict.Open => doubt | NoticeDoubt.LeftAndMailed,
            Verdict.No => null,
            var other => throw new InvalidOperationException($"No such verdict: {other}."),
        };
    }

    // Each of several told by a notice of its own: complete when the last of them was told.
    private static Receipt? AllTold(FactsAsOf facts, Recipient to)
    {
        Receipt? all = null;
        foreach (var party in to.AnyOf)
        {
            Receipt? told = null;
            foreach (var notice in facts.PreliminaryNotices)
            {
                if (Giving.Counts(notice) && ToParty(facts, notice, party) == NoticeDoubt.None
                    && Giving.CompleteOn(facts.Numbers, notice) is { } complete)
                    told = Earlier(told, new Receipt(complete, notice, NoticeDoubt.None));
            }

            if (told is not { } one)
                return null;
            all = all is { } so ? one with { Complete = DaySpan.Later(so.Complete, one.Complete) } : one;
        }

        return all;
    }
}
