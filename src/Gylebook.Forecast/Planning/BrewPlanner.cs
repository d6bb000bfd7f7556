using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Planning;

/// <summary>Lays a recipe out for a kit: once, with names and allocations, so that the run needs neither.</summary>
public static class BrewPlanner
{
    /// <summary>Litres of liquor per kilogram of grist in a part mash, when the recipe does not fix it. Common practice, no source.</summary>
    private const double PartMashLitresPerKilogram = 3;

    /// <summary>What a malt's certificate has; few lines bring more, and only room is made by it.</summary>
    private const int FiguresOfLine = 4;

    private static readonly Parameter Trub = StartingParameters.Of("bitterness.trub");
    private static readonly Parameter Cellar = StartingParameters.Of("bitterness.cellar");

    /// <summary>Lays out, plans backwards, and says all that is wrong.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="kit">The kit.</param>
    /// <param name="larder">The brewer's own sheets; asked before the tables.</param>
    /// <param name="liquors">What the liquors carry; null when nobody has said.</param>
    public static BrewPlan Plan(Recipe recipe, Kit kit, Larder larder, PlannedLiquors? liquors = null)
    {
        List<Finding> findings = [];
        LineInHand[] hands = [.. recipe.Ingredients.Select((line, number) => larder.Take(line, PlannedLine.PathOf(number), findings))];
        findings.InsertRange(0, RecipeCheck.Findings(recipe with { Ingredients = Array.ConvertAll(hands, static hand => hand.Line) }));
        findings.AddRange(KitCheck.Findings(kit).Select(f => f with { Where = $"kit.{f.Where}" }));
        List<PlannedLine> lines = LineLookup.Find(hands, findings);
        lines.RemoveAll(static line => !(line.Kilograms > 0));
        ToldYeasts told = ToldYeasts.Solve(lines, yeasts => Of(recipe, kit, lines, findings, liquors, yeasts));
        BrewPlan brew = Of(recipe, kit, lines, findings, liquors, told.Yeasts) with { Larder = larder };
        return told.Findings.Count > 0 ? brew with { Findings = [.. brew.Findings, .. told.Findings] } : brew;
    }

    /// <summary>Lays out with other yeasts on some lines than the table's own.</summary>
    private static BrewPlan Of(
        Recipe recipe, Kit kit, IReadOnlyList<PlannedLine> found, IReadOnlyList<Finding> soFar, PlannedLiquors? liquors, IReadOnlyDictionary<int, YeastStyle> yeasts)
    {
        List<Finding> findings = [.. soFar];
        IReadOnlyList<PlannedLine> lines = yeasts.Count == 0 ? found : [.. found.Select(line => yeasts.TryGetValue(line.Number, out YeastStyle? own) ? line with { Yeast = own } : line)];
        CheckMeans(recipe, kit, findings);
        LacticCulture? culture = LineLookup.Culture(recipe.Souring, findings);
        if (findings.Exists(static found => found.Severity == Severity.Error))
        {
            return new(recipe, kit, lines, null, [], new Dictionary<int, string>(), default, findings) { Liquors = liquors };
        }

        ParameterList parameters = new(lines.Sum(static line => line.Food is null ? FiguresOfLine : FoodInPlace.FigureCount));
        RestCourse rests = RunParameters.RestsOf(recipe);
        RunParameters.SetAll(parameters, recipe, kit, rests);
        SourStep? souring = culture is null ? null : RunParameters.Souring(parameters, recipe, culture);
        KettleHeat heat = new(recipe, kit);
        StepList steps = new(recipe, lines, parameters, heat, souring, rests);
        steps.Write(YeastByPortion(recipe, kit, lines, parameters));
        RunPlan plan = Assemble(recipe, kit, lines, parameters, steps, rests, liquors);
        RunTrace trace = SpareTrace.For(plan);
        PlanOutcome outcome = PlanLiquor(recipe, kit, plan, lines, trace);
        if (Array.Exists(plan.Steps, static step => step is { Move: Move.Steep, Stage: Stage.Chill }))
        {
            plan.Cooling = heat.Chill(outcome.Solved && heat.AsksForWort ? HotWort.Of(trace) : default);
        }

        SpareTrace.GiveBack(trace);
        if (!outcome.Solved)
        {
            findings.Add(NoSolution(recipe, outcome));
        }

        Dictionary<int, string> names = [];
        foreach (CastPortion portion in steps.Portions.All)
        {
            names[portion.Place] = portion.Name ?? "main";
        }

        return new(recipe, kit, lines, outcome.Solved ? plan : null, steps.Additions.Lines, names, outcome, findings) { Liquors = liquors };
    }

