using System.Globalization;
using Stringline.Comparison.Jobs;

namespace Stringline.Comparison.Sheet;

/// <summary>How long LibreOffice Calc works on six formulas a job: a workbook of so many rows, less one of ten rows.</summary>
internal static class SheetTime
{
    private const int FewRows = 10;

    public static async Task Print(string soffice, string folder, int count, int seed)
    {
        var jobs = GeneratedJobs.Of(count, seed);
        var (few, all) = (Path.Combine(folder, "few.xlsx"), Path.Combine(folder, "all.xlsx"));
        await SheetFile.Write(few, jobs[..FewRows], Answers.Formulas, []);
        await SheetFile.Write(all, jobs, Answers.Formulas, []);
        var calc = new Calc(soffice, folder);
        calc.Convert(few, out _);
        var start = calc.Convert(few, out _);
        var whole = calc.Convert(all, out var csv);
        var answers = new SixDays[count];
        Calc.Read(csv, answers);
        var net = whole - start;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{count} rows x 6 formulas: {whole.Clock.TotalSeconds:0.00} s by the clock "
                + $"({start.Clock.TotalSeconds:0.00} s of it start-up), {net.Processor.TotalSeconds:0.00} s of the processor without "
                + $"start-up"));
    }
}
