using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// A claim of mechanics lien (Civ. Code §§ 8400-8424): by one with a lien right, after the preliminary notice, after ceasing or
/// completing, before
/// the time ends, in the county of the site, with a copy mailed to the owner first.
/// </summary>
internal static class ClaimReading
{
    /// <summary>A recorded claim in one world.</summary>
    /// <param name="Claim">The entry.</param>
    /// <param name="Day">Its day.</param>
    /// <param name="Good">Whether every condition is met.</param>
    /// <param name="Curable">Where it is not good: whether that hangs on its being early, on its contents or on its service only, of which
    /// the file may not tell all.</param>
    /// <param name="GivenUp">Whether it was released.</param>
    internal readonly record struct Recorded(ClaimRecorded Claim, LocalDate Day, bool Good, bool Curable, bool GivenUp);

    /// <summary>The mechanics liens recorded, each with what became of it.</summary>
    public static List<Recorded> All(World w, PrivateCompletion.Completion complete)
    {
        var all = new List<Recorded>(2);
        foreach (var claim in w.Matter.Of<ClaimRecorded>())
        {
            if (IsDesignLien(w, claim))
                continue;
            var day = w.On(claim);
            var released = w.Matter.Of<ReleaseRecorded>().Any(r => w.On(r) >= day);
            var counts = Counts(w, claim, day, complete);
            if (claim.Lien == LienKind.Converted)
                continue;
            counts &= IsNotTooEarly(w, claim, day, complete);
            var good = counts && WasServed(w, claim, day)
                && (claim.Lacks is null || w.Either("a claim that lacks something will do", claim.Index));
            all.Add(new Recorded(claim, day, good, counts, released));
        }

        return all;
    }

    public static bool IsDesignLien(World w, ClaimRecorded claim) => claim.Lien switch
    {
        LienKind.Design => true,
        LienKind.Mechanics or LienKind.Converted => false,

        // One that does not say: a mechanics lien, but for a designer before the work commenced.
        _ => w.Matter.Role == ClaimantRole.DesignProfessional && w.Matter.HiredByOwner && !HadCommenced(w, w.On(claim))
            && (w.Job.Work.Commenced is not null || w.Either("a design lien", claim.Index)),
    };

    // Whether the file shows that work had begun by a day: it says so, or tells of labor that stopped or of completion.
    private static bool HadCommenced(World w, LocalDate day) =>
        w.Job.Work.Commenced <= day
        || (w.Job.Work.Commenced is null
            && (w.Matter.Of<LaborCeased>().Any(e => w.On(e) <= day) || w.Matter.Of<Completed>().Any(e => w.On(e) <= day)
            || w.Matter.Of<OwnerRecorded>().Any(e => w.On(e) <= day)));

    private static bool Counts(World w, ClaimRecorded claim, LocalDate day, PrivateCompletion.Completion complete)
    {
        // § 8060(b): where the work or part of it lies. A file that lists the other counties lists them all.
        if (claim.County is { } county && county != w.Job.Work.Site.County && !w.Job.Work.Site.AlsoIn.Contains(county)
            && (w.Job.Work.Site.AlsoIn.Count > 0 || !w.Either("part of the work lies there", claim.Index)))
            return false;
        return IsAfterNotice(w, day, claim.Index) && (complete.LastDay is not { } last
            || w.InTime(day, last, "claim in time", claim.Index));
    }

    // § 8200(a): before recording a lien claim, preliminary notice; a converted design lien needs none (§ 8319(a)(4)).
    private static bool IsAfterNotice(World w, LocalDate day, int index)
    {
        var given = w.AtBest(PreliminaryNoticeReading.Of);
        if (!given.Due)
            return true;
        if (given.ToOwnerAndContractor && (given.Day is not { } told || !World.Before(told, day)))
            return false;

        // Whether the lien lives without a notice to the lender is told in the notice's own row.
        return true;
    }

    // §§ 8412, 8414(a): after completing the direct contract; after ceasing to provide work; § 8186(a).
    private static bool IsNotTooEarly(World w, ClaimRecorded claim, LocalDate day, PrivateCompletion.Completion complete)
    {
        // A notice for the claimant's own contract only helps: one that had ceased before need not wait for it.
        if (complete.DeemedCeased is { } deemed && (deemed < day || (deemed == day && w.Either("on the day of the notice", claim.Index))))
            return true;
        if (FirstAndLast.Last(w) is not { } last)
            return w.Either("nothing furnished", claim.Index);
        if (FirstAndLast.Ceased(w) is { } ceased && ceased >= day)
            return (ceased == day || last < day) && w.Either("recorded on the last day", claim.Index);
        if (w.Matter.IsDirectContractor && !(complete.Day <= day) && !w.Matter.Of<ContractEnded>().Any(e => w.On(e) <= day)
            && (!FirstAndLast.HasEnded(w) || PartIsUndone(w)))
            return w.Either("direct contract was completed", claim.Index);
        return true;
    }

