using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stringline.Tables.JobFiles.Writing;
using Stringline.Law.Facts;

namespace Stringline.Tables;

/// <summary>
/// Writes JSON job files, always the same bytes for the same job: what it writes, <see cref="JobFileReader"/> reads as the same job.
/// </summary>
public static class JobFileWriter
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",

        // The file stands alone, never inside a web page, so names keep their accents.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes a job as UTF-8 JSON that ends with a line break; parties, entries and spans stand one on a line.</summary>
    /// <remarks>The index of an entry is its place in the list; whatever <see cref="Entry.Index"/> says is not written.</remarks>
    /// <exception cref="ArgumentException">The job holds what the format cannot say, such as a span of work between days in
    /// doubt.</exception>
    public static byte[] Write(JobFile job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            Head(json, job);
            Rows(json, "entries", job.Entries, EntryWriting.Write);
            json.WriteEndObject();
        }

        buffer.Write("\n"u8);
        return buffer.WrittenSpan.ToArray();
    }

    /// <summary>Writes the fields of everything but the entries.</summary>
    internal static void Head(Utf8JsonWriter json, JobFile job)
    {
        json.WriteString("format", JobFileReader.Format);
        json.WriteString("name", job.Name);
        WorkWriting.Write(json, job.Work);
        PeopleWriting.Claimant(json, job.Claimant);
        Rows(json, "parties", job.Parties, PeopleWriting.Party);
        if (job.Contract != new Contract())
            Contract(json, job.Contract);
    }

    private static void Contract(Utf8JsonWriter json, Contract contract)
    {
        json.WriteStartObject("contract");
        json.Day("on", contract.On);
        json.Truth("written", contract.Written);
        json.Money("price", contract.Price);
        json.Money("reasonableValue", contract.ReasonableValue);
        json.Text("work", contract.Work);
        json.Count("paymentDueDays", contract.PaymentDueDays);
        json.Truth("bondNotBrought", contract.BondNotBrought);
        json.WriteEndObject();
    }

    /// <summary>Writes a list with each item's object on one line.</summary>
    internal static void Rows<T>(Utf8JsonWriter json, string name, IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        var buffer = new ArrayBufferWriter<byte>();
        foreach (var item in items)
        {
            buffer.ResetWrittenCount();
            using (var row = new Utf8JsonWriter(buffer, Options with { IndentSize = 0 }))
            {
                row.WriteStartObject();
                write(row, item);
                row.WriteEndObject();
            }

            // Texts hold no raw line break in JSON, so every one here stands between two fields.
            var line = buffer.WrittenSpan.ToArray();
            line.AsSpan().Replace((byte)'\n', (byte)' ');
            json.WriteRawValue(line, skipInputValidation: true);
        }

        json.WriteEndArray();
    }
}
