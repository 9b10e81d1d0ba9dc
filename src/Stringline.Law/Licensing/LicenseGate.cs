using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Licensing;

/// <summary>Whether the claimant was licensed on every day of its work (Bus. &amp; Prof. Code § 7031).</summary>
public static class LicenseGate
{
    internal const string Bar = "Bus. & Prof. Code § 7031(a)";

    /// <summary>
    /// The answer on the license. One day without a license that the work needs bars all recovery, and the lien with it, unless a court
    /// finds that the license law was substantially complied with.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7031(a)")]
    [Rule("Bus. & Prof. Code § 7031(c)")]
    public static Outcome Of(FactsAsOf facts) => facts.Job.Claimant.License switch
    {
        null => Exemptions.WhereTheFileIsSilent(facts.Job.Claimant),
        { Required: false } => Exemptions.NotRequired(facts),
        { } license => Required(facts, license),
    };

    private static Outcome Required(FactsAsOf facts, License license)
    {
        if (license.Active.Count == 0)
        {
            return license.Never
                ? NeverLicensed(facts, $"A license is needed, and the claimant never had one.")
                : Answer(Standing.InDoubt,
                    [Reason.Of(Bar, $"A license is needed, but the file does not say on which days it was active.")],
                    [new Question($"On which days was the license active, or was there never one? Leave out days on which it was "
                        + $"inactive.{HeadField.ClaimantLicenseActive:aside}")]);
        }

        if (facts.FirstFurnished is not { } first || facts.LastFurnished is not { } last)
        {
            return facts.HasFurnished
                ? Answer(Standing.InDoubt,
                    [Reason.Of(Bar, $"The license must be active on every day of the work; a day of furnishing is unknown.")],
                    [new Question($"On which day was each item furnished?{WorkKinds.Furnished:aside}")])
                : Answer(Standing.Open,
                    [Reason.Of(Bar, $"The license must be active on every day of the work; nothing has been furnished yet.")], []);
        }

        var spans = ReinstatedSpans.Of(facts.Numbers, license);
        if (FirstUncoveredDay(spans.Surely, first.Earliest, last.Latest) is { } gap)
            return WithAGap(facts, license, spans, first, last, gap);
        if (PerformedUntil(facts) is { } until && FirstUncoveredDay(spans.Surely, last.Latest, until) is { } after)
            return AfterTheLastFurnishing(facts, after, until);
        return Covered(license, spans, first, last);
    }

    // Performance ends when the claimant has ceased, which may be after the last furnishing that is entered.
    private static LocalDate? PerformedUntil(FactsAsOf facts) => facts.All<FurnishingEnded>() is [.., var ended] ? ended.On.Latest : null;

    private static Outcome AfterTheLastFurnishing(FactsAsOf facts, LocalDate after, LocalDate until) => Answer(Standing.InDoubt,
        [Reason.Of(Bar, $"No license was active on {after}, and the work ended only by {until}: the license must be active at all times "
            + $"during the performance."), .. MoneyBack(facts)],
        [new Question($"What was done for the job after {after.PlusDays(-1):iso}? If anything was, there was no license for "
            + $"it.{WorkKinds.Furnished:aside}"), .. SubstantialCompliance(facts.Job.Claimant.License!)]);

