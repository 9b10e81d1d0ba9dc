using System.Data.Common;
using System.Globalization;
using Stringline.Store.Sql;

namespace Stringline.Store.Chain;

/// <summary>
/// When changes are recorded: never before the change that stands before, never before the last seal. A clock that was set back loses
/// nothing: the entry gets the moment of the change before it, which says "not earlier than this". A clock out of all range is refused
/// before anything is written, since the moment would stay in the journal for good.
/// </summary>
internal sealed class Moments
{
    /// <summary>The first moment that is taken. No store is older.</summary>
    public static readonly Instant First = Instant.FromUtc(2000, 1, 1, 0, 0);

    /// <summary>The first moment that is too late.</summary>
    public static readonly Instant End = Instant.FromUtc(2200, 1, 1, 0, 0);

    // Clocks of two desks differ by seconds; so much is worth a word.
    private static readonly Duration WorthTelling = Duration.FromMinutes(2);

    private readonly RecordingClock clock;
    private readonly Instant now;
    private readonly Instant sealedAt;

    /// <summary>
    /// Looks at the clock. First in its transaction, before any row is locked: who seals waits for who writes, and the other way round.
    /// </summary>
    /// <exception cref="StoreException">The clock is out of all range.</exception>
    public Moments(Database database, DbConnection connection, DbTransaction transaction, RecordingClock clock)
    {
        sealedAt = SealedAt.Read(SealedAt.Kept(connection, transaction, database.BeforeChanges)) ?? default;
        this.clock = clock;
        clock.Behind = null;
        now = Now(database, clock.Clock);
    }

    /// <summary>What the clock says.</summary>
    /// <exception cref="StoreException">It is out of all range.</exception>
    public static Instant Now(Database database, IClock clock)
    {
        var now = clock.GetCurrentInstant();
        if (now < First || now >= End)
        {
            throw new StoreException(
                StoreFault.Clock,
                database.Name,
                "a computer whose clock says " + now.ToString("uuuu'-'MM'-'dd HH':'mm", CultureInfo.InvariantCulture) + " UTC",
                "a clock that is set right; nothing was written: set it, and do this again");
        }

        return now;
    }

    /// <summary>The moment of the next change.</summary>
    /// <param name="before">That of the change before it; null where there is none.</param>
    public Instant After(Instant? before)
    {
        var earliest = sealedAt + Duration.FromTicks(RawRow.TicksPerMicrosecond);
        if (before > earliest)
            earliest = before.Value;
        if (now >= earliest)
            return now;
        if (earliest - now >= WorthTelling && !(clock.Behind?.Recorded >= earliest))
            clock.Behind = new ClockBehind(now, earliest);
        return earliest;
    }
}
