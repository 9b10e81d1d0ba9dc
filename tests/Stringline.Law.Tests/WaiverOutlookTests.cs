using Stringline.Law.Facts;

namespace Stringline.Law.Tests;

/// <summary>What a waiver and release takes beyond its payment, said before it is signed (Civ. Code §§ 8132-8138).</summary>
public sealed class WaiverOutlookTests
{
    [Theory]
    [InlineData(6_430, 0, 2_000, 6_430, 4_430)]
    [InlineData(6_430, 1_500, 4_930, 4_930, null)]
    [InlineData(6_430, 1_500, 5_000, 4_930, null)]
    [InlineData(6_430, 6_430, 100, 0, null)]
    public void What_is_released_beyond_the_payment(int now, int then, int payment, int released, int? beyond)
    {
        var outlook = new WaiverOutlook(now, then, payment);
        Assert.Equal(released, outlook.Released);
        Assert.Equal(beyond, outlook.BeyondPayment);
        Assert.Null((outlook with { Payment = null }).BeyondPayment);
    }

    /// <summary>A payment that the journal holds as received has lowered the demand already: all that is released is unpaid.</summary>
    [Theory]
    [InlineData(4_430, 0, 2_000, 4_430, 4_430)]
    [InlineData(4_430, 4_430, 2_000, 0, null)]
    public void A_payment_taken_off_already_pays_for_nothing_that_is_left(int now, int then, int payment, int released, int? beyond)
    {
        var outlook = new WaiverOutlook(now, then, payment) { InJournal = true, TakenOff = true };
        Assert.Equal(released, outlook.Released);
        Assert.Equal(beyond, outlook.BeyondPayment);
        Assert.Equal(beyond is not null, outlook.MayGoBeyond);
    }

    [Theory]
    [InlineData(2_000, 2_000, 0, false)]
    [InlineData(2_000, 2_000, 1, true)]
    [InlineData(2_001, 2_000, 0, true)]
    [InlineData(0, null, 0, false)]
    [InlineData(1, null, 0, true)]
    public void What_is_in_doubt_counts_as_released_where_more_may_be_given_away(int released, int? payment, int doubt, bool beyond) =>
        Assert.Equal(beyond, new WaiverOutlook(released, 0, payment) { InDoubt = doubt }.MayGoBeyond);

    /// <summary>Civ. Code §§ 8134, 8138, lead-in: only where the claimant has received the payment.</summary>
    [Fact]
    public void One_payment_in_the_journal_answers_one_unconditional_form()
    {
        var paper = Paper(WaiverForm.UnconditionalProgress);
        var paid = new Paid { Index = 1, On = DayFact.On(new LocalDate(2026, 4, 10)), Amount = 2_000m };
        var cleared = Paper(WaiverForm.ConditionalProgress) with { Index = 2, On = DayFact.On(new LocalDate(2026, 4, 1)),
            PaymentCleared = new LocalDate(2026, 4, 10) };
        var earlier = paper with { Index = 3, On = DayFact.On(new LocalDate(2026, 4, 12)) };
        Assert.Equal((false, false), In(paper));
        Assert.Equal((true, true), In(paper, paid));
        Assert.Equal((true, false), In(paper, cleared));
        Assert.Equal((true, true), In(paper, paid, cleared));
        Assert.Equal((false, false), In(paper, paid, earlier));
        Assert.Equal((true, true), In(paper, paid, paid with { Index = 4 }, earlier));
        Assert.Equal((false, false), In(paper, paid with { Amount = 1_999.99m }));
        Assert.Equal((false, false), In(paper, cleared with { PaymentCleared = new LocalDate(2026, 5, 7) }));
        Assert.Equal((false, false), In(paper with { Form = WaiverForm.ConditionalProgress }, paid));
        Assert.Equal((false, false), In(paper with { Amount = null }, paid));
    }

    private static Waived Paper(WaiverForm form) => new()
    {
        Index = 9, On = DayFact.On(new LocalDate(2026, 5, 6)), Form = form, Through = new LocalDate(2026, 3, 27), Amount = 2_000m,
        PaymentCleared = new LocalDate(2026, 5, 6), InStatutoryForm = true,
    };

    private static (bool InJournal, bool TakenOff) In(Waived paper, params Entry[] more)
    {
        var job = new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 9_000m);
        foreach (var entry in more)
            job.Add(index => entry with { Index = index });
        var outlook = WaiverOutlook.Of(job.On("2026-05-06"), paper with { Index = 9 });
        return (outlook.InJournal, outlook.TakenOff);
    }
}
