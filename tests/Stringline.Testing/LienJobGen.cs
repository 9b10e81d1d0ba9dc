using CsCheck;
using Stringline.Law.Facts;

namespace Stringline.Testing;

/// <summary>
/// Random job files, mostly of private work. Every file is one that could be entered; none is made to suit a rule.
/// </summary>
public sealed class LienJobGen
{
    /// <summary>First day of every window.</summary>
    public static readonly LocalDate Start = new(2026, 1, 5);

    private static readonly Gen<bool?> MaybeKnown = Gen.OneOf((bool?[])[null, true, false]);

    private static readonly Gen<Manner?> MaybeManner =
        Gen.OneOf((Manner?[])[null, Manner.Personal, Manner.CertifiedMail, Manner.FirstClassMail, Manner.Substituted]);

    private static readonly Gen<PublicBody?> MaybeBody =
        Gen.OneOf((PublicBody?[])[null, null, PublicBody.Local, PublicBody.State, PublicBody.GeneralServices, PublicBody.Transportation,
            PublicBody.StateUniversity, PublicBody.UniversityOrCourt]);

    private static readonly Gen<string?> Reference = Gen.OneOf((string?[])[null, null, "A", "B", "C"]);

    private static readonly Gen<IReadOnlyList<string>> Recipients = Gen.OneOf((IReadOnlyList<string>[])
        [["owner", "direct"], ["owner", "direct", "bank"], ["owner"], ["direct"], ["bank"]]);

    private static readonly Gen<(ClaimantRole Role, string HiredBy)> Who =
        Gen.Select(Gen.Enum<ClaimantRole>(), Gen.OneOf("direct", "direct", "owner", "sub"), (role, by) =>
            (role, role == ClaimantRole.DirectContractor ? "owner" : by));

    /// <summary>Days over half a year, so that periods, spans and doubts meet often.</summary>
    public static LienJobGen HalfAYear { get; } = new(180, 100_000);

    /// <summary>Days and sums so few that entries meet on one day and in one sum.</summary>
    public static LienJobGen Crowded { get; } = new(3, 3);

