using System.Diagnostics;

namespace Stringline.Places.Tests;

/// <summary>Runs a script of this repository with Node, which the build needs anyway.</summary>
internal static class NodeScript
{
    /// <summary>What it prints.</summary>
    public static string Run(string script, params IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo("node") { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(Testing.Repository.Path(script));
        foreach (var argument in arguments)
            start.ArgumentList.Add(argument);
        using var process = Process.Start(start) ?? throw new InvalidOperationException("node did not start.");
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{script}: {errors.GetAwaiter().GetResult()}");
        return output;
    }
}
