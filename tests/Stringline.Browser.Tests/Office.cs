namespace Stringline.Browser.Tests;

/// <summary>An office whose desk the tests share. Nothing is written to any of them.</summary>
internal enum Office
{
    /// <summary>The demo office.</summary>
    Demo,

    /// <summary>One without a job.</summary>
    Empty,

    /// <summary>One with a table at every step of an import.</summary>
    Importing,
}
