using Stringline.Law.Facts;
using Stringline.Papers.Indexing;
using Stringline.Papers.Layout;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Enforcement;

/// <summary>The signatures of owners under what they agree to: each who signs has a block and a certificate.</summary>
internal static class OwnersSign
{
    /// <summary>So many are told one by one on the sheet.</summary>
    private const int Told = 6;

    /// <summary>Puts a block for each owner, for each trustee of a trust and for each representative of an estate.</summary>
    /// <param name="leaf">The paper; what it says last stays with the first block.</param>
    /// <param name="owners">The owners.</param>
    /// <returns>How many sign.</returns>
    public static int Put(PaperBuilder leaf, IReadOnlyList<Party> owners)
    {
        List<Signer> signers = [.. owners.Count == 0 ? [new Signer(null, null, "Owner")] : owners.SelectMany(Of)];
        foreach (var signer in signers)
        {
            if (signer.For is { } held)
                leaf.Lead($"For {held}:");
            if (signer.Name is { } name)
                leaf.Sign(name, signer.Capacity);
            else
                leaf.Add(new Signature(null, "Title and authority to sign for the owner") { Before = 10 });
        }

        foreach (var words in signers.Count <= Told ? signers.Select(ByHand)
            : [$"Each of the {signers.Count} owners and those who sign for them: signature; printed name; title and authority; "
                + "date and place"])
            leaf.Blank(words);
        return signers.Count;
    }

    private sealed record Signer(string? Name, string? For, string Capacity);

    // Who signs for a company the file does not know.
    private static IEnumerable<Signer> Of(Party owner)
    {
        if (IndexNames.Persons(owner) is { Count: > 0 } persons)
            return persons.Select(person => new Signer(person, null, "Owner"));
        var title = IndexNames.TitleWords(owner);
        var holders = IndexNames.Holders(owner);
        var capacity = owner.HoldsTitleAs?.Form == TitleForm.Trust ? "Trustee" : "Representative of the estate";
        return holders.Count == 0 ? [new Signer(null, title, "Owner")]
            : holders.Select((holder, i) => new Signer(holder.IsPerson ? holder.Name : null,
                i == 0 || !holder.IsPerson ? holder.IsPerson ? title : $"{holder.Name}, {capacity.ToLowerInvariant()}" : null, capacity));
    }

    private static string ByHand(Signer signer) => signer.Name is { } name ? $"{name}: signature; date and place of signing"
        : $"{(signer.For is { } held ? $"For {Shortened(held, 80)}" : "For the owner")}: signature; printed name; title and authority; "
            + "date and place of signing";
}