    private static RunPlan Assemble(
        Recipe recipe, Kit kit, IReadOnlyList<PlannedLine> lines, ParameterList parameters, StepList steps, RestCourse rests, PlannedLiquors? liquors)
    {
        IsoLosses losses = new(parameters.Of(Trub), parameters.Of(Cellar));
        AcidityPlan acidity = RunParameters.Acidity(parameters, recipe, steps.Portions, lines, liquors);
        Parameter[] all = parameters.All();
        double gas = IsGassed(recipe, kit) ? recipe.Package.Carbonation?.Value.Volumes ?? 0 : 0;
        return new RunPlan
        {
            Steps = [.. steps.Steps],
            PortionCount = Math.Max(2, steps.Portions.Room),
            Packaged = steps.Portions.Places,
            Parameters = all,
            Medians = Array.ConvertAll(all, static parameter => parameter.Median),
            Reactions = Reactions.Published,
            Liquors = new double[steps.LiquorCount],
            Minerals = liquors?.Carried ?? Minerals.None,
            Acidity = acidity,
            Surroundings = BrewSurroundings.Of(recipe, kit, lines),
            Additions = [.. steps.Additions.Rows],
            Makeups = [.. steps.Additions.Makeups],
            Mash = new MashStep(steps.Additions.MashedMalts(), GristOf(lines), rests),
            Rinse = RinseOf(recipe),
            Sourings = [.. steps.Sourings],
            Boils = [.. steps.Boils],
            Stands = [.. steps.Stands],
            IsoLosses = losses,
            SplitShares = [.. steps.SplitShares],
            Ferments = [.. steps.Ferments],
            Packages = [.. steps.Portions.All.Select(_ => new PackageStep(0, gas))],
        };
    }

    private static Dictionary<string, FermentStep> YeastByPortion(
        Recipe recipe, Kit kit, IReadOnlyList<PlannedLine> lines, ParameterList parameters)
    {
        List<PlannedLine> yeasts = [.. lines.Where(l => l.Yeast is not null)];
        IEnumerable<string> portions = recipe.Portions.Count == 0 ? [""] : recipe.Portions.Select(p => p.Name);
        return portions.ToDictionary(
            name => name,
            name => RunParameters.Yeast(parameters, recipe, kit, yeasts.Where(l => l.Line.Portion is null || l.Line.Portion == name)));
    }

    /// <summary>Malts and mashed foods as weighed, kg.</summary>
    private static double GristOf(IReadOnlyList<PlannedLine> lines) => lines
        .Where(l => l.Line.At.Point == AdditionPoint.Mash && l.Line.Kind is IngredientKind.Malt or IngredientKind.Food)
        .Sum(l => l.Kilograms);

    private static RinseStep RinseOf(Recipe recipe)
    {
        SpargePlan? sparge = recipe.Mash?.Sparge;
        double litres = sparge?.Volume?.Value.Litres ?? 0;
        return new RinseStep(litres * Wort.WaterKilogramsPerLitre, sparge?.Method == SpargeMethod.Continuous);
    }

