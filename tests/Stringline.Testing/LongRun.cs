using System.Diagnostics;
using System.Globalization;

namespace Stringline.Testing;

/// <summary>
/// Whether <c>bench/fuzz-input</c> runs the tests of bad files, with <c>STRINGLINE_BAD_FILES=all</c>: in their full number, one after the
/// other, with the bounds of time and memory held strictly. In <c>./test</c> there are fewer, beside other programs.
/// </summary>
public static class LongRun
{
    private const long MostMemory = 600L * 1024 * 1024;

    /// <summary>Whether it is one.</summary>
    public static bool Is { get; } = Environment.GetEnvironmentVariable("STRINGLINE_BAD_FILES") == "all";

    /// <summary>How many.</summary>
    public static int Of(int usual, int all) => Is ? all : usual;

    /// <summary>What came of it, in words; in a long run with the slowest and the memory.</summary>
    /// <exception cref="InvalidOperationException">It took more memory than it may.</exception>
    public static string Told(string what, int refused, int taken)
    {
        var told = string.Create(CultureInfo.InvariantCulture, $"{what}: {refused:N0} refused, {taken:N0} taken");
        if (!Is)
            return told;
        using var program = Process.GetCurrentProcess();
        var most = program.PeakWorkingSet64;
        told += string.Create(CultureInfo.InvariantCulture,
            $"; slowest {Hang.Slowest.TotalMilliseconds:N0} ms of the processor, most memory {most / 1_000_000:N0} MB");
        return most <= MostMemory ? told : throw new InvalidOperationException(told);
    }
}
