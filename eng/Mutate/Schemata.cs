using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Stringline.Mutate;

/// <summary>
/// Many mutants in one assembly: every member that a mutant changes becomes a switch over copies of itself, one as it was and one
/// for each mutant, so that the compiler works once and not once for each. What cannot be copied, such as a constant or a
/// constructor, is left to a compilation of its own.
/// </summary>
internal static class Schemata
{
    private const string Suffix = "__m";

    /// <summary>The type whose field Active says which mutant is at work; -1 for none.</summary>
    public const string SwitchType = "Stringline.Law.MutantSwitch";

    /// <summary>The exception by which a mutant that never ends is stopped.</summary>
    public const string NeverEnds = "MutantNeverEnds";

    /// <summary>The switch itself. Loops that ask too often within one test are taken to be without end.</summary>
    public const string SwitchSource = """
        namespace Stringline.Law;
        internal sealed class MutantNeverEnds : System.Exception { }
        internal static class MutantSwitch
        {
            public static int Active = -1;
            public static long Ticks;
            public static System.Collections.Generic.HashSet<int>? Hits;
            public static void Hit(int member) => Hits?.Add(member);
            public static bool Tick() => ++Ticks <= 20_000_000 ? true : throw new MutantNeverEnds();
        }
        """;

    /// <summary>The member of which a mutant needs a copy; null where a copy is not possible.</summary>
    public static SyntaxNode? Home(Mutant mutant)
    {
        var node = mutant.Tree.GetRoot().FindNode(mutant.Span, getInnermostNodeForTie: true);
        foreach (var member in node.AncestorsAndSelf())
        {
            switch (member)
            {
                case MethodDeclarationSyntax method:
                    return (method.Body ?? (SyntaxNode?)method.ExpressionBody)?.Span.Contains(mutant.Span) == true ? method : null;
                case PropertyDeclarationSyntax { ExpressionBody: { } arrow } property:
                    return arrow.Span.Contains(mutant.Span) ? property : null;
                case PropertyDeclarationSyntax {
                    AccessorList.Accessors: [{ Keyword.RawKind: (int)SyntaxKind.GetKeyword, Body: { } body }] } property:
                    return body.Span.Contains(mutant.Span) ? property : null;
                case PropertyDeclarationSyntax { Initializer: { } value } property when property.Modifiers.Any(SyntaxKind.StaticKeyword):
                    return value.Value.Span.Contains(mutant.Span) ? property : null;
                case FieldDeclarationSyntax { Declaration.Variables: [{ Initializer: { } value }] } field
                    when field.Modifiers.Any(SyntaxKind.StaticKeyword):
                    return value.Value.Span.Contains(mutant.Span) ? field : null;
                case BaseTypeDeclarationSyntax or BaseMethodDeclarationSyntax or BasePropertyDeclarationSyntax
                    or BaseFieldDeclarationSyntax:
                    return null;
            }
        }

        return null;
    }

    /// <summary>
    /// Whether the mutant changes what is worked out once and kept, so that it is seen in a load context of its own only.
    /// </summary>
    public static bool IsWorkedOutOnce(Mutant mutant) =>
        Home(mutant) is FieldDeclarationSyntax or PropertyDeclarationSyntax { Initializer: not null };

    /// <summary>A file with copies for its mutants.</summary>
    /// <param name="tree">The file.</param>
    /// <param name="mutants">Its mutants by their numbers; all have a home.</param>
    public static SyntaxTree With(SyntaxTree tree, IReadOnlyCollection<(int Number, Mutant Mutant)> mutants)
    {
        var text = new StringBuilder(tree.GetText().ToString());
        foreach (var home in mutants.GroupBy(m => Home(m.Mutant)!).OrderByDescending(g => g.Key.SpanStart))
        {
            text.Remove(home.Key.SpanStart, home.Key.Span.Length);
            text.Insert(home.Key.SpanStart, Copies(home.Key, [.. home]));
        }

        var copied = CSharpSyntaxTree.ParseText(text.ToString(), (CSharpParseOptions)tree.Options, tree.FilePath);
        return copied.WithRootAndOptions(new LoopCounter().Visit(copied.GetRoot()), copied.Options);
    }

    /// <summary>The number of the mutant in whose copy a place lies; null outside of copies, 0-based as given.</summary>
    public static int? NumberAt(Location place) =>
        place.SourceTree?.GetRoot().FindNode(place.SourceSpan).AncestorsAndSelf().OfType<MethodDeclarationSyntax>()
        .FirstOrDefault() is { } method
        && method.Identifier.Text.Split(Suffix) is [_, var after]
        && int.TryParse(after, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number)
        ? number : null;

