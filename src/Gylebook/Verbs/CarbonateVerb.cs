using System.ComponentModel;
using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Forecast.Json;
using Gylebook.Science.Conditioning;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Terminal;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook carbonate --temperature TEXT (--pressure TEXT | --volumes N | --burst TEXT --hours N [--into TEXT] [--start N] [--shaken]) [--altitude TEXT] [--json]</summary>
internal sealed class CarbonateVerb : Command<CarbonateVerb.Settings>
{
    private const string OfTheChart = "carbonation chart, BrewingTechniques 2(1), Table I; docs/science/carbonation.md";
    private const string Trade = "common practice, no source";

    /// <summary>What it takes.</summary>
    internal sealed class Settings : JsonSettings
    {
        /// <summary>Temperature of the beer.</summary>
        [CommandOption("--temperature <TEMPERATURE>", isRequired: true)]
        [Description("The beer's temperature: \"38 F\", \"4 °C\".")]
        public required string Temperature { get; init; }

        /// <summary>Pressure of the gas.</summary>
        [CommandOption("--pressure <PRESSURE>")]
        [Description("What the regulator shows: \"12 psi\", \"0.8 bar\"; tells the volumes that the beer comes to.")]
        public string? Pressure { get; init; }

        /// <summary>Volumes wanted.</summary>
        [CommandOption("--volumes <VOLUMES>")]
        [Description("Volumes of gas wanted: 2.5; tells the pressure that keeps them.")]
        public string? Volumes { get; init; }

        /// <summary>Pressure of a burst.</summary>
        [CommandOption("--burst <PRESSURE>")]
        [Description("A high pressure for a short time: \"40 psi\"; tells the volumes after --hours.")]
        public string? Burst { get; init; }

        /// <summary>How long the burst lasts.</summary>
        [CommandOption("--hours <HOURS>")]
        [Description("How long the burst lasts: 12.")]
        public string? Hours { get; init; }

        /// <summary>How much beer.</summary>
        [CommandOption("--into <VOLUME>")]
        [Description("How much beer the burst goes into, in a keg as wide as that for 19 L; \"19 L\" when unsaid.")]
        public string? Into { get; init; }

        /// <summary>Gas in the beer before.</summary>
        [CommandOption("--start <VOLUMES>")]
        [Description("Volumes in the beer before the burst; when unsaid, what flat beer keeps that fermented at 20 °C.")]
        public string? Start { get; init; }

        /// <summary>Shaken.</summary>
        [CommandOption("--shaken")]
        [Description("The keg is shaken or rolled: the band then reaches from a keg at rest up to all that the gas can do.")]
        public bool Shaken { get; init; }

        /// <summary>Height.</summary>
        [CommandOption("--altitude <HEIGHT>")]
        [Description("Height above the sea: \"1600 m\", \"5000 ft\"; the sea's when unsaid.")]
        public string? Altitude { get; init; }
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        CarbonateQuestion question = CarbonateQuestion.Read(settings);
        if (question.Findings.Count > 0)
        {
            return FindingLines.Tell(question.Findings, settings.Json);
        }

        Caution[] cautions = [.. Cautions(question)];
        Console.WriteLine(settings.Json ? Json(question, cautions) : Text(question, cautions));
        return 0;
    }

    private static IEnumerable<Caution> Cautions(CarbonateQuestion question)
    {
        double gauge = question.Gauge();
        VesselRating[] weaker = [.. VesselRating.All.Where(part => part.GaugeBar < gauge).OrderBy(part => part.GaugeBar)];
        string above = weaker.Length == 0 ? "" : Invariant($" {gauge:0.00} bar ({Psi(gauge):0.#} psi) is above the usual rating of: {string.Join(", ", weaker.Select(part => Invariant($"{part.Name} {part.GaugeBar:0.0} bar")))}.");
        yield return new("pressure.keg", Stage.Package, "The weakest rated part sets the pressure: keg, lid, lines, tap, regulator. Use a relief valve that works, and vent before you open." + above, Trade)
        {
            Severity = weaker.Length == 0 ? Recipes.Severity.Note : Recipes.Severity.Warning,
        };
        yield return new("co2.room", Stage.Package, "Gas that leaks gathers low and can kill: keep the cylinder upright and chained, and air the room.", "exposure limit 5 000 ppm over 8 h (OSHA PEL)");
        if (question.IsBurst)
        {
            yield return new("pressure.burst", Stage.Package, Invariant($"Left on, the gas goes on to {question.End():0.0} volumes: stop after about {100 * BurstCarbonation.TasteAfter:0} % of the time, lower the pressure, vent, and taste."), Trade);
        }

        if (question.IsShaken)
        {
            yield return new("pressure.shaken", Stage.Package, "How fast a shaken keg takes up gas nobody has published: the band reaches from a keg at rest to all that the gas can do, and its middle is no forecast.", "no source");
        }

        if (!KegPressure.IsWithinPublishedRange(question.Celsius))
        {
            yield return new("pressure.range", Stage.Package, "The chart behind it goes from \u22121 to 8 °C (30 to 46 °F); beyond, other charts part by up to 6 psi.", OfTheChart);
        }
    }

    private static string Json(CarbonateQuestion question, Caution[] cautions) => JsonPen.Write(pen =>
    {
        pen.Text("format", "gylebook-carbonation/1");
        pen.Number("temperatureC", question.Celsius, 2);
        pen.Number("airBar", question.AirBar, 5);
        pen.Number("pressure", Psi(question.Gauge()), 3);
        pen.Text("pressureUnit", "psi");
        pen.Number("pressureBar", question.Gauge(), 4);
        if (question.IsBurst)
        {
            Quantiles volumes = question.Burst();
            pen.Block("volumes", () =>
            {
                pen.Number("low", volumes.Low, 3);
                pen.Number("likely", volumes.Middle, 3);
                pen.Number("high", volumes.High, 3);
            });
        }
        else
        {
            pen.Number("volumes", question.Wanted ?? question.End(), 3);
        }

        pen.Number("hours", question.IsBurst ? question.Hours : null, 2);
        pen.Number("litres", question.IsBurst ? question.Litres : null, 3);
        pen.Number("startVolumes", question.IsBurst ? question.Start : null, 3);
        pen.Flag("shaken", question.IsShaken);
        pen.List("cautions", cautions, c => ForecastJson.WriteCaution(pen, c));
    });

    private static string Text(CarbonateQuestion question, Caution[] cautions)
    {
        double gauge = question.Gauge();
        string pressure = Invariant($"{gauge:0.00} bar ({Psi(gauge):0.0} psi)"), at = Invariant($"at {question.Celsius:0.#} °C");
        string told = question.IsBurst
            ? Invariant($"{pressure} {at} for {question.Hours:0.#} h on {question.Litres:0.#} L{(question.IsShaken ? ", shaken" : " at rest")}: {question.Burst().Middle:0.0} volumes, between {question.Burst().Low:0.0} and {question.Burst().High:0.0}, from {question.Start:0.0}")
            : question.Wanted is { } wanted
                ? Invariant($"{wanted:0.00} volumes {at}: {pressure}{(gauge < 0 ? ", so it holds as much with no gas on it" : "")}")
                : Invariant($"{pressure} {at}: {question.End():0.00} volumes");
        return string.Join('\n', [told, .. cautions.Select(caution => $"Caution: {caution.Message} ({caution.Source})")]);
    }

    private static double Psi(double bar) => bar / KegPressure.BarPerPsi;
}
