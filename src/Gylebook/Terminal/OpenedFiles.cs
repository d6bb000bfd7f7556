using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Recipes.Lots;
using Gylebook.Recipes.Readings;

namespace Gylebook.Terminal;

/// <summary>A recipe, its kit and the sheets beside it, read from files; or findings that say why not.</summary>
internal sealed class OpenedFiles
{
    private readonly List<Finding> _findings = [];

    /// <summary>The recipe; null when it could not be read.</summary>
    public Recipe? Recipe { get; private set; }

    /// <summary>The kit; null when it could not be read.</summary>
    public Kit? Kit { get; private set; }

    /// <summary>The sheets that lie beside the recipe.</summary>
    public Larder Larder { get; private set; } = Larder.Empty;

    /// <summary>What was found while reading.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Opens a recipe, and a kit or the built-in one.</summary>
    public static OpenedFiles Open(string recipe, string? kit)
    {
        OpenedFiles files = new();
        files.Recipe = files.Read(recipe, "", RecipeFile.Read);
        files.Kit = kit is null ? BuiltInKit.LanternShed : files.Read(kit, "kit.", KitFile.Read);
        if (files.Recipe is { } read)
        {
            files.Larder = files.Beside(Path.GetDirectoryName(Path.GetFullPath(recipe))!, read);
        }

        return files;
    }

    /// <summary>Opens a kit alone, where no recipe is brewed on it.</summary>
    public static OpenedFiles OpenKit(string kit)
    {
        OpenedFiles files = new();
        files.Kit = files.Read(kit, "kit.", KitFile.Read);
        return files;
    }

    /// <summary>A water plan; null, with findings, when it could not be read.</summary>
    public WaterPlan? Water(string path) => Read(path, "water.", WaterFile.Read);

    /// <summary>Readings of a brew; null, with findings, when they could not be read.</summary>
    public BrewReadings? Readings(string path) => Read(path, "readings.", ReadingsFile.Read);

    /// <summary>The foods of the folder foods/ that the recipe names, and all of the folder larder/.</summary>
    private Larder Beside(string folder, Recipe recipe)
    {
        Larder larder = new([.. Kept(Path.Combine(folder, "larder"), recipe), .. Foods(Path.Combine(folder, "foods"), recipe)]);
        foreach (LineInHand hand in recipe.Ingredients.Select(line => larder.Take(line, "", [])).DistinctBy(hand => (hand.Sheet, hand.Lot)))
        {
            _findings.AddRange(hand.Sheet is FoodSheet food ? larder.Made(food, hand.Lot).Findings : []);
        }

        return larder.On(DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime));
    }

    /// <summary>Food sheets that are called by the names of their files.</summary>
    private IEnumerable<LarderSheet> Foods(string folder, Recipe recipe)
    {
        foreach (string id in recipe.Ingredients.Where(l => l.Kind is IngredientKind.Food or IngredientKind.Spice).Select(l => l.Of).Distinct(StringComparer.OrdinalIgnoreCase))
        {
            string path = Path.Combine(folder, id + ".json");
            bool isName = id.IndexOfAny(Path.GetInvalidFileNameChars()) < 0;
            if (isName && File.Exists(path) && Read(path, $"foods/{id}.", FoodFile.Read) is { } sheet)
            {
                yield return string.Equals(sheet.Id, id, StringComparison.OrdinalIgnoreCase) ? sheet : sheet with { Id = id };
            }
        }
    }

    /// <summary>The sheets of the larder; one that cannot be read is told in full where the recipe names its file, else in a line.</summary>
    private IEnumerable<LarderSheet> Kept(string folder, Recipe recipe)
    {
        foreach (string path in Directory.Exists(folder) ? Directory.GetFiles(folder, "*.json").Order(StringComparer.Ordinal) : Enumerable.Empty<string>())
        {
            string name = Path.GetFileNameWithoutExtension(path);
            bool isNamed = recipe.Ingredients.Any(line => string.Equals(line.Of, name, StringComparison.OrdinalIgnoreCase));
            List<Finding> found = [];
            if (Read(path, $"larder/{name}.", LarderFile.Read, isNamed ? _findings : found) is { } sheet)
            {
                yield return sheet;
            }
            else if (!isNamed)
            {
                _findings.Add(new("larder.unreadable", Severity.Warning, $"larder/{name}.json", $"this sheet is passed over: {found[0].Message}", null, $"gylebook check larder/{name}.json"));
            }
        }
    }

    /// <summary>Reads a file; its findings say of which file they speak, the recipe's own go without.</summary>
    private T? Read<T>(string path, string whose, Func<Stream, Reading<T>> read, List<Finding>? into = null)
        where T : class
    {
        List<Finding> findings = into ?? _findings;
        if (!TryOpen(path, findings, out FileStream? stream))
        {
            return null;
        }

        using (stream)
        {
            Reading<T> reading = read(stream!);
            findings.AddRange(reading.Findings.Select(f => f with { Where = (whose + f.Where).TrimEnd('.') }));
            return reading.Value;
        }
    }

    /// <summary>Opens a file, or says in a finding why it cannot be opened.</summary>
    internal static bool TryOpen(string path, List<Finding> findings, out FileStream? stream)
    {
        stream = null;
        try
        {
            if (Directory.Exists(path))
            {
                findings.Add(Unreadable(path, "this is a folder; name a file in it"));
                return false;
            }

            stream = File.OpenRead(path);
            return true;
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            findings.Add(Unreadable(path, "there is no such file"));
        }
        catch (UnauthorizedAccessException)
        {
            findings.Add(Unreadable(path, "you are not allowed to read this file"));
        }
        catch (Exception failure) when (failure is IOException or ArgumentException or NotSupportedException)
        {
            findings.Add(Unreadable(path, failure.Message));
        }

        return false;
    }

    private static Finding Unreadable(string path, string why) => new("file.unreadable", Severity.Error, path, why, path);
}
