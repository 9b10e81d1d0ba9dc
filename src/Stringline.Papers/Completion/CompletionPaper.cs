using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Recording;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Completion;

/// <summary>
/// The owner's notice of completion (Civ. Code § 8182), signed and verified by the owner, recorded on or within 15 days after completion.
/// </summary>
internal static class CompletionPaper
{
    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("notice-of-completion", "Notice of Completion", Write)
    {
        Sections = "Civ. Code §§ 8102, 8182",
        Use = PaperUse.Recorded,
        Works = [WorkKind.Private],
        Words = $"The owner, within 15 days after the whole work is complete.",
        Asks =
        [
            new(PaperInput.Day, "The day of completion; nothing: the file's"),
            new(PaperInput.Words, "The nature of the owner's interest in the property"),
            new(PaperInput.To, "For one direct contract only: its contractor; leave unchecked for the whole work"),
            new(PaperInput.WholeWork),
            new(PaperInput.FormerOwner),
        ],
        Entries = [new("owner-recorded", "It was recorded: day and instrument number")],
    };

    private static Bundle Write(Matter matter)
    {
        const string section = "Civ. Code § 8182(b)";
        var owner = matter.Owner;
        if (owner is null)
        {
            matter.Refuse("owner-missing", Place.Parties, $"No party with capacity {new FileWord(PartyCapacity.Owner)} is there.",
                $"Add the owner who records the notice.",
                section);
        }

        var address = owner is null ? null
            : matter.Need(matter.AddressOf(owner), "owner-address-missing", Place.Of(matter.Job, owner, "address"),
                $"Add the owner's address.",
            section);
        var completed = matter.Need(matter.Options.Day ?? OfFile(matter), "completion-missing", Place.Of(PaperInput.Day),
            $"Say the day of completion{ForTheAsker.SuchAs(PaperInput.Day, new LocalDate(2026, 5, 18))}, or enter it "
                + $"as {new KindName("completed")}.", section);
        if (matter.In(PartyCapacity.DirectContractor).Count == 0 && matter.Job.Claimant.Role != ClaimantRole.DirectContractor)
        {
            matter.Refuse("contractor-missing", Place.Parties,
                $"No party with capacity {new FileWord(PartyCapacity.DirectContractor)} is there.",
                $"Add the direct contractor: a notice that does not name it has no effect.", "Civ. Code §§ 8102(a)(2), 8182(b)");
        }

        var time = completed is { } day ? matter.Assessment.TimeToRecordCompletion(day) : null;
        if (completed is { } done && time is not null)
            InTime(matter, done, time);
        var contract = OneContract.Of(matter);
        if (contract is null && matter.Options is { To.Count: 0, WholeWork: false } && matter.Job.Work.SeveralDirectContracts == true)
        {
            matter.Refuse("which-contract", Place.Of(PaperInput.To, PaperInput.WholeWork), $"The work has several direct contracts.",
                $"Name the one contractor whose contract is complete, or say that the notice is for the whole work, with every contract "
                + $"complete.", "Civ. Code §§ 8182(c)(1), 8186");
        }

        var leaf = new PaperBuilder("notice-of-completion.pdf", "Notice of Completion")
        {
            Return = new ReturnBlock(OneLine(Clean(owner?.Name) ?? ""), address ?? ""),
            SpeaksFor = OneLine(Clean(owner?.Name) ?? "the owner") + Others(matter.In(PartyCapacity.Owner).Count - 1),
        };
        leaf.Head("California Civil Code section 8182");
        leaf.Say(contract is null
            ? "Notice is given that the work of improvement described here has been completed."
            : "Notice is given that the direct contract described in paragraphs 4 and 5, for a portion of the work of improvement "
            + "described here, has been completed (Civil Code section 8186).");
        leaf.Field(matter.Facts.SeveralOwners
            ? "Owners" : "Owner",
            [.. matter.In(PartyCapacity.Owner).Select(o => $"{RecordedClaims.OwnerLines(o)}\n{matter.AddressOf(o) ?? ""}")
            .DefaultIfEmpty(null)]);
        leaf.Field($"Nature of the {(matter.Facts.SeveralOwners ? "owners’" : "owner’s")} interest in the property",
            Clean(matter.Options.Words));
        leaf.Field("Date of completion", completed is { } on ? Day(on) : null);
        leaf.Field(contract is null ? "Direct contractor" : "Direct contractor under the contract that is completed", contract is null
            ? Contractors(matter) : [contract.Contractor]);
        if (contract is not null)
        {
            leaf.Field("Work provided under that contract", contract.Work);
            if (Contractors(matter).Where(c => c != contract.Contractor).ToArray() is { Length: > 0 } others)
                leaf.Field("Other direct contractors", others);
        }

        leaf.Field($"{NoticeContents.LenderLabel(matter)}, if any",
            [.. matter.In(PartyCapacity.ConstructionLender).Select(p => Person(matter, p)).DefaultIfEmpty("None")]);
        if (Clean(matter.Options.FormerOwner) is { } former)
            leaf.Field("Transferor to the owner, who is a successor in interest", former);
        leaf.Field("Site", [.. NoticeContents.Site(matter)]);
        leaf.Sign(null, $"Owner, or title and authority to sign for {(matter.Facts.SeveralOwners ? "an" : "the")} owner");
        Signing.VerifyOwner(leaf, "notice of completion", matter.Facts.SeveralOwners);
        return new Bundle([leaf], new Guide
        {
            First =
            [
                matter.Facts.SeveralOwners
                    ? "This is the owners’ paper: they sign and record it. It was filled in from this job’s file; have them check "
                    + "every line."
                    : "This is the owner’s paper: the owner signs and records it. It was filled in from this job’s file; have the owner "
                    + "check every line.",
                .. CompletionSheet.OneForEachUnit(matter),
                .. completed is { } c && time is not null ? [.. When(matter, c, time), .. CompletionSheet.OtherDays(matter, c)]
                    : Array.Empty<string>(),
                contract is not null ? "The notice is for one direct contract only. It shortens the time of that contractor and of those "
                    + "who worked under it (§ 8186)." : "Completion is that of the whole work of improvement, not of one trade. A wrong "
                    + $"day does no harm if the true one is {matter.ByLaw(Number.RecordCompletion)} or less before recording (§ 8182(c)).",
            ],
            Steps =
            [
                .. Clean(matter.Options.FormerOwner) is null
                    ? ["If whoever signs took the property over since the work began, make the notice again with the name and address of "
                    + "the one who transferred it: without them it has no effect (§ 8182(c)(2), (d))."] : Array.Empty<string>(),
                .. contract is null && matter.Job.Work.SeveralDirectContracts is null
                    ? ["If only one of several direct contracts is complete, make the notice for that contract: name its contractor "
                    + "(§§ 8182(c)(1), 8186)."] : Array.Empty<string>(),
                .. CompletionSheet.ToConfirm(matter),
                CompletionSheet.WhoSigns(matter),
            ],
            After = [.. CompletionSheet.Copies(matter)],
            ActBy = time?.PlanOn,
            Recording = new Recording(RecordedPaperKind.NoticeOfCompletion, 0, 0,
                "No notary: a verified notice of completion is recorded without one (Civ. Code § 8184; Gov. Code § 27287).")
            {
                IsOwners = true,
            },
        });
    }

