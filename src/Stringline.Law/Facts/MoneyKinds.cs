namespace Stringline.Law.Facts;

/// <summary>Money received, charged, demanded and waived.</summary>
internal static class MoneyKinds
{
    private const string Group = "Money";

    public static EntryKind Paid { get; } = new(
        "paid", inFormat: 4, inJournal: 23, static (index, on) => new Paid { Index = index, On = on, Amount = default },
        [
            new Field.Money("amount", "Amount", e => ((Paid)e).Amount, (e, dollars) => (Paid)e with { Amount = dollars })
            { Required = true, Range = MoneyRange.AboveZero },
            new Field.Text("from", "From whom", e => ((Paid)e).From, (e, text) => (Paid)e with { From = text })
            {
                Meaning = "Who paid.",
                Repeats = true,
                Offers = true,
                Searched = Usual.Names,
                Said = "by {0}",
            },
            new Field.Text("toward", "Toward what", e => ((Paid)e).Toward, (e, text) => (Paid)e with { Toward = text })
            {
                Hint = "only if the one who paid, or you at once, directed it so",
                Meaning = "The ref to which it was directed; absent where nobody directed it.",
                Holds = TextHolds.Reference,
                Said = "toward {0}",
            },
        ])
    {
        Meaning = "Money received.",
        Title = "Payment received",
        Group = Group,
        Help = "Money that came in for this job.",
        Section = "Civ. Code § 1479",
        DayLabel = "The day it came in",
        Day = DayRule.Known,
        StartsToday = true,
        Words = "Paid",
        Weighed = ["from"],
        Ties = ByReferenceThenSum,
    };

    public static EntryKind Credited { get; } = new(
        "credited", inFormat: 5, inJournal: 9, static (index, on) => new Credited { Index = index, On = on, Amount = default },
        [
            new Field.Money("amount", "Amount", e => ((Credited)e).Amount, (e, dollars) => (Credited)e with { Amount = dollars })
            { Required = true, Range = MoneyRange.AboveZero },
            new Field.Text("text", "What it was for", e => ((Credited)e).Text, (e, text) => (Credited)e with { Text = text })
            { Holds = TextHolds.Lines, Said = "{0}" },
            new Field.Text("toward", "Toward what", e => ((Credited)e).Toward, (e, text) => (Credited)e with { Toward = text })
            {
                Hint = "as for goods returned",
                Meaning = "The ref of the work it belongs to, as for goods returned.",
                Holds = TextHolds.Reference,
                Said = "toward {0}",
            },
        ])
    {
        Meaning = "Credit, return or back charge allowed.",
        Title = "Credit, return or back charge allowed",
        Group = Group,
        Help = "What you took off the bill: a return, an allowance, a back charge you accept.",
        Section = "Civ. Code § 8416(a)(1)",
        Day = DayRule.Known,
        StartsToday = true,
        Words = "Credit allowed",
        Weighed = ["toward"],
        Ties = ByReferenceThenSum,
    };

    public static EntryKind Charged { get; } = new(
        "charged", inFormat: 6, inJournal: 4,
        static (index, on) => new Charged { Index = index, On = on, Amount = default, Of = default },
        [
            new Field.Money("amount", "Amount", e => ((Charged)e).Amount, (e, dollars) => (Charged)e with { Amount = dollars })
            { Required = true, Range = MoneyRange.AboveZero },
            new Field.Word("of", "For what", JobFileWords.Charge,
                e => (int)((Charged)e).Of, (e, word) => (Charged)e with { Of = (ChargeKind)word })
            {
                Required = true,
                Repeats = true,
                Choices =
                [
                    "interest", "finance or service charge", "delay, disruption, extended overhead", "lost profit", "attorney's fees",
                    "anything else that is not work",
                ],
                SaidWords = ["interest", "finance charge", "delay", "lost profit", "attorney's fees", "other than work"],
                Said = "{0}",
            },
            new Field.Text("ref", "Reference", e => ((Charged)e).Ref, (e, text) => (Charged)e with { Ref = text })
            {
                Hint = "such as your invoice's number",
                Meaning = "Reference by which payments may name it; unique in the file, but for an entry and the one it replaces.",
                Holds = TextHolds.OwnReference,
                Searched = Usual.References,
                Said = "{0}",
            },
        ])
    {
        Meaning = "Billed, but not for work.",
        Title = "Billed, but not for work",
        Group = Group,
        Help = "Interest, finance charges, delay, lost profit and the like: owed perhaps, but never part of a claim of lien.",
        Day = DayRule.Known,
        StartsToday = true,
        Words = "Charged",
        Weighed = ["of"],
        Ties = ByReferenceThenSum,
    };

