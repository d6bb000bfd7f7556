using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Leaving;

/// <summary>The lines of a recipe, each in the list of the open standards that it belongs to.</summary>
internal sealed class LeavingLines
{
    private const string Lines = "ingredients";
    private readonly Recipe _recipe;
    private readonly Larder _larder;
    private readonly TravelList _travels;
    private readonly List<OpenFermentable> _fermentables = [];
    private readonly List<OpenHop> _hops = [];
    private readonly List<OpenCulture> _cultures = [];
    private readonly List<OpenMisc> _miscellaneous = [];

    /// <summary>Extract, kg, of the grain, and of what brings its own.</summary>
    private double _ofGrain, _ofOthers;

    public LeavingLines(Recipe recipe, Larder larder, TravelList travels) => (_recipe, _larder, _travels) = (recipe, larder, travels);

    /// <summary>The recipe with its lines.</summary>
    public OpenRecipe Into(OpenRecipe open)
    {
        for (int i = 0; i < _recipe.Ingredients.Count; i++)
        {
            Take(_recipe.Ingredients[i], Invariant($"{Lines}[{i}]"));
        }

        return open with { Fermentables = _fermentables, Hops = _hops, Cultures = _cultures, Miscellaneous = _miscellaneous };
    }

    /// <summary>Share of the grain's extract that reaches the fermenter; null where no grain brings any.</summary>
    public Fraction? Brewhouse(VolumeAt20C cast, SpecificGravity gravity)
    {
        const double WaterKilogramsPerLitre = 0.99820; // At 20 °C.
        double extract = cast.Litres * gravity.Ratio * WaterKilogramsPerLitre * SucroseSolution.PlatoAt(gravity.Ratio) / 100;
        double share = (extract - _ofOthers) / _ofGrain;
        return _ofGrain > 0 && share is > 0 and <= 1 ? Fraction.FromRatio(share) : null;
    }

    private void Take(IngredientLine line, string path)
    {
        LineInHand hand = _larder.Take(line, path, []);
        WhatStays(line, NameOf(line, hand), path);
        switch (line.Kind)
        {
            case IngredientKind.Malt:
                Malt(line, hand, path);
                break;
            case IngredientKind.Extract or IngredientKind.Sugar:
                Sugar(line, hand, path);
                break;
            case IngredientKind.Food when Food(line, hand) is { } food && FoodKinds.Fermentable(food) is { } type:
                Food(line, food, type, path);
                break;
            case IngredientKind.Hop:
                Hop(line, hand, path);
                break;
            case IngredientKind.Yeast:
                Yeast(line, hand, path);
                break;
            default:
                _miscellaneous.Add(Same(new OpenMisc { Type = FoodKinds.Miscellaneous(line.Kind, Food(line, hand)) }, line, NameOf(line, hand)));
                break;
        }
    }

    private void WhatStays(IngredientLine line, string name, string path)
    {
        Stays(line.Lot, "lot", "the file knows no lots");
        Stays(line.Share?.Text, "share", "of the grist holds; the weight stands as it is");
        Stays(line.Portion, "portion", "the whole cast gets it in this file");
        Stays(line.Age?.Text, "age", "the file takes it for fresh");
        Stays(line.Storage is null ? null : $"{line.Storage.Temperature}, {FileWords.HopPacks.Word(line.Storage.Pack)}", "storage", "how hops were kept");

        void Stays(string? value, string key, string why)
        {
            if (value is not null)
            {
                _travels.Leave($"{path}.{key}", $"{name}: {value}; {why}");
            }
        }
    }

    private void Malt(IngredientLine line, LineInHand hand, string path)
    {
        Malt? row = Malts.Find(hand.Line.Of).Match is { } table ? hand.Malt is { } own ? table.As(own, table.Name) : table : null;
        if (row is null)
        {
            Unknown(path, line, "malt");
        }
        else
        {
            _ofGrain += Kilograms(line.Amount) * row.ExtractFineDry.Ratio * (1 - row.Moisture.Ratio);
        }

        _fermentables.Add(Same(
            new OpenFermentable
            {
                Type = FermentableType.Grain,
                Group = row is null ? null : FoodKinds.Group(row),
                Yield = Percent(row?.ExtractFineDry.Percent ?? 0),
                Colour = line.Colour ?? Ebc(row?.Colour.Ebc ?? 0),
            },
            line, NameOf(line, hand)));
    }

