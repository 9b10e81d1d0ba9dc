using CsCheck;
using Stringline.Law.Facts;

namespace Stringline.Testing;

/// <summary>Entries of every kind, with and without each of their optional fields.</summary>
public static partial class JobFileGen
{
    private static Gen<string?> County => Maybe(Gen.OneOf(Gen.Const("Yolo"), Gen.Const("Solano")));

    private static Gen<bool?> Said => MaybeValue(Gen.Bool);

    private static Gen<Manner?> SomeManner => MaybeValue(Gen.Enum<Manner>());

    private static Gen<Entry> Entry(Around at)
    {
        List<Gen<Entry>> kinds = [.. Work(at), .. Completion(at), .. Payments(at), .. Disputes(at), .. Claims(at), .. Actions(at)];
        if (at.Before.Exists(older => older.Id is not null))
            kinds.Add(When.Select(on => (Entry)new Withdrawn { Index = at.Index, On = on }));
        if (at.Parties.Count > 0)
            kinds.AddRange(Papers(at));
        if (at.Work.Kind == WorkKind.Public)
            kinds.AddRange(OfPublicWork(at));
        if (at.Work.Kind == WorkKind.Private)
            kinds.AddRange(OfPrivateWork(at));
        return Gen.OneOf([.. kinds]);
    }

    /// <summary>The day of mailing that a paper left and mailed may have, not before it was left.</summary>
    private static LocalDate? MailedAfter(Manner? manner, DayFact on, int? days) =>
        manner == Manner.Substituted && days is { } later && on.Latest is { } left ? left.PlusDays(later) : null;

    private static LocalDate? After(DayFact on, int? days) => days is { } later && on.Latest is { } day ? day.PlusDays(later) : null;

    private static IEnumerable<Gen<Entry>> Work(Around at) =>
    [
        from day in Known
        from span in Gen.Int[0, 40]
        from amount in MaybeValue(Money)
        from text in Maybe(Lines)
        from name in at.Ref
        from structure in at.Structure
        select (Entry)new Furnished
        {
            Index = at.Index,
            On = day,
            Until = day is DayFact.Exact exact ? DayFact.On(exact.Day.PlusDays(span)) : day,
            Amount = amount,
            Text = text,
            Ref = name,
            Structure = structure,
        },
        When.Select(on => (Entry)new FurnishingEnded { Index = at.Index, On = on }),
        Gen.Select(When, Money, Gen.Bool, Gen.Bool, Maybe(Lines), Said, Said).Select((on, amount, minus, agreed, text, inside, knew) =>
            (Entry)new Change
            {
                Index = at.Index,
                On = on,
                Amount = minus ? -amount : amount,
                Agreed = agreed,
                Text = text,
                InDirectContract = inside,
                KnewOutside = inside == true && knew == true ? null : knew,
            }),
        Gen.Select(When, Gen.Enum<ContractEnd>(), Said).Select((on, how, byPayer) =>
            (Entry)new ContractEnded { Index = at.Index, On = on, How = how, ByPayer = byPayer }),
        When.Select(on => (Entry)new WorkWillNotCommence { Index = at.Index, On = on }),
    ];

    private static IEnumerable<Gen<Entry>> Completion(Around at) =>
    [
        Gen.Select(When, Gen.Enum<CompletionTheory>(), Gen.Bool, at.Structure).Select((on, by, contested, structure) =>
            (Entry)new Completed { Index = at.Index, On = on, By = by, Contested = contested, Structure = structure }),
        from when in When
        from resumed in MaybeValue(Gen.Int[1, 90])
        from unfinished in Said
        select (Entry)new LaborCeased { Index = at.Index, On = when, Until = After(when, resumed), Unfinished = unfinished },
        Gen.Select(When, at.OwnerNotice, Maybe(Line), MaybeValue(Day), at.Party, Maybe(Line), Gen.Bool)
            .Select((on, notice, instrument, states, of, lacks, held) =>
            (Entry)new OwnerRecorded
            {
                Index = at.Index,
                On = on,
                Notice = notice,
                Instrument = instrument,
                States = states,
                ContractOf = of,
                Lacks = lacks,
                HeldIneffective = held,
            }),
        Gen.Select(When, at.OwnerNotice, MaybeValue(Day), SomeManner).Select((on, notice, mailed, manner) =>
            (Entry)new OwnerToldUs { Index = at.Index, On = on, Notice = notice, Mailed = mailed, Manner = manner }),
        Gen.Select(When, MaybeValue(Day), MaybeValue(Day), Said, Maybe(Line)).Select((on, posted, knew, lease, lacks) =>
            (Entry)new NonresponsibilityRecorded { Index = at.Index, On = on, Posted = posted, Knew = knew, LeaseRequiresWork = lease,
                Lacks = lacks }),
        Gen.Select(When, Maybe(Gen.OneOf(Counties.All.ToArray())))
            .Select((on, county) => (Entry)new IndexSearched { Index = at.Index, On = on, County = county }),
    ];

