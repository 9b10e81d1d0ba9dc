namespace Stringline.Papers.Catalogue;

/// <summary>One thing that a paper asks to be told.</summary>
/// <param name="Input">What it is.</param>
/// <param name="Label">
/// What it means for this paper, and what holds where nothing is said: <c>The day of completion; nothing: the file's</c>. Null where it
/// means the same for every paper that asks for it.
/// </param>
public sealed record PaperAsk(PaperInput Input, string? Label = null);
