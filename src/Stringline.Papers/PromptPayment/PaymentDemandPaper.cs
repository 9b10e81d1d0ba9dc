using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.PromptPayment;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.PromptPayment;

/// <summary>
/// A demand for payment with the whole calculation attached. A direct contractor's to the owner is also the notice demanding payment
/// from which the 30 days run (Civ. Code § 8800), so it says what § 8102 asks for.
/// </summary>
internal static class PaymentDemandPaper
{
    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("payment-demand", "Demand for Payment", Write)
    {
        Sections = "Civ. Code §§ 8102, 8800; Pub. Contract Code §§ 10261.5, 20104.50",
        Use = PaperUse.Sent,
        Works = [WorkKind.Private, WorkKind.Public],
        Words = $"The claimant, to the one who hired it, with the steps from the price to the sum demanded.",
        Asks =
        [
            new(PaperInput.To),
            new(PaperInput.Amount, "Dollars and cents demanded; nothing: what the file comes to"),
            new(PaperInput.Day, "The day by which it is to be paid; nothing: now"),
        ],
        AlsoServes = ["prompt-payment.progress"],
        ProvedAs = ProvedNotice.PaymentDemand,
        Fits = now => now.Assessment.Owed.Demand > 0 ? "Money is owed by the file." : null,
        Entries =
        [
            new("payment-demanded", "It was sent")
            {
                To = _ => [],
                Fill = now => now.Options.Amount is { } asked ? [new Filled.Sum("amount", asked)] : [],
            },
        ],
    };

    private static Bundle Write(Matter matter)
    {
        var hirer = matter.Facts.HiredBy;
        if (hirer is null && matter.Options.To.Count == 0)
        {
            matter.Refuse("hirer-missing", new Place.OfHead("claimant.hiredBy"), $"Nothing is there.",
                $"Name the party id of the one who owes the payment, here or with {new InputName(PaperInput.To)}.", "");
        }

        var to = Addressees.WithAddress(matter, matter.Options.To.Count > 0 ? matter.Named(matter.Options.To) : hirer is null ? []
            : [hirer], "Civ. Code § 8108");
        foreach (var stranger in to.Where(p => hirer is not null && p.Id != hirer.Id))
        {
            matter.Refuse("not-the-debtor", Place.Of(PaperInput.To),
                $"{OneLine(stranger.Name)} did not hire the claimant and owes it nothing under a contract.",
                $"Demand payment of {OneLine(hirer!.Name)}. Owner, lender and surety answer by their own remedies: claim of lien, stop "
                + $"payment notice, payment bond.", "");
        }

        // What is owed, and not what a lien may claim: a late notice, a waiver of lien rights or the cap of § 8430 ends remedies, not the
        // debt. Toward the owner the notice is for a progress payment: retention falls due by its own section. Of work that still goes on
        // only who demands knows what was provided: unless told, it is left out.
        var ahead = WorkAhead.In(matter);
        var table = matter.Options.Amount is null ? WorkAhead.OwedWithout(matter, ahead) : matter.Assessment.Owed;
        var owed = table.Demand;
        var reckoned = ToOwner(matter, to) ? MoneyDue.WithoutRetention(matter.Known, owed) : owed;
        var amount = matter.Options.Amount ?? reckoned;
        if (amount <= 0 && ahead.Count > 0 && matter.Options.Amount is null && matter.Assessment.Owed.Demand > 0)
        {
            matter.Refuse("only-work-ahead", Place.Of(PaperInput.Amount),
                $"All that is unpaid is {WorkAhead.Words(ahead)}, which goes on after {Day(matter.AsOf)}.",
                $"A demand is for work that was provided: say with {new InputName(PaperInput.Amount)} what is due for it so far, or enter "
                    + $"the part that was provided "
                + $"as an entry of its own.", ToOwner(matter, to) ? "Civ. Code § 8800" : "");
        }

        if (amount > reckoned)
            matter.Refuse("more-than-reckoned", Place.Of(PaperInput.Amount),
                $"{Dollars(amount)} is more than the {Dollars(reckoned)} that the job file supports.",
                Sentence.Of(reckoned == owed ? "Demand no more than the calculation shows, or enter what is missing."
                : "Demand no more than the calculation shows without the retention withheld, which falls due by another section, or enter "
                + "what is missing."), reckoned == owed ? "" : "Civ. Code §§ 8800, 8812");
        var leaf = new PaperBuilder("demand-for-payment.pdf", "Demand for Payment");
        leaf.Head(ToOwner(matter, to) ? "Notice under California Civil Code sections 8102 and 8800" : "With a calculation of what is due");
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, to);
        leaf.Say($"{matter.Facts.Claimant} demands payment of the amount stated in paragraph 1 for work that the claimant "
            + $"provided{(ToOwner(matter, to) ? " under the direct contract" : "")}. The table at the end shows how it is "
            + "calculated. If any part is disputed, please say in writing which part and why, and pay the rest.");
        leaf.Field("Amount demanded", TypeStyle.BodyBold, NoticeContents.Demand(matter, amount, "Civ. Code § 8102(a)(6)(C)"));
        if (reckoned != owed)
        {
            leaf.Field("Not part of this demand",
                $"Retention withheld, {Dollars(MoneyDue.RetentionIn(matter.Known, owed))}, which falls due under Civil Code section 8812.");
        }

