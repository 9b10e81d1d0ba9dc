using Stringline.Desk.Web;
using Stringline.Papers.Catalogue;

namespace Stringline.Desk.Papers;

/// <summary>What is entered once a paper has gone its way.</summary>
internal static class AfterPaper
{
    /// <summary>The links to the forms, in the order in which things happen; none where the program has no such page.</summary>
    public static IEnumerable<Way> Of(Paper paper, PaperOptions options, OpenJob job, Ways ways) =>
        Entries(paper).Select(entry => Filled(ways.Enter(job.Id, entry.What, entry.Words), entry.What, paper, options, job))
            .Append(Proved(paper, job.Id, ways)).Append(Refused(paper, job.Id, ways)).OfType<Way>();

    private static Way? Filled(Way? way, string what, Paper paper, PaperOptions options, OpenJob job)
    {
        if (way is null)
            return null;
        var query = new QueryString();
        foreach (var (field, value) in Prefilled.Of(what, paper, options, job))
            query = query.Add(Prefilled.Lead + field, value);
        return query.HasValue ? way with { Address = $"{way.Address}&{query.Value![1..]}" } : way;
    }

    private static Way? Proved(Paper paper, long job, Ways ways) => paper.ProvedAs is { } kind && ways.Has("/Job/Paper")
        ? new Way("Then prove it: the proof of notice, filled in from what was entered", $"/job/{job}/papers/proof-of-notice?kind={kind.Word()}", "/Job/Paper")
        : null;

    private static Way? Refused(Paper paper, long job, Ways ways) => paper.Use == PaperUse.Recorded && ways.Has("/Job/AfterRecording")
        ? new Way("It was refused at the counter: why, and what mends it", $"/job/{job}/after-recording?refused=yes", "/Job/AfterRecording")
        : null;

    private static (string What, string Words)[] Entries(Paper paper) => paper.Id switch
    {
        "preliminary-notice" or "public-preliminary-notice" => [("notice-given", "It was given: day, manner, article number")],
        "waiver-8132" or "waiver-8134" or "waiver-8136" or "waiver-8138" => [("waived", "It was signed and handed over")],
        "payment-demand" => [("payment-demanded", "It was sent")],
        "notice-of-completion" => [("owner-recorded", "It was recorded: day and instrument number")],
        "stop-payment-notice" or "public-stop-payment-notice" => [("stop-payment-given", "It was given: day, to whom, amount")],
        "bond-notice" or "public-bond-notice" => [("bond-notice-given", "It was given: day and to whom")],
        "stop-work-notice" => [("stop-work-notice-given", "It was given: day and to whom")],
        "security-demand" => [("security-demanded", "It was given: day and manner")],
        "dispute-claim" => [("dispute-claim-sent", "It was sent: day, amount, how; and when it was received")],
        "conference-demand" => [("conference-demanded", "It was sent: day and how")],
        "claim-request" => [("claim-request-made", "It was sent: day and amount")],
        "action-notice" => [("action-told", "It was given: day and to whom")],
        "counteraffidavit" => [("counteraffidavit-served", "It was served: day, on whom, with proof")],
        "design-lien-demand" => [("payment-demanded", "It was given: day, amount, that it says a default has occurred")],
        "design-lien" => [("claim-recorded", "It was recorded: day, instrument number, amount, for a design professional's lien")],
        "design-lien-release" => [("release-recorded", "A full satisfaction was recorded: day and instrument number")],
        "claim" or "amended-claim" or "converted-claim" =>
        [
            ("claim-served", "The copy was mailed to the owner: day and article number"),
            ("claim-recorded", "It was recorded: day, instrument number, amount"),
        ],
        "notice-of-credit" => [("credit-recorded", "It was recorded: day, instrument number, end of the credit")],
        "notice-of-pendency" => [("lis-pendens-recorded", "It was recorded: day and instrument number")],
        "release" => [("release-recorded", "It was recorded: day and instrument number")],
        "release-demand" => [("release-demanded", "It was given")],
        _ => [],
    };
}
