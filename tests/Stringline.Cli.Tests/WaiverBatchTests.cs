using System.Text;
using Stringline.Office.Batch;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary><c>stringline packet waiver --jobs FILE.csv --out DIR</c>.</summary>
public sealed class WaiverBatchTests : IDisposable
{
    private const string Heads = "job,form,through,amount,maker,payee,disputed,payment-cleared,releases,through-again";

    // What the papers of the demo job release.
    private const string ToMarch = ",26430.50", All = ",39505.75";

    private readonly string root = Scratch.Folder();
    private MemoryStream output = new();
    private StringWriter errors = new();

    private string Folder => Path.Combine(root, "out");

    private string[] Pdfs => [.. Directory.GetFiles(Folder, "*.pdf").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    private string[] Refused => File.ReadAllLines(Path.Combine(Folder, "refused.csv"));

    public void Dispose()
    {
        Directory.Delete(root, recursive: true);
        output.Dispose();
        errors.Dispose();
    }

    [Fact]
    public void One_row_of_each_form_is_made_and_each_paper_says_what_its_row_says()
    {
        Assert.Equal(CommandLine.Done, Run(Sheet(
            "alder-court.json,8132,2026-03-20,12000.50,\"Fennimore Framing, Inc.\",,," + ToMarch,
            "alder-court.json,8134,2026-03-20,11000.00,,,,2026-05-05" + ToMarch,
            "alder-court.json,8136,,10000.00,\"Fennimore Framing, Inc.\",Two Payees,450.25,,39055.50",
            "alder-court.json,8138,,,,,,2026-05-05" + All)));
        Assert.Equal(["alder-court-8132-2026-03-20.pdf", "alder-court-8134-2026-03-20.pdf", "alder-court-8136.pdf", "alder-court-8138.pdf"],
            Pdfs);
        Assert.Contains("12,000.50", TextOf(Pdfs[0]), StringComparison.Ordinal);
        Assert.Contains("March20,2026", TextOf(Pdfs[0]), StringComparison.Ordinal);
        Assert.Contains("11,000.00", TextOf(Pdfs[1]), StringComparison.Ordinal);
        Assert.Contains("TwoPayees", TextOf(Pdfs[2]), StringComparison.Ordinal);
        Assert.Contains("450.25", TextOf(Pdfs[2]), StringComparison.Ordinal);
        Assert.Single(Refused);
        Assert.Contains("4 made, 0 there already, 0 refused", Shown, StringComparison.Ordinal);
        Assert.Contains("Not legal advice.", Shown, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_that_fails_stops_no_other_and_is_reported_with_its_line()
    {
        Assert.Equal(CommandLine.Refused, Run(Sheet(
            "nothere.json,8132,2026-03-20,12000.00,X,,,",
            "alder-court.json,8134,2026-03-20,12000.00,,,,",
            "",
            "alder-court.json,8136,2026-03-20,12000.00,X,,,",
            "alder-court.json,8132,2026-02-30,\"12,00\",X,,,",
            "alder-court.json,9999,,,,,,",
            "alder-court.json,8132,2026-03-20,12000.00,木,,,",
            "alder-court.json,8132,2026-03-21,12000.00,X,,," + ToMarch,
            "alder-court.json,8132,2026-03-21,12000.00,X,,," + ToMarch)));
        Assert.Equal(["alder-court-8132-2026-03-21.pdf"], Pdfs);
        Assert.Collection(
            Refused.Skip(1),
            r => Assert.StartsWith("2,nothere.json,8132,", r, StringComparison.Ordinal),
            r => Assert.StartsWith("3,alder-court.json,8134,payment-cleared,", r, StringComparison.Ordinal),
            r => Assert.StartsWith("3,alder-court.json,8134,releases,", r, StringComparison.Ordinal),
            r => Assert.StartsWith("5,alder-court.json,8136,through,", r, StringComparison.Ordinal),
            r => Assert.StartsWith("6,alder-court.json,8132,through,", r, StringComparison.Ordinal),
            r => Assert.StartsWith("6,alder-court.json,8132,amount,", r, StringComparison.Ordinal),
            r => Assert.StartsWith("7,alder-court.json,9999,form,", r, StringComparison.Ordinal),
            r => Assert.Contains("U+6728", r, StringComparison.Ordinal),
            r => Assert.StartsWith("8,alder-court.json,8132,releases,", r, StringComparison.Ordinal),
            r => Assert.Contains("It says the same as line 9.", r, StringComparison.Ordinal));
    }

    /// <summary>By job in the two lists, and in sum on the screen: released, paid, and the difference.</summary>
    [Fact]
    public void What_a_batch_gives_away_is_said_by_job_and_in_sum_and_typed_first()
    {
        string[] rows = ["alder-court.json,8132,2026-03-20,12000.50,X,,,", "alder-court.json,8134,2026-03-20,11000.00,,,,2026-05-05",
            "alder-court.json,8138,,,,,,2026-05-05"];
        Assert.Equal(CommandLine.Refused, Run(Sheet(rows)));
        Assert.Empty(Pdfs);
        Assert.Collection(
            Refused.Skip(1),
            r => Assert.Contains("$26,430.50 is released. That is $14,430.00 more than the payment of $12,000.50.", r,
                StringComparison.Ordinal),
            r => Assert.Contains("No cleared payment of that sum is in the journal.", r, StringComparison.Ordinal),
            r => Assert.Contains("releases 39505.75", r, StringComparison.Ordinal));
        Assert.Contains("they would release $92,366.75, and $23,000.50 is paid: $69,366.25 more is released than is paid, over 3 papers. "
            + "More than is paid for it may be released by 3.", Shown, StringComparison.Ordinal);

        Assert.Equal(CommandLine.Refused, Run(Sheet(rows[0] + ",26430.49", rows[1] + ToMarch, rows[2] + ",\"$39,505.75\"")));
        Assert.Contains("Typed was $26,430.49", Assert.Single(Refused.Skip(1)), StringComparison.Ordinal);
        Assert.Contains("They release $65,936.25, and $11,000.00 is paid: $54,936.25 more is released than is paid, over 2 papers. More "
            + "than is paid for it may be released by 2.", Shown, StringComparison.Ordinal);
        Assert.Contains("they would release $26,430.50, and $12,000.50 is paid: $14,430.00 more is released than is paid, over 1 paper. "
            + "More than is paid for it may be released by 1.", Shown, StringComparison.Ordinal);
        var made = File.ReadAllLines(Path.Combine(Folder, WaiverLedger.FileName));
        Assert.EndsWith(",released,paid,released-less-paid", made[0], StringComparison.Ordinal);
        Assert.Contains(made, l => l.EndsWith(",26430.50,11000.00,15430.50", StringComparison.Ordinal));
        Assert.Contains(made, l => l.EndsWith(",39505.75,,39505.75", StringComparison.Ordinal));
    }

    [Fact]
    public void A_through_date_to_come_stands_twice_in_its_row()
    {
        Assert.Equal(CommandLine.Refused,
            Run(Sheet("alder-court.json,8132,2026-05-07,39505.75,X,,,,", "alder-court.json,8132,2026-05-08,39505.75,X,,,,,2026-05-08",
                "alder-court.json,8136,,39505.75,X,,,,,2026-05-08")));
        Assert.Equal(["alder-court-8132-2026-05-08.pdf"], Pdfs);
        Assert.Collection(
            Refused.Skip(1),
            r => Assert.StartsWith("2,alder-court.json,8132,through-again,", r, StringComparison.Ordinal),
            r => Assert.StartsWith("4,alder-court.json,8136,through-again,Form 8136 has no place for it.", r, StringComparison.Ordinal));
    }

    [Fact]
    public void A_second_run_makes_only_what_is_missing_spoilt_or_changed()
    {
        string[] rows = ["alder-court.json,8132,2026-03-20,12000.00,X,,," + ToMarch, "alder-court.json,8132,2026-03-21,12000.00,X,,,"
            + ToMarch, "alder-court.json,8132,2026-03-22,12000.00,X,,," + ToMarch, "alder-court.json,8138,,,,,,2026-05-05" + All];
        Assert.Equal(CommandLine.Done, Run(Sheet(rows)));
        Assert.Equal(CommandLine.Done, Run(Sheet(rows)));
        Assert.Contains("0 made, 4 there already", Shown, StringComparison.Ordinal);

        var kept = File.GetLastWriteTimeUtc(Path.Combine(Folder, "alder-court-8138.pdf"));
        File.Delete(Path.Combine(Folder, "alder-court-8132-2026-03-20.pdf"));
        File.WriteAllBytes(Path.Combine(Folder, "alder-court-8132-2026-03-21.pdf"),
            File.ReadAllBytes(Path.Combine(Folder, "alder-court-8132-2026-03-21.pdf"))[..^100]);
        rows[2] = "alder-court.json,8132,2026-03-22,12000.01,X,,," + ToMarch;
        File.WriteAllText(Path.Combine(Folder, ".stringline-left.pdf"), "left by a run that was killed");
        Assert.Equal(CommandLine.Done, Run(Sheet(rows)));
        Assert.Contains("3 made, 1 there already", Shown, StringComparison.Ordinal);
        Assert.Equal(kept, File.GetLastWriteTimeUtc(Path.Combine(Folder, "alder-court-8138.pdf")));
        Assert.Contains("12,000.01", TextOf("alder-court-8132-2026-03-22.pdf"), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(Folder, ".stringline-*"));
    }

    [Fact]
    public void A_changed_job_file_makes_its_papers_anew_and_a_refused_row_tells_of_the_old_paper()
    {
        var sheet = Sheet("alder-court.json,8132,2026-03-20,12000.00,X,,," + ToMarch);
        Assert.Equal(CommandLine.Done, Run(sheet));
        var file = Path.Combine(root, "alder-court.json");
        File.WriteAllText(file, File.ReadAllText(file).Replace("Alder Court Two, LLC", "Alder Court Three, LLC", StringComparison.Ordinal));
        Assert.Equal(CommandLine.Done, Run(sheet));
        Assert.Contains("1 made", Shown, StringComparison.Ordinal);
        Assert.Contains("AlderCourtThree", TextOf(Pdfs[0]), StringComparison.Ordinal);
        File.WriteAllText(file, "{");
        Assert.Equal(CommandLine.Refused, Run(sheet));
        Assert.EndsWith(",alder-court-8132-2026-03-20.pdf", Refused[1], StringComparison.Ordinal);
    }

    /// <summary>A file that no run into the folder made is somebody's own: a scan of the signed paper, or another job's.</summary>
    [Fact]
    public void A_file_of_the_same_name_that_no_run_made_is_not_written_over_unless_asked()
    {
        var sheet = Sheet("alder-court.json,8132,2026-03-20,12000.00,X,,," + ToMarch, "alder-court.json,8132,2026-03-21,12000.00,X,,,"
            + ToMarch);
        Directory.CreateDirectory(Folder);
        var path = Path.Combine(Folder, "alder-court-8132-2026-03-20.pdf");
        File.WriteAllText(path, "signed and scanned");
        Assert.Equal(CommandLine.Refused, Run(sheet));
        Assert.Contains("1 made", Shown, StringComparison.Ordinal);
        Assert.Contains("other content", Refused[1], StringComparison.Ordinal);
        Assert.Equal("signed and scanned", File.ReadAllText(path));
        Assert.Equal(CommandLine.Done, Run(sheet, "--replace"));
        Assert.Contains("12,000.00", TextOf("alder-court-8132-2026-03-20.pdf"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_of_the_ledger_that_was_cut_off_spoils_no_other()
    {
        var sheet = Sheet("alder-court.json,8132,2026-03-20,12000.00,X,,," + ToMarch, "alder-court.json,8132,2026-03-21,12000.00,X,,,"
            + ToMarch);
        Assert.Equal(CommandLine.Done, Run(sheet));
        var ledger = Path.Combine(Folder, WaiverLedger.FileName);
        File.WriteAllText(ledger, File.ReadAllText(ledger)[..^20]);
        Assert.Equal(CommandLine.Done, Run(sheet));
        Assert.Contains("1 made, 1 there already", Shown, StringComparison.Ordinal);
        Assert.Equal(CommandLine.Done, Run(sheet));
        Assert.Contains("0 made, 2 there already", Shown, StringComparison.Ordinal);
    }

    [Fact]
    public void Jobs_are_found_by_number_in_a_store()
    {
        var store = Path.Combine(root, "office.stringline");
        Assert.Equal(CommandLine.Done,
            new CommandLine(output, errors, Clock())
                .Run(["store", "add", "--new", "--store", store, Repository.Path("data/demo/alder-court.json")]));
        Assert.Equal(CommandLine.Refused,
            Run(Sheet("alder-court,8132,2026-03-20,12000.00,X,,," + ToMarch, "nobody,8132,2026-03-20,12000.00,X,,,"), "--store", store));
        Assert.Equal(["alder-court-8132-2026-03-20.pdf"], Pdfs);
        Assert.Contains("The store has no job 'nobody'.", Refused[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "nothing is in it")]
    [InlineData("job,amount\n", "'form' is not there")]
    [InlineData("job,form,form\n", "'form' stands twice")]
    [InlineData("job,form,color\n", "'color' is no head")]
    public void A_table_without_its_heads_is_refused_and_nothing_is_made(string text, string why)
    {
        var sheet = Path.Combine(root, "sheet.csv");
        File.WriteAllText(sheet, text);
        Assert.Equal(CommandLine.Refused, Run(sheet));
        Assert.Contains(why, errors.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Folder));
    }

    [Fact]
    public void A_table_in_another_encoding_is_refused_with_the_line()
    {
        var sheet = Path.Combine(root, "sheet.csv");
        File.WriteAllBytes(sheet, Encoding.Latin1.GetBytes(Heads + "\nalder-court.json,8132,2026-03-20,1.00,Núñez,,,\n"));
        Assert.Equal(CommandLine.Refused, Run(sheet));
        Assert.Contains("not UTF-8", errors.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_quotation_mark_that_is_never_closed_swallows_no_row_in_silence()
    {
        var status =
            Run(Sheet("alder-court.json,8132,2026-03-20,12000.00,\"X,,,", "alder-court.json,8132,2026-03-21,12000.00,X,,," + ToMarch));
        Assert.Equal(CommandLine.Refused, status);
        Assert.Empty(Pdfs);
        Assert.StartsWith("2,", Refused[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Semicolons_a_byte_order_mark_and_other_heads_are_understood()
    {
        var sheet = Path.Combine(root, "sheet.csv");
        Demo();
        File.WriteAllText(sheet, "Form;Job;Exceptions;Payment cleared;Releases\r\n8138;alder-court.json;25.00;2026-05-05;39,480.75\r\n",
            new UTF8Encoding(true));
        Assert.Equal(CommandLine.Done, Run(sheet));
        Assert.Equal(["alder-court-8138.pdf"], Pdfs);
    }

    [Fact]
    [Slow(Slow.Lasting)]
    public void Progress_off_a_terminal_is_a_line_at_each_tenth()
    {
        Assert.Equal(CommandLine.Done,
            Run(Sheet([.. Enumerable.Range(1, 20).Select(i => $"alder-court.json,8132,2026-03-20,{i}.00,X,,,{ToMarch}")])));
        var lines = errors.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.InRange(lines.Length, 9, 11);
        Assert.StartsWith("Waivers: 100 %", lines[^1], StringComparison.Ordinal);
        Assert.Equal(20, Pdfs.Length);
    }

    /// <summary>Letters, digits and hyphens only, never a device name, whatever the job is called.</summary>
    [Theory]
    [InlineData("C:\\jobs\\Ängström & Söhne.json", "angstrom-sohne")]
    [InlineData("Straße \u00C6rø.json", "strasse-aero")]
    [InlineData("../CON.json", "con")]
    [InlineData("木", "job")]
    [InlineData("a/b/Q-101", "q-101")]
    [InlineData("...", "job")]
    public void File_names_are_safe(string job, string stem) => Assert.Equal(stem, WaiverNames.Stem(job));

    private static SystemClock Clock() => SystemClock.Instance;

    private string Shown => Encoding.UTF8.GetString(output.ToArray());

    private void Demo() =>
        File.Copy(Repository.Path("data/demo/alder-court.json"), Path.Combine(root, "alder-court.json"), overwrite: true);

    private string Sheet(params string[] rows)
    {
        Demo();
        var path = Path.Combine(root, "sheet.csv");
        File.WriteAllText(path, Heads + "\n" + string.Join('\n', rows) + "\n");
        return path;
    }

    private int Run(string sheet, params string[] more)
    {
        (output, errors) = (new MemoryStream(), new StringWriter());
        return new CommandLine(output, errors, Clock())
            .Run(["packet", "waiver", "--jobs", sheet, "--out", Folder, "--as-of", "2026-05-06", .. more]);
    }

    private string TextOf(string pdf)
    {
        using var document = UglyToad.PdfPig.PdfDocument.Open(File.ReadAllBytes(Path.Combine(Folder, pdf)));
        return string.Concat(document.GetPages().SelectMany(p => p.Letters).Select(l => l.Value).Where(l => !string.IsNullOrWhiteSpace(l)));
    }
}
