namespace Stringline.Law.Facts;

/// <summary>How the search finds a text of an entry.</summary>
/// <param name="heading">Under which heading.</param>
/// <param name="isNumber">Whether it is a number, found also where it is typed without the marks that part it.</param>
public sealed class SearchedAs(string heading, bool isNumber)
{
    /// <summary>Under which heading.</summary>
    public string Heading { get; } = heading;

    /// <summary>Whether it is a number, found also where it is typed without the marks that part it.</summary>
    public bool IsNumber { get; } = isNumber;
}
