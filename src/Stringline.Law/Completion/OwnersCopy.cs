using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Completion;

/// <summary>
/// The copy of a recorded notice that the owner must give, else the notice does not shorten the time of one to whom it is due
/// (Civ. Code § 8190).
/// </summary>
internal static class OwnersCopy
{
    /// <summary>
    /// Days by which a copy put in the mail in time may still be under way: the five days which Code Civ. Proc. § 1013(a)
    /// allows for mail within California serve as a yardstick. Our rule, on the safer side.
    /// </summary>
    public const int MailDays = 5;

    /// <summary>
    /// Whether the owner did what makes the notice count against this claimant: gave it a copy in time, where a copy was due to it.
    /// </summary>
    [Rule("Civ. Code § 8190(a)")]
    [Rule("Civ. Code § 8190(c)")]
    public static Counted Given(FactsAsOf facts, OwnersNotice notice, OpenDays calendar)
    {
        var dueFromOwner = IsDueFromOwner(facts, notice);
        if (dueFromOwner.Verdict == Verdict.No)
            return Counted.Yes(dueFromOwner.Why);
        var none = NoneDueToClaimant(facts, notice, calendar);
        if (none is { Verdict: Verdict.Yes } settled)
            return settled;

        var lastToGive = calendar.RollForwardOnAnyList(facts.Numbers.LastDay(Number.OwnersCopy, notice.Recorded.Latest));
        var lastSurely = calendar.RollForward(facts.Numbers.LastDay(Number.OwnersCopy, notice.Recorded.Latest));
        var days = facts.Numbers.On(Number.OwnersCopy, notice.Recorded.Latest);
        Counted? best = null;
        foreach (var told in facts.All<OwnerToldUs>())
        {
            if (told.Notice != notice.Entry.Notice || DaySpan.Of(told.On) is not { } received || received.Latest < notice.Recorded.Earliest)
                continue;
            var copy = Recorded(ByManner(Surely(InTime(facts, told, received, days, lastToGive, notice.Words), told, received), told), told,
                received);
            if (best is not { } so || IsBetter(copy.Verdict, so.Verdict))
                best = copy;
        }

        // Carried on by the State's list alone, a court may say that it came too late.
        Counted Surely(Counted inTime, OwnerToldUs told, DaySpan received) =>
            inTime.Verdict != Verdict.Yes || lastSurely == lastToGive
            || InTime(facts, told, received, days, lastSurely, notice.Words).Verdict == Verdict.Yes ? inTime
            : Counted.Open(Reason.Of("Civ. Code § 10", $"The {days.Ordinal} day after recording reaches to the day of the owner's copy "
                + $"only by a holiday that the courts do not keep, so whether it was in time is open: plan on the shorter "
                + $"time.", [told], inTime.Why));

        // A copy is one of what is recorded already.
        Counted Recorded(Counted copy, OwnerToldUs told, DaySpan received) =>
            copy.Verdict != Verdict.Yes || (told.Mailed ?? received.Earliest) >= notice.Recorded.Latest ? copy
            : Counted.Open(
                Reason.Of("Civ. Code § 8190(a)",
                    $"The owner's copy came {received}, and the {notice.Words} was recorded {notice.Recorded}: whether it was recorded by "
                        + $"then is open. Plan on the shorter time.", [told, notice.Entry], copy.Why));

        // Whether a copy was due to the claimant may be open; one that was given settles it.
        if (none is { } open && best?.Verdict != Verdict.Yes)
            return open;
        return best switch
        {
            null => Counted.Open(
                Reason.Of("Civ. Code § 8190(a)", $"The file does not show whether the owner gave us a copy by {lastToGive}; without one "
                    + $"the {notice.Words} does not shorten this claimant's time (Civ. Code § 8190(c)).", [notice.Entry]),
                () => new Question($"Was the owner's copy of the {notice.Words} recorded {notice.Recorded} given to us, and when was it "
                    + $"put in the mail?{OwnerKinds.OwnerToldUs.At("mailed"):aside}")),
            { Verdict: Verdict.No, Why: var late } when dueFromOwner.Verdict == Verdict.Open =>
                Counted.Open(Reason.Of("Civ. Code § 8190(d)(1)", $"A copy came too late, but perhaps none was due: from an owner who lives "
                    + $"there, with four or fewer units, or whose interest came by a court's order, a foreclosure or a fiduciary, none is "
                    + $"(Civ. Code § 8190(d)).", [notice.Entry], late, dueFromOwner.Why), dueFromOwner.Questions),
            { } copy => copy,
        };
    }

    private static bool IsBetter(Verdict one, Verdict other) =>
        (one, other) is (Verdict.Yes, not Verdict.Yes) or (Verdict.Open, Verdict.No);

