using Stringline.Papers.Layout;

namespace Stringline.Papers.Counter;

/// <summary>Type of the sheets for whoever stands at the counter: plain, and large enough to read at arm's length.</summary>
internal static class CounterType
{
    /// <summary>Running text.</summary>
    public static TypeStyle Text { get; } = new(Face.Sans, 10, 13);

    /// <summary>The same in boldface.</summary>
    public static TypeStyle Bold { get; } = new(Face.SansBold, 10, 13);

    /// <summary>Heading of a section.</summary>
    public static TypeStyle Head { get; } = new(Face.SansBold, 12.5, 16);

    /// <summary>Tables and notes.</summary>
    public static TypeStyle Small { get; } = new(Face.Sans, 9, 11.5);

    /// <summary>What must be seen first.</summary>
    public static TypeStyle Large { get; } = new(Face.SansBold, 15, 20);
}
