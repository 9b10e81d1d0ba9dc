using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.DisputedClaim;

/// <summary>
/// The written request of a subcontractor or lower tier subcontractor that the contractor present its claim, since it has no contract with
/// the public entity or owner (Pub. Contract Code § 9204(d)(5); Civ. Code § 8850(j)).
/// </summary>
internal static class ClaimRequestPaper
{
    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("claim-request", "Request to Present a Claim", Write)
    {
        Sections = "Pub. Contract Code § 9204(d)(5); Civ. Code § 8850(j)",
        Use = PaperUse.Sent,
        Works = [WorkKind.Private, WorkKind.Public],
        Words = $"A subcontractor of any tier, to the direct contractor, to have its claim presented to the public entity or owner.",
        Asks =
        [
            new(PaperInput.To, "The direct contractor under whose contract the work was done; leave unchecked for the one in the file"),
            new(PaperInput.Amount, DisputeClaimPaper.AmountClaimed),
            new(PaperInput.ExtensionDays),
            new(PaperInput.Words, DisputeClaimPaper.ForWhat),
            new(PaperInput.Documents),
        ],
        Fits = now => now.Has<Disputed>() && !now.Has<ClaimRequestMade>() && now.Job.Claimant.Role == ClaimantRole.Subcontractor
            ? "A part of the money is disputed." : null,
        Entries = [new("claim-request-made", "It was sent: day and amount")],
    };

    private static Bundle Write(Matter matter)
    {
        var (procedure, _) = ClaimProcedure.Of(matter, Supposing(matter));
        var section = procedure.Section;
        if (ClaimProcedure.HasContract(matter))
        {
            matter.Refuse("has-contract-with-payer", new Place.OfHead("claimant.role"),
                $"The claimant has a contract with the {procedure.PayerWord} itself.",
                $"Make the claim itself: the paper {new PaperWord(DisputeClaimPaper.Paper)}.", section);
        }

        var says = Says(matter);
        var contractors = Addressees.WithAddress(
            matter, matter.Options.To.Count > 0 ? matter.Named(matter.Options.To) : matter.In(PartyCapacity.DirectContractor), "");
        if (contractors.Count == 0)
        {
            matter.Refuse("contractor-missing", Place.Parties,
                $"No party with capacity {new FileWord(PartyCapacity.DirectContractor)} is there.",
                $"Add the direct contractor, who is to present the claim.", section);
        }
        else if (contractors.Count > 1)
        {
            matter.Refuse("several-contractors", Place.Of(PaperInput.To), $"{contractors.Count} direct contractors are named.",
                $"Name the one under whose contract the work was done, by its party id.", section);
        }

        var body = ClaimBody.Of(matter, section);
        return new Bundle([Request(matter, procedure, contractors, body)], new Guide
        {
            To = contractors,
            Manner = "How: in writing, by a method that lets you prove delivery; certified mail with return receipt requested is a good "
                + "one. The contractor’s days run from receipt.",
            First =
            [
                .. ClaimProcedure.Doubts(says),
                .. body.Cautions(),
                "The claim goes to the payer only through the contractor, in its name: keep lien, stop payment notice and bond in time all "
                    + "the same.",
            ],
            Steps =
            [
                "Compare each sum and day with the documents, then sign in ink, with date and place, and enclose a copy of every document "
                    + "in the list.",
                matter.Facts.HiredBy is { Capacity: PartyCapacity.Subcontractor } hirer
                    ? $"Mail it to the contractor, and a copy to {Addressees.InSentence(hirer)}, who hired you."
                    : "Mail it to the contractor.",
            ],
            After =
            [
                $"{EntryName.Enter("claim-request-made")}its day and amount; and the contractor’s answer, "
                    + $"“{EntryName.Find("claim-request-answered")}”.",
                "Furnish what else the contractor needs to support the claim, and take part in the conference and the mediation.",
            ],
        });
    }

    // The private procedure says of a claim whether it governs; the public one says it of the request.
    private static Law.Assessment Supposing(Matter matter) => matter.Job.Work.Kind == WorkKind.Private
        ? matter.Assessment.Supposing(new DisputeClaimSent { Index = matter.Job.Entries.Count, On = DayFact.On(matter.AsOf),
            Amount = matter.Options.Amount })
        : matter.Assessment;

    private static Law.Reasoning.Finding? Says(Matter matter)
    {
        const string Answer = "dispute-claim.contractors-answer";
        var says = matter.Assessment.Supposing(new ClaimRequestMade { Index = matter.Job.Entries.Count, On = DayFact.On(matter.AsOf),
            Amount = matter.Options.Amount }).Find(Answer);
        if (says is { Standing: Law.Reasoning.Standing.Lost })
        {
            matter.Refuse("not-governed", new Place.OfFinding(Answer), Matter.LawSays(says),
                $"Follow the claims procedure of the subcontract, and have counsel read it.", string.Join("; ", says.Sections));
        }

        return says;
    }

    private static PaperBuilder Request(Matter matter, ClaimProcedure procedure, IReadOnlyList<Party> contractors, ClaimBody body)
    {
        var leaf = new PaperBuilder("request-to-present-claim.pdf", "Request to Present a Claim");
        leaf.Head(procedure.Statute);
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, contractors);
        leaf.Say($"{matter.Facts.Claimant} (“claimant”) has no contract with the {procedure.PayerWord} and requests that you present to "
            + $"the {procedure.PayerWord} the claim stated here, for work performed by claimant or by a lower tier subcontractor on its "
            + "behalf.");
        body.Put(leaf, matter, procedure.Section);
        var payers = matter.In(procedure.Payer);
        leaf.Field(procedure.Payer == PartyCapacity.Owner ? "Owner" : "Public entity",
            [.. payers.Select(p => (string?)NoticeContents.Person(matter, p)).DefaultIfEmpty(null)]);
        NoticeContents.Giver(leaf, matter, "Claimant");
        leaf.Field("Work",
            matter.Need(matter.Facts.Work, "work-missing", new Place.OfHead("contract.work"), $"Say in a few words what work is provided.",
            procedure.Section));
        leaf.Field("Site", [.. NoticeContents.Site(matter)]);
        leaf.Say($"This request is made under {procedure.Statute}, {procedure.Request}.");
        Signing.Claimant(leaf, matter, procedure.Section);
        return leaf;
    }
}
