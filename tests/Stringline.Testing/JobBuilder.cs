using NodaTime.Text;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Counting;

namespace Stringline.Testing;

/// <summary>Builds a job file fact by fact. Starts as a private commercial job of a supplier to a direct contractor.</summary>
public sealed class JobBuilder
{
    private readonly List<Entry> entries = [];
    private readonly List<Party> parties =
    [
        new() { Id = "owner", Capacity = PartyCapacity.Owner, Name = "Alder Court LLC", Address = "1 Quay St, Davis, CA 95616",
            TookTitleBy = TitleSource.Sale },
        new() { Id =
            "direct", Capacity = PartyCapacity.DirectContractor, Name = "Brushline Builders Inc.", Address = "2 Quay St, Davis, CA 95616" },
    ];

    private Work work = new() { Kind = WorkKind.Private, Use = WorkUse.Commercial, Site = new Site { County = "Yolo" } };
    private Claimant claimant = new() { Name = "Marlpit Lumber Co.", Role = ClaimantRole.Supplier, HiredBy = "direct" };
    private Contract contract = new();

    /// <summary>A day from its ISO form.</summary>
    public static LocalDate Day(string iso) => LocalDatePattern.Iso.Parse(iso).Value;

    /// <summary>A day fact: <c>2026-03-02</c>, or <c>2026-03-01..2026-03-10</c> for a day in doubt, or <c>?</c>.</summary>
    public static DayFact When(string text) => text == "?"
        ? new DayFact.Unknown()
        : text.Split("..") is [var first, var last]
            ? new DayFact.Between(Day(first), Day(last))
            : DayFact.On(Day(text));

    public JobBuilder Role(ClaimantRole role, string? hiredBy = "direct")
    {
        claimant = claimant with { Role = role, HiredBy = hiredBy };
        return this;
    }

    public JobBuilder Claimant(Func<Claimant, Claimant> change)
    {
        claimant = change(claimant);
        return this;
    }

    public JobBuilder Work(Func<Work, Work> change)
    {
        work = change(work);
        return this;
    }

    public JobBuilder Contract(Func<Contract, Contract> change)
    {
        contract = change(contract);
        return this;
    }

    public JobBuilder Price(decimal price) => Contract(c => c with { Price = price });

    public JobBuilder Party(string id, PartyCapacity capacity, string name = "Somebody", bool reputed =
        false, string? address = "3 Quay St, Davis, CA 95616", string? knownSince = null, bool? madeToPlans = null)
    {
        parties.Add(new Party { Id = id, Capacity = capacity, Reputed =
            reputed, Name = name, Address = address, KnownSince = knownSince is null ? null : Day(knownSince), MadeToPlans = madeToPlans });
        return this;
    }

    /// <summary>Changes a party that is already there.</summary>
    public JobBuilder PartyWith(string id, Func<Party, Party> change)
    {
        var at = parties.FindIndex(p => p.Id == id);
        parties[at] = change(parties[at]);
        return this;
    }

    public JobBuilder NoParty(string id)
    {
        parties.RemoveAll(p => p.Id == id);
        return this;
    }

    /// <summary>Adds an entry; its index is its place.</summary>
    public JobBuilder Add(Func<int, Entry> entry)
    {
        entries.Add(entry(entries.Count));
        return this;
    }

    public JobBuilder Furnished(string on, decimal? amount = null, string? reference = null, string? until = null) =>
        Add(i => new Furnished { Index = i, On = When(on), Until = When(until ?? on), Amount = amount, Ref = reference });

    public JobBuilder Ended(string on) => Add(i => new FurnishingEnded { Index = i, On = When(on) });

    public JobBuilder Changed(string on, decimal amount, bool agreed = true) =>
        Add(i => new Change { Index = i, On = When(on), Amount = amount, Agreed = agreed });

    public JobBuilder Paid(string on, decimal amount, string? toward = null) =>
        Add(i => new Paid { Index = i, On = When(on), Amount = amount, Toward = toward });

    public JobBuilder Credited(string on, decimal amount) =>
        Add(i => new Credited { Index = i, On = When(on), Amount = amount });

    public JobBuilder Charged(string on, decimal amount, ChargeKind of, string? reference = null) =>
        Add(i => new Charged { Index = i, On = When(on), Amount = amount, Of = of, Ref = reference });

    public JobBuilder Notice(string on, Manner manner = Manner.CertifiedMail, params string[] to) =>
        Add(i => new NoticeGiven { Index = i, On = When(on), Notice = NoticeKind.Preliminary, Manner = manner, To = to.Length == 0
            ? ["owner", "direct"] : to });

