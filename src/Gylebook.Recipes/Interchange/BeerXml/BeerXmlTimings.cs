using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.BeerXml;

/// <summary>BeerXML says how long a thing stays in the fermenter, we on which day it goes in; it has no stand, and no time for a fermentable.</summary>
internal static class BeerXmlTimings
{
    private static readonly Entered<Duration> None = new(Duration.FromMinutes(0), "0 min");

    /// <summary>A hop's time as the standard has it.</summary>
    public static OpenHop Leave(OpenHop hop, OpenRecipe recipe, TravelList travels)
    {
        OpenTiming timing = hop.Timing!;
        return hop with
        {
            Timing = timing.Use switch
            {
                OpenUse.Mash => timing with { Time = MashTime(recipe) },
                OpenUse.FirstWort => timing with { Time = recipe.BoilTime ?? None },
                OpenUse.Rack or OpenUse.Package => Instead(OpenUse.Fermentation, None, $"{hop.Name}: added {Place(timing.Use)}", "a dry hop that goes in at the end", travels),
                OpenUse.Fermentation => Stays(timing, recipe),
                _ => timing with { Time = timing.Time ?? None },
            },
        };
    }

    /// <summary>The time of anything else as the standard has it.</summary>
    public static OpenMisc Leave(OpenMisc misc, OpenRecipe recipe, TravelList travels)
    {
        OpenTiming timing = misc.Timing!;
        return misc with
        {
            Timing = timing.Use switch
            {
                OpenUse.Mash => timing with { Time = MashTime(recipe) },
                OpenUse.FirstWort => Instead(OpenUse.Boil, recipe.BoilTime ?? None, $"{misc.Name}: added at copper-up", "boiled the whole time", travels),
                OpenUse.Stand => Instead(OpenUse.Boil, None, $"{misc.Name}: {timing.Time} of the stand", "added as the boil ends", travels),
                OpenUse.Fermentation => Stays(timing, recipe),
                _ => timing with { Time = timing.Time ?? None },
            },
        };
    }

    /// <summary>A fermentable with what little of its time the standard has.</summary>
    public static OpenFermentable Leave(OpenFermentable fermentable, TravelList travels)
    {
        bool isLate = fermentable.Timing?.Use is OpenUse.Fermentation or OpenUse.Rack or OpenUse.Package;
        bool isUsual = fermentable.Timing?.Use == (fermentable.Type == FermentableType.Grain ? OpenUse.Mash : OpenUse.FirstWort) || fermentable.Timing is { Use: OpenUse.Fermentation, Time: null };
        if (!isUsual)
        {
            travels.Leave("ingredients", $"{fermentable.Name}: {Place(fermentable.Timing?.Use)}{(fermentable.Timing?.Time is { } time ? $", {time}" : "")}; the file says only whether it goes in after the boil");
        }

        return fermentable with { IsAddedAfterBoil = isLate, WantsMash = fermentable.Timing?.Use == OpenUse.Mash, Timing = null };
    }

    /// <summary>A time of the standard as the day it means.</summary>
    public static T Arrive<T>(T thing, OpenRecipe recipe, TravelList travels)
        where T : OpenThing
    {
        string path = $"{thing.Path}.TIME";
        switch (thing.Timing)
        {
            case { Use: OpenUse.Stand } aroma:
                if (aroma.Time is { Value.Minutes: > 0 } steeped)
                {
                    travels.Leave(path, $"{steeped}; the file says no temperature to steep at, so it goes in at knock-out");
                }

                return thing with { Timing = new OpenTiming { Use = OpenUse.Boil, Time = None } };
            case { Use: OpenUse.Fermentation, Time: { } stays }:
                double day = Math.Floor(Math.Max(0, Days(recipe) - stays.Value.Days));
                travels.Convert(path, Invariant($"{stays} in the fermenter, of {Days(recipe):0.##} days: it goes in on day {day:0}"));
                return thing with { Timing = new OpenTiming { Use = OpenUse.Fermentation, Time = day == 0 ? null : new(Duration.FromDays(day), Invariant($"{day:0} d")) } };
            default:
                return thing;
        }
    }

    private static OpenTiming Stays(OpenTiming timing, OpenRecipe recipe)
    {
        double minutes = Math.Max(0, (Days(recipe) - (timing.Time?.Value.Days ?? 0)) * 1440);
        return timing with { Time = new(Duration.FromMinutes(minutes), Invariant($"{minutes:0.####} min")) };
    }

    private static double Days(OpenRecipe recipe) => recipe.Ferment.Sum(step => step.Time?.Value.Days ?? 0);

    private static Entered<Duration> MashTime(OpenRecipe recipe)
    {
        double minutes = recipe.Mash?.Steps.Where(step => step.Type is MashStepType.Infusion or MashStepType.Temperature).Sum(step => step.Time?.Value.Minutes ?? 0) ?? 0;
        return new(Duration.FromMinutes(minutes), Invariant($"{minutes:0.####} min"));
    }

    private static OpenTiming Instead(OpenUse use, Entered<Duration> time, string what, string told, TravelList travels)
    {
        travels.Convert("ingredients", $"{what}; written as {told}, for the file has no such place");
        return new OpenTiming { Use = use, Time = time };
    }

    private static string Place(OpenUse? use) => use switch
    {
        OpenUse.Mash => "in the mash",
        OpenUse.FirstWort => "at copper-up",
        OpenUse.Boil => "in the boil",
        OpenUse.Stand => "in the stand",
        OpenUse.Fermentation => "in the fermenter",
        OpenUse.Rack => "as the beer is racked",
        _ => "in the package",
    };
}
