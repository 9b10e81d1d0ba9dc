using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Stringline.Office.Import;

namespace Stringline.Web.Tests;

/// <summary>
/// A table from the browser into the store. The expected counts are counted by hand in the tables below; the rules of what a request is
/// refused for come from RFC 7578 (the form), RFC 6266 (attachment) and WHATWG HTML § 9.2 (server-sent events).
/// </summary>
public sealed partial class ImportTests(ImportDesk desk) : IClassFixture<ImportDesk>
{
    // Four rows of data and a total: two jobs; one row has no amount that can be read.
    private const string Invoices = """
        Job number,Job name,County,Customer,Invoice number,Ship date,Invoice amount,Sales rep
        {0}-1,Brick Kiln Lane,Yolo,Tamarack Framing,I-1,03/02/2026,"1,200.00",Jo
        {0}-1,Brick Kiln Lane,Yolo,Tamarack Framing,I-2,03/09/2026,800.50,Jo
        {0}-2,Ferry Landing,Solano,Tamarack Framing,I-3,03/11/2026,450.00,Al
        {0}-2,Ferry Landing,Solano,Tamarack Framing,I-4,03/12/2026,forty,Al
        Total,,,,,,2450.50,
        """;

    [Fact]
    public async Task A_table_is_taken_looked_at_and_written_and_a_second_time_nothing_is_left_to_do()
    {
        var table = await desk.Give("ledger.csv", Text("LEDGER"));
        var columns = await desk.Page(table);
        Assert.Matches("<option value=\"invoice\" selected=\"selected\">Invoice number \\(needed\\)", columns);
        Assert.Contains("Sales rep", columns, StringComparison.Ordinal);
        Assert.Contains("<li>1,200.00</li>", columns, StringComparison.Ordinal);

        // The look: 3 new rows, 1 refused, the headers and the total left out; 6 rows in all. Nothing is written by it.
        var before = desk.Fingerprint();
        var look = await desk.Look(table, Firm);
        Assert.Contains("2 jobs would be added, 0 jobs extended", look, StringComparison.Ordinal);
        Assert.Equal(["3", "1", "1", "1", "6"], Counts(look));
        Assert.Contains("forty", look, StringComparison.Ordinal);
        Assert.Equal(before, desk.Fingerprint());

        var written = await desk.Do(table, "write");
        Assert.Contains("Written: 2 jobs added", written, StringComparison.Ordinal);
        Assert.Equal(["3", "1", "1", "1", "6"], Counts(written));
        foreach (var (key, name, entries) in (IEnumerable<(string, string, int)>)[("LEDGER-1", "Brick Kiln Lane", 2),
            ("LEDGER-2", "Ferry Landing", 1)])
        {
            var job = desk.Journal.Find(key)!;
            Assert.Equal(entries, job.Job.Entries.Count);
            Assert.Contains($"<a href=\"/job/{job.Tip.Id}\">{name}</a>", written, StringComparison.Ordinal);
        }

        // The table itself does not stay.
        Assert.False(File.Exists(desk.Tables.PathOf(desk.State(table))));

        var after = desk.Fingerprint();
        var again = await desk.Give("ledger.csv", Text("LEDGER"));
        Assert.Contains("There is nothing to write", await desk.Look(again, Firm), StringComparison.Ordinal);
        Assert.DoesNotContain("value=\"write\"", await desk.Page(again), StringComparison.Ordinal);
        await desk.Do(again, "write");
        Assert.Equal(after, desk.Fingerprint());
    }

    [Fact]
    public async Task New_jobs_are_assessed_without_being_asked_for()
    {
        var table = await desk.Give("soon.csv", Text("SOON"));
        await desk.Look(table, Firm);
        await desk.Do(table, "write");
        var job = desk.Journal.Find("SOON-1")!.Tip.Id;
        for (var tries = 0; tries < 100 && desk.Journal.ReadAssessed(job) is null; tries++)
            await Task.Delay(100, TestContext.Current.CancellationToken);
        Assert.NotNull(desk.Journal.ReadAssessed(job));
    }

