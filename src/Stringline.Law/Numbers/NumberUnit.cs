namespace Stringline.Law.Numbers;

/// <summary>What a number of the law counts.</summary>
public enum NumberUnit
{
    /// <summary>Calendar days.</summary>
    Days,

    /// <summary>Days on which business is done.</summary>
    BusinessDays,

    /// <summary>Calendar months.</summary>
    Months,

    /// <summary>Years.</summary>
    Years,

    /// <summary>Hundredths of a sum.</summary>
    Percent,

    /// <summary>Dollars.</summary>
    Dollars,

    /// <summary>The day of a month, such as the 20th.</summary>
    DayOfMonth,

    /// <summary>Things of a kind that the section names, such as attempts or dwelling units.</summary>
    Times,

    /// <summary>Inches on paper.</summary>
    Inches,
}
