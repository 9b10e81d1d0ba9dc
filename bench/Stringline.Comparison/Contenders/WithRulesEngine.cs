using RulesEngine.Models;
using Stringline.Comparison.Jobs;

namespace Stringline.Comparison.Contenders;

/// <summary>RulesEngine: six rules as texts of C#, compiled once; a rule's output is its answer.</summary>
internal sealed class WithRulesEngine : Contender
{
    private const string Six = "six days";

    private readonly RulesEngine.RulesEngine engine = new(
        [new Workflow { WorkflowName = Six, Rules = [.. Rules()] }],
        new ReSettings { CustomTypes = [typeof(ClosedDays), typeof(Math)] });

    public override string Name => "RulesEngine 6.0.1";

    public override void Answer(IReadOnlyList<ComparedJob> jobs, SixDays[] answers)
    {
        for (var i = 0; i < jobs.Count; i++)
        {
            var asked = engine.ExecuteAllRulesAsync(Six, new RuleParameter("job", jobs[i].Plain));
            // Nothing here waits for anything, so the answer is there at once.
            var results = asked.IsCompletedSuccessfully ? asked.Result : asked.AsTask().GetAwaiter().GetResult();
            answers[i] = new SixDays(Day(results[0]), Day(results[1]), Day(results[2]), Day(results[3]), Day(results[4]), Day(results[5]));
        }
    }

    private static int Day(RuleResultTree result) => result.ActionResult switch
    {
        { Exception: { } error } =>
            throw new InvalidOperationException($"RulesEngine failed on the rule \"{result.Rule.RuleName}\".", error),
        { Output: int day } => day,
        _ => 0,
    };

    private static IEnumerable<Rule> Rules()
    {
        yield return Always("notice by", "ClosedDays.OpenOnOrBefore(job.FirstFurnished + 20)");
        yield return Either("reaches back to", "job.NoticeGiven <= job.FirstFurnished + 20", "job.FirstFurnished", "job.NoticeGiven - 20");
        yield return Always("claim from", "job.Ended + 1");
        yield return Either(
            "claim by",
            "job.OwnerRecorded >= job.Completed && job.OwnerRecorded <= job.Completed + 15 && job.CopyMailed > 0 && job.CopyMailed <= "
                + "job.OwnerRecorded + 10",
            "ClosedDays.OpenOnOrBefore(Math.Min(job.Completed + 90, job.OwnerRecorded + (job.Direct ? 60 : 30)))",
            "ClosedDays.OpenOnOrBefore(job.Completed + 90)");
        yield return Always("sue by", "ClosedDays.OpenOnOrBefore(job.ClaimRecorded + 90)");
        yield return Always("lis pendens by", "ClosedDays.OpenOnOrBefore(job.ActionFiled + 20)");
    }

    private static Rule Always(string name, string answer) =>
        new() { RuleName = name, Expression = "true", Actions = new RuleActions { OnSuccess = Output(answer) } };

    private static Rule Either(string name, string condition, string then, string otherwise) =>
        new() { RuleName =
            name, Expression = condition, Actions = new RuleActions { OnSuccess = Output(then), OnFailure = Output(otherwise) } };

    private static ActionInfo Output(string expression) =>
        new() { Name = "OutputExpression", Context = new Dictionary<string, object> { ["expression"] = expression } };
}
