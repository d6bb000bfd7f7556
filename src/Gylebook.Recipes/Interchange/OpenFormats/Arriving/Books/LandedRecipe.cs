using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving.Books;

/// <summary>A recipe from elsewhere as one of ours.</summary>
internal sealed class LandedRecipe(Landing landing, OpenRecipe open)
{
    /// <summary>Share of the fermenter that is packaged, until somebody reckons it. Common practice, no source.</summary>
    private const double PackagedShare = 0.9;

    /// <summary>A carbonation above it can only be grams in a litre.</summary>
    private const double MostVolumes = 6;

    private const int LongestNotes = 100_000;

    /// <summary>What stands in for a size nobody can read. Common practice, no source; the same a new recipe starts from.</summary>
    private static readonly Entered<VolumeAt20C> UsualSize = new(VolumeAt20C.FromLitres(20), "20 L");

    /// <summary>Common practice, no source; the same a new recipe starts from.</summary>
    private static readonly Rest UsualFerment = new(new(Temperature.FromCelsius(19), "19 °C"), new(Duration.FromDays(14), "14 d"));

    private TravelList Travels => landing.Travels;

    /// <summary>The recipe.</summary>
    public Recipe Made()
    {
        LandedMash mash = new(landing, open);
        IReadOnlyList<IngredientLine> lines = new LandedLines(landing, open).All();
        Recipe recipe = new()
        {
            Name = OpenNames.Of(open.Name, "Recipe without a name", $"{open.Path}.name", Travels),
            Notes = Notes(),
            Package = new PackageWish(open.Packaged ?? UsualSize, PackagedIn(), Carbonation()),
            Mash = mash.Plan(lines.Any(line => line.Kind == IngredientKind.Malt)),
            Liquor = mash.Liquor(),
            Souring = mash.Souring(),
            Boil = Boil() is { } time ? new BoilPlan(time) : null,
            Stand = open.Stand,
            Ferment = Ferment(),
            Ingredients = lines,
        };
        return open.Packaged is null ? Sized(recipe) : recipe;
    }

    /// <summary>The recipe with as much in the package as brings the file's litres into the fermenter.</summary>
    private Recipe Sized(Recipe recipe)
    {
        string path = $"{open.Path}.batch_size";
        if (open.Batch is not { } batch || batch.Value.Litres <= 0)
        {
            Travels.Default(path, $"{UsualSize} to package: the file says no size that can be read; common practice, no source");
            return recipe;
        }

        double cast = batch.Value.Litres;
        double packaged = cast * PackagedShare;
        string how = Invariant($"{100 * PackagedShare:0} % of it, common practice, no source");
        for (int turn = 0; turn < 6 && landing.Wishes.CastOf?.Invoke(Packaging(recipe, packaged), landing.Sheets.Select(sheet => sheet.Sheet)) is { Litres: > 0 } reckoned; turn++)
        {
            packaged *= cast / reckoned.Litres;
            how = $"what the kit {landing.Wishes.Kit.Name} leaves of it";
        }

        Recipe sized = Packaging(recipe, packaged);
        Travels.Convert(path, $"{batch} into the fermenter are {sized.Package.Volume} to package, {how}");
        return sized;
    }

    private static Recipe Packaging(Recipe recipe, double litres)
    {
        string text = Invariant($"{Math.Clamp(litres, 0.01, 1e5):0.##} L");
        return recipe with { Package = recipe.Package with { Volume = UnitTable.TryParse(text, out Entered<VolumeAt20C> volume, out _) ? volume : UsualSize } };
    }

    private string? Notes()
    {
        if (OpenNotes.Without(open.Notes) is not { Length: > 0 } notes)
        {
            return null;
        }

        if (notes.Length <= LongestNotes)
        {
            return notes;
        }

        Travels.Leave($"{open.Path}.notes", Invariant($"what goes beyond {LongestNotes} characters"));
        return notes[..(char.IsHighSurrogate(notes[LongestNotes - 1]) ? LongestNotes - 1 : LongestNotes)];
    }