    /// <summary>The last run of the planning is left in the trace.</summary>
    private static PlanOutcome PlanLiquor(Recipe recipe, Kit kit, RunPlan plan, IReadOnlyList<PlannedLine> lines, RunTrace trace)
    {
        double grist = plan.Mash.GristKilograms;
        bool part = recipe.Mash?.Method == MashMethod.Part;
        double? strike = recipe.Liquor?.Strike?.Value.Litres ?? (part ? PartMashLitresPerKilogram * grist : null);
        double? topUp = recipe.Liquor?.TopUp?.Value.Litres;
        plan.Liquors[0] = (strike ?? 0) * Wort.WaterKilogramsPerLitre;
        if (plan.Liquors.Length > 1)
        {
            plan.Liquors[1] = (topUp ?? 0) * Wort.WaterKilogramsPerLitre;
        }

        int unknown = part ? (topUp is null ? 1 : -1) : strike is null ? 0 : -1;
        double wished = recipe.Package.Volume.Value.Litres;
        double guess = wished + grist + (plan.Medians[(int)Known.Evaporation] * (recipe.Boil?.Time.Value.Hours ?? 0))
            + plan.Medians[(int)Known.KettleLeftBehind] - (recipe.Mash?.Sparge.Volume?.Value.Litres ?? 0)
            - (part ? strike ?? 0 : topUp ?? 0);
        return LiquorPlanner.Solve(plan, trace, unknown, wished, guess, PrimeTo(recipe, kit, lines));
    }

    /// <summary>Volumes to reach with sugar: the wish, where there is one, no cylinder, and no priming of the brewer's own.</summary>
    private static double PrimeTo(Recipe recipe, Kit kit, IReadOnlyList<PlannedLine> lines) =>
        IsGassed(recipe, kit) || HasOwnPriming(lines) ? 0 : recipe.Package.Carbonation?.Value.Volumes ?? 0;

    /// <summary>Whether the brewer has put sugar into the package by hand.</summary>
    internal static bool HasOwnPriming(IReadOnlyList<PlannedLine> lines) => lines.Any(l =>
        l.Line.At.Point == AdditionPoint.Package && l.Line.Kind is IngredientKind.Sugar or IngredientKind.Food or IngredientKind.Extract);

    /// <summary>Whether gas comes from a cylinder: the package has a pressure rating.</summary>
    internal static bool IsGassed(Recipe recipe, Kit kit) => PackageOf(recipe, kit)?.MaxPressure is not null;

    /// <summary>The kit's package the recipe asks for; null when it has none.</summary>
    internal static PackageKind? PackageOf(Recipe recipe, Kit kit) =>
        kit.Packages.FirstOrDefault(p => string.Equals(p.Kind, recipe.Package.In, StringComparison.OrdinalIgnoreCase));

    private static void CheckMeans(Recipe recipe, Kit kit, List<Finding> findings)
    {
        if (PackageOf(recipe, kit) is null)
        {
            string has = string.Join(", ", kit.Packages.Select(p => p.Kind));
            findings.Add(new("package.unknown", Severity.Error, "package.in", $"{recipe.Package.In}; kit {kit.Name} has {has}", recipe.Package.In, has));
        }

        if (recipe.Mash?.Method == MashMethod.Tun && kit.Tun is null)
        {
            findings.Add(new("kit.noTun", Severity.Error, "mash.method", $"tun; kit {kit.Name} has no tun", "tun", "a kit with a tun"));
        }

        if (recipe.Mash?.Method is MashMethod.Bag or MashMethod.Part && kit.Bag is null)
        {
            findings.Add(new("kit.noBag", Severity.Error, "mash.method", $"the grain goes into a bag; kit {kit.Name} has none", null, "a kit with a bag"));
        }
    }

    private static Finding NoSolution(Recipe recipe, PlanOutcome outcome) => new(
        "volumes.noSolution", Severity.Error, "package.volume",
        $"{recipe.Package.Volume.Text}; no amount of liquor gives it: {outcome.Binding}",
        recipe.Package.Volume.Text, outcome.Binding);
}
