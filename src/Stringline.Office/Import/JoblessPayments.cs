using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Tables.Sheets.Columns;
using Stringline.Store;

namespace Stringline.Office.Import;

/// <summary>
/// Finds the jobs of payments that name none: by their invoice, or by the order of law over the customer's jobs (Civ. Code § 1479).
/// </summary>
/// <param name="journal">The store.</param>
/// <param name="reading">What the tables say.</param>
/// <param name="build">Makes job files of it.</param>
/// <param name="calendar">The days on which the offices of a county are closed; what is secured depends on it.</param>
internal sealed class JoblessPayments(IJournal journal, TableReading reading, JobBuild build, Law.Counting.OpenDays calendar)
{
    private readonly Dictionary<string, JobFile?> jobs = new(StringComparer.Ordinal);

    /// <summary>Where the order of law put payments.</summary>
    public List<AcrossReport> Across { get; } = [];

    /// <summary>Gives every such payment to its job or jobs, or refuses its row.</summary>
    public void Apply()
    {
        if (reading.WithoutJob.Count == 0)
            return;
        var customers =
            reading.WithoutJob.Select(payment => Fold(payment.Customer)).Where(name => name.Length > 0).ToHashSet(StringComparer.Ordinal);
        var invoices = reading.WithoutJob.Where(payment => payment.Row.Toward is not null).Select(payment => payment.Row.Toward!)
            .ToHashSet(StringComparer.Ordinal);
        var (ofCustomer, withInvoice) = Find(customers, invoices);
        foreach (var (row, customer) in reading.WithoutJob.Where(payment => payment.Row.Toward is not null))
            ByInvoice(row, Fold(customer), ofCustomer, withInvoice);
        foreach (var group in reading.WithoutJob.Where(payment => payment.Row.Toward is null).GroupBy(payment => Fold(payment.Customer)))
        {
            foreach (var (row, customer) in group.OrderBy(payment => payment.Row.On).ThenBy(payment => payment.Row.Line))
                ByLaw(row, customer, ofCustomer.GetValueOrDefault(group.Key) ?? []);
        }
    }

    // The store is looked through once, and only what these payments ask for is kept of it.
    private (Dictionary<string, List<string>> OfCustomer, Dictionary<string, List<string>> WithInvoice) Find(HashSet<string> customers,
        HashSet<string> invoices)
    {
        var ofCustomer = new Dictionary<string, List<string>>(StringComparer.Ordinal);
        var withInvoice = new Dictionary<string, List<string>>(StringComparer.Ordinal);
        foreach (var stored in journal.ReadAll(JobsToRead.All))
        {
            var job = reading.Drafts.TryGetValue(stored.Tip.Key, out var draft) ? build.Build(draft, stored.Job, new Taken()) : stored.Job;
            Take(stored.Tip.Key, job);
        }

        var known = jobs.Keys.ToHashSet(StringComparer.Ordinal);
        foreach (var draft in reading.Drafts.Values.Where(draft => !known.Contains(draft.Key) && journal.Find(draft.Key) is null))
            Take(draft.Key, build.Build(draft, null, new Taken()));
        return (ofCustomer, withInvoice);

        void Take(string key, JobFile? job)
        {
            if (job is null)
                return;
            var wanted = false;
            if (Fold(job.Party(job.Claimant.HiredBy)?.Name) is { Length: > 0 } name && customers.Contains(name))
                wanted = Add(ofCustomer, name, key);
            foreach (var number in job.Entries.OfType<Furnished>().Select(entry => entry.Ref).Distinct())
            {
                if (number is not null && invoices.Contains(number))
                    wanted = Add(withInvoice, number, key);
            }

            if (wanted)
                jobs[key] = job;
        }
    }

