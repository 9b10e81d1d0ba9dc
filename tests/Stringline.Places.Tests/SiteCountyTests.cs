using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Places.Tests;

/// <summary>Which county is asked about, never guessed. The tables' own checks are in <see cref="ZipTableTests"/>.</summary>
public sealed class SiteCountyTests
{
    private static Site At(string county, string? zip, string? city = null) => new() { County = county, Zip = zip, City = city };

    [Theory]
    [InlineData("Yolo", "95695", "Woodland")]
    [InlineData("Yolo", "95695-1234", null)]
    [InlineData("Yolo", " CA 95695 ", "woodland")]
    [InlineData("Yolo", null, "Woodland")]
    public void A_county_that_fits_is_not_asked_about(string county, string? zip, string? city)
    {
        Assert.IsType<CountyAnswer.Fits>(SiteCounty.Of(At(county, zip, city)));
        Assert.Null(SiteCounty.Question(At(county, zip, city)));
    }

    [Theory]
    [InlineData("San Mateo", "San Mateo or Santa Clara")]
    [InlineData("Santa Clara", "San Mateo or Santa Clara")]
    public void A_straddling_ZIP_is_a_question_whichever_county_is_named(string county, string choice)
    {
        var finding = SiteCounty.Question(At(county, "94303"))!;
        Assert.Equal((SiteCounty.FindingId, Standing.InDoubt), (finding.Id, finding.Standing));
        Assert.Contains(choice, Assert.Single(finding.Questions).Text, StringComparison.Ordinal);
        Assert.Contains("Civ. Code § 1169", Assert.Single(finding.Why).Section.Replace("§§", "§", StringComparison.Ordinal),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_county_that_does_not_fit_the_ZIP_is_a_question_that_names_both()
    {
        var asked = Assert.Single(SiteCounty.Question(At("Sacramento", "95695"))!.Questions).Text;
        Assert.Contains("Sacramento, as the file says, or Yolo, as ZIP 95695 suggests", asked, StringComparison.Ordinal);
    }

    [Fact]
    public void A_city_of_another_county_is_a_question_though_the_ZIP_fits()
    {
        var answer = Assert.IsType<CountyAnswer.DoesNotFit>(SiteCounty.Of(At("Yolo", "95695", "Eureka")));
        Assert.Equal(("Eureka", "Humboldt"), (answer.By, Assert.Single(answer.Counties)));
    }

    [Theory]
    [InlineData(null, null, "neither ZIP nor city")]
    [InlineData("", " ", "neither ZIP nor city")]
    [InlineData("9569", null, "not written as a ZIP")]
    [InlineData("95695-12", null, "not written as a ZIP")]
    [InlineData("89501", null, "not in the table")]
    [InlineData(null, "Nowhere Flat", "not a place")]
    public void What_cannot_be_compared_is_a_question(string? zip, string? city, string why)
    {
        Assert.Contains(why, Assert.IsType<CountyAnswer.NotCompared>(SiteCounty.Of(At("Yolo", zip, city))).Why, StringComparison.Ordinal);
        Assert.NotNull(SiteCounty.Question(At("Yolo", zip, city)));
    }

    /// <summary>
    /// Every ZIP with each of its counties, and with the first and the last of the others: silence only where the county is the one and
    /// only.
    /// </summary>
    [Fact]
    public void Every_ZIP_gives_silence_only_for_the_one_county_known()
    {
        foreach (var zip in ZipTable.All)
        {
            var known = ZipTable.Find(zip)!.Counties;
            foreach (var county in (IEnumerable<string>)[.. known, Counties.All.First(c => !known.Contains(c)),
                Counties.All.Last(c => !known.Contains(c))])
            {
                var answer = SiteCounty.Of(At(county, zip));
                var expected = !known.Contains(county)
                    ? typeof(CountyAnswer.DoesNotFit) : known.Count > 1 ? typeof(CountyAnswer.Straddles) : typeof(CountyAnswer.Fits);
                Assert.IsType(expected, answer);
            }
        }
    }
}
