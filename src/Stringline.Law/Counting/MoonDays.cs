namespace Stringline.Law.Counting;

/// <summary>One year's day of a holiday that follows the moon.</summary>
/// <param name="HolidayId">The holiday's id.</param>
/// <param name="Day">The day, at most one in a year.</param>
/// <param name="Sure">How well it is known.</param>
public sealed record MoonDay(string HolidayId, LocalDate Day, Sure Sure);

/// <summary>
/// The days of Lunar New Year (Gov. Code § 6700(a): second new moon after the winter solstice, the third if an
/// intercalary month intervenes; Stats. 2022 ch. 792) and Diwali (15th day of Kartik; Stats. 2025 ch. 358).
/// </summary>
/// <remarks>
/// <para>Both are State holidays only; no court closes for them (Code Civ. Proc. § 135). They are needed for the day
/// to plan on and for the latest roll of the other side's last day, never for a court's roll.</para>
/// <para>Open: the section does not say by which clock the new moon is dated. The rows follow the calendar's
/// customary day; by California's clock the new moon of 2024, for one, came the evening before. Calendars of other
/// countries put Diwali a day earlier in 2027 (28 October) and 2030 (25 October).</para>
/// </remarks>
public static class MoonDays
{
    /// <summary>Id of Lunar New Year.</summary>
    public const string LunarNewYear = "lunar-new-year";

    /// <summary>Id of Diwali.</summary>
    public const string Diwali = "diwali";

    /// <summary>The last year for which the table has every moon day. Later ones are not known and count as open days.</summary>
    public const int KnownThrough = 2035;

    /// <summary>The rows, by holiday and year.</summary>
    public static IReadOnlyList<MoonDay> Rows { get; } =
    [
        Row(LunarNewYear, 2023, 1, 22),
        Row(LunarNewYear, 2024, 2, 10),
        Row(LunarNewYear, 2025, 1, 29),
        Row(LunarNewYear, 2026, 2, 17),
        Row(LunarNewYear, 2027, 2, 6),
        Row(LunarNewYear, 2028, 1, 26),
        Row(LunarNewYear, 2029, 2, 13),
        Row(LunarNewYear, 2030, 2, 3),
        Row(LunarNewYear, 2031, 1, 23),
        Row(LunarNewYear, 2032, 2, 11),
        Row(LunarNewYear, 2033, 1, 31),
        Row(LunarNewYear, 2034, 2, 19),
        Row(LunarNewYear, 2035, 2, 8),
        Row(Diwali, 2026, 11, 8),
        Row(Diwali, 2027, 10, 29),
        Row(Diwali, 2028, 10, 17),
        Row(Diwali, 2029, 11, 5),
        Row(Diwali, 2030, 10, 26),
        Row(Diwali, 2031, 11, 14),
        Row(Diwali, 2032, 11, 2),
        Row(Diwali, 2033, 10, 22),
        Row(Diwali, 2034, 11, 10),
        Row(Diwali, 2035, 10, 30),
    ];

    private static MoonDay Row(string holidayId, int year, int month, int day) =>
        new(holidayId, new LocalDate(year, month, day), Sure.FromMemory);
}
