namespace Stringline.Office;

/// <summary>What came of a use case. The two cases are the only ones.</summary>
/// <typeparam name="T">What it gives when it succeeds.</typeparam>
internal abstract record Outcome<T>
{
    private Outcome()
    {
    }

    /// <summary>Goes on with what was done; a refusal stays a refusal.</summary>
    public Outcome<TNext> Then<TNext>(Func<T, Outcome<TNext>> next) => this switch
    {
        Done done => next(done.Value),
        Refused refused => new Outcome<TNext>.Refused(refused.Why),
        _ => throw new InvalidOperationException("Neither done nor refused."),
    };

    /// <summary>It was done.</summary>
    /// <param name="Value">What it gives.</param>
    public sealed record Done(T Value) : Outcome<T>;

    /// <summary>It was refused, and nothing was changed.</summary>
    /// <param name="Why">The reasons, each one message for a person.</param>
    public sealed record Refused(IReadOnlyList<string> Why) : Outcome<T>;
}
