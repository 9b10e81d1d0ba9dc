using CsCheck;
using Stringline.Law.ClaimOfLien;
using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Completion;

/// <summary>What a paper of the owner's, an unknown fact or a doubt about completion may never do.</summary>
public sealed class CompletionProperties
{
    private static readonly int Tries = Times.AtMost(600);

    private static readonly LienJobGen Draw = LienJobGen.HalfAYear;

    // Long after everything: nothing is left out because it had not happened yet.
    private static readonly LocalDate Late = LienJobGen.Start.PlusDays(600);

    private static Finding Last(JobFile job, LocalDate asOf) => Assessment.Of(job, asOf, OpenDays.Statutory).Get("claim-of-lien.last-day");

    private static LocalDate? ActBy(JobFile job) => Last(job, Late).ActBy;

    private static JobFile Without<T>(JobFile job) where T : Entry => job.Reordered(job.Entries.Where(e => e is not T));

    // A file that says on which day the work was completed, and nobody disputes it; no paper of the owner's yet.
    private static readonly Gen<(JobFile Job, LocalDate Completed)> Certain = Gen.Select(Draw.Private, Draw.Day, (job, day) =>
        (Without<OwnerRecorded>(Without<OwnerToldUs>(job)) with { Work = job.Work with { SubjectToAcceptanceBy = null, Commenced = null } })
            .With(new Completed { Index = 0, On = DayFact.On(day), By = CompletionTheory.Actual }) is var file ? (file, day) : default);

