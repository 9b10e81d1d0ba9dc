using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Law.Facts;

namespace Stringline.Office.Entering;

/// <summary>What a waiver and release does, said before it is saved.</summary>
internal static class WaiverWords
{
    /// <summary>In words; null where the entry is no waiver that the assessment weighs.</summary>
    public static string? Of(Entry entry, Assessment after)
    {
        if (entry is not Waived waived
            || after.Amount.Waivers.FirstOrDefault(effect => effect.Waiver.Index == waived.Index) is not { } effect)
            return null;
        var released = LawText.Money(effect.Released);
        if (waived.Form is WaiverForm.UnconditionalProgress or WaiverForm.UnconditionalFinal)
        {
            return effect.Binds
                ? $"This waiver binds on signing, paid or not; it releases {released} of work that is unpaid today."
                : $"This form binds on signing, paid or not. As entered it is not taken to bind yet; it would "
                    + $"release {released} of work that is unpaid today.";
        }

        return effect.Binds
            ? $"This waiver binds, since the payment it describes cleared; it releases {released} of work."
            : $"This waiver does not bind until the payment it describes clears; then it releases {released} of work.";
    }
}
