using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>Why a preliminary notice stands where it stands, and what would settle it. Put together only when somebody reads it.</summary>
internal static class NoticeReasons
{
    private const string InTime = "Civ. Code § 8204(a)";

    /// <summary>Why no notice is due on private work.</summary>
    public static List<Reason> NoneDue(FactsAsOf facts)
    {
        List<Reason> why =
        [
            facts.Job.Claimant.Role == ClaimantRole.Laborer
                ? Reason.Of("Civ. Code § 8200(e)(1)", $"A laborer gives no preliminary notice.")
                : Reason.Of("Civ. Code § 8200(e)(2)", $"The claimant has a direct contract with the owner, so notice is due to a "
                    + $"construction lender only, and the file names none that was known on the first day of its work."),
        ];
        why.AddRange(NotYetKnown(facts));
        why.AddRange(LenderSearches(facts));
        why.AddRange(Duties.OnPrivateWork(facts, noneGiven: false));
        return why;
    }

    /// <summary>The reasons on private work, where notice is due.</summary>
    public static List<Reason> OnPrivateWork(FactsAsOf facts, Reach reach)
    {
        var why = new List<Reason>();
        if (facts.FirstFurnished is { } first)
            why.Add(Reason.Of(InTime, $"First furnished {first}; the notice is in time through "
                + $"the {facts.Numbers.On(Number.NoticeAfterFurnishing, first.Earliest).Ordinal} day after.", [facts.Furnished[0]]));
        if (facts.Job.Claimant.Role == ClaimantRole.DesignProfessional)
        {
            var days = facts.Numbers.On(Number.NoticeAfterCommencement, facts.Job.Work.Commenced ?? facts.AsOf);
            why.Add(facts.Job.Work.Commenced is { } commenced
                ? Reason.Of("Civ. Code § 8204(b)", $"The work commenced {commenced}: a design professional's notice is in time for its "
                    + $"design services through the {days.Ordinal} day after that too.")
                : Reason.Of("Civ. Code § 8204(b)", $"A design professional's notice covers all its design services if it is given "
                    + $"within {days} after the work commences at the site, and the file does not say when that was. If it has not "
                    + $"commenced, or did so within {days}, give it now."));
        }

        why.AddRange(Given(facts, reach));
        why.AddRange(NotYetKnown(facts));
        why.AddRange(LenderSearches(facts));
        why.AddRange(WhatDoesNotCount(facts));
        why.AddRange(Proof.Alarms(facts, facts.PreliminaryNotices));
        if (reach.Kind == ReachKind.Late)
            why.Add(Reason.Of(InTime,
                $"Later than the {facts.Numbers.On(Number.NoticeAfterFurnishing, facts.FirstFurnished?.Earliest
                    ?? facts.AsOf).Ordinal} day: work furnished before {reach.From!.Value.Latest} is out of reach."));
        why.AddRange(Duties.OnPrivateWork(facts, noneGiven: reach.Kind == ReachKind.NotGiven));
        return why;
    }

    /// <summary>What was given to each, and what may be wrong with it.</summary>
    public static IEnumerable<Reason> Given(FactsAsOf facts, Reach reach)
    {
        foreach (var each in reach.Each)
        {
            if (each.Given is not { } day)
            {
                yield return Reason.Of(each.To.Section, $"{each.To.NoneGiven}");
                continue;
            }

            yield return Reason.Of(each.To.Section, $"Given to the {each.To.Words}: {day}.", [each.Notice!],
                Reason.Of("Civ. Code § 8116",
                    $"Complete on delivery or deposit; {Giving.AfterMailing(facts.Numbers, each.Notice!.On).Spelled} after mailing where "
                        + $"it was left and mailed."));
            foreach (var doubt in Doubts(facts, each))
                yield return doubt;
            if (each.To.Who == PartyCapacity.DirectContractor && PreliminaryNoticeDays.ReachesLessFar(each, reach.Kind, reach.From))
                yield return Reason.Of("Civ. Code § 8200(c)", $"The direct contractor was told later than the owner. Notice to both is a "
                    + $"condition of the lien by the words of the section; a lien was good, though, whose claimant had told the owner and "
                    + $"not the contractor (Industrial Asphalt v. Garrett (1986) 180 Cal.App.3d 1001). {HangsOn(facts, each)} hangs on it "
                    + $"(our reading).", [each.Notice!]);
            if (each.To.Who == PartyCapacity.ConstructionLender && each.Kind == ReachKind.Late
                && PreliminaryNoticeDays.IsNarrower(each, reach))
                yield return Reason.Of(InTime, $"Toward {each.To.AnyOf[0].Name} the notice covers work furnished "
                    + $"from {each.From.Latest} on only. {HangsOn(facts, each)} furnished before that is out of reach of a stop payment "
                    + $"notice to it, and the rank of the lien against it is in doubt for that sum (our reading).", [each.Notice!]);
        }
    }

