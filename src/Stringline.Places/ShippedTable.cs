using System.Reflection;
using System.Text;

namespace Stringline.Places;

/// <summary>The tables embedded in this library, as text with line breaks <c>\n</c>.</summary>
internal static class ShippedTable
{
    /// <summary>The text of a table.</summary>
    /// <exception cref="InvalidOperationException">There is no such table: the build is broken.</exception>
    public static string Text(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not embedded in Stringline.Places.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
