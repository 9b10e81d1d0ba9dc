using BenchmarkDotNet.Running;
using Stringline.Bench;

BenchmarkSwitcher.FromAssembly(typeof(AssessBench).Assembly).Run(args);
