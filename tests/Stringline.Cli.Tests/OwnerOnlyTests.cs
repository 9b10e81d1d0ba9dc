using System.Diagnostics;
using System.Runtime.Versioning;
using System.Text.RegularExpressions;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>
/// What another account of the machine can do: nothing. The program runs with a umask that keeps nothing back (POSIX, umask), and where
/// the test may make an account (as root), that account tries to read the store and to use the desk.
/// </summary>
[UnsupportedOSPlatform("windows")]
[Slow(Slow.Lasting)]
public sealed partial class OwnerOnlyTests : IDisposable
{
    private const UnixFileMode ForFiles = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private const UnixFileMode ForFolders = ForFiles | UnixFileMode.UserExecute;

    private readonly string root = Scratch.Folder();

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private string Home => Path.Combine(root, "home");

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    [Attack("umask 000")]
    public async Task Whatever_the_umask_is_what_holds_a_stores_data_is_made_for_its_owner_alone()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no umask.");
        File.WriteAllText(Path.Combine(root, "invoices.csv"), """
            job number,job name,customer,invoice number,invoice date,amount,county
            J1,Job 1,Acme,I1,03/02/2026,100.00,Yolo
            J2,Job 2,Acme,I2,never,x,Yolo

            """);
        var given = Everything().ToHashSet();
        await Run("demo-office --out off/deep --as-of 2026-06-22 --jobs 3");
        await Run("assess --all --store off/deep/office-2026-06-22.stringline --as-of 2026-06-22");
        await Run("store backup --store off/deep/office-2026-06-22.stringline backups/monday");
        await Run("store restore backups/monday --store restored/there.stringline");
        await Run("store restore backups/monday --store restored/there.stringline --replace");
        await Run("store export --store restored/there.stringline --out everything");
        await Run("import invoices.csv --store new/made.stringline --claimant A --role supplier --customer-is subcontractor --county Yolo");
        var address = await Open("off/deep/office-2026-06-22.stringline", async _ =>
        {
            // While the desk is open: its log and its keys are there.
            Judge(given);
            Assert.Contains(Everything(), path => path.EndsWith("-wal", StringComparison.Ordinal));
            Assert.Contains(Everything(), path => path.Contains("/keys", StringComparison.Ordinal));
            await Task.CompletedTask;
        });
        Assert.NotEmpty(address);
        Judge(given);
    }

    [Fact]
    [Attack("secret in the list of processes")]
    public async Task The_browser_is_opened_with_a_page_and_the_secret_stands_in_no_list_of_arguments()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Looks in /proc.");
        var tools = Directory.CreateDirectory(Path.Combine(root, "tools")).FullName;
        var stand = Path.Combine(tools, "xdg-open");
        File.WriteAllText(stand, $"""
            #!/bin/sh
            printf '%s' "$1" >'{root}/opened.part'
            mv '{root}/opened.part' '{root}/opened'

            """);
        File.SetUnixFileMode(stand, ForFolders);
        string page = "";
        await Open("s.stringline", async address =>
        {
            while (!File.Exists(Path.Combine(root, "opened")))
                await Task.Delay(20, Stop);
            page = File.ReadAllText(Path.Combine(root, "opened"));
            Assert.Equal((ForFiles, ForFolders), (File.GetUnixFileMode(page), File.GetUnixFileMode(Path.GetDirectoryName(page)!)));
            Assert.Contains($"url={address}\"", File.ReadAllText(page), StringComparison.Ordinal);

            var secret = new Uri(address).Segments[^1];
            foreach (var arguments in Directory.EnumerateDirectories("/proc").Select(process => process + "/cmdline"))
            {
                string text;
                try
                {
                    text = File.Exists(arguments) ? await File.ReadAllTextAsync(arguments, Stop) : "";
                }
                catch (IOException)
                {
                    continue;   // It has just ended.
                }

                Assert.DoesNotContain(secret, text, StringComparison.Ordinal);
            }

            using var browser = new HttpClient();
            Assert.Contains("Stringline", await browser.GetStringAsync(new Uri(address), Stop), StringComparison.Ordinal);
            Assert.False(Directory.Exists(Path.GetDirectoryName(page)), "The page is still there after the browser was let in.");
        }, browser: true, tools);
        Assert.NotEmpty(page);
    }

    [Fact]
    [Attack("another account of the machine reads the store or asks the desk")]
    public async Task Another_account_of_the_machine_neither_reads_the_store_nor_uses_the_desk()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess, "Only root may make an account to try with.");
        Assert.SkipUnless(File.Exists("/usr/sbin/useradd") && File.Exists("/usr/bin/curl"), "There is no useradd or no curl here.");
        var other = $"sl-{Environment.ProcessId}";
        File.SetUnixFileMode(root, ForFolders | UnixFileMode.OtherRead | UnixFileMode.OtherExecute);
        Assert.Equal(0, (await Shell($"/usr/sbin/useradd --no-create-home --shell /bin/sh {other}")).Status);
        try
        {
            await Open("s.stringline", async address =>
            {
                foreach (var file in Directory.EnumerateFiles(root, "s.stringline*"))
                    Assert.Contains("ermission denied", (await As(other, $"head -c 15 '{file}'")).Text, StringComparison.Ordinal);
                var page = new Uri(new Uri(address), "/jobs/new");
                var (status, text) = await As(other, $"curl -s -w '%{{http_code}}' '{page}'");
                Assert.Equal(0, status);
                Assert.EndsWith("403", text, StringComparison.Ordinal);

                // What it is refused is there: whoever knows the address gets it.
                Assert.EndsWith("200", (await As(other, $"curl -s -L -c /dev/null -w '%{{http_code}}' '{address}'")).Text,
                    StringComparison.Ordinal);
            });
        }
        finally
        {
            await Shell($"/usr/sbin/userdel {other}");
        }
    }

    private void Judge(HashSet<string> given)
    {
        List<string> made = [.. Everything().Where(path => !given.Contains(path))];
        Assert.NotEmpty(made);
        Assert.Empty(made.Where(path => File.GetUnixFileMode(path) != (Directory.Exists(path) ? ForFolders : ForFiles))
            .Select(path => $"{Path.GetRelativePath(root, path)}: {File.GetUnixFileMode(path)}"));
    }

    private IEnumerable<string> Everything() =>
        Directory.EnumerateFileSystemEntries(root, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 });

    // Opens a desk, waits for its address, does something, and closes it.
    private async Task<string> Open(string store, Func<string, Task> meanwhile, bool browser = false, string? tools = null)
    {
        Directory.CreateDirectory(Home, ForFolders);
        var command = $"exec {Tool.Command} desk --new --store {store} --port 0 --as-of 2026-06-22{(browser ? "" : " --no-browser")}";
        using var process = Process.Start(Start(command, tools))!;
        try
        {
            string? line;
            Match address;
            do
            {
                line = await process.StandardOutput.ReadLineAsync(Stop);
                address = Address().Match(line ?? throw new InvalidOperationException(await process.StandardError.ReadToEndAsync(Stop)));
            }
            while (!address.Success);
            await meanwhile(address.Value);
            return address.Value;
        }
        finally
        {
            await Shell($"kill -TERM {process.Id}");
            await process.WaitForExitAsync(CancellationToken.None);
        }
    }

    private async Task Run(string arguments)
    {
        Directory.CreateDirectory(Home, ForFolders);
        using var process = Process.Start(Start($"exec {Tool.Command} {arguments} 2>&1"))!;
        var output = await process.StandardOutput.ReadToEndAsync(Stop);
        await process.WaitForExitAsync(Stop);
        Assert.True(process.ExitCode is 0 or 1, output);
    }

    private ProcessStartInfo Start(string command, string? tools = null)
    {
        var start = new ProcessStartInfo("/bin/sh", ["-c", "umask 000; " + command])
        {
            WorkingDirectory = root,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        (start.Environment["HOME"], start.Environment["LC_ALL"]) = (Home, "C.UTF-8");
        start.Environment.Remove("STRINGLINE_STORE");
        start.Environment.Remove("XDG_DATA_HOME");
        if (tools is not null)
            start.Environment["PATH"] = $"{tools}:{start.Environment["PATH"]}";
        return start;
    }

    private static Task<(int Status, string Text)> As(string account, string command) => Shell($"su {account} -s /bin/sh -c \"{command}\"");

    private static async Task<(int Status, string Text)> Shell(string command)
    {
        using var process = Process.Start(new ProcessStartInfo("/bin/sh", ["-c", command + " 2>&1"]) { RedirectStandardOutput = true })!;
        var text = await process.StandardOutput.ReadToEndAsync(CancellationToken.None);
        await process.WaitForExitAsync(CancellationToken.None);
        return (process.ExitCode, text);
    }

    [GeneratedRegex("http://[^ ]+/open/[0-9a-f]+")]
    private static partial Regex Address();
}