    private static IEnumerable<Reason> Doubts(FactsAsOf facts, RecipientReach each)
    {
        var (notice, sum) = (each.Notice!, HangsOn(facts, each));
        if (each.Doubt.HasFlag(NoticeDoubt.Lacks))
            yield return Reason.Of("Civ. Code § 8102(b)", $"The notice lacks {notice.Lacks!}. One without what the section asks was held "
                + $"no notice (Harold L. James, Inc. v. Five Points Ranch (1984) 158 Cal.App.3d 1); on the other side, a variance does no "
                + $"harm if the person told learns in substance what it must know. {sum} hangs on it. Give a complete one at once: it "
                + $"covers work from {Reach.LookBack(facts, facts.AsOf)} before it on.", [notice]);
        if (each.Doubt.HasFlag(NoticeDoubt.LeftAndMailed))
            yield return Reason.Of(LeftAndMailed.Section(facts.Numbers, notice.On),
                $"Left and mailed: toward a natural person that is good only after tries to hand it "
                    + $"over, {LeftAndMailed.TriesAsked(facts.Numbers, notice.On).Count} of them on as many days and at different times; "
                    + $"an entity may be told so without. {sum} hangs on it.", [notice]);
        if (each.Doubt.HasFlag(NoticeDoubt.OneOfSeveral))
        {
            yield return each.To.Who == PartyCapacity.Owner
                ? Reason.Of(each.To.Section, $"A tenant ordered the work, and landlord and tenant are two owners: one of them was told, "
                    + $"and the interest of the other is bound only if it was told too (our reading). {sum} hangs on it. Tell the other at "
                    + $"once.", [notice])
                : Reason.Of(each.To.Section, $"The file names several direct contractors and does not say to which the claimant's work "
                    + $"goes; only notice to that one will do. {sum} hangs on it. Tell the others at once.", [notice]);
        }

        if (each.Doubt.HasFlag(NoticeDoubt.Agent))
            yield return Reason.Of("Civ. Code § 8066", $"Given to an agent of the owner: it counts as far as the agent's authority goes, "
                + $"and an association is the owners' agent for the common area only (Civ. Code § 8119). {sum} hangs on it.", [notice]);
        var inTime = facts.Numbers.On(Number.NoticeAfterFurnishing, facts.FirstFurnished?.Earliest ?? facts.AsOf);
        if (each.Doubt.HasFlag(NoticeDoubt.ByRoll))
            yield return Reason.Of("Code Civ. Proc. § 12a", $"It was complete {each.Given!.Value}, on the first day not shut after "
                + $"the {inTime.Ordinal}. A last day that is a holiday is left out (Civ. Code § 10), so that it is in time and nothing is "
                + $"cut; the other side may say that these {inTime} do not roll, and {sum} hangs on it. Never planned on.", [notice]);
        if (each.Doubt.HasFlag(NoticeDoubt.Commencement))
        {
            var afterCommencement = facts.Numbers.On(Number.NoticeAfterCommencement, facts.AsOf);
            yield return Reason.Of("Civ. Code § 8204(b)",
                $"It is later than {inTime} after the first services, and in time only if the work commenced no more "
                    + $"than {afterCommencement} before it. {sum} hangs on it.",
                [notice]);
        }
    }

    /// <summary>Dollars and cents of what was furnished that is not surely covered toward one.</summary>
    public static decimal HangsOn(FactsAsOf facts, RecipientReach each) =>
        Total.Of(facts.Furnished, f => each.CertainlyCovers(f.On.Earliest) ? 0m : f.Amount ?? 0m);

