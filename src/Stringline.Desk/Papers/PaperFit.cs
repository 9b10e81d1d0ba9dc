using Stringline.Desk.Web;
using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.Plan;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;

namespace Stringline.Desk.Papers;

/// <summary>A paper as a job's list of papers shows it.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="Why">Why it fits now; null for one that only may be made.</param>
/// <param name="Step">The step it serves; null where it serves none that has a day.</param>
internal sealed record FittingPaper(Paper Paper, string? Why, NextStep? Step);

/// <summary>Sorts the catalogue for a job: what fits its moment, what else may be made, what is for other work.</summary>
internal sealed record PaperFit
{
    // A step whose own day is another finding's than the paper's.
    private static readonly (string Finding, string Paper)[] AlsoServes =
    [
        ("enforcement.last-day", "notice-of-credit"),
        ("preliminary-notice.later-lender", "preliminary-notice"),
        ("release.answer-by", "release"),
        ("release.when-paid", "release"),
        ("release.partial", "partial-release"),
        ("stop-payment-notice.money-out", "public-stop-payment-notice"),
        ("stop-payment-notice.owner", "stop-payment-notice"),
        ("stop-payment-notice.lender", "stop-payment-notice"),
        ("stop-payment-notice.owner-demand", "stop-payment-notice"),
        ("stop-work.posting", "stop-work-notice"),
        ("prompt-payment.progress", "payment-demand"),
    ];

    /// <summary>The papers that fit now, the most pressing first.</summary>
    public required IReadOnlyList<FittingPaper> Now { get; init; }

    /// <summary>The rest for this kind of work, in the catalogue's order.</summary>
    public required IReadOnlyList<FittingPaper> Also { get; init; }

    /// <summary>Papers for another kind of work.</summary>
    public required IReadOnlyList<FittingPaper> OtherWork { get; init; }

    /// <summary>Sorts the catalogue.</summary>
    /// <param name="job">The job.</param>
    /// <param name="asked">Id of the finding whose papers are asked for, which then come first; null for none.</param>
    public static PaperFit Of(OpenJob job, string? asked)
    {
        var steps = job.Assessment.Next;
        List<FittingPaper> now = [], also = [], other = [];
        foreach (var paper in PaperCatalogue.All)
        {
            if (!paper.Works.Contains(job.Facts.Work.Kind))
            {
                other.Add(new FittingPaper(paper, null, null));
                continue;
            }

            var step = StepOf(paper, steps);
            var why = step is not null ? $"{step.Do}." : asked is not null && Serves(paper, asked) ? "It serves the finding you came from." : Moment(paper, job);
            (why is null ? also : now).Add(new FittingPaper(paper, why, step));
        }

        return new PaperFit
        {
            Now = [.. now.OrderBy(fit => asked is not null && Serves(fit.Paper, asked) ? 0 : 1).ThenBy(fit => fit.Step?.ActBy ?? LocalDate.MaxIsoValue)],
            Also = also,
            OtherWork = other,
        };
    }

    /// <summary>Whether some paper of the catalogue serves a finding.</summary>
    public static bool ServesAny(string finding) => PaperCatalogue.All.Any(paper => Serves(paper, finding));

    /// <summary>The one paper that does what a finding asks for on this kind of work; null where none does or there is a choice.</summary>
    public static Paper? ThatDoes(string finding, WorkKind work) =>
        PaperCatalogue.All.Where(paper => paper.Works.Contains(work) && paper.Id != "amended-claim" && Serves(paper, finding)).ToList() is [var only] ? only : null;

    private static bool Serves(Paper paper, string finding) =>
        paper.Deadline == finding || AlsoServes.Contains((finding, paper.Id)) || (Unnumbered(finding) is { } first && Serves(paper, first));

    // A second finding of a kind is numbered: what serves the first serves it too.
    private static string? Unnumbered(string finding) => finding.LastIndexOf('.') is var dot && dot > 0 && char.IsAsciiDigit(finding[^1]) && finding[(dot + 1)..].All(char.IsAsciiDigit)
        ? finding[..dot]
        : null;

    // An amended claim shares the day of a claim, but there is nothing to amend until one is recorded; the release serves no day by itself.
    private static NextStep? StepOf(Paper paper, IReadOnlyList<NextStep> steps) =>
        paper.Id == "amended-claim" ? null : steps.FirstOrDefault(step => Serves(paper, step.Finding));

    // Papers without a day of their own fit by what the file holds.
    private static string? Moment(Paper paper, OpenJob job)
    {
        var demand = job.Assessment.Amount.Demand;
        bool Has<T>() where T : Entry => job.Facts.All<T>().Any();
        return paper.Id switch
        {
            "proof-of-notice" when job.Facts.Entries.Any(entry => ProvedNotices.Of(entry) is not null) => "A notice is in the file; this proves it.",
            "certified-mail-sheet" when Mailed(job.Facts) => "Certified mail is in the file.",
            "payment-demand" when job.Assessment.Owed.Demand > 0 => "Money is owed by the file.",
            "waiver-8132" when demand > 0 && !IsComplete(job) => "Money is owed and the work goes on: for a progress payment that is promised.",
            "waiver-8136" when demand > 0 && IsComplete(job) => "Money is owed and the work is complete: for the final payment that is promised.",
            "amended-claim" or "partial-release" when HasMechanics(job) && demand > 0 => "A claim is recorded.",
            "release" when HasMechanics(job) && (demand == 0 || job.Assessment.Find("enforcement.last-day") is { Standing: Standing.Lost }) =>
                "A claim is recorded, and nothing is owed by the file or the claim has expired.",
            "design-lien-release" when job.Assessment.Find("design-lien.release") is { } duty => $"{duty.Title}.",
            "security-demand" when job.Assessment.Find("owners-security.due") is { Standing: Standing.Open } && !Has<SecurityDemanded>() => "The owner owes security for payment.",
            "dispute-claim" when Has<Disputed>() && !Has<DisputeClaimSent>() && job.Facts.Claimant.Role == ClaimantRole.DirectContractor => "A part of the money is disputed.",
            "claim-request" when Has<Disputed>() && !Has<ClaimRequestMade>() && job.Facts.Claimant.Role == ClaimantRole.Subcontractor => "A part of the money is disputed.",
            "conference-demand" when job.Assessment.Find("dispute-claim.conference") is { Standing: Standing.Open } && !Has<ConferenceDemanded>() => "The claim was disputed or not answered in time.",
            "disputed-portion" when Has<ConferenceHeld>() && job.Assessment.Find("dispute-claim.contractors-answer") is null => "A conference was held: what is left goes to mediation.",
            "stop-payment-release" when Has<StopPaymentGiven>() && demand == 0 => "A stop payment notice was given, and nothing is owed by the file.",
            _ => null,
        };
    }

    // A design professional's lien has a release of its own, and no amended claim.
    private static bool HasMechanics(OpenJob job)
    {
        var facts = new FactsAsOf(job.Facts, job.AsOf);
        return facts.All<ClaimRecorded>().Any(claim => WhichLien.Of(facts, claim) != LienKind.Design);
    }

    private static bool IsComplete(OpenJob job) => job.Assessment.Find("completion.day") is { Readings.Count: > 0 };

    private static bool Mailed(JobFile job) =>
        job.All<NoticeGiven>().Any(notice => notice.Manner == Manner.CertifiedMail) || job.All<ClaimServed>().Any(served => served.Manner == Manner.CertifiedMail);
}
