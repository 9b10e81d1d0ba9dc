using System.CommandLine;
using System.Text;
using Stringline.Office.StoreNotes;
using Stringline.Office.Portfolio;
using Stringline.Cli.Terminal;
using Stringline.Tables;
using Stringline.Tables.Calendar;
using Stringline.Law;
using Stringline.Tables.Sheets.Writing;
using Stringline.Store;

namespace Stringline.Cli.Commands;

/// <summary>What leaves the program for spreadsheets and calendars: <c>list</c>, <c>calendar</c>, <c>waterfall</c>, <c>days</c>.</summary>
/// <param name="output">Answers.</param>
/// <param name="errors">Refusals and cautions.</param>
/// <param name="clock">Tells the day where the user does not.</param>
internal sealed class SheetCommands(Stream output, TextWriter errors, IClock clock)
{
    /// <summary>The commands.</summary>
    public IEnumerable<Command> All() =>
    [
        List(), Calendar(),
        OfJob("waterfall", "The amount of one job, step by step, as a spreadsheet.", LawSheets.Waterfall),
        OfJob("days", "Every day of one job's findings, as a spreadsheet.", LawSheets.Days),
    ];

    private Command List()
    {
        var store = StoreCommands.Store();
        var asOf = CommandLine.AsOf();
        var (xlsx, csv) = Targets();
        var replace = CommandLine.Replace();
        var command = new Command("list", "The desk's list as a spreadsheet: what is to be done on every job, by which day; what is past "
            + "stands first. Jobs that are stale are assessed before.") { store, asOf, xlsx, csv, replace };
        command.SetAction(parsed => Try(() =>
        {
            using var journal = Fresh(StoreCommands.AddressOf(parsed, store), CommandLine.DayOf(parsed.GetValue(asOf), clock));
            return Write(DeskSheet.Of(DeskSheet.All(journal, StepFilter.None)), parsed.GetValue(xlsx), parsed.GetValue(csv),
                parsed.GetValue(replace));
        }));
        return command;
    }

    private Command Calendar()
    {
        var store = StoreCommands.Store();
        var asOf = CommandLine.AsOf();
        var path = new Option<string>("--out") { Description = "The iCalendar file (.ics) to write.", HelpName = "FILE", Required = true };
        var alarms =
            new Option<int[]>("--alarm") { Description = $"Days before the day on which an alarm sounds; again for more. "
                + $"Default: {string.Join(", ", CalendarText.UsualAlarms)}.", HelpName = "DAYS", AllowMultipleArgumentsPerToken = true };
        alarms.Validators.Add(result =>
        {
            if (result.Tokens.Any(token => !int.TryParse(token.Value, out var days) || days is < 1 or > 365))
                result.AddError("--alarm takes a number of days from 1 to 365.");
        });
        var replace = CommandLine.Replace();
        var command =
            new Command("calendar", "The days to act of every job as a calendar file with alarms. Jobs that are stale are assessed "
                + "before.") { store, path, asOf, alarms, replace };
        command.SetAction(parsed => Try(() =>
        {
            var asked = CommandLine.DayOf(parsed.GetValue(asOf), clock);
            using var journal = Fresh(StoreCommands.AddressOf(parsed, store), asked);
            var bytes = DeskCalendar.Of(journal, StepFilter.None, asked, parsed.GetValue(alarms) is { Length: > 0 } days
                ? days : CalendarText.UsualAlarms);
            return Drop(parsed.GetRequiredValue(path), bytes, parsed.GetValue(replace));
        }));
        return command;
    }

    // An answer as of another day, or from before the last entry, would be quietly wrong: what is stale is assessed first.
    private IJournal Fresh(string store, LocalDate asked)
    {
        var journal = Journals.Open(store, clock);
        var progress = new ProgressLine(errors, isTerminal: !Console.IsErrorRedirected);
        var portfolio = new Portfolio(journal);
        portfolio.RefreshStale(asked, Environment.ProcessorCount, new AssessAll.Relay(progress));
        progress.End();
        foreach (var line in DamageText.Of(journal, portfolio))
            errors.WriteLine(line);
        return journal;
    }

    private Command OfJob(string name, string description, Func<Assessment, Sheet> sheet)
    {
        var job = new Argument<string>("JOB") { Description = "A job file; or, with --store, a job's key." };
        var store = new Option<string?>("--store") { Description = "The store that holds the job.", HelpName = "STORE" };
        var asOf = CommandLine.AsOf();
        var (xlsx, csv) = Targets();
        var replace = CommandLine.Replace();
        var command = new Command(name, description) { job, store, asOf, xlsx, csv, replace };
        command.SetAction(parsed => Try(() =>
        {
            var asked = CommandLine.DayOf(parsed.GetValue(asOf), clock);
            var named = parsed.GetRequiredValue(job);
            return Assessed(named, parsed.GetValue(store), asked) switch
            {
                Outcome<Assessment>.Done done =>
                    Write(sheet(done.Value), parsed.GetValue(xlsx), parsed.GetValue(csv), parsed.GetValue(replace)),
                Outcome<Assessment>.Refused refused => Refuse(refused.Why),
                _ => throw new InvalidOperationException("Neither done nor refused."),
            };
        }));
        return command;
    }

    private Outcome<Assessment> Assessed(string job, string? store, LocalDate asked)
    {
        if (store is null)
            return UseCases.Assess(job, asked);
        using var journal = Journals.Open(store, clock);
        return journal.Find(job) is { } stored
            ? new Outcome<Assessment>.Done(UseCases.Assess(stored.KnownOn(asked), asked))
            : new Outcome<Assessment>.Refused([new Fault(store, "", $"no job \"{job}\"", "the key of a job of this store").ToString()]);
    }

    private static (Option<string?> Xlsx, Option<string?> Csv) Targets() => (
        new("--xlsx") { Description = "Write a workbook.", HelpName = "FILE" },
        new("--csv") { Description = "Write CSV; - for standard output. Default.", HelpName = "FILE" });

    private int Write(Sheet sheet, string? xlsx, string? csv, bool replace)
    {
        var written = CommandLine.Done;
        if (xlsx is not null)
        {
            using var stream = new MemoryStream();
            SheetWriter.WriteXlsxAsync(stream, sheet, [Assessment.Caution]).GetAwaiter().GetResult();
            written = Drop(xlsx, stream.ToArray(), replace);
        }

        if (written != CommandLine.Done || (csv is null && xlsx is not null))
            return written;
        if (csv is null or "-")
        {
            SheetWriter.WriteCsv(output, sheet);
            errors.WriteLine(Assessment.Caution);
            return CommandLine.Done;
        }

        using var text = new MemoryStream();
        SheetWriter.WriteCsv(text, sheet);
        return Drop(csv, text.ToArray(), replace);
    }

    private int Drop(string path, byte[] bytes, bool replace)
    {
        switch (FileDrop.WriteOne(path, bytes, replace))
        {
            case Outcome<IReadOnlyList<string>>.Done done:
                output.Write(Encoding.UTF8.GetBytes($"{done.Value[0]}\n"));
                errors.WriteLine(Assessment.Caution);
                return CommandLine.Done;
            case Outcome<IReadOnlyList<string>>.Refused refused:
                return Refuse(refused.Why);
            default:
                throw new InvalidOperationException("Neither done nor refused.");
        }
    }

    private int Try(Func<int> work)
    {
        try
        {
            return work();
        }
        catch (StoreException e)
        {
            return Refuse([e.Message]);
        }
    }

    private int Refuse(IReadOnlyList<string> why)
    {
        foreach (var reason in why)
            errors.WriteLine(reason);
        return CommandLine.Refused;
    }
}
