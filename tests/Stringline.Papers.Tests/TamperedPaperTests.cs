using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;
using PdfSharp.Pdf.IO;
using Stringline.Papers.Catalogue;
using Stringline.Papers.ClaimOfLien;
using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;
using Stringline.Testing;
using Stringline.Papers.Writing;
using System.Text;

namespace Stringline.Papers.Tests;

/// <summary>
/// A good claim of lien, changed afterwards in one way each: what a scanner, another program or a hand may do to it between press and
/// counter. The check that is meant to find the change finds it. The good claim itself passes every check (see
/// <see cref="PreflightTests"/>).
/// </summary>
[Slow(Slow.Fuzz)]
public sealed class TamperedPaperTests
{
    /// <summary>What is done to the good claim, by the check that must find it.</summary>
    private sealed record Change(string Check, Action<PdfDocument> Do);

    private static readonly IReadOnlyDictionary<string, Change> Changes = new Dictionary<string, Change>
    {
        ["the last page is missing"] = new("in its order", d => d.Pages.RemoveAt(d.PageCount - 1)),
        ["the first two pages are swapped"] = new("in its order", d => d.Pages.MovePage(1, 0)),
        ["the last two pages are swapped"] = new("in its order", d => d.Pages.MovePage(2, 1)),
        ["the last page is the second once more"] = new("in its order", d =>
        {
            d.Pages.RemoveAt(2);
            d.Pages.Insert(2, Import(1));
        }),
        ["a black box over the prescribed notice"] =
            new("nothing over text", d => Draw(d, 1, g => g.DrawRectangle(XBrushes.Black, 63, 300, 486, 200))),
        ["a white box over the amount"] =
            new("nothing over text", d => Draw(d, 0, g => g.DrawRectangle(XBrushes.White, 63, 200, 486, 200))),
        ["a line through the text"] = new("nothing over text", d => Draw(d, 1, g => g.DrawLine(XPens.Black, 63, 60, 549, 700))),
        ["a straight line through a line of text"] = new("nothing over text", StrikeFirstLine),
        ["a picture over the text"] = new("nothing over text", d => Draw(d, 1, g => g.DrawImage(GrayPicture(), 63, 300, 200, 200))),
        ["an amount that is there only for a search"] =
            new("all text is seen", d => Raw(d, 0, "BT 3 Tr /F0 11 Tf 1 0 0 1 70 100 Tm <0024> Tj ET")),
        ["a face that is not in the file"] = new("faces in the file", OutsideFace),
        ["a unit of its own"] = new("prints as it looks", d => d.Pages[0].Elements.SetReal("/UserUnit", 2)),
        ["an annotation over the page"] = new("prints as it looks", d => d.Pages[0].Annotations.Add(
            new PdfTextAnnotation { Title = "Note", Contents = "Paid.", Rectangle = new PdfRectangle(new XRect(100, 300, 20, 20)) })),
        ["printing is forbidden"] = new("prints as it looks", d =>
        {
            d.SecuritySettings.OwnerPassword = "owner";
            d.SecuritySettings.PermitPrint = false;
        }),
    };

    /// <summary>
    /// The checks that a paper made by hand has no bad paper for: these changes find them, and
    /// <see cref="A_stream_without_its_end_is_found"/>.
    /// </summary>
    public static IEnumerable<string> Found => Changes.Values.Select(c => c.Check).Where(c => c != "in its order").Append("whole file");

