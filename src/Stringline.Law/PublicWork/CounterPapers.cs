using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PublicWork;

/// <summary>The claimant's answer to an affidavit for summary release: the counteraffidavit to the entity, its copy to the direct contractor, and the proof of that (Civ. Code § 9406(a)).</summary>
internal sealed class CounterPapers
{
    private const string Section = "Civ. Code § 9406(a)";

    private CounterPapers(Days? given, Days? atBest, bool isAsked, IReadOnlyList<Reason> why, IReadOnlyList<Question> questions)
    {
        Given = given;
        AtBest = atBest;
        IsAsked = isAsked;
        Why = why;
        Questions = questions;
    }

    /// <summary>The day on which all of it was complete, as far as the file says; null where a part is missing.</summary>
    public Days? Given { get; }

    /// <summary>The day on which all of it was complete, if what the file does not say is answered for the claimant; null where a part is missing even so.</summary>
    public Days? AtBest { get; }

    /// <summary>Whether something that the file does not say decides.</summary>
    public bool IsAsked { get; }

    /// <summary>The reasons.</summary>
    public IReadOnlyList<Reason> Why { get; }

    /// <summary>What would settle it.</summary>
    public IReadOnlyList<Question> Questions { get; }

    /// <summary>What was served on or after the day on which the affidavit came.</summary>
    [Rule("Civ. Code § 9406(a)")]
    public static CounterPapers Of(FactsAsOf facts, LocalDate from)
    {
        Part entity = default, copy = default;
        var why = new List<Reason>();
        var questions = new List<Question>();
        foreach (var paper in facts.All<CounteraffidavitServed>())
        {
            if (Days.Of(paper.On) is not { } on || on.Latest < from)
                continue;
            if (paper.Manner is { } manner && !Giving.IsGood(manner))
            {
                why.Add(Reason.NotApplied(Section, $"The paper served {on} went in a manner that is none of Civ. Code §§ 8106 and 8110, and does not count.", paper));
                continue;
            }

            var complete = ServedPapers.CompleteOn(on, paper.Manner);
            why.Add(Reason.Of(Section, $"Counteraffidavit served, complete {complete}.", [paper]));
            if (Reaches(facts, paper, PartyCapacity.PublicEntity))
                entity = entity.First(complete, paper, paper.Proof);
            if (Reaches(facts, paper, PartyCapacity.DirectContractor))
                copy = copy.First(complete, paper, true);
        }

        if (entity.Paper is not null && copy.Paper is null)
            why.Add(Reason.Of(Section, $"The file shows no copy to the direct contractor; without it and its proof the paper to the entity does not hold the money."));
        if (copy.Paper is not null && entity.Paper is null)
            why.Add(Reason.Of(Section, $"The file shows no counteraffidavit served on the public entity."));
        if (entity is { Paper: not null, Proof: false })
            why.Add(Reason.Of(Section, $"The paper to the entity went without proof of service of the copy; without it the money is not held."));
        if (entity is not { On: { } toEntity, Proof: not false } || copy.On is not { } toContractor)
            return new CounterPapers(null, null, false, why, questions);

        var day = Days.Later(toEntity, toContractor);
        if (entity.Proof is null)
        {
            why.Add(Reason.Of(Section, $"Lost for the money withheld unless the proof of service went with it."));
            questions.Add(new Question("Did the proof of service of the copy on the direct contractor go with the counteraffidavit? (counteraffidavit-served.proof)") { Corrects = entity.Paper });
        }

        foreach (var paper in entity.Paper == copy.Paper ? (CounteraffidavitServed[])[entity.Paper!] : [entity.Paper!, copy.Paper!])
        {
            if (paper.Manner is null)
                questions.Add(new Question("How was the counteraffidavit served? First-class mail and e-mail are no manner of it. (counteraffidavit-served.manner)") { Corrects = paper });
        }

        return new CounterPapers(entity.Proof == true ? day : null, day, questions.Count > 0, why, questions);
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

    // The first of the papers that reached one of the two, one with its proof before one without.
    private readonly record struct Part(Days? On, CounteraffidavitServed? Paper, bool? Proof)
    {
        public Part First(Days complete, CounteraffidavitServed paper, bool? proof) =>
            Paper is null || (Rank(proof) > Rank(Proof)) ? new Part(complete, paper, proof) : this;

        private static int Rank(bool? proof) => proof switch
        {
            true => 2,
            null => 1,
            false => 0,
        };
    }
}
