using Stringline.Office.Portfolio;
using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Stringline.Office.DemoOffice;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>
/// A desk that is open in a process of its own, with the demo office, so that what it takes can be told from what its clients take.
/// </summary>
internal sealed partial class DeskProcess : IDisposable
{
    private readonly string folder = Scratch.Folder();
    private readonly Process process;

    private DeskProcess(LocalDate today)
    {
        using (var journal = Journals.Open(Store, SystemClock.Instance, OpenStore.OrMake))
        {
            Assert.Empty(journal.PutMany(DemoJobs.Of(today), "demo").Faults);
            new Portfolio(journal).RefreshStale(today, Environment.ProcessorCount);
        }

        string[] command = Tool.Published is { } published
            ? [published] : ["dotnet", Path.Combine(AppContext.BaseDirectory, "stringline.dll")];
        string[] desk = ["desk", "--store", Store, "--port", "0", "--no-browser", "--as-of",
            today.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture)];
        process = Process.Start(new ProcessStartInfo(command[0], [.. command[1..], .. desk]) { RedirectStandardOutput = true })!;
    }

    /// <summary>Its store.</summary>
    public string Store => Path.Combine(folder, "office.stringline");

    /// <summary>The address that lets a browser in.</summary>
    public Uri Entry { get; private set; } = null!;

    /// <summary>Opens one, and waits until it says where.</summary>
    public static async Task<DeskProcess> Open(LocalDate today)
    {
        var desk = new DeskProcess(today);
        while (await desk.process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
        {
            if (Address().Match(line) is { Success: true } found)
            {
                desk.Entry = new Uri(found.Value);
                return desk;
            }
        }

        desk.Dispose();
        throw new InvalidOperationException("The desk ended before it said where it is open.");
    }

    /// <summary>Megabytes of the machine's memory that it holds now, and the most that it ever held. Linux alone tells (proc(5)).</summary>
    public (long Now, long Most) Megabytes()
    {
        var lines = File.ReadAllLines(string.Create(CultureInfo.InvariantCulture, $"/proc/{process.Id}/status"));
        return (Of("VmRSS:"), Of("VmHWM:"));

        long Of(string name) => long.Parse(
            lines.Single(line => line.StartsWith(name, StringComparison.Ordinal))
                .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)[1],
            CultureInfo.InvariantCulture) / 1024;
    }

    public void Dispose()
    {
        process.Kill();
        process.WaitForExit();
        process.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    [GeneratedRegex(@"http://\S+")]
    private static partial Regex Address();
}
