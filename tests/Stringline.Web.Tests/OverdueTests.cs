using System.Net;
using Stringline.Office.Portfolio;
using Stringline.Law.Facts;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>
/// What is left of an overdue right, what is owed and what a step can save are said alike by the list, the job's page, the spreadsheets and
/// the calendar; the words are those of the law, which has tests of its own.
/// </summary>
public sealed class OverdueTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private static readonly StepFilter All = StepFilter.None;

    private long Put(string name, JobBuilder job)
    {
        var put = desk.Office.Add(new KeyedJob(name, job.Build() with { Name = name }));
        return Assert.IsType<PutOutcome.Added>(put).Job;
    }

    private static JobBuilder Late() => new JobBuilder().Furnished("2026-06-01", 4_310.55m).Furnished("2026-06-10", 1_899.55m);

    private static JobBuilder Paid() =>
        new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1_000m).Ended("2026-03-02").Completed("2026-05-04")
        .ClaimRecorded("2026-06-01", 1_000m).Paid("2026-07-13", 1_000m);

    [Fact]
    public async Task What_is_left_of_an_overdue_right_is_said_in_every_list()
    {
        Put("late-notice", Late());
        var overdue = desk.Journal.Steps(new StepQuery(All, new LocalDate(1, 1, 1), OpenDesk.Today.PlusDays(-1), 1000));
        Assert.NotEmpty(overdue);
        var list = WebUtility.HtmlDecode(await desk.Page("/?only=now"));
        var csv = await desk.Page("/desk.csv");
        var calendar = (await desk.Page("/calendar.ics")).Replace("\r\n ", "", StringComparison.Ordinal).Replace("\\", "",
            StringComparison.Ordinal);
        var sheet = DeskSheet.Of(desk.Journal.Steps(new StepQuery(All, new LocalDate(1, 1, 1), new LocalDate(9999, 12, 31), 1000))).Rows
            .SelectMany(row => row).Select(cell => cell.ToString()).ToHashSet();
        foreach (var line in overdue)
        {
            Assert.NotNull(line.Step.Outlook);
            var job = WebUtility.HtmlDecode(await desk.Page($"/job/{line.Job}"));
            Assert.All([list, job, csv, calendar], said => Assert.Contains(line.Step.Outlook, said, StringComparison.Ordinal));
            Assert.All([list, job, calendar], said => Assert.Contains(line.Step.Stakes!, said, StringComparison.Ordinal));
            Assert.Contains(line.Step.Outlook, sheet);
            Assert.Contains(line.Step.Stakes!, sheet);
        }
    }

    // Civ. Code § 8414(b)(1): 90 days after 10 April 2026 is 9 July, past on 15 July; after 24 April it is 23 July. Of two completions the
    // claim is arguable.
    [Fact]
    public async Task The_customers_page_says_what_is_left_of_a_right_in_doubt()
    {
        Put("customer-overdue",
            new JobBuilder().PartyWith("direct", party =>
            party with { Name = "Overdue & Sons" }).Notice("2026-03-02").Furnished("2026-03-02", 1_000m).Ended("2026-03-30")
            .Completed("2026-04-10", CompletionTheory.Actual, contested: true).Completed("2026-04-24"));
        var line = Assert.Single(desk.Journal.Steps(new StepQuery(new StepFilter { Customer = "Overdue & Sons" }, new LocalDate(1, 1, 1),
            OpenDesk.Today.PlusDays(-1), 10)), line => line.Step.What == "claim-of-lien.last-day");
        Assert.Contains(line.Step.Outlook!, WebUtility.HtmlDecode(await desk.Page("/customer?name=Overdue%20%26%20Sons")),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_notice_that_reaches_nothing_so_far_shows_what_is_owed_in_its_row_and_in_the_sum()
    {
        Put("nothing-in-reach", Late().Claimant(c => c with { Signer = new Signer("Ida Marl", null) }));
        var page = WebUtility.HtmlDecode(await desk.Page("/?person=Ida%20Marl"));
        Assert.Contains("owed $6,210.10; a notice mailed today reaches $0.00 of it, and all later deliveries", page,
            StringComparison.Ordinal);
        Assert.Contains("""<strong class="money">$6,210.10</strong> owed on 1 job""", page, StringComparison.Ordinal);
        Assert.DoesNotContain(">$0.00</span>", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_agreed_price_stands_where_nothing_was_furnished_yet()
    {
        var id = Put("agreed-only", new JobBuilder().Price(48_500m).Furnished("2026-07-10"));
        Assert.Contains("agreed price $48,500.00", await desk.Page($"/job/{id}"), StringComparison.Ordinal);
        Assert.DoesNotContain("<strong class=\"money\">$0.00</strong> owed", await desk.Page("/"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_paid_claim_still_on_record_is_on_the_desk_until_it_is_released()
    {
        var id = Put("paid-claim", Paid());
        foreach (var page in (string[])["/", $"/job/{id}", "/desk.csv", "/calendar.ics"])
            Assert.Contains("Record the release of the claim", await desk.Page(page), StringComparison.Ordinal);
        Assert.Contains($"/job/{id}/papers?for=release.when-paid", await desk.Page("/"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_customers_page_shows_no_stop_payment_notice_to_give_where_all_is_paid()
    {
        Put("paid-customer", Paid().PartyWith("direct", party => party with { Name = "Larch & Paid Builders" }));
        var page = await desk.Page("/customer?name=Larch%20%26%20Paid%20Builders");
        Assert.DoesNotContain(">Stop payment notice</a> open", page, StringComparison.Ordinal);
        Assert.DoesNotContain(">Stop payment notice</a> in doubt", page, StringComparison.Ordinal);
    }

    // Earliest day first, and of one day most dollars first: the exports as the list.
    [Fact]
    public void The_exports_go_by_day_and_of_one_day_by_dollars()
    {
        var lines = DeskSheet.All(desk.Journal, All).Select(line =>
            (line.Step.ActBy, Dollars: -(line.Step.AtStake ?? 0m))).ToList();
        Assert.Equal(lines.OrderBy(line => line.ActBy).ThenBy(line => line.Dollars), lines);
    }
}
