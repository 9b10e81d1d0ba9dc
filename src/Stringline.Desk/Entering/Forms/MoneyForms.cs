using Stringline.Exchange;

namespace Stringline.Desk.Entering.Forms;

/// <summary>Money.</summary>
internal static class MoneyForms
{
    private const string Group = "Money";

    /// <summary>The forms.</summary>
    public static IReadOnlyList<EntryForm> All { get; } =
    [
        new("paid", "Payment received", Group, "Money that came in for this job.")
        {
            Day = DayRule.Known,
            DayLabel = "The day it came in",
            StartsToday = true,
            Fields =
            [
                Usual.Amount(),
                new("from", "From whom", Answer.Line) { Repeats = true, Offers = true },
                new("toward", "Toward what", Answer.Reference) { Hint = "only if the one who paid, or you at once, directed it so" },
            ],
            Section = "Civ. Code § 1479",
        },
        new("credited", "Credit, return or back charge allowed", Group, "What you took off the bill: a return, an allowance, a back charge you accept.")
        {
            Day = DayRule.Known, StartsToday = true, Fields = [Usual.Amount(), Usual.Text(), new("toward", "Toward what", Answer.Reference) { Hint = "as for goods returned" }], Section = "Civ. Code § 8416(a)(1)",
        },
        new("charged", "Billed, but not for work", Group, "Interest, finance charges, delay, lost profit and the like: owed perhaps, but never part of a claim of lien.")
        {
            Day = DayRule.Known,
            StartsToday = true,
            Fields =
            [
                Usual.Amount(),
                new("of", "For what", Answer.OneOf) { Required = true, Repeats = true, Choices = Usual.Words(JobFileWords.Charge, "interest", "finance or service charge", "delay, disruption, extended overhead", "lost profit", "attorney's fees", "anything else that is not work") },
                new("ref", "Reference", Answer.Line) { Hint = "such as your invoice's number" },
            ],
        },
        new("waived", "Waiver and release signed", Group, "You signed one of the four statutory forms.")
        {
            DayLabel = "The day it was signed",
            StartsToday = true,
            Fields =
            [
                new("form", "Which form", Answer.OneOf) { Required = true, Choices = Usual.Words(JobFileWords.Form, "conditional, progress payment (§ 8132)", "unconditional, progress payment (§ 8134)", "conditional, final payment (§ 8136)", "unconditional, final payment (§ 8138)") },
                new("through", "Through date", Answer.Day) { Hint = "of a progress form; a final form has none" },
                Usual.MaybeAmount("Amount of the check", "the payment that the form describes"),
                new("excepted", "Excepted", Answer.Money) { Hint = "disputed claims or extras that the form lists" },
                new("paymentCleared", "The check cleared on", Answer.Day) { Hint = "nothing while it has not" },
                new("inStatutoryForm", "Does the paper follow the statutory form?", Answer.YesOrNo),
                new("unpaidWaivers", "Days of earlier waivers that it lists as not paid", Answer.Days) { Hint = "of a conditional progress form; one on a line, or the word none where it lists none" },
                Usual.YesNo("settlement", "Does it settle a dispute or suit, and name the lien or claim?", "Civ. Code § 8130"),
            ],
            Section = "Civ. Code §§ 8132-8138",
        },
        new("retained", "Retention withheld from you", Group, "Part of your money is held back until the end.")
        {
            StartsToday = true, Fields = [Usual.Amount()], Section = "Civ. Code § 8810",
        },
        new("hirer-paid", "Your customer was paid for your work", Group, "Whoever ordered from you received money for what you furnished.")
        {
            DayLabel = "The day it was paid",
            Fields =
            [
                Usual.Amount("Your share of it"),
                new("of", "Which money", Answer.OneOf) { Required = true, Choices = Usual.Words(JobFileWords.PaymentOf, "a progress payment", "retention") },
            ],
        },
        new("payment-demanded", "You demanded payment", Group, "You gave notice demanding what is due under your contract.")
        {
            StartsToday = true,
            Fields =
            [
                Usual.Amount(),
                Usual.MaybeTo("To whom"),
                Usual.MaybeManner(),
                Usual.Article,
                Usual.Mailed,
                new("received", "It was received on", Answer.Day),
                new("due", "The sum falls due under the contract on", Answer.Day) { Hint = "Civ. Code § 8832" },
                new("returned", "On public works: returned as not proper on", Answer.Day) { Hint = "Pub. Contract Code §§ 10261.5, 10853, 20104.50" },
                new("resubmitted", "The corrected request was received on", Answer.Day) { Hint = "only where one was returned" },
                Usual.YesNo("ofDefault", "Does it say that there is a default under the contract, and for how much?", "Civ. Code § 8304(c)"),
            ],
            Section = "Civ. Code § 8800",
        },
        new("disputed", "An amount is disputed in good faith", Group, "Whoever must pay you disputes part of it.")
        {
            DayLabel = "The day it was disputed",
            Fields =
            [
                Usual.Amount(),
                Usual.Text("What about"),
                new("about", "Which money", Answer.OneOf) { Choices = Usual.Words(JobFileWords.DisputeAbout, "a progress payment", "retention", "other sums, such as extras or damages, so that what is due is not itself disputed") },
                Usual.Earlier("demand", "Which demand for payment", "payment-demanded", "nothing where there is only one"),
            ],
        },
    ];
}
