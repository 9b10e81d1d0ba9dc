using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Tests.StopPaymentNotice;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.PaymentBond;

/// <summary>Who has a claim on the bond, and whether there is one.</summary>
public sealed class BondRightTests
{
    private static readonly string[] Rows = ["payment-bond.notice-last-day", "payment-bond.amount", "payment-bond.action-last-day"];

    [Theory]
    [InlineData(ClaimantRole.Supplier)]
    [InlineData(ClaimantRole.DesignProfessional)]
    [Proves("Civ. Code § 9566")]
    public void One_hired_by_the_public_entity_itself_has_no_claim_on_the_bond(ClaimantRole role)
    {
        var assessment = UsualPublic().Role(role, "city").On("2025-12-01");
        foreach (var id in Rows)
        {
            Assert.Equal(Standing.Lost, assessment.Get(id).Standing);
            Assert.Contains("Civ. Code § 9566", assessment.Get(id).Sections);
        }

        Assert.True(assessment.Get("payment-bond.notice-last-day").Asks("(claimant.hiredBy)"));
        // Its stop payment notice is another matter.
        Assert.Equal(Standing.Open, assessment.Get("stop-payment-notice.last-day").Standing);
    }

    [Theory]
    [InlineData("direct", Standing.Lost, Standing.Lost)]
    [InlineData(null, Standing.InDoubt, Standing.InDoubt)]
    [InlineData("owner", Standing.Open, Standing.Open)]
    [Proves("Civ. Code § 8608(a)")]
    public void One_hired_by_the_owner_has_none_on_a_direct_contractors_bond(string? principal, Standing notice, Standing action)
    {
        var assessment = Private(hiredBy: "owner").PaymentBond("2025-07-01", principal).Furnished("2025-08-05", 6430m)
            .Completed("2025-10-22").IndexSearched("2025-11-10").On("2025-12-01");
        Assert.Equal(notice, assessment.Get("payment-bond.notice-last-day").Standing);
        Assert.Equal(action, assessment.Get("payment-bond.action-last-day").Standing);
        Assert.Equal(principal is null, assessment.Get("payment-bond.notice-last-day").Asks("(paymentBond.principal)"));
        Assert.Equal(principal != "owner", assessment.Get("payment-bond.notice-last-day").Asks("(claimant.hiredBy)"));
    }

    [Theory]
    [InlineData(null, Standing.Lost)]
    [InlineData("second", Standing.Lost)]
    [InlineData("owner", Standing.Open)]
    [InlineData("sub", Standing.InDoubt)]
    [Proves("Civ. Code § 8608(a)")]
    [Proves("Civ. Code § 8606")]
    public void A_direct_contractor_has_none_on_its_own_bond(string? principal, Standing expected)
    {
        var assessment = DirectContractor().Party("second", PartyCapacity.DirectContractor).Party("sub", PartyCapacity.Subcontractor)
            .PaymentBond("2025-07-01", principal).Price(6430m).Furnished("2025-08-05", 6430m).Completed("2025-10-22")
            .IndexSearched("2025-11-10").On("2025-12-01");
        Assert.Equal(expected, assessment.Get("payment-bond.notice-last-day").Standing);
        Assert.Equal(expected, assessment.Get("payment-bond.action-last-day").Standing);
        Assert.Equal(principal is null, assessment.Get("payment-bond.notice-last-day").Asks("(paymentBond.principal)"));
        Assert.Equal(principal is null, assessment.Get("payment-bond.action-last-day").Asks("Whose bond is it"));
    }

    [Fact]
    [Proves("Civ. Code § 8608(a)")]
    public void Work_for_another_direct_contractor_has_no_claim_on_this_ones_bond()
    {
        JobBuilder Job(string principal) => Private(hiredBy: "direct").Party("second", PartyCapacity.DirectContractor, "Second Prime Co.")
            .PaymentBond("2025-07-01", principal).Furnished("2025-08-05", 6430m).Completed("2025-10-22").IndexSearched("2025-11-10");
        Assert.Equal(Standing.Lost, Job("second").On("2025-12-01").Get("payment-bond.notice-last-day").Standing);
        Assert.Equal(Standing.Open, Job("direct").On("2025-12-01").Get("payment-bond.notice-last-day").Standing);
        Assert.Equal(Standing.Lost, Job("second").Role(ClaimantRole.Supplier, "sub").PartyWith("sub", p => p with { WorksUnder = "direct" })
            .On("2025-12-01").Get("payment-bond.notice-last-day").Standing);
        Assert.Equal(Standing.Open, Job("second").Role(ClaimantRole.Supplier, "sub").On("2025-12-01")
            .Get("payment-bond.notice-last-day").Standing);
    }

