using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Gylebook.Forecast.Json;

/// <summary>Writes JSON with numbers rounded to stable digits, and null for what is unknown.</summary>
/// <param name="writer">Where to.</param>
public sealed class JsonPen(Utf8JsonWriter writer)
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One JSON object as text: indented, lines parted alike on every machine.</summary>
    public static string Write(Action<JsonPen> write)
    {
        using MemoryStream buffer = new();
        using (Utf8JsonWriter writer = new(buffer, Options))
        {
            JsonPen pen = new(writer);
            pen.Block(() => write(pen));
        }

        return Encoding.UTF8.GetString(buffer.ToArray());
    }

    /// <summary>An object.</summary>
    public void Block(Action write)
    {
        writer.WriteStartObject();
        write();
        writer.WriteEndObject();
    }

    /// <summary>A named object.</summary>
    public void Block(string name, Action write)
    {
        writer.WritePropertyName(name);
        Block(write);
    }

    /// <summary>A named object, or null.</summary>
    public void Block<T>(string name, T? item, Action<T> write)
        where T : class
    {
        if (item is null)
        {
            writer.WriteNull(name);
        }
        else
        {
            Block(name, () => write(item));
        }
    }

    /// <summary>A named list of objects.</summary>
    public void List<T>(string name, IEnumerable<T> items, Action<T> write)
    {
        writer.WriteStartArray(name);
        foreach (T item in items)
        {
            Block(() => write(item));
        }

        writer.WriteEndArray();
    }

    /// <summary>A named list of texts.</summary>
    public void Texts(string name, IEnumerable<string> items)
    {
        writer.WriteStartArray(name);
        foreach (string item in items)
        {
            writer.WriteStringValue(item);
        }

        writer.WriteEndArray();
    }

    /// <summary>A named list of numbers, rounded.</summary>
    public void Numbers(string name, IEnumerable<double> items, int decimals)
    {
        writer.WriteStartArray(name);
        foreach (double item in items)
        {
            writer.WriteNumberValue(Math.Round(item, decimals) + 0.0);
        }

        writer.WriteEndArray();
    }

    /// <summary>A text, or null.</summary>
    public void Text(string name, string? text) => writer.WriteString(name, text);

    /// <summary>Something that is JSON already.</summary>
    public void Raw(string name, string json)
    {
        writer.WritePropertyName(name);
        writer.WriteRawValue(json);
    }

    /// <summary>True or false.</summary>
    public void Flag(string name, bool value) => writer.WriteBoolean(name, value);

    /// <summary>A number rounded to that many decimals, or null.</summary>
    public void Number(string name, double? value, int decimals)
    {
        if (value is not double number || !double.IsFinite(number))
        {
            writer.WriteNull(name);
        }
        else if (decimals > 15)
        {
            writer.WriteNumber(name, number);
        }
        else
        {
            // Minus zero would be another digit string for the same number.
            writer.WriteNumber(name, Math.Round(number, decimals) + 0.0);
        }
    }
}
