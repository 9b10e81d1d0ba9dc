using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;
using Stringline.Papers.Prescribed;

namespace Stringline.Papers.Tests;

/// <summary>
/// The six wordings, as compared letter for letter with the Civil Code of the Legislature as updated 10 July 2026
/// (read 2026-11-25). The sums were taken of those files when they were read; a changed letter changes the sum.
/// </summary>
public sealed class PrescribedTextTests
{
    [Theory]
    [InlineData("8132", "Civ. Code § 8132", "d8fdefb86359dcd0f3ecaa464d7dbd23f00c80fd06fc910d26448ae0ffa9475d")]
    [InlineData("8134", "Civ. Code § 8134", "719dd42b474fc774a197e9ae6bf17917e3ec64b07eee0c042f8de41def300d42")]
    [InlineData("8136", "Civ. Code § 8136", "0d7e3913fa2f46b77ca3ae8248880ba66627cdefe4a5fcbe16aac17a4a9e3dac")]
    [InlineData("8138", "Civ. Code § 8138", "1fb4f9e9465d57ce4c116d430dc1f09de5c387723f0494a9e2ea455e41eb6364")]
    [InlineData("8202-notice-to-property-owner", "Civ. Code § 8202(a)(3)",
        "ef1073ea92020eae163363acfd652944baa453984abdebc14b54e490dea57bca")]
    [InlineData("8416-notice-of-mechanics-lien", "Civ. Code § 8416(a)(8)",
        "8a487cc71650fe1d2e1c41dc689ae8c74e5e45d4a881eec54fc5a2f9d4508d58")]
    public void The_wording_is_unchanged_letter_for_letter(string name, string section, string sha256)
    {
        var file = File.ReadAllText(Path.Combine(Data(), name + ".txt"));
        var body = file[(file.IndexOf('\n', StringComparison.Ordinal) + 1)..].TrimEnd('\n');
        Assert.Equal(sha256, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(body))));
        var text = PrescribedText.Of(name);
        Assert.Equal(body, text.Body);
        Assert.Equal(section, text.Section);
        Assert.Contains("as updated 10 July 2026", text.ReadIn, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_file_of_the_folder_is_embedded_and_named() =>
        Assert.Equal(PrescribedText.Names, Directory.GetFiles(Data(), "*.txt").Select(f => Path.GetFileNameWithoutExtension(f))
            .Order(StringComparer.Ordinal));

    [Fact]
    public void A_file_without_section_and_source_is_refused() =>
        Assert.Throws<FormatException>(() => PrescribedText.Parse("NOTICE\ntext"));

    private static string Data([CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "data", "prescribed");
}
