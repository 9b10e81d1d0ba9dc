using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// What a court's order on summary release does to the amounts: it determines what may be withheld further, and nothing else
/// (Civ. Code §§ 9412(c), 9414).
/// </summary>
public sealed class SummaryOrderTests
{
    private static readonly int Tries = Times.AtMost(1000);

    private static JobBuilder Given(decimal? stated = 6430m) =>
        RemedyJobs.UsualPublic().StopPaymentGiven("2025-11-03", stated, false, "city");

    private static JobBuilder Ordered(JobBuilder job, decimal? freed, string on = "2026-01-12") =>
        job.Add(i => new ReleaseOrdered { Index = i, On = JobBuilder.When(on), Amount = freed });

    private static (Standing Standing, decimal? Amount) Held(JobBuilder job, string asOf = "2026-01-15") =>
        job.On(asOf).Get("stop-payment-notice.amount") is var amount ? (amount.Standing, amount.Amount) : default;

    [Theory]
    [InlineData(6430, 2400, 4030)]
    [InlineData(6430, null, 6430)] // denied
    [InlineData(9000, 2570, 6430)] // the excess alone was set free
    [InlineData(9000, 3570, 5430)]
    [InlineData(5000, 1000, 4000)]
    [Proves("Civ. Code § 9412(c)")]
    public void What_the_court_set_free_is_held_no_more(int stated, int? freed, int held) =>
        Assert.Equal((Standing.Kept, (decimal?)held), Held(Ordered(Given(stated), freed)));

    // Where the whole was set free nothing is held: the order is determinative.
    [Theory]
    [InlineData("2026-01-12")]
    [InlineData("?")]
    [Proves("Civ. Code § 9412(c)")]
    public void The_whole_set_free_leaves_nothing_held(string on) =>
        Assert.Equal((Standing.Lost, (decimal?)0m), Held(Ordered(Given(), 6430m, on)));

    // What the notice states is not told: what was set free comes off what is due.
    [Fact]
    [Proves("Civ. Code § 9412(c)")]
    public void A_notice_of_unknown_amount_holds_so_much_less() => Assert.Equal(4030m, Held(Ordered(Given(null), 2400m)).Amount);

    [Fact]
    [Proves("Civ. Code § 9414")]
    public void Bond_and_debt_are_as_before()
    {
        var (before, after) = (Given().On("2026-01-15"), Ordered(Given(), 2400m).On("2026-01-15"));
        Assert.Equal(4030m, after.AmountOf(Remedy.StopPaymentNotice)!.Demand);
        Assert.Equal(-2400m, after.AmountOf(Remedy.StopPaymentNotice)!.Step("set-free"));
        Assert.Equal(before.AmountOf(Remedy.PaymentBond)!.Demand, after.AmountOf(Remedy.PaymentBond)!.Demand);
        Assert.Equal(before.Owed.Demand, after.Owed.Demand);
        Assert.Equal((before.Get("payment-bond.amount").Standing, (decimal?)6430m),
            (after.Get("payment-bond.amount").Standing, after.Get("payment-bond.amount").Amount));
    }

    // A further notice reaches what was furnished since, and not what was set free.
    [Fact]
    [Proves("Civ. Code § 9412(c)")]
    public void A_further_notice_reaches_only_later_work()
    {
        var job = RemedyJobs.Public().Furnished("2025-08-05", 6430m).NoticedPublic().StopPaymentGiven("2025-09-03", 6430m, false, "city");
        Ordered(job, 2400m, "2025-10-06").Furnished("2025-10-15", 1000m).Accepted();
        Assert.Equal(4030m, Held(job, "2025-11-12").Amount);
        Assert.True(job.On("2025-11-12").Get("stop-payment-notice.amount").Says("$1,000.00 is not held by it"));
        Assert.Equal(5030m, job.On("2025-11-12").AmountOf(Remedy.StopPaymentNotice)!.Demand);
        Assert.Equal(5030m, Held(job.StopPaymentGiven("2025-11-12", 1000m, false, "city"), "2025-11-13").Amount);
    }

    [Fact]
    public void An_order_takes_no_more_than_it_frees_and_nothing_from_bond_or_debt() =>
        Gen.Select(LienJobGen.HalfAYear.Private, LienJobGen.HalfAYear.AsOf, LienJobGen.HalfAYear.When, LienJobGen.HalfAYear.Money).Sample(
            (drawn, asOf, on, freed) =>
            {
                var job = LienJobGen.As(drawn, WorkKind.Public);
                job = job with { Entries = [.. job.Entries.Where(static e => e is not ReleaseOrdered)] };
                var (before, after) =
                    (Assessment.Of(job, asOf, OpenDays.Statutory),
                        Assessment.Of(job.With(new ReleaseOrdered { Index = 0, On = on, Amount = freed }), asOf, OpenDays.Statutory));
                Assert.Equal(before.AmountOf(Remedy.PaymentBond)?.Demand, after.AmountOf(Remedy.PaymentBond)?.Demand);
                Assert.Equal(before.Owed.Demand, after.Owed.Demand);
                if (before.AmountOf(Remedy.StopPaymentNotice) is { } was && after.AmountOf(Remedy.StopPaymentNotice) is { } left)
                    Assert.InRange(left.Demand, was.Demand - freed, was.Demand);
                if (before.Find("payment-bond.amount") is { } bond)
                    Assert.Equal((bond.Standing, bond.Amount),
                        (after.Get("payment-bond.amount").Standing, after.Get("payment-bond.amount").Amount));
                if (before.Find("stop-payment-notice.amount") is { } held)
                    Assert.True(after.Get("stop-payment-notice.amount").Amount <= held.Amount);
            },
            iter: Tries);
}
