using Stringline.Law.Facts;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>The owner's notice of completion: for which contract it is, and by whom it is signed (Civ. Code §§ 8182, 8186).</summary>
public sealed class CompletionPaperTests
{
    private const string Id = "notice-of-completion";

    private static JobFile Several(JobFile job) => job with { Work = job.Work with { SeveralDirectContracts = true } };

    /// <summary>Civ. Code §§ 8182(c)(1), 8186: where several contracts were let, it says for which it is, or that it is for all.</summary>
    [Fact]
    public void On_a_work_of_several_direct_contracts_it_is_asked_for_which_the_notice_is()
    {
        Assert.Contains(Refusals(Id, Several), r => r.Id == "which-contract");
        Assert.Contains("the direct contract described in paragraphs 4 and 5", Make(Id, Several, o => o with { To = ["p3"] }).TextOf(),
            StringComparison.Ordinal);
        Assert.Contains("that the work of improvement described here has been completed",
            Make(Id, Several, o => o with { WholeWork = true }).TextOf().ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8182(c)(2), (d): a successor in interest names its transferor; without it the notice has no effect.</summary>
    [Fact]
    public void A_successor_in_interest_names_the_one_who_transferred_the_property()
    {
        var made = Make(Id, options: o => o with { FormerOwner = "Tarweed Holdings, LP\n9 Kiln Row, Davis, CA 95616" });
        Assert.Contains("Tarweed Holdings, LP", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("9 Kiln Row, Davis, CA 95616", made.TextOf(), StringComparison.Ordinal);
        Assert.DoesNotContain("8182(c)(2)", made.SheetText(), StringComparison.Ordinal);
        Assert.Contains("8182(c)(2)", Make(Id).SheetText(), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8182(b): the owner verifies it, and has no words such as "reputed" and "known" for its own lender.</summary>
    [Theory]
    [InlineData(PartyCapacity.ConstructionLender, "that Granger Slough Bank is the construction lender")]
    [InlineData(PartyCapacity.DirectContractor, "that Çelik & Ōta Builders, Inc. is the direct contractor")]
    public void The_owner_swears_to_nobody_as_reputed_and_confirms_who_it_is(PartyCapacity reputed, string confirmed)
    {
        var made = Make(Id, j => j with { Parties = [.. j.Parties.Select(p => p with { Reputed = p.Capacity == reputed })] });
        Assert.DoesNotContain("reputed", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains($"Before signing, the owner confirms {confirmed}", made.SheetText(), StringComparison.Ordinal);
        Assert.DoesNotContain("the owner confirms",
            Make(Id, j => j with { Parties = [.. j.Parties.Select(p => p with { Reputed = false })] }).SheetText(),
            StringComparison.Ordinal);
    }

    [Fact]
    public void An_owner_without_a_lender_says_none_and_confirms_it()
    {
        var made = Make(Id, j => j with { Parties = [.. j.Parties.Where(p => p.Capacity != PartyCapacity.ConstructionLender)] });
        Assert.DoesNotContain("None known", made.TextOf(), StringComparison.Ordinal);
        Assert.True(made.Says("None"));
        Assert.Contains("confirms that there is no construction lender", made.SheetText(), StringComparison.Ordinal);
    }
}
