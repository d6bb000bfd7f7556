using Gylebook.Forecast.Running;
using Gylebook.Forecast.Stages;
using Gylebook.Forecast.State;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.LayingOut;

/// <summary>What goes in, row by row: each with the line behind it, the parameters that bend it, and its alpha acid.</summary>
internal sealed class AdditionList(ParameterList parameters)
{
    private readonly List<Addition> _rows = [];
    private readonly List<LaidLine> _lines = [];
    private readonly List<HopDose> _hopDoses = [];
    private readonly List<BoiledHop> _boiledHops = [];

    /// <summary>The rows.</summary>
    public IReadOnlyList<Addition> Rows => _rows;

    /// <summary>The line behind each row.</summary>
    public IReadOnlyList<LaidLine> Lines => _lines;

    /// <summary>Alpha acid of each row.</summary>
    public IReadOnlyList<HopDose> HopDoses => _hopDoses;

    /// <summary>Hops the table of time and gravity knows.</summary>
    public IReadOnlyList<BoiledHop> BoiledHops => _boiledHops;

    /// <summary>Whether hops have gone into anything hot so far.</summary>
    public bool HaveHops => _hopDoses.Exists(d => d.Grams > 0);

    /// <summary>Adds a row for that share of a line.</summary>
    /// <returns>Its place.</returns>
    public int Add(LaidLine line, double share)
    {
        Wort makeup = default;
        makeup.Add(line.Makeup, share);
        AdditionPoint point = line.Line.At.Point;
        bool beforeRacking = point is AdditionPoint.Pitch or AdditionPoint.Ferment;
        int index = _rows.Count;
        _rows.Add(new Addition(StageOf(point), makeup, BendsOf(line), beforeRacking));
        _lines.Add(line);
        HopDose dose = DoseOf(line);
        _hopDoses.Add(dose);
        if (dose.Grams > 0 && point is AdditionPoint.CopperUp or AdditionPoint.Boil)
        {
            _boiledHops.Add(new BoiledHop(index, dose.Grams, dose.Alpha));
        }

        return index;
    }

    /// <summary>The alpha acid that heat will get to work on: none in what is no hop, or goes in cold.</summary>
    private HopDose DoseOf(LaidLine line)
    {
        AdditionPoint point = line.Line.At.Point;
        if (line.Line.Kind != IngredientKind.Hop || point > AdditionPoint.Stand || line.Alpha <= 0)
        {
            return default;
        }

        int alpha = parameters.Of(LotOf(line), line.Alpha, "kg/kg", line.AlphaFrom!);
        int reaches = point == AdditionPoint.Mash ? parameters.Starting("bitterness.mashHops") : -1;
        int form = line.Line.Form == IngredientForm.Pellet ? parameters.Starting("bitterness.pellet") : -1;
        return new HopDose(line.Kilograms * 1000, alpha, reaches, form);
    }

    /// <summary>Hops of one name and one assay are one lot, wherever they stand in the recipe.</summary>
    private static string LotOf(LaidLine line) =>
        Invariant($"hop.{line.Line.Of.ToLowerInvariant()}.{line.Alpha:0.0000}.alpha");

    private Bend[] BendsOf(LaidLine line)
    {
        if (line.Malt is Malt malt)
        {
            double extract = malt.ExtractFineDry.Ratio;
            return [new Bend(parameters.Of($"malt.{malt.Id}.extract", extract, "kg/kg dry", malt.Provenance), extract, BendOf.Extract)];
        }

        if (line.Food is { SettledHold: > 0 } food && line.Makeup[Component.SettledHold] > 0)
        {
            Provenance from = new(food.Assumed.FirstOrDefault(a => a.What == "settledHold")?.Source ?? "food sheet", "assumed");
            return [new Bend(parameters.Of($"food.{food.Id}.settledHold", food.SettledHold, "kg/kg", from), food.SettledHold, BendOf.SettledHold)];
        }

        return [];
    }

    private static Stage StageOf(AdditionPoint point) => point switch
    {
        AdditionPoint.Mash => Stage.Mash,
        AdditionPoint.CopperUp => Stage.CopperUp,
        AdditionPoint.Boil => Stage.Boil,
        AdditionPoint.KnockOut => Stage.KnockOut,
        AdditionPoint.Stand => Stage.Stand,
        AdditionPoint.Pitch or AdditionPoint.Ferment => Stage.Ferment,
        AdditionPoint.Rack => Stage.Rack,
        _ => Stage.Package,
    };
}
