using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Plan;

/// <summary>What is to be done on a job: every act of the claimant's that has a day and is still of use, nearest day first.</summary>
/// <remarks>It decides nothing new: day and standing are those of the findings.</remarks>
public static class NextSteps
{
    // What to do about a finding that is a deadline of the claimant's own, and by which remedy the money is asked that hangs on it. A
    // finding without a row here asks for no act.
    private static readonly (string Finding, string Do, Remedy? By)[] Acts =
    [
        ("preliminary-notice.last-day", "Give the preliminary notice", null),
        ("preliminary-notice.later-lender", "Give preliminary notice to the lender that came later", Remedy.StopPaymentNotice),
        ("claim-of-lien.last-day", "Record the claim of lien", Remedy.Lien),
        ("enforcement.last-day", "Sue to foreclose the lien, or record a notice of credit", Remedy.Lien),
        ("enforcement.stay-notice-last-day", "Do not sue: give notice under 11 U.S.C. § 546(b)", Remedy.Lien),
        ("enforcement.later-claim-last-day", "Bring the later claim into the action", Remedy.Lien),
        ("credit.enforcement-last-day", "Sue to foreclose the lien before the credit's time ends", Remedy.Lien),
        ("lis-pendens.last-day", "Record the notice of pendency of action", Remedy.Lien),
        ("prosecution.service-last-day", "Serve the summons and the complaint", Remedy.Lien),
        ("prosecution.last-day", "Bring the action to trial", Remedy.Lien),
        ("prosecution.five-years", "Bring the action to trial before its outer limit", Remedy.Lien),
        ("release.when-paid", "Record the release of the claim", Remedy.Lien),
        ("release.answer-by", "Answer the owner's demand for release", Remedy.Lien),
        ("release.hearing", "Answer the petition for release before the hearing", Remedy.Lien),
        ("release-bond.action-last-day", "Sue on the release bond", Remedy.Lien),
        ("stop-payment-notice.last-day", "Give the stop payment notice", Remedy.StopPaymentNotice),
        ("stop-payment-notice.money-out", "Have the stop payment notice received before the money goes out", Remedy.StopPaymentNotice),
        ("stop-payment-notice.owner", "Give the owner the stop payment notice", Remedy.StopPaymentNotice),
        ("stop-payment-notice.lender", "Give the construction lender the stop payment notice", Remedy.StopPaymentNotice),
        ("stop-payment-notice.owner-demand", "Answer the owner's demand for a stop payment notice", Remedy.StopPaymentNotice),
        ("stop-payment-notice.new-bond", "Bring the lender another bond", Remedy.StopPaymentNotice),
        ("stop-payment-notice.action-last-day", "Sue on the stop payment notice", Remedy.StopPaymentNotice),
        ("stop-payment-notice.stay-last-day", InStay, Remedy.StopPaymentNotice),
        ("stop-payment-notice.tell-of-action", "Tell of the action on the stop payment notice", Remedy.StopPaymentNotice),
        ("stop-payment-notice.prosecution-last-day", "Bring the action on the stop payment notice to trial", Remedy.StopPaymentNotice),
        ("payment-bond.notice-last-day", "Give notice to the surety and the bond principal", Remedy.PaymentBond),
        ("payment-bond.action-last-day", "Sue on the payment bond", Remedy.PaymentBond),
        ("payment-bond.stay-last-day", InStay, Remedy.PaymentBond),
        ("summary-release.answer-last-day", "Serve the counteraffidavit, its copy and the proof, or the money goes "
            + "out", Remedy.StopPaymentNotice),
        ("prompt-payment.charges-last-day", "Submit the charges of the last month hauled in, with their documents", Remedy.Debt),
        ("dispute-claim.conference-last-day", "Demand the conference on the claim", Remedy.Debt),
        ("dispute-claim.filing-last-day", "File the claim with the public entity", Remedy.Debt),
        ("dispute-claim.arbitration-last-day", "Begin the arbitration", Remedy.Debt),
        ("federal-bond.notice-last-day", "Give the prime contractor notice for the federal bond", Remedy.FederalBond),
        ("federal-bond.action-last-day", "Sue on the federal payment bond", Remedy.FederalBond),
        ("federal-bond.stay-last-day", InStay, Remedy.FederalBond),
        ("debt.last-day", "Sue on the debt itself", Remedy.Debt),
        ("design-lien.demand-last-day", "Give the landowner the notice of demand and default", Remedy.DesignLien),
        ("design-lien.last-day", "Record the design professional's lien", Remedy.DesignLien),
        ("design-lien.enforcement-last-day", "Sue to enforce the design professional's lien", Remedy.DesignLien),
        ("design-lien.converted-action-last-day", "Sue to enforce the converted lien", Remedy.DesignLien),
        ("design-lien.conversion-last-day", "Record the design lien anew as a mechanics lien", Remedy.DesignLien),
    ];

    private const string InStay = "Do not sue: file the claim in the bankruptcy, and ask there for relief from the stay";

    private const string Watching = IndexWatch.Id;

