using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Recording;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Enforcement;

/// <summary>
/// The release of a recorded claim of lien, whole or in part. It names the recorded paper by its number (Gov. Code § 27361.6) and the
/// owners whose title is relieved (§ 27288.1(b)), and is acknowledged: a release is not among the exceptions of § 27287.
/// </summary>
internal static class ReleasePaper
{
    private const string Sections = "Gov. Code §§ 27287, 27288.1(b), 27361.6";

    /// <summary>Both papers.</summary>
    public static IEnumerable<Paper> Papers => [Whole, Part];

    private static Paper Whole { get; } = new("release", "Release of Mechanics Lien", matter => Write(matter, partial: false))
    {
        Sections = Sections,
        Use = PaperUse.Recorded,
        Works = [WorkKind.Private],
        Words = $"The claimant, once paid or when the claim has expired.",
        Asks = [new(PaperInput.Number)],
        AlsoServes = ["release.answer-by", "release.when-paid"],
        Effect = Effect,
        Fits = now => HasMechanics(now)
            && (now.Assessment.Amount.Demand == 0 || now.Assessment.Find("enforcement.last-day") is { Standing: Standing.Lost })
                ? "A claim is recorded, and nothing is owed by the file or the claim has expired." : null,
        Entries = [new("release-recorded", "It was recorded: day and instrument number")],
    };

    private static Paper Part { get; } = new("partial-release", "Partial Release of Mechanics Lien", matter => Write(matter, partial: true))
    {
        Sections = Sections,
        Use = PaperUse.Recorded,
        Works = [WorkKind.Private],
        Words = $"The claimant, to free a part of the property{ForTheAsker.InBrackets(PaperInput.Words)}, or of the "
            + $"sum{ForTheAsker.InBrackets(PaperInput.Amount)}.",
        Asks =
        [
            new(PaperInput.Words, "The part of the property that is freed"),
            new(PaperInput.Amount, "Dollars and cents by which the claim is reduced"),
            new(PaperInput.Number),
        ],
        AlsoServes = ["release.partial"],
        Effect = Effect,
        Fits = now => HasMechanics(now) && now.Assessment.Amount.Demand > 0 ? "A claim is recorded." : null,
    };

    private static PaperEffect Effect => new(
        "Recorded, it gives up the claim of lien on the property that it names. What is still owed must then be had another way, such as "
            + "by a "
        + "suit on the contract.",
        "Civ. Code § 8468");

    /// <summary>
    /// Whether a claim of mechanics lien is recorded: a design professional's lien has a release of its own, and no amended claim.
    /// </summary>
    internal static bool HasMechanics(Occasion now) =>
        now.Known.All<ClaimRecorded>().Any(claim => WhichLien.Of(now.Known, claim) != LienKind.Design);

    private static Bundle Write(Matter matter, bool partial)
    {
        var claim = RecordedClaims.Of(matter, "Gov. Code § 27361.6");
        NotDesign(matter);
        if (partial)
            CheckPart(matter, claim);
        var leaf = new PaperBuilder(partial ? "partial-release-of-mechanics-lien.pdf" : "release-of-mechanics-lien.pdf", partial
            ? "Partial Release of Mechanics Lien" : "Release of Mechanics Lien")
        {
            Return = RecordedClaims.Return(matter),
        };
        leaf.Head("Claim of lien under California Civil Code section 8416");
        var amount = claim.Amount is { } sum ? $", in the amount of {Dollars(sum)}" : "";
        leaf.Field(partial
            ? "Claim of lien partially released"
            : "Claim of lien released", $"Claim of mechanics lien {RecordedClaims.Words(claim, matter)}{amount}");
        leaf.Field("Claimant", $"{matter.Facts.Claimant}\n{matter.Facts.Address}");
        leaf.Field(matter.Facts.SeveralOwners ? "Owners of the property" : "Owner of the property", RecordedClaims.Owners(matter));
        leaf.Field("Property", [.. NoticeContents.Site(matter)]);
        if (!partial)
        {
            leaf.Say("Claimant releases and discharges the property described in paragraph 4 from the claim of mechanics lien described in "
                + "paragraph 1.");
        }
        else
            PartReleased(leaf, matter, claim);
        Signing.Claimant(leaf, matter, Sections);
        return new Bundle([leaf], new Guide
        {
            First =
            [
                partial ? "The lien remains for the rest, and the time to sue keeps running."
                    : "Once recorded, the claim is gone. Do not hand it over until the money is in your account, unless the claim has "
                        + "expired.",
                "The paper does not say that the debt is satisfied. A new claim within its time stays possible only so long as no release "
                    + "says so (Solit v. Tokai Bank (1999) 68 Cal.App.4th 1435); if the payer asks for those words, have counsel read "
                    + "them.",
                .. Owing(matter, partial),
                .. Pending(matter, partial),
                .. matter.Known.All<ReleaseDemanded>().Count > 0
                    ? [$"The owner has demanded a release: answer within {matter.ByLaw(Number.PetitionAfterDemand).Spelled}. Whoever loses "
                        + $"the petition pays the other’s attorney "
                    + "(Civ. Code §§ 8482, 8488)."] : Array.Empty<string>(),
            ],
            Steps = ["Sign before a notary, who asks every signer for identification."],
            After = [partial
                ? $"Keep the stamped copy. Do not enter “{EntryName.Find("release-recorded")}”: that gives up the whole claim."
                : $"{EntryName.Enter("release-recorded")}its day and instrument number, and that the debt is satisfied only if the paper "
                + "says so."],
            Recording = new Recording(RecordedPaperKind.Release, 1, 1,
                "A notary’s acknowledgment: a release is not among the papers that are recorded without one (Gov. Code § 27287). The "
                + "notary brings the certificate (Civ. Code § 1189) and attaches it behind the paper."),
        });
    }

