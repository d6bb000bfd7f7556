using System.Text;
using System.Xml.Linq;
using CsCheck;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.BeerXml;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving;
using Gylebook.Recipes.Larders;

namespace Gylebook.Recipes.Tests.Interchange.OpenFormats;

/// <summary>BeerXML 1.0, there and back again.</summary>
public sealed class BeerXmlTests
{
    /// <summary>Tags the standard requires of a record. From memory, as is the rest of the specification.</summary>
    private static readonly Dictionary<string, string[]> Required = new()
    {
        ["RECIPE"] = ["NAME", "VERSION", "TYPE", "STYLE", "BREWER", "BATCH_SIZE", "BOIL_SIZE", "BOIL_TIME", "HOPS", "FERMENTABLES", "MISCS", "YEASTS", "WATERS"],
        ["HOP"] = ["NAME", "VERSION", "ALPHA", "AMOUNT", "USE", "TIME"],
        ["FERMENTABLE"] = ["NAME", "VERSION", "TYPE", "AMOUNT", "YIELD", "COLOR"],
        ["YEAST"] = ["NAME", "VERSION", "TYPE", "FORM", "AMOUNT"],
        ["MISC"] = ["NAME", "VERSION", "TYPE", "USE", "TIME", "AMOUNT"],
        ["STYLE"] = ["NAME", "CATEGORY", "VERSION", "CATEGORY_NUMBER", "STYLE_LETTER", "STYLE_GUIDE", "TYPE", "OG_MIN", "OG_MAX", "FG_MIN", "FG_MAX", "IBU_MIN", "IBU_MAX", "COLOR_MIN", "COLOR_MAX"],
        ["MASH"] = ["NAME", "VERSION", "GRAIN_TEMP", "MASH_STEPS"],
        ["MASH_STEP"] = ["NAME", "VERSION", "TYPE", "STEP_TEMP", "STEP_TIME"],
    };

    [Fact]
    public void What_goes_out_has_every_required_tag_and_comes_back_with_its_numbers() => RandomRecipes.Any.Sample(
        recipe =>
        {
            (string text, IReadOnlyList<Travel> travels) = BeerXmlFile.Write(recipe, Larder.Empty);
            HasRequired(XDocument.Parse(text));
            Arrival arrival = BeerXmlFile.Read(Encoding.UTF8.GetBytes(text), new ArrivalWishes { CastOf = (read, _) => read.Package.Volume.Value });
            Recipe back = RecipeFile.Read(Assert.Single(arrival.Files, file => file.Form == RecipeFile.Form).Text).Value!;
            Same(recipe, back);
            AllTold(recipe, travels);
        },
        iter: 300);

    [Theory]
    [MemberData(nameof(Samples.Recipes), MemberType = typeof(Samples))]
    public void Every_sample_is_written_with_every_required_tag_and_can_be_read_again(string path)
    {
        string text = BeerXmlFile.Write(RecipeFile.Read(Samples.Text(path)).Value!, Larder.Empty).Text;
        HasRequired(XDocument.Parse(text));
        Assert.StartsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<RECIPES>", text, StringComparison.Ordinal);
        Assert.Single(BeerXmlFile.Read(Encoding.UTF8.GetBytes(text)).Files, file => file.Form == RecipeFile.Form);
    }

    private static void HasRequired(XDocument document)
    {
        foreach (XElement record in document.Descendants().Where(element => Required.ContainsKey(element.Name.LocalName)))
        {
            Assert.Empty(Required[record.Name.LocalName].Except(record.Elements().Select(tag => tag.Name.LocalName)));
            Assert.Empty(record.Attributes());
        }
    }

