using System.Globalization;

namespace Stringline.Law.Numbers;

/// <summary>Numbers in English words, as far as statutes spell them: through ninety-nine; beyond that in figures.</summary>
internal static class NumberWords
{
    private static readonly string[] Small =
    [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen",
        "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
    ];

    private static readonly string[] SmallPlaces =
    [
        "zeroth", "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth",
        "thirteenth", "fourteenth", "fifteenth", "sixteenth", "seventeenth", "eighteenth", "nineteenth",
    ];

    private static readonly string[] Tens = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

    /// <summary>How many: <c>ten</c>, <c>thirty-five</c>, <c>100</c>.</summary>
    public static string Cardinal(decimal value) => !IsSpelled(value) ? value.ToString("#,0.##", CultureInfo.InvariantCulture)
        : value < 20 ? Small[(int)value]
        : (int)value % 10 is var ones and > 0 ? $"{Tens[(int)value / 10]}-{Small[ones]}" : Tens[(int)value / 10];

    /// <summary>Which in a row: <c>tenth</c>, <c>thirty-fifth</c>, <c>100th</c>.</summary>
    public static string Ordinal(decimal value) => !IsSpelled(value) ? Place((int)value)
        : value < 20 ? SmallPlaces[(int)value]
        : (int)value % 10 is var ones and > 0 ? $"{Tens[(int)value / 10]}-{SmallPlaces[ones]}" : Tens[(int)value / 10][..^1] + "ieth";

    /// <summary>Which in a row, in figures: <c>20th</c>, <c>1st</c>.</summary>
    public static string Place(int value) =>
        string.Create(CultureInfo.InvariantCulture, $"{value}{(value / 10 % 10 == 1 ? "th" : (value % 10) switch
    {
        1 => "st",
        2 => "nd",
        3 => "rd",
        _ => "th",
    })}");

    private static bool IsSpelled(decimal value) => value is >= 0 and < 100 && decimal.IsInteger(value);
}
