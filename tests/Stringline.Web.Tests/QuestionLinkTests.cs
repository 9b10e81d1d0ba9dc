using Stringline.Web.Entering;
using System.Text.Json.Nodes;
using Stringline.Office.Entering;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Tests;

/// <summary>
/// A question names the field that answers it; wherever the format has a field, the question leads to the form that asks for it.
/// </summary>
public sealed class QuestionLinkTests
{
    // What names a thing or its place in the journal is no answer to a question; a trust's persons are typed in one field.
    private static readonly string[] NoAnswers = ["what", "id", "supersedes", "learned", "on", "between"];

    private static readonly JsonObject Root = JsonNode.Parse(JobFileSchema.Utf8())!.AsObject();

    /// <summary>The schema has the fields of the reader; a test beside it proves that.</summary>
    public static TheoryData<string> HeadFields => [.. Fields(Root, "").Where(path => path.Contains('.', StringComparison.Ordinal))];

    public static TheoryData<string, string> EntryFields
    {
        get
        {
            var fields = new TheoryData<string, string>();
            foreach (var (_, schema) in Root["$defs"]!.AsObject()
                .Where(definition => definition.Key.StartsWith("entry-", StringComparison.Ordinal)))
            {
                var what = schema!["properties"]!["what"]!["const"]!.GetValue<string>();
                foreach (var (name, _) in schema["properties"]!.AsObject().Where(found => !NoAnswers.Contains(found.Key)))
                {
                    if (what != "furnished" || name is not ("from" or "to"))
                        fields.Add(what, name);
                }
            }

            return fields;
        }
    }

    [Theory]
    [MemberData(nameof(HeadFields))]
    public void A_field_of_the_file_is_asked_on_the_part_to_which_its_question_leads(string path)
    {
        var link = QuestionLinks.Of(7, new Question($"Is it so?{new HeadField(path):aside}"));
        Assert.StartsWith("/job/7/file?part=", link?.Address, StringComparison.Ordinal);
        var part = HeadForms.Find(link!.Value.Address["/job/7/file?part=".Length..].Split('#')[0])!;
        var field = link.Value.Address.Split('#')[1];
        Assert.True(
            part.Fields.Any(asked => asked.Name == field)
            || (part.List is { } list && list.Path == field
                && (path == list.Path || list.Fields.Any(asked => path.StartsWith($"{list.Path}.{asked.Name}", StringComparison.Ordinal)))),
            $"{path} leads to {link}.");
    }

    [Theory]
    [MemberData(nameof(EntryFields))]
    public void A_field_of_an_entry_is_asked_on_the_form_to_which_its_question_leads(string what, string field)
    {
        Assert.Equal($"/job/7/enter?what={what}",
            QuestionLinks.Of(7, new Question($"Is it so?{EntryKinds.Find(what)!.At(field):aside}"))?.Address);
        Assert.Contains(EntryForms.Find(what)!.Fields, asked => asked.Name == field);
    }

    [Fact]
    public void No_form_shows_a_name_of_the_file_format()
    {
        var labels = EntryForms.All.SelectMany(form => form.Fields)
            .Concat(HeadForms.All.SelectMany(part => part.Fields.Concat(part.List?.Fields ?? [])))
            .SelectMany(asked => (string[])[asked.Label, asked.Hint, .. asked.Choices.Select(choice => choice.Words)]);
        Assert.All(labels, label => Assert.DoesNotMatch("[a-z][A-Z]|`", label));
    }

    [Fact]
    public void What_the_reader_refuses_is_said_in_the_words_of_the_form()
    {
        var form = EntryForms.Find("notice-given")!;
        Assert.Equal(
            "nothing: it is asked only of a paper left and mailed, whose “How” is “left at the place and mailed "
                + "(Code Civ. Proc. § 415.20)”",
            FieldsInWords.Of("nothing: it is asked only of a paper left and mailed, whose `manner` is \"substituted\"", form.Fields));
    }

    private static IEnumerable<string> Fields(JsonObject schema, string path)
    {
        if (schema["$ref"] is { } reference)
        {
            foreach (var found in Fields(Root["$defs"]![reference.GetValue<string>()["#/$defs/".Length..]]!.AsObject(), path))
                yield return found;
            yield break;
        }

        if (schema["items"] is JsonObject items && path != "entries")
        {
            foreach (var found in Fields(items, path))
                yield return found;
            yield break;
        }

        if (schema["properties"] is not JsonObject properties)
        {
            if (path.Length > 0 && !path.EndsWith(".id", StringComparison.Ordinal))
                yield return path;
            yield break;
        }

        foreach (var (name, value) in properties)
        {
            foreach (var found in Fields(value!.AsObject(), path.Length == 0 ? name : $"{path}.{name}"))
                yield return found;
        }
    }
}
