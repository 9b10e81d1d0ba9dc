using System.Globalization;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Gathers the faults of one file: the first hundred are told, the others counted.</summary>
internal sealed class FaultList(string file, ReadOnlyMemory<byte> utf8)
{
    /// <summary>So many are told at most.</summary>
    public const int MostTold = 100;

    // The last in the file first, so that it makes room for one before it.
    private readonly PriorityQueue<Fault, (int At, long Met)> told =
        new(Comparer<(int At, long Met)>.Create((one, other) => other.CompareTo(one)));

    private long met;

    /// <summary>The faults, in the file's order; faults at one place in the order found; at the end how many more there are.</summary>
    public IReadOnlyList<Fault> InFileOrder =>
    [
        .. told.UnorderedItems.OrderBy(fault => fault.Priority).Select(fault => fault.Element),
        .. met <= MostTold ? [] : (Fault[])[new Fault(
            file, "", string.Create(CultureInfo.InvariantCulture,
                $"{met - MostTold:N0} more {(met == MostTold + 1 ? "fault" : "faults")}, not told one by one"),
            "a file without any; mend those above first, since one often makes many")],
    ];

    /// <summary>Whether there is none.</summary>
    public bool IsEmpty => met == 0;

    /// <summary>A fault of a value that is there.</summary>
    public void Add(JsonPiece piece, string path, string expected)
    {
        if (Counts(piece.Start))
            Keep(piece.Start, path, Excerpt.Of(utf8.Span, piece), expected);
    }

    /// <summary>The same; what would be right is sought only where the fault is told. (A file can hold a million of them.)</summary>
    public void Add(JsonPiece piece, string path, Func<string> expected)
    {
        if (Counts(piece.Start))
            Keep(piece.Start, path, Excerpt.Of(utf8.Span, piece), expected());
    }

    /// <summary>A fault told in words.</summary>
    public void Add(int at, string path, string found, string expected)
    {
        if (Counts(at))
            Keep(at, path, found, expected);
    }

    /// <summary>The same; where it is and what would be right are put in words only where the fault is told.</summary>
    public void Add(int at, Func<string> path, string found, Func<string> expected)
    {
        if (Counts(at))
            Keep(at, path(), found, expected());
    }

    // Whether it is among the first in the file, as far as is known.
    private bool Counts(int at)
    {
        met++;
        return told.Count < MostTold || (told.TryPeek(out _, out var last) && (at, met).CompareTo(last) < 0);
    }

    private void Keep(int at, string path, string found, string expected)
    {
        told.Enqueue(new Fault(file, path, found, expected), (at, met));
        if (told.Count > MostTold)
            told.Dequeue();
    }
}
