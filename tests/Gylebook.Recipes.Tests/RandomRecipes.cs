using CsCheck;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;
using Gylebook.Science.Quantities;
using static Gylebook.Recipes.Tests.Typed;

namespace Gylebook.Recipes.Tests;

/// <summary>Random recipes that could be brewed: every one reads, writes and checks without an error.</summary>
/// <remarks>Names only, from the tables' plain trade names; what they stand for is the tables' business.</remarks>
public static class RandomRecipes
{
    private static readonly string[] Malts =
        ["pale ale malt", "pilsner malt", "munich malt", "wheat malt", "caramel malt", "chocolate malt", "roasted barley"];

    private static readonly string[] Extracts = ["dry malt extract light", "liquid malt extract light"];
    private static readonly string[] Sugars = ["white sugar", "dextrose monohydrate", "lactose monohydrate", "invert syrup"];
    private static readonly string[] Foods = ["honey", "apricots-raw", "strawberries-raw", "cocoa-nibs", "chestnuts-european-roasted"];
    private static readonly string[] Hops = ["Fuggle", "Golding", "Saaz", "Cascade", "Hallertau Mittelfrüh"];
    private static readonly string[] Spices = ["cardamom-ground", "coriander-seed", "ginger-ground"];
    private static readonly string[] Salts = ["gypsum", "calcium chloride dihydrate"];
    private static readonly string[] Finings = ["carrageenan", "gelatine"];
    private static readonly string[] Yeasts = ["English ale", "American ale", "lager", "saison", "low-alcohol"];

    /// <summary>Any recipe that could be brewed.</summary>
    public static Gen<Recipe> Any { get; } =
        from litres in Gen.Int[2, 60]
        from shape in Gen.Select(Gen.Int[0, 9], Gen.Bool, Gen.Bool, Gen.Bool)
        from skeleton in Skeleton(litres, shape.Item1 > 0, shape.Item2, shape.Item3, shape.Item4)
        from lines in Lines(skeleton, litres)
        select skeleton with { Ingredients = lines };

    private static Gen<Recipe> Skeleton(int litres, bool mashed, bool boiled, bool stood, bool parted) =>
        from name in Gen.OneOf("Hedgerow Brown", "Prüfbräu ½", "A \"quoted\" \\ beer", "x")
        from notes in Gen.OneOf(null, "Toasted seed, dark honey.", "Two lines:\nthe second; tab\t, emoji 🍺.")
        from carbonation in Gen.OneOf(Gen.Const((Entered<Carbonation>?)null), Tenths(10, 40).Select(Volumes).Select(v => (Entered<Carbonation>?)v))
        from mash in Mash(litres)
        from strike in Gen.Int[0, 3]
        from boil in Gen.Int[15, 120]
        from souring in Souring
        from stand in RestOf(70, 95, 10, 60, "min", 1)
        from ferment in RestOf(8, 30, 3, 30, "d", 1440).List[1, 3]
        from share in Gen.Int[10, 90]
        select new Recipe
        {
            Name = name,
            Notes = notes,
            Package = new PackageWish(Litres(litres), "bottle", carbonation),
            Mash = mashed ? mash : null,
            Liquor = strike == 0 ? new LiquorPlan(Litres(litres * 1.5), Litres(1)) : null,
            Souring = souring,
            Boil = boiled ? new BoilPlan(Minutes(boil)) : null,
            Stand = stood ? stand : null,
            Ferment = ferment,
            Portions = parted ? [new PortionShare("first", Percent(share)), new PortionShare("second", Percent(100 - share))] : [],
            Ingredients = [],
        };

    private static Gen<SouringPlan?> Souring { get; } =
        from isSoured in Gen.Int[0, 3]
        from culture in Gen.OneOf("lactobacillus", "Lactobacillus brevis", "yoghurt")
        from degrees in Gen.Int[25, 48]
        from ph in Gen.OneOf("3.3", "3,3", " 3.6", "4")
        select isSoured > 0 ? null : new SouringPlan(
            culture, Celsius(degrees),
            new PhTarget(double.Parse(ph.Replace(',', '.'), System.Globalization.CultureInfo.InvariantCulture), ph), Minutes(1440));

    private static Gen<MashPlan> Mash(int litres) =>
        from method in Gen.OneOf(MashMethod.Bag, MashMethod.Tun, MashMethod.Part)
        from rests in RestOf(60, 75, 20, 90, "min", 1).List[1, 3]
        from sparge in Gen.OneOf(Enum.GetValues<SpargeMethod>())
        select new MashPlan(method, rests, sparge == SpargeMethod.None
            ? SpargePlan.None
            : new SpargePlan(sparge, Litres(litres / 4.0), Celsius(77)));

