using Stringline.Law.Facts;

namespace Stringline.Law.Reasoning;

/// <summary>What an assessment takes for granted, said aloud.</summary>
public static class Assumptions
{
    /// <summary>The day on which the sections used here came into force.</summary>
    private static readonly LocalDate InForce = new(2012, 7, 1);

    /// <summary>The finding <c>assumptions</c>; null where nothing is assumed.</summary>
    public static Finding? Of(FactsAsOf facts)
    {
        var why = new List<Reason>();
        var kind = facts.Job.Work.Kind;
        if (facts.LeftOut.Count > 0)
            why.Add(Reason.Of("",
                $"{Entries(facts.LeftOut.Count, "begins", "begin")} after {facts.AsOf} and {(facts.LeftOut.Count == 1
                    ? "is left out, as it was" : "are left out, as they were")} not known then.", [.. facts.LeftOut]));
        var (before, unknown, noPrice) = (false, false, false);
        for (var i = 0; i < facts.Known.Count; i++)
        {
            before |= facts.Known[i].On.Earliest < InForce;
            unknown |= facts.Known[i].On is DayFact.Unknown;
            noPrice |= facts.Known[i] is Furnished { Amount: null };
        }

        if (kind != WorkKind.Federal && before)
            why.Add(Reason.Of("Stats. 2010 ch. 697", $"Some facts are older than {InForce}, when the sections used here came into force; "
                + $"they are assessed under today's sections."));
        Entry[] undated = unknown ? [.. facts.Known.Where(static e => e.On is DayFact.Unknown)] : [];
        if (undated.Length > 0)
            why.Add(Reason.Of("",
                $"{Entries(undated.Length, "has", "have")} no known day; {(undated.Length == 1 ? "it is" : "they are")} counted on the "
                    + $"safer side.", undated));
        if (facts.Job.Contract.Price is not null && facts.HasFurnished && facts.Furnished.All(f => f.Amount is null))
            why.Add(Reason.Of(ValueSection(kind), $"Nothing furnished is priced in the file; once the claimant has ceased to provide work "
                + $"the whole price, with its agreed changes, is taken as the value of it."));
        Furnished[] unpriced = noPrice ? [.. facts.Furnished.Where(static f => f.Amount is null)] : [];
        if (unpriced.Length > 0 && unpriced.Length < facts.Furnished.Count)
            why.Add(Reason.Of(ValueSection(kind),
                $"{unpriced.Length} furnished {(unpriced.Length == 1
                    ? "item has no price and counts" : "items have no price and count")} for nothing.", unpriced));
        if (facts.LenderUnknown)
            why.Add(Reason.Of(facts.HiredByOwner
                ? "Civ. Code § 8200(e)(2)"
                : "Civ. Code § 8200(a)(3)", $"The file names no construction lender; it is assumed that there is none."));
        if (kind == WorkKind.Private && facts.Job.Work.Use is null)
            why.Add(Reason.Of("Civ. Code § 8190(d)(1)", $"The file does not say whether the owner lives there; a copy of the owner's "
                + $"notice is taken to be due."));
        return why.Count == 0 ? null : new Finding
        {
            Id = "assumptions",
            Title = "Taken for granted",
            Standing = Standing.Open,
            Why = why,
            Questions = undated.Length == 0
                ? [] : [.. undated.Select(static e =>
                    new Question($"On which day was it? An entry without one is counted on the safer side.") { Corrects = e })],
        };
    }

    private static string Entries(int count, string one, string several) => count == 1 ? $"1 entry {one}" : $"{count} entries {several}";

    // What the work is worth to a claim, by the kind of work: none of the private sections governs public work, none of the Code federal
    // work.
    private static string ValueSection(WorkKind kind) => kind switch
    {
        WorkKind.Private => "Civ. Code § 8430(a)",
        WorkKind.Public => "Civ. Code § 9352(c)",
        WorkKind.Federal => "40 U.S.C. § 3133(b)(1)",
        _ => throw new InvalidOperationException($"No such kind of work: {kind}."),
    };
}
