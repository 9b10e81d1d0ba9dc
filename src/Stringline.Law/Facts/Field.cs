using System.Globalization;
using Stringline.Law.Counting;

namespace Stringline.Law.Facts;

/// <summary>
/// A field of a kind of entry, described once: its name in the file, what it holds and which answers it takes, how it is asked for,
/// told, found and weighed. The cases are the only ones.
/// </summary>
/// <remarks>
/// What takes a value from an entry, or gives an entry with it, is told of <see cref="Entry"/> and not of its kind: a generic field would
/// be made anew for each of the kinds at every start of the program.
/// </remarks>
public abstract record Field
{
    private Field(string name, string label) => (Name, Label) = (name, label);

    /// <summary>Its name in the job file.</summary>
    public string Name { get; }

    /// <summary>What it is called where it is asked for.</summary>
    public string Label { get; }

    /// <summary>What it means, for the format's description; empty where the name says it all.</summary>
    public string Meaning { get; init; } = "";

    /// <summary>What helps to answer; empty where the label says it all.</summary>
    public string Hint { get; init; } = "";

    /// <summary>Whether it must be said.</summary>
    public bool Required { get; init; }

    /// <summary>Whether what was answered last on the same job is filled in.</summary>
    public bool Repeats { get; init; }

    /// <summary>Whether what was answered before on the same job is offered while typing.</summary>
    public bool Offers { get; init; }

    /// <summary>How it is told beside the entry, <c>{0}</c> for its value in words; empty where it is not told.</summary>
    public string Said { get; init; } = "";

    /// <summary>What it says, for entries that tie in all else: in one form, so that equal values have equal texts.</summary>
    internal abstract string? Weighed(Entry entry);

    /// <summary>The entry with what this field says in another of its kind; lists are shared.</summary>
    public abstract Entry Copied(Entry source, Entry target);

    /// <summary>A text.</summary>
    public sealed record Text(string Name, string Label, Func<Entry, string?> Get, Func<Entry, string, Entry> With) : Field(Name, Label)
    {
        /// <summary>What the text is.</summary>
        public TextHolds Holds { get; init; }

        /// <summary>In which capacity a party is offered; null for any.</summary>
        public PartyCapacity? Among { get; init; }

        /// <summary>Whether a party in another capacity is taken all the same.</summary>
        public bool TakesAnyParty { get; init; }

        /// <summary>Of which kind the entry is that it names; empty where it names none.</summary>
        public string Of { get; init; } = "";

        /// <summary>Under which heading the search finds it; null where it does not.</summary>
        public SearchedAs? Searched { get; init; }

        internal override string? Weighed(Entry entry) => Get(entry);

        /// <inheritdoc/>
        public override Entry Copied(Entry source, Entry target) => Get(source) is { } text ? With(target, text) : target;
    }

    /// <summary>Dollars and cents.</summary>
    public sealed record Money(string Name, string Label, Func<Entry, decimal?> Get, Func<Entry, decimal, Entry> With) : Field(Name, Label)
    {
        /// <summary>Which amounts it takes.</summary>
        public MoneyRange Range { get; init; } = MoneyRange.ZeroOrMore;

        /// <summary>Whether it is the sum that stands beside the entry in the list of entries.</summary>
        public bool IsSum { get; init; } = true;

        internal override string? Weighed(Entry entry) => Get(entry)?.ToString("0.00############", CultureInfo.InvariantCulture);

        /// <inheritdoc/>
        public override Entry Copied(Entry source, Entry target) => Get(source) is { } dollars ? With(target, dollars) : target;
    }

    /// <summary>A known day.</summary>
    public sealed record Day(string Name, string Label, Func<Entry, LocalDate?> Get, Func<Entry, LocalDate, Entry> With)
        : Field(Name, Label)
    {
        /// <summary>What is told where there is none; empty: nothing.</summary>
        public string SaidWithoutIt { get; init; } = "";

        internal override string? Weighed(Entry entry) => Get(entry) is { } day ? LawText.IsoDay(day) : null;

        /// <inheritdoc/>
        public override Entry Copied(Entry source, Entry target) => Get(source) is { } day ? With(target, day) : target;
    }

    /// <summary>A list of known days, each once; empty is not the same as absent.</summary>
    public sealed record Days(
        string Name, string Label, Func<Entry, IReadOnlyList<LocalDate>?> Get, Func<Entry, IReadOnlyList<LocalDate>, Entry> With)
        : Field(Name, Label)
    {
        internal override string? Weighed(Entry entry) => Get(entry) is { } days ? string.Join(',', days.Select(LawText.IsoDay)) : null;

        /// <inheritdoc/>
        public override Entry Copied(Entry source, Entry target) => Get(source) is { } days ? With(target, days) : target;
    }

