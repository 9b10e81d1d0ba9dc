namespace Stringline.Store.Upkeep;

/// <summary>
/// The turn to make a store where none is: of several programs that would make it at once one goes first, and the others find what it
/// made. The system gives the turn back where a program is killed.
/// </summary>
internal sealed class MakingTurn : IDisposable
{
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(30);

    private readonly FileStream held;
    private readonly string lockFile;

    private MakingTurn(FileStream held, string lockFile) => (this.held, this.lockFile) = (held, lockFile);

    /// <summary>Takes the turn, once nobody else has it.</summary>
    /// <param name="path">Where the store will be.</param>
    /// <exception cref="StoreException">Nothing may be written there, or another program does not end its turn.</exception>
    public static MakingTurn Of(string path)
    {
        var lockFile = path + ".making";
        var waited = System.Diagnostics.Stopwatch.StartNew();
        while (true)
        {
            try
            {
                OwnerOnly.Folder(Path.GetDirectoryName(Path.GetFullPath(path))!);
                return new MakingTurn(OwnerOnly.File(lockFile, FileMode.OpenOrCreate, FileAccess.ReadWrite), lockFile);
            }
            catch (IOException e) when (IsHeld(e) && waited.Elapsed < LongestWait)
            {
                Thread.Sleep(20);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                throw new StoreException(StoreFault.NotAllowed, path, e.Message, "a place that this user may write to", e);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        File.Delete(lockFile);
        held.Dispose();
    }

    // By what the system said: whoever holds the file may have removed it by the time one looks. EAGAIN of Linux and of macOS,
    // ERROR_SHARING_VIOLATION of Windows.
    private static bool IsHeld(IOException error) => (error.HResult & 0xFFFF) is 11 or 35 or 32;
}
