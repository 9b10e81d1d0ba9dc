using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Reads a county: one of California's 58, without the word county.</summary>
internal static class CountyNames
{
    /// <summary>The county of a field that must be there; empty with a fault where it is not.</summary>
    public static string Required(Fields fields) =>
        Checked(fields, fields.RequiredLine("county", "the name of one of California's 58 counties, such as \"Yolo\""));

    /// <summary>The county of a field that may be left out.</summary>
    public static string? Optional(Fields fields) => fields.Line("county") is { } county ? Checked(fields, county) : null;

    /// <summary>Other counties, each once.</summary>
    public static IReadOnlyList<string> Others(Source source, Fields fields, string name, string county)
    {
        var others = new List<string>();
        foreach (var (item, path) in fields.Listed(name))
        {
            if (item.Kind != JsonKind.Text || item.Text is not { } other || !Counties.All.Contains(other))
                source.Faults.Add(item, path, Expected(item.Text ?? ""));
            else if (other == county || others.Contains(other))
                source.Faults.Add(item, path, "each county once, and not the one in `county` again");
            else
                others.Add(other);
        }

        return others;
    }

    private static string Checked(Fields fields, string county)
    {
        if (county.Length > 0 && !Counties.All.Contains(county))
            fields.Fault("county", fields.Raw("county")!, Expected(county));
        return county;
    }

    private static string Expected(string county)
    {
        var bare = county.Replace(" County", "", StringComparison.OrdinalIgnoreCase)
            .Replace("County of ", "", StringComparison.OrdinalIgnoreCase)
            .Replace("City and ", "", StringComparison.OrdinalIgnoreCase)
            .Trim();
        return $"the name of one of California's 58 counties, without the word county{Nearest.Clause(bare, Counties.All)}";
    }
}
