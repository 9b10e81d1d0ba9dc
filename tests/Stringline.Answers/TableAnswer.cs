using Stringline.Law.Counting;
using Stringline.Tables.Sheets;
using Stringline.Tables.Sheets.Columns;
using Stringline.Office.Import;
using Stringline.Tables.Sheets.Reading;
using Stringline.Store;

namespace Stringline.Answers;

/// <summary>A table is refused in words, or each of its rows is accounted for, and what was taken stands in the store once.</summary>
public static class TableAnswer
{
    /// <summary>Looks at a table as the desk does, and imports it.</summary>
    /// <param name="path">The table.</param>
    /// <param name="journal">A store; an empty one where the table is written to it.</param>
    /// <param name="isWritten">Whether it is written, or only gone through as if.</param>
    /// <returns>Whether it is one.</returns>
    /// <exception cref="InvalidOperationException">The answer is neither.</exception>
    public static bool Of(string path, IJournal journal, bool isWritten)
    {
        ArgumentNullException.ThrowIfNull(journal);
        try
        {
            var file = new SheetFile(path);
            file.Sheets();
            TableLook.At(file, ColumnMapping.None);
            var first = Import(path, journal, isWritten);
            if (isWritten)
                Stands(path, journal, first);
            return true;
        }
        catch (SheetException refusal)
        {
            Refusal.Check(refusal.Fault);
            return false;
        }
    }

    private static FileReport Import(string path, IJournal journal, bool isWritten)
    {
        var file = new SheetImport(journal, OpenDays.Statutory).Run(SupplierRequest.Of(path) with { DryRun = !isWritten }).Files[0];
        Must.Hold(file.Rows == file.Accounted, $"of {file.Rows} rows {file.Accounted} are accounted for");
        foreach (var row in file.Refused)
            Refusal.Check(row.Why);
        foreach (var row in file.Ignored)
            Refusal.Check(row.As);
        return file;
    }

    // The same table once more: all that was new is there, and nothing comes twice.
    private static void Stands(string path, IJournal journal, FileReport first)
    {
        var check = journal.Check();
        Must.Hold(check.IsWhole, $"the store is not whole: {check}");
        var again = Import(path, journal, isWritten: true);
        Must.Hold(again.New + again.Changed == 0, $"imported again, {again.New} rows are new and {again.Changed} changed");
        Must.Hold(again.Unchanged == first.New + first.Changed + first.Unchanged,
            $"{first.New + first.Changed} rows were written and {again.Unchanged} stand in the store");
        Must.Hold(journal.Check().Seal == check.Seal, "imported again, the store is another");
    }
}
