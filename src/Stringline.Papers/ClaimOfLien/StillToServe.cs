using Stringline.Law.Facts;
using Stringline.Papers.Counter;
using Stringline.Papers.Layout;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>
/// What the counter sheet says where a copy of the claim is still to be mailed to an owner: each is served, and each mailing is in an
/// affidavit, before the claim is recorded (Civ. Code § 8416(a)(7), (c)).
/// </summary>
internal sealed class StillToServe(ClaimFacts facts, Service service)
{
    /// <summary>The blocks; none where every owner is served.</summary>
    public IEnumerable<Block> Blocks
    {
        get
        {
            if (service.Done && service.Left.Count == 0)
                yield break;
            yield return new Paragraph(Head, CounterType.Large) { Before = 4 };
            foreach (var old in service.OldCopies)
            {
                yield return new Paragraph($"The copy mailed to {string.Join("; ", old.To)} on {Day(old.Day)} is older than this claim: "
                    + $"{What(old.Newer)}. The affidavit cannot swear that it is a true copy. Mail a copy of this claim anew (Civ. Code § "
                    + "8416(a)(7)).", CounterType.Bold) { Before = 3 };
            }

            if (service.Done && service.LeftWithoutAddress is { Count: > 0 } unknown)
            {
                yield return new Paragraph($"The file has no address of {string.Join("; ", unknown)}. Look for the residence or place of "
                    + "business, the address on the building permit, or the one in the construction trust deed (Civ. Code § 8416(c)(1)).",
                    CounterType.Text) { Before = 3 };
            }

            string[] steps =
            [
                .. service.Done ? Array.Empty<string>()
                    : ["Sign the claim and the verification in ink on both originals, with date and place."],
                $"Copy the whole claim, the Notice of Mechanics Lien included, and mail a copy to {Whom} by registered mail, certified mail, "
                    + "or first-class mail with a certificate of mailing. No other mail, no courier, not by hand (Civ. Code § 8416(c)).",
                $"Then fill in the blanks of the {(service.Done ? "last " : "")}proof of service affidavit on both originals; the person "
                    + "who mailed signs it. Keep the postal receipt.",
                $"Then record. {EntryName.Enter("claim-served")}its day, how, and the article number.",
            ];
            for (var i = 0; i < steps.Length; i++)
                yield return new Paragraph(steps[i], CounterType.Text) { Before = 3, Indent = 18, Mark = $"{i + 1}." };
        }
    }

    private string Head => service switch
    {
        { OldCopies.Count: > 0 } => "Serve again before you record: a copy is older than the claim.",
        { Done: false } => "Serve before you record: the file shows no mailing.",
        { Left: [var one] } => $"Serve before you record: no mailing is entered to {OneLine(one.Name)}.",
        _ => $"Serve before you record: no mailing is entered to {service.Left.Count} of the {facts.Owners.Count} owners.",
    };

    private string Whom => service.Done
        ? string.Join("; ", service.Left.Select(o => OneLine(o.Name)))
        : facts.Owners.Count == 1 ? OneLine(facts.Owners[0].Name) : "each owner";

    // What came after the copy, in words.
    private static string What(Entry entry)
    {
        var day = (entry is Furnished furnished ? furnished.Until : entry.On).Latest;
        var what = entry switch
        {
            Furnished => "work was furnished after it",
            Change => "the price was changed after it",
            Paid => "a payment came after it",
            Credited => "a credit was given after it",
            Waived => "a waiver and release took effect after it",
            _ => throw new ArgumentOutOfRangeException(nameof(entry), entry, "Changes no claim."),
        };
        return day is { } known && entry is not Waived { PaymentCleared: not null } && !(entry.Learned > known)
            ? $"{what}, {(entry is Furnished ? "through" : "on")} {Day(known)}" : what;
    }
}
