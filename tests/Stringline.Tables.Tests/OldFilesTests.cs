using System.Security.Cryptography;
using System.Text.RegularExpressions;
using Stringline.Testing;

namespace Stringline.Tables.Tests;

/// <summary>
/// A file written before the format learned more is read as before: what is not said in it stays unsaid, and nothing new is written. The
/// hashes are of the bytes that the program wrote for these files before the format learned of bankruptcy, structures and summary release.
/// </summary>
public sealed partial class OldFilesTests
{
    [Theory]
    [InlineData("alder-court.json", "d7d63ab1fcf53bf2b5bd260326c5f02f06a7c0caa813673deccf76b914cfdb8f")]
    [InlineData("cottonwood-school.json", "dcea476e103731afdc74b296459de98ea234f1ed8e3849a80fcdfc914e6e76db")]
    [InlineData("juniper-lane.json", "c6d13620c5c9261d25ae28b9687c3c6e6be22ea627cc545c2d10ec06b8282c59")]
    [InlineData("tamarind-wharf.json", "ce5f46a0d3b631b47d3a20f3fc28ec457a9be774caf4fb7571109e075b804354")]
    [InlineData("thistlebank-garden.json", "cf97f4ee3bc910d3e1fa3c88942a09474ad062f02bbc205d56067e250aa432d0")]
    public void A_file_of_before_is_read_and_written_byte_for_byte_as_before(string name, string written)
    {
        // What the demo files have learned to say since is taken out again.
        var text = File.ReadAllText(Repository.Path("data/demo/" + name))
            .Replace("\"to\": [\"p1\"], \"amount\": 30800.00, \"ofDefault\": true", "\"amount\": 30800.00", StringComparison.Ordinal)
            .Replace(Mailed("p1", "RA123456785US") + ",\n    " + Mailed("p2", "RA123456799US"), Mailed("p1\", \"p2", "RA123456785US"),
                StringComparison.Ordinal);
        text = Reached().Replace(text, "").Replace("\n    \"body\": \"local\",", "", StringComparison.Ordinal);
        var job = RoundTripTests.Read(System.Text.Encoding.UTF8.GetBytes(text));
        Assert.Equal(written, Convert.ToHexStringLower(SHA256.HashData(JobFileWriter.Write(job))));
    }

    [GeneratedRegex("\\n    \"(?:telephone|email)\": \"[^\"]*\",")]
    private static partial Regex Reached();

    private static string Mailed(string to, string article) =>
        $"{{ \"what\": \"notice-given\", \"on\": \"2026-03-04\", \"notice\": \"preliminary\", \"to\": [\"{to}\"], \"manner\": "
            + $"\"registered-mail\", \"article\": \"{article}\" }}";
}
