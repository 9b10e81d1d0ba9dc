using System.Globalization;
using Stringline.Tables;
using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>Import, list, calendar, waterfall and days as a person types them. All names are invented.</summary>
[Slow(Slow.Lasting)]
public sealed class SheetCommandTests : IDisposable
{
    private readonly string folder = Scratch.Folder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task Invoices_are_imported_assessed_listed_and_put_in_a_calendar()
    {
        File.WriteAllText(At("invoices.csv"), "Job No.,Customer,Inv #,Delivery Date,Amount\n114,Hobart "
            + "Framing,INV-1,4/20/2026,\"$1,234.50\"\n114,Hobart Framing,INV-2,4/31/2026,5\nTotal,,,,\"1,239.50\"\n");
        string[] import = ["import", At("invoices.csv"), "--store", At("office"), "--new", "--claimant", "Marlpit Lumber Co.", "--role",
            "supplier", "--county", "Yolo", "--customer-is", "subcontractor", "--as-of", "2026-05-01"];
        var dry = await Tool.Run([.. import, "--dry-run"]);
        Assert.Contains("1 jobs would be added", dry.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(At("office")));
        var first = await Tool.Run([.. import, "--save-mapping", At("map.json")]);
        Assert.Equal(1, first.Status);
        Assert.Contains("4 of 4 rows accounted for", first.Output, StringComparison.Ordinal);
        Assert.Contains("line 3: \"4/31/2026\" under \"Delivery Date\"; it should be a day of the calendar: April 2026 has 30 days",
            first.Output, StringComparison.Ordinal);
        Assert.Contains("1 jobs added", first.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(At("invoices.refused.csv")));
        Assert.Contains("0 changes written", (await Tool.Run([.. import, "--mapping", At("map.json")])).Output, StringComparison.Ordinal);

        Assert.StartsWith("1 of 1 jobs assessed as of 2026-05-01",
            await Said("assess", "--all", "--store", At("office"), "--as-of", "2026-05-01"), StringComparison.Ordinal);
        Assert.StartsWith("0 of 1 jobs assessed", await Said("assess", "--all", "--store", At("office"), "--as-of", "2026-05-01"),
            StringComparison.Ordinal);
        Assert.Contains("Give the preliminary notice", await Said("list", "--store", At("office"), "--as-of", "2026-05-01", "--csv", "-"),
            StringComparison.Ordinal);
        await Said("list", "--store", At("office"), "--as-of", "2026-05-01", "--xlsx", At("list.xlsx"));
        Assert.Equal("PK"u8.ToArray(), File.ReadAllBytes(At("list.xlsx"))[..2]);
        await Said("calendar", "--store", At("office"), "--as-of", "2026-05-01", "--out", At("days.ics"), "--alarm", "2");
        Assert.Contains("SUMMARY:Give the preliminary notice: 114\r\n", File.ReadAllText(At("days.ics")), StringComparison.Ordinal);
        Assert.Contains("Demand,", await Said("waterfall", "114", "--store", At("office"), "--as-of", "2026-05-01"),
            StringComparison.Ordinal);
        Assert.Contains("preliminary-notice.last-day", await Said("days", "114", "--store", At("office"), "--as-of", "2026-05-01"),
            StringComparison.Ordinal);
        Assert.Contains("no job \"115\"", (await Tool.Run("days", "115", "--store", At("office"))).Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_an_import_asks_is_told_by_a_look_and_confirmed_before_anything_is_written()
    {
        File.WriteAllText(At("invoices.csv"),
            "Job No.,Customer,Inv #,Delivery Date,Amount\n114,Hobart Framing,INV-1,4/20/2026,100\n114,Hobart Framing,INV-2,4/21/2026,-5\n");
        string[] import = ["import", At("invoices.csv"), "--store", At("office"), "--new", "--claimant", "Marlpit Lumber Co.", "--role",
            "supplier", "--county", "Yolo", "--customer-is", "subcontractor", "--as-of", "2026-05-01"];
        var dry = await Tool.Run([.. import, "--dry-run"]);
        Assert.Contains("Is that right? 1 row with negative amounts would be entered as credits. If it is: --confirm negative-amounts\n  "
            + "line 3\n", dry.Output, StringComparison.Ordinal);
        var asked = await Tool.Run(import);
        Assert.Equal(1, asked.Status);
        Assert.Contains("--confirm negative-amounts", asked.Errors, StringComparison.Ordinal);
        Assert.Contains("1 jobs would be added", (await Tool.Run([.. import, "--dry-run"])).Output, StringComparison.Ordinal);
        Assert.Contains("1 jobs added", await Said([.. import, "--confirm", "negative-amounts"]), StringComparison.Ordinal);
        Assert.Equal(2, (await Tool.Run([.. import, "--confirm", "everything"])).Status);
    }

    [Fact]
    public async Task A_list_and_a_calendar_of_jobs_never_assessed_or_changed_since_assess_them_first()
    {
        await Said("store", "add", "--new", Demo("alder-court"), Demo("juniper-lane"), Demo("tamarind-wharf"), "--store", At("office"));
        var list = await Said("list", "--store", At("office"), "--as-of", "2026-06-22");
        Assert.Contains("Record the claim of lien", list, StringComparison.Ordinal);
        await Said("calendar", "--store", At("office"), "--as-of", "2026-06-22", "--out", At("days.ics"));
        Assert.Contains("SUMMARY:Record the claim of lien", File.ReadAllText(At("days.ics")), StringComparison.Ordinal);

        // All that is owed is paid: nothing is left to record, and no list says otherwise.
        var paid = File.ReadAllText(Demo("alder-court"));
        var job = Assert.IsType<JobFileResult.Read>(JobFileReader.ReadFile(Demo("alder-court"))).Job;
        var owed = Assessment.Of(job, new LocalDate(2026, 6, 22), OpenDays.Statutory).Amount.Demand;
        var last = paid.LastIndexOf(']');
        File.WriteAllText(At("alder-court.json"),
            string.Create(CultureInfo.InvariantCulture,
                $"{paid[..last]}, {{ \"what\": \"paid\", \"on\": \"2026-06-20\", \"amount\": {owed} }}\n{paid[last..]}"));
        await Said("store", "add", "--new", At("alder-court.json"), "--store", At("office"));
        Assert.DoesNotContain(owed.ToString(CultureInfo.InvariantCulture),
            await Said("list", "--store", At("office"), "--as-of", "2026-06-22"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_list_goes_by_day_marks_what_is_past_and_says_as_of_when()
    {
        await Said("store", "add", "--new", Demo("alder-court"), Demo("juniper-lane"), Demo("tamarind-wharf"), Demo("thistlebank-garden"),
            Demo("cottonwood-school"), "--store", At("office"));
        foreach (var asOf in (string[])["2026-06-22", "2026-09-15"])
        {
            var rows = (await Said("list", "--store", At("office"), "--as-of", asOf))
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)[1..];
            var days = rows.Select(row => row[..10]).ToList();
            Assert.Equal(days.Order(StringComparer.Ordinal), days);
            Assert.All(rows, row =>
                Assert.Equal(string.CompareOrdinal(row[..10], asOf) < 0, row[10..].StartsWith(",overdue,", StringComparison.Ordinal)));
            Assert.All(rows, row => Assert.EndsWith("," + asOf, row.TrimEnd('\r'), StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task The_environment_names_the_store_where_no_option_does()
    {
        (string, string)[] here = [("STRINGLINE_STORE", At("office"))];
        File.WriteAllText(At("invoices.csv"),
            "Job No.,Customer,Inv #,Delivery Date,Amount\n114,Hobart Framing,INV-1,4/20/2026,\"$1,234.50\"\n");
        Assert.Equal(0,
            (await Tool.RunWith(here, "import", At("invoices.csv"), "--new", "--claimant", "Marlpit Lumber Co.", "--role", "supplier",
                "--county", "Yolo", "--as-of", "2026-05-01", "--customer-is", "subcontractor")).Status);
        Assert.StartsWith("1 of 1 jobs assessed", (await Tool.RunWith(here, "assess", "--all", "--as-of", "2026-05-01")).Output,
            StringComparison.Ordinal);
        Assert.Contains("Give the preliminary notice", (await Tool.RunWith(here, "list", "--as-of", "2026-05-01", "--csv", "-")).Output,
            StringComparison.Ordinal);
        Assert.Contains("1", (await Tool.RunWith(here, "store", "check")).Output, StringComparison.Ordinal);

        // A folder is no store, so the desk says so and does not stay open.
        var desk = await Tool.RunWith([("STRINGLINE_STORE", folder)], "desk", "--no-browser", "--port", "0");
        Assert.Equal(1, desk.Status);
        Assert.Contains(folder, desk.Errors, StringComparison.Ordinal);
    }

    // Of a school nothing is claimed by a lien: neither the word nor the section is that of one.
    [Fact]
    public async Task The_sum_of_a_public_job_stands_under_its_own_remedy_and_section()
    {
        await Said("store", "add", "--new", Demo("cottonwood-school"), "--store", At("office"));
        var waterfall = await Said("waterfall", "cottonwood-school", "--store", At("office"), "--as-of", "2026-06-22");
        Assert.Contains(waterfall.Split('\n'), row => row.StartsWith("Demand of the stop payment notice,", StringComparison.Ordinal)
            && row.Contains("Civ. Code § 9352(c)", StringComparison.Ordinal));
        Assert.DoesNotContain("§ 8416", waterfall, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wrong_usage_is_told_with_status_2()
    {
        Assert.Equal(2, (await Tool.Run("assess")).Status);
        Assert.Equal(2, (await Tool.Run("assess", "--all")).Status);
        Assert.Equal(2, (await Tool.Run("assess", "a.json", "--all", "--store", "x")).Status);
        Assert.Equal(2, (await Tool.Run("import", "a.csv", "--store", "x", "--as", "letters")).Status);
    }

    private static string Demo(string name) => Repository.Path($"data/demo/{name}.json");

    private string At(string name) => Path.Combine(folder, name);

    private static async Task<string> Said(params string[] args)
    {
        var answer = await Tool.Run(args);
        Assert.True(answer.Status == 0, answer.Errors);
        return answer.Output;
    }
}
