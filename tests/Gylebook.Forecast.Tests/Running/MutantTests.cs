using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Forecast.Records;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Tests.Running;

/// <summary>Whether the balance would notice: each mutant is wrong by a millionth at one place, and every one must fail.</summary>
public sealed class MutantTests(ITestOutputHelper output)
{
    private const double Millionth = 1 + 1e-6;

    [Fact]
    public void The_tours_themselves_balance() =>
        Assert.All(Tours.All, tour => Assert.True(new OneRun(tour.Plan, tour.Draw).Ledger.Closes, tour.Name));

    [Fact]
    public void The_tours_reach_every_place_of_addition_and_every_loss()
    {
        HashSet<AdditionPoint> points = [.. Tours.All.SelectMany(t => t.BrewPlan.AdditionLines).Select(l => l.Line.At.Point)];
        Assert.Equal(Enum.GetValues<AdditionPoint>(), points.Order());

        var records = Tours.All.Select(t => new OneRun(t.Plan, t.Draw).Record).ToList();
        Assert.Equal(Enum.GetValues<Loss>(), records.SelectMany(r => r.Losses).Where(l => l.What.Mass > 0).Select(l => l.Loss!.Value).Distinct().Order());
        HashSet<Stage> entered = [.. records.SelectMany(r => r.Additions).Where(a => a.What.Mass > 0).Select(a => a.Stage)];
        Stage[] wanted =
        [
            Stage.Strike, Stage.Mash, Stage.Rinse, Stage.TopUp, Stage.CopperUp, Stage.Boil, Stage.KnockOut, Stage.Stand,
            Stage.Ferment, Stage.Rack, Stage.Package, Stage.Condition,
        ];
        Assert.Empty(wanted.Except(entered));
        Assert.Contains(records.SelectMany(r => r.Losses), l => l.Stage == Stage.Sour && l.What.Mass > 0);
    }

    [Theory]
    [InlineData("ScaleLoss")]
    [InlineData("DropLoss")]
    [InlineData("ScaleAddition")]
    [InlineData("DropAddition")]
    public void A_log_that_lies_about_one_entry_is_caught(string lie)
    {
        int mutants = 0;
        foreach (Tour tour in Tours.All)
        {
            OneRun honest = new(tour.Plan, tour.Draw);
            int entries = lie.EndsWith("Loss", StringComparison.Ordinal) ? honest.Record.Losses.Count : honest.Record.Additions.Count;
            for (int n = 0; n < entries; n++)
            {
                RunRecord record = new(new RunOutcome(tour.Plan, tour.Draw, new RunTrace(tour.Plan)));
                MutantLog log = new(record, Enum.Parse<Lie>(lie), n);
                Run.Through(tour.Plan, tour.Draw, record.Outcome.Trace, ref log);
                Assert.True(log.Lied, $"{tour.Name}: entry {n} was never reached");
                Assert.False(Ledger.Of(record).Closes, $"{tour.Name}: {lie} {n} was not caught");
                mutants++;
            }
        }

        output.WriteLine($"{lie}: {mutants} mutants, all caught");
        Assert.True(mutants > 0);
    }

    [Fact]
    public void A_reaction_table_wrong_in_one_entry_is_caught()
    {
        int mutants = 0;
        foreach ((string name, Reactions wrong) in Mutants(Reactions.Published))
        {
            bool caught = Tours.All.Any(tour => !new OneRun(tour.Plan with { Reactions = wrong }, tour.Draw).Ledger.Closes);
            Assert.True(caught, $"{name}: not reached by any tour, or not seen in the balance");
            mutants++;
        }

        output.WriteLine($"{mutants} mutants of the reaction tables, all caught");
        Assert.True(mutants > 60);
    }

    private static IEnumerable<(string Name, Reactions Wrong)> Mutants(Reactions right) =>
    [
        .. Of(right.Conversion, "conversion", rows => right with { Conversion = rows }),
        .. Of([right.Coagulation], "coagulation", rows => right with { Coagulation = rows[0] }),
        .. Of(right.Fermentation, "fermentation", rows => right with { Fermentation = rows }),
        .. Of(right.Conditioning, "conditioning", rows => right with { Conditioning = rows }),
        .. Of(right.Refusal, "refusal", rows => right with { Refusal = rows }),
        .. Of(right.Souring, "souring", rows => right with { Souring = rows }),
        .. Of(right.MixedSouring, "mixed souring", rows => right with { MixedSouring = rows }),
    ];

    private static IEnumerable<(string Name, Reactions Wrong)> Of(Reaction[] rows, string table, Func<Reaction[], Reactions> with)
    {
        for (int row = 0; row < rows.Length; row++)
        {
            for (int entry = 0; entry < rows[row].Terms.Length; entry++)
            {
                ReactionTerm[] terms = [.. rows[row].Terms];
                terms[entry] = terms[entry] with { PerKilogram = terms[entry].PerKilogram * Millionth };
                Reaction[] wrong = [.. rows];
                wrong[row] = rows[row] with { Terms = terms };
                yield return ($"{table} of {rows[row].Reactant} row {row}: {terms[entry].Component}", with(wrong));
            }
        }
    }
}
