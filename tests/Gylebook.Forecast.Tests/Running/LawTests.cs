using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Tests.Running;

/// <summary>What a wrong law would break though the balance still closed: each on every random recipe it speaks of.</summary>
public sealed class LawTests(ITestOutputHelper output)
{
    [Fact]
    public void More_strike_gives_more_beer_of_a_lower_gravity()
    {
        int seen = 0;
        foreach ((Brew drawn, RunPlan plan) in Planned())
        {
            OneRun less = new(plan);
            OneRun more = new(plan with { Liquors = [plan.Liquors[0] + 1, .. plan.Liquors[1..]] });
            Assert.True(more[BeerReadouts.PackagedLitres] > less[BeerReadouts.PackagedLitres], drawn.Name);
            Assert.True(more[BeerReadouts.CastGravity] < less[BeerReadouts.CastGravity], drawn.Name);
            seen++;
        }

        output.WriteLine($"{seen} recipes");
    }

    [Fact]
    public void More_conversion_gives_a_higher_gravity_and_no_more_litres_than_the_extract_takes_up()
    {
        int seen = 0;
        double most = 0;
        foreach ((Brew drawn, RunPlan plan) in Planned().Where(b => b.Plan.Mash.StarchShareOfExtract(b.Plan.Medians) > 0))
        {
            OneRun worse = new(plan, Drawn(plan, Known.Conversion, 0.85));
            OneRun better = new(plan, Drawn(plan, Known.Conversion, 0.95));
            if (worse.At(Stage.Mash)[Component.Starch] <= better.At(Stage.Mash)[Component.Starch])
            {
                continue;
            }

            Assert.True(better[BeerReadouts.CastGravity] > worse[BeerReadouts.CastGravity], drawn.Name);

            // Litres that the extract won takes up once dissolved, each component by its own specific volume.
            Wort won = better.At(Stage.Mash);
            won.Add(worse.At(Stage.Mash), -1);
            double ownVolume = Components.Table.Sum(row => row.SpecificVolume * won[row.Component]);
            double grown = better.At(Stage.Mash).Litres - worse.At(Stage.Mash).Litres;
            Assert.True(grown > 0 && grown <= ownVolume, $"{drawn.Name}: {grown} L for {ownVolume} L of extract");

            // What the grain holds is counted in kilograms and does not hang on conversion; denser wort holds the same in fewer
            // litres, so copper-up itself may grow by more than the extract's own volume.
            Assert.Equal(Held(worse), Held(better), 1e-12 * Held(worse));
            most = Math.Max(most, (better[BeerReadouts.CopperUpLitres] - worse[BeerReadouts.CopperUpLitres]) / ownVolume);
            seen++;
        }

        output.WriteLine($"{seen} recipes; copper-up grows by at most {most:P1} of the extract's own volume");
        Assert.True(seen > 1000);

        static double Held(OneRun run) => run.At(Stage.Mash).LiquidMass - run.At(Stage.Lift).LiquidMass;
    }

    [Fact]
    public void A_better_rinse_gives_a_higher_gravity()
    {
        int seen = 0;
        foreach ((Brew drawn, RunPlan plan) in Planned().Where(b => b.Plan.Rinse.Kilograms > 0))
        {
            OneRun worse = new(plan, Drawn(plan, Known.RinsingShare, 0.4));
            OneRun better = new(plan, Drawn(plan, Known.RinsingShare, 0.9));
            Assert.True(better[BeerReadouts.CastGravity] > worse[BeerReadouts.CastGravity], drawn.Name);
            seen++;
        }

        Assert.True(seen > 500, $"{seen}");
    }

