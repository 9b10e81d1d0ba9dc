using Stringline.Law.Facts;
using Stringline.Papers.Layout;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>
/// The proof of service affidavit (Civ. Code § 8416(a)(7)): by whom, date, place, manner, facts that show service as
/// subdivision (c) provides, name and address of the person served and the title or capacity.
/// It is completed and signed by the server after the mailing and before the recording.
/// </summary>
internal static class ServiceAffidavit
{
    /// <summary>Its blocks, kept on one page as long as one page holds them.</summary>
    /// <param name="mailing">The mailing.</param>
    /// <param name="title">Title of the claim whose copy was mailed.</param>
    public static Together Blocks(Mailing mailing, string title) => new(
    [
        new Heading("PROOF OF SERVICE AFFIDAVIT", TypeStyle.Heading) { Before = 24 },
        new Heading("Civil Code section 8416, subdivisions (a)(7) and (c)", TypeStyle.Body) { Before = 0 },
        new Paragraph($"I served a true copy of the foregoing {title}, together with the Notice of Mechanics Lien that is "
            + "part of it, as follows:", TypeStyle.Body) { Before = 10 },
        new FieldRow("Served by (name)", (string?)null),
        new FieldRow("Date of deposit", mailing.Day is { } day ? Day(day) : null),
        new FieldRow("Place of deposit (post office, city, state)", (string?)null),
        new FieldRow("Manner", "by United States mail, postage prepaid:"),
        Box("registered mail", mailing.Manner == Manner.RegisteredMail),
        Box("certified mail", mailing.Manner == Manner.CertifiedMail),
        Box("first-class mail with a certificate of mailing", mailing.Manner == Manner.CertificateOfMailing),
        new Paragraph("On that date and at that place I deposited the copy in the United States mail in a sealed envelope, postage prepaid "
            + "for the manner marked above, addressed to each person named here at the address shown:", TypeStyle.Body) { Before = 10,
            WithNext = true },
        new Table(
            [new Column("Person served: name and address", 0.46), new Column("Title or capacity", 0.22),
                new Column("Article number", 0.32)],
            [.. mailing.To.Select(t => Row(t, mailing.Manner))]),
        .. mailing.CannotBeServed is { } owners ? InPlace(owners) : [],
        new Paragraph("I declare under penalty of perjury under the laws of the State of California that the foregoing is true and "
            + "correct.", TypeStyle.Body) { Before = 10 },
        new Signature(null),
    ]);

    private static TickBox Box(string text, bool ticked) => new(text, ticked) { Indent = 154 };

    private static IReadOnlyList<string> Row(Addressee to, Manner? manner) =>
    [
        to.Address is { } address ? $"{to.Name}\n{address}\n({to.AddressIs})" : $"{to.Name}\nAddress: ______________________________",
        to.Capacity,
        to.Article ?? (manner == Manner.CertificateOfMailing ? "none" : "____________________"),
    ];

    /// <summary>
    /// Only where the owner cannot be served by these mails may the copy go to lender or contractor (Civ. Code § 8416(c)(2)).
    /// </summary>
    private static IEnumerable<Block> InPlace(IReadOnlyList<string> owners) =>
    [
        new FieldRow("Owner or reputed owner", owners.Count == 0 ? [null] : [.. owners]),
        new FieldRow("Address tried, and how", (string?)null),
        new Paragraph("That owner or reputed owner cannot be served in the manner described, because:", TypeStyle.Body) { Before = 10,
            WithNext = true },
        new FieldRow("", null, null) { LabelWidth = 0 },
    ];
}
