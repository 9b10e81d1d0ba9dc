using Stringline.Office.Portfolio;
using Stringline.Law;
using Stringline.Tables.Sheets.Writing;
using Stringline.Law.Counting;
using Stringline.Store;

namespace Stringline.Web;

/// <summary>The desk's list as files for other programs. A further format is a further address here.</summary>
internal static class Exports
{
    /// <summary>Serves them.</summary>
    public static void MapExports(this WebApplication desk)
    {
        desk.MapGet("/calendar.ics", (HttpContext context, Desk office, string? customer, string? county, string? person, string? remedy) =>
        {
            var bytes = Whole(office, () =>
                DeskCalendar.Of(office.Journal, Filter(customer, county, person, remedy), office.Today, office.Settings.Reminders));
            context.Response.Headers.ContentDisposition = "inline; filename=\"days-to-act.ics\"";
            return Results.Bytes(bytes, "text/calendar; charset=utf-8");
        });
        desk.MapGet("/desk.csv", (HttpContext context, Desk office, string? customer, string? county, string? person, string? remedy) =>
        {
            var bytes = Whole(office, () => Csv(DeskSheet.All(office.Journal, Filter(customer, county, person, remedy))));
            context.Response.Headers.ContentDisposition = $"attachment; filename=\"desk-{LawText.IsoDay(office.Today)}.csv\"";
            return Results.Bytes(bytes, "text/csv; charset=utf-8");
        });
        desk.MapGet("/desk.xlsx", (HttpContext context, Desk office, string? customer, string? county, string? person, string? remedy) =>
        {
            var bytes = Whole(office, () => Xlsx(DeskSheet.All(office.Journal, Filter(customer, county, person, remedy))));
            context.Response.Headers.ContentDisposition = $"attachment; filename=\"desk-{LawText.IsoDay(office.Today)}.xlsx\"";
            return Results.Bytes(bytes, "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");
        });
    }

    // A file is made whole before its first byte is sent: what breaks off in the middle looks like a list that is short. Where something
    // damaged was met, which shows nothing, its jobs are assessed anew and the file is made again.
    private static byte[] Whole(Desk office, Func<byte[]> make)
    {
        var bytes = make();
        return office.Mend() ? make() : bytes;
    }

    private static byte[] Csv(IEnumerable<StepLine> lines)
    {
        using var text = new MemoryStream();
        SheetWriter.WriteCsv(text, DeskSheet.Of(lines));
        return text.ToArray();
    }

    private static byte[] Xlsx(IEnumerable<StepLine> lines)
    {
        using var workbook = new MemoryStream();
        SheetWriter.WriteXlsxAsync(workbook, DeskSheet.Of(lines), [Assessment.Caution]).GetAwaiter().GetResult();
        return workbook.ToArray();
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
}
