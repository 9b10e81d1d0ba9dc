using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>Findings that are no remedy of their own, but on which one hangs.</summary>
internal static class OtherReadings
{
    /// <summary>Whether who hired the claimant had charge of a part of the work (Civ. Code §§ 8404, 9100).</summary>
    public static Answer AuthorizedWork(World w) => w.Matter.Hirer switch
    {
        { Capacity: PartyCapacity.Supplier, MadeToPlans: true } => w.Matter.Kind == WorkKind.Federal ? Answer.Free : Answer.Kept,
        { Capacity: PartyCapacity.Supplier, MadeToPlans: false } => Answer.Lost,
        { Capacity: PartyCapacity.Supplier } => Answer.Doubt,
        _ => Answer.Free,
    };

    /// <summary>The action on a public payment bond: any time after the claimant ceased to provide work (Civ. Code § 9558).</summary>
    public static Answer BondSuit(World w) =>
        w.Matter is { Kind: WorkKind.Public, IsDirectContractor: false, LicenseLost: false, Hirer.Capacity: not PartyCapacity.PublicEntity }
        && !w.Matter.IsSurelyLost(PublicBondReading.Notice) && FirstAndLast.Ceased(w) is { } ceased && ceased >= w.AsOf
        ? Answer.Doubt : Answer.Free;

    /// <summary>The day from which work is covered: all of it only where the notice came in time.</summary>
    public static Answer ReachesBackTo(World w)
    {
        var notice = PreliminaryNoticeReading.LastDayFinding(w);
        return (notice.May & May.Kept) != 0 ? Answer.Free : new Answer(May.Open | May.Lost);
    }

    /// <summary>The day of completion: settled only where every reading has the same one.</summary>
    public static Answer Completed(World w)
    {
        var day = w.Matter.Kind == WorkKind.Public ? PublicCompletion.Of(w).Day : PrivateCompletion.Of(w).Day;
        return day is null ? Answer.Open() : new Answer(May.Kept | May.Open, day);
    }
}
