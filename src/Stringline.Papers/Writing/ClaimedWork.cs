namespace Stringline.Papers.Writing;

/// <summary>One of several works of improvement of a job (Civ. Code § 8446(b)).</summary>
/// <param name="Text">Which it is, in words; empty where only their number is known.</param>
/// <param name="Share">What is due for it, dollars and cents; null where that is not known.</param>
internal sealed record ClaimedWork(string Text, decimal? Share);
