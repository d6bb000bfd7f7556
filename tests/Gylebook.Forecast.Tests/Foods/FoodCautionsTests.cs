using System.Globalization;
using System.Text.RegularExpressions;
using Gylebook.Forecast.Foods;
using Gylebook.Forecast.Report;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;
using static Gylebook.Forecast.Tests.Foods.SampleFoods;

namespace Gylebook.Forecast.Tests.Foods;

public class FoodCautionsTests
{
    [Theory]
    [InlineData("peanut-flour-defatted", 0.6, "knock-out", "boilover.powder")]
    [InlineData("peanut-flour-defatted", 0.6, "boil 10 min", "boilover.powder")]
    [InlineData("raspberries-raw", 2, "ferment day 3", "foam.fermenter")]
    [InlineData("raspberries-raw", 2, "ferment day 3", "food.raw")]
    [InlineData("pumpkin-canned-no-salt", 1, "ferment day 3", "food.lowAcid")]
    [InlineData("raisins-seedless", 0.1, "package", "bottle.unfermentedSugar")]
    [InlineData("raisins-seedless", 0.1, "mash", "pets.feed")]
    [InlineData("apricots-dried-sulphured", 0.5, "ferment day 3", "preservative.sulphite")]
    [InlineData("apricots-raw", 2, "ferment day 3", "pits.cyanide")]
    [InlineData("cinnamon-ground", 0.01, "boil 5 min", "coumarin.cassia")]
    [InlineData("instant-coffee-powder", 0.05, "rack", "caffeine.serving")]
    [InlineData("cocoa-powder-unsweetened", 0.2, "boil 10 min", "pets.feed")]
    [InlineData("sweetened-chocolate-puffed-corn-cereal", 1, "pitch", "starch.later")]
    public void A_hazard_is_told_at_its_place_with_a_source(string id, double kilograms, string at, string code)
    {
        Caution caution = Assert.Single(Cautions(id, kilograms, at), caution => caution.Code == code);
        Assert.True(caution.Source.Length > 5);
        Assert.Equal(code == "starch.later" ? "package" : at, caution.Where);
    }

    [Theory]
    [InlineData("peanut-flour-defatted", 0.6, "mash", "boilover.powder")]
    [InlineData("raspberries-raw", 2, "boil 10 min", "food.raw")]
    [InlineData("raspberries-raw", 2, "ferment day 3", "food.lowAcid")]
    [InlineData("raisins-seedless", 0.1, "mash", "bottle.unfermentedSugar")]
    [InlineData("lactose-monohydrate", 0.5, "package", "bottle.unfermentedSugar")]
    [InlineData("raspberries-raw", 2, "ferment day 3", "pits.cyanide")]
    [InlineData("raspberries-raw", 2, "mash", "pets.feed")]
    [InlineData("honey", 1, "pitch", "caffeine.serving")]
    public void Where_there_is_no_hazard_none_is_told(string id, double kilograms, string at, string code) =>
        Assert.DoesNotContain(Cautions(id, kilograms, at), caution => caution.Code == code);

    [Theory]
    [InlineData("honey", true, false)]
    [InlineData("peanut-flour-defatted", false, true)]
    [InlineData("maltodextrin", false, true)]
    [InlineData("coffee-brewed-from-grounds", false, false)]
    public void Honey_sinks_and_powders_clot(string id, bool syrup, bool powder)
    {
        IEnumerable<string> codes = Cautions(id, 0.6, "knock-out").Select(c => c.Code);
        Assert.Equal(syrup, codes.Contains("boilover.syrup"));
        Assert.Equal(powder, codes.Contains("boilover.powder"));
    }

    /// <summary>1 L more foam for each 10 g/L of powder (common practice); a kettle that has room for the wort and 2 L has it for 2 kg of honey and not of flour.</summary>
    [Theory]
    [InlineData("honey", false)]
    [InlineData("peanut-flour-defatted", true)]
    public void The_powder_rule_of_headspace_is_for_powders(string id, bool told)
    {
        Recipe plain = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!;
        Recipe dosed = plain with { Ingredients = [.. plain.Ingredients, Typed.Line(IngredientKind.Food, id, 2, AdditionPoint.KnockOut)] };
        BrewForecast Forecast(Kit kit) => Forecaster.Forecast(dosed, kit, Larder.Empty, "headspace");
        double boiling = 1.04 * Forecast(Kits.Lossless).Headline.Single(h => h.Name == "copperUpLitres").Band!.Likely;
        double usable = (boiling + 2) / 0.9;
        Kit tight = Kits.Lossless with { Kettle = Kits.Lossless.Kettle with { Usable = Typed.Litres(usable) } };
        Assert.Equal(told, Forecast(tight).Findings.Any(f => f.Code == "kettle.headspace"));
    }

