namespace Stringline.Exchange;

/// <summary>One thing that is wrong with a file: where, what is there, what would be right.</summary>
/// <param name="File">The file's name as the user gave it.</param>
/// <param name="Path">The JSON path, such as <c>entries[3].on</c>; a line and column where the text is not JSON; empty where the file as a whole is meant.</param>
/// <param name="Found">What is there: an excerpt, or words.</param>
/// <param name="Expected">What would be right.</param>
public sealed record Fault(string File, string Path, string Found, string Expected)
{
    /// <summary>The one printed shape of a fault, three lines without a line end at the close.</summary>
    public override string ToString() =>
        (Path.Length == 0 ? File : $"{File}: {Path}") + $"\n  is:        {Found}\n  should be: {Expected}";
}