    private static IEnumerable<Gen<Entry>> Claims(Around at) =>
    [
        Gen.Select(When, County, MaybeValue(Money), Maybe(Line), MaybeValue(Gen.Enum<LienKind>()), at.Named<ClaimRecorded>(),
            Gen.Select(at.Structure, Maybe(Line)))
            .Select((on, county, amount, instrument, lien, amends, said) => (Entry)new ClaimRecorded
            {
                Index = at.Index,
                On = on,
                County = county,
                Amount = amount,
                Instrument = instrument,
                Lien = lien,
                Amends = amends,
                Structure = said.Item1,
                Lacks = said.Item2,
            }),
        Gen.Select(When, Day, Maybe(Line)).Select((on, until, instrument) =>
            (Entry)new CreditRecorded { Index = at.Index, On = on, Until = until, Instrument = instrument }),
        Gen.Select(When, Maybe(Line), Said).Select((on, instrument, satisfied) =>
            (Entry)new ReleaseRecorded { Index = at.Index, On = on, Instrument = instrument, Satisfied = satisfied }),
        Gen.Select(When, MaybeValue(Day), MaybeValue(Money), Maybe(Line)).Select((on, told, amount, instrument) =>
            (Entry)new ReleaseBondRecorded { Index = at.Index, On = on, NoticeGiven = told, Amount = amount, Instrument = instrument }),
        Gen.Select(When, Maybe(Line))
            .Select((on, instrument) => (Entry)new ReleaseDemanded { Index = at.Index, On = on, Instrument = instrument }),
    ];

    private static IEnumerable<Gen<Entry>> Actions(Around at) =>
    [
        from when in When
        from words in Gen.Select(Maybe(Line), Maybe(Line))
        from enforces in Some(Enum.GetValues<ActionOn>())
        from claim in at.Named<ClaimRecorded>()
        from against in at.PartyList
        from small in Gen.Bool
        select (Entry)new ActionFiled
        {
            Index = at.Index,
            On = when,
            Court = words.Item1,
            Case = words.Item2,
            Enforces = enforces,
            Claim = enforces.Count == 0 || enforces.Contains(ActionOn.Lien) ? claim : null,
            Against = against,
            SmallClaims = small,
        },
        Gen.Select(When, at.PartyList, at.Named<ActionFiled>())
            .Select((on, to, of) => (Entry)new ActionServed { Index = at.Index, On = on, To = to, Of = of }),
        Gen.Select(When, at.Named<ActionFiled>()).Select((on, of) => (Entry)new TrialBegun { Index = at.Index, On = on, Of = of }),
        Gen.Select(When, Gen.Enum<ActionEnd>(), Said, at.Named<ActionFiled>()).Select((on, how, without, of) =>
            (Entry)new ActionEnded { Index = at.Index, On = on, How = how, WithoutPrejudice = without, Of = of }),
        Gen.Select(When, Maybe(Line), Said, Said).Select((on, instrument, mailed, proof) =>
            (Entry)new LisPendensRecorded { Index = at.Index, On = on, Instrument = instrument, MailedFirst = mailed,
                ProofRecorded = proof }),
        Gen.Select(When, MaybeValue(Positive), at.Named<StopPaymentGiven>()).Select((on, amount, of) =>
            (Entry)new StopPaymentReleased { Index = at.Index, On = on, Amount = amount, Of = of }),
        Gen.Select(When, MaybeValue(Positive), at.PartyIn(PartyCapacity.Surety)).Select((on, amount, surety) =>
            (Entry)new StopPaymentBondGiven { Index = at.Index, On = on, Amount = amount, Surety = surety }),
    ];

