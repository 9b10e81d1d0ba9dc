using Stringline.Office.Entering;
using Stringline.Web.Html;
using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Law.Reasoning;
using Stringline.Papers;
using Stringline.Papers.Catalogue;

namespace Stringline.Web.Papers;

/// <summary>What a page says for what a sentence of a paper names: the name of its field, the question of a form.</summary>
internal static class PageWords
{
    /// <summary>A sentence in the words of a page.</summary>
    public static string Of(Sentence sentence) => sentence.Say(Words);

    /// <summary>A refusal in the words of a page.</summary>
    public static string Of(Refusal refusal) => refusal.InWords(Of(refusal.Where), Words);

    /// <summary>The place of which a refusal speaks, as the head of what it says.</summary>
    /// <param name="where">The place.</param>
    /// <param name="fields">The fields of the paper's form.</param>
    /// <param name="assessment">What the law makes of the job.</param>
    public static string Head(Place where, IReadOnlyList<PaperField> fields, Assessment assessment) => where switch
    {
        Place.OfAssessment => "Where the right stands",
        Place.OfInput { Or: null, Input: var input } => fields.FirstOrDefault(field => field.Told == input)?.Words,
        Place.OfFinding { Id: var id } => assessment.Find(id)?.Title,
        Place.OfJournal => "The journal",
        Place.OfInput or Place.InWords => null,
        _ => HeadForms.LabelOf(where.ToString()),
    } ?? Of(where);

    private static string Of(Place where) => where switch
    {
        Place.OfInput input => string.Join(", ", input.All.Select(Field)),
        Place.OfHead { Path: var path } => Head(path),
        _ => where.ToString(),
    };

    private static string Words(object named, string? format) => named switch
    {
        InputName { Input: var input, And: { } and } => $"{Field(input)} and {Field(and)}",
        InputName { Input: var input } => Field(input),
        InputTold { Value: LocalDate day } => LawText.Day(day),
        InputTold told => told.Said,
        DraftName => $"“{DraftName.Word}”",
        ForTheAsker { Words: var words } => Of(words),
        FileWord { Word: var word } when word.Any(char.IsUpper) => Asked(word),
        FieldSaid { Field: var field, Value: var value } when field.Any(char.IsUpper) => $"{Asked(field)}: {value}",
        HeadField { Path: var path } => Head(path),
        SaidByLaw law => law.In(PlainWords.Page),
        _ => Sentence.Plain(named, format),
    };

    private static string Field(PaperInput input) => $"“{input.Word()}”";

    private static string Head(string path) => HeadForms.LabelOf(path) is { } label ? $"“{label}” in the file" : path;

    private static string Asked(string field) =>
        $"“{EntryForms.All.SelectMany(form => form.Fields).FirstOrDefault(asked => asked.Name == field)?.Label ?? field}”";
}
