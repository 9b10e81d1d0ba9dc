using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Recording;
using Stringline.Papers.Fees;

namespace Stringline.Papers.Tests;

public sealed class RecorderTableTests
{
    private const string Head = "county,field,value,source,date_on_page,date_read,from,to,remark";
    private const string Good =
        "Kern,base,13,assessor.co.kern.ca.us/record.php,2018 (or later),2026-11-29,2018-01-01,,\"a remark, with a comma\"";

    private static RecorderOffice Office(string county, params string[] rows) =>
        RecorderTable.Of(RecorderRows.Read($"{Head}\n{string.Join('\n', rows)}"), county, Jobs.Day("2026-11-30"));

    private static RecorderOffice Shipped(string county) => RecorderTable.For(county, Jobs.Day("2026-11-30"));

    [Fact]
    public void A_row_is_read_cell_by_cell()
    {
        var fact = Assert.Single(RecorderRows.Read($"{Head}\n{Good}\n"));
        Assert.Equal(new RecorderFact("Kern", RecorderField.Base, "13", "assessor.co.kern.ca.us/record.php", "2018 (or later)",
            Jobs.Day("2026-11-29"), Jobs.Day("2018-01-01"), null, "a remark, with a comma"), fact);
        Assert.Equal((13m, Jobs.Day("2018-01-01"), "assessor.co.kern.ca.us"), (fact.Dollars!.Value, fact.PageDay!.Value, fact.Site));
    }

