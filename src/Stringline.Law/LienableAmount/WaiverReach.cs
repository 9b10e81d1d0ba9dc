using Stringline.Law.Facts;

namespace Stringline.Law.LienableAmount;

/// <summary>How far the words of a waiver and release reach, in unpaid dollars and cents: as a fact, and at the most.</summary>
internal readonly record struct WaiverReach(decimal Surely, decimal AcrossALine, decimal AfterSigning)
{
    /// <summary>At the most.</summary>
    public decimal AtMost => Surely + AcrossALine + AfterSigning;

    /// <summary>
    /// The forms speak of what was provided: as a fact they reach work up to their through date, a final form all work, and none after
    /// their signing (Civ. Code § 8122 voids what is given up in advance). Work over days on both sides of that day is split by days, what
    /// was paid for it going to the earliest; a day in doubt counts for the claimant, who may always claim less.
    /// </summary>
    [Rule("Civ. Code § 8132")]
    [Rule("Civ. Code § 8134")]
    [Rule("Civ. Code § 8136")]
    [Rule("Civ. Code § 8138")]
    [Rule("Civ. Code § 8122", Sure = Sure.OurReading)]
    public static WaiverReach Of(Waived waiver, List<Obligation> items)
    {
        var through = IsFinal(waiver.Form) ? null : waiver.Through;
        LocalDate? limit = waiver.On.Earliest is { } signed ? through is { } date && date < signed ? date : signed : null;
        decimal surely = 0, across = 0, after = 0;
        foreach (var item in items)
        {
            if (!item.Secured || item.From > through)
                continue;
            if (item.From > limit)
            {
                after += item.Unpaid;
                continue;
            }

            var part = limit is { } last ? Through(item, last) : 0m;
            surely += part;
            across += item.Unpaid - part;
        }

        return new WaiverReach(surely, across, after);
    }

    /// <summary>Whether it is one of the two final forms.</summary>
    public static bool IsFinal(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalFinal or WaiverForm.UnconditionalFinal => true,
        WaiverForm.ConditionalProgress or WaiverForm.UnconditionalProgress => false,
        _ => throw new InvalidOperationException($"No such form: {form}."),
    };

    // What had ended by that day was provided by then, whenever it was begun.
    private static decimal Through(Obligation item, LocalDate last)
    {
        // On a day that nobody knows it may have been furnished later, even where the day of asking is that of the signing.
        if (item.Entry is Furnished { Until.Latest: null })
            return 0m;
        if (item.Due <= last)
            return item.Unpaid;
        if (item.Entry!.On.Latest is not { } first)
            return 0m;
        var days = NodaTime.Period.DaysBetween(first, last) + 1;
        var all = NodaTime.Period.DaysBetween(first, item.Due) + 1;
        var value = decimal.Floor(item.Value * days * 100m / all) / 100m;
        return Math.Max(0m, value - (item.Value - item.Unpaid));
    }
}
