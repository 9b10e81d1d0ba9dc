using System.Globalization;
using Stringline.Law.Facts;
using Stringline.Testing;

namespace Stringline.Bench;

/// <summary>Job files of a set length in which every remedy of private work has something to do.</summary>
internal static class BenchJobs
{
    /// <summary>Ten entries: one of nearly each kind.</summary>
    public static JobFile Ten() => Start().Furnished("2026-03-03", 1200m, "INV-2").Paid("2026-03-20", 500m).Build();

    /// <summary>As many entries as asked for, at least ten; the rest are invoices and payments.</summary>
    public static JobFile Of(int entries)
    {
        var job = Start();
        for (var i = 8; i < entries; i++)
        {
            var day = new LocalDate(2026, 3, 2).PlusDays(i % 25).ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
            job = i % 3 == 0 ? job.Paid(day, 40m) : job.Furnished(day, 95.5m, $"INV-{i}");
        }

        return job.Build();
    }

    private static JobBuilder Start() => new JobBuilder()
        .Price(84_250m)
        .Notice("2026-03-10")
        .Furnished("2026-03-02", 900m, "INV-1")
        .Ended("2026-03-28")
        .Completed("2026-03-29", CompletionTheory.Occupation, contested: true)
        .Completed("2026-05-01")
        .OwnerRecorded("2026-05-04", states: "2026-05-01")
        .Waived("2026-03-31", WaiverForm.ConditionalProgress, through: "2026-03-15")
        .Charged("2026-04-30", 12.5m, ChargeKind.Interest);
}