    // A third of the kettle empty is half the wort again: common practice, kettle of 1.5 times the wort.
    [Fact]
    public void Headspace_is_told_in_litres() => Assert.Contains(
        "10.0 L of headspace above 20 L", Assert.Single(Cautions("peanut-flour-defatted", 0.6, "knock-out"), c => c.Code == "boilover.powder").Message, StringComparison.Ordinal);

    // 0.5138 kg sugar a litre of volumes: a kilogram of white sugar in 20 L is 50 g/L, 13.1 volumes by molar mass.
    [Fact]
    public void Enough_sugar_to_burst_bottles_is_an_error_with_volumes_and_pressure()
    {
        Caution caution = Assert.Single(Cautions("white-sugar", 1, "package"), caution => caution.Code == "bottle.unfermentedSugar");
        Assert.Equal(Severity.Error, caution.Severity);
        Assert.Contains("13.0", caution.Message, StringComparison.Ordinal);
        Assert.Contains(" bar at 20 °C", caution.Message, StringComparison.Ordinal);
    }

    /// <summary>
    /// Air: 12.228 psi at 5000 ft (US Standard Atmosphere), 70.121 kPa at 3000 m (ISO 2533), 0.0689476 bar a psi. Flat beer keeps 0.88
    /// volumes at 20 °C under 1.01325 bar (the table of residual gas), in proportion to the air. 2.5 volumes stand at 2.12 bar by the gauge at
    /// 20 °C and sea level (the bottle's published check), and gas in proportion, over 0.0234 bar of water vapour: 1.244 bar a volume.
    /// </summary>
    [Theory]
    [InlineData(null, 1.01325, "sea level, no height being known")]
    [InlineData("5000 ft", 12.228 * 0.0689476, "5000 ft")]
    [InlineData("3000 m", 0.70121, "3000 m")]
    public void Gas_in_a_bottle_is_told_against_the_air_of_the_height(string? height, double airBar, string told)
    {
        const double BarPerVolume = (2.12 + 1.01325 - 0.0234) / 2.5;
        Dose dose = Into20(0.1, "package") with { Height = height is null ? null : Height(height) };
        string message = Assert.Single(FoodCautions.Of(OfTable("raisins-seedless").Makeup!, dose), c => c.Code == "bottle.unfermentedSugar").Message;
        Match said = Regex.Match(message, @"([\d.]+) volumes more, ([\d.]+) with what the beer holds, ([\d.]+) bar at 20 °C against the air of (.*), on top");
        Assert.Equal(told, said.Groups[4].Value);
        double all = Number(said, 1) + (0.88 * airBar / 1.01325);
        // Printed to 0.1; the sugar's volumes to 0.01, and 2.12 bar is good to 0.005.
        Assert.Equal(all, Number(said, 2), 0.05 + 0.005);
        Assert.Equal((all * BarPerVolume) + 0.0234 - airBar, Number(said, 3), 0.05 + (0.005 * BarPerVolume) + 0.005);
    }

    [Fact]
    public void A_forecast_tells_it_against_the_air_of_its_kit_and_a_height_where_nobody_lives_is_found()
    {
        Recipe recipe = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!;
        recipe = recipe with { Ingredients = [.. recipe.Ingredients, Typed.Line(IngredientKind.Food, "raisins-seedless", 0.1, AdditionPoint.Package)] };
        Kit high = Kits.Lossless with { Altitude = Height("5000 ft") };
        Assert.Contains("against the air of 5000 ft,", Assert.Single(
            Forecaster.Forecast(recipe, high, Larder.Empty, "high").Cautions, c => c.Code == "bottle.unfermentedSugar").Message, StringComparison.Ordinal);

        List<Finding> findings = [];
        Assert.Equal("5000 ft", Dose.HeightOn(high, findings)!.Value.Text);
        Assert.Null(Dose.HeightOn(null, findings));
        Assert.Empty(findings);
        Assert.Null(Dose.HeightOn(high with { Altitude = Height("9000 m") }, findings));
        Assert.Equal(("kit.altitude", "9000 m", "-450 m to 6000 m"), (findings.Single().Where, findings.Single().Value, findings.Single().Limit));
    }

