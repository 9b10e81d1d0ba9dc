using CsCheck;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Testing;

namespace Stringline.Papers.Tests;

/// <summary>Names with accents, long texts and many owners on every paper: nothing is lost, nothing overlaps, no check fails.</summary>
[Slow(Slow.Lasting)]
public sealed class LongContentTests
{
    private static readonly string[] Accented =
        ["Muñoz", "Nguyễn", "Łukasz", "Ōta", "Çelik", "Þórður", "Strauß", "Đặng", "Ibáñez-Örn", "O’Brien", "D’Ångström", "Ștefan"];

    public static TheoryData<string> Ids() => [.. PaperCatalogue.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Long_and_accented_facts_flow_and_pass_preflight(string id)
    {
        var word = Gen.Int[0, Accented.Length - 1].Select(i => Accented[i]);
        var name = Gen.Select(word, Gen.Int[1, 5], (n, times) => string.Join(" & ", Enumerable.Repeat(n, times)));
        var text = word.Array[1, 250].Select(w => string.Join(' ', w));
        Gen.Select(name, name, text, text, Gen.Int[1, 9]).Sample((claimant, owner, work, legal, owners) =>
            AtMostTwoPagesAtTheCounter(PaperJobs.Make(id, job => job with
            {
                Claimant = job.Claimant with { Name = claimant, Signer = new Signer(owner, "President and Chief Executive Officer") },
                Contract = job.Contract with { Work = work },
                Work = job.Work with { Site = job.Work.Site with { Legal = legal } },
                Parties =
                [
                    .. job.Parties.Select(p => p with { Name = $"{p.Name} {owner}" }),
                    .. job.Work.Kind == WorkKind.Public ? [] : Enumerable.Range(1, owners)
                        .Select(i => new Party { Id = $"o{i}", Capacity = PartyCapacity.Owner, Name = $"{owner} {i}",
                        Address = "1 Cordage Way\nDavis, CA 95616" }),
                ],
            })),
            iter: 6, threads: 1);
    }

    private static void AtMostTwoPagesAtTheCounter(PacketOutcome.Made made)
    {
        if (made.Fee is not null)
            Assert.All(made.Files.Where(f => f.IsSheet), f => Assert.InRange(f.Pages, 1, 2));
    }
}
