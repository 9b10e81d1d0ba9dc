using Stringline.Law.Facts;
using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;
using Stringline.Testing;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>What no line and no page parts.</summary>
public sealed class UnbrokenTests
{
    [Theory]
    [InlineData("Owner of Unit 15, LLC", "Unit 15,")]
    [InlineData("Floor 2, Room 218", "Room 218")]
    [InlineData("instrument no. 2026-0012345 in", "no. 2026-0012345")]
    [InlineData("costs more (Gov. Code § 27361.8)", "§ 27361.8)")]
    [InlineData("Sacramento, CA 95811", "CA 95811")]
    [InlineData("Woodland, California 95695", "California 95695")]
    [InlineData("Government Code section 27201(a).", "section 27201(a).")]
    [InlineData("withheld (subdivision (d)(4)) and", "(subdivision (d)(4))")]
    [InlineData("77 Cordage Way, Unit C", "Unit C")]
    [InlineData("on (June 26, 2026)", "(June 26,")]
    [InlineData("see page 2", "page 2")]
    public void A_number_stays_with_what_it_numbers_at_every_width(string text, string whole)
    {
        var measure = new Measure();
        for (var width = measure.Width(whole, TypeStyle.Body) + 1; width < 400; width += 3)
            Assert.Contains(measure.Lines(text, TypeStyle.Body, width), line => line.Contains(whole, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("he may 15", "unit cost", "unit")]
    [InlineData("in the county of California and", "California and", "California")]
    public void Other_words_part(string text, string after, string word)
    {
        var measure = new Measure();
        Assert.False(Unbroken.Are(word, after.Split(' ')[1]), text);
        Assert.True(measure.Lines(text, TypeStyle.Body, 40).Count > 1);
    }

    [Fact]
    public void What_is_wider_than_its_column_parts_at_a_space_before_a_word_is_cut() =>
        Assert.Equal(["subdivision", "(d)(4)"], new Measure().Lines("subdivision (d)(4)", TypeStyle.Body, 62));

    // The three lines say which check it is; a page that ends early for its own sake is taken for the whole form.
    [Theory]
    [InlineData("waiver-8132")]
    [InlineData("waiver-8134")]
    [InlineData("waiver-8136")]
    [InlineData("waiver-8138")]
    [Slow(Slow.Lasting)]
    public void A_waiver_of_many_owners_keeps_its_check_together_and_leaves_no_gap(string id)
    {
        for (var owners = 40; owners <= 100; owners += 3)
        {
            var many = Enumerable.Range(1, owners)
                .Select(i => new Party { Id = $"o{i}", Capacity = PartyCapacity.Owner, Name = $"Owner of Unit {i}, LLC",
                Address = $"{i} Cordage Way\nDavis, CA 95616" }).ToArray();
            var pages = ReadBack.Of(Make(id, job => job.WithOwners(many)).Files[0].Bytes).Pages;
            var texts = pages.Select(p => string.Join(' ', p.Words.Select(w => w.Text))).ToList();
            if (texts.Any(t => t.Contains("Maker of Check:", StringComparison.Ordinal)))
                Assert.Single(texts, t => t.Contains("Maker of Check:", StringComparison.Ordinal)
                    && t.Contains("Check Payable to:", StringComparison.Ordinal));
            // Only what the form excepts is kept whole with the signature: before it no page ends early.
            for (var i = 0; i + 1 < pages.Count; i++)
            {
                var end = Body(pages[i])[^1][0].Baseline;
                var left = Body(pages[i + 1]).TakeWhile(l => !Text(l).StartsWith("Exceptions", StringComparison.Ordinal)).ToList();
                Assert.True(left.Count == 0 || Sheet.Bottom - end < 70,
                    $"{owners} owners: page {i + 1} ends {Sheet.Bottom - end:0} points early; "
                        + $"then: {string.Join(" / ", left.Select(Text))}");
            }
        }
    }

    private static List<IReadOnlyList<ReadWord>> Body(ReadPage page) =>
        [.. page.Lines.Where(l => l[0].Baseline < Sheet.FootBaseline - 8)];

    private static string Text(IReadOnlyList<ReadWord> line) => string.Join(' ', line.Select(w => w.Text));
}
