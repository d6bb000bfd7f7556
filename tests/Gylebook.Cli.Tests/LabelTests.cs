using System.Text.Json.Nodes;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook label, run as a person runs it.</summary>
public sealed class LabelTests
{
    private static string Flour => RepositoryFile.PathOf("samples/recipes/foods/pumpkin-seed-flour.json");

    [Theory]
    [InlineData("mash")]
    [InlineData("copper-up")]
    [InlineData("boil 10 min")]
    [InlineData("knock-out")]
    [InlineData("stand 15 min")]
    [InlineData("pitch")]
    [InlineData("ferment day 3")]
    [InlineData("rack")]
    [InlineData("package")]
    public void Writes_what_its_schema_says_at_every_place(string at)
    {
        JsonObject report = Report([Flour, "--amount", "600 g", "--at", at, "--into", "20 L"]);
        Assert.Equal(("gylebook-label/1", "pumpkin-seed-flour", "600 g", at, "20 L"), (Text(report, "format"), Text(report, "food"), Text(report, "amount"), Text(report, "at"), Text(report, "into")));
        Assert.Equal("bounds", (string?)report["effect"]!["gravityPoints"]!["kind"]);
    }

    // 18 g of 30 g printed: 17.5 to 18.5 (21 CFR 101.9(c)(7)), per 100 g; sesame traces are on the packet.
    [Fact]
    public void A_label_is_told_as_bounds_and_its_traces_are_stated()
    {
        JsonObject report = Report([Flour]);
        JsonNode protein = report["per100g"]!["protein"]!;
        Assert.Equal((58.333, 60.0, 61.667, "bounds"), ((double)protein["low"]!, (double)protein["likely"]!, (double)protein["high"]!, (string)protein["kind"]!));
        Assert.Null(report["effect"]!["gravityPoints"]);
        Assert.Empty(report["places"]!.AsArray());
        Assert.Contains("May contain: Sesame.", Text(report["allergens"]!.AsObject(), "statementUs"), StringComparison.Ordinal);
    }

    // 21 CFR 101.9(g): protein at least 80 % of what is printed (from memory), so 0.8 × 17.5 g of 30 g, 46.667 per 100 g.
    [Fact]
    public void All_that_the_law_allows_is_wider_than_rounding()
    {
        JsonNode rounding = Report([Flour])["per100g"]!;
        JsonNode legal = Report([Flour, "--legal"])["per100g"]!;
        Assert.Equal(46.667, (double)legal["protein"]!["low"]!);
        foreach (string line in (string[])["protein", "fat", "carbohydrate", "sugars", "sodium"])
        {
            Assert.True((double)legal[line]!["low"]! <= (double)rounding[line]!["low"]!, line);
            Assert.True((double)legal[line]!["high"]! >= (double)rounding[line]!["high"]!, line);
        }
    }

    [Fact]
    public void Two_places_stand_side_by_side()
    {
        JsonObject report = Report([Flour, "--amount", "600 g", "--at", "mash", "--at", "knock-out", "--into", "20 L"]);
        JsonArray places = report["places"]!.AsArray();
        Assert.Equal(["mash", "knock-out"], places.Select(place => (string?)place!["at"]));
        Assert.True(JsonNode.DeepEquals(report["effect"], places[0]!["effect"]));
        Assert.True((double)places[0]!["effect"]!["sludgeLitres"]!["likely"]! < (double)places[1]!["effect"]!["sludgeLitres"]!["likely"]!);
        string told = GylebookProgram.Run(["label", Flour, "--amount", "600 g", "--at", "mash", "--at", "knock-out", "--into", "20 L"]).Output;
        Assert.Contains("mash", told, StringComparison.Ordinal);
        Assert.Contains("Bench trial", told, StringComparison.Ordinal);
        Assert.Contains("as usual: 10 to 50 g/L", told, StringComparison.Ordinal);
    }

    // By molar masses of the sugars USDA SR26 NDB 09298 names: 0.72 volumes in 20.1 L, and 1.3 g of others.
    [Fact]
    public void Raisins_in_the_package_are_told_with_their_gas_and_a_caution()
    {
        JsonObject report = Report(["raisins", "--amount", "100 g", "--at", "package", "--into", "20 L"]);
        Assert.InRange((double)report["effect"]!["co2VolumesIfPackaged"]!["likely"]!, 0.715, 0.74);
        Assert.Contains(report["cautions"]!.AsArray(), caution => (string?)caution!["code"] == "bottle.unfermentedSugar");
        Assert.All(report["cautions"]!.AsArray(), caution => Assert.NotEmpty((string)caution!["source"]!));
    }

