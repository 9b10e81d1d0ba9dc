using System.Text.RegularExpressions;
using Stringline.Testing;

namespace Stringline.Desk.Tests;

/// <summary>The commands that keep a store, as a person types them.</summary>
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
        Assert.Equal($"{At("office")}\n  is:        no such file\n  should be: the file of a store; a new one is made with --new\n", missing.Errors);
        File.WriteAllText(At("bad.json"), "{ }");
        var refused = await Run("add", "--new", At("bad.json"), Repository.Path("data/demo/alder-court.json"));
        Assert.Equal(1, refused.Status);
        Assert.Contains("bad.json: format", refused.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(At("office")));
    }

    private string At(string name) => Path.Combine(folder, name);

    private async Task<string> Said(params string[] args)
    {
        var answer = await Run(args);
        Assert.True(answer.Status == 0, answer.Errors);
        return answer.Output;
    }

    private Task<Tool.Answer> Run(params string[] args) => Tool.Run(["store", args[0], "--store", At("office"), .. args[1..]]);

    private static string Seal(string output) => SealLine().Match(output).Groups[1].Value is { Length: 64 } seal ? seal : throw new InvalidOperationException(output);

    [GeneratedRegex("seal +([0-9a-f]{64})")]
    private static partial Regex SealLine();
}
