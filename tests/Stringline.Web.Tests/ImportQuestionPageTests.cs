using System.Net;
using System.Text;
using Stringline.Law.Facts;
using Stringline.Tables.Sheets.Writing;

namespace Stringline.Web.Tests;

/// <summary>
/// What an import asks before it writes, on the page: told with its lines, confirmed by a tick, and nothing written without it.
/// </summary>
public sealed class ImportQuestionPageTests(ImportDesk desk) : IClassFixture<ImportDesk>
{
    private const string Ledger = """
        Job#;Project Name;Cnty;Sold To;Ord Typ;Inv #;Inv Dt;Ship Dt;Ext Amt
        {0};Oak Ridge Apts;Fresno;Tule Fog Carpentry, Inc.;INV;88001;07/05/26;07/02/26;$4,310.55
        {0};Oak Ridge Apts;Fresno;Tule Fog Carpentry, Inc.;X7;88003;07/09/26;07/09/26;($310.55)
        {0};Oak Ridge Apts;Fresno;Tule Fog Carpentry, Inc.;PMT;CK 1187;07/10/26;;-600.00
        {0};Oak Ridge Apts;Fresno;Tule Fog Carpentry, Inc.;INV;88009;07/12/26;07/11/26;-12.00
        {0};Oak Ridge Apts;Washoe;Tule Fog Carpentry, Inc.;INV;88011;13/45/26;02/30/26;12,x
        """;

    private static readonly KeyValuePair<string, string>[] Firm =
    [
        new("Choices.Claimant", "Marlpit Lumber Co."), new("Choices.Role", "supplier"), new("Choices.CustomerIs", "direct-contractor"),
            new("Choices.Work", "private"),
    ];

    private static byte[] Text(string job) => Encoding.UTF8.GetBytes(Ledger.Replace("{0}", job, StringComparison.Ordinal));

    [Fact]
    public async Task The_sheets_of_a_workbook_are_a_list()
    {
        using var workbook = new MemoryStream();
        await SheetWriter.WriteXlsxAsync(workbook,
            new Sheet("July deliveries", [new("Job number"), new("Invoice number"), new("Ship date"), new("Amount")], []), ["A note."]);
        Assert.Contains("""<option value="July deliveries">July deliveries</option>""",
            await desk.Page(await desk.Give("book.xlsx", workbook.ToArray())), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Types_are_said_on_the_page_and_negative_amounts_wait_for_a_yes()
    {
        var table = await desk.Give("ledger.csv", Text("ASK-1"));
        var columns = await desk.Page(table);
        Assert.Contains("What the types mean", columns, StringComparison.Ordinal);
        Assert.Contains("""<option value="payment" selected="selected">payment</option>""", columns, StringComparison.Ordinal);

        var look = WebUtility.HtmlDecode(await desk.Look(table, [.. Firm, new("type1", "credit")]));
        Assert.Contains("1 row with negative amounts would be entered as credits.", look, StringComparison.Ordinal);
        Assert.Contains("Line 5", look, StringComparison.Ordinal);
        foreach (var fault in (string[])["12,x", "13/45/26", "02/30/26", "Washoe"])
            Assert.Contains(fault, look, StringComparison.Ordinal);
        Assert.DoesNotContain("should be:", look, StringComparison.Ordinal);
        Assert.DoesNotContain(desk.Tables.Folder, look, StringComparison.Ordinal);

        var refused = await desk.PressAndRead(table, "write");
        Assert.Contains("must be confirmed first", refused, StringComparison.Ordinal);
        Assert.Null(desk.Journal.Find("ASK-1"));

        await desk.Press(table, "write", new KeyValuePair<string, string>("Confirmed", "negative-amounts"));
        await desk.Ended(table);
        var entries = desk.Journal.Find("ASK-1")!.Job.Entries;
        Assert.Equal([310.55m, 12m], entries.OfType<Credited>().Select(entry => entry.Amount));
        Assert.Equal(600m, Assert.Single(entries.OfType<Paid>()).Amount);
    }
}
