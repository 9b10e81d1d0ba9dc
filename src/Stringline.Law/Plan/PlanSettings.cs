namespace Stringline.Law.Plan;

/// <summary>What a plan reckons with. The defaults are common practice without a source.</summary>
public sealed record PlanSettings
{
    /// <summary>
    /// Calendar days from mailing a paper to a slow county recorder until it is recorded. Common practice, no source: six weeks.
    /// </summary>
    public int MailBacklogDays { get; init; } = 42;

    /// <summary>Open days by which the county's public index lags behind recording. Common practice, no source.</summary>
    public int IndexLagDays { get; init; } = 5;

    /// <summary>Open days kept in hand after the day at the counter, so that a paper refused there can be mended. Ours.</summary>
    public int ReserveDays { get; init; } = 1;

    /// <summary>The defaults.</summary>
    public static PlanSettings Default { get; } = new();
}
