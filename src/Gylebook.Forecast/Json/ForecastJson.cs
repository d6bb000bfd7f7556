using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Forecast.Report.Bitterness;
using Gylebook.Forecast.Report.Cooling;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes;

namespace Gylebook.Forecast.Json;

/// <summary>Writes a forecast in the form <c>gylebook-forecast/1</c>: stable names, stable digits, null where unknown.</summary>
public static class ForecastJson
{
    /// <summary>The form's name and version.</summary>
    public const string Format = "gylebook-forecast/1";

    /// <summary>The engine's version, as forecasts carry it.</summary>
    public static string Engine { get; } = typeof(ForecastJson).Assembly.GetName().Version!.ToString(3);

    /// <summary>The forecast as one JSON object.</summary>
    public static string Write(BrewForecast forecast) => JsonPen.Write(pen =>
    {
        pen.Text("format", Format);
        pen.Text("engine", Engine);
        pen.Text("seed", forecast.Seed);
        pen.Number("draws", forecast.HowSure?.DrawCount ?? 0, 0);
        pen.Block("recipe", () =>
        {
            pen.Text("name", forecast.Recipe);
            pen.Number("version", null, 0);
        });
        pen.Text("kit", forecast.Kit);
        WriteHeadline(pen, forecast);
        WriteStages(pen, forecast);
        pen.List("losses", forecast.Losses, l => WriteLoss(pen, l));
        pen.List("additions", forecast.Additions, a => WriteAddition(pen, a));
        pen.Block("pitch", forecast.Pitch, p => PitchJson.Write(pen, p));
        pen.List("bitternessBy", forecast.BitternessBy, b => WriteHop(pen, b));
        pen.List("colourBy", forecast.ColourBy, c => WriteColour(pen, c));
        pen.Block("appearance", forecast.Appearance, a => WriteAppearance(pen, a));
        pen.Block("styleFit", forecast.StyleFit, f => WriteStyle(pen, f));
        pen.Block("package", forecast.Package, p =>
        {
            pen.Text("in", p.In);
            pen.Number("co2Volumes", p.Co2Volumes, 3);
            pen.Number("refermentableVolumes", p.RefermentableVolumes, 3);
            pen.Number("maxVolumes", p.MaxVolumes, 3);
            pen.Number("primingSugarG", p.PrimingSugarGrams, 1);
            pen.Number("count", p.Count, 0);
            pen.Block("keg", p.Keg, keg =>
            {
                pen.Number("celsius", keg.Celsius, 2);
                pen.Number("gaugeBar", keg.GaugeBar, 3);
            });
        });
        pen.Block("ions", forecast.Ions, ions => WaterJson.WriteIons(pen, ions));
        pen.Block("mashSchedule", forecast.MashSchedule, s => WriteSchedule(pen, s));
        pen.Block("chilling", forecast.Chilling, c => WriteChilling(pen, c));
        pen.Block("allergens", () =>
        {
            pen.Texts("us", forecast.Allergens.Us);
            pen.Texts("eu", forecast.Allergens.Eu);
            pen.Texts("mayContainUs", forecast.Allergens.MayContainUs);
            pen.Texts("mayContainEu", forecast.Allergens.MayContainEu);
            pen.Text("statementUs", forecast.Allergens.StatementUs);
            pen.Text("statementEu", forecast.Allergens.StatementEu);
        });
        pen.List("cautions", forecast.Cautions, c => WriteCaution(pen, c));
        pen.List("findings", forecast.Findings, f => WriteFinding(pen, f));
        pen.Block("howSure", forecast.HowSure, sure => DoubtJson.Write(pen, sure));
        WriteReadings(pen, forecast);
        pen.Block("balance", forecast.Balance, b =>
        {
            pen.Number("massInKg", b.MassIn, 6);
            pen.Number("massOutKg", b.MassOut, 6);
            pen.Number("relativeError", b.RelativeError, 17);
        });
    });

    /// <summary>The headline numbers by their names.</summary>
    public static void WriteHeadline(JsonPen pen, BrewForecast forecast) =>
        pen.Block("headline", () => Each(forecast.Headline, h => WriteBand(pen, h.Name, h.Band)));

