using CsCheck;
using Stringline.Store.Upkeep;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>Daily backups in one folder: what is made, kept, deleted, and whether it can be restored.</summary>
public sealed class BackupFolderTests : IDisposable
{
    private static readonly LocalDate Start = new(2026, 1, 5);
    private readonly string folder = Scratch.Folder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    [Attack("old backups thinned out every day")]
    public void Of_daily_backups_the_last_14_days_8_weeks_and_12_months_stay()
    {
        var made = Enumerable.Range(0, 900).Select(i => Start.PlusDays(i) + new LocalTime(8, 30)).ToList();
        var today = made[^1].Date;
        var kept = BackupsKept.Of(made, today).Select(at => at.Date).Order().ToList();
        Assert.Equal(Enumerable.Range(0, 14).Select(i => today.PlusDays(-i)).Order(), kept.Where(day => day > today.PlusDays(-14)));

        // 2028-06-22 is a Thursday: the Sundays before it are the ends of their weeks.
        Assert.Equal(new LocalDate(2028, 6, 22), today);
        Assert.All(Enumerable.Range(0, 7), i => Assert.Contains(new LocalDate(2028, 6, 18).PlusWeeks(-i), kept));
        Assert.All(Enumerable.Range(1, 11), i => Assert.Contains(new LocalDate(2028, 6, 1).PlusMonths(1 - i).PlusDays(-1), kept));
        Assert.Equal(new LocalDate(2027, 7, 31), kept[0]);
        Assert.Equal(14 + 5 + 11, kept.Count);
    }

    [Fact]
    [Slow(Slow.Lasting)]
    [Attack("old backups thinned out every day", 200)]
    public void Deleting_every_day_leaves_what_deleting_once_would_leave()
    {
        Gen.Int[0, 3].Array[1, 500].Sample(aDay =>
        {
            var all = new List<LocalDateTime>();
            IReadOnlySet<LocalDateTime> left = new HashSet<LocalDateTime>();
            for (var i = 0; i < aDay.Length; i++)
            {
                var today = Start.PlusDays(i);
                var made = Enumerable.Range(0, aDay[i]).Select(hour => today + new LocalTime(8 + hour, 0)).ToList();
                all.AddRange(made);
                left = BackupsKept.Of(left.Concat(made), today);
            }

            return left.SetEquals(BackupsKept.Of(all, Start.PlusDays(aDay.Length - 1)))
                && (all.Count == 0 || left.Contains(all.Max()) || all.Max().Date < Start.PlusDays(aDay.Length - 400));
        }, iter: 200, seed: "0000KWKx2XMm");
    }

    [Fact]
    [Attack("old backups thinned out every day")]
    public void What_a_wrong_clock_dated_ahead_is_not_deleted()
    {
        LocalDateTime ahead = new(2030, 1, 1, 8, 0, 0), now = new(2026, 6, 22, 8, 0, 0);
        Assert.Equal([now, ahead], BackupsKept.Of([ahead, now], now.Date).Order());
    }

    [Fact]
    public void A_folder_holds_whole_backups_under_dated_names_and_leaves_other_files_alone()
    {
        var shelf = new BackupFolder(At("shelf"), "office 1.stringline");
        Assert.Empty(shelf.All());
        using var journal = Journals.Open(At("office 1.stringline"), SystemClock.Instance, OpenStore.OrMake);
        journal.Put(new KeyedJob("one", Samples.Bare()), "test");
        var now = new LocalDateTime(2026, 6, 22, 8, 30, 15);
        var made = shelf.Make(journal, now);
        Assert.Equal("office-1.stringline_2026-06-22_083015.backup", Path.GetFileName(made.Path));
        Assert.Equal([made], shelf.All());
        string[] others = ["office-1.stringline_2020-01-01_083015.backup.txt", "other_2020-01-01_083015.backup",
            "office-1.stringline_2020-13-01_083015.backup"];
        foreach (var other in others)
            File.WriteAllText(Path.Combine(shelf.Path, other), "not ours");
        foreach (var month in Enumerable.Range(1, 20))
            File.Copy(made.Path,
                Path.Combine(shelf.Path, $"office-1.stringline_{2024 + (month / 12)}-{1 + (month % 12):00}-01_083015.backup"));
        var gone = shelf.Thin(now.Date);
        Assert.Equal(20 - 3, gone.Count);
        Assert.Equal(made, shelf.All()[0]);
        Assert.Equal(1 + 3, shelf.All().Count);
        Assert.All(others, other => Assert.True(File.Exists(Path.Combine(shelf.Path, other))));
    }

