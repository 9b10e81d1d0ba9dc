using Stringline.Papers.Catalogue;

namespace Stringline.Web.Papers;

/// <summary>A paper as it is asked for on the web: the paper, what was told with it, and whether its effect was confirmed.</summary>
internal sealed record PaperRequest
{
    /// <summary>The paper.</summary>
    public required Paper Paper { get; init; }

    /// <summary>What was told.</summary>
    public required PaperOptions Options { get; init; }

    /// <summary>What is wrong with what was typed, by the name of the field.</summary>
    public required IReadOnlyDictionary<string, string> Faults { get; init; }

    /// <summary>What was typed, for the form and for the addresses of the files.</summary>
    public required IReadOnlyDictionary<string, IReadOnlyList<string>> Typed { get; init; }

    /// <summary>
    /// Whether the paper gives up rights the moment it is signed, paid or not, and so is made only when that was confirmed.
    /// </summary>
    public bool GivesUpRights => Paper.GivesUpAtOnce is not null;

    /// <summary>Whether that was confirmed, with the day the payment cleared.</summary>
    public bool IsConfirmed => Typed.ContainsKey("confirmed") && Options.PaymentCleared is not null;

    /// <summary>Whether it may be made at all: nothing typed is wrong, and what must be confirmed is.</summary>
    public bool MayBeMade => Faults.Count == 0 && (!GivesUpRights || IsConfirmed || Options.Draft);

    /// <summary>Reads a request from an address.</summary>
    public static PaperRequest Read(Paper paper, IQueryCollection query)
    {
        var options = PaperOptions.None;
        var faults = new Dictionary<string, string>(StringComparer.Ordinal);
        var typed = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);
        foreach (var field in paper.Asks.Select(PaperField.Of))
        {
            List<string> values = [.. query[field.Name].OfType<string>().Where(value => !string.IsNullOrWhiteSpace(value))];
            if (values.Count == 0)
                continue;
            typed[field.Name] = values;
            options = field.Take(values, options, out var fault);
            if (fault is not null)
                faults[field.Name] = fault;
        }

        foreach (var tick in (string[])["draft", "confirmed"])
        {
            if (query.ContainsKey(tick))
                typed[tick] = ["yes"];
        }

        return new PaperRequest { Paper = paper, Options = options with { Draft = typed.ContainsKey("draft") }, Faults = faults,
            Typed = typed };
    }

    /// <summary>The request as the query of an address, with the change of the job it was answered from.</summary>
    public string Query(long sequence)
    {
        var query = new QueryString();
        foreach (var (name, values) in Typed.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            foreach (var value in values)
                query = query.Add(name, value);
        }

        return query.Add("at", sequence.ToString(System.Globalization.CultureInfo.InvariantCulture)).ToString();
    }
}
