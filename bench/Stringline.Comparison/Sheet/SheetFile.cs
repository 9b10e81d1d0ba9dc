using SpreadCheetah;
using Stringline.Comparison.Jobs;

namespace Stringline.Comparison.Sheet;

/// <summary>What the columns of the six days hold.</summary>
internal enum Answers
{
    /// <summary>Formulas without remembered values, so that whoever opens the file must work them out.</summary>
    Formulas,

    /// <summary>Plain numbers: the same file to load and to save, and nothing to work out.</summary>
    Values,
}

/// <summary>
/// The spreadsheet: a row a job, the facts in columns A to J, the six days in K to P, the closed weekdays on a sheet of their own.
/// </summary>
internal static class SheetFile
{
    /// <summary>The first of the six columns, from 0.</summary>
    public const int FirstAnswer = 10;

    public static async Task Write(string path, IReadOnlyList<ComparedJob> jobs, Answers answers, IReadOnlyList<SixDays> values)
    {
        await using var file = File.Create(path);
        await using var sheet = await Spreadsheet.CreateNewAsync(file);
        await sheet.StartWorksheetAsync("Jobs");
        await sheet.AddHeaderRowAsync(
            ["job", "direct", "first furnished", "notice given", "ended", "completed", "owner recorded", "copy mailed", "claim recorded",
                "action filed", .. SixDays.Names]);
        for (var i = 0; i < jobs.Count; i++)
        {
            var job = jobs[i].Plain;
            List<Cell> row =
            [
                new(job.Number), new(job.Direct ? 1 : 0), Fact(job.FirstFurnished), Fact(job.NoticeGiven), Fact(job.Ended),
                    Fact(job.Completed),
                Fact(job.OwnerRecorded), Fact(job.CopyMailed), Fact(job.ClaimRecorded), Fact(job.ActionFiled),
            ];
            row.AddRange(answers == Answers.Formulas
                ? Formulas(i + 2).Select(text => new Cell(new Formula(text)))
                : values[i].ToArray().Select(day => new Cell(day)));
            await sheet.AddRowAsync(row);
        }

        await sheet.StartWorksheetAsync("Closed");
        foreach (var day in ClosedDays.Holidays)
            await sheet.AddRowAsync([new Cell(day)]);
        await sheet.FinishAsync();
    }

    // The last working day on or before a day is the first one before the day after it.
    private static string[] Formulas(int row)
    {
        var closed = $"Closed!$A$1:$A${ClosedDays.Holidays.Count}";
        return
        [
            $"WORKDAY(C{row}+20+1,-1,{closed})",
            $"IF(D{row}<=C{row}+20,C{row},D{row}-20)",
            $"E{row}+1",
            $"WORKDAY(IF(AND(G{row}>=F{row},G{row}<=F{row}+15,H{row}>0,H{row}<=G{row}+10),MIN(F{row}+90,G{row}+IF(B{row}=1,60,30)),F{row}+90)+1,-1,{closed})",
            $"WORKDAY(I{row}+90+1,-1,{closed})",
            $"WORKDAY(J{row}+20+1,-1,{closed})",
        ];
    }

    private static Cell Fact(int day) => day == 0 ? new Cell() : new Cell(day);
}