    private static string Others(int count) => count < 1 ? "" : count == 1 ? " and another owner" : $" and {count} other owners";

    // The first that nobody contests: completion occurs once, on the first day on which one of the ways of § 8180(a) is there.
    private static LocalDate? OfFile(Matter matter) => matter.Known.All<Completed>()
        .Where(c => c is { By: CompletionTheory.Actual, Contested: false })
        .Select(c => c.On is DayFact.Exact exact ? exact.Day : (LocalDate?)null)
        .Min();

    /// <summary>Name and address of every direct contractor, the claimant too where it is one (Civ. Code § 8102(a)(2)).</summary>
    private static IReadOnlyList<string?> Contractors(Matter matter) =>
    [
        .. Claimant(matter),
        .. matter.In(PartyCapacity.DirectContractor).Select(p => Person(matter, p))
            .DefaultIfEmpty(matter.Job.Claimant.Role == ClaimantRole.DirectContractor ? "" : null).Where(p => p is not ""),
    ];

    // "Reputed" is the word of a claimant who guesses (Civ. Code § 8102(a)); the owner swears of own knowledge.
    private static string Person(Matter matter, Party party) => NoticeContents.Person(matter, party with { Reputed = false });

    private static string[] Claimant(Matter matter) =>
        matter.Job.Claimant.Role == ClaimantRole.DirectContractor ? [$"{matter.Facts.Claimant}\n{matter.Facts.Address}"] : [];

    private static string[] When(Matter matter, LocalDate completed, TimeToRecord time) =>
    [
        $"Record it on {Day(completed)} or within {time.Within} after: plan on {DayOfWeek(time.PlanOn)}. Earlier or "
            + "later it has no effect (§ 8182(a), (d)).",
        .. matter.AsOf > time.Last ? [$"The {time.Within.Ordinal} day, {DayOfWeek(time.Last)}, is past. That a closed office carries it to "
            + $"{DayOfWeek(time.Latest)} is an argument: a claimant may say that the notice came too late."] : Array.Empty<string>(),
    ];

    private static void InTime(Matter matter, LocalDate completed, TimeToRecord time)
    {
        if (completed > matter.AsOf)
        {
            matter.Refuse("not-complete", Place.Of(PaperInput.Day), $"{Day(completed)} is after {Day(matter.AsOf)}.",
                $"A notice recorded before completion has no effect: wait.", "Civ. Code § 8182(a)");
        }
        else if (matter.AsOf > time.Latest)
        {
            matter.Refuse("too-late", Place.Of(PaperInput.Day), $"More than {time.Within} have passed since {Day(completed)}.",
                $"A notice recorded later has no effect; the time of claimants runs from completion.", "Civ. Code § 8182(a), (d)");
        }
    }

    /// <summary>One direct contract of several, completed by itself (Civ. Code §§ 8182(c)(1), 8186).</summary>
    /// <param name="Contractor">Name and address of its direct contractor.</param>
    /// <param name="Work">A general statement of the work provided under it; null leaves a blank.</param>
    private sealed record OneContract(string Contractor, string? Work)
    {
        /// <summary>The contract of the contractor that was named; null where the notice is for the whole work.</summary>
        public static OneContract? Of(Matter matter)
        {
            if (matter.Options.To.Count == 0)
                return null;
            if (matter.Options.To is [var own] && own == "claimant" && matter.Job.Claimant.Role == ClaimantRole.DirectContractor)
                return new OneContract(Claimant(matter)[0], matter.Facts.Work);
            if (matter.Named(matter.Options.To) is [{ Capacity: PartyCapacity.DirectContractor } contractor])
                return new OneContract(Person(matter, contractor), null);
            matter.Refuse("not-one-contractor", Place.Of(PaperInput.To), $"One direct contractor is to be named.",
                $"Name the party id of the direct contractor whose contract is complete, or {new FileWord("claimant")} where it is the "
                    + $"claimant's own.",
                "Civ. Code § 8186");
            return null;
        }
    }
}
