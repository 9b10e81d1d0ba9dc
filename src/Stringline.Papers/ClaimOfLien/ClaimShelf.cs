using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>The claim of mechanics lien, its amendment, and the one converted from a design lien, in the catalogue.</summary>
internal static class ClaimShelf
{
    /// <summary>The papers.</summary>
    public static IEnumerable<Shelved> Papers =>
    [
        new Shelved(
            new Paper("claim", ClaimPaper.Title, "Civ. Code § 8416", PaperUse.Recorded, [WorkKind.Private],
                "The claimant, within its time to record.")
            { Takes = [Told.Structure], Deadline = "claim-of-lien.last-day" },
            m => ClaimPacket.Prepare(m.Job, m.Assessment, m.Options.Office, m.Options.Draft, m.Options.Structure)),
        new Shelved(
            new Paper("amended-claim", Amendment.Title, "Civ. Code § 8416; Gov. Code § 27361.6", PaperUse.Recorded, [WorkKind.Private],
                "The claimant, to put a recorded claim right; served and recorded like a claim.")
            { Takes = [Told.Number], Deadline = "claim-of-lien.last-day" },
            MakeAmended),
        new Shelved(
            new Paper("converted-claim", Conversion.Title, "Civ. Code §§ 8319, 8416; Gov. Code § 27361.6", PaperUse.Recorded,
                [WorkKind.Private],
                "A design professional whose lien ended because work commenced, within 30 days; served and recorded like a claim.")
            { Takes = [Told.Number], Deadline = Law.DesignLien.Conversion.Id },
            MakeConverted),
    ];

    private static PacketOutcome MakeConverted(Matter matter)
    {
        var ended = matter.Assessment.Find(Law.DesignLien.Conversion.Id);
        var claim = matter.Options.Number is null && ended?.Why.SelectMany(w => w.Facts).OfType<ClaimRecorded>()
            .FirstOrDefault() is { } design
            ? RecordedClaims.Of(matter, design, "Civ. Code § 8319")
            : RecordedClaims.Of(matter, "Civ. Code § 8319");
        return ClaimPacket.PrepareOrAmend(matter.Job, matter.Assessment, matter.Options.Office, matter.Options.Draft,
            new Conversion(RecordedClaims.Words(claim, matter), matter.Job.Work.Commenced ?? claim.On, ended?.Amount ?? 0m,
                [.. matter.Refusals]) { Contract = DesignLien.DesignLienPaper.Contract(matter) });
    }

    private static PacketOutcome MakeAmended(Matter matter)
    {
        var claim = RecordedClaims.Of(matter, "Civ. Code § 8416");
        return ClaimPacket.PrepareOrAmend(matter.Job, matter.Assessment, matter.Options.Office, matter.Options.Draft,
            new Amendment(RecordedClaims.Words(claim, matter), claim.On, matter.Refusals)
            {
                SueBy = matter.Assessment.Find("enforcement.last-day")?.ActBy,
            });
    }
}