    /// <summary>What the format can hold: names, weights, alpha acids, rests, boil, and times where it has the place.</summary>
    private static void Same(Recipe recipe, Recipe back)
    {
        Assert.Equal(recipe.Name, back.Name);
        Assert.Equal(recipe.Notes, back.Notes);
        Close(recipe.Package.Volume.Value.Litres, back.Package.Volume.Value.Litres);
        Close(recipe.Package.Carbonation?.Value.Volumes, back.Package.Carbonation?.Value.Volumes);
        Close(recipe.Boil?.Time.Value.Minutes, back.Boil?.Time.Value.Minutes);
        Assert.Equal(recipe.Mash?.Rests.Count, back.Mash?.Rests.Count);
        Assert.Equal(recipe.Mash?.Method, back.Mash?.Method);
        Rests(recipe.Mash?.Rests ?? [], back.Mash?.Rests ?? []);
        Rests([.. recipe.Ferment.Take(3)], back.Ferment);
        Assert.Equal(recipe.Ingredients.Count, back.Ingredients.Count);
        IngredientLine[] lines = Sorted(recipe), read = Sorted(back);
        for (int i = 0; i < lines.Length; i++)
        {
            Assert.Equal((lines[i].Kind, lines[i].Of, lines[i].As), (read[i].Kind, read[i].Of, read[i].As));
            Close(lines[i].Amount.Mass?.Value.Kilograms, read[i].Amount.Mass?.Value.Kilograms);
            Close(lines[i].Amount.Volume?.Value.Litres, read[i].Amount.Volume?.Value.Litres);
            Close(lines[i].Attenuation?.Value.Percent, read[i].Attenuation?.Value.Percent);
            if (lines[i].Kind == IngredientKind.Hop)
            {
                Close(lines[i].Alpha?.Value.Percent ?? HopCultivars.Find(lines[i].Of).Match!.Alpha.Percent, read[i].Alpha?.Value.Percent ?? HopCultivars.Find(lines[i].Of).Match!.Alpha.Percent);
                Assert.Equal(lines[i].Form, read[i].Form);
                Assert.Equal(HopTime(lines[i].At, recipe), read[i].At);
            }
        }
    }

    /// <summary>A hop's place as the format has it: a stand is an addition at knock-out, and what goes in at the end of the beer is a dry hop of its last day.</summary>
    private static AdditionTime HopTime(AdditionTime at, Recipe recipe)
    {
        double days = recipe.Ferment.Take(3).Sum(rest => rest.Time.Value.Days);
        return at switch
        {
            { Point: AdditionPoint.Stand } or { Point: AdditionPoint.Boil, Count: 0 } => new(AdditionPoint.KnockOut),
            { Point: AdditionPoint.Rack or AdditionPoint.Package } => new(AdditionPoint.Ferment, days),
            { Point: AdditionPoint.Ferment, Count: 0 } => new(AdditionPoint.Pitch),
            _ => at,
        };
    }

    private static void AllTold(Recipe recipe, IReadOnlyList<Travel> travels)
    {
        HashSet<string> left = [.. travels.Where(travel => travel.Kind == TravelKind.Left).Select(travel => travel.Where)];
        Assert.Equal(recipe.Stand is not null, left.Contains("stand"));
        Assert.Equal(recipe.Souring is not null, left.Contains("souring"));
        Assert.Equal(recipe.Mash is { Sparge.Method: not SpargeMethod.None }, left.Contains("mash.sparge"));
        Assert.Contains("package", left);
    }

    private static IngredientLine[] Sorted(Recipe recipe) =>
        [.. recipe.Ingredients.OrderBy(line => line.Kind).ThenBy(line => line.Of, StringComparer.Ordinal).ThenBy(line => line.As, StringComparer.Ordinal)
            .ThenBy(line => line.Amount.Mass is null).ThenBy(line => Math.Round(line.Amount.Mass?.Value.Kilograms ?? line.Amount.Volume?.Value.Litres ?? 0, 9)).ThenBy(line => AdditionTimeText.Write(HopTime(line.At, recipe)), StringComparer.Ordinal)];

    private static void Rests(IReadOnlyList<Rest> rests, IReadOnlyList<Rest> read)
    {
        Assert.Equal(rests.Count, read.Count);
        foreach ((Rest rest, Rest back) in rests.Zip(read))
        {
            Close(rest.Temperature.Value.Celsius, back.Temperature.Value.Celsius);
            Close(rest.Time.Value.Minutes, back.Time.Value.Minutes);
        }
    }

    /// <summary>Twelve digits are written.</summary>
    private static void Close(double? expected, double? actual) =>
        Assert.True(expected is null == actual is null && Math.Abs((expected ?? 0) - (actual ?? 0)) <= 1e-9 * Math.Max(1, Math.Abs(expected ?? 0)), FormattableString.Invariant($"{expected} and {actual}"));
}
