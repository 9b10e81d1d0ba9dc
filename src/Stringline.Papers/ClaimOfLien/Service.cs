using Stringline.Law.ClaimOfLien;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>What the job file shows of serving the claim (Civ. Code § 8416(c)).</summary>
internal sealed class Service
{
    private readonly JobFile job;
    private readonly List<Refusal> refusals = [];
    private readonly List<string> notes = [];
    private CopiesServed copies = null!;

    private Service(JobFile job) => this.job = job;

    /// <summary>The mailings for the affidavits: those made, and one with blanks for the owners to whom none was.</summary>
    public IReadOnlyList<Mailing> Mailings { get; private set; } = [];

    /// <summary>Whether a good mailing is in the file.</summary>
    public bool Done => copies.Done;

    /// <summary>The owners to whom a copy is still to be mailed before the claim is recorded (Civ. Code § 8416(a)(7), (c)).</summary>
    public IReadOnlyList<Party> Left => copies.Left;

    /// <summary>Those of them of whom no address is known.</summary>
    public IReadOnlyList<string> LeftWithoutAddress => [.. Left.Where(o => AddressOf(o) is null).Select(o => OneLine(o.Name))];

    /// <summary>The mailings that are older than what the claim states, and are left out of the affidavits.</summary>
    public IReadOnlyList<OldCopy> OldCopies { get; private set; } = [];

    /// <summary>What stands against the affidavit.</summary>
    public IReadOnlyList<Refusal> Refusals => refusals;

    /// <summary>What the counter sheet must say about it.</summary>
    public IReadOnlyList<string> Notes => notes;

    /// <summary>Reads the job file as known on a day.</summary>
    /// <param name="job">The file.</param>
    /// <param name="asOf">The day.</param>
    /// <param name="since">The day on which an earlier claim was recorded: what was mailed before it is that claim's; null for a first
    /// claim.</param>
    public static Service Of(JobFile job, LocalDate asOf, LocalDate? since = null)
    {
        var service = new Service(job);
        service.Read(new FactsAsOf(job, asOf), since);
        return service;
    }