    private static Outcome WithAGap(FactsAsOf facts, License license, ReinstatedSpans spans, DaySpan first, DaySpan last, LocalDate gap)
    {
        if (SurelyWithout(spans.AtMost, first, last) is not { } without)
        {
            var putBackOpen = FirstUncoveredDay(spans.AtMost, first.Earliest, last.Latest) is null;
            return Answer(Standing.InDoubt,
                [Reason.Of(Bar, $"No license was surely active on {gap}, which may be a day of the work."), .. spans.Why],
                putBackOpen ? spans.Questions
                    : [.. spans.Questions, new Question($"On which day exactly did the work begin and end?{WorkKinds.Furnished:aside}")]);
        }

        if (!WasLicensedBefore(license, first))
            return NeverLicensed(facts, $"No license was active on {without}, nor on any day before the work; the bar reaches all "
                + $"compensation, also for the licensed days.", spans);
        Reason[] why =
        [
            Reason.Of(Bar, $"No license was active on {without}; the bar reaches all compensation, also for the licensed days."),
            .. spans.Why,
            NarrowWay(license),
            .. MoneyBack(facts),
        ];
        return license.GoodFaith == false
            ? Answer(Standing.Lost, why, [])
            : Answer(Standing.InDoubt, why, [.. spans.Questions, .. SubstantialCompliance(license)]);
    }

    // The first furnishing may have been as late as first.Latest, and the last as early as last.Earliest: the days between are surely
    // within the work. Where they cross, no single day is sure, but some day from the one to the other is.
    private static Sentence? SurelyWithout(IReadOnlyList<LicenseSpan> atMost, DaySpan first, DaySpan last)
    {
        var (from, to) = (first.Latest, last.Earliest);
        if (from <= to)
            return FirstUncoveredDay(atMost, from, to) is { } day ? (Sentence)$"{day}, a day within the work" : null;
        return atMost.Any(span => span.From <= from && !(span.To < to)) ? null
            : (Sentence)$"any day from {to} to {from}, on one of which at least the work was done";
    }

    /// <summary>
    /// The one way out of the bar, and a narrow one: to whoever was licensed before the performance, a court may after an evidentiary
    /// hearing hold that the license law was substantially complied with.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7031(e)")]
    private static bool WasLicensedBefore(License license, DaySpan first)
    {
        foreach (var span in license.Active)
        {
            if (span.From <= first.Latest)
                return true;
        }

        return false;
    }

    private static Reason NarrowWay(License license) => license.GoodFaith == false
        ? Reason.NotApplied("Bus. & Prof. Code § 7031(e)", $"Substantial compliance asks for a reasonable and good-faith effort to keep "
            + $"the license and a prompt cure; the file says that there was none.")
        : Reason.Of("Bus. & Prof. Code § 7031(e)", $"Lost unless a court finds substantial compliance at an evidentiary hearing: duly "
            + $"licensed before the performance, reasonable and good-faith effort to keep the license, prompt and good-faith cure on "
            + $"learning of the lapse. It must be heard (Pacific Caisson & Shoring v. Bernards Bros. (2011) 198 Cal.App.4th 681), and is "
            + $"seldom found (the same (2015) 236 Cal.App.4th 1246; Construction Financial v. Perlite Plastering (1997) 53 Cal.App.4th "
            + $"170).");

    private static Question[] SubstantialCompliance(License license) => license.GoodFaith is not null ? [] :
    [
        new Question($"Was the claimant duly licensed in California before this work began?{HeadField.ClaimantLicenseActive:aside}"),
        new Question($"Did the claimant act reasonably and in good faith to keep the license?{HeadField.ClaimantLicenseGoodFaith:aside}"),
        new Question($"Did the claimant act promptly and in good faith to cure the lapse once it learned of "
            + $"it?{HeadField.ClaimantLicenseGoodFaith:aside}"),
    ];

    private static Outcome NeverLicensed(FactsAsOf facts, Sentence words, ReinstatedSpans? spans = null) => Answer(Standing.Lost,
    [
        Reason.Of(Bar, words),
        .. spans?.Why ?? [],
        Reason.NotApplied("Bus. & Prof. Code § 7031(e)", $"Substantial compliance is not open to one who was not duly licensed before the "
            + $"performance (MW Erectors v. Niederhauser Ornamental & Metal Works (2005) 36 Cal.4th 412)."),
        .. MoneyBack(facts),
    ], []);

