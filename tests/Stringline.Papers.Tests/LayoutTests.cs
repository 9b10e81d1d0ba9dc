using CsCheck;
using Stringline.Law.Facts;
using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;
using Stringline.Testing;

namespace Stringline.Papers.Tests;

/// <summary>What is read back from papers with long, many and accented texts.</summary>
public sealed class LayoutTests
{
    private const string Legal =
        "PARCEL ONE: That portion of the Northwest quarter of Section 14, Township 9 North, Range 1 East, Mount Diablo Base and Meridian, "
            + "in the City of Woodland, County of Yolo, State of California, described as follows: Beginning at a point on the East line "
            + "of Alder Court, distant thereon South 0° 14′ 30″ West 412.67 feet from the Southwest corner of Lot 9 as shown on the map "
            + "entitled “Alder Court Subdivision, Unit No. 2”, filed in Book 19 of Maps at pages 44 and 45; thence from said point of "
            + "beginning along said East line South 0° 14′ 30″ West 260.00 feet; thence leaving said East line South 89° 45′ 30″ East "
            + "318.22 feet; thence North 0° 14′ 30″ East 260.00 feet; thence North 89° 45′ 30″ West 318.22 feet to the point of beginning. "
            + "";

    private static readonly string[] Accented =
        ["Nguyễn Thị Ánh", "José Muñoz Peña", "Łukasz Wójcik", "Çelik Öztürk", "Keoni Ōkina Kāne", "Ångström Bjørn", "Dvořák Šťastný",
            "Ștefan Țepeș", "Ğöksu Işık", "Ñandú Güemes", "Œuvre d’Été", "Ærø Þór Eiríksson"];

    private static JobFile LongParty() => Jobs.Demo() with
    {
        Claimant = Jobs.Demo().Claimant with
        {
            Name = "The Quarrymen’s and Stonecutters’ Cooperative Supply Company of the Greater Sacramento Valley and Adjoining Counties, "
                + "a California Corporation, doing business as Plumb & Level Stone Yard and Masonry Depot",
        },
    };

    private static JobFile LongLegal() => Jobs.Demo() with
    {
        Work = Jobs.Demo().Work with { Site = Jobs.Demo().Work.Site with { Legal = string.Concat(Enumerable.Repeat(Legal, 3)) } },
    };

    private static JobFile ManyOwners() => Jobs.Demo().WithOwners([.. Enumerable.Range(1, 14).Select(i => new Party
    {
        Id = $"o{i}", Capacity = PartyCapacity.Owner,
            Name = $"{Accented[i % Accented.Length]}, Trustee of the Cordage Family Trust No. {i}",
        Address = $"{100 + i} Cordage Way, Apartment {i}\nDavis, CA 95616",
    })]);

    public static TheoryData<string, JobFile> Hard() => new()
    {
        { "long-party", LongParty() },
        { "long-legal", LongLegal() },
        { "many-owners", ManyOwners() },
        { "everything", LongLegal().WithOwners([.. ManyOwners().In(PartyCapacity.Owner)]) with { Claimant = LongParty().Claimant } },
        { "long-signer", Jobs.Demo() with { Claimant =
            Jobs.Demo().Claimant with { Signer =
            new Signer("Maria de los Ángeles Muñoz-Nguyễn y Fernández de Córdoba",
            "Executive Vice President for Accounts, Credit and Collections, Western Region") } } },
        { "for-oneself", Jobs.Demo() with { Claimant =
            Jobs.Demo().Claimant with { Name = "Keoni Kāne", Signer = new Signer("Keoni Kāne", null) } } },
        { "contractor", Jobs.Served() with { Claimant =
            Jobs.Served().Claimant with { Role = ClaimantRole.Subcontractor,
            License = new License { Required = true, Number = "1012345", Class = "C-29" } } } },
    };

    [Theory]
    [MemberData(nameof(Hard), DisableDiscoveryEnumeration = true)]
    public void Long_and_many_texts_flow_and_pass_preflight(string name, JobFile job)
    {
        var made = Kept.Packet(name, job);
        foreach (var page in made.Files.SelectMany(f => ReadBack.Of(f.Bytes).Pages))
        {
            Assert.All(page.Letters.Where(l => !l.Blank), l => Assert.InRange(l.Left, 54, 612 - 54));
            Assert.All(page.Letters.Where(l => !l.Blank), l => Assert.InRange(l.Right, 54, 612 - 54 + 0.1));
            Assert.All(page.Letters, l => Assert.InRange(l.Baseline, 36, 792 - 30));
            Assert.All(page.Letters, l => Assert.True(l.Points >= 7.5));
        }
    }

    [Theory]
    [MemberData(nameof(Hard), DisableDiscoveryEnumeration = true)]
    public void No_page_begins_with_a_signature_block(string name, JobFile job)
    {
        foreach (var page in Kept.Packet($"{name}-widow", job).Claim().Pages)
        {
            var signature = page.Words.FirstOrDefault(w => w.Text == "Date" && w.Points < 9);
            if (signature is null)
                continue;
            var above = page.Words.Count(w => w.Baseline < signature.Baseline - 30 && w.Baseline > (page.Number == 1 ? Sheet.TitleTop : 0));
            Assert.True(above >= 8, $"page {page.Number} of {name}: {above} words above its signature block");
        }
    }

