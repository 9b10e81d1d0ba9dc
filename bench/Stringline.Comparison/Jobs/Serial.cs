namespace Stringline.Comparison.Jobs;

/// <summary>Days as a spreadsheet counts them: whole days since 30 December 1899. 1 January 2026 is 46023.</summary>
internal static class Serial
{
    private static readonly LocalDate Zero = new(1899, 12, 30);

    public static int Of(LocalDate day) => Period.DaysBetween(Zero, day);

    public static LocalDate Day(int serial) => Zero.PlusDays(serial);
}
