using System.Text;

namespace Stringline.Tables.Sheets.Columns;

/// <summary>By which words of a header a column is known. Ordinary words of bookkeeping, common practice, no source.</summary>
internal static class ColumnWords
{
    // The more certain words first: of two columns that fit, the one with the earlier words is taken.
    private static readonly (Column Column, TableKind[] In, string[] Words)[] Known =
    [
        (Column.Job, [TableKind.Jobs, TableKind.Invoices, TableKind.Payments], ["job number", "job id", "job code", "project number",
            "project id", "project code", "job", "project"]),
        (Column.JobName, [TableKind.Jobs, TableKind.Invoices], ["job name", "project name", "job description", "project description",
            "job title"]),
        (Column.Customer, [TableKind.Jobs, TableKind.Invoices, TableKind.Payments], ["customer name", "customer", "client name", "client",
            "bill to name", "bill to", "sold to", "account name", "received from", "payer", "paid by"]),
        (Column.CustomerAddress, [TableKind.Jobs, TableKind.Invoices], ["customer address", "client address", "bill to address",
            "billing address"]),
        (Column.CustomerTelephone, [TableKind.Jobs, TableKind.Invoices], ["customer telephone", "customer phone",
            "customer telephone number", "customer phone number", "client telephone", "client phone", "client telephone number",
                "client phone number", "bill to telephone", "bill to phone", "bill to telephone number", "bill to phone number"]),
        (Column.CustomerEmail, [TableKind.Jobs, TableKind.Invoices], ["customer e mail", "customer email", "customer e mail address",
            "customer email address", "client e mail", "client email", "client e mail address", "client email address", "bill to e mail",
                "bill to email", "bill to e mail address", "bill to email address"]),
        (Column.CustomerIs, [TableKind.Jobs, TableKind.Invoices], ["customer is", "customer role", "customer type", "customer capacity"]),
        (Column.Street, [TableKind.Jobs, TableKind.Invoices], ["job address", "site address", "job site address", "jobsite address",
            "project address", "job street", "site street", "ship to address", "delivery address", "street"]),
        (Column.City, [TableKind.Jobs, TableKind.Invoices], ["job city", "site city", "job site city", "jobsite city", "project city",
            "ship to city", "city"]),
        (Column.Zip, [TableKind.Jobs, TableKind.Invoices], ["job zip", "site zip", "job site zip", "jobsite zip", "project zip",
            "job zip code", "site zip code", "ship to zip", "zip code", "zip", "postal code"]),
        (Column.County, [TableKind.Jobs, TableKind.Invoices], ["job county", "site county", "job site county", "jobsite county",
            "project county", "county"]),
        (Column.Apn, [TableKind.Jobs, TableKind.Invoices], ["apn", "parcel number", "assessors parcel number", "parcel"]),
        (Column.Owner, [TableKind.Jobs, TableKind.Invoices], ["owner name", "property owner", "reputed owner", "owner"]),
        (Column.OwnerAddress, [TableKind.Jobs, TableKind.Invoices], ["owner address", "property owner address"]),
        (Column.OwnerTelephone, [TableKind.Jobs, TableKind.Invoices], ["owner telephone", "owner phone", "owner telephone number",
            "owner phone number", "property owner telephone", "property owner phone", "property owner telephone number",
                "property owner phone number"]),
        (Column.OwnerEmail, [TableKind.Jobs, TableKind.Invoices], ["owner e mail", "owner email", "owner e mail address",
            "owner email address", "property owner e mail", "property owner email", "property owner e mail address",
                "property owner email address"]),
        (Column.DirectContractor, [TableKind.Jobs, TableKind.Invoices], ["direct contractor", "general contractor", "prime contractor",
            "gc"]),
        (Column.DirectContractorAddress, [TableKind.Jobs, TableKind.Invoices], ["direct contractor address", "general contractor address",
            "prime contractor address", "gc address"]),
        (Column.DirectContractorTelephone, [TableKind.Jobs, TableKind.Invoices], ["direct contractor telephone", "direct contractor phone",
            "direct contractor telephone number", "direct contractor phone number", "general contractor telephone",
                "general contractor phone", "general contractor telephone number", "general contractor phone number", "gc telephone",
                    "gc phone", "gc telephone number", "gc phone number"]),
        (Column.DirectContractorEmail, [TableKind.Jobs, TableKind.Invoices], ["direct contractor e mail", "direct contractor email",
            "direct contractor e mail address", "direct contractor email address", "general contractor e mail", "general contractor email",
                "general contractor e mail address", "general contractor email address", "gc e mail", "gc email", "gc e mail address",
                    "gc email address"]),
        (Column.Lender, [TableKind.Jobs, TableKind.Invoices], ["construction lender", "lender name", "lender"]),
        (Column.LenderAddress, [TableKind.Jobs, TableKind.Invoices], ["construction lender address", "lender address"]),
        (Column.LenderTelephone, [TableKind.Jobs, TableKind.Invoices], ["construction lender telephone", "construction lender phone",
            "construction lender telephone number", "construction lender phone number", "lender telephone", "lender phone",
                "lender telephone number", "lender phone number"]),
        (Column.LenderEmail, [TableKind.Jobs, TableKind.Invoices], ["construction lender e mail", "construction lender email",
            "construction lender e mail address", "construction lender email address", "lender e mail", "lender email",
                "lender e mail address", "lender email address"]),
        (Column.WorkKind, [TableKind.Jobs, TableKind.Invoices], ["kind of work", "work kind", "public or private", "private or public"]),
        (Column.ContractPrice, [TableKind.Jobs, TableKind.Invoices], ["contract price", "contract amount", "contract sum", "contract value",
            "contract total"]),
        (Column.ContractDay, [TableKind.Jobs, TableKind.Invoices], ["contract date", "contract day", "date of contract"]),
        (Column.Invoice, [TableKind.Invoices], ["invoice number", "invoice id", "ticket number", "delivery ticket number",
            "document number", "invoice", "ticket", "delivery ticket", "reference number", "reference"]),
        (Column.InvoiceDay, [TableKind.Invoices], ["invoice date", "date of invoice", "billing date", "bill date", "document date",
            "date"]),
        (Column.Furnished, [TableKind.Invoices], ["date furnished", "furnished", "furnished from", "delivery date", "date delivered",
            "delivered", "ship date", "date shipped", "shipped", "service date", "date of service", "work date", "date worked", "from date",
                "from"]),
        (Column.Until, [TableKind.Invoices], ["furnished until", "furnished to", "service through", "through date", "work through",
            "through", "to date", "until"]),
        (Column.Amount, [TableKind.Invoices], ["invoice amount", "invoice total", "amount billed", "billed amount", "billed",
            "total amount", "extended amount", "extended price", "extension", "amount", "net amount", "total"]),
        (Column.RowType, [TableKind.Invoices], ["row type", "transaction type", "document type", "order type", "entry type", "invoice type",
            "type"]),
        (Column.Text, [TableKind.Invoices, TableKind.Payments], ["description", "item description", "memo", "details", "item", "notes"]),
        (Column.Payment, [TableKind.Payments], ["payment number", "receipt number", "check number", "cheque number", "payment id",
            "transaction number", "transaction id", "reference number", "reference"]),
        (Column.PaidDay, [TableKind.Payments], ["payment date", "date paid", "date received", "received date", "receipt date", "check date",
            "deposit date", "paid date", "date"]),
        (Column.Amount, [TableKind.Payments], ["amount applied", "applied amount", "payment amount", "amount paid", "paid amount",
            "amount received", "received amount", "check amount", "paid", "amount", "total"]),
        (Column.Toward, [TableKind.Payments], ["applied to invoice", "invoice paid", "applied to", "invoice number", "invoice id",
            "invoice"]),
    ];

