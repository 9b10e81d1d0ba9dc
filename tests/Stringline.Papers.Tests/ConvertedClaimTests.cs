using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// The design lien recorded anew as a mechanics lien (Civ. Code § 8319): recorded on May 6, 2026, ended by the commencement of work on June
/// 1.
/// </summary>
public sealed class ConvertedClaimTests
{
    /// <summary>
    /// Civ. Code § 8319(a)(3), (4): it states what it is, for the amount of the unpaid lien, and is recorded as a mechanics lien;
    /// Gov. Code § 27361.6: the number.
    /// </summary>
    [Theory]
    [InlineData("This claim is a converted design professional lien")]
    [InlineData("recorded on May 6, 2026, as instrument no. 2026-0012345 in the Official Records of Yolo County")]
    [InlineData("for the amount of that lien that is unpaid")]
    [InlineData("$84,250.00")]
    [InlineData("NOTICE OF MECHANICS LIEN ATTENTION!")]
    [InlineData("PROOF OF SERVICE AFFIDAVIT")]
    [InlineData("VERIFICATION")]
    public void Section_8319_a_4(string item) => Assert.Contains(item, Make("converted-claim").TextOf(), StringComparison.Ordinal);

    /// <summary>
    /// Civ. Code § 8319(a)(4): "the design professional need not provide a preliminary notice", here to a lender that was never given one.
    /// </summary>
    [Fact]
    public void It_needs_no_preliminary_notice_where_the_mechanics_lien_does()
    {
        var lender = new Party { Id = "p4", Capacity = PartyCapacity.ConstructionLender, Name = "Granger Slough Bank",
            Address = "600 Levee Street\nSacramento, CA 95814" };
        JobFile WithLender(JobFile job) => job with { Parties = [.. job.Parties, lender] };
        Make("converted-claim", WithLender);
        var refusals = Assert.IsType<PacketOutcome.Refused>(Outcome("claim", WithLender(Commenced()), Day("2026-06-10"),
            PaperOptions.None)).Refusals;
        Assert.Contains(refusals, r => r.Id == "law");
        Assert.Contains(refusals, r => r.Id == "may-convert" && r.Right.ToString().Contains("converted-claim", StringComparison.Ordinal));
    }

    /// <summary>
    /// Civ. Code § 8319(a)(3): within 30 days; June 1, 2026 and 30 days are July 1, a Wednesday. The first day and the last are both good.
    /// </summary>
    [Theory]
    [InlineData("2026-06-01", true)]
    [InlineData("2026-07-01", true)]
    [InlineData("2026-07-02", false)]
    public void Within_thirty_days_of_commencement(string asOf, bool good)
    {
        var outcome = Outcome("converted-claim", Commenced(), Day(asOf), PaperOptions.None);
        Assert.Equal(good, outcome is PacketOutcome.Made);
        if (outcome is PacketOutcome.Made made)
            Assert.Contains("ACT BY Wednesday, July 1, 2026", made.SheetText(), StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_for_what_is_unpaid_of_the_lien_and_nothing_where_all_is_paid()
    {
        var paid = new Paid { Index = 4, On = DayFact.On(Day("2026-05-20")), Amount = 14_250m };
        Assert.Contains("$70,000.00", Make("converted-claim", j => j.With(paid)).TextOf(), StringComparison.Ordinal);
        Assert.Contains(Refusals("converted-claim", j => j.With(paid with { Amount = 84_250m })), r => r.Id == "law");
    }

    /// <summary>
    /// Civ. Code §§ 8306(b)(1), 8319(a)(1): while nothing has commenced the design lien stands, and there is nothing to convert.
    /// </summary>
    [Fact]
    public void Nothing_is_converted_before_the_work_commences() =>
        Assert.Contains(Refusals("converted-claim", _ => DesignRecorded()), r => r is { Id: "law", Section: "Civ. Code § 8319(a)(1)" });

    /// <summary>A copy mailed before the work commenced was the design lien's.</summary>
    [Fact]
    public void It_takes_no_mailing_of_the_design_lien()
    {
        var mailed = new ClaimServed { Index = 4, On = DayFact.On(Day("2026-05-07")), To = ["p1"], Manner = Manner.CertifiedMail };
        Assert.Contains("Serve before you record", Make("converted-claim", j => j.With(mailed)).SheetText(), StringComparison.Ordinal);
        Assert.DoesNotContain("Serve before you record",
            Make("converted-claim", j => j.With(mailed with { On = DayFact.On(Day("2026-06-08")) })).SheetText(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_number_of_the_design_lien_must_be_there() =>
        Assert.Contains(Refusals("converted-claim",
            j => j with { Entries = [.. j.Entries.Select(e => e is ClaimRecorded c ? c with { Instrument = null } : e)] }),
            r => r.Id == "instrument-missing");
}