    // 5 kg of purée at 1 000 mg/kg in 20 L are 250 mg/L; sorbic acid, pKa 4.76, is 0.74 undissociated at pH 4.3 (Henderson–Hasselbalch).
    [Fact]
    public void Preservatives_are_counted_against_dose_and_pH()
    {
        FoodMakeup puree = FoodMakeups.From(new FoodSheet
        {
            Id = "puree", Name = "Mango purée", Family = "tropical-fruit", Composition = new FoodComposition { Water = 83 },
            Ingredients = "Mango, preservative (potassium sorbate). ",
        }).Makeup!;
        Caution caution = Assert.Single(FoodCautions.Of(puree, Into20(5, "ferment day 3")), caution => caution.Code == "preservative.sorbate");
        Assert.Contains("250 mg/L, 186 mg/L", caution.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(
            FoodCautions.Of(puree with { Words = [.. puree.Words.Select(hit => hit with { MayContainOnly = true })] }, Into20(5, "mash")),
            caution => caution.Code.StartsWith("preservative", StringComparison.Ordinal));
    }

    // More than 0.25 g/L: 20 L would hold the 5 g that poison.
    [Theory]
    [InlineData(0.1, Severity.Note)]
    [InlineData(0.3, Severity.Error)]
    public void Nutmeg_is_held_against_its_toxic_dose(double gramsPerLitre, Severity severity)
    {
        FoodMakeup nutmeg = FoodMakeups.From(new FoodSheet
        {
            Id = "nutmeg", Name = "Nutmeg, ground", Family = "potent-spice", Composition = new FoodComposition { Water = 6 },
        }).Makeup!;
        Assert.Equal(severity, Assert.Single(FoodCautions.Of(nutmeg, Into20(gramsPerLitre * 20 / 1000, "boil 5 min")), c => c.Code == "nutmeg.dose").Severity);
    }

    [Fact]
    public void A_forecast_shows_the_same_cautions_as_the_food_alone()
    {
        Recipe recipe = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!;
        recipe = recipe with { Ingredients = [.. recipe.Ingredients, Typed.Line(IngredientKind.Food, "apricots-dried-sulphured", 0.5, AdditionPoint.Ferment, 3)] };
        BrewForecast forecast = Forecaster.Forecast(recipe, Kits.Lossless, Larder.Empty, "apricots");
        double litres = forecast.Headline.Single(h => h.Name == "castLitres").Band!.Likely;
        IReadOnlyList<Caution> alone = FoodCautions.Of(
            OfTable("apricots-dried-sulphured").Makeup!, new Dose(Mass.FromKilograms(0.5), At("ferment day 3"), VolumeAt20C.FromLitres(litres)));
        Assert.NotEmpty(alone);
        Assert.All(alone, caution => Assert.Contains(caution, forecast.Cautions));
    }

    [Fact]
    public void Traces_on_a_packet_reach_the_statements_of_a_forecast()
    {
        Recipe recipe = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/hedgerow-brown.json"))).Value!;
        FoodSheet flour = FoodFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/foods/pumpkin-seed-flour.json"))).Value!;
        BrewForecast forecast = Forecaster.Forecast(recipe, BuiltInKit.LanternShed, new Larder([flour]), "traces");
        Assert.Contains("May contain: Sesame.", forecast.Allergens.StatementUs, StringComparison.Ordinal);
        Assert.Contains("May contain: sesame.", forecast.Allergens.StatementEu, StringComparison.Ordinal);
        Assert.DoesNotContain("Sesame", forecast.Allergens.Us);
    }

    private static IReadOnlyList<Caution> Cautions(string id, double kilograms, string at) => FoodCautions.Of(OfTable(id).Makeup!, Into20(kilograms, at));

    private static double Number(Match said, int group) => double.Parse(said.Groups[group].Value, CultureInfo.InvariantCulture);

    private static Entered<Length> Height(string text) =>
        UnitTable.TryParse(text, out Entered<Length> height, out string problem) ? height : throw new ArgumentException(problem, nameof(text));

    private static Dose Into20(double kilograms, string at) => new(Mass.FromKilograms(kilograms), At(at), VolumeAt20C.FromLitres(20));
}
