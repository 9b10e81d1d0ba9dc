namespace Stringline.Office;

/// <summary>Work that goes on beside what is asked, for as long as the desk is open.</summary>
internal interface IBackgroundWork
{
    /// <summary>Works until it is told to stop, and ends then.</summary>
    public Task RunAsync(CancellationToken stopping);
}
