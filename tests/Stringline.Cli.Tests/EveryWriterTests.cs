using System.Globalization;
using System.Text;
using Microsoft.Extensions.DependencyInjection;
using Stringline.Office.Portfolio;
using Stringline.Web;
using Stringline.Tables;
using Stringline.Tables.Calendar;
using Stringline.Law.Facts;
using Stringline.Tables.Sheets.Cells;
using Stringline.Tables.Sheets.Writing;
using Stringline.Store;
using Stringline.Store.Upkeep;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>
/// Every place that writes comma-separated text, a workbook or a calendar is found in the sources and fed texts that mean something in
/// the other grammar; a strict reader then finds the texts as they were, and nothing that a spreadsheet would take for a formula.
/// </summary>
[Slow(Slow.Lasting)]
public sealed class EveryWriterTests : IDisposable
{
    private const string AsOf = "2026-06-22";

    /// <summary>Texts that a job may hold, each of which means something to a spreadsheet, to XML or to a calendar.</summary>
    private static readonly string[] Hostile =
    [
        "=1+1", "+1+1", "-1+1", "@SUM(A1)", "=cmd|' /C calc'!A0", "=HYPERLINK(\"http://x.example\",\"a\")", "\u200D=1+1", "＝1+1", "＋1",
            "－1+2", "＠A1", "'=1+1", "''=1+1",
        "'plain", "-5", "'-5", "+1-916-555-0100", "=", "-", "=\"a\"", "a,b;c\"d", "\"quoted\"", "<b>&amp;]]>", "\\n\\,\\;", "BEGIN:VEVENT",
            "x;VALUE=DATE:y", "José e\u0301", "دانش\u200Cآموز",
        "👩\u200D🌾 Farms", new string('é', 120), "DDE(\"x\")", "%0A%0D", "#REF!", "{=1}", "=é,\"",
    ];

    // What writes, and which test below feeds it.
    private static readonly Dictionary<string, string> Writers = new()
    {
        ["Stringline.Store/Upkeep/Export.cs"] = nameof(The_lists_of_an_export),
        ["Stringline.Office/Import/RefusedFile.cs"] = nameof(The_refused_rows_of_an_import),
        ["Stringline.Tables/Sheets/Writing/SheetWriter.cs"] = nameof(The_sheets_of_the_command_line),
        ["Stringline.Cli/Commands/SheetCommands.cs"] = nameof(The_sheets_of_the_command_line),
        ["Stringline.Office/Batch/BatchReport.cs"] = nameof(The_lists_of_many_waivers),
        ["Stringline.Office/Batch/WaiverLedger.cs"] = nameof(The_lists_of_many_waivers),
        ["Stringline.Web/Exports.cs"] = nameof(The_downloads_of_the_desk),
        ["Stringline.Office/Portfolio/DeskCalendar.cs"] = nameof(The_downloads_of_the_desk),
        ["Stringline.Tables/Calendar/CalendarText.cs"] = nameof(No_forbidden_sign_reaches_a_workbook_or_a_calendar),
    };

