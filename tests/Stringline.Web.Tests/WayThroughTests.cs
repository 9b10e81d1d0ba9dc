using System.Net;
using System.Text.RegularExpressions;
using Stringline.Law.Facts;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>What comes first on a page, and what is said of it: the next thing to do, and why a right is in doubt.</summary>
public sealed partial class WayThroughTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private long Put(string key, JobBuilder job) => Assert.IsType<PutOutcome.Added>(desk.Office.Add(new KeyedJob(key, job.Build()))).Job;

    private static JobBuilder Completed() =>
        new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1_000m).Ended("2026-03-02").Completed("2026-05-04");

    [Fact]
    public async Task Before_the_recording_the_counter_comes_first_and_after_it_what_can_be_done()
    {
        const string recorded = "It was recorded: enter the instrument number";
        var before = await desk.Page($"/job/{Put("not-recorded", Completed())}/after-recording");
        Assert.Contains(recorded, before, StringComparison.Ordinal);
        var after = await desk.Page($"/job/{Put("recorded", Completed().ClaimRecorded("2026-06-01", 1_000m))}/after-recording");
        Assert.DoesNotContain(recorded, after, StringComparison.Ordinal);
        Assert.InRange(after.IndexOf("What can be done now", StringComparison.Ordinal), 1,
            after.IndexOf("At the counter again", StringComparison.Ordinal));
        Assert.Contains("Another claim was recorded", after, StringComparison.Ordinal);
    }

    // A credit recorded after the ninety days (30 August) may be too late: the preview says of each right that it puts in doubt why.
    [Fact]
    public async Task A_right_that_an_entry_puts_in_doubt_says_why_in_the_preview()
    {
        var id = Put("credit-in-doubt", Completed().ClaimRecorded("2026-04-13", 1_000m));
        var preview = WebUtility.HtmlDecode(await new FilledForm(desk, $"/job/{id}/enter?what=credit-recorded").With("f-when", "between")
            .With("f-when-first", "2026-07-10").With("f-when-last", "2026-07-14").With("f-until", "2026-09-01").Look());
        var words = Markup().Replace(preview, "");
        var open = desk.Office.Open(id)!;
        var after = desk.Office.Assess(open.Facts with { Entries = [.. open.Facts.Entries,
            new CreditRecorded { Index = open.Facts.Entries.Count, On = new DayFact.Between(new(2026, 7, 10), new(2026, 7, 14)),
            Until = new(2026, 9, 1) }] }, OpenDesk.Today);
        var doubted = Stringline.Web.Entering.WhatChanges.Between(open.Assessment, after).Rows.Where(row =>
            row.Aspect == "standing" && row.After.ToString() is "in doubt" or "lost" or "narrowed").ToList();
        Assert.NotEmpty(doubted);
        Assert.All(doubted, row =>
        {
            Assert.NotNull(row.Why);
            Assert.Contains(Stringline.Web.Html.PlainWords.Of(row.Why), words, StringComparison.Ordinal);
        });
    }

    [Fact]
    public async Task What_is_missing_for_a_paper_is_still_needed_and_nobody_checked_means_everyone()
    {
        var id = Put("still-needed",
            new JobBuilder().Furnished("2026-07-06", 1_000m).NoParty("direct").Role(ClaimantRole.Supplier, "owner"));
        var page = await desk.Page($"/job/{id}/papers/preliminary-notice");
        Assert.Contains("Still needed", page, StringComparison.Ordinal);
        Assert.Contains("leave unchecked to send to everyone the law requires", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_empty_form_says_what_to_choose_and_does_not_repeat_its_labels()
    {
        var hidden = FilledForm.Hidden(await desk.Page("/jobs/new"));
        using var content = new FormUrlEncodedContent(hidden);
        using var answer = await desk.Browser.PostAsync(new Uri("/jobs/new", UriKind.Relative), content,
            TestContext.Current.CancellationToken);
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        foreach (var field in (string[])["Role", "CustomerIs", "County", "Claimant", "Customer", "Name"])
            Assert.Matches($"""id="fault-{field}">(Choose|Enter) """, page);
    }

    [GeneratedRegex("<[^>]+>")]
    private static partial Regex Markup();
}
