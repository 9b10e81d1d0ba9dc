namespace Stringline.Places;

/// <summary>How the county that a job file names goes with the site's ZIP and city.</summary>
/// <remarks>The cases are the only ones. None is a finding of law: only a map or the assessor's roll says where the land lies.</remarks>
public abstract record CountyAnswer
{
    private CountyAnswer()
    {
    }

    /// <summary>It is the only county known for the site's ZIP, or for its city where the file holds no ZIP.</summary>
    /// <param name="By">What it was compared with, such as <c>ZIP 95695</c>.</param>
    public sealed record Fits(string By) : CountyAnswer;

    /// <summary>The ZIP or the city lies in more counties than one, and the county named is one of them.</summary>
    /// <param name="By">What it was compared with.</param>
    /// <param name="Counties">All of them.</param>
    public sealed record Straddles(string By, IReadOnlyList<string> Counties) : CountyAnswer;

    /// <summary>The ZIP or the city is known, but in another county.</summary>
    /// <param name="By">What it was compared with.</param>
    /// <param name="Counties">Where it is said to lie.</param>
    public sealed record DoesNotFit(string By, IReadOnlyList<string> Counties) : CountyAnswer;

    /// <summary>What the file says of the place cannot be compared: absent, not written as a ZIP, or in no table.</summary>
    /// <param name="Why">Why, in a sentence.</param>
    public sealed record NotCompared(string Why) : CountyAnswer;
}