    public static EntryKind Waived { get; } = new(
        "waived", inFormat: 12, inJournal: 30, static (index, on) => new Waived { Index = index, On = on, Form = default },
        [
            new Field.Word("form", "Which form", JobFileWords.Form,
                e => (int)((Waived)e).Form, (e, word) => (Waived)e with { Form = (WaiverForm)word })
            {
                Meaning = "The section that prescribes the form, as text or number.",
                Required = true,
                TakesNumbers = true,
                Choices =
                [
                    "conditional, progress payment (§ 8132)", "unconditional, progress payment (§ 8134)",
                    "conditional, final payment (§ 8136)", "unconditional, final payment (§ 8138)",
                ],
                SaidWords =
                [
                    "conditional, progress payment", "unconditional, progress payment", "conditional, final payment",
                    "unconditional, final payment",
                ],
                Said = "{0}",
            },
            new Field.Day("through", "Through date", e => ((Waived)e).Through, (e, day) => (Waived)e with { Through = day })
            {
                Hint = "of a progress form; a final form has none",
                Meaning = "Through date: required for 8132 and 8134, refused for 8136 and 8138.",
                Said = "through {0}",
            },
            new Field.Money("amount", "Amount of the check", e => ((Waived)e).Amount, (e, dollars) => (Waived)e with { Amount = dollars })
            { Hint = "the payment that the form describes", Meaning = "The payment the form describes." },
            new Field.Money("excepted", "Excepted", e => ((Waived)e).Excepted, (e, dollars) => (Waived)e with { Excepted = dollars })
            {
                Hint = "disputed claims or extras that the form lists",
                Meaning = "What the form lists as excepted.",
                IsSum = false,
                Said = "{0} excepted",
            },
            new Field.Day("paymentCleared", "The check cleared on",
                e => ((Waived)e).PaymentCleared, (e, day) => (Waived)e with { PaymentCleared = day })
            {
                Hint = "nothing while it has not",
                Meaning = "The day the described payment cleared; absent: not yet.",
                Said = "payment cleared {0}",
            },
            new Field.YesNo("inStatutoryForm", "Does the paper follow the statutory form?",
                e => ((Waived)e).InStatutoryForm, (e, truth) => (Waived)e with { InStatutoryForm = truth })
            { Meaning = "False where the paper does not follow the statutory form." },
            new Field.Days("unpaidWaivers", "Days of earlier waivers that it lists as not paid",
                e => ((Waived)e).UnpaidWaivers, (e, days) => (Waived)e with { UnpaidWaivers = days })
            {
                Hint = "of a conditional progress form; one on a line, or the word none where it lists none",
                Meaning = "Only of form 8132: the days of the earlier waivers that it lists as not paid; empty where it lists none.",
            },
            new Field.YesNo("settlement", "Does it settle a dispute or suit, and name the lien or claim?",
                e => ((Waived)e).Settlement, (e, truth) => (Waived)e with { Settlement = truth })
            { Hint = "Civ. Code § 8130", Meaning = "Whether it settles a dispute or an action and names the lien or claim." },
        ])
    {
        Meaning = "Waiver and release signed.",
        Title = "Waiver and release signed",
        Group = Group,
        Help = "You signed one of the four statutory forms.",
        Section = "Civ. Code §§ 8132-8138",
        DayLabel = "The day it was signed",
        StartsToday = true,
        Words = "Waiver signed",
        Weighed = ["paymentCleared", "inStatutoryForm", "unpaidWaivers", "settlement"],
        Check = CheckWaiver,
        Ties = ByFormThenSums,
    };

    public static EntryKind Retained { get; } = new(
        "retained", inFormat: 25, inJournal: 28, static (index, on) => new Retained { Index = index, On = on, Amount = default },
        [
            new Field.Money("amount", "Amount", e => ((Retained)e).Amount, (e, dollars) => (Retained)e with { Amount = dollars })
            { Required = true, Range = MoneyRange.AboveZero },
        ])
    {
        Meaning = "Retention withheld from the claimant.",
        Title = "Retention withheld from you",
        Group = Group,
        Help = "Part of your money is held back until the end.",
        Section = "Civ. Code § 8810",
        StartsToday = true,
        Words = "Retention withheld",
    };

