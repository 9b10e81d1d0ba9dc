using Stringline.Law.Reasoning;

namespace Stringline.Tables.Sheets;

/// <summary>A file that cannot be taken at all. Nothing of it was used.</summary>
public sealed class SheetException : Exception
{
    /// <summary>Says why, in the one shape of every refusal.</summary>
    public SheetException(Fault fault)
        : base(fault?.ToString())
    {
        ArgumentNullException.ThrowIfNull(fault);
        (Fault, Found, Expected) = (fault, fault.Found, fault.Expected);
    }

    /// <summary>The same, in sentences that each door says in its own words.</summary>
    public SheetException(string file, string path, Sentence found, Sentence expected)
        : this(new Fault(file, path, $"{found}", $"{expected}")) => (Found, Expected) = (found, expected);

    /// <summary>Where, what is there, what would be right.</summary>
    public Fault Fault { get; }

    /// <summary>What is there.</summary>
    public Sentence Found { get; }

    /// <summary>What would be right.</summary>
    public Sentence Expected { get; }
}
