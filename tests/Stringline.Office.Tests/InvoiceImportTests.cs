using Stringline.Tables.Sheets;
using System.Text;
using Stringline.Law.Facts;
using Stringline.Tables.Sheets.Cells;
using Stringline.Tables.Sheets.Columns;
using Stringline.Office.Import;
using Stringline.Store;

namespace Stringline.Office.Tests;

/// <summary>One small file for each oddity of what accounting systems give. All names are invented.</summary>
public sealed class InvoiceImportTests : IDisposable
{
    private const string Plain = "Job No.,Job Name,Customer,Inv #,Delivery Date,Amount,Description\n";

    private readonly Desk desk = new();

    [Fact]
    public void A_plain_file_makes_jobs_and_entries()
    {
        var report =
            desk.Import("invoices.csv", Plain + "114,Alder Court,Hobart Framing,INV-1,3/2/2026,\"1,234.50\",Studs\n114,Alder Court,Hobart "
                + "Framing,INV-2,3/9/2026,80,\n115,Quay Lofts,Hobart Framing,INV-3,3/9/2026,70,Plates\n");
        var file = Assert.Single(report.Files);
        Assert.Equal((4, 3, 0, 1), (file.Rows, file.New, file.Refused.Count, file.Ignored.Count));
        Assert.Equal(2, report.JobsAdded);
        var job = desk.Journal.Find("114")!.Job;
        Assert.Equal("Alder Court", job.Name);
        Assert.Equal("Hobart Framing", job.Party(job.Claimant.HiredBy)!.Name);
        Assert.Equal(
            new Furnished { Index = 0, On = DayFact.On(new LocalDate(2026, 3, 2)), Until = DayFact.On(new LocalDate(2026, 3, 2)),
                Amount = 1234.50m, Text = "Studs", Ref = "INV-1", Id = "invoice:INV-1" },
            job.Entries[0]);
    }

    [Fact]
    public void Telephone_and_email_of_the_people_are_taken_beside_their_addresses_and_kept_where_a_later_table_is_silent()
    {
        const string Head = "Job No.,Customer,Customer Is,Customer Phone,Customer E-mail,Owner,Owner Address,Owner Telephone,Owner "
            + "Email,GC,GC Phone,Lender,Lender Email,Inv #,Delivery Date,Amount\n";
        desk.Import("invoices.csv", Head
            + "114,Hobart Framing,subcontractor,530 555 0101,office@hobart.example,Alder Court LLC,1 Alder Ct,530 555 "
            + "0102,own@alder.example,Sawpit Builders,530 555 0103,Granger Slough Bank,loans@granger.example,INV-1,3/2/2026,10\n");
        var job = desk.Journal.Find("114")!.Job;
        Assert.Equal(
            [
                ("Hobart Framing", "530 555 0101", "office@hobart.example"), ("Alder Court LLC", "530 555 0102", "own@alder.example"),
                ("Sawpit Builders", "530 555 0103", null), ("Granger Slough Bank", null, "loans@granger.example"),
            ],
            job.Parties.Select(party => (party.Name, party.Telephone, party.Email)));
        Assert.Equal("1 Alder Ct", job.Parties[1].Address);

        desk.Import("jobs.csv", "Job Number,Job Name,Customer,Owner,Owner Phone\n114,Alder Court,Hobart Framing,Alder Court LLC,530 555 "
            + "0199\n");
        job = desk.Journal.Find("114")!.Job;
        Assert.Equal(("530 555 0101", "office@hobart.example"), (job.Parties[0].Telephone, job.Parties[0].Email));
        Assert.Equal(("530 555 0199", "own@alder.example"), (job.Parties[1].Telephone, job.Parties[1].Email));
    }

