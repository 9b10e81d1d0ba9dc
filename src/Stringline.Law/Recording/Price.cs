namespace Stringline.Law.Recording;

/// <summary>A price of an office as it is reckoned with.</summary>
/// <param name="Taken">What is reckoned.</param>
/// <param name="Most">What it may be: the price itself where a young page has it.</param>
/// <param name="Ask">Whether the office must be asked.</param>
/// <param name="Read">Whether it was read at all.</param>
/// <param name="UnderTheBill">Of the price, what only a bill adds whose fate was not read; 0 where there is none.</param>
internal readonly record struct Price(decimal Taken, decimal Most, bool Ask, bool Read, decimal UnderTheBill = 0)
{
    /// <summary>The office's price; where none was read the stand-in.</summary>
    /// <param name="office">The office.</param>
    /// <param name="field">Which price.</param>
    /// <param name="standIn">What is reckoned where it was not read.</param>
    /// <param name="highest">The highest that any county was read to print.</param>
    public static Price Of(RecorderOffice office, RecorderField field, decimal standIn, decimal highest)
    {
        var read = office.Dollars(field);
        var ask = office.Asks(field);
        var taken = read ?? standIn;
        return new Price(taken, ask ? Math.Max(taken, highest) : taken, ask, read is not null);
    }

    /// <summary>
    /// The same of a price that the statute caps: where on that day a bill may have raised the cap after the price was printed, so
    /// much is added, since nobody knows which holds and a short check turns a paper back.
    /// </summary>
    public static Price Capped(RecorderOffice office, RecorderField field, decimal standIn, decimal highest)
    {
        var price = Of(office, field, standIn, highest);
        var readings = office.StatuteOf(field);
        if (readings is not [var now, .., { From: { } begins } dearer] || Since(office.Fact(field)) >= begins)
            return price;
        var more = (dearer.Dollars - now.Dollars) ?? 0;
        return price with { Taken = price.Taken + more, Most = price.Most + more, Ask = true, UnderTheBill = more };
    }

    private static LocalDate? Since(RecorderFact? fact) => fact?.From ?? fact?.PageDay;
}
