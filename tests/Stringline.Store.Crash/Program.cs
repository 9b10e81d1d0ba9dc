using System.Globalization;
using Stringline.Law.Facts;
using Stringline.Store;

// Writes to a store until it is killed. It first writes to a store for practice, so that it is quick when told to go; then it reads
// the real store's path from standard input and says each change that the journal acknowledged: job, sequence, hash, full stop.
const int Practice = 4;
const int Group = 3;

var practice = Path.Combine(Directory.CreateTempSubdirectory("stringline-practice-").FullName, "practice");
Write(practice, Practice, TextWriter.Null);
Directory.Delete(Path.GetDirectoryName(practice)!, recursive: true);
Console.Out.WriteLine("ready");
Console.Out.Flush();
if (Console.In.ReadLine() is not { } path)
    return 1;
Write(path, int.MaxValue, Console.Out);
return 0;

static void Write(string path, int rounds, TextWriter acknowledged)
{
    using var journal = Journals.Open(path, SystemClock.Instance, OpenStore.OrMake);
    var jobs = journal.Tips().ToList();
    for (var round = 0; round < rounds; round++)
    {
        if (jobs.Count < 3 || round % 10 == 9)
        {
            var id = journal.Put(new KeyedJob(Guid.NewGuid().ToString(), Job(Group)), "crash") is PutOutcome.Added added
                ? added.Job : throw new InvalidOperationException("Not added.");
            jobs.Add(journal.Read(id)!.Tip);
            Acknowledge(acknowledged, jobs[^1]);
            continue;
        }

        // Always a whole group, sometimes with a paper: where part of a group is found, a change was written by halves.
        var at = round % jobs.Count;
        var paper = (ProofResult.Taken)Proof.Of("receipt.pdf",
            System.Text.Encoding.ASCII.GetBytes($"%PDF-1.7\n% {Guid.NewGuid()}\n%%EOF\n"));
        List<JobChange> changes =
            [.. Enumerable.Range(0, Group)
                .Select(i => new JobChange.Happened(Delivery(i)) { Proofs = i == 0 && round % 2 == 0 ? [paper.Proof] : [] })];
        if (journal.Append(jobs[at].Id, jobs[at].Sequence, changes, "crash") is not AppendOutcome.Appended appended)
            throw new InvalidOperationException("Not appended.");
        jobs[at] = jobs[at] with { Sequence = appended.Sequence, Hash = appended.Hash };
        Acknowledge(acknowledged, jobs[at]);
    }
}

static void Acknowledge(TextWriter writer, JobTip tip)
{
    writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{tip.Id} {tip.Sequence} {tip.Hash} ."));
    writer.Flush();
}

static JobFile Job(int entries) => new()
{
    Name = "Alder Court",
    Work = new Work { Kind = WorkKind.Private, Site = new Site { County = "Yolo" } },
    Claimant = new Claimant { Name = "Sierra Block Supply, Inc.", Role = ClaimantRole.Supplier },
    Entries = [.. Enumerable.Range(0, entries).Select(Delivery)],
};

static Furnished Delivery(int index) => new()
{
    Index = index,
    On = DayFact.On(new LocalDate(2026, 3, 2)),
    Until = DayFact.On(new LocalDate(2026, 3, 2)),
    Amount = 125.50m,
    Text = "Block, one pallet",
};
