using Stringline.Law.Facts;
using Stringline.Law.Counting;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>The finding about an amount that the file does not settle.</summary>
internal static class AmountDoubt
{
    /// <summary>The finding <c>amount</c>; null where nothing is open about it.</summary>
    public static Finding? Finding(Amounts amounts)
    {
        var amount = amounts.Of(amounts.Main)!;
        var released = 0m;
        foreach (var waiver in amount.Waivers)
            released = waiver.Binds ? Math.Max(released, waiver.Released) : released;
        if (amount.Questions.Count == 0 && released == 0)
            return null;
        return new Finding
        {
            Id = "amount",
            Title = "Amount of the claim",
            Standing = amount.IsUnknown || amount.AtLeast != amount.AtMost ? Standing.InDoubt : Standing.Open,
            Amount = amount.Demand,
            Why = [Why(amount, released)],
            Questions = released == 0 ? amount.Questions : [.. amount.Questions, WhetherGivenUp(released)],
        };
    }

    private static Reason Why(Waterfall amount, decimal released)
    {
        var section = amount.Steps[0].Why.Section;
        if (amount.IsUnknown)
            return Reason.Of(section, $"The file does not say what the work done so far was worth, so the amount is not known.");
        if (amount.AtLeast != amount.AtMost)
            return Reason.Of(section,
                $"On the readings that are open it is between {amount.AtLeast} and {amount.AtMost}; {amount.Demand} is the figure to go "
                    + $"by.");
        return released > 0
            ? Reason.Of(section, $"A waiver and release takes {released} from the claim, and not from the debt.")
            : Reason.Of(section, $"{amount.Demand} is left of all that is entered.");
    }

    // A statutory release gives up lien, stop payment notice and bond rights; the debt ends by payment or agreement only.
    private static Question WhetherGivenUp(decimal released) =>
        new($"Was the {LawText.Money(released)} that a waiver and release takes from the claim given up by agreement, or is it still "
            + $"owed?{MoneyKinds.Paid:aside}", Dollars: released);
}
