using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Stringline.Mutate;

/// <summary>
/// Lists the mutants of one file. Left out: everything inside strings (also the expressions inside interpolated ones), inside
/// attributes and inside throw expressions; the marks that say how well a source is known; lists of entries named by a reason.
/// </summary>
internal sealed class MutantFinder : CSharpSyntaxWalker
{
    private static readonly Dictionary<SyntaxKind, string[]> Operators = new()
    {
        [SyntaxKind.LessThanToken] = ["<=", ">="],
        [SyntaxKind.LessThanEqualsToken] = ["<", ">"],
        [SyntaxKind.GreaterThanToken] = [">=", "<="],
        [SyntaxKind.GreaterThanEqualsToken] = [">", "<"],
        [SyntaxKind.EqualsEqualsToken] = ["!="],
        [SyntaxKind.ExclamationEqualsToken] = ["=="],
        [SyntaxKind.PlusToken] = ["-"],
        [SyntaxKind.MinusToken] = ["+"],
        [SyntaxKind.AsteriskToken] = ["/"],
        [SyntaxKind.SlashToken] = ["*"],
        [SyntaxKind.BarToken] = ["&"],
        [SyntaxKind.AmpersandToken] = ["|"],
        [SyntaxKind.LessThanLessThanToken] = [">>"],
        [SyntaxKind.PlusEqualsToken] = ["-="],
        [SyntaxKind.MinusEqualsToken] = ["+="],
        [SyntaxKind.BarEqualsToken] = ["&="],
        [SyntaxKind.AmpersandEqualsToken] = ["|="],
        [SyntaxKind.PlusPlusToken] = ["--"],
    };

    private static readonly Dictionary<string, string> Opposites = new()
    {
        ["Min"] = "Max", ["Max"] = "Min", ["Any"] = "All", ["All"] = "Any",
        ["FirstOrDefault"] = "LastOrDefault", ["First"] = "Last",
    };

    private static readonly string[] MarksOfSources = ["Sure"];

    private readonly SemanticModel model;
    private readonly List<Mutant> found = [];

    private MutantFinder(SemanticModel model) => this.model = model;

    /// <summary>Every mutant of a file, in the order of the file, each once.</summary>
    public static List<Mutant> Of(SemanticModel model)
    {
        var finder = new MutantFinder(model);
        finder.Visit(model.SyntaxTree.GetRoot());
        return [.. finder.found.DistinctBy(m => (m.Span, m.With)).OrderBy(m => m.Span.Start)];
    }

    private void Add(TextSpan span, string with, MutantKind kind) => found.Add(new Mutant(model.SyntaxTree, span, with, kind));

    private void Add(SyntaxNode node, string with, MutantKind kind) => Add(node.Span, with, kind);

    private void Swap(SyntaxToken token, MutantKind kind)
    {
        foreach (var with in Operators.GetValueOrDefault(token.Kind(), []))
            Add(token.Span, with, kind);
    }

    public override void VisitAttributeList(AttributeListSyntax node)
    {
    }

    public override void VisitInterpolatedStringExpression(InterpolatedStringExpressionSyntax node)
    {
    }

    public override void VisitThrowExpression(ThrowExpressionSyntax node)
    {
    }

    public override void VisitThrowStatement(ThrowStatementSyntax node)
    {
    }

    public override void VisitEnumDeclaration(EnumDeclarationSyntax node)
    {
    }

