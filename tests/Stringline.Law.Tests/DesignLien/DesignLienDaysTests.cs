using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.DesignLien;

/// <summary>The design professional's lien before the work commences.</summary>
public sealed class DesignLienDaysTests
{
    private static JobBuilder Job(string hiredBy = "owner", bool? written = true, bool permit = true, string? commenced = "2027-12-31",
        WorkUse use = WorkUse.Commercial, ClaimantRole role = ClaimantRole.DesignProfessional) =>
        new JobBuilder().Role(role, hiredBy).Price(40000m).Contract(c => c with { Written = written })
            .Work(w => w with { Permit = permit
                ? new Permit { Number = "B-1" } : null, Commenced = commenced is null ? null : Day(commenced), Use = use })
            .Furnished("2026-03-02", 40000m).Ended("2026-04-06");

    private static Finding Right(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("design-lien.right");

    [Theory]
    [InlineData("owner", Standing.Open)]
    [InlineData("direct", Standing.Lost)]
    [Proves("Civ. Code § 8300")]
    public void It_needs_a_contract_with_the_landowner(string hiredBy, Standing expected) =>
        Assert.Equal(expected, Right(Job(hiredBy)).Standing);

    [Theory]
    [InlineData(ClaimantRole.DirectContractor)]
    [InlineData(ClaimantRole.Supplier)]
    [Proves("Civ. Code § 8300")]
    public void Nobody_else_has_it(ClaimantRole role) =>
        Assert.DoesNotContain(Job(role: role).PaymentDemanded("2026-05-04", 1m).WillNotCommence("2026-05-04").On("2026-06-01").Findings,
            f => f.Id.StartsWith("design-lien", StringComparison.Ordinal));

    [Theory]
    [InlineData(true, true, Standing.Open, null)]
    [InlineData(null, true, Standing.InDoubt, "in writing")]
    [InlineData(false, true, Standing.Lost, null)]
    [InlineData(true, false, Standing.InDoubt, "building permit")]
    [Proves("Civ. Code § 8302")]
    public void It_needs_a_written_contract_and_a_permit_or_approval(bool? written, bool permit, Standing expected, string? asks)
    {
        var right = Right(Job(written: written, permit: permit));
        Assert.Equal(expected, right.Standing);
        Assert.True(asks is null ? right.Questions.Count == 0 : right.Asks(asks));
    }

    private static Finding ForSmallHome(int? units, decimal? cost) =>
        Right(Job(use: WorkUse.OwnerOccupiedOneToFour).Work(w => w with { Units = units, ExpectedCost = cost }));

    [Theory]
    [InlineData(1, 99_999.99, Standing.Lost, null)]
    [InlineData(1, 100_000.00, Standing.Open, null)]
    [InlineData(2, 99_999.99, Standing.Open, null)]
    [InlineData(2, null, Standing.Open, null)]
    [InlineData(null, 100_000.00, Standing.Open, null)]
    [InlineData(1, null, Standing.InDoubt, "(work.expectedCost)")]
    [InlineData(null, 99_999.99, Standing.InDoubt, "(work.units)")]
    [Proves("Civ. Code § 8318")]
    public void There_is_none_on_a_single_family_home_of_the_owner_under_a_hundred_thousand_dollars(int? units, double? cost,
        Standing expected, string? asks)
    {
        var right = ForSmallHome(units, (decimal?)cost);
        Assert.Equal(expected, right.Standing);
        Assert.True(asks is null ? right.Questions.Count == 0 : right.Asks(asks));
    }

    [Fact]
    [Proves("Civ. Code § 8302")]
    public void The_amount_is_the_fee_less_payments() => Assert.Equal(15000m, Right(Job().Paid("2026-04-20", 25000m)).Amount);

    [Theory]
    [InlineData(WorkUse.OwnerOccupiedOneToFour, true)]
    [InlineData(WorkUse.Residential, false)]
    [Proves("Civ. Code § 8318")]
    public void A_home_of_the_owner_is_asked_for_its_cost(WorkUse use, bool asks) =>
        Assert.Equal(asks, Right(Job(use: use)).Asks("under $100,000"));

    // Demand Monday 4 May: recording from Thursday 14 May.
    [Theory]
    [InlineData("2026-05-13", Standing.NotYet)]
    [InlineData("2026-05-14", Standing.Open)]
    [Proves("Civ. Code § 8304")]
    [Proves("Civ. Code § 8304(c)")]
    public void The_demand_precedes_recording_by_ten_days(string asOf, Standing expected)
    {
        var first = Job().DefaultNotice("2026-05-04", 40000m).On(asOf).Get("design-lien.first-day");
        Assert.Equal(["2026-05-14"], first.DaysOf());
        Assert.Equal(expected, first.Standing);
        Assert.True(Right(Job()).Says("at least 10 days before recording"));
        Assert.Null(Job().On(asOf).Find("design-lien.first-day"));
    }

    // Known Monday 4 May: the ninetieth day is Sunday 2 August; act by Friday 31 July.
    [Theory]
    [InlineData("2026-08-02", Standing.InDoubt)]
    [InlineData("2026-08-03", Standing.InDoubt)]
    [InlineData("2026-08-04", Standing.Lost)]
    [Proves("Civ. Code § 8312")]
    public void It_is_recorded_within_ninety_days_after_knowing_that_work_will_not_commence(string asOf, Standing expected)
    {
        var last = Job().WillNotCommence("2026-05-04").DefaultNotice("2026-05-04", 40000m).On(asOf).Get("design-lien.last-day");
        Assert.Equal(["2026-08-02"], last.DaysOf());
        Assert.Equal("2026-07-31", last.Plan());
        Assert.Equal(expected, last.Standing);
        Assert.Equal(asOf == "2026-08-02"
            ? Standing.Kept : expected, Job().WillNotCommence("2026-05-04").DefaultNotice("2026-05-04", 40000m).ClaimRecorded(asOf)
            .On("2026-09-01").Get("design-lien.last-day").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8312")]
    public void A_day_of_knowledge_in_doubt_is_lost_only_on_its_latest()
    {
        var job = Job().WillNotCommence("2026-05-01..2026-05-04").DefaultNotice("2026-05-04", 40000m);
        Assert.Equal(["2026-07-30", "2026-08-02"], job.On("2026-06-01").Get("design-lien.last-day").DaysOf());
        Assert.Equal(Standing.InDoubt, job.On("2026-08-02").Get("design-lien.last-day").Standing);
        Assert.Equal(Standing.Lost, job.On("2026-08-04").Get("design-lien.last-day").Standing);
    }

    [Theory]
    [InlineData("2026-05-31", Standing.Open)]
    [InlineData("2026-06-01", Standing.Lost)]
    [Proves("Civ. Code § 8306(b)(1)")]
    public void It_ends_when_the_work_commences(string asOf, Standing expected) =>
        Assert.Equal(expected, Right(Job(commenced: "2026-06-01"), asOf).Standing);

    [Fact]
    [Proves("Civ. Code § 8304")]
    public void Whether_work_has_commenced_is_asked() => Assert.True(Right(Job(commenced: null)).Asks("commenced"));

    // Recorded 2 March, commenced Monday 4 May: Wednesday 3 June.
    [Theory]
    [InlineData("2026-06-03", Standing.Open)]
    [InlineData("2026-06-04", Standing.Lost)]
    [Proves("Civ. Code § 8319")]
    public void One_ended_by_commencement_is_recorded_anew_within_thirty_days(string asOf, Standing expected)
    {
        var job = Job(commenced: "2026-05-04").ClaimRecorded("2026-04-13");
        var conversion = job.On(asOf).Get("design-lien.conversion-last-day");
        Assert.Equal(["2026-06-03"], conversion.DaysOf());
        Assert.Equal(expected, conversion.Standing);
        Assert.Equal(expected == Standing.Open
            ? Standing.Kept
            : Standing.Lost, job.ClaimRecorded(asOf, lien: LienKind.Converted).On("2026-07-01")
            .Get("design-lien.conversion-last-day").Standing);
        Assert.Equal(40000m, conversion.Amount);
    }

    // Recorded 13 April: its ninety days end on Sunday 12 July, by the roll on Monday the 13th.
    [Theory]
    [InlineData("2026-07-12", Standing.Open)]
    [InlineData("2026-07-13", Standing.InDoubt)]
    [InlineData("2026-07-14", null)]
    [Proves("Civ. Code § 8319")]
    [Proves("Civ. Code § 8306(b)(2)")]
    public void One_that_ended_by_its_ninety_days_is_not(string commenced, Standing? converts) =>
        Assert.Equal(converts, Job(commenced: commenced).ClaimRecorded("2026-04-13").On("2026-07-20")
            .Find("design-lien.conversion-last-day")?.Standing);
}
