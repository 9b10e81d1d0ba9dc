using System.Buffers.Text;

namespace Stringline.Papers.Layout;

/// <summary>
/// The objects of a file that PDFsharp wrote, as they lie in it: one cross-reference table, every length a number in its stream's
/// dictionary.
/// </summary>
/// <remarks>
/// Places are plain numbers: a value of the framework inside one of its collections is compiled anew at each start of the program.
/// </remarks>
internal sealed class WrittenObjects
{
    private const int RowLength = 20;

    private readonly byte[] file;
    private readonly int[] bounds;

    /// <summary>Finds the objects.</summary>
    /// <param name="file">Room for a file.</param>
    /// <param name="length">How much of it the file is.</param>
    /// <exception cref="InvalidDataException">The file is not laid out so.</exception>
    public WrittenObjects(byte[] file, int length)
    {
        this.file = file;
        Table = TableOf(file.AsSpan(0, length));
        Starts = StartsOf(file, Table);
        // Each ends where the next begins, the last at the table.
        bounds = [.. Array.FindAll(Starts, start => start > 0), Table];
        Array.Sort(bounds);
    }

    /// <summary>Where the cross-reference table is.</summary>
    public int Table { get; }

    /// <summary>Where each object begins, by its number; 0 for one that is free.</summary>
    public int[] Starts { get; }

    /// <summary>How many there are.</summary>
    public int Count => bounds.Length - 1;

    /// <summary>Where one begins in the file, by its place in it.</summary>
    public int StartOf(int place) => bounds[place];

    /// <summary>One object, by its place in the file.</summary>
    public ReadOnlySpan<byte> this[int place] => file.AsSpan(bounds[place], bounds[place + 1] - bounds[place]);

    /// <summary>Its dictionary: all of it up to the data of its stream, where it has one.</summary>
    public static ReadOnlySpan<byte> Dictionary(ReadOnlySpan<byte> piece) =>
        piece.IndexOf("stream\n"u8) is >= 0 and var stream ? piece[..stream] : piece;

    /// <summary>Whether it has a stream, and where within the object its data are.</summary>
    public static bool HasData(ReadOnlySpan<byte> piece, out int from, out int length)
    {
        (from, length) = (0, 0);
        var dictionary = Dictionary(piece);
        if (dictionary.Length == piece.Length)
            return false;
        from = dictionary.Length + "stream\n".Length;
        Length(dictionary, out length, out _);
        return true;
    }

    /// <summary>The length that a dictionary says, and where its digits stand; returns where they begin.</summary>
    public static int Length(ReadOnlySpan<byte> dictionary, out int length, out int digits)
    {
        var key = "/Length "u8;
        var at = dictionary.IndexOf(key);
        if (at < 0 || !Utf8Parser.TryParse(dictionary[(at + key.Length)..], out length, out digits))
            throw new InvalidDataException("A stream of the file does not say how long it is.");
        return at + key.Length;
    }

    private static int TableOf(ReadOnlySpan<byte> file)
    {
        var key = "startxref\n"u8;
        var last = file.LastIndexOf(key);
        if (last < 0)
            throw new InvalidDataException("The file says nowhere where its cross-reference table is.");
        return Utf8Parser.TryParse(file[(last + key.Length)..], out int table, out _) && table < file.Length
            && file[table..].StartsWith("xref\n0 "u8) ? table
            : throw new InvalidDataException("The cross-reference table is not where the file says.");
    }

    private static int[] StartsOf(byte[] file, int table)
    {
        var rows = file.AsSpan(table + "xref\n0 ".Length);
        if (!Utf8Parser.TryParse(rows, out int count, out _))
            throw new InvalidDataException("The cross-reference table does not say how many objects it has.");
        rows = rows[(rows.IndexOf((byte)'\n') + 1)..];
        var starts = new int[count];
        for (var i = 0; i < count; i++)
        {
            var row = rows.Slice(i * RowLength, RowLength);
            starts[i] = row[17] == 'n' && Utf8Parser.TryParse(row[..10], out int start, out _) ? start : 0;
        }

        return starts;
    }
}
