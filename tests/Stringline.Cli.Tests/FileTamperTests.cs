using System.Globalization;
using System.Text;
using Stringline.Office.DemoOffice;
using Stringline.Office.Portfolio;
using Stringline.Office.Settings;
using Stringline.Tables;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>
/// One byte of a store's file is changed, anywhere. Whatever then shows something else anywhere, in the list, the calendar, the files, the
/// search, the settings or a job, is found by a check or refused at the door; nothing but a plain refusal comes out; and what is only
/// derived is mended. <c>bench/tamper</c> runs it a thousand times.
/// </summary>
[Slow(Slow.Fuzz)]
public sealed class FileTamperTests : IDisposable
{
    private static readonly LocalDate Today = new(2026, 7, 15);
    private static readonly int Tries = Rounds.Of("STRINGLINE_TAMPERS", 20);

    private readonly string folder = Scratch.Folder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    [Attack("one byte of the store’s file changed")]
    public void A_byte_changed_in_the_file_that_changes_anything_shown_is_found_and_what_is_derived_is_mended()
    {
        var file = Filled();
        var sound = At(file, "sound");
        var shown = Shown(sound);
        Assert.True(Check(sound) is { IsWhole: true });
        var seed = Environment.GetEnvironmentVariable("STRINGLINE_SEED") is { } given
            ? int.Parse(given, CultureInfo.InvariantCulture) : Random.Shared.Next();
        var random = new Random(seed);
        int changed = 0, refused = 0, harmless = 0, mended = 0, warned = 0;
        var faults = new List<string>();
        for (var i = 0; i < Tries; i++)
        {
            var place = random.Next(file.Length);
            var bytes = file.ToArray();
            bytes[place] ^= (byte)(1 + random.Next(255));
            var store = At(bytes, $"byte-{i}");
            try
            {
                var report = Check(store);
                var now = Shown(store);
                var found = report is not { IsWhole: true };
                if (!found && now != shown)
                    throw new InvalidOperationException("Not found. " + Difference(shown, now));
                _ = now != shown ? changed++ : found ? warned++ : harmless++;
                refused += report is null ? 1 : 0;
                if (report is { IsWhole: false, JournalIsWhole: true } && report.Broken.All(link => link.Part == StorePart.Derived)
                    && Mended(store))
                {
                    mended++;
                    if (Shown(store) is var after && after != shown)
                        throw new InvalidOperationException("Mended otherwise than it was. " + Difference(shown, after));
                }
            }
            catch (Exception e)
            {
                faults.Add($"Byte {place}, {file[place]:x2} to {bytes[place]:x2}, seed {seed}: {e}");
            }

            Remove(store);
        }

        TestContext.Current.TestOutputHelper!.WriteLine(
            $"{Tries} bytes of {file.Length}: {changed} changed what is shown, all of them found, {refused} of them at the "
                + $"door; {harmless} changed nothing and were not told, "
            + $"{warned} were told though nothing shown changed; {mended} were mended by assessing "
            + $"anew; {faults.Count} faults. Seed {seed}.");
        Assert.True(faults.Count == 0, string.Join("\n\n", faults));
        AttackAttribute.Tried(Tries);
    }

    private byte[] Filled()
    {
        var path = Path.Combine(folder, "office");
        using (var journal = Journals.Open(path, new StoppedClock(Noon()), OpenStore.OrMake))
        {
            Assert.Empty(journal.PutMany(DemoJobs.Of(Today), "demo").Faults);
            var job = journal.Read(1)!;
            var proof = Assert.IsType<ProofResult.Taken>(
                Proof.Of("receipt.pdf", Encoding.ASCII.GetBytes("%PDF-1.7\n% article 7019\ntrailer << >>\n%%EOF\n"))).Proof;
            Assert.IsType<AppendOutcome.Appended>(journal.Append(1, job.Tip.Sequence, [new JobChange.Proved(2, [proof])], "ana"));
            Assert.True(journal.WriteSettings(null, (OfficeSettings.Default with { Name = "Yolo Block & Stone" }).Document()));
            new Portfolio(journal).RefreshStale(Today, 1);
            journal.MakeSeal();
        }

        return File.ReadAllBytes(path);
    }

