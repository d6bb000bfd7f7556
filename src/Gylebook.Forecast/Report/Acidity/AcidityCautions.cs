using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;

namespace Gylebook.Forecast.Report.Acidity;

/// <summary>What can go wrong in a souring kettle, and how far pH figures go.</summary>
internal static class AcidityCautions
{
    /// <summary>All of them.</summary>
    public static IEnumerable<Caution> Of(BrewPlan brew, RunOutcome run, PhReport ph) =>
        [.. brew.Recipe.Souring is { } plan ? Souring(plan, brew, run) : [], .. Bands(brew, ph)];

    private static IEnumerable<Caution> Souring(SouringPlan plan, BrewPlan brew, RunOutcome run)
    {
        yield return new("souring.germs", Stage.Sour, $"Warm sweet wort feeds germs that make people ill. Heat it to the boil first, cool it to {plan.Temperature}, bring it to about pH 4.5 with food-grade lactic acid before the culture goes in, fill the kettle high, and keep air and flies out. Hot wort scalds, concentrated acid burns: gloves and goggles.", Words.Trade);
        yield return new("souring.discard", Stage.Sour, "Mould, or a smell of vomit, cheese or rot: throw the wort away and do not taste it. Boiling does not undo poison that germs have left.", "extension sheets on low-acid foods: acid and heat do not undo every toxin; the signs common practice, no source");
        yield return new("souring.measure", Stage.Sour, $"{plan.Time} is your figure: no rate of souring is known here. Measure a cooled sample on a calibrated meter every few hours, and boil when it reads {plan.Ph}; taste only what has boiled.", Words.Trade);
        if (brew.Recipe.Boil is not null)
        {
            yield return new("souring.boil", Stage.Boil, "The boil ends the souring. Soured wort foams up as any other: stand by, stir, mind the steam, keep the lid off.", Words.Trade);
        }

        yield return new("souring.yeast", Place.Pitch, $"Wort of pH {plan.Ph} is hard on yeast, and a slow or early end is not counted here: pitch plenty of one that stands acid.", Words.Trade);
        if (!PhReadouts.IsBuffered(run.Trace, Stage.Sour))
        {
            yield return new("souring.noMalt", Stage.Sour, "No malt is in this wort, and nothing is known to buffer it: how much acid it takes is not told.", "docs/science/beer-ph.md");
            yield break;
        }

        foreach (Caution caution in Made(plan, run))
        {
            yield return caution;
        }
    }

    private static IEnumerable<Caution> Made(SouringPlan plan, RunOutcome run)
    {
        (double Low, double High) wort = StartingParameters.EndsOf(Known.WortBuffering);
        double litres = run.Trace.Wort(Stage.Sour).Litres, made = run[PhReadouts.LacticMade], gas = run[PhReadouts.GasMade];
        bool ranOut = PhReadouts.RanOut(run.View);
        string reach = ranOut ? $"The sugars it is counted as taking run out before pH {plan.Ph}: " : "";
        yield return new("souring.acid", Stage.Sour, Invariant($"{reach}{made:0} g of lactic acid, {made / litres:0.0} g/L, are counted from {wort.Low:0} to {wort.High:0} mEq/(kg of malt·pH). That was found near pH 5.5; carried down to pH {plan.Ph} it is our step. The meter decides, not the grams."), "brewing rule for three acids; maltster's sour wort") { Severity = ranOut ? Severity.Warning : Severity.Note };
        if (gas > 0)
        {
            yield return new("souring.gas", Stage.Sour, Invariant($"This culture makes gas, here {gas:0} g of carbon dioxide, and alcohol, of which the boil drives off a part that is counted as kept. Never seal the kettle, and air the room."), "stoichiometry; growth, acetic acid and mannitol not counted");
        }
    }

    private static IEnumerable<Caution> Bands(BrewPlan brew, PhReport ph)
    {
        if (ph.Wort is null && ph.Beer is null)
        {
            yield break;
        }

        (double Low, double High) buffering = StartingParameters.EndsOf(Known.BeerBuffering);
        string beer = ph.Beer is { } band ? Invariant($"Beer of pH {band.Low:0.0} to {band.High:0.0}") : "The pH";
        yield return new("ph.width", Stage.Pour, Invariant($"{beer} is the range of ordinary beers, or the souring's end, moved by the acids, foods and dry hops added, at {buffering.Low:0} to {buffering.High:0} mEq/(kg of malt·pH). It knows neither this grist's colour nor this yeast's ways. Where pH keeps people safe, measure it."), "docs/science/beer-ph.md");
        foreach (Caution caution in FoodAcidCautions.Of(brew))
        {
            yield return caution;
        }
    }
}
