using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Stringline.Law.Facts;
using Stringline.Testing;

namespace Stringline.Tables.Tests.Growing;

/// <summary>
/// Job files of any length: one of the demo files with a party of every capacity more, and so many entries of one kind as are asked for.
/// The entries are drawn, with and without each of their fields, and what they name stands in the file beside them.
/// </summary>
internal static class GrownFile
{
    /// <summary>The day on which the files are assessed.</summary>
    public static readonly LocalDate AsOf = new(2026, 6, 22);

    // So many different entries of a kind take turns.
    private const int Drawn = 6;

    private const int Tries = 1500;

    private static readonly LocalDate Newest = new(2026, 6, 1);

    /// <summary>Every kind of entry, as the published schema lists them.</summary>
    public static readonly string[] Kinds =
    [
        .. JsonNode.Parse(JobFileSchema.Utf8())!["$defs"]!.AsObject()
            .Select(def => def.Value!["properties"]?["what"]?["const"]?.GetValue<string>()).OfType<string>(),
    ];

    /// <summary>The demo files: private, public and federal work, and each road of a claimant.</summary>
    public static readonly string[] Demos =
        [.. Directory.GetFiles(Repository.Path("data/demo"), "*.json").Select(file => Path.GetFileNameWithoutExtension(file))
            .Order(StringComparer.Ordinal)];

    private static readonly string[] NamingEntries = ["supersedes", "toward", "of", "claim", "amends", "demand"];

    private static readonly Lazy<FrozenDictionary<(string Work, string Kind), List<JsonObject[]>>> Samples = new(Draw);

    /// <summary>Of a demo file, the same work done for the United States: no demo file is of one.</summary>
    public const string Federal = "alder-court, federal";

    /// <summary>Of a demo file, the same work consisting of two structures, which no demo file tells.</summary>
    public const string TwoStructures = "alder-court, two structures";

    /// <summary>All that a file can be grown from.</summary>
    public static readonly string[] Beginnings = [.. Demos, Federal, TwoStructures];

    /// <summary>One of them, with a party of each capacity added, named after it.</summary>
    public static JsonObject Beginning(string name)
    {
        var job = JsonNode.Parse(File.ReadAllText(Repository.Path($"data/demo/{name.Split(',')[0]}.json")))!.AsObject();
        if (name == Federal)
        {
            job["work"]!["kind"] = "federal";
            job["entries"] =
                new JsonArray([.. job["entries"]!.AsArray().Where(entry => entry!["what"]!.GetValue<string>() is "furnished" or "paid")
                    .Select(entry => entry!.DeepClone())]);
        }
        else if (name == TwoStructures)
        {
            job["work"]!["structures"] = new JsonArray(new JsonObject { ["id"] = "b1" }, new JsonObject { ["id"] = "b2" });
        }

        job["parties"] ??= new JsonArray();
        foreach (var capacity in JobFileWords.Capacity.Words)
            job["parties"]!.AsArray().Add(new JsonObject { ["id"] = capacity, ["capacity"] = capacity, ["name"] = $"The {capacity}" });
        job["entries"] ??= new JsonArray();
        return job;
    }

    /// <summary>It with so many entries of a kind more.</summary>
    /// <param name="beginning">What it is grown from.</param>
    /// <param name="kind">The kind of entry.</param>
    /// <param name="count">How many.</param>
    /// <param name="apart">Whether each has a day of its own, going back from the newest; else they crowd within half a year.</param>
    /// <param name="ownParty">Whether each names parties of its own, so that there are as many of them.</param>
    public static JsonObject WithEntries(string beginning, string kind, int count, bool apart, bool ownParty = false)
    {
        var job = Beginning(beginning);
        var entries = job["entries"]!.AsArray();
        var samples = Samples.Value[(WorkOf(job), kind)];
        for (var i = 0; i < count; i++)
        {
            foreach (var entry in samples[i % samples.Count])
            {
                var copy = Copy(entry, i, Newest.PlusDays(apart ? -i : -(i * 7 % 180)));
                if (ownParty)
                    NameOwnParties(job, copy, i);
                entries.Add((JsonNode)copy);
            }
        }

        return job;
    }

    /// <summary>It with so many parties more.</summary>
    public static JsonObject WithParties(string beginning, string capacity, int count)
    {
        var job = Beginning(beginning);
        for (var i = 0; i < count; i++)
            AddParty(job, capacity, i);
        return job;
    }

    private static string Id(string capacity, int number) => string.Create(CultureInfo.InvariantCulture, $"{capacity}-{number}");

    private static string AddParty(JsonObject job, string capacity, int number)
    {
        var id = Id(capacity, number);
        job["parties"]!.AsArray().Add(new JsonObject { ["id"] = id, ["capacity"] = capacity, ["name"] = $"The {id}" });
        return id;
    }

    // In each list of parties a party of this entry's own, in the capacity of the first.
    private static void NameOwnParties(JsonObject job, JsonObject entry, int number)
    {
        foreach (var (name, value) in entry.ToList())
        {
            if (value is JsonArray { Count: > 0 } list && list[0] is JsonValue first && first.TryGetValue<string>(out var capacity)
                && JobFileWords.Capacity.IndexOf(capacity) is not null)
            {
                // Of lenders there may be no thousand: they take turns.
                var own = capacity == "construction-lender" ? number % (JobFileReader.MostLenders / 2) : number;
                var known = own < number && job["parties"]!.AsArray().Any(party => party!["id"]!.GetValue<string>() == Id(capacity, own));
                entry[name] = new JsonArray(known ? Id(capacity, own) : AddParty(job, capacity, own));
            }
        }
    }

