using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.DisputedClaim;

/// <summary>
/// The claimant's demand for an informal conference to meet and confer for settlement of the issues in dispute, after the payer's answer or
/// its silence (Pub. Contract Code §§ 9204(d)(2)(A), 20104.2(d); Civ. Code § 8850(e)).
/// </summary>
internal static class ConferenceDemandPaper
{
    private const string LastDay = "dispute-claim.conference-last-day";

    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("conference-demand", "Demand for Conference on Claim", Write)
    {
        Sections = "Pub. Contract Code §§ 9204, 20104.2; Civ. Code § 8850",
        Use = PaperUse.Sent,
        Works = [WorkKind.Private, WorkKind.Public],
        Words = $"A contractor whose claim was disputed, or not answered in time, to the public entity or owner.",
        Asks = [new(PaperInput.Words, "The issues in dispute")],
        Deadline = LastDay,
        Fits = now => now.Assessment.Find("dispute-claim.conference") is { Standing: Standing.Open } && !now.Has<ConferenceDemanded>()
            ? "The claim was disputed or not answered in time." : null,
        Entries = [new("conference-demanded", "It was sent: day and how")],
    };

    private static Bundle Write(Matter matter)
    {
        var (procedure, says) = ClaimProcedure.Of(matter, matter.Assessment);
        procedure.OnlyWithContract(matter);
        var claim = matter.Last<DisputeClaimSent>();
        if (claim is null)
        {
            matter.NotEntered("dispute-claim-sent", "no-claim-sent", $"No claim under the claims procedure is entered.",
                $"Enter it as {new KindName("dispute-claim-sent")} with its day, amount and manner; or make it first: the paper "
                + $"{new PaperWord(DisputeClaimPaper.Paper)}.",
                procedure.Section);
        }
        else if (says is { Standing: Standing.NotYet })
        {
            matter.Refuse("too-early", new Place.OfFinding(says.Id), Matter.LawSays(says),
                $"Wait until the payer has answered or its time is over; an answer is entered as {new KindName("dispute-claim-answered")}.",
                procedure.Section);
        }

        else if (says is null && ClaimProcedure.HasContract(matter))
        {
            matter.Refuse("claim-day-missing", Place.Of(claim, "on"), $"Nobody knows on which day the claim was sent.",
                $"Enter the day: the payer’s time to answer runs from it.", procedure.Section);
        }

        var payers = procedure.Payers(matter);
        var issues = matter.Need(matter.Options.Words, "issues-missing", Place.Of(PaperInput.Words),
            $"Name the issues in dispute: what the answer disputes, and what you hold against it.", procedure.Section);
        return new Bundle([Demand(matter, procedure, payers, claim, says, issues)], new Guide
        {
            To = payers,
            Manner = DisputeClaimPaper.Manner,
            First =
            [
                .. ClaimProcedure.Doubts(says),
                .. matter.Known.All<ConferenceDemanded>().Count > 0
                    ? (string[])["A demand for a conference is entered already: see whether this one is still needed."] : [],
                "What is still in dispute after the conference goes to nonbinding mediation; after the claim is received "
                    + "both sides may agree in writing to go to court at once instead.",
            ],
            Steps = ["Sign in ink, with date and place.", DisputeClaimPaper.MailTo(payers)],
            After =
            [
                $"{EntryName.Enter("conference-demanded")}its day and how it was sent; "
                    + $"and once it was held, “{EntryName.Find("conference-held")}”.",
                "After the conference name in writing what you still dispute, by the paper “Disputed Portion of Claim for "
                    + "Mediation”: that part goes to mediation.",
            ],
        });
    }

    private static PaperBuilder Demand(Matter matter, ClaimProcedure procedure, IReadOnlyList<Party> payers, DisputeClaimSent? claim,
        Finding? says,
        string? issues)
    {
        var leaf = new PaperBuilder("demand-for-conference.pdf", "Demand for Conference on Claim");
        leaf.Head($"{procedure.Statute}, {procedure.Conference}");
        DisputeClaimPaper.Head(leaf, matter, payers);
        leaf.Say($"{matter.Facts.Claimant} (“claimant”) demands an informal conference to meet and confer for settlement of the issues in "
            + $"dispute. Please schedule it within {procedure.ToSchedule} of receipt of this demand.");
        leaf.Field("Claim", claim is null ? null : procedure.Naming(claim));
        leaf.Field($"Answer of the {procedure.PayerWord}", Answer(matter, says));
        leaf.Field("Issues in dispute", issues);
        DisputeClaimPaper.Giver(leaf, matter, procedure);
        Signing.Claimant(leaf, matter, procedure.Section);
        return leaf;
    }

    private static string? Answer(Matter matter, Finding? says)
    {
        // The last of the days that the law gives the payer is over: the demand would else be too early.
        if (matter.Last<DisputeClaimAnswered>() is not { } answer)
        {
            return says is { Readings: [.., var last] } ? $"No written statement was received; the time for it ended on {Day(last.Day)}."
                : null;
        }

        var made = answer.On is DayFact.Exact on ? $" of {Day(on.Day)}" : "";
        var part = answer.Undisputed is { } dollars ? $", which leaves {Dollars(dollars)} undisputed" : "";
        return $"Written statement{made}{part}. Claimant disputes it.";
    }
}
