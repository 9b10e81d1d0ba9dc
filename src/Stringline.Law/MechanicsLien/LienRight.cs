using Stringline.Law.Facts;
using Stringline.Law.ClaimOfLien;
using Stringline.Law.Enforcement;
using Stringline.Law.LienableAmount;
using Stringline.Law.Licensing;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.MechanicsLien;

/// <summary>Whether the claimant has, on this work, a right to a mechanics lien at all, and what has become of it.</summary>
public static class LienRight
{
    private const string Right = "Civ. Code § 8400";

    /// <summary>What the right on private work stands on.</summary>
    /// <param name="License">Whether the claimant was licensed.</param>
    /// <param name="Notice">The preliminary notice.</param>
    /// <param name="LastDay">The last day to record.</param>
    /// <param name="Enforcement">The last day to sue.</param>
    /// <param name="Authorized">Whether one in charge ordered the work; null where nobody doubts it.</param>
    /// <param name="Estimate">Whether the notice's estimate is good; null where nobody doubts it.</param>
    internal readonly record struct Legs(
        Outcome License, Outcome Notice, Outcome LastDay, Outcome Enforcement, Outcome? Authorized, Outcome? Estimate);

    /// <summary>The finding <c>lien-right</c>.</summary>
    internal static Finding Finding(Outcome right) => right.Finding("lien-right", "Mechanics lien");

    /// <summary>That there is no lien, by the kind of work; null on private work.</summary>
    [Rule("Civ. Code § 8160")]
    [Rule("Civ. Code § 9000")]
    public static Outcome? NotOnThisWork(FactsAsOf facts) => facts.Job.Work.Kind switch
    {
        WorkKind.Private => null,
        WorkKind.Public =>
            None(Reason.Of("Civ. Code § 9000", $"The work is contracted for by a public entity: no mechanics lien attaches to it. The "
                + $"remedies are the stop payment notice and the payment bond (Civ. Code § 9100).")),
        WorkKind.Federal =>
            None(Reason.Of("40 U.S.C. § 3131", $"The work is the United States': no mechanics lien attaches to it. The remedy is the "
                + $"payment bond under 40 U.S.C. §§ 3131-3134 (from memory).")),
        _ => throw new InvalidOperationException($"No such kind of work: {facts.Job.Work.Kind}."),
    };

    private static Outcome None(Reason why) => new(Standing.Lost, new Words([why], []));

    /// <summary>The right on private work: the weakest of what the right stands on.</summary>
    [Rule("Civ. Code § 8400")]
    [Rule("Civ. Code § 8410")]
    internal static Outcome Of(FactsAsOf facts, in Legs legs)
    {
        var why = new List<Reason>
        {
            Reason.Of(Right, $"Anyone who provides work authorized for a work of improvement has a lien right, "
                + $"a {RoleWords(facts.Job.Claimant.Role)} included."),
        };
        var anew = legs.Enforcement.Standing == Standing.Lost ? TimeToRecordAnew(facts.AsOf, legs.LastDay.Deadline.Band) : null;
        var standing = anew ?? legs.LastDay.Standing;
        Stands(legs.License, LicenseGate.Title, true);
        Stands(legs.Notice, PreliminaryNoticeDays.Title, true);
        // Where a new claim may be recorded, neither the old claim's day nor its expiry decides.
        Stands(legs.LastDay, RecordedClaim.Title, anew is null);
        Stands(legs.Enforcement, ActionDays.Title, anew is null, isEnforcement: true);
        Stands(legs.Authorized, AuthorizedWork.Title, true);
        Stands(legs.Estimate, EstimateDoubt.Title, true);

        void Stands(Outcome? leg, string title, bool decides, bool isEnforcement = false)
        {
            if (leg is null)
                return;
            if (leg.Standing is Standing.Lost or Standing.InDoubt or Standing.Narrowed)
                why.Add(Reason.Of(leg.Why[0].Section, $"{title}: {leg.Standing.Word()}."));
            if (decides)
                standing = Worse(standing, leg.Standing, isEnforcement);
        }

        if (anew is not null)
            why.Add(Reason.Of("Civ. Code § 8460(a)", $"The recorded claim has expired, but not the right: a new claim may be recorded "
                + $"while the time to record runs (Coast Central Credit Union v. Superior Court (1989) 209 Cal.App.3d 703)."));

        if (BondBeforeWork.Why(facts) is { } restricted)
            why.Add(restricted);
        List<Question> questions = [];
        BondBeforeWork.AddQuestions(questions, facts);
        if (standing != Standing.Done && facts.All<ReleaseRecorded>() is { Count: > 0 } releases)
        {
            // Known to give up the claim alone, it leaves the right as it is.
            if (releases.Any(r => r.Satisfied is null))
            {
                standing = Worse(standing, Standing.InDoubt, isEnforcement: false);
                questions.Add(new Question($"Does the recorded release say that the debt, or the claim, is satisfied? Then no new claim "
                    + $"for the same work stands."));
            }

            why.Add(Reason.Of("Civ. Code § 8490", $"An earlier claim was released. The release of a claim does not end the right (Solit v. "
                + $"Tokai Bank (1999) 68 Cal.App.4th 1435), unless it says that the debt is satisfied (Santa Clara Land Title v. Nowack & "
                + $"Associates (1991) 226 Cal.App.3d 1558).", [.. releases]));
        }

        return new Outcome(standing, new Words(why, questions));
    }