    private void Read(FactsAsOf facts, LocalDate? since)
    {
        copies = CopiesServed.Of(facts, since, served => Sound(facts, served));
        OldCopies =
        [
            .. copies.Older.Select(copy => new OldCopy(
                DayOf(copy.Served), [.. CopiesServed.Named(facts, copy.Served).Select(p => OneLine(p.Name))], copy.Newer)),
        ];
        Mailings = [.. copies.Good
            .GroupBy(e => $"{LawText.IsoDay(DayOf(e))} {e.Manner}")
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => new Mailing(DayOf(g.First()), g.First().Manner,
                [.. g.SelectMany(e => CopiesServed.Named(facts, e).Select(p => To(p, e.Article)))], copies.IsInOwnersPlace
                    ? Owners() : null))];
        foreach (var (served, alsoMailed) in copies.InAnotherManner)
            WrongManner(served, alsoMailed);
        var owners = job.In(PartyCapacity.Owner).ToList();
        if (copies.IsInOwnersPlace)
            InOwnersPlace(owners);
        if (!Done || Left.Count > 0)
            Mailings = [.. Mailings, new Mailing(null, null, [.. Left.Select(p => To(p, null))], null)];
        if (!Done && owners.Count > 0 && owners.TrueForAll(o => AddressOf(o) is null))
        {
            refusals.Add(new Refusal("owner-address-missing", Place.Parties, $"No owner has an address to mail the copy to.",
                $"Add the residence or place of business as the owner's {new FileWord("address")}, or the owner's address on the building "
                    + $"permit as "
                + $"{new HeadField("work.permit.ownerAddress")}. If no owner can be reached by mail, mail to the construction lender or "
                + $"direct contractor and "
                + $"enter that mailing as {new KindName("claim-served")}.",
                "Civ. Code § 8416(a)(7), (c)"));
        }
    }

    private static LocalDate DayOf(ClaimServed entry) => ((DayFact.Exact)entry.On).Day;

    /// <summary>Whether the entry can go into an affidavit; says why not where it cannot.</summary>
    private bool Sound(FactsAsOf facts, ClaimServed entry)
    {
        const string affidavit = "Civ. Code § 8416(a)(7)";
        var before = refusals.Count;
        var faults = CopiesServed.FaultsOf(facts, entry);
        if (faults.Any(f => f.Fault == CopyFault.DayNotExact))
        {
            refusals.Add(new Refusal("served-day-missing", Place.Of(entry, "on"), $"The day of mailing is not exact.",
                $"The affidavit states the day: enter the one on the postal receipt.", affidavit));
        }

        if (ArticleNumber.Refused(entry.Article, Place.Of(entry, "article"), affidavit) is { } wrong)
            refusals.Add(wrong);
        if (SharedArticle.Refused(facts, entry, affidavit) is { } shared)
            refusals.Add(shared);
        foreach (var fault in faults.Where(f => f.Fault != CopyFault.ToNobodyNamed || refusals.Count == before))
            refusals.AddRange(InWords(entry, fault));
        foreach (var other in entry.To.Select(job.Party).OfType<Party>().Where(p => !ServiceOfClaim.IsNamed(p)))
        {
            notes.Add($"The copy to {OneLine(other.Name)} is an extra: it is not service under § 8416(c) and is left out of the "
                + "affidavit.");
        }

        return refusals.Count == before;
    }

    // The day's fault is told before those of the article number, which are no faults of the law.
    private IEnumerable<Refusal> InWords(ClaimServed entry, FaultyCopy faulty)
    {
        const string affidavit = "Civ. Code § 8416(a)(7)";
        var party = faulty.Party is { } id ? job.Party(id) : null;
        return faulty.Fault switch
        {
            CopyFault.DayNotExact => [],
            CopyFault.ToNobody => [new Refusal("served-nobody", Place.Of(entry, "to"), $"Nobody is named.",
                $"Name the party ids to whom the copy was mailed.", affidavit)],
            CopyFault.PartyUnknown => [new Refusal("served-unknown-party", Place.Of(entry, "to"), $"'{faulty.Party}' is no party.",
                $"Name ids that stand in {new FileWord("parties")}.", affidavit)],
            CopyFault.NoAddress => [new Refusal("served-address-missing", Place.Of(job, party!, "address"),
                $"{party!.Name} was served, but no address is there.", $"Add the address to which the copy was mailed.", affidavit)],
            CopyFault.ToNobodyNamed =>
                [new Refusal("served-wrong-person", Place.Of(entry, "to"), $"The copy went to nobody whom the section names.",
                $"Mail it to the owner or reputed owner; only where that cannot be done, to the construction lender or direct contractor.",
                "Civ. Code § 8416(c)")],
            CopyFault.PostOfficeBox => [new Refusal("served-post-office-box", Place.Of(job, party!, "addressKind"),
                $"The copy to {OneLine(party!.Name)} went to a post-office box or private mailbox.",
                $"Mail a copy to the owner's residence or place of business, to the address on the building permit, or to the one in the "
                + $"construction trust deed, and enter that address.", "Civ. Code § 8416(c)(1)")],
            _ => throw new ArgumentOutOfRangeException(nameof(faulty), faulty.Fault, "No such fault."),
        };
    }

    private void WrongManner(ClaimServed entry, bool alsoMailed)
    {
        var how = MannerInWords.Of(entry.Manner);
        if (alsoMailed)
        {
            notes.Add($"The copy sent by {how} ({entry.Path}) does not count under § 8416(c) and is left out of the affidavit; the mailing "
                + "to the same persons does.");
            return;
        }

        refusals.Add(new Refusal("served-wrong-manner", Place.Of(entry, "manner"), $"The copy went by {how}.",
            $"A copy of a claim of lien goes only by registered mail, certified mail, or first-class mail with a certificate of mailing, "
            + $"postage prepaid. Hand and courier do not count here, though they do for other notices, and a claim not served as the "
            + $"section says is unenforceable. Mail a copy by one of the three and enter that mailing.",
            "Civ. Code § 8416(c), (e)"));
    }

    // The lender or direct contractor takes an owner's place only where the owner cannot be served (§ 8416(c)(2)): one with an address is
    // tried first.
    private void InOwnersPlace(List<Party> owners)
    {
        foreach (var owner in owners)
        {
            if (AddressOf(owner) is not null)
            {
                refusals.Add(new Refusal("owner-not-served", Place.Of(job, owner),
                    $"No mailing of a copy of this claim to {OneLine(owner.Name)} is entered, though the file has an address.",
                    $"Mail this owner a copy by registered mail, certified mail, or first-class mail with a certificate of mailing, and "
                        + $"enter it as {new KindName("claim-served")}. A copy to the lender or direct contractor takes its place only if "
                        + $"the owner "
                        + $"cannot be served by these mails.",
                    "Civ. Code § 8416(a)(7), (c)"));
            }
            else
            {
                notes.Add("The copy went to the lender or direct contractor, not to an owner. That is good only if no owner can be served "
                    + "by these mails (§ 8416(c)(2)): the affidavit has blanks for the address tried and for why.");
            }
        }
    }

    private IReadOnlyList<string> Owners() =>
        [.. job.In(PartyCapacity.Owner).Where(o => Clean(o.Name) is not null).Select(Addressees.NameLines)];

    private Addressee To(Party party, string? article) =>
        new(Addressees.NameLines(party), AddressOf(party), AddressIs(party), CapacityWords.Of(party), Clean(article) is { } number
            ? Article(number) : null);

    private string? AddressOf(Party party) =>
        Clean(ServiceOfClaim.AddressOf(party, job.Work));

    // What § 8416(c)(1) calls the address: residence, place of business, that of the building permit, or that of § 8174.
    private static string AddressIs(Party party) => (Clean(party.Address), party.AddressKind) switch
    {
        (null, _) or (_, AddressKind.Permit) => "owner's address on the building permit",
        (_, AddressKind.Residence) => "residence",
        (_, AddressKind.Business) => "place of business",
        (_, AddressKind.TrustDeed) => "owner's address in the construction trust deed (Civ. Code § 8174)",
        (_, AddressKind.PostOfficeBox) => "post-office box or private mailbox",
        (_, null) => "residence or place of business",
        _ => throw new InvalidOperationException($"No such address: {party.AddressKind}."),
    };

}
