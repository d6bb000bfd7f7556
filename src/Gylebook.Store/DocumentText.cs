using System.Text;
using System.Text.Json;

namespace Gylebook.Store;

/// <summary>
/// The little that the book itself reads in a document: its format and its name.
/// Everything else belongs to the reader of that format.
/// </summary>
internal static class DocumentText
{
    public const string Recipe = "gylebook-recipe/";
    public const string Kit = "gylebook-kit/";
    public const string Food = "gylebook-food/";
    public const string Water = "gylebook-water/";
    public const string Plan = "gylebook-plan/";

    /// <summary>The name in the document.</summary>
    /// <exception cref="ArgumentException">Not JSON, of another format, or without a name: the caller's bug.</exception>
    public static string NameIn(string document, string format)
    {
        Heading heading = Read(document, format);
        return heading.Name is { } name && !string.IsNullOrWhiteSpace(name)
            ? name
            : throw new ArgumentException($"The document of format {format}N has no name.", nameof(document));
    }

    /// <summary>The id in the document, or null.</summary>
    public static string? IdIn(string document, string format) => Read(document, format).Id;

    /// <summary>Refuses what is not JSON of that format.</summary>
    /// <exception cref="ArgumentException">Not JSON, or of another format: the caller's bug.</exception>
    public static void Check(string document, string format) => Read(document, format);

    /// <summary>The same text with another name; not a comma of the rest moves.</summary>
    /// <exception cref="ArgumentException">Not JSON, of another format, or without a name: the caller's bug.</exception>
    public static string WithName(string document, string format, string name)
    {
        NameIn(document, format);
        Heading heading = Read(document, format);
        byte[] text = Encoding.UTF8.GetBytes(document);
        string quoted = JsonSerializer.Serialize(name, Readable);
        return Encoding.UTF8.GetString(text, 0, heading.NameStart)
            + quoted
            + Encoding.UTF8.GetString(text, heading.NameEnd, text.Length - heading.NameEnd);
    }

    private static JsonSerializerOptions Readable { get; } =
        new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static Heading Read(string document, string format)
    {
        Heading heading;
        try
        {
            heading = Read(Encoding.UTF8.GetBytes(document));
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException)
        {
            throw new ArgumentException($"Not a JSON document: {fault.Message}", nameof(document), fault);
        }

        return heading.Format is { } found && found.StartsWith(format, StringComparison.Ordinal)
            ? heading
            : throw new ArgumentException(
                $"A document of format {format}N is wanted, and this one says {heading.Format ?? "nothing"}.",
                nameof(document));
    }

    private static Heading Read(byte[] text)
    {
        var reader = new Utf8JsonReader(text);
        Heading heading = default;
        while (reader.Read())
        {
            if (reader.TokenType != JsonTokenType.PropertyName || reader.CurrentDepth != 1)
            {
                continue;
            }

            string? key = reader.GetString();
            reader.Read();
            if (key == "format")
            {
                heading = heading with { Format = reader.GetString() };
            }
            else if (key == "id")
            {
                heading = heading with { Id = reader.GetString() };
            }
            else if (key == "name")
            {
                heading = heading with
                {
                    Name = reader.GetString(),
                    NameStart = (int)reader.TokenStartIndex,
                    NameEnd = (int)reader.BytesConsumed,
                };
            }
        }

        return heading;
    }

    private readonly record struct Heading(string? Format, string? Id, string? Name, int NameStart, int NameEnd);
}