    [Fact]
    public void Nothing_of_anything_anywhere_changes_no_number()
    {
        IngredientKind[] kinds = [IngredientKind.Sugar, IngredientKind.Food, IngredientKind.Hop, IngredientKind.Salt, IngredientKind.Yeast, IngredientKind.Malt];
        int seen = 0;
        foreach ((Brew drawn, RunPlan plan) in Planned())
        {
            IngredientKind kind = kinds[seen % kinds.Length];
            AdditionPoint at = kind == IngredientKind.Malt ? AdditionPoint.Mash : (AdditionPoint)(seen / kinds.Length % 9);
            seen++;
            if ((at == AdditionPoint.Mash && drawn.Recipe.Mash is null) || (at == AdditionPoint.Boil && drawn.Recipe.Boil is null) || (at == AdditionPoint.Stand && drawn.Recipe.Stand is null))
            {
                continue;
            }

            string of = kind switch
            {
                IngredientKind.Sugar => "white sugar",
                IngredientKind.Food => "raspberries-raw",
                IngredientKind.Hop => "Saaz",
                IngredientKind.Salt => "gypsum",
                IngredientKind.Yeast => "saison",
                _ => "chocolate malt",
            };
            IngredientLine nothing = Typed.Line(kind, of, 0, at, at is AdditionPoint.Boil or AdditionPoint.Stand or AdditionPoint.Ferment ? 7 : 0);
            BrewPlan brew = (drawn.Recipe with { Ingredients = [nothing, .. drawn.Recipe.Ingredients] }).PlanOn(drawn.Kit);
            Assert.Equal(new OneRun(plan).Readings, OneRun.Of(brew).Readings);
        }
    }

    [Fact]
    public void Priming_leaves_the_final_gravity_alone_and_makes_more_gas()
    {
        foreach ((Brew drawn, RunPlan plan) in Planned().Where(b => b.Plan.Packages.Any(p => p.Priming > 0)))
        {
            OneRun primed = new(plan);
            OneRun plain = new(plan with { Packages = [.. plan.Packages.Select(p => p with { Priming = 0 })] });
            foreach (int portion in plan.Packaged)
            {
                // A mean weighted by litres: it rounds where the litres differ.
                Assert.Equal(plain.Of(portion, BeerReadouts.FinalGravity), primed.Of(portion, BeerReadouts.FinalGravity), 1e-14);
                Assert.True(primed.Of(portion, BeerReadouts.CarbonationVolumes) >= plain.Of(portion, BeerReadouts.CarbonationVolumes), drawn.Name);
            }
        }
    }

    [Fact]
    public void Fermenting_twice_changes_nothing()
    {
        foreach ((Brew drawn, RunPlan plan) in Planned())
        {
            Step[] twice = [.. plan.Steps.SelectMany(step => step.Move == Move.FermentOut ? new[] { step, step } : [step])];
            Assert.True(new OneRun(plan).Readings.SequenceEqual(new OneRun(plan with { Steps = twice }).Readings), drawn.Name);
        }
    }

    [Fact]
    public void More_of_a_food_settles_more_sludge()
    {
        int seen = 0;
        foreach ((Brew drawn, _) in Planned())
        {
            IngredientLine? food = drawn.Recipe.Ingredients.FirstOrDefault(l => l.Kind == IngredientKind.Food && l.At.Point is > AdditionPoint.Mash and < AdditionPoint.Rack);
            Recipe once = Fixed(drawn.Recipe);
            if (food is null || drawn.Recipe.Portions.Count > 0 || once.PlanOn(drawn.Kit) is not { Plan: { } plan } brew)
            {
                continue;
            }

            if (!(brew.Lines.First(l => l.Line == food).Food!.Insoluble > 0))
            {
                continue;
            }

            IngredientLine doubled = food with { Amount = new Amount(Typed.Kilograms(2 * food.Amount.Mass!.Value.Value.Kilograms), null) };
            Recipe twice = once with { Ingredients = [.. once.Ingredients.Select(l => l == food ? doubled : l)] };
            Assert.True(OneRun.Of(twice.PlanOn(drawn.Kit))[BeerReadouts.SludgeLitres] > new OneRun(plan)[BeerReadouts.SludgeLitres], drawn.Name);
            seen++;
        }

        output.WriteLine($"{seen} recipes");
        Assert.True(seen > 500, $"{seen}");
    }

    /// <summary>The same recipe with a generous strike set by hand, so that a change of food does not change the liquor.</summary>
    private static Recipe Fixed(Recipe recipe) => recipe with
    {
        Liquor = new LiquorPlan(Typed.Litres(1.6 * recipe.Package.Volume.Value.Litres), recipe.Mash?.Method == MashMethod.Part ? Typed.Litres(5) : null),
    };

    private static IEnumerable<(Brew Drawn, RunPlan Plan)> Planned() => RandomBrews.All
        .Select(drawn => (Drawn: drawn, Plan: drawn.Recipe.PlanOn(drawn.Kit).Plan!))
        .Where(b => b.Plan is not null);

    private static double[] Drawn(RunPlan plan, Known parameter, double value)
    {
        double[] draw = [.. plan.Medians];
        draw[(int)parameter] = value;
        return draw;
    }
}
