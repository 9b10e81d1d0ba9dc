namespace Stringline.Office.Import;

/// <summary>Where the refused rows of a file are kept.</summary>
public static class RefusedRowsFile
{
    /// <summary>The name: that of the file with <c>.refused.csv</c> in place of its ending.</summary>
    /// <param name="file">The file that was imported.</param>
    public static string NameOf(string file) => Path.ChangeExtension(file, ".refused.csv");
}
