using System.Text;
using Stringline.Tables.Sheets.Columns;

namespace Stringline.Office.Settings;

/// <summary>How tables of one accounting system are read, kept under a name for the whole office.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Json">The mapping, as the command line takes it.</param>
internal sealed record SavedMapping(string Name, string Json)
{
    /// <summary>The longest name.</summary>
    public const int LongestName = 60;

    /// <summary>How many an office keeps at most.</summary>
    public const int Most = 50;

    /// <summary>The mapping.</summary>
    /// <exception cref="Tables.Sheets.SheetException">What is kept is none.</exception>
    public ColumnMapping Read() => MappingJson.Read(Encoding.UTF8.GetBytes(Json), Name);
}
