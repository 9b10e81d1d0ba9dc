using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law;

/// <summary>What the law makes of a job file on a day.</summary>
public sealed record Assessment
{
    /// <summary>The day on which the question is asked.</summary>
    public required LocalDate AsOf { get; init; }

    /// <summary>The job file's name.</summary>
    public required string Name { get; init; }

    /// <summary>The findings, in the order in which a person would ask.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>The amount of a claim of lien.</summary>
    public required Waterfall Amount { get; init; }

    /// <summary>The caution that goes with every answer on a screen, a sheet or in JSON.</summary>
    public const string Caution =
        "Not legal advice. Confirm with the county recorder, the local rules and a California construction lawyer.";

    /// <summary>The finding with that id, or null.</summary>
    public Finding? Find(string id) => Findings.FirstOrDefault(f => f.Id == id);

    /// <summary>Assesses a job file.</summary>
    /// <param name="job">The facts.</param>
    /// <param name="asOf">The day on which the question is asked. Entries that begin after it are left out, and a finding says so.</param>
    /// <param name="calendar">The days on which offices and courts are closed.</param>
    public static Assessment Of(JobFile job, LocalDate asOf, OpenDays calendar) =>
        throw new InvalidOperationException("Being written.");
}
