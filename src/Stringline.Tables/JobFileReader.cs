using System.Globalization;
using System.Text.Json;
using Stringline.Tables.JobFiles.Reading;

namespace Stringline.Tables;

/// <summary>Reads JSON job files. A file is taken whole or refused whole.</summary>
public static class JobFileReader
{
    /// <summary>The name of the format this program reads and writes.</summary>
    public const string Format = "stringline-job/1";

    /// <summary>The largest file read, in bytes. The largest jobs known to us are far below one megabyte.</summary>
    public const int LargestFile = 16 * 1024 * 1024;

    /// <summary>
    /// The most owner's notices in one file. A work has a few; each gives a day of its own beside every completion that may be the true
    /// one, so that the answer to thousands of both would itself fill the memory.
    /// </summary>
    public const int MostOwnersNotices = 100;

    /// <summary>
    /// The most parties in one file. A large job has some dozens; the papers that were given are told toward each of them, so that the
    /// answer grows with parties times papers.
    /// </summary>
    public const int MostParties = 1000;

    /// <summary>
    /// The most construction lenders among them. A work has one or two; what is due to each is told of the others too, so that the answer
    /// grows with their square.
    /// </summary>
    public const int MostLenders = 200;

    /// <summary>Reads a file from disk. A file that is too large is refused by its length, before any of it is read.</summary>
    /// <param name="path">Where it is. Faults name it as given.</param>
    public static JobFileResult ReadFile(string path)
    {
        try
        {
            if (Directory.Exists(path))
                return Refuse(path, "", "a folder", "a job file");
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);
            if (stream.CanSeek && stream.Length > LargestFile)
                return TooLarge(path, stream.Length);

            // A pipe tells no length. One byte more than told shows a file that grew since.
            var told = stream.CanSeek ? stream.Length : 0;
            var bytes = new byte[(told > 0 ? told : LargestFile) + 1];
            var length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return length > LargestFile ? TooLarge(path, length) : Read(bytes.AsMemory(0, length), path);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refuse(path, "", "no such file", "the path of a job file");
        }
        catch (UnauthorizedAccessException)
        {
            return Refuse(path, "", "a file that may not be read", "a file that this user may read");
        }
        catch (Exception e) when (e is IOException or ArgumentException or NotSupportedException)
        {
            return Refuse(path, "", $"a file that cannot be read ({e.Message})", "a job file");
        }
    }

    /// <summary>Reads the bytes of a job file.</summary>
    /// <param name="utf8">The whole file; a byte order mark of UTF-8 may lead it.</param>
    /// <param name="fileName">How faults name it.</param>
    public static JobFileResult Read(ReadOnlyMemory<byte> utf8, string fileName) => Read(utf8, fileName, isNew: _ => true);

    /// <summary>Reads the bytes of a job file of which some may stand in a journal already.</summary>
    internal static JobFileResult Read(ReadOnlyMemory<byte> utf8, string fileName, Func<int, bool> isNew)
    {
        if (utf8.Length > LargestFile)
            return TooLarge(fileName, utf8.Length);
        if (Encodings.Fault(utf8.Span, fileName) is { } encoding)
            return new JobFileResult.Refused([encoding]);
        if (utf8.Span.StartsWith("\uFEFF"u8))
            utf8 = utf8[3..];
        if (utf8.Span.TrimStart(" \t\r\n"u8).IsEmpty)
            return Refuse(fileName, "", "an empty file", "a job file: JSON text in braces { }");

        JsonPiece root;
        try
        {
            root = JsonTree.Read(utf8.Span);
        }
        catch (JsonException e)
        {
            return new JobFileResult.Refused([BrokenJson.Fault(utf8.Span, fileName, e)]);
        }
        catch (TooManyValuesException)
        {
            return Refuse(fileName, "", string.Create(CultureInfo.InvariantCulture, $"a file of more than {JsonTree.MostValues:N0} values"),
                "a job file: a job of many years has some thousands");
        }

        var faults = new FaultList(fileName, utf8);
        var job = new JobReading(new Source(faults, isNew)).Job(root);
        return job is not null && faults.IsEmpty ? new JobFileResult.Read(job) : new JobFileResult.Refused(faults.InFileOrder);
    }

    private static JobFileResult.Refused TooLarge(string file, long bytes) => Refuse(
        file,
        "",
        string.Create(CultureInfo.InvariantCulture, $"a file of {bytes:N0} bytes"),
        string.Create(CultureInfo.InvariantCulture, $"at most {LargestFile:N0} bytes (16 MiB)"));

    private static JobFileResult.Refused Refuse(string file, string path, string found, string expected) =>
        new([new Fault(file, path, found, expected)]);
}
