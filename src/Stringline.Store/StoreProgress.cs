namespace Stringline.Store;

/// <summary>How far long work has come.</summary>
/// <param name="What">What is being done, in words.</param>
/// <param name="Done">How much of it.</param>
/// <param name="Total">Of how much; 0 where nobody knows.</param>
public sealed record StoreProgress(string What, long Done, long Total);
