using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Licence;

/// <summary>
/// The spans of a license that count where some were put back after a lapse or suspension. The 90 days have two starts: the expiration, for a
/// renewal; the effective date of the certificate, for insurance.
/// </summary>
/// <param name="Surely">Those that surely count.</param>
/// <param name="AtMost">Those that count on some reading.</param>
/// <param name="Why">The reasons for each that was put back.</param>
/// <param name="Questions">What would settle it.</param>
internal sealed record PutBackSpans(IReadOnlyList<LicenseSpan> Surely, IReadOnlyList<LicenseSpan> AtMost, IReadOnlyList<Reason> Why, IReadOnlyList<Question> Questions)
{
    /// <summary>Days within which what puts a license back must be sent, or received.</summary>
    public const int DaysToPutBack = 90;

    /// <summary>Sorts the spans.</summary>
    public static PutBackSpans Of(License license)
    {
        if (license.Active.All(static span => span.PutBack is null))
            return new PutBackSpans(license.Active, license.Active, [], []);
        var (surely, atMost) = (new List<LicenseSpan>(), new List<LicenseSpan>());
        var (why, questions) = (new List<Reason>(), new List<Question>());
        foreach (var span in license.Active)
        {
            var counts = span.PutBack is null ? Verdict.Yes : Counts(span, why, questions);
            if (counts == Verdict.Yes)
                surely.Add(span);
            if (counts != Verdict.No)
                atMost.Add(span);
        }

        return new PutBackSpans(surely, atMost, why, questions);
    }

    private static Verdict Counts(LicenseSpan span, List<Reason> why, List<Question> questions)
    {
        var verdict = span.Cause switch
        {
            LapseCause.Renewal => Renewal(span),
            LapseCause.Insurance => Insurance(span),
            LapseCause.Other => Verdict.Open,
            null => Renewal(span) == Insurance(span) ? Renewal(span) : Verdict.Open,
            _ => throw new InvalidOperationException($"No such cause: {span.Cause}."),
        };
        why.Add(InWords(span, verdict));
        if (verdict == Verdict.Open && span.Cause is null)
            questions.Add(new Question("Why had the license lapsed: was it not renewed, or was no certificate of insurance on file? The 90 days to put it back begin on different days. (claimant.license.active.cause)", Days: 1));
        if (span.Cause == LapseCause.Other)
            questions.Add(new Question("By what was the license put back for the time past? The 90 days are those of a renewal or of an insurance certificate. (claimant.license.active.cause)"));
        // Late only by the board's day: a renewal counts by its postmark.
        if (span is { Cause: not LapseCause.Insurance, Sent: null } && Renewal(span) == Verdict.No)
            questions.Add(new Question($"On which day was the renewal delivered or postmarked? By {LawText.IsoDay(LastDayOfRenewal(span))} it is in time. (claimant.license.active.sent)"));
        if (span.Cause != LapseCause.Renewal && Insurance(span) == Verdict.No)
            questions.Add(new Question("Was the certificate late for causes beyond the claimant's control, shown to the registrar? Then it counts all the same (Bus. & Prof. Code § 7125.1(b)). (claimant.license.active.cause)"));
        return verdict;
    }

    /// <summary>A renewal is in time if it is delivered or postmarked within 90 days of the expiration, the day before the span put back.</summary>
    [Rule("Bus. & Prof. Code § 7141.5", Since = "2021-01-01")]
    private static Verdict Renewal(LicenseSpan span) => (span.Sent ?? span.PutBack!.Value) <= LastDayOfRenewal(span) ? Verdict.Yes : Verdict.No;

    private static LocalDate LastDayOfRenewal(LicenseSpan span) => Period.LastDay(span.From.PlusDays(-1), DaysToPutBack);

    /// <summary>
    /// A certificate of insurance counts from its effective date if the registrar received it within 90 days after that date: American Building
    /// Innovation v. Balfour Beatty (2024) 104 Cal.App.5th 954.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7125.1", Since = "1996-01-01")]
    private static Verdict Insurance(LicenseSpan span) => span.PutBack!.Value <= LastDayOfCertificate(span) ? Verdict.Yes : Verdict.No;

    private static LocalDate LastDayOfCertificate(LicenseSpan span) => Period.LastDay(span.From, DaysToPutBack);

    private static Reason InWords(LicenseSpan span, Verdict verdict)
    {
        var section = span.Cause == LapseCause.Renewal ? "Bus. & Prof. Code § 7141.5" : "Bus. & Prof. Code § 7125.1(a)";
        var last = span.Cause == LapseCause.Renewal ? LastDayOfRenewal(span) : LastDayOfCertificate(span);
        var on = span.Cause == LapseCause.Renewal ? span.Sent ?? span.PutBack!.Value : span.PutBack!.Value;
        return verdict switch
        {
            Verdict.Yes => Reason.Of(section, $"The license was put back from {span.From}, and the board had what puts it back on {on}, within {DaysToPutBack} days: the days count."),
            Verdict.No => Reason.Of(section, $"The license was put back from {span.From}, but the board had what puts it back only on {on}, after the {DaysToPutBack} days that ended on {last}: the days do not count, whatever the record now says (American Building Innovation v. Balfour Beatty (2024) 104 Cal.App.5th 954)."),
            _ => Reason.Of(section, $"The license was put back from {span.From} on {span.PutBack!.Value}. Whether it counts hangs on what the license had lapsed for: a renewal was in time by {LastDayOfRenewal(span)} (Bus. & Prof. Code § 7141.5), a certificate of insurance by {LastDayOfCertificate(span)}."),
        };
    }
}