    // A design professional's lien has a paper of its own, which says that it was satisfied (Civ. Code § 8306(c)).
    private static void NotDesign(Matter matter)
    {
        if (RecordedClaims.Chosen(matter) is { } claim && WhichLien.Of(matter.Known, claim) == LienKind.Design)
        {
            matter.Refuse("design-lien", Place.Of(claim, "lien"), $"The claim is of a design professional’s lien.",
                $"Make {new PaperName(DesignLien.DesignReleasePaper.Paper, The: true)}: what is recorded for it evidences satisfaction and "
                    + $"release.", "Civ. Code § 8306(c)");
        }
    }

    private static void CheckPart(Matter matter, NamedClaim claim)
    {
        if (matter.Options.Words is null && matter.Options.Amount is null)
        {
            matter.Refuse("part-missing", Place.Of(PaperInput.Words, PaperInput.Amount),
                $"Neither a part of the property nor a sum is named.",
                $"Describe the part of the property that is "
                    + $"freed{new ForTheAsker($" ({new InputTold(PaperInput.Words, "Lot 12 of ...")})")}, "
                + $"or say by how much the claim is reduced{ForTheAsker.InBrackets(PaperInput.Amount)}.", Sections);
        }

        if (matter.Options.Amount is { } less && claim.Amount is { } whole && less >= whole)
        {
            matter.Refuse("reduction-too-large", Place.Of(PaperInput.Amount),
                $"A reduction of {Dollars(less)} leaves nothing of {Dollars(whole)}.",
                $"Use the full release, or name less than the claim.", Sections);
        }

        if (matter.Options.Amount is not null && claim is { On: not null, Amount: null })
        {
            matter.NotEntered("claim-recorded", "claim-amount-missing", $"The recorded claim's amount is not entered.",
                $"Add {new FileWord("amount")} to its claim-recorded entry.", Sections);
        }
    }

    private static void PartReleased(PaperBuilder leaf, Matter matter, NamedClaim claim)
    {
        if (matter.Options.Words is { } part)
        {
            leaf.Field("Part of the property that is released", part);
            leaf.Say("Claimant releases and discharges from the claim of mechanics lien described in paragraph 1 only the part of the "
                + "property described in paragraph 5. The claim remains in effect against the rest.");
        }

        if (matter.Options.Amount is { } less)
        {
            var number = matter.Options.Words is null ? 5 : 6;
            leaf.Field("Amount released", Dollars(less));
            leaf.Field("Amount of the claim that remains", claim.Amount is { } whole && Lowered.Left(whole, less) is { } left
                ? Dollars(left) : null);
            leaf.Say(string.Create(CultureInfo.InvariantCulture,
                $"Claimant releases the claim of mechanics lien described in paragraph 1 to the extent of the amount stated in paragraph "
                + $"{number}. The claim remains in effect for the amount stated in paragraph {number + 1}."));
        }

        if (matter.Options.Words is null && matter.Options.Amount is null)
            leaf.Field("Part of the property, or amount, that is released", (string?)null);
    }

    // A release clears the record of the claim alone: the action and its notice of pendency stay until each is ended by its own paper.
    private static IEnumerable<string> Pending(Matter matter, bool partial)
    {
        if (matter.Last<ActionFiled>() is not { } action)
            yield break;
        var named = $"The action to enforce the claim{(Clean(action.Case) is { } number ? $", case no. {number}," : "")} is entered as "
            + $"filed"
            + $"{(action.On is DayFact.Exact on ? $" on {Day(on.Day)}" : "")}.";
        yield return partial
            ? $"{named} It goes on for the rest. Have its attorney see the partial release before it is signed."
            : $"{named} The release does not end it. Agree in writing who files the request for dismissal, when, and whether with "
                + $"prejudice "
            + "(Code Civ. Proc. § 581; not verified); have its attorney see the release before it is signed.";
        if (partial)
            yield break;
        yield return (matter.Known.All<LisPendensRecorded>().Count > 0 ? "The notice of pendency of action is recorded and"
            : "A notice of pendency of action, if one is recorded,")
            + " stays on the title until its withdrawal is recorded, signed by the one who recorded it and acknowledged "
            + "(Code Civ. Proc. § 405.50; not verified): bring both papers to the counter together.";
    }

    private static IEnumerable<string> Owing(Matter matter, bool partial)
    {
        if (!partial && matter.Assessment.Amount.Demand > 0)
        {
            yield return $"By the job file {Dollars(matter.Assessment.Amount.Demand)} of the demand is not paid. Be sure that a full "
                + "release is meant; for a part make the partial release.";
        }
    }
}