    public static EntryKind HirerPaid { get; } = new(
        "hirer-paid", inFormat: 27, inJournal: 14,
        static (index, on) => new HirerPaid { Index = index, On = on, Amount = default, Of = default },
        [
            new Field.Money("amount", "Your share of it",
                e => ((HirerPaid)e).Amount, (e, dollars) => (HirerPaid)e with { Amount = dollars })
            { Meaning = "The claimant's share of it.", Required = true, Range = MoneyRange.AboveZero },
            new Field.Word("of", "Which money", JobFileWords.PaymentOf,
                e => (int)((HirerPaid)e).Of, (e, word) => (HirerPaid)e with { Of = (PaymentOf)word })
            {
                Required = true,
                Choices = ["a progress payment", "retention"],
                SaidWords = ["progress payment", "retention"],
                Said = "{0}",
            },
        ])
    {
        Meaning = "The one who hired the claimant was paid for the claimant's work.",
        Title = "Your customer was paid for your work",
        Group = Group,
        Help = "Whoever ordered from you received money for what you furnished.",
        DayLabel = "The day it was paid",
        Words = "Customer was paid",
    };

    public static EntryKind PaymentDemanded { get; } = new(
        "payment-demanded", inFormat: 26, inJournal: 24,
        static (index, on) => new PaymentDemanded { Index = index, On = on, Amount = default },
        [
            new Field.Money("amount", "Amount",
                e => ((PaymentDemanded)e).Amount, (e, dollars) => (PaymentDemanded)e with { Amount = dollars })
            { Required = true, Range = MoneyRange.AboveZero },
            new Field.Parties("to", "To whom", e => ((PaymentDemanded)e).To, (e, ids) => (PaymentDemanded)e with { To = ids })
            { Meaning = "Ids of the parties to whom it was given.", Said = "to {0}" },
            Usual.Manner("How",
                e => (int?)((PaymentDemanded)e).Manner, (e, word) => (PaymentDemanded)e with { Manner = (Manner)word }) with
            { Meaning = "How it was given." },
            Usual.Article(e => ((PaymentDemanded)e).Article, (e, text) => (PaymentDemanded)e with { Article = text }),
            Usual.Mailed(e => ((PaymentDemanded)e).Mailed, (e, day) => (PaymentDemanded)e with { Mailed = day }),
            new Field.Day("received", "It was received on",
                e => ((PaymentDemanded)e).Received, (e, day) => (PaymentDemanded)e with { Received = day })
            { Meaning = "The day it was received." },
            new Field.Day("due", "The sum falls due under the contract on",
                e => ((PaymentDemanded)e).Due, (e, day) => (PaymentDemanded)e with { Due = day })
            { Hint = "Civ. Code § 8832", Meaning = "The day on which the sum falls due under the contract.", Said = "due {0}" },
            new Field.YesNo("ofDefault", "Does it say that there is a default under the contract, and for how much?",
                e => ((PaymentDemanded)e).OfDefault, (e, truth) => (PaymentDemanded)e with { OfDefault = truth })
            {
                Hint = "Civ. Code § 8304(c)",
                Meaning = "Whether it says that a default has occurred under the contract, and its amount.",
            },
            new Field.Day("returned", "On public works: returned as not proper on",
                e => ((PaymentDemanded)e).Returned, (e, day) => (PaymentDemanded)e with { Returned = day })
            {
                Hint = "Pub. Contract Code §§ 10261.5, 10853, 20104.50",
                Meaning = "The day on which the public entity returned the request as not proper; public works only.",
                Said = "returned {0}",
            },
            new Field.Day("resubmitted", "The corrected request was received on",
                e => ((PaymentDemanded)e).Resubmitted, (e, day) => (PaymentDemanded)e with { Resubmitted = day })
            {
                Hint = "only where one was returned",
                Meaning = "The day on which it received the corrected request; public works only.",
                Said = "corrected one received {0}",
            },
        ])
    {
        Meaning = "Notice demanding payment due under the claimant's contract.",
        Title = "You demanded payment",
        Group = Group,
        Help = "You gave notice demanding what is due under your contract.",
        Section = "Civ. Code § 8800",
        StartsToday = true,
        Words = "Payment demanded",
        Form = ["amount", "to", "manner", "article", "mailed", "received", "due", "returned", "resubmitted", "ofDefault"],
        Check = static (e, faults) =>
        {
            var demand = (PaymentDemanded)e;
            faults.LeftAndMailed(demand, demand.Manner, demand.Mailed);
            faults.NotBefore("received", demand.Received, demand.On);
            if (demand.Received is { } received)
                faults.NotBefore("returned", demand.Returned, DayFact.On(received), "the day of its receipt");
            else
                faults.NotBefore("returned", demand.Returned, demand.On);
            if (demand.Returned is not null)
                faults.OnlyOn(WorkKind.Public, "returned");
            faults.Follows("resubmitted", demand.Resubmitted, demand.Returned, "the day of its return",
                "nothing: no `returned` says that the request was returned");
        },
    };

