using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>
/// A notice left and mailed as for service of summons (Civ. Code §§ 8106(c), 9302). An entity is served by leaving it in the office
/// (subdivision (a)); a natural person only if it cannot with reasonable diligence be handed over.
/// </summary>
public static class LeftAndMailed
{
    /// <summary>Whether leaving and mailing was a way to give this notice to that party.</summary>
    /// <param name="numbers">The numbers of the law.</param>
    /// <param name="on">The day it was left.</param>
    /// <param name="tries">The tries to deliver it by hand before; null where the file does not say.</param>
    /// <param name="to">The party.</param>
    public static Verdict IsGood(NumberTable numbers, DayFact on, int? tries, Party to)
    {
        if (IsNaturalPerson(to) is false || tries >= TriesAsked(numbers, on).Count)
            return Verdict.Yes;
        // Subdivision (c): where a private mailbox is the only address known, the first try will do.
        return IsNaturalPerson(to) is true && tries == 0 && to.AddressKind != AddressKind.PostOfficeBox ? Verdict.No : Verdict.Open;
    }

    /// <summary>
    /// How many tries show reasonable diligence, by the text in force when the notice was left; a day in doubt is judged by its last day.
    /// Before
    /// 2027 two or three tries at a proper place were enough (Bein v. Brechtel-Jochim (1992) 6 Cal.App.4th 1387, from memory); since then
    /// three days, three times (Stats. 2025 ch. 563 §§ 4, 5).
    /// </summary>
    [Rule("Code Civ. Proc. § 415.20(b)", Sure = Sure.FromMemory)]
    [Rule("Code Civ. Proc. § 415.20(b)(2)")]
    public static NumberRow TriesAsked(NumberTable numbers, DayFact on) =>
        numbers.On(Number.TriesToDeliver, on.Latest ?? LocalDate.MinIsoValue);

    /// <summary>The section that asks for the tries.</summary>
    public static string Section(NumberTable numbers, DayFact on) => TriesAsked(numbers, on).Section;

    /// <summary>Whether the party is a natural person; null where the file does not say.</summary>
    public static bool? IsNaturalPerson(Party party) => party.NaturalPerson ?? party.Capacity switch
    {
        PartyCapacity.PublicEntity or PartyCapacity.Surety or PartyCapacity.Association => false,
        PartyCapacity.Owner or PartyCapacity.DirectContractor or PartyCapacity.Subcontractor or PartyCapacity.ConstructionLender
            or PartyCapacity.Supplier or PartyCapacity.Architect or PartyCapacity.OwnersAgent => OfTitle(party.HoldsTitleAs?.Form),
        _ => throw new InvalidOperationException($"No such capacity: {party.Capacity}."),
    };

    private static bool? OfTitle(TitleForm? form) => form switch
    {
        TitleForm.Company or TitleForm.PublicEntity => false,
        TitleForm.Individual or TitleForm.JointTenants => true,
        TitleForm.Trust or TitleForm.Estate or null => null,
        _ => throw new InvalidOperationException($"No such form of title: {form}."),
    };
}