    private static IEnumerable<Reason> NotYetKnown(FactsAsOf facts) => Recipients.NotYetKnown(facts).Select(lender => Reason.NotApplied(
        "Civ. Code § 8200(a)(3)", $"{lender.Name} was not of record, and not known, before {lender.KnownSince!.Value}, later than the "
            + $"first day of the claimant's work: notice to it is no condition of the lien (Kodiak Industries v. Ellis (1986) 185 "
            + $"Cal.App.3d 75). Give it all the same{new FindingId("preliminary-notice.later-lender"):see}."));

    private static IEnumerable<Reason> LenderSearches(FactsAsOf facts)
    {
        if (facts.Job.Claimant.Role == ClaimantRole.Laborer)
            yield break;
        foreach (var sought in facts.All<LenderSought>())
        {
            yield return sought.Where is { } where
                ? Reason.Of("Civ. Code § 8200(a)(3)", $"A construction lender was looked for in {where}, and none was found. Keep a copy "
                    + $"of what was looked at.", [sought])
                : Reason.Of("Civ. Code § 8200(a)(3)", $"A construction lender was looked for, and none was found. Keep a copy of what was "
                    + $"looked at.", [sought]);
        }
    }

    /// <summary>Why notices that were given count for nothing.</summary>
    public static IEnumerable<Reason> WhatDoesNotCount(FactsAsOf facts)
    {
        var estimate = EstimateDoubt.Section(facts);
        foreach (var notice in facts.PreliminaryNotices)
        {
            if (!Giving.IsGood(notice.Manner))
                yield return Reason.NotApplied("Civ. Code § 8110", $"A notice sent {InWords(notice.Manner)} counts for nothing here: "
                    + $"registered, certified or express mail or an overnight carrier is needed, or delivery by hand.", notice);
            else if (!Giving.Counts(notice))
                yield return Reason.NotApplied(estimate, $"The estimate in the notice is a stock figure, worked out from nothing: such a "
                    + $"notice is bad, and the claim with it (Rental Equipment v. McDaniel Builders (2001) 91 Cal.App.4th 445). Give a new "
                    + $"one with an estimate that can be shown.", notice);
            else if (notice.Manner == Manner.Substituted && notice.Tries == 0)
                yield return Reason.NotApplied(LeftAndMailed.Section(facts.Numbers, notice.On),
                    $"A notice left and mailed with no try to hand it over counts for nothing toward a natural person.", notice);
        }
    }

    private static string InWords(Manner manner) => manner switch
    {
        Manner.CertificateOfMailing => "by first-class mail with a certificate of mailing",
        Manner.FirstClassMail => "by first-class mail",
        Manner.Email => "by e-mail",
        Manner.Fax => "by fax",
        Manner.Other => "in another way",
        _ => throw new ArgumentOutOfRangeException(nameof(manner), manner, "A good manner of giving notice, or none that is known."),
    };

    /// <summary>What would settle or narrow the notice, on private work.</summary>
    public static List<Question> Questions(FactsAsOf facts, Reach reach, NoticeTime time)
    {
        var questions = AboutGiving(facts, reach);
        if (reach.Missing.Any(r => r.Who == PartyCapacity.ConstructionLender))
        {
            foreach (var each in reach.Each)
            {
                if (each.To.Who == PartyCapacity.ConstructionLender && each.Given is not null
                    && each.To.AnyOf[0] is { Reputed: true } lender)
                    questions.Add(new Question($"Who named {lender.Name} as the construction lender, and in which paper? Keep it: notice "
                        + $"to a reputed lender stands on it."));
            }
        }

        if (facts.HasFurnished && facts.FirstFurnished is null)
            questions.Add(new Question($"On which day did the claimant first furnish work?"));
        if (time.CommencementUnknown && !reach.GivenToAll)
            questions.Add(
                new Question($"On which day did the work commence at the site? A design professional's notice "
                    + $"within {facts.Numbers.On(Number.NoticeAfterCommencement, facts.AsOf)} after that covers all its design services; "
                    + $"if it has not commenced, give the notice "
                    + $"now.{HeadField.WorkCommenced:aside}", Dollars: HangsOnCommencement(facts, reach)));
        if (facts.Hirer is { Capacity: PartyCapacity.Subcontractor })
            questions.Add(new Question($"Did the claimant work under contracts with more than one subcontractor? Each needs a notice of "
                + $"its own (Civ. Code § 8206(b)); keep a job file for each."));
        questions.AddRange(AskForLender(facts));
        return questions;
    }

