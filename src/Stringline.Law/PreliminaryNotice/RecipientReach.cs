using Stringline.Law.Counting;
using Stringline.Law.Facts;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>Why a notice that was given may not count, or may not cover all that it seems to.</summary>
[Flags]
public enum NoticeDoubt
{
    /// <summary>Nothing is in doubt.</summary>
    None = 0,

    /// <summary>It lacks something that the Code asks of it (Civ. Code § 8102(b)).</summary>
    Lacks = 1,

    /// <summary>It was left and mailed, and the file does not show that this was enough (Code Civ. Proc. § 415.20).</summary>
    LeftAndMailed = 2,

    /// <summary>It went to some of several, and the file does not say which of them is meant.</summary>
    OneOfSeveral = 4,

    /// <summary>It went to an agent, whose agency may not go so far (Civ. Code §§ 8066, 8119).</summary>
    Agent = 8,

    /// <summary>It is in time only if the last day is left out as a holiday (Civ. Code § 10; Code Civ. Proc. § 12a).</summary>
    ByRoll = 16,

    /// <summary>It is in time only if the work commenced no more than 20 days before it (Civ. Code § 8204(b)).</summary>
    Commencement = 32,
}

/// <summary>What the notices of the file do toward one recipient.</summary>
/// <param name="To">The recipient.</param>
/// <param name="Kind">Whether it was given at all, in time, or late.</param>
/// <param name="From">The day from which work is covered toward it; where none was given, that of a notice given on the day of
/// asking.</param>
/// <param name="Given">The day on which notice to it was complete; null where none was.</param>
public sealed record RecipientReach(Recipient To, ReachKind Kind, DaySpan From, DaySpan? Given)
{
    /// <summary>The notice that counts; null where none does.</summary>
    public NoticeGiven? Notice { get; init; }

    /// <summary>Why it may not count.</summary>
    public NoticeDoubt Doubt { get; init; }

    /// <summary>A notice to it on a day that nobody knows, which may have been in time; null where there is none.</summary>
    public NoticeGiven? OnUnknownDay { get; init; }

    /// <summary>
    /// Whether, though late by the last day of its own doubt or the first of first furnishing, it may have been in time; or, not given, may
    /// be today.
    /// </summary>
    public bool MayBeInTime { get; init; }

    /// <summary>Where there is a doubt: the day from which a notice without one covers work all the same; null where none does.</summary>
    public DaySpan? SurelyFrom { get; init; }

    /// <summary>Whether work furnished no earlier than a day is covered toward it without a doubt.</summary>
    public bool CertainlyCovers(LocalDate? earliestDay) => Doubt == NoticeDoubt.None
        ? Kind == ReachKind.Whole || (Kind == ReachKind.Late && earliestDay >= From.Latest)
        : earliestDay >= SurelyFrom?.Latest;
}
