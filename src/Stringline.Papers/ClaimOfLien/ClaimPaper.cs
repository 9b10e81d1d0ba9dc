using Stringline.Law.Facts;
using Stringline.Law.Recording;
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

    // The notice is in boldface of at least ten points (Civ. Code § 8416(a)(8)).
    private const double LeastPoints = 10;

    /// <summary>Id of the finding whose day governs a claim.</summary>
    public const string Deadline = "claim-of-lien.last-day";

    /// <summary>Writes the claim, or one that stands on a recorded one.</summary>
    public static Bundle Write(Matter matter, EarlierClaim? earlier)
    {
        var facts = earlier is Conversion converted ? matter.Facts with { Demand = converted.Unpaid, Contract = converted.Contract }
            : matter.Facts;
        if (earlier is null && matter.Options.Structure is { } structure)
        {
            var one = OneStructure.Of(matter.Job, matter.Assessment, facts, structure);
            facts = one.Facts;
            matter.RefuseEach(one.Refusals);
        }

        var service = Service.Of(matter.Job, matter.AsOf, earlier?.MailedAfter);
        matter.RefuseEach(ClaimRefusals.Of(matter, earlier, facts, service));
        return new Bundle([Build(matter, facts, service, earlier)], new Guide { Recording = Recording(facts, service, earlier) })
        {
            Sheet = (fee, pages, inTheWay) =>
                new CounterSheet(matter.Job, matter.Assessment, facts, service, fee, pages, inTheWay, earlier),
        };
    }

    /// <summary>The paper.</summary>
    internal static PaperBuilder Build(Matter matter, PrintedFacts facts, Service service, EarlierClaim? earlier)
    {
        const string section = "Civ. Code § 8416(a)";
        var leaf = new PaperBuilder(earlier?.FileName ?? "claim-of-mechanics-lien.pdf", TitleOf(earlier))
        {
            Return = new ReturnBlock(facts.Claimant ?? "", facts.Address ?? ""),
            RowBefore = 7,
            OathBefore = 7,
            Wording = PrescribedText.NoticeOfMechanicsLien,
            WordingPoints = LeastPoints,
            LastSentenceInCapitals = true,
        };
        leaf.Head(earlier?.Heads ?? Heads);
        leaf.Say($"{facts.Claimant ?? "The undersigned"} (“claimant”) claims a mechanics lien under sections 8400 and following of "
            + "the California Civil Code upon the real property described in paragraph 5 and the work of improvement there, and states:",
            before: 10);
        if (earlier is not null)
            leaf.Say(earlier.Sentence, TypeStyle.BodyBold, before: 8);
        Contents(leaf, facts);
        Signing.Claimant(leaf, matter, section);
        Signing.Verify(leaf, matter, NameOf(earlier), section, shortly: $"{(earlier is null ? "" : earlier.Kind + " ")}claim",
            saysReputed: SaysReputed(facts, service));
        leaf.Add(Notice(PrescribedText.NoticeOfMechanicsLien));
        foreach (var mailing in service.Mailings)
        {
            leaf.Add(ServiceAffidavit.Blocks(mailing, TitleOf(earlier)),
                mailing.To.SelectMany(to => new[] { to.Name, to.Address, to.Article }).OfType<string>());
        }

        return leaf;
    }

    private static Recording Recording(PrintedFacts facts, Service service, EarlierClaim? earlier) => new(
        RecordedPaperKind.ClaimOfLien, 0, earlier is null ? 0 : 1, "No notary, no acknowledgment page (Civ. Code § 8416(b)).")
    {
        NamesAtEachAddress =
            [.. facts.Owners.GroupBy(o => Clean(o.Address) ?? o.Id).Select(g => IndexNames.Of(null, g).Count).DefaultIfEmpty(1)],
        ServedWithCertificateOfMailing = service.Mailings.Any(m => m.Manner == Manner.CertificateOfMailing),
    };

    /// <summary>The title of a claim, or of one that stands on another.</summary>
    public static string TitleOf(EarlierClaim? earlier) => earlier?.PaperTitle ?? Title;

    /// <summary>What a sentence calls it: <c>amended claim of mechanics lien</c>.</summary>
    public static string NameOf(EarlierClaim? earlier) => $"{(earlier is null ? "" : earlier.Kind + " ")}claim of mechanics lien";

    private static void Contents(PaperBuilder leaf, PrintedFacts facts)
    {
        leaf.Field("Claimant’s demand", TypeStyle.BodyBold, facts.Demand > 0
            ? [Dollars(facts.Demand), $"({InWords(facts.Demand)}), after deducting all just credits and offsets."]
            : [null]);
        leaf.Field(facts.SeveralOwners ? "Owners or reputed owners" : "Owner or reputed owner", [.. Owners(facts)]);
        leaf.Field("Kind of work furnished by claimant", facts.Work);
        leaf.Field("Employed by, or furnished to",
            [facts.HiredBy is { } hirer ? SiteWords.Hirer(hirer) : null, .. facts.Contract is { } contract ? [contract] : (string?[])[]]);
        leaf.Field("Site", [.. SiteWords.Of(facts)]);
        leaf.Field("Claimant", [Lines(facts.Claimant, facts.Address), .. facts.License is { } license ? [license] : (string?[])[]]);
        if (facts.OnStructure is not null)
        {
            leaf.Field("Work of improvement", "The structure named in paragraph 5 is one of several separate residential units, and a work "
                + "of "
                + "improvement of its own. The demand is the amount due for it alone (Civil Code sections 8446 and 8448).");
        }

        if (facts.IsDesignated)
        {
            leaf.Field("Amount due for each work of improvement",
                [.. facts.Works.Select(w => $"{Dollars(w.Share!.Value)}: {OneLine(w.Text)}")]);
        }

        leaf.Say("The verification, the Notice of Mechanics Lien and the proof of service affidavit that follow are part of this claim.");
        foreach (var name in facts.Owners.SelectMany(IndexNames.OfOwner))
            leaf.Hold(name.Written);
    }

    private static string? Lines(params IReadOnlyList<string?> parts) => Clean(string.Join('\n', parts));

    /// <summary>
    /// Each name on a line of its own: the recorder indexes it (Gov. Code § 27288.1(a)). That it is the name of record is said only where
    /// the file has how title is held, and of nobody who is only reputed to own.
    /// </summary>
    private static IEnumerable<string?> Owners(PrintedFacts facts)
    {
        if (facts.Owners.Count == 0)
            return [null];
        var names = facts.Owners.Select(o =>
            $"{OneLine(Clean(o.Name) ?? "")} "
            + $"({CapacityWords.Of(o)}){(IndexNames.NeedsTitleWords(o) ? $"\nTitle held by {IndexNames.TitleWords(o)}" : "")}");
        return
        [
            .. names,
            .. facts.Owners.Any(o => o.Reputed || o.HoldsTitleAs is null) ? [] : (string[])[facts.SeveralOwners
                ? "These are the names in which the interest appears of record, as far as claimant knows."
                : "This is the name in which the interest appears of record, as far as claimant knows."],
        ];
    }

    /// <summary>
    /// Whether one whom this claim names, its affidavit included, is only reputed to be what it is called: that is stated on belief (Code
    /// Civ. Proc. § 446(a)).
    /// </summary>
    private static bool SaysReputed(PrintedFacts facts, Service service) =>
        facts.Owners.Any(o => o.Reputed) || facts.HiredBy?.Reputed == true
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
