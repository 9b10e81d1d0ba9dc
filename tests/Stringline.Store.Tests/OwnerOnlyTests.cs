using System.Runtime.Versioning;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>Files and folders for their owner alone. The umask is tried by the tests of the whole program.</summary>
[UnsupportedOSPlatform("windows")]
public sealed class OwnerOnlyTests : IDisposable
{
    private const UnixFileMode ForFiles = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    private readonly string folder = Scratch.Folder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_folder_that_is_missing_on_the_way_is_its_owners_alone()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such modes.");
        OwnerOnly.Folder(Path.Combine(folder, "a", "b", "c"));
        foreach (var made in (string[])["a", "a/b", "a/b/c"])
            Assert.Equal(ForFiles | UnixFileMode.UserExecute, File.GetUnixFileMode(Path.Combine(folder, made)));
    }

    [Fact]
    public void A_store_and_its_log_are_their_owners_alone_and_nothing_else_is_left_beside_them()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such modes.");
        using var journal = Journals.Open(Path.Combine(folder, "office"), SystemClock.Instance, OpenStore.OrMake);
        Assert.Equal(0, journal.CountJobs());
        List<string> made = [.. Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal)];
        Assert.Equal(["office", "office-shm", "office-wal"], made.Select(Path.GetFileName));
        Assert.All(made, file => Assert.Equal(ForFiles, File.GetUnixFileMode(file)));
    }

    [Fact]
    public void What_is_there_is_left_as_it_is_when_it_is_claimed_also_by_many_at_once()
    {
        var path = Path.Combine(folder, "claimed");
        Parallel.For(0, 50, _ => OwnerOnly.Claim(path));
        Assert.Equal("claimed", Path.GetFileName(Assert.Single(Directory.EnumerateFiles(folder))));
        File.WriteAllText(path, "kept");
        OwnerOnly.Claim(path);
        Assert.Equal("kept", File.ReadAllText(path));
    }
}
