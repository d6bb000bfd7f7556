namespace Gylebook.Recipes.Tests;

/// <summary>The files in <c>samples/</c>, which every test may run.</summary>
public static class Samples
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = Above(AppContext.BaseDirectory);

    public static string Folder(params string[] parts) => Path.Combine([Root, .. parts]);

    public static string Text(params string[] parts) => File.ReadAllText(Folder(parts));

    /// <summary>Names of the JSON files in a folder and below, relative to the solution's.</summary>
    public static IEnumerable<string> Files(params string[] parts) => Directory
        .EnumerateFiles(Folder(parts), "*.json", SearchOption.AllDirectories)
        .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/'))
        .Order(StringComparer.Ordinal);

    public static TheoryData<string> Recipes() =>
        [.. Files("samples", "recipes").Where(path => !path.Contains("/foods/", StringComparison.Ordinal) && !path.Contains("/larder/", StringComparison.Ordinal))];

    public static TheoryData<string> Kits() => [.. Files("samples", "kits")];

    public static TheoryData<string> Foods() => [.. Files("samples", "recipes", "foods"), .. Files("samples", "recipes", "edges", "foods"), .. Files("samples", "foods")];

    public static TheoryData<string> Larder() => [.. Files("samples", "recipes", "lots", "larder")];

    public static TheoryData<string> Waters() => [.. Files("samples", "water")];

    public static TheoryData<string> Bad() => [.. Files("samples", "bad")];

    private static string Above(string folder) =>
        File.Exists(Path.Combine(folder, "Gylebook.slnx")) ? folder : Above(Path.GetDirectoryName(folder.TrimEnd(Path.DirectorySeparatorChar))!);
}
