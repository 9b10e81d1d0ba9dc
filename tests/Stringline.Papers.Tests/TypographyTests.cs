using CsCheck;
using Stringline.Papers.Layout;
using Stringline.Papers.Prescribed;

namespace Stringline.Papers.Tests;

/// <summary>How texts are set.</summary>
public sealed class TypographyTests
{
    [Theory]
    [InlineData("12 Cooper's Row", "12 Cooper’s Row")]
    [InlineData("the owners' names", "the owners’ names")]
    [InlineData("\"Plumb & Level\" Stone Yard", "“Plumb & Level” Stone Yard")]
    [InlineData("(\"claimant\")", "(“claimant”)")]
    [InlineData("South 0° 14' 30\" West", "South 0° 14′ 30″ West")]
    [InlineData("a beam of 10'-6\" and a sill", "a beam of 10′-6″ and a sill")]
    [InlineData("Lot \"B 2\" of 1998", "Lot “B 2” of 1998")]
    [InlineData("the '90s", "the ’90s")]
    [InlineData("complete on 2026-06-27 (Sat), at the latest", "complete on Saturday, June 27, 2026, at the latest")]
    [InlineData("proposal 2026-06-27.", "proposal 2026-06-27.")]
    [InlineData("no. 2026-0012345", "no. 2026-0012345")]
    [InlineData("APN 027-310-014-000", "APN 027-310-014-000")]
    [InlineData("2026-13-45", "2026-13-45")]
    [InlineData("Civ. Code §§ 8102, 8830-8834", "Civ. Code §§ 8102, 8830–8834")]
    [InlineData("call 530-555-0142", "call 530-555-0142")]
    public void A_text_is_set(string written, string set) => Assert.Equal(set, Typography.Of(written));

    /// <summary>The words of a sheet are ours; those of a paper may be a person's, and name a proposal by its number.</summary>
    [Theory]
    [InlineData("paid 2026-06-27.", "paid June 27, 2026.")]
    [InlineData("no. 2026-0012345", "no. 2026-0012345")]
    [InlineData("2026-13-45", "2026-13-45")]
    public void On_a_sheet_every_day_is_in_words(string written, string set) => Assert.Equal(set, Typography.Of(written, onSheet: true));

    /// <summary>Prescribed wording is data, word for word: setting changes no letter of it.</summary>
    [Fact]
    public void Prescribed_wording_is_left_as_it_is()
    {
        foreach (var text in (PrescribedText[])[PrescribedText.NoticeOfMechanicsLien, PrescribedText.NoticeToPropertyOwner,
            .. ((string[])["8132", "8134", "8136", "8138"]).Select(PrescribedText.Of)])
            Assert.All(text.Paragraphs, p => Assert.Equal(p, Typography.Of(p)));
    }

    [Fact]
    public void What_is_set_stays_as_it_is_and_no_letter_or_figure_outside_a_day_changes() =>
        Gen.String[Gen.OneOf(Gen.Char['a', 'z'], Gen.Char['0', '9'], Gen.Const(' '), Gen.Const('\''), Gen.Const('"'),
            Gen.Const('-')), 0, 40]
            .Sample(text =>
        {
            var set = Typography.Of(text);
            Assert.Equal(set, Typography.Of(set));
            Assert.Equal(-1, set.AsSpan().IndexOfAny('\'', '"'));
        }, iter: 2_000);

    [Theory]
    [InlineData("Notice of Completion, Abel Thornquist", 30, "Notice of Completion, Abel …")]
    [InlineData("Miscellaneous", 6, "Miscel …")]
    [InlineData("Claim, Stone Yard", 17, "Claim, Stone Yard")]
    [InlineData("Claim, Stone Yard", 6, "Claim …")]
    public void A_long_foot_ends_at_a_word(string foot, int end, string cut) => Assert.Equal(cut, PaperText.CutAtWord(foot, end));
}
