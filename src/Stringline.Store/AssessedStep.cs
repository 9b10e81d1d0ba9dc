using Stringline.Law.Reasoning;

namespace Stringline.Store;

/// <summary>Something to be done on a job, as its last assessment found it.</summary>
/// <param name="What">Id of the finding whose day it is.</param>
/// <param name="Do">What to do, as an order.</param>
/// <param name="Remedy">The remedy it belongs to, in words.</param>
/// <param name="ActBy">The day to plan on.</param>
/// <param name="Standing">Where the right stands.</param>
public sealed record AssessedStep(string What, string Do, string Remedy, LocalDate ActBy, Standing Standing)
{
    /// <summary>Whether it only keeps watch: nothing is lost by the day itself.</summary>
    public bool Watch { get; init; }

    /// <summary>Dollars and cents that hang on it; null where no amount is known.</summary>
    public decimal? AtStake { get; init; }

    /// <summary>Dollars and cents owed on the job; null where no amount is known.</summary>
    public decimal? Owed { get; init; }

    /// <summary>What is owed and what of it the step can still save, in words; null for a watch.</summary>
    public string? Stakes { get; init; }

    /// <summary>
    /// What is left of the right, where its planned day was past on the day of asking: alive, arguable, late. Null where it was not.
    /// </summary>
    public string? Left { get; init; }

    /// <summary>The same in sentences, with its days.</summary>
    public string? Outlook { get; init; }

    /// <summary>The reading that sets the day; null where there is only one.</summary>
    public string? Reading { get; init; }

    /// <summary>The section it rests on.</summary>
    public string? Section { get; init; }
}

/// <summary>Only the steps of some jobs, or of one remedy; an absent value lets all pass.</summary>
public sealed record StepFilter
{
    /// <summary>All steps.</summary>
    public static StepFilter None { get; } = new();

    /// <summary>Who hired the claimant, exactly as the job file names it.</summary>
    public string? Customer { get; init; }

    /// <summary>The county of the site.</summary>
    public string? County { get; init; }

    /// <summary>Who signs for the claimant.</summary>
    public string? Person { get; init; }

    /// <summary>The remedy, in words.</summary>
    public string? Remedy { get; init; }
}

/// <summary>Steps whose day lies in a span, both ends included: earliest day first, and of one day most dollars first.</summary>
/// <param name="Filter">Which jobs and remedies.</param>
/// <param name="From">The first day.</param>
/// <param name="Through">The last day.</param>
/// <param name="Limit">At most so many.</param>
public sealed record StepQuery(StepFilter Filter, LocalDate From, LocalDate Through, int Limit)
{
    /// <summary>Whether steps that only keep watch are asked for, or those that do not; null for both.</summary>
    public bool? Watch { get; init; } = false;

    /// <summary>So many are passed over.</summary>
    public int Skip { get; init; }
}

/// <summary>A step, and the job it is to be done on.</summary>
/// <param name="Job">The job's id.</param>
/// <param name="Name">The job's name.</param>
/// <param name="Key">How the outside names the job.</param>
/// <param name="Customer">Who hired the claimant; empty where the file does not say.</param>
/// <param name="County">The county of the site.</param>
/// <param name="Person">Who signs for the claimant; empty where the file does not say.</param>
/// <param name="Step">The step.</param>
/// <param name="AsOf">The day as of which its job was assessed.</param>
public sealed record StepLine(
    long Job, string Name, string Key, string Customer, string County, string Person, AssessedStep Step, LocalDate AsOf);

/// <summary>How much lies in a span of days.</summary>
/// <param name="Steps">How many steps, watches not counted.</param>
/// <param name="Jobs">How many jobs whose most pressing step lies in it.</param>
/// <param name="Dollars">Dollars and cents at stake on those jobs; each job counts once.</param>
/// <param name="Owed">Dollars and cents owed on those jobs; each job counts once.</param>
public sealed record StepTotal(long Steps, long Jobs, decimal Dollars, decimal Owed);

/// <summary>Searches of a county's index that are due.</summary>
/// <param name="County">The county.</param>
/// <param name="Jobs">On how many jobs.</param>
/// <param name="Earliest">The earliest day on which one is due.</param>
public sealed record WatchTotal(string County, long Jobs, LocalDate Earliest);

/// <summary>What steps can be filtered by, each in the order of the alphabet.</summary>
public sealed record StepChoices(
    IReadOnlyList<string> Customers, IReadOnlyList<string> Counties, IReadOnlyList<string> Persons, IReadOnlyList<string> Remedies);
