using System.Globalization;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>Job files and papers to store; all invented.</summary>
internal static class Samples
{
    /// <summary>The smallest job file.</summary>
    public static JobFile Bare(string name = "Alder Court") => new()
    {
        Name = name,
        Work = new Work { Kind = WorkKind.Private, Site = new Site { County = "Yolo" } },
        Claimant = new Claimant { Name = "Sierra Block Supply, Inc.", Role = ClaimantRole.Supplier },
    };

    /// <summary>The demo job.</summary>
    public static JobFile Demo() => Read(File.ReadAllBytes(Repository.Path("data/demo/alder-court.json")));

    /// <summary>A job of so many entries.</summary>
    public static JobFile Long(string name, int entries) => Bare(name) with
    {
        Entries = [.. Enumerable.Range(0, entries).Select(i => Delivery(i, 100m + i))],
    };

    public static Furnished Delivery(int index, decimal amount = 100m, string? reference = null) => new()
    {
        Index = index,
        On = DayFact.On(new LocalDate(2026, 3, 2).PlusDays(index % 60)),
        Until = DayFact.On(new LocalDate(2026, 3, 2).PlusDays(index % 60)),
        Amount = amount,
        Text = string.Create(CultureInfo.InvariantCulture, $"Block, pallet {index}"),
        Ref = reference ?? string.Create(CultureInfo.InvariantCulture, $"INV-{index}"),
    };

    public static JobChange Entry(Entry entry, params Proof[] proofs) => new JobChange.Happened(entry) { Proofs = proofs };

    public static JobFile Read(byte[] bytes) => JobFileReader.Read(bytes, "job.json") is JobFileResult.Read read
        ? read.Job
        : throw new InvalidOperationException("The sample is refused.");

    /// <summary>The smallest picture: one white point (PNG, ISO/IEC 15948), with a number in it so that each differs.</summary>
    public static Proof Picture(int number = 0, string name = "receipt.png") => Taken(name, [
        0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52, 0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0, 0x3A,
        0x7E, 0x9B, 0x55,
        .. BitConverter.GetBytes(number),
        0, 0, 0, 0, 0x49, 0x45, 0x4E, 0x44, 0xAE, 0x42, 0x60, 0x82]);

    /// <summary>The shortest text that is a PDF by its beginning and end.</summary>
    public static Proof Paper(string text, string name = "receipt.pdf") =>
        Taken(name, System.Text.Encoding.UTF8.GetBytes($"%PDF-1.7\n% {text}\ntrailer << >>\n%%EOF\n"));

    public static Proof Taken(string name, byte[] content) => Proof.Of(name, content) is ProofResult.Taken taken
        ? taken.Proof
        : throw new InvalidOperationException("The sample is no proof.");
}
