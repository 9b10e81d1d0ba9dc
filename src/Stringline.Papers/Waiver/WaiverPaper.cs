using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Waiver;

/// <summary>
/// The four statutory waivers and releases, filled from the job file and what is said of the payment (Civ. Code §§ 8132-8138).
/// </summary>
internal static class WaiverPaper
{
    /// <summary>The four papers.</summary>
    public static IEnumerable<Shelved> Papers =>
        Enum.GetValues<WaiverForm>().Select(form => Shelved.Of(PaperOf(form), matter => Write(form, matter)));

    private static Paper PaperOf(WaiverForm form) =>
        new($"waiver-{WaiverToBe.NumberOf(form)}", WaiverLeaf.TitleOf(form), $"Civ. Code § {WaiverToBe.NumberOf(form)}", PaperUse.Sent,
            [WorkKind.Private, WorkKind.Public], Words(form)) { Takes = Takes(form) };

    private static IReadOnlyList<Told> Takes(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalProgress => [Told.Through, Told.Amount, Told.Maker, Told.Payee],
        WaiverForm.UnconditionalProgress => [Told.Through, Told.Amount, Told.PaymentCleared],
        WaiverForm.ConditionalFinal => [Told.Amount, Told.Maker, Told.Payee, Told.Disputed],
        WaiverForm.UnconditionalFinal => [Told.Disputed, Told.PaymentCleared],
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "Not a form."),
    };

    private static string Words(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalProgress => "The claimant, when a progress payment is asked for or a check is handed over.",
        WaiverForm.UnconditionalProgress => "The claimant, once a progress payment is in the bank.",
        WaiverForm.ConditionalFinal => "The claimant, when the final payment is asked for or a check is handed over.",
        WaiverForm.UnconditionalFinal => "The claimant, once paid in full.",
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "Not a form."),
    };

    /// <summary>The waiver that the file and the options describe.</summary>
    public static WaiverToBe ToBe(WaiverForm form, Matter matter)
    {
        var facts = matter.Facts;
        var options = matter.Options;
        IReadOnlyList<Party> owners = facts.Owners.Count > 0 ? facts.Owners : matter.In(PartyCapacity.PublicEntity);
        var cleared = ClearedInFile(form, matter);
        return new WaiverToBe
        {
            Form = form,
            Claimant = facts.Claimant,
            Customer = facts.HiredBy?.Name,
            JobLocation = facts.Street ?? facts.Legal,
            Owner = owners.Count == 0 ? null : string.Join("; ", owners.Select(o => OneLine(Clean(o.Name) ?? ""))),
            Through = options.Through ?? cleared?.Through,
            Amount = options.Amount ?? cleared?.Amount,
            Maker = options.Maker,
            Payee = options.Payee ?? facts.Claimant,
            Earlier = form == WaiverForm.ConditionalProgress ? Unpaid(matter) : [],
            Disputed = options.Disputed,
            SignerTitle = facts.SignerTitle,
            PaymentCleared = options.PaymentCleared ?? cleared?.PaymentCleared,
        };
    }

    /// <summary>The waiver, with every reason against it put to the matter.</summary>
    public static WaiverToBe Ordered(WaiverForm form, Matter matter)
    {
        matter.OnlyOn(PaperOf(form));
        var waiver = ToBe(form, matter);
        foreach (var refusal in waiver.Refusals())
            matter.Refuse(refusal.Id, refusal.Where, refusal.There, refusal.Right, refusal.Section);
        if (waiver.PaymentCleared > matter.AsOf)
        {
            matter.Refuse("payment-not-cleared", "--payment-cleared", $"{Day(waiver.PaymentCleared.Value)} is after {Day(matter.AsOf)}.",
                "A payment that has not cleared yet is asked for with the conditional form.", $"Civ. Code § {waiver.Number}");
        }

        return waiver;
    }

    private static Bundle Write(WaiverForm form, Matter matter)
    {
        var waiver = Ordered(form, matter);
        return new Bundle([WaiverLeaf.Of(waiver)], new Guide
        {
            First = [.. Effect(waiver), .. Reckoned(waiver, matter), .. ChangeOrders(waiver, matter)],
            To = matter.Facts.HiredBy is { } customer ? [customer] : [],
            Steps =
            [
                "Compare every filled-in line with the check and with your own books before signing. The words of the form are the "
                    + "statute’s: strike out or add nothing.",
                .. waiver.Earlier.Count == 0 && form == WaiverForm.ConditionalProgress
                ? ["The two lines of exception (3) are empty because the file shows no earlier conditional waiver that is unpaid."]
                : Array.Empty<string>(),
                .. !waiver.IsProgress && waiver.Disputed is null
                    ? ["The line for disputed extras is empty: nothing is kept. If an extra is in dispute, make the paper again with "
                    + "--disputed and its amount."] : Array.Empty<string>(),
                "Sign in ink, write the date of signature, and keep a copy.",
            ],
            After = [$"Enter it in the job file as \"waived\" with form {waiver.Number}, its "
                + $"day{(waiver.IsProgress ? ", through date" : "")} and "
                + $"amount{(waiver.IsConditional ? "; once the bank has paid the check, add paymentCleared" : "")}."],
        });
    }

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
            + $"rights {reach} (§ {number}). Nobody can undo that. Sign only if the money is in your account.";
        yield return waiver.IsProgress
            ? $"It keeps: retention, unpaid "
            + $"extras{(waiver.Form == WaiverForm.ConditionalProgress ? ", the earlier unpaid payments listed under (3)" : "")}, and "
            + "contract rights."
            : "It keeps nothing but the disputed extras in the amount written on it: no retention, and no line for contract rights.";
        if (waiver.PaymentCleared is { } cleared && !waiver.IsConditional)
            yield return $"It was made because somebody confirmed that the payment cleared the bank on {Day(cleared)}.";
    }

    /// <summary>What the law makes of the demand once this paper binds, beside what it is now.</summary>
    private static IEnumerable<string> Reckoned(WaiverToBe waiver, Matter matter)
    {
        var signed = Signed(waiver, matter.Job, matter.AsOf);
        var outlook = WaiverOutlook.Of(matter.Assessment, signed);
        var beyond = outlook is { BeyondPayment: { } more, Payment: { } payment }
            ? $" That is {Dollars(more)} more than the payment of {Dollars(payment)}." : "";
        yield return $"By the job file {Dollars(outlook.Now)} may be claimed now, before this payment is entered. Once this paper binds, "
            + $"{Dollars(outlook.Then)} is left: {Dollars(outlook.Released)} is released.{beyond}";
    }

    /// <summary>The paper as signed on the day, and bound.</summary>
    public static Waived Signed(WaiverToBe waiver, JobFile job, LocalDate on) => new()
    {
        Index = job.Entries.Count,
        On = DayFact.On(on),
        Form = waiver.Form,
        Through = waiver.Through,
        Amount = waiver.Amount,
        Excepted = waiver.Disputed,
        PaymentCleared = on,
        InStatutoryForm = true,
    };

    private static IEnumerable<string> ChangeOrders(WaiverToBe waiver, Matter matter)
    {
        var written = matter.Known.All<Change>().Where(c => c is { Agreed: true, Amount: > 0 }).ToList();
        if (written.Count == 0)
            yield break;
        var listed = string.Join("; ", written.Select(c =>
            $"{Dollars(c.Amount)}{(Clean(c.Text) is { } text ? $", {OneLine(text)}" : "")}"));
        yield return "Written change orders signed before this paper are released with it unless they are listed as an exception "
            + $"(§ {waiver.Number}): {listed}. “Extras” in the form does not clearly save them.";
    }

    /// <summary>The conditional waiver of the same kind whose payment has cleared, latest first.</summary>
    private static Waived? ClearedInFile(WaiverForm form, Matter matter)
    {
        WaiverForm? conditional = form switch
        {
            WaiverForm.UnconditionalProgress => WaiverForm.ConditionalProgress,
            WaiverForm.UnconditionalFinal => WaiverForm.ConditionalFinal,
            WaiverForm.ConditionalProgress or WaiverForm.ConditionalFinal => null,
            _ => throw new ArgumentOutOfRangeException(nameof(form), form, "Not a form."),
        };
        return matter.Known.All<Waived>().LastOrDefault(w => w.Form == conditional && w.PaymentCleared <= matter.AsOf
            && (matter.Options.Through is not { } through || w.Through == through)
            && (matter.Options.Amount is not { } amount || w.Amount == amount));
    }

    /// <summary>
    /// Conditional progress waivers of the file whose payment has not come (Civ. Code § 8132, exception (3)). One whose sum the file shows
    /// as received since it was signed is left out: the signer would state as unpaid what was paid (§ 8124(b)).
    /// </summary>
    private static List<EarlierWaiver> Unpaid(Matter matter)
    {
        var received = matter.Known.All<Paid>().ToList();
        var unpaid = new List<EarlierWaiver>();
        foreach (var waiver in matter.Known.All<Waived>())
        {
            if (waiver is not { Form: WaiverForm.ConditionalProgress, Amount: > 0, InStatutoryForm: not false, On: DayFact.Exact on }
                || waiver.PaymentCleared <= matter.AsOf)
                continue;
            // Each payment answers one waiver.
            if (received.FindIndex(p => p.Amount >= waiver.Amount && !(p.On.Latest < on.Day)) is >= 0 and var paid)
                received.RemoveAt(paid);
            else
                unpaid.Add(new EarlierWaiver(on.Day, waiver.Amount.Value));
        }

        return unpaid;
    }
}
