using CsCheck;
using Stringline.Law.Facts;

namespace Stringline.Testing;

/// <summary>
/// Random job files that the format can say: every kind of entry, every optional field with and without its value,
/// names with accents, party ids and refs that fit together. They need not make sense in law.
/// </summary>
public static class JobFileGen
{
    private static readonly string[] SampleCounties = ["Alameda", "Del Norte", "Los Angeles", "San Francisco", "Yolo"];

    /// <summary>Whole job files.</summary>
    public static Gen<JobFile> Job { get; } =
        from parties in Parties
        from work in Work(Ids(parties))
        from claimant in Claimant(Ids(parties))
        from contract in Contract
        from count in Gen.Int[0, 25]
        from entries in Entries(count, Ids(parties))
        from name in Line
        select new JobFile
        {
            Name = name,
            Work = work,
            Claimant = claimant,
            Parties = parties,
            Contract = contract,
            Entries = entries,
        };

    /// <summary>Days from 2019 to 2031.</summary>
    public static Gen<LocalDate> Day { get; } =
        Gen.Int[0, 12 * 365].Select(days => new LocalDate(2019, 1, 1).PlusDays(days));

    /// <summary>A day known, in doubt, or unknown.</summary>
    public static Gen<DayFact> When { get; } =
        Gen.Frequency((6, Known), (1, Gen.Const((DayFact)new DayFact.Unknown())));

    /// <summary>Amounts of zero or more, to the cent.</summary>
    public static Gen<decimal> Money { get; } = Gen.Frequency(
        (5, Gen.Int[0, 10_000_000].Select(cents => cents / 100m)),
        (1, Gen.OneOf(0m, 0.01m, 999_999_999.99m)));

    private static Gen<DayFact> Known => Gen.Frequency(
        (5, Day.Select(DayFact.On)),
        (1, Gen.Select(Day, Gen.Int[0, 60]).Select((first, days) => (DayFact)new DayFact.Between(first, first.PlusDays(days)))));

    private static Gen<decimal> Positive => Money.Select(dollars => dollars == 0m ? 12.34m : dollars);

    private static Gen<string> Line => Gen.OneOf(
        Gen.OneOf("Alder Court", "Nguyễn & Sons, Inc.", "Muñoz \"Pepe\" \\ Ltd", "O’Neil", "木 Framing", "🧱 Brick"),
        Gen.String[Gen.Char.AlphaNumeric, 1, 30]);

    private static Gen<string> Lines => Gen.OneOf(Line, Gen.Select(Line, Line).Select((first, second) => first + "\n" + second));

    private static Gen<List<Party>> Parties =>
        from count in Gen.Int[0, 6]
        from parties in Gen.Select(Gen.Enum<PartyCapacity>(), Gen.Bool, Line, Maybe(Lines), Title, MaybeValue(Day), MaybeValue(Gen.Bool)).List[count]
        select parties.Select((p, i) => new Party
        {
            Id = $"p{i + 1}",
            Capacity = p.Item1,
            Reputed = p.Item2,
            Name = p.Item3,
            Address = p.Item4,
            HoldsTitleAs = p.Item5,
            KnownSince = p.Item1 == PartyCapacity.ConstructionLender ? p.Item6 : null,
            MadeToPlans = p.Item1 == PartyCapacity.Supplier ? p.Item7 : null,
        }).ToList();

    private static Gen<TitleHolding?> Title =>
        from said in Gen.Bool
        from form in Gen.Enum<TitleForm>()
        from persons in Holder.List[2, 4]
        from trust in Line
        from decedent in Holder
        select said ? TitleOf(form, persons, trust, decedent) : null;

    private static Gen<TitleHolder> Holder => Gen.Frequency(
        (1, Line.Select(entity => new TitleHolder { Entity = entity })),
        (3, Gen.Select(Line, Maybe(Line), Maybe(Line)).Select((surname, given, suffix) => new TitleHolder { Surname = surname, Given = given, Suffix = suffix })));

    private static TitleHolding TitleOf(TitleForm form, List<TitleHolder> persons, string trust, TitleHolder decedent) => new()
    {
        Form = form,
        Persons = form is TitleForm.Company or TitleForm.PublicEntity ? [] : persons,
        Trust = form == TitleForm.Trust ? trust : null,
        Decedent = form == TitleForm.Estate ? decedent : null,
    };

