using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>What holds of every stop payment notice and bond notice, over recipients, manners, order and sums.</summary>
public sealed class StopPaymentProperties
{
    private static readonly int Tries = Times.AtMost(1000);

    private static readonly string[] People = ["owner", "direct", "sub", "bank", "surety", "architect", "city"];

    private static readonly Manner[] Good =
        [Manner.Personal, Manner.CertifiedMail, Manner.RegisteredMail, Manner.ExpressMail, Manner.OvernightCarrier, Manner.Substituted];

    private static readonly Gen<IReadOnlyList<string>> To =
        Gen.Int[1, (1 << People.Length) - 1].Select(drawn => (IReadOnlyList<string>)[.. People.Where((_, i) => (drawn & (1 << i)) != 0)]);

    // Work on 20 October, completed on the 22nd, the preliminary notice on 28 October; the other paper on a day around it.
    private static JobBuilder PrivateJob() => Private().Lender().Party("architect", PartyCapacity.Architect, "Plumb Line Studio")
        .PartyWith("owner", p => p with { NaturalPerson = false }).PartyWith("architect", p => p with { NaturalPerson = false })
        .PartyWith("bank", p => p with { NaturalPerson = false })
        .PaymentBond("2025-07-01", "direct").Furnished("2025-10-20", 6430m).Completed("2025-10-22").IndexSearched("2025-11-10")
        .Notice("2025-10-28", Manner.CertifiedMail, "owner", "direct", "bank");

    private static JobBuilder PublicJob() => Public().Party("architect", PartyCapacity.Architect, "Plumb Line Studio")
        .Furnished("2025-10-20", 6430m).Accepted().NoticedPublic("2025-10-28");

    private static IReadOnlyList<string> Known(JobBuilder job, IReadOnlyList<string> to) =>
        [.. to.Where(id => job.Build().Party(id) is not null)];

    // To whom, how and when, and what may then be kept: Civ. Code §§ 8106, 8110, 8506, 8508(a), 8530, 9300(c), 9354.
    [Fact]
    [Proves("Civ. Code § 8506(a)")]
    [Proves("Civ. Code § 8508(a)")]
    [Proves("Civ. Code § 9300(c)")]
    [Proves("Civ. Code § 9354")]
    public void A_stop_payment_notice_is_kept_only_toward_whom_how_and_after_what_the_sections_say() =>
        Gen.Select(To, Gen.Enum<Manner>(), Gen.Int[-10, 60], Gen.Bool).Sample(
            (to, manner, after, isPublic) =>
            {
                var job = isPublic ? PublicJob() : PrivateJob();
                var on = new LocalDate(2025, 10, 28).PlusDays(after);
                var assessment = job.StopPaymentGiven(LawText.IsoDay(on), 6430m, false, [.. Known(job, to).DefaultIfEmpty("direct")])
                    .Paper(p => p with { Manner = manner }).On("2026-01-05");
                bool Counts(params string[] through) => to.Intersect(through).Any(id => job.Build().Party(id) is not null)
                    && Good.Contains(manner) && (after >= 0 || (manner == Manner.Substituted && after >= -5));
                Assert.Equal(isPublic
                    ? Counts("city")
                    : Counts("owner", "architect", "bank"), assessment.Get("stop-payment-notice.last-day").Standing == Standing.Kept);
                if (isPublic)
                    return;
                Assert.Equal(Counts("owner", "architect"), assessment.Get("stop-payment-notice.owner").Standing == Standing.Kept);
                Assert.Equal(Counts("bank"), assessment.Get("stop-payment-notice.lender").Standing == Standing.Kept);
                Assert.Equal(Counts("owner", "architect", "bank"), assessment.Find("stop-payment-notice.action-first-day") is not null);
            },
            iter: Tries);

    // Surety and principal both, in a good manner: Civ. Code §§ 8612(b), 8614, 9560(b), 9562.
    [Fact]
    [Proves("Civ. Code § 8612(b)")]
    [Proves("Civ. Code § 8614")]
    [Proves("Civ. Code § 9560(b)")]
    [Proves("Civ. Code § 9562")]
    public void A_bond_notice_is_kept_only_toward_surety_and_principal_in_a_good_manner() =>
        Gen.Select(To, Gen.Enum<Manner>(), Gen.Bool).Sample(
            (to, manner, isPublic) =>
            {
                var job = isPublic
                    ? Public().Furnished("2025-08-05", 6430m).Accepted() : Private().PaymentBond("2025-07-01", "direct")
                    .Furnished("2025-08-05", 6430m).Completed("2025-10-22").IndexSearched("2025-11-10");
                job.PartyWith("direct", p => p with { NaturalPerson = false })
                    .BondNoticeGiven("2025-11-03", [.. Known(job, to).DefaultIfEmpty("sub")]).BondPaper(p => p with { Manner = manner });
                var notice = job.On("2025-12-01").Get("payment-bond.notice-last-day");
                var counts = to.Contains("surety") && to.Contains("direct") && Good.Contains(manner);
                Assert.Equal(counts ? Standing.Kept : Standing.Open, notice.Standing);
                Assert.Equal("2026-01-05", notice.Plan());
            },
            iter: Tries);

    private static readonly Gen<DayFact> AroundTheLastDay = Gen.Frequency(
        (3, Gen.Int[-20, 20].Select(after => DayFact.On(new LocalDate(2026, 1, 5).PlusDays(after)))),
        (2, Gen.Select(Gen.Int[-20, 20], Gen.Int[1, 15], (after, more) =>
            (DayFact)new DayFact.Between(new LocalDate(2026, 1, 5).PlusDays(after), new LocalDate(2026, 1, 5).PlusDays(after + more)))),
        (1, Gen.Const((DayFact)new DayFact.Unknown())));

