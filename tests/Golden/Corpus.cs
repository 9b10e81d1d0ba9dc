using CsCheck;
using NodaTime.Text;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Papers.Tests;
using Stringline.Testing;

namespace Stringline.Golden;

/// <summary>A job of the run: its file, and the day about which its five days lie.</summary>
/// <param name="Number">Its number, from 0.</param>
/// <param name="Job">The file, read back from JSON as a user's would be.</param>
/// <param name="Day">The day.</param>
internal sealed record GoldenJob(int Number, JobFile Job, LocalDate Day)
{
    /// <summary>The days on which it is asked: the first before the others, so that later entries are not known yet.</summary>
    public IList<LocalDate> Days { get; } =
        [Day.PlusDays(-30), Day, Day.PlusDays(17), Day.PlusDays(75), Day.PlusDays(300)];
}

/// <summary>
/// The jobs of the run. They are written once, by the code before a change, and read by both: a change of what draws them changes nothing.
/// </summary>
internal static class Corpus
{
    /// <summary>How many random files are made if nothing else is said.</summary>
    public const int Usual = 3000;

    private const ulong Seed = 20_261_201;

    private static readonly LocalDate DemoDay = new(2026, 7, 15);

    // Anything that the format can say; lien jobs over half a year and over few days; jobs about each remedy's periods; and jobs that fit
    // a paper with some of their texts made strange.
    private static readonly Gen<(JobFile Job, LocalDate AsOf)>[] Kinds =
    [
        Gen.Select(JobFileGen.Job, JobFileGen.Day),
        Gen.Select(LienJobGen.HalfAYear.Journal, LienJobGen.HalfAYear.AsOf),
        RemedyJobGen.Asked,
        PaperDraws.Files,
        Gen.Select(LienJobGen.Crowded.Journal, LienJobGen.HalfAYear.AsOf),
    ];

    /// <summary>Writes the demo jobs and so many random ones into a folder.</summary>
    public static int Make(string folder, int count)
    {
        Directory.CreateDirectory(folder);
        var number = 0;
        foreach (var demo in Directory.GetFiles(Repository.Path("data/demo"), "*.json").Order(StringComparer.Ordinal))
            File.Copy(demo, Path.Combine(folder, Name(number++, DemoDay)), overwrite: true);
        var refused = 0;
        for (ulong draw = 0; number < count + 5; draw++)
        {
            var (job, day) = Kinds[number % Kinds.Length].Generate(new PCG((uint)draw, Seed + draw), null, out _);
            if (Written(job) is not { } bytes)
                refused++;
            else
                File.WriteAllBytes(Path.Combine(folder, Name(number++, day)), bytes);
        }

        Console.WriteLine($"{number} files written to {folder}; {refused} more were drawn that the format refuses.");
        return 0;
    }

    /// <summary>Reads them.</summary>
    public static IReadOnlyList<GoldenJob> Read(string folder) =>
    [
        .. Directory.GetFiles(folder, "*.json").Order(StringComparer.Ordinal).Select(path =>
            Path.GetFileNameWithoutExtension(path).Split('_') is [var number, var day]
            && JobFileReader.ReadFile(path) is JobFileResult.Read read
            ? new GoldenJob(int.Parse(number, CultureInfo.InvariantCulture), read.Job, LocalDatePattern.Iso.Parse(day).Value)
            : throw new InvalidOperationException($"{path} is no job of the run: it was made by \"make\" and is read by the same reader.")),
    ];

    private static string Name(int number, LocalDate day) =>
        string.Create(CultureInfo.InvariantCulture, $"{number:00000}_{day:uuuu-MM-dd}.json");

    // A drawn job that no file can say, such as a payment toward a delivery that it does not have, is passed over.
    private static byte[]? Written(JobFile job)
    {
        byte[] bytes;
        try
        {
            bytes = JobFileWriter.Write(job);
        }
        catch (ArgumentException)
        {
            return null;
        }

        return JobFileReader.Read(bytes, "drawn.json") is JobFileResult.Read ? bytes : null;
    }
}