    /// <summary>The steps, nearest day first; of one day those on which most hangs first.</summary>
    /// <param name="findings">The findings of an assessment.</param>
    /// <param name="amounts">What hangs on each remedy; null where nothing is known of it.</param>
    /// <param name="noticeIsDue">Whether preliminary notice is due to somebody who was not given it.</param>
    /// <param name="asOf">The day of asking.</param>
    public static IReadOnlyList<NextStep> Of(IReadOnlyList<Finding> findings, Amounts? amounts, bool noticeIsDue, LocalDate asOf)
    {
        var steps = new List<NextStep>();
        foreach (var finding in findings)
        {
            if (finding.ActBy is not { } actBy)
                continue;
            if (finding.Id == Watching)
            {
                if (IsUseful(finding, findings, AtStake(amounts, null), noticeIsDue))
                {
                    steps.Add(new NextStep(Watching, finding.Title, actBy, finding.Standing, Watch: true)
                    {
                        Reading = finding.Band?.Earliest, Outlook = Outlook.Of(finding, asOf),
                    });
                }
            }
            else if (Act(finding.Id) is { } act)
            {
                var owed = AtStake(amounts, act.By);
                if (IsUseful(finding, findings, owed, noticeIsDue))
                {
                    steps.Add(new NextStep(finding.Id, act.Do, actBy, finding.Standing)
                    {
                        AtStake = owed,
                        Stakes = new Stakes(amounts?.Owed, owed, amounts?.AgreedPrice),
                        Reading = finding.Band?.Earliest,
                        Outlook = Outlook.Of(finding, asOf),
                    });
                }
            }
        }

        steps.Sort(static (a, b) =>
        {
            var byDay = a.ActBy.CompareTo(b.ActBy);
            if (byDay != 0)
                return byDay;
            var byMoney = decimal.Compare(b.AtStake ?? 0, a.AtStake ?? 0);
            return byMoney != 0 ? byMoney : string.CompareOrdinal(a.Finding, b.Finding);
        });
        return steps;
    }

    /// <summary>Whether a finding that is a deadline asks for an act.</summary>
    public static bool HasAct(string finding) => Act(finding) is not null;

    private static (string Do, Remedy? By)? Act(string finding)
    {
        foreach (var (id, act, by) in Acts)
        {
            if (id == finding || (id == Lender && IsLender(finding)) || IsFurther(finding, id))
                return (act, by);
        }

        // What follows the action on a design professional's lien is done as after any other, for the money of that lien.
        const string design = "design-lien.";
        return finding.StartsWith(design, StringComparison.Ordinal) && Act(finding[design.Length..]) is { } same
            ? (same.Do, Remedy.DesignLien) : null;
    }

    // A second finding of a kind is numbered.
    private static bool IsFurther(string finding, string id) =>
        finding.Length > id.Length + 1 && finding[id.Length] == '.' && char.IsAsciiDigit(finding[id.Length + 1])
        && finding.StartsWith(id, StringComparison.Ordinal);

    // Where the file does not give what the work was worth nobody can say what hangs on it.
    private static decimal? AtStake(Amounts? amounts, Remedy? by) =>
        amounts is null || amounts.IsUnknown ? null : amounts.DemandOf(by ?? amounts.Main);

    // Open, or in doubt and so worth the act. Where nothing is owed there is nothing to claim or to sue for; notice still serves what is to
    // come.
    private static bool IsUseful(Finding finding, IReadOnlyList<Finding> all, decimal? owed, bool noticeIsDue) => finding.Id switch
    {
        "preliminary-notice.last-day" => noticeIsDue && finding.Standing is (Standing.Open or Standing.InDoubt or Standing.Narrowed),
        "release.when-paid" or "release.answer-by" or "release.hearing" => IsAlive(finding),
        "claim-of-lien.last-day" => owed != 0 && IsAlive(finding) && IsRightAlive(all),
        "enforcement.last-day" => owed != 0 && IsAlive(finding)
            && all.All(f => f.Id is not ("credit.enforcement-last-day" or "enforcement.stay-notice-last-day")),
        "credit.enforcement-last-day" => owed != 0 && IsAlive(finding) && all.All(f => f.Id != "enforcement.stay-notice-last-day"),
        "stop-payment-notice.action-last-day" or "payment-bond.action-last-day" or "federal-bond.action-last-day" =>
            owed != 0 && IsAlive(finding)
            && all.All(f => f.Id != finding.Id.Replace("action-last-day", "stay-last-day", StringComparison.Ordinal)),
        // What none has been given yet has one step for all; once one was, the holder who has none has a step of its own.
        Owner => owed != 0 && IsAlive(finding) && WasGiven(all),
        _ when IsLender(finding.Id) => owed != 0 && IsAlive(finding) && WasGiven(all),
        _ => owed != 0 && IsAlive(finding),
    };

    private const string Owner = "stop-payment-notice.owner";
    private const string Lender = "stop-payment-notice.lender";

    private static bool IsLender(string id) => id.StartsWith(Lender, StringComparison.Ordinal);

    private static bool WasGiven(IReadOnlyList<Finding> all)
    {
        foreach (var finding in all)
        {
            if (finding.Id == "stop-payment-notice.last-day")
                return !IsAlive(finding);
        }

        return false;
    }

    private static bool IsRightAlive(IReadOnlyList<Finding> all)
    {
        foreach (var finding in all)
        {
            if (finding.Id == "lien-right")
                return finding.Standing is not (Standing.Lost or Standing.Done);
        }

        return true;
    }

    private static bool IsAlive(Finding finding) => finding.Standing is Standing.Open or Standing.InDoubt;
}
