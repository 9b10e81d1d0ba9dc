using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>What a payment, a dispute or retention takes off a sum that is due, by its days, and what is asked about it.</summary>
public sealed class SumsDueTests
{
    private static JobBuilder Direct(decimal price = 50_000m) => new JobBuilder().Role(ClaimantRole.DirectContractor, "owner")
        .NoParty("direct").Licensed("2020-01-01..").Price(price).Furnished("2026-03-02", price);

    private static JobBuilder Sub(ClaimantRole role = ClaimantRole.Subcontractor) =>
        new JobBuilder().Role(role).Licensed("2020-01-01..").Notice("2026-03-02").Furnished("2026-03-02", 50_000m);

    private static Finding Progress(JobBuilder job, string asOf = "2026-10-01", string id = "prompt-payment.progress") =>
        job.On(asOf).Get(id);

    private static (Standing, decimal?) Answer(Finding found) => (found.Standing, found.Amount);

    // Civ. Code § 8800(a): demanded between 1 and 5 June 2026, due by the latest of these: 30 days after the 5th are Sunday 5 July. What
    // came from the earliest on may be for it. Two percent of 12,000.00 for two whole months to 1 October.
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
        Assert.Equal((Standing.Open, (decimal?)0.03m),
            Answer(Progress(Direct().PaymentDemanded("2026-06-01", 12_000m).Paid("2026-06-20", 11_999.50m), "2026-10-01")));
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
        var due = Progress(disputed == 0 ? job : job.Disputed("2026-06-05", disputed));
        Assert.Equal((Standing.Open, (decimal?)penalty), Answer(due));
        // Day by day: 183.45 for 31 days, 40.77 for 62 and 120.99 for 92; or 122.30 for 31.
        Assert.True(due.Says(disputed == 0 ? "it would be $345.21" : "it would be $122.30"));
    }

    // Civ. Code § 1479: the earliest due first, in whatever order the demands were made. The earlier one is due on 1 July, the other on the
    // 8th.
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
        var answer = Direct(20_000m).Retained("2026-04-01", 12_000m).PaymentDemanded("2026-06-08", 10_000m)
            .PaymentDemanded("2026-06-01", 10_000m).On("2026-10-01");
        Assert.Equal((Standing.Done, (decimal?)0m), Answer(answer.Get("prompt-payment.progress")));
        Assert.True(answer.Get("prompt-payment.progress").Says("$10,000.00 of what was demanded is retention"));
        // 8,000.00 for two months from 8 July
        Assert.Equal((Standing.Open, (decimal?)320m), Answer(answer.Get("prompt-payment.progress.2")));
        Assert.True(answer.Get("prompt-payment.progress.2").Says("$2,000.00 of what was demanded is retention"));
        // Never more than was retained.
        var beyond = Direct(20_000m).Retained("2026-04-01", 2_000m).PaymentDemanded("2026-06-01", 30_000m).On("2026-10-01")
            .Get("prompt-payment.progress");
        Assert.Equal((Standing.Open, (decimal?)1_680m), Answer(beyond));
        // Half a dollar of it.
        Assert.True(Direct(20_000m).Retained("2026-04-01", 2_000m).PaymentDemanded("2026-06-01", 18_000.50m).On("2026-10-01")
            .Get("prompt-payment.progress").Says("$0.50 of what was demanded is retention"));
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
    public void Only_a_dispute_about_the_retention_excuses_holding_it(string asOf, DisputeAbout? about, Standing expected, int penalty,
        int asked)
    {
        var due = Sub().HirerPaid("2026-05-11", 12_000m, PaymentOf.Retention)
            .Add(i => new Disputed { Index = i, On = When("2026-05-15"), Amount = 4_000m, About = about }).On(asOf).Get("retention.due");
        Assert.Equal((expected, (decimal?)penalty), Answer(due));
        Assert.Equal(asked, due.Questions.Count);
        Assert.Equal(asked == 1,
            due.Says("excuses nothing: $12,000.00 is wrongly withheld, and the penalty for 3 whole months is $720.00"));
        Assert.All(due.Questions, q => Assert.Equal((360m, 3), (q.Dollars, q.Corrects!.Index)));
    }

    // Paid on, so that nothing is held: a dispute makes no doubt.
    [Fact]
    [Proves("Civ. Code § 8814(c)")]
    public void Retention_that_was_passed_on_in_time_is_in_no_doubt() =>
        Assert.Equal((Standing.Done, (decimal?)0m),
            Answer(Sub().HirerPaid("2026-05-11", 12_000m, PaymentOf.Retention).Paid("2026-05-20", 12_000m).Disputed("2026-05-15", 4_000m)
                .On("2026-08-21").Get("retention.due")));

    // Several sums of each kind are numbered each for itself, whatever their order.
    [Fact]
    [Proves("Civ. Code § 8814")]
    public void Progress_and_retention_are_numbered_apart()
    {
        var answer = Sub().HirerPaid("2026-03-16", 1_000m).HirerPaid("2026-03-17", 2_000m, PaymentOf.Retention)
            .HirerPaid("2026-04-15", 3_000m).HirerPaid("2026-04-16", 4_000m, PaymentOf.Retention).On("2026-07-27");
        Assert.Equal(["2026-03-23", "2026-03-27", "2026-04-22", "2026-04-27"],
            ((string[])["prompt-payment.progress", "retention.due", "prompt-payment.progress.2", "retention.due.2"])
                .Select(id => answer.Get(id).DaysOf().Single()));
        Assert.Equal([80m, 160m, 180m, 240m],
            ((string[])["prompt-payment.progress", "retention.due", "prompt-payment.progress.2", "retention.due.2"])
                .Select(id => answer.Get(id).Amount));
    }

    // Civ. Code §§ 8800(b), 8812(c): a dispute of which nobody says what it is about is taken for the sum that falls due earliest, here the
    // retention, due 15 June, and not the demand, due 1 July: 6,000.00 for four months and 12,000.00 for three.
    [Fact]
    [Proves("Civ. Code § 8800(b)")]
    [Proves("Civ. Code § 8812(c)")]
    public void A_dispute_about_nothing_in_particular_is_about_what_falls_due_first()
    {
        var answer = Direct().Retained("2026-04-01", 12_000m).Completed("2026-05-01").PaymentDemanded("2026-06-01", 12_000m)
            .Disputed("2026-06-05", 4_000m).On("2026-10-15");
        Assert.Equal((Standing.Open, (decimal?)480m), Answer(answer.Get("retention.due")));
        Assert.Equal((Standing.Open, (decimal?)720m), Answer(answer.Get("prompt-payment.progress")));
    }

    // Due 1 July. A dispute that may have been raised by then is no late one; one that saves nothing yet is not asked about.
    [Theory]
    [InlineData("2026-07-02", 10, "2026-08-01", "0.3")]
    [InlineData("2026-07-02", 10, "2026-07-31", "")]
    [InlineData("2026-06-30..2026-07-05", 10, "2026-08-01", "")]
    [InlineData("2026-07-01", 10, "2026-08-01", "")]
    [InlineData("2026-07-02", 4_000, "2026-10-01", "360")]
    [Proves("Civ. Code § 8800(b)")]
    public void A_dispute_first_raised_after_the_due_day_is_asked_about_with_what_it_saves(string raised, int sum, string asOf,
        string asked)
    {
        var due = Progress(Direct().PaymentDemanded("2026-06-01", 12_000m).Disputed(raised, sum), asOf);
        Assert.Equal(asked,
            string.Join(" ", due.Questions.Select(q => q.Dollars?.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture))));
        Assert.All(due.Questions, q => Assert.IsType<Disputed>(q.Corrects));
    }

    // Two disputes of one sum: 4,000.00 lets 6,000.00 be held and saves 360.00; of 5,000.00 more only the other 6,000.00 are left to hold.
    [Fact]
    [Proves("Civ. Code § 8800(b)")]
    public void A_second_dispute_saves_only_what_the_first_left()
    {
        var due = Progress(Direct().PaymentDemanded("2026-06-01", 12_000m).Disputed("2026-07-02", 4_000m).Disputed("2026-07-03", 5_000m));
        Assert.Equal([360m, 360m], due.Questions.Select(q => q.Dollars!.Value));
        Assert.Equal((Standing.Open, (decimal?)0m), Answer(due));
    }

    // Bus. & Prof. Code § 7108.5, Civ. Code § 8814: the hirer was paid between 16 and 18 March; what came from the 16th on may be of it,
    // and the days run from the 18th. Paid on the 16th, it is done.
    [Theory]
    [InlineData(PaymentOf.Progress, "prompt-payment.progress", "2026-03-15", "2026-03-25", Standing.Open)]
    [InlineData(PaymentOf.Progress, "prompt-payment.progress", "2026-03-16", "2026-03-25", Standing.Done)]
    [InlineData(PaymentOf.Retention, "retention.due", "2026-03-16", "2026-03-30", Standing.Done)] // 28 March is a Saturday
    [Proves("Bus. & Prof. Code § 7108.5")]
    [Proves("Civ. Code § 8814")]
    public void A_receipt_of_a_day_in_doubt_is_passed_on_by_its_latest(PaymentOf of, string id, string paid, string day, Standing expected)
    {
        var due = Sub().HirerPaid("2026-03-16..2026-03-18", 12_000m, of).Paid(paid, 12_000m).On("2026-05-01").Get(id);
        Assert.Equal((day, expected), (due.DaysOf().Single(), due.Standing));
    }

    // Civ. Code § 8802: of a direct contractor of a public utility, on private work.
    [Theory]
    [InlineData(WorkKind.Private, "direct", true)]
    [InlineData(WorkKind.Private, "sub", false)]
    [InlineData(WorkKind.Public, "direct", false)]
    [Proves("Civ. Code § 8802")]
    public void The_21_days_are_those_of_a_utilitys_direct_contractor(WorkKind kind, string hiredBy, bool told) =>
        Assert.Equal(told, Progress(Sub().Party("sub", PartyCapacity.Subcontractor).Role(ClaimantRole.Subcontractor, hiredBy)
            .Work(w => w with { Kind = kind, PublicUtility = true }).HirerPaid("2026-03-16", 12_000m)).Says("21 days from receipt"));

    // Civ. Code § 8814(c): a dispute that names the receipt is about it; one that stands against another receipt is no doubt about this
    // one; and whoever may not use the section at all is asked about the dispute as well.
    [Fact]
    [Proves("Civ. Code § 8814(c)")]
    public void Which_retention_a_dispute_is_about()
    {
        var named = Sub().HirerPaid("2026-05-11", 12_000m, PaymentOf.Retention).Which(e => e with { Id = "held" })
            .Add(i => new Disputed { Index = i, On = When("2026-05-15"), Amount = 4_000m, Demand = "held" }).On("2026-08-21")
            .Get("retention.due");
        Assert.Equal((Standing.Open, (decimal?)360m, 0), (named.Standing, named.Amount, named.Questions.Count));
        var two = Sub().HirerPaid("2026-05-11", 12_000m, PaymentOf.Retention).HirerPaid("2026-05-12", 12_000m, PaymentOf.Retention)
            .Disputed("2026-05-15", 4_000m).On("2026-08-22");
        Assert.Equal((Standing.InDoubt, (decimal?)360m), Answer(two.Get("retention.due")));
        Assert.Equal((Standing.Open, (decimal?)720m), Answer(two.Get("retention.due.2")));
        Assert.Empty(two.Get("retention.due.2").Questions);
        var supplier = Sub(ClaimantRole.Supplier).HirerPaid("2026-05-11", 12_000m, PaymentOf.Retention).Disputed("2026-05-15", 4_000m)
            .On("2026-08-21").Get("retention.due");
        Assert.Equal(Standing.InDoubt, supplier.Standing);
        Assert.True(supplier.Asks("(disputed.about)"));
    }

    // Civ. Code § 8810: the article governs what a direct contractor holds from a subcontractor. For anyone else it is in doubt once it is
    // late, and neither before nor where it was passed on.
    [Theory]
    [InlineData(ClaimantRole.Subcontractor, "2026-05-22", null, Standing.Open)]
    [InlineData(ClaimantRole.Supplier, "2026-05-21", null, Standing.NotYet)]
    [InlineData(ClaimantRole.Supplier, "2026-05-22", null, Standing.InDoubt)]
    [InlineData(ClaimantRole.Supplier, "2026-05-22", "2026-05-20", Standing.Done)]
    [Proves("Civ. Code § 8810")]
    public void Whether_the_article_reaches_the_claimant_matters_once_the_money_is_late(ClaimantRole role, string asOf, string? paid,
        Standing expected)
    {
        var job = Sub(role).HirerPaid("2026-05-11", 12_000m, PaymentOf.Retention);
        var due = (paid is null ? job : job.Paid(paid, 12_000m)).On(asOf).Get("retention.due");
        Assert.Equal(expected, due.Standing);
        Assert.Equal(role == ClaimantRole.Supplier, due.Sections.Contains("Civ. Code § 8810"));
        // What the owner owes the contractor is asked for a subcontractor alone.
        Assert.Equal(role == ClaimantRole.Subcontractor, Sub(role).Retained("2026-04-01", 1_000m).Completed("2026-05-01").On("2026-08-01")
            .Find("retention.due") is not null);
    }

    // Civ. Code § 8812: 45 days after completion, at its latest reading; what came from its earliest on may be the retention. After 5 May
    // they end on Friday 19 June, a holiday, so Monday the 22nd; after 20 May on Saturday 4 July, so Monday the 6th.
    [Theory]
    [InlineData("2026-05-01..2026-05-05", null, "2026-04-30", "2026-06-22", 12_000)]
    [InlineData("2026-05-01..2026-05-05", null, "2026-05-01", "2026-06-22", 7_000)]
    [InlineData("2026-05-01", "2026-05-20", "2026-04-30", "2026-07-06", 12_000)]
    [InlineData("2026-05-01", "2026-05-20", "2026-05-01", "2026-07-06", 7_000)]
    [InlineData("2026-05-20", "2026-05-01", "2026-05-01", "2026-07-06", 7_000)]
    [Proves("Civ. Code § 8812")]
    public void Retention_is_due_by_the_latest_reading_of_completion(string completed, string? also, string paid, string day, int unpaid)
    {
        var job = Direct().Retained("2026-04-01", 12_000m).Completed(completed, contested: also is not null);
        if (also is not null)
            job.Completed(also, contested: true);
        var due = job.Paid(paid, 5_000m).On("2026-06-10").Get("retention.due");
        Assert.Equal((day, Standing.NotYet), (due.DaysOf().Single(), due.Standing));
        Assert.True(due.Says(unpaid == 7_000 ? "$7,000.00 falls due" : "$12,000.00 falls due"));
        Assert.Equal(unpaid == 7_000
            ? [5_000m] : [], due.Questions.Where(q => q.Text.StartsWith("Was the money received", StringComparison.Ordinal))
            .Select(q => q.Dollars!.Value));
    }

    // An owner's recorded notice of completion says when the work was complete, though nobody else does.
    [Fact]
    [Proves("Civ. Code § 8812")]
    public void A_recorded_notice_of_completion_dates_the_retention() =>
        Assert.Equal(["2026-06-22"], Direct().Retained("2026-04-01", 12_000m)
            .OwnerRecorded("2026-05-12", OwnerNotice.Completion, states: "2026-05-05").On("2026-06-10").Find("retention.due")?.DaysOf()
            ?? []);
}
