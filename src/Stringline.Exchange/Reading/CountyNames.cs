using Stringline.Law.Facts;

namespace Stringline.Exchange.Reading;

/// <summary>Reads a county: one of California's 58, without the word county.</summary>
internal static class CountyNames
{
    /// <summary>The county of a field that must be there; empty with a fault where it is not.</summary>
    public static string Required(Fields fields) =>
        Checked(fields, fields.RequiredLine("county", "the name of one of California's 58 counties, such as \"Yolo\""));

    /// <summary>The county of a field that may be left out.</summary>
    public static string? Optional(Fields fields) => fields.Line("county") is { } county ? Checked(fields, county) : null;

    private static string Checked(Fields fields, string county)
    {
        if (county.Length > 0 && !Counties.All.Contains(county))
        {
            var bare = county.Replace(" County", "", StringComparison.OrdinalIgnoreCase)
                .Replace("County of ", "", StringComparison.OrdinalIgnoreCase)
                .Replace("City and ", "", StringComparison.OrdinalIgnoreCase)
                .Trim();
            fields.Fault(
                "county",
                fields.Raw("county")!,
                $"the name of one of California's 58 counties, without the word county{Nearest.Clause(bare, Counties.All)}");
        }

        return county;
    }
}
