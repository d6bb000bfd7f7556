using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving.Things;

/// <summary>A food from elsewhere: one of the tables, or a sheet that says no more than the file did.</summary>
internal sealed class LandedFoods(Landing landing)
{
    /// <summary>What a line of it names.</summary>
    public string Line(OpenFermentable theirs, string name)
    {
        string? known = Known(name) ?? (theirs.Type == FermentableType.Honey ? Known("honey") : null);
        if (known is null)
        {
            return Sheet(theirs, name);
        }

        LandedAmounts.Leave(landing.Travels, theirs.Path, ("yield", theirs.Yield?.Text ?? theirs.Potential?.Text), ("color", IsNothing(theirs.Colour) ? null : theirs.Colour?.Text), ("moisture", theirs.Moisture?.Text), ("notes", theirs.Notes));
        return known;
    }

    /// <summary>What a line of anything else names.</summary>
    public string Line(OpenMisc theirs, string name)
    {
        if (Known(name) is not { } known)
        {
            return Sheet(theirs, name);
        }

        LandedAmounts.Leave(landing.Travels, theirs.Path, ("notes", theirs.Notes));
        return known;
    }

    /// <summary>A sheet of a food that brings extract: what it yields counts as sugars, and its water as what the file says.</summary>
    public string Sheet(OpenFermentable theirs, string name, string? id = null)
    {
        string family = FoodKinds.Family(theirs.Type) ?? "other";
        Entered<Fraction>? extract = theirs.Yield ?? LandedAmounts.OfPotential(theirs, landing.Travels);
        FoodComposition? stated = extract is null && theirs.Moisture is null ? null : new FoodComposition
        {
            Sugars = extract?.Value.Percent,
            Water = theirs.Moisture?.Value.Percent,
            Source = $"the file it came in: extract {extract?.Text ?? "not said"}, taken as sugars",
        };
        if (extract is not null)
        {
            landing.Travels.Convert($"{theirs.Path}.yield", $"{name}: {extract} of extract counts as that much sugar; a label says what it is made of");
        }

        if (!IsNothing(theirs.Colour))
        {
            LandedAmounts.Leave(landing.Travels, theirs.Path, ("color", theirs.Colour?.Text));
        }

        return Take(theirs, name, family, stated, id);
    }

    /// <summary>A sheet of anything else: nothing of it is known but what it is called.</summary>
    public string Sheet(OpenMisc theirs, string name, string? id = null) => Take(theirs, name, FoodKinds.Family(theirs.Type), null, id);

    private string Take(OpenThing theirs, string name, string family, FoodComposition? stated, string? id)
    {
        string of = FoodFamilies.Of(family).Name;
        landing.Travels.Default($"{theirs.Path}.name", $"\"{name}\" is a food that the tables have not; what the file does not say is borrowed from \"{of}\": open its sheet and type its label");
        LandedAmounts.Leave(landing.Travels, theirs.Path, ("notes", theirs.Notes));
        return landing.Take(
            new FoodSheet
            {
                Id = id ?? OpenNames.Id(name, "food"),
                Name = name,
                Family = of,
                Composition = stated,
                Lots = LandedAmounts.Lots<FoodComposition>(theirs, mayBePoured: true, landing.Travels),
            },
            theirs.Path);
    }

    private static string? Known(string name) => FoodTable.Find(name).Match?.Id;

    private static bool IsNothing(Entered<MaltColour>? colour) => colour is null or { Value.Ebc: 0 };
}
