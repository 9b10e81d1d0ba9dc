using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Stringline.Comparison;

/// <summary>
/// What a piece of work took: by the clock, and of the processor. The second hardly depends on what else the machine does.
/// </summary>
internal readonly record struct Spent(TimeSpan Clock, TimeSpan Processor)
{
    public static Spent operator -(Spent whole, Spent part) => new(whole.Clock - part.Clock, whole.Processor - part.Processor);

    /// <summary>Measures work inside this process.</summary>
    public static Spent On(Action work)
    {
        var before = Environment.CpuUsage.TotalTime;
        var watch = Stopwatch.StartNew();
        work();
        watch.Stop();
        return new Spent(watch.Elapsed, Environment.CpuUsage.TotalTime - before);
    }

    /// <summary>
    /// Measures work that is done by a process started and waited for inside it, and by the processes that this one starts.
    /// </summary>
    /// <exception cref="InvalidOperationException">The system does not tell.</exception>
    public static Spent OnChildren(Action work)
    {
        var before = ProcessorTimeOfChildren();
        var watch = Stopwatch.StartNew();
        work();
        watch.Stop();
        return new Spent(watch.Elapsed, ProcessorTimeOfChildren() - before);
    }

    private static TimeSpan ProcessorTimeOfChildren()
    {
        const int Children = -1;
        // struct rusage of a 64-bit Linux begins with user and system time, each seconds and microseconds; 144 bytes in all.
        var usage = new long[32];
        return GetUsage(Children, usage) == 0
            ? TimeSpan.FromMicroseconds(((usage[0] + usage[2]) * 1_000_000) + usage[1] + usage[3])
            : throw new InvalidOperationException($"getrusage failed with error {Marshal.GetLastPInvokeError()}; the comparison needs "
                + $"64-bit Linux.");
    }

    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    [DllImport("libc", EntryPoint = "getrusage", SetLastError = true)]
    private static extern int GetUsage(int who, [Out] long[] usage);
}
