using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Counting;
using Stringline.Law.Recording;

namespace Stringline.Law.Tests.Numbers;

/// <summary>
/// Every number in two made versions, the old value and another, changed on some day. A job whose days lie before the change keeps its
/// answer, one whose days lie after it follows the other value, and between the two lies one day, that of the fact which the number
/// governs.
/// </summary>
public sealed class NumberVersionsTests
{
    private static readonly LocalDate Long = new(1850, 1, 1);

    // What a fee is reckoned with: no assessment says it.
    private static readonly Number[] OfAFee =
    [
        Number.FirstPage, Number.FurtherPage, Number.PageOfAnotherSize, Number.PenaltyPrint, Number.FreeReferences, Number.FurtherReference,
        Number.NamesInAGroup, Number.GroupOfNames, Number.FraudFee, Number.HomesFee, Number.MostHomesFees, Number.CovenantFee,
    ];

    // Asked for in their newest version: a page is laid out in one way; and for the day on which it ended.
    private static readonly Number[] OfAPage =
    [
        Number.ArchiveDollar, Number.LinesInAnInch, Number.CharactersInAnInch, Number.PageWidth, Number.PageHeight, Number.SideMargin,
        Number.TopBand, Number.ReturnPart,
    ];

    private static IReadOnlyList<(JobFile Job, LocalDate AsOf)> Jobs { get; } = [.. NumberFacts.All, .. Drawn()];

    private static IEnumerable<(JobFile, LocalDate)> Drawn()
    {
        for (ulong seed = 1; seed <= 400; seed++)
            yield return RemedyJobGen.Of(seed);
    }

    // The table with one number changed from a day on; without a day, in force since long ago.
    private static NumberTable Changed(Number id, LocalDate from)
    {
        var row = NumberTable.Shipped.Of(id)[0] with { From = Long, Until = null };
        var other = row.Unit is NumberUnit.Dollars ? row.Value * 2 : row.Value + 3;
        var made = new NumberRow(id, other, row.Unit, row.Section, from, null, row.Sure, row.Source);
        NumberRow[] versions = from == Long ? [made] : [row with { Until = from.PlusDays(-1) }, made];
        return new NumberTable(Enum.GetValues<Number>().SelectMany(other => other == id ? versions : NumberTable.Shipped.Of(other)));
    }

    private static string Said(JobFile job, LocalDate asOf, NumberTable numbers) =>
        string.Join('\n', Assessment.Of(job, asOf, OpenDays.Statutory, numbers: numbers).Said(reasons: true));

    [Fact]
    public void An_answer_follows_the_version_of_the_day_that_the_number_governs()
    {
        var never = new LocalDate(2200, 1, 1);
        var unshown = new List<Number>();
        var said = Jobs.Select(j => Said(j.Job, j.AsOf, NumberTable.Shipped)).ToArray();
        foreach (var id in Enum.GetValues<Number>().Except([.. OfAFee, .. OfAPage]))
        {
            var (changed, kept) = (Changed(id, Long), Changed(id, never));
            var at = -1;
            for (var i = 0; i < Jobs.Count && at < 0; i++)
            {
                var (job, asOf) = Jobs[i];
                var old = Said(job, asOf, kept);
                if (Said(job, asOf, changed) == old)
                    continue;
                at = i;
                // A section that ends or begins is another answer under a table without an end.
                if (NumberTable.Shipped.Of(id) is [{ Until: null, From.Year: < 2020 }])
                    Assert.Equal(said[i], old);
                // Between a change long ago and one that never comes lies the day of the fact.
                var (before, after) = (Long, never);
                while (NodaTime.Period.DaysBetween(before, after) > 1)
                {
                    var middle = before.PlusDays(NodaTime.Period.DaysBetween(before, after) / 2);
                    if (Said(job, asOf, Changed(id, middle)) == old)
                        after = middle;
                    else
                        before = middle;
                }

                Assert.InRange(before.Year, 2020, 2040);
                Assert.NotEqual(old, Said(job, asOf, Changed(id, before)));
                Assert.Equal(old, Said(job, asOf, Changed(id, after)));
            }

            if (at < 0)
                unshown.Add(id);
        }

        Assert.True(unshown.Count == 0, $"No job shows that it matters: {string.Join(' ', unshown.Order())}. Add one "
            + $"to {nameof(NumberFacts)}.");
    }
    /// <summary>A fee follows the version of the day on which the paper is recorded.</summary>
    [Fact]
    public void A_fee_follows_the_version_of_the_day_of_recording()
    {
        var day = new LocalDate(2026, 11, 30);
        foreach (var id in OfAFee)
        {
            var old = Fee(Changed(id, new LocalDate(2200, 1, 1)));
            Assert.NotEqual(old, Fee(Changed(id, day)));
            Assert.Equal(old, Fee(Changed(id, day.PlusDays(1))));
        }

        string Fee(NumberTable numbers)
        {
            var fee = RecordingFee.Of(RecorderOffice.Of("Yolo", [], [], day) with { Numbers = numbers }, new FeeRequest
            {
                Pages = 3, Titles = 2, Parcels = 5, Names = 40, References = 9, NonstandardPages = 1, PenaltyPages = 1,
            });
            return string.Join('\n', fee.Parts.Concat(fee.Unpriced)
                .Select(part => $"{part.Words} {part.Amount} {part.Most} {part.Why}").Concat(fee.WhatCouldChangeIt));
        }
    }
}
