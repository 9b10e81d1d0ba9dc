
namespace Stringline.Published;

/// <summary>
/// A decided case, written as a case note that can be computed: what happened, what was asked, what the court held, and what the
/// law library must answer to the same facts today.
/// </summary>
public sealed record CaseNote
{
    /// <summary>Number in this collection, such as <c>C-03</c>; <c>P-01</c> for a principle without a full set of figures.</summary>
    public required string Number { get; init; }

    /// <summary>Name and citation.</summary>
    public required string Citation { get; init; }

    /// <summary>How much of the opinion the figures were taken from.</summary>
    public required string Read { get; init; }

    /// <summary>Sections of the case, and today's in their place.</summary>
    public required string Law { get; init; }

    /// <summary>The facts as the court held them, in a few sentences.</summary>
    public required string Facts { get; init; }

    /// <summary>The question.</summary>
    public required string Question { get; init; }

    /// <summary>The answer of the court.</summary>
    public required string Held { get; init; }

    /// <summary>The result under the law of the case.</summary>
    public required string Then { get; init; }

    /// <summary>The result under today's sections, and why it is the same or another.</summary>
    public required string Now { get; init; }

    /// <summary>The facts as a job file, taken in one or several ways, with what is expected of each.</summary>
    public required Take[] Takes { get; init; }

    /// <summary>Assesses every take and fails with a list of all answers that differ from what is expected.</summary>
    public void Holds()
    {
        var differ = new List<string>();
        foreach (var take in Takes)
        {
            var answer = take.Assess();
            differ.AddRange(take.Expected.Select(e => e(answer)).OfType<string>().Select(d => $"{take.As}, as of {take.AsOf}: {d}"));
            if (take.IsOlderThanTheSections && !SaysSo(answer))
                differ.Add($"{take.As}: facts older than 1 July 2012 are assessed under today's sections, and the finding assumptions does "
                    + $"not say so.");
        }

        if (differ.Count > 0)
            Assert.Fail($"{Number} {Citation}\n  " + string.Join("\n  ", differ));
    }

    private static bool SaysSo(Assessment answer) =>
        answer.Find("assumptions") is { } assumed && assumed.Why.Any(r => r.Section == "Stats. 2010 ch. 697");
}

/// <summary>One way of taking the facts of a case.</summary>
/// <param name="As">How they are taken, such as <c>as the court found</c>.</param>
/// <param name="File">The job file.</param>
/// <param name="AsOf">The day on which the question is asked, ISO.</param>
/// <param name="Expected">What must be answered.</param>
public sealed record Take(string As, JobBuilder File, string AsOf, params Expectation[] Expected)
{
    private readonly JobFile job = File.Build();

    /// <summary>Whether some fact is older than the sections by which it is assessed.</summary>
    public bool IsOlderThanTheSections => job.Entries.Any(e => e.On.Earliest < new LocalDate(2012, 7, 1));

    /// <summary>The answer of the law library.</summary>
    public Assessment Assess() => Assessment.Of(job, JobBuilder.Day(AsOf), OpenDays.Statutory);
}
