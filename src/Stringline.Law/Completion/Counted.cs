using Stringline.Law.Reasoning;

namespace Stringline.Law.Completion;

/// <summary>Whether an owner's notice counts against this claimant, why, and what would settle it.</summary>
/// <param name="Verdict">Whether it does.</param>
/// <param name="Why">Why.</param>
/// <param name="Questions">What would settle it; empty where nothing is open.</param>
internal readonly record struct Counted(Verdict Verdict, Reason Why, IReadOnlyList<Question> Questions)
{
    /// <summary>It surely does.</summary>
    public static Counted Yes(Reason why) => new(Verdict.Yes, why, []);

    /// <summary>It surely does not.</summary>
    public static Counted No(Reason why) => new(Verdict.No, why, []);

    /// <summary>It may, until the questions are answered.</summary>
    public static Counted Open(Reason why, params IReadOnlyList<Question> questions) => new(Verdict.Open, why, questions);
}
