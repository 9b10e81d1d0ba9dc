using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// Retention on public work (Pub. Contract Code § 7107). The completion that starts the 60 days is wider than that of Civ. Code § 9200.
/// Counted apart with Python's calendar arithmetic.
/// </summary>
public sealed class PublicRetentionTests
{
    private static JobBuilder Prime() =>
        new JobBuilder().PublicWork().Role(ClaimantRole.DirectContractor, "city").Licensed("2012-06-01..").Price(44000m)
        .Furnished("2025-08-05", 44000m, until: "2025-10-20").Retained("2025-09-10", 2200m);

    private static Finding Due(JobBuilder job, string asOf = "2026-01-15") => job.On(asOf).Get("retention.due");

    // In use on 22 October 2025, labor stopped on 20 October: 60 days later is Sunday 21 December.
    [Fact]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void Use_with_cessation_of_labor_completes_the_work_for_retention()
    {
        var due = Due(Prime().LaborCeased("2025-10-20").Completed("2025-10-22", CompletionTheory.Occupation));
        Assert.Equal(["2025-12-22"], due.DaysOf());
        Assert.Equal(Standing.Open, due.Standing);
        Assert.Contains("Pub. Contract Code § 7107(c)", due.Sections);
        Assert.False(due.Says("from memory"));
    }

    // Labor that stopped only after the use began counts from its own day.
    [Fact]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void The_later_of_use_and_cessation_counts() =>
        // 28 December is a Sunday
        Assert.Equal(["2025-12-29"], Due(Prime().LaborCeased("2025-10-29").Completed("2025-10-22", CompletionTheory.Occupation)).DaysOf());

    [Fact]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void Use_without_a_known_end_of_labor_is_in_doubt_and_asked()
    {
        var due = Due(Prime().Completed("2025-10-22", CompletionTheory.Occupation));
        Assert.Equal((Standing.InDoubt, "2025-12-22"), (due.Standing, due.DaysOf().Single()));
        Assert.True(due.Asks("(labor-ceased)"));
    }

    [Theory]
    // recorded after the thirty days: 24 January is a Saturday
    [InlineData("2025-10-20", null, OwnerNotice.Cessation, "2025-11-25", "2026-01-26")]
    [InlineData("2025-10-20", null, OwnerNotice.Completion, "2025-11-25", "2026-01-26")]
    // recorded before: the thirtieth day, 19 November; 18 January is a Sunday, the Monday a holiday
    [InlineData("2025-10-20", null, OwnerNotice.Cessation, "2025-11-10", "2026-01-20")]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void Thirty_idle_days_complete_it_where_the_entity_records_a_notice(string ceased, string? resumed, OwnerNotice kind,
        string recorded, string expected) =>
        Assert.Contains(expected,
            Due(Prime().LaborCeased(ceased, resumed).OwnerRecorded(recorded, kind, states: kind == OwnerNotice.Completion
                ? "2025-11-25" : ceased), "2026-02-10").DaysOf());

    // A hundred idle days end on 28 January 2026; whether the cause was beyond the contractor's control is asked.
    [Theory]
    [InlineData("2026-01-27", false)]
    [InlineData("2026-01-28", true)]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void A_hundred_idle_days_may_complete_it(string asOf, bool expected)
    {
        var due = Prime().LaborCeased("2025-10-20").On(asOf).Find("retention.due");
        Assert.Equal(expected, due is not null);
        if (due is not null)
        {
            Assert.Equal(["2026-03-30"], due.DaysOf()); // 29 March is a Sunday
            Assert.Equal(Standing.NotYet, due.Standing);
            Assert.Equal(Standing.InDoubt, Due(Prime().LaborCeased("2025-10-20"), "2026-03-31").Standing);
            Assert.True(due.Asks("beyond the contractor's control"));
        }
    }

    [Fact]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void The_first_of_the_events_counts_and_finishing_alone_is_none()
    {
        Assert.Equal(["2025-12-22"], Due(Prime().LaborCeased("2025-10-20").Completed("2025-10-22", CompletionTheory.Occupation)
            .Completed("2025-11-12", CompletionTheory.Acceptance)).DaysOf());
        Assert.Null(Prime().Completed("2025-10-22").On("2026-01-15").Find("retention.due"));
        Assert.Null(Prime().On("2026-01-15").Find("retention.due"));
    }

    [Theory]
    [InlineData("2025-12-22", Standing.NotYet, 0)]
    [InlineData("2026-01-21", Standing.Open, 0)]
    [InlineData("2026-01-22", Standing.Open, 44)]
    [InlineData("2026-03-16", Standing.Open, 88)]
    [Proves("Pub. Contract Code § 7107(c)")]
    [Proves("Pub. Contract Code § 7107(f)")]
    public void Two_percent_a_month_in_place_of_interest(string asOf, Standing expected, int penalty)
    {
        var due = Due(Prime().Completed("2025-10-22", CompletionTheory.Acceptance).Work(w => w with { Body = PublicBody.Local }), asOf);
        Assert.Equal((expected, (decimal)penalty), (due.Standing, due.Amount));
        Assert.Equal(expected == Standing.Open, due.Says("wrongly withheld"));
    }

