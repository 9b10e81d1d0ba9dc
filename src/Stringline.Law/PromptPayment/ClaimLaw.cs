using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// Which procedure governs a claim against a public entity: Pub. Contract Code § 9204, while it is in force, and the older one of
/// §§ 20104-20104.6 toward local agencies, which is what is left without it. Chosen by the day of the contract and of the claim, not by the
/// day of asking.
/// </summary>
internal sealed class ClaimLaw
{
    private const string New = "Pub. Contract Code § 9204";

    private ClaimLaw(Verdict newOne, bool oldOne, NumberRow newDays, NumberRow oldDays, IReadOnlyList<Reason> why,
        IReadOnlyList<Question> questions)
    {
        IsNew = newOne;
        IsOld = oldOne;
        NewDays = newDays;
        OldDays = oldDays;
        Why = why;
        Questions = questions;
    }

    /// <summary>Whether § 9204 governs it.</summary>
    public Verdict IsNew { get; }

    /// <summary>Whether §§ 20104 ff. do, where § 9204 does not.</summary>
    public bool IsOld { get; }

    /// <summary>How soon the entity answers under § 9204.</summary>
    public NumberRow NewDays { get; }

    /// <summary>How soon the agency answers under §§ 20104 ff.</summary>
    public NumberRow OldDays { get; }

    /// <summary>Whether, under §§ 20104 ff., the claim is a greater one.</summary>
    public bool IsGreater => OldDays.Id == Number.AgencysStatementOnGreater;

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
        var isOld = OfLocalAgency(facts, on, amount);
        var day = on ?? facts.AsOf;
        var (small, great) = (facts.Numbers.On(Number.AgencysStatement, day), facts.Numbers.On(Number.AgencysStatementOnGreater, day));
        var greater = facts.Numbers.On(Number.GreaterClaim, day).Value;
        if (isOld && isNew != Verdict.Yes)
        {
            why.Add(Reason.Of("Pub. Contract Code § 20104.2",
                $"Toward a local agency, for a claim of {facts.Numbers.On(Number.GreatestClaim, day).Value} or less, the older procedure "
                    + $"is left: it answers within {small} of receipt a claim below {greater}, and within {great} a greater one."));
        }

        if (facts.Job.Work.Body is null)
            questions.Add(new Question($"Which public body contracted for the work? Some state departments have a procedure of their "
                + $"own.{HeadField.WorkBody:aside}"));
        return new ClaimLaw(isNew, isOld, facts.Numbers.On(Number.EntitysStatement, day), amount > greater ? great : small, why, questions);
    }

    [Rule("Pub. Contract Code § 9204(c)(3)")]
    [Rule("Pub. Contract Code § 9204(g)")]
    [Rule("Pub. Contract Code § 9204(i)")]
    private static Verdict InForce(FactsAsOf facts, LocalDate? on, List<Reason> why, List<Question> questions)
    {
        var made = facts.Job.Claimant.Role == ClaimantRole.DirectContractor ? facts.Job.Contract.On : facts.Job.Work.DirectContract?.On;
        var since = facts.Numbers.Begins(Number.EntitysStatement);
        if (made < since)
        {
            why.Add(Reason.NotApplied("Pub. Contract Code § 9204(g)",
                $"The section applies to contracts made on or after {since}; this one was made on {made!.Value}."));
            return Verdict.No;
        }

        if (facts.Job.Work.Body is PublicBody.Transportation or PublicBody.GeneralServices)
        {
            why.Add(Reason.NotApplied("Pub. Contract Code § 9204(c)(3)", $"The Departments of Transportation and of General Services are "
                + $"no public entity within the section; the claim follows the contract and the State's arbitration "
                + $"(Pub. Contract Code §§ 10240 ff.)."));
            return Verdict.No;
        }

        var verdict = Verdict.Yes;
        if (made is null)
        {
            verdict = Verdict.Open;
            questions.Add(facts.Job.Claimant.Role == ClaimantRole.DirectContractor
                ? new Question($"On which day was the contract made? The section applies to contracts "
                    + $"since {LawText.LongDay(since)}.{HeadField.ContractOn:aside}")
                : new Question($"On which day was the direct contract made? The section applies to contracts "
                    + $"since {LawText.LongDay(since)}.{HeadField.WorkDirectContractOn:aside}"));
        }

        if (facts.Job.Work.Body == PublicBody.State)
        {
            verdict = Verdict.Open;
            why.Add(Reason.Of("Pub. Contract Code § 9204(c)(3)", $"The Departments of Water Resources, of Parks and Recreation and of "
                + $"Corrections, the Military Department and the High-Speed Rail Authority are outside the section."));
        }

        if (facts.Numbers.Ends(Number.EntitysStatement) is not { } until)
            return verdict;
        if (on > until)
        {
            why.Add(Reason.Of("Pub. Contract Code § 9204(i)", $"The claim is of {on!.Value}, and the section as read ends "
                + $"with {until}; whether a bill of 2026 (SB 339, SB 33) removed that end date was not known when this was written: "
                + $"check."));
            return Verdict.Open;
        }

        if (facts.AsOf > until)
            why.Add(Reason.Of("Pub. Contract Code § 9204(i)", $"The section as read ended with {until}, unless a bill of 2026 (SB 339, SB "
                + $"33) removed that end date: check. A claim made before keeps its argument that the section governs it."));
        else
            why.Add(Reason.Of("Pub. Contract Code § 9204(i)", $"The section as read ends with {until}, unless a bill of 2026 (SB 339, SB "
                + $"33) removes that end date: do what it calls for before then."));
        return verdict;
    }

    [Rule("Pub. Contract Code § 20104(a)")]
    private static bool OfLocalAgency(FactsAsOf facts, LocalDate? on, decimal? amount) => facts.Job.Work.Body switch
    {
        PublicBody.Local => !(amount > facts.Numbers.On(Number.GreatestClaim, on ?? facts.AsOf).Value),
        null => facts.Job.Work.StateContractAct != true && !(amount > facts.Numbers.On(Number.GreatestClaim, on ?? facts.AsOf).Value),
        PublicBody.State or PublicBody.GeneralServices or PublicBody.Transportation or PublicBody.StateUniversity
            or PublicBody.UniversityOrCourt => false,
        _ => throw new InvalidOperationException($"No such body: {facts.Job.Work.Body}."),
    };

    /// <summary>Whether an act under the section on or by a day is beyond its end.</summary>
    public static bool IsAfterItsEnd(FactsAsOf facts, LocalDate day) => day > facts.Numbers.Ends(Number.EntitysStatement);

    /// <summary>The section that answers for the statement.</summary>
    public string Section => IsNew == Verdict.No ? "Pub. Contract Code § 20104.2" : New;
}
