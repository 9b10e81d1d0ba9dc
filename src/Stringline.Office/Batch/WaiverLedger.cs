using System.Security.Cryptography;
using System.Text;
using Stringline.Tables;
using Stringline.Papers;
using Stringline.Papers.Waiver;
using Stringline.Tables.Sheets.Reading;

namespace Stringline.Office.Batch;

/// <summary>
/// <c>made.csv</c> in the folder: which paper was made from what, one line each, written after the paper stands whole under its name. A
/// later run believes a line only if the paper still has the bytes that the line tells. Two runs cannot hold one folder at once.
/// </summary>
internal sealed class WaiverLedger : IDisposable
{
    /// <summary>Name of the file.</summary>
    public const string FileName = "made.csv";

    private const string TemporaryStart = ".stringline-";

    private static readonly string[] Heads =
        ["file", "job", "form", "through", "amount", "says", "sha256", "released", "paid", "released-less-paid"];

    // A ledger of an earlier version ends here.
    private const int FewestCells = 7;

    private readonly string folder;
    private readonly FileStream file;
    private readonly Lock writing = new();
    private readonly Dictionary<string, (string Says, string Bytes)> made = [];

    private WaiverLedger(string folder, FileStream file) => (this.folder, this.file) = (folder, file);

    /// <summary>Opens or begins the ledger of a folder, and clears away what an interrupted run left half-written.</summary>
    /// <exception cref="IOException">The folder cannot be written to, or another run holds it.</exception>
    public static WaiverLedger Open(string folder)
    {
        Directory.CreateDirectory(folder);
        MustBeOurs(folder, FileName, Heads[..3]);
        MustBeOurs(folder, BatchReport.FileName, BatchReport.Heads[..3]);
        var file = new FileStream(Path.Combine(folder, FileName), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        var ledger = new WaiverLedger(folder, file);
        foreach (var left in Directory.EnumerateFiles(folder, TemporaryStart + "*"))
            File.Delete(left);
        ledger.ReadBack();
        return ledger;
    }

    /// <summary>Whether that paper is there, whole, and says the same.</summary>
    public bool Holds(string name, string says)
    {
        (string Says, string Bytes) line;
        lock (writing)
        {
            if (!made.TryGetValue(name, out line) || line.Says != says)
                return false;
        }

        var path = Path.Combine(folder, name);
        return File.Exists(path) && Hash(File.ReadAllBytes(path)) == line.Bytes;
    }

    /// <summary>Whether a file of that name is there that no run into this folder made, with other content.</summary>
    public bool HasAnother(string name, ReadOnlySpan<byte> bytes)
    {
        var path = Path.Combine(folder, name);
        return !made.ContainsKey(name) && File.Exists(path) && !bytes.SequenceEqual(File.ReadAllBytes(path));
    }

    /// <summary>Whether any file of that name is there.</summary>
    public bool HasFile(string name) => File.Exists(Path.Combine(folder, name));

    /// <summary>Puts a paper into the folder, under another name first, and then into the ledger.</summary>
    public void Put(string name, PaperFile paper, WaiverRow row, WaiverOrder order)
    {
        var waiver = order.Waiver;
        var temporary = Path.Combine(folder, TemporaryStart + name);
        using (var stream = new FileStream(temporary, FileMode.Create, FileAccess.Write))
            stream.Write(paper.Bytes.Span);
        File.Move(temporary, Path.Combine(folder, name), overwrite: true);
        var line = CsvLine.Of(
            name, row.Job, waiver.Number, waiver.Through is { } through ? DayText.Write(through) : "",
            Plain(waiver.Amount), waiver.Fingerprint, Hash(paper.Bytes.Span),
            Plain(order.Outlook?.Released), Plain(order.Outlook?.Payment), Plain(order.Outlook?.Difference ?? order.Outlook?.Released));
        lock (writing)
        {
            file.Write(CsvRecords.StrictUtf8.GetBytes(line));
            file.Flush();
        }
    }

    /// <summary>Closes the ledger, so that another run may have the folder.</summary>
    public void Dispose() => file.Dispose();

    // The lists of an earlier run begin with their heads; a list of somebody's own is never written to.
    private static void MustBeOurs(string folder, string name, IReadOnlyList<string> heads)
    {
        var path = Path.Combine(folder, name);
        if (File.Exists(path) && File.ReadLines(path).FirstOrDefault() is { Length: > 0 } first
            && !first.StartsWith(CsvLine.Of(heads).TrimEnd(), StringComparison.Ordinal))
        {
            throw new IOException($"{name} is there already and is no list of this program. Move or rename it, or name another folder");
        }
    }

    private void ReadBack()
    {
        try
        {
            using var text = new StreamReader(file, CsvRecords.StrictUtf8, leaveOpen: true);
            var records = CsvRecords.Read(text, ",", WaiverSheet.LongestCell, isTrimmed: true).Select(record => record.Cells);
            foreach (var cells in records.Skip(1).Where(cells => cells.Count is FewestCells || cells.Count == Heads.Length))
                made[cells[0]] = (cells[5], cells[6]);
        }
        catch (Exception e) when (e is DecoderFallbackException or CsvException)
        {
            // A ledger that was spoilt tells nothing: its papers are made again.
            made.Clear();
        }

        // A line that was cut off when a run was killed must not run into the next one.
        if (file.Length == 0)
            file.Write(CsvRecords.StrictUtf8.GetBytes(CsvLine.Of(Heads)));
        else
            EndLastLine();
    }

    private void EndLastLine()
    {
        file.Seek(-1, SeekOrigin.End);
        var last = file.ReadByte();
        file.Seek(0, SeekOrigin.End);
        if (last != '\n')
            file.WriteByte((byte)'\n');
    }

    private static string Plain(decimal? dollars) =>
        dollars is { } sum ? sum.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture) : "";

    private static string Hash(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
