using Stringline.Law.Reasoning;

namespace Stringline.Law.Completion;

/// <summary>Whether an owner's notice counts against this claimant, why, and what would settle it.</summary>
/// <param name="Verdict">Whether it does.</param>
/// <param name="Why">Why.</param>
/// <param name="Known">What would settle it, as far as it needs no words of its own.</param>
/// <param name="Asked">What else would, worded only when somebody reads it; null where nothing would.</param>
internal readonly record struct Counted(Verdict Verdict, Reason Why, IReadOnlyList<Question> Known, Func<Question>? Asked = null)
{
    /// <summary>What would settle it; empty where nothing is open.</summary>
    public IReadOnlyList<Question> Questions => Asked is null ? Known : [.. Known, Asked()];

    /// <summary>It surely does.</summary>
    public static Counted Yes(Reason why) => new(Verdict.Yes, why, []);

    /// <summary>It surely does not.</summary>
    public static Counted No(Reason why) => new(Verdict.No, why, []);

    /// <summary>It may, until the questions are answered.</summary>
    public static Counted Open(Reason why, params IReadOnlyList<Question> questions) => new(Verdict.Open, why, questions);

    /// <summary>It may, until the question is answered, which is worded when somebody reads it.</summary>
    public static Counted Open(Reason why, Func<Question> asked) => new(Verdict.Open, why, [], asked);
}
