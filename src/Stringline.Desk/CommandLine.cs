using System.CommandLine;
using System.Text;
using Stringline.Desk.Commands;
using Stringline.Desk.Terminal;
using Stringline.Exchange;
using Stringline.Law;

namespace Stringline.Desk;

/// <summary>The command line: parses words, calls a use case, prints its answer. It decides nothing.</summary>
/// <param name="output">Answers, as bytes of UTF-8.</param>
/// <param name="errors">Refusals and wrong usage.</param>
/// <param name="clock">Tells the day where the user does not.</param>
internal sealed class CommandLine(Stream output, TextWriter errors, IClock clock)
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The job file or the packet is refused; the reasons are on standard error.</summary>
    public const int Refused = 1;

    /// <summary>Wrong usage.</summary>
    public const int WrongUsage = 2;

    /// <summary>A fault in the program.</summary>
    public const int OwnFault = 3;

    /// <summary>Runs one command and gives the exit status.</summary>
    public int Run(IReadOnlyList<string> args)
    {
        var parsed = Root().Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
                errors.WriteLine(error.Message);
            errors.WriteLine("See stringline --help.");
            return WrongUsage;
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Error = errors });
        }
        catch (Exception e)
        {
            // The last stop before the user: nothing is swallowed, and the exit status says that the fault is ours.
            errors.WriteLine("Stringline itself failed; the job file is not to blame. Please report this:");
            errors.WriteLine(e);
            return OwnFault;
        }
    }

    private RootCommand Root()
    {
        var root = new RootCommand(
            "Keeps a payment claim on a California construction job true, from the first delivery to the last dollar.\n" + Assessment.Caution)
        {
            Assess(),
            new Command("packet", "Make the papers that go to the counter together.") { Claim() },
            Schema(),
            Demo(),
            new StoreCommands(output, errors, clock).All(),
        };
        return root;
    }

    private Command Assess()
    {
        var file = File();
        var asOf = AsOf();
        var json = new Option<bool>("--json") { Description = "Print JSON for programs instead of text." };
        var ascii = new Option<bool>("--ascii") { Description = "Print text in plain ASCII." };
        var command = new Command("assess", "Say where every right stands, by which day to act, for how much, and why.") { file, asOf, json, ascii };
        command.SetAction(parsed => Answer(
            UseCases.Assess(parsed.GetRequiredValue(file), Day(parsed.GetValue(asOf))),
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
        var file = File();
        var folder = Folder();
        var asOf = AsOf();
        var draft = new Option<bool>("--draft") { Description = "Make the papers even if they may not go to the counter yet, marked as a draft." };
        var command = new Command("claim", "Make the packet for recording a claim of mechanics lien.") { file, folder, asOf, draft };
        command.SetAction(parsed => Answer(
            UseCases.PrepareClaim(
                parsed.GetRequiredValue(file),
                Day(parsed.GetValue(asOf)),
                parsed.GetValue(draft),
                parsed.GetRequiredValue(folder)),
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
        var folder = Folder();
        var command = new Command("demo", "Write a job file to try things on: invented people and firms, a real county.") { folder };
        command.SetAction(parsed => Answer(
            UseCases.WriteDemo(parsed.GetRequiredValue(folder)), files => Print(string.Join('\n', files) + "\n", ascii: false)));
        return command;
    }

    private static Argument<string> File() => new("FILE") { Description = "A job file (see stringline schema)." };

    private static Option<string> Folder() => new("--out") { Description = "The folder to write to.", HelpName = "DIR", Required = true };

    private static Option<string> AsOf()
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

    private LocalDate Day(string? text)
    {
        if (text is null)
            return Today.InCalifornia(clock);
        return DayText.Read(text, out var day) is null ? day : throw new ArgumentException("The parser lets no such day pass.", nameof(text));
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
