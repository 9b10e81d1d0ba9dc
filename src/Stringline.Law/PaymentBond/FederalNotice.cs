using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PaymentBond;

/// <summary>
/// The notice to the prime contractor by one who did not deal with it (40 U.S.C. § 3133(b)(2)). It goes to the contractor, states the
/// amount, and so cannot come before the last delivery: U.S. ex rel. Blue Circle West v. Tucson Mechanical Contracting (9th Cir. 1990) 921
/// F.2d 911.
/// </summary>
internal sealed class FederalNotice
{
    private const string Section = "40 U.S.C. § 3133(b)(2)";

    private FederalNotice(DaySpan? given, DaySpan? early, BondNoticeGiven? doubted, IReadOnlyList<Reason> why,
        IReadOnlyList<Question> questions)
    {
        Given = given;
        Early = early;
        Doubted = doubted;
        Why = why;
        Questions = questions;
    }

    /// <summary>The day of the first notice that came after the last delivery; null where none did.</summary>
    public DaySpan? Given { get; }

    /// <summary>The day of the last notice that came before it; null where none did.</summary>
    public DaySpan? Early { get; }

    /// <summary>
    /// A notice that may not count: of unknown day, to one of several contractors, or with no proof of delivery by a third party; null
    /// where there is none.
    /// </summary>
    public BondNoticeGiven? Doubted { get; }

    /// <summary>The reasons.</summary>
    public IReadOnlyList<Reason> Why { get; }

    /// <summary>What the file does not answer.</summary>
    public IReadOnlyList<Question> Questions { get; }

    /// <summary>The notices of the file, weighed.</summary>
    [Rule("40 U.S.C. § 3133(b)(2)", Sure = Sure.FromMemory)]
    public static FederalNotice Of(FactsAsOf facts, DaySpan last, OpenDays calendar)
    {
        DaySpan? given = null, early = null;
        BondNoticeGiven? doubted = null;
        var why = new List<Reason>();
        // What may count came in time, by the roll that may be argued, too.
        var end = calendar.RollForwardOnAnyList(facts.Numbers.LastDay(Number.FederalBondNotice, last.Latest));
        foreach (var notice in facts.All<BondNoticeGiven>())
        {
            var reaches = ReachesThePrime(facts, notice);
            if (DaySpan.Of(notice.On) is not { } on)
            {
                if (reaches != Verdict.No)
                    doubted ??= notice;
                continue;
            }

            if (reaches == Verdict.No)
            {
                why.Add(Reason.NotApplied(Section, $"The notice of {on} did not go to the prime contractor and does not count: the section "
                    + $"asks notice to the contractor; the surety may have a copy.", notice));
                continue;
            }

            if (reaches == Verdict.Open && on.Earliest <= end)
            {
                doubted ??= notice;
                why.Add(Reason.Of(Section, $"The notice of {on} went to one of several prime contractors, and the file does not say under "
                    + $"which of them the work was done. Give it to each.", [notice]));
                continue;
            }

            if (!IsProved(notice.Manner))
            {
                if (on.Earliest <= end)
                    doubted ??= notice;
                why.Add(Reason.Of(Section, $"The notice of {on} went in a manner that leaves no written proof of delivery by a third party "
                    + $"(from memory); whether it counts if it was received is open. Give it again.", [notice]));
                continue;
            }

            if (on.Earliest < last.Latest)
            {
                early = on;
                why.Add(Reason.Of(Section, $"The notice of {on} came before the last delivery, {last}. A notice states with substantial "
                    + $"accuracy the amount claimed; one before the last delivery was held to be none of the claim (U.S. ex rel. Blue "
                    + $"Circle West v. Tucson Mechanical Contracting (9th Cir. 1990) 921 F.2d 911), and may hold for what had been "
                    + $"furnished by then. Give another.", [notice]));
                continue;
            }

            given ??= on;
            why.Add(Reason.Of(Section, $"Notice given to the prime contractor {on}.", [notice]));
        }

        return new FederalNotice(given, early, doubted, why, doubted is null || given is not null ? [] : [Ask(facts, doubted)]);
    }

    private static Question Ask(FactsAsOf facts, BondNoticeGiven doubted)
    {
        if (doubted.On is DayFact.Unknown)
            return new Question($"On which day was the notice given to the prime contractor?{NoticeKinds.BondNoticeGiven.At("on"):aside}") {
                Corrects = doubted };
        return ReachesThePrime(facts, doubted) == Verdict.Open
            ? new Question($"Under which prime contractor "
                + $"does {facts.Hirer?.Name ?? "the one who hired the claimant"} work?{HeadField.PartiesWorksUnder:aside}")
            : new Question($"Did the prime contractor receive the notice, and can a third party's paper show "
                + $"it?{NoticeKinds.BondNoticeGiven.At("manner"):aside}") { Corrects = doubted };
    }

    // It goes to the contractor under which the work was done: of several of whom that is not known, to each.
    private static Verdict ReachesThePrime(FactsAsOf facts, BondNoticeGiven notice)
    {
        if (facts.Job.Party(facts.Hirer?.WorksUnder) is { Capacity: PartyCapacity.DirectContractor } prime)
            return notice.To.Contains(prime.Id) ? Verdict.Yes : Verdict.No;
        var (told, missed) = (false, false);
        foreach (var contractor in facts.Job.In(PartyCapacity.DirectContractor))
        {
            var reached = notice.To.Contains(contractor.Id);
            told |= reached;
            missed |= !reached;
        }

        return !told ? Verdict.No : missed ? Verdict.Open : Verdict.Yes;
    }

    private static bool IsProved(Manner? manner) => manner switch
    {
        null or Manner.Personal or Manner.CertifiedMail or Manner.RegisteredMail or Manner.ExpressMail or Manner.OvernightCarrier => true,
        // Left and mailed it is served as a summons may be, if what that asks was done (40 U.S.C. § 3133(b)(2), from memory).
        Manner.Substituted or Manner.CertificateOfMailing or Manner.FirstClassMail or Manner.Email or Manner.Fax or Manner.Other => false,
        _ => throw new ArgumentOutOfRangeException(nameof(manner), manner, "Not a manner of giving notice."),
    };

    /// <summary>Where the notice stands, by the readings of its last day.</summary>
    public Standing StandingOn(LocalDate asOf, IReadOnlyList<Reading> readings)
    {
        var standing = Deadline.StandingOf(asOf, readings, Given);
        return HasDoubtful && standing != Standing.Kept ? Standing.InDoubt : standing;
    }

    private bool HasDoubtful => Early is not null || Doubted is not null;
}
