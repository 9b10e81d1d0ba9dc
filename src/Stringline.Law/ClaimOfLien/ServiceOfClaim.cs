using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>
/// How, to whom and when the copy of a claim of lien was served, without which the claim cannot be enforced (Civ. Code § 8416(a)(7), (c) to
/// (e)).
/// </summary>
public static class ServiceOfClaim
{
    private const string ToOwner = "Civ. Code § 8416(c)(1)";
    private const string InOwnersPlace = "Civ. Code § 8416(c)(2)";

    /// <summary>What the file shows of the service of one claim.</summary>
    /// <param name="Good">Yes where it was served as the section says; open where the file says nothing of any service; no where it was
    /// served otherwise, or late, or where only the service of another claim is told.</param>
    /// <param name="Why">Why; null where the file does not say.</param>
    /// <param name="Question">What is to be asked; null where nothing is.</param>
    public readonly record struct Shown(Verdict Good, Reason? Why, Question? Question);

    /// <summary>
    /// The only three mails, postage prepaid. Hand, courier and left-and-mailed are good for other notices, not for this copy.
    /// </summary>
    [Rule(ToOwner)]
    public static bool IsGoodMail(Manner manner) => manner switch
    {
        Manner.RegisteredMail or Manner.CertifiedMail or Manner.CertificateOfMailing => true,
        Manner.Personal or Manner.ExpressMail or Manner.OvernightCarrier or Manner.Substituted => false,
        Manner.FirstClassMail or Manner.Email or Manner.Fax or Manner.Other => false,
        _ => throw new ArgumentOutOfRangeException(nameof(manner), manner, "Not a manner of giving."),
    };

    /// <summary>
    /// Whether the section names the party: the owner or reputed owner, and in its place the construction lender or the direct contractor.
    /// </summary>
    public static bool IsNamed(Party party) => party.Capacity == PartyCapacity.Owner || StandsInOwnersPlace(party);

    /// <summary>Whether the party is served only where the owner cannot be served by mail.</summary>
    [Rule(InOwnersPlace)]
    public static bool StandsInOwnersPlace(Party party) =>
        party.Capacity is PartyCapacity.ConstructionLender or PartyCapacity.DirectContractor;

    /// <summary>
    /// Where an owner is served by mail: its residence or place of business, or the address that the building permit shows; null where the
    /// file has none.
    /// </summary>
    [Rule(ToOwner)]
    public static string? AddressOf(Party party, Work work) =>
        Text(party.Address) ?? (party.Capacity == PartyCapacity.Owner ? Text(work.Permit?.OwnerAddress) : null);

    /// <summary>
    /// What changed, or became known, after a copy was mailed and changes what the claim states: work, changes of the price, payments,
    /// credits and releases. A claim that states them is another paper than the one that was copied, and no affidavit can say that the copy
    /// was true.
    /// </summary>
    /// <param name="facts">The facts that the claim states.</param>
    /// <param name="mailed">The day of the mailing.</param>
    [Rule("Civ. Code § 8416(a)(7)", Sure = Sure.OurReading)]
    public static IReadOnlyList<Entry> NewSince(FactsAsOf facts, LocalDate mailed) => [.. facts.Known.Where(entry => entry switch
    {
        Furnished furnished => IsAfter(furnished, mailed) || furnished.Until.Earliest > mailed,
        Waived { Form: WaiverForm.ConditionalProgress or WaiverForm.ConditionalFinal } waived => waived.PaymentCleared > mailed,
        Change or Paid or Credited or Waived => IsAfter(entry, mailed),
        _ => false,
    })];

    private static bool IsAfter(Entry entry, LocalDate day) => entry.On.Earliest > day || entry.Learned > day;

    private static string? Text(string? written) => string.IsNullOrWhiteSpace(written) ? null : written;

