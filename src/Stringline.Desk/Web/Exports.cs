using System.Text;
using Stringline.Desk.Portfolio;
using Stringline.Exchange;
using Stringline.Law;
using Stringline.Law.Reasoning;
using Stringline.Spreadsheets.Writing;
using Stringline.Store;

namespace Stringline.Desk.Web;

/// <summary>The desk's list as files for other programs. A further format is a further address here.</summary>
internal static class Exports
{
    private const int Page = 5000;

    /// <summary>Serves them.</summary>
    public static void MapExports(this WebApplication desk)
    {
        desk.MapGet("/calendar.ics", (HttpContext context, Office office, string? customer, string? county, string? person, string? remedy) =>
        {
            context.Response.Headers.ContentDisposition = "inline; filename=\"days-to-act.ics\"";
            return Results.Bytes(DeskCalendar.Of(office.Journal, Filter(customer, county, person, remedy), office.Today, office.Settings.Reminders), "text/calendar; charset=utf-8");
        });
        desk.MapGet("/desk.csv", async (HttpContext context, Office office, string? customer, string? county, string? person, string? remedy) =>
        {
            context.Response.ContentType = "text/csv; charset=utf-8";
            context.Response.Headers.ContentDisposition = $"attachment; filename=\"desk-{LawText.IsoDay(office.Today)}.csv\"";
            await using var writer = new StreamWriter(context.Response.Body, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
            await writer.WriteAsync(CsvLine.Of([.. DeskSheet.Heads])).ConfigureAwait(false);
            foreach (var line in All(office.Journal, Filter(customer, county, person, remedy)))
                await writer.WriteAsync(Row(line)).ConfigureAwait(false);
        });
        desk.MapGet("/desk.xlsx", async (HttpContext context, Office office, string? customer, string? county, string? person, string? remedy) =>
        {
            context.Response.ContentType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
            context.Response.Headers.ContentDisposition = $"attachment; filename=\"desk-{LawText.IsoDay(office.Today)}.xlsx\"";
            // A workbook is a ZIP, which writes as it likes; the server takes only what does not wait.
            using var workbook = new MemoryStream();
            await SheetWriter.WriteXlsxAsync(workbook, DeskSheet.Of(All(office.Journal, Filter(customer, county, person, remedy))), [Assessment.Caution]).ConfigureAwait(false);
            await context.Response.Body.WriteAsync(workbook.ToArray()).ConfigureAwait(false);
        });
    }

    /// <summary>A filter as the address gives it: a blank value lets all pass.</summary>
    public static StepFilter Filter(string? customer, string? county, string? person, string? remedy) => new()
    {
        Customer = Blank(customer),
        County = Blank(county),
        Person = Blank(person),
        Remedy = Blank(remedy),
    };

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    /// <summary>Every step, watches included, page by page: what is past first, then by day, and of one day most dollars first.</summary>
    public static IEnumerable<StepLine> All(IJournal journal, StepFilter filter)
    {
        for (var skip = 0; ; skip += Page)
        {
            var lines = journal.Steps(new StepQuery(filter, new LocalDate(1, 1, 1), new LocalDate(9999, 12, 31), Page) { Watch = null, Skip = skip });
            foreach (var line in lines)
                yield return line;
            if (lines.Count < Page)
                break;
        }
    }

    private static string Row(StepLine line)
    {
        var step = line.Step;
        string?[] cells =
        [
            LawText.IsoDay(step.ActBy), DeskSheet.Overdue(line), step.Left, step.Outlook, step.Do, step.Remedy, step.Standing.Word(), line.Name, line.Key, line.Customer, line.County, line.Person,
            Dollars(step.Owed), Dollars(step.AtStake), step.Stakes, step.Reading, step.Section, LawText.IsoDay(line.AsOf),
        ];
        return CsvLine.Of([.. cells.Select(cell => cell ?? "")]);
    }

    private static string? Dollars(decimal? dollars) => dollars?.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture);
}
