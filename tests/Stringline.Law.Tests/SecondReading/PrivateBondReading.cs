using Stringline.Law.Facts;
using Bond = Stringline.Law.Facts.PaymentBond;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// The payment bond of private work (Civ. Code §§ 8606-8614): preliminary notice, or notice to surety and principal within 15 days after a
/// notice of completion, else 75 days after completion; then six months from completion if the bond was recorded before it.
/// </summary>
internal static class PrivateBondReading
{
    public static Answer Notice(World w)
    {
        if (w.Matter.Work.Length == 0 || w.Job.Work.PaymentBond is null)
            return Answer.Free;
        if (w.LicenseLost || ClaimReading.HasNoAuthority(w))
            return Answer.Lost;
        if (IsAnothers(w))
            return Answer.Free;
        if (IsStrange(w))
            return new Answer(May.Lost);
        var complete = PrivateCompletion.Of(w);
        return BondNoticeReading.Finding(w, complete.Day);
    }

    // § 8608(a): no right on a direct contractor's bond but for work that went to it; and no claim on the bond on which one is principal
    // oneself.
    private static bool IsStrange(World w) =>
        (w.Matter.IsDirectContractor || w.Matter.HiredByOwner) && Principal(w) is null or PartyCapacity.DirectContractor;

    // § 8606(b): an owner or a subcontractor may be the principal; whom a subcontractor's bond pays who does not work under it is not said.
    private static bool IsAnothers(World w) =>
        (w.Matter.IsDirectContractor || w.Matter.HiredByOwner) && Principal(w) == PartyCapacity.Subcontractor;

    private static PartyCapacity? Principal(World w) => w.Job.Party(w.Job.Work.PaymentBond?.Principal)?.Capacity;

    public static Answer Action(World w)
    {
        if (w.Matter.Work.Length == 0 || w.Job.Work.PaymentBond is not { } bond || w.Matter.Of<ActionEnded>().Length > 0)
            return Answer.Free;
        if (w.LicenseLost || ClaimReading.HasNoAuthority(w))
            return Answer.Lost;
        if (IsAnothers(w))
            return Answer.Free;
        if (IsStrange(w))
            return new Answer(May.Lost);
        var complete = PrivateCompletion.Of(w);
        if (w.Matter.IsSurelyLost(Notice))
            return Answer.Lost;
        LocalDate? last = complete.Day is { } day ? LastDay(w, bond, day) : null;
        var suit = BondNoticeReading.Suit(w, last);
        if (suit == May.Kept)
            return Answer.Kept;
        if (last is null || !w.IsOver(last.Value, "six months on the bond"))
            return new Answer(suit, last);

        // Six calendar months or 182 days, whichever is longer, may be allowed a claimant; it plans on the shorter.
        var kept = suit & May.Kept;
        return complete.Day is { } done && IsSixMonths(w, bond, done)
            && !w.IsOver(PlainCalendar.SixMonthsAtMost(done), "six months on the bond by the calendar")
            ? new Answer(kept) : new Answer(kept | May.Lost);
    }

    private static bool IsSixMonths(World w, Bond bond, LocalDate completed) =>
        bond.Recorded is not { } recorded ? w.Either("bond recorded before completion")
        : recorded < completed || (recorded == completed && w.Either("recorded before, on that day"));

    // § 8610; a bond recorded later runs four years (Code Civ. Proc. § 337) from when the claim arose, which is not before the first
    // work.
    private static LocalDate LastDay(World w, Bond bond, LocalDate completed) => IsSixMonths(w, bond, completed)
        ? PlainCalendar.SixMonthsAtLeast(completed)
        : PlainCalendar.Years(w.Either("the claim arose with the first work")
            ? FirstAndLast.First(w)!.Value : FirstAndLast.Last(w)!.Value, 4);
}