    // However late, ill served or ill addressed: the sections ask for one notice in time, and nothing of a second.
    [Fact]
    [Proves("Civ. Code § 8506(a)")]
    [Proves("Civ. Code § 8612(b)")]
    [Proves("Civ. Code § 9354")]
    [Proves("Civ. Code § 9560(b)")]
    public void One_more_paper_takes_nothing_that_an_earlier_one_saved_or_may_have_saved() =>
        Gen.Select(Gen.Select(AroundTheLastDay, Gen.OneOf(Manner.Personal, Manner.Substituted, Manner.Email), To, Gen.Bool).Array[2, 4],
            Gen.Bool, Gen.Bool, Gen.Int[-5, 60]).Sample(
            (papers, isPublic, noticed, after) =>
            {
                // Without a preliminary notice the bond notice is all there is; with one there is nothing for it to do.
                var job = noticed ? isPublic ? PublicJob() : PrivateJob()
                    : isPublic ? Public().Furnished("2025-08-05", 6430m).Ended("2025-08-05").Accepted()
                    : Private().PaymentBond("2025-07-01").Furnished("2025-08-05", 6430m).Ended("2025-08-05").Completed("2025-10-22")
                    .IndexSearched("2025-11-10");
                job.Party("second", PartyCapacity.DirectContractor, "Second Prime Co.");
                Entry Paper(int i, int index) => papers[i] is var (on, how, to, toBond) && toBond
                    ? new BondNoticeGiven { Index =
                        index, On = on, Manner = how, To = [.. to, .. to.Contains("sub") ? (string[])["second"] : []] }
                    : new StopPaymentGiven { Index = index, On = on, Manner = how, To = to, Amount = 6430m };
                for (var i = 1; i < papers.Length; i++)
                    job.Add(index => Paper(i, index));
                var asOf = LawText.IsoDay(new LocalDate(2026, 1, 25).PlusDays(after));
                var fewer = job.On(asOf);
                var more = job.Add(index => Paper(0, index)).On(asOf);
                foreach (var id in (string[])["payment-bond.notice-last-day", "stop-payment-notice.last-day", "stop-payment-notice.owner",
                    "stop-payment-notice.lender"])
                {
                    if (fewer.Find(id)?.Standing is { } before)
                        Assert.True(more.Get(id).Standing is var now && (before != Standing.Kept || now == Standing.Kept)
                            && (before != Standing.InDoubt || now is Standing.Kept or Standing.InDoubt), $"{id}: {before}, then {now}");
                }
            },
            iter: Tries);

    private static Gen<(JobBuilder Job, bool IsPublic)> Priced =>
        Gen.Select(Gen.Int[1, 500_000].Array[1, 4], Gen.Int[0, 60].Array[4], Gen.Bool, Gen.Int[0, 200_000])
        .Select((sums, days, isPublic, paid) =>
    {
        var job = isPublic ? Public() : Private();
        for (var i = 0; i < sums.Length; i++)
            job.Furnished(LawText.IsoDay(new LocalDate(2025, 8, 5).PlusDays(days[i])), sums[i] / 100m);
        if (paid > 0)
            job.Paid("2025-09-01", paid / 100m);
        return ((isPublic ? job.NoticedPublic("2025-08-05").Accepted() : job.Notice("2025-08-05").Completed("2025-10-22")), isPublic);
    });

    private static string Falsehood(bool isPublic) => isPublic ? "Civ. Code § 9454" : "Civ. Code § 8504";

    [Fact]
    [Proves("Civ. Code § 8504")]
    [Proves("Civ. Code § 9454")]
    public void A_sum_above_the_demand_of_its_own_day_always_is_an_alarm_and_one_at_it_never() =>
        Gen.Select(Priced, Gen.Int[0, 90], Gen.Int[1, 100_000]).Sample(
            (drawn, day, more) =>
            {
                var on = new LocalDate(2025, 8, 5).PlusDays(day);
                var due = drawn.Job.On(LawText.IsoDay(on)).Amount.Demand;
                Finding Given(decimal sum) => Assessment.Of(
                    drawn.Job.Build() with { Entries =
                        [.. drawn.Job.Build().Entries,
                            new StopPaymentGiven { Index =
                                99, On = DayFact.On(on), Amount = sum, To = [drawn.IsPublic ? "city" : "owner"] }] },
                    new LocalDate(2025, 12, 1), OpenDays.Statutory).Get("stop-payment-notice.amount");
                Assert.Contains(Falsehood(drawn.IsPublic), Given(due + (more / 100m)).Sections);
                Assert.DoesNotContain(Falsehood(drawn.IsPublic), Given(due).Sections);
            },
            iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8502(c)")]
    [Proves("Civ. Code § 9352(c)")]
    public void Work_after_the_last_notice_is_never_held() =>
        Gen.Select(Priced, Gen.Int[1, 100_000]).Sample(
            (drawn, more) =>
            {
                var to = drawn.IsPublic ? "city" : "owner";
                drawn.Job.StopPaymentGiven("2025-10-06", null, false, to);
                var before = drawn.Job.On("2025-12-01").Get("stop-payment-notice.amount");
                drawn.Job.Furnished("2025-10-07", more / 100m);
                var after = drawn.Job.On("2025-12-01").Get("stop-payment-notice.amount");
                Assert.True(after.Amount <= before.Amount);
                var unpaid = drawn.Job.On("2025-12-01").Amount.Demand - after.Amount;
                Assert.Equal(unpaid > 0, after.Says("is not held by it"));
            },
            iter: Tries);
}
