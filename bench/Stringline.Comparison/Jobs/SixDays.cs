namespace Stringline.Comparison.Jobs;

/// <summary>The answers to the six rules for one job, as day numbers (<see cref="Serial"/>); 0 is no answer.</summary>
/// <param name="NoticeBy">The last open day on or before the twentieth day after first furnishing (Civ. Code § 8204(a)).</param>
/// <param name="ReachesBackTo">First furnishing where the notice was in time, else the twentieth day before the notice
/// (Civ. Code § 8204(a)).</param>
/// <param name="ClaimFrom">The day after the claimant ceased to provide work (Civ. Code §§ 8412, 8414(a)).</param>
/// <param name="ClaimBy">
/// The last open day on or before 90 days after completion, or 60 (direct contractor) or 30 days (others) after an owner's notice
/// of completion that was recorded within 15 days after completion and copied to the claimant within 10 days after that, whichever
/// comes first (Civ. Code §§ 8182(a), 8190, 8412, 8414(b)).
/// </param>
/// <param name="SueBy">The last open day on or before the ninetieth day after the claim was recorded (Civ. Code § 8460(a)).</param>
/// <param name="LisPendensBy">The last open day on or before the twentieth day after the action was filed (Civ. Code § 8461).</param>
public readonly record struct SixDays(int NoticeBy, int ReachesBackTo, int ClaimFrom, int ClaimBy, int SueBy, int LisPendensBy)
{
    public static readonly IReadOnlyList<string> Names =
        ["notice by", "reaches back to", "claim from", "claim by", "sue by", "lis pendens by"];

    public int[] ToArray() => [NoticeBy, ReachesBackTo, ClaimFrom, ClaimBy, SueBy, LisPendensBy];
}
