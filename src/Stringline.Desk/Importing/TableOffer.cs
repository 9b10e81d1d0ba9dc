using Stringline.Desk.Settings;
using Stringline.Desk.Web;
using Stringline.Spreadsheets;
using Stringline.Spreadsheets.Columns;
using Stringline.Spreadsheets.Reading;

namespace Stringline.Desk.Importing;

/// <summary>What the desk offers for a table that has just come in: the office's mapping that fits, and the office's own name.</summary>
internal sealed class TableOffer(Office office, WaitingTables tables)
{
    /// <summary>The table with what is offered for it.</summary>
    public ImportState Make(ImportState state)
    {
        var settings = office.Settings;
        state = state with { Choices = new ImportChoices { Claimant = settings.Name } };
        return Fitting(tables.PathOf(state), settings.Mappings) is { } fits ? state with { Mapping = fits.Json, MappingName = fits.Name } : state;
    }

    // Of several that fit, the one that says most.
    private static SavedMapping? Fitting(string path, IEnumerable<SavedMapping> mappings)
    {
        SavedMapping? best = null;
        var most = 0;
        foreach (var kept in mappings)
        {
            try
            {
                var mapping = kept.Read();
                var look = TableLook.At(new SheetFile(path, mapping.Sheet), mapping);
                if (look.Unclear is null && look.Has(mapping) && mapping.Headers.Count > most)
                    (best, most) = (kept, mapping.Headers.Count);
            }
            catch (SheetException)
            {
                // The file has no such sheet: this mapping is of another table.
            }
        }

        return best;
    }
}
