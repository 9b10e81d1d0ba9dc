using Stringline.Tables;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Counting;

namespace Stringline.Office;

/// <summary>
/// Gets the law ready on another core while the job file is read: the first use of code costs more than its work. It gives
/// nothing and changes nothing.
/// </summary>
internal static class WarmUp
{
    private static readonly LocalDate Day = new(2026, 1, 5);

    /// <summary>Assesses a file of a few made-up entries and writes the answer away.</summary>
    public static void Law() => AssessmentJson.Write(Assessment.Of(Few(), Day.PlusDays(30), OpenDays.Statutory));

    private static JobFile Few() => new()
    {
        Name = "head start",
        Work = new Work { Kind = WorkKind.Private, Site = new Site { County = "Yolo" } },
        Claimant = new Claimant { Name = "head start", Role = ClaimantRole.Supplier },
        Contract = new Contract { Price = 1m },
        Entries =
        [
            new Furnished { Index = 0, On = DayFact.On(Day), Until = DayFact.On(Day), Amount = 1m },
            new FurnishingEnded { Index = 1, On = DayFact.On(Day) },
            new Paid { Index = 2, On = DayFact.On(Day), Amount = 0.5m },
            new Completed { Index = 3, On = DayFact.On(Day), By = CompletionTheory.Actual },
        ],
    };
}
