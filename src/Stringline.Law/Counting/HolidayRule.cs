namespace Stringline.Law.Counting;

/// <summary>One version of one holiday: on which lists it stands, by which section, from when until when.</summary>
/// <param name="Id">The holiday's stable id; versions of one holiday share it.</param>
/// <param name="Name">What to call it.</param>
/// <param name="Day">How its day is found.</param>
/// <param name="From">First year of this version; null where it is older than the table's first sure year
/// (<see cref="CaliforniaHolidays.SureFrom"/>).</param>
/// <param name="Until">Last year of this version, included; null while it is in force.</param>
/// <param name="Lists">The lists on which it stands.</param>
/// <param name="Section">The section and the bill or version that sets it.</param>
/// <param name="Sure">How well the row is known.</param>
/// <param name="Note">What is from memory or open; empty where nothing is.</param>
public sealed record HolidayRule(
    string Id, string Name, YearlyDay Day, int? From, int? Until, HolidayLists Lists, string Section, Sure Sure, string Note = "")
{
    /// <summary>Whether this version governs the holiday of that year.</summary>
    public bool Governs(int year) => !(year < From) && !(year > Until);
}
