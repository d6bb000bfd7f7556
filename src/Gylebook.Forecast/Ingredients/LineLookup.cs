using System.Collections.Concurrent;
using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Data;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Mashing;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Ingredients;

/// <summary>Finds what each line of a recipe is, in the larder and in the tables.</summary>
internal static class LineLookup
{
    /// <summary>Makeups of the table's own foods: a row never changes, and making one up takes longer than a run.</summary>
    private static readonly ConcurrentDictionary<string, MadeUpFood> TableFoods = new(StringComparer.Ordinal);

    /// <summary>Looks every line up; what is not found becomes a finding, with the nearest names.</summary>
    public static List<PlannedLine> Find(IReadOnlyList<LineInHand> hands, List<Finding> findings)
    {
        List<PlannedLine> found = new(hands.Count);
        for (int i = 0; i < hands.Count; i++)
        {
            LineInHand hand = hands[i];
            IngredientLine line = hand.Line;
            PlannedLine? laid = line.Kind switch
            {
                IngredientKind.Malt => Malt(i, hand, findings),
                IngredientKind.Extract or IngredientKind.Sugar => Sugar(i, hand, findings),
                IngredientKind.Food or IngredientKind.Spice => Food(i, hand, findings),
                IngredientKind.Hop => Hop(i, hand, findings),
                IngredientKind.Yeast => Yeast(i, hand, findings),
                _ => Chemical(i, hand, findings),
            };
            if (laid is not null)
            {
                found.Add(laid);
            }
        }

        return found;
    }

    /// <summary>The culture that sours; null for none, or with a finding when it is not in the table.</summary>
    public static LacticCulture? Culture(SouringPlan? souring, List<Finding> findings)
    {
        if (souring is null)
        {
            return null;
        }

        Found<LacticCulture> found = LacticCultures.Find(souring.Culture);
        if (found.Match is not { } culture)
        {
            string nearest = string.Join(", ", found.Nearest);
            findings.Add(new("culture.unknown", Severity.Error, "souring.culture", $"{souring.Culture}; not in the tables. Nearest: {nearest}", souring.Culture, nearest));
            return null;
        }

        // Where nothing at all would live has been said already.
        double celsius = souring.Temperature.Value.Celsius;
        if (findings.TrueForAll(f => f.Where != "souring.temperature") && (celsius < culture.Low.Celsius || celsius > culture.High.Celsius))
        {
            string usual = Invariant($"{culture.Low.Celsius:0} °C to {culture.High.Celsius:0} °C");
            findings.Add(new("culture.temperature", Severity.Warning, "souring.temperature", $"{souring.Temperature}; {culture.Name} is usually kept at {usual}", souring.Temperature.Text, usual));
        }

        return culture;
    }

    private static PlannedLine? Malt(int number, LineInHand hand, List<Finding> findings)
    {
        IngredientLine line = hand.Line;
        if (Match(Malts.Find(line.Of), "malt", number, hand, findings) is not Malt row)
        {
            return null;
        }

        Malt malt = hand.Malt is { } own ? row.As(own, line.As!) : row;
        Wort one = OfOneKilogram(malt, (line.Colour?.Value ?? malt.Colour).Lovibond);
        return Weighed(number, line, one, findings) is not double kg ? null : new PlannedLine(number, line, line.As ?? malt.Name, kg) { Hand = hand, Malt = malt, Makeup = Makeup.Times(one, kg) };
    }

    private static PlannedLine? Sugar(int number, LineInHand hand, List<Finding> findings)
    {
        IngredientLine line = hand.Line;
        if (Match(Sugars.Find(line.Of), line.Kind == IngredientKind.Sugar ? "sugar" : "extract", number, hand, findings) is not Sugar sugar)
        {
            return null;
        }

        Wort one = default;
        one[Component.Water] = sugar.Water;
        one[Component.Sucrose] = sugar.Sucrose;
        one[Component.Glucose] = sugar.Glucose;
        one[Component.Fructose] = sugar.Fructose;
        one[Component.Maltose] = sugar.Maltose;
        one[Component.Maltotriose] = sugar.Maltotriose;
        one[Component.Dextrin] = sugar.Dextrin;
        one[Component.Lactose] = sugar.Lactose;
        one[Component.Protein] = sugar.Protein;
        one[Component.Minerals] = sugar.Minerals;
        one[Component.MaltBuffer] = sugar.IsMaltExtract ? (1 - sugar.Water) * StartingParameters.Medians[(int)Known.ExtractAsMalt] : 0;
        one[Component.MaltColour] = line.At.Point < AdditionPoint.KnockOut ? (line.Colour?.Value ?? sugar.Colour)?.Lovibond ?? 0 : 0;
        return Weighed(number, line, one, findings) is not double kg
            ? null
            : new PlannedLine(number, line, line.As ?? sugar.Name, kg) { Hand = hand, Sugar = sugar, Makeup = Makeup.Times(one, kg) };
    }

