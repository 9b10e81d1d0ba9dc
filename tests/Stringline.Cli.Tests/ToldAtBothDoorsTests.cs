using Stringline.Web.Papers;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;

namespace Stringline.Cli.Tests;

/// <summary>What a paper is told is read alike on the command line and in its form.</summary>
public sealed class ToldAtBothDoorsTests
{
    private static readonly Paper Affidavit = PaperCatalogue.Find("release-affidavit")!;

    [Fact]
    public void Every_ground_is_taken_by_its_word_at_both_doors()
    {
        var (field, option) = (PaperField.Of(new PaperAsk(PaperInput.Grounds)), PaperOption.Of(PaperInput.Grounds));
        Assert.Equal(JobFileWords.ReleaseGround.Words, field.Choices.Select(choice => choice.Word));
        foreach (var ground in Enum.GetValues<ReleaseGround>())
        {
            var word = JobFileWords.Word(ground);
            Assert.Equal([ground], field.Take([word], PaperOptions.None, out var fault).Grounds);
            Assert.Null(fault);
            var parsed = new System.CommandLine.RootCommand { option.Option }.Parse(["--ground", word]);
            Assert.Empty(parsed.Errors);
            Assert.Equal([ground], option.Take(parsed, PaperOptions.None).Grounds);
        }

        Assert.Equal(2, field.Take(["excessive", "no-basis"], PaperOptions.None, out _).Grounds.Count);
    }

    [Fact]
    public void Any_other_word_is_refused_at_both_doors()
    {
        PaperField.Of(new PaperAsk(PaperInput.Grounds)).Take(["too-much"], PaperOptions.None, out var fault);
        Assert.NotNull(fault);
        var option = PaperOption.Of(PaperInput.Grounds);
        Assert.NotEmpty(new System.CommandLine.RootCommand { option.Option }.Parse(["--ground", "too-much"]).Errors);
    }

    [Fact]
    public void Every_kind_of_notice_is_taken_by_its_word_at_both_doors_and_no_other()
    {
        var (field, option) = (PaperField.Of(new PaperAsk(PaperInput.Notice)), PaperOption.Of(PaperInput.Notice));
        Assert.Equal(ProvedNotices.All.Select(kind => kind.Words()), field.Choices.Select(choice => choice.Words));
        foreach (var kind in ProvedNotices.All)
        {
            Assert.Equal(kind, field.Take([kind.Word()], PaperOptions.None, out var fault).Notice);
            Assert.Null(fault);
            var parsed = new System.CommandLine.RootCommand { option.Option }.Parse(["--kind", kind.Word()]);
            Assert.Empty(parsed.Errors);
            Assert.Equal(kind, option.Take(parsed, PaperOptions.None).Notice);
        }

        field.Take(["love-letter"], PaperOptions.None, out var wrong);
        Assert.NotNull(wrong);
        Assert.NotEmpty(new System.CommandLine.RootCommand { option.Option }.Parse(["--kind", "love-letter"]).Errors);
    }

    /// <summary>Days of a time extension and documents (Pub. Contract Code § 9204(c)(1)(A), (d)(1)(B)).</summary>
    [Theory]
    [InlineData("9", 9)]
    [InlineData(" 120 ", 120)]
    [InlineData("0", null)]
    [InlineData("-3", null)]
    [InlineData("1.5", null)]
    [InlineData("99999", null)]
    [InlineData("nine", null)]
    public void Days_are_read_alike_at_both_doors(string typed, int? days)
    {
        var claim = PaperCatalogue.Find("dispute-claim")!;
        Assert.Equal(days, PaperField.Of(new PaperAsk(PaperInput.ExtensionDays))
            .Take([typed], PaperOptions.None, out var fault).ExtensionDays);
        Assert.Equal(days is null, fault is not null);
        var option = PaperOption.Of(PaperInput.ExtensionDays);
        var parsed = new System.CommandLine.RootCommand { option.Option }.Parse(["--days", typed]);
        Assert.Equal(days is null, parsed.Errors.Count > 0);
        if (days is not null)
            Assert.Equal(days, option.Take(parsed, PaperOptions.None).ExtensionDays);
    }

    [Fact]
    public void Documents_are_lines_of_the_form_and_words_of_the_command_line()
    {
        var claim = PaperCatalogue.Find("dispute-claim")!;
        Assert.Equal(["Daily logs", "Invoice 88"], PaperField.Of(new PaperAsk(PaperInput.Documents))
            .Take(["Daily logs\r\n\n Invoice 88 "], PaperOptions.None, out _).Documents);
        var option = PaperOption.Of(PaperInput.Documents);
        var parsed = new System.CommandLine.RootCommand { option.Option }.Parse(["--document", "Daily logs", "--document", "Invoice 88"]);
        Assert.Equal(["Daily logs", "Invoice 88"], option.Take(parsed, PaperOptions.None).Documents);
    }

    /// <summary>The figure that a waiver releases: nothing released is a figure too.</summary>
    [Theory]
    [InlineData("39,070.50", 39_070.50)]
    [InlineData("$0.00", 0.0)]
    [InlineData("-1.00", null)]
    [InlineData("12,5", null)]
    public void What_a_waiver_releases_is_read_alike_at_both_doors(string typed, double? dollars)
    {
        var waiver = PaperCatalogue.Find("waiver-8132")!;
        Assert.Equal((decimal?)dollars, PaperField.Of(new PaperAsk(PaperInput.Releases))
            .Take([typed], PaperOptions.None, out var fault).Releases);
        Assert.Equal(dollars is null, fault is not null);
        var option = PaperOption.Of(PaperInput.Releases);
        var parsed = new System.CommandLine.RootCommand { option.Option }.Parse([$"--releases={typed}"]);
        Assert.Equal(dollars is null, parsed.Errors.Count > 0);
        if (dollars is not null)
            Assert.Equal((decimal?)dollars, option.Take(parsed, PaperOptions.None).Releases);
    }
}
