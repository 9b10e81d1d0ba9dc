using Stringline.Law.Recording;
using Stringline.Papers.Fees;
using static Stringline.Law.Recording.RecordedPaperKind;

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
        { "notice of completion, first page not read, so 16: 16 + 10 + 75; § 27388(a)(1)", "Riverside",
            new() { Paper = NoticeOfCompletion, Pages = 1 }, 101m },
        { "claim that is not on the office's list: 14 + 0 + 75; § 27388(a)(1)", "Shasta", new() { Pages = 1 }, 89m },
        { "fraud fee not read, so 10: 13 + 10 + 75; § 27388(a)(1)", "Solano", new() { Pages = 1 }, 98m },
        { "ten names cost nothing: 14 + 10 + 75; § 27361.8", "Marin", new() { Pages = 1, Names = 10 }, 99m },
        { "eleven names: 14 + 10 + 75 + 1; § 27361.8", "Marin", new() { Pages = 1, Names = 11 }, 100m },
        { "twenty-one names: 14 + 10 + 75 + 2; § 27361.8", "Marin", new() { Pages = 1, Names = 21 }, 101m },
        { "eleven names at the county's own $4: 15 + 3 + 75 + 4; § 27361.8", "Los Angeles", new() { Pages = 1, Names = 11 }, 97m },
        { "eleven names at the county's own $4, covenant fee: 15 + 10 + 75 + 2 + 4; §§ 27361.8, 27388.2", "Yolo",
            new() { Pages = 1, Names = 11 }, 106m },
        { "eleven names at $7, the rest not read: 16 + 10 + 75 + 7; § 27361.8", "San Diego", new() { Pages = 1, Names = 11 }, 108m },
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
        { "no price read of the county: 16 + 3 + 10 + 75, the highest that any county prints", "Alpine", new() { Pages = 2 }, 104m },
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
        Assert.All(fee.Parts, part => Assert.True(part.Section.StartsWith(""
            + "Gov. Code §", StringComparison.Ordinal) || part.Id == "conformed-copy", part.ToString()));
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
        Assert.Contains(doubts, d =>
            d.Contains("$15 for the first page and $4 for each additional page may apply", StringComparison.Ordinal)
            && d.Contains("additional references may be gone", StringComparison.Ordinal));
        Assert.Contains(doubts, d => d.Contains("estrictive covenant fee", StringComparison.Ordinal)
            && d.Contains("from 2027", StringComparison.Ordinal));
    }

    [Fact]
    public void An_exemption_warns_that_it_must_stand_on_the_face() =>
        Assert.Contains(RecordingFee.Of(RecorderTable.For("Kern", Jobs.Day("2026-11-30")),
            new FeeRequest { Pages = 1, Exemption = HomesFeeExemption.NotRealProperty }).WhatCouldChangeIt,
            d => d.Contains("is on the first page or a cover page", StringComparison.Ordinal));

    // AB 2224 of 2026 was not read as passed: $15 and $4 in the place of $10 and $3. Nobody knows which holds from 2027, so that the dearer
    // is reckoned, with the cheaper told.
    [Theory]
    [InlineData("2026-12-31", 106)] // 15 + 2×3 + 10 + 75
    [InlineData("2027-01-01", 113)] // 20 + 2×4 + 10 + 75
    public void From_2027_the_dearer_reading_is_reckoned(string on, int total)
    {
        var fee = RecordingFee.Of(RecorderTable.For("Santa Clara", Jobs.Day(on)), new FeeRequest { Pages = 3 });
        Assert.Equal(total, fee.Total);
        Assert.Equal(total == 113, fee.Part("base")!.Why.Contains("$15.00 if a bill of 2026 (AB 2224) is not law",
            StringComparison.Ordinal));
        Assert.Equal(total == 113, fee.Part("extra-pages")!.Why.Contains("$3.00 if a bill", StringComparison.Ordinal));
    }

    // A page printed under the law of 2027 has its prices, whichever they are.
    [Fact]
    public void A_price_printed_under_the_law_of_2027_is_taken_as_it_is()
    {
        var office = RecorderTable.Of(RecorderRows.Read("county,field,value,source,date_on_page,date_read,from,to,remark\n"
            + "Kern,base,14,a.example,2027-01-04,2027-01-05,,,\nKern,extra_page,3,a.example,2026-12-20,2027-01-05,2027-01-01,,"), "Kern",
            Jobs.Day("2027-02-01"));
        var fee = RecordingFee.Of(office, new FeeRequest { Pages = 2 });
        Assert.Equal((14m, 3m, false, false),
            (fee.Part("base")!.Amount, fee.Part("extra-pages")!.Amount, fee.Part("base")!.Ask, fee.Part("extra-pages")!.Ask));
    }

    // A last day in the new year: what is to be at hand is the sum of that day too. Yolo's dated prices: 15 + 3 + 10 + 75 + 2 = 105; on
    // 2027-01-08 20 + 4 + 10 + 75 + 2 = 111.
    [Fact]
    public void What_is_to_be_at_hand_reaches_to_the_last_day()
    {
        var yolo = RecorderTable.For("Yolo", Jobs.Day("2026-12-20"));
        Assert.Equal((105m, 105m), Sums(RecordingFee.Of(yolo, new FeeRequest { Pages = 2, Until = Jobs.Day("2026-12-31") })));
        var later = RecordingFee.Of(yolo, new FeeRequest { Pages = 2, Until = Jobs.Day("2027-01-08") });
        Assert.Equal((105m, 111m), Sums(later));
        Assert.Equal(Jobs.Day("2027-01-08"), later.DearerOn);
    }

    // Los Angeles, nothing dated: 15 + 3 + 3 + 75 + 9; at most 16 + 3 + 10 + 75 + 20 and 2 for the covenant fee, which was not read.
    // Santa Clara's undated prices are the highest but for the first page: 15 + 3 + 10 + 75; at most 16 + 3 + 10 + 75 + 2.
    [Theory]
    [InlineData("Los Angeles", 1, 105, 126)]
    [InlineData("Santa Clara", 0, 103, 106)]
    public void Where_it_says_ask_the_highest_of_any_county_is_put_at_hand(string county, int debtors, int total, int most) =>
        Assert.Equal((total, most), Sums(RecordingFee.Of(RecorderTable.For(county, Jobs.Day("2026-11-30")),
            new FeeRequest { Pages = 2, NamesAtEachAddress = debtors == 0 ? [] : [debtors] })));

    /// <summary>Every county, several shapes of paper: what is at hand is never less than what is reckoned.</summary>
    [Fact]
    public void What_is_at_hand_is_never_short()
    {
        foreach (var day in (string[])["2026-11-30", "2027-03-01", "2031-01-01"])
        {
            foreach (var office in RecorderTable.All(Jobs.Day(day)))
            {
                foreach (var request in (FeeRequest[])[new() { Pages = 1 }, new() { Pages = 7, Parcels = 3, Names = 61, References = 3,
                    NamesAtEachAddress = [1, 5], ConformedCopy = true }])
                {
                    var fee = RecordingFee.Of(office, request);
                    Assert.True(fee.AtMost >= fee.Total, $"{office.County} on {day}: {fee.AtMost} under {fee.Total}");
                    Assert.All(fee.Parts, p => Assert.True(p.Most == p.Amount || (p.Ask && p.Most > p.Amount), $"{office.County}: {p}"));
                }
            }
        }
    }

    /// <summary>Gov. Code § 27361.4(a), older text: a dollar for archives or a trusted system, until 2026-01-01. Said once.</summary>
    [Theory]
    [InlineData("Marin", 1)]
    [InlineData("Glenn", 0)]
    public void The_dollar_for_archives_is_told_once_where_a_price_was_read(string county, int times) =>
        Assert.Equal(times, RecordingFee.Of(RecorderTable.For(county, Jobs.Day("2026-11-30")), new FeeRequest { Pages = 1 })
            .WhatCouldChangeIt.Count(d => d.Contains("§ 27361.4(a)", StringComparison.Ordinal)));

    private static (decimal, decimal) Sums(FeeEstimate fee) => (fee.Total, fee.AtMost);
}
