using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Counting;
using static Stringline.Papers.Tests.Jobs;

namespace Stringline.Papers.Tests;

/// <summary>From facts through the rules to the packet, nothing set by hand.</summary>
public sealed class AssessedPacketTests
{
    private static JobFile Noticed() => Demo().With(
        new NoticeGiven { Index = 2, On = DayFact.On(Day("2026-02-20")), Notice = NoticeKind.Preliminary, To = ["p1", "p3"],
            Manner = Manner.Personal },
        new Completed { Index = 3, On = DayFact.On(Day("2026-03-29")), By = CompletionTheory.Actual });

    private static Assessment Assess(JobFile job, string asOf) => Assessment.Of(job, Day(asOf), OpenDays.Statutory);

    /// <summary>
    /// Civ. Code § 8414(b)(1): 90 days after March 29, 2026 is June 27, a Saturday; the open day before it is Friday, June 26.
    /// </summary>
    [Fact]
    public void A_supplier_after_completion_gets_a_packet_with_the_act_by_day()
    {
        var made = Kept.Packet("assessed", Noticed(), Assess(Noticed(), "2026-05-06"));
        Assert.Contains("ACT BY Friday, June 26, 2026", made.Sheet().Text, StringComparison.Ordinal);
        Assert.Contains("Last day: Saturday, June 27, 2026", made.Sheet().Text, StringComparison.Ordinal);
        Assert.Contains("$84,250.00", made.Claim().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void After_the_last_day_there_is_none()
    {
        var refusals = Kept.Refusals(Noticed(), Assess(Noticed(), "2026-08-01"));
        Assert.Contains(refusals, r => r.There.ToString().Contains("no right to a mechanics lien", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_preliminary_notice_there_is_none() =>
        Assert.Contains(Kept.Refusals(Demo(), Assess(Demo(), "2026-05-06")), r => r.Section == "Civ. Code § 8200(c)");

    [Fact]
    public void On_public_work_there_is_none()
    {
        var job = Noticed() with { Work = Noticed().Work with { Kind = WorkKind.Public } };
        Assert.Contains(Kept.Refusals(job, Assess(job, "2026-05-06")), r => r.There.ToString().Length > 0 && r.Id == "law");
    }

    [Fact]
    public void Every_refusal_on_real_facts_can_be_printed_as_a_draft()
    {
        var draft = Kept.Packet("assessed-draft", Demo(), Assess(Demo(), "2026-08-01"), draft: true);
        Assert.NotEmpty(draft.InTheWay);
    }
}
