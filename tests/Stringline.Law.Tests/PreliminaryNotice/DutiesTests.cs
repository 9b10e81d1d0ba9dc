using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>What else the Code asks of one who gives, or does not give, a preliminary notice; and filing it with the recorder.</summary>
public sealed class DutiesTests
{
    private static Finding Notice(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("preliminary-notice.last-day");

    private static IReadOnlyList<string> Sections(JobBuilder job) => Notice(job).Sections;

    [Theory]
    [InlineData(ClaimantRole.Subcontractor, "direct", true, true)]
    [InlineData(ClaimantRole.DirectContractor, "owner", true, false)]
    [InlineData(ClaimantRole.Supplier, "direct", false, false)]
    [InlineData(ClaimantRole.Laborer, "direct", false, false)]
    [Proves("Civ. Code § 8104")]
    [Proves("Civ. Code § 8202(b)")]
    public void One_who_owes_a_laborer_says_so(ClaimantRole role, string hiredBy, bool tells, bool onTheNotice)
    {
        var job = new JobBuilder().Role(role, hiredBy).Lender().Furnished("2026-03-02", 500m).Notice("2026-03-10");
        Assert.Equal(tells, Sections(job).Contains("Civ. Code § 8104"));
        Assert.Equal(onTheNotice, Sections(job).Contains("Civ. Code § 8202(b)"));
    }

    [Theory]
    [InlineData(ClaimantRole.Subcontractor, null, false, true)]
    [InlineData(ClaimantRole.Subcontractor, 401, false, true)]
    [InlineData(ClaimantRole.Subcontractor, 400, false, false)]
    [InlineData(ClaimantRole.Subcontractor, 401, true, false)]
    [InlineData(ClaimantRole.Supplier, 401, false, false)]
    [Proves("Civ. Code § 8216")]
    [Proves("Civ. Code § 9306")]
    public void A_licensed_subcontractor_above_four_hundred_dollars_that_gives_none_can_be_disciplined(ClaimantRole role, int? price,
        bool given, bool says)
    {
        JobBuilder Of(JobBuilder job, params string[] to)
        {
            job.Role(role, "sub").Licensed("2020-01-01..").Furnished("2026-03-02", 300m).Contract(c => c with { Price = price });
            return given ? job.Notice("2026-03-10", Manner.CertifiedMail, to) : job;
        }

        Assert.Equal(says, Sections(Of(new JobBuilder().Party("sub", PartyCapacity.Subcontractor), "owner", "direct"))
            .Contains("Civ. Code § 8216"));
        var publicWork = Sections(Of(new JobBuilder().PublicWork(), "city", "direct"));
        Assert.Equal(says, publicWork.Contains("Civ. Code § 9306"));
        Assert.Equal(role == ClaimantRole.Subcontractor, publicWork.Contains("Civ. Code § 8104"));
        Assert.DoesNotContain("Civ. Code § 8216", publicWork);
        Assert.DoesNotContain("Civ. Code § 8202(b)", publicWork);
    }

    [Theory]
    [InlineData(null, "2026-06-01", "may be filed")]
    [InlineData("2026-03-12", "2028-03-12", "was filed")]
    [InlineData("2026-03-12", "2028-03-13", "may be filed")]
    [InlineData("2026-03-12..2026-03-20", "2028-03-13", "may be filed")] // two years from the earliest day: by then it may be gone
    [Proves("Civ. Code § 8214")]
    public void A_notice_that_was_given_may_be_filed_with_the_recorder_who_may_destroy_it_after_two_years(string? filed, string asOf,
        string says)
    {
        var job = new JobBuilder().Furnished("2026-03-02", 500m).Notice("2026-03-10");
        if (filed is not null)
            job.Add(i => new NoticeFiled { Index = i, On = JobBuilder.When(filed) });
        var notice = Notice(job, asOf);
        Assert.True(notice.Says(says));
        Assert.Equal(says != "was filed", !notice.Says("was filed"));
        Assert.Equal(Standing.Kept, notice.Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8214")]
    public void Where_none_was_given_there_is_nothing_to_file() =>
        Assert.DoesNotContain("Civ. Code § 8214", Sections(new JobBuilder().Furnished("2026-03-02", 500m)));

    [Theory]
    [InlineData(Manner.Personal, true)]
    [InlineData(Manner.Substituted, true)]
    [InlineData(Manner.CertifiedMail, false)]
    [InlineData(Manner.CertificateOfMailing, false)]
    [Proves("Civ. Code § 8118")]
    public void A_notice_given_by_hand_or_left_needs_its_declaration_too(Manner manner, bool says) =>
        Assert.Equal(says, Sections(new JobBuilder().Furnished("2026-03-02", 500m).Notice("2026-03-10", manner))
            .Contains("Civ. Code § 8118(a)"));

    [Theory]
    [InlineData("owner", "9 Permit Way, Davis, CA 95616", false)]
    [InlineData("owner", " ", true)]
    [InlineData("owner", null, true)]
    [InlineData("direct", "9 Permit Way, Davis, CA 95616", true)] // an owner's address only
    [Proves("Civ. Code § 8108")]
    public void The_owners_address_on_the_permit_is_a_right_one(string without, string? onPermit, bool alarm) =>
        Assert.Equal(alarm,
            Sections(new JobBuilder().PartyWith(without, p => p with { Address = null })
                .Work(w => w with { Permit = new Permit { OwnerAddress = onPermit } })
            .Furnished("2026-03-02", 500m).Notice("2026-03-10", Manner.Personal)).Contains("Civ. Code § 8108"));
}
