namespace Stringline.Comparison;

/// <summary>What was measured of one row of the table.</summary>
internal sealed class Figures(string name)
{
    private readonly List<double> microseconds = [];

    public string Name { get; } = name;

    /// <summary>Bytes allocated for each job in the last round; null where another process did the work.</summary>
    public double? Bytes { get; set; }

    /// <summary>Microseconds a job, the middle of the rounds.</summary>
    public double Median => Sorted() is var sorted && sorted.Length % 2 == 1
        ? sorted[sorted.Length / 2]
        : (sorted[(sorted.Length / 2) - 1] + sorted[sorted.Length / 2]) / 2;

    public double Least => microseconds.Min();

    public double Most => microseconds.Max();

    public void Add(TimeSpan elapsed, int jobs) => microseconds.Add(elapsed.TotalMicroseconds / jobs);

    private double[] Sorted() => [.. microseconds.Order()];
}