    private void Sugar(IngredientLine line, LineInHand hand, string path)
    {
        Sugar? row = Sugars.Find(hand.Line.Of).Match;
        if (row is null)
        {
            Unknown(path, line, FileWords.Kinds.Word(line.Kind));
        }

        MaltColour? colour = hand.Line.Colour?.Value ?? row?.Colour;
        if (colour is null)
        {
            _travels.Default($"{path}.colour", $"{NameOf(line, hand)}: 0 EBC; its colour is not known here");
        }

        double share = row is null ? 0 : 1 - row.Water;
        _ofOthers += line.At.Point == AdditionPoint.Package ? 0 : Kilograms(line.Amount) * share;
        _fermentables.Add(Same(
            new OpenFermentable
            {
                Type = line.Kind == IngredientKind.Sugar ? FermentableType.Sugar : row?.Id.StartsWith("dry", StringComparison.Ordinal) == true ? FermentableType.DryExtract : FermentableType.Extract,
                Yield = Percent(100 * share),
                Colour = line.Colour ?? Ebc(colour?.Ebc ?? 0),
            },
            line, NameOf(line, hand)));
    }

    private void Food(IngredientLine line, FoodMakeup food, FermentableType type, string path)
    {
        double share = FoodKinds.Extract(food, line.At.Point == AdditionPoint.Mash);
        _ofOthers += line.At.Point == AdditionPoint.Package ? 0 : Kilograms(line.Amount) * share;
        _travels.Default($"{path}", $"{line.As ?? food.Name}: 0 EBC; the file wants a colour, and a food has none here");
        _travels.Leave($"{path}.food", $"{line.As ?? food.Name}: what it is made of, its allergens and its cautions; of all that only its extract travels");
        _fermentables.Add(Same(new OpenFermentable { Type = type, Yield = Percent(100 * share), Colour = Ebc(0) }, line, line.As ?? food.Name));
    }

    private void Hop(IngredientLine line, LineInHand hand, string path)
    {
        HopCultivar? row = HopCultivars.Find(hand.Line.Of).Match;
        if (row is null)
        {
            Unknown(path, line, "hop");
        }

        _hops.Add(Same(
            new OpenHop
            {
                Form = hand.Line.Form switch { IngredientForm.Whole => HopShape.Leaf, IngredientForm.Pellet => HopShape.Pellet, _ => null },
                Alpha = hand.Line.Alpha ?? (row is null ? Percent(0) : Percent(row.Alpha.Percent)),
            },
            line, NameOf(line, hand)));
    }

    private void Yeast(IngredientLine line, LineInHand hand, string path)
    {
        YeastStyle? row = YeastStyles.Find(hand.Line.Of).Match;
        double? cells = hand.Line.Cells?.Billions;
        if (cells is { } billions && billions != Math.Round(billions))
        {
            _travels.Convert($"{path}.cells", Invariant($"{billions:0.####} billion are written as {Math.Round(billions):0}: whole billions only"));
        }

        if (hand.Line.Form is null)
        {
            _travels.Default($"{path}.form", $"{NameOf(line, hand)}: dry; its form is not said");
        }

        _cultures.Add(Same(
            new OpenCulture
            {
                Type = FoodKinds.Culture(row),
                Form = hand.Line.Form switch { IngredientForm.Liquid => CultureForm.Liquid, IngredientForm.Slurry => CultureForm.Culture, _ => CultureForm.Dry },
                Attenuation = hand.Line.Attenuation,
                CellsBillions = cells is null ? null : Math.Round(cells.Value),
            },
            line, NameOf(line, hand)));
    }

    private static FoodMakeup? Food(IngredientLine line, LineInHand hand) => line.Kind is not (IngredientKind.Food or IngredientKind.Spice) ? null
        : hand.Food ?? (FoodTable.Find(hand.Line.Of).Match is { } row ? FoodMakeups.From(row).Makeup : null);

    private static T Same<T>(T thing, IngredientLine line, string name)
        where T : OpenThing => thing with
        {
            Name = name,
            ProductId = OpenProduct.Write(line.Kind, line.Of),
            Amount = new OpenAmount(line.Amount, null),
            Timing = LeavingTimes.Of(line.At),
        };

    private static string NameOf(IngredientLine line, LineInHand hand) => line.As ?? hand.Sheet?.Name ?? TableNames.Of(line.Kind, line.Of) ?? line.Of;

    private void Unknown(string path, IngredientLine line, string kind) =>
        _travels.Default(path, $"{line.Of}: the figures of a {kind} are written as 0; it is in neither larder nor tables");

    private static Entered<Fraction> Percent(double percent) => new(Fraction.FromPercent(percent), Invariant($"{percent:0.##} %"));

    private static Entered<MaltColour> Ebc(double ebc) => new(MaltColour.FromEbc(ebc), Invariant($"{ebc:0.##} EBC"));

    /// <summary>A litre of what is poured counts as a kilogram.</summary>
    private static double Kilograms(Amount amount) => amount.Mass?.Value.Kilograms ?? amount.Volume?.Value.Litres ?? 0;
}
