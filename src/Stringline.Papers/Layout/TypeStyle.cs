namespace Stringline.Papers.Layout;

/// <summary>The four faces that are embedded.</summary>
internal enum Face
{
    /// <summary>Noto Serif Regular: recorded papers.</summary>
    Serif,

    /// <summary>Noto Serif Bold.</summary>
    SerifBold,

    /// <summary>Noto Sans Regular: counter sheets.</summary>
    Sans,

    /// <summary>Noto Sans Bold.</summary>
    SansBold,
}

/// <summary>A face at a size.</summary>
/// <param name="Face">The face.</param>
/// <param name="Points">Type size in points.</param>
/// <param name="Pitch">
/// Distance of baselines in points; at least 8, or the recorder charges for penalty print
/// (more than nine lines an inch, Gov. Code § 27361(a)(1)).
/// </param>
internal sealed record TypeStyle(Face Face, double Points, double Pitch)
{
    /// <summary>Body of a recorded paper.</summary>
    public static TypeStyle Body { get; } = new(Face.Serif, 10.5, 14);

    /// <summary>The same in boldface.</summary>
    public static TypeStyle BodyBold { get; } = new(Face.SerifBold, 10.5, 14);

    /// <summary>A statutory notice: never under 10 points (Civ. Code § 8416(a)(8)).</summary>
    public static TypeStyle Notice { get; } = new(Face.SerifBold, 10.5, 14.5);

    /// <summary>Small print that explains a blank.</summary>
    public static TypeStyle Small { get; } = new(Face.Serif, 8.5, 11);

    /// <summary>Title of a recorded paper.</summary>
    public static TypeStyle Title { get; } = new(Face.SerifBold, 16, 20);

    /// <summary>Heading within a recorded paper.</summary>
    public static TypeStyle Heading { get; } = new(Face.SerifBold, 12, 16);

    /// <summary>Running foot of a recorded paper.</summary>
    public static TypeStyle Foot { get; } = new(Face.Serif, 8.5, 11);

    /// <summary>The face at another size, the pitch in the same proportion but never under 8.5 points.</summary>
    public TypeStyle At(double points) => this with { Points = points, Pitch = Math.Max(8.5, Pitch * points / Points) };
}
