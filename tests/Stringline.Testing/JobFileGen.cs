using CsCheck;
using Stringline.Law.Facts;

namespace Stringline.Testing;

/// <summary>
/// Random job files that the format can say: every kind of entry, every optional field with and without its value,
/// names with accents, party ids and refs that fit together. They need not make sense in law.
/// </summary>
public static partial class JobFileGen
{
    private static readonly string[] SampleCounties = ["Alameda", "Del Norte", "Los Angeles", "San Francisco", "Yolo"];

    /// <summary>Whole job files.</summary>
    public static Gen<JobFile> Job { get; } =
        from parties in Parties
        from work in Work(parties)
        from claimant in Claimant(Ids(parties))
        from contract in Contract
        from count in Gen.Int[0, 25]
        from entries in Entries(count, parties, work)
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

    private static string[] Ids(List<Party> parties) => [.. parties.Select(party => party.Id)];

    private static Gen<string?> Maybe(Gen<string> gen) =>
        Gen.Frequency((1, Gen.Const((string?)null)), (2, gen.Select(text => (string?)text)));

    private static Gen<T?> MaybeValue<T>(Gen<T> gen)
        where T : struct =>
        Gen.Frequency((1, Gen.Const((T?)null)), (2, gen.Select(value => (T?)value)));

    private static Gen<string?> MaybeOneOf(string[] names) =>
        names.Length == 0 ? Gen.Const((string?)null) : Maybe(Gen.OneOf(names));

    private static Gen<IReadOnlyList<T>> Some<T>(IReadOnlyList<T> of) =>
        Gen.Int[0, of.Count].Select(count => (IReadOnlyList<T>)[.. of.Take(count)]);

    private static string[] Ids(List<Party> parties, params PartyCapacity[] capacities) =>
        [.. parties.Where(party => capacities.Contains(party.Capacity)).Select(party => party.Id)];

    private static Gen<List<Entry>> Entries(int count, List<Party> parties, Work work)
    {
        // Refs are unique because they carry the entry's index; a payment names one that stands before it.
        var gen = Gen.Const(new List<Entry>());
        for (var i = 0; i < count; i++)
        {
            var index = i;
            gen =
                from before in gen
                from entry in Entry(new Around(index, parties, work, before))
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
}
