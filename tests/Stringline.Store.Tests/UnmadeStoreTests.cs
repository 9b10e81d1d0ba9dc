using System.Globalization;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>A store that is made together with the first change in it, and what is told where none is.</summary>
public sealed class UnmadeStoreTests : IDisposable
{
    private readonly string folder = Scratch.Folder();

    private string Address => Path.Combine(folder, "new", "office.stringline");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Whoever_only_looks_leaves_nothing_behind()
    {
        using (var journal = Open())
        {
            Assert.Equal(0, journal.CountJobs());
            Assert.Empty(journal.Tips());
            Assert.Empty(journal.ReadAll(JobsToRead.All));
            Assert.Empty(journal.Search("anything", 10));
            Assert.Null(journal.Find("a"));
            Assert.Null(journal.ReadSettings());
            Assert.Equal(0, journal.StepsWritten());
            Assert.True(journal.Check().IsWhole);
            Assert.False(journal.WriteSettings("what nobody saw", "{}"));
            Assert.Equal(0, journal.PutMany([], "ana").Changes);
            Assert.IsType<PutOutcome.Refused>(journal.Add(new KeyedJob(" ", Samples.Bare()), "ana"));
            Assert.NotEmpty(journal.PutMany([new KeyedJob("a", Samples.Bare()), new KeyedJob(" ", Samples.Bare())], "ana").Faults);
        }

        Assert.Empty(Directory.GetFiles(folder, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void The_first_change_makes_it_and_the_next_ones_go_there()
    {
        using var journal = Open();
        Assert.Empty(journal.Tips());
        Assert.Equal(1, journal.PutMany([new KeyedJob("a", Samples.Bare())], "ana").Added);
        Assert.Equal(1, journal.PutMany([new KeyedJob("b", Samples.Bare())], "ana").Added);
        Assert.Equal(2, journal.CountJobs());
        using var fresh = Journals.Open(Address, SystemClock.Instance, OpenStore.ReadOnly);
        Assert.Equal(["a", "b"], fresh.Tips().Select(tip => tip.Key));
        Assert.True(fresh.Check().IsWhole);
        Assert.DoesNotContain(
            Directory.EnumerateFiles(Path.GetDirectoryName(Address)!), file => file.Contains(".part", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_another_made_it_meanwhile_the_change_goes_there()
    {
        using var late = Open();
        Assert.Equal(0, late.CountJobs());
        using (var early = Open())
            early.PutMany([new KeyedJob("a", Samples.Bare())], "ana");
        Assert.Equal(1, late.CountJobs());
        Assert.Equal(1, late.PutMany([new KeyedJob("b", Samples.Bare())], "ben").Added);
        Assert.Equal(["a", "b"], late.Tips().Select(tip => tip.Key));
        Assert.True(late.Check().IsWhole);
    }

    [Fact]
    public void Many_at_once_make_one()
    {
        using var journal = Open();
        Parallel.For(0, 16, i =>
            Assert.IsType<PutOutcome.Added>(
                journal.Add(new KeyedJob(string.Create(CultureInfo.InvariantCulture, $"job {i}"), Samples.Bare()), "ana")));
        Assert.Equal(16, journal.CountJobs());
        Assert.True(journal.Check().IsWhole);
    }

    [Fact]
    public void A_place_that_cannot_be_written_to_is_told_by_the_first_change()
    {
        File.WriteAllText(Path.Combine(folder, "new"), "a file where the folder would be");
        using var journal = Open();
        Assert.Equal(StoreFault.NotAllowed,
            Assert.Throws<StoreException>(() => journal.PutMany([new KeyedJob("a", Samples.Bare())], "ana")).Fault);
    }

    [Theory]
    [InlineData("offcie.stringline", "office.stringline")]
    [InlineData("office", "office.stringline")]
    [InlineData("OFFICE.STRINGLINE2", "office.stringline")]
    [InlineData("ofice.stringline", "office.stringline")]
    [InlineData("orchard", "office.stringline")]
    [InlineData("leger.db", "ledger.db")]
    [Attack("mistyped store")]
    public void A_mistyped_name_is_told_with_the_near_one_first(string typed, string near)
    {
        foreach (var there in (string[])["office.stringline", "ledger.db", "office.stringline-wal", "notes.txt"])
            File.WriteAllText(Path.Combine(folder, there), "");
        var told = Assert.Throws<StoreException>(() => Journals.Open(Path.Combine(folder, typed), SystemClock.Instance));
        Assert.Equal(StoreFault.Missing, told.Fault);
        Assert.Contains("did you mean " + Path.Combine(folder, near), told.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("-wal", told.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("notes", told.Message, StringComparison.Ordinal);
        Assert.Contains("--new", told.Message, StringComparison.Ordinal);
    }

    private IJournal Open() => Journals.Open(Address, SystemClock.Instance, OpenStore.OrMakeOnWriting);
}
