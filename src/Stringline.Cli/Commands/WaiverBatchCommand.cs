using System.CommandLine;
using System.Globalization;
using System.Text;
using Stringline.Office.Batch;
using Stringline.Cli.Terminal;
using Stringline.Tables;
using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Store;

namespace Stringline.Cli.Commands;

/// <summary><c>stringline packet waiver</c>: hundreds of waivers at once from a table.</summary>
/// <param name="output">Answers.</param>
/// <param name="errors">Refusals and progress.</param>
/// <param name="clock">Tells the day where the user does not.</param>
internal sealed class WaiverBatchCommand(Stream output, TextWriter errors, IClock clock)
{
    // Below this nobody waits for long enough to wonder.
    private const int WorthTelling = 10;

    /// <summary>The command.</summary>
    public Command Command()
    {
        var jobs = new Option<string>("--jobs") { Description = $"A CSV file, a row for each waiver, with the "
            + $"heads {string.Join(", ", WaiverSheet.Heads)}.", HelpName = "FILE.csv", Required = true };
        var folder = new Option<string>("--out") { Description = "The folder to write to. A second run with the same folder makes only "
            + "what is missing or changed.", HelpName = "DIR", Required = true };
        var store = new Option<string>("--store") { Description =
            "The store in which the column job names jobs by number. Without it the column holds paths of job files.", HelpName = "PATH" };
        var asOf = new Option<string>("--as-of") { Description = "The day on which the papers are made. Default: today in California.",
            HelpName = "DAY" };
        var replace = CommandLine.Replace();
        asOf.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && DayText.Read(result.Tokens[0].Value, out _) is { } expected)
                result.AddError($"--as-of takes {expected}.");
        });
        var command =
            new Command("waiver", "Make many waivers and releases at once from a table; what is refused, and why, stands in refused.csv.") {
                jobs, folder, store, asOf, replace };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(jobs),
            parsed.GetRequiredValue(folder),
            parsed.GetValue(store),
            parsed.GetValue(asOf) is { } text && DayText.Read(text, out var day) is null ? day : Today.InCalifornia(clock),
            parsed.GetValue(replace)));
        return command;
    }

    private int Run(string jobs, string folder, string? store, LocalDate asOf, bool replace)
    {
        var progress = new ProgressLine(errors, isTerminal: !Console.IsErrorRedirected, WorthTelling);
        try
        {
            using var journal = store is null ? null : Journals.Open(store, clock, OpenStore.ReadOnly);
            var outcome = WaiverSheet.Open(jobs).Then(sheet => WaiverBatch.Run(sheet, folder, journal, asOf, replace, progress));
            progress.End();
            return outcome switch
            {
                Outcome<BatchReport>.Done done => Say(done.Value, folder),
                Outcome<BatchReport>.Refused refused => Refuse(refused.Why),
                _ => throw new InvalidOperationException("Neither done nor refused."),
            };
        }
        catch (StoreException e)
        {
            progress.End();
            return Refuse([e.Message]);
        }
    }

    private int Say(BatchReport report, string folder)
    {
        var refused = Path.Combine(folder, BatchReport.FileName);
        var text = string.Create(CultureInfo.InvariantCulture,
            $"{Assessment.Caution}\n\n{report.Made:N0} made, {report.Kept:N0} there already, {report.Refused:N0} refused{(report.Refused > 0
                ? ": see " + refused
                : "")}\nEach was read back and checked before it was put into {folder}; {WaiverLedger.FileName} lists them, with what each "
                    + $"releases.\n{Sums("They release",
                        report.Given)}{Sums("Not made until what they release is typed in their rows: they would release", report.Asked)}");
        output.Write(Encoding.UTF8.GetBytes(Glyphs.TerminalShowsUnicode() ? text : Glyphs.ToAscii(text)));
        if (report.Faults == 0)
            return report.Refused == 0 ? CommandLine.Done : CommandLine.Refused;
        errors.WriteLine($"Stringline itself failed on {report.Faults} rows; they are in {refused} with the fault. Please report it.");
        return CommandLine.OwnFault;
    }

    private static string Sums(string what, WaiverSums sums) => sums.Papers == 0
        ? ""
        : string.Create(CultureInfo.InvariantCulture,
            $"{what} {LawText.Money(sums.Released)}, and {LawText.Money(sums.Paid)} is paid: {LawText.Money(
                Math.Abs(sums.Difference))} {(sums.Difference < 0
                    ? "less" : "more")} is released than is paid, over {sums.Papers:N0} {(sums.Papers == 1
                    ? "paper" : "papers")}. More than is paid for it may be released by {sums.Beyond:N0}.\n");

    private int Refuse(IReadOnlyList<string> why)
    {
        foreach (var reason in why)
            errors.WriteLine(reason);
        return CommandLine.Refused;
    }
}
