namespace Stringline.Law.Time;

/// <summary>stub, replaced on merge</summary>
public static class Period
{
    /// <summary>Last day.</summary>
    public static LocalDate LastDay(LocalDate trigger, int days) => trigger.PlusDays(days);
}
