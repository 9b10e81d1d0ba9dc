using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests;

/// <summary>What happened on a day that nobody knows does not vanish: its day is asked for.</summary>
public sealed class UnknownDayProperties
{
    private static readonly Gen<(JobFile Job, LocalDate AsOf)> Asked = Gen.Frequency(
        (1, Gen.Select(JobFileGen.Job, JobFileGen.Day)), (1, RemedyJobGen.Asked),
            (2, Gen.Select(LienJobGen.HalfAYear.AnyWork, LienJobGen.HalfAYear.AsOf)));

    [Fact]
    public void The_day_of_an_entry_of_unknown_day_is_asked_for()
    {
        var silent = new HashSet<string>(StringComparer.Ordinal);
        Gen.Select(Asked, Gen.Int[0, 99]).Sample(
            (asked, place) =>
            {
                if (asked.Job.Entries.Count == 0)
                    return;
                var at = place % asked.Job.Entries.Count;
                var entry = asked.Job.Entries[at];
                if (entry.Supersedes is not null || asked.Job.Entries.Any(e => entry.Id is not null && e.Supersedes == entry.Id)
                    || entry is Withdrawn || entry.Learned > asked.AsOf)
                    return;
                var unknown = entry is Furnished work
                    ? work with { On = new DayFact.Unknown(), Until = new DayFact.Unknown() } : entry with { On = new DayFact.Unknown() };
                var job = asked.Job with { Entries = [.. asked.Job.Entries.Select((e, i) => i == at ? unknown : e)] };
                foreach (var finding in Assessment.Of(job, asked.AsOf, OpenDays.Statutory).Findings)
                {
                    if (finding.Questions.Any(q => ReferenceEquals(q.Corrects, unknown)))
                        return;
                }

                lock (silent)
                    silent.Add($"{unknown.GetType().Name} {asked.Job.Work.Kind}");
            },
            iter: Times.AtMost(20_000));
        Assert.Empty(silent.Order(StringComparer.Ordinal));
    }
}
