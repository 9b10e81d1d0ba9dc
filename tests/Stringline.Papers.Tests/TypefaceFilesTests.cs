using System.Security.Cryptography;
using System.Text.RegularExpressions;
using Stringline.Testing;

namespace Stringline.Papers.Tests;

/// <summary>
/// The typefaces are the very files that the README beside them names: another file would break every paper's lines anew.
/// </summary>
public sealed partial class TypefaceFilesTests
{
    private static readonly string Folder = Repository.Path("src/Stringline.Papers/assets");

    [Theory]
    [InlineData("NotoSerif_400Regular.ttf", "fonts/Serif.ttf")]
    [InlineData("NotoSerif_700Bold.ttf", "fonts/SerifBold.ttf")]
    [InlineData("NotoSans_400Regular.ttf", "fonts/Sans.ttf")]
    [InlineData("NotoSans_700Bold.ttf", "fonts/SansBold.ttf")]
    public void A_typeface_is_the_file_that_is_named_with_its_hash(string file, string embedded) =>
        Assert.Equal(Named()[file], Convert.ToHexStringLower(SHA256.HashData(Resources.Bytes(embedded))));

    [Fact]
    public void Every_file_named_is_there_and_every_file_there_is_named() =>
        Assert.Equal(Directory.GetFiles(Folder, "*.ttf").Select(Path.GetFileName).Order(), Named().Keys.Order());

    private static Dictionary<string, string> Named() => Row().Matches(File.ReadAllText(Path.Combine(Folder, "README.md")))
        .ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value);

    [GeneratedRegex(@"^\| (\S+\.ttf) \| ([0-9a-f]{64}) \|$", RegexOptions.Multiline)]
    private static partial Regex Row();
}
