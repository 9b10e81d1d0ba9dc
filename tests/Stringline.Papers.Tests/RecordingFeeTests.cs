using Stringline.Law.Recording;
using Stringline.Papers.Fees;

namespace Stringline.Papers.Tests;

/// <summary>
/// Sums worked by hand from the prices on the offices' own pages (named in data/recorders.csv, read 2026-11-29):
/// the expected totals were added up outside the program.
/// </summary>
public sealed class RecordingFeeTests
{
    private static decimal Total(string county, FeeRequest request) =>
        RecordingFee.Of(RecorderTable.For(county, Jobs.Day("2026-11-30")), request).Total;

    /// <summary>25 + 2×3 + 75, and $4 for the notice to one person.</summary>
    [Fact]
    public void Santa_Clara_claim_of_three_pages()
    {
        Assert.Equal(106m, Total("Santa Clara", new FeeRequest { Pages = 3 }));
        Assert.Equal(110m, Total("Santa Clara", new FeeRequest { Pages = 3, NamesAtEachAddress = [1] }));
    }

    /// <summary>89 (14 + 75) + 10 fraud + 3×3.</summary>
    [Fact]
    public void Alameda_claim_of_four_pages() => Assert.Equal(108m, Total("Alameda", new FeeRequest { Pages = 4 }));

    /// <summary>95 (14 + 6 + 75) + 3.</summary>
    [Fact]
    public void Sacramento_claim_of_two_pages() => Assert.Equal(98m, Total("Sacramento", new FeeRequest { Pages = 2 }));

    /// <summary>14 + 10 + 75 + 3: a release with a notary's certificate pays as a claim does.</summary>
    [Fact]
    public void Marin_release_of_two_pages() => Assert.Equal(102m, Total("Marin", new FeeRequest { Pages = 2 }));

    /// <summary>13 + 10 + 2×3 + 2×75.</summary>
    [Fact]
    public void Kern_claim_of_three_pages_on_two_parcels() => Assert.Equal(179m, Total("Kern", new FeeRequest { Pages = 3, Parcels = 2 }));

    /// <summary>14 + 4×3 + 75: the office's fraud list leaves mechanics liens out.</summary>
    [Fact]
    public void Shasta_claim_of_five_pages() => Assert.Equal(101m, Total("Shasta", new FeeRequest { Pages = 5 }));

    /// <summary>25 + 2×3 + 225 (the most) + 2 groups × 4 + 2 covenant.</summary>
    [Fact]
    public void Yolo_claim_of_three_pages_four_parcels_and_23_names() =>
        Assert.Equal(266m, Total("Yolo", new FeeRequest { Pages = 3, Parcels = 4, Names = 23 }));

    /// <summary>15 + 3×3 + 4×3 for a page of legal size + 3 fraud + 75, and $9 for the first notice.</summary>
    [Fact]
    public void Los_Angeles_claim_of_four_pages_one_of_legal_size()
    {
        Assert.Equal(114m, Total("Los Angeles", new FeeRequest { Pages = 4, NonstandardPages = 1 }));
        Assert.Equal(123m, Total("Los Angeles", new FeeRequest { Pages = 4, NonstandardPages = 1, NamesAtEachAddress = [4] }));
    }

    /// <summary>
    /// The office's page: $9 for the first group of four at one address, then $2: five at one address and one at another make three groups.
    /// </summary>
    [Fact]
    public void Los_Angeles_notice_goes_by_groups_of_four_at_an_address() =>
        Assert.Equal(13m, RecordingFee.Of(RecorderTable.For("Los Angeles", Jobs.Day("2026-11-30")),
            new FeeRequest { Pages = 1, NamesAtEachAddress = [5, 1] }).Part("lien-notice")?.Amount);

    /// <summary>2×25 + 2×3 + 2×75.</summary>
    [Fact]
    public void Santa_Clara_document_with_two_titles() =>
        Assert.Equal(206m, Total("Santa Clara", new FeeRequest { Pages = 3, Titles = 2 }));

    /// <summary>14 + 2×3: schedule of 2022, exemption on the face.</summary>
    [Fact]
    public void San_Francisco_document_not_related_to_real_property() =>
        Assert.Equal(20m, Total("San Francisco", new FeeRequest { Pages = 3, Exemption = HomesFeeExemption.NotRealProperty }));

    /// <summary>Gov. Code § 27361.2, $1 each beyond the first; § 27361(a)(1), $1 each page of penalty print.</summary>
    [Fact]
    public void References_and_penalty_print_have_their_parts()
    {
        var fee = RecordingFee.Of(RecorderTable.For("Marin", Jobs.Day("2026-11-30")),
            new FeeRequest { Pages = 2, References = 3, PenaltyPages = 2 });
        Assert.Equal((2m, 2m), (fee.Part("references")?.Amount, fee.Part("penalty-print")?.Amount));
    }

    /// <summary>
    /// 16, the highest first page that a county prints (Colusa, since 2023-04-17), + 2×3 + 10 + 75: Gov. Code §§ 27361, 27388, 27388.1.
    /// </summary>
    [Fact]
    public void A_county_of_which_no_schedule_was_read_pays_the_most_and_it_is_said()
    {
        var fee = RecordingFee.Of(RecorderTable.For("Alpine", Jobs.Day("2026-11-30")), new FeeRequest { Pages = 3 });
        Assert.Equal(107m, fee.Total);
        Assert.Contains("No price list of Alpine County was found", fee.Source, StringComparison.Ordinal);
        Assert.Contains("Call the office", fee.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void The_parts_add_up_and_each_has_section_and_reason()
    {
        foreach (var office in RecorderTable.All(Jobs.Day("2026-11-30")))
        {
            var fee = RecordingFee.Of(office,
                new FeeRequest { Pages = 4, Parcels = 3, Names = 14, NamesAtEachAddress = [2, 1], ConformedCopy = true });
            Assert.Equal(fee.Parts.Sum(p => p.Amount), fee.Total);
            Assert.All(fee.Parts, p => Assert.False(p.Section.Length == 0 || p.Why.Length == 0 || p.Words.Length == 0));
            Assert.Contains(office.IsFromMemory
                ? "not verified" : office.HasPrices ? "checked November 29, 2026" : "No price list of", fee.Source,
                StringComparison.Ordinal);
        }
    }

    [Fact]
    public void There_is_no_fee_for_no_page() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Total("Kern", new FeeRequest { Pages = 0 }));
}