    [Fact]
    [Proves("Civ. Code § 8182(a)")]
    [Proves("Civ. Code § 8182(c)")]
    [Proves("Civ. Code § 8188(a)")]
    public void A_recorded_paper_of_the_owners_never_moves_the_day_later_and_never_leaves_it_later_than_its_own_word_would() =>
        Gen.Select(Certain, Gen.OneOf(OwnerNotice.Completion, OwnerNotice.Cessation), Draw.Day, Gen.Int[-10, 60], Gen.Bool).Sample(
            (certain, notice, recorded, back, says) =>
            {
                var states = recorded.PlusDays(-back);
                var after = ActBy(certain.Job.With(new OwnerRecorded { Index = 0, On = DayFact.On(recorded), Notice = notice, States = says
                    ? states : null }));
                Assert.True(after <= ActBy(certain.Job));
                var good = notice == OwnerNotice.Cessation ? !says || states.PlusDays(30) <= recorded
                    : !says || (states <= recorded
                        && recorded <= OpenDays.Statutory
                        .RollForwardOnAnyList(NumberTable.Shipped.LastDay(Number.RecordCompletion, states)));
                if (good)
                    Assert.True(after <= recorded.PlusDays(certain.Job.Claimant.Role == ClaimantRole.DirectContractor ? 60 : 30),
                        $"plans on {after}");
            },
            print: t => $"{t.Item2} recorded {t.Item3} states -{t.Item4} {t.Item5} in {t.Item1.Completed} {t.Item1.Job.Print()}",
                iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8180(a)")]
    [Proves("Civ. Code § 8414(a)")]
    public void No_day_to_record_by_is_before_the_claims_own_first_day_or_before_the_work_began() =>
        Gen.Select(Draw.Private, Draw.Day).Sample(
            (drawn, commenced) =>
            {
                var job = Without<OwnerRecorded>(drawn) with { Work = drawn.Work with { Commenced = commenced } };
                var answer = Assessment.Of(job, Late, OpenDays.Statutory);
                if (answer.Get("claim-of-lien.last-day").ActBy is not { } actBy)
                    return;
                Assert.True(actBy >= commenced, $"plans on {actBy}");
                if (answer.Get("claim-of-lien.first-day").Readings is [var first, ..])
                    Assert.True(actBy >= first.Day, $"plans on {actBy}, first day {first.Day}");
            },
            print: t => $"{t.Item2} {t.Item1.Print()}", iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8180(a)")]
    public void The_latest_end_is_unknown_exactly_where_some_open_reading_has_none() =>
        Gen.Select(Draw.Private, Draw.AsOf).Sample(
            (job, asOf) =>
            {
                var facts = new FactsAsOf(job, asOf);
                var completion = CompletionDay.Of(facts, OwnersNotice.Of(facts, OpenDays.Statutory));
                var band = Last(job, asOf).Band;
                var waits = job.Work is { SubjectToAcceptanceBy: not null, PublicTakesOver: not false }
                    && !facts.All<Completed>()
                    .Any(c => c is { By: CompletionTheory.Acceptance, Contested: false, On: not DayFact.Unknown });
                var ends = (completion.IsCertainEitherWay || completion.Open.Any(r => r.Firmness == Firmness.Certain)) && !waits;
                Assert.True(band is null || band.Latest is not null == ends);
            },
            print: t => $"{t.Item2}: {t.Item1.Print()}", iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8190(b)")]
    public void A_copy_in_no_good_manner_never_loses_the_right_before_day_ninety() =>
        Gen.Select(Certain, Draw.Day, Gen.Int[0, 40],
            Gen.OneOf((Manner?[])[null, Manner.Email, Manner.Fax, Manner.FirstClassMail, Manner.CertificateOfMailing, Manner.Other]),
                Gen.Int[0, 90]).Sample(
            (certain, recorded, late, manner, days) =>
            {
                // A copy is due to it: it gave the owner notice, and the owner does not live there.
                var job = (certain.Job with { Work = certain.Job.Work with { Use = WorkUse.Commercial } })
                    .With(new NoticeGiven { Index = 0, On = DayFact.On(LienJobGen.Start.PlusDays(-5)), Notice = NoticeKind.Preliminary,
                        Manner = Manner.CertifiedMail, To = ["owner", "direct"] })
                    .With(new OwnerRecorded { Index = 0, On = DayFact.On(recorded), Notice = OwnerNotice.Completion,
                        States = certain.Completed })
                    .With(new OwnerToldUs { Index = 0, On = DayFact.On(recorded.PlusDays(late)), Notice = OwnerNotice.Completion,
                        Manner = manner });
                // Where another completion came first its own ninety days are the measure.
                var facts = new FactsAsOf(job, Late);
                var first = CompletionDay.Of(facts, OwnersNotice.Of(facts, OpenDays.Statutory)).Open.Min(r => r.On.Earliest);
                if (first < certain.Completed)
                    return;
                // By the time to record alone: a license may be lacking too.
                var asked = new FactsAsOf(job, certain.Completed.PlusDays(days));
                var notices = OwnersNotice.Of(asked, OpenDays.Statutory);
                var last = LastDay.Of(asked, CompletionDay.Of(asked, notices), notices, OpenDays.Statutory);
                Assert.NotEqual(Standing.Lost, Deadline.StandingOf(asked.AsOf, last.Readings, null, last.EndFirm));
            },
            print: t => $"completed {t.Item1.Completed}, recorded {t.Item2} told +{t.Item3} by {t.Item4}, asked +{t.Item5}: {t.Item1.Job
                .Print()}", iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8190(d)(1)")]
    [Proves("Civ. Code § 8190(d)(3)")]
    public void What_is_not_known_of_the_owner_never_gives_a_later_day_than_an_owner_who_need_not_tell() =>
        Gen.Select(Draw.Private, Draw.AsOf).Sample(
            (drawn, asOf) =>
            {
                JobFile Use(WorkUse? use) => drawn with { Work = drawn.Work with { Use = use } };
                JobFile Title(TitleSource? title) =>
                    drawn with { Parties =
                        [.. drawn.Parties.Select(p => p.Capacity == PartyCapacity.Owner ? p with { TookTitleBy = title } : p)] };
                Assert.True(Last(Use(null), asOf).ActBy is not { } use || use <= Last(Use(WorkUse.OwnerOccupiedOneToFour), asOf).ActBy);
                Assert.True(Last(Title(null), asOf).ActBy is not { } title || title <= Last(Title(TitleSource.Foreclosure), asOf).ActBy);
            },
            print: t => $"{t.Item2}: {t.Item1.Print()}", iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8186(a)")]
    public void A_claim_recorded_after_the_notice_for_its_contract_is_never_void_for_work_done_later() =>
        Gen.Select(Gen.Int[0, 15], Gen.Int[1, 29], Gen.Int[0, 80],
            Gen.OneOf(ClaimantRole.Subcontractor, ClaimantRole.Supplier, ClaimantRole.Laborer)).Sample(
            (after, claimed, more, role) =>
            {
                string Iso(int days) => LawText.IsoDay(LienJobGen.Start.PlusDays(60 + days));
                var job = new JobBuilder().Role(role).Licensed("2020-01-01..").Work(w => w with { SeveralDirectContracts = true })
                    .Notice(Iso(-30)).Furnished(Iso(-30), 10m)
                    .OwnerRecorded(Iso(after), states: Iso(0), contractOf: "direct").OwnerToldUs(Iso(after))
                    .ClaimRecorded(Iso(after + claimed), 10m).Furnished(Iso(after + claimed + more), 1m);
                Assert.Equal(Standing.Kept, job.On(Iso(after + claimed + more)).Get("claim-of-lien.last-day").Standing);
            },
            iter: Tries);
}
