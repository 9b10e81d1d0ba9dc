using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Mailing;

/// <summary>
/// A list of what was or is to be mailed, to whom, with article numbers whose check digits are proved: to take to the post office and to
/// file with the receipts.
/// </summary>
internal static class CertifiedMailSheet
{
    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("certified-mail-sheet", "Certified Mail Sheet", Write)
    {
        Sections = "Civ. Code §§ 8110, 8118(b), 8416(c)",
        Use = PaperUse.Kept,
        Works = [WorkKind.Private, WorkKind.Public, WorkKind.Federal],
        Words = $"Whoever mails, to take to the post office and keep with the receipts.",
        Asks = [new(PaperInput.To), new(PaperInput.Number, "The article number that the file does not hold")],
        Fits = now => now.Job.All<NoticeGiven>().Any(notice => notice.Manner == Manner.CertifiedMail)
            || now.Job.All<ClaimServed>().Any(served => served.Manner == Manner.CertifiedMail) ? "Certified mail is in the file." : null,
    };

    private sealed record Item(Party To, string What, string? On, string? Article, Place Where, Entry? Entry = null, Manner? Manner = null);

    private static Bundle Write(Matter matter)
    {
        var items = matter.Options.To.Count > 0 ? ToMail(matter) : Mailed(matter);
        if (items.Count == 0)
        {
            items = [.. matter.Job.Parties.Where(p => matter.AddressOf(p) is not null)
                .Select(p => new Item(p, "", null, null, Place.Of(matter.Job, p)))];
        }

        if (items.Count == 0)
        {
            matter.Refuse("nobody", Place.Parties, $"No party has an address.",
                $"Add the parties to whom something is mailed, with their addresses.", "Civ. Code § 8110");
        }

        foreach (var item in items)
        {
            if (ArticleNumber.Refused(item.Article, item.Where, "Civ. Code § 8118(b)") is { } wrong)
                matter.Refuse(wrong);
            if (item.Entry is { } entry && SharedArticle.Refused(matter.Known, entry, "Civ. Code § 8118(b)") is { } shared)
                matter.Refuse(shared);
        }

        Addressees.WithAddress(matter, [.. items.Select(i => i.To).Distinct()], "Civ. Code § 8110");
        var leaf = new PaperBuilder("certified-mail-sheet.pdf", "Certified Mail Sheet");
        leaf.Head("Registered, certified and express mail, and certificates of mailing");
        leaf.Line("Sender", $"{matter.Facts.Claimant}\n{matter.Facts.Address}");
        leaf.Line("Job", OneLine(matter.Job.Name));
        var days = items.Select(i => i.On).Distinct().ToList();
        leaf.Line("Deposited on (date)", days is [{ } only] ? only : days.Count > 1 && days.TrueForAll(d => d is not null)
            ? "On the days shown here" : null);
        leaf.Rows(
            [new Column("Addressee", 0.4), new Column("Document and date", 0.25), new Column("Article number", 0.35)],
            [.. items.Select(i => (IReadOnlyList<string>)[
                Addressees.WithHolders(i.To, $"{OneLine(Clean(i.To.Name) ?? "")} ({CapacityWords.Of(i.To)})")
                    + $"\n{matter.AddressOf(i.To) ?? "______________________________"}",
                string.Join("\n", new[] { i.What, i.On }.Where(t => !string.IsNullOrEmpty(t)).DefaultIfEmpty("____________________"))
                    + $"\n{(i.Manner is { } manner ? Capital(MannerInWords.Of(manner)) : "Class of mail: ________")}",
                i.Article is { } article ? ArticleNumber.Printed(article) : "________________________"])]);
        if (items.Any(i => i.Article is null))
            leaf.Blank("Article numbers, copied from the labels");
        if (items.Any(i => i.Manner is null))
            leaf.Blank("Class of mail of each piece");
        leaf.Line("Mailed by (name)", (string?)null);
        leaf.Add(new StampRoom("Post office’s stamp or initials"));
        return new Bundle([leaf], items.All(i => i.On is not null) ? AfterDeposit(items) : BeforeDeposit(items));
    }