    /// <summary>Each cell broken once; the message names line, field, what is there and what would be right.</summary>
    [Theory]
    [InlineData("Kern,", "Clark,", "Line 2, county: 'Clark' is there; one of the 58 counties, or California, would be right.")]
    [InlineData(",base,", ",first page,", "Line 2, field: 'first page' is there; one of city, counter, branch,")]
    [InlineData(",13,", ",13.005,", "Line 2, Kern, base, value: '13.005' is there; dollars")]
    [InlineData(",13,", ",-13,", "Line 2, Kern, base, value: '-13' is there; dollars")]
    [InlineData(",13,", ",$13,", "Line 2, Kern, base, value: '$13' is there; dollars")]
    [InlineData(",13,", ",,", "Line 2, Kern, base, value: '' is there; words would be right.")]
    [InlineData("base,13", "parcels_counted,often", "Line 2, Kern, parcels_counted, value: 'often' is there; yes or no would be right.")]
    [InlineData("base,13", "notice_group,0", "Line 2, Kern, notice_group, value: '0' is there; a whole number above 0 would be right.")]
    [InlineData("2026-11-29", "29 Nov", "Line 2, Kern, base, date_read: '29 Nov' is there; a day such as 2026-11-25 would be right.")]
    [InlineData("assessor.co.kern.ca.us/record.php", "", "Line 2, Kern, base, source: '' is there; words would be right.")]
    [InlineData("2018 (or later)", "", "Line 2, Kern, base, date_on_page: '' is there; words would be right.")]
    [InlineData("2018 (or later)", "lately", "Line 2, Kern, base, date_on_page: 'lately' is there; a day, month or year such as")]
    [InlineData("2018 (or later)", "2018-13", "Line 2, Kern, base, date_on_page: '2018-13' is there; a day, month or year such as")]
    [InlineData("assessor.co.kern.ca.us/record.php", "from memory",
        "Line 2, Kern, base, date_on_page: '2018 (or later)' is there; nothing, as the source is from memory, would be right.")]
    [InlineData("2018-01-01,,", "2027,,", "Line 2, Kern, base, from: '2027' is there; a day such as 2026-11-25 would be right.")]
    [InlineData("2018-01-01,,", "2018-01-01,2017-12-31,",
        "Line 2, Kern, base, to: '2017-12-31' is there; the same day as \"from\" or a later one would be right.")]
    [InlineData("comma\"", "comma", "Line 2: a quoted cell must end")]
    [InlineData("2018-01-01,,", "2018-01-01,,,", "Line 2: 10 cells are there; 9 would be right.")]
    public void A_broken_row_is_refused(string there, string instead, string message)
    {
        var broken = Good.Replace(there, instead, StringComparison.Ordinal);
        Assert.NotEqual(Good, broken);
        Assert.Contains(message, Assert.Throws<FormatException>(() => RecorderRows.Read($"{Head}\n{broken}")).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_fact_of_the_same_page_stands_there_once() =>
        Assert.Contains("Line 3, Kern, base: the same value of the same page stands there already",
            Assert.Throws<FormatException>(() => RecorderRows.Read($"{Head}\n{Good}\n{Good}")).Message, StringComparison.Ordinal);

    [Fact]
    public void Other_columns_are_refused() =>
        Assert.StartsWith("Line 1:", Assert.Throws<FormatException>(() => RecorderRows.Read($"{Head},extra\n{Good}")).Message,
            StringComparison.Ordinal);

    /// <summary>California has 58 counties (Gov. Code §§ 23101-23158, from memory).</summary>
    [Fact]
    public void There_are_58_counties_in_order_and_each_has_an_office()
    {
        Assert.Equal(58, Counties.All.Count);
        Assert.Equal(Counties.All.Order(StringComparer.Ordinal), Counties.All);
        Assert.Equal(Counties.All, RecorderTable.All(Jobs.Day("2026-11-30")).Select(o => o.County));
        Assert.All(RecorderTable.All(Jobs.Day("2026-11-30")), o => Assert.NotNull(o.Place ?? o.Words(RecorderField.Phone)
            ?? o.Words(RecorderField.Hours) ?? o.Words(RecorderField.Payee)));
    }

    [Theory]
    [InlineData("los angeles county", "Los Angeles")]
    [InlineData("City and County of San Francisco", "San Francisco")]
    [InlineData(" Del  Norte ", "Del Norte")]
    [InlineData("County of Kern", "Kern")]
    public void A_county_is_found_as_people_write_it(string written, string county) => Assert.Equal(county, Counties.Find(written));

    [Theory]
    [InlineData("Clark")]
    [InlineData("")]
    [InlineData(null)]
    public void Anything_else_is_no_county(string? written) => Assert.Null(Counties.Find(written));

    /// <summary>Of fifty counties a page was read on 2026-11-29; of the others nothing, and the city is from memory.</summary>
    [Fact]
    public void Every_fact_names_its_page_or_says_from_memory()
    {
        string[] nothing = ["Glenn", "Imperial", "Lake", "Plumas", "San Joaquin", "Siskiyou", "Tehama", "Tulare"];
        Assert.Equal(nothing, RecorderTable.All(Jobs.Day("2026-11-30")).Where(o => o.IsFromMemory).Select(o => o.County));
        Assert.All(RecorderTable.Facts.Where(f => f.IsFromMemory), f => Assert.Equal(RecorderField.City, f.Field));
        Assert.All(RecorderTable.Facts.Where(f => !f.IsFromMemory), f => Assert.Equal(Jobs.Day("2026-11-29"), f.DateRead));
    }

    // A page that bears no day could be of any year; one of more than five years is asked about; the day itself is still young enough.
    [Theory]
    [InlineData("2021-11-30", false)]
    [InlineData("2021-11-29", true)]
    [InlineData("2022", false)]
    [InlineData("2021", true)]
    [InlineData("2021-12 (effective)", false)]
    [InlineData("undated", true)]
    [InlineData("undated (current site)", true)]
    public void What_is_old_or_without_a_date_is_asked(string date, bool ask) =>
        Assert.Equal(ask, Office("Kern", $"Kern,base,13,kern.example,{date},2026-11-29,,,").Asks(RecorderField.Base));

    // Two pages that agree: the dated one vouches. Two that do not: the newer of two dated ones has it; beside one without a date the
    // dearer is taken and asked.
    [Theory]
    [InlineData("13", "2022", "13", "undated", 13, false)]
    [InlineData("13", "2022", "14", "undated", 14, true)]
    [InlineData("15", "2022", "14", "undated", 15, true)]
    [InlineData("15", "2015", "14", "2022", 14, false)]
    [InlineData("14", "2022", "15", "2022", 15, true)]
    [InlineData("14", "undated", "15", "undated (older)", 15, true)]
    public void Pages_that_disagree_are_asked_and_the_dearer_is_taken(string one, string of, string other, string ofOther, int taken,
        bool ask)
    {
        string[] rows = [$"Kern,base,{one},a.example,{of},2026-11-29,,,", $"Kern,base,{other},b.example,{ofOther},2026-11-29,,,"];
        foreach (var order in (string[][])[rows, [.. rows.Reverse()]])
        {
            var office = Office("Kern", order);
            Assert.Equal((taken, ask), (office.Base, office.Asks(RecorderField.Base)));
            Assert.Equal(ask && office.Fact(RecorderField.Base)!.DateOnPage!.StartsWith("undated", StringComparison.Ordinal),
                office.Fact(RecorderField.Base)!.PageDay is null);
        }
    }

    [Fact]
    public void What_was_not_read_is_asked() => Assert.True(Office("Kern", Good).Asks(RecorderField.Payee));

    // Prices of 2027 are added as a row; until that day the one before it holds, whichever stands first.
    [Theory]
    [InlineData("2026-12-31", 13)]
    [InlineData("2027-01-01", 15)]
    [InlineData("2027-06-30", 15)]
    [InlineData("2027-07-01", null)]
    public void A_fact_holds_from_its_day_to_its_day(string on, int? price)
    {
        string[] rows = ["Kern,base,13,a.example,2026-01-01,2026-11-29,,2026-12-31,",
            "Kern,base,15,a.example,2026-11-01,2026-11-29,2027-01-01,2027-06-30,"];
        foreach (var order in (string[][])[rows, [.. rows.Reverse()]])
            Assert.Equal(price, RecorderTable.Of(RecorderRows.Read($"{Head}\n{string.Join('\n', order)}"), "Kern", Jobs.Day(on)).Base);
    }

    // As the offices' own pages have it; where two pages conflict the newer.
    [Theory]
    [InlineData("Ventura", 14.0, 3.0, 10.0)]
    [InlineData("Placer", 14.0, 3.0, null)]
    [InlineData("Sierra", 14.0, 3.0, null)]
    [InlineData("San Mateo", null, null, 6.0)]
    [InlineData("Riverside", null, null, 10.0)]
    [InlineData("Orange", null, null, null)]
    [InlineData("Colusa", 16.0, 3.0, null)]
    [InlineData("Monterey", 12.0, 3.0, 10.0)]
    [InlineData("El Dorado", 15.0, 3.0, 2.0)]
    [InlineData("San Francisco", 14.0, 3.0, 0.0)]
    public void First_page_further_page_and_fraud_fee_are_those_that_were_read(string county, double? first, double? further, double? fraud)
    {
        var office = Shipped(county);
        Assert.Equal(((decimal?)first, (decimal?)further, (decimal?)fraud),
            (office.Base, office.ExtraPage, office.Dollars(RecorderField.Fraud)));
    }

    [Theory]
    [InlineData("Contra Costa", 7.0, 7.0, 1.0, 1.0)]
    [InlineData("San Francisco", 6.0, 2.0, 1.0, 1.0)]
    [InlineData("Los Angeles", 9.0, 2.0, 4.0, 1.0)]
    [InlineData("San Diego", 13.0, 6.0, 7.0, null)]
    [InlineData("Alameda", 7.0, 7.0, null, null)]
    [InlineData("Placer", 6.0, 6.0, 1.0, 1.0)]
    [InlineData("Merced", 3.0, null, 1.0, 1.0)]
    [InlineData("Shasta", 3.0, 3.0, 1.0, null)]
    [InlineData("Santa Barbara", 16.0, 7.0, 1.0, null)]
    public void So_are_the_prices_of_notices_names_and_references(string county, double first, double? next, double? names,
        double? reference)
    {
        var office = Shipped(county);
        Assert.Equal(((decimal?)first, (decimal?)next, (decimal?)names, (decimal?)reference),
            (office.Dollars(RecorderField.NoticeFirst), office.Dollars(RecorderField.NoticeNext), office.Dollars(RecorderField.NamesPerTen),
            office.Dollars(RecorderField.FurtherReference)));
    }

    // As the offices' own pages have it; San Diego's ordinance of 2023 is the newest of the dated ones (Civ. Code § 8214;
    // Gov. Code § 27361.9).
    [Theory]
    [InlineData("San Diego", 23.0, false)]
    [InlineData("Marin", 50.0, false)]
    [InlineData("Santa Cruz", 35.0, true)]
    [InlineData("Placer", 54.0, true)]
    [InlineData("Kern", null, true)]
    public void So_is_the_price_of_filing_a_preliminary_notice(string county, double? price, bool ask) =>
        Assert.Equal(((decimal?)price, ask),
            (Shipped(county).Dollars(RecorderField.FiledNotice), Shipped(county).Asks(RecorderField.FiledNotice)));

    // As the offices' own pages have it: Los Angeles records in Norwalk.
    [Theory]
    [InlineData("Los Angeles", RecorderField.Counter, "12400 East Imperial Highway, Norwalk, CA 90650")]
    [InlineData("Kern", RecorderField.RecordUntil, "2 p.m.")]
    [InlineData("San Francisco", RecorderField.Payee, "SF Assessor-Recorder")]
    [InlineData("San Diego", RecorderField.Payee, "San Diego Recorder/County Clerk")]
    [InlineData("Yuba", RecorderField.Phone, "(530) 749-7850")]
    [InlineData("Yolo", RecorderField.Payee, null)]
    public void So_are_street_hour_payee_and_telephone(string county, RecorderField field, string? words) =>
        Assert.Equal(words, Shipped(county).Words(field));

    /// <summary>What stands in for a price that was not read, or may have risen, is no lower than what any county prints.</summary>
    [Fact]
    public void No_county_prints_more_than_what_is_put_at_hand()
    {
        var most = new Dictionary<RecorderField, decimal>
        {
            [RecorderField.Base] = HighestPrinted.Base,
            [RecorderField.ExtraPage] = ByLaw(Number.FurtherPage),
            [RecorderField.Fraud] = ByLaw(Number.FraudFee),
            [RecorderField.FraudOnOthers] = ByLaw(Number.FraudFee),
            [RecorderField.Covenant] = ByLaw(Number.CovenantFee),
            [RecorderField.NamesPerTen] = HighestPrinted.Names,
            [RecorderField.FurtherReference] = HighestPrinted.Reference,
            [RecorderField.NoticeFirst] = HighestPrinted.Notice,
            [RecorderField.NoticeNext] = HighestPrinted.Notice,
            [RecorderField.ConformedCopy] = HighestPrinted.Copy,
            [RecorderField.ConformedPerPage] = HighestPrinted.Copy,
        };
        var prices = RecorderTable.Facts.Where(f => f.County != RecorderFact.Statewide
            && f.Dollars is not null && f.Field != RecorderField.FiledNotice).ToList();
        static decimal ByLaw(Number number) => NumberTable.Shipped.Of(number)[^1].Value;
        Assert.All(prices, f => Assert.InRange(f.Dollars!.Value, 0, most[f.Field]));
        Assert.All(most.Where(m => m.Key != RecorderField.FraudOnOthers), m => Assert.Equal(m.Value, prices.Where(f => f.Field == m.Key
            || (m.Key == RecorderField.ConformedCopy && f.Field == RecorderField.ConformedPerPage)).Max(f => f.Dollars)!.Value));
    }
}
