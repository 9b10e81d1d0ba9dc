using System.Text.Json.Serialization;

namespace Stringline.Office.Settings;

/// <summary>How settings are written as JSON: on one line, since a form that hands them back would turn line breaks into others.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(OfficeSettings))]
internal sealed partial class SettingsJson : JsonSerializerContext;
