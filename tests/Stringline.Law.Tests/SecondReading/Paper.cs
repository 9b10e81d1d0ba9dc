using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>Whether a paper was given in a manner of Civ. Code §§ 8106, 8110, and on which day (§ 8116).</summary>
internal static class Paper
{
    /// <summary>
    /// The day it was given; null where it was given in no manner of the Code. A manner not told is taken as a good one.
    /// </summary>
    public static LocalDate? Given(World w, Entry paper, Manner? manner, LocalDate? mailed, int? tries, Party? to) => manner switch
    {
        null or Manner.Personal => w.On(paper),
        Manner.CertifiedMail or Manner.RegisteredMail or Manner.ExpressMail or Manner.OvernightCarrier => w.On(paper),
        // Code Civ. Proc. § 415.20: toward a natural person only after tries to deliver by hand: two or three (Bein v. Brechtel-Jochim
        // (1992)
        // 6 Cal.App.4th 1387, from memory); three from the year 2027.
        Manner.Substituted => to is { NaturalPerson: false } or { Capacity: PartyCapacity.PublicEntity }
            || tries >= (w.On(paper).Year < 2027 ? 2 : 3) || w.Either("tries enough", paper.Index)
            ? World.Later(mailed ?? w.On(paper), w.On(paper)).PlusDays(5)
            : null,
        _ => null,
    };

    public static LocalDate? Given(World w, StopPaymentGiven paper, Party? to) =>
        paper.Lacks is not null && !w.Either("harmless", paper.Index) ? null : Given(w, paper, paper.Manner, paper.Mailed, paper.Tries, to);

    public static LocalDate? Given(World w, NoticeGiven paper, Party? to) =>
        paper.Lacks is not null && !w.Either("harmless", paper.Index) ? null : Given(w, paper, paper.Manner, paper.Mailed, paper.Tries, to);

    public static LocalDate? Given(World w, BondNoticeGiven paper, Party? to) =>
        Given(w, paper, paper.Manner, paper.Mailed, paper.Tries, to);
}
