using System.ComponentModel;
using Gylebook.Forecast;
using Gylebook.Forecast.Json;
using Gylebook.Forecast.Report;
using Gylebook.Terminal;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook pitch RECIPE [--kit FILE] [--starter VOLUME] [--json]</summary>
internal sealed class PitchVerb : Command<PitchVerb.Settings>
{
    /// <summary>Cautions that are about yeast.</summary>
    private static readonly string[] About = ["pitch.", "yeast.", "starter.", "oxygen."];

    /// <summary>What it takes.</summary>
    internal sealed class Settings : KitSettings
    {
        /// <summary>The recipe.</summary>
        [CommandArgument(0, "<RECIPE>")]
        [Description("A recipe file.")]
        public required string Recipe { get; init; }

        /// <summary>The largest starter.</summary>
        [CommandOption("--starter <VOLUME>")]
        [Description("The largest starter your vessel takes; \"4 L\" when unsaid.")]
        public string? Starter { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued =>
        [
            ("--starter", "a volume", Starter),
        ];
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (!ForecastOptions.TryRead(null, null, null, settings.Starter, null, out ForecastRequest asked, out string problem))
        {
            Console.Error.WriteLine(CommandLine.OneLine(problem));
            return 1;
        }

        OpenedFiles files = OpenedFiles.Open(settings.Recipe, settings.Kit);
        if (files.Recipe is null || files.Kit is null)
        {
            return FindingLines.Tell(files.Findings, settings.Json);
        }

        BrewForecast told = Forecaster.Forecast(files.Recipe, files.Kit, files.Larder, "pitch", asked: asked);
        BrewForecast forecast = told with { Findings = [.. files.Findings, .. told.Findings] };
        if (settings.Json)
        {
            Console.WriteLine(Json(forecast));
        }
        else if (!forecast.CanBeBrewed)
        {
            return FindingLines.Tell(forecast.Findings, json: false);
        }
        else
        {
            PitchText.Write(forecast.Pitch, YeastCautions(forecast));
        }

        return forecast.CanBeBrewed ? 0 : 1;
    }

    private static IEnumerable<Caution> YeastCautions(BrewForecast forecast) =>
        forecast.Cautions.Where(c => About.Any(about => c.Code.StartsWith(about, StringComparison.Ordinal)));

    private static string Json(BrewForecast forecast) => JsonPen.Write(pen =>
    {
        pen.Text("recipe", forecast.Recipe);
        pen.Text("kit", forecast.Kit);
        pen.Block("pitch", forecast.Pitch, p => PitchJson.Write(pen, p));
        pen.List("cautions", YeastCautions(forecast), c => ForecastJson.WriteCaution(pen, c));
        pen.List("findings", forecast.Findings, f => ForecastJson.WriteFinding(pen, f));
    });
}
