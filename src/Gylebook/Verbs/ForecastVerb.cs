using System.ComponentModel;
using Gylebook.Forecast.Json;
using Gylebook.Forecast.Report;
using Gylebook.Pictures;
using Gylebook.Pictures.Drawing;
using Gylebook.Recipes.Liquors;
using Gylebook.Recipes.Readings;
using Gylebook.Terminal;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook forecast RECIPE [--kit FILE] [--water FILE] [--readings FILE] [--bitterness MODEL] [--style NAME] [--glass LENGTH] [--draws COUNT] [--seed WORD] [--svg FILE [--force]] [--json]</summary>
internal sealed class ForecastVerb : Command<ForecastVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : KitSettings
    {
        /// <summary>The recipe.</summary>
        [CommandArgument(0, "<RECIPE>")]
        [Description("A recipe file. What it names is looked up in the folders larder/ and foods/ beside it, then in the tables.")]
        public required string Recipe { get; init; }

        /// <summary>The water.</summary>
        [CommandOption("--water <FILE>")]
        [Description("A water plan: ions, sodium and mash pH are then forecast too.")]
        public string? Water { get; init; }

        /// <summary>What was read.</summary>
        [CommandOption("--readings <FILE>")]
        [Description("What you have read of this brew: the forecast after it, ways to bring it back to the plan, and what was learned.")]
        public string? Readings { get; init; }

        /// <summary>The word its draws are made with.</summary>
        [CommandOption("--seed <WORD>")]
        [Description("A word: the same draws come from the same word. The recipe file's name when unsaid.")]
        public string? Seed { get; init; }

        /// <summary>How many draws.</summary>
        [CommandOption("--draws <COUNT>")]
        [Description("How many draws the low and high ends are made of, 100 to 100000; 4000 when unsaid, 0 for the likely run alone.")]
        public string? Draws { get; init; }

        /// <summary>The model of bitterness.</summary>
        [CommandOption("--bitterness <MODEL>")]
        [Description("timeGravity (the table of 1997, when unsaid) or isomerisation (kinetics); the other is told beside it.")]
        public string? Bitterness { get; init; }

        /// <summary>A style to compare with.</summary>
        [CommandOption("--style <NAME>")]
        [Description("A published style to compare the numbers with: \"Best Bitter\".")]
        public string? Style { get; init; }

        /// <summary>The glass.</summary>
        [CommandOption("--glass <LENGTH>")]
        [Description("How much beer the light goes through, for its look; \"5 cm\" when unsaid.")]
        public string? Glass { get; init; }

        /// <summary>Where to draw the run.</summary>
        [CommandOption("--svg <FILE>")]
        [Description("Also draw the run into this SVG file.")]
        public string? Svg { get; init; }

        /// <summary>Whether a drawing may be written over.</summary>
        [CommandOption("--force")]
        [Description("Draw over an SVG file that is there already; a file of any other kind is never written over.")]
        public bool Force { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued =>
        [
            ("--water", "a file", Water),
            ("--readings", "a file", Readings),
            ("--svg", "a file", Svg),
            ("--seed", "a word", Seed),
            ("--draws", "a number", Draws),
            ("--bitterness", "a model", Bitterness),
            ("--style", "a name", Style),
            ("--glass", "a length", Glass),
        ];
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (!ForecastOptions.TryRead(settings.Bitterness, settings.Style, settings.Glass, null, settings.Draws ?? ForecastOptions.UsualDraws, out ForecastRequest asked, out string problem))
        {
            Console.Error.WriteLine(CommandLine.OneLine(problem));
            return 1;
        }

        WrittenFile? drawing = settings.Svg is null ? null : WrittenFile.Svg(settings.Svg);
        if (drawing?.Refusal(settings.Force) is { } refusal)
        {
            Console.Error.WriteLine(CommandLine.OneLine(refusal));
            return 1;
        }

        return Tell(settings, asked, drawing);
    }

    private static int Tell(Settings settings, ForecastRequest asked, WrittenFile? drawing)
    {
        OpenedFiles files = OpenedFiles.Open(settings.Recipe, settings.Kit);
        WaterPlan? water = settings.Water is null ? null : files.Water(settings.Water);
        BrewReadings? readings = settings.Readings is null ? null : files.Readings(settings.Readings);
        if (files.Recipe is null || files.Kit is null || (water is null && settings.Water is not null) || (readings is null && settings.Readings is not null))
        {
            return FindingLines.Tell(files.Findings, settings.Json);
        }

        string seed = settings.Seed ?? Path.GetFileNameWithoutExtension(settings.Recipe);
        BrewForecast told = Forecaster.Forecast(files.Recipe, files.Kit, files.Larder, seed, water, asked with { Readings = readings });
        BrewForecast forecast = told with { Findings = [.. files.Findings, .. told.Findings] };
        if (forecast.Stages.Count == 0 && !settings.Json)
        {
            return FindingLines.Tell(forecast.Findings, json: false);
        }

        if (forecast.Stages.Count > 0)
        {
            drawing?.Write(RunSvg.Wide(RunPicture.Of(forecast), standalone: true), settings.Force);
        }

        if (settings.Json)
        {
            Console.WriteLine(ForecastJson.Write(forecast));
        }
        else
        {
            ForecastText.Write(forecast);
        }

        return forecast.CanBeBrewed ? 0 : 1;
    }
}
