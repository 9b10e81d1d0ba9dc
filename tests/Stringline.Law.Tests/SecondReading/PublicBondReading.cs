using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>The payment bond of public work (Civ. Code §§ 9550-9566).</summary>
internal static class PublicBondReading
{
    public static Answer Notice(World w)
    {
        if (w.Matter.Work.Length == 0)
            return Answer.Free;
        if (IsDead(w))
            return Answer.Lost;
        var answer = BondNoticeReading.Finding(w, PublicCompletion.Of(w).Day);
        return Softened(w, answer);
    }

    private static bool IsDead(World w) => w.LicenseLost || w.Matter.IsDirectContractor || ClaimReading.HasNoAuthority(w);

    // No bond and no surety in the file: whether there is one is open. A state entity's bond is not the bond of § 9550 (§§ 8030(b),
    // 9550(e)): nothing is surely lost there. One hired by the entity has no right on the bond (§ 9566(a)), unless it is a slip.
    private static Answer Softened(World w, Answer answer)
    {
        if (w.Matter.Hirer is { Capacity: PartyCapacity.PublicEntity or PartyCapacity.Owner })
            return new Answer(May.Lost);
        if (w.Job.Work.PaymentBond is null && w.Matter.In(PartyCapacity.Surety).Count == 0)
            return answer with { May = answer.May & (May.Kept | May.Lost) };
        return answer.May == May.Lost && IsOfState(w) ? Answer.Doubt : answer;
    }

    private static bool IsOfState(World w) =>
        w.Job.Work.StateContractAct == true
            || w.Job.Work.Body is PublicBody.State or PublicBody.GeneralServices or PublicBody.Transportation or PublicBody.StateUniversity;

    public static Answer Action(World w)
    {
        if (w.Matter.Work.Length == 0 || w.Matter.Of<ActionEnded>().Length > 0)
            return Answer.Free;
        if (IsDead(w))
            return Answer.Lost;
        var complete = PublicCompletion.Of(w);
        return Softened(w, ActionIn(w, complete));
    }

    // § 9558: after the claimant ceased to provide work, within six months after the time to give a stop payment notice.
    private static Answer ActionIn(World w, PublicCompletion.Completion complete)
    {
        if (w.Matter.IsSurelyLost(Notice))
            return Answer.Lost;
        LocalDate? last = complete.LastDay is { } end ? PlainCalendar.SixMonthsAtLeast(end) : null;
        var suit = BondNoticeReading.Suit(w, last);
        if (suit == May.Kept)
            return Answer.Kept;
        if (last is not { } ends || !w.IsOver(ends, "six months on the bond"))
            return new Answer(suit, last);
        var kept = suit & May.Kept;
        return new Answer(w.IsOver(PlainCalendar.SixMonthsAtMost(complete.LastDay!.Value),
            "six months on the bond by the calendar") ? kept | May.Lost : kept);
    }
}
