using Stringline.Law.Completion;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>How the demand is divided over several works (Civ. Code § 8446(b)).</summary>
public static class AmountByStructure
{
    private const string Section = "Civ. Code § 8446(b)";

    /// <summary>
    /// The finding <c>claim-of-lien.by-structure</c>; null on a single work, or where nothing is demanded. A claim that does not designate
    /// the amount due for each work ranks behind other liens; for a lump sum an equitable division by the share of work will do.
    /// </summary>
    [Rule(Section)]
    public static Finding? Finding(FactsAsOf facts, decimal demand)
    {
        var work = facts.Job.Work;
        if (!Structures.AreSeveral(work) || demand <= 0)
            return null;
        var claims = facts.All<ClaimRecorded>();
        var named = claims.Count > 0 && claims.All(c => c.Structure is not null);
        var shares = work.Structures.Count >= 2 && work.Structures.All(s => s.Share is not null)
            ? work.Structures.Sum(s => s.Share!.Value) : (decimal?)null;
        var why = new List<Reason>
        {
            Reason.Of(Section, $"The work is of several residential structures, each a work of its own (Civ. Code § 8448). Record a claim "
                + $"on each, or one claim that designates the amount due for each; without that the lien is subordinate to other liens."),
        };
        foreach (var structure in work.Structures)
        {
            Furnished[] into = [.. facts.Furnished.Where(f => f.Structure == structure.Id)];
            if (into.Length > 0)
                why.Add(Reason.Of("Civ. Code § 8448(b)(2)",
                    $"Furnished into {Structures.Words(work, structure.Id)}: {Total.Of(into, f => f.Amount ?? 0)}.", into));
        }

        if (shares is { } sum)
            why.Add(Reason.Of(Section, sum == demand
                ? (Sentence)$"The shares of the structures add up to the demand, {demand}."
                : $"The shares of the structures add up to {sum}, and the demand is {demand}."));
        var settled = shares is { } divided ? divided == demand : named;
        return new Finding
        {
            Id = "claim-of-lien.by-structure",
            Title = "Claim of lien: amount due for each structure",
            Standing = settled ? Standing.Kept : Standing.InDoubt,
            Amount = demand,
            Why = why,
            Questions = settled
                ? [] : [new Question($"How much is due for each structure? For a lump sum divide it by the share of the work in "
                    + $"each.{HeadField.WorkStructures:aside}", Dollars: demand)],
        };
    }
}
