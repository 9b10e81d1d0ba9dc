using System.Globalization;
using Stringline.Store;

namespace Stringline.Office.StoreNotes;

/// <summary>What is said where the clock of the computer was behind the journal.</summary>
internal static class ClockText
{
    private static readonly DateTimeZone California = DateTimeZoneProviders.Tzdb["America/Los_Angeles"];

    /// <summary>Two sentences: what was found, and what to do.</summary>
    public static string Of(ClockBehind behind) =>
        $"The clock of this computer says {Words(behind.Clock)}, but the journal already holds a change "
            + $"of {Words(behind.Recorded)}. What was "
        + "recorded now is kept, in the right order, under that moment. Set the clock right; if it is right, it was wrong when that change "
        + "was recorded.";

    private static string Words(Instant moment) =>
        moment.InZone(California).ToString("ddd MMMM d, uuuu, h:mm tt", CultureInfo.InvariantCulture);
}
