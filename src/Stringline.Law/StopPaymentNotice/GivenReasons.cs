using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>What is said and asked of the stop payment notices of a file.</summary>
internal static class GivenReasons
{
    /// <summary>What was given to a holder and counts, or why it does not.</summary>
    public static IEnumerable<Reason> Of(FactsAsOf facts, HolderServed served, StopPaymentLaw law) =>
        served.Services.Select(s => Of(facts, s, served.Holder, law));

    /// <summary>The same of a row.</summary>
    public static IEnumerable<Reason> Given(FactsAsOf facts, HolderRow row, StopPaymentLaw law) =>
        row.Holds ? Of(facts, row.Served, law) : [];

    private static Reason Of(FactsAsOf facts, GivenPaper service, Holder holder, StopPaymentLaw law)
    {
        var paper = service.Paper;
        var given = service.On is { } on ? (Sentence)$"{on}" : $"on a day unknown";
        return service.Flaw switch
        {
            Flaw.None => Reason.Of(law.Recipients, $"Stop payment notice given to the {holder.Words}: {given}.", [paper]),
            Flaw.Released =>
                Reason.NotApplied("Civ. Code § 8128", $"The stop payment notice given to the {holder.Words} {given} was released; it does "
                    + $"not count. Another may be given while the time runs.", paper),
            Flaw.MaybeReleased =>
                Reason.Of("Civ. Code § 8128", $"A stop payment notice was released; the file does not say which, so the one given to "
                    + $"the {holder.Words} {given} may be gone.", [paper]),
            Flaw.Manner =>
                Reason.NotApplied(law.Manner, $"The stop payment notice to the {holder.Words} was sent in a manner in which no notice is "
                    + $"given (Civ. Code §§ 8106, 8110); it does not count. Give it again.", paper),
            Flaw.NotTried =>
                Reason.NotApplied(LeftAndMailed.Section(facts.Numbers, paper.On), $"The stop payment notice to the {holder.Words} was left "
                    + $"and mailed with no try to hand it over, which counts for nothing toward a natural person. Give it again.", paper),
            Flaw.NoNoticeBefore =>
                Reason.NotApplied(law.Before, $"The stop payment notice to the {holder.Words} was given {given}, before the preliminary "
                    + $"notice, which must come first; it does not count. Give it again.", paper),
            Flaw.MaybeExcused =>
                Reason.Of(law.Before, $"The stop payment notice to the {holder.Words} was given {given}, before any preliminary notice to "
                    + $"it. Nothing named it on the first day of the work; whether that excuses the notice here is not settled (Brewer "
                    + $"Corp. v. Point Center Financial (2014) 223 Cal.App.4th 831 leaves room for an excuse). Give it preliminary notice, "
                    + $"and this one again.", [paper]),
            Flaw.Agent =>
                Reason.Of("Civ. Code § 8066", $"The stop payment notice was given {given} to one who is not the {holder.Words} itself; it "
                    + $"counts only as far as the authority to take it goes. Give it to the {holder.Words} too.", [paper]),
            Flaw.BeforeCommencement =>
                Reason.Of("Civ. Code § 8520(a)", $"The stop payment notice was given to the {holder.Words} {given}, before the work "
                    + $"commenced. It is given by one with a lien right under Chapter 4, which a design professional has only once the "
                    + $"work has commenced: give it again then.", [paper]),
            Flaw.OrderInDoubt =>
                Reason.Of(law.Before, $"Whether the preliminary notice to all came before the stop payment notice to "
                    + $"the {holder.Words} of {given} is open. Give it again.", [paper]),
            Flaw.OthersUntold =>
                Reason.Of(law.Before, $"The stop payment notice to the {holder.Words} was given {given}, before the preliminary notice to "
                    + $"the lender, to whom alone it is due (Civ. Code § 8200(e)(2)). Whether that undoes what the {holder.Words} holds is "
                    + $"open: give the preliminary notice, and this one again.", [paper]),
            Flaw.UnknownDay =>
                Reason.Of(law.Recipients, $"Stop payment notice given to the {holder.Words} on a day that is not known.", [paper]),
            Flaw.Lacks =>
                Reason.Of(law.Manner, $"Stop payment notice given to the {holder.Words} {given}; it lacks, as "
                    + $"entered: {paper.Lacks}. Whether it will do all the same is open: give it again while the time runs.", [paper]),
            Flaw.LeftAndMailed =>
                Reason.Of(LeftAndMailed.Section(facts.Numbers, paper.On), $"Stop payment notice left and mailed, complete toward "
                    + $"the {holder.Words} {given}. Toward a natural person that is good only after tries to hand it "
                    + $"over, {LeftAndMailed.TriesAsked(facts.Numbers, paper.On).Count} of them on as many days and at different times; "
                    + $"keep the proof of the tries, or give it again by mail.", [paper]),
            Flaw.SmallBond =>
                Reason.Of("Civ. Code § 8532", $"The notice to the {holder.Words} states {paper.Amount!.Value}, and its bond "
                    + $"is {paper.BondAmount!.Value}: {facts.Numbers.On(Number.BondOfNotice, service.On!.Value.Earliest)} of the claim "
                    + $"is {ServingHolders.AmountOfBond(facts, paper.Amount.Value, service.On!.Value.Earliest)}. The lender may treat it "
                    + $"as a notice without a bond.", [paper]),
            Flaw.BondNotReplaced =>
                Reason.Of("Civ. Code § 8534", $"The lender objected to the bond of the notice given to the {holder.Words} {given}, and the "
                    + $"file shows no other bond within {facts.Numbers.On(Number.ReplaceBond, facts.AsOf)}: it may disregard the "
                    + $"notice.", [paper]),
            _ => throw new InvalidOperationException($"No such flaw: {service.Flaw}."),
        };
    }

