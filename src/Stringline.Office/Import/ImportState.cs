using System.Text.Json.Serialization;
using Stringline.Tables.Sheets.Columns;

namespace Stringline.Office.Import;

/// <summary>How far a table that was given to the desk has come.</summary>
internal enum ImportStep
{
    /// <summary>It waits: how it is to be read is being settled.</summary>
    Received,

    /// <summary>It is being read to see what would happen; nothing is written.</summary>
    Looking,

    /// <summary>What would happen was shown; nothing is written.</summary>
    Looked,

    /// <summary>It is being written, in one transaction.</summary>
    Writing,

    /// <summary>It was written.</summary>
    Written,

    /// <summary>Writing was begun, and the program ended before it could say whether it was done.</summary>
    Broken,

    /// <summary>A program ended while it was reading this table; nothing reads it until a person says so.</summary>
    SetAside,
}

/// <summary>
/// A table that was given to the desk. It lies as one JSON document beside the table, so that it is found again when the desk is opened
/// anew.
/// </summary>
internal sealed record ImportState
{
    /// <summary>Its name in addresses: 32 hexadecimal digits.</summary>
    public required string Id { get; init; }

    /// <summary>The file's name, made safe, with the ending that its content has.</summary>
    public required string File { get; init; }

    /// <summary>Its length in bytes.</summary>
    public required long Bytes { get; init; }

    /// <summary>About how many rows it has: the line ends of a CSV file; 0 where nobody knows.</summary>
    public long AboutRows { get; init; }

    /// <summary>When it was received, as ISO 8601.</summary>
    public required string Received { get; init; }

    /// <summary>How far it has come.</summary>
    public ImportStep Step { get; init; }

    /// <summary>How it is to be read, as <see cref="MappingJson"/> writes it; null: by the words of its headers.</summary>
    public string? Mapping { get; init; }

    /// <summary>The office's mapping by which it is read; null where it is none of them.</summary>
    public string? MappingName { get; init; }

    /// <summary>What the table does not say of jobs that are new.</summary>
    public ImportChoices Choices { get; init; } = new();

    /// <summary>What the last look or writing found.</summary>
    public ImportSummary? Told { get; init; }

    /// <summary>Why the last look or writing stopped; null where it went well.</summary>
    public string? Trouble { get; init; }

    /// <summary>Whether a writing of it was broken off and has not been looked at since.</summary>
    public bool WasBroken { get; init; }

    /// <summary>Whether it is being worked on.</summary>
    [JsonIgnore]
    public bool IsRunning => Step is ImportStep.Looking or ImportStep.Writing;
}

/// <summary>How what waits is written as JSON.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true)]
[JsonSerializable(typeof(ImportState))]
[JsonSerializable(typeof(ToldProgress))]
internal sealed partial class ImportJson : JsonSerializerContext;
