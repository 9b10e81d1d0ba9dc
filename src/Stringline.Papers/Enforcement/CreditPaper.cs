using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Recording;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Enforcement;

/// <summary>
/// The notice of credit (Civ. Code § 8460(b)): the fact that credit is given and its terms, recorded, so that the time to sue runs longer.
/// </summary>
internal static class CreditPaper
{
    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("notice-of-credit", "Notice of Credit", Write)
    {
        Sections = "Civ. Code § 8460(b)",
        Use = PaperUse.Recorded,
        Works = [WorkKind.Private],
        Words = $"Claimant and owner, to extend the time to sue on a recorded claim.",
        Asks = [new(PaperInput.Until), new(PaperInput.Words, "The terms of the credit"), new(PaperInput.Number)],
        Deadline = "credit.last-day",
        AlsoServes = ["enforcement.last-day"],
        Effect = new(
            "Signed with the owner and recorded, it gives the owner time to pay. The last day to sue moves to 90 days after the credit "
                + "ends, "
            + "but never past one year after completion.",
            "Civ. Code § 8460(b)"),
        Entries =
        [
            new("credit-recorded", "It was recorded: day, instrument number, end of the credit")
            {
                Fill = now => now.Options.Until is { } until ? [new Filled.Day("until", until)] : [],
            },
        ],
    };

    private static Bundle Write(Matter matter)
    {
        const string section = "Civ. Code § 8460(b)";
        var claim = RecordedClaims.Of(matter, section);
        var until = matter.Need(matter.Options.Until, "until-missing", Place.Of(PaperInput.Until),
            $"Say the day on which the credit ends{ForTheAsker.SuchAs(PaperInput.Until, new LocalDate(2026, 12, 31))}.", section);
        var terms = matter.Need(matter.Options.Words, "terms-missing", Place.Of(PaperInput.Words),
            $"Say the terms of the credit: {new InputTold(PaperInput.Words, "Owner pays $5,000.00 on the first of each month.")}", section);
        if (until <= matter.AsOf)
        {
            matter.Refuse("until-past", Place.Of(PaperInput.Until), $"{Day(until.Value)} is not after {Day(matter.AsOf)}.",
                $"Credit ends on a day to come.",
                section);
        }

        var leaf = new PaperBuilder("notice-of-credit.pdf", "Notice of Credit")
        {
            Return = RecordedClaims.Return(matter),
            FootMore = claim.Instrument is { } number ? $" on instrument no. {OneLine(number)}" : null,
        };
        leaf.Head("California Civil Code section 8460, subdivision (b)");
        leaf.Say($"Notice is given that credit has been extended, on the terms stated here, on the claim of mechanics lien "
            + $"{RecordedClaims.Words(claim, matter)}.");
        leaf.Field("Claimant", $"{matter.Facts.Claimant}\n{matter.Facts.Address}");
        leaf.Field(matter.Facts.SeveralOwners ? "Owners" : "Owner", RecordedClaims.Owners(matter));
        leaf.Field("Amount of the claim as recorded", claim.Amount is { } amount ? Dollars(amount) : null);
        leaf.Field($"Unpaid balance of the claim on {Day(matter.AsOf)}", Unpaid(matter, claim) is { } balance ? Dollars(balance) : null);
        leaf.Field("Terms of the credit", terms);
        leaf.Field("The credit ends on", until is { } day ? Day(day) : null);
        leaf.Field("Site", [.. NoticeContents.Site(matter)]);
        Signing.Claimant(leaf, matter, section);
        leaf.Blank($"{matter.Facts.Signer ?? "Who signs"}, for the claimant: signature; date and place of signing");
        leaf.Lead($"{(matter.Facts.SeveralOwners ? "Each owner agrees" : "The owner agrees")} to the credit and to its terms, on the claim "
            + $"of mechanics lien recorded as instrument no. {claim.Instrument ?? "______________"}:");
        var signers = OwnersSign.Put(leaf, matter.Facts.Owners);
        return new Bundle([leaf], new Guide
        {
            First = [.. Reach(matter, until), .. Balance(matter, claim),
                $"The section does not say who signs. Have {(signers > 1 ? "every one who signs for an owner" : "the owner")} sign too: "
                + "the credit is one to which both sides agree (our advice)."],
            Steps = [$"Claimant and {(matter.Facts.SeveralOwners ? "owners" : "owner")} sign before a notary, with date and place: "
                + $"together before one, or each "
                + "apart, with a certificate page for each signing.",
                $"Record within {matter.ByLaw(Number.RecordCredit)} after the claim was recorded. Later it holds only against those who "
                    + $"have not bought or lent in good "
                + "faith before it (§ 8460(b)(2))."],
            After = [$"{EntryName.Enter("credit-recorded")}its day, the day the credit ends, and instrument number."],
            Recording = new Recording(RecordedPaperKind.Other, 1 + signers, 1,
                "A notary’s acknowledgment of each signature: a notice of credit is not among the papers that are recorded without one "
                + "(Gov. Code § 27287). The notary brings the certificate (Civ. Code § 1189)."),
        });
    }

    // What the file shows unpaid of the recorded claim; null where it shows none, or more than was recorded.
    private static decimal? Unpaid(Matter matter, NamedClaim claim) =>
        matter.Assessment.Amount is { IsUnknown: false, Demand: > 0 and var unpaid } && !(unpaid > claim.Amount) ? unpaid : null;

    private static IEnumerable<string> Balance(Matter matter, NamedClaim claim)
    {
        var unpaid = matter.Assessment.Amount.Demand;
        if (claim.Amount is not { } recorded || unpaid == recorded
            || matter.Options.Words?.Contains(Dollars(unpaid), StringComparison.Ordinal) == true)
            yield break;
        yield return $"The notice states the claim as it was recorded, {Dollars(recorded)}; the file shows {Dollars(unpaid)} unpaid. Agree "
            + "on the balance before anybody signs.";
    }

    /// <summary>How far the credit would carry the time to sue, as the rules have it.</summary>
    private static IEnumerable<string> Reach(Matter matter, LocalDate? until)
    {
        if (until is not { } day || matter.Known.All<ClaimRecorded>().Count == 0)
            yield break;
        var recorded = new CreditRecorded { Index = matter.Job.Entries.Count, On = DayFact.On(matter.AsOf), Until = day };
        var then = matter.Assessment.Supposing(recorded).Find("credit.enforcement-last-day");
        if (then?.Band is { } band)
        {
            yield return $"Recorded on {Day(matter.AsOf)}, this credit would let you sue until {DayOfWeek(band.Earliest.Day)} on the "
                + $"strictest count: {matter.ByLaw(Number.SueAfterCredit)} after it ends, and never later "
                + $"than {matter.ByLaw(Number.SueAfterCompletion).Spelled} after the whole work was completed."
                + (then.ActBy is { } by && by != band.Earliest.Day ? $" Plan on {DayOfWeek(by)}." : "");
        }
    }
}
