using Stringline.Tables.Sheets;
using Stringline.Law.Facts;
using Stringline.Tables.Sheets.Cells;
using Stringline.Tables.Sheets.Columns;
using Stringline.Office.Import;
using Stringline.Tables.Sheets.Reading;
using Stringline.Tables.Sheets.Writing;

namespace Stringline.Office.Tests;

/// <summary>
/// Rows that can be right and seldom are: told before anything is written, and confirmed by a person. All names are invented.
/// </summary>
public sealed class ImportQuestionTests : IDisposable
{
    private const string Heads = "Job#;Project Name;Jobsite Addr;Jobsite City;Zip;Cnty;Sold To;Ord Typ;Inv #;Inv Dt;Ship Dt;Ext Amt\n";

    private const string Ledger = Heads
        + "J-2001;Oak Ridge Apts;100 Oak Ridge Dr;Fresno;93720;Fresno;Tule Fog Carpentry, Inc.;INV;88001;10/05/26;10/02/26;$4,310.55\n"
        + "J-2001;Oak Ridge Apts;100 Oak Ridge Dr;Fresno;93720;Fresno;Tule Fog Carpentry, Inc.;INV;88002;10/20/2026;10/19/2026;2210.10\n"
        + "J-2001;Oak Ridge Apts;100 Oak Ridge Dr;Fresno;93720;Fresno;Tule Fog Carpentry, Inc.;CM;88003;10/25/2026;10/25/2026;($310.55)\n"
        + "J-2002;Piñon Court;9 Piñon Ct;Bakersfield;93301;Kern Co.;Dry Creek Joinery LLC;INV;88010;2026-11-02;2026-11-01;1,200.00\n"
        + "J-2002;Piñon Court;9 Piñon Ct;Bakersfield;93301;Kern Co.;Dry Creek Joinery LLC;PMT;CK 1187;11/15/2026;;-600.00\n"
        + "J-2003;No county house;1 Nowhere;Reno;89501;Washoe;Who Knows;INV;88011;13/45/2026;02/30/2026;12,x\n";

    // The same without a word on what the rows are: the column of types is not used.
    private static readonly ColumnMapping Untyped = ColumnMapping.None with { Headers = new Dictionary<Column,
        string> { [Column.RowType] = "" } };

    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    private ImportRequest Request(string text, ColumnMapping? mapping = null) =>
        Desk.Request(desk.File("ledger.csv", text)) with { County = null, Mapping = mapping ?? ColumnMapping.None, Confirmed = [],
            Today = new LocalDate(2026, 11, 29) };

    [Fact]
    public void Headers_of_a_ledger_are_known_and_show_invoices()
    {
        var file = Assert.Single(desk.Import(Request(Ledger) with { DryRun = true }).Files);
        Assert.Equal(TableKind.Invoices, file.Kind);
        Assert.Equal(
            [
                (Column.Job, "Job#"), (Column.JobName, "Project Name"), (Column.Street, "Jobsite Addr"), (Column.City, "Jobsite City"),
                    (Column.Zip, "Zip"), (Column.County, "Cnty"),
                (Column.Customer, "Sold To"), (Column.RowType, "Ord Typ"), (Column.Invoice, "Inv #"), (Column.InvoiceDay, "Inv Dt"),
                    (Column.Furnished, "Ship Dt"), (Column.Amount, "Ext Amt"),
            ],
            file.Columns);
        Assert.Empty(file.ColumnsNotUsed);
    }

    [Fact]
    public void A_typed_payment_goes_in_as_a_payment_and_a_credit_memo_as_a_credit()
    {
        var report = desk.Import(Request(Ledger));
        Assert.Empty(report.Questions);
        Assert.Equal(310.55m, Assert.Single(desk.Entries("J-2001").OfType<Credited>()).Amount);
        var paid = Assert.Single(desk.Entries("J-2002").OfType<Paid>());
        Assert.Equal((600m, new LocalDate(2026, 11, 15), "payment:CK 1187"), (paid.Amount, paid.On.Earliest, paid.Id));
        Assert.Empty(desk.Entries("J-2002").OfType<Credited>());
        Assert.Equal((0, 5), (desk.Import(Request(Ledger)).Files[0].New, desk.Import(Request(Ledger)).Files[0].Unchanged));
    }

    [Fact]
    public void Negative_amounts_that_no_type_explains_are_told_with_their_lines_and_wait_for_a_yes()
    {
        var question = Assert.Single(desk.Import(Request(Ledger, Untyped) with { DryRun = true }).Questions);
        Assert.Equal((ImportQuestions.Negative, "2 rows with negative amounts would be entered as credits."), (question.Id, question.Text));
        Assert.Equal([4, 6], question.Lines.Select(row => row.Line));
        var error = Assert.Throws<SheetException>(() => desk.Import(Request(Ledger, Untyped)));
        Assert.Contains("2 rows with negative amounts", error.Message, StringComparison.Ordinal);
        Assert.Null(desk.Journal.Find("J-2001"));
        desk.Import(Request(Ledger, Untyped) with { Confirmed = [ImportQuestions.Negative] });
        Assert.Equal(600m, Assert.Single(desk.Entries("J-2002").OfType<Credited>()).Amount);

        // What the store holds just so is not asked about again.
        Assert.Empty(desk.Import(Request(Ledger, Untyped)).Questions);
    }

