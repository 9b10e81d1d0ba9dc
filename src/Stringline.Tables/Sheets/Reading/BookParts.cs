using System.Globalization;
namespace Stringline.Tables.Sheets.Reading;

/// <summary>Which part of a workbook each of its sheets lies in, as the reader finds it (ECMA-376 part 1, § 12.3.24 and 18.2.19).</summary>
internal sealed class BookParts
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Documents = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private readonly List<(string Name, string Relation)> sheets = [];
    private readonly Dictionary<string, string> targets = new(StringComparer.Ordinal);

    /// <summary>Reads the list of sheets.</summary>
    public void Sheets(Stream part) => ListCheck.Read(part, reader =>
    {
        if (reader.Depth == 0 && (reader.LocalName != "workbook" || reader.NamespaceURI != Main))
            throw new InvalidDataException("its list of sheets is of another kind, such as Strict Open XML");
        if (reader.LocalName != "sheet" || reader.Depth != 2)
            return;
        sheets.Add((reader.GetAttribute("name") ?? "", reader.GetAttribute("id", Documents) ?? ""));
        if (sheets.Count > TableLimits.MostSheets)
            throw new TooLargeException("a workbook with hundreds of sheets",
                string.Create(CultureInfo.InvariantCulture, $"at most {TableLimits.MostSheets}; or save the sheet as CSV"));
    });

    /// <summary>Reads the list of relations.</summary>
    public void Relations(Stream part) => ListCheck.Read(part, reader =>
    {
        if (reader.LocalName == "Relationship" && reader.GetAttribute("Id") is { } id && !targets.TryAdd(id,
            reader.GetAttribute("Target") ?? ""))
            throw new InvalidDataException($"two of its relations are called \"{id}\"");
    });

    /// <summary>Each sheet with its part.</summary>
    /// <exception cref="InvalidDataException">A sheet has none, or two have the same.</exception>
    public IEnumerable<(string Sheet, string Part)> Parts()
    {
        var met = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var (name, relation) in sheets)
        {
            if (!targets.TryGetValue(relation, out var target) || target.Length == 0)
                throw new InvalidDataException($"nothing says where the sheet \"{name}\" lies");
            var part = target.StartsWith("/xl/", StringComparison.OrdinalIgnoreCase) ? target[1..] : "xl/" + target;
            if (!met.Add(part))
                throw new InvalidDataException($"the sheet \"{name}\" is another sheet too");
            yield return (name, part);
        }
    }
}
