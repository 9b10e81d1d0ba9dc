using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Text;

namespace Stringline.Mutate;

/// <summary>One small change to one file.</summary>
/// <param name="Tree">The file.</param>
/// <param name="Span">What is replaced.</param>
/// <param name="With">What stands there instead.</param>
/// <param name="Kind">Which kind of change.</param>
internal sealed record Mutant(SyntaxTree Tree, TextSpan Span, string With, MutantKind Kind)
{
    /// <summary>The file as it reads with the change.</summary>
    public SyntaxTree Changed()
    {
        var text = Tree.GetText();
        return CSharpSyntaxTree.ParseText(text.WithChanges(new TextChange(Span, With)), (CSharpParseOptions)Tree.Options, Tree.FilePath);
    }

    /// <summary>Line, counted from 1.</summary>
    public int Line => Tree.GetLineSpan(Span).StartLinePosition.Line + 1;

    /// <summary>What is replaced, on one line.</summary>
    public string Was => OneLine(Tree.GetText().ToString(Span));

    /// <summary>What stands there instead, on one line.</summary>
    public string Is => With.Length == 0 ? "(nothing)" : OneLine(With);

    private static string OneLine(string text)
    {
        var line = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Length <= 110 ? line : string.Concat(line.AsSpan(0, 107), "...");
    }
}

/// <summary>Kinds of change.</summary>
internal enum MutantKind
{
    /// <summary>A comparison moved by its boundary or turned round.</summary>
    Comparison,

    /// <summary>An arithmetic operator, or the larger for the smaller.</summary>
    Arithmetic,

    /// <summary>A number one higher or one lower.</summary>
    Number,

    /// <summary>A condition turned into its opposite, or one half of it dropped.</summary>
    Condition,

    /// <summary>A statement or the setting of a property left out.</summary>
    Removal,

    /// <summary>Another member of the same enumeration.</summary>
    OtherMember,

    /// <summary>The other end of a day in doubt.</summary>
    OtherEnd,
}

/// <summary>What became of a mutant.</summary>
internal enum Outcome
{
    /// <summary>A test failed.</summary>
    Killed,

    /// <summary>The tests did not end in time, so the change is seen.</summary>
    TimedOut,

    /// <summary>Every test passed.</summary>
    Survived,

    /// <summary>The compiler refuses it; it counts for nothing.</summary>
    DoesNotCompile,
}
