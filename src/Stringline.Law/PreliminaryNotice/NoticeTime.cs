using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Counting;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>The time in which a preliminary notice covers all that was furnished.</summary>
internal sealed class NoticeTime
{
    private readonly FactsAsOf facts;
    private readonly OpenDays? calendar;

    private NoticeTime(FactsAsOf facts, LocalDate? last, bool commencementUnknown, OpenDays? calendar)
    {
        this.facts = facts;
        Last = last;
        CommencementUnknown = commencementUnknown;
        this.calendar = calendar;
    }

    /// <summary>The last day on which a notice surely covers everything; null where no day is known.</summary>
    public LocalDate? Last { get; }

    /// <summary>Whether a designer's time may run on, because nobody says when the work commenced.</summary>
    public bool CommencementUnknown { get; }

    /// <summary>
    /// On private work: the twentieth day after first furnishing; for a design professional the twentieth day after the work commenced,
    /// where that is later. Services at the site after the commencement lie within 20 days before any notice given by that day, so that
    /// the section's limit to design services leaves nothing out.
    /// </summary>
    [Rule("Civ. Code § 8204(a)")]
    [Rule("Civ. Code § 8204(b)")]
    public static NoticeTime OnPrivateWork(FactsAsOf facts, OpenDays calendar)
    {
        LocalDate? last = facts.FirstFurnished is { } first ? facts.Numbers.LastDay(Number.NoticeAfterFurnishing, first.Earliest) : null;
        if (facts.Job.Claimant.Role != ClaimantRole.DesignProfessional)
            return new NoticeTime(facts, last, false, calendar);
        if (facts.Job.Work.Commenced is not { } commenced)
            return new NoticeTime(facts, last, facts.HasFurnished, calendar);
        var afterCommencement = facts.Numbers.LastDay(Number.NoticeAfterCommencement, commenced);
        return new NoticeTime(facts, last > afterCommencement ? last : afterCommencement, false, calendar);
    }

    /// <summary>On public work: no last day as such, only the reach of 20 days, so that nothing rolls.</summary>
    [Rule("Civ. Code § 9304")]
    public static NoticeTime OnPublicWork(FactsAsOf facts) =>
        new(facts, facts.FirstFurnished is { } first
            ? facts.Numbers.LastDay(Number.PublicNoticeLookBack, first.Earliest) : null, false, null);

    /// <summary>
    /// The doubt with which a notice complete on a day covers everything furnished; null where it surely is late. A day left out as a
    /// holiday is left out of this time too, and every list is tried: what was done already is not given up. It is never planned on.
    /// </summary>
    [Rule("Civ. Code § 10", Sure = Sure.OurReading)]
    [Rule("Code Civ. Proc. § 12a")]
    public NoticeDoubt? InTime(LocalDate day)
    {
        if (!facts.HasFurnished || day <= Last)
            return NoticeDoubt.None;
        if (CommencementUnknown)
            return NoticeDoubt.Commencement;
        return Last is { } last && day <= Rolled(last) ? NoticeDoubt.ByRoll : null;
    }

    /// <summary>Whether a notice complete on a day may be in time by some day of first furnishing and some roll.</summary>
    public bool MayBeInTime(LocalDate day) => InTime(day) is not null
        || (facts.FirstFurnished is { IsExact: false, Latest: var first } && day <= Rolled(facts.Numbers.LastDay(AfterFurnishing, first)));

    private Number AfterFurnishing => facts.Job.Work.Kind == WorkKind.Public ? Number.PublicNoticeLookBack : Number.NoticeAfterFurnishing;

    private LocalDate Rolled(LocalDate last) => calendar is null ? last : calendar.RollForwardOnAnyList(last);
}
