using System.Text;
using CsCheck;
using Stringline.Office;
using Stringline.Cli.Terminal;
using Stringline.Tables;
using Stringline.Papers;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Preflight;
using Stringline.Papers.Tests;

namespace Stringline.Golden;

/// <summary>What the law and the papers say of a job on a day, without the desk.</summary>
internal static class Answers
{
    private const ulong Seed = 8_414;

    /// <summary>Keeps the assessment as JSON and as text, which has the steps of every amount, and every paper of the catalogue.</summary>
    public static void Of(GoldenJob job, LocalDate day, KeptTexts texts)
    {
        var iso = day.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
        var assessment = UseCases.Assess(job.Job, day);
        texts.Add($"{iso} assess --json", Encoding.UTF8.GetString(AssessmentJson.Write(assessment)));
        texts.Add($"{iso} assess", AssessmentText.Of(assessment));
        foreach (var paper in PaperCatalogue.All)
        {
            // As a draft on every other day: a draft is made whatever stands against it, and tells what does.
            var options = Request(job, paper.Id, day) with { Draft = (job.Number + day.DayOfYear) % 2 == 0 };
            texts.Add($"{iso} paper {paper.Id}", Text(PaperMaker.Make(paper.Id, job.Job, assessment, options)));
        }
    }

    // What fits the paper where the job knows the parties that it names, else what is drawn.
    private static PaperOptions Request(GoldenJob job, string paper, LocalDate day)
    {
        var drawn = PaperDraws.Options.Generate(new PCG((uint)job.Number, Seed + (ulong)day.DayOfYear), null, out _);
        var fitting = PaperJobs.For(paper).Options;
        var ids = job.Job.Parties.Select(party => party.Id).ToHashSet();
        var options = job.Number % 3 == 0 ? drawn : fitting with { To = [.. fitting.To.Where(ids.Contains)] };
        return PaperJobs.Typed(paper, job.Job, day, options);
    }

    private static string Text(PacketOutcome outcome)
    {
        var text = new StringBuilder();
        if (outcome is PacketOutcome.Refused refused)
            return text.AppendJoin('\n', refused.Refusals.Select(r => $"{r.Id}: {r}")).ToString();
        var made = (PacketOutcome.Made)outcome;
        text.AppendJoin('\n', made.InTheWay.Select(r => $"{r.Id}: {r}"))
            .Append('\n').Append(made.Fee?.Total).Append('\n').Append(made.Outlook).Append('\n');
        foreach (var (file, report) in made.Files.Zip(made.Preflight))
        {
            text.Append(
                CultureInfo.InvariantCulture, $"{file.Name}: {file.Title}: {file.Pages}: {file.Addressee}: {file.IsSheet}\n{report}\n");
            foreach (var page in ReadBack.Of(file.Bytes).Pages)
            {
                foreach (var line in page.Lines)
                {
                    var (left, baseline) = (Math.Round(line[0].Left), Math.Round(line[0].Baseline));
                    text.Append(CultureInfo.InvariantCulture, $"{left},{baseline} ")
                        .AppendJoin(' ', line.Select(word => word.Text)).Append('\n');
                }
            }
        }

        return text.ToString();
    }
}
