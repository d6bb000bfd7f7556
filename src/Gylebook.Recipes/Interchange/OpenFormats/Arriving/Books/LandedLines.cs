using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving.Things;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving.Books;

/// <summary>The ingredients of a recipe from elsewhere as lines of ours.</summary>
internal sealed class LandedLines(Landing landing, OpenRecipe recipe)
{
    private readonly LandedMalts _malts = new(landing);
    private readonly LandedFoods _foods = new(landing);
    private readonly LandedShelf _shelf = new(landing);
    private readonly LandedYeasts _yeasts = new(landing);
    private readonly LandedHops _hops = new(landing);

    /// <summary>All of them.</summary>
    public IReadOnlyList<IngredientLine> All() =>
    [
        .. recipe.Fermentables.Select(Fermentable), .. recipe.Hops.Select(Hop), .. recipe.Miscellaneous.Select(Misc),
        .. recipe.Cultures.Select(Culture).OfType<IngredientLine>(),
    ];

    private IngredientLine Fermentable(OpenFermentable theirs)
    {
        string name = Name(theirs, "fermentable");
        if (OpenProduct.Read(theirs.ProductId) is { } ours)
        {
            return Ours(theirs, ours.Kind, ours.Of, name);
        }

        IngredientKind kind = theirs.Type switch
        {
            FermentableType.DryExtract or FermentableType.Extract => IngredientKind.Extract,
            FermentableType.Sugar => IngredientKind.Sugar,
            FermentableType.Fruit or FermentableType.Juice or FermentableType.Honey or FermentableType.Other => IngredientKind.Food,
            _ => IngredientKind.Malt,
        };
        LandedAmounts.Leave(landing.Travels, theirs.Path, ("product_id", theirs.ProductId));
        (string of, Entered<MaltColour>? colour) = kind switch
        {
            IngredientKind.Malt => _malts.Line(theirs, name),
            IngredientKind.Extract => (_shelf.Extract(theirs, name), theirs.Colour),
            IngredientKind.Sugar => (_shelf.Sugar(theirs, name), theirs.Colour),
            _ => (_foods.Line(theirs, name), null),
        };
        AdditionTime otherwise = new(kind == IngredientKind.Malt ? AdditionPoint.Mash : theirs.IsAddedAfterBoil == true ? AdditionPoint.Pitch : AdditionPoint.CopperUp);
        return Line(theirs, kind, of, name, otherwise) with { Colour = colour };
    }

    private IngredientLine Hop(OpenHop theirs)
    {
        string name = Name(theirs, "hop");
        bool isOurs = OpenProduct.Read(theirs.ProductId) is { Kind: IngredientKind.Hop };
        IngredientLine line = isOurs ? Ours(theirs, IngredientKind.Hop, OpenProduct.Read(theirs.ProductId)!.Value.Of, name)
            : Line(theirs, IngredientKind.Hop, _hops.Line(theirs, name), name, new(AdditionPoint.Boil, recipe.BoilTime?.Value.Minutes ?? 0));
        bool isUsual = HopCultivars.Find(line.Of).Match is { } row && theirs.Alpha is { } alpha && Math.Abs(alpha.Value.Percent - row.Alpha.Percent) < 0.005;
        return line with { Alpha = isOurs && isUsual ? null : theirs.Alpha, Form = _hops.Form(theirs) };
    }

    private IngredientLine Misc(OpenMisc theirs)
    {
        string name = Name(theirs, "ingredient");
        if (OpenProduct.Read(theirs.ProductId) is { } ours)
        {
            return Ours(theirs, ours.Kind, ours.Of, name);
        }

        LandedAmounts.Leave(landing.Travels, theirs.Path, ("product_id", theirs.ProductId));
        (IngredientKind kind, string of) = _shelf.Find(theirs, name) ?? (IngredientKind.Food, _foods.Line(theirs, name));
        return Line(theirs, kind, of, name, kind switch
        {
            IngredientKind.Salt or IngredientKind.Acid => new(recipe.Mash is null ? AdditionPoint.CopperUp : AdditionPoint.Mash),
            _ => new(AdditionPoint.KnockOut),
        });
    }

