namespace Stringline.Law.Reasoning;

/// <summary>
/// What a rule tells other rules: where something stands, by which days if it has any, and in its own words why. It has neither id nor
/// title: those it gets when its finding is made, last. Two outcomes are equal only if they are one.
/// </summary>
public sealed class Outcome
{
    private readonly bool isDeadline;
    private Words words;

    private Outcome(Deadline deadline, Words words, bool isDeadline) =>
        (Deadline, this.words, this.isDeadline) = (deadline, words, isDeadline);

    /// <summary>The outcome of a rule that sets no day.</summary>
    internal Outcome(Standing standing, Words words) : this(Deadline.WithoutDay(standing), words, isDeadline: false)
    {
    }

    /// <summary>The outcome of a deadline.</summary>
    internal Outcome(Deadline deadline, Words words) : this(deadline, words, isDeadline: true)
    {
    }

    /// <summary>Where it stands.</summary>
    public Standing Standing => Deadline.Standing;

    /// <summary>Standing and days; no day where it sets none.</summary>
    public Deadline Deadline { get; }

    /// <summary>The reasons, outermost first; put together when first read.</summary>
    public IReadOnlyList<Reason> Why => words.Why;

    /// <summary>What the file does not answer; put together when first read.</summary>
    public IReadOnlyList<Question> Questions => words.Questions;

    /// <summary>The same with another standing and other reasons.</summary>
    internal Outcome Limited(Standing standing, IReadOnlyList<Reason> why) =>
        new(Deadline with { Standing = standing }, words with { Why = why }, isDeadline);

    /// <summary>The finding of it.</summary>
    /// <param name="id">Stable id.</param>
    /// <param name="title">What it is, in words.</param>
    /// <param name="amount">Dollars and cents, where it has an amount.</param>
    internal Finding Finding(string id, string title, decimal? amount = null) => new()
    {
        Id = id,
        Title = title,
        Standing = Standing,
        IsDeadline = isDeadline,
        Readings = Deadline.Readings,
        Band = Deadline.Band,
        ActBy = Deadline.ActBy,
        Amount = amount,
        Words = words,
    };
}
