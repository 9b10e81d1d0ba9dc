using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.PublicWork;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Papers.ClaimOfLien;
using Stringline.Papers.Layout;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Mailing;

/// <summary>
/// The proof of notice declaration (Civ. Code § 8118(a)): type of notice; date, place and manner of giving it and facts that show
/// the manner was right; name and address of each person, and the title or capacity. What the file does not hold is a blank.
/// </summary>
internal static class ProofOfNotice
{
    private const string Title = "Proof of Notice Declaration";

    private static readonly (Manner Manner, string Words)[] Ways =
    [
        (Manner.Personal, "personal delivery"),
        (Manner.RegisteredMail, "registered mail"),
        (Manner.CertifiedMail, "certified mail"),
        (Manner.ExpressMail, "express mail"),
        (Manner.OvernightCarrier, "overnight delivery by an express service carrier"),
        (Manner.Substituted, "leaving the notice and mailing a copy as Code of Civil Procedure section 415.20 provides"),
    ];

    /// <summary>The paper by itself: for preliminary notices that the file shows as given, or with blanks.</summary>
    public static Shelved Shelved { get; } = Shelved.Of(
        new Paper("proof-of-notice", Title, "Civ. Code § 8118", PaperUse.Kept, [WorkKind.Private, WorkKind.Public],
            "Whoever gave a preliminary notice, to prove it; fasten the postal receipts to it.")
        { Takes = [Told.To] },
        Write);

    /// <summary>The preliminary notices of the file.</summary>
    public static IReadOnlyList<NoticeGiven> Given(Matter matter) =>
        [.. matter.Known.PreliminaryNotices.Where(n => n.On is DayFact.Exact && Giving.IsGood(n.Manner))];

    private static Bundle Write(Matter matter)
    {
        var isPublic = matter.Job.Work.Kind == WorkKind.Public;
        var due = isPublic ? PublicNotice.RecipientsOf(matter.Known) : Recipients.Of(matter.Known);
        var given = Given(matter);
        var to = matter.Options.To.Count > 0 || given.Count == 0
            ? Addressees.Of(matter, due)
            : Addressees.WithAddress(matter, [.. given.SelectMany(n => n.To).Distinct().Select(matter.Job.Party).OfType<Party>()],
                "Civ. Code § 8118(a)");
        // A carrier's own number has no check that everybody knows.
        foreach (var notice in given.Where(n => CertifiedMailSheet.ByPost(n.Manner) && n.To.Any(id => to.Any(p => p.Id == id))))
        {
            if (ArticleNumber.Refused(notice.Article, $"{notice.Path}.article", "Civ. Code § 8118(b)") is { } wrong)
                matter.Refuse(wrong);
        }

        if (to.Count == 0 && matter.Clear)
        {
            matter.Refuse("nobody", "entries", "No notice is entered and none is due.",
                "Enter the notice given, or name the persons with --to.", "Civ. Code § 8118(a)");
        }

        return new Bundle([Leaf(matter, "preliminary notice", to, given)], new Guide
        {
            First = [.. given.Count == 0 ? ["The file shows no preliminary notice given: day, place and manner are blanks."]
                : Array.Empty<string>()],
            Steps =
            [
                "The person who delivered or mailed the notice fills in the blanks and signs; nobody else can.",
                "Fasten to it, for each person: the post office’s proof of payment for registered, certified or express mail, or the "
                    + "carrier’s; or a return receipt, tracking record, or the returned envelope (Civ. Code § 8118(b)).",
            ],
            After = [isPublic
                ? "Keep the declaration with its receipts: preliminary notice is a condition of the stop payment notice, and must be shown "
                + "in the action on it (Civ. Code §§ 9300(c), 9500(a)(1))."
                : "Keep the declaration with its receipts: proof of notice is itself a condition of enforcing the lien (Civ. Code § "
                + "8410)."],
        });
    }

