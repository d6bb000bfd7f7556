using Gylebook.Recipes.Checks;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving.Things;

/// <summary>A hop from elsewhere: a cultivar of the tables, or a sheet.</summary>
internal sealed class LandedHops(Landing landing)
{
    private static readonly string[] Fillers = ["hops", "hop", "pellets", "pellet", "leaf", "whole"];

    /// <summary>What a line of it names.</summary>
    public string Line(OpenHop theirs, string name)
    {
        LandedAmounts.Leave(landing.Travels, theirs.Path, ("product_id", theirs.ProductId));
        if (Known(name) is not { } row)
        {
            return Sheet(theirs, name);
        }

        LandedAmounts.Leave(landing.Travels, theirs.Path, ("beta_acid", IsNothing(theirs.Beta) ? null : theirs.Beta?.Text), ("percent_lost", theirs.Lost?.Text), ("notes", theirs.Notes));
        return row.Name;
    }

    /// <summary>A sheet of it.</summary>
    public string Sheet(OpenHop theirs, string name, string? id = null)
    {
        HopCultivar? known = Known(name);
        HopCultivar like = known ?? HopCultivars.All.MinBy(row => Math.Abs(row.Alpha.Percent - (theirs.Alpha?.Value.Percent ?? 0)))!;
        if (known is null)
        {
            landing.Travels.Default($"{theirs.Path}.name", $"\"{name}\" is not in the tables; taken to be like {like.Name}, the nearest in alpha acids, in all that the file does not say");
        }

        string wanted = id ?? SheetNames.Free(OpenNames.Id(name, "hop"));
        return landing.Take(
            new HopSheet
            {
                Id = wanted,
                Name = id is null ? SheetNames.Beside(name, HopCultivars.Find(name).Match is not null) : name,
                Like = like.Name,
                Notes = theirs.Notes,
                Figures = new HopFigures { Alpha = Alpha(theirs), Beta = theirs.Beta, Lost = Lost(theirs), Form = Form(theirs) },
                Lots = LandedAmounts.Lots<HopFigures>(theirs, mayBePoured: false, landing.Travels),
            },
            theirs.Path);
    }

    /// <summary>Whole or pellet; null when it is neither.</summary>
    public IngredientForm? Form(OpenHop theirs)
    {
        switch (theirs.Form)
        {
            case HopShape.Pellet:
                return IngredientForm.Pellet;
            case HopShape.Leaf:
                return IngredientForm.Whole;
            case HopShape.WetLeaf or HopShape.Plug:
                landing.Travels.Convert($"{theirs.Path}.form", theirs.Form == HopShape.Plug ? "plugs count as whole hops" : "fresh hops count as whole ones, which are dried: weigh about a fifth; common practice, no source");
                return IngredientForm.Whole;
            case null:
                return null;
            default:
                landing.Travels.Leave($"{theirs.Path}.form", $"{theirs.Form.ToString()!.ToLowerInvariant()}; hops are whole or pellets here");
                return null;
        }
    }

    /// <summary>Alpha acids that a hop can have.</summary>
    private Entered<Fraction>? Alpha(OpenHop theirs)
    {
        if (theirs.Alpha is not { } alpha || alpha.Value.Percent is > 0 and <= AdditionCheck.MostAlphaPercent)
        {
            return theirs.Alpha;
        }

        landing.Travels.Leave($"{theirs.Path}.alpha_acid", Invariant($"{alpha}; must be above 0 % and at most {AdditionCheck.MostAlphaPercent} %"));
        return null;
    }

    private Entered<Fraction>? Lost(OpenHop theirs)
    {
        if (theirs.Lost is not { } lost || lost.Value.Percent <= AgeCheck.MostLostPercent)
        {
            return theirs.Lost;
        }

        landing.Travels.Leave($"{theirs.Path}.percent_lost", Invariant($"{lost}; must be at most {AgeCheck.MostLostPercent} %"));
        return null;
    }

    private static bool IsNothing(Entered<Fraction>? share) => share is { Value.Ratio: 0 };

    /// <summary>The cultivar a name means, also with a country in brackets or a word too many.</summary>
    private static HopCultivar? Known(string name)
    {
        int bracket = name.IndexOf('(', StringComparison.Ordinal);
        string bare = (bracket > 0 ? name[..bracket] : name).Trim();
        string fewer = string.Join(' ', bare.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(word => !Fillers.Contains(word, StringComparer.OrdinalIgnoreCase)));
        return HopCultivars.Find(name).Match ?? (bare.Length > 0 ? HopCultivars.Find(bare).Match : null) ?? (fewer.Length > 0 ? HopCultivars.Find(fewer).Match : null);
    }
}
