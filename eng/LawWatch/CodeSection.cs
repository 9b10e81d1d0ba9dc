using System.Security.Cryptography;
using System.Text;

namespace Stringline.LawWatch;

/// <summary>One version of a section as a file has it.</summary>
/// <param name="Section">The section as the rules cite it, such as <c>Civ. Code § 8414</c>.</param>
/// <param name="Text">Its text, without number and history.</param>
/// <param name="History">What the file says of its history; empty where it says nothing.</param>
internal sealed record CodeSection(string Section, string Text, string History)
{
    /// <summary>
    /// What is compared instead of the text, which is not kept: the SHA-256 of its letters. White space is left out, since each copy
    /// breaks its lines elsewhere.
    /// </summary>
    public string Fingerprint { get; } =
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Concat(Text.Where(letter => !char.IsWhiteSpace(letter))))));
}
