using System.Globalization;

namespace Stringline.LawWatch;

/// <summary>Sections by code, and within a code as it has them: § 9558 before § 10240.1.</summary>
internal sealed class SectionOrder : IComparer<string>
{
    /// <summary>The order.</summary>
    public static readonly SectionOrder Instance = new();

    /// <inheritdoc/>
    public int Compare(string? x, string? y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        return string.CompareOrdinal(Codes.CodeOf(x), Codes.CodeOf(y)) is not 0 and var byCode ? byCode
            : Number(x).CompareTo(Number(y)) is not 0 and var byNumber ? byNumber : string.CompareOrdinal(x, y);
    }

    // A letter after the number is no part of it.
    private static decimal Number(string section) => decimal.Parse(
        section[(section.IndexOf('§', StringComparison.Ordinal) + 2)..].TrimEnd([.. "abcdefghijklmnopqrstuvwxyz"]),
        CultureInfo.InvariantCulture);
}
