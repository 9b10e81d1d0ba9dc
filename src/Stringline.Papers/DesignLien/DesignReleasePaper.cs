using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Recording;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.DesignLien;

/// <summary>
/// The document of satisfaction and release, whole or in part, that a design professional shall record once the landowner has satisfied its
/// lien to that extent (Civ. Code § 8306(c)). Named by its number and acknowledged like every release (Gov. Code §§ 27287, 27361.6).
/// </summary>
internal static class DesignReleasePaper
{
    private const string Section = "Civ. Code § 8306(c)";

    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("design-lien-release", "Satisfaction and Release of Design Professional’s Lien", Write)
    {
        Sections = "Civ. Code § 8306(c); Gov. Code §§ 27287, 27361.6",
        Use = PaperUse.Recorded,
        Works = [WorkKind.Private],
        Words = $"A design professional whose lien the landowner has paid, in full "
            + $"or{new ForTheAsker($" ({new InputName(PaperInput.Amount)})")} in part.",
        Asks =
        [
            new(PaperInput.Amount, "Dollars and cents of the lien that were satisfied; nothing: what the file shows as paid"),
            new(PaperInput.Number),
        ],
        Deadline = Due,
        Effect = new(
            "Recorded, it says that the lien was satisfied to the extent written on it, and gives it up to that extent.",
            "Civ. Code § 8306(c)"),
        Fits = now => now.Assessment.Find(Due) is { } duty ? $"{duty.Title}." : null,
        Entries = [new("release-recorded", "A full satisfaction was recorded: day and instrument number")],
    };

    private const string Due = "design-lien.release";

    private static Bundle Write(Matter matter)
    {
        DesignLienPaper.OnlyDesigners(matter);
        var claim = RecordedClaims.Of(matter, Section);
        if (RecordedClaims.Chosen(matter) is { } chosen && WhichLien.Of(matter.Known, chosen) is not LienKind.Design)
        {
            matter.Refuse("no-design-lien", Place.Of(chosen, "lien"),
                $"The claim is not of a design professional’s lien, or the file does not say.",
                $"Say {new FieldSaid("lien", "\"design\"")} on its entry; for a mechanics lien make the paper release.", Section);
        }

        var amount = claim.On is null ? null : claim.Amount;
        if (claim is { On: not null, Amount: null })
        {
            matter.NotEntered("claim-recorded", "claim-amount-missing", $"Nothing is there.",
                $"Add {new FileWord("amount")} to its claim-recorded entry.", Section);
        }

        var (satisfied, left) = Paid(matter, amount);
        if (amount is { } whole && satisfied is null)
        {
            matter.Refuse("nothing-paid", Place.Journal, $"By the job file nothing of the {Dollars(whole)} is paid.",
                $"Enter what the landowner has paid as {new KindName("paid")}; the document is recorded once the lien is satisfied, in "
                    + $"full or in part.",
                Section);
        }
        else if (amount is { } stated && satisfied > stated)
        {
            matter.Refuse("reduction-too-large", Place.Of(PaperInput.Amount),
                $"{Dollars(satisfied.Value)} is more than the {Dollars(stated)} of the claim.",
                $"Name what was paid of it.", Section);
        }

        var full = satisfied is not null && left is null;
        // One line: the recorder wants the whole title on the first line under the space (Gov. Code § 27324).
        var title = full ? "Full Satisfaction and Release of Lien" : "Partial Satisfaction and Release of Lien";
        var leaf = new PaperBuilder(full ? "satisfaction-and-release-of-design-professionals-lien.pdf"
            : "partial-satisfaction-and-release-of-design-professionals-lien.pdf", title)
        {
            Return = RecordedClaims.Return(matter),
        };
        leaf.Head("Design professional’s lien. California Civil Code section 8306, subdivision (c)");
        leaf.Field("Lien", $"Claim of design professional’s lien "
            + $"{RecordedClaims.Words(claim, matter)}{(amount is { } sum ? $", in the amount of {Dollars(sum)}" : "")}");
        leaf.Field("Design professional", $"{matter.Facts.Claimant}\n{matter.Facts.Address}");
        leaf.Field(matter.Facts.SeveralOwners ? "Landowners" : "Landowner", RecordedClaims.Owners(matter));
        leaf.Field("Property", [.. NoticeContents.Site(matter)]);
        if (full)
        {
            leaf.Say($"{Satisfied(matter)} fully satisfied the lien described in paragraph 1. The design professional releases and "
                + "discharges the property described in paragraph 4 from it.");
        }
        else
        {
            leaf.Field("Amount satisfied and released", satisfied is { } paid ? Dollars(paid) : null);
            leaf.Field("Amount of the lien that remains", left is { } rest ? Dollars(rest) : null);
            leaf.Say($"{Satisfied(matter)} partially satisfied the lien described in paragraph 1. The design professional releases it to "
                + "the extent of the amount stated in paragraph 5. It remains in effect for the amount stated in paragraph 6.");
        }

        Signing.Claimant(leaf, matter, Section);
        return new Bundle([leaf], new Guide
        {
            First =
            [
                "This is a duty: a design professional whose lien is satisfied, in part or in full, shall record it (§ 8306(c)). Be sure "
                    + "that the money is in the bank.",
                .. full && DesignLienPaper.Amount(matter) > 0
                ? [$"By the job file {Dollars(DesignLienPaper.Amount(matter))} of the fee is not paid. Be sure that the whole is meant."]
                : Array.Empty<string>(),
            ],
            Steps = ["Sign before a notary, who asks every signer for identification."],
            After = [full
                ? $"{EntryName.Enter("release-recorded")}its day and instrument number, and that the debt is satisfied."
                : $"Keep the stamped copy. Do not enter “{EntryName.Find("release-recorded")}”: that gives up the whole lien. "
                + "The time to sue for the rest keeps running."],
            Recording = new Recording(RecordedPaperKind.Release, 1, 1,
                "A notary’s acknowledgment: a release is not among the papers that are recorded without one (Gov. Code § 27287). The "
                + "notary brings the certificate (Civ. Code § 1189) and attaches it behind the paper."),
        });
    }

    private static string Satisfied(Matter matter) => matter.Facts.SeveralOwners ? "The landowners have" : "The landowner has";

    // What was told, else what the law found to be paid of the lien; and what is left of it, null where nothing is.
    private static (decimal? Satisfied, decimal? Left) Paid(Matter matter, decimal? claimed)
    {
        if (claimed is not { } stated)
            return (matter.Options.Amount, null);
        if (matter.Options.Amount is { } told)
            return (told, Lowered.Left(stated, told));
        if (matter.Assessment.AmountOf(Remedy.DesignLien) is not { IsUnknown: false } fee)
            return (null, null);
        if (fee.Demand == 0)
            return (stated, null);
        // Of a claim for more than was due only what is left unpaid remains: the smaller sum is the safe one.
        return matter.Assessment.Find(Due) is { Amount: { } paid } ? (paid, Math.Min(fee.Demand, stated)) : (null, null);
    }
}
