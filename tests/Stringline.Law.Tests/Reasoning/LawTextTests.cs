using System.Globalization;
using Stringline.Law.Counting;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Reasoning;

public sealed class LawTextTests
{
    [Theory]
    [InlineData("0", "$0.00")]
    [InlineData("1234.5", "$1,234.50")]
    [InlineData("-20", "-$20.00")]
    [InlineData("1000000.01", "$1,000,000.01")]
    public void Money_is_dollars_and_cents(string dollars, string text) =>
        Assert.Equal(text, LawText.Money(decimal.Parse(dollars, CultureInfo.InvariantCulture)));

    // Noda Time's own ISO pattern is the other side.
    [Fact]
    public void A_day_alone_is_written_as_the_open_standard_has_it()
    {
        foreach (var day in (LocalDate[])[new(1, 1, 1), new(1900, 12, 31), new(2024, 2, 29), new(2026, 6, 7), new(9999, 12, 31),
            LocalDate.MinIsoValue])
            Assert.Equal(NodaTime.Text.LocalDatePattern.Iso.Format(day), LawText.IsoDay(day));
    }

    [Fact]
    public void Days_and_money_inside_a_reason_are_written_alike()
    {
        LocalDate? maybe = Day("2026-06-27");
        var reason = Reason.Of("Civ. Code § 8414(b)", $"Last day {Day("2026-06-27")}, {maybe}, demand {1234.5m}, {3} entries.");
        Assert.Equal("Last day 2026-06-27 (Sat), 2026-06-27 (Sat), demand $1,234.50, 3 entries.", reason.Text);
    }

    [Fact]
    public void A_day_that_the_file_does_not_tell_is_said_to_be_unknown() =>
        Assert.Equal("The action ended on a day that is not known.",
            Reason.Of("Civ. Code § 8556", $"The action ended {(DaySpan?)null}.").Text);

    [Fact]
    public void A_finding_lists_the_sections_that_applied_once_each_children_included()
    {
        var finding = new Finding
        {
            Id = "x",
            Title = "x",
            Standing = Standing.Open,
            Why =
            [
                Reason.Of("A", $"a", Reason.Of("B", $"b"), Reason.NotApplied("C", $"c")),
                Reason.Of("", $"group", Reason.Of("A", $"again"), Reason.Of("D", $"d")),
                Reason.NotApplied("E", $"e"),
            ],
        };
        Assert.Equal(["A", "B", "D"], finding.Sections);
    }

    [Fact]
    public void Every_standing_has_its_word()
    {
        Assert.Equal(
            ["not yet", "open", "kept", "narrowed", "lost", "in doubt", "done"],
            Enum.GetValues<Standing>().Select(s => s.Word()));
        Assert.Throws<ArgumentOutOfRangeException>(() => ((Standing)99).Word());
    }
}
