using System.Diagnostics;
using System.Globalization;
using System.Text;
using Stringline.Office.StoreNotes;
using Stringline.Office.Portfolio;
using Stringline.Cli.Terminal;
using Stringline.Law;
using Stringline.Store;

namespace Stringline.Cli.Commands;

/// <summary><c>stringline assess --all</c>: every job of a store that a new entry, other rules or another day can have changed.</summary>
/// <param name="output">Answers.</param>
/// <param name="errors">Refusals and progress.</param>
/// <param name="clock">The clock.</param>
internal sealed class AssessAll(Stream output, TextWriter errors, IClock clock)
{
    /// <summary>Assesses and says how many.</summary>
    public int Run(string store, LocalDate asOf, bool anew)
    {
        var progress = new ProgressLine(errors, isTerminal: !Console.IsErrorRedirected);
        try
        {
            var started = Stopwatch.GetTimestamp();
            using var journal = Journals.Open(store, clock);
            var portfolio = new Portfolio(journal);
            var relay = new Relay(progress);
            var done = anew
                ? portfolio.RefreshAnew(asOf, Environment.ProcessorCount, relay)
                : portfolio.RefreshStale(asOf, Environment.ProcessorCount, relay);
            progress.End();
            foreach (var line in DamageText.Of(journal, portfolio))
                errors.WriteLine(line);
            var jobs = journal.CountJobs();
            output.Write(Encoding.UTF8.GetBytes(string.Create(
                CultureInfo.InvariantCulture,
                $"{done:N0} of {jobs:N0} jobs assessed as "
                    + $"of {Tables.DayText.Write(asOf)} in {Stopwatch.GetElapsedTime(started).TotalSeconds:0.0} s; {(anew
                        ? "everything that is derived from the journal was made anew"
                        : $"{jobs - done:N0} stood as they were")}.\n{Assessment.Caution}\n")));
            return CommandLine.Done;
        }
        catch (StoreException e)
        {
            progress.End();
            errors.WriteLine(e.Message);
            return CommandLine.Refused;
        }
    }

    /// <summary>Tells the line of progress how many jobs are assessed.</summary>
    internal sealed class Relay(ProgressLine line) : IProgress<PortfolioProgress>
    {
        /// <inheritdoc/>
        public void Report(PortfolioProgress value) => line.Report(new StoreProgress("jobs assessed", value.Done, value.Total));
    }
}
