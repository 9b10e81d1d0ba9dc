namespace Stringline.Tables.Calendar;

/// <summary>A day on which something is to be done, for a calendar.</summary>
/// <param name="Job">The job's key: with <paramref name="Finding"/> it makes the event the same one in every later calendar.</param>
/// <param name="Finding">Id of the finding whose day it is.</param>
/// <param name="Day">The day to plan on.</param>
/// <param name="Do">What to do, as an order.</param>
/// <param name="Name">The job's name.</param>
/// <param name="Revision">A number that grows whenever the job changes: that of its last change in the journal.</param>
public sealed record CalendarDay(string Job, string Finding, LocalDate Day, string Do, string Name, long Revision)
{
    /// <summary>What is owed and what of it is at stake, in words; null where nothing is.</summary>
    public string? Stakes { get; init; }

    /// <summary>What is left of the right, where its planned day is past; null where it is not.</summary>
    public string? Outlook { get; init; }

    /// <summary>The remedy, in words.</summary>
    public string? Remedy { get; init; }

    /// <summary>The county of the site.</summary>
    public string? County { get; init; }

    /// <summary>The section it rests on.</summary>
    public string? Section { get; init; }

    /// <summary>The reading that sets the day.</summary>
    public string? Reading { get; init; }
}
