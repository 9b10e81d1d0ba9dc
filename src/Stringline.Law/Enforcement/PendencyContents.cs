using Stringline.Law.Facts;

namespace Stringline.Law.Enforcement;

/// <summary>What a notice of pendency of action must say, and a file may lack.</summary>
public enum PendencyLack
{
    /// <summary>The action: none is entered.</summary>
    Action,

    /// <summary>The court.</summary>
    Court,

    /// <summary>The case number.</summary>
    CaseNumber,

    /// <summary>The description of the property that the action affects.</summary>
    Description,
}

/// <summary>The contents of a notice of pendency of action.</summary>
public static class PendencyContents
{
    /// <summary>What the notice must say and the file does not hold, in the order of the notice.</summary>
    /// <param name="action">The action; null where none is entered.</param>
    /// <param name="site">The property.</param>
    [Rule("Code Civ. Proc. § 405.20")]
    public static IReadOnlyList<PendencyLack> Lacks(ActionFiled? action, Site site)
    {
        List<PendencyLack> lacks = [];
        if (action is null)
            lacks.Add(PendencyLack.Action);
        if (action is not null && string.IsNullOrWhiteSpace(action.Court))
            lacks.Add(PendencyLack.Court);
        if (action is not null && string.IsNullOrWhiteSpace(action.Case))
            lacks.Add(PendencyLack.CaseNumber);
        if (string.IsNullOrWhiteSpace(site.Legal))
            lacks.Add(PendencyLack.Description);
        return lacks;
    }
}
