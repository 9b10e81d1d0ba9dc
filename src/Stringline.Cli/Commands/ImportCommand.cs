using System.CommandLine;
using System.Text;
using Stringline.Office.StoreNotes;
using Stringline.Office.Import;
using Stringline.Cli.Terminal;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Law.Counting;
using Stringline.Tables.Sheets;
using Stringline.Tables.Sheets.Columns;
using Stringline.Store;

namespace Stringline.Cli.Commands;

/// <summary><c>stringline import</c>: tables of an accounting system into a store.</summary>
/// <param name="output">Answers.</param>
/// <param name="errors">Refusals and progress.</param>
/// <param name="clock">Says when a change is recorded.</param>
internal sealed class ImportCommand(Stream output, TextWriter errors, IClock clock)
{
    private static readonly string[] Kinds = ["jobs", "invoices", "payments"];

    private readonly Argument<string[]> files =
        new("FILE") { Description = "CSV or XLSX files, all taken in one transaction.", Arity = ArgumentArity.OneOrMore };
    private readonly Option<string> store = StoreCommands.Store();
    private readonly Option<bool> isNew = StoreCommands.New();
    private readonly Option<bool> replace = CommandLine.Replace();
    private readonly Option<string?> kind = Words("--as", "What the rows are, where the headers do not show it", Kinds);
    private readonly Option<string?> mapping =
        new("--mapping") { Description = "A file that says which header means what.", HelpName = "FILE" };
    private readonly Option<string?> saveMapping =
        new("--save-mapping") { Description = "Write the mapping by which the first file was read.", HelpName = "FILE" };
    private readonly Option<bool> dryRun = new("--dry-run") { Description = "Say what would happen; write nothing." };
    private readonly Option<string[]> confirm = new("--confirm")
    {
        Description = "Say that what a look asks about is right; again for more. The look names each question.", HelpName = "QUESTION",
            AllowMultipleArgumentsPerToken = true,
    };

    private readonly Option<string> asOf = CommandLine.AsOf();
    private readonly Option<string> who = new("--who") { Description = "Who records it. Default: the user's name.", HelpName = "NAME",
        DefaultValueFactory = _ => Environment.UserName };
    private readonly Option<string?> claimant = new("--claimant") { Description = "For new jobs: the claimant's name.", HelpName = "NAME" };
    private readonly Option<string?> role = Words("--role", "For new jobs: what the claimant is", JobFileWords.Role.Words);
    private readonly Option<string?> county =
        new("--county") { Description = "For new jobs: the county where the table names none.", HelpName = "NAME" };
    private readonly Option<string?> customerIs =
        Words("--customer-is", "For new jobs: what the customer is where the table does not say", ImportChoices.Customers);
    private readonly Option<string?> work =
        Words("--work", "For new jobs: the kind of work where the table does not say", JobFileWords.Kind.Words);

    /// <summary>The command.</summary>
    public Command Make()
    {
        var command = new Command("import", "Take jobs, invoices and payments from CSV or XLSX. A second time it changes nothing; refused "
            + "rows go to NAME.refused.csv.")
        {
            files, store, isNew, kind, mapping, saveMapping, replace, dryRun, confirm, asOf, who, claimant, role, county, customerIs, work,
        };
        confirm.AcceptOnlyFromAmong([.. ImportQuestions.Ids]);
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var progress = new ProgressLine(errors, isTerminal: !Console.IsErrorRedirected);
        try
        {
            var request = Request(parsed);
            using var journal = StoreCommands.Open(StoreCommands.AddressOf(parsed, store), parsed.GetValue(isNew), clock);
            var report = new SheetImport(journal, OpenDays.Statutory).Run(request, new Relay(progress));
            progress.End();
            if (journal.ClockBehind is { } behind)
                errors.WriteLine(ClockText.Of(behind));
            foreach (var fault in LogText.Of(journal))
                errors.WriteLine(fault);
            output.Write(Encoding.UTF8.GetBytes(ImportText.Of(report, request.DryRun, journal.Name)));
            if (parsed.GetValue(saveMapping) is { } path
                && FileDrop.WriteOne(path, Saved(request, report),
                    parsed.GetValue(replace)) is Outcome<IReadOnlyList<string>>.Refused refused)
            {
                foreach (var reason in refused.Why.Where(reason => reason != FileDrop.NothingWritten))
                    errors.WriteLine(reason);
                errors.WriteLine("The mapping was not written; the import stands as it is told above.");
                return CommandLine.Refused;
            }

            return report.Files.Any(file => file.Refused.Count > 0) ? CommandLine.Refused : CommandLine.Done;
        }
        catch (Exception e) when (e is SheetException or StoreException)
        {
            progress.End();
            errors.WriteLine(e.Message);
            return CommandLine.Refused;
        }
    }

    private ImportRequest Request(ParseResult parsed) => new(parsed.GetRequiredValue(files), parsed.GetRequiredValue(who))
    {
        Mapping = Mapping(parsed),
        DryRun = parsed.GetValue(dryRun),
        Confirmed = parsed.GetValue(confirm) ?? [],
        Today = CommandLine.DayOf(parsed.GetValue(asOf), clock),
        Claimant = parsed.GetValue(claimant),
        Role = (ClaimantRole?)JobFileWords.Role.IndexOf(parsed.GetValue(role)),
        County = parsed.GetValue(county),
        CustomerIs = (PartyCapacity?)JobFileWords.Capacity.IndexOf(parsed.GetValue(customerIs)),
        Work = (WorkKind?)JobFileWords.Kind.IndexOf(parsed.GetValue(work)),
    };

    private ColumnMapping Mapping(ParseResult parsed)
    {
        var read = ColumnMapping.None;
        if (parsed.GetValue(mapping) is { } path)
        {
            try
            {
                read = MappingJson.Read(File.ReadAllBytes(path), path);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                throw new SheetException(
                    new Fault(path, "", $"a file that cannot be read ({e.Message})", "a mapping as --save-mapping writes it"));
            }
        }

        return parsed.GetValue(kind) is { } word ? read with { Kind = (TableKind)Array.IndexOf(Kinds, word) } : read;
    }

    private static byte[] Saved(ImportRequest request, ImportReport report) => MappingJson.Write(request.Mapping with
    {
        Kind = report.Files[0].Kind,
        Headers = request.Mapping.Headers.Concat(report.Files[0].Columns.Where(pair => !request.Mapping.Headers.ContainsKey(pair.Column))
            .Select(pair => KeyValuePair.Create(pair.Column, pair.Header))).ToDictionary(),
    });

    private static Option<string?> Words(string name, string description, IReadOnlyList<string> words)
    {
        var option = new Option<string?>(name) { Description = $"{description}: {string.Join(", ", words)}.", HelpName = "WORD" };
        option.AcceptOnlyFromAmong([.. words]);
        return option;
    }

    private sealed class Relay(ProgressLine line) : IProgress<ImportProgress>
    {
        public void Report(ImportProgress value) => line.Report(new StoreProgress(value.What, value.Done, value.Total));
    }
}
