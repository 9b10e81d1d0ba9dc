using Stringline.Law;
using Stringline.Law.Recording;
using Stringline.Papers.Preflight;

namespace Stringline.Papers;

/// <summary>What came of asking for a packet.</summary>
/// <remarks>The two cases are the only ones.</remarks>
public abstract record PacketOutcome
{
    private PacketOutcome()
    {
    }

    /// <summary>No packet, and why.</summary>
    /// <param name="Refusals">At least one reason.</param>
    public sealed record Refused(IReadOnlyList<Refusal> Refusals) : PacketOutcome;

    /// <summary>A packet.</summary>
    /// <param name="Files">The papers, counter sheet last.</param>
    /// <param name="Fee">The estimated recording fee; null for papers that are not recorded.</param>
    /// <param name="Preflight">What the check of each paper found, in the order of the files.</param>
    /// <param name="InTheWay">Why it is only a draft; empty for a packet that may be used.</param>
    public sealed record Made(
        IReadOnlyList<PaperFile> Files,
        FeeEstimate? Fee,
        IReadOnlyList<PreflightReport> Preflight,
        IReadOnlyList<Refusal> InTheWay) : PacketOutcome
    {
        /// <summary>What a waiver gives away; null on any other paper.</summary>
        public WaiverOutlook? Outlook { get; init; }
    }
}
