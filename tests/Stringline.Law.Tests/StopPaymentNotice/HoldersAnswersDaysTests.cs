using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// What owner and lender answer, on days that are not plain (Civ. Code §§ 8520(b), 8522(b), 8532, 8534). Of the private job entries 0 to 2
/// are the furnishing, the notice and completion.
/// </summary>
public sealed class HoldersAnswersDaysTests
{
    private static JobBuilder Demanded(JobBuilder job, string on) => job.Add(i => new StopPaymentDemanded { Index = i, On = When(on) });

    // Demanded between 3 and 5 November: our target is ten days after the 3rd, 13 November. A paper given too early for the money answers
    // the demand all the same.
    [Fact]
    [Proves("Civ. Code § 8520(b)")]
    public void An_owners_demand_is_answered_at_once()
    {
        var open = Demanded(UsualPrivate(), "2025-11-03..2025-11-05").On("2025-11-10").Get("stop-payment-notice.owner-demand");
        Assert.Equal((Standing.Open, "2025-11-13"), (open.Standing, open.DaysOf().Single()));
        Assert.NotNull(open.Band!.Latest);
        Assert.Equal(Standing.InDoubt, Demanded(UsualPrivate(), "?").On("2025-11-10").Get("stop-payment-notice.owner-demand").Standing);
        Assert.Equal(Standing.Kept, Demanded(UsualPrivate(), "2025-11-03").StopPaymentGiven("2025-11-05", 6430m).On("2025-11-10")
            .Get("stop-payment-notice.owner-demand").Standing);
        var early = Demanded(Private().Furnished("2025-10-20", 6430m).Completed("2025-10-22").StopPaymentGiven("2025-10-27", 6430m)
            .Notice("2025-11-04"), "2025-10-24");
        Assert.Equal(Standing.Kept, early.On("2025-11-10").Get("stop-payment-notice.owner-demand").Standing);
        Assert.Equal(Standing.Open, Demanded(UsualPrivate(), "2025-11-03").StopPaymentGiven("2025-11-05", 6430m)
            .Paper(p => p with { Manner = Manner.Email }).On("2025-11-10").Get("stop-payment-notice.owner-demand").Standing);
        Assert.Null(UsualPrivate().On("2025-11-10").Find("stop-payment-notice.owner-demand"));
    }

    // Thirty days after Wednesday 5 November are Friday 5 December. The bond must be of before the notice, on every reading of its day.
    [Theory]
    [InlineData("2025-11-05", "2025-11-05", "2025-12-05")]
    [InlineData("2025-11-05", "2025-11-06", null)]
    [InlineData("2025-11-03..2025-11-05", "2025-11-04", "2025-12-05")]
    [InlineData("2025-11-03..2025-11-05", "2025-11-06", null)]
    [Proves("Civ. Code § 8522(b)")]
    public void An_owner_that_relies_on_a_bond_of_before_says_so_within_thirty_days(string given, string recorded, string? last)
    {
        var job = UsualPrivate().PaymentBond(recorded).StopPaymentGiven(given, 6430m);
        var answer = job.On("2025-12-05").Find("stop-payment-notice.owner-answer");
        Assert.Equal(last, answer?.DaysOf().Single());
        Assert.Equal(last is null, job.On("2025-12-05").Get("stop-payment-notice.owner").RuledOut("Civ. Code § 8522(b)"));
        if (answer is null)
            return;
        Assert.Equal((Standing.Open, Standing.Done),
            (answer.Standing, job.On("2025-12-06").Get("stop-payment-notice.owner-answer").Standing));
        Assert.Equal(Day(last!), answer.Band!.Latest!.Day);
    }

    [Fact]
    [Proves("Civ. Code § 8522(b)")]
    public void An_owner_that_holds_nothing_has_nothing_to_answer() =>
        Assert.Null(Demanded(DirectContractor().PaymentBond("2025-08-01").Furnished("2025-08-05", 51_000m).Completed("2025-10-22"),
            "2025-11-03").StopPaymentGiven("2025-11-05", 51_000m).On("2025-12-01").Find("stop-payment-notice.owner-answer"));

    private static JobBuilder Bonded(decimal? bond = 8037.50m, string given = "2025-11-03") => UsualPrivate("owner", "direct", "bank")
        .Lender().StopPaymentGiven(given, 6430m, true, "bank").Paper(p => p with { BondAmount = bond });

    private static Standing Lender(JobBuilder job, string asOf = "2025-12-29") => job.On(asOf).Get("stop-payment-notice.lender").Standing;

