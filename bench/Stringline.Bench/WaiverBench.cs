using BenchmarkDotNet.Attributes;
using Stringline.Law.Facts;
using Stringline.Papers;
using Stringline.Papers.Waiver;

namespace Stringline.Bench;

/// <summary>One conditional progress waiver after another from one press, and the check of one.</summary>
[MemoryDiagnoser]
public class WaiverBench
{
    private static readonly LocalDate Day = new(2026, 5, 6);
    private readonly WaiverPress press = new();
    private PaperFile printed = null!;
    private int number;

    [GlobalSetup]
    public void Setup() => printed = press.Print(Waiver(0), Day);

    [Benchmark]
    public PaperFile Print() => press.Print(Waiver(++number), Day);

    [Benchmark]
    public bool Check() => WaiverPress.Check(printed, Waiver(0)).Passed;

    private static WaiverToBe Waiver(int number) => new()
    {
        Form = WaiverForm.ConditionalProgress,
        Claimant = "Quillback Lumber & Truss, Inc.",
        Customer = $"Fennimore Framing {number}, Inc.",
        JobLocation = $"{number} Alder Court, Woodland, California 95695",
        Owner = "Alder Court Two, LLC",
        Through = Day,
        Amount = 1_000m + number,
        Maker = "Fennimore Framing, Inc.",
        Payee = "Quillback Lumber & Truss, Inc.",
        SignerTitle = "Credit Manager",
    };
}
