using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>On work of two State departments the preliminary notice goes to the disbursing officer (Civ. Code § 9302(b)).</summary>
public sealed class StateOfficerTests
{
    private static JobBuilder Job(PublicBody? body, bool? act = null) =>
        new JobBuilder().PublicWork().Furnished("2025-08-05", 1m).Work(w => w with { Body = body, StateContractAct = act });

    [Theory]
    [InlineData(PublicBody.GeneralServices, null, Standing.Open, "shall be given to the disbursing officer")]
    [InlineData(PublicBody.Transportation, null, Standing.Open, "is from memory")]
    [InlineData(null, true, Standing.InDoubt, "shall be given to the disbursing officer")]
    [Proves("Civ. Code § 9302(b)")]
    public void The_officer_is_told_and_a_notice_already_given_is_asked_about(PublicBody? body, bool? act, Standing expected, string says)
    {
        var officer =
            Job(body, act).Notice("2025-08-14", Manner.CertifiedMail, "city", "direct").On("2025-09-01").Get("preliminary-notice.officer");
        Assert.Equal(expected, officer.Standing);
        Assert.True(officer.Says(says));
        Assert.True(officer.Asks("(notice-given.to)"));
        Assert.Equal(body is null, officer.Asks("(work.body)"));
        Assert.False(Job(body, act).On("2025-09-01").Get("preliminary-notice.officer").Asks("(notice-given.to)"));
    }

    [Theory]
    [InlineData(PublicBody.Local, null)]
    [InlineData(PublicBody.State, null)]
    [InlineData(null, null)]
    [InlineData(null, false)]
    [Proves("Civ. Code § 9302(b)")]
    public void Other_public_work_has_no_such_officer(PublicBody? body, bool? act) =>
        Assert.Null(Job(body, act).On("2025-09-01").Find("preliminary-notice.officer"));
}
