using System.Globalization;
using System.Text.Json.Nodes;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Counting;
using Stringline.Testing;

namespace Stringline.Tables.Tests.Growing;

/// <summary>
/// What a job file holds twice as much of costs at most two and a half times as much to read, assess and write: neither time of the
/// processor nor memory asked for grows with the square. Measured from a file to one eight times as long, so that what is quadratic stands
/// out: 64 times where two and a half for each doubling are under sixteen. The kinds of entries and the lists are those of the published
/// schema, so a new one is tried by itself.
/// </summary>
[Slow(Slow.Lasting)]
public sealed class GrowthTests
{
    private const string Attack = "a job file eight times as long, by every kind of entry, every list, parties and papers together";

    private const int Times = 8;

    // Two and a half times for each of the three doublings.
    private const double Most = 2.5 * 2.5 * 2.5;

    // The least of so many rounds counts: a busy machine makes some of them slow, but not all.
    private const int Rounds = 12;

    private static readonly int Few =
        int.Parse(Environment.GetEnvironmentVariable("STRINGLINE_GROWTH") ?? "100", CultureInfo.InvariantCulture);

    // Lists that cannot grow: there are 58 counties, six remedies to enforce, and a doubt has two ends.
    private static readonly string[] Bounded =
        ["#/properties/work/properties/site/properties/alsoIn", "#/$defs/entry-action-filed/properties/enforces", "#/$defs/between"];

    private static readonly Dictionary<string, Func<string, int, JsonObject>> Lists = new(StringComparer.Ordinal)
    {
        ["#/properties/work/properties/structures"] = Structures,
        ["#/properties/claimant/properties/license/properties/active"] = LicenseSpans,
        ["#/properties/parties/items/properties/holdsTitleAs/properties/persons"] = TitleHolders,
        ["#/$defs/entry-waived/properties/unpaidWaivers"] = UnpaidWaivers,
    };

    // Each grown by a test of its own.
    private static readonly string[] GrownElsewhere =
        ["#/properties/parties", "#/properties/entries", "#/$defs/partyIds", "#/$defs/somePartyIds"];

    // Files that this test has grown.
    private int grown;

    private static readonly JsonNode Schema = JsonNode.Parse(JobFileSchema.Utf8())!;

    public static TheoryData<string> EveryKind => [.. GrownFile.Kinds];

    public static TheoryData<string> EveryKindToParties => [.. GrownFile.Kinds.Where(kind => PartyList(kind) is not null)];

    public static TheoryData<string> EveryCapacity => [.. JobFileWords.Capacity.Words];

    public static TheoryData<string> EveryOtherList => [.. Lists.Keys];

