using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>The law's words as somebody reads them who does not work with it.</summary>
internal static class LawForReaders
{
    private static readonly (string Law, string Reader)[] Words =
    [
        ("the one who contracted with it", "the party that contracted with it"),
        ("if a notice of cessation was recorded unseen", "a notice of cessation recorded, unknown to you,"),
        ("if a notice was recorded unseen", "a notice of completion recorded, unknown to you,"),
        ("ten days before recording, ", "ten days before the last day to record, which is "),
        ("90 days after knowing that work will not commence", "90 days after you knew that the work will not commence"),
        ("90 days after knowing it, at the latest", "90 days after the latest day on which you may have known it"),
        ("a notice of cessation was recorded unseen", "a notice of cessation was recorded without your knowing"),
        ("a notice was recorded unseen", "a notice of completion was recorded without your knowing"),
        ("(from memory)", "(not verified)"),
        (", from memory)", ", not verified)"),
        ("section as read", "published section"),
    ];

    private static readonly string[] NoNames =
        ["A", "An", "If", "In", "It", "No", "On", "One", "That", "The", "This", "What", "Where", "Whether",
        "Who"];

    /// <summary>A sentence of the law.</summary>
    public static string Of(string text)
    {
        foreach (var (law, reader) in Words)
            text = text.Replace(law, reader, StringComparison.Ordinal);
        return text;
    }

    /// <summary>A sentence that stands behind a colon, and so begins small, unless it begins with a name.</summary>
    public static string BehindColon(string sentence) =>
        Array.Exists(NoNames, word => sentence.StartsWith(word + " ", StringComparison.Ordinal))
        ? char.ToLowerInvariant(sentence[0]) + sentence[1..] : sentence;

    /// <summary>The name of a reading of the facts.</summary>
    public static string Of(Reading reading) => Of(reading.Name);

    /// <summary>
    /// Why a step of the amount is there, said to the one who owes: what is no work is kept out of a demand and not given up.
    /// </summary>
    public static string Of(WaterfallStep step) => step.Id == "charges-left-out" ? Charges([.. step.Why.Children.SelectMany(c => c.Facts)
        .OfType<Charged>()]) : Of(step.Why.Text);

    private static string Charges(IReadOnlyList<Charged> charged)
    {
        List<string> each = [.. charged.GroupBy(c => c.Of).Select(g => $"{Called(g.Key)} of {Dollars(g.Sum(c => c.Amount))}")];
        if (each.Count == 0)
            return "Charges that are not for work are not included and not waived.";
        var all = each.Count == 1 ? each[0] : $"{string.Join(", ", each.SkipLast(1))} and {each[^1]}";
        var isOne = charged.All(c => c.Of == charged[0].Of) && charged[0].Of is ChargeKind.Interest or ChargeKind.LostProfit;
        return $"{char.ToUpperInvariant(all[0])}{all[1..]} {(isOne ? "is" : "are")} not included and not waived.";
    }

    private static string Called(ChargeKind kind) => kind switch
    {
        ChargeKind.Interest => "interest",
        ChargeKind.Finance => "finance charges",
        ChargeKind.Delay => "delay charges",
        ChargeKind.LostProfit => "lost profit",
        ChargeKind.AttorneyFees => "attorney’s fees",
        ChargeKind.Other => "charges other than for work",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such charge."),
    };
}
