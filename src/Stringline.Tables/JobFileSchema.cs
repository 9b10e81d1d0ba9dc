namespace Stringline.Tables;

/// <summary>The JSON Schema (2020-12) of the job file, as published.</summary>
public static class JobFileSchema
{
    /// <summary>The schema's bytes, UTF-8.</summary>
    public static byte[] Utf8()
    {
        using var stream = typeof(JobFileSchema).Assembly.GetManifestResourceStream("job-file.schema.json")
            ?? throw new InvalidOperationException("The schema is missing from the program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
