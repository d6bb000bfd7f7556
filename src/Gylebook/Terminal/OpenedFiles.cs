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
        files.Recipe = files.Read(recipe, RecipeFile.Read);
        files.Kit = kit is null ? BuiltInKit.LanternShed : files.Read(kit, KitFile.Read);
        foreach (string food in files.Recipe?.Ingredients.Where(l => l.Kind is Recipes.Ingredients.IngredientKind.Food or Recipes.Ingredients.IngredientKind.Spice).Select(l => l.Of).Distinct() ?? [])
        {
            files.Foods(food);
        }

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
    public WaterPlan? Water(string path) => Read(path, WaterFile.Read);

    private FoodMakeup? Made(string path, string id)
    {
        if (Read(path, FoodFile.Read) is not { } sheet)
        {
            return null;
        }

        MadeUpFood made = FoodMakeups.From(sheet);
        _findings.AddRange(made.Findings.Select(f => f with { Where = $"foods/{id}.{f.Where}" }));
        return made.Makeup;
    }

    private T? Read<T>(string path, Func<Stream, Reading<T>> read)
        where T : class
    {
        if (!TryOpen(path, _findings, out FileStream? stream))
        {
            return null;
        }

        using (stream)
        {
            Reading<T> reading = read(stream!);
            _findings.AddRange(reading.Findings);
            return reading.Value;
        }
    }

    /// <summary>Opens a file, or says in a finding why it cannot be opened.</summary>
    internal static bool TryOpen(string path, List<Finding> findings, out FileStream? stream)
    {
        try
        {
            stream = File.OpenRead(path);
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            findings.Add(new("file.unreadable", Severity.Error, path, $"{path}: {failure.Message}", path));
            stream = null;
            return false;
        }
    }
}
