using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Enforcement;
using Stringline.Papers.Writing;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>The claim of mechanics lien, its amendment, and the one converted from a design lien.</summary>
internal static class ClaimPapers
{
    /// <summary>The claim.</summary>
    public static Paper Claim { get; } = new("claim", ClaimPaper.Title, matter => ClaimPaper.Write(matter, earlier: null))
    {
        Sections = "Civ. Code § 8416",
        Use = PaperUse.Recorded,
        Works = [WorkKind.Private],
        Words = $"The claimant, within its time to record.",
        Asks = [new(PaperInput.Structure)],
        Deadline = ClaimPaper.Deadline,
        LawSaysForWhichWork = true,
        Effect = Burden,
        Entries = [Served, Recorded],
    };

    /// <summary>The amendment of a recorded claim.</summary>
    public static Paper Amended { get; } = new("amended-claim", Amendment.Title, WriteAmended)
    {
        Sections = "Civ. Code § 8416; Gov. Code § 27361.6",
        Use = PaperUse.Recorded,
        Works = [WorkKind.Private],
        Words = $"The claimant, to put a recorded claim right; served and recorded like a claim.",
        Asks = [new(PaperInput.Number)],
        Deadline = ClaimPaper.Deadline,
        // There is nothing to amend until a claim is recorded.
        IsAskedForByItsStep = false,
        LawSaysForWhichWork = true,
        Effect = Burden,
        Fits = now => ReleasePaper.HasMechanics(now) && now.Assessment.Amount.Demand > 0 ? "A claim is recorded." : null,
        Entries = [Served, Recorded],
    };

    /// <summary>The claim converted from a design professional's lien.</summary>
    public static Paper Converted { get; } = new("converted-claim", Conversion.Title, WriteConverted)
    {
        Sections = "Civ. Code §§ 8319, 8416; Gov. Code § 27361.6",
        Use = PaperUse.Recorded,
        Works = [WorkKind.Private],
        Words = $"A design professional whose lien ended because work commenced, within 30 days; served and recorded like a claim.",
        Asks = [new(PaperInput.Number)],
        Deadline = Law.DesignLien.Conversion.Id,
        LawSaysForWhichWork = true,
        Effect = new(
            "Recorded, it burdens the owner's property from that day, in place of the design professional's lien that ended when work "
            + "commenced, and 90 days begin to run: without a suit or a notice of credit within them it expires.",
            "Civ. Code §§ 8319, 8460"),
        Entries = [Served, Recorded],
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Paper> All { get; } = [Claim, Amended, Converted];

    private static PaperEffect Burden => new(
        "Recorded, it burdens the owner's property, and 90 days begin to run: without a suit or a notice of credit within them it expires. "
            + "A "
        + "claim that is false on purpose can cost the whole lien.",
        "Civ. Code §§ 8422, 8460");

    private static EntryAfter Served => new("claim-served", "The copy was mailed to the owner: day and article number")
    {
        To = now => now.Job.In(PartyCapacity.Owner),
        Fill = _ => [new Filled.By(Manner.CertifiedMail)],
    };

    private static EntryAfter Recorded => new("claim-recorded", "It was recorded: day, instrument number, amount")
    {
        Fill = now => now.Assessment.Amount is { IsUnknown: false, Demand: > 0 and var demand } ? [new Filled.Sum("amount", demand)] : [],
    };

    private static Bundle WriteAmended(Matter matter)
    {
        var claim = RecordedClaims.Of(matter, "Civ. Code § 8416");
        var sueBy = matter.Assessment.Find("enforcement.last-day")?.ActBy;
        return ClaimPaper.Write(matter, new Amendment(RecordedClaims.Words(claim, matter), claim.On) { SueBy = sueBy });
    }

    private static Bundle WriteConverted(Matter matter)
    {
        var ended = matter.Assessment.Find(Law.DesignLien.Conversion.Id);
        var claim = matter.Options.Number is null && ended?.Why.SelectMany(w => w.Facts).OfType<ClaimRecorded>()
            .FirstOrDefault() is { } design
            ? RecordedClaims.Of(matter, design, "Civ. Code § 8319")
            : RecordedClaims.Of(matter, "Civ. Code § 8319");
        return ClaimPaper.Write(matter, new Conversion(
            RecordedClaims.Words(claim, matter), matter.Job.Work.Commenced ?? claim.On, ended?.Amount ?? 0m)
        {
            Contract = DesignLien.DesignLienPaper.Contract(matter),
        });
    }
}