    [Fact]
    public void Blank_lines_totals_and_repeated_headers_are_counted_and_left_out()
    {
        var report = desk.Import("invoices.csv", "Receivables of Marlpit Lumber\n\n" + Plain
            + "114,A,H,INV-1,3/2/2026,10,\n\n,,,,,,\n" + Plain
            + "114,A,H,INV-2,3/3/2026,20,\nTotal,,,,,30.00,\nJob 114 subtotal,,,,,30.00,\n,,,,Grand Total,30.00,\n");
        var file = Assert.Single(report.Files);
        Assert.Equal(11, file.Rows);
        Assert.Equal(2, file.New);
        Assert.Equal(3, file.Blank);
        Assert.Equal(["above the headers", "the headers", "the headers again", "a totals row", "a totals row", "a totals row"],
            file.Ignored.Select(row => row.As));
        Assert.Empty(file.Refused);
        Assert.Equal(file.Rows, file.Accounted);
    }

    [Fact]
    public void A_customer_called_total_is_no_totals_row()
    {
        var report = desk.Import("invoices.csv", Plain + "114,A,Total Concrete,INV-1,3/2/2026,10,\n114,A,Total Concrete,INV-2,,10,\n");
        Assert.Equal(1, report.Files[0].New);
        var refused = Assert.Single(report.Files[0].Refused);
        Assert.Equal(3, refused.Line);
        Assert.Contains("No day under \"Delivery Date\"", refused.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Refused_rows_lie_in_a_file_of_their_own_with_line_and_reason_and_can_be_mended()
    {
        var path = desk.File("march.csv", Plain
            + "114,A,H,INV-1,13/45/2026,10,\n114,A,H,INV-2,3/3/2026,\"1,23\",\n114,A,H,INV-3,3/3/2026,5,ok\n,A,H,INV-4,3/3/2026,5,\n");
        var report = desk.Import(Desk.Request(path));
        Assert.Equal([2, 3, 5], report.Files[0].Refused.Select(row => row.Line));
        var lines = File.ReadAllLines(Assert.Single(report.RefusedFiles));
        Assert.Equal("refused line,refused because,Job No.,Job Name,Customer,Inv #,Delivery Date,Amount,Description", lines[0]);
        Assert.StartsWith("2,", lines[1], StringComparison.Ordinal);
        Assert.Contains("13/45/2026", lines[1], StringComparison.Ordinal);
        Assert.Contains("it should be an amount such as", lines[2], StringComparison.Ordinal);
        Assert.EndsWith(".refused.csv", report.RefusedFiles[0], StringComparison.Ordinal);

        File.WriteAllText(report.RefusedFiles[0], string.Join('\n', lines).Replace("13/45/2026", "3/2/2026", StringComparison.Ordinal)
            .Replace(",\"1,23\",", ",123,", StringComparison.Ordinal));
        var again = desk.Import(Desk.Request(report.RefusedFiles[0]));
        Assert.Equal(2, again.Files[0].New);
        Assert.Equal(3, desk.Entries("114").Count);
    }

    [Theory]
    [InlineData("utf-8-mark")]
    [InlineData("windows-1252")]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    [InlineData("utf-16-no-mark")]
    public void Every_usual_encoding_is_read(string name)
    {
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        Encoding encoding = name switch
        {
            "utf-8-mark" => new UTF8Encoding(true),
            "windows-1252" => Encoding.GetEncoding(1252),
            "utf-16-no-mark" => new UnicodeEncoding(false, false),
            _ => Encoding.GetEncoding(name),
        };
        var text = Plain + "114,Peña Court,Muñoz & Söhne,INV-1,3/2/2026,10,“Studs” – 2×4\n";
        desk.Import(Desk.Request(desk.File("a.csv", [.. encoding.GetPreamble(), .. encoding.GetBytes(text)])));
        var job = desk.Journal.Find("114")!.Job;
        Assert.Equal("Peña Court", job.Name);
        Assert.Equal("Muñoz & Söhne", job.Parties[0].Name);
        Assert.Equal("“Studs” – 2×4", Assert.IsType<Furnished>(job.Entries[0]).Text);
    }

    [Theory]
    [InlineData(';')]
    [InlineData('\t')]
    [InlineData('|')]
    public void Other_marks_between_cells_are_seen(char mark)
    {
        var text = "Job,Invoice,Date,Amount\n114,INV-1,3/2/2026,\"1,000.00\"\n".Replace("\"1,000.00\"", "1,000.00",
            StringComparison.Ordinal);
        text = text.Replace("1,000.00", "1~000.00", StringComparison.Ordinal).Replace(',', mark).Replace('~', ',');
        var mapping = ColumnMapping.None with { Kind = TableKind.Invoices };
        Assert.Equal(1, desk.Import("a.txt", text, mapping).Files[0].New);
    }

    [Fact]
    public void A_second_import_changes_nothing()
    {
        var path = desk.File("a.csv", Plain + "114,A,H,INV-1,3/2/2026,10,x\n114,A,H,CM-1,3/4/2026,(5.00),back\n");
        desk.Import(Desk.Request(path));
        var seal = desk.Seal;
        var report = desk.Import(Desk.Request(path));
        Assert.Equal((0, 0, 2), (report.Files[0].New, report.Files[0].Changed, report.Files[0].Unchanged));
        Assert.Equal(0, report.Changes);
        Assert.Equal(seal, desk.Seal);
    }

    [Fact]
    public void A_changed_invoice_supersedes_the_one_before()
    {
        desk.Import("a.csv", Plain + "114,A,H,INV-1,3/2/2026,10,x\n");
        var report = desk.Import("b.csv", Plain + "114,A,H,INV-1,3/2/2026,12.50,x\n");
        Assert.Equal(1, report.Files[0].Changed);
        desk.Import("c.csv", Plain + "114,A,H,INV-1,3/2/2026,-3,x\n");
        var stored = desk.Journal.Find("114")!.Job.Entries;
        Assert.Equal(["invoice:INV-1", "invoice:INV-1#2", "invoice:INV-1#3"], stored.Select(entry => entry.Id));
        Assert.Equal(3m, Assert.IsType<Credited>(Assert.Single(desk.Entries("114"))).Amount);
    }

    [Fact]
    public void What_a_person_corrected_is_not_overwritten()
    {
        var path = desk.File("a.csv", Plain + "114,A,H,INV-1,3/2/2026,10,x\n");
        desk.Import(Desk.Request(path));
        var job = desk.Journal.Find("114")!;
        var byHand = new Furnished { Index = 1, On = DayFact.On(new LocalDate(2026, 3, 5)), Until = DayFact.On(new LocalDate(2026, 3, 5)),
            Amount = 10m, Ref = "INV-1", Id = "hand", Supersedes = "invoice:INV-1" };
        Assert.IsType<AppendOutcome.Appended>(desk.Journal.Append(job.Tip.Id, job.Tip.Sequence, [new JobChange.Happened(byHand)], "ana"));
        Assert.Equal(1, desk.Import(Desk.Request(path)).Files[0].Unchanged);
        var other = desk.Import("b.csv", Plain + "114,A,H,INV-1,3/2/2026,11,x\n");
        Assert.Contains("corrected by hand since", Assert.Single(other.Files[0].Refused).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_invoice_twice_in_a_file_is_refused_the_second_time()
    {
        var report =
            desk.Import("a.csv", Plain + "114,A,H,INV-1,3/2/2026,10,x\n115,B,H,INV-1,3/2/2026,10,x\n114,A,H,INV-1,3/2/2026,10,x\n");
        Assert.Equal(2, report.Files[0].New);
        Assert.Contains("stands on line 2", Assert.Single(report.Files[0].Refused).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_that_writes_the_day_first_is_not_read_month_first_by_chance()
    {
        var rows = "114,A,H,INV-1,3/4/2026,10,\n114,A,H,INV-2,25/4/2026,10,\n114,A,H,INV-3,5/5/2026,10,\n";
        var report = desk.Import("a.csv", Plain + rows);
        Assert.Equal([2, 3], report.Files[0].Refused.Select(row => row.Line));
        Assert.Contains("on line 3", report.Files[0].Refused[0].Why, StringComparison.Ordinal);
        var said = desk.Import("b.csv", Plain + rows, ColumnMapping.None with { Days = DayOrder.DayFirst });
        Assert.Empty(said.Files[0].Refused);
        Assert.Equal(DayFact.On(new LocalDate(2026, 4, 3)), desk.Entries("114").OfType<Furnished>()
            .First(entry => entry.Ref == "INV-1").On);
    }

    [Fact]
    public void Two_columns_of_the_same_name_must_be_told_apart()
    {
        const string Text = "Job No.,Inv #,Delivery Date,Amount,Amount\n114,INV-1,3/2/2026,10,99\n";
        var error = Assert.Throws<SheetException>(() => desk.Import("a.csv", Text));
        Assert.Contains("D and E", error.Message, StringComparison.Ordinal);
        var mapping = ColumnMapping.None with { Headers = new Dictionary<Column, string> { [Column.Amount] = "column E" } };
        desk.Import("a.csv", Text, mapping);
        Assert.Equal(99m, Assert.IsType<Furnished>(Assert.Single(desk.Entries("114"))).Amount);
    }

    [Fact]
    public void Other_headers_are_read_with_a_mapping_which_is_written_and_read_back_the_same()
    {
        var mapping = new ColumnMapping
        {
            Kind = TableKind.Invoices,
            Headers = new Dictionary<Column, string> { [Column.Job] = "Baustelle", [Column.Invoice] = "Beleg", [Column.Furnished] = "Tag",
                [Column.Amount] = "Summe" },
            Days = DayOrder.DayFirst,
            Sheet = "Blatt 1",
        };
        var read = MappingJson.Read(MappingJson.Write(mapping), "m.json");
        Assert.Equal(MappingJson.Write(mapping), MappingJson.Write(read));
        Assert.Equal(1, desk.Import("a.csv", "Baustelle,Beleg,Tag,Summe\n114,R-1,25.4.2026,10\n", read).Files[0].New);
        Assert.Contains("a field that a mapping has not",
            Assert.Throws<SheetException>(() => MappingJson.Read("{\"format\":\"stringline-columns/1\",\"colums\":{}}"u8.ToArray(),
                "m.json")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_dry_run_says_the_same_and_writes_nothing()
    {
        var path = desk.File("a.csv", Plain + "114,A,H,INV-1,3/2/2026,10,x\n114,A,H,INV-2,3/2/2026,ten,x\n");
        var dry = desk.Import(Desk.Request(path) with { DryRun = true });
        Assert.Equal((1, 1, 0), (dry.Files[0].New, dry.Files[0].Refused.Count, dry.Changes));
        Assert.Empty(dry.RefusedFiles);
        Assert.Null(desk.Journal.Find("114"));
        var real = desk.Import(Desk.Request(path));
        Assert.Equal((dry.Files[0].New, dry.JobsAdded), (real.Files[0].New, real.JobsAdded));
    }

    [Fact]
    public void A_stray_quote_costs_its_row_and_an_open_one_the_file()
    {
        var report = desk.Import("a.csv", Plain + "114,A,H,INV-1,3/2/2026,10,2\" pipe\n114,A,H,INV-2,3/2/2026,10,pipe\n");
        Assert.Equal(1, report.Files[0].New);
        Assert.Contains("A stray quote", Assert.Single(report.Files[0].Refused).Why, StringComparison.Ordinal);
        var open = Plain + "114,A,H,INV-3,3/2/2026,10,\"pipe\n"
            + string.Concat(Enumerable.Range(4, 60).Select(i => $"114,A,H,INV-{i},3/2/2026,10,pipe\n"));
        var error = Assert.Throws<SheetException>(() => desk.Import("b.csv", open));
        Assert.Contains("not closed", error.Message, StringComparison.Ordinal);
        Assert.Single(desk.Entries("114"));
    }

    [Fact]
    public void A_job_that_nothing_describes_is_refused_with_what_is_missing()
    {
        var path = desk.File("a.csv", Plain + "114,A,H,INV-1,3/2/2026,10,x\n");
        foreach (var (request, missing) in (List<(ImportRequest, string)>)
            [
                (Desk.Request(path) with { Claimant = null }, "--claimant"),
                (Desk.Request(path) with { County = null }, "--county"),
                (Desk.Request(path) with { CustomerIs = null }, "--customer-is"),
            ])
        {
            Assert.Contains(missing, Assert.Single(desk.Import(request).Files[0].Refused).Why, StringComparison.Ordinal);
        }

        Assert.Null(desk.Journal.Find("114"));
    }

    [Fact]
    public void Rows_of_a_job_must_agree_about_it()
    {
        var report =
            desk.Import("a.csv", Plain + "114,A,Hobart Framing,INV-1,3/2/2026,10,x\n114,A,Other Framing,INV-2,3/2/2026,10,x\n114,A,HOBART "
                + "FRAMING,INV-3,3/2/2026,10,x\n");
        Assert.Equal(2, report.Files[0].New);
        Assert.Contains("\"Other Framing\" under \"Customer\"", Assert.Single(report.Files[0].Refused).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void The_invoices_day_stands_where_no_day_of_furnishing_is_given_and_that_is_told()
    {
        var report =
            desk.Import("a.csv", "Job No.,Inv #,Invoice Date,Ship Date,Amount\n114,INV-1,3/9/2026,3/2/2026,10\n114,INV-2,3/9/2026,,10\n");
        Assert.Equal(1, report.Files[0].DayOfInvoice);
        Assert.Equal([new LocalDate(2026, 3, 2), new LocalDate(2026, 3, 9)], desk.Entries("114").Select(entry => entry.On.Earliest!.Value));
    }

    [Fact]
    public void A_table_of_jobs_makes_jobs_and_changes_them_later()
    {
        const string Headers =
            "Job Number,Job Name,Customer,Customer Is,Owner,General Contractor,Job Address,City,County,Contract Amount,Contract Date\n";
        desk.Import("jobs.csv", Headers + "114,Alder Court,Hobart Framing,subcontractor,Alder Court LLC,Brushline Builders,1 Quay "
            + "St,Davis,Yolo County,\"$84,250.00\",2/2/2026\n");
        var job = desk.Journal.Find("114")!.Job;
        Assert.Equal((84250m, new LocalDate(2026, 2, 2), "Yolo", 3),
            (job.Contract.Price, job.Contract.On, job.Work.Site.County, job.Parties.Count));
        var report =
            desk.Import("jobs.csv", Headers + "114,Alder Court,Hobart Framing,,Alder Court Two LLC,Brushline Builders,1 Quay "
                + "St,Davis,Yolo,84250,2/2/2026\n");
        Assert.Equal(1, report.Files[0].Changed);
        Assert.Equal("Alder Court Two LLC", desk.Journal.Find("114")!.Job.In(PartyCapacity.Owner)[0].Name);
        Assert.Equal(1, desk.Import(Desk.Request(report.Files[0].File)).Files[0].Unchanged);
    }

    [Fact]
    public void Files_that_are_no_tables_are_refused_whole()
    {
        Assert.Contains("no row of headers", Assert.Throws<SheetException>(() => desk.Import("a.csv", "hello\nworld\n")).Message,
            StringComparison.Ordinal);
        Assert.Contains("no row of headers", Assert.Throws<SheetException>(() => desk.Import("a.csv", "")).Message,
            StringComparison.Ordinal);
        Assert.Contains("no such file", Assert.Throws<SheetException>(() => desk.Import(Desk.Request("nowhere.csv"))).Message,
            StringComparison.Ordinal);
        var broken = desk.File("a.xlsx", "PK\u0003\u0004 not really");
        Assert.Contains("a workbook that cannot be read", Assert.Throws<SheetException>(() => desk.Import(Desk.Request(broken))).Message,
            StringComparison.Ordinal);
        Assert.Contains("--as", Assert.Throws<SheetException>(() =>
            desk.Import("a.csv", "Job,Invoice,Date,Amount\n114,1,3/2/2026,5\n")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_journal_refuses_is_told_by_row_and_the_rest_goes_in()
    {
        var longKey = new string('9', Journals.LongestName + 1);
        var report = desk.Import("a.csv", Plain + $"{longKey},A,H,INV-1,3/2/2026,10,x\n115,B,H,INV-2,3/2/2026,10,x\n");
        Assert.Equal(1, report.Files[0].New);
        Assert.Contains("The journal refuses job", Assert.Single(report.Files[0].Refused).Why, StringComparison.Ordinal);
        Assert.True(desk.Journal.Check().IsWhole);
    }

    public void Dispose() => desk.Dispose();
}
