using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>The claim of mechanics lien and its amendment in the catalogue.</summary>
internal static class ClaimShelf
{
    /// <summary>Both papers.</summary>
    public static IEnumerable<Shelved> Papers =>
    [
        new Shelved(
            new Paper("claim", ClaimPaper.Title, "Civ. Code § 8416", PaperUse.Recorded, [WorkKind.Private], "The claimant, within its time to record.")
            { Deadline = "claim-of-lien.last-day" },
            m => ClaimPacket.Prepare(m.Job, m.Assessment, m.Options.Office, m.Options.Draft)),
        new Shelved(
            new Paper("amended-claim", Amendment.Title, "Civ. Code § 8416; Gov. Code § 27361.6", PaperUse.Recorded, [WorkKind.Private],
                "The claimant, to put a recorded claim right; served and recorded like a claim.")
            { Takes = [Told.Number], Deadline = "claim-of-lien.last-day" },
            MakeAmended),
    ];

    private static PacketOutcome MakeAmended(Matter matter)
    {
        var claim = RecordedClaims.Of(matter, "Civ. Code § 8416");
        return ClaimPacket.PrepareOrAmend(matter.Job, matter.Assessment, matter.Options.Office, matter.Options.Draft,
            new Amendment(RecordedClaims.Words(claim, matter), claim.On, matter.Refusals));
    }
}

/// <summary>What a claim amends.</summary>
/// <param name="Words">The recorded claim in words.</param>
/// <param name="Recorded">The day it was recorded: a copy served before that day is the old claim's.</param>
/// <param name="Refusals">What is missing to name it.</param>
internal sealed record Amendment(string Words, LocalDate? Recorded, IReadOnlyList<Refusal> Refusals)
{
    /// <summary>Title.</summary>
    public const string Title = "Amended Claim of Mechanics Lien";
}
