using System.Text.RegularExpressions;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>The commands that keep a store, as a person types them.</summary>
[Slow(Slow.Lasting)]
public sealed partial class StoreCommandTests : IDisposable
{
    private readonly string folder = Scratch.Folder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_store_is_filled_checked_backed_up_restored_moved_and_exported()
    {
        var demo = Repository.Path("data/demo/alder-court.json");
        Assert.StartsWith("1 added, 0 extended, 0 unchanged", await Said("add", "--new", demo), StringComparison.Ordinal);
        Assert.StartsWith("0 added, 0 extended, 1 unchanged; 0 changes", await Said("add", demo), StringComparison.Ordinal);
        var seal = Seal(await Said("check"));
        Assert.Equal(seal, Seal(await Said("backup", At("backup"))));
        Assert.Contains("--replace", (await Run("restore", At("backup"))).Errors, StringComparison.Ordinal);
        var restored = await Said("restore", At("backup"), "--replace");
        Assert.Equal(seal, Seal(restored));
        Assert.Contains("is kept as " + At("office") + "_replaced_", restored, StringComparison.Ordinal);
        Assert.Equal(seal, Seal(await Said("move", At("moved"))));
        await Said("export", "--out", At("out"));
        Assert.True(File.Exists(Path.Combine(At("out"), "jobs", "alder-court.json")));
    }

    [Fact]
    public async Task A_store_that_is_not_there_and_a_file_that_is_refused_are_told_with_status_1()
    {
        var missing = await Run("check");
        Assert.Equal((1, ""), (missing.Status, missing.Output));
        Assert.Equal($"{At("office")}\n  is:        no such file\n  should be: the file of a store; a new one is made with --new\n",
            missing.Errors);
        File.WriteAllText(At("bad.json"), "{ }");
        var refused = await Run("add", "--new", At("bad.json"), Repository.Path("data/demo/alder-court.json"));
        Assert.Equal(1, refused.Status);
        Assert.Contains("bad.json: format", refused.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(At("office")));
    }