    [Theory]
    [InlineData(null, "One is required where the direct contract is above $25,000.00")]
    [InlineData(25_000, "is not above $25,000.00, so none is required")]
    [InlineData(25_001, "One is required where the direct contract is above $25,000.00")]
    [Proves("Civ. Code § 9550(a)")]
    [Proves("Civ. Code § 9552")]
    public void A_bond_of_which_the_file_knows_nothing_is_asked_for_and_its_rows_are_in_doubt(int? price, string says)
    {
        var job = new JobBuilder().PublicWork().IndexSearched("2025-11-10").Furnished("2025-08-05", 6430m).Accepted()
            .Work(w => w with { DirectContract = new DirectContract { Price = price } });
        var assessment = job.On("2025-12-01");
        foreach (var id in Rows)
            Assert.Equal(Standing.InDoubt, assessment.Get(id).Standing);
        Assert.True(assessment.Get("payment-bond.notice-last-day").Asks("(work.paymentBond)"));
        Assert.True(assessment.Get("payment-bond.notice-last-day").Says(says));
        Assert.Equal("2026-01-05", assessment.Get("payment-bond.notice-last-day").Plan());
        Assert.Equal(Standing.Lost, job.On("2026-01-06").Get("payment-bond.notice-last-day").Standing);
        Assert.Equal(Standing.Open, job.PaymentBond(null).On("2025-12-01").Get("payment-bond.notice-last-day").Standing);
    }

    // What a court gave is given, whatever the file fails to name.
    [Theory]
    [InlineData(ActionEnd.Won, Standing.Done)]
    [InlineData(ActionEnd.Settled, Standing.Done)]
    [InlineData(ActionEnd.LostAtTrial, Standing.Lost)]
    [InlineData(ActionEnd.Dismissed, Standing.InDoubt)]
    [Proves("Civ. Code § 9558")]
    public void An_action_that_was_won_on_a_bond_that_the_file_does_not_name_is_done(ActionEnd how, Standing expected) =>
        Assert.Equal(expected, new JobBuilder().PublicWork().IndexSearched("2025-11-10").Furnished("2025-08-05", 6430m).Ended("2025-08-05")
            .NoticedPublic().Accepted()
            .ActionOn("2025-12-01", ActionOn.PaymentBond).ActionEnded("2026-03-02", how).On("2026-04-01")
            .Get("payment-bond.action-last-day").Standing);

    [Theory]
    [InlineData(null, true, Standing.InDoubt)]
    [InlineData(PublicBody.State, null, Standing.InDoubt)]
    [InlineData(PublicBody.GeneralServices, null, Standing.InDoubt)]
    [InlineData(PublicBody.Transportation, null, Standing.InDoubt)]
    [InlineData(PublicBody.StateUniversity, null, Standing.InDoubt)]
    [InlineData(PublicBody.UniversityOrCourt, null, Standing.Lost)]
    [InlineData(PublicBody.Local, false, Standing.Lost)]
    [InlineData(null, null, Standing.Lost)]
    [Proves("Civ. Code § 9550(e)")]
    [Proves("Pub. Contract Code § 7103")]
    public void On_a_State_entitys_bond_no_day_takes_anything_for_sure(PublicBody? body, bool? stateContractAct, Standing expected)
    {
        var job = Public().Furnished("2025-08-05", 6430m).Ended("2025-08-05").Accepted()
            .Work(w => w with { Body = body, StateContractAct = stateContractAct });
        Assert.Equal((Standing.Open, "2026-01-05"), (job.On("2025-12-01").Get("payment-bond.notice-last-day").Standing, job.On("2025-12-01")
            .Get("payment-bond.notice-last-day").Plan()));
        var notice = job.On("2026-02-01").Get("payment-bond.notice-last-day");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(expected == Standing.InDoubt, notice.Sections.Contains("Civ. Code § 9550(e)"));
        Assert.Equal(expected, job.NoticedPublic("2025-08-05").On("2026-08-03").Get("payment-bond.action-last-day").Standing);
    }
}
