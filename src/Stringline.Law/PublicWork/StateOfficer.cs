using Stringline.Law.Facts;
using Stringline.Law.PromptPayment;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PublicWork;

/// <summary>To which officer of the State the notices go.</summary>
internal static class StateOfficer
{
    /// <summary>The finding <c>preliminary-notice.officer</c>; null where the work is none of the State's.</summary>
    [Rule("Civ. Code § 9302(b)")]
    [Rule("Civ. Code § 9354(b)(1)")]
    public static Finding? Finding(FactsAsOf facts)
    {
        if (PublicPayer.IsState(facts) != true)
            return null;
        var body = facts.Job.Work.Body;
        var why = new List<Reason>();
        if (body is not PublicBody.State)
        {
            why.Add(body == PublicBody.Transportation
                ? Reason.Of("Civ. Code § 9302(b)", $"Toward the Department of Public Works the preliminary notice shall be given to its disbursing officer; that the Department of Transportation stands in its place is from memory: give it to that officer.")
                : Reason.Of("Civ. Code § 9302(b)", $"Toward the Department of General Services, and the Department of Public Works, the preliminary notice shall be given to the disbursing officer of the department constructing the work."));
        }

        why.Add(Reason.Of("Civ. Code § 9354(b)(1)", $"A stop payment notice on a contract of the State is given to the director of the department that awarded it."));
        return new Finding
        {
            Id = "preliminary-notice.officer",
            Title = "Officer of the State to whom the notices go",
            Standing = body is null ? Standing.InDoubt : Standing.Open,
            Why = why,
            Questions =
            [
                .. body is null ? (Question[])[new Question("Which department of the State contracted for the work? (work.body)")] : [],
                .. body is not PublicBody.State && facts.PreliminaryNotices.Count > 0 ? (Question[])[new Question("Did the preliminary notice go to the disbursing officer of the department? If not, give it again to that officer. (notice-given.to)") { Corrects = facts.PreliminaryNotices[0] }] : [],
            ],
        };
    }
}
