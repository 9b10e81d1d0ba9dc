using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// A bankruptcy of one who is sued on a stop payment notice or a payment bond. The last days are Monday 20 April 2026 for the notice, and
/// for the bond of private work Wednesday 22 April (182 days and six months), of public work 20 and 21 July.
/// </summary>
public sealed class StayOnNoticeAndBondTests
{
    private const string Notice = "stop-payment-notice.action-last-day";
    private const string Bond = "payment-bond.action-last-day";

    private static JobBuilder PrivateNotice() => UsualPrivate("owner", "direct").StopPaymentGiven("2026-01-05", 6430m);

    private static JobBuilder PublicNotice() => UsualPublic().StopPaymentGiven("2026-01-05", 6430m, false, "city");

    private static JobBuilder PrivateBond() => UsualPrivate("owner", "direct").PaymentBond("2025-08-01");

    // 11 U.S.C. § 362(a): the action is not lost while the stay lasts; the day to act by stays where it was.
    [Theory]
    [InlineData("2026-03-02", Standing.Open)]
    [InlineData("2026-04-20", Standing.Open)]
    [InlineData("2026-04-21", Standing.InDoubt)]
    [InlineData("2027-04-21", Standing.InDoubt)]
    [Proves("11 U.S.C. § 362(a)")]
    public void While_the_owner_is_in_bankruptcy_the_action_on_its_notice_is_not_lost(string asOf, Standing expected)
    {
        var on = PrivateNotice().Bankrupt("owner", "2026-02-02").On(asOf);
        var action = on.Get(Notice);
        Assert.Equal((expected, "2026-04-20"), (action.Standing, action.Plan()));
        Assert.Null(action.Band!.Latest);
        Assert.True(action.Says("Do not sue Alder Court LLC"));
        Assert.Equal((expected, "2026-04-20"),
            (on.Get("stop-payment-notice.stay-last-day").Standing, on.Get("stop-payment-notice.stay-last-day").Plan()));
        Assert.DoesNotContain(on.Next, n => n.Finding == Notice);
        Assert.Contains(on.Next, n =>
            n.Finding == "stop-payment-notice.stay-last-day" && n.Do.StartsWith("Do not sue", StringComparison.Ordinal));
        Assert.Equal(Standing.Lost, PrivateNotice().On("2026-04-21").Get(Notice).Standing);
        Assert.True(PrivateNotice().On("2026-04-21").Get(Notice).Asks("(parties.bankruptSince)"));
    }

    // 2 February to 3 March stood still: 30 days, to 20 May. 16 to 18 April: 3 days, 23 April, but not before 30 days after the stay, 18
    // May.
    [Theory]
    [InlineData("2026-02-02", "2026-03-03", "2026-05-20", Standing.InDoubt)]
    [InlineData("2026-02-02", "2026-03-03", "2026-05-21", Standing.Lost)]
    [InlineData("2026-04-16", "2026-04-18", "2026-05-18", Standing.InDoubt)]
    [InlineData("2026-04-16", "2026-04-18", "2026-05-19", Standing.Lost)]
    [InlineData("2025-12-01", "2026-01-04", "2026-04-21", Standing.Lost)] // over before the notice
    [Proves("11 U.S.C. § 108(c)")]
    [Proves("Code Civ. Proc. § 356")]
    public void A_stay_that_is_over_leaves_it_in_doubt_as_long_as_the_time_may_have_stood_still(string since, string until, string asOf,
        Standing expected)
    {
        var on = PrivateNotice().Bankrupt("owner", since, until).On(asOf);
        Assert.Equal((expected, "2026-04-20"), (on.Get(Notice).Standing, on.Get(Notice).Plan()));
        Assert.Null(on.Find("stop-payment-notice.stay-last-day"));
    }

    [Theory]
    [InlineData("2026-02-01", Standing.Kept)]
    [InlineData("2026-02-02", Standing.InDoubt)]
    [InlineData("2026-03-03", Standing.InDoubt)]
    [InlineData("2026-03-04", Standing.Kept)]
    [InlineData("2026-05-20", Standing.InDoubt)] // perhaps in time after the stay
    [InlineData("2026-05-21", Standing.Lost)]
    [Proves("11 U.S.C. § 362(a)")]
    public void A_suit_filed_in_the_stay_or_in_the_time_after_it_is_in_doubt(string filed, Standing expected) =>
        Assert.Equal(expected, PrivateNotice().Bankrupt("owner", "2026-02-02", "2026-03-03")
            .ActionOn(filed, ActionOn.StopPaymentNotice, null, null, "owner").On("2026-06-01").Get(Notice).Standing);

    // Civ. Code § 9502: the entity and the direct contractor are both sued; the entity is sued in time all the same.
    [Fact]
    [Proves("11 U.S.C. § 362(a)")]
    public void On_public_work_the_direct_contractors_bankruptcy_leaves_the_suit_against_the_entity()
    {
        var on = PublicNotice().Bankrupt("direct", "2026-02-02").On("2026-03-02");
        Assert.Equal((Standing.Open, "2026-04-20"), (on.Get(Notice).Standing, on.Get(Notice).Plan()));
        Assert.True(on.Get(Notice).Says("Do not sue Brushline Builders Inc."));
        Assert.Null(on.Find("stop-payment-notice.stay-last-day"));
        Assert.Contains(on.Next, n => n.Finding == Notice);
        Assert.Equal(Standing.InDoubt, PublicNotice().Bankrupt("direct", "2026-02-02").On("2026-04-21").Get(Notice).Standing);
        Assert.Equal(Standing.Lost, PublicNotice().On("2026-04-21").Get(Notice).Standing);
        Assert.Equal(Standing.InDoubt, PublicNotice().Bankrupt("direct", "2026-02-02")
            .ActionOn("2026-03-02", ActionOn.StopPaymentNotice, null, null, "city", "direct").On("2026-04-21").Get(Notice).Standing);
    }

