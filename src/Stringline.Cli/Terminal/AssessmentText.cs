using System.Globalization;
using System.Text;
using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Cli.Terminal;

/// <summary>An assessment for a person to read: the table first, then the amount, then every why.</summary>
internal static class AssessmentText
{
    private const int StandingWidth = 8;
    private const int DayWidth = 16;
    private const int BandWidth = 24;
    private const int TitleWidth = Layout.Width - StandingWidth - DayWidth - BandWidth - 6;
    private const int MoneyWidth = 16;
    private const int StepWidth = 44;

    /// <summary>The whole text, its lines parted and ended by <c>\n</c>.</summary>
    public static string Of(Assessment assessment)
    {
        var page = new StringBuilder();
        page.Wrapped(assessment.Name, "", "");
        page.Append(CultureInfo.InvariantCulture, $"As of {LawText.Day(assessment.AsOf)}\n");
        page.Wrapped(Assessment.Caution, "", "");
        Table(page, assessment);
        Obstacles(page, assessment.ClaimObstacles);
        Amount(page, assessment.Amount);
        Questions(page, assessment.Findings);
        Whys(page, assessment.Findings);
        return page.ToString();
    }

    private static void Table(StringBuilder page, Assessment assessment)
    {
        page.Heading("Where things stand");
        page.Row(new("What", TitleWidth), new("Standing", StandingWidth), new("Act by", DayWidth), new("Day, or band of days", BandWidth));
        foreach (var finding in assessment.Findings)
        {
            page.Row(
                new(finding.Title, TitleWidth),
                new(finding.Standing.Word(), StandingWidth),
                new(finding.ActBy is { } day ? LawText.Day(day) : "", DayWidth),
                new(Span(finding, assessment.Amount), BandWidth));
        }
    }

    private static string Span(Finding finding, Waterfall amount) => finding.Band switch
    {
        null => finding.Amount is { } dollars ? Dollars(finding, dollars, amount) : "",
        { Latest: null } open => $"{LawText.IsoDay(open.Earliest.Day)}, no end yet",
        { Latest: { } latest } band when latest.Day == band.Earliest.Day => LawText.IsoDay(latest.Day),
        { Latest: { } latest } band => $"{LawText.IsoDay(band.Earliest.Day)} to {LawText.IsoDay(latest.Day)}",
    };

    private const string NotKnown = "not known";

    // Where the file does not say what the work was worth, nothing is no sum; one that is in doubt shows its band.
    private static string Dollars(Finding finding, decimal dollars, Waterfall amount) =>
        dollars == 0 && amount.IsUnknown && finding.Standing != Standing.Lost ? NotKnown
            : finding.Id == "amount" && amount.IsBand ? Band(amount)
            : LawText.Money(dollars);

    private static string Band(Waterfall amount) => $"{LawText.Money(amount.AtLeast)} to {LawText.Money(amount.AtMost)}";

    private static void Obstacles(StringBuilder page, IReadOnlyList<Reason> obstacles)
    {
        if (obstacles.Count == 0)
            return;
        page.Heading("What stands in the way of recording a claim of lien");
        ReasonTree.Draw(page, obstacles);
    }

    private static void Amount(StringBuilder page, Waterfall amount)
    {
        page.Heading("The amount");
        foreach (var step in amount.Steps)
            Money(page, step.Title, step.Amount, ReasonTree.Grounds(step.Why));
        page.Append(' ', StepWidth + 2).Append('─', MoneyWidth).Append('\n');
        Row(page, amount.Title, amount.IsUnknown ? NotKnown : LawText.Money(amount.Demand), "");
        if (amount.IsBand)
            page.Wrapped($"On the readings that are open: {Band(amount)}.", "", "");
        if (amount.LeftOut != 0m)
            Money(page, "Billed, but left out of the claim", amount.LeftOut, "");
        page.Append('\n');
        foreach (var step in amount.Steps)
        {
            page.Append(step.Title).Append('\n');
            ReasonTree.Draw(page, [step.Why]);
        }
    }

    private static void Money(StringBuilder page, string title, decimal dollars, string grounds) =>
        Row(page, title, LawText.Money(dollars), grounds);

    private static void Row(StringBuilder page, string title, string sum, string grounds) => page.Row(
        new(title, StepWidth),
        new(sum, MoneyWidth, FlushRight: true),
        new(grounds, Layout.Width - StepWidth - MoneyWidth - 4));

    private static void Questions(StringBuilder page, IReadOnlyList<Finding> findings)
    {
        if (findings.All(finding => finding.Questions.Count == 0))
            return;
        page.Heading("What would settle more");
        foreach (var finding in findings)
        {
            foreach (var question in finding.Questions)
                page.Wrapped($"{question.Text} ({finding.Title}{Weight(question)})", "- ", "  ");
        }
    }

    private static string Weight(Question question) =>
        (question.Days is { } days ? $"; could move it by {days} {(days == 1 ? "day" : "days")}" : "")
        + (question.Dollars is { } dollars ? $"; could move it by {LawText.Money(dollars)}" : "");

    private static void Whys(StringBuilder page, IReadOnlyList<Finding> findings)
    {
        page.Heading("Why");
        foreach (var finding in findings)
        {
            page.Wrapped($"{finding.Title}: {finding.Standing.Word()} [{finding.Id}]", "", "  ");
            foreach (var reading in finding.Readings)
                page.Wrapped(Reading(finding, reading), "  ", "    ");
            ReasonTree.Draw(page, finding.Why);
            page.Append('\n');
        }
    }

    private static string Reading(Finding finding, Reading reading) =>
        $"{reading.Name}: {(finding.IsDeadline ? "last day " : "")}{LawText.Day(reading.Day)}"
        + (reading.Rolled is { } rolled ? $"; a roll to {LawText.Day(rolled)} can be argued, never planned on" : "");
}
