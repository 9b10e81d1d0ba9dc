using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Stringline.Web;

/// <summary>
/// What tells the one who started this desk from every other account and program of the machine: 256 random bits, made anew at each
/// start. The address that opens the desk carries it, and the browser then holds it as a cookie.
/// </summary>
internal sealed class StartSecret
{
    /// <summary>The folder of the address that opens the desk.</summary>
    public const string Folder = "/open";

    private const int Bits = 256;

    private readonly byte[] word;

    /// <summary>Makes one.</summary>
    public StartSecret()
    {
        Word = RandomNumberGenerator.GetHexString(Bits / 4, lowercase: true);
        word = Encoding.UTF8.GetBytes(Word);
    }

    /// <summary>Told each time a browser was let in.</summary>
    public event Action? LetIn;

    /// <summary>It, as an address carries it.</summary>
    public string Word { get; }

    /// <summary>The cookie of a desk. A browser sends the cookies of a host to all its ports, so two desks need two names.</summary>
    public static string CookieOf(HostString host) => string.Create(CultureInfo.InvariantCulture, $"stringline-desk-{host.Port ?? 80}");

    /// <summary>Whether a text is it; how long that takes tells nothing of it.</summary>
    public bool Is(string? text) => text is not null && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(text), word);

    /// <summary>Says that a browser was let in.</summary>
    public void Say() => LetIn?.Invoke();
}