    /// <summary>The stages, in order.</summary>
    public static void WriteStages(JsonPen pen, BrewForecast forecast) => pen.List("stages", forecast.Stages, s => WriteStage(pen, s));

    /// <summary>What readings say: <c>readings</c>, <c>mends</c> and <c>learned</c>.</summary>
    public static void WriteReadings(JsonPen pen, BrewForecast forecast) => ReadingsJson.Write(pen, forecast.AfterReadings);

    /// <summary>Findings alone, as <c>check</c> writes them.</summary>
    public static void WriteFinding(JsonPen pen, Finding finding)
    {
        pen.Text("code", finding.Code);
        pen.Text("severity", Words.Of(finding.Severity));
        pen.Text("where", finding.Where);
        pen.Text("message", finding.Message);
        pen.Text("value", finding.Value);
        pen.Text("limit", finding.Limit);
    }

    /// <summary>A caution's keys.</summary>
    public static void WriteCaution(JsonPen pen, Caution caution)
    {
        pen.Text("code", caution.Code);
        pen.Text("severity", Words.Of(caution.Severity));
        pen.Text("where", caution.Where);
        pen.Text("message", caution.Message);
        pen.Text("source", caution.Source);
    }

    /// <summary>A named number and how sure we are, or null.</summary>
    internal static void WriteBand(JsonPen pen, string name, Band? told) => pen.Block(name, told, band =>
    {
        int decimals = DecimalsOf(band.Unit);
        pen.Number("low", band.Low, decimals);
        pen.Number("likely", band.Likely, decimals);
        pen.Number("high", band.High, decimals);
        if (band.Middle is { } middle)
        {
            pen.Number("middle", middle, decimals);
        }

        pen.Text("unit", band.Unit);
        pen.Text("kind", band.Kind switch { BandKind.Point => "point", BandKind.Bounds => "bounds", _ => "quantiles" });
    });

    private static void WriteStage(JsonPen pen, StageRow stage)
    {
        pen.Text("stage", Names.Of(stage.Stage));
        pen.Text("portion", stage.Portion);
        pen.Number("litresAt20C", stage.LitresAt20C, 3);
        pen.Number("litresWithSolids", stage.LitresWithSolids, 3);
        pen.Number("litresHot", stage.LitresHot, 3);
        pen.Number("temperatureC", stage.TemperatureC, 1);
        pen.Number("gravity", stage.Gravity, 5);
        pen.Number("suspensionGravity", stage.SuspensionGravity, 5);
        pen.Number("extractPlato", stage.ExtractPlato, 3);
        pen.Number("alcoholByVolume", stage.AlcoholByVolume, 3);
    }

    private static void WriteLoss(JsonPen pen, LossRow loss)
    {
        pen.Text("stage", Names.Of(loss.Place.Stage));
        pen.Text("portion", loss.Portion);
        pen.Text("what", Names.Of(loss.What));
        pen.Number("litresAt20C", loss.LitresAt20C, 3);
        pen.Number("kg", loss.Kilograms, 4);
        pen.Number("extractKg", loss.ExtractKg, 4);
    }

    private static void WriteAddition(JsonPen pen, AdditionRow addition)
    {
        pen.Text("stage", Names.Of(addition.Place.Stage));
        pen.Text("portion", addition.Portion);
        pen.Text("what", addition.What);
        pen.Number("kg", addition.Kilograms, 4);
    }

    private static void WriteHop(JsonPen pen, HopBitterness hop)
    {
        pen.Text("hop", hop.Hop);
        pen.Text("at", hop.At);
        pen.Text("model", hop.Model);
        pen.Number("ibu", hop.Ibu, 2);
        pen.Text("otherModel", hop.OtherModel);
        pen.Number("otherIbu", hop.OtherIbu, 2);
        pen.Number("alphaPercent", hop.AlphaPercent, 3);
    }

