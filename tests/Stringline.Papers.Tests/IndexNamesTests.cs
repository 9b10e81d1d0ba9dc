using Stringline.Law.Facts;
using Stringline.Papers.Indexing;
using Stringline.Testing;

namespace Stringline.Papers.Tests;

/// <summary>
/// The names of each way to hold title. That the names of record must stand on the paper is Gov. Code § 27288.1(a); the form of
/// the index entries is common practice, no source.
/// </summary>
public sealed class IndexNamesTests
{
    private static readonly TitleHolder Ana = new() { Surname = "Ibarra", Given = "Ana María" };
    private static readonly TitleHolder Tomas = new() { Surname = "Ibarra", Given = "Tomás", Suffix = "Jr." };
    private static readonly TitleHolder Bank = new() { Entity = "Granger Slough Bank" };

    private static Party Owner(string name, TitleForm form, params TitleHolder[] persons) => new()
    {
        Id = "o", Capacity = PartyCapacity.Owner, Name = name, HoldsTitleAs = new TitleHolding { Form = form, Persons = persons },
    };

    private static Party Trust(string name, string trust, params TitleHolder[] trustees) =>
        Owner(name, TitleForm.Trust) with { HoldsTitleAs = new TitleHolding { Form = TitleForm.Trust, Trust = trust, Persons = trustees } };

    private static Party Estate(string name, TitleHolder decedent, params TitleHolder[] representatives) =>
        Owner(name, TitleForm.Estate) with { HoldsTitleAs =
            new TitleHolding { Form = TitleForm.Estate, Decedent = decedent, Persons = representatives } };

    public static TheoryData<Party, string[], string> Ways() => new()
    {
        { Owner("Ana María Ibarra", TitleForm.Individual, Ana), ["Ibarra, Ana María"], "Ana María Ibarra" },
        { Owner("The Ibarras", TitleForm.Individual, Ana, Tomas), ["Ibarra, Ana María", "Ibarra, Tomás Jr."],
            "Ana María Ibarra and Tomás Ibarra Jr." },
        { Owner("Ana María Ibarra et al.", TitleForm.JointTenants, Ana, Tomas), ["Ibarra, Ana María", "Ibarra, Tomás Jr."],
            "Ana María Ibarra and Tomás Ibarra Jr., as joint tenants" },
        { Trust("Ibarra Trust", "Ibarra Family Trust", Ana), ["Ibarra, Ana María", "Ibarra Family Trust"],
            "Ana María Ibarra, trustee of the Ibarra Family Trust" },
        { Trust("Ibarra Trust", "The Ibarra Trust of 1998", Ana, Bank),
            ["Ibarra, Ana María", "Granger Slough Bank", "The Ibarra Trust of 1998"],
            "Ana María Ibarra and Granger Slough Bank, trustees of the Ibarra Trust of 1998" },
        { Owner("Alder Court Two, LLC", TitleForm.Company), ["Alder Court Two, LLC"], "Alder Court Two, LLC" },
        { Estate("Estate of Ibarra", Ana, Tomas), ["Ibarra, Ana María, Estate of", "Ibarra, Tomás Jr."],
            "Tomás Ibarra Jr., representative of the estate of Ana María Ibarra, deceased" },
        { Estate("Estate of Ibarra", Ana), ["Ibarra, Ana María, Estate of"], "the estate of Ana María Ibarra, deceased" },
        { Owner("Estate of Ana María Ibarra", TitleForm.Estate, Tomas), ["Estate of Ana María Ibarra", "Ibarra, Tomás Jr."],
            "Tomás Ibarra Jr., representative of the Estate of Ana María Ibarra" },
        { Trust("The Hale Family Trust", "The Hale Family Trust", Ana), ["Ibarra, Ana María", "The Hale Family Trust"],
            "Ana María Ibarra, trustee of the Hale Family Trust" },
        { Trust("The Hale Family Trust", " ", Ana), ["Ibarra, Ana María", "The Hale Family Trust"],
            "Ana María Ibarra, trustee of the Hale Family Trust" },
        { Owner("Alder Creek Levee District", TitleForm.PublicEntity), ["Alder Creek Levee District"], "Alder Creek Levee District" },
        { Owner("Prince", TitleForm.Individual, new TitleHolder { Surname = "Prince" }), ["Prince"], "Prince" },
    };

