using Stringline.Law.Facts;

namespace Stringline.Papers.Mailing;

/// <summary>A manner of giving a paper, in words.</summary>
internal static class MannerInWords
{
    /// <summary>The words, to stand after "by".</summary>
    public static string Of(Manner manner) => manner switch
    {
        Manner.Personal => "hand (personal delivery)",
        Manner.CertifiedMail => "certified mail",
        Manner.RegisteredMail => "registered mail",
        Manner.ExpressMail => "express mail",
        Manner.OvernightCarrier => "courier (overnight carrier)",
        Manner.CertificateOfMailing => "first-class mail with a certificate of mailing",
        Manner.Substituted => "leaving and mailing (substituted service)",
        Manner.FirstClassMail => "plain first-class mail",
        Manner.Email => "e-mail",
        Manner.Fax => "fax",
        Manner.Other => "another way",
        _ => throw new ArgumentOutOfRangeException(nameof(manner), manner, "Not a manner of giving."),
    };
}
