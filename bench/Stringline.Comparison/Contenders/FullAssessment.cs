using Stringline.Comparison.Jobs;
using Stringline.Law;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Comparison.Contenders;

/// <summary>
/// The whole assessment of the law library: every remedy, amount, standing, reading and reason; the six days are read off it.
/// </summary>
/// <param name="readWhy">Whether every reason and question is also put together and put in words, as a page that shows them all
/// would.</param>
internal sealed class FullAssessment(bool readWhy) : Contender
{
    public override string Name => readWhy ? "Stringline, full assessment, every reason in words" : "Stringline, full assessment";

    /// <summary>Letters of the reasons put in words, so that nobody can leave the work out.</summary>
    public long Letters { get; private set; }

    public override void Answer(IReadOnlyList<ComparedJob> jobs, SixDays[] answers)
    {
        for (var i = 0; i < jobs.Count; i++)
        {
            var assessment = Assessment.Of(jobs[i].File, jobs[i].AsOf, OpenDays.Statutory);
            answers[i] = new SixDays(
                ActBy(assessment, "preliminary-notice.last-day"),
                ReachesBackTo(assessment.Find("preliminary-notice.reaches-back-to"), jobs[i].Plain),
                Day(assessment, "claim-of-lien.first-day"),
                ActBy(assessment, "claim-of-lien.last-day"),
                ActBy(assessment, "enforcement.last-day"),
                ActBy(assessment, "lis-pendens.last-day"));
            if (readWhy)
                Read(assessment);
        }
    }

    /// <summary>The library says of a notice in time that everything is within reach: from first furnishing on.</summary>
    internal static int ReachesBackTo(Finding? finding, PlainJob job) => finding switch
    {
        { Standing: Standing.Kept } => job.FirstFurnished,
        { Band: { } band } => Serial.Of(band.Earliest.Day),
        _ => 0,
    };

    private static int ActBy(Assessment assessment, string id) =>
        assessment.Find(id) is { ActBy: { } day } ? Serial.Of(day) : 0;

    private static int Day(Assessment assessment, string id) =>
        assessment.Find(id) is { Readings: [{ } only] } ? Serial.Of(only.Day) : 0;

    private void Read(Assessment assessment)
    {
        foreach (var finding in assessment.Findings)
        {
            foreach (var reason in finding.Why)
                Read(reason);
            foreach (var question in finding.Questions)
                Letters += question.Text.Length;
        }
    }

    private void Read(Reason reason)
    {
        Letters += reason.Text.Length;
        foreach (var child in reason.Children)
            Read(child);
    }
}
