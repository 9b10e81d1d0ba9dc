using Stringline.Law.Numbers;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers.Writing;

namespace Stringline.Papers.DisputedClaim;

/// <summary>
/// A claims procedure as its papers speak of it. Those of public work (Pub. Contract Code § 9204) and of private work (Civ. Code § 8850)
/// ask the same of a claim, of the demand for a conference and of a subcontractor's request, each under subdivisions and with days of its
/// own.
/// </summary>
internal sealed record ClaimProcedure
{
    /// <summary>In whose capacity the payer stands in the file.</summary>
    public required PartyCapacity Payer { get; init; }

    /// <summary>The payer in words.</summary>
    public required string PayerWord { get; init; }

    /// <summary>The statute as a paper names it.</summary>
    public required string Statute { get; init; }

    /// <summary>The section, for refusals.</summary>
    public required string Section { get; init; }

    /// <summary>Where it says how a claim is sent.</summary>
    public required string Sent { get; init; }

    /// <summary>Where it asks for documentation.</summary>
    public required string Documents { get; init; }

    /// <summary>What the payer is to answer, and when.</summary>
    public required string Answer { get; init; }

    /// <summary>What late money bears; null where the section says nothing of it.</summary>
    public required string? Interest { get; init; }

    /// <summary>Where it gives the conference.</summary>
    public required string Conference { get; init; }

    /// <summary>How soon after the demand the payer schedules it.</summary>
    public required NumberRow ToSchedule { get; init; }

    /// <summary>Where it sends to mediation what is left of the claim; null where it knows none.</summary>
    public required string? Mediation { get; init; }

    /// <summary>Where it lets a subcontractor ask, and what the contractor is to answer.</summary>
    public required string Request { get; init; }

    /// <summary>Id of the finding on the payer's answer to a claim.</summary>
    public required string Finding { get; init; }

    // A number that the paper states, by the law of its day.
    private static NumberRow Days(Matter matter, Number number) => matter.Assessment.Numbers.On(number, matter.AsOf);

    private static ClaimProcedure Private(Matter matter) => new()
    {
        Payer = PartyCapacity.Owner, PayerWord = "owner",
        Statute = "California Civil Code section 8850", Section = "Civ. Code § 8850",
        Sent = "subdivision (c)(1)", Documents = "subdivision (d)(1)(B)",
        Answer = $"within {Days(matter, Number.OwnersStatement)} of receipt of this claim, a written statement identifying what portion of "
            + $"it is "
            + $"disputed and what portion is undisputed, and pay the undisputed portion within {Days(matter, Number.OwnerPays)} after that "
            + "statement (subdivision (d))",
        Interest = $"Undisputed amounts not paid in a timely manner bear interest at {Days(matter, Number.OwnersInterest)} per month "
            + $"(subdivision (h)(1)).",
        Conference = "subdivision (e)", ToSchedule = Days(matter, Number.OwnersConference),
        Mediation = "subdivision (f)",
        Request = $"subdivision (j). Please notify claimant in writing, within {Days(matter, Number.PrivateContractorsAnswer)} of receipt "
            + $"of this request, as "
            + "to whether you presented the claim to the owner and, if you did not, of the reasons for not doing so (subdivision (j)(4))",
        Finding = "dispute-claim.owners-statement",
    };

    private static ClaimProcedure Public(Matter matter) => new()
    {
        Payer = PartyCapacity.PublicEntity, PayerWord = "public entity",
        Statute = "California Public Contract Code section 9204", Section = "Pub. Contract Code § 9204",
        Sent = "subdivision (c)(1)", Documents = "subdivision (d)(1)(B)",
        Answer = $"within {Days(matter, Number.EntitysStatement)} of receipt of this claim, a written statement identifying what portion "
            + $"of it is "
            + $"disputed and what portion is undisputed, and pay the undisputed portion "
            + $"within {Days(matter, Number.EntityPays)} after that "
            + "statement (subdivision (d)(1))",
        Interest = $"Amounts not paid in a timely manner bear interest at {Days(matter, Number.EntitysInterest)} per annum (subdivision "
            + $"(d)(4)).",
        Conference = "subdivision (d)(2)(A)", ToSchedule = Days(matter, Number.EntitysConference),
        Mediation = "subdivision (d)(2)(B)",
        Request = $"subdivision (d)(5). Please notify claimant in writing, within {Days(matter, Number.ContractorsAnswer)} of receipt of "
            + $"this "
            + "request, as to whether you presented the claim to the public entity and, if you did not, of the reasons for not having "
            + "done so",
        Finding = "dispute-claim.entitys-statement",
    };

