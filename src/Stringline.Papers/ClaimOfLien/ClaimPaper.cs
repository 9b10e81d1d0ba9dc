using Stringline.Law.Facts;
using Stringline.Papers.Indexing;
using Stringline.Papers.Layout;
using Stringline.Papers.Prescribed;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>
/// The claim of mechanics lien: the contents of Civ. Code § 8416(a) in the order of its paragraphs, signed, verified,
/// with the statutory notice and the proof of service affidavit. No acknowledgment (Civ. Code § 8416(b), Gov. Code § 27287).
/// </summary>
internal static class ClaimPaper
{
    /// <summary>Title, and file name's stem.</summary>
    public const string Title = "Claim of Mechanics Lien";

    /// <summary>The section under the title.</summary>
    public const string Heads = "California Civil Code section 8416";

    /// <summary>Id of the finding whose day governs a claim.</summary>
    public const string Deadline = "claim-of-lien.last-day";

    /// <summary>File name.</summary>
    public const string FileName = "claim-of-mechanics-lien.pdf";

    /// <summary>The paper's plan.</summary>
    public static PaperPlan Plan(ClaimFacts facts, Service service, EarlierClaim? earlier, LocalDate made, bool draft) => new()
    {
        Title = TitleOf(earlier),
        Foot = facts.Claimant is { } name ? $"{TitleOf(earlier)}, {Shortened(name, 60)}" : TitleOf(earlier),
        Made = made,
        Draft = draft,
        Return = new ReturnBlock(facts.Claimant ?? "", facts.Address ?? ""),
        Blocks =
        [
            .. Head(facts, earlier), .. Contents(facts), .. Signed(facts), Verification(facts, service, earlier),
            Notice(PrescribedText.NoticeOfMechanicsLien),
            .. service.Mailings.Select(m => ServiceAffidavit.Blocks(m, TitleOf(earlier))),
        ],
    };

    /// <summary>The title of a claim, or of one that stands on another.</summary>
    public static string TitleOf(EarlierClaim? earlier) => earlier?.PaperTitle ?? Title;

    /// <summary>What a sentence calls it: <c>amended claim of mechanics lien</c>.</summary>
    public static string NameOf(EarlierClaim? earlier) => $"{(earlier is null ? "" : earlier.Kind + " ")}claim of mechanics lien";

    private static IEnumerable<Block> Head(ClaimFacts facts, EarlierClaim? earlier) =>
    [
        new Heading(TitleOf(earlier).ToUpperInvariant(), TypeStyle.Title) { Before = 0 },
        new Heading(earlier?.Heads ?? Heads, TypeStyle.Body) { Before = 0 },
        new Paragraph($"{facts.Claimant ?? "The undersigned"} (“claimant”) claims a mechanics lien under sections 8400 and following of "
            + "the California Civil Code upon the real property described in paragraph 5 and the work of improvement there, and states:",
            TypeStyle.Body) { Before = 10 },
        .. earlier is null ? [] : (Block[])[new Paragraph(earlier.Sentence, TypeStyle.BodyBold) { Before = 8 }],
    ];

    private static IEnumerable<Block> Contents(ClaimFacts facts)
    {
        yield return new FieldRow("Claimant’s demand", facts.Demand > 0
            ? [Dollars(facts.Demand), $"({InWords(facts.Demand)}), after deducting all just credits and offsets."]
            : [null]) { Number = "1.", FirstStyle = TypeStyle.BodyBold };
        yield return new FieldRow(facts.SeveralOwners ? "Owners or reputed owners" : "Owner or reputed owner",
            [.. Owners(facts)]) { Number = "2." };
        yield return new FieldRow("Kind of work furnished by claimant", facts.Work) { Number = "3." };
        yield return new FieldRow("Employed by, or furnished to", 
            [facts.HiredBy is { } hirer ? Hirer(hirer) : null, .. facts.Contract is { } contract ? [contract] : Array.Empty<string?>()])
            { Number = "4." };
        yield return new FieldRow("Site", [.. Site(facts)]) { Number = "5." };
        yield return new FieldRow("Claimant",
            [Lines(facts.Claimant, facts.Address), .. facts.License is { } license ? [license] : Array.Empty<string>()]) { Number = "6." };
        if (facts.OnStructure is not null)
        {
            yield return new FieldRow("Work of improvement",
                ["The structure named in paragraph 5 is one of several separate residential units, and a work of improvement of its own. "
                    + "The demand is the amount due for it alone (Civil Code sections 8446 and 8448)."]) { Number = "7." };
        }

        if (facts.IsDesignated)
        {
            yield return new FieldRow("Amount due for each work of improvement",
                [.. facts.Works.Select(w => $"{Dollars(w.Share!.Value)}: {OneLine(w.Text)}")]) { Number = "7." };
        }

        yield return new Paragraph("The verification, the Notice of Mechanics Lien and the proof of service affidavit that follow "
            + "are part of this claim.", TypeStyle.Body) { Before = 9 };
    }

    private static string? Lines(params IReadOnlyList<string?> parts) => Clean(string.Join('\n', parts));

