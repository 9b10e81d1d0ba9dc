using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>
/// Completed Wednesday 22 October 2025, so a claim is recorded by Tuesday 20 January 2026; recorded Thursday 20 November. Its copy goes to
/// the owner by registered or certified mail, or first-class mail with a certificate of mailing, before that (Civ. Code § 8416(a)(7), (c)).
/// </summary>
public sealed class ServiceOfClaimTests
{
    private static JobBuilder Recorded() => new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..").Price(6430m)
        .Furnished("2025-08-05", 6430m, until: "2025-10-10").Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22")
        .ClaimRecorded("2025-11-20", 6430m);

    private static Finding Last(JobBuilder job, string asOf = "2025-12-05") => job.On(asOf).Get("claim-of-lien.last-day");

    [Theory]
    [InlineData(Manner.CertifiedMail, Standing.Kept)]
    [InlineData(Manner.RegisteredMail, Standing.Kept)]
    [InlineData(Manner.CertificateOfMailing, Standing.Kept)]
    [InlineData(Manner.Personal, Standing.InDoubt)]
    [InlineData(Manner.ExpressMail, Standing.InDoubt)]
    [InlineData(Manner.OvernightCarrier, Standing.InDoubt)]
    [InlineData(Manner.Substituted, Standing.InDoubt)]
    [InlineData(Manner.FirstClassMail, Standing.InDoubt)]
    [InlineData(Manner.Email, Standing.InDoubt)]
    [InlineData(Manner.Fax, Standing.InDoubt)]
    [InlineData(Manner.Other, Standing.InDoubt)]
    [Proves("Civ. Code § 8416(c)(1)")]
    [Proves("Civ. Code § 8416(e)")]
    public void Only_three_mails_serve_the_copy(Manner manner, Standing expected)
    {
        Assert.Equal(expected == Standing.Kept, ServiceOfClaim.IsGoodMail(manner));
        var last = Last(Recorded().ClaimServed("2025-11-19", manner));
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.InDoubt, last.RuledOut("Civ. Code § 8416(c)(1)"));
        Assert.Equal(expected == Standing.InDoubt, last.Asks("(claim-served)"));
        // The way back: record anew by Tuesday 20 January.
        Assert.Equal("2026-01-20", last.Plan());
    }

    // After the time to record the doubt stays: a mailing may have been made that the file does not know of.
    [Fact]
    [Proves("Civ. Code § 8416(e)")]
    public void It_is_never_lost_on_what_the_file_says_of_the_service() =>
        Assert.Equal(Standing.InDoubt, Last(Recorded().ClaimServed("2025-11-19", Manner.Personal), "2026-02-02").Standing);

    // The 20th is the day of recording: the day has no parts, so a copy mailed that day may have gone before it.
    [Theory]
    [InlineData("2025-11-19", Standing.Kept)]
    [InlineData("2025-11-20", Standing.Kept)]
    [InlineData("2025-11-21", Standing.InDoubt)]
    [InlineData("2025-12-01", Standing.InDoubt)]
    [InlineData("2025-11-18..2025-11-20", Standing.Kept)]
    [InlineData("2025-11-18..2025-11-21", Standing.InDoubt)]
    [InlineData("?", Standing.InDoubt)]
    [Proves("Civ. Code § 8416(a)(7)")]
    [Proves("Civ. Code § 8416(d)")]
    public void The_copy_is_mailed_no_later_than_the_claim_is_recorded(string served, Standing expected)
    {
        var last = Last(Recorded().ClaimServed(served));
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.InDoubt, last.RuledOut("Civ. Code § 8416(a)(7)"));
    }

    [Theory]
    [InlineData("owner", null, Standing.Kept)]
    [InlineData("direct", null, Standing.InDoubt)] // the owner has an address
    [InlineData("bank", null, Standing.InDoubt)]
    [InlineData("sub", null, Standing.InDoubt)]
    [InlineData("nobody", null, Standing.InDoubt)]
    [InlineData("owner direct", null, Standing.Kept)]
    [InlineData("direct", "none", Standing.Kept)] // the owner cannot be served by mail, as far as the file knows
    [InlineData("bank", "none", Standing.Kept)]
    [InlineData("sub", "none", Standing.InDoubt)]
    [InlineData("direct", "permit", Standing.InDoubt)] // at the address that the permit shows
    [Proves("Civ. Code § 8416(c)(1)")]
    [Proves("Civ. Code § 8416(c)(2)")]
    public void It_goes_to_the_owner_and_to_lender_or_contractor_only_where_the_owner_cannot_be_reached(string to, string? address,
        Standing expected)
    {
        var job = Recorded().Lender().Notice("2025-08-14", Manner.CertifiedMail, "bank").Party("sub", PartyCapacity.Subcontractor);
        if (address is not null)
            job.PartyWith("owner", p => p with { Address = " " });
        if (address == "permit")
            job.Work(w => w with { Permit = new Permit { OwnerAddress = "9 Quay St, Davis, CA 95616" } });
        var last = Last(job.ClaimServed("2025-11-19", Manner.CertifiedMail, to.Split(' ')));
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.Kept && address == "none", last.Asks("(parties.address)"));
    }

    [Fact]
    [Proves("Civ. Code § 8416(e)")]
    public void Where_the_file_does_not_say_it_is_asked()
    {
        var last = Last(Recorded());
        Assert.Equal(Standing.Kept, last.Standing);
        Assert.True(last.Asks("(claim-served)"));
        Assert.False(Last(Recorded().ClaimServed("2025-11-19")).Asks("(claim-served)"));
    }

    // A bad copy and a good one: the good one counts. Served anew and recorded anew: the second claim counts, and is sued on by 90 days
    // from it.
    [Fact]
    [Proves("Civ. Code § 8416(c)(1)")]
    public void A_good_service_counts_beside_a_bad_one_and_each_claim_has_its_own()
    {
        Assert.Equal(Standing.Kept, Last(Recorded().ClaimServed("2025-11-18", Manner.Personal).ClaimServed("2025-11-19")).Standing);
        // The copy of 1 December is that of the claim of 3 December, not of the one of 20 November; neither is made good by the other's.
        var anew = Recorded().ClaimServed("2025-11-19", Manner.Personal).ClaimServed("2025-12-01").ClaimRecorded("2025-12-03", 6430m);
        Assert.Equal(Standing.Kept, Last(anew).Standing);
        Assert.Contains("2026-03-03", anew.On("2025-12-05").Get("enforcement.last-day").DaysOf());
        Assert.Equal(Standing.Kept,
            Last(Recorded().ClaimServed("2025-11-19").ClaimRecorded("2025-12-03", 6430m)
                .ClaimServed("2025-12-02", Manner.Personal)).Standing);
    }

    // § 8200(a): preliminary notice "before recording a claim of lien". Given in its own time, 20 days from 20 October, but after the claim
    // of the 28th.
    [Theory]
    [InlineData("2025-10-27", Standing.Kept)]
    [InlineData("2025-10-28", Standing.Kept)]
    [InlineData("2025-10-29", Standing.InDoubt)]
    [InlineData("2025-11-04", Standing.InDoubt)]
    [InlineData("2025-10-27..2025-10-30", Standing.InDoubt)]
    [Proves("Civ. Code § 8200(a)")]
    public void A_claim_recorded_before_the_preliminary_notice_is_recorded_anew(string noticed, Standing expected)
    {
        var last = Last(new JobBuilder().Furnished("2025-10-20", 6430m).Ended("2025-10-20").Completed("2025-10-22")
            .ClaimRecorded("2025-10-28", 6430m).Notice(noticed), "2025-12-01");
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.InDoubt, last.RuledOut("Civ. Code § 8200(a)"));
        Assert.Equal("2026-01-20", last.Plan());
    }

    // Recorded on some day from the 27th to the 29th: only a notice of the 27th at the latest surely came before it, the day having no
    // parts.
    [Theory]
    [InlineData("2025-10-27", Standing.Kept)]
    [InlineData("2025-10-28", Standing.InDoubt)]
    [InlineData("2025-10-26..2025-10-28", Standing.InDoubt)]
    [Proves("Civ. Code § 8200(a)")]
    public void A_notice_inside_the_doubt_of_the_recording_may_have_come_after_it(string noticed, Standing expected) =>
        Assert.Equal(expected, Last(new JobBuilder().Furnished("2025-10-20", 6430m).Ended("2025-10-20").Completed("2025-10-22")
            .ClaimRecorded("2025-10-27..2025-10-29", 6430m).Notice(noticed), "2025-12-01").Standing);

    // A direct contractor tells the lender only; for a subcontractor the lender's notice is no matter of this order.
    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "owner", Standing.InDoubt)]
    [InlineData(ClaimantRole.Supplier, "direct", Standing.Kept)]
    [InlineData(ClaimantRole.Laborer, "direct", Standing.Kept)]
    [Proves("Civ. Code § 8200(a)")]
    public void Of_whom_the_notice_must_have_reached_first(ClaimantRole role, string hiredBy, Standing expected)
    {
        var job = new JobBuilder().Role(role, hiredBy).Licensed("2012-06-01..").Lender().Furnished("2025-10-20", 6430m).Ended("2025-10-20")
            .Completed("2025-10-22")
            .Notice("2025-10-21").ClaimRecorded("2025-10-28", 6430m).Notice("2025-11-04", Manner.CertifiedMail, "bank");
        Assert.Equal(expected, Last(job, "2025-12-01").Standing);
    }

    // § 8060(b): the county in which the work "or part of it" lies. 90 days from 20 November end on Wednesday 18 February 2026.
    [Theory]
    [InlineData("Yolo", null, Standing.Kept, true)]
    [InlineData("Solano", null, Standing.InDoubt, true)]
    [InlineData("Solano", "Solano", Standing.Kept, true)]
    [InlineData("Solano", "Napa", Standing.Lost, false)]
    [Proves("Civ. Code § 8060(b)")]
    public void A_claim_recorded_in_another_county_counts_if_part_of_the_work_lies_there(string county, string? alsoIn, Standing expected,
        bool suit)
    {
        var answer = new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 6430m).Ended("2025-08-05").Completed("2025-10-22")
            .ClaimRecorded("2025-11-20", 6430m, county)
            .Work(w => w with { Site = w.Site with { AlsoIn = alsoIn is null ? [] : [alsoIn] } }).On("2026-02-01");
        Assert.Equal(expected, answer.Get("claim-of-lien.last-day").Standing);
        Assert.Equal(suit ? ["2026-02-18"] : [], answer.Get("enforcement.last-day").DaysOf());
        Assert.Equal(county == "Solano" && alsoIn is null, answer.Get("claim-of-lien.last-day").Asks("(site.alsoIn)"));
        var elsewhere =
            string.Join(' ', answer.Get("claim-of-lien.last-day").Why.Where(w => !w.Applied && w.Section == "Civ. Code § 8060(b)")
                .Select(w => w.Text));
        Assert.Equal(alsoIn == "Napa", elsewhere.Contains("no part of the work lies there", StringComparison.Ordinal));
        Assert.Equal(county == "Solano"
            && alsoIn is null, elsewhere.Contains("Unless part of the work lies in Solano County too", StringComparison.Ordinal));
    }

    // Recorded on Saturday 22 November, and on Thanksgiving.
    [Theory]
    [InlineData("2025-11-21", false)]
    [InlineData("2025-11-22", true)]
    [InlineData("2025-11-27", true)]
    [Proves("Civ. Code § 8410")]
    public void A_day_of_recording_on_which_an_office_is_closed_is_asked_about(string recorded, bool asks)
    {
        var last = Last(new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 6430m).Ended("2025-08-05").Completed("2025-10-22")
            .ClaimRecorded(recorded, 6430m));
        Assert.Equal(asks, last.Asks("(claim-recorded.on)"));
        if (asks)
            Assert.IsType<ClaimRecorded>(
                last.Questions.Single(q => q.Text.Contains("(claim-recorded.on)", StringComparison.Ordinal)).Corrects);
    }

    // Claim of 27 October expired on 25 January without a suit; the work was completed on 10 February: a new claim by Monday 11 May 2026.
    [Theory]
    [InlineData("2026-03-01", false, Standing.Open)]
    [InlineData("2026-05-11", false, Standing.Open)]
    [InlineData("2026-05-12", false, Standing.Kept)]
    [InlineData("2026-03-01", true, Standing.Kept)]
    [Proves("Civ. Code § 8460(a)")]
    public void An_expired_claim_leaves_the_time_to_record_open_with_its_plan(string asOf, bool sued, Standing expected)
    {
        var job = new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 6430m).Ended("2025-08-05").Completed("2026-02-10")
            .ClaimRecorded("2025-10-27", 6430m);
        if (sued)
            job.ActionFiled("2025-12-01");
        var answer = job.On(asOf);
        Assert.Equal(expected, answer.Get("claim-of-lien.last-day").Standing);
        Assert.Equal("2026-05-11", answer.Get("claim-of-lien.last-day").Plan());
    }
}
