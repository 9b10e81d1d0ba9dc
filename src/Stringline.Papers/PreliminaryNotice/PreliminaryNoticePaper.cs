using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Recording;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Fees;
using Stringline.Papers.Layout;
using Stringline.Papers.Mailing;
using Stringline.Papers.Prescribed;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.PreliminaryNotice;

/// <summary>
/// The preliminary notice on private work (Civ. Code §§ 8200-8216) and on public work (§§ 9300-9306), with a declaration to prove it by.
/// </summary>
internal static class PreliminaryNoticePaper
{
    /// <summary>Both papers.</summary>
    public static IEnumerable<Paper> Papers => [Private, Public];

    private static Paper Private { get; } = new("preliminary-notice", "Preliminary Notice", matter => Write(matter, isPublic: false))
    {
        Sections = "Civ. Code §§ 8102, 8202",
        Use = PaperUse.Given,
        Works = [WorkKind.Private],
        Words = $"The claimant, to owner, direct contractor and construction lender, within 20 days after first furnishing.",
        Asks = [new(PaperInput.To), new(PaperInput.Amount, Estimate)],
        Deadline = "preliminary-notice.last-day",
        AlsoServes = ["preliminary-notice.later-lender"],
        ProvedAs = ProvedNotice.Preliminary,
        Entries =
        [
            Given with
            {
                To = now =>
                [
                    .. Stringline.Law.PreliminaryNotice.Recipients.Of(now.Known).SelectMany(recipient => recipient.AnyOf),
                    .. Stringline.Law.PreliminaryNotice.Recipients.NotYetKnown(now.Known),
                ],
            },
        ],
    };

    private static Paper Public { get; } = new("public-preliminary-notice", "Preliminary Notice, Public Works", matter => Write(
        matter, isPublic: true))
    {
        Sections = "Civ. Code §§ 8102, 9303",
        Use = PaperUse.Given,
        Works = [WorkKind.Public],
        Words = $"The claimant, to public entity and direct contractor, within 20 days after first furnishing.",
        Asks = [new(PaperInput.To), new(PaperInput.Amount, Estimate)],
        Deadline = "preliminary-notice.last-day",
        ProvedAs = ProvedNotice.Preliminary,
        Entries = [Given with { To = now => PublicNotice.RecipientsOf(now.Known).SelectMany(recipient => recipient.AnyOf) }],
    };

    private const string Estimate = "Estimate of the total price, dollars and cents; nothing: the file's";

    private static EntryAfter Given => new("notice-given", "It was given: day, manner, article number")
    {
        Fill = now =>
        [
            new Filled.Notice(NoticeKind.Preliminary),
            new Filled.By(Manner.CertifiedMail),
            .. (now.Options.Amount ?? PriceEstimate.Of(now.Known)) is { } estimate
                ? [new Filled.Sum("estimate", estimate)] : (Filled[])[],
        ],
    };

