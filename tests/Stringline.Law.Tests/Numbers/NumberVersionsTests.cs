using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Numbers;

/// <summary>
/// Every number in two made versions, the old value and another, changed on some day. A job whose days lie before the change keeps its answer, one
/// whose days lie after it follows the other value, and between the two lies one day, that of the fact which the number governs.
/// </summary>
public sealed class NumberVersionsTests
{
    private static readonly LocalDate Long = new(1850, 1, 1);

    // Still to be shown: no job drawn here has their facts. The list may only shrink.
    private static readonly HashSet<Number> NotDrawn =
    [
        Number.Nonresponsibility, Number.BondBeforeDeed, Number.BondBeforeSiteImprovement, Number.ServePetition,
        Number.PetitionByMail, Number.ObjectToSureties, Number.ReplaceBond, Number.EntityTells, Number.LeastToAnswer,
        Number.MostToAnswer, Number.HearMotion, Number.NoticeOfHearing, Number.HearingByMail, Number.FiledNoticeKept,
        Number.NoBondUpTo, Number.SueAfterStay, Number.ConvertDesignLien, Number.FeePriceWithSecurity,
        Number.LesserPriceWithSecurity, Number.LeaseLikeFee, Number.WorthWithoutSecurity, Number.OwnersSecurity,
        Number.OwnersSecurityOfShortWork, Number.ShortWork, Number.SuspendForSecurity, Number.OwnersProgress,
        Number.OwnersProgressPenalty, Number.OwnersProgressHeld, Number.UtilityProgress, Number.HirersProgress,
        Number.HirersProgressPenalty, Number.HirersProgressHeld, Number.StateHirersProgress, Number.StateHirersProgressPenalty,
        Number.StateHirersProgressHeld, Number.OwnersRetention, Number.OwnersRetentionHeld, Number.HirersRetention,
        Number.HirersRetentionHeld, Number.RetentionPenalty, Number.AnswerDisputedWork, Number.PayDisputedWork,
        Number.RetentionCap, Number.PublicRetentionCap, Number.StopWorkUnpaid, Number.StopWorkPosting, Number.StopWork,
        Number.OwnerTellsLender, Number.ChargesSubmitted, Number.ChargesPaid, Number.ChargesPenalty, Number.ChargesHeld,
        Number.LocalProgress, Number.StateProgress, Number.TrusteesProgress, Number.LocalReturn, Number.StateReturn,
        Number.TrusteesReturn, Number.LegalRate, Number.StateRetention, Number.StateRetentionLittle,
        Number.PassOnPublicRetention, Number.PublicRetentionCharge, Number.PublicRetentionHeld, Number.RetentionIdleDays,
        Number.RetentionIdleDaysWithNotice, Number.EntitysStatement, Number.AfterMeeting, Number.EntityPays,
        Number.EntitysConference, Number.EntitysSecondStatement, Number.EntitysMediator, Number.EntitysInterest,
        Number.ContractorsAnswer, Number.GreatestClaim, Number.GreaterClaim, Number.AgencysStatement,
        Number.AgencysStatementOnGreater, Number.AskForDocuments, Number.AfterDocuments, Number.AfterDocumentsOnGreater,
        Number.DemandConference, Number.Arbitrate, Number.ArbitrateWithoutDecision, Number.OwnersStatement, Number.OwnerPays,
        Number.OwnersConference, Number.OwnersSecondStatement, Number.OwnerPaysTheRest, Number.OwnersMediator,
        Number.OwnersInterest, Number.PrivateContractorsAnswer, Number.SecondSuspensionNotice, Number.SuspendAfterClaim,
    ];

    private static IReadOnlyList<(JobFile Job, LocalDate AsOf)> Jobs { get; } = [.. Drawn()];

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
        foreach (var id in Enum.GetValues<Number>())
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

        Assert.True(NotDrawn.SetEquals(unshown), $"No job shows that it matters: {string.Join(' ', unshown.Order())}.");
    }
}
