using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>A store whose program died, and in whose log a bit was flipped since.</summary>
internal static class DamagedLog
{
    /// <summary>Lays one where none is: what was recorded last is in the log only, and the log no longer fits.</summary>
    public static void Lay(string store)
    {
        var whole = Path.Combine(Scratch.Folder(), "whole");
        using (var journal = Journals.Open(whole, SystemClock.Instance, OpenStore.OrMake))
        {
            journal.WriteSettings(null, "{}");
            File.Copy(whole, store);
            File.Copy(whole + "-wal", store + "-wal");
        }

        Directory.Delete(Path.GetDirectoryName(whole)!, recursive: true);
        using var log = new FileStream(store + "-wal", FileMode.Open);
        log.Position = log.Length - 1;
        var last = log.ReadByte();
        log.Position--;
        log.WriteByte((byte)(last ^ 1));
    }
}