    public static EntryKind Disputed { get; } = new(
        "disputed", inFormat: 28, inJournal: 11, static (index, on) => new Disputed { Index = index, On = on, Amount = default },
        [
            new Field.Money("amount", "Amount", e => ((Disputed)e).Amount, (e, dollars) => (Disputed)e with { Amount = dollars })
            { Required = true, Range = MoneyRange.AboveZero },
            new Field.Text("text", "What about", e => ((Disputed)e).Text, (e, text) => (Disputed)e with { Text = text })
            { Holds = TextHolds.Lines, Said = "{0}" },
            new Field.Word("about", "Which money", JobFileWords.DisputeAbout,
                e => (int?)((Disputed)e).About, (e, word) => (Disputed)e with { About = (DisputeAbout)word })
            {
                Meaning = "Which money it is about.",
                Choices =
                [
                    "a progress payment", "retention", "other sums, such as extras or damages, so that what is due is not itself disputed",
                ],
                SaidWords = ["progress payment", "retention", "other sums"],
                Said = "{0}",
            },
            new Field.Text("demand", "Which demand for payment",
                e => ((Disputed)e).Demand, (e, text) => (Disputed)e with { Demand = text })
            {
                Hint = "nothing where there is only one",
                Meaning = "The id of the demand for payment it is about.",
                Holds = TextHolds.Entry,
                Of = "payment-demanded",
            },
        ])
    {
        Meaning = "An amount that the payer disputes in good faith.",
        Title = "An amount is disputed in good faith",
        Group = Group,
        Help = "Whoever must pay you disputes part of it.",
        DayLabel = "The day it was disputed",
        Words = "Amount disputed",
        Told = ["about", "text"],
    };

    /// <summary>Those of the group, in the order in which they are offered.</summary>
    public static IReadOnlyList<EntryKind> All { get; } =
    [
        Paid, Credited, Charged, Waived, Retained, HirerPaid, PaymentDemanded, Disputed,
    ];

    private static int ByReferenceThenSum(Entry one, Entry other) => (one, other) switch
    {
        (Paid a, Paid b) => EntryOrder.ByTextThenSum(a.Toward, a.Amount, b.Toward, b.Amount),
        (Charged a, Charged b) => EntryOrder.ByTextThenSum(a.Ref, a.Amount, b.Ref, b.Amount),
        (Credited a, Credited b) => EntryOrder.ByTextThenSum(a.Text, a.Amount, b.Text, b.Amount),
        _ => throw new InvalidOperationException($"{one.Path} has neither a reference nor a text."),
    };

    private static int ByFormThenSums(Entry one, Entry other)
    {
        var (a, b) = ((Waived)one, (Waived)other);
        return (a.Form, a.Through, a.Amount ?? 0, a.Excepted ?? 0).CompareTo((b.Form, b.Through, b.Amount ?? 0, b.Excepted ?? 0));
    }

    // Progress forms (Civ. Code §§ 8132, 8134) have a through date; final forms (§§ 8136, 8138) have none. Only the conditional progress
    // form lists earlier waivers.
    private static void CheckWaiver(Entry entry, IEntryFaults faults)
    {
        var waiver = (Waived)entry;
        if (!faults.HasRead("form"))
            return;
        if (waiver.Form is WaiverForm.ConditionalProgress or WaiverForm.UnconditionalProgress)
            faults.Require("through", "a day as year-month-day, such as 2026-03-02");
        else if (waiver.Through is not null)
            faults.Refuse("through", $"no through date: form {JobFileWords.Word(waiver.Form)} is for final payment");
        if (waiver is { UnpaidWaivers: not null, Form: not WaiverForm.ConditionalProgress })
            faults.Refuse("unpaidWaivers", "nothing: only form 8132 lists earlier waivers that are not paid");
    }
}
