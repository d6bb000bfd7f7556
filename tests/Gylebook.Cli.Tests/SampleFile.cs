using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>Files in <c>samples/</c>, by where they lie.</summary>
internal static class SampleFile
{
    public static string Recipe(string name) => RepositoryFile.PathOf($"samples/recipes/{name}.json");

    public static string Kit(string name) => RepositoryFile.PathOf($"samples/kits/{name}.json");

    /// <summary>Names of all recipes: "hedgerow-brown", "edges/no-boil".</summary>
    public static IEnumerable<string> Recipes() => Names("samples/recipes").Where(name => !$"/{name}".Contains("/foods/", StringComparison.Ordinal) && !$"/{name}".Contains("/larder/", StringComparison.Ordinal));

    /// <summary>Names of all JSON files in a folder and below.</summary>
    public static IEnumerable<string> Names(string folder) => Directory
        .EnumerateFiles(RepositoryFile.PathOf(folder), "*.json", SearchOption.AllDirectories)
        .Select(path => Path.ChangeExtension(Path.GetRelativePath(RepositoryFile.PathOf(folder), path), null).Replace('\\', '/'))
        .Order(StringComparer.Ordinal);
}
