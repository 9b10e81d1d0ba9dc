using Stringline.Desk.Papers;
using Stringline.Exchange;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;

namespace Stringline.Desk.Tests;

/// <summary>The grounds of Civ. Code § 9400 are asked alike on the command line and in the form of the affidavit.</summary>
public sealed class GroundsAskedTests
{
    private static readonly Paper Affidavit = PaperCatalogue.Find("release-affidavit")!;

    [Fact]
    public void Every_ground_is_taken_by_its_word_at_both_doors()
    {
        var (field, option) = (PaperField.Of(Told.Grounds, Affidavit), PaperTold.Of(Told.Grounds));
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
        PaperField.Of(Told.Grounds, Affidavit).Take(["too-much"], PaperOptions.None, out var fault);
        Assert.NotNull(fault);
        var option = PaperTold.Of(Told.Grounds);
        Assert.NotEmpty(new System.CommandLine.RootCommand { option.Option }.Parse(["--ground", "too-much"]).Errors);
    }
}