    public override void VisitBinaryExpression(BinaryExpressionSyntax node)
    {
        switch (node.Kind())
        {
            case SyntaxKind.LogicalAndExpression or SyntaxKind.LogicalOrExpression:
                Add(node.OperatorToken.Span, node.IsKind(SyntaxKind.LogicalAndExpression) ? "||" : "&&", MutantKind.Condition);
                Add(node, $"({node.Left})", MutantKind.Condition);
                Add(node, $"({node.Right})", MutantKind.Condition);
                break;
            case SyntaxKind.CoalesceExpression:
                Add(node, $"({node.Left})", MutantKind.Condition);
                Add(node, $"({node.Right})", MutantKind.Condition);
                break;
            case SyntaxKind.LessThanExpression or SyntaxKind.LessThanOrEqualExpression or SyntaxKind.GreaterThanExpression
                or SyntaxKind.GreaterThanOrEqualExpression or SyntaxKind.EqualsExpression or SyntaxKind.NotEqualsExpression:
                Swap(node.OperatorToken, MutantKind.Comparison);
                break;
            case SyntaxKind.IsExpression:
                Add(node, $"!({node})", MutantKind.Condition);
                break;
            default:
                if (model.GetTypeInfo(node).Type?.SpecialType != SpecialType.System_String)
                    Swap(node.OperatorToken, MutantKind.Arithmetic);
                break;
        }

        base.VisitBinaryExpression(node);
    }

    public override void VisitRelationalPattern(RelationalPatternSyntax node)
    {
        Swap(node.OperatorToken, MutantKind.Comparison);
        base.VisitRelationalPattern(node);
    }

    public override void VisitBinaryPattern(BinaryPatternSyntax node)
    {
        Add(node.OperatorToken.Span, node.IsKind(SyntaxKind.AndPattern) ? "or" : "and", MutantKind.Condition);
        Add(node, $"{node.Left}", MutantKind.Condition);
        Add(node, $"{node.Right}", MutantKind.Condition);
        base.VisitBinaryPattern(node);
    }

    public override void VisitIsPatternExpression(IsPatternExpressionSyntax node)
    {
        Add(node.Pattern, node.Pattern is UnaryPatternSyntax not ? $"{not.Pattern}" : $"not ({node.Pattern})", MutantKind.Condition);
        base.VisitIsPatternExpression(node);
    }

    public override void VisitSubpattern(SubpatternSyntax node)
    {
        // A property that a pattern asks for no more.
        if (node.Parent is PropertyPatternClauseSyntax { Subpatterns.Count: > 1 } clause)
            Add(clause, "{ " + string.Join(", ", clause.Subpatterns.Where(s => s != node)) + " }", MutantKind.Condition);
        base.VisitSubpattern(node);
    }

    public override void VisitPrefixUnaryExpression(PrefixUnaryExpressionSyntax node)
    {
        if (node.IsKind(SyntaxKind.LogicalNotExpression))
            Add(node, $"({node.Operand})", MutantKind.Condition);
        else if (node.IsKind(SyntaxKind.UnaryMinusExpression))
            Add(node, $"({node.Operand})", MutantKind.Arithmetic);
        base.VisitPrefixUnaryExpression(node);
    }

    public override void VisitPostfixUnaryExpression(PostfixUnaryExpressionSyntax node)
    {
        Swap(node.OperatorToken, MutantKind.Arithmetic);
        base.VisitPostfixUnaryExpression(node);
    }

    public override void VisitAssignmentExpression(AssignmentExpressionSyntax node)
    {
        Swap(node.OperatorToken, MutantKind.Arithmetic);
        if (node.Parent is InitializerExpressionSyntax all)
        {
            // The comma that follows goes with it.
            var end = all.Expressions.GetSeparators().Where(c => c.SpanStart >= node.Span.End).Select(c => c.Span.End)
                .FirstOrDefault(node.Span.End);
            Add(TextSpan.FromBounds(node.SpanStart, end), "", MutantKind.Removal);
        }

        base.VisitAssignmentExpression(node);
    }

    public override void VisitLiteralExpression(LiteralExpressionSyntax node)
    {
        switch (node.Token.Value)
        {
            case int number:
                Add(node, (number + 1).ToString(CultureInfo.InvariantCulture), MutantKind.Number);
                Add(node, $"({(number - 1).ToString(CultureInfo.InvariantCulture)})", MutantKind.Number);
                break;
            case decimal number:
                Add(node, (number + 1).ToString(CultureInfo.InvariantCulture) + "m", MutantKind.Number);
                Add(node, $"({(number - 1).ToString(CultureInfo.InvariantCulture)}m)", MutantKind.Number);
                break;
            case bool:
                Add(node, node.IsKind(SyntaxKind.TrueLiteralExpression) ? "false" : "true", MutantKind.Condition);
                break;
        }
    }

