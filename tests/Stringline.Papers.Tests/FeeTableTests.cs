using Stringline.Papers.Fees;
using static Stringline.Papers.Fees.RecordedPaperKind;

namespace Stringline.Papers.Tests;

/// <summary>
/// Fees added up by hand, outside the program, from the prices that the offices publish (named in data/recorders.csv, read 2026-11-29) and
/// the sections named in each row. Every sum is written out in the order first page + further pages + fraud + homes + the rest.
/// </summary>
public sealed class FeeTableTests
{
    public static TheoryData<string, string, FeeRequest, decimal> Rows() => new()
    {
        { "one page: 15 + 10 + 75; Gov. Code §§ 27361(a), 27361.4, 27388(a)(1), 27388.1(a)(1)", "Santa Clara", new() { Pages = 1 }, 100m },
        { "three pages: 15 + 2×3 + 10 + 75; § 27361(a)(1)", "Santa Clara", new() { Pages = 3 }, 106m },
        { "the same behind a cover page: 15 + 3×3 + 10 + 75; § 27361.6", "Santa Clara", new() { Pages = 4 }, 109m },
        { "release with its notary's page: 15 + 3 + 10 + 75 + 2; §§ 27287, 27388.2", "Yolo", new() { Paper = Release, Pages = 2 }, 105m },
        { "release with notary's page and cover page: 14 + 2×3 + 10 + 75; § 27361.6", "Marin", new() { Paper = Release, Pages = 3 }, 105m },
        { "release, the office's $3 list not read whole: 14 + 3 + 3 + 75; § 27388(a)(1)", "San Francisco",
            new() { Paper = Release, Pages = 2 }, 95m },
        { "notice of completion, likewise: 14 + 3 + 3 + 75; § 27388(a)(1)", "Merced", new() { Paper = NoticeOfCompletion, Pages = 2 },
            95m },
        { "notice of completion, first page not read, so 15: 15 + 10 + 75; § 27388(a)(1)", "Riverside",
            new() { Paper = NoticeOfCompletion, Pages = 1 }, 100m },
        { "claim that is not on the office's list: 14 + 0 + 75; § 27388(a)(1)", "Shasta", new() { Pages = 1 }, 89m },
        { "fraud fee not read, so 10: 13 + 10 + 75; § 27388(a)(1)", "Solano", new() { Pages = 1 }, 98m },
        { "ten names cost nothing: 14 + 10 + 75; § 27361.8", "Marin", new() { Pages = 1, Names = 10 }, 99m },
        { "eleven names: 14 + 10 + 75 + 1; § 27361.8", "Marin", new() { Pages = 1, Names = 11 }, 100m },
        { "twenty-one names: 14 + 10 + 75 + 2; § 27361.8", "Marin", new() { Pages = 1, Names = 21 }, 101m },
        { "eleven names at the county's own $4: 15 + 3 + 75 + 4; § 27361.8", "Los Angeles", new() { Pages = 1, Names = 11 }, 97m },
        { "eleven names at the county's own $4, covenant fee: 15 + 10 + 75 + 2 + 4; §§ 27361.8, 27388.2", "Yolo",
            new() { Pages = 1, Names = 11 }, 106m },
        { "eleven names at $7, the rest not read: 15 + 10 + 75 + 7; § 27361.8", "San Diego", new() { Pages = 1, Names = 11 }, 107m },
        { "two titles: 2×13 + 3 + 2×10 + 2×75; §§ 27361.1, 27388.1(a)(1)", "Kern", new() { Pages = 2, Titles = 2 }, 199m },
        { "four parcels, counted up to three: 13 + 10 + 225; § 27388.1(a)(1)", "Kern", new() { Pages = 1, Parcels = 4 }, 248m },
        { "two titles on two parcels, at most three: 2×13 + 2×10 + 225; §§ 27361.1, 27388.1(a)(1)", "Kern",
            new() { Pages = 1, Titles = 2, Parcels = 2 }, 271m },
        { "four parcels where they are not counted: 15 + 10 + 75; § 27388.1(a)(1)", "Santa Clara", new() { Pages = 1, Parcels = 4 }, 100m },
        { "exempt, with a taxed transfer: 14 + 3 + 10; § 27388.1(a)(2)", "Alameda",
            new() { Paper = Other, Pages = 2, Exemption = HomesFeeExemption.TransferTax }, 27m },
        { "exempt, and the covenant fee with it: 15 + 10; §§ 27388.1(a)(2), 27388.2", "Yolo",
            new() { Paper = Other, Pages = 1, Exemption = HomesFeeExemption.OwnerOccupier }, 25m },
        { "the $225 are reached already: 13 + 10; § 27388.1(a)(1)", "Kern", new() { Pages = 1, Exemption = HomesFeeExemption.CapReached },
            23m },
        { "nothing read of the county: 15 + 3 + 10 + 75, the most the sections allow", "Alpine", new() { Pages = 2 }, 103m },
        { "conformed copy at $1 a page: 15 + 4×3 + 3 + 75 + 5; the county's price", "Santa Cruz", new() { Pages = 5, ConformedCopy = true },
            110m },
        { "notice to three persons, conformed copy: 15 + 2×3 + 10 + 75 + 2 + 3×20 + 3; §§ 27297.5, 27387", "Yolo",
            new() { Pages = 3, NamesAtEachAddress = [3], ConformedCopy = true }, 171m },
        { "notice to two debtors: 14 + 10 + 75 + 2×11; §§ 27297.5, 27387", "Marin", new() { Pages = 1, NamesAtEachAddress = [1, 1] },
            121m },
        { "notice to two debtors: 14 + 75 + 2×3; §§ 27297.5, 27387", "Shasta", new() { Pages = 1, NamesAtEachAddress = [2] }, 95m },
        { "notice to five at one address, in groups of four: 15 + 3 + 75 + 9 + 2; §§ 27297.5, 27387", "Los Angeles",
            new() { Pages = 1, NamesAtEachAddress = [5] }, 104m },
        { "one page of legal size makes both dear: 14 + 3 + 6 + 75 + 2×3; § 27361(a)(2)", "Sacramento",
            new() { Pages = 2, NonstandardPages = 1 }, 104m },
        { "penalty print on one page: 14 + 3 + 3 + 75 + 1; § 27361(a)(1)", "Contra Costa", new() { Pages = 2, PenaltyPages = 1 }, 96m },
        { "amended claim that refers to one recorded paper: 15 + 3 + 10 + 75 + 2 + 0; § 27361.2", "Yolo",
            new() { Pages = 2, References = 1 }, 105m },
        { "amended claim that refers to two: 15 + 3 + 10 + 75 + 2 + 4; § 27361.2", "Yolo", new() { Pages = 2, References = 2 }, 109m },
    };

