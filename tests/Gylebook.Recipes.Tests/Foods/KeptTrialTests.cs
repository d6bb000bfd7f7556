using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Tests.Foods;

/// <summary>Bench trials that are kept with their food: the file, the best glass, the dose in a batch.</summary>
public sealed class KeptTrialTests
{
    private static readonly string Flour = Samples.Text("samples", "recipes", "foods", "pumpkin-seed-flour.json");

    private const string Trial = """
        { "day": "2026-03-01", "beer": "Bitter", "dosed": "tincture, 1 in 5", "glasses": [
            { "dose": "0 g/L" }, { "dose": "1.5 g/L", "mark": 6, "notes": "faint" }, { "dose": "3 g/L", "mark": 8 }, { "dose": "6 g/L", "mark": 8, "notes": "too much" } ] }
        """;

    [Fact]
    public void A_trial_is_kept_by_the_file_and_comes_back_as_it_was()
    {
        FoodSheet food = Food(Trial);
        KeptTrial trial = Assert.Single(food.Trials);
        Assert.Equal((new DateOnly(2026, 3, 1), "Bitter", "tincture, 1 in 5"), (trial.Day, trial.Beer, trial.Dosed));
        Assert.Equal(["0 g/L", "1.5 g/L", "3 g/L", "6 g/L"], trial.Glasses.Select(glass => glass.Dose.Text));
        Assert.Equal([null, 6, 8, 8], trial.Glasses.Select(glass => glass.Mark));
        Assert.Equal(trial.Glasses, FoodFile.Read(FoodFile.Write(food)).Value!.Trials.Single().Glasses);

        // A file without trials is written as before.
        Assert.DoesNotContain("trials", FoodFile.Write(FoodFile.Read(Flour).Value!), StringComparison.Ordinal);
    }

    [Fact]
    public void The_best_is_the_glass_that_is_called_so_else_the_highest_mark_if_it_stands_alone()
    {
        Assert.Null(Food(Trial).Trials[0].Best);
        Assert.Equal("3 g/L", Food(Trial.Replace("\"6 g/L\", \"mark\": 8", "\"6 g/L\", \"mark\": 5", StringComparison.Ordinal)).Trials[0].Best!.Dose.Text);
        Assert.Equal("1.5 g/L", Food(Trial.Replace("\"mark\": 6", "\"mark\": 6, \"best\": true", StringComparison.Ordinal)).Trials[0].Best!.Dose.Text);
    }

    /// <remarks>Dilution, by hand: 3 g/L in 19 L are 57 g; 85 % of it, common practice, 48.45 g, told to three figures.</remarks>
    [Theory]
    [InlineData("3 g/L", 19, "57 g", "48.5 g")]
    [InlineData("300 mg/L", 20, "6 g", "5.1 g")]
    [InlineData("0.5 mL/L", 19, "9.5 mL", "8.08 mL")]
    [InlineData("1,5 mL/L", 10, "15 mL", "12.8 mL")]
    [InlineData("0 g/L", 19, "0 g", "0 g")]
    public void A_dose_is_told_for_a_batch(string dose, double litres, string batch, string first)
    {
        TrialDose meant = Food(Trial.Replace("\"1.5 g/L\"", $"\"{dose}\"", StringComparison.Ordinal)).Trials[0].Glasses[1].Dose;
        VolumeAt20C beer = VolumeAt20C.FromLitres(litres);
        Assert.Equal((batch, first), (meant.In(beer).Text, meant.FirstIn(beer).Text));
        Assert.Equal(dose.Contains("mL", StringComparison.Ordinal), meant.In(beer).Volume is not null);
    }

    [Theory]
    [InlineData("\"1.5 g/L\"", "\"1.5\"", "dose.wrong", "trials[0].glasses[1].dose", "0 to 1000 g/L or mL/L")]
    [InlineData("\"1.5 g/L\"", "\"1,500 g/L\"", "dose.wrong", "trials[0].glasses[1].dose", "0 to 1000 g/L or mL/L")]
    [InlineData("\"1.5 g/L\"", "\"1001 mL/L\"", "dose.wrong", "trials[0].glasses[1].dose", "0 to 1000 g/L or mL/L")]
    [InlineData("\"mark\": 6", "\"mark\": 11", "number.range", "trials[0].glasses[1].mark", "0 to 10")]
    [InlineData("\"mark\": 8", "\"mark\": 8, \"best\": true", "trial.best", "trials[0].glasses[3].best", "3 g/L")]
    [InlineData("\"beer\": \"Bitter\"", "\"beer\": \" \"", "text.empty", "trials[0].beer", null)]
    public void What_cannot_be_so_names_the_field_and_its_limit(string right, string wrong, string code, string where, string? limit)
    {
        Finding finding = Assert.Single(FoodFile.Read(Text(Trial.Replace(right, wrong, StringComparison.Ordinal))).Findings);
        Assert.Equal((code, where, limit), (finding.Code, finding.Where, finding.Limit));
    }

    [Fact]
    public void A_trial_without_a_glass_is_kept_and_told()
    {
        (string code, string where) = ("trial.glasses", "trials[0].glasses");
        Gylebook.Recipes.Forms.Reading<FoodSheet> read = FoodFile.Read(Text("""{ "day": "2026-03-01", "beer": "Bitter" }"""));
        Assert.NotNull(read.Value);
        Assert.Equal((code, where, Severity.Warning), (Assert.Single(read.Findings).Code, read.Findings[0].Where, read.Findings[0].Severity));
    }

    private static FoodSheet Food(string trial)
    {
        string text = Text(trial);
        Assert.Empty(Gylebook.Tests.Shared.PublishedSchema.Objections("food", text));
        return FoodFile.Read(text).Value!;
    }

    private static string Text(string trial) => Flour.TrimEnd()[..^1].TrimEnd() + $", \"trials\": [ {trial} ] }}";
}
