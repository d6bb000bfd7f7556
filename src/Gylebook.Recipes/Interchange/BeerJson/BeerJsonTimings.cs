using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.BeerJson;

/// <summary>
/// BeerJSON knows four places to add to, and steps within them: a stand is a step of the boil that does not boil, and what goes
/// in at racking goes into the last step of the fermentation.
/// </summary>
internal static class BeerJsonTimings
{
    /// <summary>Below it a step of the boil is a stand, or cools. Our choice.</summary>
    private const double BoilingCelsius = 95;

    /// <summary>A step that ends cooler cools the wort for the yeast, and is no stand. Our choice.</summary>
    private const double CoolestStandCelsius = 50;

    /// <summary>What our own files call it: a stand of ours may be nearly as hot as the boil.</summary>
    private const string OurStand = "Stand";

    private static readonly Entered<Temperature> Boiling = new(Temperature.FromCelsius(100), "100 °C");

    /// <summary>A recipe with the steps that its times of addition need, and the times pointing at them.</summary>
    public static OpenRecipe Leave(OpenRecipe recipe)
    {
        OpenTiming[] timings = [.. Things(recipe).Select(thing => thing.Timing).OfType<OpenTiming>()];
        bool hasFirstWort = timings.Any(timing => timing.Use == OpenUse.FirstWort);
        bool hasStand = recipe.Stand is not null || timings.Any(timing => timing.Use == OpenUse.Stand);
        bool hasRack = timings.Any(timing => timing.Use == OpenUse.Rack);
        List<OpenStep> boil = [];
        if (hasFirstWort)
        {
            boil.Add(new OpenStep { Name = "Heat to the boil", End = Boiling });
        }

        if (boil.Count > 0 || hasStand)
        {
            boil.Add(new OpenStep { Name = "Boil", Start = Boiling, End = Boiling, Time = recipe.BoilTime ?? new(Duration.FromMinutes(0), "0 min") });
        }

        if (recipe.Stand is { } stand)
        {
            boil.Add(new OpenStep { Name = OurStand, Start = stand.Temperature, End = stand.Temperature, Time = stand.Time });
        }

        int boiling = boil.Count == 0 ? 0 : hasFirstWort ? 2 : 1;
        OpenRecipe made = recipe with
        {
            BoilSteps = boil,
            BoilTime = recipe.BoilTime ?? (boil.Count > 0 ? new(Duration.FromMinutes(0), "0 min") : null),
            Ferment = hasRack ? [.. recipe.Ferment, new OpenStep { Name = "Rack" }] : recipe.Ferment,
        };
        return WithTimings(made, (timing, _) => timing.Use switch
        {
            OpenUse.FirstWort => new OpenTiming { Use = OpenUse.Boil, Time = recipe.BoilTime, Duration = recipe.BoilTime, Step = 1 },
            OpenUse.Boil => timing with { Duration = timing.Time, Step = boiling > 0 ? boiling : null },
            OpenUse.Stand => timing with { Use = OpenUse.Boil, Duration = timing.Time, Step = boiling + 1 },
            OpenUse.Rack => new OpenTiming { Use = OpenUse.Fermentation, Step = made.Ferment.Count },
            _ => timing,
        });
    }

    /// <summary>A recipe with times of addition that need no steps, and the stand the steps of its boil hold.</summary>
    public static OpenRecipe Arrive(OpenRecipe recipe, TravelList travels)
    {
        OpenStep? stand = recipe.BoilSteps.FirstOrDefault(IsStand);
        foreach (OpenStep step in recipe.BoilSteps.Where(step => !IsBoil(step) && !IsHeating(step) && step != stand))
        {
            travels.Leave(step.Path, $"{step.Name ?? "a step"}: a boil has one stand here, and cooling is the kit's");
        }

        OpenRecipe made = recipe with
        {
            Stand = stand is { Time: { } time } ? new Rest((stand.End ?? stand.Start)!.Value, time) : null,
            BoilTime = recipe.BoilTime is { Value.Minutes: 0 } ? null : recipe.BoilTime,
            Ferment = [.. recipe.Ferment.Where(step => !IsRack(step, recipe))],
        };
        return WithTimings(made, (timing, path) => timing.Use switch
        {
            OpenUse.Boil => OfBoil(timing, path, recipe, travels),
            OpenUse.Fermentation => OfFermentation(timing, path, recipe, travels),
            _ => timing,
        });
    }