    // A copy left and mailed is given some days after mailing (Civ. Code § 8116(c)); mail on deposit (§ 8116(b)); one by hand when it
    // comes.
    private static Counted InTime(
        FactsAsOf facts, OwnerToldUs told, DaySpan received, NumberRow days, LocalDate lastToGive, string words)
    {
        const string InTime = "Civ. Code § 8190(a)";
        if (told.Manner == Manner.Substituted)
        {
            if (told.Mailed is not { } posted)
            {
                return received.Earliest > lastToGive
                    ? Late(told, days, lastToGive, words)
                    : Counted.Open(
                        Reason.Of(InTime, $"The owner's copy was left {received} and mailed on a day that the file does not say; it is "
                            + $"given {Giving.AfterMailing(facts.Numbers, told.On).Spelled} after mailing (Civ. Code § 8116(c)).", [told]),
                        new Question($"When was the owner's copy, which was left, put in the "
                            + $"mail?{OwnerKinds.OwnerToldUs.At("mailed"):aside}") { Corrects = told });
            }

            var complete = Giving.CompleteOn(facts.Numbers, new DaySpan(posted, posted), Manner.Substituted).Latest;
            return complete <= lastToGive
                ? Counted.Yes(
                    Reason.Of(InTime, $"The owner's copy was left, and mailed on {posted}: given on {complete}, within {days} of recording "
                        + $"({lastToGive}).", [told]))
                : Counted.No(
                    Reason.NotApplied("Civ. Code § 8190(c)",
                        $"The owner's copy was left, and mailed on {posted}: given on {complete}, later than {days} after recording "
                            + $"({lastToGive}). The {words} does not shorten this claimant's time.", told));
        }

        if (told is { Mailed: { } mailed, Manner: not Manner.Personal })
        {
            return mailed <= lastToGive
                ? Counted.Yes(
                    Reason.Of(InTime, $"The owner's copy was put in the mail on {mailed}, within {days} of recording ({lastToGive}).",
                        [told]))
                : Counted.No(
                    Reason.NotApplied("Civ. Code § 8190(c)",
                        $"The owner's copy was put in the mail on {mailed}, later than {days} after recording "
                            + $"({lastToGive}): the {words} does not shorten this claimant's time.", told));
        }

        if (received.Latest <= lastToGive)
            return Counted.Yes(Reason.Of(InTime, $"The owner's copy reached us {received}, within {days} of recording ({lastToGive}).",
                [told]));
        var slack = told.Manner == Manner.Personal ? 0 : MailDays;
        return received.Earliest > lastToGive.PlusDays(slack)
            ? Late(told, days, lastToGive, words)
            : Counted.Open(Reason.Of(InTime, $"The owner's copy reached us {received}; it may have been given by {lastToGive}, and mail is "
                + $"given on deposit (Civ. Code § 8116(b)).", [told]),
                new Question($"On which day was the owner's copy put in the mail? The postmark "
                    + $"says.{OwnerKinds.OwnerToldUs.At("mailed"):aside}") { Corrects = told });
    }

    private static Counted Late(OwnerToldUs told, NumberRow days, LocalDate lastToGive, string words) =>
        Counted.No(Reason.NotApplied("Civ. Code § 8190(c)", $"The owner's copy reached us later than {days} after recording "
            + $"({lastToGive}) and {NumberWords.Cardinal(MailDays)} days for the mail: the {words} does not shorten this claimant's "
            + $"time.", told));

    /// <summary>
    /// The copy is given as every notice is: in a manner of Civ. Code §§ 8106 and 8110. One in another manner, though it came, does not do
    /// what the section asks; the owner will say that it was received, so both readings stand.
    /// </summary>
    [Rule("Civ. Code § 8190(b)")]
    private static Counted ByManner(Counted inTime, OwnerToldUs told)
    {
        if (inTime.Verdict == Verdict.No || (told.Manner is { } manner && Giving.IsGood(manner)))
            return inTime;
        return told.Manner is null
            ? Counted.Open(Reason.Of("Civ. Code § 8190(b)", $"The file does not say how the owner's copy came. By e-mail or in an ordinary "
                + $"envelope it does not shorten the time; plan on the shorter time until that is known.", [told], inTime.Why),
                [.. inTime.Questions,
                    new Question($"How did the owner's copy come: by hand, by certified, registered or express mail, by carrier, or "
                        + $"otherwise?{OwnerKinds.OwnerToldUs.At("manner"):aside}") { Corrects = told }])
            : Counted.Open(Reason.Of("Civ. Code § 8190(b)", $"The owner's copy did not come in a manner of Civ. Code § 8106, so by the "
                + $"words of the section the notice does not shorten the time. The owner may say that it was received all the same: plan "
                + $"on the shorter time.", [told], inTime.Why), inTime.Questions);
    }

