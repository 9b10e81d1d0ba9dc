using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>Which remedy's reading answers which finding, on which kind of work.</summary>
internal static class SecondReader
{
    /// <summary>
    /// The remedy's reading; where nothing furnished so far can be covered but more may come, both lost and open may be said.
    /// </summary>
    public static Func<World, Answer>? Of(string id, WorkKind kind)
    {
        if (id is "stop-payment-notice.last-day" or "stop-payment-notice.owner" or "stop-payment-notice.lender"
            && Remedy(id, kind) is { } give)
            return Limited(id, kind, w => w.Matter.IsPaidInFull ? give(w) with { May = May.Anything, Last = null } : give(w));
        return Limited(id, kind, Remedy(id, kind));
    }

    private static Func<World, Answer>? Limited(string id, WorkKind kind, Func<World, Answer>? read)
    {
        if (read is not { } remedy
            || id is "license" or "preliminary-notice.last-day" or "preliminary-notice.reaches-back-to" or "completion.day"
                || kind == WorkKind.Federal)
            return read;
        return w =>
        {
            var answer = remedy(w);
            if (w.LicenseLost || answer.May != May.Lost || !PreliminaryNoticeReading.IsDead(w))
                return answer;
            if (PreliminaryNoticeReading.OneWasTold(w))
                return Answer.Free;
            return PreliminaryNoticeReading.MoreMayCome(w) ? answer with { May = May.Lost | May.Open } : answer;
        };
    }

    /// <summary>Findings that have no second reading, and why.</summary>
    public static IReadOnlyDictionary<string, string> NotRead { get; } = new Dictionary<string, string>
    {
        ["assumptions"] = "says what was taken for granted; no right of its own",
        ["back-plan."] = "days of the office's own plan, counted back from a day that is read",
        ["amount"] = "a sum",
        ["claim-of-lien.enforceable"] = "a sum",
        ["claim-of-lien.overstated"] = "a sum",
        ["enforcement.later-claim-last-day"] = "ninety days of a second claim, which the reading of the action counts among its worlds",
        ["enforcement.stay-notice-last-day"] = "the same ninety days, for the notice under 11 U.S.C. § 546(b)",
        ["preliminary-notice.later-lender"] = "twenty days of our own; the Code sets none",
        ["prosecution.service-last-day"] = "two years, after which the court may dismiss",
        ["stop-payment-notice.action-first-day.2"] = "as the first",
        ["stop-payment-notice.owner-answer"] = "the other side's days to answer",
        ["stop-payment-notice.owner-demand"] = "to be answered at once; the Code sets no days",
        ["stop-payment-notice.prosecution-last-day"] = "two years, after which the court may dismiss",
        ["stop-payment-notice.stay-last-day"] = "the days of the action, for what is done in the bankruptcy instead",
        ["payment-bond.stay-last-day"] = "the days of the action, for what is done in the bankruptcy instead",
        ["federal-bond.stay-last-day"] = "the days of the action, for what is done in the bankruptcy instead",
        ["lien-right.property"] = "against which interest, and no time",
        ["lien-right.rank"] = "rank, and no time",
        ["design-lien.right"] = "a sum",
        ["design-lien.first-day"] = "ten days after the demand; the claim recorded too early is read",
        ["design-lien.demand-last-day"] = "ten days before a day that is read",
        ["index-watch.next-day"] = "a habit of the office",
        ["release."] = "what the owner may do, and what a claimant owes who is paid",
        ["stop-payment-notice.amount"] = "a sum",
        ["payment-bond.amount"] = "a sum",
        ["federal-bond.amount"] = "a sum",
        ["preliminary-notice.estimate"] = "a sum",
        ["waiver."] = "what a paper signed gave up, a sum",
        ["retention."] = "money due, and no remedy against land, fund or bond",
        ["prompt-payment."] = "money due, and no remedy against land, fund or bond",
        ["debt."] = "money due, and no remedy against land, fund or bond",
        ["dispute-claim."] = "the other side's days to answer",
        ["design-lien.converted-action-last-day"] = "the ninety days of the converted lien, which the reading of its enforcement counts",
        ["design-lien.lis-pendens."] = "as of the claim of lien",
        ["design-lien.prosecution."] = "as of the claim of lien",
        ["design-lien.release-bond."] = "as of the claim of lien",
        ["design-lien.release."] = "what the owner may do",
        ["preliminary-notice.officer"] = "to whom a public entity has its notices sent; its days are read with the notice",
        ["stop-payment-notice.money-out"] = "a sum",
        ["stop-work."] = "the first day to stop, counted from a day that the contract sets",
    };

