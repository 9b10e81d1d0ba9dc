using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.PaymentBond;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.PaymentBond;

/// <summary>
/// The notice to surety and bond principal for one who gave no preliminary notice: private works Civ. Code §§ 8612, 8614,
/// public works §§ 9560, 9562. It says what every notice says (§ 8102) and goes the same ways (§ 8106).
/// </summary>
internal static class BondNoticePaper
{
    /// <summary>Both papers.</summary>
    public static IEnumerable<Paper> Papers => [Private, Public];

    private static Paper Private { get; } = new("bond-notice", "Notice to Surety and Bond Principal", matter => Write(
        matter, "Civ. Code § 8612", "Private works. California Civil Code sections 8102, 8612 and 8614", "bond-notice.pdf"))
    {
        Sections = "Civ. Code §§ 8102, 8612, 8614",
        Use = PaperUse.Given,
        Works = [WorkKind.Private],
        Words = $"The claimant, to surety and principal of the payment bond.",
        Asks = [new(PaperInput.To), new(PaperInput.Number, "The number of the bond")],
        Deadline = "payment-bond.notice-last-day",
        ProvedAs = ProvedNotice.Bond,
        Entries = [Given],
    };

    private static Paper Public { get; } = new("public-bond-notice", "Notice to Surety and Bond Principal, Public Works", matter => Write(
        matter, "Civ. Code § 9560", "Public works. California Civil Code sections 8102, 9560 and 9562", "public-bond-notice.pdf"))
    {
        Sections = "Civ. Code §§ 8102, 9560, 9562",
        Use = PaperUse.Given,
        Works = [WorkKind.Public],
        Words = $"The claimant, to surety and principal of the public payment bond.",
        Asks = [new(PaperInput.To), new(PaperInput.Number, "The number of the bond")],
        Deadline = "payment-bond.notice-last-day",
        ProvedAs = ProvedNotice.Bond,
        Entries = [Given],
    };

    private static EntryAfter Given => new("bond-notice-given", "It was given: day and to whom")
    {
        To = _ => [],
        Fill = now =>
        [
            new Filled.By(Manner.CertifiedMail),
            .. now.Assessment.AmountOf(Remedy.PaymentBond) is { IsUnknown: false, Demand: > 0 and var claimed }
                ? [new Filled.Sum("amount", claimed)] : (Filled[])[],
        ],
    };

    private static Bundle Write(Matter matter, string section, string heads, string file)
    {
        matter.NotIfLost("payment-bond.notice-last-day", "The time to give notice on the bond is over.");
        var (sureties, principals, isKnown) = Named(matter, section);
        IReadOnlyList<Party> to = Addressees.WithAddress(matter, [.. sureties, .. principals], "Civ. Code § 8108");
        var leaf = new PaperBuilder(file, "Notice to Surety and Bond Principal");
        leaf.Head(heads);
        string Capacity(Party party) => CapacityWords.Of(party)
            + (isKnown && principals.Contains(party) ? " and bond principal" : "");
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, to, capacity: Capacity);
        leaf.Say($"{matter.Facts.Claimant} (“claimant”) gives notice of a claim against the payment bond for the work described here.");
        leaf.Field("Claimant’s demand", TypeStyle.BodyBold,
            NoticeContents.Demand(matter, BondClaim.Of(matter.Known).Demand, "Civ. Code § 8102(a)(6)(C)"));
        leaf.Field("Bond", [
            $"Surety: {string.Join("; ", sureties.Select(p => OneLine(p.Name)).DefaultIfEmpty("____________________"))}",
            isKnown ? $"Principal: {string.Join("; ", principals.Select(p => OneLine(p.Name)).DefaultIfEmpty("____________________"))}"
                : "Principal: not known; this notice is given to each person who may be the principal",
            .. matter.Job.Work.PaymentBond?.Recorded is { } recorded ? [$"Recorded {Day(recorded)}"] : Array.Empty<string>()]);
        leaf.Field("Bond number", matter.Options.Number);
        NoticeContents.Put(leaf, matter);
        Signing.Claimant(leaf, matter, section);
        return new Bundle([leaf], new Guide
        {
            To = to,
            Capacity = Capacity,
            Manner = Addressees.Manner,
            First =
            [
                "The notice goes to the surety and to the bond principal, both. One of them is not enough.",
                .. isKnown ? Array.Empty<string>() : ["The bond says who the principal is: an owner, a direct contractor or a "
                    + "subcontractor may be the principal (§ 8606(b)). Until the file says who it is, give the notice to each of "
                    + "them."],
                $"It reaches all unpaid work, not only that of the last {matter.ByLaw(Number.NoticeLookBack)} (American Buildings v. Bay "
                    + $"Commercial Construction (2002) "
                    + "99 Cal.App.4th 1193).",
                "The surety’s address is the one on the bond, or on the record of the Department of Insurance (§ 8108(f)).",
                "If you have no contract with the contractor, this later notice may not be open to you once the subcontractor you "
                    + "supplied was paid in full or terminated: ask counsel.",
                .. matter.Assessment.Find("payment-bond.notice-last-day") is { ActBy: null, Band: null } free
                ? [$"No act-by day is shown. {Matter.Said(free)}"] : Array.Empty<string>(),
                .. matter.Assessment.Find("preliminary-notice.last-day") is { Standing: Law.Reasoning.Standing.Kept }
                ? ["The file shows a preliminary notice in order; then the bond claim does not depend on this notice, which does no harm."]
                : Array.Empty<string>(),
            ],
            Steps = ["Sign in ink, with date and place, and keep a signed copy. Mail one to each person named above, or hand it over.",
                ProofOfNotice.Step(ProvedNotice.Bond)],
            After = [$"{EntryName.Enter("bond-notice-given")}its day, how, and to whom ({Addressees.Names(to)})."],
        });
    }

    private static (IReadOnlyList<Party> Sureties, IReadOnlyList<Party> Principals, bool IsKnown) Named(Matter matter, string section)
    {
        var named = matter.Named(matter.Options.To);
        var bond = matter.Job.Party(matter.Job.Work.PaymentBond?.Surety);
        IReadOnlyList<Party> sureties = named.Count > 0 ? [.. named.Where(p => p.Capacity == PartyCapacity.Surety)] : bond is not null
            ? [bond] : matter.In(PartyCapacity.Surety);
        var told = BondClaim.ToldAsPrincipal(matter.Known, out var isKnown);
        IReadOnlyList<Party> principals = named.Count > 0 ? [.. named.Where(p => p.Capacity != PartyCapacity.Surety)] : told;
        if (sureties.Count == 0)
        {
            matter.Refuse("surety-missing", Place.Parties, $"No surety is there.",
                $"Add a party with capacity {new FileWord(PartyCapacity.Surety)} and name it "
                    + $"as {new HeadField("work.paymentBond.surety")}. The owner or public entity gives a copy of "
                + $"the bond on request.", section);
        }

        if (principals.Count == 0)
        {
            matter.Refuse("principal-missing", Place.Parties, $"No bond principal is there.",
                $"Add the one whose bond it is and name it as {new HeadField("work.paymentBond.principal")}, or name the principal "
                    + $"with {new InputName(PaperInput.To)}.", section);
        }

        return (sureties, principals, isKnown || named.Count > 0);
    }
}
