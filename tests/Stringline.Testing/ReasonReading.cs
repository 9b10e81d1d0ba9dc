using Stringline.Law.Reasoning;

namespace Stringline.Testing;

/// <summary>Short ways to read in a test what a finding rests on.</summary>
public static class ReasonReading
{
    /// <summary>The places in the file of the entries on which the reasons of a section that applied hang, each once, in order.</summary>
    public static int[] HangsOn(this Finding finding, string section) =>
        [.. finding.Why.Tree().Where(r => r.Applied && r.Section == section).SelectMany(r => r.Facts).Select(e => e.Index).Distinct()
            .Order()];

    /// <summary>The places of the entries on which the reasons that say the words hang, whether they applied or not.</summary>
    public static int[] EntriesOf(this Finding finding, string words) =>
        [.. finding.Why.Tree().Where(r => r.Text.Contains(words, StringComparison.Ordinal)).SelectMany(r => r.Facts).Select(e => e.Index)
            .Distinct().Order()];

    /// <summary>Whether a road not taken, at any depth, says the words.</summary>
    public static bool PassesOver(this Finding finding, string words) =>
        finding.Why.Tree().Any(r => !r.Applied && r.Text.Contains(words, StringComparison.Ordinal));

    /// <summary>The places of the entries that the questions with the words would correct; -1 for a question that corrects none.</summary>
    public static int[] Corrected(this Finding finding, string words) =>
        [.. finding.Questions.Where(q => q.Text.Contains(words, StringComparison.Ordinal)).Select(q => q.Corrects?.Index ?? -1)];
}
