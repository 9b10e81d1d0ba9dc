using System.Globalization;
using System.Text;
using Stringline.Tables;
using Stringline.Law;
using Stringline.Tables.Sheets.Columns;
using Stringline.Office.Import;
using Stringline.Law.Counting;

namespace Stringline.Cli.Terminal;

/// <summary>What an import did, in words: every row accounted for.</summary>
internal static class ImportText
{
    private const int MostShown = 20;

    /// <summary>The text.</summary>
    public static string Of(ImportReport report, bool dryRun, string store)
    {
        var text = new StringBuilder();
        foreach (var file in report.Files)
            File(text, file, dryRun);
        if (report.Across.Count > 0)
            Across(text, report.Across);
        foreach (var question in report.Questions)
            Question(text, question, dryRun);
        foreach (var assumed in report.Assumed)
            text.Append(assumed).Append('\n');
        foreach (var path in report.RefusedFiles)
            text.Append("Refused rows with their reasons: ").Append(path).Append('\n');
        text.Append(dryRun
            ? $"{N(report.JobsAdded)} jobs would be added, {N(report.JobsExtended)} extended. Nothing was written.\n"
            : $"{N(report.JobsAdded)} jobs added, {N(report.JobsExtended)} extended; {N(report.Changes)} changes written to {store}.\n");
        return text.ToString();
    }

    private static void File(StringBuilder text, FileReport file, bool dryRun)
    {
        text.Append(CultureInfo.InvariantCulture, $"{file.File}: {MappingJson.Word(file.Kind)}, {file.Rows:N0} rows\n");
        var columns = file.Columns.Select(pair => $"{Signs.Spelled(pair.Header)} = {MappingJson.Word(pair.Column)}");
        text.Append("  columns: ").AppendJoin(", ", columns).Append('\n');
        if (file.ColumnsNotUsed.Count > 0)
            text.Append("  not used: ").AppendJoin(", ", file.ColumnsNotUsed.Select(Signs.Spelled)).Append('\n');
        Count(text, file.New, dryRun ? "would be new" : "new");
        Count(text, file.Changed, dryRun ? "would supersede what was imported before" : "supersede what was imported before");
        Count(text, file.Unchanged, "in the store just so");
        Count(text, file.Refused.Count, "refused");
        foreach (var ignored in file.Ignored.GroupBy(row => row.As))
            Count(text, ignored.Count(),
                $"ignored as {ignored.Key} (line {string.Join(", ", ignored.Take(8).Select(row => row.Line))}{(ignored.Count() > 8
                    ? ", ..." : "")})");
        Count(text, file.Blank, "blank");
        text.Append(CultureInfo.InvariantCulture, $"  {file.Accounted,12:N0} of {file.Rows:N0} rows accounted for\n");
        if (file.DayOfInvoice > 0)
            text.Append(CultureInfo.InvariantCulture, $"  {file.DayOfInvoice:N0} rows give no day of furnishing; the invoice's day stands "
                + $"for it. Days of notice run from what was furnished: mend them where they differ.\n");
        foreach (var refused in file.Refused.Take(MostShown))
            text.Append(CultureInfo.InvariantCulture, $"  line {refused.Line}: {refused.Why}\n");
        if (file.Refused.Count > MostShown)
            text.Append(CultureInfo.InvariantCulture, $"  ... and {file.Refused.Count - MostShown:N0} more\n");
    }

    private static void Question(StringBuilder text, ImportQuestion question, bool dryRun)
    {
        text.Append("Is that right? ").Append(question.Text).Append(dryRun ? $" If it is: --confirm {question.Id}\n" : " (confirmed)\n");
        foreach (var row in question.Lines)
            text.Append(CultureInfo.InvariantCulture, $"  line {row.Line}{(row.Told.Length > 0 ? ": " + row.Told : "")}\n");
        if (question.Count > question.Lines.Count)
            text.Append(CultureInfo.InvariantCulture, $"  ... and {question.Count - question.Lines.Count:N0} more\n");
    }

    private static void Across(StringBuilder text, IReadOnlyList<AcrossReport> payments)
    {
        text.Append("Payments that name neither job nor invoice, applied over the customer's jobs (Civ. Code § 1479, Three):\n");
        foreach (var payment in payments.Take(MostShown))
        {
            text.Append(CultureInfo.InvariantCulture, $"  line {payment.Line}: {payment.Amount:N2} of {Signs.Spelled(payment.Customer)}, ")
                .Append(CultureInfo.InvariantCulture, $"received {LawText.IsoDay(payment.Received)}\n");
            foreach (var part in payment.Parts)
                text.Append(CultureInfo.InvariantCulture,
                    $"    {part.Amount,14:N2} to job {part.Job}{(part.Ref is null ? "" : ", " + part.Ref)}: {part.Reason}\n");
        }

        if (payments.Count > MostShown)
            text.Append(CultureInfo.InvariantCulture, $"  ... and {payments.Count - MostShown:N0} more\n");
        text.Append("  If you knew from which job the money came, name the job: counting it elsewhere can cost that job's lien\n");
        text.Append("  (H & L Supply, Inc. v. Ewing (1967) 253 Cal.App.2d 283, rule from memory). ").Append(Assessment.Caution)
            .Append('\n');
    }

    private static void Count(StringBuilder text, long count, string what)
    {
        if (count > 0)
            text.Append(CultureInfo.InvariantCulture, $"  {count,12:N0} {what}\n");
    }

    private static string N(long number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
