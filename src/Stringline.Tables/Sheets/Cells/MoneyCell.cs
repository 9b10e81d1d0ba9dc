using System.Globalization;

namespace Stringline.Tables.Sheets.Cells;

/// <summary>Reads dollars and cents as accounting systems write them: $1,234.50, (1,234.50), 1,234.50-, -1234.5, 1,234.50 CR.</summary>
public static class MoneyCell
{
    private const string Shapes = "an amount such as 1,234.50, $1234.5 or (1,234.50) for less than nothing";

    // A binary fraction that is nearer to a cent than this was that cent.
    private const decimal Trace = 0.000001m;

    /// <summary>Reads a cell.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="dollars">The amount, less than zero for a credit; zero where none was read.</param>
    /// <returns>Null where an amount was read; else what would be right.</returns>
    public static string? Read(Cell cell, out decimal dollars)
    {
        dollars = 0m;
        switch (cell.Kind)
        {
            case CellKind.Number:
                var cents = decimal.Round(cell.Number, 2, MidpointRounding.AwayFromZero);
                return Math.Abs(cents - cell.Number) > Trace ? "an amount in dollars and whole cents" : Checked(cents, out dollars);
            case CellKind.Text:
                return Text(cell.ToString(), out dollars);
            default:
                return Shapes;
        }
    }

    private static string? Text(string text, out decimal dollars)
    {
        dollars = 0m;
        var rest = text.AsSpan().Trim();
        var marks = 0;
        if (Parenthesized(rest))
        {
            rest = rest[1..^1].Trim();
            marks++;
        }

        if (rest.EndsWith("CR", StringComparison.OrdinalIgnoreCase))
        {
            rest = rest[..^2].TrimEnd();
            marks++;
        }

        rest = Unsigned(rest, out var signs);
        marks += signs;
        if (rest is ['$', ..])
        {
            rest = Unsigned(rest[1..].TrimStart(), out signs);
            marks += signs;
        }

        if (Parenthesized(rest))
        {
            rest = rest[1..^1].Trim();
            marks++;
        }

        if (marks > 1 || rest.IsEmpty || !TypedMoney.IsGrouped(rest))
            return Shapes;
        var point = rest.IndexOf('.');
        if (point >= 0 && rest[(point + 1)..].TrimEnd('0').Length > 2)
            return "an amount in dollars and whole cents";
        return decimal.TryParse(rest, NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands, CultureInfo.InvariantCulture,
            out var amount)
            ? Checked(marks == 1 ? -amount : amount, out dollars)
            : Shapes;
    }

    private static bool Parenthesized(ReadOnlySpan<char> text) => text is ['(', .., ')'];

    private static ReadOnlySpan<char> Unsigned(ReadOnlySpan<char> text, out int signs)
    {
        signs = 1;
        if (text is ['-' or '\u2212' or '\u2013', ..])
            return text[1..].TrimStart();
        if (text is [.., '-' or '\u2212'])
            return text[..^1].TrimEnd();
        signs = 0;
        return text;
    }

    private static string? Checked(decimal amount, out decimal dollars)
    {
        dollars = Math.Abs(amount) > MoneyText.Largest || amount == 0m ? 0m : decimal.Round(amount, 2);
        return Math.Abs(amount) > MoneyText.Largest ? "an amount of at most 999,999,999.99 dollars" : null;
    }
}
