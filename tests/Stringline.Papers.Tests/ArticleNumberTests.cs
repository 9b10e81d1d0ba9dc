using CsCheck;
using Stringline.Law.Facts;
using Stringline.Papers.Mailing;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// Check digits of postal article numbers. Domestic: numbers listed as valid in the open data set jkeen/tracking_number_data,
/// couriers/usps.json. International (UPU S10): the numbers that the package s10 1.0.0 on npm lists as valid and as invalid in its own
/// tests.
/// </summary>
public sealed class ArticleNumberTests
{
    [Theory]
    [InlineData("0307 1790 0005 2348 3741")]
    [InlineData("7112 3456 7891 2345 6787")]
    [InlineData("9400 1112 0108 0805 4830 16")]
    [InlineData("9405-8036-9930-0124-2878-99")]
    [InlineData("7196 9010 7560 0307 7385")] // checks only with 91 before it
    [InlineData("420 22153 9101026837331000039521")] // routing prefix, ZIP of five digits
    [InlineData("EB000717595HK")]
    [InlineData("EB000717618HK")]
    [InlineData("RB123456785GB")]
    [InlineData("ra 123 456 785 us")]
    public void A_good_number_passes(string number) => Assert.Null(ArticleNumber.Fault(number));

    [Theory]
    [InlineData("0307 1790 0005 2348 3742", "1 would be right")]
    [InlineData("9400 1112 0108 0805 4830 10", "6 would be right")]
    [InlineData("EB000717594HK", "5 would be right")]
    [InlineData("EB000717535HK", "would be right")]
    [InlineData("RA123456789US", "5 would be right")]
    [InlineData("12345", "20 or 22 digits")]
    [InlineData("9400 1112 0108 0805 4830 1X", "20 or 22 digits")]
    public void A_bad_number_is_told_with_what_would_be_right(string number, string right) =>
        Assert.Contains(right, ArticleNumber.Fault(number)!, StringComparison.Ordinal);

    /// <summary>The weights 3 and 1 have no common factor with 10, so every single wrong digit of a 22-digit number shows.</summary>
    [Fact]
    public void Every_single_mistyped_digit_of_22_is_found()
    {
        const string good = "9400111201080805483016";
        Gen.Select(Gen.Int[0, 21], Gen.Int[1, 9]).Sample((at, add) =>
            Assert.NotNull(ArticleNumber.Fault(string.Concat(good.Select((c, i) => i == at ? (char)('0' + ((c - '0' + add) % 10)) : c)))));
    }

    [Fact]
    public void A_wrong_check_digit_is_refused_on_the_mail_sheet_with_the_right_one_named()
    {
        var job = Private().With(new ClaimServed { Index = 4, On = DayFact.On(Day("2026-05-18")), To = ["p1"],
            Manner = Manner.CertifiedMail, Article = "9407 1118 9876 5432 1012 39" });
        var refusal = Assert.Single(Refusals("certified-mail-sheet", _ => job));
        Assert.Equal(("article-number", "entries[4].article"), (refusal.Id, refusal.Where.ToString()));
        Assert.Contains("8 would be right", refusal.There.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8416(a)(7): the affidavit is sworn. A draft leaves the number out.</summary>
    [Fact]
    public void A_wrong_check_digit_is_refused_on_the_affidavit_of_a_claim()
    {
        var job = Demo().With(new ClaimServed { Index = 2, On = DayFact.On(Day("2026-05-04")), To = ["p1"],
            Manner = Manner.CertifiedMail, Article = "9407 1118 9876 5432 1012 60" });
        var refusal = Kept.Refusals(job)[0];
        Assert.Equal(("article-number", "entries[2].article"), (refusal.Id, refusal.Where.ToString()));
        Assert.DoesNotContain("9407", Kept.Packet("bad-article", job, draft: true).Claim().Text, StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8118(b).</summary>
    [Fact]
    public void A_wrong_check_digit_is_refused_on_the_proof_of_notice_and_a_carrier_s_own_number_is_not()
    {
        JobFile Given(Manner manner) => Begun().With(new NoticeGiven { Index = 1, On = DayFact.On(Day("2026-02-20")),
            Notice = NoticeKind.Preliminary, To = ["p1"], Manner = manner, Article = "9407 1118 9876 5432 1012 60" });
        var refusal = Assert.Single(Refusals("proof-of-notice", _ => Given(Manner.CertifiedMail)));
        Assert.Equal(("article-number", "entries[1].article"), (refusal.Id, refusal.Where.ToString()));
        Make("proof-of-notice", _ => Given(Manner.OvernightCarrier));
    }

    [Fact]
    public void The_mail_sheet_lists_what_was_mailed_to_whom_with_its_number()
    {
        var text = Make("certified-mail-sheet").TextOf();
        Assert.Contains("9407 1118 9876 5432 1012 38", text, StringComparison.Ordinal);
        Assert.Contains("Copy of the claim of", text, StringComparison.Ordinal);
        Assert.Contains("Granger Slough Bank (construction", text, StringComparison.Ordinal);
    }
}