    /// <summary>Generators over a window.</summary>
    /// <param name="days">Length of the window in days.</param>
    /// <param name="cents">The greatest sum, in cents.</param>
    private LienJobGen(int days, int cents)
    {
        Day = Gen.Int[0, days].Select(Start.PlusDays);
        AsOf = Gen.Int[0, days + 360].Select(Start.PlusDays);
        Money = Gen.OneOf(Gen.Int[1, Math.Min(50, cents)], Gen.Int[1, cents]).Select(drawn => drawn / 100m);
        When = Gen.Frequency(
            (16, Day.Select(DayFact.On)),
            (3, Gen.Select(Day, Gen.Int[1, 30], (day, more) => (DayFact)new DayFact.Between(day, day.PlusDays(more)))),
            (1, Gen.Const((DayFact)new DayFact.Unknown())));
        Furnished = Gen.Select(When, Gen.Int[0, 60], Gen.OneOf(true, true, true, false), Money, Gen.OneOf(true, true, true, true, false),
            Reference,
            (on, more, oneDay, amount, priced, reference) => new Furnished
            {
                Index = 0,
                On = on,
                Until = oneDay ? on : on switch
                {
                    DayFact.Exact(var day) => DayFact.On(day.PlusDays(more)),
                    DayFact.Between between => new DayFact.Between(between.First.PlusDays(more), between.Last.PlusDays(more)),
                    _ => on,
                },
                Amount = priced ? amount : null,
                Ref = reference,
            });
        Paid = Gen.Select(When, Money, Reference, (on, amount, toward) =>
            new Paid { Index = 0, On = on, Amount = amount, Toward = toward });
        Credited = Gen.Select(When, Money, (on, amount) => new Credited { Index = 0, On = on, Amount = amount });
        Waived = Gen.Select(
            Gen.Select(When, Gen.Enum<WaiverForm>(), Day, Gen.Bool),
            Gen.Select(Money, Gen.Bool, Day, Gen.Bool),
            Gen.OneOf((bool?[])[null, null, true, false]),
            (a, b, inForm) => new Waived
            {
                Index = 0,
                On = a.Item1,
                Form = a.Item2,
                Through = a.Item4 ? a.Item3 : null,
                Excepted = b.Item2 ? b.Item1 : null,
                PaymentCleared = b.Item4 ? b.Item3 : null,
                InStatutoryForm = inForm,
            });
        Contested = Gen.Select(When, Gen.Enum<CompletionTheory>(),
            (on, by) => new Completed { Index = 0, On = on, By = by, Contested = true });
        Notice = Gen.Select(When, Gen.Enum<Manner>(), Recipients,
            Gen.Select(Money, Gen.Bool,
                Gen.OneOf((EstimateBasis?[])[null, null, null, EstimateBasis.WorkedOut, EstimateBasis.StockFigure])),
            (on, manner, to, estimate) => new NoticeGiven { Index = 0, On = on, Notice = NoticeKind.Preliminary, Manner = manner, To = to,
                Estimate = estimate.Item2 ? estimate.Item1 : null, EstimateBasis = estimate.Item3 });
        Entry = Gen.Frequency(
            (8, Make(Furnished)),
            (1, Make(When.Select(on => new FurnishingEnded { Index = 0, On = on }))),
            (1, Make(Gen.Select(When, Gen.Int[-cents / 20, cents / 5], Gen.Bool, (on, drawn, agreed) =>
                new Change { Index = 0, On = on, Amount = drawn / 100m, Agreed = agreed }))),
            (3, Make(Paid)),
            (1, Make(Credited)),
            (2, Make(Gen.Select(When, Money, Gen.Enum<ChargeKind>(), Reference, (on, amount, of, reference) =>
                new Charged { Index = 0, On = on, Amount = amount, Of = of, Ref = reference }))),
            (3, Make(Notice)),
            (2, Make(Gen.Select(When, Gen.Enum<CompletionTheory>(), Gen.Bool, (on, by, contested) =>
                new Completed { Index = 0, On = on, By = by, Contested = contested }))),
            (2, Make(Gen.Select(When, Gen.Int[1, 80], Gen.Bool, (on, more, resumed) =>
                new LaborCeased { Index = 0, On = on, Until = resumed && on.Latest is { } last ? last.PlusDays(more) : null }))),
            (2, Make(Gen.Select(When, Gen.Enum<OwnerNotice>(), Day, Gen.Bool, Gen.OneOf((string?[])[null, null, null, "direct", "second"]),
                Gen.Int[0, 9], (on, notice, states, says, contract, form) =>
                new OwnerRecorded { Index = 0, On = on, Notice = notice, States = says
                    ? states : null, ContractOf = contract, Lacks = form is 0 or 1
                    ? "the owner's signature" : null, HeldIneffective = form is 1 or 2 }))),
            (1, Make(Gen.Select(When, Gen.Enum<OwnerNotice>(), Day, Gen.Bool, (on, notice, mailed, known) =>
                new OwnerToldUs { Index = 0, On = on, Notice = notice, Mailed = known ? mailed : null }))),
            (1, Make(Waived)),
            (1, Make(Gen.Select(When, Money, (on, amount) => new Retained { Index = 0, On = on, Amount = amount }))),
            (1, Make(Gen.Select(When, Money, (on, amount) => new ClaimRecorded { Index = 0, On = on, Amount = amount }))),
            (1, Make(When.Select(on => new ActionFiled { Index = 0, On = on }))),
            (1, Make(Gen.Select(When, Day, (on, until) => new CreditRecorded { Index = 0, On = on, Until = until }))),
            (5, Gen.OneOf(
                Make(Gen.Select(When, Gen.Enum<Manner>(), Recipients, (on, manner, to) =>
                    new ClaimServed { Index = 0, On = on, Manner = manner, To = to })),
                Make(Gen.Select(When, Recipients, (on, to) =>
                    new NoticeGiven { Index = 0, On = on, Notice = NoticeKind.CompletionClaim, Manner = Manner.CertifiedMail, To = to })),
                Make(Gen.Select(When, Money, Gen.Bool, Recipients, (on, amount, bonded, to) =>
                    new StopPaymentGiven { Index = 0, On = on, Amount = amount, Bonded = bonded, To = to })),
                Make(Gen.Select(When, Recipients, (on, to) => new BondNoticeGiven { Index = 0, On = on, To = to })),
                Make(When.Select(on => new LisPendensRecorded { Index = 0, On = on })),
                Make(Gen.Select(When, MaybeKnown, (on, satisfied) => new ReleaseRecorded { Index = 0, On = on, Satisfied = satisfied })),
                Make(Gen.Select(When, Money, (on, amount) => new ReleaseBondRecorded { Index = 0, On = on, Amount = amount })),
                Make(When.Select(on => new ReleaseDemanded { Index = 0, On = on })),
                Make(When.Select(on => new IndexSearched { Index = 0, On = on })),
                Make(Gen.Select(When, Money, (on, amount) => new PaymentDemanded { Index = 0, On = on, Amount = amount })),
                Make(Gen.Select(When, Money, Gen.Enum<PaymentOf>(), (on, amount, of) =>
                    new HirerPaid { Index = 0, On = on, Amount = amount, Of = of })),
                Make(Gen.Select(When, Money, (on, amount) => new Disputed { Index = 0, On = on, Amount = amount })),
                Make(Gen.Select(When, Money, (on, amount) => new LowerTierClaim { Index = 0, On = on, Amount = amount })),
                Make(Gen.Select(When, Day, Day, Gen.Bool, (on, posted, knew, lease) =>
                    new NonresponsibilityRecorded { Index = 0, On = on, Posted = posted, Knew = knew, LeaseRequiresWork = lease })),
                Make(Gen.Select(When, Money, Day, (on, amount, received) =>
                    new DisputeClaimSent { Index = 0, On = on, Amount = amount, Received = received })),
                Make(When.Select(on => new WorkWillNotCommence { Index = 0, On = on })))),
            (3, StopPaymentAndBond()),
            (2, Gen.OneOf(
                Make(Gen.Select(When, MaybeManner, Day, Gen.Bool, (on, manner, by, says) =>
                    new ReleaseAffidavitServed { Index = 0, On = on, Manner = manner, AnswerBy = says ? by : null })),
                Make(Gen.Select(When, MaybeManner, Recipients, MaybeKnown, (on, manner, to, proof) =>
                    new CounteraffidavitServed { Index = 0, On = on, Manner = manner, To = to, Proof = proof })),
                Make(When.Select(on => new RightsActionFiled { Index = 0, On = on })),
                Make(Gen.Select(When, MaybeManner, Day, (on, manner, hearing) =>
                    new HearingNoticed { Index = 0, On = on, Manner = manner, Hearing = hearing })),
                Make(Gen.Select(When, Money, Gen.Bool, (on, amount, denied) =>
                    new ReleaseOrdered { Index = 0, On = on, Amount = denied ? null : amount })),
                Make(Gen.Select(When, Money, Gen.Bool, (on, amount, says) =>
                    new DisputeClaimAnswered { Index = 0, On = on, Undisputed = says ? amount : null })),
                Make(Gen.Select(When, MaybeManner, (on, manner) => new ConferenceDemanded { Index = 0, On = on, Manner = manner })),
                Make(When.Select(on => new ConferenceHeld { Index = 0, On = on })),
                Make(Gen.Select(When, Money, (on, amount) => new ClaimRequestMade { Index = 0, On = on, Amount = amount })),
                Make(Gen.Select(When, MaybeKnown, (on, presented) =>
                    new ClaimRequestAnswered { Index = 0, On = on, Presented = presented })),
                Make(When.Select(on => new FinalPayment { Index = 0, On = on })),
                Make(When.Select(on => new FinalDecisionServed { Index = 0, On = on })))));
        var license = Gen.Frequency(
            (2, Gen.Const((License?)null)),
            (1, Gen.Const((License?)new License { Required = false })),
            (3, Gen.Select(Day, Gen.Int[0, 400], Gen.Bool,
                (from, length, open) =>
                    (License?)new License { Required = true,
                        Active = [new LicenseSpan(from.PlusDays(-60), open
                            ? null : from.PlusDays(length), length % 7 == 0 ? from.PlusDays(length / 2) : null)] })));
        var more = Gen.Select(
            Gen.Select(MaybeKnown, MaybeKnown, MaybeKnown, MaybeKnown),
            Gen.Frequency((2, Gen.Const((PaymentBond?)null)), (1, Gen.Const((PaymentBond?)new PaymentBond())),
                (2, Gen.Select(Day, Gen.OneOf((string?[])[null, "direct", "owner", "sub"]), (day, principal) =>
                    (PaymentBond?)new PaymentBond { Recorded = day, Principal = principal }))),
            Gen.OneOf((LocalDate?[])[null, new LocalDate(2025, 12, 31), Start]),
            Gen.Select(MaybeBody, MaybeKnown, Gen.Int[0, 5]));
        Private = Gen.Select(
            Gen.Select(Who, license, Gen.OneOf((WorkUse?[])[null, WorkUse.Commercial, WorkUse.Residential, WorkUse.OwnerOccupiedOneToFour]),
                Gen.Int[0, 9], Gen.Bool),
            Gen.Select(Money, Gen.Bool, Money, Gen.Int[0, 3]),
            more,
            Entry.Array[0, 14],
            (who, price, rest, entries) =>
            {
                var job = new JobBuilder().Role(who.Item1.Role, who.Item1.HiredBy)
                    .Claimant(c => c with { License = who.Item2, DumpTrucks = rest.Item4.Item3 == 0 ? true : null })
                    .Party("sub", PartyCapacity.Subcontractor).Party("second", PartyCapacity.DirectContractor)
                    .Party("surety", PartyCapacity.Surety)
                    .Work(w => w with { PaymentBond = rest.Item2, SeveralDirectContracts = rest.Item1.Item1, OrderedByTenant =
                        rest.Item1.Item2, LowRiseResidential =
                        rest.Item1.Item3, Body = rest.Item4.Item1, StateContractAct = rest.Item4.Item2 })
                    .Contract(c => c with { On = rest.Item3, Written = rest.Item1.Item4 })
                    .Work(w => w with { Use = who.Item3, SubjectToAcceptanceBy = who.Item4 == 0
                        ? "City of Davis" : null, Commenced = who.Item4 == 1 ? Start : null })
                    .Contract(c => c with { Price = price.Item2
                        ? price.Item1 * 3 : null, ReasonableValue = price.Item4 == 0 ? price.Item3 * 2 : null });
                if (who.Item5)
                    job.Party("bank", PartyCapacity.ConstructionLender);
                foreach (var entry in entries)
                    job.Add(entry);
                return job.Build();
            });
    }

