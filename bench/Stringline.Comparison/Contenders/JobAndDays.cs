using Stringline.Comparison.Jobs;

namespace Stringline.Comparison.Contenders;

/// <summary>A job and the answers that the rules of NRules write beside it.</summary>
public sealed class JobAndDays(PlainJob job)
{
    public PlainJob Job { get; } = job;

    public int NoticeBy { get; set; }

    public int ReachesBackTo { get; set; }

    public int ClaimFrom { get; set; }

    public int ClaimBy { get; set; }

    public int SueBy { get; set; }

    public int LisPendensBy { get; set; }

    public SixDays Days => new(NoticeBy, ReachesBackTo, ClaimFrom, ClaimBy, SueBy, LisPendensBy);

    /// <summary>Whether the owner's notice of completion took effect against the claimant (Civ. Code §§ 8182(a), 8190).</summary>
    public bool Shortened =>
        Job.OwnerRecorded >= Job.Completed && Job.OwnerRecorded <= Job.Completed + 15
        && Job.CopyMailed > 0 && Job.CopyMailed <= Job.OwnerRecorded + 10;
}
