using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving;

/// <summary>Times of addition from elsewhere as our lines have them.</summary>
internal static class LandedTimes
{
    private const double MostMinutes = 10_000, MostDays = 10_000;

    /// <summary>The time of a line.</summary>
    /// <param name="from">What is added.</param>
    /// <param name="otherwise">When it goes in if the file does not say.</param>
    /// <param name="recipe">The recipe it is of.</param>
    /// <param name="travels">Takes what happens.</param>
    public static AdditionTime Of(OpenThing from, AdditionTime otherwise, OpenRecipe recipe, TravelList travels)
    {
        string path = $"{from.Path}.timing";
        if (from.Timing?.Use is not { } use)
        {
            travels.Default(path, $"{from.Name}: {AdditionTimeText.Write(otherwise)}; the file does not say where it goes in");
            return otherwise;
        }

        double minutes = from.Timing.Time?.Value.Minutes ?? -1;
        return use switch
        {
            OpenUse.Boil => Boil(minutes, recipe, path, travels),
            OpenUse.Stand => new AdditionTime(AdditionPoint.Stand, Within(Math.Max(0, minutes), MostMinutes, path, travels)),
            OpenUse.Fermentation when minutes < 0 => new AdditionTime(AdditionPoint.Pitch),
            OpenUse.Fermentation => Day(from.Timing.Time!.Value.Value.Days, path, travels),
            OpenUse.Mash => Untimed(AdditionPoint.Mash, minutes, path, travels),
            OpenUse.FirstWort => new AdditionTime(AdditionPoint.CopperUp),
            OpenUse.Rack => Untimed(AdditionPoint.Rack, minutes, path, travels),
            _ => Untimed(AdditionPoint.Package, minutes, path, travels),
        };
    }

    private static AdditionTime Boil(double minutes, OpenRecipe recipe, string path, TravelList travels)
    {
        if (minutes < 0)
        {
            double whole = recipe.BoilTime?.Value.Minutes ?? 0;
            travels.Default(path, Invariant($"the whole boil, {whole:0.##} min; the file does not say how long"));
            minutes = whole;
        }

        return minutes == 0 ? new AdditionTime(AdditionPoint.KnockOut) : new AdditionTime(AdditionPoint.Boil, Within(minutes, MostMinutes, path, travels));
    }

    private static AdditionTime Day(double days, string path, TravelList travels)
    {
        double day = Math.Floor(Within(days, MostDays, path, travels));
        if (day != days)
        {
            travels.Convert(path, Invariant($"after {days:0.##} days is day {day:0} here"));
        }

        return new AdditionTime(AdditionPoint.Ferment, day);
    }

    private static AdditionTime Untimed(AdditionPoint point, double minutes, string path, TravelList travels)
    {
        if (minutes > 0)
        {
            travels.Leave($"{path}.time", Invariant($"{minutes:0.##} min; what goes in there goes in at once here"));
        }

        return new AdditionTime(point);
    }

    private static double Within(double count, double most, string path, TravelList travels)
    {
        if (count <= most)
        {
            return count;
        }

        travels.Repair(path, Invariant($"{count:0.##}; at most {most:0} is read"));
        return most;
    }
}
