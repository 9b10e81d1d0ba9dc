namespace Stringline.Law.Facts;

/// <summary>
/// A kind of entry, described once. The reader and the writer of job files, the format's description, the forms, the words for an entry,
/// the search and the order of weighing all come from it.
/// </summary>
public sealed class EntryKind : IPointer
{
    private readonly Func<int, DayFact, Entry> blank;

    /// <summary>Describes a kind.</summary>
    /// <param name="name">Its word in the job file.</param>
    /// <param name="inFormat">Its place among the kinds of the format, from 1; a new kind takes the next.</param>
    /// <param name="inJournal">Its place among the kinds where entries of one day are weighed, from 1; a new kind takes the next.</param>
    /// <param name="blank">An entry that says nothing but its place in the file and its day.</param>
    /// <param name="fields">Its own fields, in the order of the file.</param>
    internal EntryKind(string name, int inFormat, int inJournal, Func<int, DayFact, Entry> blank, params Field[] fields)
    {
        (Name, InFormat, InJournal, this.blank, Fields) = (name, inFormat, inJournal, blank, fields);
        (FormOrder, ToldOrder, TieOrder) = (fields, fields, fields);
    }

    /// <summary>Its word in the job file.</summary>
    public string Name { get; }

    /// <summary>Its place among the kinds of the format, from 1.</summary>
    public int InFormat { get; }

    /// <summary>Its place among the kinds where entries of one day are weighed, from 1.</summary>
    public int InJournal { get; }

    /// <summary>Its own fields, in the order of the file.</summary>
    public IReadOnlyList<Field> Fields { get; }

    /// <summary>What it means, for the format's description.</summary>
    public required string Meaning { get; init; }

    /// <summary>What a person looks for who wants to enter it.</summary>
    public required string Title { get; init; }

    /// <summary>Under which heading it is found.</summary>
    public required string Group { get; init; }

    /// <summary>What it is for, in one sentence or two.</summary>
    public required string Help { get; init; }

    /// <summary>The section; empty where the statute does not speak of it.</summary>
    public string Section { get; init; } = "";

    /// <summary>Whose day it is.</summary>
    public string DayLabel { get; init; } = "When it happened";

    /// <summary>Which answers the day takes.</summary>
    public DayRule Day { get; init; }

    /// <summary>Whether today stands in the field of the day: not where a day is read off a paper or told by others.</summary>
    public bool StartsToday { get; init; }

    /// <summary>What an entry of it is, in two to four words; <see cref="WordsOf"/> where that hangs on what it says.</summary>
    public string Words { get; init; } = "";

    /// <summary>What an entry of it is, in two to four words; null where all are called alike.</summary>
    public Func<Entry, string>? WordsOf { get; init; }

    /// <summary>The only kind of work on which it happens; null where it happens on all.</summary>
    public WorkKind? OnlyOn { get; init; }

    /// <summary>Whether it says nothing but which entry it takes back, and so must name one.</summary>
    public bool TakesBack { get; init; }

    /// <summary>Takes what its fields may not say beside each other; null where each may say what it likes.</summary>
    public Action<Entry, IEntryFaults>? Check { get; init; }

    /// <summary>Weighs two entries of one day before what else they say is compared; null where nothing goes before.</summary>
    internal Comparison<Entry>? Ties { get; init; }

    /// <summary>The fields in the order in which they are asked for; all of them.</summary>
    public IReadOnlyList<Field> FormOrder { get; private init; }

    /// <summary>The fields in the order in which they are told; those that are not named here are not told.</summary>
    public IReadOnlyList<Field> ToldOrder { get; private init; }

    /// <summary>The fields in the order in which entries that tie are weighed by them.</summary>
    internal IReadOnlyList<Field> TieOrder { get; private init; }

    /// <summary>Names of fields, where they are asked for in another order than the file's.</summary>
    internal string[] Form { init => FormOrder = Named(value); }

    /// <summary>Names of fields, where they are told in another order than the file's.</summary>
    internal string[] Told { init => ToldOrder = Named(value); }

    /// <summary>Names of fields, where they are weighed in another order than the file's.</summary>
    internal string[] Weighed { init => TieOrder = Named(value); }

    /// <summary>An entry that says nothing but its place in the file and its day; a reader fills in the rest.</summary>
    public Entry Blank(int index, DayFact on) => blank(index, on);

    /// <summary>One of its fields, or its day as <c>on</c>, to be pointed to.</summary>
    public EntryField At(string field) => field == "on" || Fields.Any(own => own.Name == field)
        ? new EntryField(this, field)
        : throw new ArgumentException($"\"{Name}\" has no field \"{field}\".", nameof(field));

    /// <summary>An entry of it that says a certain thing, to be pointed to.</summary>
    public EntrySaying Saying(string words) => new(this, words);

    private Field[] Named(string[] names) => [.. names.Select(name => Fields.Single(field => field.Name == name))];
}
