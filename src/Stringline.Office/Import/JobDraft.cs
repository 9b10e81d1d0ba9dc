using System.Globalization;
using Stringline.Tables;
using Stringline.Tables.Sheets.Columns;
using Stringline.Tables.Sheets.Reading;

namespace Stringline.Office.Import;

/// <summary>What the tables say of one job.</summary>
/// <param name="key">Its number.</param>
internal sealed class JobDraft(string key)
{
    /// <summary>The columns that speak of the job itself.</summary>
    public static IReadOnlyList<Column> HeadColumns { get; } =
    [
        Column.JobName, Column.Customer, Column.CustomerAddress, Column.CustomerIs, Column.Street, Column.City, Column.Zip, Column.County,
            Column.Apn,
        Column.Owner, Column.OwnerAddress, Column.DirectContractor, Column.DirectContractorAddress, Column.Lender, Column.LenderAddress,
        Column.WorkKind, Column.ContractPrice, Column.ContractDay,
        Column.CustomerTelephone, Column.CustomerEmail, Column.OwnerTelephone, Column.OwnerEmail,
        Column.DirectContractorTelephone, Column.DirectContractorEmail, Column.LenderTelephone, Column.LenderEmail,
    ];

    private string?[]? head;

    /// <summary>Its number.</summary>
    public string Key => key;

    /// <summary>Its invoices, in the order of the files.</summary>
    public List<InvoiceRow> Invoices { get; } = [];

    /// <summary>Its payments.</summary>
    public List<PaymentRow> Payments { get; } = [];

    /// <summary>The rows of tables of jobs that speak of it: they may change a job that the store has.</summary>
    public List<(TableRows Table, int Line)> HeadRows { get; } = [];

    /// <summary>The first row that spoke of the job itself.</summary>
    public (TableRows Table, int Line)? FirstHead { get; private set; }

    /// <summary>What the tables say in a column of the job; null where nothing.</summary>
    public string? Head(Column column) => head?[At(column)];

    /// <summary>Takes what a row says of the job.</summary>
    /// <returns>Null where it fits what other rows said; else what does not.</returns>
    public string? Take(TableRows table, SheetRow row)
    {
        foreach (var column in HeadColumns)
        {
            if (Text(table, row, column) is not { } text)
                continue;
            head ??= new string?[HeadColumns.Count];
            FirstHead ??= (table, row.Line);
            var known = head[At(column)];
            if (known is not null && known != text && ColumnWords.Fold(known) != ColumnWords.Fold(text))
                return string.Create(CultureInfo.InvariantCulture, $"\"{text}\" under \"{table.Name(column)}\", where "
                    + $"job {Key} has \"{known}\" from line {FirstHead.Value.Line} of {FirstHead.Value.Table.Called}; it should be the "
                    + $"same on every row of a job");
            head[At(column)] ??= text;
        }

        return null;
    }

    // Amount and day in one spelling, whatever the file's.
    private static string? Text(TableRows table, SheetRow row, Column column) => column switch
    {
        _ when !table.Header.Has(column) => null,
        Column.ContractPrice => table.Money(row, column) is { } price ? MoneyText.Write(price) : null,
        Column.ContractDay => table.Day(row, column) is { } day ? DayText.Write(day) : null,
        _ => table.Text(row, column),
    };

    private static int At(Column column)
    {
        for (var i = 0; i < HeadColumns.Count; i++)
        {
            if (HeadColumns[i] == column)
                return i;
        }

        throw new ArgumentOutOfRangeException(nameof(column), column, "A column that does not speak of the job itself.");
    }
}
