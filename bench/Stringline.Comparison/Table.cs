using System.Globalization;
using Stringline.Comparison.Jobs;

namespace Stringline.Comparison;

/// <summary>The figures in plain text.</summary>
internal static class Table
{
    public static void Write(TextWriter to, IReadOnlyList<Figures> rows, int jobs, int rounds)
    {
        to.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{jobs:N0} jobs of ten entries, six days each, {ClosedDays.Holidays.Count} closed weekdays; medians "
            + $"of {rounds} interleaved rounds."));
        to.WriteLine("Every engine gave the same six days as the law library for every job in every round.");
        to.WriteLine();
        to.WriteLine(Text($"{"",-53}{"processor",11}{"clock",11}{"bytes",9}{"ratio to the first row: processor",36}{"clock",9}"));
        to.WriteLine(Text($"{"",-53}{"us a job",11}{"us a job",11}{"a job",9}{"middle (least to most)",36}{"middle",9}"));
        foreach (var row in rows)
        {
            var bytes = row.Bytes is { } known ? Text($"{known:N0}") : "-";
            var (least, middle, most) = row.ProcessorRatioTo(rows[0]);
            var ratio = Text($"{middle:N3} ({least:N3} to {most:N3})");
            to.WriteLine(Text($"{row.Name,-53}{row.Processor,11:N3}{row.Clock,11:N3}{bytes,9}{ratio,36}{row.ClockRatioTo(rows[0]),9:N3}"));
        }

        to.WriteLine();
        to.WriteLine("A ratio is taken inside each round. Times differ between machines and with their load: trust the ratios only.");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