    private static Guide BeforeDeposit(List<Item> items) => new()
    {
        First = [$"{Checked} It does not show that the number is the one on your label: compare."],
        Steps =
        [
            "Certified mail: ask for the postmark on the receipt of each article, and for a return receipt where one is wanted.",
            "First-class mail with a certificate of mailing serves for the copy of a claim of lien only (Civ. Code § 8416(c)); other "
                + "notices need registered, certified or express mail (Civ. Code § 8110).",
            items.Any(i => i.Article is null) ? "Write each article number here before the envelopes leave your hand."
                : "Compare each printed article number with the label before the envelopes leave your hand.",
            "Have the post office stamp or initial the sheet in the box at its foot.",
        ],
        After = ["Enter each number as the article number of its mailing, and keep the receipts with the declaration that proves it (Civ. "
            + "Code § 8118(b))."],
    };

    // By the file all of it is mailed: nothing is left to be done with the envelopes.
    private static Guide AfterDeposit(List<Item> items) => new()
    {
        First = [$"By the job file all of this is mailed already. {Checked} It does not show that the number is the one on your "
            + "receipt: compare."],
        Steps =
        [
            "Compare each article number with the postal receipt" + (items.Any(i => i.Article is null)
                ? ", and enter those that are missing here and in the job file." : "."),
            "Attach the receipts, and the return receipts as they come, to the declaration that proves the mailing (Civ. Code § 8118(b)).",
            "Where the post office stamped a list on the day of mailing, keep that one; a later stamp proves no earlier deposit.",
        ],
    };

    private const string Checked = "Article numbers on the sheet have passed their check digit, which finds nearly every single mistyped "
        + "digit and most swaps.";

    private static List<Item> ToMail(Matter matter)
    {
        var to = matter.Named(matter.Options.To);
        if (matter.Options.Number is not null && to.Count != 1)
        {
            matter.Refuse("article-number", Place.Of(PaperInput.Number), $"An article number is given for more than one addressee.",
                $"Name one addressee with {new InputName(PaperInput.To)} for a number, or enter the numbers in the job file.", "");
        }

        return [.. to.Select(p => new Item(p, "", null, Clean(matter.Options.Number), Place.Of(PaperInput.Number)))];
    }

    private static List<Item> Mailed(Matter matter) =>
    [
        .. GivenNotice.In(matter.Known).Where(n => n.Manner is { } manner && ByPost(manner))
            .Select(n => (n.Entry, n.To, What: Capital(n.Kind.Words()), n.Article, n.Manner))
            .Concat(matter.Known.All<ClaimServed>().Where(s => ByPost(s.Manner))
                .Select(s => ((Entry)s, s.To, What: "Copy of the claim of lien", s.Article, (Manner?)s.Manner)))
            .OrderBy(n => GivenNotice.Order(matter.Known, n.Item1, n.To))
            .SelectMany(n => Items(matter, n.Item1, n.To, n.What, n.Article, n.Item5)),
    ];

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static IEnumerable<Item> Items(Matter matter, Entry entry, IReadOnlyList<string> to, string what, string? article,
        Manner? manner) =>
        to.Select(matter.Job.Party).OfType<Party>()
            .Select(p => new Item(p, what, entry.On is DayFact.Exact on ? Day(on.Day) : null, Clean(article), Place.Of(entry, "article"),
                entry, manner));

    internal static bool ByPost(Manner manner) => manner switch
    {
        Manner.CertifiedMail or Manner.RegisteredMail or Manner.ExpressMail or Manner.CertificateOfMailing => true,
        Manner.Personal or Manner.OvernightCarrier or Manner.Substituted => false,
        Manner.FirstClassMail or Manner.Email or Manner.Fax or Manner.Other => false,
        _ => throw new ArgumentOutOfRangeException(nameof(manner), manner, "Not a manner of giving."),
    };
}
