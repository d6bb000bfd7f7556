using System.Collections.Concurrent;
using System.Text.Json;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>Every sample recipe, forecast as a person would, with the findings that its purpose leads one to expect.</summary>
public sealed class SampleForecastTests
{
    private const string BuiltIn = "";

    private static readonly ConcurrentDictionary<(string Recipe, string Kit), Ran> Forecasts = [];

    /// <summary>Recipe, kit, exit code, findings with their severity.</summary>
    public static TheoryData<string, string, int, string[]> Expected => new()
    {
        // A label is read as points, its allergens by a word list; half a kilo of honey calls for the room fruit needs.
        { "hedgerow-brown", BuiltIn, 0, ["note fermenter.headspace", "note food.allergensRead", "note food.labelRead"] },
        { "plain-bitter", BuiltIn, 0, [] },
        { "chestnut-mild", BuiltIn, 0, [] },
        { "apricot-cardamom-wheat", BuiltIn, 0, [] },
        { "lots/larder-bitter", BuiltIn, 0, [] },
        { "edges/aged-hops", BuiltIn, 0, [] },
        { "edges/dry-saison", BuiltIn, 0, [] },
        { "edges/extract-only", BuiltIn, 0, [] },
        { "edges/fixed-strike", BuiltIn, 0, [] },
        // 29 L packaged wants more grain, liquor and wort than 35 L to the brim, and a fermenter of 26 L.
        { "edges/kettle-too-small", BuiltIn, 1, ["error fermenter.tooSmall", "error kettle.brim", "error mash.brim"] },
        { "edges/kettle-sour", BuiltIn, 0, [] },
        { "edges/kettle-sour-mixed", BuiltIn, 0, [] },
        { "edges/lactose-stout", BuiltIn, 0, [] },
        { "edges/low-alcohol", BuiltIn, 0, ["note gravity.thin"] },
        { "edges/no-boil", BuiltIn, 0, [] },
        { "edges/no-hops", BuiltIn, 0, [] },
        { "edges/part-mash", BuiltIn, 0, [] },
        // Honey by the jug is weighed by a guess, and says so.
        { "edges/salts-and-water", BuiltIn, 0, ["note amount.byVolume"] },
        // The shed has a bag and no tun; the other kit has one. 40 L through a 62 L kettle leaves little room for foam.
        { "edges/tun-batch", BuiltIn, 1, ["error kit.noTun"] },
        { "edges/tun-batch", "tun-and-kettle", 0, [] },
        { "edges/tun-continuous", BuiltIn, 1, ["error kit.noTun"] },
        { "edges/tun-continuous", "tun-and-kettle", 0, ["warning kettle.headspace"] },
        // The odd ones: why each says so, in tests/Gylebook.Forecast.Tests/Report/EdgeRecipesTests.cs.
        { "edges/all-honey", BuiltIn, 0, [] },
        { "edges/all-sugar", BuiltIn, 0, [] },
        { "edges/cold-mash", BuiltIn, 0, ["note gravity.thin", "warning mash.headspace"] },
        { "edges/dates", BuiltIn, 0, ["note fermenter.headspace"] },
        { "edges/dextrin-malt", BuiltIn, 0, ["warning mash.headspace"] },
        { "edges/fat-collapses", BuiltIn, 0, ["note fermenter.headspace", "note food.allergensRead", "note food.labelRead", "warning food.nameDiffers", "warning mash.headspace"] },
        { "edges/fruit-at-pitch", BuiltIn, 0, [] },
        { "edges/half-caramel", BuiltIn, 0, ["warning mash.headspace"] },
        { "edges/honey-in-bottle", BuiltIn, 1, ["error package.overpressure", "warning carbonation.differs"] },
        { "edges/hot-mash", BuiltIn, 0, ["warning mash.headspace"] },
        { "edges/maltose-in-bottle", BuiltIn, 0, [] },
        { "edges/many-dry-hops", BuiltIn, 0, [] },
        { "edges/minute-then-hot", BuiltIn, 0, ["warning mash.headspace"] },
        { "edges/one-minute-mash", BuiltIn, 0, ["note gravity.thin", "warning mash.headspace"] },
        { "edges/pear", BuiltIn, 0, ["warning food.noFigures"] },
        { "edges/raspberries", BuiltIn, 0, [] },
        { "edges/raw-pumpkin", BuiltIn, 0, [] },
        { "edges/raw-rice", BuiltIn, 0, [] },
        { "edges/raw-wheat", BuiltIn, 0, [] },
        { "edges/strike-misses", BuiltIn, 0, ["warning package.missed"] },
        { "edges/sugar-saison", BuiltIn, 0, ["warning yeast.temperature"] },
        { "edges/thick-mash", BuiltIn, 0, [] },
        { "edges/thinned", BuiltIn, 0, ["note fermenter.headspace", "note gravity.thin", "warning kettle.headspace"] },
        { "edges/thousand-ibu", BuiltIn, 0, ["note fermenter.headspace", "warning kettle.headspace", "warning mash.headspace"] },
        { "edges/told-attenuation", BuiltIn, 0, ["warning mash.headspace"] },
        { "edges/too-few-enzymes", BuiltIn, 0, ["note gravity.thin", "warning mash.enzyme", "warning mash.headspace"] },
        { "edges/yeast-tires", BuiltIn, 0, [] },
        { "edges/two-litres", BuiltIn, 0, [] },
        // That kit leaves three figures out, and each is said; its pot holds 15 L.
        { "edges/two-litres", "big-pot", 0, ["note default.taken", "note default.taken", "note default.taken"] },
        { "plain-bitter", "big-pot", 1, ["error fermenter.tooSmall", "error kettle.brim", "error mash.brim", "note default.taken", "note default.taken", "note default.taken"] },
        { "edges/very-strong", BuiltIn, 0, [] },
        { "edges/watery-fruit", BuiltIn, 0, [] },
    };

