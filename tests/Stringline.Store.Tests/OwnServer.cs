using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Runtime.InteropServices;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>A PostgreSQL server of a test's own, which it may stop as hard as it likes: nobody else's tests are on it.</summary>
internal sealed class OwnServer : IDisposable
{
    private const int Quit = 3;

    private readonly string folder;
    private readonly string bin;
    private readonly int port = FreePort();

    private OwnServer(string bin)
    {
        SlowAttribute.Must(Slow.PostgreSql);
        this.bin = bin;
        folder = Scratch.Folder();

        // PostgreSQL refuses to run as root.
        if (Environment.IsPrivilegedProcess)
            Run("chown postgres: \"$1\"", folder);
        AsServer($"\"{bin}/initdb\" -D \"$1/data\" -A trust -U app -E UTF8 --locale=C.UTF-8 --no-sync");
        Start();
    }

    /// <summary>The address of a store in a schema on it.</summary>
    public string Address(string schema) => $"postgres:{Connection};Search Path={schema};Maximum Pool Size=8;Timeout=30";

    /// <summary>How to connect to it.</summary>
    public string Connection => string.Create(CultureInfo.InvariantCulture, $"Host=127.0.0.1;Port={port};Username=app;Database=postgres");

    /// <summary>A new server; null where the programs that make one are not on this machine.</summary>
    public static OwnServer? Make() => Bin() is { } bin ? new OwnServer(bin) : null;

    /// <summary>
    /// Stops it as <c>pg_ctl stop -m immediate</c> does: every process of it ends at once, nothing is finished, and it recovers when it
    /// starts again.
    /// </summary>
    public void StopHard()
    {
        var process = int.Parse(File.ReadLines(Path.Combine(folder, "data", "postmaster.pid")).First(), CultureInfo.InvariantCulture);
        Assert.Equal(0, Kill(process, Quit));
        Assert.True(SpinWait.SpinUntil(() => Kill(process, 0) != 0, TimeSpan.FromSeconds(30)), "The server does not stop.");
    }

    /// <summary>Starts it again.</summary>
    public void Start() => AsServer(string.Create(CultureInfo.InvariantCulture,
        $"\"{bin}/pg_ctl\" -D \"$1/data\" -l \"$1/log\" -w -t 60 -o \"-c listen_addresses=127.0.0.1 -c unix_socket_directories=$1 -c "
            + $"port={port} -c fsync=off\" start"));

    /// <inheritdoc/>
    public void Dispose()
    {
        if (File.Exists(Path.Combine(folder, "data", "postmaster.pid")))
            StopHard();
        Directory.Delete(folder, recursive: true);
    }

    private static string? Bin()
    {
        var debian = Directory.Exists("/usr/lib/postgresql")
            ? Directory.GetDirectories("/usr/lib/postgresql").Select(version => Path.Combine(version, "bin")) : [];
        var path = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        return debian.OrderDescending(StringComparer.Ordinal).Concat(path)
            .FirstOrDefault(folder => File.Exists(Path.Combine(folder, "initdb")) && File.Exists(Path.Combine(folder, "pg_ctl")));
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private void AsServer(string command) =>
        Run(Environment.IsPrivilegedProcess
            ? $"cd \"$1\" && exec runuser -u postgres -- {command}" : $"cd \"$1\" && exec {command}", folder);

    // Its processes live on, so they get nothing of the test's own to hold on to.
    private static void Run(string command, string folder)
    {
        using var process = Process.Start("bash", ["-c", $"({command}) </dev/null >>\"$1/said\" 2>&1", "bash", folder]);
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{command}: {File.ReadAllText(Path.Combine(folder, "said"))}");
    }

    [DllImport("libc", EntryPoint = "kill")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Kill(int process, int signal);
}
