using System.Collections.Concurrent;
using Gylebook.Recipes.Checks;
using Gylebook.Recipes.Data;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Lots;
using Gylebook.Science.Boiling;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Larders;

/// <summary>What a brewer has and knows: sheets of foods, malts, hops, yeasts and all else, asked before the tables.</summary>
/// <remarks>It never changes, so that any number of threads may ask it.</remarks>
public sealed class Larder
{
    private const double RoomCelsius = 20;

    private readonly Dictionary<IngredientKind, NameIndex<LarderSheet>> _sheets;
    private readonly NameIndex<FoodMakeup> _foods;

    /// <summary>Foods made up: making one up takes longer than a run.</summary>
    private readonly ConcurrentDictionary<(string Id, string? Lot), MadeUpFood> _made = new();

    /// <summary>A larder with those sheets; the later one, should two claim an id.</summary>
    public Larder(IEnumerable<LarderSheet> sheets)
        : this(sheets, [])
    {
    }

    private Larder(IEnumerable<LarderSheet> sheets, IEnumerable<FoodMakeup> foods)
    {
        Sheets = [.. sheets];
        _sheets = Enum.GetValues<IngredientKind>().ToDictionary(kind => kind, kind => new NameIndex<LarderSheet>(
            [.. Sheets.Where(sheet => Serves(sheet, kind)).GroupBy(sheet => sheet.Id, StringComparer.OrdinalIgnoreCase).Select(same => same.Last())
                .Select(sheet => new Named<LarderSheet>(sheet.Id, sheet.Name, [], sheet))]));
        _foods = new NameIndex<FoodMakeup>([.. foods.Select(food => new Named<FoodMakeup>(food.Id, food.Name, [], food))]);
    }

    /// <summary>The same on some day.</summary>
    private Larder(Larder larder, DateOnly day) =>
        (Sheets, _sheets, _foods, _made, Day) = (larder.Sheets, larder._sheets, larder._foods, larder._made, day);

    /// <summary>Nothing in it.</summary>
    public static Larder Empty { get; } = new([]);

    /// <summary>A larder with foods that are made up already, and nothing else.</summary>
    public static Larder OfFoods(params IEnumerable<FoodMakeup> foods) => new([], foods);

    /// <summary>All its sheets, as they were put in.</summary>
    public IReadOnlyList<LarderSheet> Sheets { get; }

    /// <summary>The day it is asked on, from which the age of harvested yeast counts; null to take it as fresh.</summary>
    public DateOnly? Day { get; }

    /// <summary>The same larder, asked on that day.</summary>
    public Larder On(DateOnly day) => new(this, day);

    /// <summary>The sheet a line of that kind names by id or name; null when it is of the tables.</summary>
    public LarderSheet? Sheet(IngredientKind kind, string idOrName) => _sheets[kind].Match(idOrName);

    /// <summary>The food of that id or name, made up; null when the larder has none that can be reckoned with.</summary>
    public FoodMakeup? Food(string idOrName) =>
        _foods.Match(idOrName) ?? (Sheet(IngredientKind.Food, idOrName) is FoodSheet sheet ? Made(sheet).Makeup : null);

    /// <summary>A food sheet made up, with what was doubtful about it.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="lot">The lot whose analysis goes before the sheet's; null for none.</param>
    public MadeUpFood Made(FoodSheet sheet, Lot? lot = null)
    {
        FoodComposition? assay = FoodSheet.AssayOf(lot);
        return _made.GetOrAdd((sheet.Id, assay is null ? null : lot!.Name), _ => assay is null ? FoodMakeups.From(sheet) : OfLot(sheet, lot!, assay));
    }

    /// <summary>A line with the figures of the sheet and the lot it names; a lot there is not is a finding.</summary>
    /// <param name="line">The line as written.</param>
    /// <param name="path">Where it stands.</param>
    /// <param name="findings">Takes what is found.</param>
    public LineInHand Take(IngredientLine line, string path, ICollection<Finding> findings)
    {
        NameIndex<LarderSheet> sheets = _sheets[line.Kind];
        if (sheets.Match(line.Of) is not { } sheet)
        {
            NoLots(line, path, findings);
            LineInHand bare = new(line, line) { Near = () => sheets.Nearest(line.Of), Alpha = line.Alpha is null ? AlphaFrom.Cultivar : AlphaFrom.Pack };
            return line.Kind is IngredientKind.Food or IngredientKind.Spice ? bare with { Food = _foods.Match(line.Of) } : bare;
        }

        Lot? lot = LotOf(line, sheet, path, findings);
        IngredientLine named = line with { Of = sheet is FoodSheet ? line.Of : LikeOf(sheet), As = line.As ?? sheet.Name };
        LineInHand hand = new(named, line) { Sheet = sheet, Lot = lot };
        return sheet switch
        {
            FoodSheet food => hand with { Food = Made(food, lot).Makeup },
            MaltSheet malt => hand with { Malt = OwnMaltOf(malt, lot, hand) },
            HopSheet hop => Hop(hand, hop),
            YeastSheet yeast => Yeast(hand, yeast, path, findings),
            ShelfSheet shelf => Shelf(hand, shelf),
            _ => hand,
        };
    }

    /// <summary>What the lot's analysis says goes before the sheet's; draws call it by the lot.</summary>
    private static MadeUpFood OfLot(FoodSheet sheet, Lot lot, FoodComposition assay)
    {
        MadeUpFood made = FoodMakeups.From(sheet with { Composition = sheet.Composition is { } known ? assay.OrElse(known) : assay });
        return made with { Makeup = made.Makeup is { } makeup ? makeup with { Id = LineInHand.KeyOf(sheet, lot)! } : null };
    }

