using System.Text;
using CsCheck;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Tests;

/// <summary>A random recipe for a kit, and the strata it was drawn from.</summary>
internal sealed record Brew(string Name, Recipe Recipe, Kit Kit, IReadOnlyList<string> Strata);

/// <summary>
/// Random recipes that resolve against the tables, drawn by strata: how the wort is won, where the first food goes in and of
/// which family it is are dealt in turn, so that none is left to chance; the rest is drawn from a stream with a readable seed.
/// </summary>
internal static class RandomBrews
{
    /// <summary>How many are drawn: each of the 53 families is dealt 60 times or more.</summary>
    public const int Count = 2200;

    private static readonly AdditionPoint[] Points = Enum.GetValues<AdditionPoint>();

    private static readonly string[] Ways =
        ["bag poured", "bag dunked", "bag unrinsed", "tun unrinsed", "tun batch", "tun continuous", "part", "extract"];

    private static readonly FoodFamily[] Families = [.. FoodFamilies.All];

    private static readonly string[] SomeMalts = [.. Malts.All.Select(m => m.Id)];
    private static readonly string[] SomeHops = [.. HopCultivars.All.Select(h => h.Id)];
    private static readonly string[] SomeYeasts = [.. YeastStyles.All.Select(y => y.Id)];
    private static readonly string[] SomeSugars = [.. Sugars.All.Where(s => !s.Id.Contains("extract", StringComparison.Ordinal)).Select(s => s.Id)];

    private static readonly FoodMakeup Mystery = FoodMakeups.From(new FoodSheet
    {
        Id = "mystery-mix",
        Name = "mystery mix",
        Family = "other",
        Composition = new FoodComposition { Water = 10, Protein = 12, Fat = 8, Carbohydrate = 66, Source = "made up for the test" },
    }).Makeup!;

    /// <summary>Foods that lie beside the recipes: the one family the food table has no row of.</summary>
    public static Larder Foods { get; } = Larder.OfFoods(Mystery);

    /// <summary>All of them, the same ones every time.</summary>
    public static IReadOnlyList<Brew> All { get; } = [.. Enumerable.Range(0, Count).Select(Nth)];

    /// <summary>A stream of chance that a word stands for: FNV-1a of its UTF-8 bytes.</summary>
    public static PCG StreamOf(string seed)
    {
        ulong hash = 14695981039346656037;
        foreach (byte letter in Encoding.UTF8.GetBytes(seed))
        {
            hash = (hash ^ letter) * 1099511628211;
        }

        return new PCG(7, hash);
    }

    /// <summary>One draw of a generator from a stream.</summary>
    public static T Draw<T>(this Gen<T> gen, PCG stream) => gen.Generate(stream, null, out _);

    private static T Pick<T>(this T[] from, PCG stream) => from[Gen.Int[0, from.Length - 1].Draw(stream)];

    private static Brew Nth(int i)
    {
        string name = $"random brew {i}";
        PCG stream = StreamOf(name);
        string way = Ways[i % Ways.Length];
        double litres = Gen.Int[8, 30].Draw(stream);
        bool mashed = way != "extract";
        bool boiled = Chance(stream, 85);
        bool stood = Chance(stream, 50);
        bool split = Chance(stream, 25);
        bool crash = Chance(stream, 30);
        bool keg = Chance(stream, 50);
        bool hopped = Chance(stream, 85);
        bool fed = i % 11 != 10;
        Recipe skeleton = new()
        {
            Name = name,
            Package = new PackageWish(Typed.Litres(litres), keg ? "keg" : "bottle", Chance(stream, 80) ? Typed.Volumes(Gen.Int[15, 30].Draw(stream) / 10.0) : null),
            Mash = mashed ? MashOf(way, litres) : null,
            Liquor = Chance(stream, 10) && way != "part" ? new LiquorPlan(null, Typed.Litres(litres / 4)) : null,
            Boil = boiled ? new BoilPlan(Typed.Minutes(Gen.Int[15, 90].Draw(stream))) : null,
            Stand = stood ? Typed.Rest(80, 20) : null,
            Ferment = crash ? [Typed.Days(19, 14), Typed.Days(2, 3)] : [Typed.Days(20, 14)],
            Portions = split ? [new PortionShare("first", Typed.Share(0.4)), new PortionShare("second", Typed.Share(0.6))] : [],
            Ingredients = [],
        };

        List<string> strata = [way, boiled ? "boil" : "no boil", hopped ? "hops" : "no hops", fed ? "food" : "no food", split ? "split" : "whole", keg ? "keg" : "bottle", crash ? "crash" : "no crash"];
        List<IngredientLine> lines = [];
        AddExtractGivers(lines, way, litres, stream);
        if (hopped)
        {
            AddHops(lines, skeleton, litres, stream);
        }

        if (fed)
        {
            AddFoods(lines, strata, skeleton, litres, i, stream);
        }

        AddCellar(lines, skeleton, litres, stream);
        strata.AddRange(lines.Select(l => "at " + l.At.Point).Distinct());
        Kit kit = Kits.Whole with { Kettle = Kits.Whole.Kettle with { SolidsLeft = Typed.Share(Chance(stream, 50) ? 0.5 : 0) } };
        return new Brew(name, skeleton with { Ingredients = lines }, kit, strata);
    }

