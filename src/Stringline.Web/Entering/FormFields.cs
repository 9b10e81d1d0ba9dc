using Stringline.Office.Entering;

namespace Stringline.Web.Entering;

/// <summary>The fields of a form that a browser sent.</summary>
internal static class FormFields
{
    /// <summary>Them, as they were typed.</summary>
    public static Typed AsTyped(this IFormCollection form) =>
        Typed.Of(form.Select(field => (field.Key, (IEnumerable<string?>)field.Value)));
}
