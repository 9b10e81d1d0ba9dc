using NodaTime.Text;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Time;

namespace Stringline.Testing;

/// <summary>Builds a job file fact by fact. Starts as a private commercial job of a supplier to a direct contractor.</summary>
public sealed class JobBuilder
{
    private readonly List<Entry> entries = [];
    private readonly List<Party> parties =
    [
        new() { Id = "owner", Capacity = PartyCapacity.Owner, Name = "Alder Court LLC", Address = "1 Quay St, Davis, CA 95616" },
        new() { Id = "direct", Capacity = PartyCapacity.DirectContractor, Name = "Brushline Builders Inc.", Address = "2 Quay St, Davis, CA 95616" },
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

    public JobBuilder Party(string id, PartyCapacity capacity, string name = "Somebody", bool reputed = false)
    {
        parties.Add(new Party { Id = id, Capacity = capacity, Reputed = reputed, Name = name, Address = "3 Quay St, Davis, CA 95616" });
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
        Add(i => new NoticeGiven { Index = i, On = When(on), Notice = NoticeKind.Preliminary, Manner = manner, To = to.Length == 0 ? ["owner", "direct"] : to });

    public JobBuilder Completed(string on, CompletionTheory by = CompletionTheory.Actual, bool contested = false) =>
        Add(i => new Completed { Index = i, On = When(on), By = by, Contested = contested });

    public JobBuilder LaborCeased(string on, string? until = null) =>
        Add(i => new LaborCeased { Index = i, On = When(on), Until = until is null ? null : Day(until) });

    public JobBuilder OwnerRecorded(string on, OwnerNotice notice = OwnerNotice.Completion, string? states = null) =>
        Add(i => new OwnerRecorded { Index = i, On = When(on), Notice = notice, States = states is null ? null : Day(states) });

    public JobBuilder OwnerToldUs(string on, OwnerNotice notice = OwnerNotice.Completion, string? mailed = null) =>
        Add(i => new OwnerToldUs { Index = i, On = When(on), Notice = notice, Mailed = mailed is null ? null : Day(mailed) });

    public JobBuilder Waived(string on, WaiverForm form, string? through = null, decimal? excepted = null, string? cleared = null, bool? inForm = null) =>
        Add(i => new Waived { Index = i, On = When(on), Form = form, Through = through is null ? null : Day(through), Excepted = excepted, PaymentCleared = cleared is null ? null : Day(cleared), InStatutoryForm = inForm });

    public JobBuilder Retained(string on, decimal amount) => Add(i => new Retained { Index = i, On = When(on), Amount = amount });

    public JobBuilder ClaimRecorded(string on, decimal? amount = null) =>
        Add(i => new ClaimRecorded { Index = i, On = When(on), Amount = amount });

    public JobBuilder ActionFiled(string on) => Add(i => new ActionFiled { Index = i, On = When(on) });

    public JobBuilder CreditRecorded(string on, string until) =>
        Add(i => new CreditRecorded { Index = i, On = When(on), Until = Day(until) });

    public JobBuilder ReleaseRecorded(string on, bool? satisfied = null) => Add(i => new ReleaseRecorded { Index = i, On = When(on), Satisfied = satisfied });

    /// <summary>A licence that the work needs, active over the given spans: <c>2026-01-01..2026-12-31</c>, or <c>2026-01-01..</c> while it goes on.</summary>
    public JobBuilder Licensed(params string[] spans) => Claimant(c => c with
    {
        License = new License
        {
            Required = true,
            Active = [.. spans.Select(s => s.Split("..") is [var from, var to] ? new LicenseSpan(Day(from), to.Length == 0 ? null : Day(to)) : throw new ArgumentException(s, nameof(spans)))],
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
