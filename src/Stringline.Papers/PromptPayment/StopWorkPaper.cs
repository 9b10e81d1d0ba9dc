using Stringline.Law.Facts;
using Stringline.Law.PromptPayment;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.PromptPayment;

/// <summary>
/// The direct contractor's stop work notice to the owner, and the notice of intent that is posted before it
/// (Civ. Code §§ 8830-8836): written contract, unpaid for 35 days after the due day, no dispute about performance, 10 days to pay.
/// </summary>
internal static class StopWorkPaper
{
    /// <summary>The paper.</summary>
    public static Shelved Shelved { get; } = Shelved.Of(
        new Paper("stop-work-notice", "Stop Work Notice", "Civ. Code §§ 8102, 8830-8834", PaperUse.Given, [WorkKind.Private],
            "A direct contractor unpaid for 35 days after the due day, to the owner; with the notice to be posted.")
        { Takes = [Told.Amount, Told.Day], Deadline = "stop-work.notice-first-day" },
        Write);

    private static Bundle Write(Matter matter)
    {
        if (matter.Job.Claimant.Role != ClaimantRole.DirectContractor)
            matter.Refuse("not-direct-contractor", "claimant.role", $"The claimant is a {NoticeContents.RoleWord(matter.Job.Claimant.Role)}.", "Only a direct contractor may stop work under these sections.", "Civ. Code § 8832");
        var finding = matter.Assessment.Find("stop-work.notice-first-day");
        var demanded = matter.Last<PaymentDemanded>();
        if (demanded is null)
            matter.Refuse("no-demand", "entries", "No notice demanding payment is entered.", "Give one (payment-demand) and enter it as \"payment-demanded\" with its day and amount.", "Civ. Code §§ 8800, 8832");
        else if (finding is { Standing: Standing.NotYet or Standing.Lost })
            matter.Refuse("too-early", finding.Id, Matter.Reasons(finding), finding.Standing == Standing.Lost ? "See the reasons." : "Wait for that day.", "Civ. Code § 8832");
        if (matter.Job.Contract.Written != true)
            matter.Refuse("not-written", "contract.written", matter.Job.Contract.Written is null ? "The file does not say." : "The contract is not in writing.", "Only a written contract gives the right; if it is in writing, say \"written\": true.", "Civ. Code § 8830");
        if (matter.Known.All<Disputed>().Count > 0)
            matter.Refuse("disputed", "entries", "A dispute is entered.", "Where the contractor's performance is in dispute, work may not be stopped this way. Have counsel read the file.", "Civ. Code § 8832");
        var amount = matter.Options.Amount ?? demanded?.Amount;
        var owners = Addressees.WithAddress(matter, matter.In(PartyCapacity.Owner), "Civ. Code § 8108");
        if (owners.Count == 0)
            matter.Refuse("owner-missing", "parties", "No party with capacity \"owner\" is there.", "Add the owner.", "Civ. Code § 8832");
        return new Bundle([Notice(matter, owners, amount, demanded), Posting(matter, amount)], new Guide
        {
            To = owners,
            Manner = Addressees.Manner,
            First =
            [
                .. finding is { Standing: Standing.InDoubt } ? [$"In doubt: {Matter.Reasons(finding)}"] : Array.Empty<string>(),
                "The day above is the first on which the notice may be given, not a last one. Work may stop only after ten full days without payment, on the eleventh day after the notice.",
                "Lien, stop payment notice and bond keep their own times while work is stopped.",
            ],
            Steps =
            [
                $"First post the notice of intent at the site, in a conspicuous place, and at its main office, if there is one, at least {StopWork.PostingDays} days before the stop work notice is given (§ 8834(a)). Photograph it. Send nobody a copy of the stop work notice yet.",
                "Then give the stop work notice to the owner, and on that same day a copy of it to each subcontractor with whom you have a contract (§ 8834(b)). The owner tells the construction lender within five days (§ 8836).",
                "Enter both days. Work may stop on the eleventh day after the notice is given.",
            ],
            After = ["When the matter is settled or the notice is cancelled, post that at the same places and tell the subcontractors (§ 8840)."],
        });
    }

    private static Leaf Notice(Matter matter, IReadOnlyList<Party> owners, decimal? amount, PaymentDemanded? demanded)
    {
        var leaf = new Leaf("stop-work-notice.pdf", "Stop Work Notice");
        leaf.Head("California Civil Code sections 8102 and 8830 to 8848");
        Addressees.Put(leaf, matter, owners);
        leaf.Say($"{matter.Facts.Claimant}, the direct contractor, has not been paid the amount stated here within {StopWork.UnpaidDays} days after it was due under a written contract, and there is no dispute as to the satisfactory performance of the direct contractor. Claimant gives notice that it will stop work if it is not paid within {StopWork.NoticeDays} days after this notice is given.");
        leaf.Field("Amount due and unpaid", TypeStyle.BodyBold, Owed(amount));
        leaf.Field("Payment was demanded on", demanded?.On is DayFact.Exact on ? Day(on.Day) : null);
        leaf.Field("Payment was due on", matter.Options.Day is { } day ? Day(day) : null);
        leaf.Field("Contract", matter.Job.Contract.On is { } made ? $"Written contract of {Day(made)}" : "Written contract");
        NoticeContents.Put(leaf, matter);
        Signing.Claimant(leaf, matter, "Civ. Code § 8832");
        return leaf;
    }

    // Civ. Code § 8102(a)(6)(C), which § 8834(a) asks of the posted notice too.
    private static IReadOnlyList<string?> Owed(decimal? amount) => amount is { } due ? [Dollars(due), "after deducting all just credits and offsets."] : [null];

    private static Leaf Posting(Matter matter, decimal? amount)
    {
        var leaf = new Leaf("notice-of-intent-to-stop-work.pdf", "Notice of Intent to Stop Work");
        leaf.Head("To be posted. California Civil Code section 8834");
        leaf.Say($"{matter.Facts.Claimant}, the direct contractor for the work at {matter.Facts.Street ?? matter.Facts.Legal}, intends to give the owner a stop work notice on or after the date written here, because {(amount is { } due ? Dollars(due) : "the amount due")} has not been paid within {StopWork.UnpaidDays} days after it was due under the written contract.", TypeStyle.Body.At(14), 20);
        leaf.Line("Posted on", (string?)null);
        leaf.Line("Stop work notice will be given on or after", (string?)null);
        leaf.Field("Amount due and unpaid", TypeStyle.BodyBold, Owed(amount));
        NoticeContents.Put(leaf, matter);
        Signing.Claimant(leaf, matter, "Civ. Code § 8834");
        return leaf;
    }
}
