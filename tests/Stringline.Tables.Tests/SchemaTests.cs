using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Json.Schema;
using Stringline.Law.Facts;
using Stringline.Testing;

namespace Stringline.Tables.Tests;

/// <summary>
/// The published schema and the reader are two tellings of one format. An independent validator (JsonSchema.Net) holds
/// the schema against what the writer writes and against every refused file.
/// </summary>
public sealed class SchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText(Repository.Path("data/job-file.schema.json")));

    private static readonly JsonSerializerOptions Written = new()
    {
        WriteIndented = true, NewLine = "\n", Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>
    /// Refusals that JSON Schema 2020-12 cannot tell: order of days, names that must exist or be unique, how a number is spelled.
    /// </summary>
    private static readonly string[] BeyondTheSchema =
    [
        "amount-with-an-exponent", "between-reversed", "day-that-does-not-exist", "field-twice", "hired-by-nobody-known",
        "labor-resumed-before-it-stopped", "license-put-back-too-early", "license-span-after-an-open-one", "license-span-reversed",
            "license-spans-overlap",
        "notice-to-an-unknown-party", "payment-toward-an-unknown-ref", "replacing-an-unknown-entry", "replacing-each-other",
            "span-reversed", "surety-unknown",
        "title-held-by-an-entity-with-a-surname", "title-held-by-nobody", "title-of-a-company-with-persons",
            "title-of-a-trust-without-its-name",
        "title-of-an-estate-without-its-decedent", "title-of-an-individual-in-a-trust", "title-of-one-joint-tenant", "title-without-a-name",
            "two-entries-with-one-id", "two-entries-with-one-ref", "two-parties-with-one-id",
        "bankruptcy-ended-before-it-began", "works-under-one-who-is-no-direct-contractor", "direct-contract-filed-before-its-day",
        "two-structures-with-one-id", "more-structures-than-there-are", "also-in-the-same-county", "bond-principal-that-is-a-surety",
        "structure-unknown", "amending-an-unknown-claim", "amending-itself", "action-on-a-claim-that-is-a-payment",
            "action-against-nobody-known",
        "mailed-before-it-was-left", "ten-dollars-on-a-private-work", "stop-payment-demanded-by-one-who-is-no-owner",
        "another-bond-before-the-objection", "demand-received-before-it-was-given", "dispute-of-an-unknown-demand",
        "acceptance-noticed-on-a-private-work", "security-ended-before-it-was-provided", "disputed-work-accepted-before-it-was-done",
            "disputed-work-accepted-and-rejected",
        "time-to-answer-extended-to-a-day-before-the-claim",
        "meeting-of-a-governing-body-on-a-private-work",
        "request-returned-on-a-private-work",
        "request-returned-before-it-was-received",
        "request-resubmitted-that-was-not-returned",
        "request-resubmitted-before-it-was-returned",
        "documents-asked-for-on-a-private-work",
        "documents-given-that-were-not-asked-for",
        "documents-given-before-they-were-asked-for",
        "posted-by-a-day-before-it-was-posted",
    ];

    /// <summary>With STRINGLINE_ACCEPT=1 the schema of the entries is written anew.</summary>
    [Fact]
    public void The_schema_of_the_entries_is_the_one_made_from_their_descriptions()
    {
        var path = Repository.Path("data/job-file.schema.json");
        var kept = File.ReadAllText(path);
        var made = EntrySchema.With(JsonNode.Parse(kept)!.AsObject()).ToJsonString(Written) + "\n";
        if (Environment.GetEnvironmentVariable("STRINGLINE_ACCEPT") == "1")
            File.WriteAllText(path, made);
        else
            Assert.Equal(kept, made);
    }

    [Fact]
    public void The_program_carries_the_committed_schema() =>
        Assert.Equal(File.ReadAllBytes(Repository.Path("data/job-file.schema.json")), JobFileSchema.Utf8());

    [Fact]
    public void The_schema_is_itself_valid_by_its_meta_schema()
    {
        using var own = JsonDocument.Parse(JobFileSchema.Utf8());
        Assert.True(MetaSchemas.Draft202012.Evaluate(own.RootElement).IsValid);
    }

    [Fact]
    public void The_demo_job_is_valid() => Assert.True(IsValid(File.ReadAllBytes(Repository.Path("data/demo/alder-court.json"))));

    [Fact]
    [Slow(Slow.Lasting)]
    public void Whatever_the_writer_writes_is_valid() =>
        JobFileGen.Job.Sample(job => Assert.True(IsValid(JobFileWriter.Write(job))));

    [Theory]
    [MemberData(nameof(RefusalTests.Names), MemberType = typeof(RefusalTests))]
    public void The_schema_refuses_what_the_reader_refuses_but_for_a_named_few(string name)
    {
        var bytes = File.ReadAllBytes(Repository.Path($"tests/Stringline.Tables.Tests/Refusals/{name}.json"));
        bool isValid;
        try
        {
            isValid = IsValid(bytes);
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            // Not JSON, or JSON whose bytes or escapes are no text: it never gets as far as the schema.
            isValid = false;
        }

        Assert.Equal(BeyondTheSchema.Contains(name), isValid);
    }

    [Fact]
    public void Every_object_has_the_same_fields_in_the_schema_and_in_the_reader()
    {
        var root = JsonNode.Parse(JobFileSchema.Utf8())!.AsObject();
        var objects = Objects(root, root, "").ToList();
        Assert.Equal(16 + EntryKinds.All.Count, objects.Count);
        foreach (var (path, schema) in objects)
            Assert.Equal(Names(schema), KnownToTheReader(path, schema));
    }

    [Fact]
    public void The_kinds_of_entry_are_the_same_in_the_schema_and_in_the_reader()
    {
        var definitions = JsonNode.Parse(JobFileSchema.Utf8())!["$defs"]!.AsObject();
        var inSchema = definitions.Select(d => d.Value!["properties"]?["what"]?["const"]?.GetValue<string>()).OfType<string>();
        var fault = Assert.Single(
            Faults("""{ "what": "nothing of the kind" }"""), f => f.Path == "entries[0].what");
        Assert.Equal(inSchema, fault.Expected["one of ".Length..].Split(", "));
    }

    /// <summary>So that a fact added to the law is not forgotten in the format.</summary>
    [Fact]
    public void Every_fact_the_law_knows_can_be_said_in_a_job_file()
    {
        var root = JsonNode.Parse(JobFileSchema.Utf8())!.AsObject();
        var objects = Objects(root, root, "").ToList();
        AssertSaid(typeof(JobFile), Object(""));
        AssertSaid(typeof(Work), Object("work"));
        AssertSaid(typeof(Site), Object("work.site"));
        AssertSaid(typeof(Permit), Object("work.permit"));
        AssertSaid(typeof(PaymentBond), Object("work.paymentBond"));
        AssertSaid(typeof(Claimant), Object("claimant"));
        AssertSaid(typeof(Signer), Object("claimant.signer"));
        AssertSaid(typeof(License), Object("claimant.license"));
        AssertSaid(typeof(LicenseSpan), Object("claimant.license.active[0]"));
        AssertSaid(typeof(Party), Object("parties[0]"));
        AssertSaid(typeof(TitleHolding), Object("parties[0].holdsTitleAs"));
        AssertSaid(typeof(TitleHolder), Object("parties[0].holdsTitleAs.persons[0]"));
        AssertSaid(typeof(Contract), Object("contract"));
        AssertSaid(typeof(DirectContract), Object("work.directContract"));
        AssertSaid(typeof(ResidentialStructure), Object("work.structures[0]"));
        foreach (var kind in typeof(Entry).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Entry))))
            AssertSaid(kind, root["$defs"]!["entry-" + Kebab(kind.Name)]!.AsObject());

        JsonObject Object(string path) => objects.First(found => found.Path == path).Schema;
    }

    private static void AssertSaid(Type fact, JsonObject schema)
    {
        var fields = schema["properties"]!.AsObject();
        foreach (var property in fact.GetProperties()
            .Where(property => property.SetMethod is not null && property.Name != nameof(Entry.Index)))
        {
            var name = (fact.Name, property.Name) switch
            {
                (nameof(Furnished), nameof(Furnished.Until)) => "to",
                (nameof(LicenseSpan), nameof(LicenseSpan.Reinstated)) => "putBack",
                _ => JsonNamingPolicy.CamelCase.ConvertName(property.Name),
            };
            Assert.True(fields.ContainsKey(name), $"{fact.Name}.{property.Name} has no field.");
        }
    }

    private static string Kebab(string name) => JsonNamingPolicy.KebabCaseLower.ConvertName(name);

    /// <summary>
    /// Puts an object that holds only an unknown field in the place and reads from the refusal which fields are known there.
    /// </summary>
    private static IEnumerable<string> KnownToTheReader(string path, JsonObject schema)
    {
        var probe = new JsonObject { ["unknown-to-all"] = 1 };
        if (schema["properties"]!["what"]?["const"] is { } what)
            probe["what"] = what.DeepClone();
        JsonNode place = probe;
        foreach (var step in path.Split('.', StringSplitOptions.RemoveEmptyEntries).Reverse())
        {
            place = step.EndsWith("[0]", StringComparison.Ordinal)
                ? new JsonObject { [step[..^3]] = new JsonArray(place) }
                : new JsonObject { [step] = place };
        }

        var refused = (JobFileResult.Refused)JobFileReader.Read(Encoding.UTF8.GetBytes(place.ToJsonString()), "probe.json");
        var at = path.Length == 0 ? "unknown-to-all" : path + ".unknown-to-all";
        var fault = Assert.Single(refused.Faults, f => f.Path == at);
        return fault.Expected["one of the fields ".Length..].Split(", ").Order(StringComparer.Ordinal);
    }

    private static IReadOnlyList<Fault> Faults(string entry) => ((JobFileResult.Refused)JobFileReader.Read(
        Encoding.UTF8.GetBytes($$"""{ "entries": [ {{entry}} ] }"""), "probe.json")).Faults;

    private static IEnumerable<string> Names(JsonObject schema) =>
        schema["properties"]!.AsObject().Select(property => property.Key).Order(StringComparer.Ordinal);

    /// <summary>Every object the schema describes, with the path at which it stands in a file.</summary>
    private static IEnumerable<(string Path, JsonObject Schema)> Objects(JsonObject root, JsonObject schema, string path)
    {
        if (schema["$ref"]?.GetValue<string>() is { } reference)
        {
            var target = root["$defs"]![reference["#/$defs/".Length..]]!.AsObject();
            foreach (var found in Objects(root, target, path))
                yield return found;
            yield break;
        }

        if (schema["items"] is JsonObject items)
        {
            foreach (var found in Objects(root, items, path + "[0]"))
                yield return found;
        }

        foreach (var branch in schema["oneOf"]?.AsArray().OfType<JsonObject>().Where(b => b["$ref"] is not null) ?? [])
        {
            foreach (var found in Objects(root, branch, path))
                yield return found;
        }

        if (schema["properties"] is not JsonObject properties)
            yield break;
        Assert.False(schema["additionalProperties"]!.GetValue<bool>());
        yield return (path, schema);
        foreach (var property in properties)
        {
            if (property.Value is not JsonObject value)
                continue;
            foreach (var found in Objects(root, value, path.Length == 0 ? property.Key : $"{path}.{property.Key}"))
                yield return found;
        }
    }

    private static bool IsValid(byte[] utf8)
    {
        var options = new EvaluationOptions { RequireFormatValidation = false, OutputFormat = OutputFormat.Flag };
        using var file = JsonDocument.Parse(utf8);
        return Schema.Evaluate(file.RootElement, options).IsValid;
    }
}
