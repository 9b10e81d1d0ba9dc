using Stringline.Law.Reasoning;

namespace Stringline.Law;

/// <summary>
/// Which finding needs which: a right whose condition is lost is lost with it, whatever its own clock says. The one table of it; a rule
/// looks at its own clock only. The findings are limited by it once every rule has answered (<see cref="Composition"/>).
/// </summary>
internal static class Conditions
{
    /// <summary>
    /// A condition, and what needs it: the findings of those ids, or, where one ends in a dot, all whose ids begin with it. In this order,
    /// so that what falls takes along what needs it in turn.
    /// </summary>
    internal static readonly Condition[] Table =
    [
        // Without a license no action lies for any compensation (Bus. & Prof. Code § 7031(a)). Federal work is left out: its bond is a
        // federal remedy, to which the State's bar was held not to apply (Technica v. Carolina Casualty (9th Cir. 2014) 749 F.3d 1149, from
        // memory).
        new("license", ["claim-of-lien.", "back-plan.", "enforcement.", "credit.", "lis-pendens.last-day", "release-bond.action-last-day",
            "stop-payment-notice.", "payment-bond.", "design-lien.", "debt.", "prompt-payment.", "retention.due",
                "retention.disputed-work-payment",
            "dispute-claim.undisputed-part", "stop-work."]),
        // Who furnishes to one in charge of nothing has none of the remedies (Civ. Code §§ 8404, 9100; 40 U.S.C. § 3133(b)).
        new("authorized-work",
            ["claim-of-lien.", "back-plan.", "enforcement.", "credit.", "lis-pendens.last-day", "release-bond.action-last-day",
            "stop-payment-notice.", "payment-bond.", "federal-bond."]) { DoubtToo = ["stop-payment-notice.", "payment-bond.",
                "federal-bond."] },
        // Preliminary notice is a condition of the lien and of the stop payment notice (Civ. Code §§ 8200(c), 8410, 8508(a), 9300(c)); the
        // bond has a road of its own (§§ 8612(b), 9560(b)).
        new("preliminary-notice.last-day", ["claim-of-lien.", "back-plan.", "enforcement.", "credit.", "lis-pendens.last-day",
            "release-bond.action-last-day", "stop-payment-notice."]),
        // Nothing is enforced that was not recorded in time (Civ. Code §§ 8412, 8414, 8460(a)), and a release bond answers only for a
        // judgment on the lien (§ 8424(b)).
        new("claim-of-lien.last-day", ["back-plan.", "enforcement.", "credit.", "lis-pendens.last-day", "release-bond.action-last-day"])
        {
            DoubtToo = ["lis-pendens.last-day", "release-bond.action-last-day"],
        },
        // A notice is one of the pendency of an action to enforce the lien (§ 8461).
        new("enforcement.last-day", ["lis-pendens.last-day"]) { DoubtToo = ["lis-pendens.last-day"] },
        new("lien-right", ["lien-right.", "claim-of-lien.enforceable", "claim-of-lien.first-day"]),
        // An action enforces a stop payment notice that was given in time (Civ. Code §§ 8550, 9502).
        // The owner's own demand is answered for the lien's sake all the same (§ 8520(b)).
        new("stop-payment-notice.last-day",
            ["stop-payment-notice.amount", "stop-payment-notice.action-first-day", "stop-payment-notice.action-first-day.",
            "stop-payment-notice.action-last-day", "stop-payment-notice.stay-last-day", "stop-payment-notice.tell-of-action",
                "stop-payment-notice.prosecution-last-day"])
        {
            DoubtToo = ["stop-payment-notice.action-last-day", "stop-payment-notice.stay-last-day"],
        },
        // Who leaves the owner's demand unanswered forfeits the lien; no day is set on which that is sure (§ 8520(b)).
        new("stop-payment-notice.owner-demand", []) { DoubtToo = ["lien-right"] },
        // The bond is enforced by one who gave the notice it asks (Civ. Code §§ 8612, 9560; 40 U.S.C. § 3133(b)(2)).
        new("payment-bond.notice-last-day",
            ["payment-bond.action-first-day", "payment-bond.action-last-day", "payment-bond.stay-last-day", "payment-bond.amount"])
        {
            DoubtToo = ["payment-bond.action-last-day"],
        },
        new("federal-bond.notice-last-day",
            ["federal-bond.action-first-day", "federal-bond.action-last-day", "federal-bond.stay-last-day", "federal-bond.amount"]),
        // An action that was not brought to trial within five years is dismissed (Code Civ. Proc. § 583.310); until that is done it may be
        // pending.
        new("prosecution.five-years", []) { DoubtIfLost = ["lien-right"], DoubtToo = ["lien-right"] },
        new("design-lien.prosecution.five-years", []) { DoubtIfLost = ["design-lien.right"], DoubtToo = ["design-lien.right"] },
        // Without the notice of default, ten days before the claim is recorded, there is no design professional's lien
        // (Civ. Code § 8304(c)).
        new("design-lien.demand-last-day", ["design-lien.right"]),
        // An action enforces a claim that was recorded in time and after its notice of demand and default (Civ. Code §§ 8304(c), 8312).
        new("design-lien.last-day", []) { DoubtToo = ["design-lien.enforcement-last-day"] },
        new("design-lien.right",
            ["design-lien.first-day", "design-lien.last-day", "design-lien.enforcement-last-day", "design-lien.demand-last-day"]),
    ];

    /// <summary>A condition of the table.</summary>
    /// <param name="Needed">The id of the finding that is needed.</param>
    /// <param name="By">The ids, or beginnings of ids, of those that need it.</param>
    internal sealed record Condition(string Needed, IReadOnlyList<string> By)
    {
        /// <summary>Those of them that are in doubt where the needed finding is.</summary>
        public IReadOnlyList<string> DoubtToo { get; init; } = [];

        /// <summary>Those that are in doubt, and not lost, where the needed finding is lost.</summary>
        public IReadOnlyList<string> DoubtIfLost { get; init; } = [];
    }

    /// <summary>Whether what is needed fails.</summary>
    internal static bool Fails(Standing standing) => standing is Standing.Lost or Standing.InDoubt;

    /// <summary>Whether what stands so is limited by what it needs to another standing.</summary>
    internal static bool IsBetterThan(Standing so, Standing limit) =>
        !(so is Standing.Lost or Standing.Done || (so is Standing.InDoubt or Standing.NotYet && limit == Standing.InDoubt));

    /// <summary>Whether an id is one of those that need something.</summary>
    internal static bool IsAmong(string id, IReadOnlyList<string> names)
    {
        foreach (var name in names)
        {
            if (name[^1] == '.' ? id.StartsWith(name, StringComparison.Ordinal) : id == name)
                return true;
        }

        return false;
    }
}
