using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>One who may hold money for the claimant, and through whom it is reached.</summary>
/// <param name="Id">The finding of its row.</param>
/// <param name="Words">Who it is, in words.</param>
/// <param name="Through">The parties of whom one must be served.</param>
internal sealed record Holder(string Id, string Words, IReadOnlyList<Party> Through)
{
    /// <summary>Whether it is a construction lender.</summary>
    public bool IsLender { get; init; }

    /// <summary>The day on which the preliminary notice that must come first was complete; null where none was given.</summary>
    public DaySpan? Noticed { get; init; }

    /// <summary>The same, of those alone whose missing notice is fatal: what lies between is in doubt.</summary>
    public DaySpan? EssentiallyNoticed { get; init; }

    /// <summary>
    /// Whether preliminary notice is due to others alone, such as to the lender from one whom the owner hired: whether its lack undoes what
    /// this one holds is open (Civ. Code §§ 8200(e)(2), 8508(a)).
    /// </summary>
    public bool OnlyOthersAreDue { get; init; }

    /// <summary>How far back the preliminary notice reaches toward it, where that is another reach than toward the owner.</summary>
    public Reach? Reach { get; init; }

    /// <summary>Whether a preliminary notice must come first.</summary>
    public bool NoticeIsDue { get; init; }

    /// <summary>Whether a preliminary notice on a day that nobody knows may have come first.</summary>
    public bool MayBeNoticed { get; init; }

    /// <summary>Whether nothing named it on the first day of the work, so that the preliminary notice to it may be excused.</summary>
    public bool MayBeExcused { get; init; }

    /// <summary>Whether one of a paper's recipients is among those through whom it is reached.</summary>
    public bool IsReachedBy(IReadOnlyList<string> to)
    {
        foreach (var party in Through)
        {
            foreach (var id in to)
            {
                if (party.Id == id)
                    return true;
            }
        }

        return false;
    }
}

/// <summary>Why a stop payment notice does not count toward a holder, or not surely.</summary>
internal enum Flaw
{
    /// <summary>Nothing is known against it.</summary>
    None,

    /// <summary>It was released in writing.</summary>
    Released,

    /// <summary>Of several notices it is not said which was released.</summary>
    MaybeReleased,

    /// <summary>It was given in a manner that is none.</summary>
    Manner,

    /// <summary>It was left and mailed toward a natural person, with no try to hand it over.</summary>
    NotTried,

    /// <summary>No preliminary notice was given before it.</summary>
    NoNoticeBefore,

    /// <summary>No preliminary notice was given before it to a lender that nothing named on the first day of the work.</summary>
    MaybeExcused,

    /// <summary>It went to an agent of the holder's, whose agency may not go so far.</summary>
    Agent,

    /// <summary>A design professional gave it before the work commenced.</summary>
    BeforeCommencement,

    /// <summary>Whether the preliminary notice came before it to all is open.</summary>
    OrderInDoubt,

    /// <summary>No preliminary notice was given before it to the lender, to which alone one is due, and it went to the owner.</summary>
    OthersUntold,

    /// <summary>Its day is not known.</summary>
    UnknownDay,

    /// <summary>It lacks something the Code asks.</summary>
    Lacks,

    /// <summary>It was left and mailed, and the tries to hand it over are not known.</summary>
    LeftAndMailed,

    /// <summary>Its bond is smaller than it must be for what it claims.</summary>
    SmallBond,

    /// <summary>The lender objected to the bond, and no other was brought in time.</summary>
    BondNotReplaced,
}

/// <summary>What one stop payment notice is toward one holder.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="On">The day on which it was complete; null where that is not known.</param>
/// <param name="Flaw">What is against it.</param>
internal sealed record GivenPaper(StopPaymentGiven Paper, DaySpan? On, Flaw Flaw)
{
    /// <summary>Whether it counts.</summary>
    public Verdict Counts => Flaw switch
    {
        Flaw.None => Verdict.Yes,
        Flaw.Released or Flaw.Manner or Flaw.NotTried or Flaw.NoNoticeBefore => Verdict.No,
        Flaw.MaybeReleased or Flaw.MaybeExcused or Flaw.OthersUntold or Flaw.Agent or Flaw.BeforeCommencement or Flaw.OrderInDoubt
            or Flaw.UnknownDay or Flaw.Lacks or Flaw.LeftAndMailed or Flaw.SmallBond or Flaw.BondNotReplaced => Verdict.Open,
        _ => throw new InvalidOperationException($"No such flaw: {Flaw}."),
    };
}

/// <summary>The stop payment notices given to one holder, and where its row stands.</summary>
/// <param name="Holder">The holder.</param>
/// <param name="Services">What was given to it, earliest first.</param>
/// <param name="Standing">Where giving it stands by its own clock, with what was given.</param>
internal sealed record HolderServed(Holder Holder, IReadOnlyList<GivenPaper> Services, Standing Standing)
{
    /// <summary>The papers that count, or may, and are not surely late.</summary>
    public IReadOnlyList<GivenPaper> Counting(TimeOfGiving time)
    {
        List<GivenPaper>? counting = null;
        foreach (var service in Services)
        {
            if (service.Counts != Verdict.No
                && !(service.On is { } on && time.Readings.Count > 0 && time.EndFirm && Deadline.IsPast(on.Earliest, time.Readings)))
                (counting ??= []).Add(service);
        }

        return counting ?? (IReadOnlyList<GivenPaper>)[];
    }
}