    /// <summary>A day of the window.</summary>
    public Gen<LocalDate> Day { get; }

    /// <summary>A day of asking: inside the window or up to a year after it.</summary>
    public Gen<LocalDate> AsOf { get; }

    /// <summary>Dollars and cents, positive.</summary>
    public Gen<decimal> Money { get; }

    /// <summary>A day fact: mostly exact, sometimes a span, seldom unknown.</summary>
    public Gen<DayFact> When { get; }

    // Stop payment notice and bond notice with their manner, and what follows them.
    private Gen<Func<int, Entry>> StopPaymentAndBond()
    {
        var manner = Gen.OneOf((Manner?[])[null, null, Manner.CertifiedMail, Manner.Substituted, Manner.Email]);
        var maybeMoney = Gen.Select(Money, Gen.Bool, (amount, known) => known ? amount : (decimal?)null);
        var maybeDay = Gen.Select(Day, Gen.Bool, (day, known) => known ? day : (LocalDate?)null);
        var holders = Gen.OneOf((IReadOnlyList<string>[])[["owner"], ["bank"], ["owner", "bank"], ["direct"], ["owner", "direct"]]);
        return Gen.OneOf(
            Make(Gen.Select(Gen.Select(When, holders, manner, maybeDay), Gen.Select(maybeMoney, maybeMoney, MaybeKnown, MaybeKnown),
                (a, b) => new StopPaymentGiven
            {
                Index = 0, On = a.Item1, To = a.Item2, Manner = a.Item3, Mailed = a.Item4, Amount = b.Item1, BondAmount = b.Item2,
                    Bonded = b.Item3 == true, TenDollars = b.Item4, Lacks = b.Item3 == false ? "its verification" : null,
            })),
            Make(Gen.Select(When, manner, maybeMoney,
                Gen.OneOf((IReadOnlyList<string>[])[["surety", "direct"], ["surety"], ["surety", "owner"]]), (on, how, amount, to) =>
                    new BondNoticeGiven { Index = 0, On = on, Manner = how, Amount = amount, To = to })),
            Make(Gen.Select(When, maybeMoney, (on, amount) => new StopPaymentReleased { Index = 0, On = on, Amount = amount })),
            Make(When.Select(on => new StopPaymentDemanded { Index = 0, On = on, From = "owner" })),
            Make(Gen.Select(When, maybeMoney, (on, amount) => new StopPaymentBondGiven { Index = 0, On = on, Amount = amount })),
            Make(Gen.Select(When, maybeDay, (on, brought) => new BondObjected { Index = 0, On = on, NewBond = brought })),
            Make(Gen.Select(When, manner, holders, (on, how, to) => new ActionTold { Index = 0, On = on, Manner = how, To = to })),
            Make(Gen.Select(When, Gen.Enum<ActionOn>().Array[0, 2],
                Gen.OneOf((IReadOnlyList<string>[])[[], ["owner"], ["owner", "direct"], ["surety", "bank"]]), (on, enforces, against) =>
                    new ActionFiled { Index = 0, On = on, Enforces = enforces, Against = against })),
            Make(Gen.Select(When, Gen.Enum<ActionEnd>(), MaybeKnown, (on, how, without) =>
                new ActionEnded { Index = 0, On = on, How = how, WithoutPrejudice = without })));
    }

