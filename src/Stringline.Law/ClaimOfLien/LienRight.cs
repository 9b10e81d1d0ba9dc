using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>Whether the claimant has, on this work, a right to a mechanics lien at all, and what has become of it.</summary>
public static class LienRight
{
    private const string Right = "Civ. Code § 8400";

    /// <summary>The finding where there is no lien by the kind of work; null on private work.</summary>
    [Rule("Civ. Code § 8160")]
    [Rule("Civ. Code § 9000")]
    public static Finding? NotOnThisWork(FactsAsOf facts) => facts.Job.Work.Kind switch
    {
        WorkKind.Private => null,
        WorkKind.Public => None(Reason.Of("Civ. Code § 9000", $"The work is contracted for by a public entity: no mechanics lien attaches to it. The remedies are the stop payment notice and the payment bond (Civ. Code § 9100).")),
        WorkKind.Federal => None(Reason.Of("40 U.S.C. § 3131", $"The work is the United States': no mechanics lien attaches to it. The remedy is the payment bond under 40 U.S.C. §§ 3131-3134 (from memory).")),
        _ => throw new InvalidOperationException($"No such kind of work: {facts.Job.Work.Kind}."),
    };

    private static Finding None(Reason why) => new()
    {
        Id = "lien-right",
        Title = "Mechanics lien",
        Standing = Standing.Lost,
        Why = [why],
    };

    /// <summary>The finding <c>lien-right</c> on private work: the weakest of what the right stands on.</summary>
    [Rule("Civ. Code § 8400")]
    [Rule("Civ. Code § 8410")]
    public static Finding Finding(FactsAsOf facts, Finding licence, Finding notice, Finding lastDay, Finding enforcement)
    {
        var why = new List<Reason>
        {
            Reason.Of(Right, $"Anyone who provides work authorized for a work of improvement has a lien right, a {RoleWords(facts.Job.Claimant.Role)} included."),
        };
        var standing = lastDay.Standing;
        foreach (var leg in (Finding[])[licence, notice, lastDay, enforcement])
        {
            var worse = Worse(standing, leg.Standing, leg == enforcement);
            if (leg.Standing is Standing.Lost or Standing.InDoubt or Standing.Narrowed)
                why.Add(Reason.Of(leg.Why.Count > 0 ? leg.Why[0].Section : Right, $"{leg.Title}: {leg.Standing.Word()}."));
            standing = worse;
        }

        if (enforcement.Standing == Standing.Lost && facts.AsOf <= (lastDay.Band?.Latest?.Day ?? LocalDate.MinIsoValue))
        {
            why.Add(Reason.Of("Civ. Code § 8460(a)", $"The recorded claim has expired, but the time to record still runs: a new claim may be recorded (Coast Central Credit Union v. Superior Court (1989) 209 Cal.App.3d 703)."));
            standing = Standing.Open;
        }

        return new Finding
        {
            Id = "lien-right",
            Title = "Mechanics lien",
            Standing = standing,
            Why = why,
        };
    }

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
    public static IReadOnlyList<Reason> Obstacles(FactsAsOf facts, Finding right, Finding? notice, FirstDay? firstDay, Reach? reach, Waterfall amount)
    {
        var obstacles = new List<Reason>();
        if (right.Standing == Standing.Lost)
            obstacles.Add(Reason.Of(right.Why[0].Section, $"There is no right to a mechanics lien on these facts.", [.. right.Why]));
        if (right.Standing == Standing.Done)
            obstacles.Add(Reason.Of("Civ. Code § 8490", $"The claim has been released.", [.. right.Why]));
        if (reach is { Kind: ReachKind.NotGiven } && notice is not null)
            obstacles.Add(Reason.Of("Civ. Code § 8200(c)", $"Preliminary notice is a condition of the lien, and the file shows none given to everyone it is due to. Give it first and enter it (notice-given).", [.. notice.Why]));
        if (firstDay is { Day: null })
            obstacles.Add(Reason.Of("Civ. Code § 8414(a)", $"The file does not show what was furnished and when. Enter it (furnished)."));
        else if (firstDay is { Ceased: Verdict.Open })
            obstacles.Add(Reason.Of("Civ. Code § 8414(a)", $"The file does not show that the claimant has ceased to provide work, and a claim recorded too early is void. Enter furnishing-ended.", [.. firstDay.Why]));
        if (amount.Demand <= 0)
            obstacles.Add(Reason.Of("Civ. Code § 8416(a)(1)", $"The demand after all just credits and offsets is {amount.Demand}; a claim needs a positive one."));
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
