using System.Text.RegularExpressions;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>What people are told is told in words: ids, keys of files and marks of mathematics are for files and JSON.</summary>
public sealed partial class WordsTests
{
    // Ids that are names of the trade as well, written with a dash by anybody.
    private static readonly string[] NamesToo = ["low-alcohol", "maltotriose-negative"];

    private static readonly HashSet<string> Ids =
    [
        .. Directory.EnumerateFiles(RepositoryFile.PathOf("data"), "*.csv", SearchOption.AllDirectories)
            .Select(path => File.ReadLines(path).Where(line => !line.StartsWith('#')))
            .Where(rows => rows.First().StartsWith("id,", StringComparison.Ordinal))
            .SelectMany(rows => rows.Skip(1).Select(row => row.Split(',')[0])),
        .. SampleFile.Names("samples").Where(name => name.Contains("foods/", StringComparison.Ordinal) || name.Contains("larder/", StringComparison.Ordinal)).Select(name => Path.GetFileName(name)),
        .. ShelfIds().Matches(File.ReadAllText(RepositoryFile.PathOf("src/Gylebook.Science/Water/Additions/AcidAsSold.cs"))).Select(match => match.Groups[1].Value),
    ];

    /// <summary>Each sample that can be read, with the verbs that tell it.</summary>
    public static TheoryData<string, string> Told =>
    [
        .. SampleFile.Recipes().Select(name => ("forecast", $"samples/recipes/{name}.json")),
        .. SampleFile.Recipes().Where(name => !name.Contains('/', StringComparison.Ordinal)).Select(name => ("pitch", $"samples/recipes/{name}.json")),
        .. SampleFile.Names("samples/water").SelectMany(name => new[] { ("water", $"samples/water/{name}.json"), ("check", $"samples/water/{name}.json") }),
        .. SampleFile.Names("samples/kits").Select(name => ("check", $"samples/kits/{name}.json")),
        .. SampleFile.Names("samples").Where(name => name.Contains("foods/", StringComparison.Ordinal) && !name.Contains("bad", StringComparison.Ordinal))
            .SelectMany(name => new[] { ("label", $"samples/{name}.json"), ("check", $"samples/{name}.json") }),
    ];

    [Theory]
    [MemberData(nameof(Told))]
    public void A_sample_is_told_without_an_id_or_a_key(string verb, string file)
    {
        Ran ran = WarmProgram.Run([verb, RepositoryFile.PathOf(file), .. verb == "forecast" ? (string[])["--draws", "200"] : []]);
        string told = Quoted().Replace(Sources().Replace(ran.Output, ""), "");
        Assert.NotEqual("", (ran.Output + ran.Errors).Trim());
        Assert.DoesNotContain(Dashed().Matches(told).Select(match => match.Value), word => Ids.Contains(word) && !NamesToo.Contains(word));
        Assert.Empty(Keys().Matches(told).Select(match => match.Value).Except(["mEq", "mL", "pH"]));
        Assert.Empty(Mathematics().Matches(told).Select(match => match.Value));
    }

    [Theory]
    [InlineData("a walnut-flour", "kettle.calcium: 5", "held in sludgeLitres", "fat [41.5, 42.5)", "line ingredients[3]", "nut-flour-defatted", "citric-monohydrate")]
    public void What_it_looks_for_it_would_find(params string[] texts) => Assert.All(texts, text => Assert.True(
        Dashed().Matches(text).Any(match => Ids.Contains(match.Value) || match.Value == "walnut-flour") || Keys().IsMatch(text) || Mathematics().IsMatch(text), text));

    /// <summary>Where a number comes from may name a page or a table of ours.</summary>
    [GeneratedRegex(@"\S+\.(md|csv)\b")]
    private static partial Regex Sources();

    /// <summary>What is in quotes is a line to put into a file.</summary>
    [GeneratedRegex("\"[^\"\n]*\"")]
    private static partial Regex Quoted();

    /// <summary>Acids as sold stand in code, not in a table.</summary>
    [GeneratedRegex("(?:ByMass|Powder)\\(\"([a-z]+-[a-z0-9]+)\"")]
    private static partial Regex ShelfIds();

    [GeneratedRegex(@"\b[a-z]+(?:-[a-z0-9]+)+\b")]
    private static partial Regex Dashed();

    /// <summary>gravityPoints; kettle.calcium; ingredients[3].</summary>
    [GeneratedRegex(@"\b[a-z]+[A-Z]\w*|\b[a-z]{3,}\.[a-z]{3,}\w*|\b[a-z]+\[\d+\]")]
    private static partial Regex Keys();

    [GeneratedRegex(@"[\[(]\d[\d.]*, ?\d[\d.]*[)\]]")]
    private static partial Regex Mathematics();
}
