using System.Globalization;
using Stringline.Tables;
using Stringline.Tables.Sheets.Columns;
using Stringline.Tables.Sheets.Reading;

namespace Stringline.Office.Import;

/// <summary>Reads the rows of the tables into drafts of jobs.</summary>
internal sealed class TableReading(IProgress<ImportProgress>? progress)
{
    private const int Step = 10_000;

    private readonly Dictionary<string, (TableRows Table, int Line)> paymentsMet = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Job, string Invoice), (TableRows Table, int Line)> invoicesMet = [];
    private readonly Dictionary<(TableRows Table, RowKind Kind), (List<int> Minus, List<int> Plus)> signs = [];
    private readonly Dictionary<string, string> texts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> unnumbered = new(StringComparer.Ordinal);

    /// <summary>The jobs of which the tables speak, in the order in which they were met.</summary>
    public Dictionary<string, JobDraft> Drafts { get; } = new(StringComparer.Ordinal);

    /// <summary>Payments that name no job.</summary>
    public List<(PaymentRow Row, string? Customer)> WithoutJob { get; } = [];

    /// <summary>Reads one table.</summary>
    public void Read(TableRows table)
    {
        foreach (var row in table.Data())
        {
            switch (table.Header.Kind)
            {
                case TableKind.Jobs:
                    Job(table, row);
                    break;
                case TableKind.Invoices:
                    Invoice(table, row);
                    break;
                case TableKind.Payments:
                    Payment(table, row);
                    break;
                default:
                    throw new InvalidOperationException($"No such kind of table: {table.Header.Kind}.");
            }

            if (table.Rows % Step == 0)
                progress?.Report(new ImportProgress($"rows read of {table.Called}", table.Rows, 0));
        }

        RefuseTheOtherSign(table);
    }

    private void Job(TableRows table, SheetRow row)
    {
        if (Draft(table, row) is not { } draft)
            return;
        if (draft.Take(table, row) is { } contradiction)
            table.Refuse(row.Line, contradiction);
        if (draft.HeadRows.Count > 0)
            table.Refuse(row.Line,
                string.Create(CultureInfo.InvariantCulture, $"job {draft.Key} stands on "
                    + $"line {draft.HeadRows[0].Line} of {draft.HeadRows[0].Table.Called} already; there should be one row per job"));
        draft.HeadRows.Add((table, row.Line));
    }

    private void Invoice(TableRows table, SheetRow row)
    {
        var kind = table.TypeOf(row);
        if (kind == RowKind.LeftOut)
        {
            table.LeaveOut(row.Line, table.Text(row, Column.RowType)!);
            return;
        }

        if (kind is null)
            table.Refuse(row.Line, $"\"{table.Text(row, Column.RowType)}\" under \"{table.Name(Column.RowType)}\"; it should be a type of "
                + $"row that is known: invoice, credit memo or payment, or one that is said to be one of them");
        var draft = Draft(table, row);
        var number = Needed(table, row, Column.Invoice);
        var amount = NeededMoney(table, row);
        var furnished = table.Day(row, Column.Furnished);
        var until = table.Day(row, Column.Until);
        var billed = table.Day(row, Column.InvoiceDay);
        var day = (kind == RowKind.Payment ? billed : null) ?? furnished ?? billed;
        if (day is null && table.Header.Of(row, Column.Furnished).IsEmpty && table.Header.Of(row, Column.InvoiceDay).IsEmpty)
            table.Refuse(row.Line,
                $"no day under \"{table.Name(Column.Furnished)}\"{(table.Header.Has(Column.InvoiceDay)
                    ? $" or \"{table.Name(Column.InvoiceDay)}\"" : "")}; it should be the day on which it was furnished");
        if (until < day)
            table.Refuse(row.Line, $"work from {day} to {until}; it should be a last day that is not before the first");
        if (table.IsRefused(row.Line) && table.Text(row, Column.County) is { } county && JobHead.County(county) is null)
            table.Refuse(row.Line, $"\"{county}\" under \"{table.Name(Column.County)}\"; it should be one of California's 58 counties");
        if (draft is null || number is null || amount is null || day is null || table.IsRefused(row.Line))
            return;
        if (draft.Take(table, row) is { } contradiction)
        {
            table.Refuse(row.Line, contradiction);
            return;
        }

        if (kind == RowKind.Payment)
        {
            PaymentAmongInvoices(table, row, draft, number, day.Value, amount.Value);
            return;
        }

        if (!invoicesMet.TryAdd((draft.Key, number), (table, row.Line)))
        {
            var first = invoicesMet[(draft.Key, number)];
            table.Refuse(row.Line,
                string.Create(CultureInfo.InvariantCulture, $"invoice \"{number}\" of job {draft.Key} stands on "
                    + $"line {first.Line} of {first.Table.Called} already; there should be one row per invoice"));
            return;
        }

        if (furnished is null)
            table.DayOfInvoice++;
        if (kind == RowKind.Credit)
            Signs(table, row.Line, RowKind.Credit, amount.Value);
        draft.Invoices.Add(new InvoiceRow(table, row.Line, number, day.Value, until, amount.Value, Shared(table.Text(row, Column.Text)),
            kind == RowKind.Credit));
    }

    private void PaymentAmongInvoices(TableRows table, SheetRow row, JobDraft draft, string number, LocalDate day, decimal amount)
    {
        if (amount == 0)
        {
            table.Refuse(row.Line, "a payment of nothing; it should be more than zero");
            return;
        }

        Signs(table, row.Line, RowKind.Payment, amount);
        if (!paymentsMet.TryAdd(draft.Key + "\n" + number, (table, row.Line)))
        {
            var first = paymentsMet[draft.Key + "\n" + number];
            table.Refuse(row.Line,
                string.Create(CultureInfo.InvariantCulture,
                    $"payment \"{number}\" stands on line {first.Line} of {first.Table.Called} already; there "
                    + $"should be one row per payment"));
            return;
        }

        draft.Payments.Add(new PaymentRow(table, row.Line, number, day, Math.Abs(amount), Shared(table.Text(row, Column.Customer)), null,
            number));
    }

    // Of one type the amounts of a table have one sign: a row with the other is perhaps a check that was returned, or a credit that was
    // taken back.
    private void Signs(TableRows table, int line, RowKind kind, decimal amount)
    {
        if (!signs.TryGetValue((table, kind), out var met))
            signs[(table, kind)] = met = ([], []);
        (amount < 0 ? met.Minus : met.Plus).Add(line);
    }

    private void RefuseTheOtherSign(TableRows table)
    {
        foreach (var ((of, kind), (minus, plus)) in signs)
        {
            if (of != table || minus.Count == 0 || plus.Count == 0)
                continue;
            foreach (var line in plus)
                table.Refuse(line, $"a {RowKinds.Title(kind)} with a positive amount, where others of the table are negative; it should be "
                    + $"entered by hand if it was taken back or returned");
        }
    }

    private void Payment(TableRows table, SheetRow row)
    {
        var day = table.Day(row, Column.PaidDay);
        var amount = NeededMoney(table, row);
        if (day is null && table.Header.Of(row, Column.PaidDay).IsEmpty)
            table.Refuse(row.Line, $"no day under \"{table.Name(Column.PaidDay)}\"; it should be the day on which the money was received");
        if (amount <= 0)
            table.Refuse(row.Line, $"a payment of {amount}; it should be more than zero (a payment that was returned is taken back by "
                + $"hand)");
        var draft = table.Header.Of(row, Column.Job).IsEmpty ? null : Draft(table, row);
        if (day is null || amount is null || table.IsRefused(row.Line))
            return;
        var (customer, toward, number) =
            (Shared(table.Text(row, Column.Customer)), table.Text(row, Column.Toward), table.Text(row, Column.Payment));
        var key = Key(number, day.Value, amount.Value, toward, draft?.Key ?? customer ?? "");
        if (!paymentsMet.TryAdd((draft?.Key ?? customer) + "\n" + key, (table, row.Line)))
        {
            var first = paymentsMet[(draft?.Key ?? customer) + "\n" + key];
            table.Refuse(row.Line,
                string.Create(CultureInfo.InvariantCulture,
                    $"payment \"{number}\" stands on line {first.Line} of {first.Table.Called} already; there "
                    + $"should be one row per payment, or one for each invoice to which it was applied"));
            return;
        }

        var paid = new PaymentRow(table, row.Line, key, day.Value, amount.Value, customer, toward);
        if (draft is not null)
            draft.Payments.Add(paid);
        else
            WithoutJob.Add((paid, customer));
    }

    // A payment without a number is known by its day and sum; of equal ones, by their order in the files.
    private string Key(string? number, LocalDate day, decimal amount, string? toward, string whose)
    {
        var end = toward is null ? "" : "/" + toward;
        if (number is not null)
            return number + end;
        var key = $"{DayText.Write(day)}/{MoneyText.Write(amount)}{end}";
        var nth = unnumbered[whose + "\n" + key] = unnumbered.GetValueOrDefault(whose + "\n" + key) + 1;
        return nth == 1 ? key : string.Create(CultureInfo.InvariantCulture, $"{key}/{nth}");
    }

    private JobDraft? Draft(TableRows table, SheetRow row)
    {
        if (Needed(table, row, Column.Job) is not { } key)
            return null;
        if (!Drafts.TryGetValue(key, out var draft))
            Drafts[key] = draft = new JobDraft(key);
        return draft;
    }

    private static string? Needed(TableRows table, SheetRow row, Column column)
    {
        if (table.Text(row, column) is { } text)
            return text;
        table.Refuse(row.Line, $"nothing under \"{table.Name(column)}\"; it should be "
            + $"the {ColumnWords.Example(column, table.Header.Kind).ToLowerInvariant()}");
        return null;
    }

    private static decimal? NeededMoney(TableRows table, SheetRow row)
    {
        if (table.Header.Of(row, Column.Amount).IsEmpty)
            table.Refuse(row.Line, $"nothing under \"{table.Name(Column.Amount)}\"; it should be an amount");
        return table.Money(row, Column.Amount);
    }

    // Descriptions and names repeat: one copy of each is kept.
    private string? Shared(string? text)
    {
        if (text is null || texts.Count > 100_000)
            return text;
        if (texts.TryGetValue(text, out var known))
            return known;
        texts.Add(text, text);
        return text;
    }
}
