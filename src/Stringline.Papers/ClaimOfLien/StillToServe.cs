using Stringline.Law.Facts;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>
/// What the counter sheet says where a copy of the claim is still to be mailed to an owner: each is served, and each mailing is in an
/// affidavit, before the claim is recorded (Civ. Code § 8416(a)(7), (c)).
/// </summary>
internal sealed class StillToServe(PrintedFacts facts, Service service)
{
    /// <summary>What is to be seen first; null where every owner is served.</summary>
    public string? Head => service switch
    {
        { Done: true, Left.Count: 0 } => null,
        { OldCopies.Count: > 0 } => "Serve again before you record: a copy is older than the claim.",
        { Done: false } => "Serve before you record: the file shows no mailing.",
        { Left: [var one] } => $"Serve before you record: no mailing is entered to {OneLine(one.Name)}.",
        _ => $"Serve before you record: no mailing is entered to {service.Left.Count} of the {facts.Owners.Count} owners.",
    };

    /// <summary>Why a mailing that is entered does not do, and whose address is not known.</summary>
    public IEnumerable<string> Doubts
    {
        get
        {
            foreach (var old in service.OldCopies)
            {
                yield return $"The copy mailed to {string.Join("; ", old.To)} on {Day(old.Day)} is older than this claim: "
                    + $"{What(old.Newer)}. The affidavit cannot swear that it is a true copy. Mail a copy of this claim anew "
                    + "(Civ. Code § 8416(a)(7)).";
            }

            if (service.Done && service.LeftWithoutAddress is { Count: > 0 } unknown)
            {
                yield return $"The file has no address of {string.Join("; ", unknown)}. Look for the residence or place of "
                    + "business, the address on the building permit, or the one in the construction trust deed (Civ. Code § 8416(c)(1)).";
            }
        }
    }

    /// <summary>Whether a copy went first-class with a certificate of mailing.</summary>
    public bool ByCertificate => service.Mailings.Any(m => m.Manner == Manner.CertificateOfMailing);

    /// <summary>The steps from signing to the affidavit, in order.</summary>
    public IReadOnlyList<string> Steps =>
    [
        "Sign claim and verification in ink on both originals, with date and place" + (service.Done ? ", if that is not done." : "."),
        "By registered or certified mail, or first-class with a certificate of mailing, which the post office stamps only when you mail, "
            + $"send a copy of the whole claim, the Notice of Mechanics Lien included, to {Whom}. No other mail, no courier, not by hand "
            + "(Civ. Code § 8416(c)). If an owner cannot be served by these mails: mail to the construction lender, or to the direct "
            + "contractor if you are not it (§ 8416(c)(2)), and keep what shows why.",
        $"Fill in the {(service.Done ? "last " : "")}proof of service affidavit on both originals; the person who mailed signs it. Keep "
            + $"the "
            + $"postal receipt. {EntryName.Enter("claim-served")}its day, how, and the article number.",
    ];

    private string Whom => service.Done
        ? service.Left is [var only] ? Whole(only) : $"the {service.Left.Count} owners not served yet"
        : facts.Owners.Count == 1 ? Whole(facts.Owners[0]) : "each owner";

    // A trust or an estate is served by those who hold title for it.
    private static string Whole(Party owner) => Addressees.InSentence(owner);

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