    /// <summary>
    /// Whether the copy of a recorded claim was served as the section prescribes. The affidavit of service is part of the claim
    /// (§ 8416(a)(7)), so the copy is mailed no later than the claim is recorded; mailing completes the service (§ 8416(d)). Otherwise the
    /// claim is unenforceable as a matter of law (§ 8416(e)); but a mailing may have been made that the file does not know of, so it is in
    /// doubt and never lost.
    /// </summary>
    [Rule("Civ. Code § 8416(a)(7)")]
    [Rule("Civ. Code § 8416(d)")]
    [Rule("Civ. Code § 8416(e)")]
    public static Shown Of(FactsAsOf facts, ClaimRecorded claim)
    {
        var none = new Question($"How, to whom and on which day was the copy of the claim served? It goes by registered or certified mail, "
            + $"or by first-class mail with a certificate of mailing, to the owner, before the claim is "
            + $"recorded.{ClaimKinds.ClaimServed:aside}");
        var all = facts.All<ClaimServed>();
        Shown? best = null;
        foreach (var served in all)
        {
            if (!BelongsTo(facts, served, claim))
                continue;
            var shown = Judge(facts, served, claim);
            if (shown.Good == Verdict.Yes)
                return shown;
            best ??= shown;
        }

        // A file that tells how one claim was served and not how another was may mean that the other was not.
        return best ?? (all.Count == 0 ? new Shown(Verdict.Open, null, none) : new Shown(Verdict.No,
            Reason.NotApplied("Civ. Code § 8416(a)(7)", $"The file tells how a copy of another claim was served, and nothing of the claim "
                + $"recorded {DaySpan.Of(claim.On)}. Each claim has its own affidavit of service. {Unenforceable}", claim), none));
    }

    // A copy is that of the first claim recorded on its day or later; what was mailed after the last claim is that one's.
    private static bool BelongsTo(FactsAsOf facts, ClaimServed served, ClaimRecorded claim)
    {
        var isLast = true;
        foreach (var other in facts.All<ClaimRecorded>())
        {
            if (ReferenceEquals(other, claim) || !WhichLien.MayBeMechanics(facts, other))
                continue;
            if (other.On.Latest < claim.On.Earliest && served.On.Earliest <= other.On.Latest)
                return false;
            isLast &= !(other.On.Earliest > claim.On.Latest);
        }

        return isLast || !(served.On.Earliest > claim.On.Latest);
    }

    private static Shown Judge(FactsAsOf facts, ClaimServed served, ClaimRecorded claim)
    {
        if (!IsGoodMail(served.Manner))
            return No(Reason.NotApplied(ToOwner, $"A copy of the claim was served {DayOf(served)} in another manner than by registered "
                + $"mail, certified mail, or first-class mail with a certificate of mailing. {Unenforceable}", served));
        var (toOwner, inPlace) = (false, false);
        foreach (var id in served.To)
        {
            if (facts.Job.Party(id) is not { } party)
                continue;
            toOwner |= party.Capacity == PartyCapacity.Owner;
            inPlace |= StandsInOwnersPlace(party);
        }

        if (!toOwner && !inPlace)
            return No(Reason.NotApplied(ToOwner, $"A copy of the claim was mailed {DayOf(served)} to nobody whom the section "
                + $"names. {Unenforceable}", served));
        if (!toOwner && facts.Job.In(PartyCapacity.Owner).Any(o => AddressOf(o, facts.Job.Work) is not null))
            return No(Reason.NotApplied(InOwnersPlace, $"A copy of the claim was mailed {DayOf(served)} to the lender or direct "
                + $"contractor. That is good only where the owner cannot be served by mail, and the file has an address of the "
                + $"owner's. {Unenforceable}", served));
        if (!(served.On.Latest <= claim.On.Earliest))
            return No(Reason.NotApplied("Civ. Code § 8416(a)(7)", $"A copy of the claim was mailed {DayOf(served)}, and the claim "
                + $"recorded {DaySpan.Of(claim.On)}. The affidavit of service is part of the claim, so the copy is mailed before it is "
                + $"recorded. {Unenforceable}", served));
        return toOwner
            ? new Shown(Verdict.Yes,
                Reason.Of(ToOwner, $"A copy of the claim was mailed to the owner {DayOf(served)}, before it was recorded.", [served]), null)
            : new Shown(Verdict.Yes,
                Reason.Of(InOwnersPlace, $"A copy of the claim was mailed {DayOf(served)} to the lender or direct contractor, before it "
                    + $"was recorded; the file has no address at which the owner can be served by mail.", [served]),
                new Question($"Why can the owner not be served by mail? The affidavit of service says it, and an address of the owner's is "
                    + $"looked for on the building permit and in the deeds.{HeadField.PartiesAddress:aside}"));
    }

    private const string Unenforceable = "A claim not served as the section says is unenforceable as a matter of law "
        + "(Civ. Code § 8416(e)): serve a copy by mail and record anew inside the time.";

    private static Shown No(Reason why) =>
        new(Verdict.No, why,
            new Question($"Was a copy of the claim also mailed to the owner, by registered or certified mail or with a certificate of "
                + $"mailing, before it was recorded?{ClaimKinds.ClaimServed:aside}"));

    private static Sentence DayOf(ClaimServed served) =>
        DaySpan.Of(served.On) is { } on ? (Sentence)$"{on}" : $"on a day that the file does not say";
}
