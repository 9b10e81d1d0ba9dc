using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>The action to enforce the lien: within 90 days after recording, or after a credit (Civ. Code § 8460).</summary>
internal static class EnforcementReading
{
    /// <summary>Whether an action on a claim was brought in time, or still may be.</summary>
    public static bool IsSuedOrOpen(World w, ClaimRecorded claim, LocalDate recorded)
    {
        if (IsSued(w, claim, recorded))
            return true;
        var last = LastDay(w, claim, recorded);
        return !w.IsOver(last, "time to sue", claim.Index) || IsStayed(w, recorded, last);
    }

    /// <summary>
    /// The last day to sue: 90 days after recording, or after the end of a credit of which notice was recorded in those days, or later but
    /// before a buyer in good faith; with credit never later than a year after completion.
    /// </summary>
    public static LocalDate LastDay(World w, ClaimRecorded claim, LocalDate recorded)
    {
        var ninety = Ninety(w, claim, recorded);
        LocalDate? credited = null;
        foreach (var credit in w.Matter.Of<CreditRecorded>())
        {
            var on = w.On(credit);
            if (on >= recorded
                && (w.InTime(on, ninety, "credit in time", credit.Index) || w.Either("no buyer in good faith", credit.Index)))
                credited = World.Later(credited, credit.Until.PlusDays(90));
        }

        if (credited is not { } end)
            return ninety;
        return PrivateCompletion.Of(w).Day is { } complete ? World.Earlier(end, PlainCalendar.Years(complete, 1))!.Value : end;
    }

    /// <summary>The ninetieth day after recording.</summary>
    public static LocalDate Ninety(World w, ClaimRecorded claim, LocalDate recorded)
    {
        // An amended claim may be the same claim: then the first one's time runs on. One that is surely bad was no lien whose time could.
        foreach (var earlier in w.Matter.Of<ClaimRecorded>())
        {
            if (earlier.Index == claim.Index || ClaimReading.IsDesignLien(w, earlier) || w.On(earlier) >= recorded
                || w.Matter.Of<ReleaseRecorded>().Length > 0 || w.Matter.IsSurelyBad(earlier) || ClaimReading.IsVoidHere(w, earlier))
                continue;
            if (w.Either("the later claim is the earlier one amended", claim.Index))
                recorded = w.On(earlier) < recorded ? w.On(earlier) : recorded;
        }

        return recorded.PlusDays(90);
    }

    public static bool IsSued(World w, ClaimRecorded claim, LocalDate recorded)
    {
        foreach (var action in w.Matter.Of<ActionFiled>())
        {
            if (!IsOnLien(w, action, claim))
                continue;
            var day = w.On(action);
            if (day < recorded)
                continue;
            if (w.InTime(day, LastDay(w, claim, recorded), "sued in time", action.Index))
                return true;
        }

        return false;
    }

    public static bool IsOnLien(World w, ActionFiled action, ClaimRecorded claim)
    {
        if (action.Enforces.Count > 0 && !action.Enforces.Contains(ActionOn.Lien))
            return false;
        if (action.Claim is { } id && id != claim.Id)
            return false;
        if (action.Claim is null && WhichClaim(w, action) is { } which && which != claim.Index)
            return false;
        if (action.Against.Count > 0 && !action.Against.Any(a => w.Job.Party(a) is { Capacity: PartyCapacity.Owner })
            && !w.Either("the right ones were sued", action.Index))
            return false;

        // Code Civ. Proc. § 116.220: a small claims court forecloses nothing.
        return !action.SmallClaims || w.Either("small claims will do", action.Index);
    }

    // An action that names none of several claims is on one of them.
    private static int? WhichClaim(World w, ActionFiled action)
    {
        var claims = Array.FindAll(w.Matter.Of<ClaimRecorded>(), c => w.On(c) <= w.On(action));
        return claims.Length switch
        {
            0 => null,
            1 => claims[0].Index,
            _ => claims[w.Choose("the claim that the action is on", action.Index, claims.Length)].Index,
        };
    }

    /// <summary>Whether the owner was in bankruptcy on some day of the time to sue, and it stood still.</summary>
    public static bool IsStayed(World w, LocalDate recorded, LocalDate last) =>
        WasStayed(w, recorded, last) && w.Either("the stay keeps the time");

    public static bool WasStayed(World w, LocalDate recorded, LocalDate last) => w.Matter.In(PartyCapacity.Owner).Any(o =>
        o.BankruptSince <= w.AsOf && o.BankruptSince <= PlainCalendar.RolledOnAnyList(last) && !(o.BankruptUntil < recorded));

    /// <summary>
    /// The row of the action; whether the claim itself is good is told in the claim's row, so only one that is surely bad counts for
    /// nothing here.
    /// </summary>
    public static Answer Finding(World w)
    {
        if (ClaimReading.IsElsewhere(w) || w.Matter.Of<ActionEnded>().Length > 0 || w.Matter.Of<ReleaseBondRecorded>().Length > 0)
            return Answer.Free;
        if (ClaimReading.IsDead(w))
            return Answer.Lost;

        // § 8460(b): subdivision (a) and its 90 days do not apply where a notice of credit is recorded.
        if (w.Matter.Of<CreditRecorded>().Any(credit => w.Matter.Of<ClaimRecorded>().Any(claim => w.On(credit) >= w.On(claim))))
            return CreditReading.Enforcement(w);
        LocalDate? next = null;
        var open = false;
        var expired = false;
        var bad = false;
        var stayed = false;
        foreach (var claim in w.Matter.Of<ClaimRecorded>())
        {
            var day = w.On(claim);
            if (ClaimReading.IsDesignLien(w, claim))
            {
                // One that does not say which lien it is has 90 days as either (§§ 8306(b)(2), 8460(a)).
                bad |= claim.Lien is null && w.IsOver(day.PlusDays(90), "time to sue", claim.Index);
                continue;
            }

            if (w.Matter.IsSurelyBad(claim))
            {
                bad |= w.IsOver(LastDay(w, claim, day), "time to sue", claim.Index);
                continue;
            }

            if (IsSued(w, claim, day))
                return Answer.Kept;
            var last = LastDay(w, claim, day);
            if (w.IsOver(last, "time to sue", claim.Index))
            {
                expired = true;
                stayed |= WasStayed(w, day, last);
                continue;
            }

            open = true;
            next = World.Earlier(next, last);
        }

        if (open)
            return Answer.Open(next);
        // A credit recorded before the claim is none by the words of § 8460(b); a court may be asked to hold otherwise while it would give
        // time.
        if (expired && (stayed || w.Matter.Of<CreditRecorded>().Any(c => w.AsOf <= PlainCalendar.RolledOnAnyList(c.Until.PlusDays(90)))))
            return Answer.Doubt;
        var over = PrivateCompletion.Of(w).LastDay is { } end && w.IsOver(end, "time to record");
        return over ? Answer.Lost : expired || bad ? new Answer(May.Open | May.Lost) : Answer.Open();
    }
}
