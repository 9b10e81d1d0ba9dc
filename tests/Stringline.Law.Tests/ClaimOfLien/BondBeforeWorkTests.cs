using Stringline.Law.Facts;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>
/// Civ. Code § 8600: "before the commencement of work, the owner in good faith files a direct contract with the county recorder, and
/// records a payment bond of the direct contractor in an amount not less than 50 percent of the price stated in the direct contract".
/// </summary>
public sealed class BondBeforeWorkTests
{
    private const string Section = "Civ. Code § 8600(b)";

    private static JobBuilder Job(string bond = "2025-07-01", decimal? amount = 50_000m, string? filed = "2025-06-30",
        decimal? price = 100_000m, string? commenced = "2025-07-20") =>
        new JobBuilder().Furnished("2025-08-05", 6430m).Ended("2025-08-05").Notice("2025-08-14").Completed("2025-10-22")
        .PaymentBond(bond, "direct").Work(w => w with
        {
            PaymentBond = w.PaymentBond! with { Amount = amount },
            Commenced = commenced is null ? null : JobBuilder.Day(commenced),
            DirectContract = new DirectContract { Filed = filed is null ? null : JobBuilder.Day(filed), Price = price },
        });

    [Fact]
    [Proves("Civ. Code § 8600(a)")]
    [Proves("Civ. Code § 8600(b)")]
    public void Where_contract_and_bond_stood_before_the_work_the_liens_may_be_restricted()
    {
        var right = Job().On("2025-12-01").Get("lien-right");
        Assert.Contains(Section, right.Sections);
        Assert.True(right.Says("restrict all liens to what the owner still owes"));
        Assert.DoesNotContain(right.Questions, q => q.Text.Contains("directContract", StringComparison.Ordinal));
    }

    // One condition missing at a time: recorded or filed on the very day of commencement is not before it; 49,999.99 is not half of
    // 100,000.00.
    [Theory]
    [InlineData("2025-07-20", 50_000, "2025-06-30")]
    [InlineData("2025-07-01", 49_999.99, "2025-06-30")]
    [InlineData("2025-07-01", 50_000, "2025-07-20")]
    [Proves("Civ. Code § 8600(a)")]
    public void One_condition_that_is_not_there_leaves_the_lien_as_it_is(string bond, double amount, string filed) =>
        Assert.DoesNotContain(Section, Job(bond, (decimal)amount, filed).On("2025-12-01").Get("lien-right").Sections);

    [Theory]
    [InlineData(null, "2025-06-30", "2025-07-20", "work.paymentBond.amount")]
    [InlineData(50_000.0, null, "2025-07-20", "work.directContract.filed")]
    [InlineData(50_000.0, "2025-06-30", null, "work.commenced")]
    [Proves("Civ. Code § 8600(a)")]
    public void What_is_not_told_is_asked(double? amount, string? filed, string? commenced, string field)
    {
        var right = Job(amount: (decimal?)amount, filed: filed, commenced: commenced).On("2025-12-01").Get("lien-right");
        Assert.True(right.Says("A payment bond was recorded on 2025-07-01"));
        Assert.Contains(right.Questions, q => q.Text.Contains(field, StringComparison.Ordinal));
    }

    [Fact]
    [Proves("Civ. Code § 8600(b)")]
    public void Neither_the_direct_contractors_own_lien_nor_anothers_bond_is_touched()
    {
        Assert.DoesNotContain(Section, Job().Role(ClaimantRole.DirectContractor, "owner").On("2025-12-01").Get("lien-right").Sections);
        var ofOwner = Job().Work(w => w with { PaymentBond = w.PaymentBond! with { Principal = "owner" } });
        Assert.DoesNotContain(Section, ofOwner.On("2025-12-01").Get("lien-right").Sections);
    }
}
