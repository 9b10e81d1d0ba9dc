namespace Stringline.Law.Reasoning;

/// <summary>Where a right or duty is now. The words are those of the vocabulary, in lower case.</summary>
public enum Standing
{
    /// <summary>Its time has not begun.</summary>
    NotYet,

    /// <summary>It can still be done.</summary>
    Open,

    /// <summary>It was done in time, or nothing had to be done, and the right is whole.</summary>
    Kept,

    /// <summary>It lives on, but covers less.</summary>
    Narrowed,

    /// <summary>It is gone.</summary>
    Lost,

    /// <summary>One reading says gone, another does not; or a fact is missing.</summary>
    InDoubt,

    /// <summary>Finished: nothing is left to do.</summary>
    Done,
}

/// <summary>The words for <see cref="Standing"/>.</summary>
public static class StandingWords
{
    /// <summary>The word used on every screen and in JSON.</summary>
    public static string Word(this Standing standing) => standing switch
    {
        Standing.NotYet => "not yet",
        Standing.Open => "open",
        Standing.Kept => "kept",
        Standing.Narrowed => "narrowed",
        Standing.Lost => "lost",
        Standing.InDoubt => "in doubt",
        Standing.Done => "done",
        _ => throw new ArgumentOutOfRangeException(nameof(standing), standing, "Not a standing."),
    };
}
