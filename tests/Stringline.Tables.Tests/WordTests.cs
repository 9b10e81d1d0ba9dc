using System.Text.RegularExpressions;
using Stringline.Law.Facts;

namespace Stringline.Tables.Tests;

/// <summary>Word tables rest on the order in which enums declare their values; the enum's own names check that order.</summary>
public sealed partial class WordTests
{
    [Fact]
    public void Every_value_has_the_word_its_name_says()
    {
        Check<WorkKind>(JobFileWords.Kind);
        Check<ClaimantRole>(JobFileWords.Role);
        Check<PartyCapacity>(JobFileWords.Capacity);
        Check<TitleForm>(JobFileWords.TitleForm);
        Check<ChargeKind>(JobFileWords.Charge);
        Check<Manner>(JobFileWords.Manner);
        Check<NoticeKind>(JobFileWords.Notice);
        Check<CompletionTheory>(JobFileWords.Completion);
        Check<OwnerNotice>(JobFileWords.OwnerNotice);
        Check<PaymentOf>(JobFileWords.PaymentOf);
        Check<LienKind>(JobFileWords.LienKind);
        Check<ActionOn>(JobFileWords.ActionOn);
        Check<ActionEnd>(JobFileWords.ActionEnd);
        Check<DisputeAbout>(JobFileWords.DisputeAbout);
        Check<ContractEnd>(JobFileWords.ContractEnd);
        Check<ReleaseGround>(JobFileWords.ReleaseGround);
        Check<AddressKind>(JobFileWords.AddressKind);
        Check<TitleSource>(JobFileWords.TitleSource);
        Check<LapseCause>(JobFileWords.LapseCause);
        Check<PublicBody>(JobFileWords.PublicBody);
    }

    [Fact]
    public void The_uses_of_the_site_have_their_words()
    {
        Assert.Equal("commercial", JobFileWords.Word(WorkUse.Commercial));
        Assert.Equal("residential", JobFileWords.Word(WorkUse.Residential));
        Assert.Equal("owner-occupied-1-to-4", JobFileWords.Word(WorkUse.OwnerOccupiedOneToFour));
        Assert.Equal(Enum.GetValues<WorkUse>().Length, JobFileWords.Use.Words.Count);
    }

    /// <summary>Civ. Code §§ 8132 to 8138: the headings of the four forms.</summary>
    [Fact]
    public void The_waiver_forms_have_their_sections()
    {
        Assert.Equal("8132", JobFileWords.Word(WaiverForm.ConditionalProgress));
        Assert.Equal("8134", JobFileWords.Word(WaiverForm.UnconditionalProgress));
        Assert.Equal("8136", JobFileWords.Word(WaiverForm.ConditionalFinal));
        Assert.Equal("8138", JobFileWords.Word(WaiverForm.UnconditionalFinal));
        Assert.Equal(Enum.GetValues<WaiverForm>().Length, JobFileWords.Form.Words.Count);
    }

    private static void Check<T>(WordTable table)
        where T : struct, Enum =>
        Assert.Equal(Enum.GetValues<T>().Select(value => Hump().Replace(value.ToString(), "-$0").ToLowerInvariant()), table.Words);

    [GeneratedRegex("(?<!^)[A-Z]")]
    private static partial Regex Hump();
}
