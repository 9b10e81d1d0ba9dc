namespace Stringline.Tables;

/// <summary>One thing that is wrong with a file: where, what is there, what would be right.</summary>
/// <param name="File">The file's name as the user gave it.</param>
/// <param name="Path">The JSON path, such as <c>entries[3].on</c>; a line and column where the text is not JSON; empty where the file as a
/// whole is meant.</param>
/// <param name="Found">What is there: an excerpt, or words.</param>
/// <param name="Expected">What would be right.</param>
/// <remarks>
/// Much of it may come from the file, so whatever a terminal would obey, or nobody could see, is spelled out, as <c>\u202E</c>.
/// </remarks>
public sealed record Fault(string File, string Path, string Found, string Expected)
{
    /// <inheritdoc cref="Fault"/>
    public string Path { get; init; } = Signs.Spelled(Path);

    /// <inheritdoc cref="Fault"/>
    public string Found { get; init; } = Signs.Spelled(Found);

    /// <inheritdoc cref="Fault"/>
    public string Expected { get; init; } = Signs.Spelled(Expected);

    /// <summary>The one printed shape of a fault, three lines without a line end at the close.</summary>
    public override string ToString() =>
        Signs.Spelled(Path.Length == 0 ? File : $"{File}: {Path}") + $"\n  is:        {Found}\n  should be: {Expected}";
}