    private static Gen<Func<int, Entry>> Make<T>(Gen<T> gen) where T : Entry =>
        gen.Select<T, Func<int, Entry>>(entry => index => entry with { Index = index });

    /// <summary>Something furnished: a day or a span.</summary>
    public Gen<Furnished> Furnished { get; }

    /// <summary>A payment.</summary>
    public Gen<Paid> Paid { get; }

    /// <summary>A credit.</summary>
    public Gen<Credited> Credited { get; }

    /// <summary>A waiver and release.</summary>
    public Gen<Waived> Waived { get; }

    /// <summary>A contested contention of completion.</summary>
    public Gen<Completed> Contested { get; }

    /// <summary>A preliminary notice.</summary>
    public Gen<NoticeGiven> Notice { get; }

    /// <summary>Any entry of private work; give it its place.</summary>
    public Gen<Func<int, Entry>> Entry { get; }

    /// <summary>A job file of private work.</summary>
    public Gen<JobFile> Private { get; }

    /// <summary>A job file of any work: on public work the owner is the public entity.</summary>
    public Gen<JobFile> AnyWork =>
        Gen.Select(Private,
            Gen.Frequency((6, Gen.Const(WorkKind.Private)), (2, Gen.Const(WorkKind.Public)), (1, Gen.Const(WorkKind.Federal))), As);

