using Stringline.Law.Reasoning;

namespace Stringline.Papers;

/// <summary>Why a packet is not made. Two are the same only where they share their sentences.</summary>
/// <param name="Id">Stable id, such as <c>owner-missing</c>.</param>
/// <param name="Where">What it is about.</param>
/// <param name="There">What is there.</param>
/// <param name="Right">What would be right, and what to do.</param>
/// <param name="Section">The section that asks for it; empty where none does.</param>
public sealed record Refusal(string Id, Place Where, Sentence There, Sentence Right, string Section)
{
    /// <summary>The refusal in one sentence after another, as the command line says it.</summary>
    public override string ToString() => InWords(Where.ToString(), Door.OfFile);

    /// <summary>The refusal in one sentence after another, in the words of a door.</summary>
    /// <param name="where">What it is about, in that door's words.</param>
    /// <param name="door">That door.</param>
    public string InWords(string where, Door door) => Section.Length == 0
        ? $"{where}: {door.Of(There)} {door.Of(Right)}" : $"{where}: {door.Of(There)} {door.Of(Right)} ({Section})";
}
