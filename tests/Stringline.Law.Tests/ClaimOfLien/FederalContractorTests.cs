using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>
/// Who is within the federal bond, to which contractor the notice goes, and in which court and against whom the action is brought. Last
/// furnished on Wednesday 15 April 2026: notice by Tuesday 14 July; action from 15 July 2026 to 15 April 2027. The text of 40 U.S.C. § 3133
/// is from memory.
/// </summary>
public sealed class FederalContractorTests
{
    private static JobBuilder Job(string hiredBy = "sub") => new JobBuilder().Work(w => w with { Kind = WorkKind.Federal })
        .Party("sub", PartyCapacity.Subcontractor).Party("surety", PartyCapacity.Surety).Role(ClaimantRole.Supplier, hiredBy)
        .Furnished("2026-03-02", 1m).Furnished("2026-04-15", 1m);

    private static Finding Notice(JobBuilder job, string asOf = "2026-08-03") => job.On(asOf).Get("federal-bond.notice-last-day");

    private static Finding Action(JobBuilder job) => job.On("2026-12-01").Get("federal-bond.action-last-day");

    [Theory]
    [InlineData(PartyCapacity.PublicEntity, Standing.InDoubt)]
    [InlineData(PartyCapacity.Owner, Standing.InDoubt)]
    [InlineData(PartyCapacity.Subcontractor, Standing.Open)]
    [Proves("40 U.S.C. § 3131(b)")]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    public void Who_contracts_with_the_United_States_itself_may_have_no_claim_on_the_bond(PartyCapacity hirer, Standing expected)
    {
        var answer = Job("agency").Party("agency", hirer).BondNoticeGiven("2026-05-04", "direct").On("2026-12-01");
        Assert.Equal(expected, answer.Get("federal-bond.action-last-day").Standing);
        Assert.Equal(expected == Standing.InDoubt, answer.Find("authorized-work")?.Asks("(claimant.hiredBy)") == true);
    }

    [Fact]
    [Proves("40 U.S.C. § 3131(b)")]
    public void The_prime_contractor_itself_is_asked_nothing_of_the_kind() =>
        Assert.Null(Job("agency").Party("agency", PartyCapacity.PublicEntity).Role(ClaimantRole.DirectContractor, "agency").On("2026-12-01")
            .Find("authorized-work"));

    [Theory]
    [InlineData(null, new[] { "direct" }, Standing.InDoubt, "(parties.worksUnder)")]
    [InlineData(null, new[] { "direct", "other" }, Standing.Kept, null)]
    [InlineData("direct", new[] { "direct" }, Standing.Kept, null)]
    [InlineData("direct", new[] { "other" }, Standing.Lost, null)]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void Of_several_prime_contractors_the_notice_goes_to_the_one_or_to_each(string? under, string[] to, Standing expected,
        string? asked)
    {
        var notice = Notice(Job().Party("other", PartyCapacity.DirectContractor).PartyWith("sub", p => p with { WorksUnder = under })
            .BondNoticeGiven("2026-05-04", to));
        Assert.Equal(expected, notice.Standing);
        if (asked is not null)
            Assert.True(notice.Asks(asked));
    }

    // By e-mail or left and mailed: whether that proves delivery is open; but not where it came on day 91.
    [Theory]
    [InlineData(Manner.Email, "2026-07-14", Standing.InDoubt)]
    [InlineData(Manner.Email, "2026-07-15", Standing.Lost)]
    [InlineData(Manner.Substituted, "2026-07-14", Standing.InDoubt)]
    [InlineData(Manner.CertifiedMail, "2026-07-14", Standing.Kept)]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void A_manner_that_may_prove_nothing_leaves_a_doubt_only_in_time(Manner manner, string on, Standing expected) =>
        Assert.Equal(expected,
            Notice(Job().BondNoticeGiven(on, "direct").Which(e => e is BondNoticeGiven b ? b with { Manner = manner } : e)).Standing);

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void A_notice_on_a_day_that_nobody_knows_may_have_been_in_time()
    {
        var notice = Notice(Job().Add(i => new BondNoticeGiven { Index = i, On = new DayFact.Unknown(), To = ["direct"] }));
        Assert.Equal(Standing.InDoubt, notice.Standing);
        Assert.True(notice.Asks("(bond-notice-given.on)"));
    }

    [Theory]
    [InlineData("2026-09-01", null, false, Standing.Kept)]
    [InlineData("2026-09-01", "surety", false, Standing.Kept)]
    [InlineData("2026-09-01", "direct", false, Standing.InDoubt)]
    [InlineData("2026-09-01", "surety", true, Standing.InDoubt)]
    [InlineData("2026-07-14", "surety", false, Standing.InDoubt)]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    [Proves("40 U.S.C. § 3133(b)(3)")]
    public void The_action_is_brought_after_ninety_days_against_the_surety_in_the_federal_court(string on, string? against,
        bool smallClaims, Standing expected) =>
        Assert.Equal(expected, Action(Job("direct").Add(i => new ActionFiled
        {
            Index = i, On = JobBuilder.When(on), Enforces = [Stringline.Law.Facts.ActionOn.PaymentBond], Against = against is null
                ? [] : [against], SmallClaims = smallClaims,
        })).Standing);
}
