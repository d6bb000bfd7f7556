using Gylebook.Recipes.Forms;
using CsCheck;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Recipes.Tests.Interchange;

public sealed class FoodFileTests
{
    private static readonly string Flour = Samples.Text("samples", "recipes", "foods", "pumpkin-seed-flour.json");

    [Theory]
    [MemberData(nameof(Samples.Foods), MemberType = typeof(Samples))]
    public void A_sample_reads_without_a_finding_and_is_laid_out_as_we_write(string path)
    {
        var reading = FoodFile.Read(Samples.Text(path));
        Assert.Empty(reading.Findings);
        Assert.Equal(Samples.Text(path), FoodFile.Write(reading.Value!));
    }

    [Fact]
    public void Every_line_of_a_food_sheet_is_read()
    {
        var food = FoodFile.Read(Flour).Value!;
        Assert.Equal(("pumpkin-seed-flour", "nut or seed flour, defatted", "Pumpkin seeds.", "sesame"), (food.Id, food.Family, food.Ingredients, food.MayContain));
        var label = food.Label!;
        Assert.Equal((PanelStyle.Us, 110.0), (label.Style, label.EnergyKilocalories));
        Assert.Equal(
            [3, 0.5, 0, 6, 2, 1, 0, 18],
            new[] { label.Fat, label.Saturated, label.Sodium, label.Carbohydrate, label.Fibre, label.Sugars, label.AddedSugars, label.Protein }
                .Select(printed => printed!.Value.Amount.Grams));
        Assert.Equal(30, label.Serving!.Value.Value.Grams);
        Assert.Null(label.SugarAlcohols);
        Assert.Null(food.Composition);
        Assert.Equal(new FoodAssume(null, null), food.Assume);
    }

    [Theory]
    [InlineData("< 1 g")]
    [InlineData("<1 g")]
    [InlineData("less than 1 g")]
    public void Less_than_a_gram_is_no_number_and_keeps_its_words(string printed)
    {
        var text = Flour.Replace("\"sugars\": \"1 g\"", $"\"sugars\": \"{printed}\"", StringComparison.Ordinal);
        Assert.Empty(PublishedSchema.Objections("food", text));
        var label = FoodFile.Read(text).Value!.Label!;
        Assert.Equal((1.0, true, printed), (label.Sugars!.Value.Amount.Grams, label.Sugars.Value.IsLessThan, label.Sugars.Value.Text));
        Assert.Equal(PrintedValue.LessThan(1), label.AsPrinted().SugarsGrams);
        Assert.Contains($"\"{printed}\"", FoodFile.Write(FoodFile.Read(text).Value!), StringComparison.Ordinal);
    }

    [Fact]
    public void Kilojoules_are_read_as_kilocalories() => Assert.Equal(
        110, FoodFile.Read(Flour.Replace("110 kcal", "460.24 kJ", StringComparison.Ordinal)).Value!.Label!.EnergyKilocalories!.Value, 1e-9);

    [Theory]
    [InlineData("\"3 g\"", "\"-3 g\"", "quantity.wrong", "label.fat")]
    [InlineData("\"3 g\"", "3", "quantity.bare", "label.fat")]
    [InlineData("\"30 g\"", "\"0 g\"", "label.serving", "label.serving")]
    [InlineData("\"110 kcal\"", "\"110\"", "energy.wrong", "label.energy")]
    [InlineData("\"US\"", "\"UK\"", "word.unknown", "label.style")]
    [InlineData("\"fibre\"", "\"fiber\"", "key.unknown", "label.fiber")]
    [InlineData("pumpkin-seed-flour", "Pumpkin seed flour", "id.wrong", "id")]
    [InlineData("\"composition\": null", "\"composition\": { \"water\": \"101 g\", \"source\": \"a laboratory\" }", "composition.range", "composition.water")]
    [InlineData("\"composition\": null", "\"composition\": { \"water\": \"9 g\" }", "composition.source", "composition.source")]
    [InlineData("\"heldLitresPerKg\": null", "\"heldLitresPerKg\": -1", "number.range", "assume.heldLitresPerKg")]
    public void A_wrong_figure_is_told(string was, string wrong, string code, string where)
    {
        var finding = Assert.Single(FoodFile.Read(Flour.Replace(was, wrong, StringComparison.Ordinal)).Findings);
        Assert.Equal((code, where), (finding.Code, finding.Where));
    }

