using System.Security.Cryptography;
using System.Text;

namespace Stringline.Store.Chain;

/// <summary>The words by which each job is found, as a sum over their hashes: whatever the order in which they come.</summary>
internal sealed class WordSums
{
    private readonly Dictionary<long, UInt128> sums = [];

    /// <summary>The jobs that have words.</summary>
    public IEnumerable<long> Jobs => sums.Keys;

    /// <summary>Adds a word of a job.</summary>
    public void Add(long job, string word) => sums[job] = unchecked(Of(job) + Hash(word));

    /// <summary>Adds words that are parted by spaces.</summary>
    public void AddAll(long job, string words)
    {
        foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            Add(job, word);
    }

    /// <summary>Whether a job has the same words here and there.</summary>
    public bool IsSame(long job, WordSums other) => Of(job) == other.Of(job);

    private UInt128 Of(long job) => sums.GetValueOrDefault(job);

    private static UInt128 Hash(string word)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(Encoding.UTF8.GetBytes(word), hash);
        return System.Buffers.Binary.BinaryPrimitives.ReadUInt128BigEndian(hash);
    }
}
