using System.Text;
using Ical.Net.CalendarComponents;
using Stringline.Tables.Calendar;
using Stringline.Law;

namespace Stringline.Tables.Tests;

/// <summary>What was written by us is read back by another reader, the library Ical.Net; the limits are those of RFC 5545.</summary>
public sealed class CalendarTests
{
    private static readonly LocalDate Asked = new(2026, 6, 1);

    private static readonly CalendarDay Day = new("2026-114; B, \\x", "claim-of-lien.last-day", new LocalDate(2026, 6, 26),
        "Record the claim of lien", "Peña Court; 2, with a name that is long enough to be folded over the line, Muñoz & Söhne 木", 7)
    {
        Stakes = "owed $12,345.67, all of it at stake",
        Remedy = "Claim of lien",
        County = "Yolo",
        Section = "Civ. Code § 8414",
        Reading = "completion by occupation",
    };

    private static CalendarEvent Read(CalendarDay day, params int[] alarms) =>
        Assert.Single(Ical.Net.Calendar.Load(Encoding.UTF8.GetString(CalendarText.Write([day], Asked, alarms)))!.Events);

    [Fact]
    public void Another_reader_reads_what_was_written()
    {
        var read = Read(Day, 14, 3, 1);
        Assert.True(read.IsAllDay);
        Assert.Equal(new DateOnly(2026, 6, 26), read.Start!.Date);
        Assert.Equal(new DateOnly(2026, 6, 27), read.End!.Date);
        Assert.Equal("Record the claim of lien: " + Day.Name, read.Summary);
        Assert.Contains("Money: owed $12,345.67, all of it at stake.", read.Description, StringComparison.Ordinal);
        Assert.Contains(Day.Job, read.Description, StringComparison.Ordinal);
        Assert.Contains(Assessment.Caution, read.Description, StringComparison.Ordinal);
        Assert.Equal(7, read.Sequence);
        Assert.Equal(new DateTime(2026, 6, 1, 12, 0, 0, DateTimeKind.Utc), read.DtStamp!.AsUtc);
        Assert.Equal(3, read.Alarms.Count);
        Assert.Equal(
            [new DateTime(2026, 6, 12, 9, 0, 0), new DateTime(2026, 6, 23, 9, 0, 0), new DateTime(2026, 6, 25, 9, 0, 0)],
            read.Alarms.Select(alarm => new DateTime(2026, 6, 26) + alarm.Trigger!.Duration!.Value.ToTimeSpanUnspecified()));
    }

    [Fact]
    public void The_same_job_and_finding_keep_their_uid_and_others_do_not_share_it()
    {
        var uid = Read(Day).Uid;
        Assert.Equal(uid, Read(Day with { Day = new LocalDate(2026, 7, 1), Name = "Other", Revision = 9 }).Uid);
        Assert.NotEqual(uid, Read(Day with { Finding = "enforcement.last-day" }).Uid);
        Assert.NotEqual(uid, Read(Day with { Job = "2026-115" }).Uid);
    }

    [Fact]
    public void A_day_that_is_past_is_shown_on_the_asked_day_without_an_alarm()
    {
        var read = Read(Day with { Day = new LocalDate(2026, 5, 29) }, 3);
        Assert.Equal(new DateOnly(2026, 6, 1), read.Start!.Date);
        Assert.StartsWith("At once: ", read.Summary, StringComparison.Ordinal);
        Assert.Contains("by 2026-05-29", read.Description, StringComparison.Ordinal);
        Assert.Contains("act at once", read.Description, StringComparison.Ordinal);
        var told = Read(Day with { Day = new LocalDate(2026, 5, 29), Outlook =
            "Planned day past. The law’s last day is today, 2026-06-01 (Mon)." });
        Assert.Contains("The law’s last day is today", told.Description, StringComparison.Ordinal);
        Assert.DoesNotContain("act at once", told.Description, StringComparison.Ordinal);
        Assert.Empty(read.Alarms);
    }

    [Fact]
    public void No_line_is_longer_than_75_octets_and_every_line_ends_as_the_standard_says()
    {
        // RFC 5545 § 3.1.
        var bytes = CalendarText.Write([Day, Day with { Job = "x" }], Asked, [14, 3]);
        var text = Encoding.UTF8.GetString(bytes);
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.Equal(bytes, CalendarText.Write([Day, Day with { Job = "x" }], Asked, [14, 3]));
    }
}
