using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Json;

/// <summary>Writes what came of a water plan in the form <c>gylebook-liquor/1</c>.</summary>
public static class WaterJson
{
    /// <summary>The form's name and version.</summary>
    public const string Format = "gylebook-liquor/1";

    private const int LearnedDecimals = 3;

    /// <summary>The outcome as one JSON object; the figures null when the plan could not be carried out.</summary>
    public static string Write(WaterOutcome? outcome, IReadOnlyList<Finding> findings) => JsonPen.Write(pen =>
    {
        pen.Text("format", Format);
        pen.Text("engine", ForecastJson.Engine);
        pen.Text("name", outcome?.Name);
        pen.Block("source", outcome?.Source, source =>
        {
            WriteIons(pen, "ions", source.Ions);
            pen.Number("alkalinityMgPerLCaCO3", source.Ions.AlkalinityMilliequivalents / HardnessUnits.MilligramsCalciumCarbonate, 2);
            pen.Number("hardnessMgPerLCaCO3", source.Ions.HardnessMilliequivalents / HardnessUnits.MilligramsCalciumCarbonate, 2);
            pen.Number("ph", source.Ph, 3);
            pen.Number("conductivityMicrosiemens", Conductivity.MicrosiemensPerCentimetre(source.Ions), 1);
        });
        pen.Number("chargeBalancePercent", outcome?.ChargeBalancePercent, 2);
        pen.Block("litres", outcome, o => Everywhere(o, (place, liquor) => pen.Number(place, liquor.Litres, 3)));
        pen.Block("distilledShare", outcome, o => Places(o, (place, liquor) => pen.Number(place, liquor.ShareDistilled, 4)));
        pen.Block("salts", outcome, o => Everywhere(o, (place, liquor) => pen.Block(place, () => liquor.Salts.ToList().ForEach(
            dose => pen.Number(dose.Salt.Id, dose.Grams, 3)))));
        pen.Block("acids", outcome, o => WriteAcids(pen, o, DoseUnit.Millilitre));
        pen.Block("acidPowders", outcome, o => WriteAcids(pen, o, DoseUnit.Gram));
        pen.Block("ions", outcome, o => Everywhere(o, (place, liquor) => WriteIons(pen, place, liquor)));
        pen.Block("residualAlkalinity", outcome, o =>
        {
            pen.Number("source", ResidualAlkalinity.AsCalciumCarbonate(o.Source.Ions), 2);
            pen.Number("mash", ResidualAlkalinity.AsCalciumCarbonate(o.Mash.Ions), 2);
            pen.Text("unit", "mg/L CaCO3");
        });
        ForecastJson.WriteBand(pen, "mashPh", outcome?.MashPh);
        pen.Number("spargePh", outcome?.Sparge.Ph, 3);
        pen.Block("wort", outcome?.Wort, wort =>
        {
            ForecastJson.WriteBand(pen, "from", wort.From);
            pen.Flag("measured", wort.Measured);
            pen.Number("to", wort.To, 3);
            ForecastJson.WriteBand(pen, "amount", wort.Amount);
            pen.Number("add", wort.Units, 2);
        });
        pen.Block("mashReading", outcome?.MashReading, reading => WriteReading(pen, reading));
        pen.Block("mend", outcome?.Mend, mend => WriteMend(pen, mend));
        pen.List("findings", findings, f => ForecastJson.WriteFinding(pen, f));
        pen.List("cautions", outcome?.Cautions ?? [], c => ForecastJson.WriteCaution(pen, c));
    });

    /// <summary>Ions of a run, by place.</summary>
    internal static void WriteIons(JsonPen pen, IonTable ions)
    {
        WriteIons(pen, "mash", ions.Mash);
        WriteIons(pen, "kettle", ions.Kettle);
        pen.Block("glass", () =>
        {
            foreach ((Ion ion, Band band) in ions.Glass)
            {
                ForecastJson.WriteBand(pen, Words.Of(ion), band);
            }

            ForecastJson.WriteBand(pen, "phosphorus", ions.Phosphorus);
        });
    }

    private static void WriteReading(JsonPen pen, MashReadingReport reading)
    {
        pen.Number("ph", reading.Meter.Ph, 3);
        pen.Number("sampleC", reading.Meter.Sample.Value.Celsius, 2);
        pen.Number("phAt20C", reading.PhAt20C, 3);
        pen.Number("forecastAt20C", reading.Forecast, 3);
        ForecastJson.WriteBand(pen, "shift", reading.Shift);
        pen.List("malts", reading.Malts, malt =>
        {
            pen.Text("malt", malt.Malt.Name);
            pen.Number("distilledPh", malt.DistilledPh.Likely, LearnedDecimals);
            pen.Number("buffer", malt.Buffer, 2);
            pen.Number("lowestPh", malt.DistilledPh.Low, LearnedDecimals);
            pen.Number("highestPh", malt.DistilledPh.High, LearnedDecimals);
        });
    }

    private static void WriteMend(JsonPen pen, MashMend mend)
    {
        pen.Text("acid", mend.Acid?.Acid.Id);
        pen.Text("salt", mend.Salt?.Id);
        pen.Number("add", mend.Units, 2);
        ForecastJson.WriteBand(pen, "amount", mend.Amount);
        ForecastJson.WriteBand(pen, "mashPh", mend.Ph);
    }

    private static void WriteIons(JsonPen pen, string name, IReadOnlyDictionary<Ion, double> ions) => pen.Block(name, () =>
    {
        foreach ((Ion ion, double milligrams) in ions)
        {
            pen.Number(Words.Of(ion), milligrams, 2);
        }
    });

    private static void WriteIons(JsonPen pen, string place, TreatedLiquor liquor)
    {
        if (liquor.Litres > 0)
        {
            WriteIons(pen, place, liquor.Ions);
        }
        else
        {
            pen.Text(place, null);
        }
    }

    private static void WriteIons(JsonPen pen, string name, IonProfile ions) => pen.Block(name, () =>
    {
        foreach (Ion ion in Ions.All)
        {
            pen.Number(Words.Of(ion), ions[ion], 2);
        }
    });

    private static void WriteAcids(JsonPen pen, WaterOutcome outcome, DoseUnit unit) =>
        Places(outcome, (place, liquor) => pen.Block(place, () =>
        {
            foreach (AcidDose dose in liquor.Acids.Where(dose => dose.Acid.Acid.Unit == unit))
            {
                pen.Number(dose.Acid.Acid.Id, dose.Units, 3);
            }
        }));

    /// <summary>The places of the liquor, and the package, which gets salts alone.</summary>
    private static void Everywhere(WaterOutcome outcome, Action<string, TreatedLiquor> write)
    {
        Places(outcome, write);
        write("package", outcome.Package);
    }

    private static void Places(WaterOutcome outcome, Action<string, TreatedLiquor> write)
    {
        write("mash", outcome.Mash);
        write("sparge", outcome.Sparge);
        write("kettle", outcome.Kettle);
    }
}
