using System.CommandLine;
using System.Globalization;
using System.Text;
using Stringline.Office.StoreNotes;
using Stringline.Office.Backups;
using Stringline.Cli.Terminal;
using Stringline.Tables;
using Stringline.Store;
using Stringline.Store.Upkeep;

namespace Stringline.Cli.Commands;

/// <summary><c>stringline store ...</c>: fills a store and keeps it safe.</summary>
/// <param name="output">Answers.</param>
/// <param name="errors">Refusals and progress.</param>
/// <param name="clock">Says when a change is recorded.</param>
internal sealed class StoreCommands(Stream output, TextWriter errors, IClock clock)
{
    private const string AddressHelp =
        "The store: the path of a SQLite file, or postgres: and a connection string such as "
            + "\"postgres:Host=db;Database=office;Username=me\".";

    /// <summary>The name of the argument that says where a store moves to.</summary>
    internal const string Target = "TO";

    /// <summary>The commands.</summary>
    public Command All() => new("store", "The journal of all jobs: fill it, check it, back it up, restore, move and export it.")
    {
        Add(), Check(), MakeSeal(), BackUp(), RestoreFrom(), TryRestore(), MoveTo(), ExportTo(),
    };

    private Command Add()
    {
        var (store, isNew) = (Store(), New());
        var files = new Argument<string[]>("FILE") { Description =
            "Job files. The name of a file, without .json, names the job in the store.", Arity = ArgumentArity.OneOrMore };
        var who = new Option<string>("--who") { Description = "Who records it. Default: the user's name.", HelpName = "NAME",
            DefaultValueFactory = _ => Environment.UserName };
        var command = new Command("add", "Bring the store to these job files: all of them, or where one is refused none. A second time it "
            + "does nothing.") { store, isNew, files, who };
        command.SetAction(parsed => Try(progress =>
        {
            var jobs = new List<KeyedJob>();
            var faults = new List<string>();
            foreach (var file in parsed.GetRequiredValue(files))
            {
                switch (JobFileReader.ReadFile(file))
                {
                    case JobFileResult.Read read:
                        jobs.Add(new KeyedJob(Uri.UnescapeDataString(Path.GetFileNameWithoutExtension(file)), read.Job));
                        break;
                    case JobFileResult.Refused refused:
                        faults.AddRange(refused.Faults.Select(fault => fault.ToString()));
                        break;
                }
            }

            if (faults.Count > 0)
                return Refuse(faults);
            using var journal = Open(AddressOf(parsed, store), parsed.GetValue(isNew), clock);
            var report = journal.PutMany(jobs, parsed.GetRequiredValue(who), progress);
            if (journal.ClockBehind is { } behind)
                errors.WriteLine(ClockText.Of(behind));
            foreach (var fault in LogText.Of(journal))
                errors.WriteLine(fault);
            return report.Faults.Count > 0
                ? Refuse([.. report.Faults.Select(fault => fault.ToString())])
                : Say($"{report.Added} added, {report.Extended} extended, {report.Unchanged} unchanged; {report.Changes} changes written "
                    + $"to {journal.Name}");
        }));
        return command;
    }

    private Command Check()
    {
        var store = Store();
        var against = new Option<string?>("--against") { Description =
            "A seal that was made earlier: its file, or its line. Says whether anything from before it was rewritten.", HelpName = "SEAL" };
        var command = new Command("check", "Walk every chain and every attached paper, read everything that is derived from them, and say "
            + "what is not as it was written.") { store, against };
        command.SetAction(parsed => Try(progress =>
        {
            Seal? seal = null;
            if (parsed.GetValue(against) is { } named && (seal = SealCommands.Read(named, out var fault)) is null)
                return Refuse([fault!]);
            using var journal = Journals.Open(AddressOf(parsed, store), clock, OpenStore.ReadOnly);
            var report = journal.Check(progress);
            var compared = seal is null ? null : journal.Compare(seal);
            var beside = CheckText.Beside(journal);
            progress.End();
            return report.IsWhole && compared?.Broken is null or []
                ? Say(string.Join('\n', [$"{journal.Name} is whole.", Counts(report), .. compared is null
                    ? [] : new[] { SealCommands.Same(seal!, compared) }, .. beside]))
                : Refuse([.. CheckText.Of(journal.Name, report), .. SealCommands.Differs(seal, compared), .. beside]);
        }));
        return command;
    }

    private Command MakeSeal()
    {
        var store = Store();
        var file = new Option<string?>("--out") { Description =
            "Write the seal with every job into this file; it also says where history was rewritten.", HelpName = "FILE" };
        var command = new Command("seal", "Say what the journal holds now, in one line to be kept where nobody can reach it who can write "
            + "to the store.") { store, file };
        command.SetAction(parsed => Try(progress =>
        {
            using var journal = Journals.Open(AddressOf(parsed, store), clock);
            var seal = journal.MakeSeal();
            progress.End();
            return parsed.GetValue(file) is { } path && SealCommands.Write(seal, path) is { } refused
                ? Refuse(refused) : Say(SealCommands.Words(seal, parsed.GetValue(file)));
        }));
        return command;
    }

    private Command BackUp()
    {
        var store = Store();
        var to = new Argument<string>("BACKUP") { Description = "The backup's file; nothing may be there yet." };
        var command = new Command("backup", "Make a backup in one file while others work, and read it back.") { store, to };
        command.SetAction(parsed => Try(progress =>
        {
            using var journal = Journals.Open(AddressOf(parsed, store), clock);
            var report = Backup.Make(journal, parsed.GetRequiredValue(to), progress);
            progress.End();
            return Say($"{parsed.GetRequiredValue(to)} holds all of {journal.Name}; it was read back and is whole.\n" + Counts(report));
        }));
        return command;
    }