    [Theory]
    [MemberData(nameof(Hard), DisableDiscoveryEnumeration = true)]
    public void A_signature_rule_and_its_name_stand_on_one_page(string name, JobFile job)
    {
        var claim = Kept.Packet($"{name}-signature", job).Claim();
        foreach (var page in claim.Pages)
        {
            Assert.Equal(page.Words.Count(w => w.Text == "Date" && w.Points < 9),
                page.Words.Count(w => w.Text == "Signed" && w.Points < 9));
        }
    }

    [Fact]
    public void A_half_page_legal_description_is_read_back_whole()
    {
        var read = Kept.Packet("legal", LongLegal()).Claim();
        Assert.Contains(PaperText.Clean(string.Concat(Enumerable.Repeat(Legal, 3)))!.Replace(" ", "", StringComparison.Ordinal),
            read.Columns(), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_of_fourteen_owners_stands_in_claim_and_affidavit()
    {
        var text = Kept.Packet("owners", ManyOwners()).Claim().Columns();
        foreach (var owner in ManyOwners().In(PartyCapacity.Owner))
            Assert.True(text.Split(owner.Name.Replace(" ", "", StringComparison.Ordinal)).Length >= 3, owner.Name);
    }

    [Fact]
    public void Every_Latin_letter_with_an_accent_has_its_type()
    {
        var latin = Enumerable.Range(0xC0, 0x180 - 0xC0).Concat(Enumerable.Range(0x1EA0, 0x1EFA - 0x1EA0))
            .Concat([0x218, 0x219, 0x21A, 0x21B, 0x1CD, 0x1F5]);
        var text = string.Concat(latin.Select(c => (char)c));
        Assert.All(Enum.GetValues<Face>(), face => Assert.Empty(Fonts.Missing(face, text)));
    }

    [Fact]
    public void A_letter_without_type_is_named() => Assert.Equal(["石", "😀"], Fonts.Missing(Face.Serif, "a石b😀石"));

    /// <summary>
    /// Names from a stock of accented ones, any lengths, any number of owners: nothing is lost, nothing overlaps, no check fails.
    /// </summary>
    [Fact]
    [Slow(Slow.Lasting)]
    public void Random_names_and_texts_pass_preflight()
    {
        var name = Gen.Select(Gen.Int[0, Accented.Length - 1].Select(i => Accented[i]), Gen.Int[1, 6],
            (n, times) => string.Join(" & ", Enumerable.Repeat(n, times)));
        var words = Gen.Int[0, Accented.Length - 1].Select(i => Accented[i]).Array[1, 60].Select(w => string.Join(' ', w));
        Gen.Select(name, name, words, words, Gen.Int[1, 8], Gen.Bool).Sample((claimant, owner, work, legal, owners, served) =>
        {
            var job = (served ? Jobs.Served() : Jobs.Demo()).WithOwners([.. Enumerable.Range(1, owners).Select(i =>
                new Party { Id = $"p{(i == 1 ? 1 : i + 10)}", Capacity = PartyCapacity.Owner, Name = $"{owner} {i}",
                    Address = "1 Cordage Way, Davis, CA 95616" })]);
            job = job with
            {
                Entries = [.. job.Entries.Select(e => e is ClaimServed s
                    ? s with { To = [.. job.In(PartyCapacity.Owner).Select(o => o.Id)] } : e)],
                Claimant = job.Claimant with { Name = claimant },
                Contract = job.Contract with { Work = work },
                Work = job.Work with { Site = job.Work.Site with { Legal = legal } },
            };
            Kept.Packet("random", job);
        }, iter: 30, threads: 2);
    }

    /// <summary>Breaking into lines loses and adds no letter, and no line is wider than its column.</summary>
    [Fact]
    public void Lines_hold_every_letter_and_fit()
    {
        var text = Gen.OneOf(Gen.Int[0, Accented.Length - 1].Select(i => Accented[i]), Gen.String[Gen.Char['a', 'z'], 1, 80],
            Gen.Const("§ 8416(a)(7)"), Gen.Const("\n")).Array[1, 40].Select(p => string.Join(' ', p));
        Gen.Select(text, Gen.Double[40, 480]).Sample((words, width) =>
        {
            var measure = new Measure();
            var lines = measure.Lines(words, TypeStyle.Body, width);
            Assert.Equal(string.Concat(words.Where(c => !char.IsWhiteSpace(c))),
                string.Concat(lines.SelectMany(l => l).Where(c => !char.IsWhiteSpace(c))));
            Assert.All(lines, l => Assert.True(measure.Width(l, TypeStyle.Body) <= width + 0.01, l));
        }, iter: 200, threads: 1);
    }

    [Fact]
    public void A_return_address_that_no_type_can_fit_is_refused()
    {
        var job = Jobs.Demo() with { Claimant =
            Jobs.Demo().Claimant with { Address = string.Join('\n', Enumerable.Range(1, 20).Select(i => $"Line {i} of an address")) } };
        Assert.Equal("return-block-full", Assert.Single(Kept.Refusals(job)).Id);
    }

    [Fact]
    public void The_same_job_makes_the_same_paper_text()
    {
        Assert.Equal(Kept.Packet("once", Jobs.Demo()).Claim().Text, Kept.Packet("again", Jobs.Demo()).Claim().Text);
    }
}