    [Theory]
    [MemberData(nameof(Rows), DisableDiscoveryEnumeration = true)]
    public void The_total_is_the_one_worked_by_hand(string sum, string county, FeeRequest request, decimal total)
    {
        var fee = RecordingFee.Of(RecorderTable.For(county, Jobs.Day("2026-11-30")), request);
        Assert.True(total == fee.Total, $"{county}, {sum}: {fee.Total} instead of {total}\n{string.Join('\n', fee.Parts)}");
        Assert.All(fee.Parts, part => Assert.True(part.Section.StartsWith("Gov. Code "
            + "§", StringComparison.Ordinal) || part.Id == "conformed-copy", part.ToString()));
    }

    [Fact]
    public void Each_doubt_that_touches_the_fee_is_told()
    {
        var doubts = string.Join('\n',
            RecordingFee.Of(RecorderTable.For("Alpine", Jobs.Day("2026-11-30")),
            new FeeRequest { Pages = 1, Parcels = 2, References = 1, NamesAtEachAddress = [1] }).WhatCouldChangeIt);
        foreach (var section in (string[])["§ 27388.1(a)(1)", "§§ 27297.5, 27387", "§ 27388.2", "§ 27361.8", "§ 27361.2", "§ 27361)",
            "§ 27361(a)(2)"])
            Assert.Contains(section, doubts, StringComparison.Ordinal);
    }

    // From 2027 the prices may be others, and nobody read the bill as passed or the end of the covenant fee: the sheet says to ask,
    // whatever was read of the office.
    [Theory]
    [InlineData("Alpine")]
    [InlineData("Yolo")]
    public void Of_2027_the_sheet_says_what_to_ask(string county)
    {
        var doubts = RecordingFee.Of(RecorderTable.For(county, Jobs.Day("2026-11-30")), new FeeRequest { Pages = 1 }).WhatCouldChangeIt;
        Assert.Contains(doubts, d => d.Contains("$15 for the first page and $4 for each further may apply", StringComparison.Ordinal)
            && d.Contains("further references may be gone", StringComparison.Ordinal));
        Assert.Contains(doubts, d => d.Contains("estrictive covenant fee", StringComparison.Ordinal)
            && d.Contains("from 2027", StringComparison.Ordinal));
    }

    [Fact]
    public void An_exemption_warns_that_it_must_stand_on_the_face() =>
        Assert.Contains(RecordingFee.Of(RecorderTable.For("Kern", Jobs.Day("2026-11-30")),
            new FeeRequest { Pages = 1, Exemption = HomesFeeExemption.NotRealProperty }).WhatCouldChangeIt,
            d => d.Contains("stands on the first page or a cover page", StringComparison.Ordinal));
}
