using Stringline.Law.Recording;

namespace Stringline.Law.Tests.Recording;

/// <summary>What recording costs by the sections, with an office that prints a price for each part.</summary>
public sealed class RecordingFeeRuleTests
{
    private static readonly LocalDate Day = new(2026, 11, 30);

    /// <summary>An office of round prices, each on a young page.</summary>
    private static readonly RecorderOffice Office = RecorderOffice.Of(
        "Yolo",
        [
            Price(RecorderField.Base, "10"), Price(RecorderField.ExtraPage, "3"), Price(RecorderField.Fraud, "10"),
            Price(RecorderField.Covenant, "2"), Price(RecorderField.NamesPerTen, "1"), Price(RecorderField.FurtherReference, "1"),
            Price(RecorderField.NoticeFirst, "7"), Price(RecorderField.ParcelsCounted, "yes"), Price(RecorderField.ConformedCopy, "2"),
        ],
        [],
        Day);

    [Theory]
    [InlineData(1, 10, 0)]
    [InlineData(2, 10, 3)]
    [InlineData(5, 10, 12)]
    [Proves("Gov. Code § 27361(a)(1)")]
    public void The_first_page_has_a_price_and_each_further_page_another(int pages, int first, int further)
    {
        var fee = RecordingFee.Of(Office, new FeeRequest { Pages = pages });
        Assert.Equal((first, further), (Amount(fee, "base"), Amount(fee, "extra-pages")));
    }

