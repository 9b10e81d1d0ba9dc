using System.Globalization;

namespace Stringline.Mutate;

/// <summary>The figures by folder.</summary>
internal sealed class Table
{
    private readonly List<(string Folder, Mutant Mutant, Outcome Outcome)> rows = [];

    /// <summary>Adds what became of a mutant.</summary>
    public void Add(string folder, Mutant mutant, Outcome outcome) => rows.Add((folder, mutant, outcome));

    /// <summary>One folder's figures, as a row of a table in Markdown.</summary>
    public string Line(string folder) => Line(folder, rows.Where(r => r.Folder == folder));

    /// <summary>The table.</summary>
    public void Write(TextWriter to, IEnumerable<string> folders)
    {
        to.WriteLine("| Folder | Mutants | Killed | Timed out | Survived | Noticed | Refused by the compiler |");
        to.WriteLine("| --- | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (var folder in folders)
            to.WriteLine(Line(folder));
        to.WriteLine(Line("together", rows));
        foreach (var kind in Enum.GetValues<MutantKind>())
            to.WriteLine(Line($"of these {kind}", rows.Where(r => r.Mutant.Kind == kind)));
    }

    private static string Line(string name, IEnumerable<(string Folder, Mutant Mutant, Outcome Outcome)> some)
    {
        var by = some.ToLookup(r => r.Outcome);
        int Count(Outcome outcome) => by[outcome].Count();
        var noticed = Count(Outcome.Killed) + Count(Outcome.TimedOut);
        var all = noticed + Count(Outcome.Survived);
        var percent = all == 0 ? "" : (100m * noticed / all).ToString("0.0", CultureInfo.InvariantCulture) + " %";
        return $"| {name} | {all} | {Count(Outcome.Killed)} | {Count(Outcome.TimedOut)} | {Count(Outcome.Survived)} | {percent} | {Count(
            Outcome.DoesNotCompile)} |";
    }
}
