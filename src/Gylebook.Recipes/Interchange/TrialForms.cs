using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Interchange;

/// <summary>The fields of a bench trial that is kept with its food.</summary>
internal static class TrialForms
{
    private const double MostMark = 10;

    private static readonly Form<TrialGlass> Glass = new Form<TrialGlass>(new TrialGlass { Dose = default }) { About = "A glass of it." }
        .Need("dose", "dose", Spelled.Dose, g => g.Dose, (g, v) => g with { Dose = v }, new("Weighed, or poured: \"3 g/L\", \"0.5 mL/L\". \"0 g/L\" is the glass without."))
        .May("mark", "mark", Leaves.Number(0, MostMark), g => g.Mark, (g, v) => g with { Mark = v }, new("From 0 to 10."))
        .May("best", "the dose for the batch", Leaves.Flag, g => g.IsBest, (g, v) => g with { IsBest = v }, new("One glass at most; without it the highest mark is the best."))
        .May("notes", "what was tasted", Leaves.Prose, g => g.Notes, (g, v) => g with { Notes = v }, new("In words."));

    private static readonly Form<KeptTrial> Trial = new Form<KeptTrial>(new KeptTrial { Day = default, Beer = "" }) { About = "Glasses of one finished beer, each with another dose." }
        .Need("day", "tasted on", Leaves.Day, t => t.Day, (t, v) => t with { Day = v })
        .Need("beer", "in which beer", Leaves.Name, t => t.Beer, (t, v) => t with { Beer = v }, new("A gyle's name, or in words."))
        .May("dosed", "what was dosed", Leaves.Name, t => t.Dosed, (t, v) => t with { Dosed = v }, new("A tincture, a syrup, a tea, and how it was made; the food as it is when left out."))
        .MayList("glasses", "glasses", new ListForm<TrialGlass>(Glass) { ItemSaid = "glass" }, t => t.Glasses, (t, v) => t with { Glasses = v })
        .Agree(Check);

    /// <summary>The trials, last in a food's file.</summary>
    public static Form<FoodSheet> WithTrials(this Form<FoodSheet> form) => form
        .MayList("trials", "bench trials", new ListForm<KeptTrial>(Trial) { ItemSaid = "bench trial" }, f => f.Trials, (f, v) => f with { Trials = v }, new("What it tasted like at which dose, in glasses of finished beer."));

    private static void Check(KeptTrial trial, PartCursor at)
    {
        if (trial.Glasses.Count == 0)
        {
            at.Warning("trial.glasses", "glasses", "no glass; a trial tells something from the first dose on");
        }

        int[] best = [.. Enumerable.Range(0, trial.Glasses.Count).Where(i => trial.Glasses[i].IsBest == true)];
        foreach (int second in best.Skip(1))
        {
            string first = trial.Glasses[best[0]].Dose.Text;
            at.Findings.Error("trial.best", Invariant($"{at.PathOf("glasses")}[{second}].best"), $"{trial.Glasses[second].Dose.Text} is called the dose for the batch, and so is {first}; one glass at most", trial.Glasses[second].Dose.Text, first);
        }
    }
}
