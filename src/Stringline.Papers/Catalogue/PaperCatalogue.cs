namespace Stringline.Papers.Catalogue;

/// <summary>Every paper that can be made from a job file.</summary>
public static class PaperCatalogue
{
    /// <summary>The papers, in the order in which a job comes to need them.</summary>
    public static IReadOnlyList<Paper> All { get; } = [.. Shelf.Papers.Select(p => p.Paper)];

    /// <summary>The paper with that id, or null.</summary>
    public static Paper? Find(string id) => All.FirstOrDefault(p => p.Id == id);
}
