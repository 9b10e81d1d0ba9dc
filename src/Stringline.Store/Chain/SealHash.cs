using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Stringline.Store.Chain;

/// <summary>The hash over where every job is, in the order of their ids.</summary>
internal sealed class SealHash
{
    private readonly IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

    public void Add(JobTip tip)
    {
        var key = Encoding.UTF8.GetBytes(tip.Key);
        Span<byte> bytes = stackalloc byte[24 + ContentHash.Length];
        BinaryPrimitives.WriteInt64BigEndian(bytes, tip.Id);
        BinaryPrimitives.WriteInt64BigEndian(bytes[8..], tip.Sequence);
        tip.Hash.CopyTo(bytes[16..]);
        BinaryPrimitives.WriteInt64BigEndian(bytes[^8..], key.Length);
        hash.AppendData(bytes);
        hash.AppendData(key);
    }

    public ContentHash Value()
    {
        using (hash)
            return ContentHash.From(hash.GetHashAndReset());
    }
}
