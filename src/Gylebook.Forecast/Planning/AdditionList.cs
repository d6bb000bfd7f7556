using System.Runtime.CompilerServices;
using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Mashing;

namespace Gylebook.Forecast.Planning;

/// <summary>What goes in, row by row: each with the line behind it, what it is made of for any draw, and its alpha acid.</summary>
/// <param name="parameters">Where its figures are put down.</param>
/// <param name="warmestRest">How warm the mash gets, °C, to open raw grain.</param>
/// <param name="room">How many rows are likely.</param>
internal sealed class AdditionList(ParameterList parameters, double warmestRest, int room)
{
    private static readonly Parameter MashHops = StartingParameters.Of("bitterness.mashHops");
    private static readonly Parameter Pellets = StartingParameters.Of("bitterness.pellet");

    /// <summary>A food's figures as parameters: a food does not change under a brewer's keys, and making them takes longer than a run.</summary>
    private static readonly ConditionalWeakTable<FoodMakeup, Parameter[]> Figures = [];

    private readonly Dictionary<int, int> _makeupOfLine = new(room);
    private readonly List<Makeup> _makeups = new(room);
    private readonly List<Addition> _rows = new(room);
    private readonly List<PlannedLine> _lines = new(room);

    /// <summary>The rows.</summary>
    public IReadOnlyList<Addition> Rows => _rows;

    /// <summary>What they are made of.</summary>
    public IReadOnlyList<Makeup> Makeups => _makeups;

    /// <summary>The line behind each row.</summary>
    public IReadOnlyList<PlannedLine> Lines => _lines;

    /// <summary>Whether hops have gone into anything hot so far.</summary>
    public bool HaveHops => _rows.Exists(row => row.Hop.Grams > 0);

    /// <summary>Adds a row for that share of a line.</summary>
    /// <returns>Its place.</returns>
    public int Add(PlannedLine line, int portion, double share)
    {
        if (!_makeupOfLine.TryGetValue(line.Number, out int makeup))
        {
            makeup = _makeups.Count;
            _makeups.Add(MakeupOf(line));
            _makeupOfLine.Add(line.Number, makeup);
        }

        AdditionPoint point = line.Line.At.Point;
        bool beforeRacking = point is AdditionPoint.Pitch or AdditionPoint.Ferment;
        _rows.Add(new Addition(line.Line.At.ToPlace(portion), makeup, share, beforeRacking, DoseOf(line)));
        _lines.Add(line);
        return _rows.Count - 1;
    }

    /// <summary>The malts among them that are mashed.</summary>
    public MaltMakeup[] MashedMalts()
    {
        List<MaltMakeup> mashed = [];
        foreach (Addition row in _rows)
        {
            if (row.Place.Stage == Stage.Mash && _makeups[row.Makeup] is MaltMakeup malt)
            {
                mashed.Add(malt);
            }
        }

        return [.. mashed];
    }

    private Makeup MakeupOf(PlannedLine line) => line switch
    {
        { Malt: { } malt } => MaltOf(line, malt),
        { Food: { } food } => FoodOf(line, food),
        { Line.Kind: IngredientKind.Hop } => new HopMakeup(line.StaysInKettle, line.Line.At.Point >= AdditionPoint.Pitch, line.Kilograms),
        { Sugar: { IsMaltExtract: true } sugar } => new ExtractMakeup(line.Makeup, 1 - sugar.Water, line.Kilograms),
        _ => new PlainMakeup(line.Makeup),
    };

    private MaltMakeup MaltOf(PlannedLine line, Malt malt)
    {
        double table = malt.Colour.Lovibond;
        double colour = (line.Line.Colour?.Value ?? malt.Colour).Lovibond;
        Parameter[] certificate = MaltCertificates.Of(malt);
        return new MaltMakeup(malt.Family, line.Kilograms)
        {
            Extract = parameters.Of(certificate[0]),
            Moisture = parameters.Of(certificate[1]),
            Colour = colour == table ? parameters.Of(certificate[2]) : parameters.Lot(StartingParameters.New($"malt.{malt.Key}.ownColour", colour, "°L", Provenance.Entered)),
            DiastaticPower = parameters.Of(certificate[3]),
            Opening = malt.OpensAt is { } span ? new GrainOpening(span.Low, span.High, warmestRest) : null,
        };
    }

    private FoodInPlace FoodOf(PlannedLine line, FoodMakeup food)
    {
        Parameter[] figures = Figures.GetValue(food, static its => FoodFigures.ParametersOf(its));
        return new FoodInPlace(parameters.Block(figures), food.StarchIsOpen, FoodFigures.PlaceOf(line.Line.At.Point), line.Kilograms);
    }

    /// <summary>The alpha acid that heat will get to work on: none in what is no hop, or goes in cold.</summary>
    private HopDose DoseOf(PlannedLine line)
    {
        AdditionPoint point = line.Line.At.Point;
        if (line.Line.Kind != IngredientKind.Hop || point > AdditionPoint.Stand || line.Alpha <= 0)
        {
            return default;
        }

        return new HopDose(
            line.Kilograms * 1000,
            parameters.Lot(HopLot.AssayParameter(line.Hand!, line.Cultivar)),
            HopLot.AgeOf(line.Line, parameters),
            point == AdditionPoint.Mash ? parameters.Of(MashHops) : null,
            line.Line.Form == IngredientForm.Pellet ? parameters.Of(Pellets) : null,
            point is AdditionPoint.CopperUp or AdditionPoint.Boil);
    }
}

/// <summary>The figures of malts' certificates as parameters, in the order of <see cref="MaltMakeup"/>'s slots.</summary>
internal static class MaltCertificates
{
    private static readonly ConditionalWeakTable<Malt, Parameter[]> Known = [];

    /// <summary>Extract, moisture, colour, diastatic power: those a certificate of the brewer's own states are narrower than the table's.</summary>
    public static Parameter[] Of(Malt malt) => Known.GetValue(malt, static its =>
    {
        // Raw grain's extract is less sure than a malt's. Dextrin malt is as wide as caramel malt.
        string kind = its.Family switch
        {
            MaltFamily.Dextrin => "caramel",
            var family => family.ToString().ToLowerInvariant(),
        };
        return
        [
            Figure("extract", its.ExtractFineDry.Ratio, "kg/kg dry", kind, its.Own?.Figures.ExtractDry is not null),
            Figure("moisture", its.Moisture.Ratio, "kg/kg", "", its.Own?.Figures.Moisture is not null),
            Figure("colour", its.Colour.Lovibond, "°L", kind == "raw" ? "base" : kind, its.Own?.Figures.Colour is not null),
            Figure("diastaticPower", its.DiastaticPower, "°Lintner", "", its.Own?.Figures.DiastaticPower is not null),
        ];

        Parameter Figure(string name, double median, string unit, string sort, bool isStated) => isStated
            ? StartingParameters.Certified($"malt.{its.Key}.{name}", median, unit, its.Own!.From, sort)
            : StartingParameters.New($"malt.{its.Key}.{name}", median, unit, its.Provenance, sort);
    });
}