    [Theory]
    [MemberData(nameof(Ways), DisableDiscoveryEnumeration = true)]
    public void Each_way_to_hold_title_gives_its_names(Party owner, string[] names, string words)
    {
        Assert.Equal(names, IndexNames.OfOwner(owner).Select(n => n.Indexed));
        Assert.Equal(words, IndexNames.TitleWords(owner));
        Assert.All(IndexNames.OfOwner(owner),
            n => Assert.Contains(n.Written, owner.Name
            + words.Replace("the Ibarra Trust of", "The Ibarra Trust of", StringComparison.Ordinal), StringComparison.Ordinal));
    }

    /// <summary>
    /// Each other name may count (common practice, no source; countyofmerced.com counts each aka and dba as a defendant, read 2026-11-25).
    /// </summary>
    [Theory]
    [InlineData("Ibarra Tile, Inc., dba Delta Tile", "Ibarra Tile, Inc.", "Delta Tile")]
    [InlineData("Delta Tile aka Ibarra Tile A/K/A D Tile", "Delta Tile", "Ibarra Tile", "D Tile")]
    [InlineData("Akabane Dba-Works, Inc.", "Akabane Dba-Works, Inc.")]
    public void Each_other_name_is_a_name(string claimant, params string[] names) =>
        Assert.Equal(names, IndexNames.Of(claimant, []).Select(n => n.Indexed));

    [Fact]
    public void A_name_that_comes_twice_counts_once() =>
        Assert.Equal(2, IndexNames.Of("Alder Court", [Owner("a", TitleForm.Individual, Ana), Owner("b", TitleForm.Individual, Ana)]).Count);

    [Fact]
    public void Names_that_the_owner_s_name_leaves_out_stand_on_the_claim_and_the_sheet()
    {
        var job = Jobs.Demo().WithOwners(Trust("The Ibarra Trust", "Ibarra Family Trust", Ana, Bank) with { Id = "p1", Address = "77 "
            + "Cordage Way, Davis, CA 95616" });
        var made = Kept.Packet("trust", job);
        Assert.Contains("Title held by Ana María Ibarra and Granger Slough Bank, trustees of the Ibarra Family Trust", made.Claim().Text,
            StringComparison.Ordinal);
        Assert.Contains("Owner: Ibarra, Ana María; Granger Slough Bank; Ibarra Family Trust", made.Sheet().Text, StringComparison.Ordinal);
    }

    /// <summary>
    /// Gov. Code § 27361.8: in Yolo $4 for each ten names after the first ten (assessor.yolocounty.gov, read 2026-11-25): ten trustees,
    /// their trust and the claimant are twelve.
    /// </summary>
    [Fact]
    [Slow(Slow.Lasting)]
    public void More_than_ten_names_cost_more()
    {
        var trustees = Enumerable.Range(1, 10).Select(i => new TitleHolder { Surname = $"Ibarra{(char)('A' + i)}", Given = "Ana" })
            .ToArray();
        var made = Kept.Packet("many-trustees", Jobs.Demo()
            .WithOwners(Trust("The Ibarra Trust", "Ibarra Family Trust", trustees) with { Id = "p1",
            Address = "77 Cordage Way, Davis, CA 95616" }));
        Assert.Equal(4m, made.Fee!.Part("names")?.Amount);
        Assert.Null(Kept.Packet("one-owner", Jobs.Demo()).Fee!.Part("names"));
    }