    /// <summary>The papers that went to nobody who holds anything.</summary>
    public static IEnumerable<Reason> NotAtAll(FactsAsOf facts, IReadOnlyList<HolderRow> rows, StopPaymentLaw law)
    {
        foreach (var paper in facts.All<StopPaymentGiven>())
        {
            if (rows.Any(r => r.Holds && r.Served.Holder.IsReachedBy(paper.To)))
                continue;
            var names = string.Join(", ", paper.To.Select(id => facts.Job.Party(id)?.Name ?? id));
            var given = DaySpan.Of(paper.On) is { } on ? (Sentence)$"{on}" : $"of an unknown day";
            yield return rows.Any(r => r.Served.Holder.IsReachedBy(paper.To))
                ? Reason.NotApplied("Civ. Code § 8520(a)", $"The stop payment notice of {given} went to {names}. A direct contractor makes "
                    + $"the owner hold nothing by it; it does not count here.", paper)
                : Reason.NotApplied(law.Recipients, $"The stop payment notice of {given} went to {names}, who is none of those to whom it "
                    + $"is given; it does not count.", paper);
        }
    }

    /// <summary>What the file leaves open of the papers given to a holder.</summary>
    public static List<Question> Questions(FactsAsOf facts, HolderServed served)
    {
        var questions = new List<Question>();
        foreach (var service in served.Services)
        {
            var paper = service.Paper;
            if (service.Counts == Verdict.No)
                continue;
            if (paper.Manner is null)
                questions.Add(new Question($"How was the stop payment notice to the {served.Holder.Words} given? By hand, registered or "
                    + $"certified mail, express mail or an overnight carrier is good; plain mail, e-mail and fax are "
                    + $"none.{NoticeKinds.StopPaymentGiven.At("manner"):aside}") { Corrects = paper });
            if (paper is { Manner: Manner.Substituted, Mailed: null })
                questions.Add(
                    new Question($"On which day was the stop payment notice mailed after it was left? It is "
                        + $"complete {Giving.AfterMailing(facts.Numbers, paper.On).Spelled} later.{NoticeKinds.StopPaymentGiven
                            .At("mailed"):aside}") { Corrects = paper });
            if (service.Flaw == Flaw.LeftAndMailed)
                questions.Add(new Question($"How often was it tried to hand the stop payment notice over before it was left, each time on "
                    + $"another day and at another hour?{NoticeKinds.StopPaymentGiven.At("tries"):aside}",
                    Dollars: paper.Amount) { Corrects = paper });
            if (service.Flaw == Flaw.LeftAndMailed
                && served.Holder.Through.Any(p => paper.To.Contains(p.Id) && LeftAndMailed.IsNaturalPerson(p) is null))
                questions.Add(
                    new Question($"Is the {served.Holder.Words} to whom it was left and mailed a natural "
                        + $"person?{HeadField.PartiesNaturalPerson:aside}"));
            if (service.Flaw == Flaw.MaybeReleased)
                questions.Add(new Question($"Which stop payment notice was released?{NoticeKinds.StopPaymentReleased.At("of"):aside}",
                    Dollars: paper.Amount));
            foreach (var party in served.Holder.Through)
            {
                if (party.Capacity == PartyCapacity.OwnersAgent && paper.To.Contains(party.Id))
                    questions.Add(new Question($"May {party.Name} take notices for the owner? What is outside an agent's authority does "
                        + $"not count.{NoticeKinds.StopPaymentGiven.At("to"):aside}") { Corrects = paper });
            }
        }

        return questions;
    }
}
