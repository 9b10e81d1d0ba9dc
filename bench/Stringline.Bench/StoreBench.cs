using System.Diagnostics;
using System.Globalization;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Store;

namespace Stringline.Bench;

/// <summary>
/// What the journal costs, as figures on standard output: <c>store ADDRESS JOBS ENTRIES</c>. The address must be of no store yet. Run it
/// through <c>bench/store</c>, which holds it to one core and makes a store on both databases.
/// </summary>
public static class StoreBench
{
    private const int Appends = 2000;

    public static void Run(string address, int jobs, int entries)
    {
        using var journal = Journals.Open(address, NodaTime.SystemClock.Instance, OpenStore.OrMake);
        Tell("import, one transaction", jobs * (long)entries, "entries", () =>
            Expect(jobs * (entries + 1L), journal.PutMany(Jobs(jobs, entries), "bench").Changes));
        Tell("import again (nothing new)", jobs * (long)entries, "entries", () => journal.PutMany(Jobs(jobs, entries), "bench"));
        Tell("read all", jobs * (long)entries, "entries", () =>
            Expect(jobs * (long)entries, journal.ReadAll(JobsToRead.All).Sum(job => (long)job.Job.Entries.Count)));
        Tell("where every job is", jobs, "jobs", () => Expect(jobs, journal.Tips().Count()));
        Tell("write what assessments found", jobs, "jobs", () =>
        {
            foreach (var batch in journal.Tips().Chunk(5000))
                journal.WriteAssessed(batch.Select(Assessed));
        });
        Tell("ask for jobs not yet assessed (none)", jobs, "jobs", () =>
            Expect(0, journal.ReadAll(new JobsToRead { NotYetAssessed = ("1", AsOf) }).Count()));
        Tell("desk's list, 50 lines", 1, "pages", () => journal.Desk(new DeskPage(50)));
        Tell("search two words", 1, "searches", () => journal.Search("municipality 99", 20));
        Tell("check", jobs * (long)entries, "entries", () =>
        {
            if (!journal.Check().IsWhole)
                throw new InvalidOperationException("The store is not whole.");
        });
        Tell("append one entry, one after another", Appends, "appends", () =>
        {
            for (var i = 0; i < Appends; i++)
                journal.Append(1 + (i % jobs), 1 + entries + (i / jobs), [new JobChange.Happened(Delivery(i))], "bench");
        });
    }

    private static readonly LocalDate AsOf = new(2026, 6, 1);

    private static AssessedJob Assessed(JobTip tip) => new()
    {
        Job = tip.Id,
        Sequence = tip.Sequence,
        Rules = "1",
        AsOf = AsOf,
        ActBy = AsOf.PlusDays((int)(tip.Id % 90)),
        AtStake = 1000m + tip.Id,
        Standing = Standing.Open,
        What = "claim-of-lien.last-day",
        Findings = "{}"u8.ToArray(),
    };

    // Jobs as an office has them: a head of several parties, deliveries with refs, payments, a notice.
    private static IEnumerable<KeyedJob> Jobs(int count, int entries)
    {
        for (var i = 0; i < count; i++)
        {
            yield return new KeyedJob(i.ToString("D7", CultureInfo.InvariantCulture), new JobFile
            {
                Name = $"Municipality {i} yard, building {i % 9}",
                Work = new Work { Kind = WorkKind.Private, Site =
                    new Site { Street = $"{i} Alder Court", City = "Davis", Zip = "95616", County = "Yolo", Apn = $"070-{i:D6}-2" } },
                Claimant = new Claimant { Name = "Sierra Block Supply, Inc.", Role = ClaimantRole.Supplier, HiredBy = "p2" },
                Parties =
                [
                    new Party { Id = "p1", Capacity =
                        PartyCapacity.Owner, Name = $"Muñoz Holdings {i}, LLC", Address = "1 Main Street\nDavis, CA 95616" },
                    new Party { Id = "p2", Capacity = PartyCapacity.Subcontractor, Name = $"Nguyễn Masonry {i}" },
                ],
                Contract = new Contract { On = new LocalDate(2026, 1, 5), Written = true, Price = 84_250m },
                Entries = [.. Enumerable.Range(0, entries).Select(Delivery)],
            });
        }
    }

    private static Furnished Delivery(int i) => new()
    {
        Index = i,
        On = DayFact.On(new LocalDate(2026, 2, 1).PlusDays(i % 90)),
        Until = DayFact.On(new LocalDate(2026, 2, 1).PlusDays(i % 90)),
        Amount = 100m + i,
        Text = "Block, mortar, reinforcing steel",
        Ref = $"INV-{i}",
    };

    private static void Expect(long expected, long found)
    {
        if (expected != found)
            throw new InvalidOperationException($"{found} where {expected} should be.");
    }

    private static void Tell(string what, long count, string unit, Action work)
    {
        var processor = Process.GetCurrentProcess().TotalProcessorTime;
        var watch = Stopwatch.StartNew();
        work();
        var (wall, used) = (watch.Elapsed.TotalSeconds, (Process.GetCurrentProcess().TotalProcessorTime - processor).TotalSeconds);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{what,-42}{count,10:N0} {unit,-9}{wall,9:F3} s wall {used,9:F3} s processor {count
                / wall,12:N0} {unit}/s   peak {Process.GetCurrentProcess().PeakWorkingSet64 / 1048576,5} MB"));
    }
}