    private static string Copies(SyntaxNode member, IReadOnlyList<(int Number, Mutant Mutant)> mutants)
    {
        var (name, type, body, modifiers, generic, parameters, constraints, head, tail) = member switch
        {
            MethodDeclarationSyntax m =>
                (m.Identifier.Text, m.ReturnType, m.Body
                    ?? (SyntaxNode)m.ExpressionBody!, m.Modifiers, $"{m.TypeParameterList}", m.ParameterList.Parameters,
                    $"{m.ConstraintClauses}",
                        $"{m.AttributeLists} {m.Modifiers} {m.ReturnType} {m.Identifier}{m.TypeParameterList}{m.ParameterList} {m.ConstraintClauses} {{", "}"),
            PropertyDeclarationSyntax { ExpressionBody: { } arrow } p =>
                (p.Identifier.Text, p.Type, arrow, p.Modifiers, "", default, "",
                    $"{p.AttributeLists} {p.Modifiers} {p.Type} {p.Identifier} {{ get {{", "} }"),
            PropertyDeclarationSyntax { Initializer: { } value } p =>
                (p.Identifier.Text, p.Type, value.Value, p.Modifiers, "", default, "",
                    $"{p.AttributeLists} {p.Modifiers} {p.Type} {p.Identifier} {{ get; }} = {p.Identifier}{Suffix}none2(); private "
                        + $"static {p.Type} {p.Identifier}{Suffix}none2() {{", "}"),
            PropertyDeclarationSyntax p =>
                (p.Identifier.Text, p.Type, p.AccessorList!.Accessors[0].Body!, p.Modifiers, "", default, "",
                    $"{p.AttributeLists} {p.Modifiers} {p.Type} {p.Identifier} {{ get {{", "} }"),
            FieldDeclarationSyntax f =>
                (f.Declaration.Variables[0].Identifier.Text, f.Declaration.Type, (SyntaxNode)f.Declaration.Variables[0].Initializer!.Value,
                    f.Modifiers, "", default(SeparatedSyntaxList<ParameterSyntax>), "",
                        $"{f.AttributeLists} {f.Modifiers} {f.Declaration.Type} {f.Declaration.Variables[0].Identifier} = {f.Declaration.Variables[0].Identifier}{Suffix}none2(); private static {f.Declaration.Type} {f.Declaration.Variables[0].Identifier}{Suffix}none2() {{", "}"),
            _ => throw new InvalidOperationException($"No copy of {member.Kind()}."),
        };
        var isVoid = type is PredefinedTypeSyntax { Keyword.RawKind: (int)SyntaxKind.VoidKeyword };
        var arguments =
            string.Join(", ",
                parameters.Select(p =>
                    $"{(p.Modifiers.Any(SyntaxKind.OutKeyword)
                        ? "out " : p.Modifiers.Any(SyntaxKind.RefKeyword) ? "ref " : "")}{p.Identifier}"));
        var copyHead = $"private {(modifiers.Any(SyntaxKind.StaticKeyword) ? "static " : "")}{type} ";
        var copyParameters =
            string.Join(", ", parameters.Select(p => p.WithModifiers([.. p.Modifiers.Where(m => !m.IsKind(SyntaxKind.ThisKeyword))])
                .WithDefault(null).ToString()));
        string Call(string number) =>
            isVoid ? $"{name}{Suffix}{number}{generic}({arguments}); return;" : $"return {name}{Suffix}{number}{generic}({arguments});";
        string Copy(string number, string code) => $"{copyHead}{name}{Suffix}{number}{generic}({copyParameters}) {constraints} {code}\n";

        var made = new StringBuilder(head)
            .Append($" global::{SwitchType}.Hit({mutants.Min(m => m.Number)}); switch (global::{SwitchType}.Active) {{ ");
        foreach (var (number, _) in mutants)
            made.Append($"case {number}: {Call($"{number}")} ");
        made.Append($"default: {Call("none")} }} {tail}\n").Append(Copy("none", Code(body, null)));
        foreach (var (number, mutant) in mutants)
            made.Append(Copy($"{number}", Code(body, mutant)));
        return made.ToString();
    }

    private static string Code(SyntaxNode body, Mutant? mutant)
    {
        var code = body.ToString();
        if (mutant is not null)
            code = string.Concat(code.AsSpan(0, mutant.Span.Start - body.SpanStart), mutant.With,
                code.AsSpan(mutant.Span.End - body.SpanStart));
        return body switch
        {
            BlockSyntax => code,
            ArrowExpressionClauseSyntax => code + ";",
            _ => $"=> {code};",
        };
    }

    private sealed class LoopCounter : CSharpSyntaxRewriter
    {
        private static ExpressionSyntax Counted(ExpressionSyntax? condition) =>
            SyntaxFactory.ParseExpression(condition is null
                ? $"global::{SwitchType}.Tick()" : $"global::{SwitchType}.Tick() && ({condition})");

        public override SyntaxNode? VisitWhileStatement(WhileStatementSyntax node) =>
            base.VisitWhileStatement(node.WithCondition(Counted(node.Condition)));

        public override SyntaxNode? VisitForStatement(ForStatementSyntax node) =>
            base.VisitForStatement(node.WithCondition(Counted(node.Condition)));
    }
}
