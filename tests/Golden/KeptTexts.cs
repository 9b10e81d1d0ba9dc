using System.IO.Compression;
using System.Text.Json;

namespace Stringline.Golden;

/// <summary>What the program said of one job: every text under the day and the thing that it is of, in order.</summary>
internal sealed class KeptTexts
{
    private readonly SortedDictionary<string, string> texts = new(StringComparer.Ordinal);

    /// <summary>The texts.</summary>
    public IReadOnlyDictionary<string, string> All => texts;

    /// <summary>Keeps a text; each has a name of its own.</summary>
    public void Add(string what, string text) => texts.Add(what, text);

    /// <summary>Writes them into one file.</summary>
    public void Write(string path)
    {
        using var file = new BrotliStream(File.Create(path), CompressionLevel.Fastest);
        JsonSerializer.Serialize(file, texts);
    }

    /// <summary>Reads such a file.</summary>
    public static IReadOnlyDictionary<string, string> Read(string path)
    {
        using var file = new BrotliStream(File.OpenRead(path), CompressionMode.Decompress);
        return JsonSerializer.Deserialize<Dictionary<string, string>>(file) ?? throw new InvalidOperationException($"{path} is empty.");
    }
}
