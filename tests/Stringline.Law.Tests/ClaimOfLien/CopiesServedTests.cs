using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>
/// Which mailings of a copy the affidavits of a claim can swear to, and who is still to be served (Civ. Code § 8416(c)).
/// </summary>
public sealed class CopiesServedTests
{
    private static readonly LocalDate Day = new(2026, 6, 1);

    [Fact]
    [Proves("Civ. Code § 8416(c)")]
    public void Each_owner_to_whom_no_copy_was_mailed_is_still_to_be_served()
    {
        Assert.Equal(["first", "second"], Ids(Of().Left));
        Assert.Equal(["second"], Ids(Of(Mailed("first")).Left));
        Assert.Empty(Of(Mailed("first"), Mailed("second")).Left);
    }

    [Theory]
    [InlineData(Manner.RegisteredMail, true)]
    [InlineData(Manner.CertifiedMail, true)]
    [InlineData(Manner.CertificateOfMailing, true)]
    [InlineData(Manner.Personal, false)]
    [InlineData(Manner.OvernightCarrier, false)]
    [InlineData(Manner.FirstClassMail, false)]
    [Proves("Civ. Code § 8416(c)")]
    public void Only_the_three_mails_count(Manner manner, bool counts)
    {
        var copies = Of(Mailed("first") with { Manner = manner });
        Assert.Equal((counts, counts ? 0 : 1), (copies.Done, copies.InAnotherManner.Count));
    }

    [Fact]
    [Proves("Civ. Code § 8416(c)")]
    public void A_copy_by_hand_beside_one_by_mail_to_the_same_owner_does_no_harm() => Assert.True(
        Assert.Single(Of(Mailed("first"), Mailed("first") with { Manner = Manner.Personal }).InAnotherManner).AlsoMailed);

    [Fact]
    [Proves("Civ. Code § 8416(c)")]
    public void The_lender_or_direct_contractor_stands_in_place_of_every_owner_only_where_no_owner_was_mailed_a_copy()
    {
        var inPlace = Of(Mailed("lender"));
        Assert.True(inPlace.IsInOwnersPlace);
        Assert.Empty(inPlace.Left);
        var both = Of(Mailed("lender"), Mailed("first"));
        Assert.False(both.IsInOwnersPlace);
        Assert.Equal(["second"], Ids(both.Left));
        Assert.False(Of().IsInOwnersPlace);
    }

    [Fact]
    [Proves("Civ. Code § 8416(c)")]
    public void A_copy_mailed_no_later_than_an_earlier_claim_was_recorded_is_that_claims()
    {
        var since = new LocalDate(2026, 5, 10);
        Assert.False(Copies(since, Mailed("first", since)).Done);
        Assert.True(Copies(since, Mailed("first", since.PlusDays(1))).Done);
    }

    [Fact]
    [Proves("Civ. Code § 8416(c)")]
    public void A_copy_older_than_what_the_claim_states_is_no_copy_of_it_until_another_goes()
    {
        var paid = new Paid { Index = 1, On = DayFact.On(new LocalDate(2026, 5, 12)), Amount = 100m };
        var old = Copies(null, Mailed("first", new LocalDate(2026, 5, 11)), paid);
        Assert.False(old.Done);
        Assert.Equal(paid, Assert.Single(old.Older).Newer);
        Assert.Equal(["first", "second"], Ids(old.Left));
        var again = Copies(null, Mailed("first", new LocalDate(2026, 5, 11)), paid, Mailed("first", new LocalDate(2026, 5, 12)));
        Assert.True(again.Done);
        Assert.Empty(again.Older);
    }

    [Theory]
    [InlineData("first", null)]
    [InlineData("", CopyFault.ToNobody)]
    [InlineData("nobody", CopyFault.PartyUnknown)]
    [InlineData("second", CopyFault.NoAddress)]
    [InlineData("sub", CopyFault.ToNobodyNamed)]
    [Proves("Civ. Code § 8416(c)")]
    public void What_an_affidavit_cannot_swear_to_is_a_fault(string to, CopyFault? fault)
    {
        var served = Mailed(to) with { To = to.Length == 0 ? [] : [to] };
        Assert.Equal(fault is { } one ? [one] : [], Faults(served));
        Assert.Contains(CopyFault.DayNotExact, Faults(served with { On = new DayFact.Between(Day.PlusDays(-9), Day.PlusDays(-8)) }));
    }

    [Fact]
    [Proves("Civ. Code § 8416(c)")]
    public void A_post_office_box_is_no_address_of_an_owner()
    {
        var facts = Facts(Mailed("first"));
        var boxed = facts.Job with
        {
            Parties = [.. facts.Job.Parties.Select(party => party with { AddressKind = AddressKind.PostOfficeBox })],
        };
        var fault = Assert.Single(CopiesServed.FaultsOf(new FactsAsOf(boxed, Day), Mailed("first")));
        Assert.Equal(new FaultyCopy(CopyFault.PostOfficeBox, "first"), fault);
        Assert.Empty(CopiesServed.FaultsOf(new FactsAsOf(boxed, Day), Mailed("lender")));
    }

    private static CopyFault[] Faults(ClaimServed served) => [.. CopiesServed.FaultsOf(Facts(served), served).Select(fault => fault.Fault)];

    private static CopiesServed Of(params Entry[] entries) => Copies(null, entries);

    private static CopiesServed Copies(LocalDate? since, params Entry[] entries) => CopiesServed.Of(Facts(entries), since, _ => true);

    private static ClaimServed Mailed(string to, LocalDate? on = null) => new()
    {
        Index = 0, On = DayFact.On(on ?? new LocalDate(2026, 5, 20)), To = [to], Manner = Manner.CertifiedMail,
    };

    private static FactsAsOf Facts(params Entry[] entries) => new(
        new JobFile
        {
            Name = "A job",
            Work = new Work { Kind = WorkKind.Private, Site = new Site { County = "Yolo" } },
            Claimant = new Claimant { Name = "A supplier", Role = ClaimantRole.Supplier },
            Parties =
            [
                Party("first", PartyCapacity.Owner, "1 First Street"), Party("second", PartyCapacity.Owner, null),
                Party("lender", PartyCapacity.ConstructionLender, "3 Bank Street"),
                Party("sub", PartyCapacity.Subcontractor, "4 Side Street"),
            ],
            Entries = [.. entries.Select((entry, i) => entry with { Index = i })],
        },
        Day);

    private static Party Party(string id, PartyCapacity capacity, string? address) =>
        new() { Id = id, Capacity = capacity, Name = id, Address = address };

    private static IEnumerable<string> Ids(IEnumerable<Party> parties) => parties.Select(party => party.Id);
}
