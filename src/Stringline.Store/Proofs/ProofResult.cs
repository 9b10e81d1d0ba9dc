using Stringline.Tables;

namespace Stringline.Store;

/// <summary>What came of taking a file as a proof. The two cases are the only ones.</summary>
public abstract record ProofResult
{
    private ProofResult()
    {
    }

    /// <summary>It is one.</summary>
    /// <param name="Proof">The proof.</param>
    public sealed record Taken(Proof Proof) : ProofResult;

    /// <summary>It is none.</summary>
    /// <param name="Why">Why not.</param>
    public sealed record Refused(Fault Why) : ProofResult;
}
