using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>What a payment, a dispute or retention takes off a sum that is due, by its days, and what is asked about it.</summary>
public sealed class SumsDueTests
{
    private static JobBuilder Direct(decimal price = 50_000m) => new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").NoParty("direct").Licensed("2020-01-01..").Price(price).Furnished("2026-03-02", price);

    private static JobBuilder Sub(ClaimantRole role = ClaimantRole.Subcontractor) => new JobBuilder().Role(role).Licensed("2020-01-01..").Notice("2026-03-02").Furnished("2026-03-02", 50_000m);

    private static Finding Progress(JobBuilder job, string asOf = "2026-10-01", string id = "prompt-payment.progress") => job.On(asOf).Get(id);

    private static (Standing, decimal?) Answer(Finding found) => (found.Standing, found.Amount);

    // Civ. Code § 8800(a): demanded between 1 and 5 June 2026, due by the latest of these: 30 days after the 5th are Sunday 5 July. What came
    // from the earliest on may be for it. Two percent of 12,000.00 for two whole months to 1 October.
    [Theory]
    [InlineData("2026-05-31", Standing.Open, 480)]
    [InlineData("2026-06-01", Standing.Done, 0)]
    [InlineData("2026-05-31..2026-06-02", Standing.Open, 480)]
    [InlineData("2026-06-02..2026-06-05", Standing.Done, 0)]
    [InlineData("2026-07-06..2026-07-20", Standing.Done, 0)]
    [InlineData("2026-08-05..2026-08-06", Standing.Done, 0)]
    [InlineData("2026-08-06..2026-08-07", Standing.Open, 240)]
    [InlineData("?", Standing.Open, 480)]
    [Proves("Civ. Code § 8800(a)")]
    [Proves("Civ. Code § 1479")]
    public void A_payment_counts_on_its_earliest_day_for_what_was_demanded_by_then(string paid, Standing expected, int penalty)
    {
        var due = Progress(Direct().PaymentDemanded("2026-06-01..2026-06-05", 12_000m).Paid(paid, 12_000m));
        Assert.Equal(["2026-07-06"], due.DaysOf());
        Assert.Equal((expected, (decimal?)penalty), Answer(due));
    }

    // Due 1 July: 240.00 a month. Half a dollar unpaid is unpaid, though its penalty is a cent.
    [Theory]
    [InlineData("2026-07-01", "falls due by 2026-07-01 (Wed)", 0)]
    [InlineData("2026-07-31", "Penalty for 0 whole months", 0)]
    [InlineData("2026-08-01", "Penalty for 1 whole month after", 240)]
    [InlineData("2026-09-01", "Penalty for 2 whole months after", 480)]
    [Proves("Civ. Code § 8800(c)")]
    public void The_months_are_told_in_words(string asOf, string says, int penalty)
    {
        var due = Progress(Direct().PaymentDemanded("2026-06-01", 12_000m), asOf);
        Assert.True(due.Says(says));
        Assert.Equal(penalty, due.Amount);
        Assert.False(due.Says("Paid since"));
        Assert.Equal((Standing.Open, (decimal?)0.03m), Answer(Progress(Direct().PaymentDemanded("2026-06-01", 12_000m).Paid("2026-06-20", 11_999.50m), "2026-10-01")));
    }

    // Of 12,000.00 due 1 July, 9,000.00 came on 1 August and 1,000.00 on 1 September: 180 + 40 + 2,000.00 for three months, 120.
    // With 4,000.00 disputed 6,000.00 may be held, and what comes in answers first what may not: 6,000.00 on 1 August, 120.
    [Theory]
    [InlineData(0, 340)]
    [InlineData(4_000, 120)]
    [Proves("Civ. Code § 8800(b)")]
    [Proves("Civ. Code § 8800(c)")]
    public void Each_part_costs_until_it_came(int disputed, int penalty)
    {
        var job = Direct().PaymentDemanded("2026-06-01", 12_000m).Paid("2026-08-01", 9_000m).Paid("2026-09-01", 1_000m);
        Assert.Equal((Standing.Open, (decimal?)penalty), Answer(Progress(disputed == 0 ? job : job.Disputed("2026-06-05", disputed))));
    }

