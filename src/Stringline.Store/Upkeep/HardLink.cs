using System.Runtime.InteropServices;

namespace Stringline.Store.Upkeep;

/// <summary>Second names for a file.</summary>
internal static partial class HardLink
{
    private const int CurrentFolder = -100;
    private const int DoNotFollow = 0x100;
    private const uint BasicFacts = 0x7FF;

    /// <summary>Makes one, without opening the file.</summary>
    /// <returns>Whether it was made; not every disk knows them.</returns>
    public static bool Make(string file, string name) =>
        OperatingSystem.IsWindows() ? CreateHardLink(name, file, 0) : Link(file, name) == 0;

    /// <summary>
    /// Whether two paths, no links among them, are names of one file. False also where the system cannot tell: only Linux is asked.
    /// </summary>
    public static bool IsSame(string one, string other) => OperatingSystem.IsLinux() && Id(one) is { } id && id == Id(other);

    // statx(2) of Linux: the number of the file within its disk, and the two numbers of the disk. The layout is the same on all machines.
    private static (ulong File, uint Major, uint Minor)? Id(string path)
    {
        Span<byte> facts = stackalloc byte[256];
        if (StatX(CurrentFolder, path, DoNotFollow, BasicFacts, facts) != 0)
            return null;
        return (MemoryMarshal.Read<ulong>(facts[32..]), MemoryMarshal.Read<uint>(facts[136..]), MemoryMarshal.Read<uint>(facts[140..]));
    }

    // POSIX.1-2017, link().
    [LibraryImport("libc", EntryPoint = "link", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Link(string file, string name);

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int StatX(int folder, string path, int flags, uint asked, Span<byte> facts);

    [LibraryImport("kernel32", EntryPoint = "CreateHardLinkW", StringMarshalling = StringMarshalling.Utf16)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool CreateHardLink(string name, string file, nint security);
}
