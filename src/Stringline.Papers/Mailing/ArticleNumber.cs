using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Mailing;

/// <summary>
/// The check digit of a postal article number. Domestic numbers of 20 or 22 digits end in a digit modulo 10 with weights 3 and 1
/// from the right; some 20-digit numbers check only with the application identifier 91 before them. International numbers of 13
/// characters (UPU standard S10) end their nine digits in one modulo 11 with weights 8 6 4 2 3 5 9 7.
/// </summary>
public static class ArticleNumber
{
    private static readonly int[] S10Weights = [8, 6, 4, 2, 3, 5, 9, 7];

    /// <summary>What is wrong with the number, with what would be right; null where it checks.</summary>
    /// <param name="written">The number as written; spaces and hyphens count for nothing, nor does a leading 420 with a ZIP code.</param>
    public static string? Fault(string written)
    {
        var number = Bare(written);
        if (number.Length == 13 && IsS10(number))
            return S10(number) is var right && right == number[10] - '0' ? null : Wrong(number[10], right);
        if (number.Length is not (20 or 22) || !number.All(char.IsAsciiDigit))
        {
            return $"it has {number.Length} characters. A domestic number has 20 or 22 digits; an international one is two letters, nine "
                + "digits and two letters, such as RA123456785US.";
        }

        var check = ModuloTen(number[..^1]);
        if (check == number[^1] - '0' || (number.Length == 20 && ModuloTen("91" + number[..^1]) == number[^1] - '0'))
            return null;
        return Wrong(number[^1], check);
    }

    /// <summary>Why a paper is not made that states the number; null where it checks or none is there.</summary>
    /// <param name="written">The number in the job file.</param>
    /// <param name="where">Where it is told.</param>
    /// <param name="section">The section under which the paper proves the mailing.</param>
    internal static Refusal? Refused(string? written, Place where, string section) =>
        Clean(written) is { } article && Fault(article) is { } fault
            ? new Refusal("article-number", where, $"{Article(article)} is no article number: {fault}",
                $"Correct the number in the job file; it must be the one on the label and on the receipt.", section)
            : null;

    /// <summary>The number without spaces, hyphens and a routing prefix of 420 with a ZIP code of five or nine digits.</summary>
    public static string Bare(string written)
    {
        var bare = string.Concat(written.Where(c => !char.IsWhiteSpace(c) && c is not '-')).ToUpperInvariant();
        return bare.StartsWith("420", StringComparison.Ordinal) && bare.Length is 30 or 34 && bare.All(char.IsAsciiDigit)
            ? bare[(bare.Length - 22)..] : bare;
    }

    /// <summary>A domestic number with the check digit that its first 21 digits ask for, as it is printed.</summary>
    /// <param name="digits">The first 21 digits.</param>
    public static string Completed(string digits) =>
        Article(string.Create(CultureInfo.InvariantCulture, $"{digits}{ModuloTen(digits)}"));

    /// <summary>The number as it is printed.</summary>
    public static string Printed(string written) => Article(Bare(written));

    private static string Wrong(char there, int right) =>
        string.Create(CultureInfo.InvariantCulture,
            $"its check digit is {there}, but {right} would be right. A digit is mistyped: copy it from the label again.");

    private static int ModuloTen(string digits)
    {
        var sum = 0;
        for (var i = 0; i < digits.Length; i++)
            sum += (digits[digits.Length - 1 - i] - '0') * (i % 2 == 0 ? 3 : 1);
        return (10 - (sum % 10)) % 10;
    }

    private static bool IsS10(string number) =>
        char.IsAsciiLetterUpper(number[0]) && char.IsAsciiLetterUpper(number[1]) && char.IsAsciiLetterUpper(number[11])
            && char.IsAsciiLetterUpper(number[12]) && number[2..11].All(char.IsAsciiDigit);

    private static int S10(string number)
    {
        var sum = 0;
        for (var i = 0; i < S10Weights.Length; i++)
            sum += (number[2 + i] - '0') * S10Weights[i];
        return (11 - (sum % 11)) switch { 10 => 0, 11 => 5, var digit => digit };
    }
}