    private static readonly Dictionary<string, string> Short = new(StringComparer.Ordinal)
    {
        ["no"] = "number", ["num"] = "number", ["nbr"] = "number", ["nr"] = "number", ["inv"] = "invoice", ["amt"] = "amount",
            ["cust"] = "customer",
        ["proj"] = "project", ["desc"] = "description", ["addr"] = "address", ["dt"] = "date", ["pmt"] = "payment", ["ck"] = "check",
            ["chk"] = "check",
        ["ref"] = "reference", ["doc"] = "document", ["trans"] = "transaction", ["co"] = "county", ["del"] = "delivery",
            ["svc"] = "service", ["day"] = "date",
        ["cnty"] = "county", ["ext"] = "extended", ["typ"] = "type", ["ord"] = "order", ["trx"] = "transaction", ["txn"] = "transaction",
    };

    /// <summary>Where in the list of a column's words a header stands, from 0; null where it is not among them.</summary>
    public static int? Rank(Column column, TableKind kind, string header)
    {
        var folded = Fold(header);
        foreach (var (known, tables, words) in Known)
        {
            if (known == column && tables.Contains(kind) && Array.FindIndex(words, word => Fold(word) == folded) is >= 0 and var rank)
                return rank;
        }

        return null;
    }

    /// <summary>The columns that a table of some kind can have.</summary>
    public static IEnumerable<Column> Of(TableKind kind) => Known.Where(known => known.In.Contains(kind)).Select(known => known.Column);

    /// <summary>The columns without which a table of some kind cannot be read.</summary>
    public static IReadOnlyList<Column> Needed(TableKind kind) => kind switch
    {
        TableKind.Jobs => [Column.Job],
        TableKind.Invoices => [Column.Job, Column.Invoice, Column.Amount],
        TableKind.Payments => [Column.PaidDay, Column.Amount],
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind of table."),
    };

    /// <summary>The header by which a column would be known at once.</summary>
    public static string Example(Column column, TableKind kind)
    {
        var words = Known.First(known => known.Column == column && known.In.Contains(kind)).Words[0];
        return char.ToUpperInvariant(words[0]) + words[1..];
    }

    /// <summary>A header in small letters, without marks, short forms written out.</summary>
    public static string Fold(string header)
    {
        var text = new StringBuilder(header.Length);
        foreach (var c in header.Replace("#", " number ", StringComparison.Ordinal))
            text.Append(c is '\'' or '\u2019' or '.' ? "" : char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c).ToString() : " ");
        var words = text.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => Short.GetValueOrDefault(word, word));
        return string.Join(' ', words);
    }
}
