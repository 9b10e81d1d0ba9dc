using Stringline.Law.Facts;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// One article number is one envelope: the United States Postal Service gives each registered or certified article a number of its own
/// (Domestic Mail Manual 503). No paper states one number for two addresses or two days.
/// </summary>
public sealed class SharedArticleTests
{
    private const string Number = "9407 1118 9876 5432 1012 69";

    private static NoticeGiven Given(int index, string day, params string[] to) => new()
    {
        Index = index, On = DayFact.On(Day(day)), Notice = NoticeKind.Preliminary, To = to, Manner = Manner.CertifiedMail, Article = Number,
    };

    public static TheoryData<string, JobFile> Shared() => new()
    {
        { "one entry, two addresses", Begun().With(Given(1, "2026-02-20", "p1", "p3")) },
        { "two entries, two addresses", Begun().With(Given(1, "2026-02-20", "p1"), Given(2, "2026-02-20", "p3")) },
        { "one address, two days", Begun().With(Given(1, "2026-02-20", "p1"), Given(2, "2026-02-21", "p1")) },
    };

    [Theory]
    [MemberData(nameof(Shared), DisableDiscoveryEnumeration = true)]
    public void A_number_for_two_envelopes_is_refused_on_the_proof_and_on_the_mail_sheet(string what, JobFile job)
    {
        foreach (var paper in (string[])["proof-of-notice", "certified-mail-sheet"])
        {
            var refusals = Refusals(paper, _ => job);
            Assert.True(refusals.Any(r => r is { Id: "article-number-shared", Where: Place.OfEntry { Index: 1, Field: "article" } }), what);
            Assert.All(refusals, r => Assert.Contains("One number is one envelope", r.Right.ToString(), StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_number_for_two_owners_at_two_addresses_is_refused_on_the_affidavit_of_a_claim()
    {
        var job = Demo() with { Parties = [.. Demo().Parties, new Party { Id = "p9", Capacity = PartyCapacity.Owner, Name = "Ida Quill",
            Address = "12 Weir Street, Davis, CA 95616" }] };
        var refusals = Kept.Refusals(job.With(new ClaimServed { Index = 2, On = DayFact.On(Day("2026-05-04")), To = ["p1", "p9"],
            Manner = Manner.CertifiedMail, Article = Number }));
        Assert.Contains(refusals, r => r is { Id: "article-number-shared", Section: "Civ. Code § 8416(a)(7)" });
    }

    /// <summary>Two at one address are reached by one envelope, however the address is broken into lines, with two papers in it.</summary>
    [Fact]
    public void One_envelope_may_be_for_two_at_one_address_and_hold_two_papers()
    {
        var two = Begun() with { Parties = [.. Begun().Parties, new Party { Id = "p9", Capacity = PartyCapacity.Owner, Name = "Ida Quill",
            Address = "77 Cordage Way, Davis,  CA 95616" }] };
        Make("proof-of-notice", _ => two.With(Given(1, "2026-02-20", "p1", "p9")));
        Make("proof-of-notice", _ => Begun().With(Given(1, "2026-02-20", "p1"), new StopPaymentGiven { Index = 2, To = ["p1"],
            On = DayFact.On(Day("2026-02-20")), Manner = Manner.CertifiedMail, Article = Number }),
            o => o with { Notice = Catalogue.ProvedNotice.StopPayment });
    }
}
