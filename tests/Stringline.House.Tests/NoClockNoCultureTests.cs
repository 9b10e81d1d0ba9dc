using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Xml.Linq;

namespace Stringline.House.Tests;

/// <summary>
/// Below the doors nothing asks what day it is, or in which country it runs: the day is told, and the same facts give the same words
/// everywhere. Read from what the compiler made, so that a call inside a lambda or an interpolated text counts too.
/// </summary>
public sealed class NoClockNoCultureTests
{
    private static readonly string[] Clocks =
    [
        "DateTime.get_Now", "DateTime.get_UtcNow", "DateTime.get_Today", "DateTimeOffset.get_Now", "DateTimeOffset.get_UtcNow",
        "TimeProvider.get_System", "Stopwatch.GetTimestamp", "Environment.get_TickCount", "Environment.get_TickCount64",
    ];

    private static readonly string[] Cultures =
    [
        "CultureInfo.get_CurrentCulture", "CultureInfo.set_CurrentCulture", "CultureInfo.get_CurrentUICulture",
        "CultureInfo.set_CurrentUICulture", "CultureInfo.set_DefaultThreadCurrentCulture", "StringComparer.get_CurrentCulture",
        "StringComparer.get_CurrentCultureIgnoreCase", "TimeZoneInfo.get_Local", "RegionInfo.get_CurrentRegion",
    ];

    [Theory]
    [InlineData("Law")]
    [InlineData("Papers")]
    [InlineData("Places")]
    [InlineData("Tables")]
    public void What_only_knows_facts_has_no_clock_and_no_culture(string project) =>
        Assert.DoesNotContain(Calls(project), call => Clocks.Contains(call) || Cultures.Contains(call)
            || call.StartsWith("SystemClock.", StringComparison.Ordinal));

    /// <summary>The store is handed a clock, since it writes down when each change came.</summary>
    [Fact]
    public void The_store_has_no_culture_and_no_clock_but_the_one_of_NodaTime() =>
        Assert.DoesNotContain(Calls("Store"), call => Clocks.Contains(call) || Cultures.Contains(call));

    /// <summary>So no number and no day can be written in the manner of the machine, whoever forgets to name a culture.</summary>
    [Fact]
    public void The_program_runs_without_any_culture_of_the_machine() => Assert.Equal("true",
        XDocument.Load(Repository.Path("Directory.Build.props")).Descendants("InvariantGlobalization").Single().Value);

    private static HashSet<string> Calls(string project)
    {
        using var file = new PEReader(File.OpenRead(Projects.Assembly(project)));
        var reader = file.GetMetadataReader();
        var calls = reader.MemberReferences.Select(reader.GetMemberReference)
            .Where(member => member.Parent.Kind == HandleKind.TypeReference)
            .Select(member => $"{Name((TypeReferenceHandle)member.Parent)}.{reader.GetString(member.Name)}").ToHashSet();
        Assert.NotEmpty(calls);
        return calls;

        string Name(TypeReferenceHandle type) => reader.GetString(reader.GetTypeReference(type).Name);
    }
}
