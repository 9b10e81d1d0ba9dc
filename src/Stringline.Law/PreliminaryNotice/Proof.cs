using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>Whether a notice can be proved: proof of notice is itself a condition of enforcing the lien (Civ. Code §§ 8118, 8410).</summary>
public static class Proof
{
    /// <summary>What is missing to prove the notices given.</summary>
    [Rule("Civ. Code § 8118")]
    [Rule("Civ. Code § 8108")]
    public static IEnumerable<Reason> Alarms(FactsAsOf facts, IEnumerable<NoticeGiven> notices)
    {
        foreach (var notice in notices)
        {
            if (!Giving.Counts(notice))
                continue;
            if (NeedsPostalPaper(notice.Manner) && string.IsNullOrWhiteSpace(notice.Article))
                yield return Reason.Of("Civ. Code § 8118(b)", $"Given, but not provable from the file: proof by mail takes a declaration and a postal or carrier's record; enter the article or tracking number and keep the paper.", [notice]);
            foreach (var id in notice.To)
            {
                if (facts.Job.Party(id) is { } party && string.IsNullOrWhiteSpace(party.Address))
                    yield return Reason.Of("Civ. Code § 8108", $"The file has no address for {party.Name}, so nobody can show that the notice went to a right one.", [notice]);
            }
        }
    }

    private static bool NeedsPostalPaper(Manner manner) => manner switch
    {
        Manner.CertifiedMail or Manner.RegisteredMail or Manner.ExpressMail or Manner.OvernightCarrier => true,
        Manner.Personal or Manner.Substituted or Manner.CertificateOfMailing => false,
        Manner.FirstClassMail or Manner.Email or Manner.Fax or Manner.Other => false,
        _ => throw new ArgumentOutOfRangeException(nameof(manner), manner, "Not a manner of giving notice."),
    };
}
