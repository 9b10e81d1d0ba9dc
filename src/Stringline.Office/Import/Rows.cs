namespace Stringline.Office.Import;

/// <summary>A row of invoices that was read.</summary>
internal readonly record struct InvoiceRow(TableRows Table, int Line, string Invoice, LocalDate On, LocalDate? Until, decimal Amount,
    string? Text, bool IsCredit = false);

/// <summary>A row of payments that was read, or the part of one that falls on a job.</summary>
/// <param name="Table">Its table.</param>
/// <param name="Line">Its line.</param>
/// <param name="Key">By what it is known again when imported a second time.</param>
/// <param name="On">The day on which the money was received.</param>
/// <param name="Amount">Dollars and cents.</param>
/// <param name="From">Who paid.</param>
/// <param name="Toward">The invoice to which it was directed.</param>
/// <param name="Number">Of a payment in a table of invoices: its number there, by which it was perhaps imported as an invoice or credit
/// before; else null.</param>
/// <param name="Counts">Whether the row is counted with this part: one part of each row is.</param>
internal readonly record struct PaymentRow(TableRows Table, int Line, string Key, LocalDate On, decimal Amount, string? From,
    string? Toward, string? Number = null, bool Counts = true);