    // That its numbers follow the standard atmosphere is held in FoodCautionsTests.
    [Fact]
    public void A_kit_says_how_high_a_dose_is_packaged_and_without_one_it_is_sea_level()
    {
        string[] dose = ["raisins", "--amount", "100 g", "--at", "package", "--into", "20 L"];
        string Told(params string[] kit) => (string)Report([.. dose, .. kit])["cautions"]!.AsArray()
            .Single(caution => (string?)caution!["code"] == "bottle.unfermentedSugar")!["message"]!;
        Assert.Contains("against the air of sea level, no height being known,", Told(), StringComparison.Ordinal);
        Assert.Contains("against the air of 5000 ft,", Told("--kit", KitAt("5000 ft")), StringComparison.Ordinal);

        JsonObject nowhere = Json(["label", .. dose, "--kit", KitAt("9000 m"), "--json"], exitCode: 1);
        JsonNode finding = Assert.Single(nowhere["findings"]!.AsArray(), found => (string?)found!["code"] == "kit.altitude")!;
        Assert.Equal(("error", "kit.altitude", "9000 m", "-450 m to 6000 m"), ((string?)finding["severity"], (string?)finding["where"], (string?)finding["value"], (string?)finding["limit"]));

        Ran missing = WarmProgram.Run(["label", .. dose, "--kit", "no-such-kit.json"]);
        Assert.Equal(("", 1), (missing.Output, missing.ExitCode));
        Assert.Contains("no-such-kit.json", missing.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Means_the_same_in_every_country_and_unit()
    {
        string[] arguments = ["label", "honey", "--at", "pitch", "--json"];
        string kilograms = GylebookProgram.Run([.. arguments, "--amount", "0,5 kg", "--into", "20 L"], "de_DE.UTF-8").Output;
        string grams = GylebookProgram.Run([.. arguments, "--amount", "500 g", "--into", "20 L"]).Output;
        Assert.Equal(grams.Replace("\"500 g\"", "\"0,5 kg\"", StringComparison.Ordinal), kilograms);
    }

    // Each on the 30 g label of the sample. Sugars of 9 g are 8.5 g at least, carbohydrate of 6 g at most 6.5 g.
    [Theory]
    [InlineData("\"sugars\": \"1 g\"", "\"sugars\": \"9 g\"", "food.labelImpossible", "label.sugars", "8.5 g", "6.5 g")]
    [InlineData("\"fat\": \"3 g\"", "\"fat\": \"-3 g\"", "quantity.wrong", "label.fat", "-3 g", null)]
    [InlineData("\"fat\": \"3 g\"", "\"fat\": \"3 g\", \"potassium\": \"-3 mg\"", "quantity.wrong", "label.potassium", "-3 mg", null)]
    [InlineData("\"fat\": \"3 g\"", "\"fat\": \"3 g\", \"potassium\": \"30.1 g\"", "food.labelImpossible", "label.potassium", "30.1 g", "30 g")]
    [InlineData("\"serving\": \"30 g\"", "\"serving\": \"0 g\"", "label.serving", "label.serving", "0 g", "above 0 g")]
    [InlineData("\"protein\": \"18 g\"", "\"protein\": \"118 g\"", "food.labelImpossible", "label.protein", "117.5 g", "30 g")]
    [InlineData("\"protein\": \"18 g\"", "\"protein\": \"18\"", "quantity.wrong", "label.protein", "18", null)]
    public void Invalid_labels_are_findings_that_name_the_line_and_its_limit(
        string was, string wrong, string code, string where, string value, string? limit)
    {
        JsonObject report = Json(Bad(was, wrong), exitCode: 1);
        JsonNode finding = Assert.Single(report["findings"]!.AsArray(), found => (string?)found!["code"] == code)!;
        Assert.Equal("error", (string?)finding["severity"]);
        Assert.EndsWith(where, (string)finding["where"]!, StringComparison.Ordinal);
        Assert.Equal(value, (string?)finding["value"]);
        if (limit is not null)
        {
            Assert.Equal(limit, (string?)finding["limit"]);
        }

        Assert.Equal(1, WarmProgram.Run(["check", BadFile(was, wrong)]).ExitCode);
    }

    // 110 kcal is 460 kJ; typed as kcal it fits the other lines only as kJ.
    [Fact]
    public void Kilojoules_typed_as_kilocalories_are_a_warning_and_stop_nothing()
    {
        JsonObject report = Json(Bad("\"energy\": \"110 kcal\"", "\"energy\": \"460 kcal\""), exitCode: 0);
        JsonNode finding = Assert.Single(report["findings"]!.AsArray(), found => (string?)found!["code"] == "label.kilojoulesAsKilocalories")!;
        Assert.Equal(("warning", "460 kcal"), ((string?)finding["severity"], (string?)finding["value"]));
        Assert.EndsWith("label.energy", (string)finding["where"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-such-food-at-all", "food.unknown")]
    public void Unknown_foods_name_the_nearest(string food, string code)
    {
        Ran ran = WarmProgram.Run(["label", food]);
        Assert.Equal(("", 1), (ran.Output, ran.ExitCode));
        Assert.Contains(code, ran.Errors, StringComparison.Ordinal);
        Assert.Contains("Nearest", ran.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("600 bananas", "mash", "20 L", "quantity.wrong")]
    [InlineData("0 g", "mash", "20 L", "quantity.nothing")]
    [InlineData("600 g", "lunch", "20 L", "at.wrong")]
    [InlineData("600 g", "mash", "0 L", "quantity.nothing")]
    [InlineData("600 g", "mash", "20 kg", "quantity.wrong")]
    public void Invalid_doses_are_findings(string amount, string at, string into, string code)
    {
        Ran ran = WarmProgram.Run(["label", "honey", "--amount", amount, "--at", at, "--into", into]);
        Assert.Equal(("", 1), (ran.Output, ran.ExitCode));
        Assert.Contains(code, ran.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("label")]
    [InlineData("label", "honey", "--amount", "600 g")]
    [InlineData("label", "honey", "--at", "mash", "--into", "20 L")]
    [InlineData("label", "honey", "--amount", "600 g", "--into", "20 L", "--at")]
    [InlineData("label", "honey", "--amount", "600 g", "--into", "20 L", "--at", "mash", "--kit")]
    [InlineData("label", "honey", "--kit", "kit.json")]
    public void Invalid_usage_gets_one_line_and_exit_code_2(params string[] arguments)
    {
        Ran ran = WarmProgram.Run(arguments);
        Assert.Equal(("", 2), (ran.Output, ran.ExitCode));
        Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    private static JsonObject Report(string[] arguments) => Json(["label", .. arguments, "--json"], exitCode: 0);

    private static JsonObject Json(string[] arguments, int exitCode)
    {
        Ran ran = WarmProgram.Run(arguments);
        Assert.Equal(("", exitCode), (ran.Errors, ran.ExitCode));
        Assert.Empty(PublishedSchema.Objections("label", ran.Output));
        return JsonNode.Parse(ran.Output)!.AsObject();
    }

    /// <remarks>3 g/L in 19 L, by hand.</remarks>
    [Fact]
    public void Kept_bench_trials_are_told_for_a_batch_and_check_carries_them()
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory("gylebook-trial-").FullName, "flour.json");
        const string Trials = """, "trials": [ { "day": "2026-03-01", "beer": "Bitter", "glasses": [ { "dose": "0 g/L" }, { "dose": "3 g/L", "mark": 8, "notes": "toast" } ] } ] }""";
        File.WriteAllText(path, File.ReadAllText(Flour).TrimEnd()[..^1] + Trials);
        try
        {
            Ran ran = WarmProgram.Run(["label", path]);
            Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
            string told = string.Join(' ', ran.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
            Assert.Contains("2026-03-01, in Bitter: 3 g/L: 57 g in 19 L", told, StringComparison.Ordinal);
            Assert.Contains("Tell tasters what is in the glasses", told, StringComparison.Ordinal);
            JsonObject report = Report([path, "--into", "10 L"]);
            Assert.Equal(("3 g/L", "30 g"), ((string?)report["keptTrials"]![0]!["bestDose"], (string?)report["keptTrials"]![0]!["inBatch"]));
            Assert.Equal(0, WarmProgram.Run(["check", path]).ExitCode);

            File.WriteAllText(path, File.ReadAllText(path).Replace("3 g/L", "3 spoons", StringComparison.Ordinal));
            ran = WarmProgram.Run(["check", path]);
            Assert.Equal(1, ran.ExitCode);
            Assert.Contains("trials[0].glasses[1].dose", ran.Output + ran.Errors, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        }
    }

    private static string[] Bad(string was, string wrong) => ["label", BadFile(was, wrong), "--json", "--amount", "600 g", "--at", "mash", "--into", "20 L"];

    /// <summary>A sample kit at another height.</summary>
    private static string KitAt(string height)
    {
        JsonObject kit = JsonNode.Parse(File.ReadAllText(SampleFile.Kit("lantern-shed")))!.AsObject();
        kit["altitude"] = height;
        return Saved(kit.ToJsonString());
    }

    private static string BadFile(string was, string wrong)
    {
        string text = File.ReadAllText(Flour);
        Assert.Contains(was, text, StringComparison.Ordinal);
        return Saved(text.Replace(was, wrong, StringComparison.Ordinal));
    }

    private static string Saved(string text)
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".json");
        File.WriteAllText(path, text);
        return path;
    }

    private static string? Text(JsonObject from, string key) => (string?)from[key];
}