    private static IEnumerable<Gen<Entry>> OfPrivateWork(Around at) =>
    [
        Gen.Select(When, Maybe(Lines)).Select((on, where) => (Entry)new LenderSought { Index = at.Index, On = on, Where = where }),
        Gen.Select(When, Maybe(Line))
            .Select((on, instrument) => (Entry)new NoticeFiled { Index = at.Index, On = on, Instrument = instrument }),
        Gen.Select(When, at.PartyIn(PartyCapacity.Owner))
            .Select((on, owner) => (Entry)new StopPaymentDemanded { Index = at.Index, On = on, From = owner }),
        Gen.Select(When, at.PartyIn(PartyCapacity.ConstructionLender), MaybeValue(Gen.Int[0, 60])).Select((on, lender, days) =>
            (Entry)new BondObjected { Index = at.Index, On = on, By = lender, NewBond = After(on, days) }),
        Gen.Select(When, SomeManner, MaybeValue(Day)).Select((on, manner, hearing) =>
            (Entry)new ReleasePetitionServed { Index = at.Index, On = on, Manner = manner, Hearing = hearing }),
        Gen.Select(When, at.PartyList, MaybeValue(Day), MaybeValue(Gen.Int[0, 20]))
            .Select((on, to, posted, days) => (Entry)new StopWorkNoticeGiven
        {
            Index = at.Index,
            On = on,
            To = to,
            Posted = posted,
            PostedBy = days is not { } later ? null : posted is { } first ? first.PlusDays(later) : on.Earliest?.PlusDays(-later),
        }),
        Gen.Select(When, Gen.Enum<SuspensionNotice>(), SomeManner).Select((on, notice, manner) =>
            (Entry)new SuspensionNoticeSent { Index = at.Index, On = on, Notice = notice, Manner = manner }),
        Gen.Select(When, SomeManner).Select((on, manner) => (Entry)new SecurityDemanded { Index = at.Index, On = on, Manner = manner }),
        Gen.Select(When, MaybeValue(Positive), MaybeValue(Gen.Int[0, 200])).Select((on, amount, days) =>
            (Entry)new SecurityProvided { Index = at.Index, On = on, Amount = amount, Until = After(on, days) }),
    ];

    private static List<Gen<Entry>> OfPublicWork(Around at)
    {
        List<Gen<Entry>> kinds =
        [
            When.Select(on => (Entry)new FinalPayment { Index = at.Index, On = on }),
            When.Select(on => (Entry)new FinalDecisionServed { Index = at.Index, On = on }),
            Gen.Select(When, SomeManner, MaybeValue(Day), MaybeValue(Positive), MaybeValue(Gen.Enum<ReleaseGround>()))
                .Select((on, manner, by, amount, ground) =>
                (Entry)new ReleaseAffidavitServed { Index = at.Index, On = on, Manner = manner, AnswerBy = by, Amount = amount,
                    Ground = ground }),
            Gen.Select(When, Maybe(Line)).Select((on, number) => (Entry)new RightsActionFiled { Index = at.Index, On = on, Case = number }),
            Gen.Select(When, SomeManner, Day, at.PartyList, at.PartyIn(PartyCapacity.DirectContractor))
                .Select((on, manner, hearing, to, by) =>
                (Entry)new HearingNoticed { Index = at.Index, On = on, Manner = manner, Hearing = hearing, To = to, By = by }),
            Gen.Select(When, MaybeValue(Positive))
                .Select((on, amount) => (Entry)new ReleaseOrdered { Index = at.Index, On = on, Amount = amount }),
        ];
        if (at.Parties.Count > 0)
        {
            kinds.Add(Gen.Select(When, at.SomeParties, SomeManner, Said).Select((on, to, manner, proof) =>
                (Entry)new CounteraffidavitServed { Index = at.Index, On = on, To = to, Manner = manner, Proof = proof }));
        }

        return kinds;
    }

    /// <summary>What an entry may speak of: the parties and structures, and the entries before it.</summary>
    private sealed record Around(int Index, List<Party> Parties, Work Work, List<Entry> Before)
    {
        public Gen<string?> Ref => Gen.Bool.Select(has => has ? $"R-{Index}" : null);

        public Gen<string?> Toward =>
            MaybeOneOf([.. Before.Select(entry => entry switch { Furnished f => f.Ref, Charged c => c.Ref, _ => null }).OfType<string>()]);

        public Gen<string?> Party => MaybeOneOf(Ids(Parties));

        public Gen<IReadOnlyList<string>> PartyList => Some(Ids(Parties));

        public Gen<IReadOnlyList<string>> SomeParties =>
            Gen.Int[1, Parties.Count].Select(count => (IReadOnlyList<string>)Ids(Parties)[..count]);

        public Gen<string?> Structure => MaybeOneOf([.. Work.Structures.Select(structure => structure.Id)]);

        public Gen<OwnerNotice> OwnerNotice => Gen.OneOf(Work.Kind == WorkKind.Public
            ? [Law.Facts.OwnerNotice.Completion, Law.Facts.OwnerNotice.Cessation, Law.Facts.OwnerNotice.Acceptance]
            : new[] { Law.Facts.OwnerNotice.Completion, Law.Facts.OwnerNotice.Cessation });

        public Gen<string?> PartyIn(PartyCapacity capacity) => MaybeOneOf(Ids(Parties, capacity));

        public Gen<string?> Named<T>()
            where T : Entry => MaybeOneOf([.. Before.OfType<T>().Select(entry => entry.Id).OfType<string>()]);
    }
}
