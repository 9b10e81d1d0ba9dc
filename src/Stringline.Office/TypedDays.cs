namespace Stringline.Office;

/// <summary>A number of days as a person types it, on the command line or in a form.</summary>
internal static class TypedDays
{
    private const int Most = 9_999;

    /// <summary>The number above zero; null where the text is none.</summary>
    public static int? AboveZero(string text) =>
        int.TryParse(text.Trim(), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var days)
            && days is > 0 and <= Most
            ? days
            : null;
}
