using Stringline.Law.Bankruptcy;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>The reasons and questions of the time to sue, put together when somebody reads them.</summary>
internal static class WhyAction
{
    private const string Section = "Civ. Code § 8460(a)";

    /// <summary>The reasons.</summary>
    public static IReadOnlyList<Reason> Of(FactsAsOf facts, ClaimSuits suits, Standing standing, OpenDays calendar)
    {
        var why = new List<Reason>();
        if (suits.Leading is { Stay: { } stay } stayed && standing is not (Standing.Done or Standing.Kept))
            why.Add(stay.InsteadOfSuit(stayed.FirstEnd));
        foreach (var suit in suits.Chain)
            About(facts, suit, suits.Unsure, why, calendar);
        var days = suits.Leading!.DaysToSue(facts);
        if (Stay.Of(facts, PartyCapacity.DirectContractor, suits.Leading.Recorded.Earliest, suits.Leading.LastEnd) is { } contractors)
            why.Add(Reason.Of("11 U.S.C. § 362(a)", $"{contractors.Debtor.Name} is or was in bankruptcy ({contractors.Since}): leave it "
                + $"out of the suit while the stay lasts. The lien on the owner's land is enforced without it."));
        if (suits.Chain.Count > 1)
            why.Add(SeveralClaims(suits, days));
        foreach (var credit in facts.All<CreditRecorded>())
        {
            if (Credit.IsOfEarlierClaim(credit, suits.Leading!))
                why.Add(Reason.NotApplied("Civ. Code § 8460(b)(1)", $"The notice of credit recorded {DaySpan.Of(credit.On)} came before "
                    + $"this claim: a notice counts that is recorded after the claim, so that credit was an earlier claim's. Have another "
                    + $"agreed and recorded.", credit));
        }

        if (suits.Leading is { Action: null } unsued)
            AfterTheLastDay(facts, unsued, why, calendar);
        if (suits.Released == Verdict.No && ReleaseBond.On(facts, suits.Leading!) is { } bond)
            why.Add(Reason.Of("Civ. Code § 8424(c)", $"A release bond was recorded {DaySpan.Of(bond.On)}: it stands in the land's place. "
                + $"Whether the {days} still bind one whose lien was bonded before suit the Code does not say: sue on claim and bond by "
                + $"the earlier.", [bond]));
        why.Add(Costs);
        return why;
    }

    /// <summary>What was paid to verify and record the claim is allowed as costs.</summary>
    [Rule("Civ. Code § 8464")]
    private static Reason Costs { get; } =
    Reason.Of("Civ. Code § 8464", $"Keep the recorder's and the postal receipts with the job: what was paid to verify and record the claim "
        + $"is allowed as costs if the lien is established; it is no part of the claim.");

    private static void About(FactsAsOf facts, ClaimSuit suit, IReadOnlyList<ClaimRecorded> unsure, List<Reason> why, OpenDays calendar)
    {
        why.Add(Reason.Of(Section, $"Claim recorded {suit.Recorded}; the action must be brought by {suit.FirstEnd}, else the claim expires "
            + $"and cannot be enforced. Neither a demand nor a notice of pendency of action stops the time.", [suit.Claim]));
        if (suit.Action is { } action && DaySpan.Of(action.On) is { } filed)
            AboutAction(facts, suit, action, filed, unsure, why, calendar);
        if (suit.End is { } end)
            why.Add(AboutEnd(end, suit.DaysToSue(facts)));
    }

    private static void AboutAction(FactsAsOf facts, ClaimSuit suit, ActionFiled action, DaySpan filed, IReadOnlyList<ClaimRecorded> unsure,
        List<Reason> why, OpenDays calendar)
    {
        why.Add(Reason.Of(Section, $"Action filed {filed}.", [action]));
        var days = suit.DaysToSue(facts);
        if (filed.Latest > suit.FirstEnd)
        {
            if (filed.Latest <= calendar.RollForwardOnBothLists(suit.FirstEnd))
                why.Add(Reason.Of("Civ. Code § 10", $"Filed after the {days.Ordinal} day but by the day to which it rolls under "
                    + $"Civ. Code §§ 7, 10 and Code Civ. Proc. § 12a alike: in time under Mox, Inc. v. Leventhal (1928) 89 Cal.App. 253. "
                    + $"Against it: "
                    + $"that the life of a lien is no limitation period.", [action]));
            else if (filed.Earliest <= suit.LastEnd && filed.Earliest > suit.Readings[^1].Day)
                why.Add(Reason.Of("Civ. Code § 10", $"Filed after the {days.Ordinal} day but by the day to which one list carries it "
                    + $"({calendar.WhyClosed(suit.Readings[^1].Day)}): Civ. Code §§ 7, 10 and Code Civ. Proc. § 12a do not pass over the "
                    + $"same days, so it is in doubt.", [action]));
            else if (filed.Earliest <= suit.LastEnd)
                why.Add(Reason.Of(Section, $"Whether that was within the {days} turns on a day that is in doubt."));
        }

        if (ClaimAction.MayBeOnAnother(facts, action, filed, unsure))
            why.Add(Reason.Of(Section, $"The file does not say which of the claims the action enforces, and one of those recorded before "
                + $"it may not count.", [action]));
        if (action.SmallClaims)
            why.Add(Reason.Of("Code Civ. Proc. § 116.220", $"A small claims court gives money and does not foreclose a lien: whether the "
                + $"action there keeps it is in doubt. Bring one to foreclose in the superior court by {suit.FirstEnd}.", [action]));
        if (ClaimAction.OwnerNotSued(facts, action, filed) is { } owner)
            why.Add(Reason.Of("Civ. Code § 8461", $"{owner.Name} was not sued: an owner who is not made a party in time is not bound by "
                + $"the judgment. Bring it in by {suit.FirstEnd}.", [action]));
    }

