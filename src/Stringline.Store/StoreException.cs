namespace Stringline.Store;

/// <summary>Why a store cannot be used.</summary>
public enum StoreFault
{
    /// <summary>It is not there.</summary>
    Missing,

    /// <summary>Something is there already that would be written over.</summary>
    Exists,

    /// <summary>It is something else than a store of this program.</summary>
    NotAStore,

    /// <summary>A later version of this program made it.</summary>
    TooNew,

    /// <summary>An earlier version of this program made it, and it was to be read only.</summary>
    EarlierVersion,

    /// <summary>The disk is full.</summary>
    Full,

    /// <summary>It may only be read.</summary>
    ReadOnly,

    /// <summary>It may not be opened, or not with this name and password.</summary>
    NotAllowed,

    /// <summary>Others held it for too long.</summary>
    Busy,

    /// <summary>The server does not answer.</summary>
    Unreachable,

    /// <summary>What it holds is damaged.</summary>
    Damaged,

    /// <summary>The clock of this computer is out of all range.</summary>
    Clock,

    /// <summary>It was moved, deleted or replaced while it was open.</summary>
    Replaced,

    /// <summary>The disk or the database failed in another way.</summary>
    Failed,
}

/// <summary>A store cannot be used. Whatever was being written is not in it, unless <see cref="MaybeWritten"/>.</summary>
/// <param name="fault">Why.</param>
/// <param name="store">The store as the user named it.</param>
/// <param name="found">What is wrong.</param>
/// <param name="expected">What would be right.</param>
/// <param name="cause">What the database said; null where the program itself saw it.</param>
public sealed class StoreException(StoreFault fault, string store, string found, string expected, Exception? cause = null)
    : Exception($"{store}\n  is:        {found}\n  should be: {expected}", cause)
{
    internal const string WholeOne =
        "a whole one: `stringline store check` says what is damaged; what is derived is mended by `stringline assess --all --anew`, "
            + "anything else by the last backup that is whole";

    /// <summary>Why.</summary>
    public StoreFault Fault { get; } = fault;

    /// <summary>Whether it failed while the store was told to keep what was written: then only the store knows whether it did.</summary>
    public bool MaybeWritten { get; internal init; }

    internal StoreException WhileKeeping(string store) =>
        new(Fault, store, found, expected + "; look whether it was written before it is written again", this) { MaybeWritten = true };
}
