using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
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

    private Service(JobFile job) => this.job = job;

    /// <summary>The mailings for the affidavits: those made, and one with blanks for the owners to whom none was.</summary>
    public IReadOnlyList<Mailing> Mailings { get; private set; } = [];

    /// <summary>Whether a good mailing is in the file.</summary>
    public bool Done { get; private set; }

    /// <summary>The owners to whom a copy is still to be mailed before the claim is recorded (Civ. Code § 8416(a)(7), (c)).</summary>
    public IReadOnlyList<Party> Left { get; private set; } = [];

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
        var facts = new FactsAsOf(job, asOf);
        service.Read(facts, [.. facts.All<ClaimServed>().Where(s => since is not { } day || s.On.Earliest > day)]);
        return service;
    }

    private void Read(FactsAsOf facts, IReadOnlyList<ClaimServed> entries)
    {
        var good = entries.Where(e => ServiceOfClaim.IsGoodMail(e.Manner)).ToList();
        var mailed = good.Where(e => Sound(facts, e)).ToList();
        var old = mailed.Select(e => (Entry: e, Newer: ServiceOfClaim.NewSince(facts, DayOf(e)))).Where(o => o.Newer.Count > 0).ToList();
        var sound = mailed.Except(old.Select(o => o.Entry)).ToList();
        OldCopies = [.. old.Where(o => !o.Entry.To.All(id => sound.Exists(e => e.To.Contains(id))))
            .Select(o => new OldCopy(DayOf(o.Entry), [.. Recipients(o.Entry).Select(p => OneLine(p.Name))], o.Newer[^1]))];
        var inPlace = !sound.Exists(e => Recipients(e).Any(p => p.Capacity == PartyCapacity.Owner));
        Mailings = [.. sound
            .GroupBy(e => $"{LawText.IsoDay(DayOf(e))} {e.Manner}")
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => new Mailing(DayOf(g.First()), g.First().Manner,
                [.. g.SelectMany(e => Recipients(e).Select(p => To(p, e.Article)))], inPlace ? Owners() : null))];
        Done = Mailings.Count > 0;
        foreach (var entry in entries.Where(e => !ServiceOfClaim.IsGoodMail(e.Manner)))
            WrongManner(entry, good);
        var owners = job.In(PartyCapacity.Owner).ToList();
        if (Done && inPlace)
            InOwnersPlace(owners);
        else
            Left = [.. owners.Where(o => !sound.Exists(e => e.To.Contains(o.Id)))];
        if (!Done || Left.Count > 0)
            Mailings = [.. Mailings, new Mailing(null, null, [.. Left.Select(p => To(p, null))], null)];
        if (!Done && owners.Count > 0 && owners.TrueForAll(o => AddressOf(o) is null))
        {
            refusals.Add(new Refusal("owner-address-missing", "parties", "No owner has an address to mail the copy to.",
                "Add the residence or place of business as the owner's \"address\", or the owner's address on the building permit as "
                + "work.permit.ownerAddress. If no owner can be reached by mail, mail to the construction lender or direct contractor and "
                + "enter that mailing as \"claim-served\".",
                "Civ. Code § 8416(a)(7), (c)"));
        }
    }

    private static LocalDate DayOf(ClaimServed entry) => ((DayFact.Exact)entry.On).Day;

    /// <summary>Whether the entry can go into an affidavit; says why not where it cannot.</summary>
    private bool Sound(FactsAsOf facts, ClaimServed entry)
    {
        var before = refusals.Count;
        if (entry.On is not DayFact.Exact)
        {
            refusals.Add(new Refusal("served-day-missing", $"{entry.Path}.on", "The day of mailing is not exact.",
                "The affidavit states the day: enter the one on the postal receipt.", "Civ. Code § 8416(a)(7)"));
        }

        if (ArticleNumber.Refused(entry.Article, $"{entry.Path}.article", "Civ. Code § 8416(a)(7)") is { } wrong)
            refusals.Add(wrong);
        if (SharedArticle.Refused(facts, entry, "Civ. Code § 8416(a)(7)") is { } shared)
            refusals.Add(shared);

        if (entry.To.Count == 0)
        {
            refusals.Add(new Refusal("served-nobody", $"{entry.Path}.to", "Nobody is named.",
                "Name the party ids to whom the copy was mailed.", "Civ. Code § 8416(a)(7)"));
        }

        foreach (var id in entry.To)
        {
            if (job.Party(id) is not { } party)
            {
                refusals.Add(new Refusal("served-unknown-party", $"{entry.Path}.to", $"'{id}' is no party.",
                    "Name ids that stand in \"parties\".", "Civ. Code § 8416(a)(7)"));
            }
            else if (ServiceOfClaim.IsNamed(party) && AddressOf(party) is null)
            {
                refusals.Add(new Refusal("served-address-missing", $"parties[{IndexOf(party)}].address",
                    $"{party.Name} was served, but no address is there.", "Add the address to which the copy was mailed.",
                    "Civ. Code § 8416(a)(7)"));
            }
        }

        if (refusals.Count == before && Recipients(entry).Count == 0)
        {
            refusals.Add(new Refusal("served-wrong-person", $"{entry.Path}.to", "The copy went to nobody whom the section names.",
                "Mail it to the owner or reputed owner; only where that cannot be done, to the construction lender or direct contractor.",
                "Civ. Code § 8416(c)"));
        }

        foreach (var boxed in Recipients(entry)
            .Where(p => p is { Capacity: PartyCapacity.Owner, AddressKind: AddressKind.PostOfficeBox } && Clean(p.Address) is not null))
        {
            refusals.Add(new Refusal("served-post-office-box", $"parties[{IndexOf(boxed)}].addressKind",
                $"The copy to {OneLine(boxed.Name)} went to a post-office box or private mailbox.",
                "Mail a copy to the owner's residence or place of business, to the address on the building permit, or to the one in the "
                + "construction trust deed, and enter that address.", "Civ. Code § 8416(c)(1)"));
        }

        foreach (var other in entry.To.Select(job.Party).OfType<Party>().Where(p => !ServiceOfClaim.IsNamed(p)))
        {
            notes.Add($"The copy to {OneLine(other.Name)} is an extra: it is not service under § 8416(c) and is left out of the "
                + "affidavit.");
        }

        return refusals.Count == before;
    }

    private void WrongManner(ClaimServed entry, List<ClaimServed> good)
    {
        var how = MannerInWords.Of(entry.Manner);
        if (entry.To.Count > 0 && entry.To.All(id => good.Exists(g => g.To.Contains(id))))
        {
            notes.Add($"The copy sent by {how} ({entry.Path}) does not count under § 8416(c) and is left out of the affidavit; the mailing "
                + "to the same persons does.");
            return;
        }

        refusals.Add(new Refusal("served-wrong-manner", $"{entry.Path}.manner", $"The copy went by {how}.",
            "A copy of a claim of lien goes only by registered mail, certified mail, or first-class mail with a certificate of mailing, "
            + "postage prepaid. Hand and courier do not count here, though they do for other notices, and a claim not served as the "
            + "section says is unenforceable. Mail a copy by one of the three and enter that mailing.",
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
                refusals.Add(new Refusal("owner-not-served", $"parties[{IndexOf(owner)}]",
                    $"No mailing of a copy of this claim to {OneLine(owner.Name)} is entered, though the file has an address.",
                    "Mail this owner a copy by registered mail, certified mail, or first-class mail with a certificate of mailing, and "
                        + "enter it as \"claim-served\". A copy to the lender or direct contractor takes its place only if the owner "
                        + "cannot be served by these mails.",
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

    private IReadOnlyList<Party> Recipients(ClaimServed entry) =>
        [.. entry.To.Select(job.Party).OfType<Party>().Where(ServiceOfClaim.IsNamed)];

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

    private int IndexOf(Party party) => job.Parties.TakeWhile(p => p != party).Count();
}
