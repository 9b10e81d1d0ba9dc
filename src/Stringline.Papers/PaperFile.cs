namespace Stringline.Papers;

/// <summary>A finished paper.</summary>
/// <param name="Name">File name, such as <c>claim-of-mechanics-lien.pdf</c>.</param>
/// <param name="Title">Title.</param>
/// <param name="Pages">Number of pages.</param>
/// <param name="Bytes">The PDF.</param>
public sealed record PaperFile(string Name, string Title, int Pages, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>The one to whom it goes; null where it goes to several or to nobody.</summary>
    public string? Addressee { get; init; }

    /// <summary>Whether it is the sheet that goes with the papers, and no paper itself.</summary>
    public bool IsSheet { get; init; }
}
