using System.Globalization;

namespace Stringline.Tables;

/// <summary>Money in a file: dollars and cents, a plain number with at most two decimals.</summary>
public static class MoneyText
{
    /// <summary>The largest amount a file may hold, in either direction, in dollars.</summary>
    public const decimal Largest = 999_999_999.99m;

    /// <summary>The amount with exactly two decimals, no separators: <c>-1234.50</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It has a part of a cent: money is never rounded on its way into a file.</exception>
    public static string Write(decimal dollars) => decimal.Round(dollars, 2) == dollars
        ? (dollars == 0m ? 0m : dollars).ToString("0.00", CultureInfo.InvariantCulture)
        : throw new ArgumentOutOfRangeException(nameof(dollars), dollars, "Money has no parts of a cent.");

    /// <summary>Reads digits as they stand in JSON. Says what would be right where they are no amount.</summary>
    /// <returns>Null where the amount was read; else what would be right.</returns>
    internal static string? Read(string digits, out decimal dollars)
    {
        dollars = 0m;
        if (digits.AsSpan().ContainsAny('e', 'E'))
            return "an amount written out in digits, such as 1000.00";
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        if (point >= 0 && digits.Length - point - 1 > 2)
            return "an amount in dollars with at most two decimals, such as 1200.50";
        if (!decimal.TryParse(digits, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture,
            out dollars)
            || Math.Abs(dollars) > Largest)
        {
            dollars = 0m;
            return "an amount of at most 999,999,999.99 dollars";
        }

        dollars = dollars == 0m ? 0m : dollars;
        return null;
    }
}
