using Stringline.Store;

namespace Stringline.Office;

/// <summary>Writes a set of files into a folder so that either all of them are there, complete, or the folder is as it was.</summary>
internal static class FileDrop
{
    /// <summary>The option that lets files be replaced.</summary>
    public const string Replace = "--replace";

    /// <summary>What a refusal ends with that left everything as it was.</summary>
    public const string NothingWritten = "Nothing was written.";

    /// <summary>Writes one file by the same rule.</summary>
    /// <param name="path">Where.</param>
    /// <param name="bytes">What.</param>
    /// <param name="replace">Whether a file that is there with other content is replaced.</param>
    public static Outcome<IReadOnlyList<string>> WriteOne(string path, ReadOnlyMemory<byte> bytes, bool replace)
    {
        var full = Path.GetFullPath(path);
        return WriteAll(Path.GetDirectoryName(full) ?? full, [new FinishedFile(Path.GetFileName(full), bytes)], replace);
    }

    /// <summary>
    /// Writes the files. A file of the same name with the same content stays as it is; one with other content is replaced only where that
    /// was asked for, and else nothing is written. Others are left alone.
    /// </summary>
    /// <param name="folder">Where to; made if it is not there.</param>
    /// <param name="files">What; names are plain and differ from each other.</param>
    /// <param name="replace">Whether files of the same name with other content are replaced.</param>
    /// <returns>The full paths, in the order given; refused where other content stands in the way or the folder cannot be written
    /// to.</returns>
    public static Outcome<IReadOnlyList<string>> WriteAll(string folder, IReadOnlyList<FinishedFile> files, bool replace)
    {
        var target = Path.GetFullPath(folder);
        try
        {
            if (File.Exists(target))
                return Refuse(folder, "it is a file, not a folder");

            if (!replace && files.Select(file => Path.Combine(target, file.Name)).Where((path, i) => HoldsOther(path, files[i].Bytes.Span))
                .ToList() is { Count: > 0 } others)
                return new Outcome<IReadOnlyList<string>>.Refused([.. others.Select(InTheWay), NothingWritten]);

            // Inside the folder where there is one, so that the moves never cross from one disk to another.
            var exists = Directory.Exists(target);
            var parent = exists ? target : Path.GetDirectoryName(target) ?? target;
            Directory.CreateDirectory(parent);
            var workshop = Path.Combine(parent, ".stringline-" + Guid.NewGuid().ToString("N"));
            try
            {
                OwnerOnly.Folder(workshop);
                var made = Directory.CreateDirectory(Path.Combine(workshop, "new")).FullName;
                foreach (var file in files)
                    WriteThrough(Path.Combine(made, file.Name), file.Bytes.Span);
                if (exists)
                    Exchange(files, made, target, replace, Directory.CreateDirectory(Path.Combine(workshop, "old")).FullName);
                else
                    Directory.Move(made, target);
            }
            finally
            {
                if (Directory.Exists(workshop))
                    Directory.Delete(workshop, recursive: true);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Refuse(folder, e.Message);
        }

        return new Outcome<IReadOnlyList<string>>.Done([.. files.Select(file => Path.Combine(target, file.Name))]);
    }

    private static Outcome<IReadOnlyList<string>>.Refused Refuse(string folder, string why) =>
        new([$"{folder} cannot be written to: {why}\n  Nothing was written. Name a folder that this user may write to."]);

    private static string InTheWay(string path) =>
        $"{path} is there already with other content.\n  Move or rename that file, or name another place; or add {Replace} to replace it.";

    private static bool HoldsOther(string path, ReadOnlySpan<byte> bytes) =>
        File.Exists(path) && (new FileInfo(path).Length != bytes.Length || !bytes.SequenceEqual(File.ReadAllBytes(path)));

    private static void WriteThrough(string path, ReadOnlySpan<byte> bytes)
    {
        using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        stream.Write(bytes);
        stream.Flush(flushToDisk: true);
    }

    /// <summary>Moves the new files in and the old ones out; when one move fails, undoes those before it.</summary>
    private static void Exchange(IReadOnlyList<FinishedFile> files, string made, string target, bool replace, string kept)
    {
        var undo = new Stack<(string From, string To)>();
        try
        {
            foreach (var (name, bytes) in files)
            {
                var place = Path.Combine(target, name);
                if (File.Exists(place) && !HoldsOther(place, bytes.Span))
                    continue;

                // Without leave to replace, a file that came there just now makes the move below fail.
                if (replace && File.Exists(place))
                    Move(place, Path.Combine(kept, name));
                Move(Path.Combine(made, name), place);
            }
        }
        catch
        {
            while (undo.TryPop(out var move))
                File.Move(move.To, move.From);
            throw;
        }

        void Move(string from, string to)
        {
            File.Move(from, to);
            undo.Push((from, to));
        }
    }
}
