using Gylebook.Recipes.Forms;
using System.Globalization;
using System.Text;
using Gylebook.Forecast.Json;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Labels;
using Gylebook.Pictures.Drawing;
using Gylebook.Pictures.Sheets;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Pictures.Tests;

/// <summary>All that is told of all samples is the same, to the letter, wherever the computer stands.</summary>
public sealed class SameInEveryCountryTests
{
    private static readonly Lazy<IReadOnlyDictionary<string, string>> Invariant = new(() => InCountry(CultureInfo.InvariantCulture, Told));

    /// <summary>Commas for decimals; spaces in thousands and a minus of its own; an i whose capital has a dot.</summary>
    [Theory]
    [InlineData("de-DE")]
    [InlineData("fr-FR")]
    [InlineData("sv-SE")]
    [InlineData("tr-TR")]
    public void Every_sample_is_told_alike(string culture)
    {
        CultureInfo country = CultureInfo.GetCultureInfo(culture);
        Assert.NotEqual((0.5).ToString(CultureInfo.InvariantCulture), (0.5).ToString(country));
        IReadOnlyDictionary<string, string> told = InCountry(country, Told);
        Assert.Equal(Invariant.Value.Keys, told.Keys);
        Assert.All(told, pair => Assert.Equal(Invariant.Value[pair.Key], pair.Value));
    }

    private static T InCountry<T>(CultureInfo culture, Func<T> work)
    {
        (CultureInfo before, CultureInfo beforeUi) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, culture);
            return work();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (before, beforeUi);
        }
    }

    private static IReadOnlyDictionary<string, string> Told()
    {
        SortedDictionary<string, string> told = new(StringComparer.Ordinal);
        foreach (string file in Directory.EnumerateFiles(RepositoryFile.PathOf("samples"), "*.json", SearchOption.AllDirectories))
        {
            byte[] text = File.ReadAllBytes(file);
            told[Path.GetRelativePath(RepositoryFile.PathOf("samples"), file)] =
                $"{OfRecipe(text)}\n{OfKit(text)}\n{OfFood(text)}\n{OfWater(text)}";
        }

        return told;
    }

    private static string OfRecipe(byte[] text)
    {
        Reading<Recipe> reading = RecipeFile.Read(text);
        StringBuilder told = new(Words(reading.Findings));
        if (reading.Value is { } recipe)
        {
            told.Append(RecipeFile.Write(recipe)).Append(Words(RecipeCheck.Findings(recipe)));
            BrewForecast forecast = Forecaster.Forecast(recipe, BuiltInKit.LanternShed, Beside, "same");
            told.Append(ForecastJson.Write(forecast));
            foreach (ReaderUnits units in (ReaderUnits[])[ReaderUnits.Metric, ReaderUnits.UnitedStates])
            {
                RunPicture picture = RunPicture.Of(forecast, units);
                told.Append(RunSvg.Wide(picture, standalone: true)).Append(RunSvg.Narrow(picture, standalone: true));
                told.Append(RecipeSheetHtml.File(RecipeSheet.Of(recipe, BuiltInKit.LanternShed, Beside, units: units)));
                told.AppendJoin('|', RunTable.Of(picture).Rows.SelectMany(row => row));
            }
        }

        return told.ToString();
    }

    private static string OfKit(byte[] text)
    {
        Reading<Kit> reading = KitFile.Read(text);
        return Words(reading.Findings) + (reading.Value is { } kit ? KitFile.Write(kit) : null);
    }

    private static string OfFood(byte[] text)
    {
        Reading<FoodSheet> reading = FoodFile.Read(text);
        if (reading.Value is not { } sheet)
        {
            return Words(reading.Findings);
        }

        Entered<Mass> amount = new(Mass.FromGrams(412.5), "412.5 g");
        Entered<VolumeAt20C> into = new(VolumeAt20C.FromLitres(21.5), "21.5 L");
        AdditionTime[] places = [new(AdditionPoint.Mash), new(AdditionPoint.Boil, 12.5)];
        FoodLabelReport report = FoodLabelReport.Of(sheet.Id, sheet.Name, FoodMakeups.From(sheet), amount, into, places, kit: null);
        return Words(reading.Findings) + FoodFile.Write(sheet) + LabelJson.Write(report);
    }

    private static string OfWater(byte[] text)
    {
        Reading<WaterPlan> reading = WaterFile.Read(text);
        List<Finding> findings = [.. reading.Findings];
        WaterOutcome? outcome = reading.Value is { } plan && LiquorNeed.Of(plan, findings) is { } need ? WaterTreatment.TryOf(plan, need, findings) : null;
        return Words(findings) + WaterJson.Write(outcome, findings);
    }

    private static readonly Larder Beside = new(
        Directory.GetFiles(RepositoryFile.PathOf("samples/recipes/foods"), "*.json").Select(file => FoodFile.Read(File.ReadAllBytes(file)).Value!));

    private static string Words(IEnumerable<Finding> findings) => string.Join('\n', findings.Select(finding => finding.ToString())) + "\n";
}
