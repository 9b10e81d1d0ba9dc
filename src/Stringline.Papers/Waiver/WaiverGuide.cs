using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Waiver;

/// <summary>What the sheet of a waiver says: what signing does, what to compare, to whom it goes, and what to enter.</summary>
internal static class WaiverGuide
{
    /// <summary>The sheet's words.</summary>
    public static Guide Of(WaiverToBe waiver, Matter matter, WaiverOutlook outlook) => new()
    {
        Effect = [.. Effect(waiver), .. Ahead(waiver, matter, outlook), WaiverOutlookText.Of(outlook)],
        First = [.. ChangeOrders(waiver, matter), .. LeftEmpty(waiver)],
        To = matter.Facts.HiredBy is { } customer ? [customer] : [],
        Steps =
        [
            $"Compare every filled-in line with {Held(waiver.Form)} before signing. The words of the form are the "
                + "statute’s: do not strike out or add anything.",
            "Sign in ink, write the date of signature, and keep a copy.",
            $"Give it to {(matter.Facts.HiredBy is { } hirer ? Addressees.Names([hirer]) : "your customer")} "
                + (waiver.IsConditional ? "with the request for payment, or in exchange for the check that it describes."
                : "only once the money is in your account."),
        ],
        After = [$"{EntryName.Enter("waived")}the form of section {waiver.Number}, "
            + $"{Entered(waiver.Form)}{(waiver.Earlier.Count > 0 ? ", with the earlier waivers that it lists as not paid" : "")}"
            + $"{(waiver is { IsProgress: false, Disputed: not null } ? ", with the disputed extras that it keeps" : "")}"
            + $"{(waiver.IsConditional ? "; once the check has cleared, add that day to the same entry" : "")}."],
    };

    // What is in doubt is part of work that lies on both sides of the through date, never of work that begins after it.
    private static IEnumerable<string> Ahead(WaiverToBe waiver, Matter matter, WaiverOutlook outlook) => outlook.CountsThrough is null ? []
        : WorkAhead.Counted(matter, outlook.InDoubt > 0 && WorkAhead.In(matter).Any(f => !(f.On.Earliest > waiver.Through))
            ? "What is unpaid by the next line, and what is in doubt," : "What is unpaid by the next line");

    private static IEnumerable<string> LeftEmpty(WaiverToBe waiver)
    {
        if (waiver is { Form: WaiverForm.ConditionalProgress, Earlier.Count: 0 })
            yield return "The two lines of exception (3) are empty because the file shows no earlier conditional waiver that is unpaid.";
        if (waiver is { IsProgress: false, Disputed: null })
            yield return "If an extra is in dispute, make the paper again and say its amount: the line for disputed extras is empty now.";
    }

    private static string Entered(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalProgress or WaiverForm.UnconditionalProgress => "its day, through date and amount",
        WaiverForm.ConditionalFinal => "its day and amount",
        WaiverForm.UnconditionalFinal => "and its day",
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "Not a form."),
    };

    // An unconditional form describes no check, and that of final payment no sum either.
    private static string Held(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalProgress or WaiverForm.ConditionalFinal => "the check and with your own books",
        WaiverForm.UnconditionalProgress => "the payment received (its day and its amount) and with your own books",
        WaiverForm.UnconditionalFinal => "your own books",
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "Not a form."),
    };

    /// <summary>What the form does to rights, in words.</summary>
    private static IEnumerable<string> Effect(WaiverToBe waiver)
    {
        var number = waiver.Number;
        var reach = waiver.IsProgress
            ? $"for everything furnished through {(waiver.Through is { } through ? Day(through) : "the through date")}, whether this "
            + "payment pays for all of it or not"
            : "for the whole job";
        yield return waiver.IsConditional
            ? $"Before you sign: once the bank has paid the check described, this paper gives up lien, stop payment notice and payment "
            + $"bond rights {reach} (§ {number}). Until then it gives up nothing (§ 8124(b))."
            : $"Before you sign: from the moment it is signed, paid or not, this paper gives up lien, stop payment notice and payment bond "
            + $"rights {reach} (§ {number}). Nobody can undo that. Do not sign it unless the money is in your account.";
        yield return waiver.IsProgress
            ? $"It keeps: retention, unpaid "
            + $"extras{(waiver.Earlier.Count > 0 ? ", the earlier unpaid payments listed under (3)" : "")}, and "
            + "contract rights."
            : waiver.Disputed is { } kept
            ? $"It keeps nothing but the disputed extras written on it, {Dollars(kept)}: no retention, and no line for contract rights."
            : "It keeps nothing: no disputed extra is written on it, retention goes too, and it has no line for contract rights.";
        if (waiver.PaymentCleared is { } cleared && !waiver.IsConditional)
        {
            yield return $"It was made because somebody confirmed that the payment cleared the bank on {DayOfWeek(cleared)}."
                + (cleared.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday
                ? " Banks do not clear payments on that day of the week. Is that right?" : "");
        }
    }

    private static IEnumerable<string> ChangeOrders(WaiverToBe waiver, Matter matter)
    {
        var written = matter.Known.All<Change>().Where(c => c is { Agreed: true, Amount: > 0 }).ToList();
        if (written.Count == 0)
            yield break;
        var listed = string.Join("; ", written.Select(c =>
            $"{Dollars(c.Amount)}{(Clean(c.Text) is { } text ? $", {OneLine(text)}" : "")}"));
        yield return "Written change orders signed before this paper are released with it unless they are listed as an exception "
            + $"(§ {waiver.Number}): {listed}. It is not clear that the word “extras” in the form "
            + "protects them.";
    }
}