    /// <summary>A trust named after its trustees, an estate after the dead: the name alone does not say who holds title as what.</summary>
    [Fact]
    public void A_trust_named_after_its_trustees_and_an_estate_keep_their_title_words()
    {
        const string address = "77 Cordage Way, Davis, CA 95616";
        var trust = Kept.Packet("trustees-trust", Jobs.Demo().WithOwners(
            Trust("Ana María Ibarra Family Trust", "Ana María Ibarra Family Trust", Ana) with { Id = "p1", Address = address }));
        Assert.Contains("Title held by Ana María Ibarra, trustee of the Ana María Ibarra Family Trust", trust.Claim().Text,
            StringComparison.Ordinal);
        var estate = Kept.Packet("estate", Jobs.Demo().WithOwners(
            Estate("Estate of Ana María Ibarra", Ana) with { Id = "p1", Address = address }));
        Assert.Contains("Title held by the estate of Ana María Ibarra, deceased", estate.Claim().Text, StringComparison.Ordinal);
        Assert.Contains("Owner: Ibarra, Ana María, Estate of", estate.Sheet().Text, StringComparison.Ordinal);
    }

    /// <summary>Where the file does not say how title is held, the words of the name stay in its entry.</summary>
    [Theory]
    [InlineData("The Hale Family Trust")]
    [InlineData("Estate of Ana María Ibarra, deceased")]
    [InlineData("Ana María Ibarra, trustee of the Hale Family Trust")]
    public void The_title_words_of_a_name_stay(string name) =>
        Assert.Equal([name], IndexNames.OfOwner(new Party { Id = "o", Capacity = PartyCapacity.Owner, Name = name })
            .Select(n => n.Indexed));

    [Fact]
    public void Where_the_file_does_not_say_how_title_is_held_the_sheet_says_so() =>
        Assert.Contains("The file does not say how Alder Court Partners, LLC holds title", Kept.Packet("unsaid", Jobs.Demo()).Sheet().Text,
            StringComparison.Ordinal);

    /// <summary>A claimant who is a natural person stands in the index as an owner does.</summary>
    [Theory]
    [InlineData("Abel Thornquist", "Thornquist, Abel")]
    [InlineData("Marisol Quint Jr.", "Quint, Marisol Jr.")]
    [InlineData("Keoni de la Cruz", "de la Cruz, Keoni")]
    [InlineData("Abel Thornquist dba Thornquist Builders", "Thornquist, Abel; Thornquist Builders")]
    [InlineData("Nemo", "Nemo")]
    public void A_natural_person_s_name_has_the_surname_first(string name, string indexed) => Assert.Equal(indexed, string.Join("; ",
        IndexNames.Of(name, [], isPerson: true).Select(n => n.Indexed)));

    [Fact]
    public void The_sheet_says_owner_and_claimant_alike() => Assert.Contains("Claimant: Kāne, Keoni", Kept.Packet("person", Jobs.Demo() with
    {
        Claimant = Jobs.Demo().Claimant with { Name = "Keoni Kāne", Signer = new Signer("Keoni Kāne", null) },
    }).Sheet().Text, StringComparison.Ordinal);

    /// <summary>An owner whom the file calls a natural person too, where it says nothing of the title; never two in one name.</summary>
    [Theory]
    [InlineData("Ida Quill", true, "Quill, Ida")]
    [InlineData("Ida Quill", null, "Ida Quill")]
    [InlineData("Ida Quill and Ruth Quill", true, "Ida Quill and Ruth Quill")]
    [InlineData("Ida Quill, trustee of the Quill Trust", true, "Ida Quill, trustee of the Quill Trust")]
    public void An_owner_who_is_a_natural_person_has_the_surname_first(string name, bool? isPerson, string indexed) =>
        Assert.Equal([indexed], IndexNames.OfOwner(new Party { Id = "o", Capacity = PartyCapacity.Owner, Name = name,
            NaturalPerson = isPerson }).Select(n => n.Indexed));
}
