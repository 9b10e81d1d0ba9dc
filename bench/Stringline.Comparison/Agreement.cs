using Stringline.Comparison.Jobs;
using Stringline.Law.Counting;

namespace Stringline.Comparison;

/// <summary>Whether an engine gives the days that the law library gives. Speeds of unequal work say nothing.</summary>
internal static class Agreement
{
    private const int Shown = 5;

    /// <summary>Compares the answers of one engine to those of the law library.</summary>
    /// <exception cref="DisagreementException">Some job has another day, or none; the first few are named.</exception>
    public static void Check(string engine, IReadOnlyList<ComparedJob> jobs, SixDays[] ours, SixDays[] theirs)
    {
        var differences = new List<string>();
        for (var i = 0; i < jobs.Count; i++)
        {
            var (expected, got) = (ours[i].ToArray(), theirs[i].ToArray());
            for (var rule = 0; rule < expected.Length; rule++)
            {
                if (expected[rule] == 0 || expected[rule] != got[rule])
                    differences.Add(
                        $"  {jobs[i].File.Name}, {SixDays.Names[rule]}: Stringline {Words(expected[rule])}, {engine} {Words(
                            got[rule])}\n    {jobs[i].Plain}");
            }
        }

        if (differences.Count > 0)
        {
            throw new DisagreementException(
                $"{engine} and the law library disagree {differences.Count} times in {jobs.Count} jobs:\n{string.Join('\n',
                    differences.Take(Shown))}");
        }
    }

    private static string Words(int day) => day == 0 ? "no day" : LawText.Day(Serial.Day(day));
}

/// <summary>An engine gives another day than the law library.</summary>
internal sealed class DisagreementException(string message) : Exception(message);