    // Civ. Code § 1479: the earliest due first, in whatever order the demands were made. The earlier one is due on 1 July, the other on the 8th.
    [Fact]
    [Proves("Civ. Code § 1479")]
    public void What_one_payment_leaves_goes_to_the_next_sum()
    {
        var job = Direct().PaymentDemanded("2026-06-08", 12_000m).PaymentDemanded("2026-06-01", 10_000m).Paid("2026-06-20", 15_000m);
        Assert.Equal((Standing.Done, (decimal?)0m), Answer(Progress(job)));
        // 7,000.00 of the second for two whole months from 8 July.
        Assert.Equal((Standing.Open, (decimal?)280m), Answer(Progress(job, id: "prompt-payment.progress.2")));
        // What came before the second was demanded cannot be for it.
        var early = Direct().PaymentDemanded("2026-06-08", 12_000m).PaymentDemanded("2026-06-01", 10_000m).Paid("2026-06-05", 15_000m);
        Assert.Equal((Standing.Open, (decimal?)480m), Answer(Progress(early, id: "prompt-payment.progress.2")));
    }

    // Civ. Code § 8800(d): 20,000.00 of work, 12,000.00 retained of it, and 20,000.00 demanded in two halves: the first is retention alone.
    [Fact]
    [Proves("Civ. Code § 8800(d)")]
    public void Retention_inside_several_demands_is_taken_out_of_the_earliest()
    {
        var answer = Direct(20_000m).Retained("2026-04-01", 12_000m).PaymentDemanded("2026-06-08", 10_000m).PaymentDemanded("2026-06-01", 10_000m).On("2026-10-01");
        Assert.Equal((Standing.Done, (decimal?)0m), Answer(answer.Get("prompt-payment.progress")));
        Assert.True(answer.Get("prompt-payment.progress").Says("$10,000.00 of what was demanded is retention"));
        Assert.Equal((Standing.Open, (decimal?)320m), Answer(answer.Get("prompt-payment.progress.2"))); // 8,000.00 for two months from 8 July
        Assert.True(answer.Get("prompt-payment.progress.2").Says("$2,000.00 of what was demanded is retention"));
        // Never more than was retained.
        var beyond = Direct(20_000m).Retained("2026-04-01", 2_000m).PaymentDemanded("2026-06-01", 30_000m).On("2026-10-01").Get("prompt-payment.progress");
        Assert.Equal((Standing.Open, (decimal?)1_680m), Answer(beyond));
        // Half a dollar of it.
        Assert.True(Direct(20_000m).Retained("2026-04-01", 2_000m).PaymentDemanded("2026-06-01", 18_000.50m).On("2026-10-01").Get("prompt-payment.progress").Says("$0.50 of what was demanded is retention"));
    }

    // Bus. & Prof. Code § 7108.5 speaks of subcontractors: for another it is open whether it may use it, but not whether it was paid.
    [Theory]
    [InlineData(WorkKind.Private, ClaimantRole.Subcontractor, null, Standing.Open)]
    [InlineData(WorkKind.Private, ClaimantRole.Supplier, null, Standing.InDoubt)]
    [InlineData(WorkKind.Private, ClaimantRole.Supplier, "2026-03-20", Standing.Done)]
    [InlineData(WorkKind.Public, ClaimantRole.Subcontractor, null, Standing.Open)]
    [InlineData(WorkKind.Public, ClaimantRole.Supplier, null, Standing.InDoubt)]
    [InlineData(WorkKind.Public, ClaimantRole.Supplier, "2026-03-20", Standing.Done)]
    [Proves("Bus. & Prof. Code § 7108.5")]
    public void What_was_paid_in_time_is_done_for_everyone(WorkKind kind, ClaimantRole role, string? paid, Standing expected)
    {
        var job = Sub(role).Work(w => w with { Kind = kind }).HirerPaid("2026-03-16", 12_000m);
        if (paid is not null)
            job.Paid(paid, 12_000m);
        var due = Progress(job);
        Assert.Equal(expected, due.Standing);
        Assert.Equal(expected == Standing.InDoubt, due.Asks("The section speaks of subcontractors"));
    }