    /// <summary>Whether the format lets it hold entries of a kind.</summary>
    public static bool Holds(string beginning, string kind) => Samples.Value[(WorkOf(Beginning(beginning)), kind)].Count > 0;

    /// <summary>The bytes of a file.</summary>
    public static byte[] Bytes(JsonObject job) => Encoding.UTF8.GetBytes(job.ToJsonString());

    /// <summary>The first entry drawn of a kind.</summary>
    public static JsonObject Sample(string beginning, string kind) =>
        Samples.Value[(WorkOf(Beginning(beginning)), kind)][0][0].DeepClone().AsObject();

    private static string WorkOf(JsonObject job) => job["work"]!["kind"]!.GetValue<string>();

    private static FrozenDictionary<(string Work, string Kind), List<JsonObject[]>> Draw()
    {
        var samples = JobFileWords.Kind.Words.SelectMany(_ => Kinds, (work, kind) => (work, kind))
            .ToDictionary(both => both, _ => new List<JsonObject[]>());
        var draw = new PCG(1, 20_260_622);
        for (var i = 0; i < Tries; i++)
        {
            var job = JsonNode.Parse(JobFileWriter.Write(JobFileGen.Job.Generate(draw, null, out _)))!.AsObject();
            var work = WorkOf(job);
            var entries = job["entries"]?.AsArray().Select(entry => entry!.AsObject()).ToList() ?? [];
            var capacities = job["parties"]?.AsArray()
                .ToDictionary(party => party!["id"]!.GetValue<string>(), party => party!["capacity"]!.GetValue<string>()) ?? [];
            foreach (var entry in entries)
            {
                var some = samples[(work, entry["what"]!.GetValue<string>())];
                if (some.Count < Drawn)
                    some.Add([.. WithNamed(entry, entries).Select(one => Bare(one, capacities))]);
            }
        }

        return samples.ToFrozenDictionary();
    }

    // The entry and those that it names.
    private static List<JsonObject> WithNamed(JsonObject entry, List<JsonObject> entries)
    {
        var all = new List<JsonObject> { entry };
        for (var i = 0; i < all.Count; i++)
        {
            foreach (var name in NamingEntries.Where(name => name != "supersedes" || IsWithdrawal(all[i])))
            {
                if (all[i][name] is JsonValue value && value.TryGetValue<string>(out var named)
                    && entries.Find(other => Says(other, "id", named) || Says(other, "ref", named)) is { } found && !all.Contains(found))
                {
                    all.Add(found);
                }
            }
        }

        return all;
    }

    private static bool IsWithdrawal(JsonObject entry) => Says(entry, "what", "withdrawn");

    private static bool Says(JsonObject entry, string field, string text) =>
        entry[field] is JsonValue value && value.TryGetValue<string>(out var said) && said == text;

    // Without what would fit only the file it was drawn in, and with the parties of this one.
    private static JsonObject Bare(JsonObject entry, Dictionary<string, string> capacities)
    {
        var bare = entry.DeepClone().AsObject();
        // What is not known on the day of asking would cost nothing.
        bare.Remove("learned");
        bare.Remove("structure");
        if (!IsWithdrawal(bare))
            bare.Remove("supersedes");
        foreach (var (name, value) in bare.ToList())
        {
            if (value is JsonValue single && single.TryGetValue<string>(out var id) && capacities.TryGetValue(id, out var capacity))
                bare[name] = capacity;
            else if (value is JsonArray list && list.Count > 0
                && list.All(item => item is JsonValue one && one.TryGetValue<string>(out var of) && capacities.ContainsKey(of)))
                bare[name] =
                    new JsonArray([.. list.Select(item => capacities[item!.GetValue<string>()]).Distinct()
                        .Select(of => (JsonNode)JsonValue.Create(of))]);
        }

        return bare;
    }

    // The same entry at another day, all of its days moved alike, under names of its own.
    private static JsonObject Copy(JsonObject entry, int number, LocalDate day)
    {
        var copy = entry.DeepClone().AsObject();
        var first = FirstDay(copy["on"]) ?? FirstDay(copy["between"]);
        var move = first is { } from ? Period.DaysBetween(from, day) : 0;
        foreach (var (name, value) in copy.ToList())
            copy[name] = Moved(value, move);
        foreach (var name in NamingEntries.Append("id").Append("ref"))
        {
            if (copy[name] is JsonValue value && value.TryGetValue<string>(out var named)
                && (name is "id" or "ref" or "supersedes" || IsOfGenerator(named)))
                copy[name] = string.Create(CultureInfo.InvariantCulture, $"{named}-{number}");
        }

        return copy;
    }

    // The names of the generator carry a number, the words of the format none.
    private static bool IsOfGenerator(string name) => name.Any(char.IsAsciiDigit);

    private static LocalDate? FirstDay(JsonNode? node) => node switch
    {
        JsonValue value when value.TryGetValue<string>(out var text) && DayText.Read(text, out var day) is null => day,
        JsonArray { Count: > 0 } list => FirstDay(list[0]),
        _ => null,
    };

    private static JsonNode? Moved(JsonNode? node, int days) => node switch
    {
        JsonValue value when value.TryGetValue<string>(out var text) && DayText.Read(text, out var day) is null =>
            DayText.Write(day.PlusDays(days)),
        JsonArray list => new JsonArray([.. list.Select(item => Moved(item, days))]),
        _ => node?.DeepClone(),
    };
}
