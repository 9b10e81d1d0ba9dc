using Stringline.Office.Settings;

namespace Stringline.Office.Import;

/// <summary>What the desk offers for a table that has just come in: the office's mapping that fits, and the office's own name.</summary>
internal sealed class TableOffer(Desk office, TableLooks looks)
{
    /// <summary>The table with what is offered for it.</summary>
    /// <param name="state">The table.</param>
    /// <param name="stop">Stops it.</param>
    public ImportState Make(ImportState state, CancellationToken stop)
    {
        var settings = office.Settings;
        state = state with { Choices = new ImportChoices { Claimant = settings.Name } };
        return Fitting(state, settings.Mappings, stop) is { } fits ? state with { Mapping = fits.Json, MappingName = fits.Name } : state;
    }

    // Of several that fit, the one that says most. One that names a sheet which the file has not is of another table.
    private SavedMapping? Fitting(ImportState state, IEnumerable<SavedMapping> mappings, CancellationToken stop)
    {
        SavedMapping? best = null;
        var most = 0;
        foreach (var kept in mappings)
        {
            var mapping = kept.Read();
            if (looks.Of(state, kept.Json, stop).Look is { Unclear: null } look && look.Has(mapping) && mapping.Headers.Count > most)
                (best, most) = (kept, mapping.Headers.Count);
        }

        return best;
    }
}
