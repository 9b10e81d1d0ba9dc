using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// The design professional's lien (Civ. Code §§ 8300-8319): demand at least ten days before, recorded within 90 days of knowing that the
/// work will not commence, dead on commencement or after 90 days without an action; converted within 30 days of commencement.
/// </summary>
internal static class DesignLienReading
{
    private static bool IsElsewhere(World w) =>
        w.Matter.Role != ClaimantRole.DesignProfessional || w.Matter.Work.Length == 0 || w.Matter.Of<ReleaseRecorded>().Length > 0
        || w.Matter.Of<ActionEnded>().Length > 0 || w.Matter.Of<CreditRecorded>().Length > 0;

    private static LocalDate? Commenced(World w) => w.Job.Work.Commenced is { } day && day <= w.AsOf ? day : null;

    // A claim for the design lien, or one that does not say.
    private static IEnumerable<ClaimRecorded> Claims(World w) => w.Matter.Of<ClaimRecorded>().Where(c =>
        c.Lien == LienKind.Design || (c.Lien is null && ClaimReading.IsDesignLien(w, c)));

    private static LocalDate? Knew(World w)
    {
        LocalDate? knew = null;
        foreach (var e in w.Matter.Of<WorkWillNotCommence>())
            knew = World.Earlier(knew, w.On(e));
        return knew;
    }

    private static bool IsBarred(World w) =>
        w.Matter.Hirer is not { Capacity: PartyCapacity.Owner } owner
        || owner.SoldOn is not null
        || w.Job.Contract.Written == false;

    // § 8304(c): demand, default and its amount, not less than ten days before.
    private static bool WasDemanded(World w, ClaimRecorded claim)
    {
        foreach (var demand in w.Matter.Of<PaymentDemanded>())
        {
            if (w.On(demand).PlusDays(10) <= w.On(claim) && (demand.OfDefault == true || (demand.OfDefault is null
                && w.Either("demand of the default", demand.Index))))
                return true;
        }

        return false;
    }

    public static Answer LastDay(World w)
    {
        if (IsElsewhere(w))
            return Answer.Free;
        if (w.LicenseLost)
            return Answer.Free;
        if (Commenced(w) is not null)
            return new Answer(May.Lost);
        var last = Knew(w)?.PlusDays(90);
        var expired = false;
        foreach (var claim in Claims(w))
        {
            var day = w.On(claim);
            var good = WasDemanded(w, claim) && (last is not { } end || w.InTime(day, end, "design claim in time", claim.Index));
            if (!good)
                continue;
            var sued = w.Matter.Of<ActionFiled>().Any(a => EnforcementReading.IsOnLien(w, a, claim) && w.On(a) >= day
                && w.InTime(w.On(a), day.PlusDays(90), "sued on the design lien", a.Index));
            if (sued || !w.IsOver(day.PlusDays(90), "design lien unsued", claim.Index)
                || EnforcementReading.IsStayed(w, day, day.PlusDays(90)))
                return IsBarred(w) ? Answer.Free : Answer.Kept;
            expired = true;
        }

        if (IsBarred(w))
            return new Answer(May.Lost | May.Open, last);
        if (last is not { } ends || (!w.IsOver(ends, "time to record the design lien") && CanBeDemanded(w, ends)))
            return Answer.Open(last);
        return expired ? new Answer(May.Kept | May.Lost) : Answer.Lost;
    }

    // § 8304(c): ten days must lie between the notice, given already or today, and the last day to record; without it no lien comes to be.
    private static bool CanBeDemanded(World w, LocalDate last)
    {
        var first = w.AsOf;
        foreach (var demand in w.Matter.Of<PaymentDemanded>())
        {
            if (demand.OfDefault == true || (demand.OfDefault is null && w.Either("demand of the default", demand.Index)))
                first = World.Earlier(first, w.On(demand))!.Value;
        }

        return w.InTime(first.PlusDays(10), last, "recorded ten days after the notice");
    }

    /// <summary>The action on a recorded design lien (§ 8306(b)(2)).</summary>
    public static Answer Enforcement(World w)
    {
        if (IsElsewhere(w) || IsBarred(w) || w.LicenseLost)
            return Answer.Free;
        var claims = Claims(w).ToArray();
        if (claims.Length != 1)
            return Answer.Free;
        if (Commenced(w) is not null)
            return new Answer(May.Lost);
        var claim = claims[0];
        if (Knew(w)?.PlusDays(90) is { } end && w.On(claim) > end)
            return Answer.Free;
        if (!WasDemanded(w, claim))
            return LastDay(w).May == May.Lost ? Answer.Lost : Answer.Free;
        var last = w.On(claim).PlusDays(90);
        foreach (var action in w.Matter.Of<ActionFiled>())
        {
            if (EnforcementReading.IsOnLien(w, action, claim) && w.On(action) >= w.On(claim)
                && w.InTime(w.On(action), last, "sued on the design lien", action.Index))
                return Answer.Kept;
        }

        return w.IsOver(last, "design lien unsued", claim.Index) ? Answer.Lost : Answer.Open(last);
    }

    /// <summary>The mechanics lien recorded within 30 days after the work commenced (§ 8319).</summary>
    public static Answer Conversion(World w)
    {
        if (IsElsewhere(w) || IsBarred(w) || w.LicenseLost)
            return Answer.Free;
        if (Commenced(w) is not { } commenced || w.Job.Work.Commenced != commenced)
            return Answer.Free;
        var designs = w.Matter.Of<ClaimRecorded>().Where(c => c.Lien == LienKind.Design && w.On(c) < commenced).ToArray();
        if (designs.Length != 1 || w.Matter.Of<ClaimRecorded>().Any(c => c.Lien is null))
            return Answer.Free;
        var last = commenced.PlusDays(30);
        var converted = w.Matter.Of<ClaimRecorded>().Where(c => c.Lien == LienKind.Converted && w.On(c) > commenced).ToArray();
        foreach (var claim in converted)
        {
            if (w.InTime(w.On(claim), last, "converted in time", claim.Index))
                return Answer.Free with { May = May.Kept };
        }

        return w.IsOver(last, "thirty days to convert") ? new Answer(May.Lost) : Answer.Open(last);
    }
}
