using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Completion;

/// <summary>An owner's notice of completion of one of several direct contracts (Civ. Code § 8186).</summary>
internal static class OneContract
{
    private const string Section = "Civ. Code § 8186";

    /// <summary>
    /// Whether the claimant works under the contract that a notice names: it shortens the time of those under that contract only. One who
    /// has a contract of its own with the owner is not touched by a notice for another's: Scott, Blake &amp; Wynne v. Summit Ridge Estates
    /// (1967)
    /// 251 Cal.App.2d 347.
    /// </summary>
    [Rule(Section, Sure = Sure.Opinion)]
    public static Counted IsClaimants(FactsAsOf facts, OwnerRecorded entry, string words)
    {
        var under = WorksUnderIt(facts, entry, words);
        var several = facts.Job.Work.SeveralDirectContracts;
        if (several == true || (several is null && ImpliesSeveral(facts, under.Verdict)))
            return under;
        return Counted.Open(
            Reason.Of(Section, $"The {words} names one direct contract. The section is for work under two or more; where there is only "
                + $"one, a notice of its completion may be taken for one of the whole work, or to have no effect: both readings "
                + $"stand.", [entry]),
            [.. under.Questions, several is null
                ? new Question($"Is the work done under two or more direct contracts, each for a portion of it? Only then may a notice be "
                    + $"for one of them.{HeadField.WorkSeveralDirectContracts:aside}")
                : new Question($"Does the {words} speak of the whole work, or of one contract only? The file says that there is only one "
                    + $"direct contract.{OwnerKinds.OwnerRecorded.At("contractOf"):aside}") { Corrects = entry }]);
    }

    // Who works under another direct contract than the one named has shown that there are two. One whom the owner hired and who is no
    // contractor has no direct contract (Civ. Code §§ 8016, 8018).
    private static bool ImpliesSeveral(FactsAsOf facts, Verdict under) =>
        under == Verdict.No && (!facts.HiredByOwner || facts.Job.Claimant.Role == ClaimantRole.DirectContractor);

    private static Counted WorksUnderIt(FactsAsOf facts, OwnerRecorded entry, string words)
    {
        var claimant = facts.Job.Claimant;
        if (claimant.HiredBy == entry.ContractOf)
            return Counted.Yes(Reason.Of(Section, $"The {words} is for one direct contract only, under which the claimant works.",
                [entry]));
        if (facts.HiredByOwner)
            return ByName(claimant, facts.Job.Party(entry.ContractOf), entry, words);
        return facts.Hirer switch
        {
            { Capacity: PartyCapacity.DirectContractor } => Another(entry, words),
            { WorksUnder: { } under } when under == entry.ContractOf =>
                Counted.Yes(Reason.Of(Section, $"The {words} is for one direct contract only, under which the claimant's hirer works.",
                    [entry])),
            { WorksUnder: { } } => Another(entry, words),
            _ => Counted.Open(
                Reason.Of(Section, $"The {words} is for one direct contract only; whether the claimant works under it is open.", [entry]),
                new Question($"Under which direct contractor does {facts.Hirer?.Name ?? "the one who hired the claimant"} work? A notice "
                    + $"for one contract shortens the time of those under it only.{HeadField.PartiesWorksUnder:aside}")),
        };
    }

    private static Counted ByName(Claimant claimant, Party? named, OwnerRecorded entry, string words) =>
        (named is null ? Verdict.Open : FirmNames.AreOne(claimant.Name, named.Name)) switch
        {
            Verdict.Yes => Counted.Yes(Reason.Of(Section, $"The {words} is for the claimant's own direct contract only.", [entry])),
            Verdict.No => Another(entry, words),
            Verdict.Open => Counted.Open(
                Reason.Of(Section, $"The {words} is for one direct contract only; whether that is the claimant's own is open.", [entry]),
                new Question($"Is the {words} for the claimant's own contract? It "
                    + $"names {named?.Name ?? "nobody whom the file knows"}.{OwnerKinds.OwnerRecorded.At("contractOf"):aside}") { Corrects =
                    entry }),
            _ => throw new InvalidOperationException("No such verdict."),
        };

    private static Counted Another(OwnerRecorded entry, string words) =>
        Counted.No(Reason.NotApplied(Section, $"The {words} is for one direct contract only, and the claimant works under another: it does "
            + $"not shorten this claimant's time.", entry));

    /// <summary>
    /// Whether the claimant is taken to have completed its contract, or to have ceased to provide work, when a notice of completion of its
    /// contract was recorded: then a claim may be recorded from then on, whatever is furnished afterwards. The copy (Civ. Code § 8190)
    /// plays no part in that.
    /// </summary>
    [Rule("Civ. Code § 8186(a)")]
    public static Verdict DeemedCeased(FactsAsOf facts, OwnersNotice notice)
    {
        if (notice.IsForWholeWork || notice.Entry.Notice != OwnerNotice.Completion || notice.HasForm == Verdict.No
            || facts.Job.Work.SeveralDirectContracts == false)
            return Verdict.No;
        var claimants = IsClaimants(facts, notice.Entry, notice.Words).Verdict;
        if (claimants == Verdict.No)
            return Verdict.No;
        // Its 15 days run from completion of that contract, which only the notice itself states. Only its latest days can hang on a roll.
        var inTime = notice.Entry.States is not { } stated ? Verdict.Open
            // Early or late on every day that it may have been recorded on.
            : notice.Recorded.Latest < stated
            || (notice.Recorded.Earliest >= stated && !notice.IsEffectiveIfCompletedOn(stated, notice.Recorded.Earliest)) ? Verdict.No
            : !notice.IsEffectiveIfCompletedOn(stated, notice.Recorded.Earliest)
            || !notice.IsEffectiveIfCompletedOn(stated, notice.Recorded.Latest) ? Verdict.Open
            : notice.EffectIfCompletedOn(stated, notice.Recorded.Latest);
        if (inTime == Verdict.No)
            return Verdict.No;
        return (claimants, inTime, notice.HasForm, facts.Job.Work.SeveralDirectContracts) == (Verdict.Yes, Verdict.Yes, Verdict.Yes, true)
            ? Verdict.Yes : Verdict.Open;
    }
}
