using System.Text;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>
/// Where a store comes to be, and what is said where none is; and that the address of a server is repeated by no command. All names are
/// invented.
/// </summary>
public sealed class NewStoreTests : IDisposable
{
    // Two halves of a password with a semicolon.
    private const string Secret = "opensesame";
    private const string Half = "xylograph";
    private const string Table = "Job No.,Customer,Inv #,Delivery Date,Amount\n";
    private const string Row = "114,Hobart Framing,INV-1,4/20/2026,100\n";

    private static readonly string[] Claimant = ["--claimant", "Marlpit Lumber Co.", "--role", "supplier", "--county", "Yolo",
        "--customer-is", "subcontractor", "--as-of", "2026-05-01"];

    private readonly string folder = Scratch.Folder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    public static TheoryData<string> EveryCommand =>
    [
        "store add --store {0} {job}", "store check --store {0}", "store backup --store {0} {1}", "store restore --store {0} {1}",
            "store move --store {0} {1}",
        "store export --store {0} --out {1}", "assess --all --store {0}", "list --store {0}", "calendar --store {0} --out {1}",
            "waterfall 114 --store {0}",
        "days 114 --store {0}", "import {table} --store {0}", "import {table} --dry-run --store {0}",
            "desk --store {0} --no-browser --port 0",
        "packet waiver --jobs {table} --out {1} --store {0}",
    ];

    [Theory]
    [MemberData(nameof(EveryCommand))]
    [Attack("mistyped store")]
    public void A_store_that_is_not_there_is_refused_by_every_command_and_near_names_are_told(string command)
    {
        File.WriteAllText(At("office.stringline"), "");
        File.WriteAllText(At("invoices.csv"), Table + Row);
        var before = Directory.GetFileSystemEntries(folder);
        var (status, said) = Run(command, At("offcie.stringline"), At("new"));
        // A backup's place is looked at before the store's.
        Assert.Equal(CommandLine.Refused, status);
        if (!command.StartsWith("store restore", StringComparison.Ordinal))
            Assert.Contains($"did you mean {At("office.stringline")}?", said, StringComparison.Ordinal);
        Assert.Equal(before, Directory.GetFileSystemEntries(folder));
    }

    [Theory]
    [MemberData(nameof(EveryCommand))]
    [Attack("password in messages, help, stack")]
    public void No_command_repeats_a_password_wherever_the_address_stands(string command)
    {
        File.WriteAllText(At("invoices.csv"), Table + Row);
        string[] forms =
        [
            $"postgres:Host=127.0.0.1;Port=1;Username=app;Password={Secret};Timeout=5",
                $"postgres:Host=db;Password={Secret};{Half};Timeout=3",
            $"Postgres:Hast=db;Password={Secret}", $"postgresql://me:{Secret}@db/office", $"postgres:Host=db;Username=me Password={Secret}",
                $"Host=db;Password={Secret}",
        ];
        foreach (var form in forms)
        {
            Hidden(Run(command, form, At("new")));
            Hidden(Run(command, At("missing.stringline"), form));
            Hidden(Run(command + " {0}", form, At("new")));
            Hidden(Run(command.Replace("--store", "--stoer", StringComparison.Ordinal), form, At("new")));
            // What follows a blank in a password is another word. Only where any number of files may follow does it read as one of them.
            if (!command.Contains("{job}", StringComparison.Ordinal) && !command.Contains("{table}", StringComparison.Ordinal))
                Hidden(Run(command.Replace("--store {0}", "--store={0} {half}", StringComparison.Ordinal), form, At("new")));
            Hidden(Run(command.Replace("--store {0}", "", StringComparison.Ordinal) + " --help", form, At("new")));
        }

        Assert.Equal(["invoices.csv"], Directory.GetFileSystemEntries(folder).Select(Path.GetFileName));
    }

