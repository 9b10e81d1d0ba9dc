using System.Diagnostics;
using System.Text;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Testing;

namespace Stringline.Papers.Tests;

/// <summary>The files themselves, as other programs see them: qpdf, MuPDF and poppler, none of which wrote or reads them here.</summary>
[Slow(Slow.Lasting)]
public sealed class WholeFileTests
{
    public static TheoryData<string> Ids => [.. PaperCatalogue.All.Select(paper => paper.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void No_other_reader_finds_fault_with_a_paper(string id)
    {
        foreach (var file in PaperJobs.Make(id).Files)
        {
            Assert.True(Finish.IsWhole(file.Bytes.ToArray()), file.Name);
            using var kept = new KeptFile(file.Bytes.ToArray());
            var (checkedBy, told) = Run("qpdf", "--check", kept.Path);
            Assert.True(checkedBy == 0 && told.Contains("No syntax or stream encoding errors found", StringComparison.Ordinal),
                $"{file.Name}: {told}");
            var (shown, said) = Run("mutool", "draw", "-q", "-N", "-F", "text", "-o", "/dev/null", kept.Path);
            Assert.True(shown == 0 && said.Length == 0, $"{file.Name}: {said}");
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_paper_says_its_language_its_title_its_parts_and_that_it_is_printed_at_its_true_size(string id)
    {
        foreach (var file in PaperJobs.Make(id).Files)
        {
            var text = Encoding.Latin1.GetString(file.Bytes.Span);
            Assert.Contains("/Lang(en-US)", text, StringComparison.Ordinal);
            Assert.Contains("/PrintScaling/None", text, StringComparison.Ordinal);
            Assert.Contains("/DisplayDocTitle true", text, StringComparison.Ordinal);
            Assert.DoesNotMatch("/Descent [0-9]", text);
            using var kept = new KeptFile(file.Bytes.ToArray());
            Assert.Matches("Tagged: +yes", Run("pdfinfo", kept.Path).Said);
            var parts = Run("pdfinfo", "-struct-text", kept.Path).Said;
            Assert.Matches("(?m)^ +(H1|H2|P) ", parts);
        }
    }

    [Fact]
    public void A_title_is_a_heading_and_lines_of_one_paragraph_do_not_run_together()
    {
        using var kept = new KeptFile(PaperJobs.Make("claim").Files[0].Bytes.ToArray());
        var parts = Run("pdfinfo", "-struct-text", kept.Path).Said;
        Assert.Matches("H1 \\(block\\)\\s+\"CLAIM OF MECHANICS LIEN", parts);
        Assert.Contains("NOTICE OF MECHANICS LIEN", parts, StringComparison.Ordinal);
    }

    /// <summary>A cell of several lines is heard whole, and not line by line with its neighbors (PDF 32000-1, 14.8.4.3.4).</summary>
    [Fact]
    public void A_table_is_told_by_rows_heads_and_cells()
    {
        using var kept = new KeptFile(PaperJobs.Make("proof-of-notice").Files[0].Bytes.ToArray());
        var parts = Run("pdfinfo", "-struct-text", kept.Path).Said;
        Assert.Matches("Table \\(block\\)\\s+TR\\s+TH\\s+\"Name and address", parts);
        Assert.Matches("TD\\s+\"Alder Court Partners, LLC 77 Cordage Way Davis, CA 95616 \"\\s+TD\\s+\"reputed owner", parts);
    }

    [Fact]
    public void The_same_paper_made_twice_has_the_same_bytes() => Assert.All(
        PaperJobs.Make("claim").Files.Zip(PaperJobs.Make("claim").Files),
        pair => Assert.Equal(pair.First.Bytes.ToArray(), pair.Second.Bytes.ToArray()));

    [Fact]
    public void A_file_that_is_finished_is_finished_again_to_the_same_length()
    {
        var once = PaperJobs.Make("claim").Files[0].Bytes.ToArray();
        Assert.Equal(once.Length, Finish.Of(once, new string('0', 16)).Length);
    }

    [Fact]
    public void A_page_with_nothing_on_it_is_whole_too()
    {
        using var document = new PdfDocument();
        XGraphics.FromPdfPage(document.AddPage()).Dispose();
        using var bytes = new MemoryStream();
        document.Save(bytes);
        var whole = Finish.Of(bytes.ToArray(), new string('a', 16));
        Assert.True(Finish.IsWhole(whole));
        using var kept = new KeptFile(whole);
        Assert.Equal(0, Run("qpdf", "--check", kept.Path).Code);
    }

    [Fact]
    public void What_the_library_alone_writes_is_not_whole()
    {
        // The day this fails, the library ends its streams itself and the pass over the file can go.
        Fonts.Open();
        using var document = new PdfDocument();
        using (var ink = XGraphics.FromPdfPage(document.AddPage()))
            ink.DrawString(string.Concat(Enumerable.Repeat("stop payment notice ", 50)), Fonts.Font(TypeStyle.Body), XBrushes.Black, 50,
                50);
        using var bytes = new MemoryStream();
        document.Save(bytes);
        Assert.False(Finish.IsWhole(bytes.ToArray()));
        Assert.True(Finish.IsWhole(Finish.Of(bytes.ToArray(), new string('a', 16))));
    }

    [Theory]
    [InlineData("no table")]
    [InlineData("startxref\n7\n%%EOF\n")]
    public void What_is_no_such_file_is_refused(string text) =>
        Assert.Throws<InvalidDataException>(() => Finish.Of(Encoding.ASCII.GetBytes(text.PadRight(40)), new string('0', 16)));

    private static (int Code, string Said) Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var run = Process.Start(start)!;
        var errors = run.StandardError.ReadToEndAsync();
        var said = run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        return (run.ExitCode, (said + errors.Result).Trim());
    }

    private sealed class KeptFile : IDisposable
    {
        public KeptFile(byte[] bytes) => File.WriteAllBytes(Path, bytes);

        public string Path { get; } = Scratch.File("pdf");

        public void Dispose() => File.Delete(Path);
    }
}
