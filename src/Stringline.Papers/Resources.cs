using System.Reflection;
using System.Text;

namespace Stringline.Papers;

/// <summary>What is embedded in this library: typefaces, prescribed wording, the table of recorders.</summary>
internal static class Resources
{
    /// <summary>The bytes of an embedded file.</summary>
    /// <exception cref="InvalidOperationException">There is no such file: the build is broken.</exception>
    public static byte[] Bytes(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not embedded in Stringline.Papers.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>The text of an embedded UTF-8 file, line ends as they stand there.</summary>
    public static string Text(string name) => Encoding.UTF8.GetString(Bytes(name));
}