    [Fact]
    public void Every_list_of_the_format_is_grown_here() =>
        Assert.Equal([.. Bounded.Concat(Lists.Keys).Concat(GrownElsewhere).Order(StringComparer.Ordinal)], ListsOf(Schema, "#")
            .Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(EveryKind))]
    [Attack(Attack)]
    public void Entries_of_a_kind(string kind)
    {
        foreach (var beginning in GrownFile.Beginnings.Where(beginning => GrownFile.Holds(beginning, kind)))
        {
            Grows($"{kind} in {beginning}, crowded", count => GrownFile.WithEntries(beginning, kind, Within(kind, count), apart: false));
            Grows($"{kind} in {beginning}, each on a day of its own", count =>
                GrownFile.WithEntries(beginning, kind, Within(kind, count), apart: true));
        }

        Assert.NotEqual(0, grown);
    }

    [Theory]
    [MemberData(nameof(EveryKindToParties))]
    [Attack(Attack)]
    public void Entries_that_name_parties_and_as_many_parties(string kind)
    {
        var list = PartyList(kind)!;
        foreach (var beginning in GrownFile.Beginnings.Where(beginning => GrownFile.Holds(beginning, kind)))
        {
            GrowsWithParties($"{kind} in {beginning}, each to a party of its own", count =>
                GrownFile.WithEntries(beginning, kind, count, apart: false, ownParty: true));
            GrowsWithParties($"one {kind} in {beginning} to many", count =>
            {
                var job = GrownFile.WithParties(beginning, "owner", count);
                var entry = GrownFile.Sample(beginning, kind);
                foreach (var name in (string[])["of", "claim"])
                    entry.Remove(name);
                entry[list] =
                    new JsonArray(
                        [.. Enumerable.Range(0, count).Select(i => (JsonNode)string.Create(CultureInfo.InvariantCulture, $"owner-{i}"))]);
                job["entries"]!.AsArray().Add((JsonNode)entry);
                return job;
            });
        }
    }

    [Theory]
    [MemberData(nameof(EveryCapacity))]
    [Attack(Attack)]
    public void Parties_of_a_capacity(string capacity)
    {
        foreach (var beginning in GrownFile.Beginnings)
            GrowsWithParties($"parties that are {capacity} in {beginning}", count =>
                GrownFile.WithParties(beginning, capacity, capacity == "construction-lender" ? count / 5 : count));
    }

    [Theory]
    [MemberData(nameof(EveryOtherList))]
    [Attack(Attack)]
    public void Every_other_list(string list)
    {
        foreach (var beginning in GrownFile.Beginnings)
            Grows($"{list} in {beginning}", count => Lists[list](beginning, count));
    }

    /// <summary>The answer grows with parties times papers, so the number of parties is bounded instead.</summary>
    [Fact]
    public void More_parties_than_a_work_has_are_refused()
    {
        var held = GrownFile.Beginning("alder-court")["parties"]!.AsArray().Count;
        JobFileResult Read(int count) =>
            JobFileReader.Read(GrownFile.Bytes(GrownFile.WithParties("alder-court", "owner", count - held)), "job.json");
        Assert.IsType<JobFileResult.Read>(Read(JobFileReader.MostParties));
        var refused = Assert.IsType<JobFileResult.Refused>(Read(JobFileReader.MostParties + 1));
        Assert.StartsWith("at most 1,000 parties", Assert.Single(refused.Faults).Expected, StringComparison.Ordinal);

        var lender = GrownFile.Beginning("alder-court")["parties"]!.AsArray()
            .Count(party => party!["capacity"]!.GetValue<string>() == "construction-lender");
        JobFileResult Lenders(int count) =>
            JobFileReader.Read(GrownFile.Bytes(GrownFile.WithParties("alder-court", "construction-lender", count - lender)), "job.json");
        Assert.IsType<JobFileResult.Read>(Lenders(JobFileReader.MostLenders));
        refused = Assert.IsType<JobFileResult.Refused>(Lenders(JobFileReader.MostLenders + 1));
        Assert.StartsWith("at most 200 construction lenders", Assert.Single(refused.Faults).Expected, StringComparison.Ordinal);
    }

    /// <summary>Each of these notices is set against each day of completion, so their number is bounded instead.</summary>
    [Fact]
    public void More_owners_notices_than_a_work_has_are_refused()
    {
        JobFileResult Read(int count) =>
            JobFileReader.Read(GrownFile.Bytes(GrownFile.WithEntries("cottonwood-school", "owner-recorded", count, apart: true)),
                "job.json");
        var held = GrownFile.Beginning("cottonwood-school")["entries"]!.AsArray()
            .Count(entry => entry!["what"]!.GetValue<string>() == "owner-recorded");
        Assert.IsType<JobFileResult.Read>(Read(JobFileReader.MostOwnersNotices - held));
        var refused = Assert.IsType<JobFileResult.Refused>(Read(JobFileReader.MostOwnersNotices - held + 1));
        Assert.StartsWith("at most 100 entries of this kind", Assert.Single(refused.Faults).Expected, StringComparison.Ordinal);
    }

    // Of the kind that is bounded, files up to the bound.
    private static int Within(string kind, int count) =>
        kind == "owner-recorded" ? count * (JobFileReader.MostOwnersNotices - 4) / (Few * Times) : count;

    // What is bounded may grow with the square as far as the bound, and no faster: the longer file is as long as one may be.
    private void GrowsWithParties(string what, Func<int, JsonObject> job)
    {
        var most = (JobFileReader.MostParties - 30) / Times;
        Grows(what, job, most, 1.25 * Times * Times);
    }

    private void Grows(string what, Func<int, JsonObject> job) => Grows(what, job, Few, Most);

    private void Grows(string what, Func<int, JsonObject> job, int few, double most)
    {
        var (less, more) = (GrownFile.Bytes(job(few)), GrownFile.Bytes(job(few * Times)));
        Work(less);
        var (small, large) = (Cost.Of(() => Work(less)), Cost.Of(() => Work(more)));
        for (var round = 1; round < Rounds && (round < 2 || large.Seconds > most * small.Seconds); round++)
            (small, large) = (small.Or(Cost.Of(() => Work(less))), large.Or(Cost.Of(() => Work(more))));
        Assert.True(large.Seconds <= most * small.Seconds && large.Bytes <= most * small.Bytes, string.Create(CultureInfo.InvariantCulture,
            $"{what}: {Times} times as long, {large.Seconds / small.Seconds:F1} times the time "
                + $"({large.Seconds:F3} s), {(double)large.Bytes / small.Bytes:F1} times the memory; at most {most:F1}"));
        AttackAttribute.Tried(++grown);
    }

    private static void Work(byte[] bytes)
    {
        var result = JobFileReader.Read(bytes, "job.json");
        if (result is JobFileResult.Refused refused)
            Assert.Fail(string.Join(" / ", refused.Faults.Take(3)));
        var job = ((JobFileResult.Read)result).Job;
        AssessmentJson.Write(Assessment.Of(job, GrownFile.AsOf, OpenDays.Statutory));
        JobFileWriter.Write(job);
    }

    private static string? PartyList(string kind) => Schema["$defs"]!["entry-" + kind]!["properties"]!.AsObject()
        .FirstOrDefault(property => property.Value!["$ref"]?.GetValue<string>() is "#/$defs/partyIds" or "#/$defs/somePartyIds").Key;

    private static JsonObject Structures(string beginning, int count)
    {
        var job = GrownFile.Beginning(beginning);
        job["work"]!["structures"] =
            new JsonArray(
                [.. Enumerable.Range(0, count)
                    .Select(i =>
                        (JsonNode)new JsonObject { ["id"] = string.Create(CultureInfo.InvariantCulture, $"s{i}"), ["text"] = "A house" })]);
        return job;
    }

    private static JsonObject LicenseSpans(string beginning, int count)
    {
        var job = GrownFile.Beginning(beginning);
        var first = GrownFile.AsOf.PlusDays(-3 * count);
        job["claimant"]!["license"] = new JsonObject
        {
            ["required"] = true,
            ["active"] =
                new JsonArray(
                    [.. Enumerable.Range(0, count)
                        .Select(i => (JsonNode)new JsonObject { ["from"] =
                            DayText.Write(first.PlusDays(3 * i)), ["to"] = DayText.Write(first.PlusDays((3 * i) + 1)) })]),
        };
        return job;
    }

    private static JsonObject TitleHolders(string beginning, int count)
    {
        var job = GrownFile.Beginning(beginning);
        job["parties"]!.AsArray().Add((JsonNode)new JsonObject
        {
            ["id"] = "many",
            ["capacity"] = "owner",
            ["name"] = "The many",
            ["holdsTitleAs"] = new JsonObject
            {
                ["form"] = "joint-tenants",
                ["persons"] =
                    new JsonArray(
                        [.. Enumerable.Range(0, count)
                            .Select(i =>
                                (JsonNode)new JsonObject { ["surname"] = string.Create(CultureInfo.InvariantCulture, $"Holder {i}") })]),
            },
        });
        return job;
    }

    private static JsonObject UnpaidWaivers(string beginning, int count)
    {
        var job = GrownFile.Beginning(beginning);
        job["entries"]!.AsArray().Add((JsonNode)new JsonObject
        {
            ["what"] = "waived",
            ["on"] = "2026-05-01",
            ["form"] = "8132",
            ["through"] = "2026-04-30",
            ["amount"] = 100,
            ["unpaidWaivers"] =
                new JsonArray([.. Enumerable.Range(0, count).Select(i => (JsonNode)DayText.Write(GrownFile.AsOf.PlusDays(-i)))]),
        });
        return job;
    }

    // Where the schema has a list, and not where it says when one must be there.
    private static IEnumerable<string> ListsOf(JsonNode? node, string path)
    {
        if (node is JsonArray array)
            return array.SelectMany((item, i) => ListsOf(item, string.Create(CultureInfo.InvariantCulture, $"{path}/{i}")));
        if (node is not JsonObject rule)
            return [];
        var isList = rule["type"] is JsonValue type
            ? type.GetValueKind() == System.Text.Json.JsonValueKind.String && type.GetValue<string>() == "array"
            : rule["type"] is JsonArray types && types.Any(one => one!.GetValue<string>() == "array");
        return (isList
            ? (string[])[path]
            : []).Concat(rule.Where(part => part.Key is not ("if" or "then" or "else"))
            .SelectMany(part => ListsOf(part.Value, $"{path}/{part.Key}")));
    }
}
