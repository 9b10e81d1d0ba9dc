using Stringline.Law;
using Stringline.Papers;

namespace Stringline.Office;

/// <summary>A finished paper, ready to be written.</summary>
/// <param name="Name">File name without a folder.</param>
/// <param name="Bytes">Its content.</param>
internal sealed record FinishedFile(string Name, ReadOnlyMemory<byte> Bytes);

/// <summary>A packet that lies in its folder.</summary>
/// <param name="Files">Full paths of the files, in the order of <see cref="Made"/>.</param>
/// <param name="Made">What was made, with its fee and its preflight.</param>
/// <param name="Assessment">The assessment it was made from.</param>
/// <param name="Deadline">Id of the finding whose day governs; null where none does.</param>
internal sealed record WrittenPacket(IReadOnlyList<string> Files, PacketOutcome.Made Made, Assessment Assessment, string? Deadline);
