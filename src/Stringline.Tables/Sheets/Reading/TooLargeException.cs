namespace Stringline.Tables.Sheets.Reading;

/// <summary>A table that exceeds a limit or is damaged, told from the depth of its reading; who knows the file's name tells it as a
/// <see cref="SheetException"/>.</summary>
/// <remarks>It is an <see cref="IOException"/>, so that readers which lie between pass it on as a fault of the file.</remarks>
internal sealed class TooLargeException(string found, string expected) : IOException(found)
{
    /// <summary>What is there.</summary>
    public string Found => Message;

    /// <summary>What would be right.</summary>
    public string Expected => expected;
}