    /// <summary>A preliminary notice to owner and direct contractor with an estimate.</summary>
    public JobBuilder NoticeEstimating(string on, decimal estimate, EstimateBasis? basis = null) =>
        Add(i => new NoticeGiven { Index = i, On = When(on), Notice = NoticeKind.Preliminary, Manner = Manner.CertifiedMail,
            To = ["owner", "direct"], Estimate = estimate, EstimateBasis = basis });

    public JobBuilder Completed(string on, CompletionTheory by = CompletionTheory.Actual, bool contested = false) =>
        Add(i => new Completed { Index = i, On = When(on), By = by, Contested = contested });

    public JobBuilder LaborCeased(string on, string? until = null, bool? unfinished = null) =>
        Add(i => new LaborCeased { Index = i, On = When(on), Until = until is null ? null : Day(until), Unfinished = unfinished });

    public JobBuilder OwnerRecorded(string on, OwnerNotice notice = OwnerNotice.Completion, string? states = null,
        string? contractOf = null, string? lacks = null, bool heldIneffective = false) =>
        Add(i => new OwnerRecorded { Index = i, On = When(on), Notice = notice, States = states is null
            ? null : Day(states), ContractOf = contractOf, Lacks = lacks, HeldIneffective = heldIneffective });

    public JobBuilder OwnerToldUs(string on, OwnerNotice notice =
        OwnerNotice.Completion, string? mailed = null, Manner? manner = Manner.CertifiedMail) =>
        Add(i => new OwnerToldUs { Index = i, On = When(on), Notice = notice, Mailed = mailed is null
            ? null : Day(mailed), Manner = manner });

    public JobBuilder Waived(string on, WaiverForm form, string? through = null, decimal? excepted = null, string? cleared = null,
        bool? inForm = null) =>
        Add(i => new Waived { Index = i, On = When(on), Form = form, Through = through is null
            ? null : Day(through), Excepted = excepted, PaymentCleared = cleared is null ? null : Day(cleared), InStatutoryForm = inForm });

    public JobBuilder Retained(string on, decimal amount) => Add(i => new Retained { Index = i, On = When(on), Amount = amount });

    public JobBuilder ClaimRecorded(string on, decimal? amount = null, string? county = null, LienKind? lien = null, string? id = null,
        string? amends = null) =>
        Add(i => new ClaimRecorded { Index = i, On = When(on), Amount = amount, County = county, Lien = lien, Id = id, Amends = amends });

    public JobBuilder ActionFiled(string on) => Add(i => new ActionFiled { Index = i, On = When(on) });

    /// <summary>An action on something: a claim of lien by its id, or a bond, a notice or the debt alone.</summary>
    public JobBuilder ActionOn(string on, ActionOn enforces, string? claim = null, string? id = null, params string[] against) =>
        Add(i => new ActionFiled { Index = i, On = When(on), Enforces = [enforces], Claim = claim, Id = id, Against = against });

    public JobBuilder ActionEnded(string on, ActionEnd how, bool? withoutPrejudice = null, string? of = null) =>
        Add(i => new ActionEnded { Index = i, On = When(on), How = how, WithoutPrejudice = withoutPrejudice, Of = of });

    public JobBuilder CreditRecorded(string on, string until) =>
        Add(i => new CreditRecorded { Index = i, On = When(on), Until = Day(until) });

    public JobBuilder ReleaseRecorded(string on, bool? satisfied = null) =>
        Add(i => new ReleaseRecorded { Index = i, On = When(on), Satisfied = satisfied });

    public JobBuilder ReleaseDemanded(string on) => Add(i => new ReleaseDemanded { Index = i, On = When(on) });

    public JobBuilder ReleaseBond(string on, decimal? amount = null, string? noticeGiven = null) =>
        Add(i => new ReleaseBondRecorded { Index = i, On = When(on), Amount = amount, NoticeGiven = noticeGiven is null
            ? null : Day(noticeGiven) });

    public JobBuilder LisPendens(string on, bool? mailedFirst = true, bool? proofRecorded = true) =>
        Add(i => new LisPendensRecorded { Index = i, On = When(on), MailedFirst = mailedFirst, ProofRecorded = proofRecorded });

    public JobBuilder StopPaymentGiven(string on, decimal? amount = null, bool bonded = false, params string[] to) =>
        Add(i => new StopPaymentGiven { Index = i, On = When(on), Amount = amount, Bonded = bonded, To = to.Length == 0 ? ["owner"] : to });

    public JobBuilder BondNoticeGiven(string on, params string[] to) =>
        Add(i => new BondNoticeGiven { Index = i, On = When(on), To = to.Length == 0 ? ["surety", "direct"] : to });

    /// <summary>A copy of the claim of lien was served.</summary>
    public JobBuilder ClaimServed(string on, Manner manner = Manner.CertifiedMail, params string[] to) =>
        Add(i => new ClaimServed { Index = i, On = When(on), Manner = manner, To = to.Length == 0 ? ["owner"] : to });

