using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>The lists that a field may hold.</summary>
internal sealed partial class Fields
{
    /// <summary>The items of an array with their paths; none where it is absent.</summary>
    public IEnumerable<PlacedPiece> Items(string name)
    {
        if (Raw(name) is not { } value)
            return [];
        if (value.Kind == JsonKind.Array)
            return value.Items.Select((item, i) => new PlacedPiece(item, $"{PathOf(name)}[{i}]"));
        Fault(name, value, "a list in brackets [ ]");
        return [];
    }

    /// <summary>The id of a party; that the party exists, in a capacity that fits, is checked at the end.</summary>
    public string? PartyId(string name, params ReadOnlySpan<PartyCapacity> only)
    {
        var id = Line(name);
        if (id is not null)
            source.PartyIds.Add(new PartyMention(id, Raw(name)!, PathOf(name), only.ToArray()));
        return id;
    }

    /// <summary>A list of at least one party id.</summary>
    public IReadOnlyList<string> RequiredPartyIds(string name)
    {
        const string Meaning = "a list of at least one party id, such as [\"p1\"]";
        if (Present(name, Meaning) is not { } list)
            return [];
        if (list.Kind == JsonKind.Array && list.Items.Count > 0)
            return PartyIds(name);
        Fault(name, list, Meaning);
        return [];
    }

    /// <summary>A list of party ids; empty where it is absent.</summary>
    public IReadOnlyList<string> PartyIds(string name)
    {
        var ids = new List<string>();
        var met = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (item, path) in Listed(name))
        {
            if (item.Kind != JsonKind.Text || item.Text is not { } id)
                source.Faults.Add(item, path, "a party id in quotation marks");
            else if (!met.Add(id))
                source.Faults.Add(item, path, "each party id once");
            else
            {
                ids.Add(id);
                source.PartyIds.Add(new PartyMention(id, item, path, []));
            }
        }

        return ids;
    }

    /// <summary>A list of words of a set, each once, as their places in the table; empty where it is absent.</summary>
    public IReadOnlyList<int> Words(string name, WordTable table)
    {
        var places = new List<int>();
        foreach (var (item, path) in Listed(name))
        {
            if (item.Kind != JsonKind.Text || table.IndexOf(item.Text) is not { } place)
                source.Faults.Add(item, path, () => OneOf(name, table, item.Text));
            else if (places.Contains(place))
                source.Faults.Add(item, path, "each word once");
            else
                places.Add(place);
        }

        return places;
    }

    /// <summary>A list of known days, each once; null where it is absent.</summary>
    public IReadOnlyList<LocalDate>? DayList(string name)
    {
        if (!Has(name))
            return null;
        var days = new List<LocalDate>();
        var met = new HashSet<LocalDate>();
        foreach (var (item, path) in Listed(name))
        {
            if (DayOf(path, item) is not { } day)
                continue;
            if (!met.Add(day))
                source.Faults.Add(item, path, "each day once");
            else
                days.Add(day);
        }

        return days;
    }

    /// <summary>The items of an optional list, in which JSON null counts as absent.</summary>
    public IEnumerable<PlacedPiece> Listed(string name) => Has(name) ? Items(name) : [];
}