    // A comma before the decimals is Europe's; with three digits behind it, it may stand for thousands.
    [Theory]
    [InlineData("460,24 kJ", true)]
    [InlineData("110,0 kcal", true)]
    [InlineData("1,355 kJ", false)]
    [InlineData("1,355.5 kJ", false)]
    public void An_energy_with_a_comma_is_read_unless_it_may_be_a_thousand(string energy, bool isRead)
    {
        Reading<FoodSheet> reading = FoodFile.Read(Flour.Replace("110 kcal", energy, StringComparison.Ordinal));
        double? expected = isRead ? 110.0 : null;
        double? read = reading.Value?.Label!.EnergyKilocalories;
        Assert.Equal(expected, read is { } energyRead ? Math.Round(energyRead, 9) : null);
        Assert.Equal(!isRead, reading.Findings.Any(finding => finding is { Where: "label.energy", Code: "energy.wrong" }));
    }

    [Fact]
    public void A_food_of_which_nothing_is_known_is_read_with_a_warning()
    {
        var reading = FoodFile.Read("{ \"format\": \"gylebook-food/1\", \"id\": \"x\", \"name\": \"x\", \"family\": \"spice\" }");
        Assert.NotNull(reading.Value);
        var finding = Assert.Single(reading.Findings);
        Assert.Equal(("food.bare", Severity.Warning), (finding.Code, finding.Severity));
    }

    [Fact]
    public void Writing_what_was_read_changes_nothing() => AnyFood.Sample(
        food =>
        {
            var text = FoodFile.Write(food);
            var reading = FoodFile.Read(text);
            Assert.Empty(reading.Findings);
            Assert.Equal(text, FoodFile.Write(reading.Value!));
            Assert.Equal(food.Label, reading.Value!.Label);
            Assert.Empty(PublishedSchema.Objections("food", text));
        },
        iter: 300,
        seed: "0N0XIzNsQ0O2");

    private static Gen<FoodSheet> AnyFood =>
        from style in Gen.OneOf(PanelStyle.Us, PanelStyle.Eu)
        from printed in Gen.OneOf(null, "0 g", "3 g", "0.5 g", "250 mg", "<1 g", "less than 5 mg").Array[12]
        from grams in Gen.Int[0, 10_000].Select(hundredths => hundredths / 100.0).Array[4]
        from analysed in Gen.Bool
        select new FoodSheet
        {
            Id = "a-food",
            Name = "A food, roughly",
            Family = "other food",
            Label = new LabelPanel
            {
                Style = style,
                Serving = style == PanelStyle.Us ? new Entered<Mass>(Mass.FromGrams(30), "30 g") : null,
                EnergyKilocalories = grams[0],
                Fat = Printed(printed[0]),
                Saturated = Printed(printed[1]),
                Sodium = Printed(printed[2]),
                Salt = Printed(printed[3]),
                Carbohydrate = Printed(printed[4]),
                Fibre = Printed(printed[5]),
                Sugars = Printed(printed[6]),
                AddedSugars = Printed(printed[7]),
                SugarAlcohols = Printed(printed[8]),
                Starch = Printed(printed[9]),
                Protein = Printed(printed[10]),
                Potassium = Printed(printed[11]),
            },
            Composition = analysed ? new FoodComposition { Water = grams[1], Starch = grams[2], SodiumMilligrams = grams[3], PotassiumMilligrams = grams[2], Source = "a laboratory" } : null,
            MayContain = analysed ? "sesame, \"nuts\"" : null,
            Acidity = analysed ? new(4.2, 31.5, 0, Provenance.Entered) : null,
            Assume = new FoodAssume(analysed ? new Entered<Fraction>(Fraction.FromPercent(85), "85 %") : null, analysed ? null : 2.4),
        };

    private static PrintedMass? Printed(string? text)
    {
        if (text is null)
        {
            return null;
        }

        var number = text.Replace("less than ", "", StringComparison.Ordinal).TrimStart('<').Split(' ');
        var mass = Mass.FromGrams(double.Parse(number[0], System.Globalization.CultureInfo.InvariantCulture) / (number[1] == "mg" ? 1000 : 1));
        return char.IsAsciiDigit(text[0]) ? PrintedMass.Of(new Entered<Mass>(mass, text)) : PrintedMass.LessThan(mass, text);
    }
}
