using Stringline.Law.Facts;

namespace Stringline.Spreadsheets.Import;

/// <summary>Counts of rows that became something.</summary>
internal sealed class Taken
{
    public Dictionary<TableRows, long> New { get; } = [];

    public Dictionary<TableRows, long> Changed { get; } = [];

    public Dictionary<TableRows, long> Unchanged { get; } = [];

    /// <summary>Keys of the jobs that are new.</summary>
    public List<string> NewJobs { get; } = [];

    public static void Count(Dictionary<TableRows, long> counts, TableRows table) => counts[table] = counts.GetValueOrDefault(table) + 1;
}

/// <summary>Makes the job file that a store is to be brought to, of what it has and what the tables say.</summary>
internal sealed class JobBuild(ImportRequest request, ISet<string> assumed)
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
        foreach (var row in draft.Invoices)
        {
            if (!row.Table.IsRefused(row.Line))
                Put(entries, keys, row.Table, row.Line, EntryKeys.Invoice(row.Invoice), Invoice(row), row.Invoice, taken, counts: true);
        }

        foreach (var row in draft.Payments)
        {
            if (row.Table.IsRefused(row.Line))
                continue;
            if (row.Toward is { } toward && keys.WithRef(toward) is null)
            {
                row.Table.Refuse(row.Line, $"a payment toward \"{toward}\", which job {draft.Key} does not have; should be: the number of an invoice of that job, imported first or in the same import");
                continue;
            }

            var paid = new Paid { Index = 0, On = DayFact.On(row.On), Amount = row.Amount, From = row.From, Toward = row.Toward };
            Put(entries, keys, row.Table, row.Line, EntryKeys.Payment(row.Key), paid, null, taken, row.Counts);
        }

        return head with { Entries = entries };
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
                    table.Refuse(line, fault);
                else
                    Taken.Count(Same(revised, stored) ? taken.Unchanged : taken.Changed, table);
            }

            return fault is null ? revised : stored;
        }

        var head = heads.New(draft, assumed, out var missing);
        foreach (var (table, line) in draft.HeadRows.Where(row => !row.Table.IsRefused(row.Line)))
        {
            if (missing is not null)
                table.Refuse(line, missing);
            else
                Taken.Count(taken.New, table);
        }

        if (missing is not null)
        {
            foreach (var row in draft.Invoices)
                row.Table.Refuse(row.Line, missing);
            foreach (var row in draft.Payments)
                row.Table.Refuse(row.Line, missing);
        }

        return head;
    }

    /// <summary>Whether the heads of two job files say the same.</summary>
    public static bool Same(JobFile a, JobFile b) => Exchange.JournalText.Head(a).AsSpan().SequenceEqual(Exchange.JournalText.Head(b));

    private static Entry Invoice(InvoiceRow row) => row.Amount < 0
        ? new Credited { Index = 0, On = DayFact.On(row.On), Amount = -row.Amount, Text = row.Text is null ? $"Credit {row.Invoice}" : $"Credit {row.Invoice}: {row.Text}" }
        : new Furnished { Index = 0, On = DayFact.On(row.On), Until = DayFact.On(row.Until ?? row.On), Amount = row.Amount, Text = row.Text, Ref = row.Invoice };

    private static void Put(List<Entry> entries, EntryKeys keys, TableRows table, int line, string id, Entry entry, string? reference, Taken taken, bool counts)
    {
        var made = keys.Of(id);
        if (made.Count == 0)
        {
            if (reference is not null && keys.WithRef(reference) is { } byHand)
            {
                if (!IsSame(byHand, entry))
                    table.Refuse(line, $"the job has \"{reference}\" already, entered by hand with another day, amount or text; should be: the same, or a correction by hand");
                else if (counts)
                    Taken.Count(taken.Unchanged, table);
                return;
            }

            Add(entry with { Index = entries.Count, Id = id });
            if (counts)
                Taken.Count(taken.New, table);
            return;
        }

        var last = made[^1];
        if (IsSame(last, entry))
        {
            if (counts)
                Taken.Count(taken.Unchanged, table);
        }
        else if (keys.Replacing(last) is { } later)
        {
            table.Refuse(line, $"differs from what was imported before, and that was {(later is Withdrawn ? "withdrawn" : "corrected")} by hand since ({later.Path}); should be: a correction by hand");
        }
        else
        {
            Add(entry with { Index = entries.Count, Id = EntryKeys.Version(id, made.Count), Supersedes = last.Id });
            if (counts)
                Taken.Count(taken.Changed, table);
        }

        void Add(Entry added)
        {
            entries.Add(added);
            keys.Add(added);
        }
    }

    // Equal in all that a row can say: its place, its name and what it replaces are the journal's.
    private static bool IsSame(Entry stored, Entry row) =>
        stored with { Index = 0, Id = null, Supersedes = null, Learned = null } == row with { Index = 0, Id = null, Supersedes = null, Learned = null };
}
