using System.Text.RegularExpressions;
using CsCheck;
using NodaTime.Text;
using Stringline.Law.Numbers;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.PromptPayment;
using Stringline.Testing;

namespace Stringline.Papers.Tests;

/// <summary>
/// No paper counts a day: each that is printed, on the paper or on its sheet, is one that the law found on that day, one that the job file
/// holds, one that was told with the request, the day of asking, or the day of a recorder's price.
/// </summary>
[Slow(Slow.Lasting)]
public sealed partial class PrintedDaysTests(ITestOutputHelper output)
{
    private const int DaysOfPosting = 5;

    // Gov. Code § 27391: the day on which the wider rule of who may record electronically was to end.
    private static readonly LocalDate[] Statutory = [new(2027, 1, 1)];

    private static readonly LocalDatePattern Long = LocalDatePattern.CreateWithInvariantCulture("MMMM d, uuuu");

    [Fact]
    public void Every_day_on_a_paper_is_the_law_s_the_file_s_told_or_that_of_a_price() =>
        PrintedValues.AreKnown(output, "days", In, Known);

    private static HashSet<LocalDate> Known(PaperDraw drawn, Assessment assessment, PacketOutcome.Made papers)
    {
        var known = new HashSet<LocalDate>(Statutory);
        foreach (var value in WhatIsKnown.Of(drawn, assessment, papers).Concat(Worked(drawn, assessment)))
        {
            if (value is LocalDate day)
                known.Add(day);
            else if (value is string text)
                known.UnionWith(In(text).Select(d => d.Day));
        }

        return known;
    }

    // What functions of the law work out from the file and from what was told.
    private static IEnumerable<object> Worked(PaperDraw drawn, Assessment assessment)
    {
        var (id, job, asOf, options) = drawn;
        switch (id)
        {
            // § 8182(a): fifteen days, by the calendar of the assessment.
            case "notice-of-completion":
                foreach (var completed in job.Entries.OfType<Completed>().Select(c => c.On).OfType<DayFact.Exact>().Select(e => e.Day)
                    .Concat(options.Day is { } told ? [told] : Array.Empty<LocalDate>()))
                {
                    var time = assessment.TimeToRecordCompletion(completed);
                    yield return time.PlanOn;
                    yield return time.Last;
                    yield return time.Latest;
                }

                break;
            // § 8800(a): the owner's thirty days, if the demand is given that day.
            case "payment-demand":
                yield return MoneyDue.OwnersLastDay(NumberTable.Shipped, asOf);
                break;
            // §§ 8832, 8834(a): the due day, and five days of posting before the notice.
            case "stop-work-notice":
                yield return asOf.PlusDays(DaysOfPosting);
                foreach (var notice in Supposed(drawn, assessment).Append(assessment).Select(a => a.Find("stop-work.notice-first-day")))
                {
                    if (notice is not null)
                        yield return StopWork.DueDay(NumberTable.Shipped, notice.Band!.Earliest.Day);
                }

                break;
        }

        foreach (var value in Supposed(drawn, assessment).SelectMany(a => a.Findings).SelectMany(WhatIsKnown.In))
            yield return value;
    }

    // What the law says once the paper is given, or with what was told put into the file: the papers say how far that reaches.
    private static IEnumerable<Assessment> Supposed(PaperDraw drawn, Assessment assessment)
    {
        var (id, job, asOf, options) = drawn;
        var (index, today) = (job.Entries.Count, DayFact.On(asOf));
        switch (id)
        {
            case "dispute-claim" or "claim-request":
                yield return assessment.Supposing(new DisputeClaimSent { Index = index, On = today, Amount = options.Amount });
                yield return assessment.Supposing(new ClaimRequestMade { Index = index, On = today, Amount = options.Amount });
                break;
            case "notice-of-credit" when options.Until is { } until:
                yield return assessment.Supposing(new CreditRecorded { Index = index, On = today, Until = until });
                break;
            case "stop-work-notice" when options.Day is { } due:
                if (options.Amount is { } amount)
                    yield return assessment.Supposing(new PaymentDemanded { Index = index, On = today, Amount = amount, Due = due });
                foreach (var demand in job.Entries.OfType<PaymentDemanded>())
                {
                    yield return assessment.Supposing(file => file with
                    {
                        Entries = [.. file.Entries.Select(e => e == demand ? demand with { Due = due } : e)],
                    });
                }

                break;
        }
    }

    private static IEnumerable<(LocalDate Day, string Near)> In(string text)
    {
        foreach (Match match in Written().Matches(text))
        {
            var spaced = string.Join(' ', match.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
            if (Long.Parse(spaced).TryGetValue(default, out var day) || LocalDatePattern.Iso.Parse(spaced).TryGetValue(default, out day))
                yield return (day, text[Math.Max(0, match.Index - 80)..Math.Min(text.Length, match.Index + match.Length + 20)]
                    .ReplaceLineEndings(" "));
        }
    }

    [GeneratedRegex(
        @"(?:January|February|March|April|May|June|July|August|September|October|November|December)\s+\d{1,2},\s+\d{4}|\b\d{4}-\d\d-\d\d\b")]
    private static partial Regex Written();
}
