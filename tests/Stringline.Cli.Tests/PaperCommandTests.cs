using System.Text;
using Stringline.Papers.Catalogue;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary><c>stringline packet --list</c> and <c>stringline packet ID</c> over the demo job.</summary>
public sealed class PaperCommandTests : IDisposable
{
    private readonly string root = Scratch.Folder();
    private readonly MemoryStream output = new();
    private readonly StringWriter errors = new();

    private static string Demo => Repository.Path("data/demo/alder-court.json");

    private string Shown => Encoding.UTF8.GetString(output.ToArray());

    public void Dispose()
    {
        Directory.Delete(root, recursive: true);
        output.Dispose();
        errors.Dispose();
    }

    [Fact]
    public void The_list_names_every_paper_with_its_section()
    {
        Assert.Equal(CommandLine.Done, Run("packet", "--list"));
        Assert.All(PaperCatalogue.All, p => Assert.Contains(p.Id + " ", Shown, StringComparison.Ordinal));
        Assert.Contains("Civ. Code § 8132", Shown, StringComparison.Ordinal);
        Assert.Contains("Not legal advice.", Shown, StringComparison.Ordinal);
        Assert.All(Shown.Split('\n'), l => Assert.True(l.Length <= 100, l));
    }

    [Fact]
    public void Every_paper_has_a_command_with_help()
    {
        foreach (var paper in PaperCatalogue.All)
            Assert.Equal(CommandLine.Done, Run("packet", paper.Id, "--help"));
    }

    [Fact]
    public void Without_a_paper_it_is_wrong_usage_and_the_list_is_named()
    {
        Assert.Equal(CommandLine.WrongUsage, Run("packet"));
        Assert.Contains("packet --list", errors.ToString(), StringComparison.Ordinal);
        Assert.Equal(CommandLine.WrongUsage, Run("packet", "writ", Demo, "--out", root));
    }

    [Fact]
    public void A_waiver_is_made_from_what_is_said_with_it()
    {
        var folder = Path.Combine(root, "waiver");
        Assert.Equal(CommandLine.Done, Run("packet", "waiver-8132", Demo, "--out", folder, "--as-of", "2026-05-06", "--through",
            "2026-03-20", "--amount", "12000.00", "--maker", "Fennimore Framing, Inc.", "--releases", "26430.50"));
        Assert.Contains("$26,430.50 is released. That is $14,430.50 more than the payment of $12,000.00.", Shown, StringComparison.Ordinal);
        Assert.Equal(["alder-court-building-2_waiver-8132-instruction-sheet_through-2026-03-20_fennimore-framing-inc_2026-05-06.pdf",
            "alder-court-building-2_waiver-8132_through-2026-03-20_fennimore-framing-inc_2026-05-06.pdf"], Directory.GetFiles(folder)
                .Select(Path.GetFileName).Order());
        Assert.DoesNotContain("NOT GOOD", Shown, StringComparison.Ordinal);
        Assert.DoesNotContain("Check for the recorder", Shown, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unconditional_waiver_without_confirmation_is_refused_and_nothing_is_written()
    {
        var folder = Path.Combine(root, "waiver");
        Assert.Equal(CommandLine.Refused, Run("packet", "waiver-8138", Demo, "--out", folder, "--as-of", "2026-05-06"));
        Assert.Contains("--payment-cleared", errors.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder));
    }

    /// <summary>
    /// Released, paid and the difference are said, and that figure and a day to come are typed a second time, before it is made.
    /// </summary>
    [Theory]
    [InlineData("2026-03-20", "--releases", "$14,430.50 more than the payment")]
    [InlineData("2026-03-20", "--releases", "Typed was $23,884.76", "--releases", "23,884.76")]
    [InlineData("2027-03-20", "--through-again", "Saturday, March 20, 2027")]
    [InlineData("2027-03-20", "--through-again", "Sunday, March 21, 2027", "--through-again", "2027-03-21")]
    public void A_waiver_that_gives_away_more_than_is_meant_is_refused(string through, string where, string said, params string[] more)
    {
        var folder = Path.Combine(root, "waiver");
        Assert.Equal(CommandLine.Refused,
            Run(["packet", "waiver-8132", Demo, "--out", folder, "--as-of", "2026-05-06", "--through", through, "--amount", "12000.00",
                "--maker", "X", .. more]));
        Assert.Contains(where + ": ", errors.ToString(), StringComparison.Ordinal);
        Assert.Contains(said, errors.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder));
    }

    [Theory]
    [InlineData("--releases", "-1")]
    [InlineData("--releases", "1,00")]
    [InlineData("--through-again", "soon")]
    [InlineData("--amount", "12,00")]
    [InlineData("--amount", "-5")]
    [InlineData("--amount", "1.005")]
    [InlineData("--amount", "0")]
    [InlineData("--through", "5/6/2026")]
    [InlineData("--through", "2026-02-30")]
    public void A_wrong_sum_or_day_is_wrong_usage_and_says_what_would_be_right(string option, string value)
    {
        Assert.Equal(CommandLine.WrongUsage, Run("packet", "waiver-8132", Demo, "--out", root, option, value));
        Assert.Contains($"{option} takes", errors.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_option_of_another_paper_is_wrong_usage() =>
        Assert.Equal(CommandLine.WrongUsage, Run("packet", "waiver-8138", Demo, "--out", root, "--through", "2026-03-20"));

    [Fact]
    public void A_preliminary_notice_and_its_proof_are_made_at_the_start_of_the_demo_job()
    {
        var folder = Path.Combine(root, "notice");
        Assert.Equal(CommandLine.Done, Run("packet", "preliminary-notice", Demo, "--out", folder, "--as-of", "2026-02-12"));
        Assert.Equal(["alder-court-building-2_preliminary-notice-instruction-sheet_2026-02-12.pdf",
            "alder-court-building-2_preliminary-notice_2026-02-12.pdf", "alder-court-building-2_proof-of-notice_2026-02-12.pdf"],
                Directory.GetFiles(folder).Select(Path.GetFileName).Order());
        Assert.Contains("Act by 2026-02-27", Shown, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stop_payment_notice_to_one_party_is_made_for_that_party()
    {
        var folder = Path.Combine(root, "notice");
        Assert.Equal(CommandLine.Done, Run("packet", "stop-payment-notice", Demo, "--out", folder, "--as-of", "2026-06-22", "--to", "p1"));
        Assert.Equal(["alder-court-building-2_stop-payment-notice-instruction-sheet_alder-court-two-llc_2026-06-22.pdf",
            "alder-court-building-2_stop-payment-notice_alder-court-two-llc_2026-06-22.pdf"], Directory.GetFiles(folder)
                .Select(Path.GetFileName).Order());
    }

    private int Run(params string[] args) => new CommandLine(output, errors, SystemClock.Instance).Run(args);
}
