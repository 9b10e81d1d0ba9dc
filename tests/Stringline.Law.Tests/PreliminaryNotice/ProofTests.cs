using Stringline.Law.Facts;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>Whether a notice given can be proved from the file.</summary>
public sealed class ProofTests
{
    private static JobBuilder Given(Manner manner, string? article, string? ownersAddress = "1 Quay St, Davis, CA 95616") =>
        new JobBuilder()
        .NoParty("owner").Furnished("2026-03-02", 1m)
        .Add(i => new NoticeGiven { Index = i, On = JobBuilder.When("2026-03-04"), Notice = NoticeKind.Preliminary, Manner = manner,
            To = ["owner", "direct"], Article = article })
        .Party("owner", PartyCapacity.Owner, "Alder Court LLC", address: ownersAddress);

    private static IReadOnlyList<string> Sections(JobBuilder job) => job.On("2026-06-01").Get("preliminary-notice.last-day").Sections;

    [Theory]
    [InlineData(Manner.CertifiedMail, null, true)]
    [InlineData(Manner.CertifiedMail, " ", true)]
    [InlineData(Manner.CertifiedMail, "9407 1118 9876 5432 1012 38", false)]
    [InlineData(Manner.RegisteredMail, null, true)]
    [InlineData(Manner.ExpressMail, null, true)]
    [InlineData(Manner.OvernightCarrier, null, true)]
    [InlineData(Manner.Personal, null, false)]
    [InlineData(Manner.Substituted, null, false)]
    [InlineData(Manner.CertificateOfMailing, null, false)] // no notice at all, so nothing to prove
    [Proves("Civ. Code § 8118")]
    public void A_mailed_notice_is_provable_only_with_a_postal_or_carriers_record(Manner manner, string? article, bool alarm) =>
        Assert.Equal(alarm, Sections(Given(manner, article)).Contains("Civ. Code § 8118(b)"));

    // A notice with a stock figure for an estimate counts for nothing, and nothing is to be proved of it.
    [Fact]
    [Proves("Civ. Code § 8118")]
    public void Nothing_is_to_be_proved_of_a_notice_that_is_none() =>
        Assert.DoesNotContain("Civ. Code § 8118(b)",
            Sections(Given(Manner.CertifiedMail, null).Which(e => (NoticeGiven)e with { EstimateBasis = EstimateBasis.StockFigure })));

    [Theory]
    [InlineData("1 Quay St, Davis, CA 95616", false)]
    [InlineData(null, true)]
    [InlineData(" ", true)]
    [Proves("Civ. Code § 8108")]
    public void A_recipient_without_an_address_in_the_file_is_an_alarm(string? address, bool alarm) =>
        Assert.Equal(alarm, Sections(Given(Manner.Personal, null, address)).Contains("Civ. Code § 8108"));
}
