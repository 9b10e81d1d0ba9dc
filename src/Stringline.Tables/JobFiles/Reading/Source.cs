using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>A place in the file that names something defined elsewhere in it.</summary>
/// <param name="Name">The name.</param>
/// <param name="Piece">Where it stands.</param>
/// <param name="Path">Its path.</param>
internal record Mention(string Name, JsonPiece Piece, string Path);

/// <summary>A ref given to work or a charge.</summary>
/// <param name="Name">The ref.</param>
/// <param name="Piece">Where it stands.</param>
/// <param name="Path">Its path.</param>
/// <param name="Entry">The id of its entry; where it has none, its path.</param>
internal sealed record RefMention(string Name, JsonPiece Piece, string Path, string Entry) : Mention(Name, Piece, Path);

/// <summary>A party named by its id.</summary>
/// <param name="Name">The id.</param>
/// <param name="Piece">Where it stands.</param>
/// <param name="Path">Its path.</param>
/// <param name="Only">The capacities in which the party must be; empty where any will do.</param>
internal sealed record PartyMention(string Name, JsonPiece Piece, string Path, PartyCapacity[] Only) : Mention(Name, Piece, Path);

/// <summary>An entry named by another for what it says.</summary>
/// <param name="Name">The id.</param>
/// <param name="Piece">Where it stands.</param>
/// <param name="Path">Its path.</param>
/// <param name="What">The kind that the entry named must be of.</param>
/// <param name="Entry">The entry that names it, as in <see cref="RefMention.Entry"/>.</param>
internal sealed record EntryMention(string Name, JsonPiece Piece, string Path, string What, string Entry) : Mention(Name, Piece, Path);

/// <summary>What one reading of a file gathers on its way: faults, and names to be checked when everything is read.</summary>
/// <param name="faults">Where the faults go.</param>
/// <param name="isNew">Whether what stands at an offset comes in now; what a journal holds already is read by the rule of its day.</param>
internal sealed class Source(FaultList faults, Func<int, bool> isNew)
{
    /// <summary>Whether a value comes in now, and must follow the rule of today.</summary>
    public bool IsNew(JsonPiece piece) => isNew(piece.Start);

    /// <summary>The faults so far.</summary>
    public FaultList Faults { get; } = faults;

    /// <summary>Mentions of party ids.</summary>
    public List<PartyMention> PartyIds { get; } = [];

    /// <summary>Mentions of refs by payments.</summary>
    public List<Mention> Towards { get; } = [];

    /// <summary>Refs given to work and charges.</summary>
    public List<RefMention> Refs { get; } = [];

    /// <summary>Ids given to entries.</summary>
    public List<Mention> EntryIds { get; } = [];

    /// <summary>Mentions of entry ids by entries that replace them.</summary>
    public List<Mention> Superseded { get; } = [];

    /// <summary>By the id of an entry, the id of the one it replaces.</summary>
    public Dictionary<string, string> Replacements { get; } = [];

    /// <summary>Mentions of entries by entries that say something of them.</summary>
    public List<EntryMention> Entries { get; } = [];

    /// <summary>By the id of an entry, its kind.</summary>
    public Dictionary<string, string> Kinds { get; } = [];

    /// <summary>Mentions of residential structures.</summary>
    public List<Mention> Structures { get; } = [];

    /// <summary>Of what kind the work is; null where that could not be read.</summary>
    public WorkKind? Work { get; set; }
}
