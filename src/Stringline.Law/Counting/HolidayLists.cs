namespace Stringline.Law.Counting;

/// <summary>The lists on which a day can be closed. A day can stand on several; <see cref="None"/> is an open day.</summary>
[Flags]
public enum HolidayLists
{
    /// <summary>On no list.</summary>
    None = 0,

    /// <summary>
    /// The State's list: every Sunday and the full-day holidays of Gov. Code §§ 6700 and 6701. Civ. Code §§ 7 and 10
    /// and Gov. Code § 6800 count by it. Saturday is not on it.
    /// </summary>
    State = 1,

    /// <summary>
    /// The courts' list: every Saturday and Sunday, the judicial holidays of Code Civ. Proc. § 135, and the days on
    /// which rule 1.11 of the Cal. Rules of Court observes them. Code Civ. Proc. § 12a counts by it.
    /// </summary>
    Courts = 2,

    /// <summary>The county's own closing days (Code Civ. Proc. § 12b).</summary>
    County = 4,
}
