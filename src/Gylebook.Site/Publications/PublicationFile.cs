using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Gylebook.Forecast.Json;
using Gylebook.Gyles.Plans;

namespace Gylebook.Site.Publications;

/// <summary>Writes and reads what was given out, <c>gylebook-publication/1</c>: kept by the book, and fetched by the page that weighs it anew.</summary>
public static class PublicationFile
{
    /// <summary>What the document's <c>format</c> key says.</summary>
    public const string Format = "gylebook-publication/1";

    private const string Day = "yyyy-MM-dd";

    /// <summary>The document's text.</summary>
    public static string Write(Publication publication)
    {
        ArgumentNullException.ThrowIfNull(publication);
        return JsonPen.Write(pen =>
        {
            pen.Text("format", Format);
            pen.Text("name", publication.Name);
            pen.Text("slug", publication.Slug);
            pen.Text("version", publication.Version.ToString(CultureInfo.InvariantCulture));
            pen.Text("day", Written(publication.Day));
            pen.Text("by", publication.By);
            pen.Text("brewed", publication.Brewed is { } brewed ? Written(brewed) : null);
            pen.Text("recipe", publication.Files.Recipe);
            pen.Text("kit", publication.Files.Kit);
            pen.Text("water", publication.Files.Water);
            pen.Texts("larder", publication.Files.Larder);
            pen.List("measured", publication.Measured, number =>
            {
                pen.Text("title", number.Title);
                pen.Text("unit", number.Unit);
                pen.Number("decimals", number.Decimals, 0);
                pen.Number("low", number.Low, 6);
                pen.Number("high", number.High, 6);
                pen.Number("measured", number.Measured, 6);
            });
            pen.List("errata", publication.Errata, erratum =>
            {
                pen.Text("day", Written(erratum.Day));
                pen.Text("version", erratum.Version.ToString(CultureInfo.InvariantCulture));
                pen.Text("text", erratum.Text);
            });
        });
    }

    /// <summary>What a document says; null where it is none, or of a form to come.</summary>
    public static Publication? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            return JsonNode.Parse(text) is JsonObject document && (string?)document["format"] == Format ? Read(document) : null;
        }
        catch (Exception broken) when (broken is JsonException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    private static Publication Read(JsonObject document) => new()
    {
        Name = Text(document, "name"),
        Slug = Text(document, "slug"),
        Version = Number(document, "version"),
        Day = Date(Text(document, "day")),
        By = (string?)document["by"] ?? "",
        Brewed = (string?)document["brewed"] is { } brewed ? Date(brewed) : null,
        Files = new GyleFiles(Text(document, "recipe"), Text(document, "kit"), (string?)document["water"], [.. Items(document, "larder").Select(sheet => (string)sheet!)]),
        Measured = [.. Items(document, "measured").OfType<JsonObject>().Select(number => new MeasuredNumber(
            Text(number, "title"), Text(number, "unit"), (int)(double)number["decimals"]!, (double?)number["low"], (double?)number["high"], (double)number["measured"]!))],
        Errata = [.. Items(document, "errata").OfType<JsonObject>().Select(erratum => new Erratum(Date(Text(erratum, "day")), Number(erratum, "version"), Text(erratum, "text")))],
    };

    private static string Written(DateOnly day) => day.ToString(Day, CultureInfo.InvariantCulture);

    private static DateOnly Date(string text) => DateOnly.ParseExact(text, Day, CultureInfo.InvariantCulture);

    private static int Number(JsonObject of, string key) => int.Parse(Text(of, key), NumberStyles.None, CultureInfo.InvariantCulture);

    private static string Text(JsonObject of, string key) => (string?)of[key] ?? throw new FormatException($"{key} is missing.");

    private static IEnumerable<JsonNode?> Items(JsonObject of, string key) => of[key] as JsonArray ?? [];
}
