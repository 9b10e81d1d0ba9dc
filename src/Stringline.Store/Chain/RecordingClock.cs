namespace Stringline.Store.Chain;

/// <summary>The clock by which changes are recorded, and how far it was behind at the last writing.</summary>
internal sealed class RecordingClock(IClock clock)
{
    private volatile ClockBehind? behind;

    /// <summary>The clock of the computer.</summary>
    public IClock Clock => clock;

    /// <summary>How far it was behind the journal at the last writing; null where it was not by much.</summary>
    public ClockBehind? Behind
    {
        get => behind;
        set => behind = value;
    }
}
