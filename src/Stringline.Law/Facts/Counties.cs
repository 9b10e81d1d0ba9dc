namespace Stringline.Law.Facts;

/// <summary>California's 58 counties, named as in Gov. Code §§ 23101-23158 (from memory), without the word county.</summary>
public static class Counties
{
    /// <summary>Their names in order of the alphabet.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "Alameda", "Alpine", "Amador", "Butte", "Calaveras", "Colusa", "Contra Costa", "Del Norte", "El Dorado", "Fresno",
        "Glenn", "Humboldt", "Imperial", "Inyo", "Kern", "Kings", "Lake", "Lassen", "Los Angeles", "Madera",
        "Marin", "Mariposa", "Mendocino", "Merced", "Modoc", "Mono", "Monterey", "Napa", "Nevada", "Orange",
        "Placer", "Plumas", "Riverside", "Sacramento", "San Benito", "San Bernardino", "San Diego", "San Francisco",
        "San Joaquin", "San Luis Obispo", "San Mateo", "Santa Barbara", "Santa Clara", "Santa Cruz", "Shasta", "Sierra",
        "Siskiyou", "Solano", "Sonoma", "Stanislaus", "Sutter", "Tehama", "Trinity", "Tulare", "Tuolumne", "Ventura",
        "Yolo", "Yuba",
    ];

    /// <summary>The county as we write it, for a name in any case, with or without the word County; null when there is none.</summary>
    public static string? Find(string? written)
    {
        if (string.IsNullOrWhiteSpace(written))
            return null;
        var name = string.Join(' ', written.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        foreach (var lead in (string[])["City and County of ", "County of "])
        {
            if (name.StartsWith(lead, StringComparison.OrdinalIgnoreCase))
                name = name[lead.Length..];
        }

        if (name.EndsWith(" County", StringComparison.OrdinalIgnoreCase))
            name = name[..^" County".Length];
        return All.FirstOrDefault(c => c.Equals(name, StringComparison.OrdinalIgnoreCase));
    }
}