    [Fact]
    public async Task A_seal_is_made_kept_compared_and_says_what_was_cut_off()
    {
        await Said("add", "--new", Repository.Path("data/demo/alder-court.json"));
        var said = await Said("seal", "--out", At("seal.txt"));
        var line = said.Split('\n').Single(one => one.Contains("stringline-seal/1", StringComparison.Ordinal)).Trim();
        Assert.StartsWith(line + "\n", File.ReadAllText(At("seal.txt")), StringComparison.Ordinal);
        File.WriteAllText(At("taken.txt"), "mine");
        Assert.Equal(1, (await Run("seal", "--out", At("taken.txt"))).Status);
        Assert.Equal("mine", File.ReadAllText(At("taken.txt")));
        await Said("backup", At("older"));
        await Said("add", Repository.Path("data/demo/juniper-lane.json"));
        foreach (var seal in (string[])[At("seal.txt"), line])
        {
            Assert.Contains("Nothing from before the seal of ", await Said("check", "--against", seal), StringComparison.Ordinal);
            Assert.Contains("Since then: 1 jobs", await Said("check", "--against", seal), StringComparison.Ordinal);
        }

        await Said("seal", "--out", At("later.txt"));
        await Said("restore", "--replace", At("older"));
        var cut = await Run("check", "--against", At("later.txt"));
        Assert.Equal(1, cut.Status);
        Assert.Contains("job \"juniper-lane\": job number 2", cut.Errors, StringComparison.Ordinal);
        var mistyped = await Run("check", "--against", line[..^1] + (line[^1] == '0' ? '1' : '0'));
        Assert.Equal(1, mistyped.Status);
        Assert.Contains("a digit is wrong", mistyped.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Damage_beside_the_journal_is_told_with_what_mends_it_and_assessing_anew_mends_it()
    {
        await Said("add", "--new", Repository.Path("data/demo/alder-court.json"));
        Assert.Equal(0, (await Tool.Run("assess", "--all", "--store", At("office"), "--as-of", "2026-06-22")).Status);
        var list = await Tool.Run("list", "--store", At("office"), "--as-of", "2026-06-22");
        Tamper("update steps set act_by = '2031-01-01'");
        var check = await Run("check");
        Assert.Equal(1, check.Status);
        Assert.Contains("assess --all --anew", check.Errors, StringComparison.Ordinal);
        Assert.Contains("every change and paper", check.Errors, StringComparison.Ordinal);
        Assert.Contains("But", (await Said("backup", At("while damaged"))).Replace("but:", "But", StringComparison.Ordinal),
            StringComparison.Ordinal);
        var again = await Tool.Run("list", "--store", At("office"), "--as-of", "2026-06-22");
        Assert.Equal(list.Output, again.Output);
        Assert.Contains("was made anew from the journal", again.Errors, StringComparison.Ordinal);
        Tamper("delete from search_texts");
        Assert.Equal(1, (await Run("check")).Status);
        Assert.Contains("made anew", (await Tool.Run("assess", "--all", "--anew", "--store", At("office"), "--as-of", "2026-06-22")).Output,
            StringComparison.Ordinal);
        await Said("check");
        Assert.Equal(2, (await Tool.Run("assess", "--anew", Repository.Path("data/demo/alder-court.json"))).Status);
    }

    [Fact]
    public async Task A_log_that_lost_what_was_recorded_is_told_by_the_check_and_by_who_writes_next()
    {
        DamagedLog.Lay(At("office"));
        var check = await Run("check");
        Assert.Equal(1, check.Status);
        Assert.Contains("the last change that was recorded may be missing", check.Errors, StringComparison.Ordinal);
        Assert.Contains("enter again what is missing", check.Errors, StringComparison.Ordinal);
        var added = await Run("add", Repository.Path("data/demo/alder-court.json"));
        Assert.Equal(0, added.Status);
        Assert.Contains("may be missing", added.Errors, StringComparison.Ordinal);
        var kept = Assert.Single(Directory.GetFiles(folder, "office_damaged_log_*"));
        var again = await Run("check");
        Assert.Equal(1, again.Status);
        Assert.Contains(kept, again.Errors, StringComparison.Ordinal);
        File.Move(kept, At("elsewhere"));
        await Said("check");
    }

    [Fact]
    public async Task What_restores_left_beside_the_store_is_told_by_the_check()
    {
        await Said("add", "--new", Repository.Path("data/demo/alder-court.json"));
        Assert.DoesNotContain("Kept", await Said("check"), StringComparison.Ordinal);
        await Said("backup", At("backup"));
        await Said("restore", "--replace", At("backup"));
        Assert.Contains("Kept from before a restore: " + At("office") + "_replaced_", await Said("check"), StringComparison.Ordinal);
        Directory.CreateDirectory(At("stringline-0123456789abcdef.part"));
        File.WriteAllText(Path.Combine(At("stringline-0123456789abcdef.part"), "in-work"), "");
        Assert.Contains("did not finish", await Said("check"), StringComparison.Ordinal);
        Assert.Contains("did not finish: " + At("stringline-0123456789abcdef.part"), await Said("restore", "--replace", At("backup")),
            StringComparison.Ordinal);
    }

    private void Tamper(string sql)
    {
        using var connection = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={At("office")};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        Assert.True(command.ExecuteNonQuery() > 0);
    }

    private string At(string name) => Path.Combine(folder, name);

    private async Task<string> Said(params string[] args)
    {
        var answer = await Run(args);
        Assert.True(answer.Status == 0, answer.Errors);
        return answer.Output;
    }

    private Task<Tool.Answer> Run(params string[] args) => Tool.Run(["store", args[0], "--store", At("office"), .. args[1..]]);

    private static string Seal(string output) =>
        SealLine().Match(output).Groups[1].Value is { Length: 64 } seal ? seal : throw new InvalidOperationException(output);

    [GeneratedRegex("seal +([0-9a-f]{64})")]
    private static partial Regex SealLine();
}
