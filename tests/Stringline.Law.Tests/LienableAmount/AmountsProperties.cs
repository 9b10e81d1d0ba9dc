using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>What holds of the amounts of all remedies on every job file.</summary>
public sealed class AmountsProperties
{
    private static readonly int Tries = Times.AtMost(3000);

    private static readonly LienJobGen Draw = LienJobGen.HalfAYear;

    private static readonly Gen<Entry?> End =
        Gen.Select(Draw.When, Gen.Enum<ContractEnd>(), Gen.OneOf((bool?[])[null, true, false]), Gen.Int[0, 2],
        (on, how, by, there) => there == 0 ? (Entry?)new ContractEnded { Index = 0, On = on, How = how, ByPayer = by } : null);

    private static readonly Gen<(JobFile Job, LocalDate AsOf)> Asked = Gen.Select(Draw.Private, Gen.Enum<WorkKind>(), Draw.AsOf, End,
        (job, kind, asOf, end) => (Of(end is null ? job : job.With(end), kind), asOf));

    private static JobFile Of(JobFile job, WorkKind kind) => job with { Work = job.Work with { Kind = kind } };

    private static string Print((JobFile Job, LocalDate AsOf) asked) => $"{asked.AsOf} {asked.Job.Work.Kind}: {asked.Job.Print()}";

    private static Assessment Answer((JobFile Job, LocalDate AsOf) asked) => Assessment.Of(asked.Job, asked.AsOf, OpenDays.Statutory);

    private static readonly Dictionary<Remedy, string> PublicOwn = new()
    {
        [Remedy.Debt] = "Civ. Code § 3302",
        [Remedy.StopPaymentNotice] = "Civ. Code § 9352(c)",
        [Remedy.PaymentBond] = "Civ. Code § 9554(c)",
    };

    // Civ. Code §§ 8000-8154 hold for all works of improvement, §§ 8160-8848 for private ones, §§ 9000-9566 for public ones.
    [Fact]
    public void Every_amount_has_a_section_of_its_own_and_none_of_another_kind_of_work() =>
        Asked.Sample(
            asked =>
            {
                var answer = Answer(asked);
                foreach (var remedy in Enum.GetValues<Remedy>())
                {
                    if (answer.AmountOf(remedy) is not { } amount)
                        continue;
                    var sections = amount.Steps.Where(s => s.Id is not ("waived" or "barred"))
                        .SelectMany(s => s.Why.Children.Select(c => c.Section).Prepend(s.Why.Section)).ToArray();
                    Assert.All(sections, s => Assert.True(Belongs(s, asked.Job.Work.Kind), $"{remedy}: {s}"));
                    if (asked.Job.Work.Kind == WorkKind.Public && amount.Steps.Count > 0)
                        Assert.Equal(PublicOwn[remedy], sections[0]);
                }
            },
            print: Print, iter: Tries);

    private static bool Belongs(string section, WorkKind kind)
    {
        if (!section.StartsWith("Civ. Code § ", StringComparison.Ordinal))
            return kind == WorkKind.Federal;
        var number = int.Parse(string.Concat(section["Civ. Code § ".Length..].TakeWhile(char.IsDigit)),
            System.Globalization.CultureInfo.InvariantCulture);
        return kind switch
        {
            WorkKind.Private => number is not (>= 9000 and <= 9566),
            WorkKind.Public => number is not (>= 8160 and <= 8848),
            _ => false,
        };
    }

    [Fact]
    public void The_steps_of_every_remedy_add_up_and_its_demand_lies_between_its_least_and_its_most() =>
        Asked.Sample(
            asked =>
            {
                var answer = Answer(asked);
                foreach (var remedy in Enum.GetValues<Remedy>())
                {
                    if (answer.AmountOf(remedy) is not { } amount)
                        continue;
                    Assert.Equal(amount.Demand, amount.Steps.Sum(s => s.Amount));
                    Assert.InRange(amount.Demand, amount.AtLeast, amount.AtMost);
                    Assert.True(amount.AtLeast >= 0);
                    Assert.True(amount.AtLeast == amount.AtMost || amount.Questions.Any(q => q.Dollars is not null));
                }
            },
            print: Print, iter: Tries);

