using System.Text;
using Stringline.Tables;

namespace Stringline.Store.Chain;

/// <summary>One change exactly as it stands in the table, sound or not.</summary>
internal sealed record RawRow(
    long Sequence,
    long At,
    string Who,
    string Kind,
    string? Learned,
    string? Supersedes,
    string? Proofs,
    byte[] Payload,
    byte[] Hash)
{
    /// <summary>The last moment that can be told: those from 1970 to 9999 can.</summary>
    public const long LastMoment = 253_402_300_799_999_999;

    /// <summary>So many ticks make a microsecond.</summary>
    public const int TicksPerMicrosecond = 10;

    /// <summary>The change; null with what is wrong where it is none.</summary>
    public JournalRow? Read(out string? fault)
    {
        fault = null;
        LocalDate learned = default;
        if (ChangeKinds.Find(Kind) is not { } kind)
            fault = $"its kind is \"{Kind}\"";
        else if (Learned is not null && DayText.Read(Learned, out learned) is not null)
            fault = $"the day it was learned is \"{Learned}\"";
        else if (At is < 0 or > LastMoment)
            fault = "the moment it was recorded is out of all range";
        else if (Hash.Length != ContentHash.Length)
            fault = "its hash has not 32 bytes";
        else if (Links(Proofs) is not { } links)
            fault = "its list of proofs cannot be read";
        else
            return new JournalRow(
                Sequence, Moment(At), Who, kind, Learned is null ? null : learned, Supersedes, links, Payload, ContentHash.From(Hash));
        return null;
    }

    /// <summary>A moment as the table keeps it; finer parts are cut off.</summary>
    public static long Microseconds(Instant at) => at.ToUnixTimeTicks() / TicksPerMicrosecond;

    /// <summary>The moment that the table keeps as this number.</summary>
    public static Instant Moment(long microseconds) => Instant.FromUnixTimeTicks(microseconds * TicksPerMicrosecond);

    /// <summary>The list of attached papers as the table keeps it; null where there are none.</summary>
    public static string? Lines(IReadOnlyList<ProofLink> links)
    {
        if (links.Count == 0)
            return null;
        var text = new StringBuilder();
        foreach (var link in links)
            text.Append(link.Hash).Append(' ').Append(link.Name).Append('\n');
        return text.ToString();
    }

    private static List<ProofLink>? Links(string? lines)
    {
        var links = new List<ProofLink>();
        foreach (var line in lines is null ? [] : lines.Split('\n')[..^1])
        {
            if (line.Length < 66 || line[64] != ' ' || !ContentHash.TryParse(line[..64], out var hash))
                return null;
            links.Add(new ProofLink(hash, line[65..]));
        }

        return links;
    }
}
