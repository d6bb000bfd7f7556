using System.Text;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.BeerJson;
using Gylebook.Recipes.Interchange.BeerXml;
using Gylebook.Recipes.Larders;
using Gylebook.Tests.Shared;

namespace Gylebook.Fuzz.Tests;

/// <summary>A document of BeerJSON or BeerXML as another program, or a damaged disk, might hand it over.</summary>
/// <param name="Name">Seed and number: the same name draws the same case.</param>
/// <param name="Document">The file.</param>
internal sealed record OpenCase(string Name, byte[] Document)
{
    /// <summary>Of saved cases.</summary>
    public const string Ending = ".document";

    private static readonly byte[][] Json = [.. Examples().Concat(Recipes().Select(recipe => BeerJsonFile.Write(recipe, Larder.Empty).Text)).Select(Encoding.UTF8.GetBytes)];
    private static readonly string[] Xml = [.. Recipes().Select(recipe => BeerXmlFile.Write(recipe, Larder.Empty).Text)];

    /// <summary>Draws a case: by turns one of each standard.</summary>
    public static OpenCase Draw(string seed, int number)
    {
        Random random = new(FuzzRun.StableHash($"{seed}/open/{number}"));
        Mutation mutation = new(random);
        return new OpenCase($"{seed}-{number}", number % 2 == 0 ? mutation.Any(mutation.OneOf(Json)) : new XmlMutation(random).Any(mutation.OneOf(Xml)));
    }

    /// <summary>Writes the document as it is.</summary>
    /// <returns>Where it lies.</returns>
    public string Save() => FuzzRun.Save(Name + Ending, Document);

    /// <summary>A document that was saved.</summary>
    public static OpenCase Read(string path) => new(Path.GetFileNameWithoutExtension(path), File.ReadAllBytes(path));

    private static IEnumerable<string> Examples() => Directory
        .EnumerateFiles(RepositoryFile.PathOf("tests/Gylebook.Recipes.Tests/Standards/beerjson/examples"), "*.json", SearchOption.AllDirectories)
        .Order(StringComparer.Ordinal).Select(File.ReadAllText);

    private static IEnumerable<Recipes.Recipe> Recipes() => Directory
        .EnumerateFiles(RepositoryFile.PathOf("samples/recipes"), "*.json", SearchOption.AllDirectories)
        .Order(StringComparer.Ordinal).Select(path => RecipeFile.Read(File.ReadAllText(path)).Value).OfType<Recipes.Recipe>();
}