    private static Bundle Write(Matter matter, bool isPublic)
    {
        var section = isPublic ? "Civ. Code § 9303" : "Civ. Code § 8202(a)";
        var to = Addressees.Of(matter, Recipients(matter, isPublic));
        if (to.Count == 0 && matter.Refusals.All(r => r.Id is not ("recipient-missing" or "party-unknown" or "other-work")))
        {
            matter.Refuse("no-notice-due", new Place.OfHead("claimant"), $"No preliminary notice is due from this claimant.",
                Sentence.Of(isPublic ? "A laborer, and one who has a contract with the direct contractor itself, gives none."
                : "A laborer gives none; one hired by the owner gives it to a construction lender only, and the file names none. If a "
                + "lender comes in, add it to the parties."),
                isPublic ? "Civ. Code § 9300(b)" : "Civ. Code § 8200(e)");
        }

        var leaf = new PaperBuilder(isPublic ? "public-preliminary-notice.pdf" : "preliminary-notice.pdf", "Preliminary Notice");
        leaf.Head(isPublic ? "Public works. California Civil Code sections 8102 and 9300 to 9304"
            : "California Civil Code sections 8102 and 8200 to 8204");
        // No section says where the statement stands (Civ. Code § 8202(a)(3)): what an owner must read comes before the particulars.
        if (!isPublic)
            Statement(leaf);
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, to, isPublic && matter.Job.Work.Body is PublicBody.GeneralServices or PublicBody.Transportation
            ? Officer : null);
        NoticeContents.Put(leaf, matter, "General description of work");
        var estimate =
            matter.Need(matter.Options.Amount ?? PriceEstimate.Of(matter.Known), "estimate-missing", new Place.OfHead("contract.price"),
            $"Add the agreed price, or say the estimate with {new InputName(PaperInput.Amount)}. It needs a basis: what was ordered, and "
                + $"what may yet be.", isPublic
            ? "Civ. Code § 9303" : "Civ. Code § 8202(a)(2)");
        leaf.Field("Estimated total price", TypeStyle.BodyBold, estimate is { } price
            ? [Dollars(price), "This is an estimate of the total price of the work provided and to be provided."] : [null]);
        // What is still to be provided is no demand yet (Civ. Code § 8102(a)(6)(C)).
        var ahead = WorkAhead.In(matter);
        leaf.Field("Demand to date", ToDate(WorkAhead.OwedWithout(matter, ahead)));
        Signing.Claimant(leaf, matter, section);
        return new Bundle([leaf, ProofOfNotice.Build(matter, ProvedNotice.Preliminary, to)], new Guide
        {
            To = to,
            Attention = isPublic && matter.Job.Work.Body is PublicBody.GeneralServices or PublicBody.Transportation ? Officer : null,
            Manner = Addressees.Manner,
            First = [.. First(matter, to, isPublic), .. WorkAhead.LeftOut(matter, ahead, "the demand to date")],
            Steps =
            [
                .. matter.Job.Claimant.Role == ClaimantRole.Subcontractor && !isPublic
                    ? ["If you owe wages, first add to the notice the name and address of each unpaid laborer, and of each laborers’ fund "
                        + "to "
                    + "which payments are due (Civ. Code § 8202(b))."] : Array.Empty<string>(),
                $"Print {(to.Count == 1 ? "the notice" : $"{to.Count} copies of the notice, one for each person named")}; sign "
                    + "each in ink, with date and place, and keep a signed copy.",
                "Make out the envelopes exactly to the addresses above, and mail or hand them over by the act-by day.",
                ProofOfNotice.WithIt,
            ],
            After =
            [
                $"{EntryName.Enter("notice-given")}its day, to whom ({Addressees.Names(to)}), how, "
                    + "article number, the estimate it states and how that was reached; one for each envelope. Keep the paper that "
                    + "shows how.",
                .. isPublic ? Array.Empty<string>()
                : ["You may file a copy with the county recorder, who then notifies you by mail when a notice of completion or "
                    + "cessation is "
                + $"recorded on the property (Civ. Code § 8214); {Price(matter)}. It gives notice to nobody, changes no deadline, and "
                + $"may be destroyed after {matter.ByLaw(Number.FiledNoticeKept).Spelled}: keep searching the index. "
                + $"{EntryName.Enter("notice-filed")}its day and instrument number."],
            ],
        });
    }

    // Civ. Code § 9302.
    private static string? Officer(Party party) => party.Capacity == PartyCapacity.PublicEntity ? "Attention: disbursing officer" : null;

    // What the office takes for filing; to be confirmed where no young page has it.
    private static string Price(Matter matter)
    {
        var office = matter.Facts.County is { } county ? RecorderTable.For(county, matter.AsOf) : null;
        return office?.Fact(RecorderField.FiledNotice) is { Dollars: { } price } fact
            ? $"the fee was listed as {Dollars(price)} on {(fact.PageDay is { } page ? $"a page of {Day(page)}" : "an undated page")}"
                + (office.Asks(RecorderField.FiledNotice) ? "; call to confirm" : "")
            : "ask the office for its price";
    }

    // Civ. Code § 8102(a)(6)(C) asks every claimant's notice for the demand, if any.
    private static IReadOnlyList<string?> ToDate(Waterfall owed) => owed switch
    {
        { IsUnknown: true } => [null],
        { Demand: > 0 } => [Dollars(owed.Demand), "after deducting all just credits and offsets."],
        _ => ["None at this time."],
    };

    private static IReadOnlyList<Recipient> Recipients(Matter matter, bool isPublic)
    {
        if (isPublic)
            return PublicNotice.RecipientsOf(matter.Known);

        // A lender that came on record too late for its notice to be a condition is told all the same.
        return
        [
            .. Stringline.Law.PreliminaryNotice.Recipients.Of(matter.Known),
            .. Stringline.Law.PreliminaryNotice.Recipients.NotYetKnown(matter.Known)
                .Select(lender => new Recipient(PartyCapacity.ConstructionLender, [lender], "Civ. Code § 8200(a)(3)")),
        ];
    }

    private static IEnumerable<string> First(Matter matter, IReadOnlyList<Party> to, bool isPublic)
    {
        string[] missing = [.. matter.Assessment.NoticeDueTo.Where(r => !to.Any(p => r.AnyOf.Contains(p) || r.Agents.Contains(p)))
            .Select(r => string.Join(" or ", r.AnyOf.Select(p => OneLine(p.Name))))];
        if (missing.Length > 0)
        {
            yield return $"This is for some of them only. The notice is due to each; still to be told: {string.Join(", ", missing)} (Civ. "
                + $"Code § {(isPublic ? "9300(a)" : "8200(a)")}).";
        }

        if (matter.Known.PreliminaryNotices.Count > 0)
        {
            yield return "The file shows a preliminary notice given already. "
                + (isPublic ? "Be sure that another is meant."
                : "One notice to each person covers all work that you provide for the same subcontractor or other customer "
                + "(Civ. Code § 8206); be sure that another is meant.");
        }

        if (isPublic && matter.Job.Work.Body is null or PublicBody.GeneralServices or PublicBody.Transportation)
        {
            yield return (matter.Job.Work.Body is null ? "The file does not say what kind of public body it is. " : "")
                + "On work of the State’s Department of Public Works or Department of General Services the notice goes to the "
                + "disbursing officer of "
                + "the department (Civ. Code § 9302).";
        }
    }

    /// <summary>The statement of Civ. Code § 8202(a)(3), in boldface; its own first line is its heading.</summary>
    private static void Statement(PaperBuilder leaf)
    {
        var text = PrescribedText.NoticeToPropertyOwner;
        leaf.Wording = text;
        leaf.WordingPoints = TypeStyle.Notice.Points;
        leaf.Add(new Together(
        [
            new Heading(text.Paragraphs[0], TypeStyle.Notice.At(12.5)) { Before = 18 },
            .. text.Paragraphs.Skip(1).Select(p => new Paragraph(p, TypeStyle.Notice) { Before = 7 }),
        ]));
    }
}