    [Fact]
    [Proves("Gov. Code § 27361.1")]
    public void Each_title_is_charged_as_another_paper() =>
        Assert.Equal((20, 20, 150), Parts(new FeeRequest { Pages = 1, Titles = 2 }, "base", "fraud", "homes"));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 12)]
    [InlineData(3, 12)]
    [Proves("Gov. Code § 27361(a)(2)")]
    public void One_page_of_another_size_makes_every_page_dearer(int odd, int more) =>
        Assert.Equal(more, Amount(RecordingFee.Of(Office, new FeeRequest { Pages = 4, NonstandardPages = odd }), "nonstandard"));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 0)]
    [InlineData(2, 1)]
    [InlineData(4, 3)]
    [Proves("Gov. Code § 27361.2")]
    public void Each_reference_beyond_the_first_costs_more(int references, int more) =>
        Assert.Equal(more, Amount(RecordingFee.Of(Office, new FeeRequest { Pages = 1, References = references }), "references"));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(10, 0)]
    [InlineData(11, 1)]
    [InlineData(20, 1)]
    [InlineData(21, 2)]
    [Proves("Gov. Code § 27361.8")]
    public void Each_ten_names_or_part_of_ten_after_the_first_ten_cost_more(int names, int more) =>
        Assert.Equal(more, Amount(RecordingFee.Of(Office, new FeeRequest { Pages = 1, Names = names }), "names"));

    [Theory]
    [InlineData(RecordedPaperKind.ClaimOfLien, 10)]
    [InlineData(RecordedPaperKind.Release, 10)]
    [Proves("Gov. Code § 27388(a)(1)")]
    public void The_fraud_fee_is_charged_for_each_title(RecordedPaperKind paper, int once)
    {
        Assert.Equal(once, Amount(RecordingFee.Of(Office, new FeeRequest { Pages = 1, Paper = paper }), "fraud"));
        Assert.Equal(3 * once, Amount(RecordingFee.Of(Office, new FeeRequest { Pages = 1, Paper = paper, Titles = 3 }), "fraud"));
    }

    [Theory]
    [InlineData(1, 75)]
    [InlineData(2, 150)]
    [InlineData(3, 225)]
    [InlineData(4, 225)]
    [InlineData(40, 225)]
    [Proves("Gov. Code § 27388.1(a)(1)")]
    public void The_homes_fee_is_75_dollars_for_each_parcel_three_times_at_most(int parcels, int dollars) =>
        Assert.Equal(dollars, Amount(RecordingFee.Of(Office, new FeeRequest { Pages = 1, Parcels = parcels }), "homes"));

    [Theory]
    [InlineData("027-310-014-000", 75)]
    [InlineData("012-340-05; 012-340-06", 150)]
    [InlineData("012-340-05 through 012-340-07", 225)]
    [InlineData("012-340-05 and others", 225)]
    [Proves("Gov. Code § 27388.1(a)(1)")]
    public void Parcels_are_counted_and_what_cannot_be_counted_is_taken_for_the_most(string written, int dollars)
    {
        var parcels = ParcelCount.Of(written);
        var fee = RecordingFee.Of(Office, new FeeRequest { Pages = 1, Parcels = parcels.Count, ParcelsTold = parcels });
        Assert.Equal(dollars, Amount(fee, "homes"));
    }

    [Fact]
    [Proves("Gov. Code § 27388.1(a)(2)")]
    public void A_stated_exemption_takes_the_homes_and_the_covenant_fee_away()
    {
        Assert.Equal(4, HomesFeeExemption.All.Count);
        Assert.All(HomesFeeExemption.All, exemption => Assert.Equal(
            (0, 0), Two(new FeeRequest { Pages = 1, Exemption = exemption }, "homes", "covenant")));
    }

    [Fact]
    [Proves("Gov. Code § 27388.2")]
    public void The_covenant_fee_is_taken_once() =>
        Assert.Equal((75, 2), Two(new FeeRequest { Pages = 9 }, "homes", "covenant"));

    [Fact]
    [Proves("Gov. Code § 27297.5")]
    public void A_notice_of_involuntary_lien_is_paid_for_each_name_at_each_address() =>
        Assert.Equal(21, Amount(RecordingFee.Of(Office, new FeeRequest { Pages = 1, NamesAtEachAddress = [1, 2] }), "lien-notice"));

    [Theory]
    [InlineData(9, 22, false)]
    [InlineData(10, 22, true)]
    [InlineData(9, 23, true)]
    [Proves("Gov. Code § 27361(a)(1)")]
    public void Print_that_is_too_close_costs_a_dollar_a_page(int lines, int characters, bool penalty)
    {
        Assert.Equal(penalty, RecordedForm.IsPenaltyPrint(lines, characters));
        Assert.Equal(2, Amount(RecordingFee.Of(Office, new FeeRequest { Pages = 3, PenaltyPages = 2 }), "penalty-print"));
    }

    [Theory]
    [InlineData("8.5", "11", true)]
    [InlineData("8.5", "14", false)]
    [InlineData("8.27", "11.69", false)]
    [Proves("Gov. Code § 27361.5(a)")]
    public void A_standard_page_is_eight_and_a_half_by_eleven_inches(string width, string height, bool standard) =>
        Assert.Equal(standard, RecordedForm.IsStandardSize(Number(width), Number(height)));

    [Theory]
    [InlineData("0.49", false)]
    [InlineData("0.5", true)]
    [Proves("Gov. Code § 27361.6")]
    public void Half_an_inch_is_white_left_and_right(string narrowest, bool enough) =>
        Assert.Equal(enough, RecordedForm.HasSideMargins(Number(narrowest)));

    [Theory]
    [InlineData("3.5", "2.49", false, true)]
    [InlineData("3.51", "2.49", true, false)]
    [InlineData("3.51", "2.5", false, false)]
    [InlineData("1", "2.5", false, false)]
    [Proves("Gov. Code § 27361.6")]
    public void The_band_at_the_top_is_the_recorders_but_for_its_left_part(string left, string top, bool recorders, bool returns) =>
        Assert.Equal(
            (recorders, returns),
            (RecordedForm.IsRecordersSpace(Number(left), Number(top)), RecordedForm.IsReturnSpace(Number(left), Number(top))));

    [Theory]
    [InlineData("2.49", false)]
    [InlineData("2.5", true)]
    [InlineData("3", true)]
    [InlineData("3.01", false)]
    [Proves("Gov. Code § 27324")]
    public void The_title_stands_directly_below_that_band(string title, bool right) =>
        Assert.Equal(right, RecordedForm.IsTitlesPlace(Number(title)));

    /// <summary>A statute whose rise is not sure is figured in on a day on which it may hold.</summary>
    [Fact]
    public void A_later_day_on_which_a_bill_may_hold_is_counted_at_its_dearest()
    {
        RecorderFact[] statutes =
        [
            new("California", RecorderField.Base, "10", "the section", "2026", Day, null, null, null),
            new("California", RecorderField.Base, "15", "a bill", "2026", Day, new LocalDate(2027, 1, 1), null, null),
        ];
        var office = RecorderOffice.Of("Yolo", [Price(RecorderField.Base, "10")], statutes, Day);
        var fee = RecordingFee.Of(office, new FeeRequest { Pages = 1, Until = new LocalDate(2027, 1, 8) });
        Assert.Equal((10, new LocalDate(2027, 1, 8)), (Amount(fee, "base"), fee.DearerOn));
        Assert.Equal(15, Amount(RecordingFee.Of(office.OnDay(new LocalDate(2027, 1, 8)), new FeeRequest { Pages = 1 }), "base"));
    }

    private static RecorderFact Price(RecorderField field, string value) =>
        new("Yolo", field, value, "an office's page", "2026-11-01", Day, null, null, null);

    private static int Amount(FeeEstimate fee, string part) => (int)(fee.Part(part)?.Amount ?? 0m);

    private static (int First, int Second) Two(FeeRequest request, string first, string second)
    {
        var fee = RecordingFee.Of(Office, request);
        return (Amount(fee, first), Amount(fee, second));
    }

    private static (int First, int Second, int Third) Parts(FeeRequest request, string first, string second, string third)
    {
        var fee = RecordingFee.Of(Office, request);
        return (Amount(fee, first), Amount(fee, second), Amount(fee, third));
    }

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