        leaf.Field("To be paid", matter.Options.Day is { } day ? $"By {DayOfWeek(day)}" : "Now");
        if (ToOwner(matter, to))
            NoticeContents.Put(leaf, matter);
        else
            Contents(leaf, matter);
        Signing.Claimant(leaf, matter, Applies(matter, to));
        Calculation(leaf, matter, table, amount);
        return new Bundle([leaf], new Guide
        {
            To = to,
            Sections = Applies(matter, to),
            Manner = ToOwner(matter, to) ? Addressees.Manner
                : "How: by any method that lets you prove delivery. Certified mail is a good one.",
            First =
            [
                .. Ahead(matter, ahead),
                .. WhatDiffers.Between(matter.Assessment.Amount, matter.Assessment.Owed),
                "The calculation leaves out interest, finance charges, delay and fees. If you claim them too, say so in a separate letter.",
                .. FromWhen(matter),
                .. ToOwner(matter, to) ? [$"From the day this notice is given the owner has {OwnersTime(matter)}, unless the "
                    + $"contract says otherwise; after that {matter.Assessment.Numbers.On(Number.OwnersProgressPenalty,
                        matter.AsOf)} a month may be due on what is wrongly withheld (§ 8800)."]
                    : Array.Empty<string>(),
                .. Sooner(matter, to),
            ],
            Steps = ["Compare the calculation with your ledger, line by line, before signing.",
                "Sign in ink, write the date and place of signing, and keep a signed copy.",
                $"Send it{(ToOwner(matter, to) ? ", or hand it over," : "")} to {Addressees.Names(to)} "
                    + $"{(ToOwner(matter, to) ? "in one of the ways named above" : "by a method that lets you prove delivery")}, and keep "
                    + "the receipt.",
                .. ToOwner(matter, to) ? [ProofOfNotice.Step(ProvedNotice.PaymentDemand)] : Array.Empty<string>()],
            After = [$"{EntryName.Enter("payment-demanded")}its day, amount, to whom and how."],
        });
    }

    /// <summary>The sections of this demand: a claimant whom no section names writes a letter.</summary>
    private static string Applies(Matter matter, IReadOnlyList<Party> to) =>
        ToOwner(matter, to) ? matter.Job.Work.Kind == WorkKind.Public ? "" : "Civ. Code §§ 8102, 8800"
        : matter.Job is { Work.Kind: WorkKind.Public, Claimant.Role: ClaimantRole.DirectContractor } ? matter.Job.Work.Body switch
        {
            PublicBody.Local => "Pub. Contract Code § 20104.50",
            PublicBody.State or PublicBody.GeneralServices or PublicBody.Transportation => "Pub. Contract Code § 10261.5",
            PublicBody.StateUniversity or PublicBody.UniversityOrCourt or null => "Pub. Contract Code §§ 10261.5, 20104.50",
            _ => throw new InvalidOperationException($"No such public body: {matter.Job.Work.Body}."),
        }
        : "";

    private static IEnumerable<string> Ahead(Matter matter, IReadOnlyList<Furnished> ahead)
    {
        if (ahead.Count == 0)
            yield break;
        yield return matter.Options.Amount is null
            ? $"Left out: {WorkAhead.Words(ahead)}, which goes on after {Day(matter.AsOf)}. A demand is for work that was provided. "
                + "If part "
            + "of it is due now, make the paper again and say the amount, or enter the part provided as an entry of its own."
            : $"The calculation counts {WorkAhead.Words(ahead)} whole, though part of it is still to be provided. Be sure that the amount "
            + "demanded is for work provided by now.";
    }

    private static NumberRow OwnersTime(Matter matter) => matter.Assessment.Numbers.On(Number.OwnersProgress, matter.AsOf);

    // A day sooner than the section's is a wish.
    private static IEnumerable<string> Sooner(Matter matter, IReadOnlyList<Party> to)
    {
        var last = MoneyDue.OwnersLastDay(matter.Assessment.Numbers, matter.AsOf);
        if (ToOwner(matter, to) && (matter.Options.Day ?? matter.AsOf) < last)
        {
            yield return $"The paper asks to be paid {(matter.Options.Day is { } day ? $"by {Day(day)}" : "now")}. That is a request "
                + "only: the "
                + $"{OwnersTime(matter)} of § 8800 end on {Day(last)} at the soonest, if the notice is given today, unless "
                + "the contract says otherwise. "
                + (Overdue(matter) is { } earlier ? $"On an earlier demand the time ended on {Day(earlier)}: what it demanded has been "
                    + "overdue since then."
                    : "Until then nothing is overdue.");
        }
    }

    // The day on which the owner's time on an earlier demand ended, where that is past and unpaid; else null.
    private static LocalDate? Overdue(Matter matter) => matter.Assessment.Findings
        .Where(f => f.Id.StartsWith("prompt-payment.progress", StringComparison.Ordinal) && f.Standing == Standing.Open)
        .Select(f => f.Band?.Earliest.Day).Where(day => day < matter.AsOf).Min();

    // On public work the demand starts other times than those of the Civil Code's private works.
    private static string[] FromWhen(Matter matter) => (matter.Job.Work.Kind, matter.Job.Claimant.Role) switch
    {
        (WorkKind.Public, ClaimantRole.DirectContractor) =>
            [$"A local agency has {matter.ByLaw(Number.LocalProgress)} from receipt of an undisputed and properly submitted request (Pub. "
                + $"Contract Code § 20104.50), a "
                + "State agency as well (§ 10261.5). Keep what shows the day of receipt."],
        _ => [],
    };

    /// <summary>What a letter to another hirer says: no section asks for more.</summary>
    private static void Contents(PaperBuilder leaf, Matter matter)
    {
        NoticeContents.Giver(leaf, matter, "Claimant");
        leaf.Field("Work provided", matter.Facts.Work);
        leaf.Field("Site", [.. NoticeContents.Site(matter)]);
    }

    private static bool ToOwner(Matter matter, IReadOnlyList<Party> to) =>
        matter.Job.Claimant.Role == ClaimantRole.DirectContractor && to.Any(p => p.Capacity == PartyCapacity.Owner);

    /// <summary>The waterfall as it stands, one row for each step.</summary>
    private static void Calculation(PaperBuilder leaf, Matter matter, Waterfall waterfall, decimal amount)
    {
        leaf.RowsUnder(
            "HOW THE AMOUNT IS CALCULATED",
            $"As of {Day(matter.AsOf)}. Dollars and cents; amounts in parentheses are subtracted.",
            [new Column("Step", 0.3), new Column("Why", 0.5), new Column("Dollars", 0.2, true)],
            [
                .. waterfall.Steps.Select(s => (IReadOnlyList<string>)[s.Title, LawForReaders.Of(s),
                    s.Amount < 0 ? $"({Dollars(-s.Amount)})" : Dollars(s.Amount)]),
                ["Due", "", Dollars(waterfall.Demand)],
            ],
            lastIsSum: true);
        if (amount != waterfall.Demand)
            leaf.Say($"Of this {Dollars(amount)} is demanded now.");
    }
}