    private static PlannedLine? Food(int number, LineInHand hand, List<Finding> findings)
    {
        IngredientLine line = hand.Line;
        FoodMakeup? food = hand.Food;
        if (food is null && Match(FoodTable.Find(line.Of), "food", number, hand, findings) is Food row)
        {
            MadeUpFood made = TableFoods.GetOrAdd(row.Id, static (_, its) => FoodMakeups.From(its), row);
            food = made.Makeup;
            foreach (Finding found in made.Findings)
            {
                if (found.Severity >= Severity.Warning)
                {
                    findings.Add(found with { Where = PlannedLine.PathOf(number), Message = $"{line.As ?? row.Name}: {found.Message}" });
                }
            }
        }

        return food is null || (line.Amount.Mass?.Value.Kilograms ?? Weighed(number, line, FoodFigures.Placed(food, 1, line.At.Point), findings)) is not double kg
            ? null
            : new PlannedLine(number, line, line.As ?? food.Name, kg) { Hand = hand, Food = food, Makeup = FoodFigures.Placed(food, kg, line.At.Point) };
    }

    private static PlannedLine? Hop(int number, LineInHand hand, List<Finding> findings)
    {
        IngredientLine line = hand.Line;
        HopCultivar? cultivar = HopCultivars.Find(line.Of).Match;
        if (cultivar is null && line.Alpha is null)
        {
            Match(HopCultivars.Find(line.Of), "hop", number, hand, findings);
            return null;
        }

        (double alpha, Provenance from) = HopLot.AlphaOf(hand, cultivar);
        new HopMakeup(PlannedLine.Stays(line), line.At.Point >= AdditionPoint.Pitch, 1).Fill(StartingParameters.Medians, StartingParameters.Extracts, out Wort one);
        return Weighed(number, line, one, findings) is not double kg
            ? null
            : new PlannedLine(number, line, line.As ?? cultivar?.Name ?? line.Of, kg) { Hand = hand, Alpha = alpha, AlphaFrom = from, Cultivar = cultivar, Makeup = Makeup.Times(one, kg) };
    }

    private static PlannedLine? Yeast(int number, LineInHand hand, List<Finding> findings)
    {
        IngredientLine line = hand.Line;
        if (Match(YeastStyles.Find(line.Of), "yeast", number, hand, findings) is not YeastStyle yeast)
        {
            return null;
        }

        // Liquid yeast is counted as one part dry matter in ten, at a kilogram a litre: from memory.
        bool dry = line.Form is not (IngredientForm.Liquid or IngredientForm.Slurry) && line.Amount.Mass is not null;
        double kg = line.Amount.Mass?.Value.Kilograms ?? line.Amount.Volume!.Value.Value.Litres;
        Wort one = default;
        one[Component.Yeast] = dry ? 1 : 0.1;
        one[Component.Water] = dry ? 0 : 0.9;
        return new PlannedLine(number, line, line.As ?? yeast.Name, kg) { Hand = hand, Yeast = yeast, Makeup = Makeup.Times(one, kg) };
    }

    private static T? Match<T>(Found<T> found, string kind, int number, LineInHand hand, List<Finding> findings)
        where T : class
    {
        if (found.Match is null)
        {
            string of = hand.Line.Of, nearest = string.Join(", ", found.Nearest);
            string own = hand.Near() is { Count: > 0 } near ? $", nor in the larder (nearest: {string.Join(", ", near)})" : "";
            findings.Add(new(
                $"{kind}.unknown", Severity.Error, $"{PlannedLine.PathOf(number)}.{kind}",
                $"{of}; not in the tables{own}. Nearest: {nearest}", of, nearest));
        }

        return found.Match;
    }

    /// <summary>Kilograms of a line; a syrup's litres are weighed by its own density, anything with solids must be weighed.</summary>
    private static double? Weighed(int number, IngredientLine line, in Wort oneKilogram, List<Finding> findings)
    {
        if (line.Amount.Mass is { } mass)
        {
            return mass.Value.Kilograms;
        }

        if (line.Amount.Volume is { } volume && oneKilogram[Component.Water] > 0.05 && oneKilogram.Mass - oneKilogram.LiquidMass < 1e-3)
        {
            double density = oneKilogram.LiquidMass / oneKilogram.Litres;
            string counted = Invariant($"{density:0.00} kg/L");
            findings.Add(new(
                "amount.byVolume", Severity.Note, $"{PlannedLine.PathOf(number)}.amount",
                $"{line.Amount.Text}; counted at {counted}, from what is dissolved in it. Weighing is surer", counted));
            return volume.Value.Litres * density;
        }

        findings.Add(new(
            "amount.weigh", Severity.Error, $"{PlannedLine.PathOf(number)}.amount",
            $"{line.Amount.Text}; {line.Of} is weighed, in kg or g: its litres do not say how much is in them",
            line.Amount.Text, "a mass"));
        return null;
    }

