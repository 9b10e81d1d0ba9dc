using System.Globalization;
using System.Text;
using Stringline.Testing;

namespace Stringline.Tables.Tests;

/// <summary>A file of many wrong entries is refused with the first hundred told and the others counted.</summary>
[Slow(Slow.Lasting)]
public sealed class ManyFaultsTests
{
    [Theory]
    [InlineData(100, 0)]
    [InlineData(101, 1)]
    [InlineData(50_000, 49_900)]
    public void The_first_hundred_are_told_in_the_files_order_and_the_rest_counted(int wrong, int more)
    {
        var entries =
            string.Join(",\n", Enumerable.Range(0, wrong)
                .Select(i =>
                    string.Create(CultureInfo.InvariantCulture,
                        $"{{ \"what\": \"furnished\", \"on\": \"2026-03-02\", \"amount\": \"{i}\" }}")));
        var file = $$"""
            { "format": "stringline-job/1", "name": "Alder Court", "work": { "kind": "private", "site": { "county": "Yolo" } },
              "claimant": { "name": "Sierra Block Supply, Inc.", "role": "supplier" }, "entries": [ {{entries}} ] }
            """;
        var refused = Assert.IsType<JobFileResult.Refused>(JobFileReader.Read(Encoding.UTF8.GetBytes(file), "job.json"));
        Assert.Equal(Math.Min(wrong, 100) + (more > 0 ? 1 : 0), refused.Faults.Count);
        Assert.All(Enumerable.Range(0, 100), i =>
            Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"entries[{i}].amount"), refused.Faults[i].Path));
        if (more > 0)
            Assert.StartsWith(more.ToString("N0", CultureInfo.InvariantCulture) + " more fault", refused.Faults[^1].Found,
                StringComparison.Ordinal);
    }
}
