using Stringline.Tables.Sheets;
using Stringline.Tables.Sheets.Columns;
using Stringline.Tables.Sheets.Reading;

namespace Stringline.Office.Import;

/// <summary>What a first look at a waiting table shows.</summary>
/// <param name="Sheets">The sheets of a workbook; none of a file of text.</param>
/// <param name="Look">How it would be read; null where it is no table.</param>
/// <param name="Refusal">Why it is no table; null where it is one.</param>
internal sealed record FirstLook(IReadOnlyList<string> Sheets, TableLook? Look, SheetException? Refusal);

/// <summary>
/// Looks at waiting tables, once for each way of reading it and not at every visit of its page; one at a time, so that the memory of
/// several does not add up; and marked while it looks, so that a table which ends the desk is known by its mark.
/// </summary>
/// <param name="tables">The waiting tables.</param>
/// <param name="closing">Told when the desk is closed.</param>
internal sealed class TableLooks(WaitingTables tables, CancellationToken closing) : IDisposable
{
    private const int MostKept = 40;

    private readonly SemaphoreSlim one = new(1, 1);
    private readonly LinkedList<((string Id, string Mapping) Key, FirstLook Look)> kept = new();
    private long read;

    /// <summary>How many times a table was read.</summary>
    public long Read => Interlocked.Read(ref read);

    /// <summary>The look.</summary>
    /// <param name="state">The table.</param>
    /// <param name="mapping">What was said of its columns, as <see cref="MappingJson"/> writes it; null for nothing.</param>
    /// <param name="stop">Stops it; it stops when the desk is closed too.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public FirstLook Of(ImportState state, string? mapping, CancellationToken stop)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(stop, closing);
        one.Wait(either.Token);
        try
        {
            var key = (state.Id, mapping ?? "");
            if (kept.FirstOrDefault(look => look.Key == key).Look is { } known)
                return known;
            using var mark = tables.Mark(state);
            Interlocked.Increment(ref read);
            var found = Look(tables.PathOf(state), state.File, mapping, either.Token);
            kept.AddLast((key, found));
            if (kept.Count > MostKept)
                kept.RemoveFirst();
            return found;
        }
        finally
        {
            one.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => one.Dispose();

    private static FirstLook Look(string path, string file, string? json, CancellationToken stop)
    {
        IReadOnlyList<string> sheets = [];
        try
        {
            var mapping = json is null ? ColumnMapping.None : MappingJson.Read(System.Text.Encoding.UTF8.GetBytes(json), file);
            var table = new SheetFile(path, mapping.Sheet, stop);
            sheets = table.Sheets();
            return new FirstLook(sheets, TableLook.At(table, mapping), null);
        }
        catch (SheetException refusal)
        {
            return new FirstLook(sheets, null, refusal);
        }
    }
}
