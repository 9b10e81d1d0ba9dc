using System.Runtime.InteropServices;

namespace Stringline.Store.Upkeep;

/// <summary>A second name for a file, made without opening it.</summary>
internal static partial class HardLink
{
    /// <summary>Makes one.</summary>
    /// <returns>Whether it was made; not every disk knows them.</returns>
    public static bool Make(string file, string name) => OperatingSystem.IsWindows() ? CreateHardLink(name, file, 0) : Link(file, name) == 0;

    // POSIX.1-2017, link().
    [LibraryImport("libc", EntryPoint = "link", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Link(string file, string name);

    [LibraryImport("kernel32", EntryPoint = "CreateHardLinkW", StringMarshalling = StringMarshalling.Utf16)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool CreateHardLink(string name, string file, nint security);
}
