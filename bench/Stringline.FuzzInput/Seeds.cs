using System.Globalization;
using System.Text;

namespace Stringline.FuzzInput;

/// <summary>What afl-fuzz begins with: good inputs, and a dictionary of words.</summary>
internal static class Seeds
{
    // afl-fuzz takes no longer ones.
    private const int LongestWord = 128;

    /// <summary>Writes <c>in/</c> and <c>words.dict</c>.</summary>
    public static void Write(Target target, string folder)
    {
        var seeds = Directory.CreateDirectory(Path.Combine(folder, "in")).FullName;
        var number = 0;
        foreach (var seed in target.Seeds())
            File.WriteAllBytes(Path.Combine(seeds, (++number).ToString("000", CultureInfo.InvariantCulture)), seed);
        var words = target.Words().Distinct(StringComparer.Ordinal).Select(Encoding.UTF8.GetBytes)
            .Where(word => word.Length is > 0 and <= LongestWord);
        File.WriteAllLines(Path.Combine(folder, "words.dict"), words.Select(Line));
    }

    // The grammar of afl's dictionaries: a quoted text, whose other bytes are spelled in hexadecimal.
    private static string Line(byte[] word)
    {
        var line = new StringBuilder("\"");
        foreach (var one in word)
        {
            if (one is < 0x20 or > 0x7E or (byte)'"' or (byte)'\\')
                line.Append(CultureInfo.InvariantCulture, $"\\x{one:X2}");
            else
                line.Append((char)one);
        }

        return line.Append('"').ToString();
    }
}
