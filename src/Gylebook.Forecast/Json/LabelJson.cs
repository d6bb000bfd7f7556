using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Foods;
using Gylebook.Forecast.Report.Labels;

namespace Gylebook.Forecast.Json;

/// <summary>Writes a food's report in the form <c>gylebook-label/1</c>: stable names, null where unknown.</summary>
/// <remarks>The first place stands at the top; all places, the first among them, in <c>places</c>.</remarks>
public static class LabelJson
{
    /// <summary>The form's name and version.</summary>
    public const string Format = "gylebook-label/1";

    /// <summary>The report as one JSON object.</summary>
    public static string Write(FoodLabelReport report) => JsonPen.Write(pen =>
    {
        FoodAtPlace? first = report.Places.Count > 0 ? report.Places[0] : null;
        pen.Text("format", Format);
        pen.Text("food", report.Food);
        pen.Text("name", report.Name);
        pen.Text("family", report.Family);
        pen.Text("amount", report.Amount);
        pen.Text("at", first?.At);
        pen.Text("into", report.Into);
        pen.Block("per100g", () => WriteBands(pen, report.Per100Grams.Select(c => (c.Name, c.Band))));
        pen.List("assumptions", report.Assumptions, a =>
        {
            pen.Text("what", a.What);
            pen.Text("value", a.Value);
            pen.Text("source", a.Source);
        });
        pen.Block("effect", () => WriteEffect(pen, first?.Effect));
        pen.List("places", report.Places, place =>
        {
            pen.Text("at", place.At);
            pen.Block("effect", () => WriteEffect(pen, place.Effect));
            pen.List("cautions", place.Cautions, c => ForecastJson.WriteCaution(pen, c));
        });
        WriteDose(pen, report);
        WriteTrials(pen, report);
        WriteAllergens(pen, report);
        pen.List("cautions", first?.Cautions ?? [], c => ForecastJson.WriteCaution(pen, c));
        pen.List("findings", report.Findings, f => ForecastJson.WriteFinding(pen, f));
    });

    private static void WriteDose(JsonPen pen, FoodLabelReport report)
    {
        pen.Block("doseGuide", report.DoseGuide, guide =>
        {
            pen.Number("gramsPerLitre", guide.GramsPerLitre, 4);
            pen.Number("low", guide.Low, 4);
            pen.Number("typical", guide.Typical, 4);
            pen.Number("high", guide.High, 4);
            pen.Text("verdict", guide.Verdict.ToString().ToLowerInvariant());
            pen.Text("source", Science.Foods.Doses.DoseGuide.Source);
        });
        pen.Block("benchTrial", report.Trial, trial =>
        {
            pen.Number("glassMilligrams", trial.Milligrams, 3);
            pen.Numbers("ladderMilligrams", trial.Ladder, 3);
            pen.Number("firstGrams", trial.FirstGrams, 3);
        });
    }

    private static void WriteTrials(JsonPen pen, FoodLabelReport report) => pen.List("keptTrials", report.KeptTrials, trial =>
    {
        pen.Text("day", trial.Day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        pen.Text("beer", trial.Beer);
        pen.Text("dosed", trial.Dosed);
        pen.Text("bestDose", trial.Best?.Dose.Text);
        pen.Text("inBatch", trial.Best?.Dose.In(report.Batch.Value).Text);
        pen.Text("beginWith", trial.Best?.Dose.FirstIn(report.Batch.Value).Text);
        pen.Text("batch", report.Batch.Text);
    });

    private static void WriteAllergens(JsonPen pen, FoodLabelReport report) => pen.Block("allergens", () =>
    {
        pen.Texts("us", report.Allergens.Us);
        pen.Texts("eu", report.Allergens.Eu);
        pen.Texts("mayContainUs", report.Allergens.MayContainUs);
        pen.Texts("mayContainEu", report.Allergens.MayContainEu);
        pen.Text("statementUs", report.Allergens.StatementUs);
        pen.Text("statementEu", report.Allergens.StatementEu);
        pen.List("notes", report.AllergenNotes, note =>
        {
            pen.Text("text", note.Text);
            pen.Text("source", note.Source);
        });
    });

    private static void WriteEffect(JsonPen pen, FoodEffect? effect)
    {
        WriteBands(pen, EffectNames.Of(effect));
        pen.Block("fatAdvice", effect?.Fat, fat =>
        {
            pen.Text("light", fat.Light.ToString().ToLowerInvariant());
            pen.Text("message", fat.Message);
            pen.Text("source", fat.Source);
        });
    }

    private static void WriteBands(JsonPen pen, IEnumerable<(string Name, Band? Band)> bands)
    {
        foreach ((string name, Band? band) in bands)
        {
            ForecastJson.WriteBand(pen, name, band);
        }
    }
}
