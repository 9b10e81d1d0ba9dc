using System.Data.Common;

namespace Stringline.Store.Sql;

/// <summary>A row that holds what no row of this program holds: nothing where something must be, a text where a number must be.</summary>
internal sealed class DamagedRow(string message, Exception? cause = null) : DbException(message, cause)
{
    /// <summary>Whether this came of reading what is not there or of another kind.</summary>
    public static bool Is(Exception error) =>
        error is InvalidCastException or InvalidOperationException or FormatException or OverflowException or ArgumentException
            or NullReferenceException;
}