    /// <summary>
    /// Each name on a line of its own: the recorder indexes it (Gov. Code § 27288.1(a)). That it is the name of record is said only where
    /// the file has how title is held, and of nobody who is only reputed to own.
    /// </summary>
    private static IEnumerable<string?> Owners(ClaimFacts facts)
    {
        if (facts.Owners.Count == 0)
            return [null];
        var names = facts.Owners.Select(o =>
            $"{OneLine(Clean(o.Name) ?? "")} "
            + $"({Service.CapacityOf(o)}){(IndexNames.NeedsTitleWords(o) ? $"\nTitle held by {IndexNames.TitleWords(o)}" : "")}");
        return
        [
            .. names,
            .. facts.Owners.Any(o => o.Reputed || o.HoldsTitleAs is null) ? [] : (string[])[facts.SeveralOwners
                ? "These are the names in which the interest appears of record, as far as claimant knows."
                : "This is the name in which the interest appears of record, as far as claimant knows."],
        ];
    }

    internal static string Hirer(Party hirer)
    {
        var name = Addressees.WithHolders(hirer, $"{OneLine(Clean(hirer.Name) ?? "")} ({Service.CapacityOf(hirer)})");
        return Clean(hirer.Address) is { } address ? $"{name}\n{OneLine(address)}" : name;
    }

    internal static IEnumerable<string?> Site(ClaimFacts facts)
    {
        IEnumerable<string?> known = new[]
        {
            facts.Street,
            facts.OnStructure,
            facts.County is { } county ? (county == "San Francisco" ? "City and County of San Francisco" : $"County of {county}")
                + ", State of California" : null,
            facts.Apn is { } apn ? $"Assessor’s parcel {(facts.Parcels is { Count: > 1, Unread: null } ? "numbers" : "number")}: "
                + $"{OneLine(apn)}" : null,
            facts.Legal is { } legal ? $"Legal description: {legal}" : null,
        }.OfType<string>();

        // County and parcel number alone do not describe the site: they stand under a blank for what does.
        return facts.Street is null && facts.Legal is null ? [null, .. known] : known;
    }

    private static IEnumerable<Block> Signed(ClaimFacts facts) =>
        [new Signature(facts.Signer, [.. Under(facts)]) { Before = 10 }];

    private static IEnumerable<string> Under(ClaimFacts facts)
    {
        if (facts.SignsForSelf)
            return ["Claimant"];
        return facts.SignerTitle is { } title
            ? [$"{title}, for claimant {facts.Claimant}"]
            : [$"For claimant {facts.Claimant}"];
    }

    /// <summary>
    /// Verified by the claimant, or by an agent within the agent's authority (Civ. Code §§ 8066, 8416(a)). The form of the oath is that of
    /// Code Civ. Proc. §§ 446 and 2015.5.
    /// </summary>
    private static Together Verification(ClaimFacts facts, Service service, EarlierClaim? earlier)
    {
        var paper = NameOf(earlier);
        var who = facts.SignsForSelf
            ? $"I am the claimant named in the foregoing {paper}."
            : facts.SignerTitle is { } title
                ? $"I am {title} of {facts.Claimant}, the claimant named in the foregoing {paper}, and I am authorized to "
                + "make this verification for the claimant."
                : $"I am the agent of {facts.Claimant}, the claimant named in the foregoing {paper}, and I am authorized "
                + "to make this verification for the claimant.";
        return new Together(
            new Heading("VERIFICATION", TypeStyle.Heading) { Before = 20 },
            new Paragraph($"{who} I have read the {(earlier is null ? "" : earlier.Kind + " ")}claim and know its contents. "
                + Signing.OfKnowledge(SaysReputed(facts, service)), TypeStyle.Body),
            new Paragraph("I declare under penalty of perjury under the laws of the State of California that the foregoing is true and "
                + "correct.", TypeStyle.Body),
            new Signature(facts.Signer, [.. Under(facts)]));
    }

    /// <summary>
    /// Whether one whom this claim names, its affidavit included, is only reputed to be what it is called: that is stated on belief (Code
    /// Civ. Proc. § 446(a)).
    /// </summary>
    private static bool SaysReputed(ClaimFacts facts, Service service) => facts.Owners.Any(o => o.Reputed) || facts.HiredBy?.Reputed == true
        || service.Mailings.SelectMany(m => m.To).Any(t => t.Capacity.StartsWith("reputed", StringComparison.Ordinal));

    /// <summary>
    /// The notice, letter for letter, in boldface of at least ten points (Civ. Code § 8416(a)(8)); its own first two lines are its
    /// headings.
    /// </summary>
    internal static Together Notice(PrescribedText text) => new(
    [
        new Heading(text.Paragraphs[0], TypeStyle.Notice.At(12.5)) { Before = 22 },
        new Heading(text.Paragraphs[1], TypeStyle.Notice.At(12)) { Before = 0 },
        .. text.Paragraphs.Skip(2).Select(p => new Paragraph(p, TypeStyle.Notice) { Before = 8 }),
    ]);
}
