using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Plan;
using Stringline.Law.Reasoning;
using Stringline.Tables.Sheets.Columns;

namespace Stringline.Office.Import;

/// <summary>Counts of rows that became something.</summary>
internal sealed class Taken
{
    public Dictionary<TableRows, long> New { get; } = [];

    public Dictionary<TableRows, long> Changed { get; } = [];

    public Dictionary<TableRows, long> Unchanged { get; } = [];

    /// <summary>What is asked before it is written.</summary>
    public ImportQuestions Questions { get; } = new();

    /// <summary>Keys of the jobs that are new.</summary>
    public List<string> NewJobs { get; } = [];

    public static void Count(Dictionary<TableRows, long> counts, TableRows table) => counts[table] = counts.GetValueOrDefault(table) + 1;
}

/// <summary>Makes the job file that a store is to be brought to, of what it has and what the tables say.</summary>
internal sealed class JobBuild(ImportRequest request, ISet<Sentence> assumed, OpenDays calendar)
{
    private readonly JobHead heads = new(request);

    /// <summary>The job file; null where nothing of it can be taken, and then every row is refused.</summary>
    /// <param name="draft">What the tables say.</param>
    /// <param name="stored">What the store has; null where it does not have the job.</param>
    /// <param name="taken">Counts the rows.</param>
    public JobFile? Build(JobDraft draft, JobFile? stored, Taken taken)
    {
        var head = Head(draft, stored, taken);
        if (head is null)
            return null;
        var entries = new List<Entry>(head.Entries);
        var keys = new EntryKeys(entries);
        var added = new List<(TableRows Table, int Line, Entry Entry)>();
        foreach (var row in draft.Invoices)
        {
            if (row.Table.IsRefused(row.Line))
                continue;
            var id = IdOf(keys, EntryKeys.Invoice(row.Invoice), EntryKeys.Payment(row.Invoice), row.IsCredit
                || row.Table.Header.Has(Column.RowType));
            Put(entries, keys, new Rowed(row.Table, row.Line, id, Invoice(row), row.Invoice) { AsksNegative =
                row is { Amount: < 0, IsCredit: false } }, taken, added);
        }

        foreach (var row in draft.Payments)
        {
            if (row.Table.IsRefused(row.Line))
                continue;
            var directed = row.Toward ?? (IsTowardItsInvoice(draft, keys, row) ? row.Number : null);
            if (directed is { } toward && keys.WithRef(toward) is null)
            {
                row.Table.Refuse(row.Line, $"a payment toward \"{toward}\", which job {draft.Key} does not have; it should be the number "
                    + $"of an invoice of that job, imported first or in the same import");
                continue;
            }

            var paid = new Paid { Index = 0, On = DayFact.On(row.On), Amount = row.Amount, From = row.From, Toward = directed };
            var id = IdOf(keys, EntryKeys.Payment(row.Key), EntryKeys.Invoice(row.Number ?? ""), row.Number is not null
                && directed is null);
            Put(entries, keys, new Rowed(row.Table, row.Line, id, paid, null) { Counts = row.Counts }, taken, added);
        }

        var job = head with { Entries = entries };
        if (added.Count > 0)
            AskUnlikely(job, added, taken.Questions);
        return job;
    }

    // A ledger may write beside a payment the number of the invoice that it pays; a row with the invoice's own day and sum was that invoice
    // before.
    private static bool IsTowardItsInvoice(JobDraft draft, EntryKeys keys, PaymentRow row) => row.Number is { } number
        && (draft.Invoices.Exists(invoice => invoice.Invoice == number && !invoice.Table.IsRefused(invoice.Line))
            || (keys.Of(EntryKeys.Invoice(number)) is [.., Furnished stored]
                && (stored.Amount != row.Amount || stored.On != DayFact.On(row.On))));

    // A row of a ledger that was imported as another kind before is known by the id that it had then.
    private static string IdOf(EntryKeys keys, string own, string other, bool mayBeOther) =>
        mayBeOther && keys.Of(own).Count == 0 && keys.Of(other).Count > 0 ? other : own;

    private void AskUnlikely(JobFile job, List<(TableRows Table, int Line, Entry Entry)> added, ImportQuestions questions)
    {
        var unlikely = new Unlikely(job, request.Today ?? LocalDate.MinIsoValue.PlusYears(20), calendar);
        foreach (var (_, line, entry) in added)
        {
            foreach (var fact in unlikely.Of(entry))
            {
                if (request.Today is not null || fact.Id is not ("far-ahead" or "far-back"))
                    questions.Ask(fact.Id, line, fact.Text);
            }
        }
    }

