using System.Globalization;
using System.Text;
using SpreadCheetah;
using SpreadCheetah.Styling;

namespace Stringline.Comparison.Jobs;

/// <summary>
/// Rows of invoices as an accounting system might give them, in no order of jobs: as CSV and as a workbook. All names are invented.
/// </summary>
internal static class InvoiceFiles
{
    private static readonly string[] Headers =
        ["Job No.", "Job Name", "Customer", "County", "Inv #", "Delivery Date", "Amount", "Description"];
    private static readonly string[] Trees = ["Alder", "Birch", "Cedar", "Dogwood", "Elm", "Fir", "Hazel", "Juniper", "Larch", "Maple"];
    private static readonly string[] Places = ["Court", "Lofts", "Yard", "Terrace", "Wharf", "Row", "Mews", "Hall"];
    private static readonly string[] Trades = ["Framing", "Masonry", "Plumbing", "Drywall", "Roofing", "Concrete", "Glazing"];
    private static readonly string[] Counties = ["Yolo", "Alameda", "Kern", "Sonoma", "Placer", "San Diego"];
    private static readonly string[] Texts = ["Studs", "Block, 8 inch", "Rebar no. 4", "Sheathing", "Mortar", "Anchor bolts"];

    /// <summary>Writes <c>invoices.csv</c> and <c>invoices.xlsx</c> into a folder.</summary>
    public static async Task Write(string folder, int jobs, int rows)
    {
        await using var text = new StreamWriter(Path.Combine(folder, "invoices.csv"), append: false, new UTF8Encoding(true));
        await text.WriteAsync(string.Join(',', Headers) + "\r\n");
        await using var file = File.Create(Path.Combine(folder, "invoices.xlsx"));
        await using var book = await Spreadsheet.CreateNewAsync(file);
        await book.StartWorksheetAsync("Invoices");
        await book.AddHeaderRowAsync(Headers);
        var day = book.AddStyle(new Style { Format = NumberFormat.Custom("m/d/yyyy") });
        var random = new Random(20260501);
        for (var row = 0; row < rows; row++)
        {
            // Every job has a row before any has its second; a large stride puts neighbours far apart.
            var job = (int)(row * 7919L % jobs);
            var on = new DateTime(2026, 1, 2).AddDays((row / jobs * 9) + random.Next(9));
            var cents = random.Next(100, 500_000);
            string[] facts =
            [
                string.Create(CultureInfo.InvariantCulture, $"{100_000 + job}"), $"{Trees[job % 10]} {Places[job / 10 % 8]} {job}",
                $"{Trees[job % 7]} {Trades[job % 6]} {job % 2000}", Counties[job % 6],
                    string.Create(CultureInfo.InvariantCulture, $"INV-{row}"),
            ];
            await text.WriteAsync(string.Create(
                CultureInfo.InvariantCulture,
                $"{string.Join(',', facts)},{on:M/d/yyyy},\"${cents / 100m:#,##0.00}\",\"{Texts[row % 6]}\"\r\n"));
            await book.AddRowAsync([.. facts.Select(fact => new StyledCell(fact, null)), new(on, day), new(cents / 100m, null),
                new(Texts[row % 6], null)]);
        }

        await book.FinishAsync();
    }
}