    // Less was furnished than the agreed price: the direct contract may not be complete. Where nothing shows that, one that says that it
    // furnishes no more has completed it.
    private static bool PartIsUndone(World w)
    {
        if (w.Job.Contract.Price is not { } price)
            return false;
        foreach (var change in w.Matter.Of<Change>())
            price += change.Agreed ? change.Amount : 0m;
        return w.Matter.Work.All(f => f.Amount is not null) && w.Matter.Work.Sum(f => f.Amount ?? 0m) < price;
    }

    // § 8416(c), (e): three kinds of mail, to the owner, and before recording, since the affidavit is part of the claim.
    private static bool WasServed(World w, ClaimRecorded claim, LocalDate day)
    {
        var served = w.Matter.Of<ClaimServed>();
        if (served.Length == 0)
            return true;
        var owners = w.Matter.In(PartyCapacity.Owner);
        var doubtful = false;
        foreach (var s in served)
        {
            if (s.Manner is not (Manner.CertifiedMail or Manner.RegisteredMail or Manner.CertificateOfMailing) || w.On(s) > day)
                continue;
            if (owners.Any(o => s.To.Contains(o.Id)))
            {
                if (owners.All(o => s.To.Contains(o.Id)))
                    return true;
                doubtful = true;
            }
            else
            {
                doubtful |= s.To.Any(id => w.Job.Party(id) is
                {
                    Capacity: PartyCapacity.ConstructionLender or PartyCapacity.DirectContractor or PartyCapacity.OwnersAgent
                    or PartyCapacity.Association,
                });
            }
        }

        return doubtful && w.Either("served as it could be", claim.Index);
    }

    // Whether the notice is dead is told in its own row; here it counts only where it is so on every day that is in doubt.
    private static Answer NoticeAlone(World w) => PreliminaryNoticeReading.IsDead(w) ? Answer.Lost : Answer.Kept;

    /// <summary>Whether the right itself is gone: the license, the notice, the one who hired.</summary>
    public static bool IsDead(World w) =>
        w.LicenseLost || w.Matter.IsSurelyLost(NoticeAlone) || w.AtBest(HasNoAuthority);

    /// <summary>
    /// A supplier to a mere supplier has no right, unless the hirer made a part of the work to the plans (Civ. Code § 8404(b)).
    /// </summary>
    public static bool HasNoAuthority(World w) =>
        w.Matter.Hirer is { Capacity: PartyCapacity.Supplier } hirer && !w.Told(hirer.MadeToPlans, "made to the plans");

    // A claim that was released, or a design lien that was converted, has rows of its own.
    public static bool IsElsewhere(World w) => w.Matter.Work.Length == 0 || w.Matter.Of<ReleaseRecorded>().Length > 0
        || w.Matter.Of<ClaimRecorded>().Any(c => c.Lien == LienKind.Converted);

    /// <summary>Whether a claim is surely bad, read in every world by itself.</summary>
    public static bool IsSurelyBad(Matter matter, ClaimRecorded claim) => new World(matter).Everywhere(w =>
    {
        var mine = All(w, PrivateCompletion.Of(w)).Find(r => r.Claim == claim);
        return mine.Good || mine.Curable ? Answer.Kept : Answer.Lost;
    }).SurelyLost;

    /// <summary>Whether a claim is void in this world, so that none could be amended.</summary>
    public static bool IsVoidHere(World w, ClaimRecorded claim) =>
        All(w, PrivateCompletion.Of(w)).Find(r => r.Claim == claim) is { Claim: not null, Good: false, Curable: false };

    public static Answer LastDay(World w)
    {
        if (IsElsewhere(w))
            return Answer.Free;
        var complete = PrivateCompletion.Of(w);
        var dead = IsDead(w);
        var unexpired = false;
        var expired = false;
        var bad = false;
        foreach (var r in All(w, complete))
        {
            bad |= !r.Good && r.Curable && !r.GivenUp && EnforcementReading.IsSuedOrOpen(w, r.Claim, r.Day);
            if (!r.Good || r.GivenUp)
                continue;
            if (EnforcementReading.IsSuedOrOpen(w, r.Claim, r.Day))
                unexpired = true;
            else
                expired = true;
        }

        if (dead)
            return Answer.Lost;

        if (unexpired)
            return Answer.Kept;
        var over = complete.LastDay is { } last && w.IsOver(last, "time to record");
        if (!over)
            return Answer.Open(complete.LastDay);
        if (expired)
            return new Answer(May.Kept | May.Lost);
        return bad && w.Either("a defect of the claim is cured") ? Answer.Doubt : Answer.Lost;
    }
}
