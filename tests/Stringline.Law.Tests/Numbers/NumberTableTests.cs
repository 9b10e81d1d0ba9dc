using Stringline.Law.Numbers;
using Stringline.Law.Sources;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Numbers;

/// <summary>The table of the numbers of the law: what it refuses, which version answers, and how a number is said.</summary>
public sealed class NumberTableTests
{
    private static readonly string Shipped = File.ReadAllText(Repository.Path("data/numbers.csv")).ReplaceLineEndings("\n");

    // A whole row, in whose place the tests put others.
    private const string First =
        "RecordAfterCompletionDirect,90,Days,Civ. Code § 8412(a),2012-07-01,,Read,Civil Code as updated 2026-07-10";

    // The table of the repository with other rows of that number, which come first.
    private static NumberTable With(string rows) => NumberTable.Parse(string.Join('\n',
        Shipped.Split('\n').Where(line => !line.StartsWith("RecordAfterCompletionDirect,", StringComparison.Ordinal))
            .SelectMany((line, i) => i == 0 ? [line, rows] : (string[])[line])));

    [Fact]
    public void The_program_is_built_with_the_table_of_the_repository()
    {
        var table = NumberTable.Parse(Shipped);
        foreach (var id in Enum.GetValues<Number>())
            Assert.Equal(table.Of(id), NumberTable.Shipped.Of(id));
        Assert.Equal(Shipped.Split('\n').Length - 2, Enum.GetValues<Number>().Sum(id => table.Of(id).Count));
    }

    [Fact]
    public void No_number_has_a_gap_or_an_overlap_between_its_versions()
    {
        foreach (var id in Enum.GetValues<Number>())
        {
            var of = NumberTable.Shipped.Of(id);
            Assert.NotEmpty(of);
            Assert.All(of.Zip(of.Skip(1)), pair => Assert.Equal(pair.Second.From, pair.First.Until!.Value.PlusDays(1)));
        }
    }

