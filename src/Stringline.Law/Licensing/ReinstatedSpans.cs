using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Licensing;

/// <summary>
/// The spans of a license that count where some were put back after a lapse or suspension. The time has two starts: the expiration, for a
/// renewal; the effective date of the certificate, for insurance.
/// </summary>
/// <param name="Surely">Those that surely count.</param>
/// <param name="AtMost">Those that count on some reading.</param>
/// <param name="Why">The reasons for each that was put back.</param>
/// <param name="Questions">What would settle it.</param>
internal sealed record ReinstatedSpans(IReadOnlyList<LicenseSpan> Surely, IReadOnlyList<LicenseSpan> AtMost, IReadOnlyList<Reason> Why,
    IReadOnlyList<Question> Questions)
{
    /// <summary>Sorts the spans.</summary>
    public static ReinstatedSpans Of(NumberTable numbers, License license)
    {
        if (license.Active.All(static span => span.Reinstated is null))
            return new ReinstatedSpans(license.Active, license.Active, [], []);
        var (surely, atMost) = (new List<LicenseSpan>(), new List<LicenseSpan>());
        var (why, questions) = (new List<Reason>(), new List<Question>());
        foreach (var span in license.Active)
        {
            var counts = span.Reinstated is null ? Verdict.Yes : Counts(numbers, span, why, questions);
            if (counts == Verdict.Yes)
                surely.Add(span);
            if (counts != Verdict.No)
                atMost.Add(span);
        }

        return new ReinstatedSpans(surely, atMost, why, questions);
    }

    private static Verdict Counts(NumberTable numbers, LicenseSpan span, List<Reason> why, List<Question> questions)
    {
        // A renewal runs from the expiration, the day before the span put back; a certificate from its effective date.
        var expired = span.From.PlusDays(-1);
        var (toRenew, toInsure) = (numbers.On(Number.RenewLicense, expired), numbers.On(Number.InsureLicense, span.From));
        var (renewal, certificate) = (toRenew.LastDay(expired), toInsure.LastDay(span.From));
        var (verdict, reason) = span.Cause switch
        {
            LapseCause.Renewal => Renewal(span, toRenew, renewal),
            LapseCause.Insurance => Insurance(span, toInsure, certificate),
            // By what a license suspended for another cause is put back, and in what time, other sections say.
            LapseCause.Other or null =>
                (Verdict.Open, Reason.Of("Bus. & Prof. Code § 7125.1(a)",
                    $"The license was put back from {span.From} on {span.Reinstated!.Value}. Whether it counts hangs on what the license "
                        + $"had lapsed for: a renewal was in time by {renewal} (Bus. & Prof. Code § 7141.5), a certificate of insurance "
                        + $"by {certificate}.")),
            _ => throw new InvalidOperationException($"No such cause: {span.Cause}."),
        };
        why.Add(reason);
        if (span.Cause is null)
            questions.Add(new Question($"Why had the license lapsed: was it not renewed, or was no certificate of insurance on file? "
                + $"The {toRenew} to put it back begin on different days.{HeadField.ClaimantLicenseActiveCause:aside}", Days: 1));
        if (span.Cause == LapseCause.Other)
            questions.Add(new Question($"By what was the license put back for the time past? The {toRenew} are those of a renewal or of an "
                + $"insurance certificate.{HeadField.ClaimantLicenseActiveCause:aside}"));
        // Late only by the board's day: a renewal counts by its postmark.
        if (span is { Cause: not LapseCause.Insurance, Sent: null } && span.Reinstated > renewal)
            questions.Add(
                new Question($"On which day was the renewal delivered or postmarked? By {renewal:iso} it is in "
                    + $"time.{HeadField.ClaimantLicenseActiveSent:aside}"));
        if (span is { Cause: not LapseCause.Renewal, BeyondControl: null } && span.Reinstated > certificate)
            questions.Add(new Question($"Was the registrar shown that the certificate was late for circumstances beyond the claimant's "
                + $"control? Then it counts all the same "
                + $"(Bus. & Prof. Code § 7125.1(b)).{HeadField.ClaimantLicenseActiveBeyondControl:aside}"));
        return verdict;
    }

    /// <summary>
    /// A renewal is in time if it is delivered or postmarked within 90 days of the expiration, the day before the span put back; the
    /// board's own day may be later. Nothing excuses a later one.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7141.5")]
    private static (Verdict Verdict, Reason Why) Renewal(LicenseSpan span, NumberRow days, LocalDate last)
    {
        const string Section = "Bus. & Prof. Code § 7141.5";
        var on = span.Sent ?? span.Reinstated!.Value;
        if (on <= last)
            return InTime(Section, span, days, on);
        if (MayBeRolled(on, last))
            return OnTheRoll(Section, span, days, on, last);
        if (span.Sent is null)
            return (Verdict.Open, Reason.Of(Section, $"The license was put back from {span.From}, but the board had the renewal only "
                + $"on {on}, after the {days} that ended on {last}: they count only if it was postmarked by then."));
        return span.Reinstated <= last
            ? (Verdict.Open, Reason.Of(Section, $"The license was put back from {span.From}. The file says that the board had the renewal "
                + $"on {span.Reinstated!.Value}, and that it was sent only on {on}, after the {days} that ended on {last}: one of the two "
                + $"is wrong."))
            : TooLate(Section, span, days, on, last);
    }

    /// <summary>
    /// A certificate of insurance counts from its effective date if the registrar received it within 90 days after that date: American
    /// Building Innovation v. Balfour Beatty (2024) 104 Cal.App.5th 954. A later one counts upon a showing that it was late for
    /// circumstances beyond control.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7125.1")]
    private static (Verdict Verdict, Reason Why) Insurance(LicenseSpan span, NumberRow days, LocalDate last)
    {
        const string Section = "Bus. & Prof. Code § 7125.1(a)";
        var on = span.Reinstated!.Value;
        if (on <= last)
            return InTime(Section, span, days, on);
        if (span.BeyondControl == true)
            return (Verdict.Yes, Reason.Of("Bus. & Prof. Code § 7125.1(b)", $"The license was put back from {span.From}, though the board "
                + $"had the certificate only on {on}, after the {days} that ended on {last}: the registrar was shown that it was late for "
                + $"circumstances beyond the licensee's control, so the days count."));
        if (MayBeRolled(on, last))
            return OnTheRoll(Section, span, days, on, last);
        return span.BeyondControl is null
            ? (Verdict.Open, Reason.Of("Bus. & Prof. Code § 7125.1(b)", $"The license was put back from {span.From}, but the board had the "
                + $"certificate only on {on}, after the {days} that ended on {last}: they count only if it was shown to be late for "
                + $"circumstances beyond the licensee's control."))
            : TooLate(Section, span, days, on, last);
    }

    private static (Verdict Verdict, Reason Why) InTime(string section, LicenseSpan span, NumberRow days, LocalDate on) => (Verdict.Yes,
        Reason.Of(section, $"The license was put back from {span.From}, and the board had what puts it back "
            + $"on {on}, within {days}: the days count."));

    private static (Verdict Verdict, Reason Why) TooLate(string section, LicenseSpan span, NumberRow days, LocalDate on, LocalDate last) =>
        (Verdict.No,
        Reason.Of(section, $"The license was put back from {span.From}, but the board had what puts it back only "
            + $"on {on}, after the {days} that ended on {last}: the days do not count, whatever the record now says (American Building "
            + $"Innovation v. Balfour Beatty (2024) 104 Cal.App.5th 954)."));

    // The board is the State's: no county's closing days count.
    private static bool MayBeRolled(LocalDate on, LocalDate last) => on <= OpenDays.Statutory.RollForwardOnAnyList(last);

    /// <summary>
    /// The last day of an act that the law wants done within some days moves on where it is a holiday; by which list is arguable.
    /// </summary>
    [Rule("Code Civ. Proc. § 12a")]
    private static (Verdict Verdict, Reason Why) OnTheRoll(string section, LicenseSpan span, NumberRow days, LocalDate on,
        LocalDate last) => (Verdict.Open,
        Reason.Of(section, $"The license was put back from {span.From}, and the board had what puts it back "
            + $"on {on}, after the {days} that ended on {last}, which was closed: they count if that moves the last day "
            + $"(Code Civ. Proc. § 12a)."));
}
