using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime.Text;
using Stringline.Law.Counting;

namespace Stringline.Law.Recording;

/// <summary>One thing read of a county recorder's office, with the page it was read on.</summary>
/// <param name="County">The county, such as <c>Yolo</c>; <see cref="Statewide"/> for what the statutes say of all.</param>
/// <param name="Field">What it is.</param>
/// <param name="Value">The value as written; of a price dollars, such as <c>14</c>.</param>
/// <param name="Source">The page; <c>from memory</c> where none was read.</param>
/// <param name="DateOnPage">The date the page bears, with what was seen of it in words; null from memory.</param>
/// <param name="DateRead">The day it was read; null from memory.</param>
/// <param name="From">The first day on which it holds; null where it held when it was read.</param>
/// <param name="To">The last day on which it holds; null where no end was read.</param>
/// <param name="Remark">What else the page says of it, or another page.</param>
public sealed partial record RecorderFact(
    string County, RecorderField Field, string Value, string Source, string? DateOnPage, LocalDate? DateRead, LocalDate? From,
    LocalDate? To, string? Remark)
{
    /// <summary>What stands in place of the county for the prices that the statutes set for all.</summary>
    public const string Statewide = "California";

    /// <summary>A page that bears an older date than this is asked about.</summary>
    public const int YearsToTrust = 5;

    private static readonly LocalDatePattern[] Dated =
        [LocalDatePattern.Iso, LocalDatePattern.CreateWithInvariantCulture("uuuu-MM"), LocalDatePattern.CreateWithInvariantCulture("uuuu")];

    private static readonly LocalDatePattern Month = LocalDatePattern.CreateWithInvariantCulture("MMMM uuuu");

    /// <summary>The day the page bears, the earliest where only month or year is there; null where it bears none.</summary>
    public LocalDate? PageDay => DateOnPage is null ? null : DayOf(DateOnPage);

    /// <summary>
    /// The date the page bears, as a paper says it: <c>August 1, 2023 (effective)</c>, <c>2014</c>, <c>undated (current site)</c>.
    /// </summary>
    public string? DateInWords => DateOnPage is { } written && PageDay is { } day && Form().Match(written).Groups[1].Value is { } date
        ? (date.Length == 10 ? LawText.LongDay(day) : date.Length == 7 ? Month.Format(day) : date) + written[date.Length..] : DateOnPage;

    /// <summary>Whether no page was read.</summary>
    public bool IsFromMemory => DateRead is null;

    /// <summary>The page's site, without the rest of its address.</summary>
    public string Site => Source.Split('/')[0];

    /// <summary>Dollars, of a price; else null.</summary>
    public decimal? Dollars => RecorderFields.Kind(Field) == RecorderValue.Dollars
        ? decimal.Parse(Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture) : null;

    /// <summary>Whether it holds on a day.</summary>
    public bool HoldsOn(LocalDate day) => !(From > day) && !(To < day);

    /// <summary>Whether the page was young enough on a day to be taken at its word.</summary>
    public bool IsFresh(LocalDate on) => PageDay is { } day && day.PlusYears(YearsToTrust) >= on;

    /// <summary>Whether a date of a page is written as the table has it: a day, month or year, or <c>undated</c>, and words.</summary>
    public static bool IsDate(string written) => Form().Match(written) is { Success: true } match
        && (match.Groups[1].Value == "undated" || DayOf(written) is not null);

    private static LocalDate? DayOf(string written)
    {
        var day = Form().Match(written).Groups[1].Value;
        foreach (var pattern in Dated)
        {
            if (pattern.Parse(day) is { Success: true } parsed)
                return parsed.Value;
        }

        return null;
    }

    [GeneratedRegex(@"^([0-9-]+|undated)(?: \([^()]+\))?$", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
