namespace Stringline.FuzzInput;

/// <summary>A kind of content from outside.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Seeds">Good ones, from which the bad are made.</param>
/// <param name="Words">What such content is made of.</param>
/// <param name="Answer">Has one answered; whatever it throws was found.</param>
internal sealed record Target(string Name, Func<IEnumerable<byte[]>> Seeds, Func<IEnumerable<string>> Words, Action<byte[]> Answer)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Target> All { get; } =
        [JobFileTarget.Target, .. TableTargets.All, .. UploadTargets.All, RequestTarget.Target];

    /// <summary>The one of that name.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static Target Named(string name) =>
        All.FirstOrDefault(target => target.Name == name) ?? throw new ArgumentException($"No such target: {name}.", nameof(name));
}