    /// <summary>
    /// Whether this owner owes copies at all: not one who lives there with four or fewer units, nor one whose interest came by a court's
    /// order, a foreclosure or a fiduciary (Civ. Code § 1102.2(b) to (d), from memory). Where the file does not say, it is open.
    /// </summary>
    [Rule("Civ. Code § 8190(d)(1)")]
    [Rule("Civ. Code § 8190(d)(3)")]
    private static Counted IsDueFromOwner(FactsAsOf facts, OwnersNotice notice)
    {
        if (facts.Job.Work.Use == WorkUse.OwnerOccupiedOneToFour)
            return Counted.No(Reason.Of("Civ. Code § 8190(d)(1)", $"The owner lives there, with four or fewer units, and need not send a "
                + $"copy: the {notice.Words} shortens the time unseen.", [notice.Entry]));
        var owners = facts.Job.In(PartyCapacity.Owner);
        var (exempt, unknown) = (0, owners.Count == 0);
        foreach (var owner in owners)
        {
            exempt += owner.TookTitleBy is TitleSource.Foreclosure or TitleSource.Court or TitleSource.Fiduciary ? 1 : 0;
            unknown |= owner.TookTitleBy is null;
        }

        if (exempt > 0 && exempt == owners.Count)
            return Counted.No(Reason.Of("Civ. Code § 8190(d)(3)", $"The owner's interest came by a court's order, a foreclosure or a "
                + $"fiduciary, and it need not send a copy: the {notice.Words} shortens the time unseen.", [notice.Entry]));
        var noUse = facts.Job.Work.Use is null;
        if (exempt == 0 && !unknown && !noUse)
            return Counted.Yes(Reason.Of("Civ. Code § 8190(a)", $"A copy is due from this owner.", [notice.Entry]));
        return Counted.Open(Reason.Of("Civ. Code § 8190(d)", $"Whether a copy is due from this owner is open.", [notice.Entry]), unknown
            ? noUse ? [.. AskUse, .. AskTitle] : AskTitle : noUse ? AskUse : []);
    }

    private static Question[] AskUse { get; } =
        [new($"Does the owner live there, in a building of four units or fewer? Then no copy of its notice is due, and the shorter time "
            + $"runs unseen.{HeadField.WorkUse:aside}")];

    private static Question[] AskTitle { get; } =
        [new($"Did the owner buy the land, or did it come by foreclosure, by a court's order or from an estate or trust? Then no copy of "
            + $"its notice is due, and the shorter time runs unseen.{HeadField.PartiesTookTitleBy:aside}")];

    // Where no day of giving is known: of a known day it would have been the first given.
    private static NoticeGiven? OnUnknownDay(FactsAsOf facts, IReadOnlyList<Party> owners)
    {
        foreach (var notice in facts.PreliminaryNotices)
        {
            if (Giving.Counts(notice) && Giving.Reaches(notice, owners))
                return notice;
        }

        return null;
    }

    /// <summary>
    /// A copy is due to the direct contractor and to claimants who gave the owner preliminary notice; to nobody else. Null where one is
    /// due.
    /// </summary>
    [Rule("Civ. Code § 8190(a)(1)")]
    [Rule("Civ. Code § 8190(a)(2)")]
    private static Counted? NoneDueToClaimant(FactsAsOf facts, OwnersNotice notice, OpenDays calendar)
    {
        const string Section = "Civ. Code § 8190(a)(2)";
        if (facts.Job.Claimant.Role == ClaimantRole.DirectContractor)
            return null;
        var owners = facts.Job.In(PartyCapacity.Owner);
        if (Giving.FirstGiven(facts.Numbers, facts.PreliminaryNotices, owners, out var used) is not { } given)
        {
            return OnUnknownDay(facts, owners) is { } undated
                ? Counted.Open(
                    Reason.Of(Section, $"The claimant gave the owner preliminary notice on a day that the file does not tell; whether it "
                        + $"was in time for a copy of the {notice.Words} to be due is open.", [notice.Entry, undated]),
                    new Question($"On which day was the preliminary notice given to the owner? A copy of its recorded notice was due to "
                        + $"one who had given it by then.{NoticeKinds.NoticeGiven.At("on"):aside}") { Corrects = undated })
                : Counted.Yes(
                    Reason.Of(Section, $"The claimant gave the owner no preliminary notice, so no copy was due to it: "
                        + $"the {notice.Words} shortens its time unseen.", [notice.Entry]));
        }

        if (given.Latest <= notice.Recorded.Earliest)
            return null;
        // The owner can owe a copy only to one who had given it notice while the copy could still be given in time. Whether
        // that holds for a notice between the recording and the tenth day the Code does not say.
        return given.Earliest > calendar.RollForwardOnAnyList(facts.Numbers.LastDay(Number.OwnersCopy, notice.Recorded.Latest))
            ? Counted.Yes(Reason.Of(Section, $"The claimant gave the owner preliminary notice {given}, when the time to give copies was "
                + $"over, so none was due to it: the {notice.Words} shortens its time unseen.", [notice.Entry, used!]))
            : Counted.Open(
                Reason.Of(Section, $"The claimant gave the owner preliminary notice {given}, after the {notice.Words} was recorded; "
                    + $"whether a copy was due to it is open.", [notice.Entry, used!]));
    }
}
