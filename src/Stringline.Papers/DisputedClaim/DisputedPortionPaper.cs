using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.DisputedClaim;

/// <summary>
/// The claimant’s writing that names what is left in dispute after the conference, which goes to nonbinding mediation; from it the parties
/// have their time to agree on a mediator (Pub. Contract Code § 9204(d)(2)(B); Civ. Code § 8850(f)).
/// </summary>
internal static class DisputedPortionPaper
{
    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("disputed-portion", "Disputed Portion of Claim for Mediation", Write)
    {
        Sections = "Pub. Contract Code § 9204(d)(2)(B); Civ. Code § 8850(f)",
        Use = PaperUse.Sent,
        Works = [WorkKind.Private, WorkKind.Public],
        Words = $"A contractor whose claim is still in dispute after the conference, to the public entity or owner.",
        Asks =
        [
            new(PaperInput.Words, "What is left in dispute after the conference"),
            new(PaperInput.Amount, "Dollars and cents of the claim still in dispute; nothing: no sum is stated"),
        ],
        Fits = now => now.Has<ConferenceHeld>() && now.Assessment.Find("dispute-claim.contractors-answer") is null
            ? "A conference was held: what is left goes to mediation." : null,
    };

    private static Bundle Write(Matter matter)
    {
        var (procedure, says) = ClaimProcedure.Of(matter, matter.Assessment);
        procedure.OnlyWithContract(matter);
        if (procedure.Mediation is null)
        {
            matter.Refuse("no-mediation", new Place.OfHead("contract.on"),
                $"The older procedure knows no mediation of a claim before an action.",
                $"Have counsel present the claim under the Government Code (Pub. Contract Code § 20104.2(e)).", procedure.Section);
        }

        var claim = matter.Last<DisputeClaimSent>();
        if (claim is null)
        {
            matter.NotEntered("dispute-claim-sent", "no-claim-sent", $"No claim under the claims procedure is entered.",
                $"Enter it as {new KindName("dispute-claim-sent")} with its day, amount and manner.", procedure.Section);
        }

        var held = matter.Last<ConferenceHeld>();
        if (held is null)
        {
            matter.Refuse("no-conference-held", Place.Journal,
                $"No conference is entered, and only what is left after it goes to mediation.",
                $"Enter it as {new KindName("conference-held")} with its day; or demand it first: the paper "
                + $"{new PaperWord(ConferenceDemandPaper.Paper)}.", procedure.Section);
        }

        if (matter.Options.Amount is { } more && claim?.Amount is { } whole && more > whole)
        {
            matter.Refuse("more-than-claimed", Place.Of(PaperInput.Amount), $"{Dollars(more)} is more than the claim of {Dollars(whole)}.",
                $"Name the part of that claim which is still in dispute.", procedure.Section);
        }

        var payers = procedure.Payers(matter);
        var issues = matter.Need(matter.Options.Words, "issues-missing", Place.Of(PaperInput.Words),
            $"Name what is left in dispute: what was not settled, and what you hold about it.", procedure.Section);
        return new Bundle([Portion(matter, procedure, payers, claim, held, issues)], new Guide
        {
            To = payers,
            Manner = DisputeClaimPaper.Manner,
            First =
            [
                .. ClaimProcedure.Doubts(says),
                $"The {procedure.PayerWord} states in writing after the conference what it still disputes. Wait for that statement if it "
                    + $"is "
                    + "still due, and name nothing that it grants.",
            ],
            Steps = ["Sign in ink, with date and place.", DisputeClaimPaper.MailTo(payers)],
            After =
            [
                $"Agree on a mediator in the {ToAgree(matter, procedure).Spelled} after this paper; have counsel take part in the "
                    + $"mediation.",
                procedure.Payer == PartyCapacity.PublicEntity
                    ? "If you cannot agree, each side selects a mediator, and those two select the one who mediates."
                    : "If you cannot agree, the contractor may select the mediator; if the owner refuses mediation, notice to suspend work "
                        + "may "
                        + "follow (Civ. Code § 8850(f)(3), (k)).",
            ],
        });
    }

    private static NumberRow ToAgree(Matter matter, ClaimProcedure procedure) =>
        matter.ByLaw(procedure.Payer == PartyCapacity.PublicEntity ? Number.EntitysMediator : Number.OwnersMediator);

    private static PaperBuilder Portion(
        Matter matter, ClaimProcedure procedure, IReadOnlyList<Party> payers, DisputeClaimSent? claim, ConferenceHeld? held, string? issues)
    {
        var leaf = new PaperBuilder("disputed-portion.pdf", "Disputed Portion of Claim for Mediation");
        leaf.Head($"{procedure.Statute}, {procedure.Mediation}");
        DisputeClaimPaper.Head(leaf, matter, payers);
        leaf.Say($"{matter.Facts.Claimant} (“claimant”) identifies in writing the portion of claimant’s claim that remains in dispute "
            + "after the "
            + "conference. It is submitted to nonbinding mediation, the associated costs to be shared equally. Please agree with claimant "
            + $"on a mediator within {ToAgree(matter, procedure)} after this identification.");
        leaf.Field("Claim", claim is null ? null : procedure.Naming(claim));
        leaf.Field("Conference", held is { On: DayFact.Exact on } ? $"Held on {Day(on.Day)}" : held is null ? null : "Held");
        if (matter.Options.Amount is { } amount)
            leaf.Field("Amount in dispute", Dollars(amount));
        leaf.Field("Portion in dispute", issues);
        DisputeClaimPaper.Giver(leaf, matter, procedure);
        Signing.Claimant(leaf, matter, procedure.Section);
        return leaf;
    }
}
