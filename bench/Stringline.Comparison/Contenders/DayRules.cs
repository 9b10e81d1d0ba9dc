using NRules.Fluent.Dsl;
using Stringline.Comparison.Jobs;

namespace Stringline.Comparison.Contenders;

/// <summary>
/// The six rules in the language of NRules. A rule there is a condition and an act, so the two that depend on a condition are two
/// classes each. The answers are written into the matched object, without telling the network, which is cheaper than new facts.
/// </summary>
public static class DayRules
{
    public sealed class NoticeBy : Rule
    {
        public override void Define()
        {
            JobAndDays job = null!;
            When().Match(() => job);
            Then().Do(_ => Write.NoticeBy(job));
        }
    }

    public sealed class NoticeInTime : Rule
    {
        public override void Define()
        {
            JobAndDays job = null!;
            When().Match(() => job, j => j.Job.NoticeGiven <= j.Job.FirstFurnished + 20);
            Then().Do(_ => Write.ReachesBackTo(job, job.Job.FirstFurnished));
        }
    }

    public sealed class NoticeLate : Rule
    {
        public override void Define()
        {
            JobAndDays job = null!;
            When().Match(() => job, j => j.Job.NoticeGiven > j.Job.FirstFurnished + 20);
            Then().Do(_ => Write.ReachesBackTo(job, job.Job.NoticeGiven - 20));
        }
    }

    public sealed class ClaimFrom : Rule
    {
        public override void Define()
        {
            JobAndDays job = null!;
            When().Match(() => job);
            Then().Do(_ => Write.ClaimFrom(job));
        }
    }

    public sealed class ClaimByShortened : Rule
    {
        public override void Define()
        {
            JobAndDays job = null!;
            When().Match(() => job, j => j.Shortened);
            Then().Do(_ => Write.ClaimBy(job, Math.Min(job.Job.Completed + 90, job.Job.OwnerRecorded + (job.Job.Direct ? 60 : 30))));
        }
    }

    public sealed class ClaimByUnshortened : Rule
    {
        public override void Define()
        {
            JobAndDays job = null!;
            When().Match(() => job, j => !j.Shortened);
            Then().Do(_ => Write.ClaimBy(job, job.Job.Completed + 90));
        }
    }

    public sealed class SueBy : Rule
    {
        public override void Define()
        {
            JobAndDays job = null!;
            When().Match(() => job);
            Then().Do(_ => Write.SueBy(job));
        }
    }

    public sealed class LisPendensBy : Rule
    {
        public override void Define()
        {
            JobAndDays job = null!;
            When().Match(() => job);
            Then().Do(_ => Write.LisPendensBy(job));
        }
    }

    // An act of NRules is an expression, which cannot hold an assignment.
    private static class Write
    {
        public static void NoticeBy(JobAndDays job) => job.NoticeBy = ClosedDays.OpenOnOrBefore(job.Job.FirstFurnished + 20);

        public static void ReachesBackTo(JobAndDays job, int day) => job.ReachesBackTo = day;

        public static void ClaimFrom(JobAndDays job) => job.ClaimFrom = job.Job.Ended + 1;

        public static void ClaimBy(JobAndDays job, int last) => job.ClaimBy = ClosedDays.OpenOnOrBefore(last);

        public static void SueBy(JobAndDays job) => job.SueBy = ClosedDays.OpenOnOrBefore(job.Job.ClaimRecorded + 90);

        public static void LisPendensBy(JobAndDays job) => job.LisPendensBy = ClosedDays.OpenOnOrBefore(job.Job.ActionFiled + 20);
    }
}