    /// <summary>One kilogram of a malt as it is likely, of a colour of its own.</summary>
    internal static Wort OfOneKilogram(Malt malt, double lovibond) =>
        StartingParameters.Extracts.OfOneKilogram(malt.Family, malt.ExtractFineDry.Ratio, malt.Moisture.Ratio, lovibond);

    /// <summary>Finings, salts, acids and plain liquor.</summary>
    private static PlannedLine? Chemical(int number, LineInHand hand, List<Finding> findings) => hand.Line.Kind switch
    {
        IngredientKind.Salt => Salt(number, hand, findings),
        IngredientKind.Acid => AcidOf(number, hand, findings),
        IngredientKind.Water => Pure(number, hand, Component.Water),
        _ => Pure(number, hand, Component.Break),
    };

    private static PlannedLine? Salt(int number, LineInHand hand, List<Finding> findings)
    {
        IngredientLine line = hand.Line;
        BrewingSalt? salt = ShelfWords.Salt(line.Of);
        if (salt is null || line.Amount.Mass is not { } mass)
        {
            string known = ShelfWords.KnownSalts;
            findings.Add(new("salt.unknown", Severity.Error, $"{PlannedLine.PathOf(number)}.salt", $"{line.Of}, {line.Amount.Text}; known, by weight: {known}", line.Of, known));
            return null;
        }

        double kg = mass.Value.Kilograms;
        Wort makeup = default;
        makeup[Component.Water] = kg * salt.WaterShare;
        makeup[Component.Minerals] = kg * (1 - salt.WaterShare);
        IonTracers.Put(ref makeup, salt.PerGramInALitre, kg * 1000);
        return new PlannedLine(number, line, line.As ?? salt.Name, kg) { Hand = hand, Makeup = makeup, Salt = salt };
    }

    /// <summary>An acid with the strength it is sold at behind its name: "lactic acid 88 %". A powder needs none.</summary>
    private static PlannedLine? AcidOf(int number, LineInHand hand, List<Finding> findings)
    {
        IngredientLine line = hand.Line;
        Acid? acid = ShelfWords.Acid(line.Of);
        double? strength = ShelfWords.Strength(line.Of);
        AcidAsSold? sold = ShelfWords.Sold(line.Of);

        // Grams of a bottle whose strength is by volume say nothing without its density.
        bool weighsVolume = line.Amount.Mass is not null && ShelfWords.IsByVolume(line.Of);
        if (acid is null || weighsVolume || (line.Amount.Mass is null && sold is not { Unit: DoseUnit.Millilitre }))
        {
            string known = ShelfWords.KnownAcids;
            findings.Add(new("acid.unknown", Severity.Error, $"{PlannedLine.PathOf(number)}.acid", $"{line.Of}, {line.Amount.Text}; known by the jug or by weight: {known}; others by weight, with their strength", line.Of, known));
            return null;
        }

        double share = strength ?? 1;
        double kilograms = line.Amount.Mass?.Value.Kilograms
            ?? line.Amount.Volume!.Value.Value.Millilitres * sold!.MillimolesPerUnit * acid.MolarMass / 1e6 / share;
        double millimoles = kilograms * share * 1e6 / acid.MolarMass;
        Wort makeup = default;
        AcidsCarried.Put(ref makeup, acid, millimoles);
        makeup[Component.Water] = kilograms * (1 - share);
        return new PlannedLine(number, line, line.As ?? line.Of, kilograms)
        {
            Hand = hand,
            Makeup = makeup,
            Acid = new MashPhAcid(new AcidAsSold(acid.Id, acid, 1, DoseUnit.Gram), millimoles),
        };
    }

    private static PlannedLine Pure(int number, LineInHand hand, Component component)
    {
        IngredientLine line = hand.Line;
        double kg = line.Amount.Mass?.Value.Kilograms ?? (line.Amount.Volume!.Value.Value.Litres * Wort.WaterKilogramsPerLitre);
        Wort makeup = default;
        makeup[component] = kg;
        return new PlannedLine(number, line, line.As ?? line.Of, kg) { Hand = hand, Makeup = makeup };
    }
}
