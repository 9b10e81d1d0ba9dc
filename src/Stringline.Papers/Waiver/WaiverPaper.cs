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
    private const string OfCheck = "Dollars and cents of the check";

    private static Paper ConditionalProgress { get; } =
        new("waiver-8132", WaiverBuilder.TitleOf(WaiverForm.ConditionalProgress), matter => Write(
        WaiverForm.ConditionalProgress, matter))
    {
        Sections = "Civ. Code § 8132",
        Use = PaperUse.Sent,
        Works = [WorkKind.Private, WorkKind.Public],
        Words = $"The claimant, when a progress payment is asked for or a check is handed over.",
        Asks =
        [
            new(PaperInput.Through), new(PaperInput.Amount, OfCheck), new(PaperInput.Maker), new(PaperInput.Payee),
                new(PaperInput.Releases), new(PaperInput.ThroughAgain),
        ],
        Waiver = WaiverForm.ConditionalProgress,
        Effect = new(
            "Signed, it gives up lien, stop payment notice and payment bond rights through the day written on it, but only once the check "
            + "that it names is paid by the bank. Until then nothing is given up.",
            "Civ. Code § 8132"),
        Fits = now => now.Assessment.Amount.Demand > 0 && !IsComplete(now)
            ? "Money is owed and the work goes on: for a progress payment that is promised." : null,
        Entries = [HandedOver(WaiverForm.ConditionalProgress)],
    };

    private static Paper UnconditionalProgress { get; } =
        new("waiver-8134", WaiverBuilder.TitleOf(WaiverForm.UnconditionalProgress), matter =>
        Write(WaiverForm.UnconditionalProgress, matter))
    {
        Sections = "Civ. Code § 8134",
        Use = PaperUse.Sent,
        Works = [WorkKind.Private, WorkKind.Public],
        Words = $"The claimant, once a progress payment is in the bank.",
        Asks =
        [
            new(PaperInput.Through), new(PaperInput.Amount, "Dollars and cents of the payment received"), new(PaperInput.PaymentCleared),
                new(PaperInput.Releases),
            new(PaperInput.ThroughAgain),
        ],
        Waiver = WaiverForm.UnconditionalProgress,
        GivesUpAtOnce = new(
            "The claimant loses its lien, stop payment notice and payment bond rights for everything furnished through the day written on "
            + "it, whether this payment pays for all of it or not. It keeps retention, unpaid extras and contract rights.",
            ConditionalProgress),
        Entries = [HandedOver(WaiverForm.UnconditionalProgress)],
    };

    private static Paper ConditionalFinal { get; } = new("waiver-8136", WaiverBuilder.TitleOf(WaiverForm.ConditionalFinal), matter => Write(
        WaiverForm.ConditionalFinal, matter))
    {
        Sections = "Civ. Code § 8136",
        Use = PaperUse.Sent,
        Works = [WorkKind.Private, WorkKind.Public],
        Words = $"The claimant, when the final payment is asked for or a check is handed over.",
        Asks = [new(PaperInput.Amount, OfCheck), new(PaperInput.Maker), new(PaperInput.Payee), new(PaperInput.Disputed),
            new(PaperInput.Releases)],
        Waiver = WaiverForm.ConditionalFinal,
        Effect = new(
            "Signed, it gives up lien, stop payment notice and payment bond rights for the whole job, but only once the check that it "
                + "names "
            + "is paid by the bank. Until then nothing is given up.",
            "Civ. Code § 8136"),
        Fits = now => now.Assessment.Amount.Demand > 0 && IsComplete(now)
            ? "Money is owed and the work is complete: for the final payment that is promised." : null,
        Entries = [HandedOver(WaiverForm.ConditionalFinal)],
    };

    private static Paper UnconditionalFinal { get; } =
        new("waiver-8138", WaiverBuilder.TitleOf(WaiverForm.UnconditionalFinal), matter => Write(
        WaiverForm.UnconditionalFinal, matter))
    {
        Sections = "Civ. Code § 8138",
        Use = PaperUse.Sent,
        Works = [WorkKind.Private, WorkKind.Public],
        Words = $"The claimant, once paid in full.",
        Asks = [new(PaperInput.Disputed), new(PaperInput.PaymentCleared), new(PaperInput.Releases)],
        Waiver = WaiverForm.UnconditionalFinal,
        GivesUpAtOnce = new(
            "The claimant loses its lien, stop payment notice and payment bond rights for the whole job. It keeps nothing but the disputed "
            + "extras in the amount written on it.",
            ConditionalFinal),
        Entries = [HandedOver(WaiverForm.UnconditionalFinal)],
    };

    /// <summary>The four papers.</summary>
    public static IReadOnlyList<Paper> Papers { get; } = [ConditionalProgress, UnconditionalProgress, ConditionalFinal, UnconditionalFinal];

    /// <summary>The paper of a form.</summary>
    public static Paper Of(WaiverForm form) => Papers.First(paper => paper.Waiver == form);

    private static bool IsComplete(Occasion now) => now.Assessment.Find("completion.day") is { Readings.Count: > 0 };

    private static EntryAfter HandedOver(WaiverForm form) => new("waived", "It was signed and handed over")
    {
        Fill = now =>
        [
            new Filled.Form(form),
            .. now.Options.Through is { } through ? [new Filled.Day("through", through)] : (Filled[])[],
            .. now.Options.Amount is { } check ? [new Filled.Sum("amount", check)] : (Filled[])[],
            .. now.Options.Disputed is { } excepted ? [new Filled.Sum("excepted", excepted)] : (Filled[])[],
            .. now.Options.PaymentCleared is { } cleared ? [new Filled.Day("paymentCleared", cleared)] : (Filled[])[],
        ],
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
        matter.OnlyOn(Of(form));
        var waiver = ToBe(form, matter);
        foreach (var refusal in waiver.Refusals())
            matter.Refuse(refusal);
        if (waiver.PaymentCleared > matter.AsOf)
        {
            matter.Refuse("payment-not-cleared", Place.Of(PaperInput.PaymentCleared),
                $"{Day(waiver.PaymentCleared.Value)} is after {Day(matter.AsOf)}.",
                $"A payment that has not cleared yet is asked for with the conditional form.", $"Civ. Code § {waiver.Number}");
        }

        AskAgain(waiver, matter);
        return waiver;
    }

    /// <summary>What is given away by mistake cannot be had back: it is made only once its maker has typed what it gives away.</summary>
    private static void AskAgain(WaiverToBe waiver, Matter matter)
    {
        var section = $"Civ. Code § {waiver.Number}";
        if (waiver is { IsProgress: true, Through: { } through } && through > matter.AsOf && matter.Options.ThroughAgain != through)
        {
            matter.Refuse("through-ahead", Place.Of(PaperInput.ThroughAgain),
                $"Made on {DayOfWeek(matter.AsOf)}, it releases all work through {DayOfWeek(through)}, which is still to come."
                + $"{(matter.Options.ThroughAgain is { } other ? $" The day given the second time is {DayOfWeek(other)}." : "")}",
                $"Give a through date no later than the last day that this payment pays for. If the day to come is meant, give it a second "
                + $"time with {new InputName(PaperInput.ThroughAgain)}.", section);
        }

        // Until these are told nobody can say what it releases, or what for.
        if ((waiver.IsProgress && waiver.Through is null) || (waiver.Form != WaiverForm.UnconditionalFinal && waiver.Amount is not > 0))
            return;
        var outlook = matter.Outlook = WaiverOutlook.Of(matter.Assessment, Signed(waiver, matter.Job, matter.AsOf));
        var unseen = !waiver.IsConditional && !outlook.InJournal;
        if (matter.Options.Releases == outlook.Released || (matter.Options.Releases is null && !unseen && !outlook.MayGoBeyond))
            return;
        matter.Refuse(WaiverOrder.NotTyped, Place.Of(PaperInput.Releases),
            $"{WaiverOutlookText.Of(outlook)}"
            + $"{(unseen ? $" No cleared payment{(outlook.Payment is null ? "" : " of that sum")} is in the journal." : "")}"
            + $"{(matter.Options.Releases is { } typed ? $" Typed was {Dollars(typed)}: that is not what is released." : "")}",
            $"If that is meant, type what is released, to the cent: {new InputTold(PaperInput.Releases, outlook.Released)}. "
            + $"If not, {Otherwise(waiver)}.",
            section);
    }

    private static string Otherwise(WaiverToBe waiver) => waiver.Form switch
    {
        WaiverForm.ConditionalProgress => "give as its through date the last day of the work that this payment pays for",
        WaiverForm.UnconditionalProgress => "give as its through date the last day of the work that this payment pays for, enter the "
            + "payment in the journal, or use the conditional form (8132)",
        WaiverForm.ConditionalFinal => "name the disputed extras that it is to keep, or use the form for a progress payment (8132)",
        WaiverForm.UnconditionalFinal => "enter the payment in the journal, name the disputed extras that it is to keep, or use the "
            + "conditional form (8136)",
        _ => throw new ArgumentOutOfRangeException(nameof(waiver), waiver.Form, "Not a form."),
    };

    private static Bundle Write(WaiverForm form, Matter matter)
    {
        var waiver = Ordered(form, matter);
        var outlook = matter.Outlook ?? WaiverOutlook.Of(matter.Assessment, Signed(waiver, matter.Job, matter.AsOf));
        return new Bundle([WaiverBuilder.Of(waiver)], WaiverGuide.Of(waiver, matter, outlook));
    }

    /// <summary>The paper as signed on the day, and bound.</summary>
    public static Waived Signed(WaiverToBe waiver, JobFile job, LocalDate on) => new()
    {
        Index = job.Entries.Count,
        On = DayFact.On(on),
        Form = waiver.Form,
        Through = waiver.IsProgress ? waiver.Through : null,
        Amount = waiver.Amount,
        // A progress form has no line for disputed extras: what is told of them keeps nothing.
        Excepted = waiver.IsProgress ? null : waiver.Disputed,
        UnpaidWaivers = waiver.Form == WaiverForm.ConditionalProgress ? [.. waiver.Earlier.Select(e => e.On)] : null,
        PaymentCleared = on,
        InStatutoryForm = true,
    };

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
