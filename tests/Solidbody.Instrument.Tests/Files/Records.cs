using System.Text.Json;

namespace Solidbody.Instrument.Tests.Files;

/// <summary>A definition as text, lists and all: records compare lists by reference.</summary>
static class Records
{
    static readonly JsonSerializerOptions Options = new() { IncludeFields = true };

    public static string Text(InstrumentDefinition definition) =>
        JsonSerializer.Serialize(definition, Options) + JsonSerializer.Serialize<object>(definition.Body.Outline.Treble) + JsonSerializer.Serialize<object>(definition.Body.Outline.Bass);
}
