using System.Diagnostics;
using System.Text;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>
/// The program as a process. <c>STRINGLINE_TOOL</c> names the published one; without it, the one built with the tests runs.
/// </summary>
internal static class Tool
{
    /// <summary>The published program, or null.</summary>
    public static string? Published =>
        Environment.GetEnvironmentVariable("STRINGLINE_TOOL") is { Length: > 0 } path ? Repository.Path(path) : null;

    /// <summary>How a shell starts the program.</summary>
    public static string Command =>
        Published is { } published ? $"'{published}'" : $"dotnet '{Path.Combine(AppContext.BaseDirectory, "stringline.dll")}'";

    /// <summary>Runs the program and waits for its end.</summary>
    public static Task<Answer> Run(params string[] args) => RunWith([], args);

    /// <summary>Runs the program with these variables in its environment, and waits for its end.</summary>
    public static async Task<Answer> RunWith(IReadOnlyList<(string Name, string Value)> environment, params string[] args)
    {
        string[] command = Published is { } published ? [published] : ["dotnet", Path.Combine(AppContext.BaseDirectory, "stringline.dll")];
        var start = new ProcessStartInfo(command[0], [.. command[1..], .. args])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        start.Environment["LC_ALL"] = "C.UTF-8";
        start.Environment.Remove("STRINGLINE_STORE");
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return new Answer(process.ExitCode, await output, await errors, watch.Elapsed);
    }

    internal sealed record Answer(int Status, string Output, string Errors, TimeSpan Took);
}
