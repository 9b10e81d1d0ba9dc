using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Fees;
using Stringline.Papers.Layout;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Completion;

/// <summary>The owner's notice of completion (Civ. Code § 8182), signed and verified by the owner, recorded on or within 15 days after completion.</summary>
internal static class CompletionPaper
{
    /// <summary>The paper.</summary>
    public static Shelved Shelved { get; } = Shelved.Of(
        new Paper("notice-of-completion", "Notice of Completion", "Civ. Code §§ 8102, 8182", PaperUse.Recorded, [WorkKind.Private],
            "The owner, within 15 days after the whole work is complete.")
        { Takes = [Told.Day, Told.Words] },
        Write);

    private static Bundle Write(Matter matter)
    {
        const string section = "Civ. Code § 8182(b)";
        var owner = matter.Owner;
        if (owner is null)
            matter.Refuse("owner-missing", "parties", "No party with capacity \"owner\" is there.", "Add the owner who records the notice.", section);
        var address = owner is null ? null : matter.Need(matter.AddressOf(owner), "owner-address-missing", $"{matter.PathOf(owner)}.address", "Add the owner's address.", section);
        var completed = matter.Need(matter.Options.Day ?? OfFile(matter), "completion-missing", "--day", "Say the day of completion, such as --day 2026-05-18, or enter it as \"completed\".", section);
        if (matter.In(PartyCapacity.DirectContractor).Count == 0 && matter.Job.Claimant.Role != ClaimantRole.DirectContractor)
            matter.Refuse("contractor-missing", "parties", "No party with capacity \"direct-contractor\" is there.", "Add the direct contractor: a notice that does not name it has no effect.", "Civ. Code §§ 8102(a)(2), 8182(b)");
        if (completed is { } day)
            InTime(matter, day);
        var leaf = new Leaf("notice-of-completion.pdf", "Notice of Completion")
        {
            Return = new ReturnBlock(OneLine(Clean(owner?.Name) ?? ""), address ?? ""),
        };
        leaf.Head("California Civil Code section 8182");
        leaf.Say("Notice is given that the work of improvement described here has been completed.");
        leaf.Field("Owner", [.. matter.In(PartyCapacity.Owner).Select(o => $"{RecordedClaims.OwnerLines(o)}\n{matter.AddressOf(o) ?? ""}").DefaultIfEmpty(null)]);
        leaf.Field("Nature of the owner’s interest in the property", Clean(matter.Options.Words));
        leaf.Field("Date of completion", completed is { } on ? Day(on) : null);
        leaf.Field("Direct contractor", [.. matter.Job.Claimant.Role == ClaimantRole.DirectContractor
            ? new[] { $"{matter.Facts.Claimant}\n{matter.Facts.Address}" }
            : matter.In(PartyCapacity.DirectContractor).Select(p => NoticeContents.Person(matter, p)).DefaultIfEmpty(null)]);
        leaf.Field("Construction lender, if any", [.. matter.In(PartyCapacity.ConstructionLender).Select(p => NoticeContents.Person(matter, p)).DefaultIfEmpty("none known")]);
        leaf.Field("Site", [.. NoticeContents.Site(matter)]);
        leaf.Sign(null, "Owner, or title and authority to sign for the owner");
        Signing.VerifyOwner(leaf, "notice of completion");
        return new Bundle([leaf], new Guide
        {
            First =
            [
                "This is the owner’s paper. It is made from a claimant’s job file to rehearse the job, or for an owner who keeps one.",
                .. completed is { } c ? [$"Record it on {Day(c)} or within {OwnersNotice.RecordingDays} days after, by {DayOfWeek(OwnersNotice.PlanToRecord(c, matter.Assessment.Calendar))}. Earlier or later it has no effect (§ 8182(a), (d)).", .. OnTheRoll(matter, c)] : Array.Empty<string>(),
                "Completion is that of the whole work of improvement, not of one trade. A wrong day does no harm if the true one is 15 days or less before recording (§ 8182(c)).",
            ],
            Steps =
            [
                "If whoever signs took the property over since the work began, add the name of the one who transferred it. If the notice is for one direct contract only, add that contractor’s name and a statement of its work (§§ 8182(c), 8186).",
                "The owner, or any co-owner, signs and verifies in ink (§ 8182(b), (e)).",
            ],
            After = ["Within 10 days after recording give a copy to the direct contractor and to each claimant who gave the owner preliminary notice (§ 8190(a)); otherwise it shortens nothing for that person. An owner living there in a building of up to four units need not."],
            Recording = new Recording(RecordedPaperKind.NoticeOfCompletion, false, 0,
                "No notary: a verified notice of completion is recorded without one (Civ. Code § 8184; Gov. Code § 27287)."),
        });
    }

    private static LocalDate? OfFile(Matter matter) => matter.Known.All<Completed>()
        .Where(c => c is { By: CompletionTheory.Actual, Contested: false })
        .Select(c => c.On is DayFact.Exact exact ? exact.Day : (LocalDate?)null)
        .LastOrDefault(d => d is not null);

    // After the fifteenth day a roll may still help the owner, and nobody else: so it is a warning and no refusal.
    private static IEnumerable<string> OnTheRoll(Matter matter, LocalDate completed) =>
        matter.AsOf > OwnersNotice.LastDayToRecord(completed) && matter.AsOf <= OwnersNotice.LatestToRecord(completed, matter.Assessment.Calendar)
            ? [$"The fifteenth day, {DayOfWeek(OwnersNotice.LastDayToRecord(completed))}, is over. It was a day on which an office is closed, so a recording today may still be in time (Civ. Code § 10; Code Civ. Proc. § 12a); a claimant may say that it is late."]
            : [];

    private static void InTime(Matter matter, LocalDate completed)
    {
        if (completed > matter.AsOf)
            matter.Refuse("not-complete", "--day", $"{Day(completed)} is after {Day(matter.AsOf)}.", "A notice recorded before completion has no effect: wait.", "Civ. Code § 8182(a)");
        else if (matter.AsOf > OwnersNotice.LatestToRecord(completed, matter.Assessment.Calendar))
            matter.Refuse("too-late", "--day", $"More than {OwnersNotice.RecordingDays} days have passed since {Day(completed)}.", "A notice recorded later has no effect; the time of claimants runs from completion.", "Civ. Code § 8182(a), (d)");
    }
}
