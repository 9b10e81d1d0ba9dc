using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>To which officer of the State the preliminary notice goes.</summary>
internal static class StateOfficer
{
    /// <summary>
    /// The finding <c>preliminary-notice.officer</c>; null where the work is not, and cannot be, of a department that the section names.
    /// </summary>
    [Rule("Civ. Code § 9302(b)")]
    public static Finding? Finding(FactsAsOf facts)
    {
        var body = facts.Job.Work.Body;
        if (PublicPayer.IsState(facts) != true || body == PublicBody.State)
            return null;
        return new Finding
        {
            Id = "preliminary-notice.officer",
            Title = "Officer of the State to whom the preliminary notice goes",
            Standing = body is null ? Standing.InDoubt : Standing.Open,
            Why =
            [
                body == PublicBody.Transportation
                    ? Reason.Of("Civ. Code § 9302(b)", $"Toward the Department of Public Works the preliminary notice shall be given to "
                        + $"its disbursing officer; that the Department of Transportation stands in its place is from memory: give it to "
                        + $"that officer.")
                    : Reason.Of("Civ. Code § 9302(b)", $"Toward the Department of General Services, and the Department of Public Works, "
                        + $"the preliminary notice shall be given to the disbursing officer of the department constructing the work."),
            ],
            Questions =
            [
                .. body is null
                    ? (Question[])[new Question($"Which department of the State contracted for the work?{HeadField.WorkBody:aside}")] : [],
                .. facts.PreliminaryNotices.Count > 0
                    ? (Question[])[
                        new Question($"Did the preliminary notice go to the disbursing officer of the department? If not, give it again to "
                            + $"that officer.{NoticeKinds.NoticeGiven.At("to"):aside}") { Corrects = facts.PreliminaryNotices[0] }] : [],
            ],
        };
    }
}