    [Fact]
    [Slow(Slow.Lasting)]
    [Attack("password in messages, help, stack")]
    public async Task The_environment_s_address_is_neither_printed_by_the_help_nor_repeated_when_it_is_refused()
    {
        foreach (var form in (string[])[$"postgres:Host=127.0.0.1;Port=1;Password={Secret};Timeout=5",
            $"postgresql://me:{Secret}@db/office", $"postgres:Host=db;Password={Secret};{Half};Timeout=3"])
        {
            foreach (var command in (string[])["list --help", "list", "import --help", "store check", "desk --no-browser --port 0",
                "assess --all"])
            {
                var answer = await Tool.RunWith([("STRINGLINE_STORE", form)], command.Split(' '));
                Hidden((answer.Status, answer.Output + answer.Errors));
                Assert.Equal(command.EndsWith("--help", StringComparison.Ordinal) ? 0 : 1, answer.Status);
            }
        }
    }

    [Theory]
    [InlineData("import {table} --store {0}")]
    [InlineData("store add --store {0} {job}")]
    public void A_new_store_is_made_with_new_and_a_second_time_it_is_there(string command)
    {
        File.WriteAllText(At("invoices.csv"), Table + Row);
        var path = Path.Combine(folder, "new folder", "office.stringline");
        Assert.Equal(CommandLine.Refused, Run(command, path, "").Status);
        Assert.False(Directory.Exists(Path.GetDirectoryName(path)));
        Assert.Equal((CommandLine.Done, ""), (Run(command + " --new", path, "") is { Status: 0 }
            ? (CommandLine.Done, "") : Run(command + " --new", path, "")));
        Assert.Equal(["office.stringline"], Directory.GetFileSystemEntries(Path.GetDirectoryName(path)!).Select(Path.GetFileName));
        Assert.Equal(CommandLine.Done, Run("store check --store {0}", path, "").Status);
        Assert.Equal(CommandLine.Done, Run(command, path, "").Status);
    }

    [Fact]
    public void Nothing_comes_to_be_where_nothing_is_written()
    {
        File.WriteAllText(At("invoices.csv"), Table + "114,Hobart Framing,INV-2,4/31/2026,5\n");
        Assert.Equal(CommandLine.Refused, Run("import {table} --new --store {0}", At("office.stringline"), "").Status);
        File.WriteAllText(At("invoices.csv"), "no,table\n");
        Assert.Equal(CommandLine.Refused, Run("import {table} --new --store {0}", At("office.stringline"), "").Status);
        File.WriteAllText(At("invoices.csv"), Table + Row);
        Assert.Equal(CommandLine.Done, Run("import {table} --new --dry-run --store {0}", At("office.stringline"), "").Status);
        Assert.DoesNotContain(Directory.GetFileSystemEntries(folder), there =>
            Path.GetFileName(there).StartsWith("office", StringComparison.Ordinal));
    }

    private (int Status, string Said) Run(string command, string first, string second)
    {
        using var output = new MemoryStream();
        using var errors = new StringWriter();
        string[] words = [.. command.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => word
            .Replace("{0}", first, StringComparison.Ordinal)
            .Replace("{1}", second, StringComparison.Ordinal)
            .Replace("{half}", Half, StringComparison.Ordinal)
            .Replace("{table}", At("invoices.csv"), StringComparison.Ordinal)
            .Replace("{job}", Repository.Path("data/demo/alder-court.json"), StringComparison.Ordinal))];
        var status = new CommandLine(output, errors, SystemClock.Instance).Run(command.StartsWith("import", StringComparison.Ordinal)
            ? [.. words, .. Claimant] : words);
        return (status, Encoding.UTF8.GetString(output.ToArray()) + errors);
    }

    private static void Hidden((int Status, string Said) answer)
    {
        Assert.NotEqual(CommandLine.OwnFault, answer.Status);
        Assert.DoesNotContain(Secret, answer.Said, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(Half, answer.Said, StringComparison.OrdinalIgnoreCase);
    }

    private string At(string name) => Path.Combine(folder, name);
}
