using System.Text.Json;
using Gylebook.Tests.Shared;

namespace Gylebook.Fuzz.Tests;

/// <summary>One set of files as a brewer, or a damaged disk, might hand them over: a recipe, a kit, a food and a water plan.</summary>
/// <param name="Name">Seed and number: the same name draws the same case.</param>
/// <param name="Recipe">The recipe's file.</param>
/// <param name="Theirs">The recipe's file as somebody else has changed it meanwhile.</param>
/// <param name="Basis">The sample both came from.</param>
/// <param name="Kit">The kit's file.</param>
/// <param name="Food">The food's file.</param>
/// <param name="Water">The water plan's file.</param>
/// <param name="Dose">Grams of the food, the place, and the litres it goes into; null for no dose.</param>
internal sealed record FuzzCase(string Name, byte[] Recipe, byte[] Theirs, byte[] Basis, byte[] Kit, byte[] Food, byte[] Water, FuzzDose? Dose)
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    private static readonly byte[][] Recipes = [.. Samples("recipes").Where(path => !path.Contains("foods", StringComparison.Ordinal) && !path.Contains("larder", StringComparison.Ordinal)).Select(File.ReadAllBytes)];
    private static readonly byte[][] Kits = [.. Samples("kits").Select(File.ReadAllBytes)];
    private static readonly byte[][] Foods = [.. Samples("foods").Concat(Samples("recipes/foods")).Select(File.ReadAllBytes)];
    private static readonly byte[][] Waters = [.. Samples("water").Select(File.ReadAllBytes)];

    /// <summary>Of saved cases.</summary>
    public const string Ending = ".json";

    /// <summary>Draws a case.</summary>
    public static FuzzCase Draw(string seed, int number)
    {
        Mutation mutation = new(new Random(FuzzRun.StableHash($"{seed}/{number}")));
        byte[] basis = mutation.OneOf(Recipes);
        return new FuzzCase(
            $"{seed}-{number}", mutation.Recipe(basis), mutation.Recipe(basis), basis, mutation.Any(mutation.OneOf(Kits)),
            mutation.Any(mutation.OneOf(Foods)), mutation.Any(mutation.OneOf(Waters)), mutation.Dose());
    }

    /// <summary>Writes the case as one file that <see cref="Read"/> takes.</summary>
    /// <returns>Where it lies.</returns>
    public string Save() => FuzzRun.Save(Name + Ending, JsonSerializer.SerializeToUtf8Bytes(this, Indented));

    /// <summary>A case that was saved.</summary>
    public static FuzzCase Read(string path) =>
        JsonSerializer.Deserialize<FuzzCase>(File.ReadAllText(path)) ?? throw new InvalidDataException($"{path}: no case.");

    private static IEnumerable<string> Samples(string folder) => Directory
        .EnumerateFiles(RepositoryFile.PathOf("samples/" + folder), "*.json", folder == "recipes" ? SearchOption.AllDirectories : SearchOption.TopDirectoryOnly)
        .Order(StringComparer.Ordinal);
}

/// <summary>How much of the food, where, and into how much.</summary>
/// <param name="Grams">Of food.</param>
/// <param name="At">As a file says it.</param>
/// <param name="Litres">At 20 °C.</param>
internal sealed record FuzzDose(double Grams, string At, double Litres);
