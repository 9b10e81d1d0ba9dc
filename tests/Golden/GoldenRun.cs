namespace Stringline.Golden;

/// <summary>Asks everything of every job and keeps the texts, a file a job and one for every block of jobs that share an office.</summary>
internal static class GoldenRun
{
    private const int Block = 50;

    /// <summary>Runs.</summary>
    /// <param name="corpus">The folder of the jobs.</param>
    /// <param name="kept">The folder for the texts; what an earlier run left there is written over.</param>
    public static async Task<int> OfAsync(string corpus, string kept)
    {
        Directory.CreateDirectory(kept);
        var jobs = Corpus.Read(corpus);
        var done = 0;
        var cores = new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount };
        await Parallel.ForEachAsync(jobs.Chunk(Block), cores, async (block, stop) =>
        {
            var desk = await GoldenDesk.OpenAsync(block).ConfigureAwait(false);
            await using (desk.ConfigureAwait(false))
            {
                foreach (var job in block)
                {
                    var texts = new KeptTexts();
                    foreach (var day in job.Days)
                    {
                        Answers.Of(job, day, texts);
                        await desk.OfAsync(job, day, texts).ConfigureAwait(false);
                    }

                    texts.Write(Path.Combine(kept, string.Create(CultureInfo.InvariantCulture, $"{job.Number:00000}.br")));
                }

                var office = new KeptTexts();
                await desk.OfAllAsync(office).ConfigureAwait(false);
                office.Write(Path.Combine(kept, string.Create(CultureInfo.InvariantCulture, $"office-{block[0].Number:00000}.br")));
            }

            Console.WriteLine($"{Interlocked.Add(ref done, block.Length)} of {jobs.Count} jobs");
        }).ConfigureAwait(false);
        return 0;
    }
}