    public override void VisitInvocationExpression(InvocationExpressionSyntax node)
    {
        if (node.Expression is IdentifierNameSyntax { Identifier.Text: "nameof" })
            return;
        Negate(node);
        base.VisitInvocationExpression(node);
    }

    public override void VisitIdentifierName(IdentifierNameSyntax node)
    {
        var name = node.Identifier.Text;
        if (Opposites.TryGetValue(name, out var opposite)
            && node.Parent is MemberAccessExpressionSyntax { Parent: InvocationExpressionSyntax } call && call.Name == node)
            Add(node, opposite, MutantKind.Arithmetic);
        if (node.Parent is not MemberAccessExpressionSyntax)
            Negate(node);
        if (name is "Earliest" or "Latest" && node.Parent is not (NameColonSyntax or NameEqualsSyntax)
            && node.Parent is not AssignmentExpressionSyntax { Parent: InitializerExpressionSyntax })
            Add(node, name == "Earliest" ? "Latest" : "Earliest", MutantKind.OtherEnd);
    }

    public override void VisitMemberAccessExpression(MemberAccessExpressionSyntax node)
    {
        if (model.GetSymbolInfo(node).Symbol is IFieldSymbol { ContainingType: { TypeKind: TypeKind.Enum } type } member
            && !MarksOfSources.Contains(type.Name))
        {
            IFieldSymbol[] members = [.. type.GetMembers().OfType<IFieldSymbol>()];
            Add(node.Name, members[(Array.FindIndex(members, m => m.Name == member.Name) + 1) % members.Length].Name,
                MutantKind.OtherMember);
            return;
        }

        Negate(node);
        base.VisitMemberAccessExpression(node);
    }

    // A truth value as such, where no operator stands that is mutated itself.
    private void Negate(ExpressionSyntax node)
    {
        var isValue = node.Parent switch
        {
            IfStatementSyntax or WhileStatementSyntax or LambdaExpressionSyntax or ReturnStatementSyntax or ArrowExpressionClauseSyntax
                or ArgumentSyntax or ConditionalExpressionSyntax or SwitchExpressionArmSyntax or EqualsValueClauseSyntax => true,
            AssignmentExpressionSyntax assignment => assignment.Right == node,
            BinaryExpressionSyntax both => both.Kind() is SyntaxKind.LogicalAndExpression or SyntaxKind.LogicalOrExpression,
            _ => false,
        };
        if (isValue && model.GetTypeInfo(node).Type?.SpecialType == SpecialType.System_Boolean)
            Add(node, $"!({node})", MutantKind.Condition);
    }

    public override void VisitConditionalExpression(ConditionalExpressionSyntax node)
    {
        Add(node, $"({node.WhenTrue})", MutantKind.Condition);
        Add(node, $"({node.WhenFalse})", MutantKind.Condition);
        base.VisitConditionalExpression(node);
    }

    public override void VisitExpressionStatement(ExpressionStatementSyntax node)
    {
        Add(node, ";", MutantKind.Removal);
        base.VisitExpressionStatement(node);
    }

    public override void VisitYieldStatement(YieldStatementSyntax node)
    {
        Add(node, ";", MutantKind.Removal);
        base.VisitYieldStatement(node);
    }

    public override void VisitContinueStatement(ContinueStatementSyntax node) => Add(node, ";", MutantKind.Removal);

    public override void VisitBreakStatement(BreakStatementSyntax node)
    {
        if (node.Parent is not SwitchSectionSyntax)
            Add(node, ";", MutantKind.Removal);
    }

    public override void VisitReturnStatement(ReturnStatementSyntax node)
    {
        // An early return left out; where a value is needed at the end the compiler refuses it.
        Add(node, ";", MutantKind.Removal);
        base.VisitReturnStatement(node);
    }
}
