namespace Stringline.Papers;

/// <summary>A finished paper.</summary>
/// <param name="Name">File name, such as <c>claim-of-mechanics-lien.pdf</c>.</param>
/// <param name="Title">Title.</param>
/// <param name="Pages">Number of pages.</param>
/// <param name="Bytes">The PDF.</param>
public sealed record PaperFile(string Name, string Title, int Pages, ReadOnlyMemory<byte> Bytes);
