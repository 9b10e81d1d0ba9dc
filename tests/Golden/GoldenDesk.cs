using System.IO.Compression;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Stringline.Office.Portfolio;
using Stringline.Office;
using Stringline.Office.Entering;
using Stringline.Web;
using Stringline.Papers.Catalogue;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Golden;

/// <summary>A desk over an office of some of the jobs, asked as a browser asks it.</summary>
internal sealed partial class GoldenDesk : IAsyncDisposable
{
    private readonly string folder = Scratch.Folder();
    private readonly IReadOnlyList<GoldenJob> jobs;
    private readonly StandingClock clock;
    private readonly WebApplication desk;
    private readonly Dictionary<int, long> ids;
    private HttpClient browser = null!;

    private GoldenDesk(IReadOnlyList<GoldenJob> jobs)
    {
        this.jobs = jobs;
        clock = new StandingClock(jobs.Select(job => job.Day).Order().ElementAt(jobs.Count / 2));
        desk = DeskHost.Build(new DeskOptions(Path.Combine(folder, "office.stringline"), 0) { Who = "ana" }, clock);
        var journal = desk.Services.GetRequiredService<IJournal>();
        var report = journal.PutMany(jobs.Select(job => new KeyedJob(Key(job), job.Job)), "ana");
        if (report.Faults.Count > 0)
            throw new InvalidOperationException(string.Join('\n', report.Faults));
        ids = jobs.ToDictionary(
            job => job.Number,
            job => journal.Find(Key(job))?.Tip.Id ?? throw new InvalidOperationException($"{Key(job)} was not put."));
    }

    /// <summary>Opens it.</summary>
    public static async Task<GoldenDesk> OpenAsync(IReadOnlyList<GoldenJob> jobs)
    {
        var opened = new GoldenDesk(jobs);
        await opened.desk.StartAsync().ConfigureAwait(false);
        opened.browser = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, CookieContainer = new CookieContainer() })
        {
            BaseAddress = new Uri(DeskHost.AddressOf(opened.desk)),
        };
        using var let = await opened.browser.GetAsync(new Uri(DeskHost.EntryOf(opened.desk))).ConfigureAwait(false);
        return opened;
    }

    /// <summary>Keeps every page of a job on a day. Of the forms of entries and of papers, which are many, each day asks a few.</summary>
    public async Task OfAsync(GoldenJob job, LocalDate day, KeptTexts texts)
    {
        clock.Day = day;
        var place = $"/job/{ids[job.Number]}";
        var turn = job.Number * job.Days.Count + job.Days.IndexOf(day);
        string[] pages =
        [
            "", "/amount", "/after-recording", "/papers", "/file", "/enter", "/prove?entry=0",
            $"?known={day.PlusDays(-20).ToString("uuuu-MM-dd", CultureInfo.InvariantCulture)}",
            $"/file?part={Parts[turn % Parts.Count]}",
            .. Some(EntryForms.All, turn, 4).Select(form => $"/enter?what={form.What}"),
            .. Some(PaperCatalogue.All, turn, 4).Select(paper => $"/papers/{paper.Id}"),
        ];
        var iso = day.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
        foreach (var page in pages)
            texts.Add($"{iso} page /job/N{page}", await PageAsync(place + page).ConfigureAwait(false));
    }

    /// <summary>Keeps the pages and exports of the whole office.</summary>
    public async Task OfAllAsync(KeptTexts texts)
    {
        clock.Day = jobs.Select(job => job.Day).Order().ElementAt(jobs.Count / 2);
        desk.Services.GetRequiredService<Portfolio>().RefreshStale(clock.Day, 1);
        string[] pages =
        [
            "/", "/customers", "/calendar", "/searches", "/search?for=alder", "/search?for=court", "/settings", "/law", "/jobs/new",
            "/import", "/status/404", "/desk.csv", "/desk.xlsx", "/calendar.ics", "/?county=Yolo", "/?county=Alameda",
            .. jobs.Select(job => job.Job.Parties.FirstOrDefault(party => party.Id == job.Job.Claimant.HiredBy)?.Name)
                .OfType<string>().Distinct().Take(8).Select(name => "/customer?name=" + Uri.EscapeDataString(name)),
        ];
        foreach (var page in pages)
            texts.Add($"office page {page}", await PageAsync(page).ConfigureAwait(false));
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        browser.Dispose();
        await desk.StopAsync().ConfigureAwait(false);
        await desk.DisposeAsync().ConfigureAwait(false);
        Directory.Delete(folder, recursive: true);
    }

    private static IReadOnlyList<string> Parts { get; } = [.. HeadForms.All.Select(part => part.Word)];

    private static string Key(GoldenJob job) => string.Create(CultureInfo.InvariantCulture, $"G-{job.Number:00000}");

    private static IEnumerable<T> Some<T>(IReadOnlyList<T> of, int turn, int count) =>
        Enumerable.Range(turn * count, count).Select(i => of[i % of.Count]);

    private async Task<string> PageAsync(string address)
    {
        using var answer = await browser.GetAsync(new Uri(address, UriKind.Relative)).ConfigureAwait(false);
        var bytes = await answer.Content.ReadAsByteArrayAsync().ConfigureAwait(false);
        var text = address.EndsWith(".xlsx", StringComparison.Ordinal) ? Workbook(bytes) : Encoding.UTF8.GetString(bytes);
        return $"{(int)answer.StatusCode}\n{AntiforgeryToken().Replace(text, "").Replace(folder, "(folder)", StringComparison.Ordinal)}";
    }

    // A workbook is a ZIP that says when it was made; its parts are what it says.
    private static string Workbook(byte[] bytes)
    {
        using var zip = new ZipArchive(new MemoryStream(bytes));
        var text = new StringBuilder();
        foreach (var part in zip.Entries.Where(part => part.Name != "core.xml"))
        {
            using var reader = new StreamReader(part.Open());
            text.Append(part.FullName).Append('\n').Append(reader.ReadToEnd()).Append('\n');
        }

        return text.ToString();
    }

    [GeneratedRegex("""(?<=name="__RequestVerificationToken"[^>]* value=")[^"]*""")]
    private static partial Regex AntiforgeryToken();
}
