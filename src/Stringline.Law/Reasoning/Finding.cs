using Stringline.Law.Numbers;

namespace Stringline.Law.Reasoning;

/// <summary>
/// One way the facts can be taken in law, and the day it gives. Two are equal where they are called alike and give the same days.
/// </summary>
/// <param name="Words">What the reading is, such as <c>completion by occupation</c>.</param>
/// <param name="Day">The day: the statutory last day of a deadline, else the day sought. Not rolled.</param>
/// <param name="Rolled">Where a last day falls on a day that some list passes over (Code Civ. Proc. § 12a; Civ. Code §§ 7, 10), the day to
/// which it rolls at the latest: an argument only, never planned on. Else null.</param>
public sealed record Reading(Sentence Words, LocalDate Day, LocalDate? Rolled = null)
{
    /// <summary>What the reading is, in the words of the job file.</summary>
    public string Name => Words.ToString();

    /// <inheritdoc/>
    public bool Equals(Reading? other) => other is not null && (Day, Rolled) == (other.Day, other.Rolled)
        && (ReferenceEquals(Words, other.Words) || Name == other.Name);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Day, Rolled);
}

/// <summary>The span between the earliest and the latest day over all open readings, both ends included.</summary>
/// <param name="Earliest">The reading with the earliest day.</param>
/// <param name="Latest">The reading with the latest day; null where no end is known yet.</param>
public sealed record Band(Reading Earliest, Reading? Latest);

/// <summary>
/// One answer of the law to the facts, with its reasons: what a rule found, under an id and a title. It is made last, and no rule takes
/// one. Two findings are equal only if they are one: reasons that are put together when read cannot be compared.
/// </summary>
public sealed record Finding
{
    private Words words;

    // The dollars boxed, since few findings have any. A job has thirty findings, a portfolio millions.
    private object? amount;

    /// <summary>Stable id, such as <c>claim-of-lien.last-day</c>.</summary>
    public required string Id { get; init; }

    /// <summary>What it is, in words, for a table.</summary>
    public required string Title { get; init; }

    /// <summary>Where the right is now.</summary>
    public required Standing Standing { get; init; }

    /// <summary>The day to plan on; null where the finding is no deadline of the claimant, or has no day.</summary>
    public LocalDate? ActBy { get; init; }

    /// <summary>Whether the days of the readings are last days of a deadline; else they are days as such.</summary>
    public bool IsDeadline { get; init; }

    /// <summary>Whether it is in doubt for one reason only: its day to plan on is past, and its last day is not.</summary>
    public bool IsOnlyPastSafeDay { get; init; }

    /// <summary>Every open reading, earliest first.</summary>
    public IReadOnlyList<Reading> Readings { get; init; } = [];

    /// <summary>The band over the readings; null where there is none.</summary>
    public Band? Band { get; init; }

    /// <summary>What it says of days and standing, without the words.</summary>
    internal Deadline Deadline => new(Standing, Readings, Band, ActBy);

    /// <summary>Dollars and cents where the finding is an amount.</summary>
    public decimal? Amount
    {
        get => (decimal?)amount;
        init => amount = value;
    }

    /// <summary>The reasons, outermost first. Where <see cref="Explain"/> is given they are put together when first read.</summary>
    public IReadOnlyList<Reason> Why
    {
        get => words.Why;
        init => words.Why = value;
    }

    /// <summary>
    /// Facts the file does not hold which, if known, would settle or narrow the finding. Where <see cref="Ask"/> is given they are worked
    /// out when first read.
    /// </summary>
    public IReadOnlyList<Question> Questions
    {
        get => words.Questions;
        init => words.Questions = value;
    }

    /// <summary>
    /// Of a notice that may still be given late: the time that is over, and how far one given late reaches back; null elsewhere.
    /// </summary>
    internal (NumberRow Time, NumberRow LookBack)? IfLate { get; init; }

    /// <summary>Makes the reasons, for a finding whose reasons are many and seldom read.</summary>
    internal Func<IReadOnlyList<Reason>>? Explain
    {
        init => words.Explain(value);
    }

    /// <summary>Makes the questions, for a finding whose questions are costly and seldom read.</summary>
    internal Func<IReadOnlyList<Question>>? Ask
    {
        init => words.Ask(value);
    }

    /// <summary>Reasons and questions at once.</summary>
    internal Words Words
    {
        init => words = value;
    }

    /// <inheritdoc/>
    public bool Equals(Finding? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);

    /// <summary>The same under an id that begins with another word, as of a lien of another kind.</summary>
    internal Finding Under(string prefix) => this with { Id = prefix + Id };

    /// <summary>The same with another standing, and the reason for it before the others.</summary>
    internal Finding Limited(Standing standing, Reason why) => this with { Standing = standing, Why = [why, .. Why] };

    /// <summary>The sections the reasons that applied rest on, each once, in the order met.</summary>
    public IReadOnlyList<string> Sections
    {
        get
        {
            var met = new List<string>();
            void Walk(Reason reason)
            {
                if (reason.Applied && reason.Section.Length > 0 && !met.Contains(reason.Section))
                    met.Add(reason.Section);
                foreach (var child in reason.Children)
                    Walk(child);
            }

            foreach (var reason in Why)
                Walk(reason);
            return met;
        }
    }
}
