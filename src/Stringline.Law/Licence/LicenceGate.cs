using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Licence;

/// <summary>Whether the claimant was licensed on every day of its work (Bus. &amp; Prof. Code § 7031).</summary>
public static class LicenceGate
{
    private const string Bar = "Bus. & Prof. Code § 7031(a)";
    private const string PutBack = "Bus. & Prof. Code § 7125.2";
    private const string Supplier = "Bus. & Prof. Code § 7052";

    /// <summary>Days from the first day without a licence within which the board must have what puts it back.</summary>
    public const int DaysToPutBack = 90;

    /// <summary>
    /// The licence finding. One day without a licence that the work needs bars all recovery, and the lien with it.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7031(a)", Since = "2021-01-01")]
    [Rule("Bus. & Prof. Code § 7031(c)", Since = "2021-01-01")]
    public static Finding Assess(FactsAsOf facts)
    {
        var claimant = facts.Job.Claimant;
        return claimant.License switch
        {
            null => WhereTheFileIsSilent(claimant),
            { Required: false } => NotRequired(claimant),
            { } license => Required(facts, license),
        };
    }

    [Rule("Bus. & Prof. Code § 7026", Sure = Sure.Read)]
    private static bool ActsAsContractor(Claimant claimant) =>
        claimant.Role is ClaimantRole.DirectContractor or ClaimantRole.Subcontractor;

    [Rule("Bus. & Prof. Code § 7052", Sure = Sure.Opinion)]
    private static Finding WhereTheFileIsSilent(Claimant claimant) => ActsAsContractor(claimant)
        ? Answer(Standing.InDoubt,
            [Reason.Of(Bar, $"A contractor must be licensed on every day of its work; the file says nothing about a licence.")],
            [new Question("Was a contractor's licence needed, and on which days was it active? Add claimant.license.")])
        : Answer(Standing.Kept,
            [Reason.Of(Supplier, $"Assumed: the claimant only furnishes and does not install, so no contractor's licence is needed.")],
            [new Question("Does the claimant install or fabricate anything into the work? Then it needs a licence: add claimant.license.")]);

    private static Finding NotRequired(Claimant claimant) => ActsAsContractor(claimant)
        ? Answer(Standing.InDoubt,
            [Reason.Of(Bar, $"The file says that no licence is needed, but the claimant is a contractor; the minor-work exemption ends at $1,000 for the whole undertaking (Bus. & Prof. Code § 7048).")],
            [new Question("On which exemption does the claimant, a contractor, rely?")])
        : Answer(Standing.Kept,
            [Reason.Of(Supplier, $"The file says that the claimant's part of the work needs no licence.")], []);

    private static Finding Required(FactsAsOf facts, License license)
    {
        if (license.Active.Count == 0)
        {
            return Answer(Standing.InDoubt,
                [Reason.Of(Bar, $"A licence is needed, but the file does not say on which days it was active.")],
                [new Question("On which days was the licence active? Add claimant.license.active.")]);
        }

        if (facts.FirstFurnished is not { } first || facts.LastFurnished is not { } last)
        {
            return facts.HasFurnished
                ? Answer(Standing.InDoubt,
                    [Reason.Of(Bar, $"The licence must be active on every day of the work; a day of furnishing is unknown.")],
                    [new Question("On which day was each item furnished?")])
                : Answer(Standing.Open,
                    [Reason.Of(Bar, $"The licence must be active on every day of the work; nothing has been furnished yet.")], []);
        }

        List<LicenseSpan> putBackSpans = [.. license.Active.Where(static span => span.PutBack is not null)];
        IReadOnlyList<LicenseSpan> counted = putBackSpans.Count == 0 ? license.Active : [.. license.Active.Where(CountsThoughPutBack)];
        List<Reason> putBack = [.. putBackSpans.Select(PutBackInWords)];
        var uncovered = FirstUncoveredDay(counted, first.Earliest, last.Latest);
        if (uncovered is not { } gap)
        {
            return Answer(Standing.Kept,
                [Reason.Of(Bar, $"The licence was active on every day from {first.Earliest} to {last.Latest}."), .. putBack], []);
        }

        // The first furnishing may have been as late as first.Latest, and the last as early as last.Earliest.
        var surely = FirstUncoveredDay(counted, first.Latest, LocalDate.Max(first.Latest, last.Earliest));
        return surely is { } sure
            ? Answer(Standing.Lost,
                [Reason.Of(Bar, $"No licence was active on {sure}, a day within the work; the bar reaches all compensation, also for the licensed days."), .. putBack], [])
            : Answer(Standing.InDoubt,
                [Reason.Of(Bar, $"No licence was active on {gap}, which may be a day of the work."), .. putBack],
                [new Question("On which day exactly did the work begin and end?")]);
    }

    /// <summary>
    /// A licence that was suspended, or had lapsed, and was put back for the time past counts for it only where the board had what puts it back
    /// within 90 days: American Building Innovation v. Balfour Beatty (2024) 104 Cal.App.5th 954.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7125.2", Since = "2021-01-01", Sure = Sure.Opinion)]
    private static bool CountsThoughPutBack(LicenseSpan span) => span.PutBack is not { } on || on <= LastDayToPutBack(span);

    private static LocalDate LastDayToPutBack(LicenseSpan span) => Period.LastDay(span.From, DaysToPutBack);

    private static Reason PutBackInWords(LicenseSpan span) => CountsThoughPutBack(span)
        ? Reason.Of(PutBack, $"The licence was put back from {span.From}, and the board had what puts it back on {span.PutBack!.Value}, within {DaysToPutBack} days: the days count.")
        : Reason.Of(PutBack, $"The licence was put back from {span.From}, but the board had what puts it back only on {span.PutBack!.Value}, after the {DaysToPutBack} days that ended on {LastDayToPutBack(span)}: the days do not count, whatever the record now says (American Building Innovation v. Balfour Beatty (2024) 104 Cal.App.5th 954).");

    /// <summary>The first day of a span, ends included, on which no licence span was active; null where all are covered.</summary>
    public static LocalDate? FirstUncoveredDay(IReadOnlyList<LicenseSpan> active, LocalDate from, LocalDate to)
    {
        var day = from;
        while (day <= to)
        {
            LocalDate? reachedBy = null;
            foreach (var span in active)
            {
                if (span.From <= day && (span.To is not { } end || end >= day))
                    reachedBy = LocalDate.Max(reachedBy ?? day, span.To ?? to);
            }

            if (reachedBy is not { } covered)
                return day;
            day = covered.PlusDays(1);
        }

        return null;
    }

    private static Finding Answer(Standing standing, Reason[] why, Question[] questions) => new()
    {
        Id = "licence",
        Title = "Contractor's licence",
        Standing = standing,
        Why = why,
        Questions = questions,
    };
}