    private static Gen<Contract> Contract =>
        from day in MaybeValue(Day)
        from written in MaybeValue(Gen.Bool)
        from price in MaybeValue(Money)
        from value in MaybeValue(Money)
        from work in Maybe(Lines)
        select new Contract { On = day, Written = written, Price = price, ReasonableValue = value, Work = work };

    private static string[] Ids(List<Party> parties) => [.. parties.Select(party => party.Id)];

    private static Gen<string?> Maybe(Gen<string> gen) => Gen.Frequency((1, Gen.Const((string?)null)), (2, gen.Select(text => (string?)text)));

    private static Gen<T?> MaybeValue<T>(Gen<T> gen)
        where T : struct =>
        Gen.Frequency((1, Gen.Const((T?)null)), (2, gen.Select(value => (T?)value)));

    private static Gen<string?> MaybeOneOf(string[] names) =>
        names.Length == 0 ? Gen.Const((string?)null) : Maybe(Gen.OneOf(names));

    private static Gen<Work> Work(string[] ids) =>
        from kind in Gen.Enum<WorkKind>()
        from use in MaybeValue(Gen.Enum<WorkUse>())
        from site in Gen.Select(Maybe(Line), Maybe(Line), Maybe(Line), Gen.OneOf(SampleCounties), Maybe(Line), Maybe(Lines))
        from hasPermit in Gen.Bool
        from permit in Gen.Select(Maybe(Line), Maybe(Line), Maybe(Lines))
        from hasBond in Gen.Bool
        from bond in Gen.Select(MaybeValue(Day), MaybeOneOf(ids))
        from acceptance in Maybe(Line)
        from commenced in MaybeValue(Day)
        from structures in MaybeValue(Gen.Int[1, 9999])
        from said in MaybeValue(Gen.Bool).Array[6]
        select new Work
        {
            Kind = kind,
            Use = use,
            Site = new Site
            {
                Street = site.Item1,
                City = site.Item2,
                Zip = site.Item3,
                County = site.Item4,
                Apn = site.Item5,
                Legal = site.Item6,
            },
            Permit = hasPermit ? new Permit { Number = permit.Item1, Authority = permit.Item2, OwnerAddress = permit.Item3 } : null,
            PaymentBond = hasBond ? new PaymentBond { Recorded = bond.Item1, Surety = bond.Item2 } : null,
            SubjectToAcceptanceBy = acceptance,
            Commenced = commenced,
            SeveralDirectContracts = said[0],
            ResidentialStructures = structures,
            CommonInterest = said[1],
            SiteImprovement = said[2],
            OrderedByTenant = said[3],
            LowRiseResidential = said[4],
            StateContractAct = said[5],
        };

    private static Gen<Claimant> Claimant(string[] ids) =>
        from name in Line
        from role in Gen.Enum<ClaimantRole>()
        from address in Maybe(Lines)
        from hiredBy in MaybeOneOf(ids)
        from hasSigner in Gen.Bool
        from signer in Gen.Select(Line, Maybe(Line))
        from hasLicense in Gen.Bool
        from license in License
        select new Claimant
        {
            Name = name,
            Role = role,
            Address = address,
            HiredBy = hiredBy,
            Signer = hasSigner ? new Signer(signer.Item1, signer.Item2) : null,
            License = hasLicense ? license : null,
        };

    private static Gen<License> License =>
        from required in Gen.Bool
        from number in Maybe(Line)
        from classification in Maybe(Line)
        from start in Day
        from lengths in Gen.Int[0, 700].Array[0, 3]
        from goesOn in Gen.Bool
        from putBack in MaybeValue(Gen.Int[0, 400])
        select new License { Required = required, Number = number, Class = classification, Active = Spans(start, lengths, goesOn, putBack) };

    private static List<LicenseSpan> Spans(LocalDate start, int[] lengths, bool goesOn, int? putBack)
    {
        var spans = new List<LicenseSpan>();
        foreach (var length in lengths)
        {
            var isLast = spans.Count == lengths.Length - 1;
            spans.Add(new LicenseSpan(start, isLast && goesOn ? null : start.PlusDays(length), isLast && putBack is { } days ? start.PlusDays(days) : null));
            start = start.PlusDays(length + 1);
        }

        return spans;
    }

