using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>Where a sum stands that another must pay by a day, what its being late costs so far, and why.</summary>
/// <param name="Standing">Done once it was paid in time; open once it is late.</param>
/// <param name="Readings">The last days for the payer, earliest first.</param>
/// <param name="Late">What being late costs so far, for whole months: dollars and cents.</param>
/// <param name="Why">The reasons.</param>
/// <param name="Questions">What the file does not answer.</param>
internal sealed record SumOwed(
    Standing Standing, IReadOnlyList<Reading> Readings, decimal Late, IReadOnlyList<Reason> Why, IReadOnlyList<Question> Questions)
{
    /// <summary>The finding about it.</summary>
    /// <param name="id">Stable id.</param>
    /// <param name="title">What it is, in words.</param>
    public Finding Finding(string id, string title) => new()
    {
        Id = id,
        Title = title,
        Standing = Standing,
        Readings = Readings,
        Band = Deadline.BandOver(Readings),
        Amount = Late,
        Why = Why,
        Questions = Questions,
    };

    /// <summary>The same in doubt, unless it was paid in time, with what is asked for it.</summary>
    public SumOwed Doubted(Question question) => Standing == Standing.Done ? this : this with
    {
        Standing = Standing.InDoubt,
        Questions = [.. Questions, question],
    };
}