    /// <summary>Whether a finding is among those, by its id or the beginning of it.</summary>
    public static bool IsLeftOut(string id) =>
        NotRead.Keys.Any(key => id == key || (key[^1] == '.' && id.StartsWith(key, StringComparison.Ordinal)));

    private static Func<World, Answer>? Remedy(string id, WorkKind kind) => (id, kind) switch
    {
        ("license", _) => LicenseReading.Finding,
        ("authorized-work", _) => OtherReadings.AuthorizedWork,
        ("payment-bond.action-first-day", _) => OtherReadings.BondSuit,
        ("prosecution.five-years", _) => ProsecutionReading.FiveYears,
        ("completion.day", WorkKind.Private or WorkKind.Public) => OtherReadings.Completed,
        ("preliminary-notice.reaches-back-to", WorkKind.Private or WorkKind.Public) => OtherReadings.ReachesBackTo,
        ("claim-of-lien.first-day", WorkKind.Private) => FirstDayReading.Claim,
        ("stop-payment-notice.action-first-day", WorkKind.Private or WorkKind.Public) => FirstDayReading.StopPaymentSuit,
        ("federal-bond.action-first-day", WorkKind.Federal) => FirstDayReading.FederalSuit,
        ("lien-right", _) => LienRightReading.Finding,
        ("prosecution.last-day", _) => ProsecutionReading.Trial,
        ("stop-payment-notice.tell-of-action", _) => ProsecutionReading.Tell,
        ("preliminary-notice.last-day", WorkKind.Private or WorkKind.Public) => PreliminaryNoticeReading.LastDayFinding,
        ("claim-of-lien.last-day", WorkKind.Private) => ClaimReading.LastDay,
        ("enforcement.last-day", WorkKind.Private) => EnforcementReading.Finding,
        ("credit.last-day", WorkKind.Private) => CreditReading.LastDay,
        ("credit.enforcement-last-day", WorkKind.Private) => CreditReading.Enforcement,
        ("release-bond.action-last-day", WorkKind.Private) => ReleaseBondReading.Action,
        ("release-bond.amount", WorkKind.Private) => ReleaseBondReading.Amount,
        ("lis-pendens.last-day", WorkKind.Private) => PendencyReading.LastDay,
        ("stop-payment-notice.owner", WorkKind.Private) => PrivateStopPaymentReading.ToOwner,
        ("stop-payment-notice.lender", WorkKind.Private) => PrivateStopPaymentReading.ToLender,
        ("stop-payment-notice.last-day", WorkKind.Private) => PrivateStopPaymentReading.LastDay,
        ("stop-payment-notice.action-last-day", WorkKind.Private) => PrivateStopPaymentReading.Action,
        ("payment-bond.notice-last-day", WorkKind.Private) => PrivateBondReading.Notice,
        ("payment-bond.action-last-day", WorkKind.Private) => PrivateBondReading.Action,
        ("stop-payment-notice.last-day", WorkKind.Public) => PublicStopPaymentReading.LastDay,
        ("stop-payment-notice.action-last-day", WorkKind.Public) => PublicStopPaymentReading.Action,
        ("payment-bond.notice-last-day", WorkKind.Public) => PublicBondReading.Notice,
        ("payment-bond.action-last-day", WorkKind.Public) => PublicBondReading.Action,
        ("federal-bond.notice-last-day", WorkKind.Federal) => FederalBondReading.Notice,
        ("federal-bond.action-last-day", WorkKind.Federal) => FederalBondReading.Action,
        ("design-lien.last-day", WorkKind.Private) => DesignLienReading.LastDay,
        ("design-lien.enforcement-last-day", WorkKind.Private) => DesignLienReading.Enforcement,
        ("design-lien.conversion-last-day", WorkKind.Private) => DesignLienReading.Conversion,
        _ => null,
    };
}