    /// <summary>The declaration, one part for each day and manner.</summary>
    public static Leaf Leaf(Matter matter, string kind, IReadOnlyList<Party> to, IReadOnlyList<NoticeGiven> given)
    {
        var leaf = new Leaf("proof-of-notice.pdf", Title);
        leaf.Head("California Civil Code section 8118");
        leaf.Line("Type of notice", $"{char.ToUpperInvariant(kind[0])}{kind[1..]}, given by {matter.Facts.Claimant ?? "the claimant"}");
        leaf.Line("Work", [.. ClaimPaper.Site(matter.Facts).Take(1)]);
        leaf.Line("Given by (name)", (string?)null);
        var parts = Parts(to, given);
        foreach (var part in parts)
            Put(leaf, matter, part);
        leaf.Oath(null, "I gave the notice named above to each person named above, on the day, at the place and in the manner stated.",
            null);
        return leaf;
    }

    private sealed record Part(LocalDate? Day, Manner? Manner, IReadOnlyList<(Party Party, string? Article)> To);

    private static List<Part> Parts(IReadOnlyList<Party> to, IReadOnlyList<NoticeGiven> given)
    {
        List<Part> parts =
        [
            .. given.Where(n => n.To.Any(id => to.Any(p => p.Id == id)))
                .GroupBy(n => $"{LawText.IsoDay(((DayFact.Exact)n.On).Day)} {n.Manner}")
                .OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => new Part(((DayFact.Exact)g.First().On).Day, g.First().Manner,
                    [.. g.SelectMany(n => to.Where(p => n.To.Contains(p.Id)).Select(p => (p, Clean(n.Article))))])),
        ];
        var left = to.Where(p => !parts.Exists(part => part.To.Any(t => t.Party == p))).ToList();
        if (left.Count > 0 || parts.Count == 0)
            parts.Add(new Part(null, null, [.. left.Select(p => (p, (string?)null))]));
        return parts;
    }

    private static void Put(Leaf leaf, Matter matter, Part part)
    {
        leaf.Line("Date given", part.Day is { } day ? Day(day) : null);
        leaf.Line("Place (city, state)", (string?)null);
        leaf.Line("Manner", "as marked here:");
        foreach (var (manner, words) in Ways)
            leaf.Add(new TickBox(words, part.Manner == manner) { Indent = 154, Before = 2 });
        if (part.Manner is null)
            leaf.Blank("the box of the manner used");
        leaf.Lead(part.Manner switch
        {
            Manner.Personal => "On that day and at that place I handed the notice to each person named here:",
            Manner.Substituted =>
                "I left the notice, and thereafter mailed a copy, as Code of Civil Procedure section 415.20 provides, for each person "
                + "named here at the address shown:",
            null => "If by mail or carrier: I deposited the notice at that place in a sealed envelope, postage or charges prepaid for the "
                + "manner marked, addressed to each person named here at the address shown:",
            Manner.CertifiedMail or Manner.RegisteredMail or Manner.ExpressMail or Manner.OvernightCarrier or Manner.CertificateOfMailing =>
                "On that day and at that place I deposited the notice in a sealed envelope, postage or charges prepaid for the manner "
                    + "marked, addressed to each person named here at the address shown:",
            _ => throw new InvalidOperationException($"No such manner: {part.Manner}."),
        });
        leaf.Rows(
            [new Column("Person, and address", 0.46), new Column("Title or capacity", 0.22),
                new Column("Article or tracking number", 0.32)],
            [.. part.To.Select(t => (IReadOnlyList<string>)[
                $"{OneLine(Clean(t.Party.Name) ?? "")}\n{matter.AddressOf(t.Party) ?? "Address: ______________________________"}",
                Service.CapacityOf(t.Party),
                t.Article is { } article ? Article(article) : part.Manner is Manner.Personal or Manner.Substituted ? "none"
                : "____________________"])]);
        if (part.To.Any(t => t.Article is null) && part.Manner is not (Manner.Personal or Manner.Substituted))
            leaf.Blank("article or tracking numbers");
    }
}