    public JobBuilder IndexSearched(string on, string? county = null) =>
        Add(i => new IndexSearched { Index = i, On = When(on), County = county });

    public JobBuilder PaymentDemanded(string on, decimal amount, Manner? manner = Manner.Personal) =>
        Add(i => new PaymentDemanded { Index = i, On = When(on), Amount = amount, Manner = manner });

    /// <summary>A notice of demand and default to the landowner (Civ. Code § 8304(c)).</summary>
    public JobBuilder DefaultNotice(string on, decimal amount, bool? ofDefault = true, params string[] to) =>
        Add(i => new PaymentDemanded { Index = i, On = When(on), Amount = amount, OfDefault = ofDefault, To = to });

    /// <summary>A stay in the bankruptcy of a party (11 U.S.C. § 362), lasting while no last day is given.</summary>
    public JobBuilder Bankrupt(string party, string since, string? until = null) =>
        PartyWith(party, p => p with { BankruptSince = Day(since), BankruptUntil = until is null ? null : Day(until) });

    public JobBuilder HirerPaid(string on, decimal amount, PaymentOf of = PaymentOf.Progress) =>
        Add(i => new HirerPaid { Index = i, On = When(on), Amount = amount, Of = of });

    public JobBuilder Disputed(string on, decimal amount) => Add(i => new Disputed { Index = i, On = When(on), Amount = amount });

    public JobBuilder LowerTier(string on, decimal amount) => Add(i => new LowerTierClaim { Index = i, On = When(on), Amount = amount });

    public JobBuilder Nonresponsibility(string recorded, string? posted, string? knew, bool? leaseRequiresWork = false) =>
        Add(i => new NonresponsibilityRecorded { Index = i, On = When(recorded), Posted = posted is null
            ? null : Day(posted), Knew = knew is null ? null : Day(knew), LeaseRequiresWork = leaseRequiresWork });

    public JobBuilder DisputeClaim(string sent, string? received = null, decimal? amount = null) =>
        Add(i => new DisputeClaimSent { Index = i, On = When(sent), Received = received is null ? null : Day(received), Amount = amount });

    public JobBuilder WillNotCommence(string on) => Add(i => new WorkWillNotCommence { Index = i, On = When(on) });

    /// <summary>Takes back the entry of that id.</summary>
    public JobBuilder Withdrawn(string on, string id) => Add(i => new Withdrawn { Index = i, On = When(on), Supersedes = id });

    /// <summary>Changes the entry added last, such as its id, what it supersedes, or when it was learned.</summary>
    public JobBuilder Which(Func<Entry, Entry> change)
    {
        entries[^1] = change(entries[^1]);
        return this;
    }

    /// <summary>A construction lender, <c>bank</c>.</summary>
    public JobBuilder Lender() => Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank");

    /// <summary>A payment bond of <c>surety</c>; recorded on that day, or not known to be.</summary>
    public JobBuilder PaymentBond(string? recorded, string? principal = null)
    {
        Work(w => w with { PaymentBond = new PaymentBond { Recorded = recorded is null ? null : Day(recorded), Principal = principal } });
        return parties.Exists(p => p.Id == "surety") ? this : Party("surety", PartyCapacity.Surety, "Bollard Surety Co.");
    }

    /// <summary>A city's job: no owner but the public entity <c>city</c>; the claimant works for the subcontractor <c>sub</c>.</summary>
    public JobBuilder PublicWork() => Work(w => w with { Kind = WorkKind.Public }).NoParty("owner")
        .Party("city", PartyCapacity.PublicEntity, "City of Davis").Party("sub", PartyCapacity.Subcontractor, "Tamper & Screed Co.")
        .Role(claimant.Role, "sub");

    /// <summary>
    /// A license that the work needs, active over the given spans: <c>2026-01-01..2026-12-31</c>, or <c>2026-01-01..</c> while it goes on.
    /// </summary>
    public JobBuilder Licensed(params string[] spans) => Claimant(c => c with
    {
        License = new License
        {
            Required = true,
            Active = [.. spans.Select(s => s.Split("..") is [var from, var to]
                ? new LicenseSpan(Day(from), to.Length == 0 ? null : Day(to)) : throw new ArgumentException(s, nameof(spans)))],
        },
    });

    /// <summary>The facts as they stand on a day.</summary>
    public FactsAsOf FactsOn(string asOf) => new(Build(), Day(asOf));

    /// <summary>What the law makes of the job on a day, by the statutory lists of closed days.</summary>
    public Assessment On(string asOf) => Assessment.Of(Build(), Day(asOf), OpenDays.Statutory);

    public JobFile Build() => new()
    {
        Name = "Alder Court",
        Work = work,
        Claimant = claimant,
        Contract = contract,
        Parties = [.. parties],
        Entries = [.. entries],
    };
}
