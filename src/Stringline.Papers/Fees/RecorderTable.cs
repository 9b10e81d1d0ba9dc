using Stringline.Law.Facts;
using Stringline.Law.Recording;

namespace Stringline.Papers.Fees;

/// <summary>The table of recorders, <c>data/recorders.csv</c>: one fact a row, which the user can edit.</summary>
public static class RecorderTable
{
    private static readonly Lazy<IReadOnlyList<RecorderFact>> Shipped =
        new(() => RecorderRows.Read(Resources.Text("data/recorders.csv")));

    private static readonly Lazy<ILookup<string, RecorderFact>> ByCounty = new(() => Facts.ToLookup(f => f.County));

    /// <summary>All facts that ship with the program.</summary>
    public static IReadOnlyList<RecorderFact> Facts => Shipped.Value;

    /// <summary>The office of a county on a day; without prices where no schedule was read.</summary>
    /// <param name="county">The county.</param>
    /// <param name="on">The day of recording.</param>
    /// <exception cref="ArgumentException">There is no such county.</exception>
    public static RecorderOffice For(string county, LocalDate on)
    {
        var name = Counties.Find(county) ?? throw new ArgumentException($"'{county}' is no county of California.", nameof(county));
        return RecorderOffice.Of(name, [.. ByCounty.Value[name]], [.. ByCounty.Value[RecorderFact.Statewide]], on);
    }

    /// <summary>The office of a job whose county was not told.</summary>
    public static RecorderOffice Unnamed => RecorderOffice.Unnamed([.. ByCounty.Value[RecorderFact.Statewide]]);

    /// <summary>Every office on a day, in the order of the counties.</summary>
    public static IReadOnlyList<RecorderOffice> All(LocalDate on) => [.. Counties.All.Select(c => For(c, on))];

    /// <summary>The same of any table.</summary>
    internal static RecorderOffice Of(IReadOnlyList<RecorderFact> facts, string county, LocalDate on) => RecorderOffice.Of(
        county, [.. facts.Where(f => f.County == county)], [.. ByCounty.Value[RecorderFact.Statewide]], on);
}