    private void ByInvoice(PaymentRow row, string customer, Dictionary<string, List<string>> ofCustomer,
        Dictionary<string, List<string>> withInvoice)
    {
        var fit = withInvoice.GetValueOrDefault(row.Toward!) ?? [];
        if (customer.Length > 0 && fit.Count > 1)
            fit = [.. fit.Intersect(ofCustomer.GetValueOrDefault(customer) ?? [])];
        if (fit.Count == 1)
            Give(fit[0], row);
        else
            row.Table.Refuse(row.Line, fit.Count == 0
                ? $"a payment toward \"{row.Toward}\", which no job has; it should be the number of an invoice that is in the store or in "
                    + $"this import"
                : $"a payment toward \"{row.Toward}\", an invoice of several jobs ({string.Join(", ", fit.Take(5))}); it should be the "
                    + $"job's number too");
    }

    private void ByLaw(PaymentRow row, string? customer, List<string> keys)
    {
        if (keys.Count == 0)
        {
            row.Table.Refuse(row.Line, customer is null
                ? "a payment that names no job, no invoice and no customer; it should be one of them"
                : $"a payment by \"{customer}\", who is the customer of no job; it should be the name of a customer as the store has it, "
                    + $"or the job's number");
            return;
        }

        var before = keys.Select(key => (Key: key, Entry: Last(key, EntryKeys.Payment(row.Key)))).Where(part => part.Entry is not null)
            .ToList();
        if (before.Count > 0)
        {
            // What was applied once stays where it is: it cannot be moved without the debtor (Civ. Code § 1479, Two).
            if (before.Sum(part => part.Entry!.Amount) == row.Amount && before.TrueForAll(part => part.Entry!.On == DayFact.On(row.On)))
            {
                for (var i = 0; i < before.Count; i++)
                    Give(before[i].Key, row with { Amount = before[i].Entry!.Amount, From = before[i].Entry!.From, Counts = i == 0 });
            }
            else
            {
                row.Table.Refuse(row.Line, $"a payment that was imported before with another day or sum, and applied "
                    + $"to {string.Join(", ", before.Select(part => part.Key))}; it should be a correction by hand, with the debtor's "
                    + $"consent (Civ. Code § 1479)");
            }

            return;
        }

        List<JobFile> files = [.. keys.Select(key => jobs[key]!)];
        var applied = AcrossJobs.Of(files, row.On, row.Amount, calendar);
        if (applied.Left > 0)
        {
            row.Table.Refuse(row.Line, $"a payment that exceeds by {Tables.MoneyText.Write(applied.Left)} all that \"{customer}\" owed on "
                + $"that day on its {keys.Count} jobs; it should be the job or invoice it is for");
            return;
        }

        var first = true;
        foreach (var ofJob in applied.Parts.GroupBy(part => part.Job))
        {
            Give(keys[ofJob.Key], row with { Amount = ofJob.Sum(part => part.Amount), Counts = first });
            first = false;
        }

        Across.Add(new AcrossReport(row.Table.File, row.Line, customer ?? "", row.On, row.Amount,
            [.. applied.Parts.Select(part => new AcrossPart(keys[part.Job], part.Amount, part.Why, part.Due, part.Ref))]));
    }

    // The draft for the store, and the job file against which the next payment is reckoned.
    private void Give(string key, PaymentRow row)
    {
        if (!reading.Drafts.TryGetValue(key, out var draft))
            reading.Drafts[key] = draft = new JobDraft(key);
        draft.Payments.Add(row);
        var job = jobs[key]!;
        if (!job.Entries.Any(entry => entry.Id == EntryKeys.Payment(row.Key)))
            jobs[key] = job with { Entries =
                [.. job.Entries, new Paid { Index = job.Entries.Count, On = DayFact.On(row.On), Amount = row.Amount, From = row.From,
                    Toward = row.Toward, Id = EntryKeys.Payment(row.Key) }] };
    }

    private Paid? Last(string key, string id) => new EntryKeys(jobs[key]!.Entries).Of(id).LastOrDefault() as Paid;

    private static bool Add(Dictionary<string, List<string>> lists, string name, string key)
    {
        if (!lists.TryGetValue(name, out var list))
            lists[name] = list = [];
        list.Add(key);
        return true;
    }

    private static string Fold(string? name) => name is null ? "" : ColumnWords.Fold(name);
}
