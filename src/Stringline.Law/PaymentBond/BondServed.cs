using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PaymentBond;

/// <summary>Since when surety and bond principal, the one and the other, have had notice of the bond claim.</summary>
/// <param name="By">The day by which both surely had it; null where one has not surely had it.</param>
/// <param name="From">
/// The first day on which both may have had it, if every paper counts that may count: one late paper takes nothing from another that may
/// have been in time. Null where one had none.
/// </param>
internal readonly record struct BondServed(LocalDate? By, LocalDate? From)
{
    /// <summary>What the file's notices come to.</summary>
    [Rule("Civ. Code § 8612(b)")]
    [Rule("Civ. Code § 8612(c)")]
    [Rule("Civ. Code § 8614")]
    [Rule("Civ. Code § 9560(b)")]
    [Rule("Civ. Code § 9560(c)")]
    [Rule("Civ. Code § 9562")]
    public static BondServed Of(FactsAsOf facts) =>
        facts.All<BondNoticeGiven>().Count == 0 ? default : Both(ToAnyOf(facts, Sureties(facts)), ToPrincipal(facts));

    /// <summary>The surety of the bond; where the file does not say which, any surety of the file.</summary>
    public static IReadOnlyList<Party> Sureties(FactsAsOf facts) =>
        facts.Job.Party(facts.Job.Work.PaymentBond?.Surety) is { } surety ? [surety] : facts.Job.In(PartyCapacity.Surety);

    /// <summary>
    /// The principal of the bond, or those of whom one must be it: on public works and, as far as nothing else is known, on private works a
    /// direct contractor.
    /// </summary>
    [Rule("Civ. Code § 8606")]
    public static IReadOnlyList<Party> Principals(FactsAsOf facts)
    {
        if (facts.Job.Party(facts.Job.Work.PaymentBond?.Principal) is { } principal)
            return [principal];
        if (facts.Hirer is { Capacity: PartyCapacity.DirectContractor } hirer)
            return [hirer];
        return facts.Hirer?.WorksUnder is { } under && facts.Job.Party(under) is { Capacity: PartyCapacity.DirectContractor } above
            ? [above]
            : facts.Job.In(PartyCapacity.DirectContractor);
    }

    // Of several contractors of whom it is not known whose bond it is, each must have it; but any one of them may be the principal.
    private static BondServed ToPrincipal(FactsAsOf facts)
    {
        BondServed? all = null;
        LocalDate? from = null;
        foreach (var principal in Principals(facts))
        {
            var one = ToAnyOf(facts, [principal]);
            all = all is { } others ? Both(others, one) : one;
            from = Earlier(from, one.From);
        }

        // On private works an owner or a subcontractor may be the principal, where nobody says who is.
        if (facts.Job.Work.Kind == WorkKind.Private && facts.Job.Work.PaymentBond?.Principal is null)
            from = Earlier(Earlier(from, ToAnyOf(facts, facts.Job.In(PartyCapacity.Owner)).From),
                ToAnyOf(facts, facts.Job.In(PartyCapacity.Subcontractor)).From);
        return new BondServed(all?.By, from);
    }

    private static BondServed ToAnyOf(FactsAsOf facts, IReadOnlyList<Party> parties)
    {
        LocalDate? by = null;
        LocalDate? from = null;
        foreach (var paper in facts.All<BondNoticeGiven>())
        {
            if (!Reaches(paper, parties, out var party) || !HasGoodManner(paper))
                continue;
            var tried = Tried(facts, paper, party);
            if (tried == Verdict.No)
                continue;
            if (Giving.CompleteOn(facts.Numbers, paper.On, paper.Manner, paper.Mailed) is not { } on)
            {
                from = LocalDate.MinIsoValue; // on a day unknown: it may have been in any time
                continue;
            }

            from = Earlier(from, on.Earliest);
            if (tried == Verdict.Yes)
                by = Earlier(by, on.Latest);
        }

        return new BondServed(by, from);
    }

    private static BondServed Both(BondServed a, BondServed b) => new(Later(a.By, b.By), Later(a.From, b.From));

    private static LocalDate? Later(LocalDate? a, LocalDate? b) => a is { } one && b is { } other ? LocalDate.Max(one, other) : null;

    private static LocalDate? Earlier(LocalDate? a, LocalDate? b) => a is { } one && b is { } other ? LocalDate.Min(one, other) : a ?? b;

    // Toward a natural person one left and mailed is good only after tries to deliver it by hand (Code Civ. Proc. § 415.20(b)).
    private static Verdict Tried(FactsAsOf facts, BondNoticeGiven paper, Party to) =>
        paper.Manner == Manner.Substituted ? LeftAndMailed.IsGood(facts.Numbers, paper.On, paper.Tries, to) : Verdict.Yes;

    private static bool Reaches(BondNoticeGiven paper, IReadOnlyList<Party> anyOf, out Party party)
    {
        foreach (var one in anyOf)
        {
            foreach (var to in paper.To)
            {
                if (one.Id == to)
                {
                    party = one;
                    return true;
                }
            }
        }

        party = null!;
        return false;
    }

    private static bool HasGoodManner(BondNoticeGiven paper) => paper.Manner is not { } manner || Giving.IsGood(manner);

    /// <summary>What is said of each paper.</summary>
    public static IEnumerable<Reason> Why(FactsAsOf facts, BondLaw law)
    {
        var (sureties, principals) = (Sureties(facts), Principals(facts));
        foreach (var paper in facts.All<BondNoticeGiven>())
        {
            var given = Giving.CompleteOn(facts.Numbers, paper.On, paper.Manner, paper.Mailed) is { } on
                ? (Sentence)$"{on}" : $"on a day unknown";
            var names = string.Join(", ", paper.To.Select(id => facts.Job.Party(id)?.Name ?? id));
            if (!HasGoodManner(paper))
                yield return Reason.NotApplied(law.Manner, $"The notice to {names} was sent in a manner in which no notice is given (Civ. "
                    + $"Code §§ 8106, 8110); it does not count. Give it again.", paper);
            else if (Reaches(paper, principals, out var principal) && Tried(facts, paper, principal) == Verdict.No)
                yield return Reason.NotApplied(LeftAndMailed.Section(facts.Numbers, paper.On),
                    $"The notice to {names} was left and mailed with no try to hand it over, which counts for nothing "
                        + $"toward {principal.Name}, a natural person. Give it again.", paper);
            else if (Reaches(paper, sureties, out _) && Reaches(paper, principals, out _))
                yield return Reason.Of(law.Section, $"Notice given to surety and principal {given}: {names}.", [paper]);
            else
                yield return Reason.Of(law.Section, $"Notice given {given} to {names}. It must reach the surety and the bond principal, "
                    + $"the one and the other: {Missing(paper, sureties, principals)}, and alone it does not count.", [paper]);
        }

        if (sureties.Count == 0)
            yield return Reason.Of(law.Section, $"The file names no surety; the notice goes to the surety and the bond principal.");
    }

    private static string Missing(BondNoticeGiven paper, IReadOnlyList<Party> sureties, IReadOnlyList<Party> principals)
    {
        var surety = Reaches(paper, sureties, out _) ? null : "the surety" + Names(sureties);
        var principal = Reaches(paper, principals, out _) ? null : "the principal" + Names(principals);
        return surety is null ? $"{principal} is not among them"
            : principal is null ? $"{surety} is not among them"
            : $"neither {surety} nor {principal} is among them";
    }

    private static string Names(IReadOnlyList<Party> parties) =>
        parties.Count == 0 ? "" : " " + string.Join(" or ", parties.Select(p => p.Name));

    /// <summary>What the file leaves open of the papers.</summary>
    public static IEnumerable<Question> Questions(FactsAsOf facts)
    {
        foreach (var paper in facts.All<BondNoticeGiven>())
        {
            if (paper.Manner is null)
                yield return new Question($"How was the notice to surety and principal given? By hand, registered or certified mail, "
                    + $"express mail or an overnight carrier is good; plain mail, e-mail and fax are "
                    + $"none.{NoticeKinds.BondNoticeGiven.At("manner"):aside}") { Corrects = paper };
            foreach (var principal in Principals(facts))
            {
                if (!paper.To.Contains(principal.Id) || Tried(facts, paper, principal) != Verdict.Open)
                    continue;
                yield return new Question($"How often was it tried to hand the notice to surety and principal over before it was left, "
                    + $"each time on another day and at another hour?{NoticeKinds.BondNoticeGiven.At("tries"):aside}") { Corrects = paper };
                if (LeftAndMailed.IsNaturalPerson(principal) is null)
                    yield return new Question($"Is the principal to whom the notice was left and mailed a natural person? Then delivery by "
                        + $"hand must have been tried before.{HeadField.PartiesNaturalPerson:aside}");
                break;
            }

            if (paper is { Manner: Manner.Substituted, Mailed: null })
                yield return new Question($"On which day was the notice to surety and principal mailed after it was left? It is "
                    + $"complete {Giving.AfterMailing(facts.Numbers, paper.On).Spelled} later.{NoticeKinds.BondNoticeGiven
                        .At("mailed"):aside}") { Corrects = paper };
        }

        if (facts.Job.Work.Kind == WorkKind.Private && facts.Job.Work.PaymentBond?.Principal is null)
            yield return new Question($"Who is the principal of the bond: the owner, the direct contractor or a subcontractor? Until it is "
                + $"known, send the notice to the surety and to each of them.{HeadField.WorkPaymentBondPrincipal:aside}");
        if (Sureties(facts).Count == 0)
            yield return new Question($"Who is the surety on the payment bond?{HeadField.WorkPaymentBondSurety:aside}");
    }
}
