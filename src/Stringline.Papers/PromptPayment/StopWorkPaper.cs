using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PromptPayment;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.PromptPayment;

/// <summary>
/// The direct contractor's stop work notice to the owner, and the notice of intent that is posted before it
/// (Civ. Code §§ 8830-8836): written contract, unpaid for 35 days after the due day, no dispute about performance, 10 days to pay.
/// </summary>
internal static class StopWorkPaper
{
    private const string Id = "stop-work.notice-first-day";

    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("stop-work-notice", "Stop Work Notice", Write)
    {
        Sections = "Civ. Code §§ 8102, 8830-8834",
        Use = PaperUse.Given,
        Works = [WorkKind.Private],
        Words = $"A direct contractor unpaid for 35 days after the due day, to the owner; with the notice to be posted.",
        Asks =
        [
            new(PaperInput.Amount, "Dollars and cents that are overdue; nothing: what the file comes to"),
            new(PaperInput.Day, "The day the payment was due"),
        ],
        Deadline = Id,
        AlsoServes = ["stop-work.posting"],
        ProvedAs = ProvedNotice.StopWork,
        Entries = [new("stop-work-notice-given", "It was given: day and to whom") { To = _ => [] }],
    };

    private static Bundle Write(Matter matter)
    {
        if (matter.Job.Claimant.Role != ClaimantRole.DirectContractor)
        {
            matter.Refuse("not-direct-contractor", new Place.OfHead("claimant.role"),
                $"The claimant is {NoticeContents.ARole(matter.Job.Claimant.Role)}.",
                $"Only a direct contractor may stop work under these sections.", "Civ. Code § 8832");
        }

        if (matter.Job.Contract.Written != true)
        {
            matter.Refuse("not-written", new Place.OfHead("contract.written"),
                Sentence.Of(matter.Job.Contract.Written is null ? "The file does not say."
                : "The contract is not in writing."),
                $"Only a written contract gives the right; if it is in writing, say {new FieldSaid("written", "true")}.",
                "Civ. Code § 8830");
        }

        if (matter.Known.All<Disputed>().Count > 0)
        {
            matter.Refuse("disputed", Place.Journal, $"A dispute is entered.",
                $"Where the contractor's performance is in dispute, work may not be stopped this way. Have counsel read the file.",
                "Civ. Code § 8832");
        }

        var overdue = Overdue.Of(matter);
        var owners = Addressees.WithAddress(matter, matter.In(PartyCapacity.Owner), "Civ. Code § 8108");
        if (owners.Count == 0)
            matter.Refuse("owner-missing", Place.Parties, $"No party with capacity {new FileWord(PartyCapacity.Owner)} is there.",
                $"Add the owner.", "Civ. Code § 8832");
        return new Bundle([Notice(matter, owners, overdue), Posting(matter, overdue)], new Guide
        {
            To = owners,
            Manner = Addressees.Manner,
            NotBefore = overdue.Finding is { } found
                ? new NotBefore(StopWork.FirstDayOncePosted(matter.Assessment.Numbers, First(found), matter.AsOf),
                $"If the notice of intent is posted today, {Day(matter.AsOf)}: {Posting(matter)} of posting come first (§ 8834(a)). "
                + "If you post the notice of intent on another day, give the stop work notice no sooner than "
                + $"{matter.ByLaw(Number.StopWorkPosting).Spelled} after that day"
                + $"{(First(found) > matter.AsOf ? $", but not before {Day(First(found))}" : "")}.") : null,
            First =
            [
                .. overdue.Finding is { Standing: Standing.InDoubt }
                ? [$"In doubt: {LawForReaders.BehindColon(Matter.Said(overdue.Finding))}",
                    .. overdue.Finding.Questions.Select(q => RefusalInWords.Said(q.Sentence))]
                : Array.Empty<string>(),
                .. overdue is { Due: null, Finding: { } counted }
                    ? ["The file does not say on which day the contract makes payment due, so that line of the notice is a blank. Counted "
                    + $"as {matter.ByLaw(Number.OwnersProgress)} after the demand it is {Day(DueDay(matter, counted))} (§ 8800). Make the "
                    + $"notice again with the day that "
                    + $"the contract gives, or write it in before signing: the {matter.ByLaw(Number.StopWorkUnpaid)} run from "
                    + $"it."] : Array.Empty<string>(),
                "The day under NOT BEFORE is the first on which the stop work notice may be given, not a last one. Work may stop only "
                    + "after ten full days "
                    + "without payment, on the eleventh day after the notice.",
                "The deadlines for lien, stop payment notice and bond keep running while work is stopped.",
            ],
            Steps =
            [
                "Sign the notice of intent in ink, with date and place, and write on it the day of posting and the day on or after which "
                    + "the stop work notice "
                    + "will be given.",
                $"Post it at the site, in a conspicuous place, and at its main office, if there is one, at least "
                    + $"{Posting(matter)} before the stop work notice is given (§ 8834(a)). Photograph it. Send nobody a copy of "
                    + "the stop work notice yet.",
                $"Then sign the stop work notice in ink, with date and place, keep a signed copy, and give it to the {matter.OwnerWord}, "
                    + "and on that same day a copy of it to each subcontractor with whom you have a "
                    + $"contract (§ 8834(b)). The {matter.OwnerWord} must tell the construction "
                    + $"{(matter.In(PartyCapacity.ConstructionLender).Count > 1
                        ? "lenders" : "lender")} within {matter.ByLaw(Number.OwnerTellsLender).Spelled} (§ 8836).",
                ProofOfNotice.Step(ProvedNotice.StopWork),
                "Work may stop on the eleventh day after the notice is given.",
            ],
            After =
            [
                $"{EntryName.Enter("stop-work-notice-given")}its day, the day of the posting, and to whom it and its copies went.",
                "When the matter is settled or the notice is canceled, post that at the same places and tell the subcontractors (§ 8840).",
            ],
        });
    }

    private static LocalDate DueDay(Matter matter, Finding notice) => StopWork.DueDay(matter.Assessment.Numbers, First(notice));

    // The first day on which the notice may be given, by the finding on it.
    private static LocalDate First(Finding notice) => notice.Band!.Earliest.Day;

    private static NumberRow Unpaid(Matter matter) => matter.Assessment.Numbers.On(Number.StopWorkUnpaid, matter.AsOf);

    private static NumberRow Posting(Matter matter) => matter.Assessment.Numbers.On(Number.StopWorkPosting, matter.AsOf);

    private static PaperBuilder Notice(Matter matter, IReadOnlyList<Party> owners, Overdue overdue)
    {
        var leaf = new PaperBuilder("stop-work-notice.pdf", "Stop Work Notice");
        leaf.Head("California Civil Code sections 8102 and 8830 to 8848");
        // It may be given only on a later day, once the posting has run (Civ. Code § 8834(a)).
        leaf.Line("Date", (string?)null);
        Addressees.Put(leaf, matter, owners);
        leaf.Say($"{matter.Facts.Claimant} (“claimant”), the direct contractor, has not been paid the amount stated here within "
            + $"{Unpaid(matter)} "
            + "after it was due under a written contract, and there is no dispute as to the satisfactory performance of the direct "
            + $"contractor. Claimant gives notice that claimant will stop work if not paid "
            + $"within {matter.Assessment.Numbers.On(Number.StopWork, matter.AsOf)} after this "
            + "notice is given.");
        leaf.Field("Amount due and unpaid", TypeStyle.BodyBold, Owed(overdue.Amount));
        if (overdue.Demanded.Count > 0)
        {
            leaf.Field("Demanded on", overdue.Demanded.Select(Day).ToArray() is { Length: > 0 } days ? string.Join("; ", days)
                : null);
        }

        leaf.Field("Due on", overdue.Due is { } day ? Day(day) : null);
        leaf.Field("Contract", matter.Job.Contract.On is { } made ? $"Written contract of {Day(made)}" : "Written contract");
        NoticeContents.Put(leaf, matter);
        Signing.Claimant(leaf, matter, "Civ. Code § 8832");
        return leaf;
    }

    // Civ. Code § 8102(a)(6)(C), which § 8834(a) asks of the posted notice too.
    private static IReadOnlyList<string?> Owed(decimal? amount) =>
        amount is { } due ? [Dollars(due), "after deducting all just credits and offsets."] : [null];

    private static PaperBuilder Posting(Matter matter, Overdue overdue)
    {
        var leaf = new PaperBuilder("notice-of-intent-to-stop-work.pdf", "Notice of Intent to Stop Work");
        leaf.Head("To be posted. California Civil Code section 8834");
        leaf.Say($"{matter.Facts.Claimant}, the direct contractor for the work at {matter.Facts.Street ?? matter.Facts.Legal}, intends to "
            + $"give the {matter.OwnerWord} a stop work notice on or after the date written here, because "
            + $"{(overdue.Amount is { } due ? Dollars(due) : "the amount due")} has not been paid within {Unpaid(matter)} after "
            + "it was due under the written contract.", TypeStyle.Body.At(14), 20);
        leaf.Line("Posted on", (string?)null);
        leaf.Line("Stop work notice will be given on or after", (string?)null);
        leaf.Field("Amount due and unpaid", TypeStyle.BodyBold, Owed(overdue.Amount));
        NoticeContents.Put(leaf, matter);
        Signing.Claimant(leaf, matter, "Civ. Code § 8834");
        return leaf;
    }

    /// <summary>The sum that has gone unpaid for 35 days after its due day, as the law finds it.</summary>
    private sealed record Overdue
    {
        /// <summary>What the law says of it; null where nothing is overdue.</summary>
        public Finding? Finding { get; private init; }

        /// <summary>Dollars and cents; null where nobody knows.</summary>
        public decimal? Amount { get; private init; }

        /// <summary>The day on which it fell due under the contract; null where only the contract says.</summary>
        public LocalDate? Due { get; private init; }

        /// <summary>The days of the demands; empty where none was made.</summary>
        public IReadOnlyList<LocalDate> Demanded { get; private init; } = [];

        public static Overdue Of(Matter matter)
        {
            var demands = matter.Known.All<PaymentDemanded>();
            var finding = demands.Count == 0 ? WithoutDemand(matter) : Told(matter);
            if (finding is null)
            {
                if (demands.Count > 0)
                {
                    matter.Refuse("nothing-overdue", Place.Journal, $"Every sum that was demanded has been paid.",
                        $"Work is stopped only for what is due and unpaid.", "Civ. Code § 8832");
                }

                return new Overdue();
            }

            if (finding.Standing is Standing.NotYet or Standing.Lost)
            {
                matter.Refuse("too-early", new Place.OfFinding(Id), Matter.LawSays(finding),
                    Sentence.Of(finding.Standing == Standing.Lost ? "See the reasons."
                    : "Wait for that day."), "Civ. Code § 8832");
            }

            if (matter.Options.Amount > finding.Amount)
            {
                matter.Refuse("more-than-overdue", Place.Of(PaperInput.Amount),
                    $"{Dollars(matter.Options.Amount.Value)} is more than the {Dollars(finding.Amount.Value)} that is overdue.",
                    $"State what is overdue and no more.", "Civ. Code § 8830");
            }

            return new Overdue
            {
                Finding = finding,
                Amount = matter.Options.Amount ?? finding.Amount,
                Due = matter.Options.Day is not null || IsDueKnown(matter, Earliest(finding)) ? DueDay(matter, finding) : null,
                Demanded = demands.Count == 0 ? []
                    : [.. finding.Why[0].Facts.OfType<PaymentDemanded>().Select(d => d.On).OfType<DayFact.Exact>().Select(d => d.Day)],
            };
        }

        // A contract sets its own day: no demand is needed for a sum to fall due. What it is and since when is told.
        private static Finding? WithoutDemand(Matter matter)
        {
            if (matter.Options is not { Day: { } due, Amount: { } amount })
            {
                matter.NotEntered("payment-demanded", "no-demand", $"No notice demanding payment is entered.",
                    $"Enter it as {new KindName("payment-demanded")} with its day and amount; or, where the contract itself sets the day "
                        + $"of payment, say "
                    + $"the sum and that day with {new InputName(PaperInput.Amount, PaperInput.Day)}.", "Civ. Code §§ 8800, 8832");
                return null;
            }

            if (amount > matter.Assessment.Owed.Demand)
            {
                matter.Refuse("more-than-owed", Place.Of(PaperInput.Amount),
                    $"{Dollars(amount)} is more than the {Dollars(matter.Assessment.Owed.Demand)} that is owed by the job file.",
                    $"State what is due and unpaid, or enter what is missing.", "Civ. Code § 8830");
            }

            return matter.Assessment.Supposing(new PaymentDemanded { Index = matter.Job.Entries.Count, On = DayFact.On(matter.AsOf),
                Amount = amount, Due = due }).Find(Id);
        }

        // The due day that was told stands in for one that the file does not give, and is held against one that it does.
        private static Finding? Told(Matter matter)
        {
            var own = matter.Assessment.Find(Id);
            if (own is null || matter.Options.Day is not { } due || Earliest(own) is not { } demand)
                return own;
            var told = matter.Assessment.Supposing(job =>
                job with { Entries = [.. job.Entries.Select(e => e == demand ? demand with { Due = due } : e)] }).Find(Id);
            if (!IsDueKnown(matter, demand))
                return told;
            if (told is null || DueDay(matter, told) != DueDay(matter, own))
            {
                matter.Refuse("due-day-differs", Place.Of(PaperInput.Day),
                    $"By the job file payment was due on {Day(DueDay(matter, own))}, not on {Day(due)}.",
                    $"Leave {new InputName(PaperInput.Day)} out, or mend the day in the job file.", "Civ. Code § 8832");
            }

            return own;
        }

        private static PaymentDemanded? Earliest(Finding finding) => finding.Why[0].Facts.OfType<PaymentDemanded>().FirstOrDefault();

        private static bool IsDueKnown(Matter matter, PaymentDemanded? demand) =>
            demand?.Due is not null || matter.Job.Contract.PaymentDueDays is not null;
    }
}
