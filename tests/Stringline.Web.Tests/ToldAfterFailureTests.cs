using System.Globalization;
using Stringline.Testing;
using System.Net;
using System.Text;
using Microsoft.Data.Sqlite;
using Stringline.Office.Settings;
using Stringline.Store;

namespace Stringline.Web.Tests;

/// <summary>
/// A store that fails at its n-th statement, for every n of every write of the desk: what the desk says then is what a fresh program reads.
/// Who is told that nothing was written enters a payment a second time.
/// </summary>
[Slow(Slow.Lasting)]
public sealed class ToldAfterFailureTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private const int Most = 500;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    [Attack("store fails at its n-th statement")]
    public async Task A_job_that_is_written_and_cannot_be_assessed_is_told_as_written_and_the_list_as_behind()
    {
        using var store = new SqliteConnection($"Data Source={desk.Journal.Name};Pooling=False");
        store.Open();
        void Run(string sql)
        {
            using var command = store.CreateCommand();
            command.CommandText = sql;
            command.ExecuteNonQuery();
        }

        Run("create trigger no before insert on assessed begin select raise(abort, 'no room'); end");
        try
        {
            using var answer = await Send("/jobs/new", NewJob("GHOST"), await desk.Page("/jobs/new"));
            Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
            Assert.NotNull(desk.Journal.Find("GHOST"));
            Assert.Contains("is behind", await desk.Page(answer.Headers.Location!.ToString()), StringComparison.Ordinal);
        }
        finally
        {
            Run("drop trigger no");
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Attack("store fails at its n-th statement")]
    public Task A_new_job(bool andAfter) => Every("/jobs/new", () => "/jobs/new", NewJob(""), andAfter);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Attack("store fails at its n-th statement")]
    public async Task An_entry(bool andAfter)
    {
        var address = $"/job/{Put()}/enter?what=paid";
        var amount = 100;
        await Every(address, null, [new("Step", "save")], andAfter, () => new FilledForm(desk, address)
            .With("f-when", "on").With("f-when-on", "2026-07-01")
            .With("f-amount", string.Create(CultureInfo.InvariantCulture, $"{amount++}")).Look());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Attack("store fails at its n-th statement")]
    public async Task A_part_of_the_file(bool andAfter)
    {
        var address = $"/job/{Put()}/file?part=contract";
        var price = 20_000;
        await Every(address, null, [new("Step", "save")], andAfter, () => new FilledForm(desk, address)
            .With("f-contract.price", string.Create(CultureInfo.InvariantCulture, $"{price++}.00")).Look());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Attack("store fails at its n-th statement")]
    public async Task A_paper_that_proves_an_entry(bool andAfter)
    {
        var address = $"/job/{Put()}/prove?entry=0";
        await Every(address, () => address, [], andAfter, withPaper: true);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Attack("store fails at its n-th statement")]
    public async Task The_settings(bool andAfter)
    {
        var tries = 0;
        KeyValuePair<string, string>[] fields =
        [
            new("Form.Name", ""), new("Form.Reminders", "7"), new("Form.MailBacklogDays", "30"), new("Form.IndexLagDays", "10"),
                new("Form.ReserveDays", "3"),
        ];
        await Every("/settings", () => "/settings", fields, andAfter,
            vary: field => field.Key == "Form.Name"
                ? string.Create(CultureInfo.InvariantCulture, $"Quillback {andAfter} {tries++}") : field.Value);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Attack("store fails at its n-th statement")]
    public async Task A_choice_of_columns_that_is_deleted(bool andAfter)
    {
        await Every("/settings?handler=DeleteMapping", null, [new("name", "Ledger")], andAfter, () =>
        {
            desk.Office.ChangeSettings(settings => settings with { Mappings = [new SavedMapping("Ledger", "{}")] });
            return desk.Page("/jobs/new");
        });
    }

    private async Task Every(
        string address,
        Func<string>? page,
        IReadOnlyList<KeyValuePair<string, string>> fields,
        bool andAfter,
        Func<Task<string>>? look = null,
        bool withPaper = false,
        Func<KeyValuePair<string, string>, string>? vary = null)
    {
        var failing = new FailingStore(desk);
        string? shown = null;
        for (var n = 1; n <= Most; n++)
        {
            shown ??= await (look?.Invoke() ?? desk.Page(page!()));
            List<KeyValuePair<string, string>> sent = [.. fields.Select(field => vary is null ? field : new(field.Key, vary(field)))];
            var before = Fresh();
            failing.FailAt(n, andAfter);
            HttpStatusCode status;
            string told;
            try
            {
                using var answer = await Send(address, sent, shown, withPaper ? Paper(n) : null);
                status = answer.StatusCode;
                told = await answer.Content.ReadAsStringAsync(Stop);
            }
            finally
            {
                failing.Mend();
            }

            var written = Fresh() != before;
            var isTold = Told(status, told);
            Assert.True(
                isTold is null || isTold == written,
                $"At statement {n} the store {(written ? "was" : "was not")} written to, and was told: {(int)status} {told}");
            if (written)
                shown = null;
            if (!failing.HasFailed)
            {
                Assert.True(written, told);
                Assert.True(n > 5, "The store was hardly asked anything.");
                return;
            }
        }

        Assert.Fail($"It has more than {Most} statements.");
    }

    // True: written; false: not; null: said that it is not sure.
    private static bool? Told(HttpStatusCode status, string page) => page switch
    {
        "" when status == HttpStatusCode.Redirect => true,
        _ when page.Contains("What you entered was written", StringComparison.Ordinal) => true,
        _ when page.Contains("It is not sure whether", StringComparison.Ordinal) => null,
        _ when page.Contains("Nothing was written", StringComparison.Ordinal) => false,
        _ => throw new InvalidOperationException($"What happened is not told: {(int)status} {page}"),
    };

    // As a program that starts now reads it.
    private string Fresh()
    {
        using var journal = Journals.Open(desk.Journal.Name, SystemClock.Instance, OpenStore.ReadOnly);
        return string.Join('\n', journal.Tips()) + journal.ReadSettings();
    }

    private long Put() =>
        ((PutOutcome.Added)desk.Office.Add(new KeyedJob(Guid.NewGuid().ToString("N"), DraftTests.Owed()))).Job;

    private async Task<HttpResponseMessage> Send(
        string address, IReadOnlyList<KeyValuePair<string, string>> fields, string page, byte[]? paper = null)
    {
        var hidden = FilledForm.Hidden(page).Where(hidden => fields.All(field => field.Key != hidden.Key));
        var all = hidden.Concat(fields).DistinctBy(field => field.Key);
        if (paper is null)
            return await desk.Browser.PostAsync(new Uri(address, UriKind.Relative), new FormUrlEncodedContent(all), Stop);
        using var content = new MultipartFormDataContent();
        foreach (var (name, value) in all)
            content.Add(new StringContent(value), $"\"{name}\"");
        content.Add(new ByteArrayContent(paper), "\"proof\"", "receipt.pdf");
        return await desk.Browser.PostAsync(new Uri(address, UriKind.Relative), content, Stop);
    }

    private static byte[] Paper(int n) => Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"%PDF-1.7\n{n}\n%%EOF\n"));

    private static KeyValuePair<string, string>[] NewJob(string number) =>
    [
        new("Form.Name", "Sawpit Row"), new("Form.Number", number), new("Form.Kind", "private"), new("Form.County", "Yolo"),
        new("Form.Claimant", "Quillback Lumber & Truss, Inc."), new("Form.Role", "supplier"), new("Form.Customer", "Hostile Framing"),
        new("Form.CustomerIs", "subcontractor"), new("Form.Price", "1000.00"), new("Form.First", "2026-06-01"),
    ];
}
