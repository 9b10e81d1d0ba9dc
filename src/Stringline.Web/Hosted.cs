namespace Stringline.Web;

/// <summary>Lets work of the office begin and end with the web desk.</summary>
/// <param name="work">The work.</param>
internal sealed class Hosted<T>(T work) : BackgroundService
    where T : IBackgroundWork
{
    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => work.RunAsync(stoppingToken);
}