    // On private work the action is against the holder: the contractor is left out, and nothing stands still.
    [Fact]
    [Proves("11 U.S.C. § 362(a)")]
    public void On_private_work_the_contractors_bankruptcy_leaves_the_suit_against_the_holder()
    {
        var job = PrivateNotice().Bankrupt("direct", "2026-02-02");
        Assert.True(job.On("2026-03-02").Get(Notice).Says("leave it out of the suit"));
        Assert.Equal(Standing.Lost, job.On("2026-04-21").Get(Notice).Standing);
        Assert.Equal(Standing.Kept, job.ActionOn("2026-03-02", ActionOn.StopPaymentNotice, null, null, "owner").On("2026-04-21")
            .Get(Notice).Standing);
    }

    [Theory]
    [InlineData("2026-03-02", Standing.Open)]
    [InlineData("2026-04-23", Standing.InDoubt)]
    [Proves("11 U.S.C. § 362(a)")]
    [Proves("11 U.S.C. § 108(c)")]
    public void While_the_surety_is_in_bankruptcy_the_action_on_its_bond_is_not_lost(string asOf, Standing expected)
    {
        var on = PrivateBond().Bankrupt("surety", "2026-02-02").On(asOf);
        Assert.Equal(expected, on.Get(Bond).Standing);
        Assert.Equal(PrivateBond().On(asOf).Get(Bond).Plan(), on.Get(Bond).Plan());
        Assert.True(on.Get(Bond).Says("Do not sue Bollard Surety Co."));
        Assert.Contains(on.Next, n => n.Finding == "payment-bond.stay-last-day");
        Assert.DoesNotContain(on.Next, n => n.Finding == Bond);
        Assert.Equal(Standing.Lost, PrivateBond().On("2026-04-23").Get(Bond).Standing);
        Assert.True(PrivateBond().On("2026-04-23").Get(Bond).Asks("(parties.bankruptSince)"));
        Assert.Equal(Standing.InDoubt, PrivateBond().Bankrupt("surety", "2026-02-02")
            .ActionOn("2026-03-02", ActionOn.PaymentBond, null, null, "surety").On("2026-03-09").Get(Bond).Standing);
        Assert.Equal(Standing.InDoubt, UsualPublic().Bankrupt("surety", "2026-02-02").On("2026-08-03").Get(Bond).Standing);
        Assert.Equal(Standing.Lost, UsualPublic().On("2026-08-03").Get(Bond).Standing);
    }

    [Fact]
    [Proves("11 U.S.C. § 362(a)")]
    public void The_principals_bankruptcy_leaves_the_suit_against_the_surety()
    {
        var job = PrivateBond().Bankrupt("direct", "2026-02-02");
        Assert.True(job.On("2026-03-02").Get(Bond).Says("The surety is sued without it"));
        Assert.Equal(Standing.Lost, job.On("2026-04-23").Get(Bond).Standing);
        Assert.Equal(Standing.Kept, job.ActionOn("2026-03-02", ActionOn.PaymentBond, null, null, "surety").On("2026-04-23")
            .Get(Bond).Standing);
    }

    // The federal bond: one year after the last furnishing of 5 August 2025.
    [Fact]
    [Proves("11 U.S.C. § 108(c)")]
    public void On_federal_work_it_is_the_same()
    {
        var job = new JobBuilder().Work(w => w with { Kind = WorkKind.Federal }).NoParty("owner").Role(ClaimantRole.Supplier, "direct")
            .Furnished("2025-08-05", 6430m).PaymentBond(null);
        Assert.Equal(Standing.Lost, job.On("2026-08-06").Get("federal-bond.action-last-day").Standing);
        Assert.Equal(Standing.InDoubt, job.Bankrupt("surety", "2026-02-02").On("2026-08-06").Get("federal-bond.action-last-day").Standing);
        Assert.Contains(job.On("2026-08-06").Next, n => n.Finding == "federal-bond.stay-last-day");
    }

    // A bankruptcy only ever adds a doubt, and never a day: what was open stays open, what was kept or lost may be in doubt.
    [Fact]
    public void A_bankruptcy_adds_doubt_and_moves_no_day_to_act_by() =>
        Gen.Select(RemedyJobGen.Asked, Gen.Int[0, 9], Gen.Int[0, 500], Gen.Int[0, 400], Gen.Bool).Sample(
            (asked, place, since, length, lasts) =>
            {
                var debtor = asked.Job.Parties[place % asked.Job.Parties.Count];
                var from = new LocalDate(2026, 1, 5).PlusDays(since);
                var bankrupt =
                    asked.Job with { Parties =
                        [.. asked.Job.Parties.Select(p => p with { BankruptSince = p == debtor
                            ? from : null, BankruptUntil = p == debtor && !lasts ? from.PlusDays(length) : null })] };
                var plain = asked.Job with { Parties = [.. asked.Job.Parties.Select(static p => p with { BankruptSince = null })] };
                var (before, after) =
                    (Assessment.Of(plain, asked.AsOf, OpenDays.Statutory), Assessment.Of(bankrupt, asked.AsOf, OpenDays.Statutory));
                foreach (var id in (string[])[Notice, Bond, "federal-bond.action-last-day", "enforcement.last-day"])
                {
                    if (before.Find(id) is not { } was || after.Find(id) is not { } now)
                        continue;
                    Assert.Equal(was.ActBy, now.ActBy);
                    Assert.True(now.Standing == was.Standing || now.Standing == Standing.InDoubt,
                        $"{id}: {was.Standing} became {now.Standing}");
                }
            },
            iter: Times.AtMost(3000));
}
