using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>Where the two readers part, on one finding of one file.</summary>
/// <remarks>Its kind is <c>standing</c> or one of the three rules of the day to act by.</remarks>
internal sealed record Disagreement(ulong Seed, string Id, string Kind, string Library, string Checker);

/// <summary>Reads one file twice and compares the answers.</summary>
internal static class Comparison
{
    public static void Of(ulong seed, JobFile job, LocalDate asOf, Action<Disagreement> parted, Action<Finding, Reading>? counted = null,
        Action<string>? unread = null)
    {
        var assessment = Assessment.Of(job, asOf, OpenDays.Statutory);
        var matter = new Matter(job, asOf);
        var world = new World(matter);
        foreach (var finding in assessment.Findings)
        {
            ActBy(seed, finding, asOf, parted);
            if (SecondReader.Of(finding.Id, job.Work.Kind) is not { } remedy)
            {
                if (!SecondReader.IsLeftOut(finding.Id))
                    unread?.Invoke(finding.Id);
                continue;
            }

            var reading = finding.Id == "license" ? matter.License : world.Everywhere(remedy);
            counted?.Invoke(finding, reading);
            if (!reading.Allows(finding.Standing))
                parted(new Disagreement(seed, finding.Id, "standing", finding.Standing.Word(),
                    $"{reading.May} in {reading.Worlds} worlds"));
            if (finding is { Id: "completion.day", Standing: Standing.Done } && !reading.OneDay)
                parted(new Disagreement(seed, finding.Id, "several days", "done", $"in {reading.Worlds} worlds"));
            if (reading.GaveUp || finding.ActBy is not { } actBy || finding.Standing is Standing.Kept or Standing.Done or Standing.Lost)
                continue;
            if ((reading.Next ?? reading.First) is { } last && actBy > PlainCalendar.OpenOnOrBefore(last))
                parted(new Disagreement(seed, finding.Id, "act-by later", $"{finding.Standing.Word()} {LawText.IsoDay(actBy)}",
                    LawText.IsoDay(PlainCalendar.OpenOnOrBefore(last))));
        }
    }

    /// <summary>The answers of a remedy in each world, with what was chosen there.</summary>
    public static string Worlds(JobFile job, LocalDate asOf, string id)
    {
        var matter = new Matter(job, asOf);
        var world = new World(matter);
        var told = new List<string>();
        world.Everywhere(w =>
        {
            var answer = SecondReader.Of(id, job.Work.Kind)!(w);
            if (told.Count < 8)
                told.Add($"    {answer.May} {answer.Last?.ToString("uuuu-MM-dd", null)} [{w.Chosen}]");
            return answer;
        });
        return string.Join('\n', told);
    }

    private static void ActBy(ulong seed, Finding finding, LocalDate asOf, Action<Disagreement> parted)
    {
        if (finding.ActBy is not { } actBy)
            return;
        if (finding.Standing is Standing.Open or Standing.NotYet && actBy < asOf)
            parted(new Disagreement(seed, finding.Id, "act-by passed", $"{finding.Standing.Word()} {LawText.IsoDay(actBy)}",
                $"asked {LawText.IsoDay(asOf)}"));
        if (actBy.Year <= PlainCalendar.LastYear && PlainCalendar.IsClosed(actBy))
            parted(new Disagreement(seed, finding.Id, "act-by closed", LawText.IsoDay(actBy), "closed"));
    }
}