    private string At(byte[] bytes, string name)
    {
        var path = Path.Combine(folder, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    private static void Remove(string path)
    {
        foreach (var end in (string[])["", "-wal", "-shm", "-journal"])
            File.Delete(path + end);
    }

    /// <summary>The check; null where the store is refused at the door.</summary>
    private static CheckReport? Check(string path)
    {
        try
        {
            using var journal = Journals.Open(path, SystemClock.Instance, OpenStore.ReadOnly);
            return journal.Check();
        }
        catch (StoreException)
        {
            return null;
        }
    }

    private static bool Mended(string path)
    {
        try
        {
            using (var journal = Journals.Open(path, SystemClock.Instance))
                new Portfolio(journal).RefreshAnew(Today, 1);
            return Check(path) is { IsWhole: true };
        }
        catch (StoreException)
        {
            // Where the file is so damaged that a derived table cannot be emptied, a backup has to be restored; it is said so.
            return false;
        }
    }

    /// <summary>Everything that is shown, as text; a plain refusal is what is shown where there is one.</summary>
    private static string Shown(string path)
    {
        var text = new StringBuilder();
        Part(text, () =>
        {
            using var journal = Journals.Open(path, new StoppedClock(Noon()));
            Part(text, () => Lines(text, DeskSheet.All(journal, StepFilter.None)));
            Part(text, () => text.Append(Encoding.UTF8.GetString(DeskCalendar.Of(journal, StepFilter.None, Today, [14, 3]))));
            Part(text, () => Lines(text, journal.StepTotals(StepFilter.None, [Today, Today.PlusDays(6), Today.PlusDays(30)])));
            Part(text, () => Lines(text, journal.Watches(StepFilter.None, Today.PlusDays(30))));
            Part(text, () => Lines(text, journal.Customers(Today, "", 1000)));
            Part(text, () => Lines<string>(text, journal.Choices(100) is var choices
                ? [.. choices.Customers, .. choices.Counties, .. choices.Persons, .. choices.Remedies] : []));
            Part(text, () => Lines(text, journal.Desk(new DeskPage(1000)).Select(line =>
                (line.Job, line.Assessed with { Findings = default }, Encoding.UTF8.GetString(line.Assessed.Findings.Span)))));
            Part(text, () => text.Append(OfficeSettings.Of(journal)).Append(OfficeSettings.Of(journal).Document()));
            Part(text, () =>
                Lines<object>(text, [journal.CountJobs(), journal.CountAssessed(Portfolio.Rules(OfficeSettings.Of(journal).Plan), Today)]));
            for (var id = 1L; id <= 60; id++)
                Part(text, () => Job(text, journal, id));
            foreach (var word in (string[])["court", "2026", "yard", "school", "inc", "a", "street", "inv", "9589"])
                Part(text, () => Lines(text, journal.Search(word, 100).Select(hit => hit.Job + string.Join('|', hit.Where))));
        });
        return text.ToString();
    }

    private static void Job(StringBuilder text, IJournal journal, long id)
    {
        if (journal.Read(id) is not { } job)
            return;
        text.Append(job.Tip).Append('\n');
        foreach (var row in job.Rows)
        {
            text.Append(row with { Payload = default, Proofs = [] }).Append(Encoding.UTF8.GetString(row.Payload.Span)).Append('\n');
            foreach (var link in row.Proofs)
                text.Append(link).Append(journal.ReadProof(link) is { } proof ? ContentHash.Of(proof.Content.Span) : null).Append('\n');
        }

        text.Append(Encoding.UTF8.GetString(AssessmentJson.Write(UseCases.Assess(job.Job, Today))));
    }

    private static void Lines<T>(StringBuilder text, params IEnumerable<T> lines) => text.AppendJoin('\n', lines).Append('\n');

    private static void Part(StringBuilder text, Action show)
    {
        try
        {
            show();
        }
        catch (StoreException e)
        {
            text.Append("refused: ").Append(e.Fault).Append('\n');
        }
    }

    private static string Difference(string one, string other)
    {
        var at = one.Zip(other).TakeWhile(pair => pair.First == pair.Second).Count();
        return $"was: {Around(one, at)}; is: {Around(other, at)}";
    }

    private static string Around(string text, int at) => text[Math.Max(0, Math.Min(at, text.Length) - 60)..Math.Min(text.Length, at + 60)];

    private static Instant Noon() =>
        Today.At(new LocalTime(12, 0)).InZoneLeniently(DateTimeZoneProviders.Tzdb["America/Los_Angeles"]).ToInstant();
}