    [Fact]
    public void Every_sample_recipe_is_in_the_table() =>
        Assert.Equal(SampleFile.Recipes(), Expected.Select(row => row.Data.Item1).Distinct().Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Expected))]
    public void A_sample_forecasts_with_the_findings_its_purpose_has(string recipe, string kit, int exitCode, string[] codes)
    {
        Ran ran = Forecast(recipe, kit);
        Assert.Equal(("", exitCode), (ran.Errors, ran.ExitCode));
        Assert.Empty(PublishedSchema.Objections("forecast", ran.Output));
        using JsonDocument forecast = JsonDocument.Parse(ran.Output);
        Assert.Equal(codes, Findings(forecast).Order(StringComparer.Ordinal));
        Assert.Equal(Path.GetFileName(recipe), forecast.RootElement.GetProperty("seed").GetString());
    }

    /// <summary>Those that run on the kit at home, and fix no liquor by hand.</summary>
    public static TheoryData<string> Planned =>
        [.. SampleFile.Recipes().Where(name => !name.Contains("/tun-", StringComparison.Ordinal) && name is not ("edges/fixed-strike" or "edges/strike-misses"))];

    [Theory]
    [MemberData(nameof(Planned))]
    public void A_run_ends_with_the_beer_that_was_asked_for_and_closes(string recipe)
    {
        using JsonDocument forecast = JsonDocument.Parse(Forecast(recipe, BuiltIn).Output);
        JsonElement root = forecast.RootElement;
        Assert.InRange(root.GetProperty("balance").GetProperty("relativeError").GetDouble(), 0, 1e-12);
        // Printed to the millilitre.
        Assert.Equal(Wanted(recipe), root.GetProperty("headline").GetProperty("packagedLitres").GetProperty("likely").GetDouble(), 0.0005);
    }

    private static double Wanted(string recipe)
    {
        using JsonDocument file = JsonDocument.Parse(File.ReadAllText(SampleFile.Recipe(recipe)));
        string litres = file.RootElement.GetProperty("package").GetProperty("volume").GetString()!;
        return double.Parse(litres.Replace(" L", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>Both questions are asked of one run of the program.</summary>
    private static Ran Forecast(string recipe, string kit) =>
        Forecasts.GetOrAdd((recipe, kit), _ => WarmProgram.Run(["forecast", SampleFile.Recipe(recipe), .. KitOption(kit), "--json"]));

    private static string[] KitOption(string kit) => kit.Length == 0 ? [] : ["--kit", SampleFile.Kit(kit)];

    private static IEnumerable<string> Findings(JsonDocument forecast) =>
        forecast.RootElement.GetProperty("findings").EnumerateArray().Select(finding => $"{finding.GetProperty("severity").GetString()} {finding.GetProperty("code").GetString()}");
}
