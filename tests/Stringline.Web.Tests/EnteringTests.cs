using System.Net;
using CsCheck;
using Stringline.Office.Entering;
using Stringline.Law.Facts;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>Entering, correcting and taking back through the pages.</summary>
public sealed class EnteringTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    /// <summary>Every kind of entry but the withdrawal, which has a test of its own.</summary>
    public static TheoryData<string> Kinds => [.. EntryForms.All.Where(form => form != EntryForms.TakeBack).Select(form => form.What)];

    [Theory]
    [Slow(Slow.Lasting)]
    [MemberData(nameof(Kinds))]
    public async Task Each_kind_is_entered_through_its_form_and_read_back_equal(string what)
    {
        var (before, meant) = Generated(what);
        meant = WithArticle(meant);
        var id = Put(before);
        var form = new FilledForm(desk, $"/job/{id}/enter?what={what}");
        foreach (var (field, value) in Typed.Of(meant).Typed.All)
            form.With(Typed.Lead + field, value);
        Assert.Equal($"/job/{id}/enter?written={meant.Index}", await form.Save());

        var after = desk.Office.Open(id)!.Facts;
        var read = after.Entries[^1];
        Assert.NotNull(read.Id);
        Assert.Null(JobFileDifference.Between(before with { Entries = [.. before.Entries, meant with { Id = read.Id }] }, after));
        Assert.Contains("Written to the journal", await desk.Page($"/job/{id}/enter?written={meant.Index}"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_value_that_cannot_be_taken_is_said_beside_its_field_and_nothing_is_written()
    {
        var id = Put(DraftTests.Owed());
        var page = await Payment(id, "12,5x").Look();
        Assert.Contains("id=\"fault-amount\"", page, StringComparison.Ordinal);
        Assert.Contains("value=\"12,5x\"", page, StringComparison.Ordinal);
        Assert.Contains("Nothing was written yet", page, StringComparison.Ordinal);
        Assert.Equal(2, desk.Office.Open(id)!.Facts.Entries.Count);
    }

    [Fact]
    public async Task Looking_at_what_changes_writes_nothing()
    {
        var id = Put(DraftTests.Owed());
        var page = await Payment(id, "1,500.00").Look();
        Assert.Contains("$8,500.00", page, StringComparison.Ordinal);
        Assert.Contains("$1,500.00 less", page, StringComparison.Ordinal);
        Assert.Equal(2, desk.Office.Open(id)!.Facts.Entries.Count);
    }

    [Fact]
    public async Task A_form_that_is_sent_twice_is_recorded_once_and_says_so()
    {
        var id = Put(DraftTests.Owed());
        var form = Payment(id, "1,500.00");
        var confirmation = await form.Look();
        Assert.Equal($"/job/{id}/enter?written=2", await form.Confirm(confirmation));
        var again = await form.Confirm(confirmation);
        Assert.Contains("sent twice, recorded once", await desk.Page(again), StringComparison.Ordinal);
        Assert.Single(desk.Office.Open(id)!.Facts.All<Paid>());
    }

    [Fact]
    public async Task What_someone_else_wrote_meanwhile_is_shown_before_anything_is_written()
    {
        var id = Put(DraftTests.Owed());
        var form = Payment(id, "1,500.00");
        var confirmation = await form.Look();
        var tip = desk.Office.Open(id)!.Stored.Tip;
        Assert.IsType<AppendOutcome.Appended>(
            desk.Journal.Append(id, tip.Sequence,
                [new JobChange.Happened(new Credited { Index = 2, Id = "e3", On = DayFact.On(new LocalDate(2026, 6, 1)), Amount = 250m })],
                    "ben"));

        using var answer = await form.Resend(confirmation);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("Credit allowed, 2026-06-01 (Mon), $250.00 (written by ben)", page, StringComparison.Ordinal);
        Assert.Contains("$8,250.00", page, StringComparison.Ordinal);
        Assert.Empty(desk.Office.Open(id)!.Facts.All<Paid>());

        await form.Confirm(page);
        Assert.Single(desk.Office.Open(id)!.Facts.All<Paid>());
    }

    [Fact]
    public async Task A_correction_is_filled_with_what_it_replaces_and_takes_its_place()
    {
        var id = Put(DraftTests.Owed());
        var address = $"/job/{id}/enter?supersedes=e1";
        var page = await desk.Page(address);
        Assert.Contains("value=\"10000.00\"", page, StringComparison.Ordinal);
        Assert.Contains("value=\"2026-03-02\"", page, StringComparison.Ordinal);
        var form = new FilledForm(desk, address).With("f-when", "on").With("f-when-on", "2026-03-02").With("f-amount", "9,000")
            .With("f-ref", "INV-1");
        var confirmation = await form.Look();
        Assert.Contains("Takes the place of", confirmation, StringComparison.Ordinal);
        Assert.Contains("$1,000.00 less", confirmation, StringComparison.Ordinal);
        await form.Confirm(confirmation);
        var open = desk.Office.Open(id)!;
        Assert.Equal("e1", open.Facts.Entries[^1].Supersedes);
        Assert.Equal(9_000m, open.Assessment.Amount.Demand);
        Assert.Contains("was already replaced", await desk.Page(address), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_entry_that_is_taken_back_counts_no_more_and_stays_in_the_journal()
    {
        var id = Put(DraftTests.Owed());
        await Payment(id, "1,500.00").Save();
        var paid = desk.Office.Open(id)!.Facts.Entries[^1];
        var form = new FilledForm(desk, $"/job/{id}/enter?what=withdrawn&supersedes={paid.Id}").With("f-when", "on")
            .With("f-when-on", "2026-07-15");
        var confirmation = await form.Look();
        Assert.Contains("$1,500.00 more", confirmation, StringComparison.Ordinal);
        await form.Confirm(confirmation);
        var open = desk.Office.Open(id)!;
        Assert.Equal(10_000m, open.Assessment.Amount.Demand);
        Assert.Single(open.Facts.All<Paid>());
        Assert.Equal(paid.Id, Assert.Single(open.Facts.All<Withdrawn>()).Supersedes);
    }

    [Fact]
    public async Task An_entry_without_a_name_is_not_corrected_and_the_page_says_what_to_do()
    {
        var job = DraftTests.Owed("Unnamed entries");
        var id = Put(job with { Entries = [.. job.Entries.Select(entry => entry with { Id = null })] });
        Assert.Contains($"href=\"/job/{id}/enter?unnamed=0\"", await desk.Page($"/job/{id}"), StringComparison.Ordinal);
        Assert.Contains("has no name of its own", await desk.Page($"/job/{id}/enter?unnamed=0"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_unconditional_waiver_says_what_it_releases_before_it_is_written()
    {
        var id = Put(DraftTests.Owed());
        var page = await new FilledForm(desk, $"/job/{id}/enter?what=waived").With("f-when", "on").With("f-when-on", "2026-07-01")
            .With("f-form", "8138").Look();
        Assert.Contains("binds on signing, paid or not; it releases $10,000.00", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/job/{0}/enter?what=no-such-kind")]
    [InlineData("/job/{0}/enter?what=withdrawn")]
    [InlineData("/job/{0}/enter?supersedes=nobody")]
    [InlineData("/job/{0}/file?part=nothing")]
    [InlineData("/job/{0}/prove?entry=99")]
    [InlineData("/job/{0}/proof/1/0")]
    [InlineData("/job/4711/enter")]
    [InlineData("/job/4711/after-recording")]
    public async Task What_is_not_there_is_answered_404(string address)
    {
        using var answer =
            await desk.Browser.GetAsync(new Uri(string.Format(System.Globalization.CultureInfo.InvariantCulture, address, 1),
                UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    private FilledForm Payment(long id, string amount) => new FilledForm(desk, $"/job/{id}/enter?what=paid")
        .With("f-when", "on").With("f-when-on", "2026-06-15").With("f-amount", amount).With("f-from", "Alder Holdings, LLC")
        .With("f-learned", "2026-07-15");

    private long Put(JobFile job) => Assert.IsType<PutOutcome.Added>(desk.Office.Add(new KeyedJob(Guid.NewGuid().ToString("N"), job))).Job;

    // The first generated entry of the kind, with the generated file as it is before it. Nothing can have been learned after today.
    // A drawn number of a mailing is none of the post office's; that such a one is refused has tests of its own.
    private static Entry WithArticle(Entry meant)
    {
        const string number = "9407 1000 0000 0000 0000 09";
        return meant switch
        {
            NoticeGiven { Article: not null } e => e with { Article = number },
            ClaimServed { Article: not null } e => e with { Article = number },
            StopPaymentGiven { Article: not null } e => e with { Article = number },
            BondNoticeGiven { Article: not null } e => e with { Article = number },
            PaymentDemanded { Article: not null } e => e with { Article = number },
            _ => meant,
        };
    }

    private static (JobFile Before, Entry Meant) Generated(string what)
    {
        (JobFile, Entry)? found = null;
        JobFileGen.Job.Sample(
            job =>
            {
                if (found is null && job.Entries.FirstOrDefault(entry => Typed.Of(entry).What == what) is { } entry)
                    found = (job with { Entries = [.. job.Entries.Take(entry.Index)] }, entry with { Supersedes = null,
                        Learned = entry.Learned > OpenDesk.Today ? null : entry.Learned });
            },
            iter: 200,
            threads: 1);
        return found ?? throw new InvalidOperationException($"No {what} was generated.");
    }
}
