using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>The definite answers that may be given. In doubt and narrowed may always be said, and are counted apart.</summary>
[Flags]
internal enum May
{
    None = 0,

    /// <summary>Open or not yet: it can still be done.</summary>
    Open = 1,

    /// <summary>Kept or done.</summary>
    Kept = 2,

    Lost = 4,

    Anything = Open | Kept | Lost,
}

/// <summary>What may be answered in one world, and the statutory last day there, where something is still to be done.</summary>
internal readonly record struct Answer(May May, LocalDate? Last = null)
{
    public static Answer Kept { get; } = new(May.Kept);

    public static Answer Lost { get; } = new(May.Lost);

    public static Answer Doubt { get; } = new(May.None);

    public static Answer Free { get; } = new(May.Anything);

    public static Answer Open(LocalDate? last = null) => new(May.Open, last);
}

/// <summary>The answers of all worlds together: what every one of them allows, and the days that bind.</summary>
internal sealed class Reading
{
    /// <summary>What every world allows.</summary>
    public May May { get; private set; } = May.Anything;

    /// <summary>The earliest last day that has not passed on the day asked; null where none binds.</summary>
    public LocalDate? Next { get; private set; }

    /// <summary>The earliest last day of all; null where no world has one.</summary>
    public LocalDate? First { get; private set; }

    public int Worlds { get; private set; }

    // What some world allows.
    private May some;

    /// <summary>Whether every world has the same day.</summary>
    public bool OneDay { get; private set; } = true;

    /// <summary>There were too many worlds to look at them all: nothing is known of the answer.</summary>
    public bool GaveUp { get; set; }

    /// <summary>Whether the file leaves exactly one answer.</summary>
    public bool Sure => !GaveUp && May is May.Open or May.Kept or May.Lost;

    public bool SurelyLost => !GaveUp && Worlds > 0 && May == May.Lost;

    public void Add(Answer answer, LocalDate asOf)
    {
        Worlds++;
        May &= answer.May;
        some |= answer.May;
        OneDay &= Worlds == 1 || answer.Last == First;
        if (answer.Last is not { } last)
            return;
        First = World.Earlier(First, last);
        if (last >= asOf)
            Next = World.Earlier(Next, last);
    }

    /// <summary>Whether the library's standing agrees.</summary>
    public bool Allows(Standing standing) => GaveUp || standing switch
    {
        Standing.Kept or Standing.Done => (May & May.Kept) != 0,
        Standing.Lost => (May & May.Lost) != 0,
        Standing.Open => (May & May.Open) != 0,
        Standing.NotYet => some is not (May.Lost or May.Kept),
        Standing.InDoubt or Standing.Narrowed => true,
        _ => throw new ArgumentOutOfRangeException(nameof(standing), standing, "Not a standing."),
    };
}
