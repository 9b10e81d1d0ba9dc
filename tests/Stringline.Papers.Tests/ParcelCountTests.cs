using CsCheck;
using Stringline.Law.Recording;
using Stringline.Papers.Fees;
using static Stringline.Papers.Tests.Jobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// Parcels counted by hand. The homes fee is charged for each, three times at most (Gov. Code § 27388.1(a)(1)): a range that counts as one
/// makes a short check.
/// </summary>
public sealed class ParcelCountTests
{
    [Theory]
    [InlineData(null, 1)]
    [InlineData("027-310-014-000", 1)]
    [InlineData("APN 027-310-014 (portion)", 1)]
    [InlineData("027310014", 1)]
    [InlineData("012 - 340 - 05", 1)]
    [InlineData("012–340–05", 1)]
    [InlineData("012-340-05; 012-340-06", 2)]
    [InlineData("012-340-05, 06 and 07", 3)]
    [InlineData("012-340-05 012-340-06", 2)]
    [InlineData("012-340-05 to 09", 5)]
    [InlineData("012-340-05 thru -09", 5)]
    [InlineData("012-340-05 through 012-340-09", 5)]
    [InlineData("012-340-05–09", 5)]
    [InlineData("012-340-05 – 012-340-09", 5)]
    [InlineData("012-340-05 - 09", 5)]
    [InlineData("0123405 - 0123409", 5)]
    [InlineData("012-340-05 to 07, 09", 4)]
    [InlineData("042-181-007/008/009", 3)]
    [InlineData("019-0042-101 through 019-0042-114", 14)]
    [InlineData("027-310-014-000 to 027-310-018-000", 5)]
    public void What_can_be_counted_is_counted(string? text, int count)
    {
        var parcels = ParcelCount.Of(text);
        Assert.Equal((count, (string?)null), (parcels.Count, parcels.Unread));
    }

    [Theory]
    [InlineData("012-340-05 to 011-350-09")]
    [InlineData("012-340-09 to 05")]
    [InlineData("012-340-05A through 05C")]
    [InlineData("012-340-05 et al.")]
    [InlineData("012-340-05 and others")]
    [InlineData("see the attached list")]
    [InlineData("Parcels of tract 4410")]
    [InlineData("012-340-05 to 07 to 09")]
    [InlineData("012-340-101-003 to 012-340-103-003")]
    [InlineData("012-340-05 to the last")]
    public void What_cannot_be_counted_is_asked_for_and_never_one(string text)
    {
        var parcels = ParcelCount.Of(text);
        Assert.NotNull(parcels.Unread);
        var fee = RecordingFee.Of(RecorderTable.For("Yolo", Jobs.Day("2026-11-30")),
            new FeeRequest { Pages = 1, Parcels = parcels.Count, ParcelsTold = parcels });
        Assert.Equal(225m, fee.Part("homes")!.Most);
    }

    /// <summary>Every way to tell a range: counted whole, or asked for.</summary>
    [Fact]
    public void No_range_counts_as_one_in_silence() =>
        Gen.Select(Gen.Int[1, 90], Gen.Int[1, 9],
            Gen.OneOf((string[])[" to ", " through ", " thru ", " – ", "–", " - ", " up to "]),
            Gen.OneOf((string[])["012-340-", "0-", "019-0042-1", ""]), Gen.Bool).Sample((first, more, word, before, whole) =>
        {
            var parcels = ParcelCount.Of($"{before}{first:00}{word}{(whole ? before : "")}{first + more:00}");
            Assert.True(parcels.Unread is not null || parcels.Count == more + 1, $"{parcels}");
        });

    /// <summary>13 + 10 + 3×3 + 225 in Kern, which counts parcels: the most.</summary>
    [Theory]
    [InlineData("042-181-007 to 042-181-009", "3 parcels are counted")]
    [InlineData("042-181-007 et al.", "How many parcels “042-181-007 et al.” names is not clear")]
    public void The_counter_sheet_says_what_was_reckoned(string apn, string words)
    {
        var job = Demo() with { Work = Demo().Work with
            { Site = Demo().Work.Site with { City = "Bakersfield", Zip = "93301", County = "Kern", Apn = apn } } };
        var made = Kept.Packet("parcels", job);
        Assert.Equal(225m, made.Fee!.Part("homes")!.Amount);
        Assert.Contains(words, made.Sheet().Text, StringComparison.Ordinal);
    }
}
