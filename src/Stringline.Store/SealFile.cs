using System.Globalization;
using System.Text;

namespace Stringline.Store;

/// <summary>A seal with every job, as a small text file that proves itself by its last line.</summary>
public static class SealFile
{
    private const string Sum = "sha256 ";

    /// <summary>The file.</summary>
    public static byte[] Write(Seal seal)
    {
        var text = new StringBuilder();
        text.Append(seal.Line()).Append('\n');
        foreach (var job in seal.Each ?? throw new ArgumentException("A seal without its jobs makes no file.", nameof(seal)))
            text.Append(CultureInfo.InvariantCulture, $"{job.Sequence} {job.Hash} {job.Marks} {job.Key}\n");
        var said = text.ToString();
        return Encoding.UTF8.GetBytes($"{said}{Sum}{ContentHash.Of(Encoding.UTF8.GetBytes(said))}\n");
    }

    /// <summary>Reads what <see cref="Write"/> gave; or a file with nothing but the line of a seal.</summary>
    /// <param name="file">The file.</param>
    /// <param name="fault">What would be right; null where it was read.</param>
    public static Seal? Read(ReadOnlySpan<byte> file, out string? fault)
    {
        var text = Encoding.UTF8.GetString(file).ReplaceLineEndings("\n");
        var first = text.IndexOf('\n', StringComparison.Ordinal);
        if (first < 0 || text[first..].Trim().Length == 0)
            return Seal.ReadLine(text, out fault);
        if (Seal.ReadLine(text[..first], out fault) is not { } seal)
            return null;
        var last = text.LastIndexOf(Sum, StringComparison.Ordinal);
        if (last < 0 || ContentHash.Of(Encoding.UTF8.GetBytes(text[..last])).ToString() != text[(last + Sum.Length)..].TrimEnd())
        {
            fault = "a file of a seal as it was written: its last line does not prove the others";
            return null;
        }

        var jobs = new List<SealedJob>();
        foreach (var line in text[(first + 1)..last].Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Split(' ', 4) is not [var number, var hash, var marks, var key] || !Seal.Count(number, out var sequence)
                || !ContentHash.TryParse(hash, out var tip) || marks.Length != sequence * SealedJob.MarkLength)
            {
                fault = "a file of a seal: a line for each job, with the number and hash of its last change, the marks "
                    + "of all its changes, and its key";
                return null;
            }

            jobs.Add(new SealedJob(key, sequence, tip, marks));
        }

        if (jobs.Count != seal.Jobs)
        {
            fault = "a file of a seal with a line for each of its jobs";
            return null;
        }

        return seal with { Each = jobs };
    }
}
