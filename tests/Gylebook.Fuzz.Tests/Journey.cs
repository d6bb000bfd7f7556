using Gylebook.Recipes.Forms;
using System.Text;
using System.Xml.Linq;
using Gylebook.Forecast.Json;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Labels;
using Gylebook.Pictures;
using Gylebook.Pictures.Drawing;
using Gylebook.Pictures.Sheets;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Quantities;

namespace Gylebook.Fuzz.Tests;

/// <summary>A case's whole way: read, checked, written again, forecast, drawn, drafted, merged. Anything but findings is a failure.</summary>
internal static class Journey
{
    private const double BalanceClose = 1e-9;

    /// <summary>An amount below this under nought is no rounding.</summary>
    private const double Nothing = -1e-9;

    /// <summary>Goes it.</summary>
    /// <returns>Whether there was a run to tell.</returns>
    public static bool Of(FuzzCase one)
    {
        Recipe? recipe = Read(RecipeFile.Read(one.Recipe), RecipeFile.Write, RecipeFile.Read);
        Kit? kit = Read(KitFile.Read(one.Kit), KitFile.Write, KitFile.Read);
        FoodSheet? food = Read(FoodFile.Read(one.Food), FoodFile.Write, FoodFile.Read);
        WaterPlan? water = Read<WaterPlan>(WaterFile.Read(one.Water), null, WaterFile.Read);
        Drafts(one);
        MadeUpFood? made = food is null ? null : FoodMakeups.From(food);
        if (food is not null && one.Dose is { } dose)
        {
            Label(food, made!, dose, kit);
        }

        if (water is not null)
        {
            Liquor(water);
        }

        if (recipe is null)
        {
            return false;
        }

        RecipeCheck.Findings(recipe);
        kit ??= BuiltInKit.LanternShed;
        Larder larder = new(food is null ? [] : [food]);
        BrewForecast forecast = Forecast(recipe, kit, larder, water);
        Forecast(recipe, kit, larder, null);
        BrewPlan planned = BrewPlanner.Plan(recipe, kit, larder);
        AllFinite(LineParts.Of(planned), "parts");
        return forecast.Stages.Count > 0;
    }

    /// <summary>What cannot be read says why; what can is written, and reads as the same again.</summary>
    private static T? Read<T>(Reading<T> reading, Func<T, string>? write, Func<string, Reading<T>> again)
        where T : class
    {
        if (reading.Value is not { } value)
        {
            Must(reading.Findings.Any(f => f.Severity == Severity.Error), "nothing was read, and no finding says why");
            return null;
        }

        if (write is not null)
        {
            string text = write(value);
            Reading<T> second = again(text);
            Must(second.Value is not null, () => $"what was written cannot be read: {Told(second.Findings)}\n{text}");
            Must(write(second.Value!) == text, () => $"written twice, two texts:\n{text}\n{write(second.Value!)}");
        }

        return value;
    }

    private static BrewForecast Forecast(Recipe recipe, Kit kit, Larder larder, WaterPlan? water)
    {
        BrewForecast forecast = Forecaster.Forecast(recipe, kit, larder, "fuzz", water);
        Must(forecast.Failure is null, () => $"not reckoned: {forecast.Failure}");
        Must(forecast.Stages.Count > 0 || !forecast.CanBeBrewed, "no run, and no finding says why");
        AllFinite(forecast, "forecast");
        NoneNegative(forecast, "forecast");
        Must(!(forecast.Balance is { } balance && !(balance.RelativeError <= BalanceClose)), () => $"the balance is open: {forecast.Balance}");
        string json = ForecastJson.Write(forecast);
        Must(json == ForecastJson.Write(Forecaster.Forecast(recipe, kit, larder, "fuzz", water)), "two forecasts of one recipe differ");
        Drawn(forecast);
        Printed(RecipeSheet.Of(recipe, kit, larder, water));
        return forecast;
    }

