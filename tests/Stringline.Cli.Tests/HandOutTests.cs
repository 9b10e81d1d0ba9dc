using System.Diagnostics;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>
/// What is handed out is made of the packages whose content the committed lock files name, to the last bit (<c>eng/setup.sh</c>).
/// </summary>
[Slow(Slow.Lasting)]
public sealed class HandOutTests : IDisposable
{
    private readonly string folder = Scratch.Folder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    [Attack("other content of a package than the lock file names")]
    public async Task A_package_of_other_content_than_the_lock_file_names_stops_it()
    {
        var committed = Repository.Path("src/Stringline.Cli/packages.lock.json");
        var text = await File.ReadAllTextAsync(committed, TestContext.Current.CancellationToken);
        Assert.Equal((0, ""), await Compare(text));
        const string Key = "\"contentHash\": \"";
        var at = text.IndexOf(Key, StringComparison.Ordinal) + Key.Length;
        var (status, told) = await Compare(text[..at] + (text[at] == 'A' ? 'B' : 'A') + text[(at + 1)..]);
        Assert.Equal(1, status);
        Assert.Contains("Packages that are not those of", told, StringComparison.Ordinal);
    }

    [Fact]
    [Attack("other content of a package than the lock file names")]
    public async Task A_package_that_the_lock_file_does_not_name_stops_it()
    {
        var text = await File.ReadAllTextAsync(Repository.Path("src/Stringline.Cli/packages.lock.json"),
            TestContext.Current.CancellationToken);
        var (status, told) = await Compare(text.Replace("\"Dapper\": {", "\"Dappler\": {", StringComparison.Ordinal));
        Assert.Equal(1, status);
        Assert.Contains("Dappler ", told, StringComparison.Ordinal);
    }

    [Fact]
    [Attack("other content of a package than the lock file names")]
    public async Task Where_no_lock_file_was_written_it_stops() =>
        Assert.Equal(1, (await Bash("same_packages_everywhere obj/never-written.lock.json")).Status);

    private async Task<(int Status, string Told)> Compare(string made)
    {
        var path = Path.Combine(folder, "made.json");
        await File.WriteAllTextAsync(path, made, TestContext.Current.CancellationToken);
        return await Bash($"same_packages '{path}' '{Repository.Path("src/Stringline.Cli/packages.lock.json")}'");
    }

    private static async Task<(int Status, string Told)> Bash(string what)
    {
        var script = $"root='{Repository.Path("")}'; cd \"$root\"; . eng/setup.sh; {what}";
        using var bash = Process.Start(new ProcessStartInfo("bash", ["-c", script]) { RedirectStandardError = true })!;
        var told = await bash.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await bash.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (bash.ExitCode, told);
    }
}
