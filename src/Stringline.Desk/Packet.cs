using Stringline.Law;
using Stringline.Law.Facts;

namespace Stringline.Desk;

/// <summary>A finished paper, ready to be written.</summary>
/// <param name="Name">File name without a folder.</param>
/// <param name="Bytes">Its content.</param>
internal sealed record FinishedFile(string Name, ReadOnlyMemory<byte> Bytes);

/// <summary>What the papers answer when a packet is asked for. The two cases are the only ones.</summary>
internal abstract record Packet
{
    private Packet()
    {
    }

    /// <summary>The packet cannot be made.</summary>
    /// <param name="Reasons">Why, each one message for a person.</param>
    public sealed record Refused(IReadOnlyList<string> Reasons) : Packet;

    /// <summary>The packet was made and has passed its checks.</summary>
    /// <param name="Files">The papers.</param>
    /// <param name="Remarks">What a person should read on the screen: fee, checks.</param>
    public sealed record Made(IReadOnlyList<FinishedFile> Files, IReadOnlyList<string> Remarks) : Packet;
}

/// <summary>Makes the papers of a claim of lien.</summary>
/// <param name="job">The facts.</param>
/// <param name="assessment">What the law makes of them.</param>
/// <param name="draft">Whether to make papers that are marked as a draft where they may not go to the counter yet.</param>
internal delegate Packet PacketMaker(JobFile job, Assessment assessment, bool draft);

/// <summary>A packet that lies in its folder.</summary>
/// <param name="Files">Full paths of the files.</param>
/// <param name="Remarks">What a person should read on the screen.</param>
internal sealed record WrittenPacket(IReadOnlyList<string> Files, IReadOnlyList<string> Remarks);