    [Fact]
    public void A_row_that_was_a_credit_and_is_a_payment_now_is_asked_about_and_replaces_it()
    {
        desk.Import(Request(Ledger, Untyped) with { Confirmed = [ImportQuestions.Negative] });
        var question = Assert.Single(desk.Import(Request(Ledger) with { DryRun = true }).Questions);
        Assert.Equal((ImportQuestions.ChangedKind, new AskedRow(6, "a credit before, a payment now")),
            (question.Id, Assert.Single(question.Lines)));
        Assert.Throws<SheetException>(() => desk.Import(Request(Ledger)));
        desk.Import(Request(Ledger) with { Confirmed = [ImportQuestions.ChangedKind] });
        Assert.Equal(600m, Assert.Single(desk.Entries("J-2002").OfType<Paid>()).Amount);
        Assert.Empty(desk.Entries("J-2002").OfType<Credited>());
        Assert.Equal(5, desk.Import(Request(Ledger)).Files[0].Unchanged);
    }

    [Fact]
    public void A_payment_beside_the_number_of_its_invoice_is_directed_to_it()
    {
        desk.Import(Request(Heads + "J-1;A;1 A St;Fresno;93720;Fresno;Tule;INV;88001;10/05/26;10/02/26;100\nJ-1;A;1 A "
            + "St;Fresno;93720;Fresno;Tule;PMT;88001;10/25/26;;-60\n"));
        Assert.Single(desk.Entries("J-1").OfType<Furnished>());
        Assert.Equal(("88001", 60m), Assert.Single(desk.Entries("J-1").OfType<Paid>()) is var paid ? (paid.Toward, paid.Amount) : default);
    }

    [Fact]
    public void A_type_that_nobody_knows_is_refused_and_can_be_said_to_be_one_or_be_left_out()
    {
        var text = Ledger.Replace(";PMT;", ";ZAHLUNG;", StringComparison.Ordinal).Replace(";CM;", ";X9;", StringComparison.Ordinal);
        Assert.Equal([4, 6, 7], desk.Import(Request(text) with { DryRun = true }).Files[0].Refused.Select(row => row.Line));
        var mapping = ColumnMapping.None with { Types = new Dictionary<string,
            RowKind> { ["Zahlung"] = RowKind.Payment, ["X9"] = RowKind.LeftOut } };
        var read = MappingJson.Read(MappingJson.Write(mapping), "m.json");
        var report = desk.Import(Request(text, read));
        Assert.Equal([7], report.Files[0].Refused.Select(row => row.Line));
        Assert.Contains(report.Files[0].Ignored, row => row is { Line: 4, As: "of the type \"X9\"" });
        Assert.Single(desk.Entries("J-2002").OfType<Paid>());
    }

    [Fact]
    public void A_payment_with_the_other_sign_is_not_taken_for_a_second_payment()
    {
        var text = Ledger + "J-2002;Piñon Court;9 Piñon Ct;Bakersfield;93301;Kern Co.;Dry Creek Joinery LLC;PMT;CK 1187 "
            + "NSF;11/20/2026;;600.00\n";
        var refused = desk.Import(Request(text)).Files[0].Refused.Single(row => row.Line == 8);
        Assert.Contains("A payment with a positive amount", refused.Why, StringComparison.Ordinal);
        Assert.Single(desk.Entries("J-2002").OfType<Paid>());
    }

    [Fact]
    public void All_faults_of_a_refused_row_are_told_in_words_and_without_a_folder()
    {
        var refused = Assert.Single(desk.Import(Request(Ledger) with { DryRun = true }).Files[0].Refused);
        foreach (var part in (string[])["12,x", "13/45/2026", "02/30/2026", "Washoe"])
            Assert.Contains(part, refused.Why, StringComparison.Ordinal);
        Assert.DoesNotContain("should be:", refused.Why, StringComparison.Ordinal);
        var twice = Ledger.Replace(";88002;", ";88001;", StringComparison.Ordinal);
        var second = desk.Import(Request(twice) with { DryRun = true }).Files[0].Refused[0];
        Assert.Equal("Invoice \"88001\" of job J-2001 stands on line 2 of ledger.csv already; there should be one row per invoice.",
            second.Why);
    }

    [Fact]
    public void What_is_unlikely_is_asked_before_it_is_written()
    {
        var text = Ledger.Replace("-600.00", "-6000.00", StringComparison.Ordinal).Replace("10/02/26", "10/02/1999",
            StringComparison.Ordinal);
        var report = desk.Import(Request(text) with { DryRun = true });
        Assert.Equal(["paid-too-much", "far-back"], report.Questions.Select(question => question.Id));
        Assert.Equal([6, 2], report.Questions.Select(question => Assert.Single(question.Lines).Line));
        Assert.Throws<SheetException>(() => desk.Import(Request(text) with { Confirmed = ["far-back"] }));
        Assert.Equal(5, desk.Import(Request(text) with { Confirmed = ["far-back", "paid-too-much"] }).Files[0].New);
    }

    [Fact]
    public void A_column_of_types_that_are_no_types_of_rows_is_not_used()
    {
        var file = desk.Import(Request(Heads.Replace("Ord Typ", "Type",
            StringComparison.Ordinal) + "J-1;A;1 A St;Fresno;93720;Fresno;Tule;LUMBER;88001;10/05/26;10/02/26;100\n")).Files[0];
        Assert.Equal(1, file.New);
        Assert.Equal(["Type"], file.ColumnsNotUsed);
    }

    [Fact]
    public async Task The_sheets_of_a_workbook_are_listed_and_a_file_of_text_has_none()
    {
        using var workbook = new MemoryStream();
        await SheetWriter.WriteXlsxAsync(workbook, new Sheet("Deliveries", [new("a")], [[Cell.Of("b")]]), ["A note."]);
        Assert.Contains("Deliveries", new SheetFile(desk.File("book.xlsx", workbook.ToArray())).Sheets());
        Assert.Empty(new SheetFile(desk.File("plain.csv", Ledger)).Sheets());
    }
}
