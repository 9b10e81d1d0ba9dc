using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stringline.Tables.JobFiles.Writing;
using Stringline.Law;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Tables;

/// <summary>Writes an assessment for programs, with the caution. What is null is left out, but for the end of an open band.</summary>
public static class AssessmentJson
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        MaxDepth = 1000,
    };

    /// <summary>Writes an assessment as UTF-8 JSON that ends with a line break.</summary>
    public static byte[] Write(Assessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.Day("asOf", assessment.AsOf);
            json.WriteString("name", assessment.Name);
            json.WriteString("caution", Assessment.Caution);
            json.WriteStartArray("findings");
            foreach (var finding in assessment.Findings)
                Finding(json, finding);
            json.WriteEndArray();
            Amount(json, assessment.Amount);
            Reasons(json, "claimObstacles", assessment.ClaimObstacles);
            json.WriteEndObject();
        }

        buffer.Write("\n"u8);
        return buffer.WrittenSpan.ToArray();
    }

    private static void Finding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("id", finding.Id);
        json.WriteString("title", finding.Title);
        json.WriteString("standing", finding.Standing.Word());
        json.Day("actBy", finding.ActBy);
        if (finding.Band is { } band)
        {
            json.Day("earliest", band.Earliest.Day);
            if (band.Latest is { } latest)
                json.Day("latest", latest.Day);
            else
                json.WriteNull("latest");
        }

        json.WriteStartArray("readings");
        foreach (var reading in finding.Readings)
        {
            json.WriteStartObject();
            json.WriteString("reading", reading.Name);
            json.Day(finding.IsDeadline ? "lastDay" : "day", reading.Day);
            json.Day("rolled", reading.Rolled);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Money("amount", finding.Amount);
        json.Texts("sections", finding.Sections);
        Reasons(json, "why", finding.Why);
        json.WriteStartArray("questions");
        foreach (var question in finding.Questions)
        {
            json.WriteStartObject();
            json.WriteString("text", question.Text);
            if (question.Days is { } days)
                json.WriteNumber("days", days);
            json.Money("dollars", question.Dollars);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Reasons(Utf8JsonWriter json, string name, IReadOnlyList<Reason> reasons)
    {
        json.WriteStartArray(name);
        foreach (var reason in reasons)
        {
            json.WriteStartObject();
            Reason(json, reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Reason(Utf8JsonWriter json, Reason reason)
    {
        json.WriteString("text", reason.Text);
        json.Text("section", reason.Section);
        json.Texts("facts", reason.Facts.Select(fact => fact.Path));
        if (!reason.Applied)
            json.WriteBoolean("applied", false);
        if (reason.Children.Count > 0)
            Reasons(json, "why", reason.Children);
    }

    private static void Amount(Utf8JsonWriter json, Waterfall amount)
    {
        json.WriteStartObject("amount");
        json.Money("demand", amount.Demand);
        if (amount.IsUnknown)
            json.WriteBoolean("isUnknown", true);
        if (amount.IsBand)
        {
            json.Money("atLeast", amount.AtLeast);
            json.Money("atMost", amount.AtMost);
        }

        json.Money("leftOut", amount.LeftOut);
        json.WriteStartArray("steps");
        foreach (var step in amount.Steps)
        {
            json.WriteStartObject();
            json.WriteString("id", step.Id);
            json.WriteString("title", step.Title);
            json.Money("amount", step.Amount);
            Reason(json, step.Why);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
