using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Stringline.Store;

/// <summary>
/// The payload of a change that attaches papers to an entry made earlier: <c>{"proves":12}</c>, the sequence of that entry.
/// </summary>
internal static class ProofText
{
    public static byte[] Write(long sequence) =>
        Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{{\"proves\":{sequence}}}"));

    /// <summary>The sequence; null where the payload is something else.</summary>
    public static long? Read(ReadOnlyMemory<byte> payload)
    {
        try
        {
            using var json = JsonDocument.Parse(payload);
            return json.RootElement.TryGetProperty("proves", out var sequence) && sequence.TryGetInt64(out var number)
                && payload.Span.SequenceEqual(Write(number)) ? number : null;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            return null;
        }
    }
}