    /// <summary>The last day of a span of work; it is read and written with the first.</summary>
    public sealed record LastDay(string Name, Func<Entry, DayFact> Get, Func<Entry, DayFact, Entry> With) : Field(Name, "")
    {
        internal override string? Weighed(Entry entry) => Spelled(Get(entry));

        /// <inheritdoc/>
        public override Entry Copied(Entry source, Entry target) => With(target, Get(source));
    }

    /// <summary>A whole number up to 9,999.</summary>
    public sealed record Count(string Name, string Label, Func<Entry, int?> Get, Func<Entry, int, Entry> With) : Field(Name, Label)
    {
        /// <summary>The least that is taken.</summary>
        public int Least { get; init; } = 1;

        internal override string? Weighed(Entry entry) => Get(entry)?.ToString(CultureInfo.InvariantCulture);

        /// <inheritdoc/>
        public override Entry Copied(Entry source, Entry target) => Get(source) is { } count ? With(target, count) : target;
    }

    /// <summary>Yes or no; absent where nobody has said.</summary>
    public sealed record YesNo(string Name, string Label, Func<Entry, bool?> Get, Func<Entry, bool, Entry> With) : Field(Name, Label)
    {
        /// <summary>What is told where it is so; empty: nothing.</summary>
        public string SaidOfYes { get; init; } = "";

        /// <summary>What is told where it is not so; empty: nothing.</summary>
        public string SaidOfNo { get; init; } = "";

        internal override string? Weighed(Entry entry) => Get(entry)?.ToString();

        /// <inheritdoc/>
        public override Entry Copied(Entry source, Entry target) => Get(source) is { } truth ? With(target, truth) : target;
    }

    /// <summary>Ticked or not: absent says no.</summary>
    public sealed record Tick(string Name, string Label, Func<Entry, bool> Get, Func<Entry, bool, Entry> With) : Field(Name, Label)
    {
        /// <summary>Whether a file says it also where it is not so.</summary>
        public bool AlwaysWritten { get; init; }

        internal override string? Weighed(Entry entry) => Get(entry).ToString();

        /// <inheritdoc/>
        public override Entry Copied(Entry source, Entry target) => With(target, Get(source));
    }

    /// <summary>One of a few words, as its place in their table.</summary>
    public sealed record Word(string Name, string Label, WordTable Table, Func<Entry, int?> Get, Func<Entry, int, Entry> With)
        : Field(Name, Label)
    {
        /// <summary>The words as a person reads them where one is chosen, in the order of the table.</summary>
        public IReadOnlyList<string> Choices { get; init; } = [];

        /// <summary>The words as they are told beside the entry, in the order of the table; empty where none is told.</summary>
        public IReadOnlyList<string> SaidWords { get; init; } = [];

        /// <summary>Whether a bare number is taken for the text of its digits.</summary>
        public bool TakesNumbers { get; init; }

        internal override string? Weighed(Entry entry) => Get(entry) is { } place ? Table.Words[place] : null;

        /// <inheritdoc/>
        public override Entry Copied(Entry source, Entry target) => Get(source) is { } place ? With(target, place) : target;
    }

    /// <summary>Any number of a few words, each once, as their places in the table; none where nobody has said.</summary>
    public sealed record Words(
        string Name, string Label, WordTable Table, Func<Entry, IReadOnlyList<int>> Get, Func<Entry, IReadOnlyList<int>, Entry> With)
        : Field(Name, Label)
    {
        /// <summary>The words as a person reads them where they are chosen, in the order of the table.</summary>
        public IReadOnlyList<string> Choices { get; init; } = [];

        /// <summary>The words as they are told beside the entry, in the order of the table.</summary>
        public IReadOnlyList<string> SaidWords { get; init; } = [];

        internal override string? Weighed(Entry entry) => string.Join(',', Get(entry).Select(place => Table.Words[place]));

        /// <inheritdoc/>
        public override Entry Copied(Entry source, Entry target) => With(target, Get(source));
    }

    /// <summary>Parties by their ids, each once; none where nobody has said, and at least one where it is required.</summary>
    public sealed record Parties(
        string Name, string Label, Func<Entry, IReadOnlyList<string>> Get, Func<Entry, IReadOnlyList<string>, Entry> With)
        : Field(Name, Label)
    {
        // A comma within an id is doubled, so that no two lists have one text.
        internal override string? Weighed(Entry entry) =>
            string.Join(',', Get(entry).Select(id => id.Replace(",", ",,", StringComparison.Ordinal)));

        /// <inheritdoc/>
        public override Entry Copied(Entry source, Entry target) => With(target, Get(source));
    }

    /// <summary>How well a day is known, and which it is.</summary>
    internal static string? Spelled(DayFact day) => day switch
    {
        DayFact.Exact exact => LawText.IsoDay(exact.Day),
        DayFact.Between between => $"{LawText.IsoDay(between.First)}/{LawText.IsoDay(between.Last)}",
        _ => null,
    };
}
