using System.Text;
using Stringline.Law.Reasoning;

namespace Stringline.Cli.Terminal;

/// <summary>Draws reasons as a tree, each wrapped under its own branch.</summary>
internal static class ReasonTree
{
    /// <summary>Draws the reasons, one branch each.</summary>
    /// <param name="page">Where to.</param>
    /// <param name="reasons">The reasons.</param>
    /// <param name="trunk">What stands before every line: the trunks of the branches above.</param>
    public static void Draw(StringBuilder page, IReadOnlyList<Reason> reasons, string trunk = "")
    {
        for (var i = 0; i < reasons.Count; i++)
        {
            var isLast = i == reasons.Count - 1;
            var below = trunk + (isLast ? "   " : "│  ");
            var hasChildren = reasons[i].Children.Count > 0;
            page.Wrapped(Sentence(reasons[i]), trunk + (isLast ? "└─ " : "├─ "), below + (hasChildren ? "│  " : ""));
            Draw(page, reasons[i].Children, below);
        }
    }

    /// <summary>What a reason rests on: its section and its entries.</summary>
    public static string Grounds(Reason reason) =>
        string.Join("; ", ((string[])[Layout.Unbroken(reason.Section), string.Join(", ", reason.Facts.Select(fact => fact.Path))])
            .Where(text => text.Length > 0));

    private static string Sentence(Reason reason)
    {
        var grounds = Grounds(reason);
        return (reason.Applied ? "" : "Did not apply: ") + reason.Text.Replace("§ ", "§" + Layout.NoBreak, StringComparison.Ordinal)
            + (grounds.Length > 0 ? $" [{grounds}]" : "");
    }
}
