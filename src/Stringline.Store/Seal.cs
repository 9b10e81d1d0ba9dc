using System.Globalization;
using NodaTime.Text;

namespace Stringline.Store;

/// <summary>What a job held when the journal was sealed.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Sequence">Number of its last change.</param>
/// <param name="Hash">Hash of its last change.</param>
/// <param name="Marks">
/// Four hexadecimal digits of the hash of each change, so that a comparison says from which change on it differs.
/// </param>
public sealed record SealedJob(string Key, long Sequence, ContentHash Hash, string Marks)
{
    /// <summary>How many digits stand for each change.</summary>
    public const int MarkLength = 4;

    /// <summary>The digits of one change.</summary>
    public string Mark(long sequence) => Marks.Substring((int)(sequence - 1) * MarkLength, MarkLength);

    /// <summary>The digits for a hash.</summary>
    public static string MarkOf(ContentHash hash) => hash.ToString()[..MarkLength];
}

/// <summary>
/// What a journal held at a moment, to be kept outside of the store: whoever can write to the store can forge its whole history, but not
/// what is on paper elsewhere. It fits on one line; with every job it is a file, which also says where history was rewritten.
/// </summary>
/// <param name="At">The moment. Whatever is recorded later in the same store has a later moment.</param>
/// <param name="Jobs">How many jobs there were.</param>
/// <param name="Changes">How many changes there were that were recorded by then.</param>
/// <param name="Head">The first 32 digits of the hash over the last of these changes of each job, in the order of their ids.</param>
public sealed record Seal(Instant At, long Jobs, long Changes, string Head)
{
    internal const string Magic = "stringline-seal/1";
    internal const int HeadLength = 32;
    private const int ProofLength = 8;
    private const int Group = 8;

    internal static readonly InstantPattern Pattern = InstantPattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm':'ss'Z'");

    /// <summary>Every job; null where only the line is known.</summary>
    public IReadOnlyList<SealedJob>? Each { get; init; }

    /// <summary>Changes of which the line says nothing, since their moments lie in the future; the file has them.</summary>
    public long NotInLine { get; init; }

    /// <summary>The seal on one line, to be printed or written down.</summary>
    public string Line()
    {
        var said = string.Create(CultureInfo.InvariantCulture, $"{Magic} {Pattern.Format(At)} {Jobs} {Changes}");
        return said + " " + string.Join(' ', (Head + Proof(said, Head)).Chunk(Group).Select(digits => new string(digits)));
    }

    /// <summary>Reads what <see cref="Line"/> gave.</summary>
    /// <param name="line">The line; blanks between the digits do not matter.</param>
    /// <param name="fault">What would be right; null where it was read.</param>
    public static Seal? ReadLine(string line, out string? fault)
    {
        fault = $"the line that `stringline store seal` printed: {Magic}, the moment, the jobs, the changes, "
            + $"{HeadLength + ProofLength} digits";
        if (line.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) is not [Magic, var at, var jobs,
            var changes, .. var digits]
            || !Pattern.Parse(at).TryGetValue(default, out var moment) || !Count(jobs, out var jobCount)
            || !Count(changes, out var changeCount))
        {
            return null;
        }

        var all = string.Concat(digits);
        if (all.Length != HeadLength + ProofLength)
            return null;
        var seal = new Seal(moment, jobCount, changeCount, all[..HeadLength]);
        if (string.Concat(seal.Line().Split(' ')[4..]) != all)
        {
            fault = "the line exactly as it was printed: a digit is wrong, its last eight digits do not prove the others";
            return null;
        }

        fault = null;
        return seal;
    }

    internal static bool Count(string text, out long count) =>
        long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out count);

    private static string Proof(string said, string head) =>
        ContentHash.Of(System.Text.Encoding.ASCII.GetBytes(said + " " + head)).ToString()[..ProofLength];
}
