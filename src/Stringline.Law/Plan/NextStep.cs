using Stringline.Law.Reasoning;

namespace Stringline.Law.Plan;

/// <summary>Something to be done on a job by a day, and what hangs on it.</summary>
/// <param name="Finding">Id of the finding whose day it is; its reasons are the why.</param>
/// <param name="Do">What to do, as an order: <c>Record the claim of lien</c>.</param>
/// <param name="ActBy">The day to plan on; may be past where the right is only in doubt, and then it is done at once.</param>
/// <param name="Standing">Where the right stands.</param>
/// <param name="Watch">Whether it only keeps watch: nothing is lost by the day itself.</param>
public sealed record NextStep(string Finding, string Do, LocalDate ActBy, Standing Standing, bool Watch = false)
{
    /// <summary>Dollars and cents that hang on it; null where the file does not say what is owed.</summary>
    public decimal? AtStake { get; init; }

    /// <summary>What is owed on the job, and what of it the step can still save; null for a watch.</summary>
    public Stakes? Stakes { get; init; }

    /// <summary>What is left of the right where its planned day is past; null where it is not.</summary>
    public Outlook? Outlook { get; init; }

    /// <summary>The earliest reading, which sets the day.</summary>
    public Reading? Reading { get; init; }
}
