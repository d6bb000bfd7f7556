using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;

namespace Gylebook.Recipes.Tests.Interchange;

/// <summary>Each broken file has its findings, code and path, listed beside it; no more and no fewer may come up.</summary>
public sealed class BadSampleTests
{
    [Theory]
    [MemberData(nameof(Samples.Bad), MemberType = typeof(Samples))]
    public void A_broken_file_gives_exactly_its_findings(string path)
    {
        var expected = File.ReadAllLines(Samples.Folder(Path.ChangeExtension(path, ".expected.txt"))).Select(line => line.TrimEnd());
        Assert.Equal(expected.Order(StringComparer.Ordinal), Findings(path).Select(Line).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Samples.Bad), MemberType = typeof(Samples))]
    public void Every_finding_says_something_a_brewer_can_act_on(string path) =>
        Assert.All(Findings(path), finding => Assert.True(finding.Message.Length > 15, finding.Message));

    private static string Line(Finding finding) => $"{finding.Severity.ToString().ToLowerInvariant()} {finding.Code} {finding.Where}".TrimEnd();

    private static IReadOnlyList<Finding> Findings(string path)
    {
        ReadOnlyMemory<byte> bytes = File.ReadAllBytes(Samples.Folder(path));
        if (Path.GetFileName(path).StartsWith("kit-", StringComparison.Ordinal))
        {
            var kit = KitFile.Read(bytes);
            return kit.Value is null ? kit.Findings : KitCheck.Findings(kit.Value);
        }

        if (Path.GetFileName(path).StartsWith("water-", StringComparison.Ordinal))
        {
            return WaterFile.Read(bytes).Findings;
        }

        if (Path.GetFileName(path).StartsWith("larder-", StringComparison.Ordinal))
        {
            using MemoryStream stream = new(bytes.ToArray());
            return LarderFile.Read(stream).Findings;
        }

        var recipe = RecipeFile.Read(bytes);
        return recipe.Value is null ? recipe.Findings : RecipeCheck.Findings(recipe.Value);
    }
}