    private Command RestoreFrom()
    {
        var store = Store();
        var from = new Argument<string>("BACKUP") { Description = "The backup's file." };
        var replace = new Option<bool>("--replace") { Description =
            "If a store is there, set it aside under another name and put the backup in its place." };
        var command = new Command("restore", "Put a backup in the place of a store.") { store, from, replace };
        command.SetAction(parsed => Try(progress =>
        {
            var restored = Restore.From(parsed.GetRequiredValue(from), AddressOf(parsed, store), parsed.GetValue(replace), clock, progress);
            progress.End();
            return Say("Restored, and walked from end to end.\n" + Counts(restored.Check)
                + (restored.SetAside is { } aside ? "\nThe store that was there is kept as " + aside : "")
                + string.Concat(restored.StrayLogs.Select(log => "\nA log that a store left there which is gone is kept as " + log))
                + string.Concat(restored.Cleared.Select(left => "\nRemoved, left by a program that did not finish: " + left)));
        }));
        return command;
    }

    private Command TryRestore()
    {
        var store = Store();
        var from = new Option<string>("--from")
        {
            Description = "The folder of backups. Default: the one that the settings name, else the one beside the store.",
            HelpName = "DIR",
        };
        var command = new Command("drill", "Restore the newest backup into a temporary place, walk it from end to end, and remove it.") {
            store, from };
        command.SetAction(parsed => Try(progress =>
        {
            var drilled = Drill.Newest(BackupPlace.Of(AddressOf(parsed, store), parsed.GetValue(from), clock), clock, progress);
            progress.End();
            return Say($"{drilled.Backup.Path} was restored into a temporary place and walked from end to end: it is whole.\n"
                + Counts(drilled.Check));
        }));
        return command;
    }

    private Command MoveTo()
    {
        var store = Store();
        var to = new Argument<string>(Target) { Description =
            "Where to: a path, or postgres: and a connection string. At most an empty store is there." };
        var command = new Command("move", "Copy a store to another database, and prove that both are equal.") { store, to };
        command.SetAction(parsed => Try(progress =>
        {
            var report = Move.To(AddressOf(parsed, store), parsed.GetRequiredValue(to), clock, progress);
            progress.End();
            return Say("Both stores were walked from end to end and are equal. The old one is as it was; from now on, use the new one.\n"
                + Counts(report));
        }));
        return command;
    }

    private Command ExportTo()
    {
        var store = Store();
        var folder = new Option<string>("--out") { Description = "The folder to make.", HelpName = "DIR", Required = true };
        var command =
            new Command("export", "Write every job as a job file, and every attached paper, into a new folder.") { store, folder };
        command.SetAction(parsed => Try(progress =>
        {
            using var journal = Journals.Open(AddressOf(parsed, store), clock);
            var exported = Export.To(journal, parsed.GetRequiredValue(folder), progress);
            progress.End();
            return Say($"{exported.Jobs} jobs and {exported.Papers} papers written to {parsed.GetRequiredValue(folder)}");
        }));
        return command;
    }

    /// <summary>The store that the environment names where no option does; null where it names none.</summary>
    internal static string? FromEnvironment =>
        Environment.GetEnvironmentVariable("STRINGLINE_STORE") is { Length: > 0 } address ? address : null;

    /// <summary>The option that names the store.</summary>
    internal static Option<string> Store()
    {
        var option = new Option<string>("--store") { Description = AddressHelp + " Default: STRINGLINE_STORE in the environment.",
            HelpName = "STORE" };
        // Never as a default of the option: the help prints those, and a password may stand in it.
        option.Required = FromEnvironment is null;
        return option;
    }

    /// <summary>The store that was named by <see cref="Store"/>, or else by the environment.</summary>
    internal static string AddressOf(ParseResult parsed, Option<string> store) => parsed.GetValue(store) ?? FromEnvironment
        ?? throw new InvalidOperationException("The parser lets no command pass without a store.");

    /// <summary>The option without which a store is made only where the user's own is by default.</summary>
    internal static Option<bool> New() =>
        new("--new") { Description =
            "Make the store if none is there. Without it a store that is not there is refused, since its name may be mistyped." };

    /// <summary>What to do where no store is at an address.</summary>
    internal static OpenStore Opening(string address, bool isNew) =>
        isNew || (StoreAddress.Read(address) is StoreAddress.InFile file && Path.GetFullPath(file.Path) == DeskOptions.UsualStore)
        ? OpenStore.OrMakeOnWriting : OpenStore.MustExist;

    /// <summary>Opens the store to fill it.</summary>
    internal static IJournal Open(string address, bool isNew, IClock clock) => Journals.Open(address, clock, Opening(address, isNew));

    private int Try(Func<ProgressLine, int> work)
    {
        var progress = new ProgressLine(errors, isTerminal: !Console.IsErrorRedirected);
        try
        {
            return work(progress);
        }
        catch (StoreException e)
        {
            progress.End();
            return Refuse([e.Message]);
        }
    }

    private int Refuse(IReadOnlyList<string> why)
    {
        foreach (var reason in why)
            errors.WriteLine(reason);
        return CommandLine.Refused;
    }

    private int Say(string text)
    {
        output.Write(Encoding.UTF8.GetBytes(text + "\n"));
        return CommandLine.Done;
    }

    private static string Counts(CheckReport report) => string.Create(
        CultureInfo.InvariantCulture, $"  jobs     {report.Jobs,12:N0}\n  changes  {report.Changes,12:N0}\n  papers  "
            + $" {report.Proofs,12:N0}\n  seal     {report.Seal}")
        + (report.IsWhole ? "" : "\n" + string.Join('\n', CheckText.BesideTheJournal(report)));
}