    private static Gen<IReadOnlyList<IngredientLine>> Lines(Recipe recipe, int litres) =>
        from malts in Line(IngredientKind.Malt, Malts, Tenths(5, 20), 0.03 * litres, Gen.Const(new AdditionTime(AdditionPoint.Mash))).List[1, 4]
        from extracts in Line(IngredientKind.Extract, Extracts, Tenths(5, 20), 0.05 * litres, Times(recipe, AdditionPoint.CopperUp)).List[1, 2]
        from sugars in Line(IngredientKind.Sugar, Sugars, Tenths(1, 20), 0.01 * litres, Times(recipe, AdditionPoint.CopperUp)).List[0, 2]
        from foods in Line(IngredientKind.Food, Foods, Tenths(0, 20), 0.02 * litres, Times(recipe, AdditionPoint.CopperUp)).List[0, 2]
        from hops in Line(IngredientKind.Hop, Hops, Tenths(1, 20), 0.001 * litres, Times(recipe, AdditionPoint.CopperUp)).List[0, 4]
        from spices in Line(IngredientKind.Spice, Spices, Tenths(1, 20), 0.0001 * litres, Times(recipe, AdditionPoint.KnockOut)).List[0, 1]
        from yeasts in Line(IngredientKind.Yeast, Yeasts, Tenths(5, 15), 0.0005 * litres, Gen.Const(new AdditionTime(AdditionPoint.Pitch))).List[1, 1]
        from small in Small(recipe, litres)
        from portion in Gen.Int[0, 2]
        select (IReadOnlyList<IngredientLine>)
        [
            .. recipe.Mash is null ? extracts : malts, .. sugars, .. foods, .. hops, .. spices, .. small,
            .. yeasts.Concat(foods.Take(1).Where(_ => portion > 0 && recipe.Portions.Count > 0).Select(food => food with
            {
                At = new AdditionTime(AdditionPoint.Ferment, 2),
                Portion = recipe.Portions[portion - 1].Name,
            })),
        ];

    /// <summary>Salts, finings, and what is measured in a jug: acid, water, honey.</summary>
    private static Gen<IEnumerable<IngredientLine>> Small(Recipe recipe, int litres) =>
        from salts in Line(IngredientKind.Salt, Salts, Tenths(0, 20), 0.0003 * litres, Times(recipe, recipe.Mash is null ? AdditionPoint.CopperUp : AdditionPoint.Mash)).List[0, 2]
        from finings in Line(IngredientKind.Fining, Finings, Tenths(1, 20), 0.00005 * litres, Times(recipe, AdditionPoint.CopperUp)).List[0, 1]
        from acids in Line(IngredientKind.Acid, ["lactic acid 88 %"], Tenths(0, 20), 0.0001 * litres, Times(recipe, AdditionPoint.CopperUp)).List[0, 1]
        from waters in Line(IngredientKind.Water, ["liquor"], Tenths(0, 20), 0.05 * litres, Times(recipe, AdditionPoint.CopperUp)).List[0, 1]
        from honeys in Line(IngredientKind.Food, ["honey"], Tenths(0, 20), 0.01 * litres, Times(recipe, AdditionPoint.CopperUp)).List[0, 1]
        select salts.Concat(finings).Concat(acids.Concat(waters).Concat(honeys).Select(InAJug));

    private static IngredientLine InAJug(IngredientLine line) =>
        line with { Amount = new Amount(null, Millilitres(line.Amount.Mass!.Value.Value.Grams)) };

    /// <summary>Any time of addition from a place on that this recipe reaches.</summary>
    private static Gen<AdditionTime> Times(Recipe recipe, AdditionPoint earliest) =>
        from point in Gen.OneOf([.. Enum.GetValues<AdditionPoint>().Where(point => point >= earliest && Reaches(recipe, point))])
        from share in Gen.Int[0, 4]
        select new AdditionTime(point, Math.Floor(share / 4.0 * (point switch
        {
            AdditionPoint.Boil => recipe.Boil!.Time.Value.Minutes,
            AdditionPoint.Stand => recipe.Stand!.Time.Value.Minutes,
            AdditionPoint.Ferment => recipe.Ferment.Sum(rest => rest.Time.Value.Days),
            _ => 0,
        })));

    private static bool Reaches(Recipe recipe, AdditionPoint point) => point switch
    {
        AdditionPoint.Boil => recipe.Boil is not null,
        AdditionPoint.Stand => recipe.Stand is not null,
        _ => true,
    };

    private static Gen<IngredientLine> Line(IngredientKind kind, string[] names, Gen<double> times, double kilograms, Gen<AdditionTime> at) =>
        from name in Gen.OneOf(names)
        from factor in times
        from when in at
        from extra in Gen.Int[0, 2]
        select new IngredientLine
        {
            Kind = kind,
            Of = name,
            As = extra == 1 ? $"My {name}" : null,
            Amount = new Amount(extra == 0 ? Grams(factor * kilograms * 1000) : Kilograms(factor * kilograms), null),
            At = when,
            Alpha = kind == IngredientKind.Hop && extra > 0 ? Percent(4 + extra) : null,
            Form = kind switch
            {
                IngredientKind.Hop => extra == 0 ? IngredientForm.Whole : IngredientForm.Pellet,
                IngredientKind.Yeast => extra == 0 ? IngredientForm.Liquid : extra == 1 ? IngredientForm.Dry : IngredientForm.Slurry,
                _ => null,
            },
            Age = kind is IngredientKind.Hop or IngredientKind.Yeast && extra == 2 ? new Entered<Duration>(Duration.FromDays(90), "90 d") : null,
            Storage = kind == IngredientKind.Hop && extra == 2 ? new HopStorage(Celsius(4), HopPack.Airless, factor > 1 ? Percent(35) : null) : null,
            Cells = kind == IngredientKind.Yeast && extra == 0 ? new CellCount(100, "100 billion") : null,
            Attenuation = kind == IngredientKind.Yeast && extra > 0 ? Percent(70 + extra) : null,
            Colour = kind == IngredientKind.Malt && extra == 2 ? new Entered<MaltColour>(MaltColour.FromEbc(120), "120 EBC") : null,
        };

    private static Gen<Rest> RestOf(int cool, int warm, int shortest, int longest, string unit, double minutes) =>
        from temperature in Gen.Int[cool, warm]
        from time in Gen.Int[shortest, longest]
        select new Rest(Celsius(temperature), new Entered<Duration>(Duration.FromMinutes(time * minutes), $"{time} {unit}"));

    private static Gen<double> Tenths(int low, int high) => Gen.Int[low, high].Select(tenths => tenths / 10.0);
}
