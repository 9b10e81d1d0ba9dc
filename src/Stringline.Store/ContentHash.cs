using System.Buffers.Binary;
using System.Security.Cryptography;

namespace Stringline.Store;

/// <summary>A SHA-256 value: 32 bytes, compared by content, printed as 64 lower-case hexadecimal digits.</summary>
public readonly record struct ContentHash
{
    private readonly UInt128 high;
    private readonly UInt128 low;

    private ContentHash(UInt128 high, UInt128 low) => (this.high, this.low) = (high, low);

    /// <summary>How many bytes it has.</summary>
    public const int Length = 32;

    /// <summary>The hash of some bytes.</summary>
    public static ContentHash Of(ReadOnlySpan<byte> content)
    {
        Span<byte> hash = stackalloc byte[Length];
        SHA256.HashData(content, hash);
        return From(hash);
    }

    /// <summary>The hash that these 32 bytes are.</summary>
    /// <exception cref="ArgumentException">They are not 32.</exception>
    public static ContentHash From(ReadOnlySpan<byte> bytes) => bytes.Length == Length
        ? new(BinaryPrimitives.ReadUInt128BigEndian(bytes), BinaryPrimitives.ReadUInt128BigEndian(bytes[16..]))
        : throw new ArgumentException("A SHA-256 value has 32 bytes.", nameof(bytes));

    /// <summary>Reads what <see cref="ToString"/> printed; false where it is something else.</summary>
    public static bool TryParse(string? text, out ContentHash hash)
    {
        hash = default;
        if (text is not { Length: 2 * Length } || text.Any(c => !char.IsAsciiHexDigitLower(c) && !char.IsAsciiDigit(c)))
            return false;
        hash = From(Convert.FromHexString(text));
        return true;
    }

    /// <summary>Its 32 bytes.</summary>
    public byte[] ToBytes()
    {
        var bytes = new byte[Length];
        CopyTo(bytes);
        return bytes;
    }

    /// <summary>Writes its 32 bytes.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no room for them.</exception>
    public void CopyTo(Span<byte> place)
    {
        BinaryPrimitives.WriteUInt128BigEndian(place, high);
        BinaryPrimitives.WriteUInt128BigEndian(place[16..], low);
    }

    /// <inheritdoc/>
    public override string ToString() => Convert.ToHexStringLower(ToBytes());
}