    private static OpenTiming OfBoil(OpenTiming timing, string path, OpenRecipe recipe, TravelList travels)
    {
        OpenTiming whole = timing with { Time = timing.Duration ?? timing.Time, Duration = null, Step = null };
        return StepOf(timing, recipe.BoilSteps, path, travels) switch
        {
            { } step when IsHeating(step) => whole with { Use = OpenUse.FirstWort },
            { } step when IsStand(step) => whole with { Use = OpenUse.Stand },
            _ => whole,
        };
    }

    private static OpenTiming OfFermentation(OpenTiming timing, string path, OpenRecipe recipe, TravelList travels)
    {
        if (timing.Duration is { } stays)
        {
            travels.Leave($"{path}.timing.duration", $"{stays}; how long it stays in is not kept here");
        }

        OpenTiming plain = timing with { Duration = null, Step = null };
        if (StepOf(timing, recipe.Ferment, path, travels) is not { } step)
        {
            return plain;
        }

        if (IsRack(step, recipe))
        {
            return plain with { Use = OpenUse.Rack };
        }

        double before = recipe.Ferment.TakeWhile(other => other != step).Sum(other => other.Time?.Value.Days ?? 0);
        if (before == 0)
        {
            return plain;
        }

        double days = before + (timing.Time?.Value.Days ?? 0);
        travels.Convert($"{path}.timing", Invariant($"{timing.Time?.Text ?? "at the start"} of step {timing.Step:0} is day {days:0.##} of the fermentation"));
        return plain with { Time = new(Duration.FromDays(days), Invariant($"{days:0.####} d")) };
    }

    private static OpenStep? StepOf(OpenTiming timing, IReadOnlyList<OpenStep> steps, string path, TravelList travels)
    {
        if (timing.Step is not { } number)
        {
            return null;
        }

        if (number >= 1 && number <= steps.Count && number == Math.Floor(number))
        {
            return steps[(int)number - 1];
        }

        if (number != 1)
        {
            travels.Repair($"{path}.timing.step", Invariant($"step {number}; there are {steps.Count}, counted from 1: read as if it named none"));
        }

        return null;
    }

    private static bool IsHeating(OpenStep step) => step is { Start: null or { Value.Celsius: < BoilingCelsius }, End.Value.Celsius: >= BoilingCelsius, Time: null };

    private static bool IsStand(OpenStep step) =>
        step.Time is not null && (step.End ?? step.Start) is { } at
        && (step.Name == OurStand || (at.Value.Celsius < BoilingCelsius
            && (at.Value.Celsius >= CoolestStandCelsius || step.Start is null || step.End is null || step.Start.Value.Value == step.End.Value.Value)));

    private static bool IsBoil(OpenStep step) => !IsStand(step) && (step.End ?? step.Start)?.Value.Celsius is null or >= BoilingCelsius;

    private static bool IsRack(OpenStep step, OpenRecipe recipe) =>
        step is { Start: null, End: null, Time: null } && recipe.Ferment.Count > 1 && ReferenceEquals(recipe.Ferment[^1], step);

    private static IEnumerable<OpenThing> Things(OpenRecipe recipe) => [.. recipe.Fermentables, .. recipe.Hops, .. recipe.Cultures, .. recipe.Miscellaneous];

    private static OpenRecipe WithTimings(OpenRecipe recipe, Func<OpenTiming, string, OpenTiming> of)
    {
        return recipe with
        {
            Fermentables = [.. recipe.Fermentables.Select(Timed)],
            Hops = [.. recipe.Hops.Select(Timed)],
            Cultures = [.. recipe.Cultures.Select(Timed)],
            Miscellaneous = [.. recipe.Miscellaneous.Select(Timed)],
        };

        T Timed<T>(T thing)
            where T : OpenThing => thing.Timing is { } timing ? thing with { Timing = of(timing, thing.Path) } : thing;
    }
}
