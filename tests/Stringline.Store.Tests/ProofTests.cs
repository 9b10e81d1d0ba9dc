using System.Text;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>Papers are recognised by what they are, not by what they are called.</summary>
public sealed class ProofTests
{
    [Fact]
    public void A_real_picture_is_a_PNG_whatever_its_name()
    {
        var picture = File.ReadAllBytes(Repository.Path("docs/pictures/claim-packet.png"));
        var proof = Samples.Taken("scans/of today/receipt.pdf", picture);
        Assert.Equal((ProofKind.Png, "receipt.pdf"), (proof.Kind, proof.Name));
        Assert.Null(ProofKinds.Recognise(picture.AsSpan(0, picture.Length - 5)));
    }

    // ITU T.81, table B.1: a file begins with the marker SOI (FFD8) and ends with EOI (FFD9).
    [Fact]
    public void A_JPEG_begins_and_ends_with_its_markers()
    {
        byte[] whole = [0xFF, 0xD8, 0xFF, 0xE0, 0, 4, 0x4A, 0x46, 0xFF, 0xD9];
        Assert.Equal(ProofKind.Jpeg, ProofKinds.Recognise(whole));
        Assert.Null(ProofKinds.Recognise(whole.AsSpan(0, 8)));
    }

    [Theory]
    [InlineData("", "an empty file")]
    [InlineData("plain text", "another kind")]
    [InlineData("%PDF-1.7 and no end", "whose end is missing")]
    [InlineData("MZ\u0090 program", "another kind")]
    [InlineData("<html>%PDF-1.7 %%EOF", "another kind")]
    public void What_is_none_of_the_three_is_refused(string content, string why)
    {
        var refused = Assert.IsType<ProofResult.Refused>(Proof.Of("receipt.pdf", Encoding.UTF8.GetBytes(content)));
        Assert.Contains(why, refused.Why.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_large_a_file_and_a_name_that_cannot_be_kept_are_refused()
    {
        var large = new byte[Proof.LargestFile + 1];
        "%PDF-1.7"u8.CopyTo(large);
        "%%EOF"u8.CopyTo(large.AsSpan(large.Length - 5));
        Assert.IsType<ProofResult.Refused>(Proof.Of("a.pdf", large));
        Assert.Equal(ProofKind.Pdf, ProofKinds.Recognise(large));
        foreach (var name in (string[])["", "a/", "line\nbreak.pdf", new string('x', 201), "\u202Efdp.exe"])
            Assert.IsType<ProofResult.Refused>(Proof.Of(name, Encoding.ASCII.GetBytes("%PDF-1.7 %%EOF")));
    }
}
