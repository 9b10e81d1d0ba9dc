using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>
/// Priced work of the file that goes on after the day of the paper. The law counts it whole, since nobody says how its price is split; a
/// paper that demands money for what was provided says so, or leaves it out (Civ. Code §§ 8416(a)(1), 8502(c), 8800, 9352(c)).
/// </summary>
internal static class WorkAhead
{
    /// <summary>Its entries.</summary>
    public static IReadOnlyList<Furnished> In(Matter matter) =>
        [.. matter.Known.Furnished.Where(f => f is { Amount: > 0 } && f.Until.Latest > matter.AsOf)];

    /// <summary>What is owed for the work that had ended by the day of the paper.</summary>
    public static Waterfall OwedWithout(Matter matter, IReadOnlyList<Furnished> ahead) => ahead.Count == 0 ? matter.Assessment.Owed
        : matter.Assessment.Supposing(job => job with
        {
            Entries = [.. job.Entries.Select(e => e is Furnished f && ahead.Contains(f) ? f with { Amount = 0m } : e)],
        }).Owed;

    /// <summary>What it is, for a sheet: each sum with its days.</summary>
    public static string Words(IReadOnlyList<Furnished> ahead) => string.Join("; ", ahead.Select(f =>
        $"{Dollars(f.Amount!.Value)} for work {(f.On.Latest is { } from ? $"from {Day(from)} " : "")}through "
            + $"{Day(f.Until.Latest!.Value)}"));

    /// <summary>What a paper leaves out of its amount, for the sheet; nothing where there is none.</summary>
    /// <param name="matter">The matter.</param>
    /// <param name="ahead">The entries.</param>
    /// <param name="amount">What the paper calls the amount.</param>
    public static IEnumerable<string> LeftOut(Matter matter, IReadOnlyList<Furnished> ahead, string amount)
    {
        if (ahead.Count > 0)
        {
            yield return $"Left out of {amount}: {Words(ahead)}, which goes on after {Day(matter.AsOf)}. Enter what was provided so far as "
                + "an entry of its own to count it.";
        }
    }

    /// <summary>The warning of a paper whose amount counts it whole; nothing where there is none.</summary>
    /// <param name="matter">The matter.</param>
    /// <param name="amount">What the paper calls the amount.</param>
    public static IEnumerable<string> Counted(Matter matter, string amount = "The amount claimed")
    {
        if (In(matter) is { Count: > 0 } ahead)
        {
            yield return $"{amount} counts {Words(ahead)} whole, though on {Day(matter.AsOf)} part of it is still to be provided. Enter "
                + "what was provided so far as an entry of its own, and make the paper again.";
        }
    }
}
