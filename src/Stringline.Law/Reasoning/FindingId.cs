using Stringline.Law.Facts;

namespace Stringline.Law.Reasoning;

/// <summary>Another finding, as a sentence points to it.</summary>
/// <param name="Name">Its id.</param>
public sealed record FindingId(string Name) : IPointer;
