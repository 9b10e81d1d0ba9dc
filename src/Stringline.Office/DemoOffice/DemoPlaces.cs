using Stringline.Law.Facts;

namespace Stringline.Office.DemoOffice;

/// <summary>Where an invented job is, and for whom. Counties, cities and ZIPs are real; persons, firms and streets are not.</summary>
internal sealed record DemoPlace(int Number, string Name, string Street, string City, string Zip, string County, string Customer,
    string Builder, string Owner);

/// <summary>The invented places, firms and persons of the demo office.</summary>
internal static class DemoPlaces
{
    private static readonly (string City, string Zip, string County, string Customer)[] Yards =
    [
        ("Woodland", "95695", "Yolo", "Fennimore Framing, Inc."),
        ("Sacramento", "95818", "Sacramento", "Tule Fog Carpentry, Inc."),
        ("Oakland", "94607", "Alameda", "Ironbark & Daughters Framing"),
        ("Fresno", "93706", "Fresno", "Raisin Belt Structures, LLC"),
        ("San Diego", "92113", "San Diego", "Mesa Verbena Framing Co."),
        ("Los Angeles", "90031", "Los Angeles", "Núñez y Ochoa Carpintería, Inc."),
        ("San Jose", "95112", "Santa Clara", "Pico Blanco Interiors, Inc."),
        ("Bakersfield", "93305", "Kern", "Dry Creek Joinery, LLC"),
    ];

    private static readonly string[] Builders = ["Marrow & Pike Builders, Inc.", "Halyard Construction Company",
        "Copperthwaite Builders, LLC", "Seven Gables General Contracting, Inc."];

    private static readonly string[] Names =
    [
        "Alder Court, building 3", "Quince Street clinic", "Heron Lofts", "Packing Shed No. 4", "Verbena Terrace", "Arroyo Seco workshops",
            "Tasso Street offices", "Poso Creek barns",
        "Mulberry Row", "Foundry Square", "Tidewater Annex", "Vineyard Gate", "Cabrillo Steps", "Brass Bell Studios", "Orchard Mews",
            "Derrick Yard",
        "Larkspur Commons", "Riverbend Depot", "Gull House", "Fig Tree Plaza", "Loma Alta Homes", "Sycamore Rink", "Almaden Walk",
            "Cottonwood Hall",
        "Millrace Lofts", "Curtis Park Bakery", "Drydock Nine", "Tower Garage", "Harborlight Inn", "Echo Terrace", "Hatmaker's Row",
            "Sagebrush Market",
        "Poplar Lane school, wing B", "Levee Street library", "Estuary ferry shed", "Armory roof", "Border station canopy",
            "Reservoir school gym", "Blossom Hill hangar", "Airfield workshop",
    ];

    /// <summary>Who signs for the claimant.</summary>
    public static IReadOnlyList<Signer> Signers { get; } =
        [new("Marisol Quint", "Credit Manager"), new("Dov Hallam", "Credit Manager"), new("Ines Abernathy", "Treasurer")];

    /// <summary>What is delivered.</summary>
    public static IReadOnlyList<string> Goods { get; } =
        ["Studs and plate", "Wall sheathing", "Floor joists", "Roof trusses", "Hangers and holdowns", "Glued beams"];

    /// <summary>The place with that number, from 0.</summary>
    public static DemoPlace Of(int number)
    {
        var yard = Yards[number % Yards.Length];
        var name = Names[number % Names.Length];
        var street = name.Split(',')[0].Replace("'", "", StringComparison.Ordinal);
        return new DemoPlace(
            number, name, $"{200 + (number * 37)} {street} Way", yard.City, yard.Zip, yard.County, yard.Customer,
                Builders[number % Builders.Length],
            street + (number % 3 == 0 ? " Partners, LP" : " Holdings, LLC"));
    }
}