    // 125 percent of 6,430.00 are 8,037.50 (Civ. Code § 8532).
    [Theory]
    [InlineData(8037.50, Standing.Kept)]
    [InlineData(8037.49, Standing.InDoubt)]
    [Proves("Civ. Code § 8532")]
    public void A_bond_of_less_than_125_percent_leaves_it_in_doubt(decimal bond, Standing expected)
    {
        Assert.Equal(expected, Lender(Bonded(bond)));
        // To the owner a bond is no part of it.
        Assert.Equal(Standing.Kept, UsualPrivate().StopPaymentGiven("2025-11-03", 6430m, true).Paper(p => p with { BondAmount = bond })
            .On("2025-12-01").Get("stop-payment-notice.owner").Standing);
    }

    // "Within 20 days after the notice is given": given on Monday 3 November, an objection of Sunday the 23rd, or of the Monday to which it
    // rolls, is in time, and another bond is due ten days after it.
    [Theory]
    [InlineData("2025-11-10", null, "2025-11-20", Standing.Kept)]
    [InlineData("2025-11-10", null, "2025-11-21", Standing.InDoubt)]
    [InlineData("2025-11-10", "2025-11-20", "2025-12-29", Standing.Kept)]
    [InlineData("2025-11-10", "2025-11-21", "2025-12-29", Standing.InDoubt)]
    [InlineData("2025-11-24", null, "2025-12-29", Standing.InDoubt)]
    [InlineData("2025-11-25", null, "2025-12-29", Standing.Kept)]
    [InlineData("2025-11-24..2025-11-26", null, "2025-12-29", Standing.InDoubt)]
    [InlineData("2025-11-02", null, "2025-12-29", Standing.Kept)]
    [InlineData("2025-11-01..2025-11-03", null, "2025-12-29", Standing.InDoubt)]
    [Proves("Civ. Code § 8534")]
    public void An_objection_in_time_asks_for_another_bond_within_ten_days(string objected, string? another, string asOf,
        Standing expected) =>
        Assert.Equal(expected, Lender(Objected(Bonded(), objected, another), asOf));

    private static JobBuilder Objected(JobBuilder job, string on, string? another = null, string? by = null) =>
        job.Add(i => new BondObjected { Index = i, On = When(on), NewBond = another is null ? null : Day(another), By = by });

    [Fact]
    [Proves("Civ. Code § 8534")]
    public void Only_the_lenders_own_objection_to_a_bonded_notice_asks_for_one()
    {
        Assert.Equal(Standing.InDoubt, Lender(Objected(Bonded(), "2025-11-10", by: "bank")));
        Assert.Equal(Standing.Kept, Lender(Objected(Bonded(), "2025-11-10", by: "owner")));
        Assert.Null(Objected(Bonded(), "2025-11-10", by: "owner").On("2025-12-29").Find("stop-payment-notice.new-bond"));
        Assert.Null(Bonded().On("2025-12-29").Find("stop-payment-notice.new-bond"));
        Assert.Null(Objected(UsualPrivate("owner", "direct", "bank").Lender().StopPaymentGiven("2025-11-03", 6430m, false, "bank"),
            "2025-11-10").On("2025-12-29").Find("stop-payment-notice.new-bond"));
        var due = Objected(Bonded(), "2025-11-10").On("2025-11-12").Get("stop-payment-notice.new-bond");
        Assert.Equal((Standing.Open, "2025-11-20"), (due.Standing, due.DaysOf().Single()));
        Assert.Equal([4, 5], due.HangsOn("Civ. Code § 8534").Select(i => i + 1));
        Assert.Equal(Standing.Kept, Objected(Bonded(), "2025-11-10", "2025-11-20").On("2025-12-29")
            .Get("stop-payment-notice.new-bond").Standing);
        Assert.Equal(Standing.Lost, Objected(Bonded(), "2025-11-10").On("2025-12-29").Get("stop-payment-notice.new-bond").Standing);
    }

    // One whose day nobody knows is answered at once; one too late asks for nothing. Beside one that does, each is told once.
    [Fact]
    [Proves("Civ. Code § 8534")]
    public void An_objection_of_a_day_unknown_or_too_late_is_told_as_such()
    {
        var unknown = Objected(Bonded(), "?").On("2025-11-12").Get("stop-payment-notice.new-bond");
        Assert.Equal((Standing.InDoubt, true, false),
            (unknown.Standing, unknown.Says("on a day that the file does not give"), unknown.Says("it asks for nothing")));
        Assert.Single(unknown.Why);
        var late = Objected(Bonded(), "2025-12-15").On("2025-12-29").Get("stop-payment-notice.new-bond");
        Assert.Equal((Standing.Kept, true, false),
            (late.Standing, late.Says("it asks for nothing"), late.Says("Bring a bond of an admitted surety insurer")));
        Assert.Single(late.Why);
    }
}