    private static bool Serves(LarderSheet sheet, IngredientKind kind) => sheet switch
    {
        FoodSheet => kind is IngredientKind.Food or IngredientKind.Spice,
        MaltSheet => kind == IngredientKind.Malt,
        HopSheet => kind == IngredientKind.Hop,
        YeastSheet => kind == IngredientKind.Yeast,
        ShelfSheet shelf => kind == shelf.Kind,
        _ => false,
    };

    private static string LikeOf(LarderSheet sheet) => sheet switch
    {
        MaltSheet malt => malt.Like,
        HopSheet hop => hop.Like,
        YeastSheet yeast => yeast.Like,
        ShelfSheet shelf => shelf.Like,
        _ => sheet.Name,
    };

    private static OwnMalt OwnMaltOf(MaltSheet sheet, Lot? lot, LineInHand hand)
    {
        MaltFigures? assay = MaltSheet.AssayOf(lot);
        LineInHand from = assay is null ? hand with { Lot = null } : hand;
        return new OwnMalt(hand.Key, (assay ?? new MaltFigures()).OrElse(sheet.Figures), from.From);
    }

    private static LineInHand Hop(LineInHand hand, HopSheet sheet)
    {
        HopFigures assay = HopSheet.AssayOf(hand.Lot) ?? new(), pack = sheet.Figures ?? new();
        IngredientLine line = hand.Line;
        Entered<Fraction>? lost = assay.Lost ?? pack.Lost;
        return hand with
        {
            Line = line with
            {
                Alpha = line.Alpha ?? assay.Alpha ?? pack.Alpha,
                Form = line.Form ?? assay.Form ?? pack.Form,
                Storage = lost is null || line.Age is null ? line.Storage : KeptWith(line.Storage, lost.Value),
            },
            Alpha = line.Alpha is not null ? AlphaFrom.Pack : assay.Alpha is not null ? AlphaFrom.Assay : pack.Alpha is not null ? AlphaFrom.Pack : AlphaFrom.Cultivar,
        };
    }

    /// <summary>How hops were kept, with their own loss where the line has none; unsaid means in the open at 20 °C, as for every line.</summary>
    private static HopStorage KeptWith(HopStorage? said, Entered<Fraction> lost) => said is { } storage
        ? storage with { Lost = storage.Lost ?? lost }
        : new HopStorage(new(Temperature.FromCelsius(RoomCelsius), Invariant($"{RoomCelsius} °C")), HopPack.Open, lost);

    private LineInHand Yeast(LineInHand hand, YeastSheet sheet, string path, ICollection<Finding> findings)
    {
        YeastFigures assay = YeastSheet.AssayOf(hand.Lot) ?? new(), pack = sheet.Figures ?? new();
        IngredientLine line = hand.Line;
        LineInHand yeast = hand with
        {
            Line = line with
            {
                Form = line.Form ?? assay.Form ?? pack.Form,
                // What a pack held when fresh says nothing of the slurry that grew from it.
                Cells = line.Cells ?? assay.CellsIn(line.Amount) ?? (assay.Harvest is null ? pack.CellsIn(line.Amount) : null),
                Attenuation = line.Attenuation ?? assay.Attenuation ?? pack.Attenuation,
            },
        };
        return assay.Harvest is { } harvest ? Slurry(yeast, harvest, path, findings) : yeast;
    }

    /// <summary>A jar of harvested yeast is slurry, whatever the line says, and as old as the day says unless the line does.</summary>
    private LineInHand Slurry(LineInHand hand, YeastHarvest harvest, string path, ICollection<Finding> findings)
    {
        if (hand.Typed.Form is IngredientForm.Dry or IngredientForm.Liquid)
        {
            findings.Add(new(
                "yeast.formOfLot", Severity.Warning, $"{path}.form",
                $"{(hand.Typed.Form == IngredientForm.Dry ? "dry" : "liquid")}; lot {hand.Lot!.Name} was harvested and is counted as slurry: say slurry, or nothing", null, "slurry"));
        }

        LineInHand slurry = hand with { Line = hand.Line with { Form = IngredientForm.Slurry, Age = hand.Line.Age ?? (Day is { } day ? harvest.AgeOn(day) : null) } };
        if (hand.Line.Age is null)
        {
            FindingList old = new();
            AgeCheck.Check(slurry.Line, path, old);
            foreach (Finding finding in old.All)
            {
                findings.Add(finding);
            }
        }

        return slurry;
    }

    private static LineInHand Shelf(LineInHand hand, ShelfSheet sheet) => hand with
    {
        Line = hand.Line with { Colour = hand.Line.Colour ?? ShelfSheet.AssayOf(hand.Lot)?.Colour ?? sheet.Figures?.Colour },
    };

    private static Lot? LotOf(IngredientLine line, LarderSheet sheet, string path, ICollection<Finding> findings)
    {
        if (line.Lot is not { } wanted)
        {
            return null;
        }

        Lot? lot = sheet.EveryLot.FirstOrDefault(lot => string.Equals(lot.Name, wanted, StringComparison.OrdinalIgnoreCase));
        if (lot is null)
        {
            string? nearest = NearestWord.To(wanted, sheet.EveryLot.Select(known => known.Name));
            findings.Add(new(
                "lot.unknown", Severity.Error, $"{path}.lot",
                nearest is null ? $"{wanted}; the sheet of {sheet.Name} has no lots" : $"{wanted}; {sheet.Name} has no such lot. Nearest: {nearest}", wanted, nearest));
        }

        return lot;
    }

    private static void NoLots(IngredientLine line, string path, ICollection<Finding> findings)
    {
        if (line.Lot is { } wanted)
        {
            findings.Add(new("lot.noSheet", Severity.Error, $"{path}.lot", $"{wanted}; the larder has no sheet of {line.Of}, and so no lots of it", wanted, "a sheet"));
        }
    }
}
