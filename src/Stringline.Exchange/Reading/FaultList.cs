namespace Stringline.Exchange.Reading;

/// <summary>Gathers the faults of one file.</summary>
internal sealed class FaultList(string file, ReadOnlyMemory<byte> utf8)
{
    private readonly List<Placed> faults = [];

    /// <summary>Every fault, in the file's order; faults at one place in the order found.</summary>
    public IReadOnlyList<Fault> InFileOrder => [.. faults.OrderBy(f => f.At).Select(f => f.Fault)];

    /// <summary>Whether there is none.</summary>
    public bool IsEmpty => faults.Count == 0;

    /// <summary>A fault of a value that is there.</summary>
    public void Add(JsonPiece piece, string path, string expected) =>
        Add(piece.Start, path, Excerpt.Of(utf8.Span, piece), expected);

    /// <summary>A fault told in words.</summary>
    public void Add(int at, string path, string found, string expected) =>
        faults.Add(new Placed(at, new Fault(file, path, found, expected)));

    private sealed record Placed(int At, Fault Fault);
}