    /// <summary>
    /// What is left of the time to record, as if nothing had been recorded; null where it is over. An expired claim ends with its
    /// 90 days, the right with the time to record.
    /// </summary>
    [Rule("Civ. Code § 8460(a)", Sure = Sure.Opinion)]
    private static Standing? TimeToRecordAnew(LocalDate asOf, Band? timeToRecord) => timeToRecord switch
    {
        null => Standing.Open,
        { Earliest.Day: var earliest } when asOf <= earliest => Standing.Open,
        { Latest: { } latest } when asOf > (latest.Rolled ?? latest.Day) => null,
        _ => Standing.InDoubt,
    };

    private static Standing Worse(Standing so, Standing leg, bool isEnforcement) => (so, leg) switch
    {
        (Standing.Done, _) => Standing.Done,
        (Standing.Lost, _) => Standing.Lost,
        (_, Standing.Lost) => Standing.Lost,
        (Standing.InDoubt, _) => Standing.InDoubt,
        (_, Standing.InDoubt) => Standing.InDoubt,
        (_, Standing.Narrowed) => Standing.Narrowed,
        (Standing.Narrowed, _) => Standing.Narrowed,
        // A recorded claim is kept only until the action is due.
        (Standing.Kept, Standing.Open) when isEnforcement => Standing.Open,
        _ => so,
    };

    /// <summary>
    /// What must be mended before a claim may be recorded on these facts; empty where nothing stands in the way. Each is a reason
    /// to refuse the papers.
    /// </summary>
    [Rule("Civ. Code § 8410")]
    [Rule("Civ. Code § 8416(a)(1)")]
    internal static IReadOnlyList<Reason> Obstacles(
        FactsAsOf facts, Outcome right, Outcome? notice, FirstDay? firstDay, Reach? reach, Waterfall amount)
    {
        var obstacles = new List<Reason>();
        if (right.Standing == Standing.Lost)
            obstacles.Add(Reason.Of(right.Why[0].Section, $"There is no right to a mechanics lien on these facts.", [.. right.Why]));
        // Where no lien attaches to work of this kind, nothing that a claim of lien needs is asked for.
        if (facts.Job.Work.Kind != WorkKind.Private)
            return obstacles;
        if (right.Standing == Standing.Done)
            obstacles.Add(Reason.Of("Civ. Code § 8490", $"The claim has been released.", [.. right.Why]));
        if (reach is { Kind: ReachKind.NotGiven } && notice is not null)
            obstacles.Add(Reason.Of("Civ. Code § 8200(c)", $"Preliminary notice is a condition of the lien, and the file shows none given "
                + $"to everyone it is due to. Give it first and enter it{NoticeKinds.NoticeGiven:aside}.", [.. notice.Why]));
        if (firstDay is { Day: null })
            obstacles.Add(Reason.Of("Civ. Code § 8414(a)",
                $"The file does not show what was furnished and when. Enter it{WorkKinds.Furnished:aside}."));
        else if (firstDay is { Ceased: Verdict.Open })
            obstacles.Add(Reason.Of("Civ. Code § 8414(a)", $"The file does not show that the claimant has ceased to provide work, and a "
                + $"claim recorded too early is void. Enter {WorkKinds.FurnishingEnded}.", [.. firstDay.Why]));
        if (amount.IsUnknown)
            obstacles.Add(Reason.Of("Civ. Code § 8416(a)(1)", $"The file does not say what the work done so far was worth, and a claim "
                + $"states its amount. Enter it{WorkKinds.Furnished.At("amount"):aside}."));
        else if (amount.Demand <= 0)
            obstacles.Add(Reason.Of("Civ. Code § 8416(a)(1)", $"The demand after all just credits and offsets is {amount.Demand}; a claim "
                + $"needs a positive one."));
        return obstacles;
    }

    private static string RoleWords(ClaimantRole role) => role switch
    {
        ClaimantRole.DirectContractor => "direct contractor",
        ClaimantRole.Subcontractor => "subcontractor",
        ClaimantRole.Supplier => "material supplier",
        ClaimantRole.EquipmentLessor => "equipment lessor",
        ClaimantRole.Laborer => "laborer",
        ClaimantRole.DesignProfessional => "design professional",
        _ => throw new InvalidOperationException($"No such role: {role}."),
    };
}