    // Of 2,200.00 retained 1,000.00 is disputed: 1,500.00 may be held, and 700.00 is wrongly withheld: 14.00 for a month.
    [Fact]
    [Proves("Pub. Contract Code § 7107(e)")]
    public void At_most_150_percent_of_what_is_disputed_may_be_held()
    {
        var due = Due(Prime().Completed("2025-10-22", CompletionTheory.Acceptance).Work(w => w with { Body = PublicBody.Local })
            .Disputed("2025-11-03", 1_000m), "2026-01-22");
        Assert.True(due.Says("at most 150 percent of that may be held, so $700.00 is wrongly withheld"));
        Assert.Equal(14m, due.Amount);
    }

    // A State agency that holds little has 90 days, to 20 January 2026: one month of 44.00 on 16 March, else two.
    [Theory]
    [InlineData(true, null)]
    [InlineData(null, PublicBody.State)]
    [InlineData(null, PublicBody.GeneralServices)]
    [Proves("Pub. Contract Code § 7107(g)")]
    public void A_State_agency_may_have_ninety_days(bool? act, PublicBody? body)
    {
        var due = Due(Prime().Completed("2025-10-22", CompletionTheory.Acceptance)
            .Work(w => w with { StateContractAct = act, Body = body }), "2026-03-16");
        Assert.Equal(["2025-12-22", "2026-01-20"], due.DaysOf());
        Assert.Equal((Standing.InDoubt, 44m), (due.Standing, due.Amount));
        Assert.True(due.Says("$88.00"));
        Assert.Equal(44m, due.Questions.Single(q => q.Text.Contains("125 percent", StringComparison.Ordinal)).Dollars);
        Assert.Equal(Standing.NotYet,
            Due(Prime().Completed("2025-10-22", CompletionTheory.Acceptance).Work(w => w with { StateContractAct = act, Body = body }),
                "2025-12-22").Standing);
    }

    private static JobBuilder Sub(string hiredBy = "direct") =>
        new JobBuilder().PublicWork().Role(ClaimantRole.Subcontractor, hiredBy).Licensed("2012-06-01..").Price(90000m)
        .Furnished("2025-08-05", 90000m).Notice("2025-08-05", Manner.CertifiedMail, "city", "direct").Retained("2025-09-10", 4500m)
        .Completed("2025-10-22", CompletionTheory.Acceptance);

    // The share, never what the contractor got for all: four whole months from 20 January (19 January is a holiday), at 90.00.
    [Fact]
    [Proves("Pub. Contract Code § 7107(d)")]
    [Proves("Pub. Contract Code § 7107(f)")]
    public void No_more_is_wrongly_withheld_than_was_retained()
    {
        var due = Due(Sub().HirerPaid("2026-01-12", 30000m, PaymentOf.Retention), "2026-06-15");
        Assert.Equal((Standing.Open, 360m), (due.Standing, due.Amount));
        Assert.True(due.Says("each subcontractor's share"));
        Assert.True(due.Says("$4,500.00 is wrongly withheld"));
        var asked = Assert.Single(due.Questions, q => q.Text.EndsWith("(hirer-paid.amount)", StringComparison.Ordinal));
        Assert.Equal(25_500m, asked.Dollars);
        Assert.IsType<HirerPaid>(asked.Corrects);
        Assert.False(Due(Sub().HirerPaid("2026-01-12", 4500m, PaymentOf.Retention), "2026-06-15").Asks("(hirer-paid.amount)"));
    }

    [Fact]
    [Proves("Pub. Contract Code § 7107(d)")]
    public void Of_several_receipts_the_share_is_counted_once()
    {
        var answer = Sub().HirerPaid("2026-01-12", 3000m, PaymentOf.Retention).HirerPaid("2026-02-12", 3000m, PaymentOf.Retention)
            .On("2026-06-15");
        Assert.Equal(240m, answer.Get("retention.due").Amount); // 3,000.00 for four months
        Assert.Equal(90m, answer.Get("retention.due.2").Amount); // 1,500.00 for three, from 19 February
    }

    [Fact]
    [Proves("Pub. Contract Code § 7107(f)")]
    public void The_charge_ends_with_the_judgment()
    {
        var due = Due(Sub().HirerPaid("2026-01-12", 4500m, PaymentOf.Retention).ActionFiled("2026-02-10")
            .Add(i => new ActionEnded { Index = i, On = JobBuilder.When("2026-03-25"), How = ActionEnd.Won }), "2026-06-15");
        Assert.Equal(180m, due.Amount); // two whole months to 20 March
        var dismissed = Due(Sub().HirerPaid("2026-01-12", 4500m, PaymentOf.Retention).ActionFiled("2026-02-10")
            .Add(i => new ActionEnded { Index = i, On = JobBuilder.When("2026-03-25"), How = ActionEnd.Dismissed }), "2026-06-15");
        Assert.Equal(360m, dismissed.Amount);
    }

    // The section speaks of the original contractor and its subcontractors.
    [Theory]
    [InlineData("direct", Standing.Open)]
    [InlineData("sub", Standing.InDoubt)]
    [Proves("Pub. Contract Code § 7107(d)")]
    public void It_binds_the_original_contractor_toward_its_own_subcontractor(string hiredBy, Standing expected) =>
        Assert.Equal(expected, Due(Sub(hiredBy).HirerPaid("2026-01-12", 4500m, PaymentOf.Retention), "2026-06-15").Standing);
}
