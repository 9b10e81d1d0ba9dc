using System.Net;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Stringline.Office.Backups;
using Stringline.Office.Import;
using Stringline.Web.Papers;
using Stringline.Office.Portfolio;
using Stringline.Store;

namespace Stringline.Web;

/// <summary>Puts the web desk together: server, services, headers, pages.</summary>
internal static class DeskHost
{
    // Whatever a request is doing then, the desk is closed after so long; what is not committed is rolled back.
    private static readonly TimeSpan LongestClosing = TimeSpan.FromSeconds(6);

    /// <summary>A desk that is ready to be started. It listens on the loopback address only and owns the journal.</summary>
    /// <exception cref="StoreException">The store cannot be opened.</exception>
    public static WebApplication Build(DeskOptions options, IClock clock)
    {
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(DeskHost).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = Environments.Production,
        });
        builder.WebHost.ConfigureKestrel(server =>
        {
            server.AddServerHeader = false;
            server.Listen(IPAddress.Loopback, options.Port);
        });
        builder.Logging.SetMinimumLevel(LogLevel.Warning);

        // The keys seal the forms of one user's own desk, and lie in that user's own folder beside the store itself.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        AddServices(builder.Services, options, clock);
        var desk = builder.Build();
        WrittenRequest.Note(desk.Services.GetRequiredService<Desk>(), desk.Services.GetRequiredService<IHttpContextAccessor>());
        desk.UseMiddleware<SecurityHeaders>();
        desk.UseMiddleware<LoopbackOnly>();
        desk.UseMiddleware<OwnPagesOnly>();
        desk.UseMiddleware<SecretFirst>();
        desk.UseMiddleware<FormsOnly>();
        desk.UseExceptionHandler("/status/500");
        desk.UseStatusCodePagesWithReExecute("/status/{0}");
        desk.UseRouting();
        desk.MapAssets();
        desk.MapExports();
        desk.MapProofs();
        desk.MapPapers();
        desk.MapImports();
        desk.MapRazorPages();
        return desk;
    }

    /// <summary>The address of a desk that has started.</summary>
    public static string AddressOf(WebApplication desk) =>
        desk.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First() + "/";

    /// <summary>The address that lets a browser into a desk that has started.</summary>
    public static string EntryOf(WebApplication desk) =>
        AddressOf(desk) + StartSecret.Folder[1..] + "/" + desk.Services.GetRequiredService<StartSecret>().Word;

    private static void AddServices(IServiceCollection services, DeskOptions options, IClock clock)
    {
        // Opened here and not on the first request, so that a store that cannot be opened is said at once.
        services.AddSingleton(Open(options, clock));
        services.AddSingleton(options);
        services.AddSingleton<StartSecret>();
        services.AddHttpContextAccessor();
        services.AddSingleton(new DeskDay(clock, options.AsOf));
        services.AddSingleton<Portfolio>();
        services.AddSingleton<DeskFigures>();
        services.AddSingleton<Desk>();
        services.AddSingleton<NavLinks>();
        services.AddSingleton<WaitingProofs>();
        services.AddSingleton<PaperWorkbench>();
        services.AddSingleton<PortfolioRefresh>();
        services.AddHostedService<Hosted<PortfolioRefresh>>();
        services.AddSingleton(clock);
        services.AddSingleton<DailyBackup>();
        services.AddHostedService<Hosted<DailyBackup>>();
        services.AddSingleton(new WaitingTables(options, clock));
        services.AddSingleton(given => new TableLooks(given.GetRequiredService<WaitingTables>(),
            given.GetRequiredService<IHostApplicationLifetime>().ApplicationStopping));
        services.AddSingleton<TableOffer>();
        services.AddSingleton<ImportRuns>();
        services.AddHostedService<Hosted<ImportRuns>>();
        services.Configure<HostOptions>(host => host.ShutdownTimeout = LongestClosing);
        services.AddRazorPages().AddMvcOptions(mvc =>
        {
            mvc.Filters.Add<AnsweredOnly>();

            // They read names as a script library writes them, and fail at "a[b". No page of the desk writes such.
            mvc.ValueProviderFactories.RemoveType<JQueryFormValueProviderFactory>();
            mvc.ValueProviderFactories.RemoveType<JQueryQueryStringValueProviderFactory>();
        });
        services.AddAntiforgery(form =>
        {
            form.Cookie.Name = "stringline-form";
            form.Cookie.SameSite = SameSiteMode.Strict;
            form.Cookie.HttpOnly = true;
            form.SuppressXFrameOptionsHeader = true;    // SecurityHeaders sets it on every answer.
        });
        var keys = services.AddDataProtection().SetApplicationName("stringline");
        if (options.KeyFolder is { } folder)
            keys.PersistKeysToFileSystem(OwnerOnly.Folder(folder));
        else
            keys.UseEphemeralDataProtectionProvider();
    }

    // Through a factory, so that the container closes it with the desk.
    private static Func<IServiceProvider, IJournal> Open(DeskOptions options, IClock clock)
    {
        var journal = Journals.Open(options.Store, clock, options.Opening);
        return _ => journal;
    }
}
