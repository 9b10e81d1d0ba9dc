using System.Text;
using Stringline.Testing;

namespace Stringline.Desk.Tests;

/// <summary>The packet command, with papers that stand in for the real ones: who writes, when, and what is said.</summary>
public sealed class PacketCommandTests : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("stringline-tests-").FullName;
    private readonly MemoryStream output = new();
    private readonly StringWriter errors = new();
    private bool? draftAsked;

    public void Dispose()
    {
        Directory.Delete(root, recursive: true);
        output.Dispose();
        errors.Dispose();
    }

    [Fact]
    public void A_packet_that_was_made_lies_in_the_folder_and_its_remarks_are_shown_with_the_caution()
    {
        var folder = Path.Combine(root, "packet");
        var status = Run(
            new Packet.Made([new FinishedFile("claim.pdf", Encoding.ASCII.GetBytes("%PDF"))], ["Fee: $40.00"]),
            "packet", "claim", Demo, "--out", folder, "--as-of", "2026-06-22");
        Assert.Equal(CommandLine.Done, status);
        Assert.Equal("%PDF", File.ReadAllText(Path.Combine(folder, "claim.pdf")));
        Assert.Equal(
            Path.Combine(folder, "claim.pdf")
            + "\nFee: $40.00\nNot legal advice. Confirm with the county recorder, the local rules and a California construction lawyer.\n",
            Encoding.UTF8.GetString(output.ToArray()));
        Assert.False(draftAsked);
    }

    [Fact]
    public void A_draft_is_asked_for_by_its_option()
    {
        Run(new Packet.Refused(["no"]), "packet", "claim", Demo, "--out", root, "--as-of", "2026-06-22", "--draft");
        Assert.True(draftAsked);
    }

    [Fact]
    public void A_packet_that_is_refused_writes_nothing_and_gives_every_reason()
    {
        var folder = Path.Combine(root, "packet");
        var status = Run(
            new Packet.Refused(["The owner has no address.", "The signer is not named."]),
            "packet", "claim", Demo, "--out", folder, "--as-of", "2026-06-22");
        Assert.Equal(CommandLine.Refused, status);
        Assert.Equal($"The owner has no address.{errors.NewLine}The signer is not named.{errors.NewLine}", errors.ToString());
        Assert.False(Directory.Exists(folder));
        Assert.Empty(output.ToArray());
    }

    [Fact]
    public void A_refused_job_file_makes_no_packet_and_no_folder()
    {
        var folder = Path.Combine(root, "packet");
        var bad = Repository.Path("tests/Stringline.Exchange.Tests/Refusals/several-at-once.json");
        Assert.Equal(
            CommandLine.Refused,
            Run(new Packet.Made([], []), "packet", "claim", bad, "--out", folder, "--as-of", "2026-06-22"));
        Assert.Null(draftAsked);
        Assert.False(Directory.Exists(folder));
    }

    [Fact]
    public void Without_a_folder_it_is_wrong_usage() =>
        Assert.Equal(CommandLine.WrongUsage, Run(new Packet.Made([], []), "packet", "claim", Demo));

    [Fact]
    public void A_fault_of_the_program_says_so_and_has_a_status_of_its_own()
    {
        var desk = new CommandLine(output, errors, SystemClock.Instance, (_, _, _) => throw new InvalidOperationException("Torn cord."));
        Assert.Equal(CommandLine.OwnFault, desk.Run(["packet", "claim", Demo, "--out", root, "--as-of", "2026-06-22"]));
        Assert.StartsWith("Stringline itself failed; the job file is not to blame.", errors.ToString(), StringComparison.Ordinal);
        Assert.Contains("Torn cord.", errors.ToString(), StringComparison.Ordinal);
    }

    private static string Demo => Repository.Path("data/demo/alder-court.json");

    private int Run(Packet answer, params string[] args) => new CommandLine(
        output,
        errors,
        SystemClock.Instance,
        (_, _, draft) =>
        {
            draftAsked = draft;
            return answer;
        }).Run(args);
}
