namespace Stringline.LawWatch;

/// <summary>The sections of all files of a folder and of the folders in it.</summary>
/// <param name="Sections">The sections, in the order of the files.</param>
/// <param name="PassedOver">Files whose name names no code that the rules cite.</param>
internal sealed record CodeFolder(IReadOnlyList<CodeSection> Sections, IReadOnlyList<string> PassedOver)
{
    /// <summary>Reads it.</summary>
    /// <exception cref="UnreadableException">It, or a file in it, cannot be read.</exception>
    public static CodeFolder Read(string folder)
    {
        if (!Directory.Exists(folder))
        {
            throw new UnreadableException(
                $"{folder}: no such folder. Right: a folder with the Legislature's plain text of one code or more.");
        }

        var files = Directory.GetFiles(folder, "*.txt", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .ToLookup(file => Codes.Of(Path.GetRelativePath(folder, file)) is not null);
        if (!files[true].Any())
        {
            throw new UnreadableException(
                $"{folder}: no file of a code that the rules cite. Right: text files named, or in folders named, {Codes.Expected} and "
                + "so on.");
        }

        return new CodeFolder(
            [.. files[true].SelectMany(file => CodeFile.Read(file, Codes.Of(Path.GetRelativePath(folder, file))!))],
            [.. files[false].Select(file => Path.GetRelativePath(folder, file))]);
    }
}
