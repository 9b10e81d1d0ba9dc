using Stringline.Comparison.Jobs;
using Stringline.Law.ClaimOfLien;
using Stringline.Law.Completion;
using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Counting;
using Stringline.Law.Reasoning;

namespace Stringline.Comparison.Contenders;

/// <summary>
/// Only those rules of the law library that the six days need, asked one by one through its public methods, with their readings and
/// standings.
/// </summary>
internal sealed class OwnDayRules : Contender
{
    public override string Name => "Stringline, only the rules of the six days";

    public override void Answer(IReadOnlyList<ComparedJob> jobs, SixDays[] answers)
    {
        var calendar = OpenDays.Statutory;
        for (var i = 0; i < jobs.Count; i++)
        {
            var facts = new FactsAsOf(jobs[i].File, jobs[i].AsOf);
            var reach = PreliminaryNoticeDays.ReachOf(facts, calendar);
            var ownersNotices = OwnersNotice.Of(facts, calendar);
            var completion = CompletionDay.Of(facts, ownersNotices);
            var firstDay = FirstDay.Of(facts, completion, ownersNotices);
            var lastDay = LastDay.Of(facts, completion, ownersNotices, calendar);
            var suits = ClaimSuits.Of(facts, RecordedClaim.ThatCounts(facts, firstDay, lastDay), firstDay, lastDay, calendar);
            answers[i] = new SixDays(
                Day(PreliminaryNoticeDays.LastDay(facts, reach, calendar).Deadline.ActBy),
                FullAssessment.ReachesBackTo(PreliminaryNoticeDays.ReachesBackTo(facts, reach), jobs[i].Plain),
                Day(firstDay.Day is { IsExact: true } first ? first.Earliest : null),
                Day(lastDay.Readings.Count == 0 ? null : Deadline.ActByOf(lastDay.Readings, calendar)),
                Day(ActionDays.Of(facts, suits, null, calendar).Deadline.ActBy),
                Day(AfterFiling.Findings(facts, suits, calendar).First().ActBy));
        }
    }

    private static int Day(LocalDate? day) => day is { } known ? Serial.Of(known) : 0;
}
