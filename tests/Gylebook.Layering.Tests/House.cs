using System.Xml.Linq;

namespace Gylebook.Layering.Tests;

/// <summary>The clone these tests were built from, read as files.</summary>
internal static class House
{
    /// <summary>The folder with the solution in it.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The configuration these tests were built in: debug or release.</summary>
    public static string Configuration { get; } =
        new DirectoryInfo(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar)).Name;

    /// <summary>Name and file of each project under src.</summary>
    public static IReadOnlyDictionary<string, string> Projects { get; } = Directory
        .EnumerateFiles(Path.Combine(Root, "src"), "*.csproj", SearchOption.AllDirectories)
        .ToDictionary(file => Path.GetFileNameWithoutExtension(file)!, StringComparer.Ordinal);

    /// <summary>The projects a project refers to.</summary>
    public static IEnumerable<string> ReferencesOf(string project) => Items(project, "ProjectReference")
        .Select(item => Path.GetFileNameWithoutExtension(item.Attribute("Include")!.Value.Replace('\\', '/')));

    /// <summary>The items of a kind in a project file.</summary>
    public static IEnumerable<XElement> Items(string project, string kind) =>
        XDocument.Load(Projects[project]).Descendants(kind);

    /// <summary>A project's assembly as it was built beside these tests.</summary>
    public static string AssemblyOf(string project)
    {
        string name = Items(project, "AssemblyName").SingleOrDefault()?.Value ?? project;
        return Path.Combine(Root, "artifacts", "bin", project, Configuration, name + ".dll");
    }

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Gylebook.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("No Gylebook.slnx above " + AppContext.BaseDirectory);
    }
}
