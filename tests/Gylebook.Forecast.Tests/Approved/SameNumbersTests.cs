using System.Globalization;
using System.Text;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Approved;

/// <summary>
/// Every number of every sample, on every kit, with and without water, as the engine told it before it became a function of a draw.
/// An approved file, so it says only that nothing moved; what the numbers should be is held elsewhere, against published rows.
/// To approve anew: run with GYLEBOOK_APPROVE=1, and say in CHANGELOG what moved and why.
/// </summary>
public sealed class SameNumbersTests
{
    private const string Approved = "tests/Gylebook.Forecast.Tests/Approved/numbers.txt";

    [Fact]
    public void No_number_of_any_sample_moved()
    {
        string path = RepositoryFile.PathOf(Approved);
        string told = Everything();
        if (Environment.GetEnvironmentVariable("GYLEBOOK_APPROVE") == "1")
        {
            File.WriteAllText(path, told);
        }

        string[] before = File.ReadAllText(path).Split('\n'), now = told.Split('\n');
        List<string> moved = [.. before.Zip(now).Where(pair => pair.First != pair.Second).Take(20).Select(pair => $"{pair.First}  is now  {pair.Second}")];
        Assert.True(moved.Count == 0 && before.Length == now.Length, $"{before.Length} lines, now {now.Length}\n" + string.Join('\n', moved));
    }

    private static string Everything()
    {
        StringBuilder all = new();
        foreach (string file in Files("samples/recipes"))
        {
            Recipe recipe = RecipeFile.Read(File.ReadAllText(file)).Value!;
            string name = Path.GetFileNameWithoutExtension(file);
            foreach (string kitFile in Files("samples/kits"))
            {
                Kit kit = KitFile.Read(File.ReadAllText(kitFile)).Value!;
                foreach (string? water in (string?[])[null, .. Files("samples/water")])
                {
                    Tell(all, $"{name}/{Path.GetFileNameWithoutExtension(kitFile)}/{Path.GetFileNameWithoutExtension(water) ?? "none"}", recipe, kit, water);
                }
            }
        }

        return all.ToString();
    }

    private static IEnumerable<string> Files(string folder) => Directory
        .EnumerateFiles(RepositoryFile.PathOf(folder), "*.json", SearchOption.AllDirectories)
        .Where(file => !IsSheet(file))
        .Order(StringComparer.Ordinal);

    private static void Tell(StringBuilder all, string name, Recipe recipe, Kit kit, string? water)
    {
        WaterPlan? plan = water is null ? null : WaterFile.Read(File.ReadAllText(water)).Value;
        BrewForecast told = Forecaster.Forecast(recipe, kit, Beside, "approved", plan);
        List<double?> numbers = [];
        foreach (Headline headline in told.Headline)
        {
            numbers.AddRange([headline.Band?.Low, headline.Band?.Likely, headline.Band?.High]);
        }

        foreach (StageRow row in told.Stages)
        {
            numbers.AddRange([row.LitresAt20C, row.LitresWithSolids, row.LitresHot, row.TemperatureC, row.Gravity, row.SuspensionGravity, row.ExtractPlato, row.AlcoholByVolume, row.ColourSrm]);
        }

        numbers.AddRange(told.Losses.SelectMany(l => new double?[] { l.LitresAt20C, l.Kilograms, l.ExtractKg }));
        numbers.AddRange(told.Additions.SelectMany(a => new double?[] { a.Kilograms, a.LitresAt20C }));
        numbers.AddRange(told.ColourBy.Select(c => (double?)c.Srm));
        numbers.AddRange([told.Package?.Co2Volumes, told.Package?.RefermentableVolumes, told.Package?.PrimingSugarGrams, told.Package?.Keg?.GaugeBar]);
        numbers.AddRange([told.Pitch?.CellsNeededBillions, told.Pitch?.CellsBillions, told.Pitch?.CellsLowBillions, told.Pitch?.CellsHighBillions, told.Pitch?.OxygenMgPerL]);
        if (told.Ions is { } ions)
        {
            numbers.AddRange(new[] { ions.Mash, ions.Kettle }.SelectMany(place => place.OrderBy(pair => pair.Key).Select(pair => (double?)pair.Value)));
            numbers.AddRange(ions.Glass.OrderBy(pair => pair.Key).Select(pair => pair.Value).Append(ions.Phosphorus).SelectMany(band => new double?[] { band.Low, band.Likely, band.High }));
        }

        // One digest of the bits for a line, and the headline in digits so that a reader sees what moved.
        ulong digest = 14695981039346656037;
        foreach (double? number in numbers)
        {
            digest = (digest ^ (number is double value ? BitConverter.DoubleToUInt64Bits(value + 0.0) : 1)) * 1099511628211;
        }

        string headlines = string.Join(' ', told.Headline.Where(h => h.Band is not null).Select(h => h.Band!.Likely.ToString("R", CultureInfo.InvariantCulture)));
        string hops = string.Join(' ', told.BitternessBy.Select(b => b.Ibu.ToString("0.000000", CultureInfo.InvariantCulture) + "/" + b.OtherIbu.ToString("0.000000", CultureInfo.InvariantCulture)));
        all.Append(CultureInfo.InvariantCulture, $"{name}: {numbers.Count} numbers {digest:x16}; {headlines}; {hops}\n");
        all.Append(CultureInfo.InvariantCulture, $"  {string.Join(' ', told.Cautions.Select(c => c.Code))} | {string.Join(' ', told.Findings.Select(f => f.Code))}\n");
    }

    /// <summary>All sheets of the samples, foods and larder.</summary>
    private static readonly Larder Beside = new(Directory
        .EnumerateFiles(RepositoryFile.PathOf("samples"), "*.json", SearchOption.AllDirectories)
        .Where(IsSheet)
        .Order(StringComparer.Ordinal)
        .Select(Sheet));

    private static bool IsSheet(string file) => Path.GetFileName(Path.GetDirectoryName(file)) is "foods" or "larder";

    private static LarderSheet Sheet(string file)
    {
        using FileStream stream = File.OpenRead(file);
        return LarderFile.Read(stream).Value!;
    }
}
