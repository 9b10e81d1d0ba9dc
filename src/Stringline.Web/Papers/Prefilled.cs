using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;

namespace Stringline.Web.Papers;

/// <summary>What a paper that was just made says of the entry that follows it, as a form is given it.</summary>
internal static class Prefilled
{
    /// <summary>What stands before the name of a field in an address.</summary>
    public const string Lead = "p.";

    /// <summary>The field's name in the job file, and its value as written there.</summary>
    public static (string Field, string Value) Of(Filled filled) => filled switch
    {
        Filled.Person to => ("to", to.Party),
        Filled.By by => ("manner", JobFileWords.Word(by.Manner)),
        Filled.Notice notice => ("notice", JobFileWords.Word(notice.Kind)),
        Filled.Form form => ("form", JobFileWords.Word(form.Is)),
        Filled.Sum sum => (sum.Field, MoneyText.Write(sum.Dollars)),
        Filled.Day day => (day.Field, DayText.Write(day.On)),
        Filled.Ticked box => (box.Field, "true"),
        _ => throw new ArgumentOutOfRangeException(nameof(filled), filled, "No such field."),
    };
}