    public static TheoryData<string> Names => [.. Changes.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_is_found(string change)
    {
        var report = Check(bytes => Edited(bytes, Changes[change].Do));
        Assert.False(report.Checks.Single(c => c.Name == Changes[change].Check).Passed, report.ToString());
    }

    [Fact]
    public void A_claim_that_another_program_only_saved_again_passes() =>
        Assert.True(Check(bytes => Edited(bytes, static _ => { })).Passed);

    [Fact]
    public void A_stream_without_its_end_is_found()
    {
        var report = Check(bytes =>
        {
            // Length and checksum of the first stream, four bytes shorter; the table of places stays right since the bytes are only
            // overwritten.
            var text = Encoding.Latin1.GetString(bytes);
            var end = text.IndexOf("\nendstream", StringComparison.Ordinal);
            bytes[end - 1] ^= 0xFF;
            return bytes;
        });
        Assert.False(report.Checks.Single(c => c.Name == "whole file").Passed, report.ToString());
    }

    [Theory]
    [InlineData("VERIFICATION")]
    [InlineData("PROOF OF SERVICE AFFIDAVIT")]
    [InlineData("I declare under penalty of perjury under the laws of the State of California that the foregoing is true and correct.")]
    public void A_claim_without_one_of_its_parts_is_found(string part)
    {
        // Civ. Code § 8416(a): verified; (a)(7): with the completed affidavit.
        var plan = Plan();
        var without = plan with { Blocks = [.. plan.Blocks.Where(b => !b.Says.Contains(part))] };
        Assert.NotEqual(plan.Blocks.Count, without.Blocks.Count);
        var printed = Press.Print(without);
        var report = PaperPreflight.Check(
            new PaperFile("claim.pdf", "Claim", printed.Pages, printed.Bytes),
            new PaperExpectations { Pages = printed.Pages, InOrder = plan.Says });
        Assert.False(report.Checks.Single(c => c.Name == "in its order").Passed, report.ToString());
    }

    private static PaperPlan Plan() =>
        ClaimPaper.Write(new Matter(Jobs.Demo(), Jobs.Demo().Assessed(), PaperOptions.None), null).Papers[0]
            .Plan(Jobs.Demo().Claimant.Name, Jobs.Day("2026-05-06"), draft: false);

    private static PreflightReport Check(Func<byte[], byte[]> change)
    {
        var plan = Plan();
        var printed = Press.Print(plan);
        Assert.Equal(3, printed.Pages);
        return PaperPreflight.Check(
            new PaperFile("claim.pdf", "Claim", 3, change(printed.Bytes)), new PaperExpectations { Pages = 3, InOrder = plan.Says });
    }

    private static byte[] Edited(byte[] bytes, Action<PdfDocument> change)
    {
        using var document = PdfReader.Open(new MemoryStream(bytes), PdfDocumentOpenMode.Modify);
        change(document);
        using var changed = new MemoryStream();
        document.Save(changed);
        // In a locked file the streams are enciphered, and nothing can be said of their ends.
        return document.SecuritySettings.PermitPrint ? Finish.Of(changed.ToArray(), new string('0', 16)) : changed.ToArray();
    }

    private static PdfPage Import(int page) =>
        PdfReader.Open(new MemoryStream(Press.Print(Plan()).Bytes), PdfDocumentOpenMode.Import).Pages[page];

    private static void Draw(PdfDocument document, int page, Action<XGraphics> draw)
    {
        using var graphics = XGraphics.FromPdfPage(document.Pages[page], XGraphicsPdfPageOptions.Append);
        draw(graphics);
    }

    private static void StrikeFirstLine(PdfDocument document)
    {
        var line = ReadBack.Of(Press.Print(Plan()).Bytes).Pages[1].Lines[0];
        Draw(document, 1, g => g.DrawLine(XPens.Black, line[0].Left, line[0].Baseline - 3, line[^1].Right, line[0].Baseline - 3));
    }

    private static void Raw(PdfDocument document, int page, string operators) =>
        document.Pages[page].Contents.AppendContent().CreateStream(Encoding.ASCII.GetBytes($"\nq {operators} Q\n"));

    private static void OutsideFace(PdfDocument document)
    {
        var face = new PdfDictionary(document);
        face.Elements.SetName("/Type", "/Font");
        face.Elements.SetName("/Subtype", "/Type1");
        face.Elements.SetName("/BaseFont", "/Helvetica");
        document.Internals.AddObject(face);
        document.Pages[0].Resources.Elements.GetDictionary("/Font")!.Elements["/Fx"] = face.Reference;
        Raw(document, 0, "BT /Fx 11 Tf 1 0 0 1 70 100 Tm (Paid) Tj ET");
    }

    private static XImage GrayPicture()
    {
        // A picture of one gray point, as a bitmap file: head, sizes, one pixel.
        byte[] bitmap =
        [
            (byte)'B', (byte)'M', 58, 0, 0, 0, 0, 0, 0, 0, 54, 0, 0, 0, 40, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 24, 0,
            0, 0, 0, 0, 4, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 128, 128, 128, 0,
        ];
        return XImage.FromStream(new MemoryStream(bitmap));
    }
}
