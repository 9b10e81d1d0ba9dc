using Stringline.Law.Facts;
using Stringline.Store;

namespace Stringline.Office.DemoOffice;

/// <summary>
/// Forty invented jobs, two in each of twenty stages, from one that has not begun to one whose right is lost. The same for the same day.
/// The stages are made by days counted from today; what the law makes of them is the program's answer, not written here.
/// </summary>
internal static class DemoJobs
{
    /// <summary>How many jobs the demo office has.</summary>
    public const int Usual = 40;

    private static readonly Func<LocalDate, DemoPlace, decimal, DemoJob>[] Stages =
    [
        // Claims that cannot wait.
        (t, p, d) => Finished(t, p, d, -75).OwnersNotice(-30, -38),
        (t, p, d) => Finished(t, p, d, -60).OwnersNotice(-25, -33),
        (t, p, d) => new DemoJob(t, p, d).Delivered(-19),
        (t, p, d) => new DemoJob(t, p, d) { Lender = true }.Delivered(-14, -6),
        (t, p, d) => Recorded(t, p, d, -87),

        // Underway.
        (t, p, d) => new DemoJob(t, p, d) { Lender = true }.Delivered(-52, -31, -9).Noticed(-45).Paid(-12, d),
        (t, p, d) => new DemoJob(t, p, d),
        (t, p, d) => new DemoJob(t, p, d).Delivered(-70, -41, -18).Noticed(-11),
        (t, p, d) => new DemoJob(t, p, d) { Lender = true }.Delivered(-90, -60, -30).Noticed(-85)
            .With(at => new Waived { Index = at, On = At(t, -58), Form = WaiverForm.UnconditionalProgress, Through = t.PlusDays(-62),
                Amount = d })
            .With(at => new Waived { Index = at, On = At(t, -27), Form = WaiverForm.ConditionalProgress, Through = t.PlusDays(-28),
                Amount = d }).Paid(-57, d + 110.25m),
        (t, p, d) => new DemoJob(t, p, d) { Role = ClaimantRole.Subcontractor }.Delivered(-100, -80, -62).Noticed(-95)
            .With(at => new LaborCeased { Index = at, On = At(t, -44) }),

        // Finished, and the day of completion in doubt.
        (t, p, d) => Finished(t, p, d, -62)
            .With(at => new Completed { Index = at, On = At(t, -41), By = CompletionTheory.Occupation, Contested = true })
            .With(at => new Completed { Index =
                at, On = new DayFact.Between(t.PlusDays(-24), t.PlusDays(-15)), By = CompletionTheory.Actual }),
        (t, p, d) => Finished(t, p, d, -40).OwnersNotice(-9, -16),

        // After recording.
        (t, p, d) => Recorded(t, p, d, -22),
        (t, p, d) => Recorded(t, p, d, -82)
            .With(at => new CreditRecorded { Index = at, On = At(t, -33), Until = t.PlusDays(150), Instrument = "credit-1" }),
        (t, p, d) => Recorded(t, p, d, -70)
            .With(at => new ActionFiled { Index = at, On = At(t, -9), Court = $"Superior Court, County of {p.County}",
                Case = $"26CV{4000 + p.Number}" }),
        (t, p, d) => Recorded(t, p, d, -48).Paid(-6, Owed(d)).With(at => new ReleaseDemanded { Index = at, On = At(t, -3) }),

        // Public and federal work.
        (t, p, d) => new DemoJob(t, p, d) { Kind = WorkKind.Public, Bond = -200 }.Delivered(-80, -60, -35).Noticed(-72)
            .With(at => new Completed { Index = at, On = At(t, -8), By = CompletionTheory.Acceptance }),
        (t, p, d) => new DemoJob(t, p, d) { Kind = WorkKind.Federal, Bond = -200 }.Delivered(-120, -96, -77).Ended(-77),

        // Other ways to the money; and too late.
        (t, p, d) => new DemoJob(t, p, d) { Lender = true, Bond = -190 }.Delivered(-85, -64, -50).Noticed(-80).Ended(-50)
            .With(at => new StopPaymentGiven { Index = at, On = At(t, -12), To = ["p1", "p4"], Amount = Owed(d) }),
        (t, p, d) => Finished(t, p, d, -210).With(at => new Completed { Index = at, On = At(t, -190), By = CompletionTheory.Actual }),
    ];

    /// <summary>The jobs.</summary>
    /// <param name="today">The day to which their days are relative.</param>
    /// <param name="count">How many; beyond forty they come again under other names, to try out a large office.</param>
    public static IEnumerable<KeyedJob> Of(LocalDate today, int count = Usual)
    {
        for (var number = 0; number < count; number++)
        {
            // Public works stand last among the names, so that a school's name goes with a school.
            var stage = number % Stages.Length;
            // Sums differ from job to job, and repeat only after thousands.
            var dollars = 2450m + (number * 4210.75m % 31_000m);
            yield return new KeyedJob($"Q-{101 + number}", Stages[stage](today, Place(number), decimal.Round(dollars, 2)).File());
        }
    }

    private static DemoPlace Place(int number) => number < Usual
        ? First(number)
        : First(number % Usual) with { Number = number,
            Name = string.Create(System.Globalization.CultureInfo.InvariantCulture,
                $"{First(number % Usual).Name}, phase {(number / Usual) + 1}") };

    private static DemoPlace First(int number) => (number % 20) switch
    {
        16 => DemoPlaces.Of(number < 20 ? 32 : 37),
        17 => DemoPlaces.Of(number < 20 ? 36 : 39),
        _ => DemoPlaces.Of(Free[number - (number > 16 ? 1 : 0) - (number > 17 ? 1 : 0) - (number > 36 ? 1 : 0) - (number > 37 ? 1 : 0)]),
    };

    private static readonly int[] Free = [.. Enumerable.Range(0, 40).Except([32, 36, 37, 39])];

    private static DayFact At(LocalDate today, int days) => DayFact.On(today.PlusDays(days));

    private static decimal Owed(decimal dollars) => (3 * dollars) + (6 * 110.25m);

    // Three deliveries, the notice in time, nothing more to come.
    private static DemoJob Finished(LocalDate today, DemoPlace place, decimal dollars, int last) =>
        new DemoJob(today, place, dollars) { Lender = place.Number % 2 == 0 }.Delivered(last - 55, last - 30, last).Noticed(last - 45)
        .Ended(last);

    // A claim that was recorded in time: completion nine days before it.
    private static DemoJob Recorded(LocalDate today, DemoPlace place, decimal dollars, int recorded) =>
        Finished(today, place, dollars, recorded - 20)
            .With(at => new Completed { Index = at, On = At(today, recorded - 9), By = CompletionTheory.Actual })
            .Claimed(recorded, Owed(dollars));
}