    private static bool Chance(PCG stream, int percent) => Gen.Int[0, 99].Draw(stream) < percent;

    private static MashPlan MashOf(string way, double litres)
    {
        (MashMethod method, SpargeMethod rinse) = way switch
        {
            "bag poured" => (MashMethod.Bag, SpargeMethod.Pour),
            "bag dunked" => (MashMethod.Bag, SpargeMethod.Dunk),
            "bag unrinsed" => (MashMethod.Bag, SpargeMethod.None),
            "tun unrinsed" => (MashMethod.Tun, SpargeMethod.None),
            "tun batch" => (MashMethod.Tun, SpargeMethod.Batch),
            "tun continuous" => (MashMethod.Tun, SpargeMethod.Continuous),
            _ => (MashMethod.Part, SpargeMethod.None),
        };
        SpargePlan sparge = rinse == SpargeMethod.None ? SpargePlan.None : new SpargePlan(rinse, Typed.Litres(litres / 4), null);
        return new MashPlan(method, [Typed.Rest(66, 60)], sparge);
    }

    private static void AddExtractGivers(List<IngredientLine> lines, string way, double litres, PCG stream)
    {
        if (way != "extract")
        {
            double kilograms = litres * Gen.Int[14, 24].Draw(stream) / 100.0 * (way == "part" ? 0.25 : 1);
            lines.Add(Typed.Malt("pale-ale-malt", kilograms * 0.8));
            lines.Add(Typed.Malt(SomeMalts.Pick(stream), kilograms * 0.2));
        }

        if (way is "extract" or "part")
        {
            lines.Add(Typed.Line(IngredientKind.Extract, "dry malt extract light", 0.1 * litres, AdditionPoint.CopperUp));
        }
    }

    private static void AddHops(List<IngredientLine> lines, Recipe recipe, double litres, PCG stream)
    {
        foreach (AdditionPoint point in new[] { AdditionPoint.CopperUp, AdditionPoint.Boil, AdditionPoint.KnockOut, AdditionPoint.Ferment })
        {
            if (Chance(stream, 50) && TimeOf(recipe, point, stream) is AdditionTime at)
            {
                IngredientLine hop = Typed.Line(IngredientKind.Hop, SomeHops.Pick(stream), litres * 0.0015, at.Point, at.Count);
                lines.Add(hop with { Form = Chance(stream, 40) ? IngredientForm.Whole : IngredientForm.Pellet });
            }
        }
    }

    private static void AddFoods(List<IngredientLine> lines, List<string> strata, Recipe recipe, double litres, int i, PCG stream)
    {
        for (int n = 0; n < 2; n++)
        {
            FoodFamily family = Families[((2 * i) + n) % Families.Length];
            string food = family.Id == "other"
                ? "mystery-mix"
                : FoodTable.All.Where(f => f.Family.Id == family.Id).Select(f => f.Id).ToArray().Pick(stream);
            double dose = (family.DoseTypical ?? 10) / 1000 * litres * Gen.Int[3, 15].Draw(stream) / 10.0;
            AdditionPoint wanted = Points[((2 * i) + n) / Ways.Length % Points.Length];
            AdditionTime at = TimeOf(recipe, wanted, stream) ?? new AdditionTime(AdditionPoint.KnockOut);
            IngredientLine line = Typed.Line(IngredientKind.Food, food, Math.Round(dose, 4), at.Point, at.Count);
            lines.Add(at.Point >= AdditionPoint.Pitch && recipe.Portions.Count > 0 && Chance(stream, 50) ? line with { Portion = "second" } : line);
            strata.Add("family " + family.Id);
        }
    }

    private static void AddCellar(List<IngredientLine> lines, Recipe recipe, double litres, PCG stream)
    {
        lines.Add(Typed.Line(IngredientKind.Yeast, SomeYeasts.Pick(stream), litres * 0.0006, AdditionPoint.Pitch));
        foreach (AdditionPoint point in Points.Where(p => p > AdditionPoint.Mash && Chance(stream, 15)))
        {
            if (TimeOf(recipe, point, stream) is AdditionTime at)
            {
                lines.Add(Typed.Line(IngredientKind.Sugar, SomeSugars.Pick(stream), litres * 0.004, at.Point, at.Count));
            }
        }
    }

    /// <summary>A time at that place, or null when the recipe has no such place.</summary>
    private static AdditionTime? TimeOf(Recipe recipe, AdditionPoint point, PCG stream) => point switch
    {
        AdditionPoint.Mash => recipe.Mash is null ? null : new(point),
        AdditionPoint.Boil => recipe.Boil is null ? null : new(point, Math.Floor(recipe.Boil.Time.Value.Minutes * Gen.Int[0, 4].Draw(stream) / 4.0)),
        AdditionPoint.Stand => recipe.Stand is null ? null : new(point, Gen.Int[0, 20].Draw(stream)),
        AdditionPoint.Ferment => new(point, Gen.Int[1, 12].Draw(stream)),
        _ => new(point),
    };
}
