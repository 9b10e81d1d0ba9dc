using System.Globalization;
using Stringline.Comparison.Jobs;

namespace Stringline.Comparison;

/// <summary>The figures in plain text.</summary>
internal static class Table
{
    public static void Write(TextWriter to, IReadOnlyList<Figures> rows, int jobs, int rounds)
    {
        var ours = rows[0];
        to.WriteLine(Text($"{jobs:N0} jobs of ten entries, six days each, {ClosedDays.Holidays.Count} closed weekdays; medians of {rounds} interleaved rounds."));
        to.WriteLine("Every engine gave the same six days as the law library for every job in every round.");
        to.WriteLine();
        to.WriteLine(Text($"{"",-53}{"us a job",12}{"least",12}{"most",12}{"bytes a job",13}{"ratio",10}"));
        foreach (var row in rows)
        {
            var bytes = row.Bytes is { } known ? Text($"{known:N0}") : "-";
            to.WriteLine(Text($"{row.Name,-53}{row.Median,12:N3}{row.Least,12:N3}{row.Most,12:N3}{bytes,13}{row.RatioTo(ours),10:N3}"));
        }

        to.WriteLine();
        to.WriteLine(Text($"ratio: time over that of \"{ours.Name}\" in the same round, the middle of the rounds. Times differ between machines and with their load: trust the ratios only."));
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
