using Gylebook.Forecast.Running;
using Gylebook.Forecast.Stages;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;

namespace Gylebook.Forecast.LayingOut;

/// <summary>The moves of a run in order, with the rows they point to.</summary>
internal sealed class StepList(
    Recipe recipe, IReadOnlyList<LaidLine> lines, ParameterList parameters, KettleHeat heat, SourStep? souring)
{
    private const int Main = 0;
    private const int Bed = 1;

    private readonly List<(double Share, string? Name, int Portion)> _portions = PortionsOf(recipe);

    public List<Step> Steps { get; } = [];

    /// <summary>What goes in.</summary>
    public AdditionList Additions { get; } = new(parameters);

    public List<SourStep> Sourings { get; } = [];

    public List<double> BoilMinutes { get; } = [];

    public List<IsomerisationStep> BoilHeats { get; } = [];

    public List<IsomerisationStep> Steeps { get; } = [];

    /// <summary>Which of those is the cooling; null when nothing hot with hops in it is cooled.</summary>
    public int? CoolingSteep { get; private set; }

    public List<double> SplitShares { get; } = [];

    public List<FermentStep> Ferments { get; } = [];

    /// <summary>Liquor rows: the strike is row 0, the top-up row 1.</summary>
    public int LiquorCount => TopsUp ? 2 : 1;

    /// <summary>A part mash is filled up with liquor; any other kettle when the brewer says so.</summary>
    private bool TopsUp => recipe.Mash?.Method == MashMethod.Part || recipe.Liquor?.TopUp is not null;

    public int[] Packaged => [.. _portions.Select(p => p.Portion)];

    public int PortionCount => _portions.Max(p => p.Portion) + 1;

    /// <summary>Name of a portion, or null when there is just one.</summary>
    public string? NameOf(int portion) => _portions.FirstOrDefault(p => p.Portion == portion).Name;

    /// <summary>Writes all steps.</summary>
    public void Write(IReadOnlyDictionary<string, FermentStep> yeastOfPortion)
    {
        WriteMash();
        WriteKettle();
        WriteSplits();
        foreach ((_, string? name, int portion) in _portions)
        {
            Ferments.Add(yeastOfPortion[name ?? ""]);
            WriteCellar(portion, Ferments.Count - 1);
        }
    }

    private void WriteMash()
    {
        Move(StepKind.Strike, Main);
        if (recipe.Mash is null or { Method: MashMethod.None })
        {
            return;
        }

        AddAll(AdditionPoint.Mash);
        Move(StepKind.Mash, Main);
        Move(StepKind.Lift, Main, Bed);
        if (recipe.Mash.Sparge.Volume is not null)
        {
            Move(StepKind.Rinse, Bed, Main);
        }

        Move(StepKind.SpentGrain, Bed, Main);
    }

    private void WriteKettle()
    {
        if (TopsUp)
        {
            Steps.Add(new Step(StepKind.TopUp, Main, Main, 1));
        }

        AddAll(AdditionPoint.CopperUp);
        Move(StepKind.CopperUp, Main);
        if (souring is { } step)
        {
            Sourings.Add(step);
            Move(StepKind.Sour, Main);
        }

        WriteBoil();
        Move(StepKind.KnockOut, Main);
        AddAll(AdditionPoint.KnockOut);
        if (recipe.Stand is not null)
        {
            WriteStand(recipe.Stand.Time.Value.Minutes);
        }

        WriteCooling();
        Move(StepKind.Chill, Main);
        Move(StepKind.Cast, Main);
    }

    /// <summary>How fast so much wort cools is known when the liquor is planned; its row is filled in then.</summary>
    private void WriteCooling()
    {
        if (heat.CoolsFromHot && Additions.HaveHops)
        {
            CoolingSteep = Steeps.Count;
            Steeps.Add(IsomerisationStep.None);
            Steps.Add(new Step(StepKind.Steep, Main, Main, Steeps.Count - 1));
        }
    }

    private void WriteBoil()
    {
        double left = recipe.Boil?.Time.Value.Minutes ?? 0;
        foreach (LaidLine line in At(AdditionPoint.Boil).OrderByDescending(l => l.Line.At.Count))
        {
            BoilFor(left - line.Line.At.Count);
            left = line.Line.At.Count;
            Add(line, Main, 1);
        }

        BoilFor(left);
    }

    private void WriteStand(double left)
    {
        foreach (LaidLine line in At(AdditionPoint.Stand).OrderByDescending(l => l.Line.At.Count))
        {
            Steep(heat.Stand(left - line.Line.At.Count));
            left = line.Line.At.Count;
            Add(line, Main, 1);
        }

        Steep(heat.Stand(left));
        Move(StepKind.Stand, Main);
    }

    /// <summary>Hops in hot wort; where none ever went in there is nothing to reckon.</summary>
    private void Steep(in IsomerisationStep step)
    {
        if (step != IsomerisationStep.None && Additions.HaveHops)
        {
            Steeps.Add(step);
            Steps.Add(new Step(StepKind.Steep, Main, Main, Steeps.Count - 1));
        }
    }

    private void BoilFor(double minutes)
    {
        if (minutes > 0)
        {
            BoilMinutes.Add(minutes);
            BoilHeats.Add(heat.Boil(minutes));
            Steps.Add(new Step(StepKind.Boil, Main, Main, BoilMinutes.Count - 1));
        }
    }

    private void WriteSplits()
    {
        double left = 1;
        foreach ((double share, _, int portion) in _portions.Skip(1))
        {
            SplitShares.Add(share / left);
            Steps.Add(new Step(StepKind.Split, Main, portion, SplitShares.Count - 1));
            left -= share;
        }
    }

    private void WriteCellar(int portion, int ferment)
    {
        AddAll(AdditionPoint.Pitch, portion);
        Steps.Add(new Step(StepKind.Ferment, portion, portion, ferment));
        foreach (IGrouping<double, LaidLine> day in At(AdditionPoint.Ferment).GroupBy(l => l.Line.At.Count).OrderBy(d => d.Key))
        {
            AddAll(day, portion);
            Steps.Add(new Step(StepKind.Ferment, portion, portion, ferment));
        }

        Move(StepKind.EndFerment, portion);
        if (Crashes(recipe))
        {
            Move(StepKind.Crash, portion);
        }

        Move(StepKind.Rack, portion);
        AddAll(AdditionPoint.Rack, portion);
        AddAll(AdditionPoint.Package, portion);
        Steps.Add(new Step(StepKind.Package, portion, portion, ferment));
        Steps.Add(new Step(StepKind.Condition, portion, portion, ferment));
        Move(StepKind.Pour, portion);
    }

    /// <summary>A last rest near freezing is a crash. Common practice, no source.</summary>
    internal static bool Crashes(Recipe recipe) => recipe.Ferment.Count > 1 && recipe.Ferment[^1].Temperature.Value.Celsius <= 5;

    private void Move(StepKind kind, int from, int to = -1) => Steps.Add(new Step(kind, from, to < 0 ? from : to, 0));

    private IEnumerable<LaidLine> At(AdditionPoint point) => lines.Where(l => l.Line.At.Point == point);

    private void AddAll(AdditionPoint point, int portion = Main) => AddAll(At(point), portion);

    private void AddAll(IEnumerable<LaidLine> additions, int portion)
    {
        foreach (LaidLine line in additions)
        {
            if (line.Line.At.Point < AdditionPoint.Pitch)
            {
                Add(line, portion, 1);
            }
            else if (ShareFor(line, portion) is double share)
            {
                Add(line, portion, share);
            }
        }
    }

    /// <summary>What of a cellar addition goes into a portion: its share of the cast, or all of it if it is named; null for none.</summary>
    private double? ShareFor(LaidLine line, int portion)
    {
        (double share, string? name, _) = _portions.Single(p => p.Portion == portion);
        return line.Line.Portion is null ? share : line.Line.Portion == name ? 1 : null;
    }

    private void Add(LaidLine line, int portion, double share) =>
        Steps.Add(new Step(StepKind.Add, portion, portion, Additions.Add(line, share)));

    private static List<(double Share, string? Name, int Portion)> PortionsOf(Recipe recipe) => recipe.Portions.Count == 0
        ? [(1, null, Main)]
        : [.. recipe.Portions.Select((p, i) => (p.Share.Value.Ratio, (string?)p.Name, i == 0 ? Main : Bed + i))];
}
