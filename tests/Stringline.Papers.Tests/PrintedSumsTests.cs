using System.Text.RegularExpressions;
using CsCheck;
using Stringline.Law.Numbers;
using Stringline.Law;
using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.PromptPayment;
using Stringline.Law.Recording;
using Stringline.Law.StopPaymentNotice;
using Stringline.Papers.Fees;
using Stringline.Papers.Waiver;
using Stringline.Papers.Writing;
using Stringline.Testing;

namespace Stringline.Papers.Tests;

/// <summary>
/// No paper works out a sum by itself: each that is printed, on the paper or on its sheet, is one that the law found on that day, one that
/// the job file holds, one that was told with the request, or a price of the recorder's.
/// </summary>
[Slow(Slow.Lasting)]
public sealed partial class PrintedSumsTests(ITestOutputHelper output)
{
    // In the words of the statutes: § 9362's ten dollars, and the limits of Civ. Code §§ 8318, 8700 and Pub. Contract Code § 20104.
    private static readonly HashSet<decimal> Statutory =
        [10m, 50_000m, 100_000m, 375_000m, 5_000_000m, 1_000_000m];

    [Fact]
    public void Every_sum_on_a_paper_is_the_law_s_the_file_s_told_or_a_fee() =>
        PrintedValues.AreKnown(output, "sums", In, Known);

    private static IEnumerable<(decimal Sum, string Near)> In(string text) => Sum().Matches(text).Select(m =>
        (decimal.Parse(m.Groups[1].Value, System.Globalization.NumberStyles.Number, System.Globalization.CultureInfo.InvariantCulture),
            text[Math.Max(0, m.Index - 60)..Math.Min(text.Length, m.Index + m.Length + 20)].ReplaceLineEndings(" ")));

    private static HashSet<decimal> Known(PaperDraw drawn, Assessment assessment, PacketOutcome.Made papers)
    {
        var known = new HashSet<decimal>(Statutory);
        foreach (var value in WhatIsKnown.Of(drawn, assessment, papers).Concat(Worked(drawn, assessment).OfType<decimal>().Cast<object>()))
        {
            if (value is decimal sum)
                known.Add(Math.Abs(sum));
            else if (value is string text)
                known.UnionWith(In(text).Select(s => s.Sum));
        }

        if (drawn.Job.Work.Site.County is { } county && Counties.Find(county) is not null
            && RecorderTable.For(county, assessment.AsOf).Dollars(RecorderField.FiledNotice) is { } filing)
            known.Add(filing);
        return known;
    }

    // What functions of the law work out from the file and from what was told.
    private static IEnumerable<decimal?> Worked(PaperDraw drawn, Assessment assessment)
    {
        var (id, job, _, options) = drawn;
        var facts = new FactsAsOf(job, assessment.AsOf);
        var owed = assessment.Owed.Demand;
        yield return PriceEstimate.Of(facts);
        yield return MoneyDue.WithoutRetention(facts, owed);
        yield return MoneyDue.RetentionIn(facts, owed);
        List<decimal?> stated =
            [.. facts.All<ClaimRecorded>().Select(c => c.Amount), .. facts.All<StopPaymentGiven>()
            .Select(n => StopPaymentReleases.StandsFor(facts, n))];
        foreach (var sum in stated)
        {
            yield return sum;
            yield return sum is { } whole && options.Amount is { } less ? Lowered.Left(whole, less) : null;
        }

        if (assessment.AmountOf(Remedy.StopPaymentNotice) is { } held && options.Bonded)
            yield return ReleaseBond.AmountFor(held.Demand, NumberTable.Shipped.On(Number.BondOfNotice, assessment.AsOf));
        if (id.StartsWith("waiver-", StringComparison.Ordinal))
        {
            var outlook = WaiverOutlook.Of(assessment,
                WaiverPaper.Signed(WaiverPaper.Ordered(Form(id), new Matter(job, assessment, options)), job, assessment.AsOf));
            yield return outlook.Then;
            yield return outlook.Released;
            yield return outlook.Difference;
            yield return outlook.InDoubt;
        }
    }

    private static WaiverForm Form(string id) => id switch
    {
        "waiver-8132" => WaiverForm.ConditionalProgress,
        "waiver-8134" => WaiverForm.UnconditionalProgress,
        "waiver-8136" => WaiverForm.ConditionalFinal,
        "waiver-8138" => WaiverForm.UnconditionalFinal,
        _ => throw new ArgumentOutOfRangeException(nameof(id), id, "No such waiver."),
    };

    [GeneratedRegex(@"\$\s?(\d[\d,]*(?:\.\d\d)?)")]
    private static partial Regex Sum();
}
