using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
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

    /// <summary>The paper by itself: for the notices of one kind that the file shows as given, or with blanks.</summary>
    public static Paper Paper { get; } = new("proof-of-notice", Title, Write)
    {
        Sections = "Civ. Code § 8118",
        Use = PaperUse.Kept,
        Works = [WorkKind.Private, WorkKind.Public],
        Words = $"Whoever gave a notice, of whatever kind, to prove it; attach the postal receipts to it.",
        Asks = [new(PaperInput.Notice), new(PaperInput.To)],
        Fits = now => now.Job.Entries.Any(entry => ProvedNotices.Of(entry) is not null) ? "A notice is in the file; this proves it." : null,
    };

    /// <summary>The step of a sheet whose notice has its proof of notice with it.</summary>
    public const string WithIt =
        "Whoever gives it fills in and signs the proof of notice declaration that comes with it; attach the postal receipts to it (Civ. "
        + "Code § 8118).";

    /// <summary>The step of any other sheet: which paper proves the notice, and for which kind it is asked for.</summary>
    public static string Step(ProvedNotice kind) =>
        "Whoever gives it fills in and signs a proof of notice, one for each mailing, and attaches the receipts to it"
        + $"{(IsLeftFree(kind) ? "" : " (Civ. Code § 8118)")}: make the paper “{Title}” for the kind “{kind.Words()}”.";

    // No section asks how these are given or proved (Civ. Code §§ 8128, 8308); the same proof is the safe one.
    private static bool IsLeftFree(ProvedNotice kind) => kind is ProvedNotice.Default or ProvedNotice.StopPaymentRelease;

    private static Bundle Write(Matter matter)
    {
        if (KindOf(matter) is not { } kind)
            return new Bundle([new PaperBuilder("proof-of-notice.pdf", Title)], new Guide());
        var given = GivenNotice.In(matter.Known).Where(n => n.Kind == kind && n.CanBeProved).ToList();
        var named = given.SelectMany(n => n.To).Distinct().ToList();
        var to = kind == ProvedNotice.ReleaseDemand ? [] : matter.Options.To.Count == 0 && named.Count > 0
            ? Addressees.WithAddress(matter, matter.Named(named), "Civ. Code § 8118(a)")
            : NoticeDue.To(matter, kind);
        foreach (var notice in given.Where(n => n.To.Any(id => to.Any(p => p.Id == id))))
            NotMisread(matter, notice);
        if (to.Count == 0 && matter.Clear && kind != ProvedNotice.ReleaseDemand)
        {
            matter.NotEntered("notice-given", "nobody", $"No {kind.Words()} is entered, and the file does not say to whom one goes.",
                $"Enter the notice given, or name the persons with {new InputName(PaperInput.To)}.", "Civ. Code § 8118(a)");
        }

        return new Bundle([Build(matter, kind, to, given)], new Guide
        {
            First = [.. given.Count == 0 ? [$"The file shows no {kind.Words()} given: day, place and manner are blanks."]
                : Array.Empty<string>()],
            Steps =
            [
                "The person who delivered or mailed the notice fills in the blanks and signs; nobody else can.",
                "Attach to it, for each person: the post office’s proof of payment for registered, certified or express mail, or the "
                    + "carrier’s; or a return receipt, tracking record, or the returned envelope (Civ. Code § 8118(b)).",
            ],
            After = ["Keep the declaration with its receipts" + (kind == ProvedNotice.Preliminary
                ? matter.Job.Work.Kind == WorkKind.Public
                    ? ": preliminary notice is a condition of the stop payment notice, and must be shown in the action on it "
                    + "(Civ. Code §§ 9300(c), 9500(a)(1))."
                    : ": proof of notice is itself a condition of enforcing the lien (Civ. Code § 8410)."
                : ": without them nobody can show that the notice was given (Civ. Code § 8118).")],
        });
    }

    // The kind that was told; else the only one that the file tells of.
    private static ProvedNotice? KindOf(Matter matter)
    {
        if (matter.Options.Notice is { } told)
            return told;
        var kinds = GivenNotice.In(matter.Known).Select(n => n.Kind).Distinct().ToList();
        if (kinds.Count == 1)
            return kinds[0];
        matter.Refuse("notice-kind-missing", Place.Of(PaperInput.Notice),
            Sentence.Of(kinds.Count == 0 ? "The file tells of no notice given."
            : $"The file tells of several kinds: {string.Join("; ", kinds.Select(k => k.Words()))}."),
            $"Say which notice is to be proved with {new InputName(PaperInput.Notice)}: {string.Join("; ",
                ProvedNotices.All.Select(k => k.Words()))}.",
            "Civ. Code § 8118(a)");
        return null;
    }

    // A carrier's own number has no check that everybody knows.
    private static void NotMisread(Matter matter, GivenNotice notice)
    {
        if (notice.Manner is { } manner && CertifiedMailSheet.ByPost(manner)
            && ArticleNumber.Refused(notice.Article, Place.Of(notice.Entry, "article"), "Civ. Code § 8118(b)") is { } wrong)
            matter.Refuse(wrong);
        if (SharedArticle.Refused(matter.Known, notice.Entry, "Civ. Code § 8118(b)") is { } shared)
            matter.Refuse(shared);
    }

    /// <summary>The declaration for a notice that is made now: what is told of its giving is a blank.</summary>
    public static PaperBuilder Build(Matter matter, ProvedNotice kind, IReadOnlyList<Party> to) => Build(matter, kind, to, []);

    // One part for each day and manner.
    private static PaperBuilder Build(Matter matter, ProvedNotice kind, IReadOnlyList<Party> to, IReadOnlyList<GivenNotice> given)
    {
        var leaf = new PaperBuilder("proof-of-notice.pdf", Title);
        leaf.Head("California Civil Code section 8118");
        var words = kind.Words();
        var isOwners = kind == ProvedNotice.ReleaseDemand;
        var giver = isOwners ? Clean(matter.Owner?.Name) is { } owner ? OneLine(owner) : "the owner"
            : matter.Facts.Claimant ?? "the claimant";
        leaf.Line("Type of notice", $"{char.ToUpperInvariant(words[0])}{words[1..]}, given by {giver}");
        leaf.Line("Site", [.. SiteWords.Of(matter.Facts).Take(1)]);
        leaf.Line("Given by (name)", (string?)null);
        var parts = isOwners
            ? [new Part(null, null, [new Person("", matter.Facts.Claimant ?? "", matter.Facts.Address, "claimant", null)])]
            : Parts([.. to.Select(p => new Person(p.Id, Addressees.NameLines(p), matter.AddressOf(p), CapacityWords.Of(p), null))],
                given);
        foreach (var part in parts)
            Put(leaf, part);
        leaf.Oath(null, "I gave the notice named above to each person named above, on the day, at the place and in the manner stated.",
            null);
        return leaf;
    }

    private sealed record Person(string Id, string Name, string? Address, string Capacity, string? Article);

    private sealed record Part(LocalDate? Day, Manner? Manner, IReadOnlyList<Person> To);

    private static List<Part> Parts(IReadOnlyList<Person> to, IReadOnlyList<GivenNotice> given)
    {
        // Where the file does not say to whom it went, it went to the only one to whom it can have gone, or nobody can say.
        bool WentTo(GivenNotice notice, Person person) => notice.To.Count > 0 ? notice.To.Contains(person.Id) : to.Count == 1;
        List<Part> parts =
        [
            .. given.Where(n => to.Any(p => WentTo(n, p)))
                .GroupBy(n => $"{LawText.IsoDay(n.Day!.Value)} {n.Manner}")
                .OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => new Part(g.First().Day, g.First().Manner,
                    [.. g.SelectMany(n => to.Where(p => WentTo(n, p)).Select(p => p with { Article = Clean(n.Article) }))])),
        ];
        var left = to.Where(p => !parts.Exists(part => part.To.Any(t => t.Id == p.Id))).ToList();
        if (left.Count > 0 || parts.Count == 0)
            parts.Add(new Part(null, null, left));
        return parts;
    }

    private static void Put(PaperBuilder leaf, Part part)
    {
        leaf.Line("Date given", part.Day is { } day ? Day(day) : null);
        leaf.Line("Place (city, state)", (string?)null);
        leaf.Line("Manner", "As marked here:");
        foreach (var (manner, words) in Ways)
            leaf.Add(new TickBox(words, part.Manner == manner) { Indent = 154, Before = 2 });
        if (part.Manner is null)
            leaf.Blank("The box of the manner used");
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
            [new Column("Name and address", 0.44), new Column("Title or capacity", 0.2),
                new Column("Article or tracking number", 0.36)],
            [.. part.To.Select(t => (IReadOnlyList<string>)[
                $"{t.Name}\n{t.Address ?? "Address: ______________________________"}",
                t.Capacity,
                t.Article is { } article ? Article(article) : part.Manner is Manner.Personal or Manner.Substituted ? "None"
                : "___________________________"])]);
        if (part.To.Any(t => t.Article is null) && part.Manner is not (Manner.Personal or Manner.Substituted))
            leaf.Blank("Article or tracking numbers");
    }
}
