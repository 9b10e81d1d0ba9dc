namespace Stringline.LawWatch;

/// <summary>
/// A folder or file that cannot be taken; the message names it with its line, says what is there and what would be right.
/// </summary>
internal sealed class UnreadableException(string message) : Exception(message);
