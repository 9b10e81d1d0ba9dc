namespace Stringline.Law.Facts;

/// <summary>A field of a kind of entry, as a sentence points to it.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Field">The field's name in the file; <c>on</c> for the day.</param>
public sealed record EntryField(EntryKind Kind, string Field) : IPointer
{
    /// <inheritdoc/>
    public string Name => $"{Kind.Name}.{Field}";
}
