using System.ComponentModel;
using System.Text.Json.Nodes;
using Gylebook.Forecast.Json;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.Cellar;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Readings;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle read GYLE PLACE [--gravity G] [--volume V] [--ph P] [--temperature T] [--instrument I] [--checked] [--sure] … [--csv FILE] [--book FILE] [--json]</summary>
internal sealed class GyleReadVerb : GyleVerb<GyleReadVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : PortionSettings
    {
        /// <summary>Where.</summary>
        [CommandArgument(1, "<PLACE>")]
        [Description("Where in the brew: mash, copper-up, knock-out, chill, cast, ferment, crash, rack, package, or forced for a forced ferment.")]
        public required string Place { get; init; }

        /// <summary>Gravity.</summary>
        [CommandOption("--gravity <GRAVITY>")]
        [Description("As the instrument shows it: 1.048, \"12 °P\".")]
        public string? Gravity { get; init; }

        /// <summary>Volume.</summary>
        [CommandOption("--volume <VOLUME>")]
        [Description("As it stands in the vessel: \"26 L\". Say how warm it is.")]
        public string? Volume { get; init; }

        /// <summary>pH.</summary>
        [CommandOption("--ph <PH>")]
        [Description("Of a sample cooled to 20 °C.")]
        public string? Ph { get; init; }

        /// <summary>Temperature.</summary>
        [CommandOption("--temperature <TEMPERATURE>")]
        [Description("Of the sample, or of what stands in the vessel: \"20 °C\". Let a sample cool, covered, before you read it.")]
        public string? Temperature { get; init; }

        /// <summary>Instrument.</summary>
        [CommandOption("--instrument <NAME>")]
        [Description("With what; the usual one when unsaid.")]
        public string? Instrument { get; init; }

        /// <summary>A table of readings.</summary>
        [CommandOption("--csv <FILE>")]
        [Description("At ferment: a table of readings, its columns named time, gravity, temperature, with their units. Each is taken once.")]
        public string? Csv { get; init; }

        /// <summary>Which of several.</summary>
        [CommandOption("--called <NAME>")]
        [Description("Which of several instruments of that kind.")]
        public string? Called { get; init; }

        /// <summary>How the sample was taken.</summary>
        [CommandOption("--sample <HOW>")]
        [Description("settled, filtered or \"as drawn\".")]
        public string? Sample { get; init; }

        /// <summary>Whether it was checked.</summary>
        [CommandOption("--checked")]
        [Description("The instrument was checked: in water, in buffers, with a scale.")]
        public bool Checked { get; init; }

        /// <summary>Whether the gas was shaken out.</summary>
        [CommandOption("--degassed")]
        [Description("The gas was shaken out of the sample.")]
        public bool Degassed { get; init; }

        /// <summary>Whether it was read again.</summary>
        [CommandOption("--sure")]
        [Description("It was read again and stands, however odd it is.")]
        public bool Sure { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued =>
        [
            ("--gravity", "a gravity", Gravity), ("--volume", "a volume", Volume), ("--ph", "a pH", Ph), ("--temperature", "a temperature", Temperature),
            ("--instrument", "a name", Instrument), ("--csv", "a file", Csv), ("--called", "a name", Called), ("--sample", "a word", Sample), .. base.Valued,
        ];

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            base.Validate() is { Successful: false } lacking ? lacking
            : Csv is not null && Place != ReadingsFile.Word(ReadingPoint.Ferment) ? ValidationResult.Error($"Option '--csv' is for readings at ferment, not at {Place}.")
            : Csv is not null && (Gravity ?? Volume ?? Ph ?? Temperature ?? Instrument ?? Sample) is not null ? ValidationResult.Error("Option '--csv' stands without a gravity, volume, pH, temperature, instrument or sample: the table has them.")
            : ValidationResult.Success();

        /// <summary>One entry of a readings file for each number that was read; a temperature alone is one itself.</summary>
        internal IEnumerable<JsonObject> Entries()
        {
            (string Key, JsonNode? Value)[] read = [("gravity", Gravity), ("volume", Volume), ("ph", Number(Ph))];
            (string Key, JsonNode? Value)[] told = [.. read.Where(number => number.Value is not null)];
            return (told.Length > 0 ? told : [("temperature", null)]).Select(number => Entry(number.Key, number.Value));
        }

        private JsonObject Entry(string key, JsonNode? value)
        {
            JsonObject entry = new() { ["at"] = Place };
            (string Key, JsonNode? Value)[] all =
            [
                (key, value), ("temperature", Temperature), ("instrument", key == "temperature" || IsFor(key) ? Instrument : null), ("called", Called), ("sample", key == "gravity" ? Sample : null), ("portion", Portion),
                ("checked", Checked ? true : null), ("degassed", key == "gravity" && Degassed ? true : null), ("sure", Sure ? true : null),
            ];
            foreach ((string name, JsonNode? told) in all.Where(part => part.Value is not null))
            {
                entry[name] = told;
            }

            return entry;
        }

        /// <summary>With several numbers at once an instrument is of the one it can read.</summary>
        private bool IsFor(string key) => new[] { Gravity, Volume, Ph }.Count(number => number is not null) == 1 || Instrument is null || key == Instruments.Find(Instrument)?.Reads;

        private static JsonValue? Number(string? text) =>
            text is null ? null : double.TryParse(text.Replace(',', '.'), System.Globalization.CultureInfo.InvariantCulture, out double number) ? JsonValue.Create(number) : JsonValue.Create(text);
    }

    /// <inheritdoc/>
    protected override async Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation)
    {
        if (settings.Csv is { } table)
        {
            return await CsvTable.TakeAsync(desk, settings, gyle, table, cancellation);
        }

        if (settings.Place == ForcedFerment.Stage)
        {
            return await ForcedAsync(desk, gyle, settings, cancellation);
        }

        List<TakenReading> taken = [];
        List<Finding> wrong = [];
        foreach (JsonObject entry in settings.Entries())
        {
            (TakenReading? reading, IReadOnlyList<Finding> findings) = ReadingsFile.ReadEntry(entry.ToJsonString());
            wrong.AddRange(findings.Where(finding => finding.Severity == Severity.Error));
            taken.AddRange(reading is null ? [] : [reading]);
        }

        if (wrong.Count > 0 || taken.Count == 0)
        {
            return FindingLines.Tell([.. wrong.Select(finding => finding with { Where = finding.Where.Replace("readings[0].", "", StringComparison.Ordinal) })], settings.Json);
        }

        await desk.ReadAsync(gyle, taken, cancellation);
        return await desk.OpenAsync(gyle.Line.Id, cancellation) is { } now && now.Live() is { } live ? Tell(live, settings.Json) : 1;
    }

    /// <summary>A forced ferment says where the wort ends, and nothing of the beer itself.</summary>
    private static async Task<int> ForcedAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation)
    {
        IReadOnlyList<Finding> findings = await new CellarDesk(desk, TimeProvider.System).ReadAsync(
            gyle, new TypedFermentReading { Gravity = settings.Gravity ?? "", Temperature = settings.Temperature ?? "", IsDegassed = settings.Degassed, IsForced = true, Portion = settings.Portion }, cancellation);
        if (findings.Any(finding => finding.Severity == Severity.Error))
        {
            return FindingLines.Tell([.. findings], settings.Json);
        }

        return await desk.OpenAsync(gyle.Line.Id, cancellation) is { } now ? await GyleFinishedVerb.TellAsync(desk, now, settings.Portion, settings.Json, cancellation) : 1;
    }

    private static int Tell(BrewForecast live, bool json)
    {
        if (json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                ForecastJson.WriteHeadline(pen, live);
                ForecastJson.WriteReadings(pen, live);
                pen.List("findings", live.Findings, finding => ForecastJson.WriteFinding(pen, finding));
            }));
        }
        else
        {
            ForecastText.WriteAfterReadings(live);
        }

        return 0;
    }
}
