using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Stringline.Tables.Tests.Growing;

/// <summary>
/// What a piece of work costs this thread: time of its processor, which other programs do not take from it, and bytes asked for.
/// </summary>
internal readonly record struct Cost(double Seconds, long Bytes)
{
    private const int ThreadTime = 3;

    /// <summary>Does it once.</summary>
    public static Cost Of(Action work)
    {
        var bytes = GC.GetAllocatedBytesForCurrentThread();
        var start = Now();
        work();
        return new Cost(Now() - start, GC.GetAllocatedBytesForCurrentThread() - bytes);
    }

    /// <summary>The lesser of each.</summary>
    public Cost Or(Cost other) => new(Math.Min(Seconds, other.Seconds), Math.Min(Bytes, other.Bytes));

    private static double Now() => OperatingSystem.IsLinux() && GetTime(ThreadTime, out var time) == 0
        ? time.Seconds + (time.Nanoseconds / 1e9)
        : Stopwatch.GetElapsedTime(0).TotalSeconds;

    [DllImport("libc", EntryPoint = "clock_gettime")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int GetTime(int clock, out Time time);

    [StructLayout(LayoutKind.Sequential)]
    private struct Time
    {
        public nint Seconds;
        public nint Nanoseconds;
    }
}