    // The federal bond and the design professional's lien have roads of their own; the others all rest on the debt.
    [Fact]
    public void No_remedy_gives_more_than_is_owed() =>
        Asked.Sample(
            asked =>
            {
                var answer = Answer(asked);
                foreach (var remedy in Enum.GetValues<Remedy>())
                    Assert.True((answer.AmountOf(remedy)?.Demand ?? 0) <= answer.Owed.Demand, $"{remedy}");
            },
            print: Print, iter: Tries);

    [Fact]
    public void Nothing_owed_with_a_price_above_what_was_received_always_comes_with_a_question_in_dollars() =>
        Asked.Where(a => a.Job.Contract.Price is not null).Sample(
            asked =>
            {
                var facts = new FactsAsOf(asked.Job, asked.AsOf);
                var answer = Answer(asked);
                var price = asked.Job.Contract.Price!.Value + facts.All<Change>().Where(c => c.Agreed).Sum(c => c.Amount);
                var received = facts.All<Paid>().Sum(p => p.Amount) + facts.All<Credited>().Sum(c => c.Amount);
                if (!facts.HasFurnished || answer.Owed.Demand > 0 || price <= received || answer.Owed.Steps.Any(s => s.Id == "barred"))
                    return;
                Assert.Contains(answer.Owed.Questions, q => q.Dollars > 0);
                Assert.DoesNotContain(answer.Owed.Steps, s => s.Id == "overpaid" && answer.Owed.IsUnknown);
            },
            print: Print, iter: Tries);

    // A certain completion implies that the claimant has ceased; saying so as well moves no dollar.
    [Fact]
    public void Saying_again_what_another_entry_implies_never_moves_the_demand() =>
        Asked.Sample(
            asked =>
            {
                var job = asked.Job
                    .With(new Completed { Index = 0, On = DayFact.On(LienJobGen.Start.PlusDays(170)), By =
                        asked.Job.Work.Kind == WorkKind.Public ? CompletionTheory.Acceptance : CompletionTheory.Actual })
                    with { Work = asked.Job.Work with { SubjectToAcceptanceBy = null } };
                var asOf = LocalDate.Max(asked.AsOf, LienJobGen.Start.PlusDays(170));
                if (asked.Job.Work.Kind == WorkKind.Federal || !Finished(job, asOf))
                    return;
                var said = job.With(new FurnishingEnded { Index = 0, On = DayFact.On(LienJobGen.Start.PlusDays(170)) });
                Assert.Equal(Answer((job, asOf)).Owed.Demand, Answer((said, asOf)).Owed.Demand);
                Assert.Equal(Answer((job, asOf)).Amount.Demand, Answer((said, asOf)).Amount.Demand);
            },
            print: Print, iter: Tries);

    private static bool Finished(JobFile job, LocalDate asOf)
    {
        var facts = new FactsAsOf(job, asOf);
        return job.Work.Kind == WorkKind.Private
            ? Law.Completion.HasCeased.ByCompletion(facts,
                Law.Completion.CompletionDay.Of(facts, Law.Completion.OwnersNotice.Of(facts, OpenDays.Statutory))) is not null
            : Law.Completion.HasCeased.ByCompletion(facts,
                Law.Completion.PublicCompletion.Of(facts, Law.Completion.OwnersNotice.Of(facts, OpenDays.Statutory))) is not null;
    }

    [Fact]
    public void What_a_step_shows_at_stake_is_the_amount_of_its_remedy() =>
        Asked.Sample(
            asked =>
            {
                var answer = Answer(asked);
                foreach (var step in answer.Next.Where(n => n.AtStake is not null))
                {
                    var remedy = step.Finding switch
                    {
                        _ when step.Finding.StartsWith("stop-payment", StringComparison.Ordinal) => Remedy.StopPaymentNotice,
                        _ when step.Finding.StartsWith("payment-bond", StringComparison.Ordinal) => Remedy.PaymentBond,
                        _ when step.Finding.StartsWith("federal-bond", StringComparison.Ordinal) => Remedy.FederalBond,
                        _ when step.Finding.StartsWith("design-lien", StringComparison.Ordinal) => Remedy.DesignLien,
                        "debt.last-day" or "prompt-payment.charges-last-day" => Remedy.Debt,
                        _ => answer.Amount.Remedy,
                    };
                    Assert.Equal(answer.AmountOf(remedy)!.Demand, step.AtStake);
                }
            },
            print: Print, iter: Tries);
}