    // What is left toward a local agency where § 9204 does not govern; its days go by the size of the claim.
    private static ClaimProcedure Older(Matter matter) => Public(matter) with
    {
        Statute = "California Public Contract Code section 20104.2", Section = "Pub. Contract Code § 20104.2",
        Sent = "subdivision (a)", Documents = "subdivision (a)",
        Answer = "in writing and within the time of subdivision (b) or (c), an answer to this claim; any portion that is undisputed is to "
            + "be paid (section 20104.6, subdivision (a))",
        Interest = null,
        Conference = "subdivision (d)",
        Mediation = null,
    };

    /// <summary>
    /// The procedure of the job's work, and what the law says of a claim; none to which the procedure does not apply is made.
    /// </summary>
    /// <param name="matter">The matter.</param>
    /// <param name="assessment">The assessment in which the claim stands: the day's, or one in which it is supposed.</param>
    public static (ClaimProcedure Procedure, Finding? Says) Of(Matter matter, Assessment assessment)
    {
        var procedure = matter.Job.Work.Kind == WorkKind.Public ? Public(matter) : Private(matter);
        var says = assessment.Find(procedure.Finding);
        if (says is { Standing: Standing.Lost })
        {
            matter.Refuse("not-governed", new Place.OfFinding(says.Id), Matter.LawSays(says),
                $"Follow the claims procedure of the contract, and have counsel read it.",
                procedure.Section);
        }

        return (says is { Why: [{ Section: "Pub. Contract Code § 20104.2" }, ..] } ? Older(matter) : procedure, says);
    }

    /// <summary>The claim in words, with what the file tells of it.</summary>
    public string Naming(DisputeClaimSent claim)
    {
        var sent = claim.On is DayFact.Exact on ? $", sent on {PaperText.Day(on.Day)}" : "";
        var amount = claim.Amount is { } dollars ? $", for {PaperText.Dollars(dollars)}" : "";
        var received = claim.Received is { } day ? $"; received on {PaperText.Day(day)}" : "";
        return $"Claim under {Statute}{sent}{amount}{received}";
    }

    /// <summary>A claim, and a demand for a conference, are for one who has a contract with the payer.</summary>
    public void OnlyWithContract(Matter matter)
    {
        if (HasContract(matter))
            return;
        matter.Refuse("no-contract-with-payer", new Place.OfHead("claimant.role"),
            $"The claimant is {NoticeContents.ARole(matter.Job.Claimant.Role)} without a contract with the {PayerWord}.",
            $"Ask the contractor in writing to present the claim: that is the paper {new PaperWord(ClaimRequestPaper.Paper)}.", Section);
    }

    /// <summary>Whether the claimant has a contract with the payer.</summary>
    public static bool HasContract(Matter matter) => matter.Job.Claimant.Role == ClaimantRole.DirectContractor
        || (matter.Job.Work.Kind == WorkKind.Private && matter.Job.Claimant.Role == ClaimantRole.Subcontractor
            && matter.Known.HiredByOwner);

    /// <summary>The payers, each with an address; none is a reason against the paper.</summary>
    public IReadOnlyList<Party> Payers(Matter matter)
    {
        var payers = Addressees.WithAddress(matter, matter.In(Payer), "");
        if (payers.Count == 0)
        {
            matter.Refuse("payer-missing", Place.Parties,
                $"No party with capacity {new FileWord(Payer)} is there.",
                $"Add the {PayerWord}, to whom it goes.", Section);
        }

        return payers;
    }

    /// <summary>What is in doubt, and what would settle it, as the sheet says it first; nothing where nothing is.</summary>
    /// <param name="says">What the law says.</param>
    /// <param name="supposed">What was only supposed: it can settle nothing.</param>
    public static IEnumerable<string> Doubts(Finding? says, Entry? supposed = null) => says is not { Standing: Standing.InDoubt }
        // How long the section is in force concerns every claim under it.
        ? says?.Why.Where(w => w.Section == "Pub. Contract Code § 9204(i)").Select(w => RefusalInWords.Said(w.Sentence)) ?? []
        : [$"In doubt: {LawForReaders.BehindColon(Matter.Said(says))}",
            .. says.Questions.Where(q => q.Corrects is null || q.Corrects != supposed)
            .Select(q => RefusalInWords.Said(q.Sentence))];
}
