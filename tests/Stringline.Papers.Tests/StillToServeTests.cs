using CsCheck;
using Stringline.Law.Facts;
using Stringline.Testing;
using static Stringline.Papers.Tests.Jobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// The affidavit of service is part of the claim (Civ. Code § 8416(a)(7), read in the Civil Code as updated 10 July 2026): it swears to the
/// mailing of a copy of this claim, to each owner, and to nothing that the file does not say.
/// </summary>
public sealed class StillToServeTests
{
    private const string Oath = "I served a true copy of the foregoing Claim of Mechanics Lien";

    private static readonly Party Second = new() { Id = "p9", Capacity = PartyCapacity.Owner, Name = "Ida Quill",
        Address = "12 Weir Street, Davis, CA 95616" };

    private static JobFile Two(Party second) => Served() with { Parties = [.. Served().Parties, second], Work = second.Address is null
        ? Served().Work with { Permit = null } : Served().Work };

    private static string[] Affidavits(PacketOutcome.Made made) => made.Claim().Text.Split("PROOF OF SERVICE AFFIDAVIT")[1..];

    [Fact]
    public void An_owner_who_is_not_served_yet_has_an_affidavit_of_blanks_beside_that_of_the_other()
    {
        var made = Kept.Packet("second-owner", Two(Second));
        Assert.Empty(made.InTheWay);
        var affidavits = Affidavits(made);
        Assert.Equal(2, affidavits.Length);
        Assert.Contains("May 4, 2026", affidavits[0], StringComparison.Ordinal);
        Assert.DoesNotContain("Ida Quill", affidavits[0], StringComparison.Ordinal);
        Assert.All((string[])["Ida Quill", "12 Weir Street, Davis, CA"], t => Assert.Contains(t, affidavits[1], StringComparison.Ordinal));
        Assert.DoesNotContain("2026", affidavits[1], StringComparison.Ordinal);
        Assert.DoesNotContain("7012", affidavits[1], StringComparison.Ordinal);
        Assert.All(affidavits, a => Assert.Contains(Oath, a, StringComparison.Ordinal));
        Assert.Contains("Serve before you record: no mailing is entered to Ida Quill.", made.Sheet().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_address_of_one_that_the_file_does_not_know_is_a_blank_and_is_looked_for()
    {
        var made = Kept.Packet("second-owner-unknown", Two(Second with { Address = null }));
        Assert.Contains("Address: ____", Affidavits(made)[1], StringComparison.Ordinal);
        Assert.Contains("The file has no address of Ida Quill", made.Sheet().Text, StringComparison.Ordinal);
    }

    public static TheoryData<string, Entry> Newer() => new()
    {
        { "work was furnished after it, through May 5, 2026", new Furnished { Index = 3, On = DayFact.On(Day("2026-05-01")),
            Until = DayFact.On(Day("2026-05-05")), Amount = 10m } },
        { "a payment came after it, on May 5, 2026", new Paid { Index = 3, On = DayFact.On(Day("2026-05-05")), Amount = 10m } },
        { "a payment came after it.", new Paid { Index = 3, On = DayFact.On(Day("2026-05-02")), Learned = Day("2026-05-05"),
            Amount = 10m } },
        { "a credit was given after it", new Credited { Index = 3, On = DayFact.On(Day("2026-05-06")), Amount = 10m } },
        { "the price was changed after it", new Change { Index = 3, On = DayFact.On(Day("2026-05-06")), Amount = 10m, Agreed = true } },
        { "a waiver and release took effect after it", new Waived { Index = 3, On = DayFact.On(Day("2026-04-01")),
            Form = WaiverForm.ConditionalProgress, Through = Day("2026-03-01"), Amount = 10m, PaymentCleared = Day("2026-05-05") } },
    };

    /// <summary>A copy cannot be older than what it copies: the mailing of May 4 is sworn to by nobody.</summary>
    [Theory]
    [MemberData(nameof(Newer), DisableDiscoveryEnumeration = true)]
    public void A_copy_that_is_older_than_what_the_claim_states_is_in_no_affidavit(string words, Entry newer)
    {
        var made = Kept.Packet("old-copy", Served().With(newer));
        var affidavit = Assert.Single(Affidavits(made));
        Assert.DoesNotContain("May 4, 2026", affidavit, StringComparison.Ordinal);
        Assert.DoesNotContain("7012", affidavit, StringComparison.Ordinal);
        var sheet = made.Sheet().Text;
        Assert.Contains("Serve again before you record: a copy is older than the claim.", sheet, StringComparison.Ordinal);
        Assert.Contains(words, sheet, StringComparison.Ordinal);
        Assert.Contains("Mail a copy of this claim anew (Civ. Code § 8416(a)(7))", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void One_mailed_anew_is_sworn_to_and_the_old_copy_is_left_out_without_a_word()
    {
        var made = Kept.Packet("mailed-anew", Served().With(
            new Paid { Index = 3, On = DayFact.On(Day("2026-05-05")), Amount = 10m },
            new ClaimServed { Index = 4, On = DayFact.On(Day("2026-05-06")), To = ["p1"], Manner = Manner.RegisteredMail }));
        var affidavit = Assert.Single(Affidavits(made));
        Assert.Contains("May 6, 2026", affidavit, StringComparison.Ordinal);
        Assert.DoesNotContain("May 4, 2026", affidavit, StringComparison.Ordinal);
        Assert.DoesNotContain("before you record", made.Sheet().Text, StringComparison.Ordinal);
    }

    /// <summary>What changes no word of the claim leaves the copy true.</summary>
    [Fact]
    public void A_waiver_that_is_not_paid_or_a_search_after_the_mailing_changes_nothing() => Assert.Contains("May 4, 2026",
        Assert.Single(Affidavits(Kept.Packet("still-true", Served().With(
            new Waived { Index = 3, On = DayFact.On(Day("2026-05-05")), Form = WaiverForm.ConditionalFinal, Amount = 10m },
            new IndexSearched { Index = 4, On = DayFact.On(Day("2026-05-05")) })))), StringComparison.Ordinal);

    /// <summary>
    /// Whatever was mailed to whom and whatever came after: every owner is on exactly one affidavit, and no day on one is before the last
    /// furnishing or payment.
    /// </summary>
    [Fact]
    [Slow(Slow.Lasting)]
    public void Every_owner_is_on_one_affidavit_and_no_sworn_day_is_before_the_last_fact() =>
        Gen.Select(Gen.Int[1, 3], Gen.Int[0, 5].Array[0, 3], Gen.Int[0, 5], Gen.Bool).Sample((owners, mailed, last, paid) =>
        {
            var job = Demo().WithOwners([.. Enumerable.Range(1, owners).Select(i => new Party { Id = $"o{i}",
                Capacity = PartyCapacity.Owner, Name = $"Owner Number{i}", Address = $"{i} Weir Street, Davis, CA 95616" })]);
            var day = Day("2026-04-29");
            job = job.With([.. mailed.Select((on, i) => (Entry)new ClaimServed { Index = 2 + i, On = DayFact.On(day.PlusDays(on)),
                To = [$"o{(i % owners) + 1}"], Manner = Manner.CertifiedMail })]);
            if (paid)
                job = job.With(new Paid { Index = 9, On = DayFact.On(day.PlusDays(last)), Amount = 5m });
            var affidavits = Affidavits(Kept.Packet("any-mailing", job));
            for (var i = 1; i <= owners; i++)
            {
                var good = mailed.Where((on, at) => at % owners == i - 1 && !(paid && on < last)).ToList();
                var on = affidavits.Where(a => a.Contains($"Number{i}", StringComparison.Ordinal)).ToList();
                Assert.Equal(Math.Max(1, good.Distinct().Count()), on.Count);
                Assert.All(on, a => Assert.Equal(good.Count > 0, a.Contains("2026", StringComparison.Ordinal)));
            }

            for (var early = 0; paid && early < last; early++)
                Assert.DoesNotContain(affidavits, a => a.Contains(PaperText.Day(day.PlusDays(early)), StringComparison.Ordinal));
        }, iter: 40);
}