    private static Gen<List<Entry>> Entries(int count, string[] ids)
    {
        // Refs are unique because they carry the entry's index; a payment names one that stands before it.
        var gen = Gen.Const(new List<Entry>());
        for (var i = 0; i < count; i++)
        {
            var index = i;
            gen =
                from before in gen
                from entry in Entry(index, ids, Refs(before), before.Exists(older => older.Id is not null))
                from placed in InJournal(entry, [.. before.Select(older => older.Id).OfType<string>()])
                select new List<Entry>(before) { placed };
        }

        return gen;
    }

    /// <summary>Names some entries, and lets some replace one before them, so that no replacement goes in a circle.</summary>
    private static Gen<Entry> InJournal(Entry entry, string[] before) =>
        from named in Gen.Bool
        from supersedes in MaybeOneOf(before)
        from learned in MaybeValue(Day)
        where supersedes is not null || entry is not Withdrawn
        select entry with { Id = named ? $"e{entry.Index}" : null, Supersedes = supersedes, Learned = learned };

    private static string[] Refs(List<Entry> entries) =>
        [.. entries.Select(entry => entry switch { Furnished f => f.Ref, Charged c => c.Ref, _ => null }).OfType<string>()];

    private static Gen<Entry> Entry(int index, string[] ids, string[] refs, bool hasOlder)
    {
        var reference = Gen.Bool.Select(has => has ? $"R-{index}" : null);
        var kinds = new List<Gen<Entry>>
        {
            from day in Known
            from span in Gen.Int[0, 40]
            from amount in MaybeValue(Money)
            from text in Maybe(Lines)
            from name in reference
            select (Entry)new Furnished
            {
                Index = index,
                On = day,
                Until = day is DayFact.Exact exact ? DayFact.On(exact.Day.PlusDays(span)) : day,
                Amount = amount,
                Text = text,
                Ref = name,
            },
            When.Select(on => (Entry)new FurnishingEnded { Index = index, On = on }),
            Gen.Select(When, Money, Gen.Bool, Gen.Bool, Maybe(Lines)).Select((on, amount, minus, agreed, text) =>
                (Entry)new Change { Index = index, On = on, Amount = minus ? -amount : amount, Agreed = agreed, Text = text }),
            Gen.Select(Known, Positive, Maybe(Line), MaybeOneOf(refs)).Select((on, amount, from, toward) =>
                (Entry)new Paid { Index = index, On = on, Amount = amount, From = from, Toward = toward }),
            Gen.Select(Known, Positive, Maybe(Lines)).Select((on, amount, text) =>
                (Entry)new Credited { Index = index, On = on, Amount = amount, Text = text }),
            Gen.Select(Known, Positive, Gen.Enum<ChargeKind>(), reference).Select((on, amount, of, name) =>
                (Entry)new Charged { Index = index, On = on, Amount = amount, Of = of, Ref = name }),
            Gen.Select(When, Gen.Enum<CompletionTheory>(), Gen.Bool).Select((on, by, contested) =>
                (Entry)new Completed { Index = index, On = on, By = by, Contested = contested }),
            from when in When
            from resumed in MaybeValue(Gen.Int[1, 90])
            select (Entry)new LaborCeased { Index = index, On = when, Until = resumed is { } days && when.Latest is { } last ? last.PlusDays(days) : null },
            Gen.Select(When, Gen.Enum<OwnerNotice>(), Maybe(Line), MaybeValue(Day), MaybeOneOf(ids), Maybe(Line), Gen.Bool).Select((on, notice, instrument, states, of, lacks, held) =>
                (Entry)new OwnerRecorded { Index = index, On = on, Notice = notice, Instrument = instrument, States = states, ContractOf = of, Lacks = lacks, HeldIneffective = held }),
            Gen.Select(When, Gen.Enum<OwnerNotice>(), MaybeValue(Day)).Select((on, notice, mailed) =>
                (Entry)new OwnerToldUs { Index = index, On = on, Notice = notice, Mailed = mailed }),
            from when in When
            from form in Gen.Enum<WaiverForm>()
            from through in Day
            from amount in MaybeValue(Money)
            from excepted in MaybeValue(Money)
            from cleared in MaybeValue(Day)
            from statutory in MaybeValue(Gen.Bool)
            select (Entry)new Waived
            {
                Index = index,
                On = when,
                Form = form,
                Through = form is WaiverForm.ConditionalProgress or WaiverForm.UnconditionalProgress ? through : null,
                Amount = amount,
                Excepted = excepted,
                PaymentCleared = cleared,
                InStatutoryForm = statutory,
            },
            Gen.Select(When, Maybe(Gen.OneOf(Gen.Const("Yolo"), Gen.Const("Solano"))), MaybeValue(Money), Maybe(Line)).Select((on, county, amount, instrument) =>
                (Entry)new ClaimRecorded { Index = index, On = on, County = county, Amount = amount, Instrument = instrument }),
            Gen.Select(When, Day, Maybe(Line)).Select((on, until, instrument) =>
                (Entry)new CreditRecorded { Index = index, On = on, Until = until, Instrument = instrument }),
            Gen.Select(When, Maybe(Line), Maybe(Line)).Select((on, court, number) =>
                (Entry)new ActionFiled { Index = index, On = on, Court = court, Case = number }),
            Gen.Select(When, Maybe(Line)).Select((on, instrument) => (Entry)new LisPendensRecorded { Index = index, On = on, Instrument = instrument }),
            Gen.Select(When, Maybe(Line), MaybeValue(Gen.Bool)).Select((on, instrument, satisfied) =>
                (Entry)new ReleaseRecorded { Index = index, On = on, Instrument = instrument, Satisfied = satisfied }),
            Gen.Select(When, MaybeValue(Day), MaybeValue(Money), Maybe(Line)).Select((on, told, amount, instrument) =>
                (Entry)new ReleaseBondRecorded { Index = index, On = on, NoticeGiven = told, Amount = amount, Instrument = instrument }),
            Gen.Select(When, Maybe(Line)).Select((on, instrument) => (Entry)new ReleaseDemanded { Index = index, On = on, Instrument = instrument }),
            When.Select(on => (Entry)new IndexSearched { Index = index, On = on }),
            When.Select(on => (Entry)new WorkWillNotCommence { Index = index, On = on }),
            Gen.Select(When, Positive).Select((on, amount) => (Entry)new Retained { Index = index, On = on, Amount = amount }),
            Gen.Select(When, Positive).Select((on, amount) => (Entry)new PaymentDemanded { Index = index, On = on, Amount = amount }),
            Gen.Select(When, Positive, Gen.Enum<PaymentOf>()).Select((on, amount, of) =>
                (Entry)new HirerPaid { Index = index, On = on, Amount = amount, Of = of }),
            Gen.Select(When, Positive, Maybe(Lines)).Select((on, amount, text) =>
                (Entry)new Disputed { Index = index, On = on, Amount = amount, Text = text }),
            Gen.Select(When, Positive, Maybe(Line)).Select((on, amount, by) =>
                (Entry)new LowerTierClaim { Index = index, On = on, Amount = amount, By = by }),
            Gen.Select(When, MaybeValue(Day), MaybeValue(Day), MaybeValue(Gen.Bool)).Select((on, posted, knew, lease) =>
                (Entry)new NonresponsibilityRecorded { Index = index, On = on, Posted = posted, Knew = knew, LeaseRequiresWork = lease }),
            Gen.Select(When, MaybeValue(Positive), MaybeValue(Day)).Select((on, amount, received) =>
                (Entry)new DisputeClaimSent { Index = index, On = on, Amount = amount, Received = received }),
        };
        if (hasOlder)
            kinds.Add(When.Select(on => (Entry)new Withdrawn { Index = index, On = on }));
        if (ids.Length > 0)
        {
            var to = Gen.Int[1, ids.Length].Select(count => (IReadOnlyList<string>)ids[..count]);
            kinds.Add(Gen.Select(When, Gen.Enum<NoticeKind>(), to, Gen.Enum<Manner>(), Maybe(Line), MaybeValue(Money), MaybeValue(Gen.Enum<EstimateBasis>())).Select((on, notice, given, manner, article, estimate, basis) =>
                (Entry)new NoticeGiven { Index = index, On = on, Notice = notice, To = given, Manner = manner, Article = article, Estimate = estimate, EstimateBasis = basis }));
            kinds.Add(Gen.Select(When, to, Gen.Enum<Manner>(), Maybe(Line)).Select((on, given, manner, article) =>
                (Entry)new ClaimServed { Index = index, On = on, To = given, Manner = manner, Article = article }));
            kinds.Add(Gen.Select(When, to, MaybeValue(Money), Gen.Bool).Select((on, given, amount, bonded) =>
                (Entry)new StopPaymentGiven { Index = index, On = on, To = given, Amount = amount, Bonded = bonded }));
            kinds.Add(Gen.Select(When, to).Select((on, given) => (Entry)new BondNoticeGiven { Index = index, On = on, To = given }));
        }

        return Gen.OneOf([.. kinds]);
    }
}
