namespace Stringline.Office.Entering;

/// <summary>What is wrong with a form, by field; under the empty name what belongs to none.</summary>
internal sealed class Faults
{
    private readonly Dictionary<string, string> byField = new(StringComparer.Ordinal);

    /// <summary>Whether nothing is.</summary>
    public bool None => byField.Count == 0;

    /// <summary>What belongs to no field; null where nothing does.</summary>
    public string? Whole => Of("");

    /// <summary>Whether something is wrong beside a field.</summary>
    public bool AnyBesideFields => byField.Keys.Any(name => name.Length > 0);

    /// <summary>What is wrong with a field; null where nothing is.</summary>
    public string? Of(string field) => byField.GetValueOrDefault(field);

    /// <summary>Every fault with its field.</summary>
    public IEnumerable<(string Field, string Text)> All => byField.Select(pair => (pair.Key, pair.Value));

    /// <summary>Takes note of all that another holds.</summary>
    public void AddAll(Faults others)
    {
        foreach (var (field, text) in others.All)
            Add(field, text);
    }

    /// <summary>Takes note; of several faults of one field the first stays, for the whole form all do.</summary>
    public void Add(string field, string text)
    {
        if (!byField.TryAdd(field, text) && field.Length == 0)
            byField[field] += " " + text;
    }
}
