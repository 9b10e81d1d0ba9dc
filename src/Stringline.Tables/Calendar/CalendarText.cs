using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Stringline.Law;
using Stringline.Law.Counting;

namespace Stringline.Tables.Calendar;

/// <summary>
/// Days to act as an iCalendar file (RFC 5545): all-day events with alarms. The same job and finding keep their UID, so that a calendar
/// that takes the file again moves the event instead of showing two; which of two is later is told by SEQUENCE and DTSTAMP (RFC 5546
/// § 2.1.5).
/// </summary>
public static class CalendarText
{
    // RFC 5545 § 3.1: a line has at most 75 octets; the rest goes on in the next, led by a blank.
    private const int LongestLine = 75;

    // An alarm sounds at nine in the morning.
    private const int HoursFromNineToMidnight = 15;

    /// <summary>Days before the day on which an alarm sounds, where nothing else is asked for.</summary>
    public static IReadOnlyList<int> UsualAlarms { get; } = [14, 3];

    /// <summary>Writes the file: UTF-8, lines ended by CR LF.</summary>
    /// <param name="days">The days. What lies before the asked day is put on that day, and says so.</param>
    /// <param name="asked">The day on which the question was asked; the moment of every event's DTSTAMP is its noon.</param>
    /// <param name="alarms">Days before the day on which alarms sound, each at least 1.</param>
    public static byte[] Write(IEnumerable<CalendarDay> days, LocalDate asked, IReadOnlyList<int> alarms)
    {
        ArgumentNullException.ThrowIfNull(days);
        ArgumentNullException.ThrowIfNull(alarms);
        if (alarms.Any(days => days < 1))
            throw new ArgumentOutOfRangeException(nameof(alarms), "An alarm sounds at least one day before.");
        var text = new StringBuilder();
        Line(text, "BEGIN:VCALENDAR");
        Line(text, "VERSION:2.0");
        Line(text, "PRODID:-//Stringline//Days to act//EN");
        Line(text, "CALSCALE:GREGORIAN");
        Line(text, "METHOD:PUBLISH");
        foreach (var day in days)
            Event(text, day, asked, alarms);
        Line(text, "END:VCALENDAR");
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Event(StringBuilder text, CalendarDay day, LocalDate asked, IReadOnlyList<int> alarms)
    {
        var isPast = day.Day < asked;
        var shown = isPast ? asked : day.Day;
        var summary = $"{day.Do}: {day.Name}";
        Line(text, "BEGIN:VEVENT");
        Line(text, "UID:" + Uid(day));
        Line(text, $"DTSTAMP:{Digits(asked)}T120000Z");
        Line(text, "SEQUENCE:" + day.Revision.ToString(CultureInfo.InvariantCulture));
        Line(text, "DTSTART;VALUE=DATE:" + Digits(shown));
        Line(text, "DTEND;VALUE=DATE:" + Digits(shown.PlusDays(1)));
        Line(text, "SUMMARY:" + Escaped(isPast ? "At once: " + summary : summary));
        Line(text, "DESCRIPTION:" + Escaped(Description(day, asked, isPast)));
        Line(text, "TRANSP:TRANSPARENT");
        if (day.Remedy is { } remedy)
            Line(text, "CATEGORIES:" + Escaped(remedy));
        if (day.County is { Length: > 0 } county)
            Line(text, "LOCATION:" + Escaped(county + " County"));
        foreach (var before in alarms)
        {
            if (shown.PlusDays(-before) < asked)
                continue;
            Line(text, "BEGIN:VALARM");
            Line(text, "ACTION:DISPLAY");
            Line(text, "DESCRIPTION:" + Escaped(summary));
            Line(text, "TRIGGER:-P" + (before > 1 ? (before - 1).ToString(CultureInfo.InvariantCulture) + "D" : "")
                + string.Create(CultureInfo.InvariantCulture, $"T{HoursFromNineToMidnight}H"));
            Line(text, "END:VALARM");
        }

        Line(text, "END:VEVENT");
    }

    private static string Description(CalendarDay day, LocalDate asked, bool isPast)
    {
        var lines = new List<string> { $"{day.Do} by {LawText.IsoDay(day.Day)}." };
        if (isPast)
            lines.Add(day.Outlook ?? "That day is past. What can still be had goes with time: act at once.");
        if (day.Stakes is { Length: > 0 } stakes)
            lines.Add($"Money: {stakes}.");
        if (day.Reading is { Length: > 0 } reading)
            lines.Add($"The day is set by the reading: {reading}.");
        if (day.Section is { Length: > 0 } section)
            lines.Add(section);
        lines.Add($"Job {day.Job}. As known on {LawText.IsoDay(asked)}; a new fact can make the day earlier.");
        lines.Add(Assessment.Caution);
        return string.Join('\n', lines);
    }

    private static string Uid(CalendarDay day) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{day.Job}\n{day.Finding}")).AsSpan(0, 16))
        + "@stringline.invalid";

    private static string Digits(LocalDate day) => LawText.IsoDay(day).Replace("-", "", StringComparison.Ordinal);

    // RFC 5545 § 3.3.11; what no line may hold, and what is no character, is left out.
    private static string Escaped(string value)
    {
        var escaped = new StringBuilder(value.Length);
        foreach (var c in Signs.ForXml(value).ReplaceLineEndings("\n"))
        {
            escaped.Append(c switch
            {
                '\\' => "\\\\",
                ';' => "\\;",
                ',' => "\\,",
                '\n' => "\\n",
                _ when char.IsControl(c) => "",
                _ => c.ToString(),
            });
        }

        return escaped.ToString();
    }

    private static void Line(StringBuilder text, string line)
    {
        var used = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (used + rune.Utf8SequenceLength > LongestLine)
            {
                text.Append("\r\n ");
                used = 1;
            }

            text.Append(rune.ToString());
            used += rune.Utf8SequenceLength;
        }

        text.Append("\r\n");
    }
}
