using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>When a notice counts as given, by manner (Civ. Code §§ 8106, 8110, 8116).</summary>
public static class Giving
{
    /// <summary>Whether the manner is one in which a notice of this part of the Code may be given.</summary>
    [Rule("Civ. Code § 8106")]
    [Rule("Civ. Code § 8110")]
    public static bool IsGood(Manner manner) => manner switch
    {
        Manner.Personal or Manner.CertifiedMail or Manner.RegisteredMail or Manner.ExpressMail
            or Manner.OvernightCarrier or Manner.Substituted => true,
        // First-class mail is no manner of giving notice; a certificate of mailing does not make it one.
        Manner.CertificateOfMailing or Manner.FirstClassMail or Manner.Email or Manner.Fax or Manner.Other => false,
        _ => throw new ArgumentOutOfRangeException(nameof(manner), manner, "Not a manner of giving notice."),
    };

    /// <summary>
    /// Whether a preliminary notice counts at all: given in a good manner, with an estimate of the total price that was worked out. A stock
    /// figure is none: Rental Equipment v. McDaniel Builders (2001) 91 Cal.App.4th 445.
    /// </summary>
    [Rule("Civ. Code § 8202(a)(2)", Sure = Sure.Opinion)]
    public static bool Counts(NoticeGiven notice) => IsGood(notice.Manner) && notice.EstimateBasis != EstimateBasis.StockFigure;

    /// <summary>
    /// The day on which notice is complete: on delivery or deposit; five days after mailing where it was left and mailed.
    /// </summary>
    [Rule("Civ. Code § 8116")]
    public static DaySpan CompleteOn(NumberTable numbers, DaySpan done, Manner manner) =>
        manner == Manner.Substituted ? done.LastDay(numbers, Number.LeftAndMailed) : done;

    /// <summary>How long after mailing a notice that was left and mailed is complete.</summary>
    internal static NumberRow AfterMailing(NumberTable numbers, DayFact left) =>
        numbers.On(Number.LeftAndMailed, left.Latest ?? LocalDate.MaxIsoValue);

    /// <summary>
    /// The day on which a preliminary notice was complete: one left and mailed five days after mailing, or after leaving where the file
    /// tells no day of mailing; null where its day is unknown.
    /// </summary>
    [Rule("Civ. Code § 8116")]
    public static DaySpan? CompleteOn(NumberTable numbers, NoticeGiven notice) =>
        CompleteOn(numbers, notice.On, notice.Manner, notice.Mailed);

    /// <summary>The same of any paper; one whose manner is not told is complete on its day.</summary>
    [Rule("Civ. Code § 8116")]
    public static DaySpan? CompleteOn(NumberTable numbers, DayFact on, Manner? manner, LocalDate? mailed)
    {
        if (DaySpan.Of(on) is not { } done)
            return null;
        if (manner == Manner.Substituted && mailed is { } posted)
            done = DaySpan.Later(done, new DaySpan(posted, posted));
        return CompleteOn(numbers, done, manner ?? Manner.Personal);
    }

    /// <summary>The day on which a preliminary notice first counted as given to any of the parties; null where none did.</summary>
    /// <param name="numbers">The numbers of the law.</param>
    /// <param name="notices">Preliminary notices, earliest first.</param>
    /// <param name="anyOf">The parties of whom one must have been reached.</param>
    /// <param name="used">The entry that reached one of them.</param>
    public static DaySpan? FirstGiven(NumberTable numbers, IReadOnlyList<NoticeGiven> notices, IReadOnlyList<Party> anyOf,
        out NoticeGiven? used)
    {
        DaySpan? first = null;
        used = null;
        for (var i = 0; i < notices.Count; i++)
        {
            var notice = notices[i];
            if (!Counts(notice) || !Reaches(notice, anyOf) || CompleteOn(numbers, notice) is not { } complete)
                continue;
            // The notice whose last possible day comes first is the one that surely reached them.
            if (first is { } so && so.Latest <= complete.Latest)
                continue;
            first = complete;
            used = notice;
        }

        return first;
    }

    internal static bool Reaches(NoticeGiven notice, IReadOnlyList<Party> anyOf)
    {
        for (var i = 0; i < anyOf.Count; i++)
        {
            if (notice.To.Contains(anyOf[i].Id))
                return true;
        }

        return false;
    }
}
