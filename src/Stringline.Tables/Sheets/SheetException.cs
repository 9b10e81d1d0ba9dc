namespace Stringline.Tables.Sheets;

/// <summary>A file that cannot be taken at all. Nothing of it was used.</summary>
public sealed class SheetException : Exception
{
    /// <summary>Says why, in the one shape of every refusal.</summary>
    public SheetException(Fault fault)
        : base(fault?.ToString())
    {
        ArgumentNullException.ThrowIfNull(fault);
        Fault = fault;
    }

    /// <summary>Where, what is there, what would be right.</summary>
    public Fault Fault { get; }
}
