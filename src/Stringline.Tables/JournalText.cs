using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stringline.Tables.JobFiles.Writing;
using Stringline.Law.Facts;

namespace Stringline.Tables;

/// <summary>
/// A job file in pieces, as a journal keeps it: the head (everything but the entries) and each entry by itself, as JSON without line
/// breaks. The same piece always gives the same bytes, so a hash of them stands for the piece.
/// </summary>
public static class JournalText
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The head of a job file; its entries are not looked at.</summary>
    public static byte[] Head(JobFile job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return Object(json => JobFileWriter.Head(json, job));
    }

    /// <summary>One entry; its index is not written.</summary>
    /// <exception cref="ArgumentException">The entry holds what the format cannot say.</exception>
    public static byte[] Entry(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return Object(json => EntryWriting.Write(json, entry));
    }

    /// <summary>
    /// Puts the pieces that a journal holds together again and reads them as one job file, with every check of <see cref="JobFileReader"/>.
    /// </summary>
    /// <param name="name">How faults name the job.</param>
    /// <param name="head">What <see cref="Head"/> gave.</param>
    /// <param name="entries">What <see cref="Entry"/> gave, in the job's order.</param>
    public static JobFileResult Read(string name, ReadOnlyMemory<byte> head, IReadOnlyList<ReadOnlyMemory<byte>> entries) =>
        ReadAdded(name, head, entries, newHead: false, known: entries?.Count ?? 0);

    /// <summary>
    /// As <see cref="Read"/>, of pieces that are about to come into the journal together with those that it holds: a sign that may no
    /// longer come in is refused in what is new, and let be in what stands there already, since a journal erases nothing.
    /// </summary>
    /// <param name="name">How faults name the job.</param>
    /// <param name="head">What <see cref="Head"/> gave.</param>
    /// <param name="entries">What <see cref="Entry"/> gave, in the job's order.</param>
    /// <param name="newHead">Whether the head is new.</param>
    /// <param name="known">How many of the entries, from the first on, the journal holds.</param>
    public static JobFileResult ReadAdded(string name, ReadOnlyMemory<byte> head, IReadOnlyList<ReadOnlyMemory<byte>> entries, bool newHead,
        int known)
    {
        ArgumentNullException.ThrowIfNull(entries);
        if (!head.Span.EndsWith("}"u8))
            return JobFileReader.Read(head, name);
        var buffer = new ArrayBufferWriter<byte>(head.Length + 32 + entries.Sum(entry => entry.Length + 1));
        buffer.Write(head.Span[..^1]);
        buffer.Write(",\"entries\":["u8);
        var newFrom = int.MaxValue;
        for (var i = 0; i < entries.Count; i++)
        {
            if (i > 0)
                buffer.Write(","u8);
            if (i == known)
                newFrom = buffer.WrittenCount;
            buffer.Write(entries[i].Span);
        }

        buffer.Write("]}"u8);
        return JobFileReader.Read(buffer.WrittenMemory, name, at => at < head.Length ? newHead : at >= newFrom);
    }

    private static byte[] Object(Action<Utf8JsonWriter> fields)
    {
        var buffer = new ArrayBufferWriter<byte>(256);
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            fields(json);
            json.WriteEndObject();
        }

        return buffer.WrittenSpan.ToArray();
    }
}