    // The question about its role does not push out the others: which of two sums a dispute is about (Civ. Code § 8814(c)).
    [Fact]
    [Proves("Bus. & Prof. Code § 7108.5")]
    public void A_claimant_in_another_role_is_asked_about_the_dispute_as_well()
    {
        var due = Progress(Sub(ClaimantRole.Supplier).HirerPaid("2026-03-16", 12_000m).Disputed("2026-05-05", 4_000m));
        Assert.True(due.Asks("The section speaks of subcontractors"));
        Assert.True(due.Asks("first raised on that day"));
    }

    // Civ. Code § 8814(c): 4,000.00 in dispute, 6,000.00 may be held; before the tenth day, 21 May, nothing is asked.
    [Theory]
    [InlineData("2026-05-21", null, Standing.NotYet, 0, 0)]
    [InlineData("2026-08-21", null, Standing.InDoubt, 360, 1)]
    [InlineData("2026-08-21", DisputeAbout.Retention, Standing.Open, 360, 0)]
    [InlineData("2026-08-21", DisputeAbout.Progress, Standing.Open, 720, 0)]
    [InlineData("2026-08-21", DisputeAbout.OtherSums, Standing.Open, 720, 0)]
    [Proves("Civ. Code § 8814(c)")]
    public void Only_a_dispute_about_the_retention_excuses_holding_it(string asOf, DisputeAbout? about, Standing expected, int penalty, int asked)
    {
        var due = Sub().HirerPaid("2026-05-11", 12_000m, PaymentOf.Retention).Add(i => new Disputed { Index = i, On = When("2026-05-15"), Amount = 4_000m, About = about }).On(asOf).Get("retention.due");
        Assert.Equal((expected, (decimal?)penalty), Answer(due));
        Assert.Equal(asked, due.Questions.Count);
        Assert.Equal(asked == 1, due.Says("excuses nothing: $12,000.00 is wrongly withheld, and the penalty for 3 whole months is $720.00"));
        Assert.All(due.Questions, q => Assert.Equal((360m, 3), (q.Dollars, q.Corrects!.Index)));
    }

    // Paid on, so that nothing is held: a dispute makes no doubt.
    [Fact]
    [Proves("Civ. Code § 8814(c)")]
    public void Retention_that_was_passed_on_in_time_is_in_no_doubt() =>
        Assert.Equal((Standing.Done, (decimal?)0m), Answer(Sub().HirerPaid("2026-05-11", 12_000m, PaymentOf.Retention).Paid("2026-05-20", 12_000m).Disputed("2026-05-15", 4_000m).On("2026-08-21").Get("retention.due")));

    // Several sums of each kind are numbered each for itself, whatever their order.
    [Fact]
    [Proves("Civ. Code § 8814")]
    public void Progress_and_retention_are_numbered_apart()
    {
        var answer = Sub().HirerPaid("2026-03-16", 1_000m).HirerPaid("2026-03-17", 2_000m, PaymentOf.Retention).HirerPaid("2026-04-15", 3_000m).HirerPaid("2026-04-16", 4_000m, PaymentOf.Retention).On("2026-07-27");
        Assert.Equal(["2026-03-23", "2026-03-27", "2026-04-22", "2026-04-27"],
            ((string[])["prompt-payment.progress", "retention.due", "prompt-payment.progress.2", "retention.due.2"]).Select(id => answer.Get(id).DaysOf().Single()));
        Assert.Equal([80m, 160m, 180m, 240m],
            ((string[])["prompt-payment.progress", "retention.due", "prompt-payment.progress.2", "retention.due.2"]).Select(id => answer.Get(id).Amount));
    }
}
