using System.Globalization;
using Stringline.Comparison;
using Stringline.Comparison.Jobs;
using Stringline.Comparison.Sheet;

const string Usage = "usage: Stringline.Comparison SOFFICE FOLDER [JOBS [ROUNDS]]   (20000 jobs, 7 rounds; at least 100 jobs and 3 rounds)";
const int Seed = 8204;

// For bench/portfolio: the rows to import, and the spreadsheet beside the portfolio.
if (args is ["invoices", var target, var jobsText, var rowsText])
{
    await InvoiceFiles.Write(target, int.Parse(jobsText, CultureInfo.InvariantCulture), int.Parse(rowsText, CultureInfo.InvariantCulture));
    return 0;
}

if (args is ["sheet", var soffice, var place, var sheetRows])
{
    await SheetTime.Print(soffice, place, int.Parse(sheetRows, CultureInfo.InvariantCulture), Seed);
    return 0;
}

if (args.Length is < 2 or > 4
    || !int.TryParse(args.ElementAtOrDefault(2) ?? "20000", NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count < 100
    || !int.TryParse(args.ElementAtOrDefault(3) ?? "7", NumberStyles.None, CultureInfo.InvariantCulture, out var rounds) || rounds < 3)
{
    await Console.Error.WriteLineAsync(Usage);
    return 2;
}

try
{
    var comparison = new Rounds(GeneratedJobs.Of(count, Seed), new Calc(args[0], args[1]), args[1]);
    await comparison.Run(rounds);
    Table.Write(Console.Out, comparison.Figures, count, rounds);
    return 0;
}
catch (Exception error) when (error is DisagreementException or InvalidOperationException or FormatException or IOException)
{
    await Console.Error.WriteLineAsync(error.Message);
    return 1;
}