    [Theory]
    [InlineData("RecordAfterCompletionDirekt,90,Days,Civ. Code § 8412(a),2012-07-01,,Read,x",
        "Line 2, id: «RecordAfterCompletionDirekt». Right: one of")]
    [InlineData("0,90,Days,Civ. Code § 8412(a),2012-07-01,,Read,x", "Line 2, id: «0»")]
    [InlineData("RecordAfterCompletionDirect,0,Days,Civ. Code § 8412(a),2012-07-01,,Read,x",
        "Line 2, value: «0». Right: a whole number above 0")]
    [InlineData("RecordAfterCompletionDirect,-9,Days,Civ. Code § 8412(a),2012-07-01,,Read,x", "Line 2, value: «-9»")]
    [InlineData("RecordAfterCompletionDirect,9.5,Days,Civ. Code § 8412(a),2012-07-01,,Read,x", "Line 2, value: «9.5»")]
    [InlineData("RecordAfterCompletionDirect,ninety,Days,Civ. Code § 8412(a),2012-07-01,,Read,x", "Line 2, value: «ninety»")]
    [InlineData("RecordAfterCompletionDirect,90,days,Civ. Code § 8412(a),2012-07-01,,Read,x", "Line 2, unit: «days». Right: one of Days,")]
    [InlineData("RecordAfterCompletionDirect,90,Days,Civ. Code 8412(a),2012-07-01,,Read,x", "Line 2, section: «Civ. Code 8412(a)»")]
    [InlineData("RecordAfterCompletionDirect,90,Days,Civ. Code § 8412(a),July 2012,,Read,x",
        "Line 2, from: «July 2012». Right: a day, such as 2012-07-01")]
    [InlineData("RecordAfterCompletionDirect,90,Days,Civ. Code § 8412(a),2012-07-01,2012-06-31,Read,x", "Line 2, until: «2012-06-31»")]
    [InlineData("RecordAfterCompletionDirect,90,Days,Civ. Code § 8412(a),2012-07-01,2012-06-30,Read,x",
        "Line 2, until: «2012-06-30». Right: empty, or a day not before 2012-07-01")]
    [InlineData("RecordAfterCompletionDirect,90,Days,Civ. Code § 8412(a),2012-07-01,,Sure,x",
        "Line 2, sure: «Sure». Right: one of Read, Opinion, FromMemory, OurReading")]
    [InlineData("RecordAfterCompletionDirect,90,Days,Civ. Code § 8412(a),2012-07-01,,Read, ",
        "Line 2, source: « ». Right: the text in which it was read")]
    [InlineData("RecordAfterCompletionDirect,90,Days,Civ. Code § 8412(a),2012-07-01,,Read,a, b",
        "Line 2: 9 cells are there; 8 would be right")]
    [InlineData("", "has no row")]
    public void A_broken_cell_is_refused_with_its_line_and_what_would_be_right(string row, string refusal) =>
        Assert.Contains(refusal, Assert.Throws<FormatException>(() => With(row)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("2027-12-31", "2028-01-02", "governs through 2027-12-31 and the next from 2028-01-02")]
    [InlineData("2027-12-31", "2027-12-31", "governs through 2027-12-31 and the next from 2027-12-31")]
    [InlineData("", "2028-01-01", "governs without an end and the next from 2028-01-01")]
    public void A_gap_and_an_overlap_are_refused(string until, string from, string refusal) =>
        Assert.Contains(refusal, Assert.Throws<FormatException>(() => With(
            $"{First.Replace(",,Read", $",{until},Read", StringComparison.Ordinal)}\n{First.Replace("2012-07-01", from,
                StringComparison.Ordinal)}")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_number_without_a_row_and_one_in_two_units_are_refused()
    {
        var missing =
            Assert.Throws<FormatException>(() => With(First.Replace("RecordAfterCompletionDirect", "SueOnClaim", StringComparison.Ordinal)
                .Replace("2012-07-01,", "1990-01-01,2012-06-30", StringComparison.Ordinal)));
        Assert.Contains("RecordAfterCompletionDirect has no row", missing.Message, StringComparison.Ordinal);
        var mixed = Assert.Throws<FormatException>(() => With(
            First.Replace(",,Read", ",2027-12-31,Read", StringComparison.Ordinal) + "\n"
            + First.Replace("90,Days", "3,Months", StringComparison.Ordinal)
            .Replace("2012-07-01", "2028-01-01", StringComparison.Ordinal)));
        Assert.Contains("in Months follows one in Days", mixed.Message, StringComparison.Ordinal);
        Assert.Contains("Line 1", Assert.Throws<FormatException>(() => NumberTable.Parse("id;value")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => NumberTable.Parse(null!));
    }

    [Fact]
    public void The_version_of_a_day_answers_and_beyond_the_table_the_nearest()
    {
        var table = With(First.Replace(",,Read", ",2027-12-31,Read", StringComparison.Ordinal) + "\n"
            + First.Replace("90", "100", StringComparison.Ordinal).Replace("2012-07-01", "2028-01-01", StringComparison.Ordinal));
        int On(string day) => table.On(Number.RecordAfterCompletionDirect, Day(day)).Count;
        Assert.Equal([90, 90, 90, 100, 100], [On("1999-01-01"), On("2012-07-01"), On("2027-12-31"), On("2028-01-01"), On("2099-01-01")]);
        Assert.Equal(Day("2028-04-10"), table.LastDay(Number.RecordAfterCompletionDirect, Day("2028-01-01")));
        Assert.Equal(Day("2028-03-30"), table.LastDay(Number.RecordAfterCompletionDirect, Day("2027-12-31")));
        Assert.Equal((Day("2012-07-01"), null),
            (table.Begins(Number.RecordAfterCompletionDirect), table.Ends(Number.RecordAfterCompletionDirect)));
        Assert.Equal((Day("2026-01-01"), Day("2029-12-31")), (table.Begins(Number.OwnersStatement), table.Ends(Number.OwnersStatement)));
        Assert.Equal(Day("2027-12-31"), table.RunsFrom(Number.RecordAfterCompletionDirect, Day("2028-03-30")));
        Assert.Equal(Day("2028-01-01"), table.RunsFrom(Number.RecordAfterCompletionDirect, Day("2028-04-10")));
    }

    [Fact]
    public void A_number_is_said_in_figures_in_words_and_by_its_place()
    {
        static (string, string, string) Of(decimal value, NumberUnit unit)
        {
            var row = new NumberRow(Number.SueOnClaim, value, unit, "§", Day("2012-07-01"), null, Sure.Read, "x");
            return (row.Text, row.Spelled, row.Ordinal);
        }

        Assert.Equal(("90 days", "ninety days", "ninetieth"), Of(90, NumberUnit.Days));
        Assert.Equal(("1 year", "one year", "first"), Of(1, NumberUnit.Years));
        Assert.Equal(("6 months", "six months", "sixth"), Of(6, NumberUnit.Months));
        Assert.Equal(("10 business days", "ten business days", "tenth"), Of(10, NumberUnit.BusinessDays));
        Assert.Equal(("35 days", "thirty-five days", "thirty-fifth"), Of(35, NumberUnit.Days));
        Assert.Equal(("100 days", "100 days", "100th"), Of(100, NumberUnit.Days));
        Assert.Equal(("7.5 percent", "7.5 percent", "7th"), Of(7.5m, NumberUnit.Percent));
        Assert.Equal("$375,000", Of(375_000, NumberUnit.Dollars).Item1);
        Assert.Equal(["1st", "2nd", "3rd", "11th", "20th", "21st"],
            new decimal[] { 1, 2, 3, 11, 20, 21 }.Select(d => Of(d, NumberUnit.DayOfMonth).Item1));
    }

    [Fact]
    public void What_is_no_period_counts_no_days()
    {
        Assert.Throws<InvalidOperationException>(() => NumberTable.Shipped.LastDay(Number.ReleaseBond, Day("2026-07-01")));
        Assert.Throws<InvalidOperationException>(() => NumberTable.Shipped.On(Number.SueAfterCompletion, Day("2026-07-01"))
            .LookBack(Day("2026-07-01")));
        Assert.Throws<InvalidOperationException>(() => NumberTable.Shipped.On(Number.SueOnClaim, Day("2026-07-01")).PercentOf(100m));
    }
}