    /// <summary>A job file of any work whose entries replace each other, are taken back, and are learned on days of their own.</summary>
    public Gen<JobFile> Journal =>
        Gen.Select(AnyWork, Gen.Select(Gen.Int[0, 9], Gen.Int[0, 13], Gen.Int[0, 9], Day).Array[14], When, (job, drawn, on) => job with
    {
        Entries =
        [
            .. job.Entries.Select((e, i) => e with
            {
                Id = $"e{i}",
                Supersedes = drawn[i].Item1 < 2 && drawn[i].Item2 < i ? $"e{drawn[i].Item2}" : null,
                Learned = drawn[i].Item3 < 3 ? drawn[i].Item4 : null,
            }),
            .. job.Entries.Count > 0 && drawn[0].Item1 < 3
                ? (Entry[])[new Withdrawn { Index = job.Entries.Count, On = on, Supersedes = $"e{drawn[0].Item2}",
                    Learned = drawn[0].Item3 < 3 ? drawn[0].Item4 : null }] : [],
        ],
    });

    /// <summary>The file as one of another kind of work: on public work the owner is the public entity.</summary>
    public static JobFile As(JobFile job, WorkKind kind) => job with
    {
        Work = job.Work with { Kind = kind },
        Parties = [.. job.Parties.Select(p => kind == WorkKind.Public && p.Capacity == PartyCapacity.Owner
            ? p with { Capacity = PartyCapacity.PublicEntity } : p)],
    };
}