    /// <summary>Whoever hired an unlicensed contractor may sue to get back all that it paid.</summary>
    [Rule("Bus. & Prof. Code § 7031(b)")]
    private static Reason[] MoneyBack(FactsAsOf facts)
    {
        var payments = facts.All<Paid>();
        return payments.Count == 0 ? [] :
            [Reason.Of("Bus. & Prof. Code § 7031(b)", $"The one who hired the claimant may sue to get back all that was "
                + $"paid, {Total.Of(payments, static p => p.Amount)}: weigh it before suing for the rest.", payments)];
    }

    /// <summary>
    /// Proof is a verified certificate of the board: that the one who sues was duly licensed in the proper class at all times. And a
    /// license is suspended by operation of law where insurance that is required is not there, even while the record shows it active.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7031(d)")]
    [Rule("Bus. & Prof. Code § 7125.2")]
    private static Outcome Covered(License license, ReinstatedSpans spans, DaySpan first, DaySpan last)
    {
        var doubt = license is { SameEntity: false } or { FitsWork: false } or { InsuranceOnFile: false };
        return new Outcome(doubt ? Standing.InDoubt : Standing.Kept, new Words(
            () =>
            [
                Reason.Of(Bar, $"The license was active on every day from {first.Earliest} to {last.Latest}."),
                .. spans.Why,
                Reason.Of("Bus. & Prof. Code § 7031(d)", $"Before suing get the board's verified certificate: if licensure is denied, "
                    + $"nothing else proves it."),
                .. license.SameEntity == false
                    ? (Reason[])[
                        Reason.Of("Bus. & Prof. Code § 7031(d)", $"The license is not that of the one who made the contract and sues: a "
                            + $"license of another person or company is none.")] : [],
                .. license.FitsWork == false
                    ? (Reason[])[
                        Reason.Of("Bus. & Prof. Code § 7031(d)", $"The license is not in the proper class for the work: for work outside "
                            + $"its class a contractor is not duly licensed.")] : [],
                .. license.InsuranceOnFile == false
                    ? (Reason[])[
                        Reason.Of("Bus. & Prof. Code § 7125.2", $"Where required workers' compensation insurance lapses, or is not "
                            + $"obtained, the license is suspended by operation of law on that day, whatever the record shows.")] : [],
            ],
            () =>
            [
                .. license.SameEntity is null
                    ? (Question[])[
                        new Question($"Is the license held by the very person or company that made the contract and "
                            + $"sues?{HeadField.ClaimantLicenseSameEntity:aside}")] : [],
                .. license.FitsWork is null
                    ? (Question[])[
                        new Question($"Is its class proper for all the work that was done?{HeadField.ClaimantLicenseFitsWork:aside}")] : [],
                .. license.InsuranceOnFile is null
                    ? (Question[])[
                        new Question($"Was a certificate of workers' compensation insurance, or a true statement that there are no "
                            + $"employees, on file with the board on every day of the "
                            + $"work?{HeadField.ClaimantLicenseInsuranceOnFile:aside}")] : [],
            ]));
    }

    /// <summary>The first day of a span, ends included, on which no license span was active; null where all are covered.</summary>
    public static LocalDate? FirstUncoveredDay(IReadOnlyList<LicenseSpan> active, LocalDate from, LocalDate to)
    {
        var day = from;
        while (day <= to)
        {
            LocalDate? reachedBy = null;
            foreach (var span in active)
            {
                if (span.From <= day && !(span.To < day))
                    reachedBy = span.To ?? to;
            }

            if (reachedBy is not { } covered)
                return day;
            day = covered.PlusDays(1);
        }

        return null;
    }

    /// <summary>What the finding is called.</summary>
    internal const string Title = "Contractor's license";

    /// <summary>The finding <c>license</c>.</summary>
    internal static Finding Finding(Outcome license) => license.Finding("license", Title);

    internal static Outcome Answer(Standing standing, Reason[] why, IReadOnlyList<Question> questions) =>
        new(standing, new Words(why, questions));
}
