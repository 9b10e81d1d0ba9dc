using System.Globalization;

namespace Stringline.Tables;

/// <summary>
/// Dollars and cents as a person types them: <c>12500</c>, <c>$12,500.00</c>, <c>-350.00</c>. One grammar for every entrance. Commas stand
/// between groups of three only, so that 12,50 is never taken for 1,250.
/// </summary>
public static class TypedMoney
{
    /// <summary>The amount; null where the text is none.</summary>
    public static decimal? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var rest = text.AsSpan().Trim();
        var isMinus = rest is ['-', ..];
        if (isMinus)
            rest = rest[1..].TrimStart();
        if (rest is ['$', ..])
            rest = rest[1..].TrimStart();
        return Digits(rest) is { } dollars ? isMinus && dollars != 0m ? -dollars : dollars : null;
    }

    /// <summary>The amount above zero; null where the text is none.</summary>
    public static decimal? AboveZero(string text) => Read(text) is { } dollars and > 0m ? dollars : null;

    /// <summary>An amount without sign and mark: digits, alone or in groups of three, and at most two decimals.</summary>
    public static decimal? Digits(ReadOnlySpan<char> text)
    {
        var point = text.IndexOf('.');
        var cents = point < 0 ? [] : text[(point + 1)..];
        if (!IsGrouped(text) || cents.Length > 2)
            return null;
        return decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands, CultureInfo.InvariantCulture,
            out var dollars)
            && dollars <= MoneyText.Largest ? dollars : null;
    }

    /// <summary>Whether a text is digits with at most one point, and commas before it only between groups of three.</summary>
    public static bool IsGrouped(ReadOnlySpan<char> text)
    {
        var point = text.IndexOf('.');
        var whole = point < 0 ? text : text[..point];
        if (point >= 0 && text[(point + 1)..].ContainsAnyExceptInRange('0', '9'))
            return false;
        if (!whole.Contains(','))
            return !whole.ContainsAnyExceptInRange('0', '9') && text.ContainsAnyInRange('0', '9');
        var first = true;
        foreach (var range in whole.Split(','))
        {
            var group = whole[range];
            if (group.ContainsAnyExceptInRange('0', '9') || (first ? group.Length is < 1 or > 3 : group.Length != 3))
                return false;
            first = false;
        }

        return true;
    }
}
