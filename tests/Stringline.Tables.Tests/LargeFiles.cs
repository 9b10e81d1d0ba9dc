namespace Stringline.Tables.Tests;

/// <summary>Tests that hold files as large as they may be: one after the other and beside no other, since the heap of these tests is
/// bounded.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class LargeFiles
{
    public const string Name = "large files";
}
