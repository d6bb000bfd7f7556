using System.Text;
using System.Text.Json;

namespace Gylebook.Store;

/// <summary>
/// The little that the book itself reads in a document: its format and its name.
/// Everything else belongs to the reader of that format.
/// </summary>
internal static class DocumentText
{
    public static readonly IReadOnlyList<string> Recipe = ["gylebook-recipe/"];
    public static readonly IReadOnlyList<string> Kit = ["gylebook-kit/"];
    public static readonly IReadOnlyList<string> Food = ["gylebook-food/"];
    public static readonly IReadOnlyList<string> Water = ["gylebook-water/"];
    public static readonly IReadOnlyList<string> Larder = ["gylebook-malt/", "gylebook-hop/", "gylebook-yeast/", "gylebook-shelf/"];
    public static readonly IReadOnlyList<string> Kept = [.. Recipe, .. Kit, .. Water, .. Food, .. Larder];
    public static readonly IReadOnlyList<string> Plan = ["gylebook-plan/"];

    /// <summary>The name in the document.</summary>
    /// <exception cref="ArgumentException">Not JSON, of another format, or without a name: the caller's bug.</exception>
    public static string NameIn(string document, IReadOnlyList<string> formats)
    {
        Heading heading = Read(document, formats);
        return heading.Name is { } name && !string.IsNullOrWhiteSpace(name)
            ? name
            : throw new ArgumentException($"The document of format {heading.Format} has no name.", nameof(document));
    }

    /// <summary>The id in the document, or null.</summary>
    public static string? IdIn(string document, IReadOnlyList<string> formats) => Read(document, formats).Id;

    /// <summary>The format it is of, without its version: <c>gylebook-malt/</c>.</summary>
    public static string FormatOf(string document, IReadOnlyList<string> formats) =>
        Of(Read(document, formats).Format, formats)!;

    /// <summary>Refuses what is not JSON of one of those formats.</summary>
    /// <exception cref="ArgumentException">Not JSON, or of another format: the caller's bug.</exception>
    public static void Check(string document, IReadOnlyList<string> formats) => Read(document, formats);

    /// <summary>The same text with another name; not a comma of the rest moves.</summary>
    /// <exception cref="ArgumentException">Not JSON, of another format, or without a name: the caller's bug.</exception>
    public static string WithName(string document, IReadOnlyList<string> formats, string name)
    {
        NameIn(document, formats);
        Heading heading = Read(document, formats);
        return With(document, heading.NameStart, heading.NameEnd, name);
    }

    /// <summary>The same text with another id; not a comma of the rest moves.</summary>
    /// <exception cref="ArgumentException">Not JSON, of another format, or without an id: the caller's bug.</exception>
    public static string WithId(string document, IReadOnlyList<string> formats, string id)
    {
        Heading heading = Read(document, formats);
        return heading.Id is null
            ? throw new ArgumentException($"The document of format {heading.Format} has no id.", nameof(document))
            : With(document, heading.IdStart, heading.IdEnd, id);
    }

    private static string With(string document, int start, int end, string said)
    {
        byte[] text = Encoding.UTF8.GetBytes(document);
        return Encoding.UTF8.GetString(text, 0, start) + JsonSerializer.Serialize(said, Readable) + Encoding.UTF8.GetString(text, end, text.Length - end);
    }

    private static JsonSerializerOptions Readable { get; } =
        new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static string? Of(string? format, IReadOnlyList<string> formats) =>
        formats.FirstOrDefault(known => format?.StartsWith(known, StringComparison.Ordinal) == true);

    private static Heading Read(string document, IReadOnlyList<string> formats)
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

        return Of(heading.Format, formats) is not null
            ? heading
            : throw new ArgumentException(
                $"A document of format {string.Join(" or ", formats.Select(format => $"{format}N"))} is wanted, and this one says {heading.Format ?? "nothing"}.",
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
                heading = heading with { Id = reader.GetString(), IdStart = (int)reader.TokenStartIndex, IdEnd = (int)reader.BytesConsumed };
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

    private readonly record struct Heading(string? Format, string? Id, string? Name, int NameStart, int NameEnd, int IdStart, int IdEnd);
}
