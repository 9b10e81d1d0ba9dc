using System.Globalization;
using System.Text;
using CsCheck;
using Stringline.Law.Facts;
using Stringline.Tables.Sheets.Cells;
using Stringline.Tables.Sheets.Writing;
using Stringline.Testing;

namespace Stringline.Office.Tests;

/// <summary>Invoices written in random ways and imported equal the entries they were written from.</summary>
[Slow(Slow.Fuzz)]
public sealed class RandomTableTests
{
    private sealed record Drawn(int Job, LocalDate Day, long Cents, string Text);

    private static readonly string[] Texts = ["", "Studs, 2x4", "says \"ten\"", "Muñoz", "line\nbreak", "0012", "total loss"];

    private static readonly Gen<Drawn> Rows =
        from job in Gen.Int[1, 5]
        from day in Gen.Int[0, 700]
        from cents in Gen.Long[1, 99_999_999]
        from text in Gen.Int[0, Texts.Length - 1]
        select new Drawn(job, new LocalDate(2025, 1, 1).PlusDays(day), cents, Texts[text]);

    private static readonly Func<LocalDate, string>[] Days =
    [
        day => Format(day, "M/d/yyyy"), day => Format(day, "MM/dd/yyyy"), day => Format(day, "MM-dd-yy"), day => Format(day, "yyyy-MM-dd"),
        day => Format(day, "MMM d, yyyy"), day => Format(day, "d-MMM-yyyy"), day => day.ToDateTimeUnspecified().ToOADate()
            .ToString(CultureInfo.InvariantCulture),
        day => Format(day, "yyyyMMdd"),
    ];

    private static readonly Func<decimal, string>[] Sums =
    [
        sum => sum.ToString("0.00", CultureInfo.InvariantCulture), sum => sum.ToString("#,##0.00", CultureInfo.InvariantCulture),
        sum => "$" + sum.ToString("#,##0.00", CultureInfo.InvariantCulture), sum => sum.ToString("0.##", CultureInfo.InvariantCulture),
    ];

    [Fact]
    public void Import_of_generated_invoices_equals_direct_entries()
    {
        var gen = Gen.Select(Rows.List[1, 30], Gen.Int[0, Days.Length - 1], Gen.Int[0, Sums.Length - 1], Gen.Bool, Gen.Int[0, 1000]);
        gen.Sample(
            (rows, dayForm, sumForm, workbook, noise) =>
            {
                using var desk = new Desk();
                var path = workbook ? Book(desk, rows) : desk.File("r.csv", Csv(rows, Days[dayForm], Sums[sumForm], noise));
                var report = desk.Import(Desk.Request(path));
                var file = report.Files[0];
                Assert.Empty(file.Refused);
                Assert.Equal(rows.Count, file.New);
                Assert.Equal(file.Rows, file.Accounted);
                foreach (var job in rows.Select((row, i) => (row, i)).GroupBy(pair => pair.row.Job))
                {
                    var expected = job.Select((pair, index) => new Furnished
                    {
                        Index = index,
                        Id = $"invoice:R-{pair.i}",
                        Ref = $"R-{pair.i}",
                        On = DayFact.On(pair.row.Day),
                        Until = DayFact.On(pair.row.Day),
                        Amount = pair.row.Cents / 100m,
                        Text = pair.row.Text.Length == 0 ? null : pair.row.Text.Replace('\n', ' '),
                    });
                    Assert.Equal(expected, desk.Journal.Find($"J{job.Key}")!.Job.Entries);
                }

                var seal = desk.Seal;
                Assert.Equal(rows.Count, desk.Import(Desk.Request(path)).Files[0].Unchanged);
                Assert.Equal(seal, desk.Seal);
            },
            iter: 40,
            threads: 1);
    }

    private static string Csv(List<Drawn> rows, Func<LocalDate, string> day, Func<decimal, string> sum, int noise)
    {
        const string Headers = "Job #,Invoice Number,Delivery Date,Amount,Description\r\n";
        var text = new StringBuilder(noise % 2 == 0 ? "Report of invoices\r\n" + Headers : Headers);
        for (var i = 0; i < rows.Count; i++)
        {
            var row = rows[i];
            text.Append(CultureInfo.InvariantCulture,
                $"J{row.Job},R-{i},{Quoted(day(row.Day))},{Quoted(sum(row.Cents / 100m))},{Quoted(row.Text)}\r\n");
            if ((noise + i) % 7 == 0)
                text.Append(noise % 3 == 0 ? Headers : "\r\n");
        }

        return text.Append(CultureInfo.InvariantCulture, $"Grand Total,,,{Quoted(sum(rows.Sum(row => row.Cents) / 100m))},\r\n").ToString();
    }

    private static string Book(Desk desk, List<Drawn> rows)
    {
        using var stream = new MemoryStream();
        SheetWriter.WriteXlsxAsync(
            stream,
            new Sheet("Invoices",
                [new("Job #"), new("Invoice Number"), new("Delivery Date", Look.Day), new("Amount", Look.Money), new("Description")],
                rows.Select((row, i) => (IReadOnlyList<Cell>)[Cell.Of($"J{row.Job}"), Cell.Of($"R-{i}"), Cell.Of(row.Day),
                    Cell.Of(row.Cents / 100m), Cell.Of(row.Text)])),
            ["About these rows: invented."]).GetAwaiter().GetResult();
        return desk.File("r.xlsx", stream.ToArray());
    }

    private static string Quoted(string text) =>
        text.AsSpan().IndexOfAny(",\"\n") < 0 ? text : "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";

    private static string Format(LocalDate day, string form) => day.ToDateTimeUnspecified().ToString(form, CultureInfo.InvariantCulture);
}
