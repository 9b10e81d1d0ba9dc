using System.Globalization;
using CsCheck;
using Stringline.Law.Facts;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>What a journal promises, on whatever database: run once for each.</summary>
public abstract class JournalTests : IDisposable
{
    private readonly Lazy<Place> place;

    protected JournalTests(Func<Place> make) => place = new Lazy<Place>(make);

    protected Place Place => place.Value;

    public void Dispose()
    {
        if (place.IsValueCreated)
            place.Value.Dispose();
        GC.SuppressFinalize(this);
    }

    [Fact]
    public void A_job_file_stored_change_by_change_reads_back_as_itself()
    {
        var journal = Place.Open();
        var number = 0;
        JobFileGen.Job.Sample(
            job =>
            {
                var key = string.Create(CultureInfo.InvariantCulture, $"job {Interlocked.Increment(ref number)}");
                var id = Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob(key, job with { Entries = [] }), "test")).Job;
                for (var i = 0; i < job.Entries.Count; i++)
                    Assert.Equal(i + 2, Assert.IsType<AppendOutcome.Appended>(
                        journal.Append(id, i + 1, [Samples.Entry(job.Entries[i])], "test")).Sequence);
                Assert.Null(JobFileDifference.Between(job, journal.Read(id)!.Job));
                Assert.Null(JobFileDifference.Between(job, journal.Find(key)!.Job));
            },
            iter: 40,
            threads: 1);
        Assert.True(journal.Check().IsWhole);
    }

    [Fact]
    public void A_job_file_put_at_once_reads_back_as_itself_and_putting_it_again_does_nothing()
    {
        var journal = Place.Open();
        var jobs = new List<KeyedJob>();
        JobFileGen.Job.Sample(job => jobs.Add(new KeyedJob(string.Create(CultureInfo.InvariantCulture, $"job {jobs.Count}"), job)),
            iter: 100, threads: 1);
        var report = journal.PutMany(jobs, "test");
        Assert.Equal((jobs.Count, 0L, 0L, (long)jobs.Sum(job => 1 + job.Job.Entries.Count), 0),
            (report.Added, report.Extended, report.Unchanged, report.Changes, report.Faults.Count));
        var read = journal.ReadAll(JobsToRead.All).ToList();
        Assert.Equal(jobs.Select(job => job.Key), read.Select(job => job.Tip.Key));
        Assert.All(jobs.Zip(read), pair => Assert.Null(JobFileDifference.Between(pair.First.Job, pair.Second.Job)));
        var seal = journal.Check();
        Assert.Empty(seal.Broken);
        Assert.Equal((0L, (long)jobs.Count),
            (journal.PutMany(jobs, "test") is var again ? again.Added + again.Extended : -1, again.Unchanged));
        Assert.Equal(seal.Seal, journal.Check().Seal);
    }

    [Fact]
    public void A_job_is_added_only_under_a_key_that_no_job_has()
    {
        var journal = Place.Open();
        var first = Samples.Bare() with { Name = "Alder Court" };
        var id = Assert.IsType<PutOutcome.Added>(journal.Add(new KeyedJob("a", first), "ana")).Job;
        var seal = journal.Check().Seal;

        // Put would write the second head over the first: nobody who opens a new job means that.
        var refused = Assert.IsType<PutOutcome.Refused>(journal.Add(new KeyedJob("a", first with { Name = "Birch Court" }), "ben"));
        Assert.Contains("\"Alder Court\"", refused.Faults.Single().Found, StringComparison.Ordinal);
        Assert.Equal(seal, journal.Check().Seal);
        Assert.Equal(id + 1, Assert.IsType<PutOutcome.Added>(journal.Add(new KeyedJob("b", first), "ben")).Job);
    }

    [Fact]
    public async Task Of_several_who_add_under_one_key_at_once_one_does_and_the_others_are_told_who_was_first()
    {
        var journal = Place.Open();
        for (var round = 0; round < 10; round++)
        {
            var key = string.Create(CultureInfo.InvariantCulture, $"k{round}");
            var outcomes = await Task.WhenAll(Enumerable.Range(0, 4).Select(writer => Task.Run(() =>
            {
                using var own = Journals.Open(Place.Address, SystemClock.Instance);
                return own.Add(
                    new KeyedJob(key, Samples.Bare() with { Name = string.Create(CultureInfo.InvariantCulture, $"of {writer}") }), "test");
            })));
            Assert.Single(outcomes.OfType<PutOutcome.Added>());
            var kept = journal.Find(key)!.Job.Name;
            Assert.All(outcomes.OfType<PutOutcome.Refused>(), refused =>
                Assert.Contains($"\"{kept}\"", refused.Faults.Single().Found, StringComparison.Ordinal));
            Assert.Equal(3, outcomes.OfType<PutOutcome.Refused>().Count());
        }

        Assert.True(journal.Check().IsWhole);
        Assert.Equal(10, journal.CountJobs());
    }

    // The rule is written out here a second time, from its words: what begins after the day, or was learned after it, is not known.
    [Fact]
    public void The_file_as_known_on_a_day_is_what_could_have_happened_and_was_learned_by_then()
    {
        var journal = Place.Open();
        var number = 0;
        Gen.Select(JobFileGen.Job, JobFileGen.Day).Sample(
            (job, day) =>
            {
                var key = string.Create(CultureInfo.InvariantCulture, $"job {Interlocked.Increment(ref number)}");
                journal.Put(new KeyedJob(key, job), "test");
                var known = journal.Find(key)!.KnownOn(day);
                var expected = job.Entries.Where(
                    entry => !(entry.On.Earliest is { } first && first > day) && !(entry.Learned is { } learned && learned > day));
                Assert.Null(JobFileDifference.Between(job with { Entries = [.. expected] }, known));
            },
            iter: 60,
            threads: 1);
    }

    [Fact]
    public void A_head_is_known_from_the_day_it_was_learned()
    {
        var journal = Place.Open();
        var first = Samples.Bare("Alder Court");
        var id = Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob("a", first), "ana")).Job;
        var owner = new Party { Id = "p1", Capacity = PartyCapacity.Owner, Name = "Muñoz Holdings" };
        var second = first with { Name = "Alder Court, building 2", Parties = [owner] };
        var notice = new NoticeGiven { Index = 0, On = DayFact.On(new LocalDate(2026, 4, 1)), Notice = NoticeKind.Preliminary, To = ["p1"],
            Manner = Manner.CertifiedMail };
        Assert.IsType<AppendOutcome.Appended>(
            journal.Append(id, 1, [new JobChange.Revised(second, new LocalDate(2026, 5, 1)), Samples.Entry(notice)], "ben"));
        var job = journal.Read(id)!;
        Assert.Equal("Alder Court, building 2", job.Job.Name);
        Assert.Equal("Alder Court", job.KnownOn(new LocalDate(2026, 4, 30)).Name);
        Assert.Equal("Alder Court, building 2", job.KnownOn(new LocalDate(2026, 5, 1)).Name);
        Assert.Equal("Alder Court", job.KnownOn(new LocalDate(2026, 1, 1)).Name);
        Assert.Empty(job.KnownOn(new LocalDate(2026, 1, 1)).Parties);
        Assert.Equal([owner], job.KnownOn(new LocalDate(2026, 4, 30)).Parties);
        Assert.Equal(["ana", "ben", "ben"], job.Rows.Select(row => row.Who));
        Assert.Equal([1L, 2L, 3L], job.Rows.Select(row => row.Sequence));
    }

    [Fact]
    public void The_second_of_two_writers_is_told_what_the_first_wrote()
    {
        var one = Place.Open();
        var other = Place.Open();
        var id = Assert.IsType<PutOutcome.Added>(one.Put(new KeyedJob("a", Samples.Bare()), "ana")).Job;
        var first = Assert.IsType<AppendOutcome.Appended>(one.Append(id, 1, [Samples.Entry(Samples.Delivery(0))], "ana"));
        var late = Assert.IsType<AppendOutcome.SomeoneWroteFirst>(other.Append(id, 1, [Samples.Entry(Samples.Delivery(1))], "ben"));
        Assert.Equal(2, late.Sequence);
        var row = Assert.Single(late.Since);
        Assert.Equal(("ana", 2L, first.Hash), (row.Who, row.Sequence, row.Hash));
        Assert.IsType<AppendOutcome.Appended>(other.Append(id, late.Sequence, [Samples.Entry(Samples.Delivery(1))], "ben"));
        Assert.Equal(2, one.Read(id)!.Job.Entries.Count);
    }

    [Fact]
    public async Task Writers_at_the_same_time_lose_no_entry()
    {
        const int Writers = 4;
        const int Each = 25;
        var journal = Place.Open();
        var id = Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob("a", Samples.Bare()), "test")).Job;
        var conflicts = 0;
        await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(() =>
        {
            using var own = Journals.Open(Place.Address, SystemClock.Instance);
            long seen = 1;
            for (var i = 0; i < Each;)
            {
                var entry = Samples.Delivery(0, 10m, string.Create(CultureInfo.InvariantCulture, $"W{writer}-{i}"));
                switch (own.Append(id, seen, [Samples.Entry(entry)], string.Create(CultureInfo.InvariantCulture, $"writer {writer}")))
                {
                    case AppendOutcome.Appended appended:
                        seen = appended.Sequence;
                        i++;
                        break;
                    case AppendOutcome.SomeoneWroteFirst late:
                        Interlocked.Increment(ref conflicts);
                        Assert.Equal(late.Sequence - seen, late.Since.Count);
                        seen = late.Sequence;
                        break;
                    case var other:
                        Assert.Fail(other.ToString());
                        break;
                }
            }
        })));
        Assert.True(conflicts > 0, "No two writers met; the test proves nothing.");
        var refs = journal.Read(id)!.Job.All<Furnished>().Select(entry => entry.Ref).Order(StringComparer.Ordinal);
        Assert.Equal(Enumerable.Range(0, Writers)
            .SelectMany(w => Enumerable.Range(0, Each).Select(i => string.Create(CultureInfo.InvariantCulture, $"W{w}-{i}")))
            .Order(StringComparer.Ordinal), refs);
        Assert.True(journal.Check().IsWhole);
    }

    [Fact]
    public async Task Jobs_put_at_the_same_time_get_ids_without_a_gap()
    {
        const int Writers = 4;
        using (Place.Open())
        {
        }

        await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(() =>
        {
            using var own = Journals.Open(Place.Address, SystemClock.Instance);
            for (var i = 0; i < 10; i++)
                Assert.IsType<PutOutcome.Added>(
                    own.Put(new KeyedJob(string.Create(CultureInfo.InvariantCulture, $"{writer}/{i}"), Samples.Long("x", 3)), "test"));
        })));
        var journal = Place.Open();
        Assert.Equal(Enumerable.Range(1, Writers * 10).Select(id => (long)id), journal.Tips().Select(tip => tip.Id));
        Assert.True(journal.Check().IsWhole);
    }

    [Fact]
    public void An_entry_that_does_not_fit_the_job_file_is_refused_and_nothing_is_written()
    {
        var journal = Place.Open();
        var id = Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob("a", Samples.Bare()), "test")).Job;
        var stray = new Paid { Index = 0, On = DayFact.On(new LocalDate(2026, 4, 1)), Amount = 5m, Toward = "INV-9" };
        var refused = Assert.IsType<AppendOutcome.Refused>(
            journal.Append(id, 1, [Samples.Entry(Samples.Delivery(0)), Samples.Entry(stray)], "test"));
        Assert.Equal("entries[1].toward", Assert.Single(refused.Faults).Path);
        Assert.Equal(1, journal.Read(id)!.Tip.Sequence);
        Assert.IsType<AppendOutcome.NoSuchJob>(journal.Append(99, 1, [Samples.Entry(stray)], "test"));
    }

    [Fact]
    public void A_file_with_more_entries_extends_the_job_and_one_that_contradicts_it_is_refused()
    {
        var journal = Place.Open();
        var job = Samples.Long("Alder Court", 3);
        var id = Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob("a", job), "test")).Job;
        Assert.Equal(new PutOutcome.Extended(id, 2), journal.Put(new KeyedJob("a", Samples.Long("Alder Court", 5)), "test"));
        Assert.Equal(new PutOutcome.Extended(id, 1), journal.Put(new KeyedJob("a", Samples.Long("Alder Court 2", 5)), "test"));
        var other = Samples.Long("Alder Court 2", 5);
        var contradiction = other with { Entries = [Samples.Delivery(0, 1m), .. Samples.Long("x", 5).Entries.Skip(1)] };
        Assert.Equal("entries[0]",
            Assert.Single(Assert.IsType<PutOutcome.Refused>(journal.Put(new KeyedJob("a", contradiction), "test")).Faults).Path);
        Assert.IsType<PutOutcome.Refused>(journal.Put(new KeyedJob("a", job with { Name = "Alder Court 2" }), "test"));
        Assert.Equal(7, journal.Read(id)!.Tip.Sequence);
        Assert.True(journal.Check().IsWhole);
    }

    [Fact]
    public void Of_many_files_one_that_is_refused_keeps_all_out()
    {
        var journal = Place.Open();
        journal.Put(new KeyedJob("a", Samples.Long("a", 2)), "test");
        var report = journal.PutMany([new("b", Samples.Long("b", 2)), new("a", Samples.Long("a", 1)), new("b", Samples.Bare())], "test");
        Assert.Equal((0L, 2), (report.Added, report.Faults.Count));
        Assert.Equal(["a"], journal.Tips().Select(tip => tip.Key));
        Assert.Equal(new PutOutcome.Added(2), journal.Put(new KeyedJob("c", Samples.Bare()), "test"));
        Assert.True(journal.Check().IsWhole);
    }

    [Fact]
    public void Papers_are_kept_by_content_and_linked_to_their_entries()
    {
        var journal = Place.Open();
        var id = Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob("a", Samples.Bare()), "test")).Job;
        var (receipt, copy) = (Samples.Paper("article 1"), Samples.Picture(2, "photo of the wall.png"));
        journal.Append(id, 1, [Samples.Entry(Samples.Delivery(0), receipt), Samples.Entry(Samples.Delivery(1), receipt, copy)], "test");
        Assert.IsType<AppendOutcome.Appended>(journal.Append(id, 3, [new JobChange.Proved(2, [copy])], "test"));
        Assert.IsType<AppendOutcome.Refused>(journal.Append(id, 4, [new JobChange.Proved(1, [copy])], "test"));
        Assert.IsType<AppendOutcome.Refused>(journal.Append(id, 4, [new JobChange.Proved(2, [])], "test"));
        var job = journal.Read(id)!;
        Assert.Equal([receipt.Name, copy.Name], job.ProofsOf(0).Select(link => link.Name));
        Assert.Equal([receipt.Hash, copy.Hash], job.ProofsOf(1).Select(link => link.Hash));
        var read = journal.ReadProof(job.ProofsOf(1)[1])!;
        Assert.Equal((copy.Kind, copy.Hash, copy.Name), (read.Kind, read.Hash, read.Name));
        Assert.True(read.Content.Span.SequenceEqual(copy.Content.Span));
        var report = journal.Check();
        Assert.Empty(report.Broken);
        Assert.Equal(2, report.Proofs);
    }

    [Fact]
    public void The_tables_refuse_to_edit_or_erase_what_is_in_the_journal()
    {
        var journal = Place.Open();
        var id = Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob("a", Samples.Bare()), "test")).Job;
        journal.Append(id, 1, [Samples.Entry(Samples.Delivery(0), Samples.Picture())], "test");
        string[] edits = ["update changes set who = 'x'", "delete from changes", "update proofs set kind = 'pdf'", "delete from proofs"];
        foreach (var sql in edits)
        {
            var refused = Assert.ThrowsAny<System.Data.Common.DbException>(() => Place.Scalar<long>(sql));
            Assert.Contains("append-only", refused.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Reading_all_gives_what_was_there_when_it_began_while_others_write()
    {
        var journal = Place.Open();
        journal.PutMany(Enumerable.Range(1, 20)
            .Select(i => new KeyedJob(string.Create(CultureInfo.InvariantCulture, $"{i}"), Samples.Long("x", 2))),
            "test");
        var seen = new List<long>();
        foreach (var job in journal.ReadAll(new JobsToRead { After = 5 }))
        {
            seen.Add(job.Tip.Id);
            Assert.Equal(3, job.Tip.Sequence);
            Assert.IsType<AppendOutcome.Appended>(journal.Append(job.Tip.Id, 3, [Samples.Entry(Samples.Delivery(7))], "test"));
            journal.Put(new KeyedJob("new " + job.Tip.Key, Samples.Bare()), "test");
        }

        Assert.Equal(Enumerable.Range(6, 15).Select(id => (long)id), seen);
    }
}

public sealed class SqliteJournalTests() : JournalTests(() => new SqlitePlace());

[Slow(Slow.PostgreSql)]
public sealed class PostgresJournalTests() : JournalTests(() => new PostgresPlace());
