using System.Net;
using System.Text.RegularExpressions;
using Stringline.Law.Facts;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>
/// The entry after a paper knows what was printed, and every addressee has an article number of its own. The numbers are made here: their
/// last digit is the check digit of Publication 97 of the Postal Service (modulo 10, weights 3 and 1 from the right).
/// </summary>
public sealed partial class NoticeEntryTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private const string ToOwner = "9407 1000 0000 0000 0000 09";
    private const string ToContractor = "9407 1000 0000 0000 0000 16";

    private long Put(string key)
    {
        var job = new JobBuilder().Furnished("2026-07-06", 9_000m, "T-1").Price(48_500m).Claimant(c =>
            c with { Address = "3 Yard Rd, Davis, CA 95616", Signer = new Signer("Ida Marl", "Credit manager") })
            .Work(w => w with { Site = new Site { County = "Yolo", Street = "1 Quay St", City = "Davis", Zip = "95616" } }).Contract(c =>
                c with { Work = "Framing lumber" });
        return Assert.IsType<PutOutcome.Added>(desk.Office.Add(new KeyedJob(key, job.Build()))).Job;
    }

    private async Task<string> AfterThePaper(long id)
    {
        var paper = await desk.Page($"/job/{id}/papers/preliminary-notice");
        var link = EntryLink().Match(paper);
        Assert.True(link.Success, paper);
        return WebUtility.HtmlDecode(link.Groups[1].Value);
    }

    [Fact]
    public async Task The_entry_after_a_notice_is_filled_in_from_it()
    {
        var id = Put("prefilled");
        var page = await desk.Page(await AfterThePaper(id));
        Assert.Matches("""value="owner" checked="checked"> Alder Court LLC""", page);
        Assert.Matches("""value="direct" checked="checked"> Brushline Builders""", page);
        Assert.Matches("""<option value="preliminary" selected="selected">""", page);
        Assert.Matches("""<option value="certified-mail" selected="selected">""", page);
        Assert.Contains("""value="48500.00" """.TrimEnd(), page, StringComparison.Ordinal);
        Assert.Contains("""name="f-article.owner" """.TrimEnd(), page, StringComparison.Ordinal);
        Assert.Contains("""name="f-article.direct" """.TrimEnd(), page, StringComparison.Ordinal);
        Assert.DoesNotContain("""name="f-article" """, page, StringComparison.Ordinal);
    }

    private static FilledForm Notice(OpenDesk desk, long id) =>
        new FilledForm(desk, $"/job/{id}/enter?what=notice-given").With("f-when", "on").With("f-when-on", "2026-07-14")
        .With("f-notice", "preliminary").With("f-manner", "certified-mail").With("f-to", "owner").With("f-to", "direct").With("f-estimate",
            "48,500.00");

    [Fact]
    public async Task Each_addressee_gets_an_entry_with_its_own_number()
    {
        var id = Put("numbers");
        var form = Notice(desk, id).With("f-article.owner", ToOwner).With("f-article.direct", ToContractor);
        var preview = await form.Look();
        Assert.Contains(ToOwner.Replace(" ", "", StringComparison.Ordinal), preview.Replace(" ", "", StringComparison.Ordinal),
            StringComparison.Ordinal);
        Assert.EndsWith("&count=2", await form.Confirm(preview), StringComparison.Ordinal);
        var given = desk.Office.Open(id)!.Facts.Entries.OfType<NoticeGiven>().ToList();
        Assert.Equal([("owner", ToOwner), ("direct", ToContractor)], given.Select(notice => (Assert.Single(notice.To), notice.Article!)));
        Assert.All(given, notice => Assert.Equal((48_500m, Manner.CertifiedMail), (notice.Estimate, notice.Manner)));

        // Sent twice, recorded once.
        using var again = await form.Resend(preview);
        Assert.Contains("again=1", again.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Equal(2, desk.Office.Open(id)!.Facts.Entries.OfType<NoticeGiven>().Count());
    }

    [Fact]
    public async Task Without_numbers_it_stays_one_entry()
    {
        var id = Put("no-numbers");
        await Notice(desk, id).Save();
        Assert.Equal(["owner", "direct"], Assert.Single(desk.Office.Open(id)!.Facts.Entries.OfType<NoticeGiven>()).To);
    }

    [Theory]
    [InlineData("f-article.owner", "9407 1000 0000 0000 0000 05", "its check digit is 5, but 9 would be right")]
    [InlineData("f-article.owner", "not a number", "A domestic number has 20 or 22 digits")]
    public async Task A_number_that_does_not_check_is_said_beside_its_field(string field, string number, string fault)
    {
        var id = Put("wrong-" + number[..5]);
        var page = WebUtility.HtmlDecode(await Notice(desk, id).With(field, number).Look());
        Assert.Contains($"id=\"fault-{field[2..]}\"", page, StringComparison.Ordinal);
        Assert.Contains(fault, page, StringComparison.Ordinal);
        Assert.Empty(desk.Office.Open(id)!.Facts.Entries.OfType<NoticeGiven>());
    }

    [Fact]
    public async Task A_number_of_somebody_who_is_not_checked_is_asked_back()
    {
        var id = Put("unticked");
        var form = new FilledForm(desk, $"/job/{id}/enter?what=notice-given").With("f-when", "on").With("f-when-on", "2026-07-14")
            .With("f-notice", "preliminary").With("f-manner", "certified-mail").With("f-to", "owner").With("f-article.direct",
                ToContractor);
        Assert.Contains("is not checked above", await form.Look(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_carriers_own_number_is_taken_as_it_is()
    {
        var id = Put("carrier");
        await new FilledForm(desk, $"/job/{id}/enter?what=notice-given").With("f-when", "on").With("f-when-on", "2026-07-14")
            .With("f-notice", "preliminary").With("f-manner", "overnight-carrier").With("f-to", "owner").With("f-article.owner",
                "1Z 999").Save();
        Assert.Equal("1Z 999", Assert.Single(desk.Office.Open(id)!.Facts.Entries.OfType<NoticeGiven>()).Article);
    }

    [GeneratedRegex("""<a href="([^"]*enter\?what=notice-given[^"]*)["]""")]
    private static partial Regex EntryLink();
}
