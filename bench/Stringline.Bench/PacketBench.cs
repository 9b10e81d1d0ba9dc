using BenchmarkDotNet.Attributes;
using Stringline.Tables;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Counting;
using Stringline.Papers;
using Stringline.Papers.Catalogue;
using Stringline.Testing;

namespace Stringline.Bench;

/// <summary>The packet of the demo job once everything is warm: laid out, written, read back and checked.</summary>
[MemoryDiagnoser]
[SimpleJob(warmupCount: 15, iterationCount: 15)]
public class PacketBench
{
    private readonly JobFile demo = ((JobFileResult.Read)JobFileReader.ReadFile(Repository.Path("data/demo/alder-court.json"))).Job;
    private Assessment assessment = null!;

    [GlobalSetup]
    public void Assess() => assessment = Assessment.Of(demo, new LocalDate(2026, 6, 22), OpenDays.Statutory);

    [Benchmark]
    public PacketOutcome ClaimPacketOfTheDemoJob() =>
        PaperMaker.Make(PaperCatalogue.ClaimOfLien, demo, assessment, PaperOptions.None);
}
