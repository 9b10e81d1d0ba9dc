using System.Net;
using System.Text.RegularExpressions;

namespace Stringline.FuzzInput;

/// <summary>A page of the desk.</summary>
/// <param name="Address">Its address.</param>
/// <param name="Fields">The fields of its forms, with what stands in them.</param>
/// <param name="TakesFiles">Whether it takes a file.</param>
internal sealed partial record DeskPage(string Address, IReadOnlyList<(string Name, string Value)> Fields, bool TakesFiles)
{
    /// <summary>The name of the field that seals a form.</summary>
    public const string Seal = "__RequestVerificationToken";

    /// <summary>Reads it.</summary>
    public static DeskPage Of(string address, string page) => new(address,
        [.. Field().Matches(page).Select(field => (Name: Of(Name(), field.Value), Value: Of(Value(), field.Value)))
            .Where(field => field.Name is not ("" or Seal)).DistinctBy(field => field.Name)],
        page.Contains("type=\"file\"", StringComparison.Ordinal));

    private static string Of(Regex part, string field) => WebUtility.HtmlDecode(part.Match(field).Groups[1].Value);

    [GeneratedRegex("<(?:input|select|textarea|button)[^>]* name=\"[^\"]+\"[^>]*>")]
    private static partial Regex Field();

    [GeneratedRegex(" name=\"([^\"]+)\"")]
    private static partial Regex Name();

    [GeneratedRegex(" value=\"([^\"]*)\"")]
    private static partial Regex Value();
}