    private static void Drawn(BrewForecast forecast)
    {
        foreach (ReaderUnits units in (ReaderUnits[])[ReaderUnits.Metric, ReaderUnits.UnitedStates])
        {
            RunPicture picture = RunPicture.Of(forecast, units);
            AllFinite(picture, "picture");
            RunTable table = RunTable.Of(picture);
            string told = string.Join('\n', [RunSvg.Wide(picture, standalone: true), RunSvg.Narrow(picture, standalone: true), .. table.Rows.SelectMany(row => row)]);
            Must(!told.Contains("NaN", StringComparison.Ordinal) && !told.Contains('∞', StringComparison.Ordinal), "a picture shows what is no number");
            XDocument.Parse(RunSvg.Wide(picture, standalone: true));
            XDocument.Parse(RunSvg.Narrow(picture, standalone: true));
        }
    }

    private static void Printed(RecipeSheet sheet)
    {
        string page = RecipeSheetHtml.Page(sheet, "sheet.css", "icon.svg", "recipe");
        Must(!page.Contains("NaN", StringComparison.Ordinal) && !page.Contains('∞', StringComparison.Ordinal), "a sheet shows what is no number");
        XDocument.Parse(page);
    }

    private static void Label(FoodSheet sheet, MadeUpFood made, FuzzDose dose, Kit? kit)
    {
        FoodMakeups.From(sheet, LabelMode.Legal);
        Must(AdditionTimeText.TryParse(dose.At, out AdditionTime at, out _), $"{dose.At} is no place");
        FoodLabelReport Report() => FoodLabelReport.Of(
            sheet.Id, sheet.Name, made, new Entered<Mass>(Mass.FromGrams(dose.Grams), $"{dose.Grams} g"),
            new Entered<VolumeAt20C>(VolumeAt20C.FromLitres(dose.Litres), $"{dose.Litres} L"), [at], kit);
        FoodLabelReport report = Report();
        Must(report.Findings.All(f => f.Code != "forecast.notReckoned"), () => $"label not reckoned: {Told(report.Findings)}");
        AllFinite(report, "label");
        Must(LabelJson.Write(report) == LabelJson.Write(Report()), "two reports on one label differ");
    }

    private static void Liquor(WaterPlan plan)
    {
        List<Finding> findings = [];
        if (LiquorNeed.Of(plan, findings) is { } need)
        {
            // Not the public door, which turns exceptions into findings: here they are wanted.
            WaterOutcome outcome = WaterTreatment.Of(plan, need);
            AllFinite(outcome, "water");
            NoneNegative(outcome, "water");
            Must(WaterJson.Write(outcome, outcome.Findings) == WaterJson.Write(WaterTreatment.Of(plan, need), outcome.Findings), "two treatments of one plan differ");
        }
    }

    private static void Drafts(FuzzCase one)
    {
        if (DraftOf(one.Recipe, RecipeDraft.Of) is { } yours && DraftOf(one.Theirs, RecipeDraft.Of) is { } theirs)
        {
            DraftMerge<RecipeDraft> merge = DraftMerge.Of(DraftOf(one.Basis, RecipeDraft.Of)!, theirs, yours);
            _ = (merge.With(_ => true).Findings, merge.With(_ => false).Findings, yours.Lines, yours.Name);
            Must(DraftMerge.Of(yours, yours, yours).Choices.Count == 0, "a draft differs from itself");
        }

        _ = DraftOf(one.Water, WaterDraft.Of)?.Findings;
    }

    /// <summary>Only what is a JSON object at all is ever opened as a draft.</summary>
    private static T? DraftOf<T>(byte[] file, Func<string, T> of)
        where T : class
    {
        try
        {
            return of(new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(file));
        }
        catch (ArgumentException notJson) when (notJson is DecoderFallbackException || notJson.ParamName == "text")
        {
            return null;
        }
    }

    private static void AllFinite(object told, string what)
    {
        foreach ((string path, double value) in Numbers.In(told, what))
        {
            Must(double.IsFinite(value), () => $"{path} is {value}");
        }
    }

    private static void NoneNegative(object told, string what)
    {
        foreach ((string path, double value) in Numbers.In(told, what))
        {
            Must(value >= Nothing || !path.Split('.')[^1].Contains("Litres", StringComparison.Ordinal), () => $"{path} is {value}");
        }
    }

    private static string Told(IEnumerable<Finding> findings) => string.Join("; ", findings.Select(f => $"{f.Where}: {f.Message}"));

    private static void Must(bool holds, string otherwise) => Must(holds, () => otherwise);

    private static void Must(bool holds, Func<string> otherwise)
    {
        if (!holds)
        {
            throw new InvalidDataException(otherwise());
        }
    }
}