    private string PackagedIn()
    {
        IReadOnlyList<PackageKind> kinds = landing.Wishes.Kit.Packages;
        OpenPackage? first = open.Packages.FirstOrDefault();
        foreach (OpenPackage more in open.Packages.Skip(1))
        {
            Travels.Leave(more.Path, $"{more.Name}: a beer is packaged in one kind here");
        }

        if (first?.Name is { } name && OpenNames.IsName(name) && (kinds.Any(kind => kind.Kind == name) || first.Type is null or PackageType.Other))
        {
            return name;
        }

        bool isKeg = first?.Type is PackageType.Keg or PackageType.Cask or PackageType.Firkin or PackageType.Tank;
        string found = kinds.FirstOrDefault(kind => kind.IsKeg == isKeg)?.Kind ?? (isKeg ? "keg" : "bottle");
        Travels.Default($"{open.Path}.packaging", $"packaged in \"{found}\"; the file says {(first is null ? "nothing of it" : $"\"{FindingList.Shorten(first.Name ?? "")}\"")}");
        return found;
    }

    private Entered<Carbonation>? Carbonation()
    {
        double? told = open.Carbonation ?? open.Packages.Select(package => package.Carbonation).FirstOrDefault(volumes => volumes is not null);
        if (told is not { } number)
        {
            return null;
        }

        string path = $"{open.Path}.carbonation";
        string unit = number > MostVolumes ? "g/L" : "volumes";
        if (!Tables.OpenUnits.TryMake(Tables.OpenUnits.Digits(number), unit, out Entered<Carbonation> wish, out string problem))
        {
            Travels.Leave(path, $"{problem.TrimEnd('.')}");
            return null;
        }

        if (number > MostVolumes)
        {
            Travels.Convert(path, Invariant($"{number} has no unit there; nobody packages so many volumes, so it is read as grams in a litre: look whether that is right"));
        }

        return wish;
    }

    private Entered<Duration>? Boil()
    {
        if (open.BoilTime is { } told)
        {
            return told.Value.Minutes == 0 ? null : told;
        }

        double longest = new OpenThing[][] { [.. open.Hops], [.. open.Fermentables], [.. open.Miscellaneous] }
            .SelectMany(things => things).Where(thing => thing.Timing?.Use == OpenUse.Boil).Select(thing => thing.Timing!.Time?.Value.Minutes ?? 0).DefaultIfEmpty(0).Max();
        if (longest == 0)
        {
            return null;
        }

        Travels.Default($"{open.Path}.boil", Invariant($"{longest:0.##} min, as long as the first addition to it boils: the file says no boil"));
        return new(Duration.FromMinutes(longest), $"{Tables.OpenUnits.Digits(longest)} min");
    }

    private List<Rest> Ferment()
    {
        StepNames.Leave(Travels, open.Path.Length > 0 ? $"{open.Path}.fermentation" : "fermentation", open.Ferment.Select(step => step.Name));
        if (open.Ferment.Count == 0)
        {
            Travels.Default($"{open.Path}.fermentation", $"{UsualFerment.Time} at {UsualFerment.Temperature}: the file says none that can be read; common practice, no source");
            return [UsualFerment];
        }

        List<Rest> rests = [];
        foreach (OpenStep step in open.Ferment)
        {
            Entered<Temperature> before = rests.Count > 0 ? rests[^1].Temperature : UsualFerment.Temperature;
            Rest rest = new(step.Start ?? step.End ?? before, step.Time ?? UsualFerment.Time);
            if ((step.Start ?? step.End) is null || step.Time is null)
            {
                Travels.Default(step.Path, $"{step.Name}: {rest.Time} at {rest.Temperature}, where the file says nothing that can be read; common practice, no source");
            }

            if (step is { Start: { } start, End: { } end } && start.Value.Celsius != end.Value.Celsius)
            {
                Travels.Leave($"{step.Path}.end_temperature", $"{end}; a rest holds one temperature here, the one it starts at, {start}");
            }

            rests.Add(rest);
        }

        return rests;
    }
}
