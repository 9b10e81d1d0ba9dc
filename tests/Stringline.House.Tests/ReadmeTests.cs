using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Stringline.House.Tests;

/// <summary>
/// What the README promises: its table of folders, and its commands. A command of the program is run as it stands there; one that builds,
/// tests, packs or waits for a browser is looked up in the script that it names.
/// </summary>
public sealed partial class ReadmeTests : IDisposable
{
    private readonly string folder = Scratch.Folder();

    private static readonly string Text = File.ReadAllText(Repository.Path("README.md")).ReplaceLineEndings("\n");

    private static IEnumerable<string> Commands => Block().Matches(Text)
        .SelectMany(block => block.Groups[1].Value.Split('\n')).Select(line => line.Split(" #")[0].Trim()).Where(line => line.Length > 0);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void The_table_names_every_folder_of_the_sources_and_of_the_repository()
    {
        var rows = Row().Matches(Text).Select(row => row.Groups[1].Value).ToList();
        Assert.All(rows, row => Assert.True(Directory.Exists(Repository.Path(row)), row));
        Assert.Equal([], Projects.References.Keys.Select(name => $"src/Stringline.{name}").Except(rows));
        Assert.Equal([], new[] { "data", "tests", "eng", "bench", "docs" }.Except(rows));
    }

    [Fact]
    public void Every_file_that_it_links_to_is_there() => Assert.All(
        Link().Matches(Text).Select(link => link.Groups[1].Value).Where(link => !link.Contains("://", StringComparison.Ordinal)),
        link => Assert.True(Path.Exists(Repository.Path(link)), link));

    [Fact]
    [Slow(Slow.Lasting)]
    public async Task Every_command_of_the_program_answers()
    {
        File.Copy(Repository.Path("data/demo/alder-court.json"), Path.Combine(folder, "job.json"));
        await File.WriteAllTextAsync(Path.Combine(folder, "waivers.csv"),
            "job,form,through,amount,maker\njob.json,8132,2026-06-01,10.00,Brushline Builders Inc.\n",
            TestContext.Current.CancellationToken);
        var commands = Commands.Where(line => line.StartsWith("./run ", StringComparison.Ordinal) && !IsOfTheScript(line)).ToList();
        Assert.True(commands.Count > 6);
        foreach (var command in commands)
        {
            var (status, said) = await Run(command["./run ".Length..].Split(' '));
            // A job whose day to record has passed is refused a paper, as the README says it may be: 1. Wrong usage is 2, a fault 3.
            Assert.True(status is 0 or 1, $"{command}: {status} {said}");
        }
    }

    [Fact]
    public void Every_other_command_is_a_script_that_knows_its_words()
    {
        foreach (var line in Commands.Where(line => !line.StartsWith("./run ", StringComparison.Ordinal) || IsOfTheScript(line)))
        {
            var words = line.Split(' ');
            var script = Repository.Path(words[0]);
            Assert.True(File.Exists(script), line);
            if (!OperatingSystem.IsWindows())
                Assert.True(File.GetUnixFileMode(script).HasFlag(UnixFileMode.UserExecute), line);
            if (words.Length > 1 && !line.Contains(" desk", StringComparison.Ordinal))
                Assert.Contains(words[1], File.ReadAllText(script), StringComparison.Ordinal);
        }
    }

    // The desk waits for a browser; the papers of the demo are written by the script.
    private static bool IsOfTheScript(string line) => line.Split(' ')[1] is "desk" or "demo-papers";

    private async Task<(int Status, string Said)> Run(string[] words)
    {
        var program = Directory.EnumerateFiles(AppContext.BaseDirectory, "stringline.dll").Single();
        var start = new ProcessStartInfo("dotnet", [program, .. words])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var (output, errors) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, await output + await errors);
    }

    [GeneratedRegex("```sh\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex(@"^\| `([\w./]+)` \|", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex(@"\]\(([^)#]+)\)")]
    private static partial Regex Link();
}
