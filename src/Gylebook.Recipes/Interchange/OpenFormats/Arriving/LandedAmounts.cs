using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Lots;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving;

/// <summary>Amounts from elsewhere as lines of ours have them.</summary>
internal static class LandedAmounts
{
    /// <summary>A pack of dry and of liquid yeast. Common practice, no source.</summary>
    private const double DryPackGrams = 11, LiquidPackMillilitres = 100;

    /// <summary>Points of gravity, at a pound in a US gallon of wort, of a thing that dissolves wholly: sucrose. From memory, common practice.</summary>
    private const double SucrosePoints = 46.2;

    private static readonly Amount Nothing = new(new Entered<Mass>(Mass.FromGrams(0), "0 g"), null);

    /// <summary>The amount of a line, and a name that keeps what no scale shows.</summary>
    public static (Amount Amount, string Name) Of(OpenThing from, IngredientKind kind, string name, TravelList travels)
    {
        string path = $"{from.Path}.amount";
        switch (from.Amount)
        {
            case null:
                travels.Default(path, $"{name}: 0 g; the file says no amount that can be read");
                return (Nothing, name);
            case { Weighed: { } weighed }:
                return (Weighed(weighed, kind, name, path, travels), name);
            case { Count: { } count } when kind == IngredientKind.Yeast:
                return (Packs(count, (from as OpenCulture)?.Form, path, travels), name);
            case { Count: var count }:
                travels.Leave(path, Invariant($"{name}: {count:0.###} of it; nobody knows what they weigh. It stands as 0 g and keeps the number in its name: weigh it"));
                string told = Invariant($"{name}, {count:0.###} of it");
                return (Nothing, OpenNames.IsName(told) ? told : name);
        }
    }

    /// <summary>The lots a record says to be at hand.</summary>
    public static IReadOnlyList<Lot<TFigures>> Lots<TFigures>(OpenThing from, bool mayBePoured, TravelList travels)
        where TFigures : class
    {
        if (from.Inventory is not { } amount)
        {
            return [];
        }

        if (amount.Weighed is not { IsNothing: false } weighed || (!mayBePoured && weighed.Mass is null))
        {
            travels.Leave($"{from.Path}.inventory", $"{amount.Weighed?.Text ?? Invariant($"{amount.Count:0.###}")}; a lot of this is weighed, and more than nothing");
            return [];
        }

        return [new Lot<TFigures> { Name = "from the file", Amount = weighed }];
    }

    /// <summary>Extract from the gravity of a pound in a US gallon, where a file states that alone.</summary>
    public static Entered<Fraction>? OfPotential(OpenFermentable from, TravelList travels)
    {
        if (from.Potential is not { } potential)
        {
            return null;
        }

        double percent = (potential.Value.Ratio - 1) * 1000 / SucrosePoints * 100;
        if (percent is < 0 or > 100)
        {
            travels.Leave($"{from.Path}.yield.potential", Invariant($"{potential}; nothing gives {percent:0} % of its weight as extract"));
            return null;
        }

        Entered<Fraction> extract = new(Fraction.FromPercent(Math.Round(percent, 1)), Invariant($"{percent:0.0} %"));
        travels.Convert($"{from.Path}.yield.potential", Invariant($"{potential} is {extract} of extract: sucrose has {SucrosePoints} points"));
        return extract;
    }

    /// <summary>Tells of what a line has no field for.</summary>
    public static void Leave(TravelList travels, string path, params (string Key, string? Value)[] what)
    {
        foreach ((string key, string? value) in what)
        {
            if (!string.IsNullOrEmpty(value))
            {
                travels.Leave($"{path}.{key}", $"\"{FindingList.Shorten(value)}\"; a line has no field for it");
            }
        }
    }


    /// <summary>A litre of what is weighed here counts as a kilogram.</summary>
    private static Amount Weighed(Amount amount, IngredientKind kind, string name, string path, TravelList travels)
    {
        if (amount.Volume is not { } volume || LineRules.MayBeMeasuredInAJug(kind))
        {
            return amount;
        }

        Entered<Mass> mass = new(Mass.FromKilograms(volume.Value.Litres), $"{OpenUnits(volume.Value.Litres * 1000)} g");
        travels.Convert(path, $"{name}: {volume} is {mass}; it is weighed here, and a litre counts as a kilogram");
        return new Amount(mass, null);
    }

    private static Amount Packs(double count, CultureForm? form, string path, TravelList travels)
    {
        bool isDry = form == CultureForm.Dry;
        Amount packs = isDry
            ? new Amount(new Entered<Mass>(Mass.FromGrams(count * DryPackGrams), $"{OpenUnits(count * DryPackGrams)} g"), null)
            : new Amount(null, new Entered<VolumeAt20C>(VolumeAt20C.FromMillilitres(count * LiquidPackMillilitres), $"{OpenUnits(count * LiquidPackMillilitres)} mL"));
        travels.Default(path, Invariant($"{count:0.###} packs are taken for {packs.Text}: {DryPackGrams} g of dry or {LiquidPackMillilitres} mL of liquid yeast each; common practice, no source"));
        return packs;
    }

    private static string OpenUnits(double number) => Tables.OpenUnits.Digits(Math.Round(number, 6));
}
