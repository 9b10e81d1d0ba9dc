using System.Buffers.Binary;
using System.Numerics;

namespace Stringline.Store.Sql;

/// <summary>
/// What SQLite takes of a write-ahead log that an unclean end left: its frames up to the first that does not fit. What follows it drops
/// without a word, and writes over it. Read by SQLite's published format (https://www.sqlite.org/fileformat2.html, "The Write-Ahead Log"):
/// every frame repeats the two salts of the log, and carries a checksum over all frames before it.
/// </summary>
internal static class WriteAheadLog
{
    private const int HeaderSize = 32;
    private const int FrameHeaderSize = 24;
    private const int UsualPage = 4096;
    private const uint Magic = 0x377F0682;
    private const uint Version = 3007000;

    // While somebody writes, each reading finds the log at another place.
    private const int MostReadings = 20;

    /// <summary>Reads a log.</summary>
    /// <param name="path">Its file.</param>
    /// <returns>What was lost; null where there is no log, or all that was kept in it fits.</returns>
    public static LostFrames? Lost(string path)
    {
        // Of two readings that find the same frame unfit the second began after what follows that frame was written, and so after the frame
        // itself was: nobody is at work on it.
        LostFrames? before = null;
        for (var reading = 0; reading < MostReadings; reading++)
        {
            var now = Read(path);
            if (now is null || (before is not null && (now.Salts, now.Fit) == (before.Salts, before.Fit)))
                return now;
            before = now;
        }

        return null;
    }

    private static LostFrames? Read(string path)
    {
        FileStream log;
        try
        {
            log = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            // Others may have the store open, and take the log away and make it again at any moment.
            return null;
        }

        using var held = log;
        var header = new byte[HeaderSize];
        if (log.ReadAtLeast(header, HeaderSize, throwOnEndOfStream: false) < HeaderSize)
            return null;
        var lost = Walk(log, header);

        // One who begins the log anew meanwhile writes another header first.
        var after = new byte[HeaderSize];
        log.Position = 0;
        return log.ReadAtLeast(after, HeaderSize, throwOnEndOfStream: false) == HeaderSize && after.AsSpan().SequenceEqual(header)
            ? lost : null;
    }

    private static LostFrames? Walk(FileStream log, byte[] header)
    {
        var size = Number(header, 8);
        var page = size is >= 512 and <= 65536 && BitOperations.IsPow2(size) ? (int)size : UsualPage;
        var bigEndian = (Number(header, 0) & 1) == 1;
        var sum = Checksum(default, header.AsSpan(0, 24), bigEndian);
        var fits = (Number(header, 0) & ~1u) == Magic && Number(header, 4) == Version && page == size
            && sum == (Number(header, 24), Number(header, 28));
        var begun = fits;
        int fit = 0, lost = 0, changes = 0;
        var lastLost = false;
        var frame = new byte[FrameHeaderSize + page];
        while (log.ReadAtLeast(frame, frame.Length, throwOnEndOfStream: false) == frame.Length)
        {
            // One of both is enough: a flipped bit may be in the other. Of an earlier round of the log both are others.
            var (salt, other) = (Number(frame, 8) == Number(header, 16), Number(frame, 12) == Number(header, 20));
            var next = Checksum(Checksum(sum, frame.AsSpan(0, 8), bigEndian), frame.AsSpan(FrameHeaderSize), bigEndian);
            fits &= salt && other && Number(frame, 0) > 0 && next == (Number(frame, 16), Number(frame, 20));
            lastLost = !fits && (salt || other);
            if (fits)
                (fit, sum) = (fit + 1, next);
            else if (lastLost)
                (lost, changes) = (lost + 1, changes + (Number(frame, 4) > 0 ? 1 : 0));
        }

        // The number of pages after a change stands only in its last frame: without one the frames are of a change that was not kept. One
        // frame alone, with an earlier round behind it, is one of which a killed program had written only the head.
        var cut = begun && lost == 1 && !lastLost;
        return changes == 0 || cut ? null : new LostFrames(fit, lost, changes, BinaryPrimitives.ReadUInt64BigEndian(header.AsSpan(16)));
    }

    private static uint Number(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt32BigEndian(bytes[at..]);

    private static (uint, uint) Checksum((uint One, uint Two) sum, ReadOnlySpan<byte> bytes, bool bigEndian)
    {
        for (var at = 0; at < bytes.Length; at += 8)
        {
            var (first, second) = bigEndian
                ? (BinaryPrimitives.ReadUInt32BigEndian(bytes[at..]), BinaryPrimitives.ReadUInt32BigEndian(bytes[(at + 4)..]))
                : (BinaryPrimitives.ReadUInt32LittleEndian(bytes[at..]), BinaryPrimitives.ReadUInt32LittleEndian(bytes[(at + 4)..]));
            sum.One = unchecked(sum.One + first + sum.Two);
            sum.Two = unchecked(sum.Two + second + sum.One);
        }

        return sum;
    }
}

/// <summary>What a write-ahead log holds that SQLite will not take.</summary>
/// <param name="Fit">Frames that fit, from the first on.</param>
/// <param name="Lost">Frames of the same round after them.</param>
/// <param name="Changes">How many of those end a change that was kept.</param>
/// <param name="Salts">The salts of the round.</param>
internal sealed record LostFrames(int Fit, int Lost, int Changes, ulong Salts);
