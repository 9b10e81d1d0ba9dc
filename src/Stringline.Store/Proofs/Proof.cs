using System.Globalization;
namespace Stringline.Store;

/// <summary>What kind of file a proof is.</summary>
public enum ProofKind
{
    /// <summary>A PDF document.</summary>
    Pdf,

    /// <summary>A JPEG picture.</summary>
    Jpeg,

    /// <summary>A PNG picture.</summary>
    Png,
}

/// <summary>
/// A paper that proves an entry, such as a mail receipt or a conformed copy: recognised by its content, never by its name.
/// </summary>
public sealed record Proof
{
    private Proof(string name, ProofKind kind, ReadOnlyMemory<byte> content, ContentHash hash) =>
        (Name, Kind, Content, Hash) = (name, kind, content, hash);

    /// <summary>The largest file taken, in bytes: 20 MiB, a long scan in color.</summary>
    public const int LargestFile = 20 * 1024 * 1024;

    /// <summary>The name under which it is attached, one line.</summary>
    public string Name { get; }

    /// <summary>What kind of file it is.</summary>
    public ProofKind Kind { get; }

    /// <summary>The file.</summary>
    public ReadOnlyMemory<byte> Content { get; }

    /// <summary>Hash of the file.</summary>
    public ContentHash Hash { get; }

    /// <summary>Takes a file as a proof.</summary>
    /// <param name="name">The name under which it is attached; folders before it are left out.</param>
    /// <param name="content">The file. It is not copied: the caller leaves it as it is from now on.</param>
    public static ProofResult Of(string name, ReadOnlyMemory<byte> content)
    {
        ArgumentNullException.ThrowIfNull(name);
        var plain = name[(name.LastIndexOfAny(['/', '\\']) + 1)..];
        if (Names.Fault(plain) is { } fault)
            return new ProofResult.Refused(new(name, "", "a file name that cannot be kept", fault));
        if (content.Length > LargestFile)
            return new ProofResult.Refused(
                new(name, "", string.Create(CultureInfo.InvariantCulture, $"a file of {content.Length:N0} bytes"),
                    string.Create(CultureInfo.InvariantCulture, $"at most {LargestFile:N0} bytes (20 MiB)")));
        return ProofKinds.Recognise(content.Span) is { } kind
            ? new ProofResult.Taken(new Proof(plain, kind, content, ContentHash.Of(content.Span)))
            : new ProofResult.Refused(new(name, "", ProofKinds.Describe(content.Span), "a whole PDF, JPEG or PNG file"));
    }
}
