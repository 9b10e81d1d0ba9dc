using Stringline.Law.Facts;
using Stringline.Office.Import;

namespace Stringline.Answers;

/// <summary>A request to import as an office of a supplier would make it; its name is invented.</summary>
public static class SupplierRequest
{
    /// <summary>The request, with every question that an import asks answered.</summary>
    /// <param name="files">The tables.</param>
    public static ImportRequest Of(params string[] files) => new(files, "ana")
    {
        Claimant = "Marlpit Lumber Co.",
        Role = ClaimantRole.Supplier,
        County = "Yolo",
        CustomerIs = PartyCapacity.Subcontractor,
        Work = WorkKind.Private,
        Confirmed = ImportQuestions.Ids,
    };
}
