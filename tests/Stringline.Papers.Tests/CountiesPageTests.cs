using System.Text;
using Stringline.Law.Recording;
using Stringline.Papers.Fees;
using Stringline.Testing;
using static Stringline.Law.Recording.RecorderField;

namespace Stringline.Papers.Tests;

/// <summary>
/// Keeps <c>docs/counties.md</c> as the table of recorders has it: what was read of each of the 58 offices, on a page of when, and what is
/// asked. With STRINGLINE_ACCEPT=1 in the environment the page is written anew; without it a stale page fails.
/// </summary>
public sealed class CountiesPageTests
{
    /// <summary>The day after the last reading: old is counted from it, so that the page is the same on every day.</summary>
    private static readonly LocalDate On = RecorderTable.Facts.Max(f => f.DateRead)!.Value.PlusDays(1);

    private static readonly (RecorderField Field, string Words)[] AtTheWindow =
    [
        (RecorderField.Counter, "street"), (Phone, "telephone"), (RecordUntil, "last time"), (Hours, "hours"), (Payee, "payee"),
            (Payment, "what is taken"),
        (Envelope, "envelope"), (Copies, "copies"), (Mail, "mail"), (MailBack, "time by mail"), (Electronic, "electronic system"),
            (FirstPage, "page 1"),
    ];

    private static readonly (RecorderField Field, string Words)[] Prices =
    [
        (Base, "first page"), (ExtraPage, "further page"), (Fraud, "fraud"), (ParcelsCounted, "parcels counted"), (Covenant, "covenant"),
        (NamesPerTen, "ten names"), (FurtherReference, "reference"), (NoticeFirst, "lien notice"), (ConformedCopy, "copy"),
            (FiledNotice, "filed notice"),
    ];

    [Fact]
    public void The_page_of_the_counties_is_the_one_the_table_makes()
    {
        var path = Repository.Path("docs/counties.md");
        var made = Page();
        if (Environment.GetEnvironmentVariable("STRINGLINE_ACCEPT") == "1")
            File.WriteAllText(path, made);
        Assert.True(File.Exists(path) && made == File.ReadAllText(path).ReplaceLineEndings("\n"),
            "docs/counties.md is stale. Run the tests once with STRINGLINE_ACCEPT=1 and look at what changed.");
    }

    [Fact]
    public void The_page_has_a_row_in_each_table_for_every_county() => Assert.All(RecorderTable.All(On),
        o => Assert.Equal(2, Page().Split('\n').Count(l => l.StartsWith($"| {o.County} |", StringComparison.Ordinal))));

    private static string Page()
    {
        var offices = RecorderTable.All(On);
        var text = new StringBuilder($"""
            # The 58 county recorders

            Made from `data/recorders.csv` by a test; do not edit. What was read of each office on its own pages, as of {Iso(On)}. The date
            of the page stands behind each value. **Ask** marks what stands on a page without a date or with one more than five years old,
            and where two pages disagree; what was not read is left out and named in the last column. Prices are dollars.

            {offices.Count(o =>
                o.HasPrices)} offices have a price here, {offices.Count(o => o.Words(RecorderField.Counter) is not null)} a street, {
            offices.Count(o =>
                o.Words(RecordUntil) is not null)} a last time for recording, {offices.Count(o => o.Words(Payee) is not null)}
            a payee. Of {offices.Count(o => o.IsFromMemory)} nothing was read: {string.Join(", ", offices.Where(o => o.IsFromMemory)
                .Select(o => o.County))}.

            ## At the window

            | County | Street | Telephone | Last time, or hours | Payee | To be asked |
            | --- | --- | --- | --- | --- | --- |

            """.ReplaceLineEndings("\n"));
        foreach (var office in offices)
        {
            text.Append($"| {office.County} | {Told(office, RecorderField.Counter, office.Place)} | {Told(office, Phone)} | "
                + $"{Told(office, office.Words(RecordUntil) is null ? Hours : RecordUntil)} | {Told(office, Payee)} | "
                + $"{NotRead(office, AtTheWindow)} |\n");
        }

        text.Append("""

            ## Prices

            | County | First page | Further page | Fraud fee on a mechanics lien | Lien notice | Copy | To be asked |
            | --- | --- | --- | --- | --- | --- | --- |

            """.ReplaceLineEndings("\n"));
        foreach (var office in offices)
        {
            text.Append($"| {office.County} | {Told(office, Base)} | {Told(office, ExtraPage)} | {Told(office, Fraud)} | "
                + $"{Told(office, NoticeFirst)} | {Told(office, office.Words(ConformedPerPage) is null
                    ? ConformedCopy : ConformedPerPage)} | "
                + $"{NotRead(office, Prices)} |\n");
        }

        text.Append("\n## All counties\n\n");
        foreach (var fact in RecorderTable.Facts.Where(f => f.County == RecorderFact.Statewide))
        {
            text.Append($"- {fact.Source}: {RecorderFieldNames.Of(fact.Field).Replace('_', ' ')} {fact.Value}"
                + $"{(fact.From is { } from ? $", from {Iso(from)}" : "")}. {fact.Remark}".TrimEnd() + "\n");
        }

        return text.ToString();
    }

    private static string Told(RecorderOffice office, RecorderField field, string? otherwise = null) => office.Fact(field) is { } fact
        ? $"{fact.Value} ({fact.DateOnPage?.Replace("(", "", StringComparison.Ordinal).Replace(")", "", StringComparison.Ordinal)})"
        + string.Concat(office.Otherwise(field).Select(o => $" or {o}")) + (office.Asks(field) ? " **ask**" : "")
        : otherwise ?? "";

    private static string NotRead(RecorderOffice office, (RecorderField Field, string Words)[] fields) => string.Join(", ",
        fields.Where(f => office.Fact(f.Field) is null && !(f.Field == ConformedCopy && office.Words(ConformedPerPage) is not null))
            .Select(f => f.Words));

    private static string Iso(LocalDate day) => Stringline.Law.Counting.LawText.IsoDay(day);
}
