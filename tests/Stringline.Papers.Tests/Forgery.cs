using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;
using Stringline.Papers.Prescribed;

namespace Stringline.Papers.Tests;

/// <summary>
/// A paper drawn by hand, apart from the layout under test: good as it stands, and each property makes it bad in one way.
/// </summary>
internal sealed record Forgery
{
    public double Width { get; init; } = 612;
    public double Height { get; init; } = 792;
    public int Pages { get; init; } = 2;
    public string Title { get; init; } = "CLAIM OF MECHANICS LIEN";
    public double TitleBaseline { get; init; } = 205;
    public string? InRecordersSpace { get; init; }
    public bool LineInRecordersSpace { get; init; }
    public double ReturnLeft { get; init; } = 63;
    public string ReturnAddress { get; init; } = "2200 Plumb Street";
    public double TextLeft { get; init; } = 63;
    public double NoticePoints { get; init; } = 10;
    public bool NoticeBold { get; init; } = true;
    public Func<string, string> Notice { get; init; } = text => text;
    public double SignerBelowRule { get; init; } = 14;
    public string Signer { get; init; } = "Maria Muñoz-Nguyễn";
    public double Pitch { get; init; } = 13;
    public bool Overlap { get; init; }
    public double LowestBaseline { get; init; } = 700;
    public bool Draft { get; init; }
    public string? Small { get; init; }
    public double SmallPoints { get; init; } = 9;
    public bool Gray { get; init; }
    public string Fact { get; init; } = "Łukasz Masonry";

    public static PaperExpectations Expected { get; } = new()
    {
        Pages = 2,
        Recorded = new RecordedPaper("CLAIM OF MECHANICS LIEN", "Quarrymen’s Supply", "2200 Plumb Street"),
        Wording = PrescribedText.NoticeOfMechanicsLien,
        WordingPoints = 10,
        LastSentenceInCapitals = true,
        Signers = ["Maria Muñoz-Nguyễn"],
        MustHold = ["Łukasz Masonry"],
    };

    public PreflightReport Check()
    {
        Fonts.Open();
        using var document = new PdfDocument();
        for (var i = 0; i < Pages; i++)
        {
            var page = document.AddPage();
            page.Width = XUnit.FromPoint(Width);
            page.Height = XUnit.FromPoint(Height);
            using var ink = XGraphics.FromPdfPage(page);
            if (i == 0)
                First(ink);
            else if (i == 1)
                Second(ink);
            if (Draft)
                Slanting(ink);
        }

        using var bytes = new MemoryStream();
        document.Save(bytes);
        var file = new PaperFile("forged.pdf", "Forged", Pages, Finish.Of(bytes.ToArray(), new string('0', 16)));
        Kept.Keep($"forged-{Guid.NewGuid():N}.pdf", file);
        return PaperPreflight.Check(file, Expected);
    }

    private void First(XGraphics ink)
    {
        Text(ink, "RECORDING REQUESTED BY", ReturnLeft, 50);
        Text(ink, "Quarrymen’s Supply", ReturnLeft, 63);
        Text(ink, "WHEN RECORDED MAIL TO", ReturnLeft, 80);
        Text(ink, ReturnAddress, ReturnLeft, 93);
        if (InRecordersSpace is not null)
            Text(ink, InRecordersSpace, 300, 100);
        if (LineInRecordersSpace)
            ink.DrawLine(XPens.Black, 300, 120, 500, 120);
        ink.DrawString(Title, Font(Face.SerifBold, 14), XBrushes.Black, 180, TitleBaseline);
        Text(ink, Fact, TextLeft, 260);
        if (Small is not null)
            ink.DrawString(Small, Font(Face.Serif, SmallPoints), Gray ? XBrushes.Gray : XBrushes.Black, TextLeft, 320);
        if (Overlap)
            Text(ink, "written over", TextLeft + 20, 263);
        ink.DrawLine(XPens.Black, 63, 400, 300, 400);
        Text(ink, Signer, 63, 400 + SignerBelowRule);
        Text(ink, "the foot of the text", 63, LowestBaseline);
    }

    private void Second(XGraphics ink)
    {
        var font = Font(NoticeBold ? Face.SerifBold : Face.Serif, NoticePoints);
        var y = 80.0;
        foreach (var line in new Measure()
            .Lines(Notice(PrescribedText.NoticeOfMechanicsLien.Body), new TypeStyle(Face.SerifBold, 10, 13), 480))
        {
            ink.DrawString(line, font, XBrushes.Black, 63, y);
            y += line.Length == 0 ? 8 : Pitch;
        }
    }

    private static void Slanting(XGraphics ink)
    {
        ink.RotateTransform(-40);
        ink.DrawString("DRAFT", Font(Face.SansBold, 150), XBrushes.LightGray, -100, 500);
    }

    private static void Text(XGraphics ink, string text, double x, double y) =>
        ink.DrawString(text, Font(Face.Serif, 10), XBrushes.Black, x, y);

    private static XFont Font(Face face, double points) => Fonts.Font(new TypeStyle(face, points, points * 1.3));
}
