using Gylebook.Engine.Parameters;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Forecast.Cooling;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Boiling;
using Gylebook.Science.Conditioning;
using Gylebook.Science.Fermenting;

namespace Gylebook.Forecast.Planning;

/// <summary>What of recipe and kit moves no mass and yet decides what is told: how warm the stages are, what heats, chills, presses and pitches.</summary>
internal static class BrewSurroundings
{
    /// <summary>A cold keg, where the recipe ends warmer than the chart. Common practice, no source.</summary>
    private const double ColdCelsius = 4;

    /// <summary>All of it.</summary>
    public static Surroundings Of(Recipe recipe, Kit kit, IReadOnlyList<PlannedLine> lines)
    {
        double boiling = BoilingPoint.CelsiusAt(kit.MetresAboveSea);
        Dictionary<Stage, double> celsius = CelsiusOf(recipe, boiling);
        return new Surroundings
        {
            Celsius = celsius,
            BoilCelsius = boiling,
            Mash = MashOf(recipe, kit, lines),
            Chill = ChillOf(recipe, kit, celsius),
            Keg = BrewPlanner.IsGassed(recipe, kit) ? KegOf(recipe, kit) : null,
            Pitch = PitchOf(lines),
        };
    }

    /// <summary>By stage; one of which nobody says how warm it is has no entry.</summary>
    private static Dictionary<Stage, double> CelsiusOf(Recipe recipe, double boiling)
    {
        Dictionary<Stage, double> celsius = new((int)Stage.Pour + 1);
        void Set(double? at, params ReadOnlySpan<Stage> stages)
        {
            foreach (Stage stage in stages)
            {
                if (at is { } known)
                {
                    celsius[stage] = known;
                }
            }
        }

        double? lastRest = recipe.Mash?.Rests.LastOrDefault()?.Temperature.Value.Celsius;
        double? souring = recipe.Souring?.Temperature.Value.Celsius;
        double? lastDay = recipe.Ferment.LastOrDefault()?.Temperature.Value.Celsius;
        bool crashes = CellarSteps.Crashes(recipe);
        Set(recipe.Mash?.Rests.FirstOrDefault()?.Temperature.Value.Celsius, Stage.Mash);
        Set(lastRest ?? boiling, Stage.Lift, Stage.RunOff, Stage.CopperUp);
        Set(lastRest, Stage.Rinse);
        Set(souring, Stage.Sour);
        Set(recipe.Boil is null ? souring ?? lastRest : boiling, Stage.Boil, Stage.KnockOut);
        Set(recipe.Stand?.Temperature.Value.Celsius, Stage.Stand);
        Set(recipe.Ferment.FirstOrDefault()?.Temperature.Value.Celsius, Stage.Chill, Stage.Cast, Stage.Split);
        Set(crashes ? recipe.Ferment[^2].Temperature.Value.Celsius : lastDay, Stage.Ferment);
        Set(crashes ? lastDay : null, Stage.Crash);
        Set(lastDay, Stage.Rack, Stage.Package);
        return celsius;
    }

    /// <summary>A bag hangs in the warm kettle, a tun starts as cold as the grain; the room is as warm as the grain.</summary>
    private static MashHeatPlan? MashOf(Recipe recipe, Kit kit, IReadOnlyList<PlannedLine> lines) => recipe.Mash is { Rests.Count: > 0 } mash
        ? new MashHeatPlan(
            lines.Where(l => l.Line.At.Point == AdditionPoint.Mash && l.Kilograms > 0).Sum(l => l.Kilograms),
            kit.GrainTemperature.Value.Celsius,
            RunParameters.UsesTun(recipe, kit) ? kit.Tun!.HeatCapacity.Value.KilojoulesPerKelvin : 0,
            mash.Rests[0].Temperature.Value.Celsius,
            kit.Kettle.Power?.Value.Kilowatts,
            recipe.Boil is null ? null : recipe.Souring?.Temperature.Value.Celsius ?? mash.Rests[^1].Temperature.Value.Celsius)
        {
            CoolingHours = kit.MashCooling?.Value.Hours,
            IsInTun = RunParameters.UsesTun(recipe, kit),
            RinseCelsius = mash.Sparge is { Volume: not null } sparge ? sparge.Temperature?.Value.Celsius : null,
        }
        : null;

    private static ChillPlan? ChillOf(Recipe recipe, Kit kit, Dictionary<Stage, double> celsius)
    {
        if (recipe.Ferment.Count == 0 || !celsius.TryGetValue(recipe.Stand is null ? Stage.KnockOut : Stage.Stand, out double from)
            || recipe.Ferment[0].Temperature.Value.Celsius is var to && to >= from)
        {
            return null;
        }

        return new WortChill(kit).From(from, to);
    }

    /// <summary>At the last temperature of the recipe where the chart has it, else cold.</summary>
    private static KegPlan KegOf(Recipe recipe, Kit kit)
    {
        double last = recipe.Ferment.Count > 0 ? recipe.Ferment[^1].Temperature.Value.Celsius : ColdCelsius;
        return new KegPlan(
            KegPressure.IsWithinPublishedRange(last) ? last : ColdCelsius, BoilingPoint.PressureKilopascals(kit.MetresAboveSea) / 100);
    }

    private static PitchPlan? PitchOf(IReadOnlyList<PlannedLine> lines)
    {
        List<PlannedLine> yeasts = [.. lines.Where(l => l.Yeast is not null && l.Line.At.Point == AdditionPoint.Pitch)];
        return yeasts.Count == 0 ? null : new PitchPlan(yeasts.Max(y => y.Yeast!.PitchRate), [.. yeasts.Select(PitchedOf)]);
    }

    /// <summary>Dry yeast does not age as liquid does. A slurry is weighed or poured: a millilitre is about a gram.</summary>
    private static PitchedYeast PitchedOf(PlannedLine yeast)
    {
        bool ages = yeast.Line.Form != IngredientForm.Dry && yeast.Line.Age is not null;
        (double low, double high) = ages ? YeastViability.Band(yeast.Line.Age!.Value.Value.Days) : (1, 1);
        return yeast.Line switch
        {
            { Cells: { } cells } => new(cells.Billions, 0, null, low, high),
            { Form: IngredientForm.Dry } => new(null, yeast.Kilograms * 1000, Known.PitchCellsPerGram, low, high),
            { Form: IngredientForm.Slurry } => new(null, yeast.Kilograms * 1000, Known.SlurryCellsPerMillilitre, low, high),
            _ => new(null, 0, null, low, high),
        };
    }
}
