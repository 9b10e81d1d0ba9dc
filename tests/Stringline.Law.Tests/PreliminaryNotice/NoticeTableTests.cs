using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>
/// To whom, how and when: every set of recipients, every manner and the days around the last, against a table made from the sections.
/// </summary>
public sealed class NoticeTableTests
{
    private static readonly string[] People = ["owner", "direct", "bank", "sub", "surety"];

    // Who must all be told for the notice to be whole: Civ. Code §§ 8200(a), (e), 9300(a).
    [Theory]
    [InlineData(WorkKind.Private, "direct", "owner direct bank")]
    [InlineData(WorkKind.Private, "sub", "owner direct bank")]
    [InlineData(WorkKind.Private, "owner", "bank")]
    [InlineData(WorkKind.Public, "sub", "owner direct")]
    [Proves("Civ. Code § 8200(a)")]
    [Proves("Civ. Code § 8200(e)(2)")]
    [Proves("Civ. Code § 9300(a)")]
    [Proves("Civ. Code § 8106")]
    public void It_is_kept_only_for_the_sets_and_manners_and_days_of_the_sections(WorkKind kind, string hiredBy, string due)
    {
        for (var set = 0; set < 1 << People.Length; set++)
        {
            string[] to = [.. People.Where((_, i) => (set & (1 << i)) != 0)];
            var all = due.Split(' ').All(to.Contains);
            foreach (var manner in Enum.GetValues<Manner>())
            {
                var good = manner is Manner.Personal or Manner.CertifiedMail or Manner.RegisteredMail or Manner.ExpressMail
                    or Manner.OvernightCarrier or Manner.Substituted;
                foreach (var day in (string[])["2026-03-18", "2026-03-23", "2026-03-24"])
                {
                    // The twentieth day after Tuesday 3 March is Monday the 23rd; left and mailed is complete five days later.
                    var inTime = string.CompareOrdinal(day, manner == Manner.Substituted ? "2026-03-18" : "2026-03-23") <= 0;
                    var job = new JobBuilder().Role(ClaimantRole.Supplier, hiredBy).Work(w => w with { Kind = kind })
                        .Party("bank", PartyCapacity.ConstructionLender)
                        .Party("sub", PartyCapacity.Subcontractor).Party("surety", PartyCapacity.Surety).Furnished("2026-03-03", 100m)
                        .Add(i => new NoticeGiven { Index = i, On = JobBuilder.When(day), Notice = NoticeKind.Preliminary, Manner = manner,
                            To = to, Tries = 3, Mailed = JobBuilder.Day(day) });
                    if (kind == WorkKind.Public)
                        job.PartyWith("owner", p => p with { Capacity = PartyCapacity.PublicEntity });
                    var kept = job.On("2026-06-01").Get("preliminary-notice.last-day").Standing == Standing.Kept;
                    Assert.True(kept == (all && good && inTime), $"{string.Join(' ', to)} {manner} {day}: {kept}");
                }
            }
        }
    }
}
