using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>
/// Whether a notice can be proved: proof of notice is itself a condition of enforcing the lien (Civ. Code §§ 8118, 8410).
/// </summary>
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
                yield return Reason.Of("Civ. Code § 8118(b)", $"Given, but not provable from the file: proof by mail takes a declaration "
                    + $"and a postal or carrier's record; enter the article or tracking number and keep the paper.", [notice]);
            if (notice.Manner is Manner.Personal or Manner.Substituted)
                yield return Reason.Of("Civ. Code § 8118(a)", $"Given by hand, or left and mailed: it is proved by a declaration of "
                    + $"whoever did it, with day, place, manner, and the name, address and title of the person told. Have it signed "
                    + $"now.", [notice]);
            foreach (var id in notice.To)
            {
                if (facts.Job.Party(id) is { } party && !HasAddress(facts, party))
                    yield return Reason.Of("Civ. Code § 8108",
                        $"The file has no address for {party.Name}, so nobody can show that the notice went to a right one.", [notice]);
            }
        }
    }

    // The owner's address on the building permit is a right one too.
    private static bool HasAddress(FactsAsOf facts, Party party) => !string.IsNullOrWhiteSpace(party.Address)
        || (party.Capacity == PartyCapacity.Owner && !string.IsNullOrWhiteSpace(facts.Job.Work.Permit?.OwnerAddress));

    private static bool NeedsPostalPaper(Manner manner) =>
        manner is Manner.CertifiedMail or Manner.RegisteredMail or Manner.ExpressMail or Manner.OvernightCarrier;
}