    [Fact]
    [Attack("damaged newest backup")]
    public void A_drill_restores_the_newest_and_leaves_nothing()
    {
        var shelf = new BackupFolder(At("shelf"), "office");
        Assert.Equal(StoreFault.Missing, Assert.Throws<StoreException>(() => Drill.Newest(shelf, SystemClock.Instance)).Fault);
        using (var journal = Journals.Open(At("office"), SystemClock.Instance, OpenStore.OrMake))
        {
            journal.Put(new KeyedJob("one", Samples.Bare()), "test");
            shelf.Make(journal, new LocalDateTime(2026, 6, 21, 8, 0));
            journal.Put(new KeyedJob("two", Samples.Bare()), "test");
            shelf.Make(journal, new LocalDateTime(2026, 6, 22, 8, 0));
        }

        var drilled = Drill.Newest(shelf, SystemClock.Instance);
        Assert.Equal((2, new LocalDate(2026, 6, 22)), (drilled.Check.Jobs, drilled.Backup.At.Date));
        Assert.Equal(["office", "shelf"], Directory.GetFileSystemEntries(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal)
            .Take(2));

        var bytes = File.ReadAllBytes(drilled.Backup.Path);
        for (int at = 0, next; (next = bytes.AsSpan(at).IndexOf("Sierra Block"u8)) >= 0; at += next + 1)
            bytes[at + next] ^= 1;
        File.WriteAllBytes(drilled.Backup.Path, bytes);
        Assert.Equal(StoreFault.Damaged, Assert.Throws<StoreException>(() => Drill.Newest(shelf, SystemClock.Instance)).Fault);
    }

    [Fact]
    [Attack("what killed backups left, and what running ones make")]
    public void What_a_killed_backup_left_is_removed_by_the_next_and_what_a_running_one_makes_is_not()
    {
        var shelf = new BackupFolder(At("shelf"), "office");
        using var journal = Journals.Open(At("office"), SystemClock.Instance, OpenStore.OrMake);
        journal.Put(new KeyedJob("one", Samples.Bare()), "test");
        var killed = Part("stringline-0123456789abcdef.part");
        var running = Part("stringline-123456789abcdef0.part");
        string[] others = [Part("stringline-office.part"), Part("office.part")];
        var linked = Path.Combine(At("shelf"), "stringline-23456789abcdef01.part");
        Directory.CreateSymbolicLink(linked, others[0]);

        // Killed before it was locked; and one that somebody has made by hand.
        var empty = Directory.CreateDirectory(Path.Combine(At("shelf"), "stringline-3456789abcdef012.part")).FullName;
        var unlocked = Part("stringline-456789abcdef0123.part");
        File.Delete(Path.Combine(unlocked, "in-work"));
        using (new FileStream(Path.Combine(running, "in-work"), FileMode.Open, FileAccess.ReadWrite, FileShare.None))
        {
            Assert.Equal([killed, empty], PartFolder.Left(At("shelf")).Order(StringComparer.Ordinal));
            shelf.Make(journal, new LocalDateTime(2026, 6, 22, 8, 0));
            Assert.False(Directory.Exists(killed) || Directory.Exists(empty));
            Assert.All([running, unlocked, linked, .. others], there => Assert.True(Directory.Exists(there), there));
        }

        shelf.Make(journal, new LocalDateTime(2026, 6, 22, 9, 0));
        Assert.False(Directory.Exists(running));
        Assert.Equal(2 + 4, Directory.GetFileSystemEntries(At("shelf")).Length);

        string Part(string name)
        {
            var part = Directory.CreateDirectory(Path.Combine(At("shelf"), name)).FullName;
            File.WriteAllText(Path.Combine(part, "in-work"), "");
            File.WriteAllText(Path.Combine(part, "office_2026-06-21_080000.backup"), "half of the data");
            return part;
        }
    }

    private string At(string name) => Path.Combine(folder, name);
}
