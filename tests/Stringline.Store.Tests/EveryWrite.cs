using System.Globalization;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Store.Tests;

/// <summary>One way to write to a store, and what it answers in a word.</summary>
/// <param name="Call">The call of <see cref="IJournal"/>.</param>
/// <param name="Name">What is done with it.</param>
/// <param name="Added">How many of those who do the same at once may be told "added"; the others "unchanged" or "refused".</param>
/// <param name="Do">Does it to the job that stood there when it was last looked at; null where the store is only being made.</param>
internal sealed record Write(string Call, string Name, int Added, Func<IJournal, JobTip?, string> Do)
{
    /// <summary>The key of the job that is written to.</summary>
    public const string Job = "at once";

    /// <summary>Every call that writes, in every way in which it does.</summary>
    public static readonly Write[] Every =
    [
        new(nameof(IJournal.Append), "append", 1, (journal, tip) =>
            Append(journal, tip, Samples.Entry(Samples.Delivery(7, reference: "INV-new")))),
        new(nameof(IJournal.Append), "append a correction", 1, (journal, tip) =>
            Append(journal, tip, Samples.Entry(Samples.Delivery(1, 7m, "INV-named") with { Supersedes = "named" }))),
        new(nameof(IJournal.Append), "take back", 1,
            (journal, tip) =>
                Append(journal, tip,
                    Samples.Entry(new Withdrawn { Index = 0, On = DayFact.On(new LocalDate(2026, 4, 1)), Supersedes = "named" }))),
        new(nameof(IJournal.Append), "append a paper", 1, (journal, tip) =>
            Append(journal, tip, new JobChange.Proved(2, [Samples.Picture(7)]))),
        new(nameof(IJournal.Append), "append a head", 1, (journal, tip) =>
            Append(journal, tip, new JobChange.Revised(Filled() with { Name = "Another name" }))),
        new(nameof(IJournal.Put), "put what is new", 1, (journal, _) =>
            Word(journal.Put(new KeyedJob("new", Samples.Long("new", 3)), "test"))),
        new(nameof(IJournal.Put), "put what is longer", 1, (journal, _) =>
            Word(journal.Put(new KeyedJob(Job, Filled() with { Entries = [.. Filled().Entries, Samples.Delivery(9)] }), "test"))),
        new(nameof(IJournal.Add), "add", 1, (journal, _) => Word(journal.Add(new KeyedJob("new", Samples.Long("new", 3)), "test"))),
        new(nameof(IJournal.PutMany), "put many", 1,
            (journal, _) =>
                Word(journal.PutMany(
                    [.. Enumerable.Range(0, 30)
                        .Select(i => new KeyedJob(string.Create(CultureInfo.InvariantCulture, $"{i}"), Samples.Long("x", 2)))],
                        "test"))),
        new(nameof(IJournal.WriteAssessed), "write what was found", int.MaxValue, (journal, tip) =>
            Done(() => journal.WriteAssessed(tip is null ? [] : [Found(tip)]))),
        new(nameof(IJournal.EraseAssessed), "erase what was found", int.MaxValue, (journal, _) => Done(() => journal.EraseAssessed([1]))),
        new(nameof(IJournal.Renew), "renew what is derived", int.MaxValue, (journal, _) => Done(journal.Renew)),
        new(nameof(IJournal.WriteSettings), "write settings", 1, (journal, _) => journal.WriteSettings(null, "{}") ? "added" : "refused"),
        new(nameof(IJournal.MakeSeal), "seal", int.MaxValue, (journal, _) => Done(() => journal.MakeSeal())),
    ];

    /// <summary>The job as it is before.</summary>
    public static JobFile Filled() =>
        Samples.Bare(Job) with { Entries = [Samples.Delivery(0), Samples.Delivery(1, reference: "INV-named") with { Id = "named" }] };

    /// <summary>What an assessment of it may have found.</summary>
    public static AssessedJob Found(JobTip tip) => new()
    {
        Job = tip.Id,
        Sequence = tip.Sequence,
        Rules = "1",
        AsOf = new LocalDate(2026, 6, 1),
        ActBy = new LocalDate(2026, 6, 21),
        AtStake = 100m,
        Standing = Standing.Open,
        What = "claim-of-lien.last-day",
        Findings = "{\"a\":1}"u8.ToArray(),
    };

    /// <inheritdoc/>
    public override string ToString() => Name;

    private static string Append(IJournal journal, JobTip? tip, JobChange change) =>
        journal.Append(tip?.Id ?? 1, tip?.Sequence ?? 1, [change], "test") switch
    {
        AppendOutcome.Appended => "added",
        AppendOutcome.SomeoneWroteFirst or AppendOutcome.Refused or AppendOutcome.NoSuchJob => "refused",
        var other => throw new InvalidOperationException($"No such outcome: {other}."),
    };

    private static string Word(PutOutcome outcome) => outcome switch
    {
        PutOutcome.Added or PutOutcome.Extended => "added",
        PutOutcome.Unchanged => "unchanged",
        PutOutcome.Refused => "refused",
        var other => throw new InvalidOperationException($"No such outcome: {other}."),
    };

    private static string Word(PutReport report) => report.Faults.Count > 0 ? "refused" : report.Changes > 0 ? "added" : "unchanged";

    private static string Done(Action write)
    {
        write();
        return "added";
    }
}
