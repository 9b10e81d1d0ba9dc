using Dapper;
using Microsoft.Data.Sqlite;
using Stringline.Law.Facts;
using Stringline.Store.Search;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>Searching gives the same answers on both databases: those of a plain walk through the texts.</summary>
public abstract class SearchTests : IDisposable
{
    private readonly Lazy<Place> place;

    protected SearchTests(Func<Place> make) => place = new Lazy<Place>(make);

    public void Dispose()
    {
        if (place.IsValueCreated)
            place.Value.Dispose();
        GC.SuppressFinalize(this);
    }

    [Theory]
    [InlineData("munoz", "a")]
    [InlineData("MUÑOZ", "a")]
    [InlineData("nguyen mason", "b")]
    [InlineData("Nguyễn", "b")]
    [InlineData("alder", "a b")]
    [InlineData("alder nguyen", "b")]
    [InlineData("2026-0012345", "a")]
    [InlineData("20260012345", "a")]
    [InlineData("2026 0012", "a")]
    [InlineData("70192280000012345678", "b")]
    [InlineData("7019 2280", "b")]
    [InlineData("070-123-4", "a")]
    [InlineData("95616", "a b")]
    [InlineData("lder", "")]
    [InlineData("'; drop table jobs; --", "")]
    [InlineData("\"alder*", "a b")]
    [InlineData("  !? ", "")]
    [InlineData("木", "b")]
    public void A_job_is_found_by_names_places_and_numbers(string sought, string keys)
    {
        var journal = place.Value.Open();
        var site = new Site { Street = "12 Alder Court", City = "Davis", Zip = "95616", County = "Yolo" };
        var one = Samples.Bare("One") with
        {
            Work = new Work { Kind = WorkKind.Private, Site = site with { Apn = "070-123-4" } },
            Parties = [new Party { Id = "p1", Capacity = PartyCapacity.Owner, Name = "Muñoz Holdings" }],
            Entries = [new ClaimRecorded { Index = 0, On = DayFact.On(new LocalDate(2026, 5, 1)), Instrument = "2026-0012345" }],
        };
        var two = Samples.Bare("Two 木 Framing") with
        {
            Work = new Work { Kind = WorkKind.Private, Site = site },
            Parties = [new Party { Id = "p1", Capacity = PartyCapacity.Subcontractor, Name = "Nguyễn & Sons Masonry" }],
        };
        journal.PutMany([new("a", one), new("b", two)], "test");
        var article = new NoticeGiven { Index = 0, On = DayFact.On(new LocalDate(2026, 4, 1)), Notice = NoticeKind.Preliminary, To = ["p1"],
            Manner = Manner.CertifiedMail, Article = "7019 2280 0000 1234 5678" };
        journal.Append(2, 1, [Samples.Entry(article)], "test");
        var hits = journal.Search(sought, 10);
        Assert.Equal(keys.Split(' ', StringSplitOptions.RemoveEmptyEntries), hits.Select(hit => hit.Job.Key));
        Assert.All(hits, hit => Assert.NotEmpty(hit.Where));
    }

    [Fact]
    public void Every_word_of_random_jobs_finds_what_a_walk_through_the_texts_finds()
    {
        var journal = place.Value.Open();
        var jobs = new List<KeyedJob>();
        CsCheck.Check.Sample(Testing.JobFileGen.Job, job => jobs.Add(new KeyedJob($"k{jobs.Count}", job)), iter: 60, threads: 1);
        journal.PutMany(jobs, "test");
        var words = jobs.ToDictionary(job => job.Key, job => SearchTexts.Of(job.Key, job.Job).Words.Split(' '));
        var random = new Random(7);
        var all = words.Values.SelectMany(w => w).Distinct().ToArray();
        for (var i = 0; i < 200; i++)
        {
            var sought = Enumerable.Range(0, 1 + (i % 2)).Select(_ => all[random.Next(all.Length)])
                .Select(word => word[..random.Next(1, word.Length + 1)]).ToArray();
            var expected = jobs.Where(
                job => sought.All(start => words[job.Key].Any(word => word.StartsWith(start, StringComparison.Ordinal))))
                .OrderBy(job => sought.All(words[job.Key].Contains) ? 0 : 1).Select(job => job.Key).ToList();
            foreach (var limit in (int[])[1000, 3, 1])
                Assert.Equal(expected.Take(limit), journal.Search(string.Join(' ', sought), limit).Select(hit => hit.Job.Key));
        }
    }
}

public sealed class SqliteSearchTests() : SearchTests(() => new SqlitePlace());

[Slow(Slow.PostgreSql)]
public sealed class PostgresSearchTests() : SearchTests(() => new PostgresPlace());

public sealed class FoldingTests
{
    // The judge is SQLite's tokenizer unicode61 with remove_diacritics 2 (https://www.sqlite.org/fts5.html#unicode61_tokenizer).
    [Fact]
    public void Latin_letters_fold_as_SQLite_folds_them_but_for_those_that_are_spelled_out()
    {
        const string Spelled = "ßẞæÆœŒøØđĐðÐłŁħĦıþÞ";
        using var connection = new SqliteConnection("Data Source=:memory:");
        connection.Open();
        connection.Execute("create virtual table t using fts5 (w, tokenize = 'unicode61 remove_diacritics 2'); create virtual table "
            + "v using fts5vocab (t, instance)");
        var table = File.ReadLines(Testing.Repository.Path("data/latin-composition.txt")).Where(line => line[0] != '#')
            .Select(line => (char)Convert.ToInt32(line[..4], 16)).Where(letter => !Spelled.Contains(letter, StringComparison.Ordinal))
            .ToList();
        Assert.True(table.Count > 400);
        foreach (var letter in table)
        {
            connection.Execute("delete from t; insert into t (w) values (@text)", new { text = $"x{letter}y" });
            var judged = connection.QuerySingle<string>("select term from v");
            var own = Assert.Single(Folding.Words($"x{letter}y"));

            // Letters built on one that is spelled out, such as ǽ: the mark falls away in both.
            if (judged.All(char.IsAscii))
                Assert.Equal(judged, own);
            else
                Assert.Equal(Assert.Single(Folding.Words(judged)), own);
        }
    }

    [Fact]
    public void Loose_marks_fall_away_and_scripts_without_case_stay_apart()
    {
        Assert.Equal(["munoz"], Folding.Words("Mun\u0303oz"));
        Assert.Equal(["strasse", "lodz"], Folding.Words("Straße, Łódź"));
        Assert.NotEqual(Folding.Words("木"), Folding.Words("林"));
    }
}
