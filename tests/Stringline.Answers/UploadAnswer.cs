using Stringline.Store;

namespace Stringline.Answers;

/// <summary>A paper is refused in words, or taken byte for byte as the kind that its first bytes say (ISO 32000-1, 7.5.2; ITU T.81,
/// B.1.1.3; ISO/IEC 15948, 5.2), under a name that leads nowhere.</summary>
public static class UploadAnswer
{
    /// <summary>Takes it.</summary>
    /// <returns>Whether it is one.</returns>
    /// <exception cref="InvalidOperationException">The answer is neither.</exception>
    public static bool Of(string name, byte[] bytes)
    {
        switch (Proof.Of(name, bytes))
        {
            case ProofResult.Taken { Proof: var proof }:
                Must.Hold(bytes.AsSpan().SequenceEqual(proof.Content.Span), "what is kept is not what was sent");
                Must.Hold(proof.Hash == ContentHash.Of(bytes), "the hash is not that of the content");
                Must.Hold(!proof.Name.Any(c => char.IsControl(c) || c is '/' or '\\') && proof.Name.Length <= Journals.LongestName,
                    $"a name that leads elsewhere: {proof.Name}");
                ReadOnlySpan<byte> head = proof.Kind switch
                {
                    ProofKind.Pdf => "%PDF-"u8,
                    ProofKind.Jpeg => [0xFF, 0xD8, 0xFF],
                    _ => [0x89, (byte)'P', (byte)'N', (byte)'G'],
                };
                Must.Hold(bytes.AsSpan().StartsWith(head), $"it is no {proof.Kind}");
                return true;
            case ProofResult.Refused refused:
                Refusal.Check(refused.Why);
                return false;
            case var other:
                throw new InvalidOperationException($"neither taken nor refused: {other}");
        }
    }
}
