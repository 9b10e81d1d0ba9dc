using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>
/// The claimant's answer to an affidavit for summary release: the counteraffidavit to the entity, its copy to the direct contractor, and
/// the proof of that (Civ. Code § 9406(a)).
/// </summary>
internal sealed class CounterPapers
{
    private const string Section = "Civ. Code § 9406(a)";

    private CounterPapers(DaySpan? given, DaySpan? atBest, IReadOnlyList<Reason> why, IReadOnlyList<Question> questions)
    {
        Given = given;
        AtBest = atBest;
        Why = why;
        Questions = questions;
    }

    /// <summary>The day on which all of it was complete, as far as the file says; null where a part is missing.</summary>
    public DaySpan? Given { get; }

    /// <summary>
    /// The day on which all of it was complete, if what the file does not say is answered for the claimant; null where a part is missing
    /// even so.
    /// </summary>
    public DaySpan? AtBest { get; }

    /// <summary>Whether something that the file does not say decides.</summary>
    public bool IsAsked => Questions.Count > 0;

    /// <summary>The reasons.</summary>
    public IReadOnlyList<Reason> Why { get; }

    /// <summary>What would settle it.</summary>
    public IReadOnlyList<Question> Questions { get; }

    /// <summary>What was served on or after the day on which the affidavit came.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="from">The day on which the affidavit came.</param>
    /// <param name="by">The last day to answer, on the latest reading.</param>
    [Rule("Civ. Code § 9406(a)")]
    public static CounterPapers Of(FactsAsOf facts, LocalDate from, LocalDate by)
    {
        Part? entity = null, copy = null;
        var why = new List<Reason>();
        var questions = new List<Question>();
        foreach (var paper in facts.All<CounteraffidavitServed>())
        {
            if (DaySpan.Of(paper.On) is not { } on || on.Latest < from)
                continue;
            if (paper.Manner is { } manner && !Giving.IsGood(manner))
            {
                why.Add(Reason.NotApplied(Section, $"The paper served {on} went in a manner that is none of Civ. Code §§ 8106 and 8110, "
                    + $"and does not count.", paper));
                continue;
            }

            var complete = ServedPapers.CompleteOn(facts, on, paper.Manner);
            why.Add(Reason.Of(Section, $"Counteraffidavit served, complete {complete}.", [paper]));
            if (Reaches(facts, paper, PartyCapacity.PublicEntity))
                entity = Part.Best(entity, new Part(complete, paper, paper.Proof), by);
            if (Reaches(facts, paper, PartyCapacity.DirectContractor))
                copy = Part.Best(copy, new Part(complete, paper, null), by);
        }

        if (entity is not null && copy is null)
            why.Add(Reason.Of(Section, $"The file shows no copy to the direct contractor; without it and its proof the paper to the entity "
                + $"does not hold the money."));
        if (copy is not null && entity is null)
            why.Add(Reason.Of(Section, $"The file shows no counteraffidavit served on the public entity."));
        if (entity is { Proof: false })
            why.Add(Reason.Of(Section, $"The paper to the entity went without proof of service of the copy; without it the money is not "
                + $"held."));
        if (entity is not { Proof: not false } || copy is null)
            return new CounterPapers(null, null, why, questions);

        var day = DaySpan.Later(entity.On, copy.On);
        if (entity.Proof is null)
        {
            why.Add(Reason.Of(Section, $"Lost for the money withheld unless the proof of service went with it."));
            questions.Add(
                new Question($"Did the proof of service of the copy on the direct contractor go with the "
                    + $"counteraffidavit?{PublicKinds.CounteraffidavitServed.At("proof"):aside}") { Corrects = entity.Paper });
        }

        foreach (var paper in entity.Paper == copy.Paper ? (CounteraffidavitServed[])[entity.Paper] : [entity.Paper, copy.Paper])
        {
            if (paper.Manner is null)
                questions.Add(
                    new Question($"How was the counteraffidavit served? First-class mail and e-mail are no manner of "
                        + $"it.{PublicKinds.CounteraffidavitServed.At("manner"):aside}") { Corrects = paper });
        }

        return new CounterPapers(entity.Proof == true ? day : null, day, why, questions);
    }

    private static bool Reaches(FactsAsOf facts, CounteraffidavitServed paper, PartyCapacity capacity)
    {
        foreach (var id in paper.To)
        {
            if (facts.Job.Party(id)?.Capacity == capacity)
                return true;
        }

        return false;
    }

    // What reached one of the two. One in time serves better than one too late, one with its proof better than one without, then the one
    // first complete.
    private sealed record Part(DaySpan On, CounteraffidavitServed Paper, bool? Proof)
    {
        public static Part Best(Part? so, Part next, LocalDate by) => so is null || next.IsBetterThan(so, by) ? next : so;

        private bool IsBetterThan(Part other, LocalDate by)
        {
            if (IsLate(by) != other.IsLate(by))
                return other.IsLate(by);
            return Proof != other.Proof ? Proof == true || other.Proof == false : On.Latest < other.On.Latest;
        }

        private bool IsLate(LocalDate by) => On.Earliest > by;
    }
}
