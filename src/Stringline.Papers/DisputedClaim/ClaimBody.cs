using Stringline.Law.PromptPayment;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.DisputedClaim;

/// <summary>What a claim and a request to present one say alike: what is claimed, for what, and with which documentation.</summary>
internal sealed record ClaimBody
{
    /// <summary>Dollars and cents; null where only time is claimed.</summary>
    public required decimal? Amount { get; init; }

    /// <summary>Days of a time extension; null where only money is claimed.</summary>
    public required int? Days { get; init; }

    /// <summary>For what, and why it is due.</summary>
    public required string? Basis { get; init; }

    /// <summary>The documents enclosed.</summary>
    public required IReadOnlyList<string> Documents { get; init; }

    /// <summary>Dollars and cents that the job file supports, without the retention withheld.</summary>
    public required decimal Reckoned { get; init; }

    /// <summary>Dollars and cents of retention withheld that the claim leaves out.</summary>
    public required decimal Retention { get; init; }

    /// <summary>
    /// Reads it. What is owed is claimed, but for retention, which falls due by a section of its own, unless another sum is told.
    /// </summary>
    public static ClaimBody Of(Matter matter, string documentsAt)
    {
        var owed = matter.Assessment.Owed.Demand;
        var reckoned = MoneyDue.WithoutRetention(matter.Known, owed);
        var days = matter.Options.ExtensionDays;
        List<string> documents = [.. matter.Options.Documents.Select(Clean).OfType<string>()];
        if (documents.Count == 0)
        {
            matter.Refuse("documents-missing", Place.Of(PaperInput.Documents), $"No document is named.",
                $"Name each document that supports the claim and goes with it, such as change orders, invoices, daily logs, payrolls or "
                + $"photographs.", documentsAt);
        }

        return new ClaimBody
        {
            Amount = matter.Options.Amount ?? (days is null ? reckoned : null),
            Days = days,
            Basis = matter.Need(matter.Options.Words, "basis-missing", Place.Of(PaperInput.Words),
                $"Say for what work or event it is claimed, and why it is "
                    + $"due: {new InputTold(PaperInput.Words, "On March 3 ...; the contract ...")}.", documentsAt),
            Documents = documents,
            Reckoned = reckoned,
            Retention = matter.Options.Amount is null && days is null ? MoneyDue.RetentionIn(matter.Known, owed) : 0m,
        };
    }

    /// <summary>Puts it on the paper.</summary>
    public void Put(PaperBuilder leaf, Matter matter, string section)
    {
        if (Amount is { } amount)
            leaf.Field("Payment claimed", TypeStyle.BodyBold, Demand(matter, amount, section));
        if (Days is { } days)
            leaf.Field("Time extension claimed", string.Create(CultureInfo.InvariantCulture, $"{days} {(days == 1 ? "day" : "days")}"));
        leaf.Field("For what, and why it is due", Basis);
        leaf.Field("Documentation enclosed",
            [.. Documents.Select((d, i) => (string?)string.Create(CultureInfo.InvariantCulture, $"({i + 1}) {d}")).DefaultIfEmpty(null)]);
    }

    /// <summary>What the sheet says of the sum.</summary>
    public IEnumerable<string> Cautions()
    {
        if (Amount > Reckoned)
        {
            yield return $"The job file supports {Dollars(Reckoned)} of the {Dollars(Amount.Value)} claimed. The rest must rest on the "
                + "documents enclosed: look them through line by line.";
        }

        if (Retention > 0)
        {
            yield return $"Left out: retention withheld, {Dollars(Retention)}, which falls due by a section of its own. Where the payer "
                + "disputes it, claim it too by its sum.";
        }
    }

    private static string[] Demand(Matter matter, decimal amount, string section)
    {
        if (amount > 0)
            return [Dollars(amount), $"({InWords(amount)})"];
        matter.Refuse("nothing-to-claim", Place.Demand, $"The job file comes to {Dollars(amount)} without the retention withheld.",
            $"Say the sum that is disputed, or the days of a time extension, that you claim.", section);
        return [Dollars(amount)];
    }
}
