using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Editing;
using Gylebook.Tests.Shared;

namespace Gylebook.Recipes.Tests.Editing;

/// <summary>An edit reads the parts on the way to its field again, and nothing else.</summary>
public sealed class ReadAgainTests
{
    [Theory]
    [InlineData("ingredients[0].amount", "4 kg", 2)]
    [InlineData("mash.rests[0].temperature", "65 °C", 3)]
    [InlineData("name", "Another", 1)]
    public void Only_the_parts_around_a_field_are_read_anew(string path, string typed, int parts)
    {
        RecipeDraft before = RecipeDraft.Of(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/hedgerow-brown.json")));
        Assert.NotNull(before.Recipe);
        HashSet<object> known = new(MeaningsIn(before.File), ReferenceEqualityComparer.Instance);
        Assert.True(known.Count > 12);

        RecipeDraft after = before.Put(path, typed)!.After;
        Assert.NotNull(after.Recipe);
        Assert.Equal(parts, MeaningsIn(after.File).Count(meaning => !known.Contains(meaning)));
    }

    private static IEnumerable<object> MeaningsIn(Node node) => node switch
    {
        ObjectNode pairs => [.. pairs.Meaning is { } own ? new[] { own } : [], .. pairs.Pairs.SelectMany(pair => MeaningsIn(pair.Value))],
        ListNode list => list.Items.SelectMany(MeaningsIn),
        _ => [],
    };
}
