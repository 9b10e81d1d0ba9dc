using System.Globalization;
using Stringline.Store.Upkeep;

namespace Stringline.Office.Backups;

/// <summary>How it stands with the backups of a store.</summary>
/// <param name="Folder">Where they lie; null where that cannot be told.</param>
/// <param name="Last">The last one that was found whole when it was made; null where there is none.</param>
/// <param name="Today">The real day.</param>
/// <param name="Trouble">Why the last attempt failed; null where it went well or none was made yet.</param>
internal sealed record BackupStanding(string? Folder, DatedBackup? Last, LocalDate Today, string? Trouble)
{
    /// <summary>Whether the last one is older than it may be.</summary>
    public bool IsOld => Last is { } last && last.At.Date.PlusDays(DailyBackup.OldAfterDays) < Today;

    /// <summary>Whether something must be said on the first page.</summary>
    public bool Warns => Trouble is not null || IsOld;

    /// <summary>The time of day, with its period at the end of it.</summary>
    public static string Time(LocalDateTime at) => at.ToString("h:mm ", CultureInfo.InvariantCulture) + (at.Hour < 12 ? "a.m." : "p.m.");
}
