using Stringline.Comparison.Contenders;
using Stringline.Comparison.Jobs;
using Stringline.Comparison.Sheet;

namespace Stringline.Comparison;

/// <summary>
/// Runs everyone in turn, round after round, so that whatever else the machine does falls on all alike; checks every answer.
/// </summary>
internal sealed class Rounds
{
    private const int FewRows = 10;

    private readonly ComparedJob[] jobs;
    private readonly Calc calc;
    private readonly string folder;
    private readonly SixDays[] ours;
    private readonly SixDays[] theirs;
    private readonly List<(Contender Contender, Figures Figures)> inProcess;
    private readonly Figures sheet = new("LibreOffice Calc, start-up taken off");
    private readonly Figures sheetAlone = new("LibreOffice Calc, loading and saving taken off too");

    public Rounds(ComparedJob[] jobs, Calc calc, string folder)
    {
        this.jobs = jobs;
        this.calc = calc;
        this.folder = folder;
        ours = new SixDays[jobs.Length];
        theirs = new SixDays[jobs.Length];
        Contender[] contenders =
        [
            new FullAssessment(readWhy: false), new FullAssessment(readWhy: true), new OwnDayRules(),
            new WithNRules(sessionPerJob: true), new WithNRules(sessionPerJob: false), new WithRulesEngine(), new PlainCSharp(),
        ];
        inProcess = [.. contenders.Select(contender => (contender, new Figures(contender.Name)))];
    }

    /// <summary>One row for each way of answering; the first is the one that the ratios are to.</summary>
    public IReadOnlyList<Figures> Figures => [.. inProcess.Select(one => one.Figures), sheet, sheetAlone];

    public async Task Run(int rounds)
    {
        new FullAssessment(readWhy: false).Answer(jobs, ours);
        await WriteSheets();
        for (var round = -1; round <= rounds; round++)
        {
            // Two rounds go before, in which everything is compiled and settles.
            var counts = round > 0;
            await Console.Error.WriteLineAsync(counts ? $"round {round} of {rounds} ..." : "warming up and checking that all agree ...");
            foreach (var (contender, figures) in inProcess)
                Time(contender, figures, counts);
            TimeSheets(counts);
        }
    }

    private void Time(Contender contender, Figures figures, bool counts)
    {
        Array.Clear(theirs);
        GC.Collect();
        GC.WaitForPendingFinalizers();
        var before = GC.GetTotalAllocatedBytes(precise: true);
        var spent = Spent.On(() => contender.Answer(jobs, theirs));
        var allocated = GC.GetTotalAllocatedBytes(precise: true) - before;
        Agreement.Check(contender.Name, jobs, ours, theirs);
        if (!counts)
            return;
        figures.Add(spent, jobs.Length);
        figures.Bytes = (double)allocated / jobs.Length;
    }

    private void TimeSheets(bool counts)
    {
        var startUp = calc.Convert(FilePath("few"), out _);
        var loaded = calc.Convert(FilePath("values"), out _);
        var worked = calc.Convert(FilePath("formulas"), out var csv);
        Array.Clear(theirs);
        Calc.Read(csv, theirs);
        Agreement.Check("LibreOffice Calc", jobs, ours, theirs);
        if (!counts)
            return;
        sheet.Add(worked - startUp, jobs.Length - FewRows);
        sheetAlone.Add(worked - loaded, jobs.Length);
    }

    private async Task WriteSheets()
    {
        await SheetFile.Write(FilePath("few"), jobs[..FewRows], Answers.Formulas, ours);
        await SheetFile.Write(FilePath("values"), jobs, Answers.Values, ours);
        await SheetFile.Write(FilePath("formulas"), jobs, Answers.Formulas, ours);
    }

    private string FilePath(string name) => Path.Combine(folder, name + ".xlsx");
}
