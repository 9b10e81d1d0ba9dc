using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.Recording;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Enforcement;

/// <summary>
/// The notice of pendency of action (Civ. Code § 8461), only ever as a draft for the attorney who signs it. Its contents follow
/// Code Civ. Proc. §§ 405.20-405.22, from memory.
/// </summary>
internal static class LisPendensPaper
{
    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("notice-of-pendency", "Notice of Pendency of Action", Write)
    {
        Sections = "Civ. Code § 8461; Code Civ. Proc. § 405.20",
        Use = PaperUse.Recorded,
        Works = [WorkKind.Private],
        Words = $"A draft for the claimant’s attorney, within 20 days after the action is filed.",
        Asks = [new(PaperInput.Number)],
        Deadline = "lis-pendens.last-day",
        Entries = [new("lis-pendens-recorded", "It was recorded: day and instrument number")],
    };

    private static Bundle Write(Matter matter)
    {
        const string section = "Civ. Code § 8461";
        var claim = RecordedClaims.Of(matter, section);
        var action = matter.Last<ActionFiled>();
        foreach (var lack in PendencyContents.Lacks(action, matter.Job.Work.Site))
            Lacks(matter, action, lack);
        var (court, number) = (Clean(action?.Court), Clean(action?.Case));
        var leaf = new PaperBuilder("notice-of-pendency-of-action.pdf", "Notice of Pendency of Action") { Return =
            RecordedClaims.Return(matter) };
        leaf.Head("California Civil Code section 8461; Code of Civil Procedure sections 405.20 and following");
        leaf.Line("Attorney for plaintiff: bar number, address, telephone", null, null);
        leaf.Field("Court", court);
        leaf.Field("Case number", number);
        leaf.Field("Plaintiff", matter.Facts.Claimant);
        leaf.Field(matter.Facts.SeveralOwners ? "Defendants who own the property" : "Defendant who owns the property",
            RecordedClaims.Owners(matter));
        leaf.Field("Other defendants", (string?)null);
        leaf.Field("Action", $"The action was commenced {(action?.On is DayFact.Exact on ? $"on {Day(on.Day)}" : "on ______________")}. It "
            + "seeks to enforce, by foreclosure sale of the property described in paragraph 7, the claim of mechanics lien "
            + $"{RecordedClaims.Words(claim, matter)}{(claim.Amount is { } amount ? $", in the amount of {Dollars(amount)}" : "")}. It "
            + "alleges a real property claim.");
        leaf.Field("Property affected", [.. NoticeContents.Site(matter)]);
        leaf.Say("Notice is given that the action described above is pending and affects title to that real property.");
        leaf.Add(new Signature(null) { Before = 4 });
        leaf.Blank("Attorney’s signature; name, printed; date of signing; signed at (city, state)");
        leaf.Line("If no attorney signs: judge’s approval, date", (string?)null);
        return new Bundle([leaf], new Guide
        {
            First =
            [
                "For the attorney. Only an attorney of record signs a notice of pendency of action, or a party for whom a judge approved "
                    + "it (Code Civ. Proc. § 405.21).",
                "Buyers and lenders have notice of the action only from the recording (§ 8461).",
                .. PaidSince(matter, claim),
            ],
            Steps =
            [
                "The attorney makes a clean paper without the word DRAFT, fills in what is blank, checks the defendants and the "
                    + "description, and signs.",
                "Before recording, mail a copy by registered or certified mail, return receipt requested, to all known addresses of the "
                    + "adverse parties and of all owners of record as the latest assessment roll shows them. For one whose address nobody "
                    + "knows, record a declaration under penalty of perjury that says so (Code Civ. Proc. § 405.22).",
                "The person who mailed signs a proof of that service, in the form of Code Civ. Proc. § 1013a.",
                "Only then record the notice, with the proof of service attached: without the mailing and the proof the notice is void as "
                    + "to that party or owner (Code Civ. Proc. § 405.23).",
                "Right after recording, file a copy in the action; mail one in the same way to each adverse party who is joined later "
                    + "(Code Civ. Proc. § 405.22).",
            ],
            After = [$"{EntryName.Enter("lis-pendens-recorded")}its day and instrument number, and say that it was mailed "
                + "first and that the proof was recorded with it."],
            Recording = new Recording(RecordedPaperKind.Other, 0, 1, "No notary (common practice, not verified; ask the office).")
            {
                ProofPages = 1,
            },
        }, new Refusal("for-the-attorney", new Place.InWords("the paper"),
        $"A notice of pendency of action is signed by the attorney of record.",
            $"The draft is for the attorney to complete and sign.", "Code Civ. Proc. § 405.21"));
    }

    private static void Lacks(Matter matter, ActionFiled? action, PendencyLack lack)
    {
        const string section = "Code Civ. Proc. § 405.20";
        switch (lack)
        {
            case PendencyLack.Action:
                matter.NotEntered("action-filed", "no-action-filed", $"No action to enforce the claim is entered.",
                    $"Enter it as {new KindName("action-filed")} with its day, court and case number.", "Civ. Code § 8461");
                break;
            case PendencyLack.Court:
                matter.Refuse("court-missing", Place.Of(action!, "court"), $"Nothing is there.", $"Add the court.", section);
                break;
            case PendencyLack.CaseNumber:
                matter.Refuse("case-missing", Place.Of(action!, "case"), $"Nothing is there.", $"Add the case number.", section);
                break;
            case PendencyLack.Description:
                matter.Refuse("legal-missing", new Place.OfHead("work.site.legal"), $"Nothing is there.",
                    $"Add the legal description of the property: the notice describes what the action affects.", section);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(lack), lack, "No such lack.");
        }
    }

    // The notice names the claim as it was recorded: what came since is the attorney's to weigh.
    private static IEnumerable<string> PaidSince(Matter matter, NamedClaim claim)
    {
        var paid = matter.Known.All<Paid>().Where(p => p.On.Earliest > claim.On).Sum(p => p.Amount);
        if (paid > 0 && claim.Amount is { } amount)
        {
            yield return $"The notice names the claim in the amount recorded, {Dollars(amount)}. Since then {Dollars(paid)} was paid: tell "
                + "the attorney.";
        }
    }
}