    private readonly string folder = Scratch.Folder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_writer_in_the_sources_is_fed_here_and_none_writes_by_itself()
    {
        string[] signs = ["CsvLine.Of(", "WriteXlsxAsync(", "Spreadsheet.CreateNew", "CalendarText.Write(", "BEGIN:VCALENDAR"];
        string[] own =
            ["new CsvWriter", ".WriteField(", "string.Join(',',", "string.Join(\",\",", "string.Join(\";\",", "string.Join('\\t',"];
        var root = Repository.Path("src");
        var found = new List<string>();
        foreach (var file in Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal)))
        {
            var text = File.ReadAllText(file);
            if (!file.Contains("Stringline.Law", StringComparison.Ordinal) && !file.Contains("Stringline.Papers", StringComparison.Ordinal))
                Assert.DoesNotContain(own, sign => text.Contains(sign, StringComparison.Ordinal));
            if (signs.Any(sign => text.Contains(sign, StringComparison.Ordinal)))
                found.Add(Path.GetRelativePath(root, file).Replace('\\', '/'));
        }

        Assert.Equal(Writers.Keys.Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    [Fact]
    [Attack("formulas and other grammars in what is written")]
    public void The_lists_of_an_export()
    {
        using var journal = Filled();
        Export.To(journal, At("out"));
        var jobs = StrictReading.Csv(File.ReadAllBytes(Path.Combine(At("out"), "jobs.csv")));
        MustHold(jobs, "name", Hostile);
        MustHold(jobs, "key", Hostile.Select((text, i) => Key(text, i)));
        MustHold(StrictReading.Csv(File.ReadAllBytes(Path.Combine(At("out"), "papers.csv"))), "name", Hostile.Select(PaperName));
        AttackAttribute.Tried(Hostile.Length);
    }

    [Fact]
    [Attack("formulas and other grammars in what is written", 8)]
    public void The_sheets_of_the_command_line()
    {
        Filled().Dispose();
        Run("list", "--store", At("office"), "--as-of", AsOf, "--csv", At("list.csv"), "--xlsx", At("list.xlsx"));
        Run("calendar", "--store", At("office"), "--as-of", AsOf, "--out", At("days.ics"));
        MustHold(StrictReading.Csv(File.ReadAllBytes(At("list.csv"))), "Job", Hostile);
        Assert.Empty(Hostile.Except(StrictReading.Workbook(File.ReadAllBytes(At("list.xlsx")))));
        var told = StrictReading.Calendar(File.ReadAllBytes(At("days.ics")), "SUMMARY");
        Assert.All(Hostile, text => Assert.Contains(told, line => line.EndsWith(": " + text, StringComparison.Ordinal)));
        foreach (var text in Hostile.Take(8))
        {
            File.WriteAllBytes(At("job.json"), JobFileWriter.Write(Job(text)));
            foreach (var sheet in (string[])["waterfall", "days"])
            {
                Run(sheet, At("job.json"), "--as-of", AsOf, "--csv", At(sheet + ".csv"), "--xlsx", At(sheet + ".xlsx"), "--replace");
                MustBeInert(StrictReading.Csv(File.ReadAllBytes(At(sheet + ".csv"))));
                Assert.NotEmpty(StrictReading.Workbook(File.ReadAllBytes(At(sheet + ".xlsx"))));
            }
        }
    }

    [Fact]
    [Attack("formulas and other grammars in what is written")]
    public void The_refused_rows_of_an_import()
    {
        string[] import = ["--store", At("office"), "--new", "--as", "invoices", "--claimant", "Marlpit Lumber Co.", "--role", "supplier",
            "--county", "Yolo", "--customer-is", "subcontractor", "--as-of", AsOf];
        File.WriteAllText(At("in.csv"), "job number,customer,invoice number,invoice date,amount,\"=note\"\r\n"
            + string.Concat(Hostile.Select(text => CsvOf(NoJoiner(text), text, text, "no day", "5.00", text))));
        Assert.Equal(CommandLine.Refused, Status(["import", At("in.csv"), .. import]));
        var refused = StrictReading.Csv(File.ReadAllBytes(At("in.refused.csv")));
        MustHold(refused, "customer", Hostile);
        MustHold(refused, "invoice number", Hostile);
        Assert.Contains("'=note", refused[0]);

        // Mended and imported again, the cells are what they were: the customers' names, the numbers of the invoices.
        File.WriteAllText(At("mended.csv"), File.ReadAllText(At("in.refused.csv"))
            .Replace("no day", "2026-05-04", StringComparison.Ordinal));
        Assert.Equal(CommandLine.Done, Status(["import", At("mended.csv"), .. import]));
        using var journal = Journals.Open(At("office"), SystemClock.Instance);
        Assert.Equal(Hostile.Select(NoJoiner).Distinct().Order(StringComparer.Ordinal), journal.Tips().Select(tip => tip.Key)
            .Order(StringComparer.Ordinal));
        Assert.All(journal.ReadAll(JobsToRead.All), job => Assert.Contains(job.Job.Parties, party => NoJoiner(party.Name) == job.Tip.Key));
        AttackAttribute.Tried(Hostile.Length);
    }

    [Fact]
    [Attack("formulas and other grammars in what is written")]
    public void The_lists_of_many_waivers()
    {
        File.WriteAllText(At("jobs.csv"), "job,form,through,amount,maker,payee,disputed,payment-cleared,releases,through-again\r\n"
            + string.Concat(Hostile.Select(text => CsvOf(text, text, "2026-03-20", "1", "X", "", "", "", "", ""))));
        Status("packet", "waiver", "--jobs", At("jobs.csv"), "--out", At("out"), "--as-of", AsOf);
        MustHold(StrictReading.Csv(File.ReadAllBytes(Path.Combine(At("out"), "refused.csv"))), "job", Hostile.Select(text => text.Trim()));
        File.Copy(Repository.Path("data/demo/alder-court.json"), At("=evil.json"));
        File.WriteAllText(At("jobs.csv"),
            "job,form,through,amount,maker,payee,disputed,payment-cleared,releases,through-again\r\n=evil.json,8132,2026-03-20,12000.50,X,,,,26430.50,\r\n");
        Assert.Equal(CommandLine.Done, Status("packet", "waiver", "--jobs", At("jobs.csv"), "--out", At("out2"), "--as-of", AsOf));
        Assert.Equal(CommandLine.Done, Status("packet", "waiver", "--jobs", At("jobs.csv"), "--out", At("out2"), "--as-of", AsOf));
        MustHold(StrictReading.Csv(File.ReadAllBytes(Path.Combine(At("out2"), "made.csv"))), "job", ["=evil.json"]);
        AttackAttribute.Tried(Hostile.Length);
    }

    [Fact]
    [Attack("formulas and other grammars in what is written")]
    public async Task The_downloads_of_the_desk()
    {
        Filled().Dispose();
        var desk = DeskHost.Build(new DeskOptions(At("office"), 0) { AsOf = new LocalDate(2026, 6, 22) }, SystemClock.Instance);
        await using var closing = desk;
        new Portfolio(desk.Services.GetRequiredService<IJournal>()).RefreshStale(new LocalDate(2026, 6, 22), 2,
            stop: TestContext.Current.CancellationToken);
        await desk.StartAsync(TestContext.Current.CancellationToken);
        using var browser = new HttpClient { BaseAddress = new Uri(DeskHost.AddressOf(desk)) };
        await browser.GetStringAsync(new Uri(DeskHost.EntryOf(desk)), TestContext.Current.CancellationToken);
        Task<byte[]> Load(string name) => browser.GetByteArrayAsync(new Uri(name, UriKind.Relative), TestContext.Current.CancellationToken);
        MustHold(StrictReading.Csv(await Load("desk.csv")), "Job", Hostile);
        Assert.Empty(Hostile.Except(StrictReading.Workbook(await Load("desk.xlsx"))));
        var told = StrictReading.Calendar(await Load("calendar.ics"), "SUMMARY");
        Assert.All(Hostile, text => Assert.Contains(told, line => line.EndsWith(": " + text, StringComparison.Ordinal)));
        await desk.StopAsync(TestContext.Current.CancellationToken);
        AttackAttribute.Tried(Hostile.Length);
    }

    // What no new job may hold can stand in a journal of an earlier version. XML 1.0 § 2.2 forbids some of it, so that a workbook with it
    // is no workbook.
    [Fact]
    public async Task No_forbidden_sign_reaches_a_workbook_or_a_calendar()
    {
        string[] forbidden = ["\uFFFE", "\uFFFF", "\u0000", "\u0001", "\u0008", "\u000B", "\u001F", "\uFDD0", "\uFDEF", "\U0001FFFE",
            "\U0010FFFF", "\uD800", "\uDC00", "\uDC00\uD800"];
        foreach (var sign in forbidden)
        {
            var text = $"=a{sign}b";
            using var book = new MemoryStream();
            await SheetWriter.WriteXlsxAsync(book, new Sheet("S", [new("h")], [[Cell.Of(text)]]), [text]);
            Assert.Equal(2, StrictReading.Workbook(book.ToArray()).Count(there => there == "=ab"));
            var day = new CalendarDay("1", "f", new LocalDate(2026, 7, 1), "Do", text, 1) { Remedy = text, County = text, Stakes = text };
            var calendar = CalendarText.Write([day], new LocalDate(2026, 6, 22), [3]);
            Assert.Equal(["Do: =ab"], StrictReading.Calendar(calendar, "SUMMARY"));
            Assert.Equal(["=ab County"], StrictReading.Calendar(calendar, "LOCATION"));
        }
    }

    private IJournal Filled()
    {
        var journal = Journals.Open(At("office"), SystemClock.Instance, OpenStore.OrMakeOnWriting);
        Assert.Empty(journal.PutMany(Hostile.Select((text, i) => new KeyedJob(Key(text, i), Job(text))), "ana").Faults);
        byte[] picture = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52, .. new byte[17], 0, 0, 0, 0,
            0x49, 0x45, 0x4E, 0x44, 0xAE, 0x42, 0x60, 0x82];
        foreach (var tip in journal.Tips().ToList())
        {
            var taken = Assert.IsType<ProofResult.Taken>(Proof.Of(PaperName(tip.Name), picture));
            var entry = new Credited { Index = 0, Amount = 1m, On = DayFact.On(new LocalDate(2026, 5, 5)), Text = tip.Name };
            Assert.IsType<AppendOutcome.Appended>(
                journal.Append(tip.Id, tip.Sequence, [new JobChange.Happened(entry) { Proofs = [taken.Proof] }], "ana"));
        }

        return journal;
    }

    private static string Key(string text, int place) => string.Create(CultureInfo.InvariantCulture, $"{NoJoiner(text)} {place}");

    // Keys and the names of papers take no format character at all.
    private static string NoJoiner(string text) =>
        text.Replace("\u200D", "", StringComparison.Ordinal).Replace("\u200C", "", StringComparison.Ordinal);

    // Of a path the last part is the name of a paper.
    private static string PaperName(string text) => NoJoiner(text).Replace('/', '-').Replace('\\', '-') + ".png";

    private static JobFile Job(string text)
    {
        var job = Assert.IsType<JobFileResult.Read>(JobFileReader.ReadFile(Repository.Path("data/demo/alder-court.json"))).Job;
        return job with { Name = text, Parties = [.. job.Parties.Select(party => party with { Name = text })], Claimant =
            job.Claimant with { Signer = new Signer(text, text) } };
    }

    private static string CsvOf(params string[] cells) =>
        string.Join(',', cells.Select(cell =>
            $"\"{(cell.StartsWith('\'') ? CsvLine.Guarded(cell) : cell).Replace("\"", "\"\"", StringComparison.Ordinal)}\"")) + "\r\n";

    private static void MustHold(List<string[]> records, string head, IEnumerable<string> texts)
    {
        MustBeInert(records);
        var column = Array.FindIndex(records[0], there => there.Equals(head, StringComparison.OrdinalIgnoreCase));
        Assert.True(column >= 0, string.Join(" | ", records[0]));
        Assert.Empty(texts.Except(records.Skip(1).Select(record => CsvLine.Unguarded(record[column]))));
    }

    // Told here by itself, without the guard's own words: a first sign that a spreadsheet calculates by, whatever blanks stand before it.
    private static void MustBeInert(List<string[]> records) => Assert.All(records.SelectMany(record => record), cell => Assert.True(
        cell.Trim(' ', '\t', '\u00A0', '\u200D', '\u200C') is not [('=' or '+' or '-' or '@' or '＝' or '＋' or '－' or '＠'), ..]
        || decimal.TryParse(cell, NumberStyles.Number, CultureInfo.InvariantCulture, out _), cell));

    private static void Run(params string[] words) => Assert.Equal(CommandLine.Done, Status(words));

    private static int Status(params string[] words)
    {
        using var output = new MemoryStream();
        using var errors = new StringWriter();
        var status = new CommandLine(output, errors, SystemClock.Instance).Run(words);
        Assert.True(status != CommandLine.OwnFault, errors + Encoding.UTF8.GetString(output.ToArray()));
        return status;
    }

    private string At(string name) => Path.Combine(folder, name);
}
