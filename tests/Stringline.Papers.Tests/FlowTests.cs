using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;

namespace Stringline.Papers.Tests;

/// <summary>Where pages break, and what is said again.</summary>
public sealed class FlowTests
{
    private static readonly LocalDate Made = new(2026, 1, 1);

    private static ReadBack Print(params Block[] blocks) => ReadBack.Of(Press.Print(
        new PaperPlan { Title = "Flow", Foot = "Flow", Made = Made, Blocks = blocks }).Bytes);

    private static List<string> Lines(ReadPage page) => [.. page.Lines.Where(l => l[0].Baseline < Sheet.FootBaseline - 8)
        .Select(l => string.Join(' ', l.Select(w => w.Text)))];

    [Fact]
    public void A_long_table_repeats_its_head_on_every_page_and_says_each_row_once()
    {
        var read = Print(new Table([new Column("Person served", 0.6), new Column("Article number", 0.4)],
            [.. Enumerable.Range(1, 120).Select(i => (IReadOnlyList<string>)[$"Person {i}\n{i} Weir Street", $"No. {i}"])]));
        Assert.True(read.Pages.Count > 3);
        Assert.All(read.Pages, p => Assert.Equal("Person served Article number", Lines(p)[0]));
        Assert.All(Enumerable.Range(1, 120), i => Assert.Equal(1, read.Pages.Sum(p => Lines(p).Count(l => l.EndsWith($"No. {i}",
            StringComparison.Ordinal)))));
    }

    /// <summary>Whatever the length of the text before it.</summary>
    [Fact]
    public void No_page_has_fewer_than_three_lines()
    {
        for (var lines = 40; lines < 110; lines++)
        {
            var read = Print([.. Enumerable.Range(1, lines).Select(i => (Block)new Paragraph($"Line {i}", TypeStyle.Body) { Before = 0 })]);
            Assert.All(read.Pages, p => Assert.True(Lines(p).Count >= 3, $"{lines} lines: page {p.Number} has {Lines(p).Count}"));
        }
    }

    [Fact]
    public void An_address_stays_whole_and_a_long_description_never_begins_or_ends_with_one_line()
    {
        for (var before = 30; before < 60; before++)
        {
            var read = Print(
            [
                .. Enumerable.Range(1, before).Select(i => (Block)new Paragraph($"Line {i}", TypeStyle.Body) { Before = 0 }),
                new FieldRow("To", "Ida Quill\n12 Weir Street\nUnit 9\nDavis, CA 95616"),
                new FieldRow("Site", "418 Alder Court", "County of Yolo",
                    string.Join(' ', Enumerable.Repeat("thence South 14 degrees", 60))),
                .. Enumerable.Range(1, 40).Select(i => (Block)new Paragraph($"After {i}", TypeStyle.Body) { Before = 0 }),
            ]);
            Assert.Single(read.Pages, p => Lines(p).Any(l => l.Contains("Ida Quill", StringComparison.Ordinal))
                && Lines(p).Any(l => l.Contains("Davis, CA 95616", StringComparison.Ordinal)));
            Assert.All(read.Pages, p => Assert.NotEqual(1, Lines(p).Count(l => l.Contains("South", StringComparison.Ordinal))));
        }
    }

    /// <summary>A label of several lines is set at its own pitch, whatever stands beside it.</summary>
    [Theory]
    [InlineData(null, null)]
    [InlineData("one", "two")]
    [InlineData("one", null)]
    [InlineData(null, "one")]
    public void A_label_of_two_lines_is_set_at_its_own_pitch(string? first, string? second)
    {
        var words = Print(new FieldRow("Owner or reputed owner of record", first, second), new FieldRow("Next", "value")).Pages[0].Words
            .ToList();
        var label = words.Where(w => w.Left < Sheet.Left + 142 && w.Baseline < 700).Select(w => w.Baseline).Distinct().ToList();
        Assert.Equal(TypeStyle.BodyBold.Pitch, label[1] - label[0], 1);
        Assert.True(label[2] - label[1] >= TypeStyle.BodyBold.Pitch, "the next label is clear of it");
    }
}
