using CsCheck;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>
/// What one more preliminary notice may never do, however late it is, and to whom and in what manner it goes: take anything.
/// </summary>
public sealed class NoticeProperties
{
    private static readonly LocalDate First = new(2026, 3, 2);

    private static readonly Gen<DayFact> When = Gen.Frequency(
        (5, Gen.Int[0, 90].Select(after => DayFact.On(First.PlusDays(after)))),
        (1, Gen.Select(Gen.Int[0, 90], Gen.Int[1, 20], (after, more) =>
            (DayFact)new DayFact.Between(First.PlusDays(after), First.PlusDays(after + more)))),
        (1, Gen.Const((DayFact)new DayFact.Unknown())));

    private static readonly Gen<IReadOnlyList<string>> To =
        Gen.OneOf((IReadOnlyList<string>[])[["owner"], ["direct"], ["bank"], ["owner", "direct"], ["owner", "direct", "bank"],
            ["direct", "other"]]);

    private static readonly Gen<Func<int, Entry>> Notice =
        Gen.Select(When, Gen.OneOf(Manner.CertifiedMail, Manner.Substituted, Manner.Email), To, Gen.OneOf((int?[])[null, 0, 3]),
            Gen.OneOf((string?[])[null, null, "the estimate"]),
        (on, manner, to, tries, lacks) =>
            (Func<int, Entry>)(i => new NoticeGiven { Index = i, On = on, Notice = NoticeKind.Preliminary, Manner = manner, To = to,
                Tries = tries, Lacks = lacks }));

    [Fact]
    [Proves("Civ. Code § 8200(c)")]
    [Proves("Civ. Code § 8204(a)")]
    public void One_more_notice_loses_nothing() =>
        Gen.Select(Notice.Array[1, 3], Notice, Gen.Int[0, 60], Gen.OneOf("direct", "sub", "owner"), Gen.Bool).Sample(
            (given, another, apart, hiredBy, hasLender) =>
            {
                var job = new JobBuilder().Party("sub", PartyCapacity.Subcontractor).Party("other", PartyCapacity.DirectContractor)
                    .Role(ClaimantRole.Supplier, hiredBy)
                    .Furnished("2026-03-02", 400m).Furnished(LawText.IsoDay(First.PlusDays(apart)), 100m)
                    .Ended(LawText.IsoDay(First.PlusDays(apart)));
                if (hasLender)
                    job.Lender();
                foreach (var notice in given)
                    job.Add(notice);
                var before = job.On("2026-08-03");
                var after = job.Add(another).On("2026-08-03");
                var (then, now) = (before.Get("preliminary-notice.last-day").Standing, after.Get("preliminary-notice.last-day").Standing);
                Assert.True(then == Standing.Lost || now != Standing.Lost, $"{then}, then lost");
                Assert.True(then != Standing.Kept || now == Standing.Kept, $"kept, then {now}");
                Assert.True(after.Amount.Demand >= before.Amount.Demand, $"{before.Amount.Demand}, then {after.Amount.Demand}");
            },
            print: t => string.Join(Environment.NewLine,
                [.. t.Item1.Append(t.Item2).Select(n => n(0) is NoticeGiven g
                    ? $"{g.On} {g.Manner} {string.Join(' ', g.To)} tries {g.Tries} lacks {g.Lacks}"
                    : ""), $"{t.Item3} {t.Item4} {t.Item5}"]), iter: Times.AtMost(1000));
}
