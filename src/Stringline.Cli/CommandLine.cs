using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text;
using Stringline.Cli.Commands;
using Stringline.Office.DemoOffice;
using Stringline.Cli.Terminal;
using Stringline.Tables;
using Stringline.Law;
using Stringline.Papers.Catalogue;
using Stringline.Store;

namespace Stringline.Cli;

/// <summary>The command line: parses words, calls a use case, prints its answer. It decides nothing.</summary>
/// <param name="output">Answers, as bytes of UTF-8.</param>
/// <param name="errors">Refusals and wrong usage.</param>
/// <param name="clock">Tells the day where the user does not.</param>
internal sealed partial class CommandLine(Stream output, TextWriter errors, IClock clock)
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The job file or the packet is refused; the reasons are on standard error.</summary>
    public const int Refused = 1;

    /// <summary>Wrong usage.</summary>
    public const int WrongUsage = 2;

    /// <summary>A fault in the program.</summary>
    public const int OwnFault = 3;

    private const string Unrepeated =
        "These words are no command. They are not repeated here, since a password may stand among them. "
        + "The address of a server stands after --store, all of it in quotation marks.";

    /// <summary>Runs one command and gives the exit status.</summary>
    public int Run(IReadOnlyList<string> args)
    {
        var parsed = Root(papers: args is ["packet", ..]).Parse(args);
        if (parsed.Errors.Count > 0)
        {
            // The parser's messages repeat words, among them what a blank cut off a password.
            if (parsed.Tokens.Any(word => StoreAddress.MaySpeakOfServer(word.Value)))
                errors.WriteLine(Unrepeated);
            foreach (var error in parsed.Errors.Where(_ => !parsed.Tokens.Any(word => StoreAddress.MaySpeakOfServer(word.Value))))
                errors.WriteLine(error.Message);
            errors.WriteLine("See stringline --help.");
            return WrongUsage;
        }

        if (Misplaced(parsed.CommandResult) is { } place)
        {
            errors.WriteLine($"{place} holds what reads as the address of a server, which is not repeated here. It stands after --store, "
                + $"or as where store move goes.");
            return WrongUsage;
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Error = errors });
        }
        catch (StoreException e)
        {
            errors.WriteLine(e.Message);
            return Refused;
        }
        catch (Exception e)
        {
            // The last stop before the user: nothing is swallowed, and the exit status says that the fault is ours.
            errors.WriteLine("Stringline itself failed; the job file is not to blame. Please report this:");
            errors.WriteLine(e);
            return OwnFault;
        }
    }

    private static string? Misplaced(CommandResult command) => command.Children
        .Where(given => !(given is OptionResult { Option.Name: "--store" } or ArgumentResult { Argument.Name: StoreCommands.Target }))
        .FirstOrDefault(given => given.Tokens.Any(word => StoreAddress.MaySpeakOfServer(word.Value))) switch
        {
            OptionResult option => option.Option.Name,
            ArgumentResult argument => argument.Argument.Name,
            _ => null,
        };

    /// <param name="papers">Whether the commands of the papers are built too: they are many, and only <c>packet</c> needs them.</param>
    private RootCommand Root(bool papers)
    {
        var root = new RootCommand(
            "Keeps a payment claim on a California construction job true, from the first delivery to the last "
                + "dollar.\n" + Assessment.Caution)
        {
            Assess(),
            Packet(papers),
            Schema(),
            Demo(),
            new StoreCommands(output, errors, clock).All(),
            Desk(),
            MakeOffice(),
            new ImportCommand(output, errors, clock).Make(),
        };
        foreach (var sheet in new SheetCommands(output, errors, clock).All())
            root.Add(sheet);
        return root;
    }

    private Command Assess()
    {
        var file = new Argument<string?>("FILE") { Description = "A job file (see stringline schema).", Arity = ArgumentArity.ZeroOrOne };
        var asOf = AsOf();
        var json = new Option<bool>("--json") { Description = "Print JSON for programs instead of text." };
        var ascii = new Option<bool>("--ascii") { Description = "Print text in plain ASCII." };
        var all = new Option<bool>("--all") { Description =
            "Assess every job of --store that a new entry, other rules or another day can have changed, for the desk's list." };
        var store = new Option<string?>("--store") { Description = "With --all: the store. Default: STRINGLINE_STORE in the environment.",
            HelpName = "STORE" };
        var anew = new Option<bool>("--anew") { Description = "With --all: throw away everything that is derived from the journal (the "
            + "list, the search) and make it anew; mends what is damaged." };
        var command = new Command("assess", "Say where every right stands, by which day to act, for how much, and why.") { file, asOf, json,
            ascii, all, store, anew };
        command.Validators.Add(result =>
        {
            if (result.GetValue(anew) && !result.GetValue(all))
                result.AddError("--anew goes with --all.");
            var (isAll, hasFile) = (result.GetValue(all), result.GetValue(file) is not null);
            if (isAll ? hasFile || (result.GetValue(store) ?? StoreCommands.FromEnvironment) is null : !hasFile
                || result.GetValue(store) is not null)
                result.AddError("assess takes a job file, or --all and --store.");
        });
        command.SetAction(parsed => parsed.GetValue(all)
            ? new AssessAll(output, errors, clock).Run((parsed.GetValue(store) ?? StoreCommands.FromEnvironment)!,
                Day(parsed.GetValue(asOf)), parsed.GetValue(anew))
            : Answer(
                UseCases.Assess(parsed.GetValue(file)!, Day(parsed.GetValue(asOf))),
                assessment =>
                {
                    if (parsed.GetValue(json))
                        output.Write(AssessmentJson.Write(assessment));
                    else
                        Print(AssessmentText.Of(assessment), parsed.GetValue(ascii));
                }));
        return command;
    }

    private Command Claim()
    {
        var claim = PaperCatalogue.ClaimOfLien;
        var file = File();
        var folder = Folder();
        var asOf = AsOf();
        var draft = new Option<bool>("--draft") { Description =
            "Make the papers even if they may not go to the counter yet, marked as a draft." };
        var structure = PaperOption.Of(PaperInput.Structure);
        var replace = Replace();
        var command = new Command(claim.Id, "Make the packet for recording a claim of mechanics lien.") { file, folder, asOf, draft,
            structure.Option, replace };
        command.SetAction(parsed => Answer(
            UseCases.PreparePaper(
                claim,
                parsed.GetRequiredValue(file),
                Day(parsed.GetValue(asOf)),
                structure.Take(parsed, new PaperOptions { Draft = parsed.GetValue(draft) }),
                parsed.GetRequiredValue(folder),
                parsed.GetValue(replace)),
            packet => Print(PacketText.Of(packet), ascii: false)));
        return command;
    }

    private Command Schema()
    {
        var command = new Command("schema", "Print the JSON Schema of the job file.");
        command.SetAction(_ =>
        {
            output.Write(JobFileSchema.Utf8());
            return Done;
        });
        return command;
    }

    private Command Demo()
    {
        var (folder, replace) = (Folder(), Replace());
        var command =
            new Command("demo", "Write five job files to try things on: invented people and firms, real counties.") { folder, replace };
        command.SetAction(parsed => Answer(
            UseCases.WriteDemo(parsed.GetRequiredValue(folder), parsed.GetValue(replace)), files =>
                Print(string.Join('\n', files) + "\n", ascii: false)));
        return command;
    }

    private Command Desk()
    {
        var store = new Option<string>("--store") { Description = "The store: a file, or postgres: and a connection string. Default: "
            + "STRINGLINE_STORE in the environment, else a file in your own data folder.", HelpName = "PATH" };
        var isNew = StoreCommands.New();
        var port = new Option<int?>("--port") { Description = $"The port on 127.0.0.1; 0 for any that is free. "
            + $"Default: {DeskOptions.UsualPort}, or any where that is taken.", HelpName = "N" };
        port.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int?>() is < 0 or > 65535)
                result.AddError("--port takes a number from 0 to 65535.");
        });
        var noBrowser = new Option<bool>("--no-browser") { Description = "Do not show the desk in a browser." };
        var asOf = AsOf();
        asOf.Description = "The day the desk takes for today, to try things on. Default: today in California.";
        var command = new Command("desk", "Open the desk in the browser: what needs doing, job by job. It answers on this machine only.") {
            store, isNew, port, noBrowser, asOf };
        command.SetAction(parsed =>
        {
            var wanted = parsed.GetValue(port);
            var address = parsed.GetValue(store) ?? StoreCommands.FromEnvironment ?? DeskOptions.UsualStore;
            var options = new DeskOptions(address, wanted ?? DeskOptions.UsualPort)
            {
                Opening = StoreCommands.Opening(address, parsed.GetValue(isNew)),
                AsOf = parsed.GetValue(asOf) is { } day ? Day(day) : null,
                KeyFolder = Path.Combine(DeskOptions.UserFolder, "keys"),
                Backups = true,
            };
            return Answer(
                DeskCommand.Open(options, wanted is null, !parsed.GetValue(noBrowser), clock, line => Print(line + "\n", ascii: false))
                    .GetAwaiter().GetResult(),
                _ => { });
        });
        return command;
    }

    private Command MakeOffice()
    {
        var folder = Folder();
        var asOf = AsOf();
        var jobs = new Option<int>("--jobs") { Description = "So many jobs, the forty over and over, to try out a large office.",
            HelpName = "N", DefaultValueFactory = _ => DemoJobs.Usual };
        jobs.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 1 or > 1_000_000)
                result.AddError("--jobs takes a number from 1 to 1000000.");
        });
        var command = new Command("demo-office", "Make a store with an invented office of 40 jobs in every stage, as of a day, and print "
            + "its path.") { folder, asOf, jobs };
        command.SetAction(parsed => Answer(
            DemoStore.Make(parsed.GetRequiredValue(folder), Day(parsed.GetValue(asOf)), parsed.GetValue(jobs), clock),
                path => Print(path + "\n", ascii: false)));
        return command;
    }

    private static Argument<string> File() => new("FILE") { Description = "A job file (see stringline schema)." };

    private static Option<string> Folder() => new("--out") { Description = "The folder to write to.", HelpName = "DIR", Required = true };

    /// <summary>The option without which no file that is there is written over.</summary>
    internal static Option<bool> Replace() =>
        new(FileDrop.Replace) { Description =
            "Replace a file of the same name that has other content. Without it such a file is left alone and the command refused." };

    /// <summary>The option that names the day of asking.</summary>
    internal static Option<string> AsOf()
    {
        var option = new Option<string>("--as-of")
        {
            Description = "The day on which the question is asked, such as 2026-05-01. Default: today in California.",
            HelpName = "DAY",
        };
        option.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && DayText.Read(result.Tokens[0].Value, out _) is { } expected)
                result.AddError($"--as-of takes {expected}.");
        });
        return option;
    }

    private LocalDate Day(string? text) => DayOf(text, clock);

    /// <summary>The day that <see cref="AsOf"/> names, or today.</summary>
    internal static LocalDate DayOf(string? text, IClock clock)
    {
        if (text is null)
            return Today.InCalifornia(clock);
        return DayText.Read(text, out var day) is null
            ? day : throw new ArgumentException("The parser lets no such day pass.", nameof(text));
    }

    private int Answer<T>(Outcome<T> outcome, Action<T> print)
    {
        switch (outcome)
        {
            case Outcome<T>.Done done:
                print(done.Value);
                return Done;
            case Outcome<T>.Refused refused:
                Tell(refused.Why);
                return Refused;
            default:
                throw new InvalidOperationException("Neither done nor refused.");
        }
    }

    private void Tell(IReadOnlyList<string> why)
    {
        const int Shown = 100;
        foreach (var reason in why.Take(Shown))
            errors.WriteLine(reason);
        if (why.Count > Shown)
            errors.WriteLine($"... and {why.Count - Shown} more.");
    }

    private void Print(string text, bool ascii) =>
        output.Write(Encoding.UTF8.GetBytes(ascii || !Glyphs.TerminalShowsUnicode() ? Glyphs.ToAscii(text) : text));
}
