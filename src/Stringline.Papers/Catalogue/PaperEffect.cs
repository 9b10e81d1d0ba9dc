namespace Stringline.Papers.Catalogue;

/// <summary>What a paper does to rights, said before it is made.</summary>
/// <param name="Words">In plain words.</param>
/// <param name="Section">By which section.</param>
public sealed record PaperEffect(string Words, string Section);

/// <summary>What an unconditional waiver does: it gives up rights the moment it is signed, paid or not (Civ. Code §§ 8134, 8138).</summary>
/// <param name="Words">What is lost and what is kept, in plain words.</param>
/// <param name="Until">The paper to use until the money is in the bank.</param>
public sealed record ImmediateRelease(string Words, Paper Until);
