namespace Stringline.Comparison;

/// <summary>What was measured of one row of the table, a figure a round.</summary>
internal sealed class Figures(string name)
{
    private readonly List<double> microseconds = [];

    public string Name { get; } = name;

    /// <summary>Bytes allocated for each job in the last round; null where another process did the work.</summary>
    public double? Bytes { get; set; }

    /// <summary>Microseconds a job, the middle of the rounds.</summary>
    public double Median => Middle(microseconds);

    public double Least => microseconds.Min();

    public double Most => microseconds.Max();

    public void Add(TimeSpan elapsed, int jobs) => microseconds.Add(elapsed.TotalMicroseconds / jobs);

    /// <summary>How many times the other's time it took: each round by itself, since a round meets one load of the machine, and of these the middle.</summary>
    public double RatioTo(Figures other) => Middle([.. microseconds.Zip(other.microseconds, (own, others) => own / others)]);

    private static double Middle(IReadOnlyCollection<double> values)
    {
        double[] sorted = [.. values.Order()];
        var half = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
