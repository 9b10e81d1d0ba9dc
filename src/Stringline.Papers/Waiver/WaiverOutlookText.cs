using Stringline.Law;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Waiver;

/// <summary>What a waiver gives away, in the same words on its sheet, in its refusal and at every door.</summary>
public static class WaiverOutlookText
{
    /// <summary>The dollars it releases, the dollars paid, and the difference.</summary>
    public static string Of(WaiverOutlook outlook)
    {
        ArgumentNullException.ThrowIfNull(outlook);
        var entered = outlook switch
        {
            { Payment: null } => "",
            { TakenOff: true } => ", after this payment is entered",
            _ => ", before this payment is entered",
        };
        var now = outlook.CountsThrough is { } through
            ? $"By the job file, with the work entered through {Day(through)}, {Dollars(outlook.Now)} is unpaid{entered}; "
            + $"{Dollars(outlook.Ended)} of it is for work that has ended. Once this paper binds, {Dollars(outlook.Then)} of the "
            + $"{Dollars(outlook.Now)} is left"
            : $"By the job file {Dollars(outlook.Now)} may be claimed now{entered}. Once this paper binds, {Dollars(outlook.Then)} is left";
        return $"{now}: {Dollars(outlook.Released)} is released."
            + Against(outlook)
            + (outlook.InDoubt > 0 ? $" Whether {Dollars(outlook.InDoubt)} more is released with it is in doubt"
                + $"{(outlook.Doubts.Count == 0 ? "" : ": ")}{string.Join("; ", outlook.Doubts)}." : "");
    }

    private static string Against(WaiverOutlook outlook) => outlook switch
    {
        { Payment: null, Released: 0 } => "",
        { Payment: null } => " The form states that you were paid in full; the file does not show it: by the file all of that is "
            + "given up unpaid.",
        { Payment: { } payment, TakenOff: true, Released: > 0 } =>
            $" The payment of {Dollars(payment)} is taken off already: all of that is more than the payment.",
        { Payment: { } payment, TakenOff: true } => $" The payment of {Dollars(payment)} is taken off already.",
        { Payment: { } payment, Difference: > 0 and { } more } =>
            $" That is {Dollars(more)} more than the payment of {Dollars(payment)}.",
        { Payment: { } payment, Difference: < 0 and { } less } =>
            $" That is {Dollars(-less)} less than the payment of {Dollars(payment)}.",
        { Payment: { } payment } => $" The payment is {Dollars(payment)}: neither more nor less.",
    };
}
