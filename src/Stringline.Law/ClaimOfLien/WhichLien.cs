using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>Which lien a recorded claim is for: the two live and die by different sections (Civ. Code §§ 8306, 8308, 8460).</summary>
public static class WhichLien
{
    /// <summary>
    /// The lien that a claim is for. Where the file does not say it is a mechanics lien, but for a design professional hired by an owner:
    /// before the work commenced only the lien of Civ. Code § 8302 can be meant, and while nobody knows whether it commenced either can.
    /// That work stopped, was complete or was noticed by the owner shows that it had commenced.
    /// </summary>
    /// <returns>Null where it may be either.</returns>
    [Rule("Civ. Code § 8302(a)", Sure = Sure.OurReading)]
    public static LienKind? Of(FactsAsOf facts, ClaimRecorded claim)
    {
        if (claim.Lien is { } said)
            return said;
        if (facts.Job.Claimant.Role != ClaimantRole.DesignProfessional || !facts.HiredByOwner)
            return LienKind.Mechanics;
        return facts.Job.Work.Commenced switch
        {
            null when HadCommenced(facts, claim) => LienKind.Mechanics,
            null => null,
            { } commenced when claim.On.Latest < commenced => LienKind.Design,
            { } commenced when claim.On.Earliest >= commenced => LienKind.Mechanics,
            _ => null,
        };
    }

    private static bool HadCommenced(FactsAsOf facts, ClaimRecorded claim) =>
        Any(facts.All<Completed>(), claim) || Any(facts.All<LaborCeased>(), claim) || Any(facts.All<OwnerRecorded>(), claim);

    private static bool Any(IReadOnlyList<Entry> entries, ClaimRecorded claim)
    {
        foreach (var entry in entries)
        {
            if (entry.On.Latest <= claim.On.Earliest)
                return true;
        }

        return false;
    }

    /// <summary>
    /// Whether a claim is, or may be, one of a mechanics lien; a converted one has its own time, and no notice (Civ. Code § 8319).
    /// </summary>
    public static bool MayBeMechanics(FactsAsOf facts, ClaimRecorded claim) => Of(facts, claim) is null or LienKind.Mechanics;

    /// <summary>Whether a claim is, or may be, one of a design professional's lien (Civ. Code § 8302).</summary>
    public static bool MayBeDesign(FactsAsOf facts, ClaimRecorded claim) => Of(facts, claim) is null or LienKind.Design;

    /// <summary>What is asked where the file does not say which lien a claim is for.</summary>
    public static Question Ask(ClaimRecorded claim) =>
        new($"Which lien is the recorded claim for: a mechanics lien, a design professional's lien before the work commenced, or one "
            + $"converted from it?{ClaimKinds.ClaimRecorded.At("lien"):aside}") { Corrects = claim };
}
