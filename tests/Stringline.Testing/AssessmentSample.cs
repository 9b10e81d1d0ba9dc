using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Testing;

/// <summary>An assessment made by hand, with every case that an output must be able to show. It need not be right in law.</summary>
public static class AssessmentSample
{
    private static readonly Entry Occupied = new Completed
    {
        Index = 0,
        On = DayFact.On(new LocalDate(2026, 5, 18)),
        By = CompletionTheory.Occupation,
        Contested = true,
    };

    private static readonly Entry Paid = new Paid { Index = 1, On = DayFact.On(new LocalDate(2026, 4, 24)), Amount = 100m };

    private static readonly Reading ByOccupation =
        new($"completion by occupation", new LocalDate(2026, 8, 16), new LocalDate(2026, 8, 17));

    private static readonly Reading ByFinish = new($"actual completion", new LocalDate(2026, 9, 10));

    private static readonly Reading Completion = new($"completion by occupation", new LocalDate(2026, 5, 18));

    /// <summary>The assessment.</summary>
    public static Assessment Made { get; } = new()
    {
        AsOf = new LocalDate(2026, 6, 22),
        Name = "Alder “Court”",
        Findings =
        [
            new Finding
            {
                Id = "claim-of-lien.last-day",
                Title = "Claim of lien: last day to record",
                Standing = Standing.Open,
                ActBy = new LocalDate(2026, 8, 14),
                IsDeadline = true,
                Readings = [ByOccupation, ByFinish],
                Band = new Band(ByOccupation, ByFinish),
                Why =
                [
                    Reason.Of(
                        "Civ. Code § 8414(b)",
                        $"90 days after completion.",
                        Reason.Of("Civ. Code § 8180(a)(2)", $"Occupied {new LocalDate(2026, 5, 18)}.", [Occupied]),
                        Reason.NotApplied("Civ. Code § 8414(b)(2)", $"No notice of completion is recorded.")),
                ],
                Questions = [new Question($"When did labor cease?", Days: 25), new Question($"Was the charge agreed?", Dollars: 412.8m)],
            },
            new Finding
            {
                Id = "completion.day",
                Title = "Completion of the work",
                Standing = Standing.InDoubt,
                Readings = [Completion],
                Band = new Band(Completion, null),
                Why = [],
            },
            new Finding { Id = "release-bond.amount", Title = "Release bond", Standing = Standing.NotYet, Amount = 49382.2m, Why = [] },
        ],
        Amount = new Waterfall(
            39505.75m,
            [
                new WaterfallStep("agreed-price", "Agreed price", 39605.75m, Reason.Of("Civ. Code § 8430(a)(2)", $"The price agreed.")),
                new WaterfallStep("paid", "Paid", -100m, Reason.Of("Civ. Code § 8416(a)(1)", $"Payments received: {100m}.", [Paid])),
            ],
            412.8m),
        ClaimObstacles = [Reason.Of("Civ. Code § 8416(a)", $"The signer is not named.")],
    };
}
