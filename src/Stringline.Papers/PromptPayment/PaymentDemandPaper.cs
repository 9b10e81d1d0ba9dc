using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PromptPayment;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.PromptPayment;

/// <summary>
/// A demand for payment with the whole reckoning attached. A direct contractor's to the owner is also the notice demanding payment
/// from which the 30 days run (Civ. Code § 8800), so it says what § 8102 asks for.
/// </summary>
internal static class PaymentDemandPaper
{
    /// <summary>The paper.</summary>
    public static Shelved Shelved { get; } = Shelved.Of(
        new Paper("payment-demand", "Demand for Payment", "Civ. Code §§ 8102, 8800; Pub. Contract Code §§ 10261.5, 20104.50", PaperUse.Sent,
            [WorkKind.Private, WorkKind.Public],
            "The claimant, to the one who hired it, with the steps from the price to the sum demanded.")
        { Takes = [Told.To, Told.Amount, Told.Day], ProvedAs = ProvedNotice.PaymentDemand },
        Write);

    private static Bundle Write(Matter matter)
    {
        var hirer = matter.Facts.HiredBy;
        if (hirer is null && matter.Options.To.Count == 0)
        {
            matter.Refuse("hirer-missing", "claimant.hiredBy", "Nothing is there.",
                "Name the party id of the one who owes the payment, here or with --to.", "");
        }

        var to = Addressees.WithAddress(matter, matter.Options.To.Count > 0 ? matter.Named(matter.Options.To) : hirer is null ? []
            : [hirer], "Civ. Code § 8108");
        foreach (var stranger in to.Where(p => hirer is not null && p.Id != hirer.Id))
        {
            matter.Refuse("not-the-debtor", "--to", $"{OneLine(stranger.Name)} did not hire the claimant and owes it nothing under a contract.",
                $"Demand payment of {OneLine(hirer!.Name)}. Owner, lender and surety answer by their own remedies: claim of lien, stop "
                + "payment notice, payment bond.", "");
        }

        // What is owed, and not what a lien may claim: a late notice, a waiver of lien rights or the cap of § 8430 ends remedies, not the
        // debt. Toward the owner the notice is for a progress payment: retention falls due by its own section.
        var owed = matter.Assessment.Owed.Demand;
        var reckoned = ToOwner(matter, to) ? MoneyDue.WithoutRetention(matter.Known, owed) : owed;
        var amount = matter.Options.Amount ?? reckoned;
        if (amount > reckoned)
            matter.Refuse("more-than-reckoned", "--amount",
                $"{Dollars(amount)} is more than the {Dollars(reckoned)} that the job file supports.",
                reckoned == owed ? "Demand no more than the reckoning shows, or enter what is missing."
                : "Demand no more than the reckoning shows without the retention withheld, which falls due by another section, or enter "
                + "what is missing.", reckoned == owed ? "" : "Civ. Code §§ 8800, 8812");
        var leaf = new Leaf("demand-for-payment.pdf", "Demand for Payment");
        leaf.Head(ToOwner(matter, to) ? "Notice under California Civil Code sections 8102 and 8800" : "With the reckoning of what is due");
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, to);
        leaf.Say($"{matter.Facts.Claimant} demands payment of the amount stated in paragraph 1 for work that it "
            + $"provided{(ToOwner(matter, to) ? " under its direct contract" : "")}. The table on the page that follows shows how it is "
            + "reckoned. If any part is disputed, please say in writing which part and why, and pay the rest.");
        leaf.Field("Amount demanded", TypeStyle.BodyBold, NoticeContents.Demand(matter, amount, "Civ. Code § 8102(a)(6)(C)"));
        if (reckoned != owed)
        {
            leaf.Field("Not part of this demand",
                $"Retention withheld, {Dollars(MoneyDue.RetentionIn(matter.Known, owed))}, which falls due under Civil Code section 8812.");
        }

