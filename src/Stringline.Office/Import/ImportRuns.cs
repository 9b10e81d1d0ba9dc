using Stringline.Office.Portfolio;
using Microsoft.Extensions.Logging;
using Stringline.Law.Counting;
using Stringline.Tables.Sheets;
using Stringline.Tables.Sheets.Columns;
using Stringline.Store;

namespace Stringline.Office.Import;

/// <summary>
/// Works on one table at a time for a store: looks, or writes in one transaction. It goes on when the page is left, and stops with the
/// desk.
/// </summary>
internal sealed class ImportRuns(IJournal journal, DeskOptions options, WaitingTables tables, PortfolioRefresh refresh, DeskDay day,
    ILogger<ImportRuns> log)
    : IBackgroundWork, IDisposable
{
    private static readonly Action<ILogger, string, Exception?> Failed =
        LoggerMessage.Define<string>(LogLevel.Error, default, "The import of {File} failed.");

    private readonly Lock gate = new();
    private ImportRun? current;
    private Task work = Task.CompletedTask;

    /// <summary>What is being worked on now; null where nothing is.</summary>
    public ImportRun? Current
    {
        get
        {
            lock (gate)
                return current;
        }
    }

    /// <summary>A table and how far it has come; one that a program which has ended was writing is told as broken off.</summary>
    public ImportState? Find(string id)
    {
        lock (gate)
        {
            if (tables.Find(id) is not { } state)
                return null;
            if (current?.Id == id)
                return state;
            if (state.Step != ImportStep.Writing && tables.TakeLeftMark(state))
                return SetAside(state);
            if (!state.IsRunning || TryLock() is not { } free)
                return state;
            using (free)
            {
                state = state.Step == ImportStep.Writing
                    ? state with { Step = ImportStep.Broken, WasBroken = true }
                    : state with { Step =
                        ImportStep.Received, Trouble = "The desk was closed while it was looking. Nothing was written. Look again." };
                tables.Keep(state);
                return state;
            }
        }
    }

    // A table that ended the desk once would end it at every start, were it read again without a word.
    private ImportState SetAside(ImportState state)
    {
        state = state with
        {
            Step = ImportStep.SetAside,
            Trouble = "The desk ended while it was reading this table, so the table was set aside. Nothing of it was written.\n"
                + "If the desk was stopped or the machine switched off just then, read it again. If the desk ended by itself, "
                + "save the sheet as CSV and give that.",
        };
        tables.Keep(state);
        return state;
    }

    /// <summary>Begins to look or to write.</summary>
    /// <returns>Null where it has begun; else why not, in words.</returns>
    public string? Begin(ImportState state, bool write)
    {
        lock (gate)
        {
            if (current is not null)
                return $"\"{current.File}\" is being {(current.IsWriting ? "imported" : "read")} just now, and a store takes one import at "
                    + $"a time. Nothing was begun. Wait until it is done, or stop it.";
            if (TryLock() is not { } held)
                return "Another desk on this store is importing just now, and a store takes one import at a time. Nothing was begun. Try "
                    + "again when it is done.";
            var mapping = state.Mapping is null
                ? ColumnMapping.None : MappingJson.Read(System.Text.Encoding.UTF8.GetBytes(state.Mapping), state.File);
            state = state with { Step = write ? ImportStep.Writing : ImportStep.Looking, Trouble = null };
            tables.Keep(state);
            var run = current = new ImportRun(state.Id, state.File, write, state.Told?.Rows ?? state.AboutRows);
            var request =
                state.Choices.Request(tables.PathOf(state), options.Who, mapping, dryRun: !write, day.Today) with { Stop = run.Stopped };
            work = Task.Run(() => Work(state, request, run, held));
            return null;
        }
    }

    /// <inheritdoc/>
    public async Task RunAsync(CancellationToken stopping)
    {
        await Task.Delay(Timeout.Infinite, stopping).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        Current?.Stop();
        await work.ConfigureAwait(false);
    }

    /// <inheritdoc/>
    public void Dispose() => current?.Dispose();

    // One writer a store, over all programs on this machine: the system lets go of the file when the program ends, however it ends.
    private FileStream? TryLock()
    {
        try
        {
            return OwnerOnly.File(Path.Combine(tables.Folder, "running"), FileMode.OpenOrCreate, FileAccess.ReadWrite);
        }
        catch (IOException)
        {
            return null;
        }
    }

    private void Work(ImportState state, ImportRequest request, ImportRun run, FileStream held)
    {
        var back = run.IsWriting ? ImportStep.Looked : ImportStep.Received;
        try
        {
            using var mark = tables.Mark(state);
            var told = ImportSummary.Of(new SheetImport(journal, OpenDays.Statutory).Run(request, run));
            state = state with { Step = run.IsWriting
                ? ImportStep.Written : ImportStep.Looked, Told = told, WasBroken = state.WasBroken && !run.IsWriting };
            if (run.IsWriting)
                refresh.Wake();
        }
        catch (OperationCanceledException)
        {
            // Thrown only while the one transaction is open, which is then rolled back.
            state = state with { Step = back, Trouble = "It was stopped. Nothing was written." };
        }
        catch (StoreException e) when (run.IsWriting && e.MaybeWritten)
        {
            state = state with { Step = ImportStep.Broken, WasBroken = true, Trouble = Inside(tables.FolderOf(state), e.Message) };
        }
        catch (Exception e) when (e is SheetException or StoreException)
        {
            state = state with { Step = back, Trouble = Inside(tables.FolderOf(state), e is SheetException refusal
                ? DeskWords.Of(refusal) : e.Message) + "\nNothing was written." };
        }
        catch (Exception e)
        {
            Failed(log, state.File, e);
            state = run.IsWriting
                ? state with { Step = ImportStep.Broken, WasBroken = true, Trouble = $"Stringline itself failed ({e.Message})." }
                : state with { Step = back, Trouble = $"Stringline itself failed ({e.Message}). Nothing was written. The reason is on the "
                    + $"console from which the desk was started; please report it." };
        }
        finally
        {
            End(state, held);
        }
    }

    // The folder in which the table waits is left out, where the system names it too.
    private static string Inside(string folder, string text) =>
        text.Replace(folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);

    private void End(ImportState state, FileStream held)
    {
        lock (gate)
        {
            try
            {
                tables.Keep(state);
                if (state.Step == ImportStep.Written)
                    tables.RemoveTable(state);
            }
            catch (IOException e)
            {
                // The page then tells it as broken off, and to look again.
                Failed(log, state.File, e);
            }

            held.Dispose();
            current = null;
        }
    }
}
