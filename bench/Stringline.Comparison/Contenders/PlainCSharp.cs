using Stringline.Comparison.Jobs;

namespace Stringline.Comparison.Contenders;

/// <summary>The six rules written out by hand over day numbers: what the arithmetic alone costs.</summary>
internal sealed class PlainCSharp : Contender
{
    public override string Name => "the six rules in plain C#, day numbers";

    public override void Answer(IReadOnlyList<ComparedJob> jobs, SixDays[] answers)
    {
        for (var i = 0; i < jobs.Count; i++)
        {
            var job = jobs[i].Plain;
            var shortened = job.OwnerRecorded >= job.Completed && job.OwnerRecorded <= job.Completed + 15
                && job.CopyMailed > 0 && job.CopyMailed <= job.OwnerRecorded + 10;
            answers[i] = new SixDays(
                ClosedDays.OpenOnOrBefore(job.FirstFurnished + 20),
                job.NoticeGiven <= job.FirstFurnished + 20 ? job.FirstFurnished : job.NoticeGiven - 20,
                job.Ended + 1,
                ClosedDays.OpenOnOrBefore(shortened
                    ? Math.Min(job.Completed + 90, job.OwnerRecorded + (job.Direct ? 60 : 30))
                    : job.Completed + 90),
                ClosedDays.OpenOnOrBefore(job.ClaimRecorded + 90),
                ClosedDays.OpenOnOrBefore(job.ActionFiled + 20));
        }
    }
}
