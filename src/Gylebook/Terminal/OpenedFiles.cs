using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Terminal;

/// <summary>A recipe, its kit and the foods beside it, read from files; or findings that say why not.</summary>
internal sealed class OpenedFiles
{
    private readonly Dictionary<string, FoodMakeup?> _foods = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<Finding> _findings = [];
    private string _foodFolder = "";

    /// <summary>The recipe; null when it could not be read.</summary>
    public Recipe? Recipe { get; private set; }

    /// <summary>The kit; null when it could not be read.</summary>
    public Kit? Kit { get; private set; }

    /// <summary>What was found while reading.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Opens a recipe, and a kit or the built-in one.</summary>
    public static OpenedFiles Open(string recipe, string? kit)
    {
        OpenedFiles files = new() { _foodFolder = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(recipe))!, "foods") };
        files.Recipe = files.Read(recipe, "", RecipeFile.Read);
        files.Kit = kit is null ? BuiltInKit.LanternShed : files.Read(kit, "kit.", KitFile.Read);
        foreach (string food in files.Recipe?.Ingredients.Where(l => l.Kind is Recipes.Ingredients.IngredientKind.Food or Recipes.Ingredients.IngredientKind.Spice).Select(l => l.Of).Distinct() ?? [])
        {
            files.Foods(food);
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

    /// <summary>A food that has a sheet of its own in the folder foods/ beside the recipe; null when it has none.</summary>
    public FoodMakeup? Foods(string id)
    {
        if (!_foods.TryGetValue(id, out FoodMakeup? makeup))
        {
            string path = Path.Combine(_foodFolder, id + ".json");
            bool isName = id.IndexOfAny(Path.GetInvalidFileNameChars()) < 0;
            makeup = isName && File.Exists(path) ? Made(path, id) : null;
            _foods[id] = makeup;
        }

        return makeup;
    }

    /// <summary>A water plan; null, with findings, when it could not be read.</summary>
    public WaterPlan? Water(string path) => Read(path, "water.", WaterFile.Read);

    private FoodMakeup? Made(string path, string id)
    {
        if (Read(path, $"foods/{id}.", FoodFile.Read) is not { } sheet)
        {
            return null;
        }

        MadeUpFood made = FoodMakeups.From(sheet);
        _findings.AddRange(made.Findings);
        return made.Makeup;
    }

    /// <summary>Reads a file; its findings say of which file they speak, the recipe's own go without.</summary>
    private T? Read<T>(string path, string whose, Func<Stream, Reading<T>> read)
        where T : class
    {
        if (!TryOpen(path, _findings, out FileStream? stream))
        {
            return null;
        }

        using (stream)
        {
            Reading<T> reading = read(stream!);
            _findings.AddRange(reading.Findings.Select(f => f with { Where = (whose + f.Where).TrimEnd('.') }));
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
