using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>
/// The claim contains an affidavit that a copy of it was mailed (Civ. Code § 8416(a)(7), read in the Civil Code as updated 10 July 2026): a
/// copy mailed before something that the claim states is a copy of another paper.
/// </summary>
public sealed class NewerThanItsCopyTests
{
    private static readonly LocalDate Mailed = new(2025, 11, 10);

    private static DayFact On(int day) => DayFact.On(new LocalDate(2025, 11, day));

    private static int Newer(params Entry[] entries)
    {
        var job = new JobFile
        {
            Name = "Weir Street",
            Work = new Work { Kind = WorkKind.Private, Site = new Site { County = "Yolo" } },
            Claimant = new Claimant { Name = "Stone Yard", Role = ClaimantRole.Supplier },
            Contract = new Contract(),
            Entries = entries,
        };
        return ServiceOfClaim.NewSince(new FactsAsOf(job, new LocalDate(2025, 12, 1)), Mailed).Count;
    }

    public static TheoryData<Entry, int> Rows() => new()
    {
        { new Furnished { Index = 0, On = On(1), Until = On(10) }, 0 },
        { new Furnished { Index = 0, On = On(1), Until = On(11) }, 1 },
        { new Furnished { Index = 0, On = On(11), Until = new DayFact.Unknown() }, 1 },
        { new Furnished { Index = 0, On = On(1), Until = On(5), Learned = new LocalDate(2025, 11, 11) }, 1 },
        { new Paid { Index = 0, On = On(10), Amount = 1m }, 0 },
        { new Paid { Index = 0, On = On(11), Amount = 1m }, 1 },
        { new Paid { Index = 0, On = On(2), Amount = 1m, Learned = new LocalDate(2025, 11, 10) }, 0 },
        { new Paid { Index = 0, On = On(2), Amount = 1m, Learned = new LocalDate(2025, 11, 11) }, 1 },
        { new Paid { Index = 0, On = new DayFact.Unknown(), Amount = 1m }, 0 },
        { new Credited { Index = 0, On = On(11), Amount = 1m }, 1 },
        { new Change { Index = 0, On = On(11), Amount = 1m, Agreed = true }, 1 },
        { new Change { Index = 0, On = On(10), Amount = 1m, Agreed = true }, 0 },
        { new Waived { Index = 0, On = On(11), Form = WaiverForm.UnconditionalFinal }, 1 },
        { new Waived { Index = 0, On = On(9), Form = WaiverForm.UnconditionalProgress }, 0 },
        { new Waived { Index = 0, On = On(11), Form = WaiverForm.ConditionalFinal }, 0 },
        { new Waived { Index = 0, On = On(9), Form = WaiverForm.ConditionalProgress, PaymentCleared = new LocalDate(2025, 11, 11) }, 1 },
        { new Waived { Index = 0, On = On(9), Form = WaiverForm.ConditionalProgress, PaymentCleared = new LocalDate(2025, 11, 10) }, 0 },
        { new Charged { Index = 0, On = On(11), Amount = 1m, Of = ChargeKind.Interest }, 0 },
        { new IndexSearched { Index = 0, On = On(11) }, 0 },
    };

    [Theory]
    [MemberData(nameof(Rows), DisableDiscoveryEnumeration = true)]
    [Proves("Civ. Code § 8416(a)(7)")]
    public void What_changes_the_claim_after_the_mailing_makes_the_copy_old(Entry entry, int newer) => Assert.Equal(newer, Newer(entry));

    [Fact]
    [Proves("Civ. Code § 8416(a)(7)")]
    public void An_entry_that_was_taken_back_changes_nothing() => Assert.Equal(0, Newer(
        new Paid { Index = 0, Id = "wrong", On = On(11), Amount = 1m }, new Withdrawn { Index = 1, On = On(12), Supersedes = "wrong" }));
}
