using System.Text;
using CsCheck;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.BeerJson;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving;
using Gylebook.Recipes.Larders;

namespace Gylebook.Recipes.Tests.Interchange.OpenFormats;

/// <summary>BeerJSON 1.0: the project's own schema and examples, and there and back again.</summary>
public sealed class BeerJsonTests
{
    public static TheoryData<string> Examples() => [.. BeerJsonSchema.Examples.Select(path => Path.GetFileName(path)!)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_of_the_project_imports(string name)
    {
        string path = BeerJsonSchema.Examples.Single(path => Path.GetFileName(path) == name);
        Assert.Empty(BeerJsonSchema.Objections(File.ReadAllText(path)));
        Arrival arrival = BeerJsonFile.Read(File.ReadAllBytes(path));
        Assert.True(arrival.IsRead, string.Join('\n', arrival.Findings));
        Assert.All(arrival.Files, file => Assert.True(FileInHand.Read(Encoding.UTF8.GetBytes(file.Text)).IsReadable, $"{file.Name}\n{file.Text}\n{string.Join('\n', file.Findings)}"));
        // What holds nothing that has a file here tells so.
        Assert.True(arrival.Files.Count > 0 || arrival.Travels.Count > 0 || name == "beer.json");
    }

    [Theory]
    [MemberData(nameof(Samples.Recipes), MemberType = typeof(Samples))]
    public void Every_sample_is_written_as_the_schema_wants_and_can_be_read_again(string path)
    {
        Recipe recipe = RecipeFile.Read(Samples.Text(path)).Value!;
        string text = BeerJsonFile.Write(recipe, Larder.Empty).Text;
        Assert.Empty(BeerJsonSchema.Objections(text));
        Arrival arrival = BeerJsonFile.Read(Encoding.UTF8.GetBytes(text));
        Assert.Single(arrival.Files, file => file.Form == RecipeFile.Form);
    }

    [Fact]
    public void What_goes_out_comes_back_but_for_what_was_told() => RandomRecipes.Any.Sample(
        recipe =>
        {
            (string text, IReadOnlyList<Travel> travels) = BeerJsonFile.Write(recipe, Larder.Empty);
            Assert.Empty(BeerJsonSchema.Objections(text));
            Arrival arrival = BeerJsonFile.Read(Encoding.UTF8.GetBytes(text));
            Recipe back = RecipeFile.Read(Assert.Single(arrival.Files, file => file.Form == RecipeFile.Form).Text).Value!;
            Assert.Equal(RecipeFile.Write(Kept(recipe)), RecipeFile.Write(Kept(back)));
            AllTold(recipe, travels);
        },
        iter: 500);

    /// <summary>The recipe as the format can hold it, its lines in the order of the format's lists.</summary>
    private static Recipe Kept(Recipe recipe) => recipe with
    {
        Hold = null,
        // A bare number there: "4.0 volumes" are "4 volumes".
        Package = recipe.Package with { Carbonation = recipe.Package.Carbonation is { } gas ? Typed.Volumes(gas.Value.Volumes) : null },
        Liquor = recipe.Mash is not null && recipe.Liquor?.Strike is { } strike ? new LiquorPlan(strike, null) : null,
        Portions = [],
        Souring = recipe.Souring is { } souring ? souring with { Ph = new PhTarget(souring.Ph.Value, FormattableString.Invariant($"{souring.Ph.Value}")) } : null,
        Ingredients = [.. recipe.Ingredients.Select(Kept).OrderBy(line => line.Kind).ThenBy(line => line.Of, StringComparer.Ordinal).ThenBy(line => line.Amount.Text, StringComparer.Ordinal).ThenBy(line => AdditionTimeText.Write(line.At), StringComparer.Ordinal)],
    };

    private static IngredientLine Kept(IngredientLine line) => line with
    {
        Lot = null,
        Share = null,
        Portion = null,
        Age = null,
        Storage = null,
        // What the table says all the same need not be said: it counts as it did.
        Alpha = line.Kind == IngredientKind.Hop && line.Alpha?.Value.Percent == HopCultivars.Find(line.Of).Match?.Alpha.Percent ? null : line.Alpha,
        Colour = line.Kind == IngredientKind.Malt && line.Colour?.Value.Ebc == Malts.Find(line.Of).Match?.Colour.Ebc ? null : line.Colour,
        // The moment is the same.
        At = line.At is { Point: AdditionPoint.Boil, Count: 0 } ? new AdditionTime(AdditionPoint.KnockOut) : line.At,
    };

    /// <summary>Whatever was taken away above must have been told.</summary>
    private static void AllTold(Recipe recipe, IReadOnlyList<Travel> travels)
    {
        HashSet<string> left = [.. travels.Where(travel => travel.Kind == TravelKind.Left).Select(travel => travel.Where)];
        Assert.Equal(recipe.Portions.Count, travels.Count(travel => travel.Where == "portions"));
        Assert.Equal(recipe.Liquor?.TopUp is not null, left.Contains("liquor.topUp"));
        Assert.Equal(recipe.Liquor?.Strike is not null && recipe.Mash is null, left.Contains("liquor.strike"));
        for (int i = 0; i < recipe.Ingredients.Count; i++)
        {
            IngredientLine line = recipe.Ingredients[i];
            Assert.Equal(line.Age is not null, left.Contains(FormattableString.Invariant($"ingredients[{i}].age")));
            Assert.Equal(line.Storage is not null, left.Contains(FormattableString.Invariant($"ingredients[{i}].storage")));
            Assert.Equal(line.Portion is not null, left.Contains(FormattableString.Invariant($"ingredients[{i}].portion")));
        }
    }
}
