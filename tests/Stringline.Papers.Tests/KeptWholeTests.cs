using Stringline.Papers.Layout;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>What belongs together stands together, and what goes on over a page says whose it is.</summary>
public sealed class KeptWholeTests
{
    private static readonly Measure Measure = new();

    private static List<string> Pages(PacketOutcome.Made made, int file = 0) =>
        [.. Preflight.ReadBack.Of(made.Files[file].Bytes).Pages.Select(p =>
            string.Join('\n', p.Lines.Select(l => string.Join(' ', l.Select(w => w.Text)))))];

    [Theory]
    [InlineData("claim")]
    [InlineData("release")]
    [InlineData("stop-work-notice")]
    public void A_row_that_goes_on_over_a_page_says_its_label_again(string id)
    {
        var pages = Pages(Make(id, HardJobs.All["61 owners"]));
        var goesOn = pages.Where(p => p.Contains("continued", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(goesOn);
        Assert.All(goesOn, p => Assert.Matches("Owners|To", p));
        Assert.DoesNotContain("continued", pages[0], StringComparison.Ordinal);
    }

    /// <summary>Civ. Code §§ 8132–8138: the exceptions qualify what is signed under them.</summary>
    [Theory]
    [InlineData("waiver-8132")]
    [InlineData("waiver-8134")]
    [InlineData("waiver-8136")]
    [InlineData("waiver-8138")]
    public void The_exceptions_of_a_waiver_stand_with_its_signature(string id)
    {
        foreach (var hard in (string[])["61 owners", "names of three lines", "half a page of description"])
        {
            var signed =
                Assert.Single(Pages(Make(id, HardJobs.All[hard])), p => p.Contains("Claimant’s Signature", StringComparison.Ordinal));
            Assert.Contains("Exceptions", signed, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_month_stays_with_its_day_and_a_section_sign_with_its_number()
    {
        var lines = Measure.Lines("It was given on July 10, 2026, under § 8416 of the Code.", TypeStyle.Body, 95);
        Assert.Contains(lines, l => l.Contains("July 10,", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.Contains("§ 8416", StringComparison.Ordinal));
    }

    [Fact]
    public void No_single_word_of_a_title_is_left_over_for_its_last_line()
    {
        var strips = new Heading("DESIGN PROFESSIONAL’S DEMAND AND NOTICE OF DEFAULT", TypeStyle.Title).Cut(Measure, Sheet.TextWidth)
            .ToList();
        Assert.Equal(Measure.Lines("DESIGN PROFESSIONAL’S DEMAND AND NOTICE OF DEFAULT", TypeStyle.Title, Sheet.TextWidth).Count,
            strips.Count);
        var made = Make("design-lien-demand");
        Assert.DoesNotContain("\nDEFAULT\n", Pages(made)[0], StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8118(a): the declaration is of the persons named in it; none is signed without one.</summary>
    [Fact]
    public void An_oath_stands_on_a_page_with_something_that_is_sworn()
    {
        foreach (var name in (string[])["names of three lines", "61 owners", "addresses of six lines"])
        {
            var sworn = Pages(Make("proof-of-notice", HardJobs.All[name]))
                .Single(p => p.Contains("I gave the notice", StringComparison.Ordinal));
            Assert.True(sworn.IndexOf("I gave the notice", StringComparison.Ordinal) > 0, name);
        }
    }
}