    [Fact]
    public async Task All_refused_rows_are_in_the_file_to_download_with_line_and_reason()
    {
        const int Rows = 130;
        var csv = new StringBuilder("Job number,County,Invoice number,Ship date,Invoice amount\r\n");
        for (var i = 0; i < Rows; i++)
            csv.Append(System.Globalization.CultureInfo.InvariantCulture, $"BAD-1,Yolo,I-{i},not a day,10.00\r\n");
        var table = await desk.Give("bad.csv", Encoding.UTF8.GetBytes(csv.ToString()));
        var look = await desk.Look(table, Firm);

        // The page shows the first fifty, the file has all: a line of headers and a line for each row.
        Assert.Equal(50, RefusedLine().Count(look));
        Assert.Contains("And 80 more", look, StringComparison.Ordinal);
        using var answer =
            await desk.Browser.GetAsync(new Uri(table + "/refused.csv", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
        Assert.Equal("text/csv", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        var lines = (await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).Split("\r\n",
            StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(Rows + 1, lines.Length);
        Assert.Equal(Enumerable.Range(2, Rows), lines.Skip(1)
            .Select(line => int.Parse(line.Split(',')[0], System.Globalization.CultureInfo.InvariantCulture)));
    }

    [Theory]
    [InlineData("table.csv", "%PDF-1.7\n1 0 obj", "a PDF")]
    [InlineData("table.xlsx", "MZ\u0090\0\u0003\0\0\0", "a program")]
    [InlineData("table.xlsx", "PK\u0003\u0004 and no more", "a workbook that is cut off or damaged")]
    [InlineData("table.csv", "", "an empty file")]
    [InlineData("table.csv", "  \r\n\r\n", "a file with nothing but blanks")]
    [InlineData("table.csv", "<!DOCTYPE html><script>alert(1)</script>", "a web page")]
    [InlineData("table.csv", "a,b\u0001\u0002\n", "a file that is neither text nor a workbook")]
    public async Task A_file_that_is_no_table_is_refused_by_its_content(string name, string content, string words)
    {
        var before = desk.Tables.All().Count;
        using var answer = await desk.Send(name, Encoding.Latin1.GetBytes(content));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains(words, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(before, desk.Tables.All().Count);
        Assert.Equal(before, Directory.GetDirectories(desk.Tables.Folder).Length);
    }

    [Fact]
    public async Task A_table_that_is_too_large_is_refused_and_leaves_nothing_behind()
    {
        var row = Encoding.ASCII.GetBytes("J,Yolo,I,03/02/2026,1.00\r\n");
        var large = new byte[ImportDesk.Largest + 1];
        for (var i = 0; i < large.Length; i++)
            large[i] = row[i % row.Length];
        var before = Directory.Exists(desk.Tables.Folder) ? Directory.GetDirectories(desk.Tables.Folder).Length : 0;
        using var answer = await desk.Send("large.csv", large);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("larger than 1 MiB", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal);
        Assert.Equal(before, Directory.GetDirectories(desk.Tables.Folder).Length);
    }

    [Fact]
    public async Task Without_its_seal_no_form_of_the_import_is_taken()
    {
        var table = await desk.Give("sealed.csv", Text("SEALED"));
        await desk.Look(table, Firm);
        var (before, tables) = (desk.Fingerprint(), desk.Tables.All().Count);
        using (var upload = await desk.Send("unsealed.csv", Text("UNSEALED"), withSeal: false))
        {
            Assert.Equal(HttpStatusCode.BadRequest, upload.StatusCode);
            Assert.Contains("Nothing was written", await upload.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
                StringComparison.Ordinal);
        }

        using var write = await desk.Browser.PostAsync(new Uri(table, UriKind.Relative), new FormUrlEncodedContent([new("step", "write")]),
            TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.BadRequest, write.StatusCode);
        Assert.Equal(tables, desk.Tables.All().Count);
        Assert.Equal(ImportStep.Looked, desk.State(table).Step);
        Assert.Equal(before, desk.Fingerprint());
    }

    [Fact]
    public async Task The_waiting_place_is_not_served_and_its_names_are_no_paths()
    {
        var table = await desk.Give("../../etc/pass wd<script>.csv", Text("PATH"));
        var state = desk.State(table);
        Assert.Equal("pass wd-script.csv", state.File);
        foreach (var address in (string[])[table + "/" + state.File, table + "/state.json", "/import/..%2f..", "/import/"
            + new string('0', 32), "/import/" + new string('0', 32) + "/progress", table + "/refused.csv"])
        {
            using var answer = await desk.Browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        }
    }

    [Fact]
    public async Task Progress_comes_as_events_and_ends()
    {
        var table = await desk.Give("events.csv", Text("EVENTS"));
        await desk.Look(table, Firm);
        var held = desk.HoldStore();
        try
        {
            // The store is held until the first event was heard, so that the writing cannot be done before.
            await desk.Press(table, "write");
            using var answer = await desk.Browser.GetAsync(new Uri(table + "/progress", UriKind.Relative),
                HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);
            Assert.Equal("text/event-stream", answer.Content.Headers.ContentType!.MediaType);
            using var events = new StreamReader(await answer.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken));
            Assert.Equal("event: progress", await events.ReadLineAsync(TestContext.Current.CancellationToken));
            Assert.Matches("^data: \\{\"words\":\"Step [12] of 2: [^\"]+\",\"share\":[0-9]+\\}$",
                await events.ReadLineAsync(TestContext.Current.CancellationToken));
            Assert.Contains("meta http-equiv=\"refresh\"", await desk.Page(table), StringComparison.Ordinal);
            held.Dispose();
            Assert.EndsWith("event: end\ndata: {}\n\n", await events.ReadToEndAsync(TestContext.Current.CancellationToken),
                StringComparison.Ordinal);
        }
        finally
        {
            held.Dispose();
        }

        Assert.Equal(ImportStep.Written, desk.State(table).Step);
    }

    [Fact]
    public async Task A_second_import_is_told_to_wait_and_the_first_can_be_stopped()
    {
        var csv = new StringBuilder("Job number,County,Invoice number,Ship date,Invoice amount\r\n");
        for (var i = 0; i < 5_000; i++)
            csv.Append(System.Globalization.CultureInfo.InvariantCulture, $"ST-{i},Yolo,I-{i},03/02/2026,1.00\r\n");
        var first = await desk.Give("first.csv", Encoding.UTF8.GetBytes(csv.ToString()));
        var second = await desk.Give("second.csv", Text("SECOND"));
        await desk.Look(first, Firm);
        var before = desk.Fingerprint();

        // Somebody else holds the store, so the writing has to wait and cannot be done before it is stopped.
        using (desk.HoldStore())
        {
            await desk.Press(first, "write");
            Assert.Contains("one import at a time",
                await desk.PressAndRead(second, "look", Firm.Append(new("Kind", "invoices")).Concat(Columns)), StringComparison.Ordinal);
            await desk.Press(first, "stop");
        }

        await desk.Ended(first);
        Assert.Contains("It was stopped. Nothing was written.", await desk.Page(first), StringComparison.Ordinal);
        Assert.Equal(before, desk.Fingerprint());
    }

    [Fact]
    public async Task An_import_of_another_desk_on_the_store_is_waited_for()
    {
        var table = await desk.Give("other.csv", Text("OTHER"));
        using (new FileStream(Path.Combine(desk.Tables.Folder, "running"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None))
            Assert.Contains("Another desk on this store",
                await desk.PressAndRead(table, "look", Firm.Append(new("Kind", "invoices")).Concat(Columns)), StringComparison.Ordinal);
        Assert.Equal(ImportStep.Received, desk.State(table).Step);
    }

    [Fact]
    public async Task A_column_is_changed_by_hand_and_the_choice_is_kept_and_offered_again()
    {
        const string odd = "Nr,Where,Slip,Given,Worth\r\n{0},Yolo,S-1,03/02/2026,10.00\r\n";
        var table = await desk.Give("odd.csv", Encoding.UTF8.GetBytes(odd.Replace("{0}", "ODD-1", StringComparison.Ordinal)));
        Assert.Contains("headers do not show what the rows are", await desk.Page(table), StringComparison.Ordinal);
        await desk.Press(table, "again", [new("Kind", "invoices")]);
        var missing = await desk.Page(table);
        Assert.Contains("No column is understood as Job number, as Invoice number, as Invoice amount", missing, StringComparison.Ordinal);

        // The same meaning twice is refused.
        var twice = await desk.PressAndRead(table, "look", [new("Kind", "invoices"), new("c0", "job"), new("c1", "job")]);
        Assert.Contains("id=\"fault-c1\"", twice, StringComparison.Ordinal);

        KeyValuePair<string, string>[] chosen = [new("Kind", "invoices"), new("c0", "job"), new("c1", "county"), new("c2", "invoice"),
            new("c3", "furnished"), new("c4", "amount")];
        await desk.Press(table, "keep", [.. chosen, new("Name", "Odd books")]);
        var kept = Assert.Single(desk.Office.Settings.Mappings);
        Assert.Equal("Odd books", kept.Name);
        Assert.Contains("1 job would be added", await desk.Look(table, [.. chosen, .. Firm]), StringComparison.Ordinal);

        var next = await desk.Give("odd-april.csv", Encoding.UTF8.GetBytes(odd.Replace("{0}", "ODD-2", StringComparison.Ordinal)));
        Assert.Contains("Read by “Odd books”", await desk.Page(next), StringComparison.Ordinal);

        // The settings list it, hand it out as the command line takes it, keep it when others are changed, and delete it.
        Assert.Contains("Odd books", await desk.Page("/settings"), StringComparison.Ordinal);
        var json = await desk.Page("/settings/mapping?name=Odd%20books");
        Assert.Equal("Slip",
            Stringline.Tables.Sheets.Columns.MappingJson.Read(Encoding.UTF8.GetBytes(json),
                "columns.json").Headers[Tables.Sheets.Columns.Column.Invoice]);
        await desk.Press("/settings", "",
            [new("Form.Name", "Tamarack Office"), new("Form.Reminders", "7"), new("Form.MailBacklogDays", "42"),
                new("Form.IndexLagDays", "5"), new("Form.ReserveDays", "1")]);
        Assert.Equal("Tamarack Office", desk.Office.Settings.Name);
        Assert.Single(desk.Office.Settings.Mappings);
        await desk.Press("/settings?handler=DeleteMapping", "", [new("name", "Odd books")]);
        Assert.Empty(desk.Office.Settings.Mappings);
    }

    [Fact]
    public async Task A_column_that_is_not_to_be_used_is_not_though_its_words_are_known()
    {
        var table = await desk.Give("notes.csv",
            Encoding.UTF8
                .GetBytes("Job number,County,Invoice number,Ship date,Invoice "
                    + "amount,Notes\r\nNOTE-1,Yolo,I-1,03/02/2026,10.00,private\r\n"));
        Assert.Matches("<option value=\"text\" selected=\"selected\">", await desk.Page(table));
        await desk.Look(table, [new("Kind", "invoices"), new("c0", "job"), new("c1", "county"), new("c2", "invoice"),
            new("c3", "furnished"), new("c4", "amount"), new("c5", ""), .. Firm]);
        await desk.Do(table, "write");
        var entry = Assert.IsType<Stringline.Law.Facts.Furnished>(Assert.Single(desk.Journal.Find("NOTE-1")!.Job.Entries));
        Assert.Null(entry.Text);
    }

    [Fact]
    public async Task A_writing_that_was_cut_off_is_told_and_a_look_says_whether_it_was_done()
    {
        var table = await desk.Give("cut.csv", Text("CUT"));
        await desk.Look(table, Firm);
        desk.Tables.Keep(desk.State(table) with { Step = ImportStep.Writing });
        Assert.Contains("either all of it is in the store or nothing", await desk.Page(table), StringComparison.Ordinal);
        await desk.Press(table, "look");
        await desk.Ended(table);
        Assert.Contains("nothing is in the store", await desk.Page(table), StringComparison.Ordinal);
        Assert.Contains("Written: 2 jobs added", await desk.Do(table, "write"), StringComparison.Ordinal);

        var again = await desk.Give("cut.csv", Text("CUT"));
        await desk.Look(again, Firm);
        desk.Tables.Keep(desk.State(again) with { Step = ImportStep.Writing });
        await desk.Press(again, "look");
        await desk.Ended(again);
        Assert.Contains("all of it is in the store", await desk.Page(again), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_payment_without_a_job_is_shown_with_where_the_law_puts_it()
    {
        var invoices = await desk.Give("owed.csv", Text("PAY"));
        await desk.Look(invoices, Firm);
        await desk.Do(invoices, "write");
        var table = await desk.Give("payments.csv",
            Encoding.UTF8.GetBytes("Payment date,Received from,Payment amount\r\n04/01/2026,Tamarack Framing,100.00\r\n"));
        var look = await desk.Look(table, []);
        Assert.Contains("Payments that name neither job nor invoice", look, StringComparison.Ordinal);
        Assert.Contains("$100.00", look, StringComparison.Ordinal);
        Assert.Contains("1479", look, StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_page_of_the_import_has_script_or_style_inside_it()
    {
        var table = await desk.Give("plain.csv", Text("PLAIN"));
        foreach (var address in (string[])["/import", table])
        {
            var page = await desk.Page(address);
            Assert.DoesNotMatch("<script(?! src=)|<style| style=| on[a-z]+=", page);
            Assert.All(Fields().Matches(page), field => Assert.True(Labelled(page, field.Value), field.Value));
        }
    }

    private static KeyValuePair<string, string>[] Firm { get; } = [new("Choices.Claimant", "Quillback Lumber & Truss, Inc."),
        new("Choices.Role", "supplier"), new("Choices.CustomerIs", "subcontractor"), new("Choices.Work", "private")];

    private static KeyValuePair<string, string>[] Columns { get; } =
        [new("c0", "job"), new("c1", "jobName"), new("c2", "county"), new("c3", "customer"), new("c4", "invoice"), new("c5", "furnished"),
            new("c6", "amount")];

    private static byte[] Text(string prefix) => Encoding.UTF8.GetBytes(Invoices.Replace("{0}", prefix, StringComparison.Ordinal));

    private static List<string> Counts(string page) => [.. Count().Matches(page).Select(match => match.Groups[1].Value)];

    // HTML § 4.10.4: a field is labelled by the label around it or the one that names its id.
    private static bool Labelled(string page, string field) =>
        Id().Match(field) is { Success: true } id && page.Contains($"for=\"{id.Groups[1].Value}\"", StringComparison.Ordinal)
        || page[..page.IndexOf(field, StringComparison.Ordinal)] is var before
        && before.LastIndexOf("<label", StringComparison.Ordinal) > before.LastIndexOf("</label>", StringComparison.Ordinal);

    [GeneratedRegex("<td class=\"num\" data-label=\"Rows\">([^<]*)</td>")]
    private static partial Regex Count();

    [GeneratedRegex("data-label=\"Line\">")]
    private static partial Regex RefusedLine();

    [GeneratedRegex("<(?:input(?! type=\"hidden\"| name=\"__R)|select|textarea)[^>]*>")]
    private static partial Regex Fields();

    [GeneratedRegex(" id=\"([^\"]+)\"")]
    private static partial Regex Id();
}
