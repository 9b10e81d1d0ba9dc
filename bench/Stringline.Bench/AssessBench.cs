using BenchmarkDotNet.Attributes;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Counting;

namespace Stringline.Bench;

/// <summary>One assessment with all remedies, inside the library.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class AssessBench
{
    private static readonly LocalDate AsOf = new(2026, 5, 20);
    private readonly JobFile ten = BenchJobs.Ten();
    private readonly JobFile threeHundred = BenchJobs.Of(300);

    [Benchmark]
    public Assessment TenEntries() => Assessment.Of(ten, AsOf, OpenDays.Statutory);

    [Benchmark]
    public Assessment ThreeHundredEntries() => Assessment.Of(threeHundred, AsOf, OpenDays.Statutory);
}