    private JobFile? Head(JobDraft draft, JobFile? stored, Taken taken)
    {
        if (stored is not null)
        {
            if (draft.HeadRows.TrueForAll(row => row.Table.IsRefused(row.Line)))
                return stored;
            var revised = heads.Revised(stored, draft, out var fault);
            foreach (var (table, line) in draft.HeadRows.Where(row => !row.Table.IsRefused(row.Line)))
            {
                if (fault is not null)
                    table.RefuseAt(line, fault);
                else
                    Taken.Count(Same(revised, stored) ? taken.Unchanged : taken.Changed, table);
            }

            return fault is null ? revised : stored;
        }

        var head = heads.New(draft, assumed, out var missing);
        foreach (var (table, line) in draft.HeadRows.Where(row => !row.Table.IsRefused(row.Line)))
        {
            if (missing is not null)
                table.RefuseAt(line, missing);
            else
                Taken.Count(taken.New, table);
        }

        if (missing is not null)
        {
            foreach (var row in draft.Invoices)
                row.Table.RefuseAt(row.Line, missing);
            foreach (var row in draft.Payments)
                row.Table.RefuseAt(row.Line, missing);
        }

        return head;
    }

    /// <summary>Whether the heads of two job files say the same.</summary>
    public static bool Same(JobFile a, JobFile b) => Tables.JournalText.Head(a).AsSpan().SequenceEqual(Tables.JournalText.Head(b));

    private static Entry Invoice(InvoiceRow row) => row.Amount < 0 || row.IsCredit
        ? new Credited { Index = 0, On = DayFact.On(row.On), Amount = Math.Abs(row.Amount), Text = row.Text is null
            ? $"Credit {row.Invoice}" : $"Credit {row.Invoice}: {row.Text}" }
        : new Furnished { Index = 0, On = DayFact.On(row.On), Until = DayFact.On(row.Until ?? row.On), Amount = row.Amount, Text = row.Text,
            Ref = row.Invoice };

    /// <summary>What a row makes.</summary>
    /// <param name="Table">Its table.</param>
    /// <param name="Line">Its line.</param>
    /// <param name="Id">The id of its first entry.</param>
    /// <param name="Entry">The entry.</param>
    /// <param name="Reference">The reference by which an entry made by hand is known; null where none is.</param>
    private sealed record Rowed(TableRows Table, int Line, string Id, Entry Entry, string? Reference)
    {
        public bool AsksNegative { get; init; }

        public bool Counts { get; init; } = true;
    }

    private static void Put(List<Entry> entries, EntryKeys keys, Rowed row, Taken taken,
        List<(TableRows Table, int Line, Entry Entry)> added)
    {
        var (table, line, entry) = (row.Table, row.Line, row.Entry);
        var made = keys.Of(row.Id);
        if (made.Count == 0)
        {
            if (row.Reference is not null && keys.WithRef(row.Reference) is { } byHand)
            {
                if (!IsSame(byHand, entry))
                    table.Refuse(line, $"the job has \"{row.Reference}\" already, entered by hand with another day, amount or text; it "
                        + $"should be the same, or be corrected by hand");
                else if (row.Counts)
                    Taken.Count(taken.Unchanged, table);
                return;
            }

            Add(entry with { Index = entries.Count, Id = row.Id });
            if (row.Counts)
                Taken.Count(taken.New, table);
            return;
        }

        var last = made[^1];
        if (IsSame(last, entry))
        {
            if (row.Counts)
                Taken.Count(taken.Unchanged, table);
        }
        else if (keys.Replacing(last) is { } later)
        {
            table.Refuse(line,
                $"differs from what was imported before, and that was {(later is Withdrawn ? "taken back" : "corrected")} by hand since "
                    + $"({later.Path}); it should be corrected by hand");
        }
        else
        {
            if (last.GetType() != entry.GetType())
                taken.Questions.Ask(ImportQuestions.ChangedKind, line, $"{Kind(last)} before, {Kind(entry)} now");
            Add(entry with { Index = entries.Count, Id = EntryKeys.Version(row.Id, made.Count), Supersedes = last.Id });
            if (row.Counts)
                Taken.Count(taken.Changed, table);
        }

        void Add(Entry made)
        {
            if (row.AsksNegative)
                taken.Questions.Ask(ImportQuestions.Negative, line);
            entries.Add(made);
            keys.Add(made);
            added.Add((table, line, made));
        }
    }

    private static string Kind(Entry entry) => entry switch
    {
        Furnished => "an invoice",
        Credited => "a credit",
        Paid => "a payment",
        _ => "another entry",
    };

    // Equal in all that a row can say: its place, its name and what it replaces are the journal's.
    private static bool IsSame(Entry stored, Entry row) =>
        stored with { Index = 0, Id = null, Supersedes = null, Learned = null } == row with { Index = 0, Id = null, Supersedes = null,
            Learned = null };
}
