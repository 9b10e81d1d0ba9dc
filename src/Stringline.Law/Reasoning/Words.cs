namespace Stringline.Law.Reasoning;

/// <summary>
/// The reasons and open questions of a rule: lists, or what makes them when they are first read, since a job has many and few are read. A
/// copy that was made before the reading makes its own, which say the same.
/// </summary>
internal struct Words
{
    private object? why;
    private object? questions;

    public Words(IReadOnlyList<Reason> why, IReadOnlyList<Question> questions) => (this.why, this.questions) = (why, questions);

    public Words(Func<IReadOnlyList<Reason>> explain, Func<IReadOnlyList<Question>>? ask = null) => (why, questions) = (explain, ask);

    /// <summary>The reasons, outermost first.</summary>
    public IReadOnlyList<Reason> Why
    {
        get => Read<Reason>(ref why);
        set => why = value;
    }

    /// <summary>What the file does not answer.</summary>
    public IReadOnlyList<Question> Questions
    {
        get => Read<Question>(ref questions);
        set => questions = value;
    }

    /// <summary>Makes the reasons when they are first read.</summary>
    public void Explain(Func<IReadOnlyList<Reason>>? make) => why = make ?? why;

    /// <summary>Makes the questions when they are first read.</summary>
    public void Ask(Func<IReadOnlyList<Question>>? make) => questions = make ?? questions;

    // What is made twice, on two threads, is the same.
    private static IReadOnlyList<T> Read<T>(ref object? kept)
    {
        var list = kept switch
        {
            Func<IReadOnlyList<T>> make => make(),
            IReadOnlyList<T> made => made,
            _ => [],
        };
        kept = list;
        return list;
    }
}
