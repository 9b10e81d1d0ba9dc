using Stringline.Law.Facts;

namespace Stringline.Law.ClaimOfLien;

/// <summary>Why no affidavit can swear to a mailing of a copy as it is entered.</summary>
public enum CopyFault
{
    /// <summary>The day is not exact, and the affidavit states it.</summary>
    DayNotExact,

    /// <summary>Nobody is named.</summary>
    ToNobody,

    /// <summary>A person is named who is no party of the file.</summary>
    PartyUnknown,

    /// <summary>One whom the section names has no address, and the affidavit states it.</summary>
    NoAddress,

    /// <summary>Nobody whom the section names is among those to whom it went.</summary>
    ToNobodyNamed,

    /// <summary>An owner's copy went to a post-office box, which is no address that the section names.</summary>
    PostOfficeBox,
}

/// <summary>A fault of a mailing.</summary>
/// <param name="Fault">What is wrong.</param>
/// <param name="Party">Id of the party it is about, as the entry names it; null where it is about none.</param>
public readonly record struct FaultyCopy(CopyFault Fault, string? Party = null);

/// <summary>A mailing of a copy that is older than what the claim states now, so that no affidavit can swear to it.</summary>
/// <param name="Served">The mailing.</param>
/// <param name="Newer">The last of what the claim states and the copy cannot.</param>
public sealed record OlderCopy(ClaimServed Served, Entry Newer);

/// <summary>A copy that went in another manner than the three mails, and does not count.</summary>
/// <param name="Served">How it went.</param>
/// <param name="AlsoMailed">Whether a copy went to the same persons by one of the three mails.</param>
public sealed record CopyInAnotherManner(ClaimServed Served, bool AlsoMailed);

/// <summary>
/// What the file shows of serving a claim of lien that is still to be recorded: which mailings its affidavits can swear to, and to whom a
/// copy is still to be mailed before (Civ. Code § 8416(a)(7), (c)).
/// </summary>
public sealed record CopiesServed
{
    /// <summary>The mailings that an affidavit can swear to.</summary>
    public required IReadOnlyList<ClaimServed> Good { get; init; }

    /// <summary>The mailings that are older than what the claim states, where none since went to the same persons.</summary>
    public required IReadOnlyList<OlderCopy> Older { get; init; }

    /// <summary>The copies that went in another manner than the three mails.</summary>
    public required IReadOnlyList<CopyInAnotherManner> InAnotherManner { get; init; }

    /// <summary>
    /// Whether the copies went to the construction lender or the direct contractor alone: good only where no owner can be served by these
    /// mails.
    /// </summary>
    public required bool IsInOwnersPlace { get; init; }

    /// <summary>
    /// The owners to whom a copy is still to be mailed before the claim is recorded; none where others stand in their place.
    /// </summary>
    public required IReadOnlyList<Party> Left { get; init; }

    /// <summary>Whether a good mailing is in the file.</summary>
    public bool Done => Good.Count > 0;

    /// <summary>Reads the file.</summary>
    /// <param name="facts">The facts as known on a day.</param>
    /// <param name="since">
    /// The day on which an earlier claim was recorded: what was mailed on or before it is that claim's; null for a first claim.
    /// </param>
    /// <param name="isWhole">Whether a mailing by one of the three mails has all that an affidavit states of it.</param>
    [Rule("Civ. Code § 8416(c)")]
    public static CopiesServed Of(FactsAsOf facts, LocalDate? since, Predicate<ClaimServed> isWhole)
    {
        List<ClaimServed> entered = [.. facts.All<ClaimServed>().Where(served => since is not { } day || served.On.Earliest > day)];
        List<ClaimServed> mailed = [.. entered.Where(served => ServiceOfClaim.IsGoodMail(served.Manner))];
        List<ClaimServed> whole = [.. mailed.Where(served => isWhole(served))];
        List<OlderCopy> older = [];
        foreach (var served in whole)
        {
            if (ServiceOfClaim.NewSince(facts, DayOf(served)) is [.., var newer])
                older.Add(new OlderCopy(served, newer));
        }

        List<ClaimServed> good = [.. whole.Except(older.Select(copy => copy.Served))];
        var owners = facts.Job.In(PartyCapacity.Owner);
        var inPlace = good.Count > 0 && !good.Exists(served => Named(facts, served).Any(party => party.Capacity == PartyCapacity.Owner));
        return new CopiesServed
        {
            Good = good,
            Older = [.. older.Where(copy => !copy.Served.To.All(id => good.Exists(served => served.To.Contains(id))))],
            InAnotherManner =
            [
                .. entered.Except(mailed).Select(served => new CopyInAnotherManner(
                    served, served.To.Count > 0 && served.To.All(id => mailed.Exists(other => other.To.Contains(id))))),
            ],
            IsInOwnersPlace = inPlace,
            Left = inPlace ? [] : [.. owners.Where(owner => !good.Exists(served => served.To.Contains(owner.Id)))],
        };
    }

    /// <summary>What is wrong with a mailing, in the order of the affidavit.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="served">The mailing.</param>
    [Rule("Civ. Code § 8416(c)")]
    public static IReadOnlyList<FaultyCopy> FaultsOf(FactsAsOf facts, ClaimServed served)
    {
        List<FaultyCopy> faults = [];
        if (served.On is not DayFact.Exact)
            faults.Add(new FaultyCopy(CopyFault.DayNotExact));
        if (served.To.Count == 0)
            faults.Add(new FaultyCopy(CopyFault.ToNobody));
        foreach (var id in served.To)
        {
            if (facts.Job.Party(id) is not { } party)
                faults.Add(new FaultyCopy(CopyFault.PartyUnknown, id));
            else if (ServiceOfClaim.IsNamed(party) && ServiceOfClaim.AddressOf(party, facts.Job.Work) is null)
                faults.Add(new FaultyCopy(CopyFault.NoAddress, id));
        }

        var named = Named(facts, served).ToList();
        if (faults.Count == 0 && named.Count == 0)
            faults.Add(new FaultyCopy(CopyFault.ToNobodyNamed));
        faults.AddRange(named
            .Where(party => party is { Capacity: PartyCapacity.Owner, AddressKind: AddressKind.PostOfficeBox }
                && !string.IsNullOrWhiteSpace(party.Address))
            .Select(party => new FaultyCopy(CopyFault.PostOfficeBox, party.Id)));
        return faults;
    }

    /// <summary>Those of a mailing whom the section names.</summary>
    public static IEnumerable<Party> Named(FactsAsOf facts, ClaimServed served) =>
        served.To.Select(facts.Job.Party).OfType<Party>().Where(ServiceOfClaim.IsNamed);

    private static LocalDate DayOf(ClaimServed served) => served.On is DayFact.Exact on ? on.Day
        : throw new InvalidOperationException("A mailing that is whole has an exact day.");
}