    private static Reason AboutEnd(ActionEnded end, NumberRow days) => end.How switch
    {
        ActionEnd.Won =>
            Reason.Of("Civ. Code § 8466", $"Judgment for the claimant; what the sale does not bring is a deficiency against the one "
                + $"personally liable.", [end]),
        ActionEnd.Settled => Reason.Of(Section, $"The action was settled: what is left to do follows from the settlement.", [end]),
        ActionEnd.LostAtTrial =>
            Reason.Of("Civ. Code § 8490(b)", $"A judgment that no lien exists cancels the claim, unless it is reversed.", [end]),
        ActionEnd.ReleaseOrdered =>
            Reason.Of("Civ. Code § 8490(b)", $"The court ordered the property released: the claim is cancelled, unless the order is "
                + $"reversed. The debt stays (Civ. Code § 8480(b)).", [end]),
        ActionEnd.Dismissed => end.WithoutPrejudice switch
        {
            true => Reason.Of("Civ. Code § 8490(d)", $"The action was dismissed expressly without prejudice, so the order does not cancel "
                + $"the claim; whether another action may follow after the {days} the Code does not say. File it at once.", [end]),
            false => Reason.Of("Civ. Code § 8490(b)", $"An order that dismisses the action, and does not say that it is without prejudice, "
                + $"cancels the claim, unless it is reversed.", [end]),
            null => Reason.Of("Civ. Code § 8490", $"The action was dismissed. The order cancels the claim unless it says expressly that it "
                + $"is without prejudice.", [end]),
        },
        _ => throw new InvalidOperationException($"No such end: {end.How}."),
    };

    private static Reason SeveralClaims(ClaimSuits suits, NumberRow days) =>
        Reason.Of(Section, $"{suits.Chain.Count} claims are recorded and not released. A later claim has {days} of its own (Coast Central "
            + $"Credit Union v. Superior Court (1989) 209 Cal.App.3d 703); while an earlier one stands, the owner will say that it is the "
            + $"same claim and that the time runs from the first. Sue within the first, and release no claim that is in "
            + $"suit.", [.. suits.Chain.Select(s => s.Claim)]);

    // Past the last day, while some list carries it on: the court may hold either way, so the action is still worth filing.
    private static void AfterTheLastDay(FactsAsOf facts, ClaimSuit suit, List<Reason> why, OpenDays calendar)
    {
        if (facts.AsOf > suit.LastEnd)
            why.Add(Reason.Of("Civ. Code § 8460(b)(2)", $"The time without credit is over: lost unless the owner agrees to credit and "
                + $"notice of it is recorded before anyone buys or takes a security in good faith and for value, or a bankruptcy of the "
                + $"owner held the time{HeadField.PartiesBankruptSince:aside}."));
        else if (facts.AsOf > suit.Readings[^1].Day)
            why.Add(Reason.Of("Civ. Code § 10", $"The {suit.DaysToSue(facts).Ordinal} day, {suit.Readings[^1].Day}, was closed "
                + $"({calendar.WhyClosed(suit.Readings[^1].Day)}): file today, so that Civ. Code §§ 7, 10 or Code Civ. Proc. § 12a may "
                + $"carry it (Mox, Inc. v. Leventhal (1928) 89 Cal.App. 253)."));
    }

    /// <summary>What would settle it.</summary>
    public static IReadOnlyList<Question> Ask(FactsAsOf facts, ClaimSuits suits, Standing standing, OpenDays calendar)
    {
        var questions = new List<Question>();
        foreach (var suit in suits.Chain)
        {
            if (suit.Recorded.IsExact && !calendar.IsOpen(suit.Recorded.Earliest))
                questions.Add(
                    new Question(
                        $"The recorder is closed on {suit.Recorded.Earliest} ({calendar.WhyClosed(suit.Recorded.Earliest)}): is that the "
                            + $"day on which the claim was recorded?{ClaimKinds.ClaimRecorded.At("on"):aside}") { Corrects = suit.Claim });
            if (ClaimOfLien.WhichLien.Of(facts, suit.Claim) is null)
                questions.Add(ClaimOfLien.WhichLien.Ask(suit.Claim));
            if (suit.Action is { } unnamed && DaySpan.Of(unnamed.On) is { } filed
                && ClaimAction.MayBeOnAnother(facts, unnamed, filed, suits.Unsure))
                questions.Add(
                    new Question($"Which of the recorded claims of lien does the action "
                        + $"enforce?{ClaimKinds.ActionFiled.At("claim"):aside}") { Corrects = unnamed });
            if (suit.End is { How: ActionEnd.Dismissed, WithoutPrejudice: null } end)
                questions.Add(
                    new Question($"Does the order of dismissal say expressly that it is without "
                        + $"prejudice?{ClaimKinds.ActionEnded.At("withoutPrejudice"):aside}") { Corrects = end });
            if (suit is { Action: { Enforces.Count: 0 } action, End: null } && standing is Standing.Kept or Standing.InDoubt)
                questions.Add(
                    new Question($"Does the action ask for foreclosure of this claim of "
                        + $"lien?{ClaimKinds.ActionFiled.At("enforces"):aside}") { Corrects = action });
        }

        if (standing == Standing.Lost && suits.Leading is { Stay: null, End: null })
            questions.Add(new Question($"Was the owner in bankruptcy on some day of the time to sue? Then the claim may not be "
                + $"lost.{HeadField.PartiesBankruptSince:aside}"));
        return questions;
    }
}