    private static void WriteColour(JsonPen pen, ColourByLaw colour)
    {
        pen.Text("law", colour.Law);
        pen.Number("srm", colour.Srm, 2);
        pen.Flag("withinRange", colour.WithinRange);
    }

    private static void WriteAppearance(JsonPen pen, Appearance seen)
    {
        pen.Text("hex", seen.Hex);
        pen.Number("pathLengthCm", seen.PathLengthCm, 3);
        pen.Text("illuminant", Appearance.Illuminant);
        pen.Text("observer", Appearance.Observer);
        pen.Flag("inGamut", seen.InGamut);
        pen.Flag("lowerBound", seen.IsLowerBound);
    }

    private static void WriteStyle(JsonPen pen, StyleFit fit)
    {
        pen.Text("style", fit.Style);
        pen.Text("edition", fit.Edition);
        pen.Text("source", fit.Source.Source);
        pen.Text("status", fit.Source.Status);
        pen.Text("sentence", fit.Sentence);
        pen.List("rows", fit.Rows, row =>
        {
            pen.Text("name", row.Name);
            pen.Number("value", row.Value, row.Decimals);
            pen.Number("low", row.Low, 3);
            pen.Number("high", row.High, 3);
            pen.Text("unit", row.Unit);
            pen.Text("place", row.Place.ToString().ToLowerInvariant());
        });
    }

    private static void WriteSchedule(JsonPen pen, MashSchedule schedule)
    {
        pen.Number("strikeLitres", schedule.StrikeLitres, 3);
        pen.Number("strikeCelsius", schedule.StrikeCelsius, 2);
        pen.List("rests", schedule.Rests, rest =>
        {
            pen.Number("celsius", rest.Celsius, 2);
            pen.Number("minutes", rest.Minutes, 2);
            pen.Number("endCelsius", rest.EndCelsius, 2);
            pen.Number("infusionLitres", rest.InfusionLitres, 3);
            pen.Number("infusionCelsius", rest.InfusionCelsius, 2);
            pen.Number("heatMinutes", rest.HeatMinutes, 2);
            pen.Number("decoctionShare", rest.DecoctionShare, 4);
            pen.Number("decoctionKg", rest.DecoctionKilograms, 3);
            pen.Number("alphaLeft", rest.AlphaLeft, 4);
            pen.Number("betaLeft", rest.BetaLeft, 4);
        });
        pen.Block("infusionStrike", schedule.InfusionStrike, strike =>
        {
            pen.Number("litres", strike.Litres, 3);
            pen.Number("celsius", strike.Celsius, 2);
        });
        pen.Number("strikeHeatMinutes", schedule.StrikeHeatMinutes, 2);
        pen.Number("boilHeatMinutes", schedule.BoilHeatMinutes, 2);
        pen.Block("rinse", schedule.Rinse, rinse =>
        {
            pen.Text("method", Words.Of(rinse.Method));
            pen.Number("litres", rinse.Litres, 3);
            pen.Number("celsius", rinse.Celsius, 2);
        });
    }

    private static void WriteChilling(JsonPen pen, Chilling chilling)
    {
        pen.Text("kind", chilling.Kind);
        pen.Number("fromCelsius", chilling.FromCelsius, 2);
        pen.Number("toCelsius", chilling.ToCelsius, 2);
        pen.Number("coolerCelsius", chilling.CoolerCelsius, 2);
        pen.Number("minutes", chilling.Minutes, 2);
        pen.Number("coolantLitres", chilling.CoolantLitres, 2);
        pen.Number("coolantOutCelsius", chilling.CoolantOutCelsius, 2);
        pen.Number("wortLitresPerMinute", chilling.WortLitresPerMinute, 3);
        pen.Number("wortOutCelsius", chilling.WortOutCelsius, 2);
        pen.Texts("needs", chilling.Needs);
    }

    /// <summary>Digits after the point that a unit is written with: finer than anyone measures, coarser than rounding.</summary>
    private static int DecimalsOf(string unit) => unit == "SG" ? 5 : 3;

    private static void Each<T>(IEnumerable<T> items, Action<T> write)
    {
        foreach (T item in items)
        {
            write(item);
        }
    }
}
