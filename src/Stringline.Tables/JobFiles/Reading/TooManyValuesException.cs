namespace Stringline.Tables.JobFiles.Reading;

/// <summary>A text has more values than a job file may have.</summary>
internal sealed class TooManyValuesException : Exception;
