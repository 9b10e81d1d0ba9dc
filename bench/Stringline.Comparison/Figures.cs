namespace Stringline.Comparison;

/// <summary>What was measured of one row of the table, a figure a round; times in microseconds a job.</summary>
internal sealed class Figures(string name)
{
    private readonly List<(double Clock, double Processor)> rounds = [];

    public string Name { get; } = name;

    /// <summary>Bytes allocated for each job in the last round; null where another process did the work.</summary>
    public double? Bytes { get; set; }

    /// <summary>Processor time, the middle of the rounds.</summary>
    public double Processor => Middle(rounds.Select(round => round.Processor));

    /// <summary>Time by the clock, the middle of the rounds.</summary>
    public double Clock => Middle(rounds.Select(round => round.Clock));

    /// <summary>Adds a round.</summary>
    public void Add(Spent spent, int jobs) => rounds.Add((spent.Clock.TotalMicroseconds / jobs, spent.Processor.TotalMicroseconds / jobs));

    /// <summary>
    /// How many times the other's processor time it took: each round by itself, since a round meets one load of the machine, and of these
    /// the least, the middle and the most.
    /// </summary>
    public (double Least, double Middle, double Most) ProcessorRatioTo(Figures other)
    {
        double[] ratios = [.. rounds.Zip(other.rounds, (own, others) => own.Processor / others.Processor)];
        return (ratios.Min(), Middle(ratios), ratios.Max());
    }

    /// <summary>The same by the clock, the middle of the rounds.</summary>
    public double ClockRatioTo(Figures other) => Middle(rounds.Zip(other.rounds, (own, others) => own.Clock / others.Clock));

    private static double Middle(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        var half = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