    private IngredientLine? Culture(OpenCulture theirs)
    {
        string name = Name(theirs, "yeast");
        (IngredientKind Kind, string Of)? ours = OpenProduct.Read(theirs.ProductId);
        string? of = ours is { Kind: IngredientKind.Yeast } ? ours.Value.Of : _yeasts.Line(theirs, name);
        if (of is null)
        {
            return null;
        }

        AdditionTime otherwise = new(theirs.IsAddedToSecondary == true ? AdditionPoint.Rack : AdditionPoint.Pitch);
        IngredientLine line = ours is not null ? Ours(theirs, IngredientKind.Yeast, of, name) : Line(theirs, IngredientKind.Yeast, of, name, otherwise);
        return line with { Form = _yeasts.Form(theirs), Attenuation = _yeasts.Attenuation(theirs), Cells = _yeasts.Cells(theirs) };
    }

    /// <summary>A line of a file of ours: it says itself what it is of.</summary>
    private IngredientLine Ours(OpenThing theirs, IngredientKind kind, string of, string name)
    {
        string? plain = TableNames.Of(kind, of);
        if (plain is null && kind is not IngredientKind.Water && NeededSheet(theirs, kind, of, name))
        {
            plain = name;
        }

        Entered<MaltColour>? colour = theirs is OpenFermentable { Colour: { } stated } && kind is IngredientKind.Malt or IngredientKind.Extract or IngredientKind.Sugar ? ((OpenFermentable)theirs).Colour : null;
        IngredientLine line = Line(theirs, kind, of, name, new(AdditionPoint.KnockOut));
        return line with { As = name == (plain ?? of) ? null : name, Colour = IsOfTable(kind, of, colour) ? null : colour };
    }

    /// <summary>Makes the sheet that a line of ours names and the tables have not; the book that wrote it has its own, which stays.</summary>
    private bool NeededSheet(OpenThing theirs, IngredientKind kind, string of, string name)
    {
        string id = OpenNames.Id(of, "sheet");
        if (id != of)
        {
            return false;
        }

        switch (kind, theirs)
        {
            case (IngredientKind.Malt, OpenFermentable malt):
                _malts.Sheet(malt, name, id: id);
                return true;
            case (IngredientKind.Food or IngredientKind.Spice, OpenFermentable food):
                _foods.Sheet(food, name, id);
                return true;
            case (IngredientKind.Food or IngredientKind.Spice, OpenMisc food):
                _foods.Sheet(food, name, id);
                return true;
            case (IngredientKind.Hop, OpenHop hop):
                _hops.Sheet(hop, name, id);
                return true;
            case (IngredientKind.Yeast, OpenCulture yeast):
                _yeasts.Sheet(yeast, name, id);
                return true;
            default:
                return false;
        }
    }

    private static bool IsOfTable(IngredientKind kind, string of, Entered<MaltColour>? colour)
    {
        MaltColour? row = kind == IngredientKind.Malt ? Malts.Find(of).Match?.Colour : Sugars.Find(of).Match?.Colour;
        return colour is not null && Math.Abs(colour.Value.Value.Ebc - (row?.Ebc ?? 0)) < 0.005;
    }

    private IngredientLine Line(OpenThing theirs, IngredientKind kind, string of, string name, AdditionTime otherwise)
    {
        (Amount amount, string told) = LandedAmounts.Of(theirs, kind, name, landing.Travels);
        bool isCalledSo = told == of || told == TableNames.Of(kind, of) || told == landing.NameOf(of);
        return new IngredientLine
        {
            Kind = kind,
            Of = of,
            As = isCalledSo ? null : told,
            Amount = amount,
            At = LandedTimes.Of(theirs, otherwise, recipe, landing.Travels),
        };
    }

    private string Name(OpenThing theirs, string otherwise) => OpenNames.Of(theirs.Name, otherwise, $"{theirs.Path}.name", landing.Travels);
}