        leaf.Field("To be paid", matter.Options.Day is { } day ? $"by {Day(day)}" : "now");
        if (ToOwner(matter, to))
            NoticeContents.Put(leaf, matter);
        else
            Contents(leaf, matter);
        Signing.Claimant(leaf, matter, matter.Job.Work.Kind == WorkKind.Public ? "Pub. Contract Code § 20104.50" : "Civ. Code § 8800");
        Reckoning(leaf, matter, amount);
        return new Bundle([leaf], new Guide
        {
            To = to,
            Manner = ToOwner(matter, to) ? Addressees.Manner
                : "How: by any means whose arrival can be shown. Certified mail is a good one.",
            First =
            [
                "The reckoning leaves out interest, finance charges, delay and fees. If you claim them too, say so in a letter of its own.",
                .. FromWhen(matter),
                .. ToOwner(matter, to) ? ["From the day this notice is given the owner has 30 days, unless the contract says otherwise; "
                    + "after that 2 percent a month may be due on what is wrongly withheld (§ 8800)."] : Array.Empty<string>(),
            ],
            Steps = ["Compare the reckoning with your ledger, line by line, before signing.",
                .. ToOwner(matter, to) ? [ProofOfNotice.Step(ProvedNotice.PaymentDemand)] : Array.Empty<string>()],
            After = [$"{EntryName.Enter("payment-demanded")}its day, amount, to whom and how."],
        });
    }

    // On public work the demand starts other times than those of the Civil Code's private works.
    private static string[] FromWhen(Matter matter) => (matter.Job.Work.Kind, matter.Job.Claimant.Role) switch
    {
        (WorkKind.Public, ClaimantRole.DirectContractor) =>
            ["A local agency has 30 days from receipt of an undisputed and properly submitted request (Pub. Contract Code § 20104.50), a "
                + "State agency as well (§ 10261.5). Keep what shows the day of receipt."],
        _ => [],
    };

    /// <summary>What a letter to another hirer says: no section asks for more.</summary>
    private static void Contents(Leaf leaf, Matter matter)
    {
        NoticeContents.Giver(leaf, matter);
        leaf.Field("Work provided", matter.Facts.Work);
        leaf.Field("Site", [.. NoticeContents.Site(matter)]);
    }

    private static bool ToOwner(Matter matter, IReadOnlyList<Party> to) =>
        matter.Job.Claimant.Role == ClaimantRole.DirectContractor && to.Any(p => p.Capacity == PartyCapacity.Owner);

    // To the debtor nothing is conceded: what is no work is kept out of this demand and not given up.
    private static string Why(WaterfallStep step) => step.Id == "charges-left-out"
        ? $"{Dollars(step.Why.Children.SelectMany(c => c.Facts).OfType<Charged>().Sum(c => c.Amount))} billed for other than work: not "
        + "included here, and not waived."
        : step.Why.Text;

    /// <summary>The waterfall as it stands, one row for each step.</summary>
    private static void Reckoning(Leaf leaf, Matter matter, decimal amount)
    {
        var waterfall = matter.Assessment.Owed;
        leaf.Add(new OnNewPage(new Heading("HOW THE AMOUNT IS RECKONED", TypeStyle.Heading) { Before = 0 }));
        leaf.Say($"As of {Day(matter.AsOf)}. Dollars and cents; what stands in parentheses is taken off.");
        leaf.Rows(
            [new Column("Step", 0.3), new Column("Why", 0.5), new Column("Dollars", 0.2, true)],
            [
                .. waterfall.Steps.Select(s => (IReadOnlyList<string>)[s.Title, Why(s),
                    s.Amount < 0 ? $"({Dollars(-s.Amount)})" : Dollars(s.Amount)]),
                ["Due", "", Dollars(waterfall.Demand)],
            ],
            lastIsSum: true);
        if (amount != waterfall.Demand)
            leaf.Say($"Of this {Dollars(amount)} is demanded now.");
    }
}