    private static decimal? HangsOnCommencement(FactsAsOf facts, Reach reach)
    {
        foreach (var each in reach.Each)
        {
            if (each.Doubt.HasFlag(NoticeDoubt.Commencement))
                return HangsOn(facts, each);
        }

        return null;
    }

    /// <summary>What is asked of a notice on any work: to whom, how, and how it went.</summary>
    public static List<Question> AboutGiving(FactsAsOf facts, Reach reach)
    {
        var questions = new List<Question>();
        foreach (var recipient in reach.Missing)
        {
            questions.Add(recipient.AnyOf.Count == 0
                ? new Question($"Who is the {recipient.Words}? The file names none, and notice is due to it.")
                : recipient.WasGiven);
        }

        foreach (var each in reach.Each)
        {
            if (each is { OnUnknownDay: { } undated, Kind: not ReachKind.Whole } && !questions.Exists(q => q.Corrects == undated))
                questions.Add(
                    new Question($"On which day was the preliminary notice given? In time it saves "
                        + $"everything.{NoticeKinds.NoticeGiven.At("on"):aside}") { Corrects = undated });
            if (each.Notice is not { } notice)
                continue;
            var sum = HangsOn(facts, each);
            if (each.Doubt.HasFlag(NoticeDoubt.OneOfSeveral))
                questions.Add(each.To.Who == PartyCapacity.Owner
                    ? new Question($"Was notice given to each of "
                        + $"the {each.To.Words.Replace(" or ", " and ", StringComparison.Ordinal)}? The file shows only one.", Dollars: sum)
                    : new Question($"For which direct contractor "
                        + $"does {facts.Hirer?.Name ?? "the one who hired the claimant"} work?{HeadField.PartiesWorksUnder:aside}",
                        Dollars: sum));
            if (each.Doubt.HasFlag(NoticeDoubt.Agent))
                questions.Add(new Question($"Does the authority of the agent who was told reach to notices for the owner, or, of an "
                    + $"association, was the work on the common area? Keep the paper that shows it.", Dollars: sum));
            if (each.Doubt.HasFlag(NoticeDoubt.LeftAndMailed))
                questions.Add(new Question($"How often was it tried to hand the notice over before it was left, each time on another day "
                    + $"and at another hour?{NoticeKinds.NoticeGiven.At("tries"):aside}", Dollars: sum) { Corrects = notice });
            if (each.Doubt.HasFlag(NoticeDoubt.LeftAndMailed)
                && each.To.AnyOf.FirstOrDefault(p => LeftAndMailed.IsNaturalPerson(p) is null && notice.To.Contains(p.Id)) is { } unknown)
                questions.Add(new Question($"Is {unknown.Name} a natural person, or an entity?{HeadField.PartiesNaturalPerson:aside}",
                    Dollars: sum));
            if (notice is { Manner: Manner.Substituted, Mailed: null }
                && !questions.Exists(q => q.Corrects == notice && q.AnsweredBy.Contains(NoticeKinds.NoticeGiven.At("mailed"))))
                questions.Add(
                    new Question($"On which day was the copy of the notice that was left also mailed? It is "
                        + $"complete {Giving.AfterMailing(facts.Numbers, notice.On).Spelled} after that; it is taken to be mailed on the "
                        + $"day it was left.{NoticeKinds.NoticeGiven.At("mailed"):aside}") { Corrects = notice });
        }

        return questions;
    }

    /// <summary>Asks for a lender, where notice would be due to one, none is named, and none was looked for.</summary>
    [Rule("Civ. Code § 8200(a)(3)")]
    public static List<Question> AskForLender(FactsAsOf facts)
    {
        if (!facts.LenderUnknown)
            return [];
        return facts.FirstFurnished is { } first && facts.Numbers.LastDay(Number.NoticeAfterFurnishing, first.Earliest) is var last
            && facts.AsOf <= last
            ? [new Question($"Is there a construction lender? Notice is due to it too, by {last}: look at the building permit, the "
                + $"recorded deeds of trust and the contract.{NoticeKinds.LenderSought:aside}")]
            : [new Question($"Is there a construction lender? Notice is due to it too: look at the building permit, the recorded deeds of "
                + $"trust and the contract.{NoticeKinds.LenderSought:aside}")];
    }
}
