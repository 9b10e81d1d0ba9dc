using System.Globalization;
using BenchmarkDotNet.Running;
using Stringline.Bench;

if (args is ["store", var address, var jobs, var entries])
    StoreBench.Run(address, int.Parse(jobs, CultureInfo.InvariantCulture), int.Parse(entries, CultureInfo.InvariantCulture));
else
    BenchmarkSwitcher.FromAssembly(typeof(AssessBench).Assembly).Run(args);
