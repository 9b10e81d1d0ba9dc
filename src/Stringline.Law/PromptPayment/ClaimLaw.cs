using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// Which procedure governs a claim against a public entity: Pub. Contract Code § 9204, while it is in force, and the older one of §§ 20104-20104.6
/// toward local agencies, which is what is left without it. Chosen by the day of the contract and of the claim, not by the day of asking.
/// </summary>
internal sealed class ClaimLaw
{
    /// <summary>Days in which the entity answers a claim.</summary>
    public const int StatementDays = ClaimTimes.EntitysDays;

    /// <summary>Days in which a local agency answers a greater claim under the older procedure.</summary>
    public const int StatementDaysOfGreaterClaim = 60;

    /// <summary>Days in which the claimant demands a conference under the older procedure.</summary>
    public const int ConferenceDays = 15;

    private const string New = "Pub. Contract Code § 9204";
    private const decimal GreaterClaim = 50_000m;
    private const decimal GreatestClaim = 375_000m;

    private static readonly LocalDate Since = new(2017, 1, 1);
    private static readonly LocalDate Until = new(2026, 12, 31);

    private ClaimLaw(Verdict newOne, bool oldOne, int oldDays, IReadOnlyList<Reason> why, IReadOnlyList<Question> questions)
    {
        IsNew = newOne;
        IsOld = oldOne;
        OldDays = oldDays;
        Why = why;
        Questions = questions;
    }

    /// <summary>Whether § 9204 governs it.</summary>
    public Verdict IsNew { get; }

    /// <summary>Whether §§ 20104 ff. do, where § 9204 does not.</summary>
    public bool IsOld { get; }

    /// <summary>Days in which the agency answers under §§ 20104 ff.</summary>
    public int OldDays { get; }

    /// <summary>Why.</summary>
    public IReadOnlyList<Reason> Why { get; }

    /// <summary>What would settle it.</summary>
    public IReadOnlyList<Question> Questions { get; }

    /// <summary>The law of a claim.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="on">The day of the claim: of its receipt, else of its sending; null where nothing was sent.</param>
    /// <param name="amount">Dollars and cents claimed; null where the file does not say.</param>
    public static ClaimLaw Of(FactsAsOf facts, LocalDate? on, decimal? amount)
    {
        var why = new List<Reason>();
        var questions = new List<Question>();
        var isNew = InForce(facts, on, why, questions);
        var isOld = OfLocalAgency(facts, amount);
        if (isOld && isNew != Verdict.Yes)
            why.Add(Reason.Of("Pub. Contract Code § 20104.2", $"Toward a local agency, for a claim of {GreatestClaim} or less, the older procedure is left: it answers within {StatementDays} days of receipt a claim below {GreaterClaim}, and within {StatementDaysOfGreaterClaim} days a greater one."));
        if (facts.Job.Work.Body is null)
            questions.Add(new Question("Which public body contracted for the work? Some state departments have a procedure of their own. (work.body)"));
        return new ClaimLaw(isNew, isOld, amount > GreaterClaim ? StatementDaysOfGreaterClaim : StatementDays, why, questions);
    }

    [Rule("Pub. Contract Code § 9204(c)(3)", Since = "2017-01-01", Until = "2026-12-31")]
    [Rule("Pub. Contract Code § 9204(g)", Since = "2017-01-01", Until = "2026-12-31")]
    [Rule("Pub. Contract Code § 9204(i)", Since = "2020-01-01")]
    private static Verdict InForce(FactsAsOf facts, LocalDate? on, List<Reason> why, List<Question> questions)
    {
        var made = facts.Job.Claimant.Role == ClaimantRole.DirectContractor ? facts.Job.Contract.On : facts.Job.Work.DirectContract?.On;
        if (made < Since)
        {
            why.Add(Reason.NotApplied("Pub. Contract Code § 9204(g)", $"The section applies to contracts made on or after {Since}; this one was made on {made!.Value}."));
            return Verdict.No;
        }

        if (facts.Job.Work.Body is PublicBody.Transportation or PublicBody.GeneralServices)
        {
            why.Add(Reason.NotApplied("Pub. Contract Code § 9204(c)(3)", $"The Departments of Transportation and of General Services are no public entity within the section; the claim follows the contract and the State's arbitration (Pub. Contract Code §§ 10240 ff.)."));
            return Verdict.No;
        }

        var verdict = Verdict.Yes;
        if (made is null)
        {
            verdict = Verdict.Open;
            questions.Add(facts.Job.Claimant.Role == ClaimantRole.DirectContractor
                ? new Question("On which day was the contract made? The section applies to contracts since January 1, 2017. (contract.on)")
                : new Question("On which day was the direct contract made? The section applies to contracts since January 1, 2017. (work.directContract.on)"));
        }

        if (facts.Job.Work.Body == PublicBody.State)
        {
            verdict = Verdict.Open;
            why.Add(Reason.Of("Pub. Contract Code § 9204(c)(3)", $"The Departments of Water Resources, of Parks and Recreation and of Corrections, the Military Department and the High-Speed Rail Authority are outside the section."));
        }

        if (on > Until)
        {
            why.Add(Reason.Of("Pub. Contract Code § 9204(i)", $"The claim is of {on!.Value}, and the section as read ends with {Until}; whether a bill of 2026 (SB 339, SB 33) removed that end date was not known when this was written: check."));
            return Verdict.Open;
        }

        if (facts.AsOf > Until)
            why.Add(Reason.Of("Pub. Contract Code § 9204(i)", $"The section as read ended with {Until}, unless a bill of 2026 (SB 339, SB 33) removed that end date: check. A claim made before keeps its argument that the section governs it."));
        else
            why.Add(Reason.Of("Pub. Contract Code § 9204(i)", $"The section as read ends with {Until}, unless a bill of 2026 (SB 339, SB 33) removes that end date: do what it calls for before then."));
        return verdict;
    }

    [Rule("Pub. Contract Code § 20104(a)", Since = "1991-01-01")]
    private static bool OfLocalAgency(FactsAsOf facts, decimal? amount) => facts.Job.Work.Body switch
    {
        PublicBody.Local => !(amount > GreatestClaim),
        null => facts.Job.Work.StateContractAct != true && !(amount > GreatestClaim),
        PublicBody.State or PublicBody.GeneralServices or PublicBody.Transportation or PublicBody.StateUniversity or PublicBody.UniversityOrCourt => false,
        _ => throw new InvalidOperationException($"No such body: {facts.Job.Work.Body}."),
    };

    /// <summary>Whether an act under the section on or by a day is beyond its end.</summary>
    public static bool IsAfterItsEnd(LocalDate day) => day > Until;

    /// <summary>The section that answers for the statement.</summary>
    public string Section => IsNew == Verdict.No ? "Pub. Contract Code § 20104.2" : New;
}
