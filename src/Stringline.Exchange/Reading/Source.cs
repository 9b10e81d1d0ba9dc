namespace Stringline.Exchange.Reading;

/// <summary>A place in the file that names something defined elsewhere in it.</summary>
/// <param name="Name">The name.</param>
/// <param name="Piece">Where it stands.</param>
/// <param name="Path">Its path.</param>
internal sealed record Mention(string Name, JsonPiece Piece, string Path);

/// <summary>What one reading of a file gathers on its way: faults, and names to be checked when everything is read.</summary>
internal sealed class Source(FaultList faults)
{
    /// <summary>The faults so far.</summary>
    public FaultList Faults { get; } = faults;

    /// <summary>Mentions of party ids.</summary>
    public List<Mention> PartyIds { get; } = [];

    /// <summary>Mentions of refs by payments.</summary>
    public List<Mention> Towards { get; } = [];

    /// <summary>Refs given to work and charges.</summary>
    public List<Mention> Refs { get; } = [];
}
