using System.Text.Json.Serialization;

namespace Stringline.Desk.Settings;

/// <summary>How settings are written as JSON.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(OfficeSettings))]
internal sealed partial class SettingsJson : JsonSerializerContext;
