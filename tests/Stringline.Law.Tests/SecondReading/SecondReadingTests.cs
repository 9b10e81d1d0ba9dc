using System.Collections.Concurrent;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// Every remedy is read a second time, from the conditions that the statutes name and from nothing else, on 100,000 drawn job files: where
/// the library says kept, done, open or lost, and on the day to act by, the two readers agree on every one.
/// </summary>
[Slow(Slow.Lasting)]
public sealed class SecondReadingTests
{
    private static readonly int Files = Times.AtMost(100_000);

    [Fact]
    public void The_plain_list_of_holidays_is_that_of_the_library()
    {
        for (var day = new LocalDate(PlainCalendar.FirstYear, 1, 1); day.Year <= PlainCalendar.LastYear; day = day.PlusDays(1))
        {
            Assert.True(PlainCalendar.IsCourtHoliday(day) == OpenDays.Statutory.IsCourtHoliday(day), $"{day} courts");

            // A holiday that falls on a Saturday is closed as a Saturday: only weekdays are written out.
            if (day.DayOfWeek != IsoDayOfWeek.Saturday)
                Assert.True(PlainCalendar.IsStateHoliday(day) == OpenDays.Statutory.IsStateHoliday(day), $"{day} state");
        }
    }

    [Fact]
    public void Two_readers_agree_on_every_remedy_of_a_hundred_thousand_job_files()
    {
        // The files are those of the seeds 0, 1, 2 and so on, so that the answer is the same at every run.
        var parted = new ConcurrentBag<Disagreement>();
        var unread = new ConcurrentDictionary<string, ulong>();
        var gaveUp = 0;
        Parallel.For(0, Files, i =>
        {
            var seed = (ulong)i;
            var (job, asOf) = RemedyJobGen.Of(seed);
            Comparison.Of(seed, job, asOf, parted.Add, (_, reading) => Interlocked.Add(ref gaveUp, reading.GaveUp ? 1 : 0),
                id => unread.TryAdd(id, seed));
        });
        Assert.True(unread.IsEmpty, "Neither read nor named as not read: " + string.Join(", ", unread.Keys.Order(StringComparer.Ordinal)));
        Assert.True(gaveUp <= Files / 1000, $"Too many worlds: {gaveUp}");
        Assert.True(parted.IsEmpty, $"{parted.Count}\n" + string.Join("\n\n",
            parted.GroupBy(d => (d.Id, d.Kind, d.Library[..4])).Select(g => g.MinBy(d => d.Seed)!).OrderBy(d => d.Seed).Take(5)
                .Select(Explained)));
    }

    private static string Explained(Disagreement parted)
    {
        var (job, asOf) = RemedyJobGen.Of(parted.Seed);
        var small = Shrunk.Of(job, asOf, parted);
        var worlds = SecondReader.Of(parted.Id, job.Work.Kind) is null ? "" : Comparison.Worlds(small, asOf, parted.Id);
        return $"{parted.Id}, {parted.Kind}: the library "
            + $"says {parted.Library}, the checker {parted.Checker}; as of {asOf}, seed {parted.Seed}\n{Told.Of(small)}{worlds}";
    }
}
